import type { HemFinish } from '../gown/cloth.ts';
import type { Basics } from './english-basics.ts';

/** Labels of rows: how she gets in, what is sewn on, how she walks, what is set by hand. */
export function englishRows({ length, list, station }: Basics) {
  return {
    stones: {
      title: 'Stones and beads',
      heads: ['set', 'on', 'across', 'how many', 'gross', 'weight', 'hours', 'cost'],
      /** As they are sold, whatever the tape is in. */
      size: (mm: number): string => `${mm.toFixed(1)} mm`,
      motif: (width: number, height: number): string => `${width.toFixed(0)} × ${height.toFixed(0)} mm`,
      caption: `Set by hand: as many as the placing charts have, all round her; cost before overhead`,
      placesHeads: ['set', 'gore', 'across', 'below the waist seam', 'above the hem'],
      placesCaption: (unit: string): string =>
        `Set one by one, on both sides of her; along the cloth, ${unit}, and across the gore from its front edge, as drawn`,
      percent: (share: number): string => `${Number((100 * share).toFixed(1))} %`,
      chart: (name: string, size: string, isHalf: boolean): string =>
        `Placing chart of the ${name}${size === '' ? '' : `, ${size}`}: each piece as it is drawn, right side up${isHalf ? ', her left; on the fold its half. Turn it over for her right.' : ', all round her.'}`,
      piece: (name: string, count: number, times: number, once: number): string => {
        const beside = times === 1 ? `${count - once}` : `${times} × ${count - once}`;
        if (once === 0) return `${name}: ${beside}`;
        return count === once ? `${name}: ${once} on the fold` : `${name}: ${beside}, ${once} on the fold`;
      },
      spare: 'Some are lost and some break: buy more than is counted.',
    },
    finishes: {
      turned: 'turned up',
      faced: 'faced',
      bagged: 'bagged',
      rolled: 'rolled',
      raw: 'raw',
    } satisfies Record<HemFinish, string>,
    closureRows: {
      kind: { zip: 'zip', lacing: 'lacing', hooks: 'hooks and bars' },
      at: 'where',
      side: (name: string, side: 'left' | 'right' | undefined): string =>
        `${station(name)}${side === undefined ? '' : `, her ${side}`}`,
      starts: 'starts below the waist seam',
      stops: 'stops below the waist seam',
      takes: 'taken as one',
      felled: 'felled to it last',
      zip: 'zip to buy',
      zipText: (stock: string, by: string | undefined): string =>
        by === undefined ? stock : `${stock}, shortened by ${by}`,
      passes: 'lets through',
      passesText: (girth: string): string => `${girth} (waist seam and twice the opening)`,
      against: { 'steps-in': 'her hip, stepping in', 'over-the-head': 'her shoulders, over the head' },
      room: (girth: string, room: string, enough: boolean): string =>
        `${girth}: ${room} ${enough ? 'to spare' : 'too little'}`,
      beside: 'bodice edge above',
      besideText: { sewn: 'sewn shut', finished: 'finished', laced: 'laced' },
      finish: 'skirt’s edge finished by',
      finishText: {
        placket: 'a placket',
        guard: 'a zip guard',
        facing: 'a facing',
        hook: 'a hook above the opening',
      },
      wrap: 'wraps at',
      wrapText: (name: string, over: string): string => `${station(name)}, her ${over} side on top`,
      overlap: 'edge over edge',
      overlapText: (waist: string, hem: string): string =>
        waist === hem ? waist : `${waist} at the waist, ${hem} at the hem`,
      edges: 'edges',
      held: 'held by',
      notDecided: 'not decided',
      plies: (layers: readonly string[]): string => `plies at the waist, ${list(layers)}`,
      pliesText: (together: number, crossing: number): string =>
        `${together}; ${crossing} where pressed-open seams cross`,
      bones: 'between needle and bones',
      bonesText: (left: string, ends: string, second: string): string =>
        `${left} (bones end ${ends} above, second row ${second})`,
    },
    edgingRows: {
      title: (name: string): string => `Edging: ${name}`,
      round: (layer: string): string => `round the ${layer}’s hem`,
      repeats: 'repeats',
      repeatsText: (count: number, repeat: string, length: string): string =>
        `${count} of ${repeat}: ${length}`,
      ease: 'to ease in',
      easeWords: (ease: string, each: string): string => `${ease}, ${each} a repeat`,
      byGoreCaption: (layer: string, unit: string): string =>
        `Round the ${layer}’s hem, gore by gore, ${unit}: lap the inner edge where the hem bulges, ease the outer where it is hollow`,
      byGoreHeads: ['gore', 'its hem', 'inner edge to lap', 'a motif', 'outer edge to ease'],
      start: 'starts and joins at',
      buy: 'to get',
      buyText: (length: string): string => `${length}, a motif for each join in it`,
      supply: 'from the cloth’s two edges',
      supplyText: (supply: string, cloth: string, length: string): string =>
        `${supply} from ${length} of ${cloth}`,
      scallops: 'scallops off the floor',
      scallopsText: (low: string, high: string): string => `low points ${low}, high points ${high}`,
    },
    walkingRows: {
      offFloor: 'front hem off the floor',
      offFloorText: (height: string): string =>
        `${height} (textbook: ${length(25)}); she walks in it at the fitting before it stays so`,
      hoop: 'bottom hoop',
      hoopText: (round: string, height: string): string => `${round} round, ${height} off the floor`,
      sweep: 'skirt round at the hoop',
      sweepText: (sweep: string, ratio: string): string =>
        `${sweep}, ${ratio} times the hoop (common practice: 1.3 or more)`,
      least: 'comfortable from',
      leastText: (least: string, train: boolean): string =>
        `${least} round${train ? ', with a train' : ''} (common practice)`,
      slant: 'level waist to hoop, centre front',
      slantText: (slant: string, height: string): string =>
        `${slant} along the cloth, ${height} straight down: measure her to check`,
    },
  };
}
