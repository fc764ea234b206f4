import type { Milestone } from '../dates/calendar.ts';
import type { Basics } from './english-basics.ts';

/** What the job sheet says beside its tables of work: its headings, the bench page, the bodice and what is bought. */
export function englishJobSheet({ list, unit }: Basics) {
  return {
    jobSheet: {
      title: 'Job sheet',
      settle: 'To settle before cutting',
      unsaid: 'Not in the spec',
      notes: 'Notes',
      train: 'The train',
      stationsCaption: (ownWaist: boolean): string =>
        `Lengths from the ${ownWaist ? 'sewn waist edge' : 'bodice’s sewn edge'}, ${unit}`,
      stationHeads: ['station', 'drop', 'finished', 'to floor', 'on floor'],
      about: (length: string): string => `about ${length}`,
      goreHeads: ['gore', 'top', 'bodice', 'hem', 'flare'],
      goresCaption: `Gores as sewn, ${unit}; a gore on the fold by its half`,
      onFold: (name: string): string => `${name} (half)`,
      waistLine: (sewn: string, bodice: string | undefined): string =>
        `The gores’ tops are ${sewn} all round${bodice === undefined ? '' : `, the bodice edge ${bodice}`}.`,
      hemLine: (hem: string): string => `The hem is ${hem} round.`,
      skirtOnFloor: 'the skirt, on the floor',
      footprint: (length: string, width: string): string =>
        `The train spread flat on the floor, from above: ${length} long behind the skirt, ${width} wide.`,
      cutting: 'Cutting list',
      cuttingHeads: ['piece', 'layers', 'cut', 'across × down', 'allowances'],
      cuttingCaption: `Sizes with allowances, ${unit}; on the fold, of the half`,
      cutOnFold: '1 on the fold',
      cutPair: '2, a mirrored pair',
      cutSingle: (side: string | undefined, copies: number): string =>
        side === undefined ? String(copies) : `${copies}, her ${side}`,
      sides: 'sides',
      allowance: (edge: string, width: string): string => `${edge} ${width}`,
      rough: (depth: string): string => `+ ${depth} rough`,
      lays: 'Lays',
      seams: 'Seams',
      seamHeads: ['seam', 'how many'],
      notches: 'notches from the waist seam',
      seamsCaption: `Sewn lengths, ${unit}; the two sides of a seam are one length`,
      joins: 'What each layer is joined with',
      joinHeads: ['layer', 'waist', 'closure', 'hem'],
      alone: 'by itself',
      withLayers: (layers: readonly string[]): string => `as one with ${list(layers)}`,
      felledLast: 'felled to it last',
      free: 'none',
      closure: 'Closure',
      hems: 'Hems and what goes on them',
      hemHeads: ['layer', 'hem', 'round', 'allowance', 'to know'],
      shorter: (length: string): string => `${length} shorter than the gown`,
      toEase: (length: string, share: string): string => `${length} to ease when turned up (${share})`,
      baggedTo: (layer: string): string => `bagged to the ${layer}`,
      cutOnBias: 'cut',
      cutOnTheBias: 'on the bias',
      stripHeads: ['strip', 'where', 'length', 'buy', 'drawn in'],
      walking: 'Walking',
      overHoop: 'Petticoat and walking',
      bustle: 'Bustle',
      bustleHeads: ['seam', 'points', 'anchor', 'pick-up', 'lift', 'loop ends', 'above the hem'],
      bustleWhere: 'seam or gore',
      bustleCaption: `Down the cloth from the waist seam, ${unit}`,
      bustleLine: (over: boolean, number: number, clearance: string): string =>
        `${over ? 'Over: loops at the pick-ups, hooks outside' : 'Under: ribbons inside'}; ${number} ${number === 1 ? 'point' : 'points'}; the hem then hangs ${clearance} off the floor.`,
      bustleOnGore:
        'Across: of the gore’s width at that level, or of its half’s on the fold, from its front edge. Anchor and pick-up are on that line. Back both with a patch: off a seam the loop would tear the cloth.',
      bustleMore:
        'With these alone the hem lies on the floor between the points, hung by computation. Points more that clear it; ask for them in the spec, and they are marked',
      bustleAdvised: 'Points advised, not asked for: the fitter pins them first and moves the anchors.',
      weightAndThread: 'Weight and thread',
      weightHeads: ['layer', 'cloth', 'sewn area', 'cut area', 'weight', 'thread to buy'],
      weightCaption:
        'Weight with allowances, before edging and what she wears under it; thread with 15 % waste',
      threadNote: (ratio: string): string =>
        unit === 'in'
          ? `Thread by published tables for lockstitch, ${ratio} yd for each yard sewn at 10 stitches to the inch, half on the bobbin; shorter stitches draw more.`
          : `Thread by published tables for lockstitch, ${ratio} m for each metre sewn at a stitch of 2.5 mm, half on the bobbin; shorter stitches draw more.`,
      inAll: 'in all',
      notions: 'To have at hand',
      order: 'Order of making',
      hold: 'Hold:',
      caution: 'Caution',
      levelling: 'Levelling record',
      levellingText:
        'Distances along the hem from the centre front, on her left and on her right; up is +, down is -.',
      levellingHeads: ['along', 'left', 'right'],
    },
    bench: {
      settle: (count: number): string =>
        `${count === 1 ? 'One thing' : `${count} things`} to settle before cutting: see the next page.`,
      noOpening: 'How it opens is not said.',
      wraps: (where: string, over: string, overlap: string): string =>
        `Wraps at ${where}, her ${over} side on top, edge over edge by ${overlap}.`,
      opens: (kind: string, where: string): string => `Opens by ${kind} at ${where}.`,
      opensTo: (kind: string, where: string, from: string | undefined, to: string): string =>
        `Opens by ${kind} at ${where}, ${from === undefined ? `down to ${to}` : `from ${from} to ${to}`} below the waist seam.`,
      layersCaption: `Layers and parts, the outermost first: what is joined where, and allowances in ${unit === 'in' ? 'inches' : unit}`,
      layerHeads: ['layer', 'cloth', 'waist', 'closure', 'hem', 'allowances'],
      shorter: (hem: string, by: string): string => `${hem}, ${by} shorter`,
      seams: 'seams',
      atHem: (layer: string): string => `at the ${layer}’s hem`,
      above: (layer: string, height: string): string => `on the ${layer}, ${height} above its hem`,
      byItself: 'by itself',
      fastened: (how: string, from: string, to: string): string => `${how}, ${from} to ${to}`,
      ofBodice: 'bodice',
      atUpperEdge: 'upper edge',
      clothsCaption: 'Cloths',
      clothHeads: ['cloth', 'wide', 'to buy', 'for', 'to know'],
      oneWay: 'one way',
      shrinks: (share: string): string => `shrinks ${share}`,
      stretches: 'stretches',
      dateHeads: ['by', 'what', 'days'],
      datesCaption: 'Dates, and days before the event',
      drop: 'Drop: how far the bodice’s edge lies below the level waist.',
    },
    bodiceSheet: {
      title: 'Bodice',
      toileFirst:
        'Toile first: the panels follow her girths, not her shape. Fit it in calico, laced as she will wear it; the fitter decides. Lacing is no tighter than she breathes and eats in; if in doubt, a doctor decides.',
      levelsCaption: `Levels, all round, ${unit}`,
      levelHeads: ['level', 'above the waist', 'body', 'laced in', 'left open', 'sewn'],
      panelsCaption: `Panels as sewn, ${unit}; on the fold by the half`,
      panel: 'panel',
      upper: 'upper edge',
      lower: 'waist seam',
      bonesCaption: `Bones by seam, ${unit}: casings from edge to edge`,
      boneHeads: ['along', 'casing', 'bone', 'count'],
      lacing: (station: string, eyelets: number, pitch: string): string =>
        `Lacing at ${station}: ${eyelets} eyelets a side, ${pitch} apart.`,
      eyelets: (places: string): string => `Eyelets from the upper end of the edge, ${unit}: ${places}`,
      lace: (worn: string, bought: string): string =>
        `Lace: ${worn} as it is worn, ${bought} with what hangs free for tying; more where she steps in through it.`,
      tape: (round: string, length: string): string =>
        `Waist tape: closes at ${round}, cut ${length} with its ends.`,
    },
    notions: {
      zip: (stock: string, to: string): string =>
        to === stock ? `zip ${stock}` : `zip ${stock}, to be shortened to ${to}`,
      hooks: (opening: string): string =>
        `hooks and eyes or bars for the opening of ${opening}, or a tape of them`,
      wrap: {
        ties: 'ribbon or tape for two ties: half round her and a bow each',
        buttons: 'buttons for the wrap: two at the upper edge and one inside for the under edge',
        hooks: 'hooks and bars for the wrap: two at the upper edge and one inside for the under edge',
        snaps: 'snaps for the wrap: two at the upper edge and one inside for the under edge',
      } as const,
      bones: (kind: string, length: string, count: number): string =>
        kind === 'synthetic'
          ? `synthetic bone, ${length} in all`
          : `${kind.replace('-', ' ')}, ${length}: ${count}`,
      casing: (width: string, length: string): string => `bone casing for bones ${width} wide, ${length}`,
      eyelets: (count: number): string => `eyelets, ${count}, and some to try`,
      lace: (length: string): string => `lace, ${length}`,
      waistTape: (length: string): string => `waist tape, ${length}`,
      busk: (length: string): string => `busk, no longer than ${length}`,
      bodiceZip: (length: string): string => `zip for the bodice, ${length} of it above the waist seam`,
      throughZip: (length: string): string =>
        `zip through bodice and skirt, ${length} from the upper edge down`,
      bodiceHooks: (length: string): string => `hook-and-eye tape for the bodice, ${length}`,
      upperBinding: (length: string): string => `binding for the upper edge, ${length}`,
      hook: 'hook and bar, 1, above the zip',
      petersham: (length: string): string => `petersham for the waist stay, ${length}`,
      strip: (name: string, width: string | undefined, length: string, layer: string, edge: string): string =>
        `${name}${width === undefined ? '' : ` ${width} wide`}, ${length}: the ${layer}’s ${edge}`,
      bustle: (over: boolean, number: number, tape: string): string =>
        over
          ? `${number} ${number === 1 ? 'hook or button' : 'hooks or buttons'} and ${tape} of loop for the bustle`
          : `${number} ${number === 1 ? 'pair' : 'pairs'} of ribbon for the bustle`,
      thread: (cloth: string, length: string): string => `thread for the ${cloth}, about ${length}`,
    },
    milestones: {
      'order-cloth': 'order the cloth',
      'test-scraps': 'test on scraps',
      toile: 'sew the toile',
      'toile-fitting': 'fit the toile',
      cut: 'cut the cloth',
      'first-fitting': 'first fitting',
      hang: 'hang, at least 24 hours',
      'level-hem': 'level the hem on her',
      'last-fitting': 'last fitting, bustle pinned',
      deliver: 'deliver, pins counted',
      event: 'the event',
    } satisfies Record<Milestone, string>,
  };
}
