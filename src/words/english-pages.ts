import type { Milestone } from '../dates/calendar.ts';
import type { HemFinish } from '../gown/cloth.ts';
import type { MissingFact } from '../workroom/missing-facts.ts';
import type { Basics } from './english-basics.ts';

/** Headings, labels and sentences of every paper. Functions take figures already written out, or names. */
export function englishPages({ length, list, station, unit }: Basics) {
  return {
    units: `All figures in ${unit === 'in' ? 'inches' : unit}.`,
    /** What the papers' files call themselves. */
    files: { job: 'job sheet', client: 'for the client', chalk: 'chalk tables' },
    views: {
      front: 'front',
      back: 'back',
      side: 'from her left',
      above: 'from above',
      bustled: (name: string): string => `${name}, bustled`,
      floor: 'floor',
      floorAssumed: 'floor, where it usually lies: no length to the floor is given',
    },
    hung: {
      drawn: (layer: string): string =>
        `The ${layer} as it hangs, worked out from the pattern; folds fall anew each time it is worn.`,
      edging: 'Dashed: the edging.',
      figure: (isBodiceDrafted: boolean): string =>
        isBodiceDrafted ? 'The figure is for proportion only.' : 'Bodice and figure are for proportion only.',
      without: (parts: string): string => `Not drawn: ${parts}.`,
    },
    bold: 'Bold: the opening.',
    cutShort: 'LAYS CUT SHORT: draft again before you buy',
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
      stripHeads: ['strip', 'where', 'length', 'buy', 'drawn in'],
      walking: 'Petticoat and walking',
      bustle: 'Bustle',
      bustleHeads: ['seam', 'points', 'anchor', 'pick-up', 'lift', 'loop ends', 'above the hem'],
      bustleWhere: 'seam or gore',
      bustleCaption: `Down the cloth from the waist seam, ${unit}`,
      bustleLine: (over: boolean, number: number, clearance: string): string =>
        `${over ? 'Over: loops at the pick-ups, hooks outside' : 'Under: ribbons inside'}; ${number} ${number === 1 ? 'point' : 'points'}; the hem then hangs ${clearance} off the floor.`,
      bustleOnGore:
        'Across: of the gore’s width at that level, or of its half’s on the fold, from its front edge. Anchor and pick-up are on that line. Back both with a patch: off a seam the loop would tear the cloth.',
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
        `Placing chart of the ${name}, ${size}: each piece as it is drawn, right side up${isHalf ? ', her left; on the fold its half. Turn it over for her right.' : ', all round her.'}`,
      piece: (name: string, count: number, times: number, once: number): string => {
        const beside = times === 1 ? `${count - once}` : `${times} × ${count - once}`;
        if (once === 0) return `${name}: ${beside}`;
        return count === once ? `${name}: ${once} on the fold` : `${name}: ${beside}, ${once} on the fold`;
      },
      spare: 'Some are lost and some break: buy more than is counted.',
    },
    chalk: {
      inner: {
        caption: 'Straight lines inside: what is folded, and what it is brought or sewn to',
        heads: ['line', 'from: down', 'across', 'to: down', 'across'],
        names: {
          'fold-line': 'fold',
          'placement-line': 'bring the outer fold here',
          'dart-leg-line': 'leg of a dart',
          'dart-fold-line': 'fold of a dart',
          'tuck-fold-line': 'fold of a tuck',
          'tuck-stitch-line': 'stitching of a tuck',
        },
      },
      title: 'Chalk tables',
      intro: [
        'Chalk the grain line down the cloth. “Down” is measured along it from the top of the cut line, “across” square from it: + to the right, - to the left.',
        'Mark the corners first, check the two diagonals, then the levels, then the curves: along the straight line between two corners, and square off it, + away from the piece, - into it. Join from mark to mark.',
        'Capitals are corners of the cut line, small letters of the seam line.',
      ],
      shared: (layers: string): string => `Of the ${layers}; what differs in the others stands below.`,
      differs: (layers: string): string => `Different in the ${layers}`,
      onSide: (gore: string, side: 'left' | 'right'): string => `${gore}, her ${side}`,
      biasIntro:
        'On the bias: chalk the line to measure along at 45° to the selvedge, as a corner of the cloth folded over to it shows, and use it as the grain line. Of a pair turn the second over.',
      onFoldIntro: 'On the fold: the fold is the grain line.',
      corners: 'Corners',
      cornerHeads: ['', 'down', 'across'],
      levels: 'Levels',
      levelHeads: { down: 'down', columns: ['cut left', 'seam left', 'seam right', 'cut right'] },
      curves: 'Curves',
      chord: (from: string, to: string, edge: string): string => `${from}–${to}, ${edge}`,
      along: 'along',
      out: 'off',
      swings: 'Swings',
      swing: (line: string, edge: string, radius: string, down: string, across: string): string =>
        `${line} line of the ${edge}: swing ${radius} from a point ${down}, ${across}.`,
      above: (length: string): string => `${length} above the top`,
      below: (length: string): string => `${length} down`,
      onGrain: 'on the grain line',
      left: (length: string): string => `${length} left of it`,
      right: (length: string): string => `${length} right of it`,
      cut: 'Cut',
      seam: 'Seam',
      diagonals: (pairs: readonly string[]): string => `Diagonals: ${pairs.join('; ')}.`,
      copies: {
        'on-fold': () => 'cut 1 on the fold',
        pair: () => 'cut 2, the second mirrored',
        single: (copies: number) => `cut ${copies}`,
      },
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
          ? `${number} hooks or buttons and ${tape} of loop for the bustle`
          : `${number} pairs of ribbon for the bustle`,
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
    missing: MISSING(list, station),
    costing: {
      title: 'Costing',
      private: 'For the maker only: the client’s pages show none of this.',
      cutShort:
        'The lays were cut short: this cloth is more than is needed. Draft again before you buy or quote.',
      heads: ['what', 'how much', 'at', 'amount'],
      perMetre: (amount: string): string => `${amount} a metre`,
      perYard: (amount: string): string => `${amount} a yard`,
      perHour: (amount: string): string => `${amount} an hour`,
      each: (amount: string): string => `${amount} each`,
      hours: (hours: string): string => `${hours} h`,
      tasks: {
        making: 'making',
        other: 'other work',
        seams: 'seams',
        waist: 'waist',
        hems: 'hems',
        edging: 'edging',
      } as Readonly<Record<string, string>>,
      materials: 'materials and notions',
      labour: 'work',
      overhead: (share: string): string => `overhead, ${share} of both`,
      cost: 'cost',
      margin: (share: string): string => `margin, ${share} of cost`,
      rounding: 'rounding',
      net: 'price before tax',
      tax: (share: string): string => `tax, ${share}`,
      total: 'price',
      spare: 'These are reckonings, not legal or tax advice: ask an accountant.',
    },
    record: {
      title: 'Planned and actual',
      heads: ['what', 'planned', 'actual', 'difference'],
      hours: 'hours',
      cloth: (name: string): string => `${name}, length`,
      spent: 'materials',
      revised: 'Price by what it came to',
      paid: 'paid so far',
      balance: 'balance to invoice on the price agreed',
      balanceRevised: 'balance by what it came to',
      empty: 'Nothing is kept yet: fill in here, then under `labour.actual` and `used` in the spec.',
    },
    client: {
      title: 'For you',
      quoteTitle: 'Quote',
      approve: 'The drawing to approve',
      approveText:
        'At true proportion, from the measures below. Say so now if anything differs from what you want: the cloth is cut by it.',
      decides: ['', ''],
      waist: 'waist seam, all round',
      frontLength: (ownWaist: boolean): string =>
        `front, from the ${ownWaist ? 'waist' : 'bodice’s edge'} to the hem`,
      backLength: (ownWaist: boolean): string =>
        `back, from the ${ownWaist ? 'waist' : 'bodice’s edge'} to the hem`,
      train: 'train on the floor at the centre back',
      offFloor: 'hem off the floor in front',
      hem: 'hem, all round',
      opening: 'opens',
      openingWords: (kind: string, name: string, side: 'left' | 'right' | undefined): string =>
        `${kind} at ${station(name)}${side === undefined ? '' : `, on your ${side}`}`,
      stones: 'set by hand',
      stonesWords: (name: string, layer: string, count: number): string =>
        `${name} on the ${layer}, ${count}`,
      priceHeads: ['what', 'amount'],
      layers: 'layers, from the inside out',
      approved: ['approved', 'date'],
      price: 'Price',
      covers: (gown: string, fittings: number | undefined): string =>
        `The skirt of the gown ${gown}: cloth, trimmings, making${fittings === undefined ? '' : `, and ${fittings} ${fittings === 1 ? 'fitting' : 'fittings'}`}.`,
      net: 'price before tax',
      tax: (share: string): string => `tax, ${share}`,
      total: 'price',
      cutShort: 'Not final: the cloth is not fully planned yet, and the price may come out lower.',
      totalSoFar: 'price so far',
      stagesTitle: 'When it falls due',
      stages: { deposit: 'deposit, with the order', balance: 'balance, on delivery' } as Readonly<
        Record<string, string>
      >,
      expires: (date: string): string => `This quote holds until ${date}.`,
      incomplete: (names: readonly string[]): string => `Not in the price yet: ${list(names)}.`,
      noPrice: 'The spec has no prices and no hours: there is nothing to quote.\n',
      changesTitle: 'What counts as a change',
      changes: (fittings: number | undefined): string[] =>
        asOneSentence([
          'another cloth, layer, edging or closure than listed here',
          'another length, hem or train once the cloth is cut',
          'other shoes or another petticoat once the hem is levelled',
          'measures that change by more than the seams can take in or let out',
          ...(fittings === undefined
            ? []
            : [`more than the ${fittings} ${fittings === 1 ? 'fitting' : 'fittings'} included`]),
        ]),
      changesText:
        'Changes are priced before they are made. This page is no legal or tax advice: an accountant or a lawyer gives that.',
      cardTitle: 'Care and bustle card',
      care: (of: 'bodice' | 'skirt' | 'wrap'): string[] => [
        ...{
          bodice: ['Fasten the waist stay first, then the closure; undo them the other way round.'],
          skirt: [],
          wrap: ['Fasten the under edge inside first, then the upper one; undo them the other way round.'],
        }[of],
        of === 'bodice'
          ? 'Hang it by the waist stay on a padded hanger; lay it flat or loosely rolled for a journey, and never fold it sharply.'
          : 'Hang it by its whole waist, never by two clips; lay it flat or loosely rolled for a journey, and never fold it sharply.',
        'Air it after wearing. Spots: dab, do not rub, and try on a hidden allowance first; for the rest ask the maker or a cleaner who is shown the cloths named here.',
        'Press from the inside through a cloth, never on braid, sequins or edging.',
      ],
      careLabel: (cloth: string): string => `${cloth}: care by the supplier’s label`,
      bustleTitle: 'To put the bustle up',
      bustleSteps: (over: boolean, number: number): string[] => [
        'Have somebody stand behind you; the train lies straight.',
        over
          ? number === 1
            ? 'Loop over hook at the centre back.'
            : `Begin at the centre back: loop over hook, then outwards, left and right in turn, ${number} in all.`
          : `Begin at the centre back: tie the ribbons of one number together in a bow, then outwards, ${number} pairs in all.`,
        'Walk a few steps: nothing drags, nothing pulls.',
      ],
      know: 'What you should know',
      remember: 'Please note',
    },
    measuresForm: {
      title: 'Measures for a fitting',
      stiffness: 'How stiff each cloth is',
      stiffnessText:
        'Cut a strip along the grain, 2.5 cm (1 in) wide and 30 cm (12 in) long. Lay it on a table and push it over the edge until its tip comes down to a line drawn 41.5° below the level (22 down for 25 along). Half of what hangs over is the bending-length. Turn the strip over and end for end, and take the mean of the four.',
      stiffnessFields: Array.from({ length: 4 }, () => 'cloth, bending-length'),
      overhang: 'what hangs over: twice the bending-length',
      slope: '41.5°',
      intro:
        'Over the petticoat, in the shoes, standing straight; along the cloth’s way, not through the air. Write the unit down.',
      introOverBody:
        'Over what she will wear under the gown, in the shoes, standing straight; along the cloth’s way, not through the air. Write the unit down.',
      who: ['code', 'date', 'unit', 'measured by'],
      body: 'Body',
      ownWaist: 'waist, where the skirt sits',
      bodyFields: [
        'waist, where the bodice ends',
        'hip, at the fullest',
        'hip depth, from the waist down',
        'high hip',
        'high hip, from the waist down',
        'knee, from the waist down',
        'round both knees, in a step',
        'over both shoulders, arms down',
        'height',
        'height of the shoes’ heel',
      ],
      girths: 'Girths for the bodice',
      girthsBelow: 'Girths for the skirt',
      girthsBelowText:
        'Over what she will wear under the gown, tape level, in ease; how far below the waist along the body, from a tape tied round it.',
      girthsText:
        'Over what she will wear under the gown, tape level, in ease; heights along the body from a tape tied round the natural waist. The front goes from side seam to side seam.',
      girth: (level: string): string => `${level}, all round`,
      girthFront: (level: string): string => `${level}, over the front`,
      girthHeight: (level: string): string => `${level}, from the waist`,
      bustPoints: 'from bust point to bust point',
      upperEdge: 'Upper edge, above the waist',
      straps: 'over the shoulder, from the upper edge in front to behind',
      arm: 'round both arms and shoulders, where a cape hangs',
      petticoat: 'Petticoat',
      petticoatFields: [
        'bottom hoop, round',
        'hoop off the floor',
        'other hoops: how far down, how far round',
      ],
      edge: 'Bodice edge',
      edgeText: 'The sewn lower edge of each panel, on the seam line; then all round as a check.',
      panel: (name: string, half: boolean): string => (half ? `${name}, whole panel` : name),
      waistSeam: 'all round',
      bones: 'bones end above the edge',
      drop: 'How far the edge lies below the level waist',
      dropText: 'Tie a tape round the natural waist, level; measure down from it.',
      lengths: 'Lengths',
      lengthsText: (ownWaist: boolean): string =>
        `From the ${ownWaist ? 'waist' : 'bodice’s edge'} to the floor at each station; the hem’s height off the floor apart.`,
      offFloor: 'hem off the floor in front',
      train: 'train on the floor at the centre back',
      data: 'A code, never a name: measures are personal data. The data-protection authority of your country says how long they may be kept.',
      notes: 'Notes',
      figure: 'Where to measure',
      levels: {
        shoulders: 'over both shoulders',
        bust: 'bust',
        underbust: 'underbust',
        waist: 'level waist',
        edge: 'bodice edge',
        hip: 'hip',
        hoop: 'bottom hoop',
        floor: 'floor, in the shoes',
      },
    },
  };
}

type Sentence = (names: readonly string[]) => string;

function MISSING(
  list: Basics['list'],
  station: Basics['station'],
): Readonly<Record<MissingFact['fact'], Sentence>> {
  const stations: Sentence = (names) => list(names.map((name) => station(name)));
  return {
    closure: () => 'closure: nothing is said of how she gets in.',
    girths: () => 'closure.hip, closure.shoulders: whether she gets in was not checked.',
    'waist-groups': () => 'sewn-as-one.waist: each layer is sewn to the bodice by itself.',
    'closure-layers': () => 'sewn-as-one.closure: the closure is taken through all layers.',
    'bodice-plies': () => 'bodice.plies: the bodice is counted as one ply.',
    'bones-end': () => 'bodice.bones-end: the needle’s distance from the bones was not checked.',
    'off-floor': () => 'lengths.off-floor: the hem’s height off the floor is not known.',
    'floor-lengths': (names) =>
      `lengths.to-floor: the floor is not known at ${stations(names)}, so the sweep over the hoop was not checked.`,
    'hoop-height': () => 'petticoat.hoop-off-floor: the hoop is taken to hang as high as the hem.',
    'edging-start': (names) => `edging.start: taken as ${stations(names)}.`,
    'bustle-floor': (names) =>
      `lengths.to-floor: without it no pick-up for the bustle at ${stations(names)}.`,
    'bustle-floor-estimated': (names) =>
      `lengths.to-floor at ${stations(names)}: worked out between its neighbours; measure it before the bustle is marked.`,
    'cloth-weight': (names) => `weight of ${list(names)}: the skirt’s weight is not known.`,
    price: (names) => `price of ${list(names)}: not in the costing.`,
    lay: (names) => `length of ${list(names)} to buy: not in the costing.`,
    'no-prices': () => 'prices and hours: there is no costing and no quote.',
    rate: () => 'labour.rate: no work is charged.',
    hours: () => 'labour.hours, tasks or per-metre: no work is charged.',
    'fittings-included': () => 'labour.fittings-included: the quote does not say how many.',
    expires: () => 'labour.expires: the quote has no last day.',
    event: () => 'dates.event: no calendar.',
  };
}

/** Items of a list that is one sentence: the last of them ends it, whichever it is. */
function asOneSentence(items: readonly string[]): string[] {
  return items.map((item, i) => `${item}${i === items.length - 1 ? '.' : ';'}`);
}
