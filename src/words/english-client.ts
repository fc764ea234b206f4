import type { Basics } from './english-basics.ts';

/** Column of the form's girths. */
const OVER_FRONT = 'over the front';

/** What the client reads, and the form for her measures. */
export function englishClient({ list, station }: Basics) {
  return {
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
      sewnOn: 'sewn on to it',
      wornWith: 'worn with it',
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
      cardTitle: (bustles: boolean) => (bustles ? 'Care and bustle card' : 'Care card'),
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
      overhang: ['what hangs over:', 'twice the bending-length'],
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
      girthHeads: ['level', 'all round', OVER_FRONT, 'from the waist'],
      overFront: OVER_FRONT,
      bustPoints: 'from bust point to bust point',
      upperEdge: 'upper edge, above the waist',
      straps: 'over the shoulder, from the upper edge in front to behind',
      arm: 'round both arms and shoulders, where a cape hangs',
      petticoat: 'Petticoat',
      under: 'What the skirt hangs over',
      underText:
        'From the waist down, at each level that it widens or narrows: over what is under the skirt, tape level.',
      underHeads: ['level', 'down from the waist', 'all round'],
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
      station: 'station',
      drop: 'edge, below the level waist',
      toFloor: 'to the floor',
      dropText: 'Tie a tape round the natural waist, level; measure up and down from it.',
      lengths: 'At each station',
      lengthsText: (ownWaist: boolean): string =>
        `To the floor from the ${ownWaist ? 'waist' : 'bodice’s edge'}, all the way; the hem’s height off the floor apart.`,
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

/** Items of a list that is one sentence: the last of them ends it, whichever it is. */
function asOneSentence(items: readonly string[]): string[] {
  return items.map((item, i) => `${item}${i === items.length - 1 ? '.' : ';'}`);
}
