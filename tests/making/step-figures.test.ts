import { describe, expect, it } from 'vitest';
import { english } from '../../src/words/english.ts';
import { ENGLISH_PATTERN } from '../../src/words/english-pattern.ts';
import { layRemarks } from '../../src/words/lay-remarks.ts';

/** Figures and names within the sentences of each step and remark: works made by hand, no two figures alike, in cm. mm. */

type Work = { readonly kind: string } & Record<string, unknown>;
const say = english('cm');
const lines = (work: Work): string[] => {
  const { does, notes, holds } = say.step(work as never);
  return [does, ...notes, ...holds];
};

/** Each of the parts stands in some line of the step. */
function expectParts(work: Work, parts: readonly string[]): void {
  const all = lines(work);
  for (const part of parts) expect(all.join('\n')).toContain(part);
}

/** The work, what it says, and the same with something changed, which must not say it. */
const STEPS: readonly [Work, readonly string[]][] = [
  [
    {
      kind: 'test-scraps',
      cloths: [
        { name: 'crepe', shrinkage: 0.03 },
        { name: 'net', shrinkage: 0 },
        { name: 'cupro', shrinkage: 0.015 },
      ],
    },
    ['Cloths: crepe, net and cupro.', 'a square of 20 cm of each', 'Counted on: crepe 3 % and cupro 1.5 %.'],
  ],
  [{ kind: 'shrink', cloth: 'crepe', shrinkage: 0.035 }, ['Shrink the crepe before it is laid; 3.5 % is']],
  [
    { kind: 'cut-own-edges', cloth: 'lace', edging: 'scallop', depth: 61 },
    ['Cut the scallop off both edges of the lace first, inside the selvedge, 6.1 cm deep.'],
  ],
  [
    {
      kind: 'cut',
      cloth: 'crepe',
      layers: ['shell', 'frill'],
      strips: ['frill'],
      oneWay: true,
      bias: ['shell'],
      roughCut: [
        { layers: ['shell'], gores: ['side', 'back'], depth: 21 },
        { layers: ['shell', 'frill'], gores: ['front'], depth: 32 },
      ],
    },
    [
      'Cut the crepe by its lay: shell and frill.',
      'Frill: strips, cut as one run.',
      'One way: all tops',
      'Shell: on the bias.',
      'Side and back of shell are cut 2.1 cm longer at the hem',
      'Front is cut 3.2 cm longer at the hem',
    ],
  ],
  [
    {
      kind: 'mark',
      layers: [],
      sheers: ['net', 'tulle'],
      zipEnds: { at: 'centre-back', side: undefined, starts: 26, stops: 257 },
      gaps: [
        { layer: 'lining', at: 'side/back', length: 150, from: 301 },
        { layer: 'shell', at: 'centre-back', length: 160 },
      ],
      bustle: [
        { seam: 'centre-back', anchor: 121, pickUp: 786 },
        { seam: 'side/back', side: 'right', anchor: 142, pickUp: 433 },
      ],
    },
    [
      'Opening at centre back: start 2.6 cm and stop 25.7 cm below the waist seam.',
      'Gap in the lining at side/back: from 30.1 cm to 45.1 cm below the waist seam.',
      'Gap in the shell at centre back: 16 cm long.',
      'Bustle, cm below the waist seam: centre back anchor 12.1, pick-up 78.6; side/back, her right, anchor 14.2, pick-up 43.3.',
      'On net and tulle mark inside',
    ],
  ],
  [
    {
      kind: 'stay-edges',
      tapes: [{ kind: 'stay-tape', layer: 'shell', along: 'waist', width: 11, length: 742 }],
    },
    ['Sew the stay tape, 1.1 cm wide and 74.2 cm long, along the shell’s waist.'],
  ],
  [
    {
      kind: 'sew-seams',
      layer: 'shell',
      seams: [
        { name: 'front/side', copies: 2, withLayer: 'velvet' },
        { name: 'centre-back', copies: 1 },
      ],
      openAbove: { at: 'side/back', side: 'left', stops: 257 },
      gap: { at: 'centre-back', length: 151 },
      slits: [{ seam: 'front/side', side: 'right', from: 602 }],
      pockets: [{ seam: 'side/back', side: undefined, from: 83, to: 234 }],
      godets: [{ seam: 'x/y', from: 555, name: 'wedge' }],
    },
    [
      'Sew the seams of the shell by itself, from the front round: front/side (2) and centre back.',
      'Press each seam as sewn, then open.',
      'At front/side it is sewn to the velvet.',
      'leave the left side/back open down to 25.7 cm below the waist seam; sew only what lies below.',
      'leave the shell’s centre back open 15.1 cm to turn the hem.',
      'leave the right front/side open from 60.2 cm below the waist seam down, for the slit.',
      'leave side/back open from 8.3 cm to 23.4 cm below the waist seam, for the pocket.',
      'leave x/y open from 55.5 cm below the waist seam down, for the wedge.',
    ],
  ],
  [
    { kind: 'godet', layer: 'net', name: 'wedge', seam: 'side/back', copies: 2, side: 451 },
    [
      'Let the wedge into the net’s side/back (2): from the point down, first one side, then the other, 45.1 cm each.',
    ],
  ],
  [
    { kind: 'gather', layer: 'net', fullness: { by: 'gathers' }, folds: [], cloth: 2222, edge: 741 },
    ['Gather the net’s waist edge from 222.2 cm to 74.1 cm'],
  ],
  [
    {
      kind: 'gather',
      layer: 'net',
      fullness: { by: 'pleats', towards: 'back' },
      folds: [
        { gore: 'front', depth: 21 },
        { gore: 'side', depth: 32 },
        { gore: 'front', depth: 21 },
      ],
      cloth: 2222,
      edge: 741,
    },
    [
      'waist edge, each fold 2.1 cm deep on the front and 3.2 cm deep on the side, towards the back, from 222.2 cm to 74.1 cm',
    ],
  ],
  [
    { kind: 'tiers', tiers: { name: 'petticoat', tiers: [1610, 3220], yoke: 805 } },
    ['Make the petticoat: join', 'tiers of 161 cm and 322 cm', 'the top one to the yoke of 80.5 cm;'],
  ],
  [
    {
      kind: 'tiers',
      tiers: { name: 'petticoat', tiers: [1610], yoke: 805, yokeLayer: { name: 'net-yoke' } },
    },
    ['the top one to the net-yoke, closed into a ring of 80.5 cm;'],
  ],
  [
    {
      kind: 'flounce',
      flounce: {
        name: 'frill',
        sewnTo: { name: 'shell' },
        aboveHem: 123,
        depth: 304,
        kind: 'straight',
        fullness: 1.5,
      },
    },
    [
      'Sew the frill to the shell, 12.3 cm above its hem line.',
      'gather it 1.5 to 1',
      'It hangs 30.4 cm deep',
    ],
  ],
  [
    {
      kind: 'flounce',
      flounce: {
        name: 'frill',
        sewnTo: { name: 'shell' },
        aboveHem: 0,
        depth: 304,
        kind: 'circular',
        fullness: 1,
      },
    },
    ['Sew the frill to the shell’s hem line.', 'It is the shell’s hem'],
  ],
  [
    {
      kind: 'overskirt',
      overskirt: {
        name: 'tail',
        edges: 'faced',
        gown: {
          layers: [{ name: 'velvet' }, { name: 'silk' }],
          edgeFacing: { layer: { name: 'tail-facing' } },
        },
        fastened: 'hooks',
        from: 'front/side',
        to: undefined,
      },
    },
    [
      'Make the tail by itself: seams, its end edges faced with the tail-facing, and',
      'Layers: velvet and silk.',
      'It fastens with hooks from front/side to centre back.',
    ],
  ],
  [
    {
      kind: 'finish-opening',
      at: 'side/back',
      side: 'left',
      finish: 'guard',
      piece: 'zip-guard',
      beside: 'laced',
      stops: 257,
    },
    [
      'at left side/back with a guard (cut as zip-guard), down to 25.7 cm below the waist seam.',
      'The bodice edge above is laced',
      'Fold and close it',
    ],
  ],
  [
    { kind: 'baste-as-one', layers: ['shell', 'net'], at: 'side/back', side: 'right', stops: 257 },
    ['Lay shell and net on each other', 'opening at right side/back, down to 25.7 cm below'],
  ],
  [
    {
      kind: 'close',
      closure: 'zip',
      at: 'centre-back',
      layers: ['shell', 'net'],
      starts: 26,
      stops: 257,
      zip: { stock: 251, shortenBy: 23 },
    },
    [
      'Set the zip into the centre back seam, through shell and net as one.',
      'A 25.1 cm zip, shortened by 2.3 cm at the bottom',
      'start the zip 2.6 cm below',
      'stop it 25.7 cm below',
    ],
  ],
  [
    { kind: 'close', closure: 'hooks', at: 'centre-back', layers: ['shell'], starts: 26, stops: 257 },
    [
      'Set the hooks and bars along the centre back, through the shell, from 2.6 cm to 25.7 cm below the waist seam.',
    ],
  ],
  [
    { kind: 'close', closure: 'lacing', at: 'centre-back', layers: ['shell'], starts: 0, stops: 257 },
    [
      'eyelets or loops for the lacing along the centre back, through the shell, from the waist seam to 25.7 cm below it.',
    ],
  ],
  [
    {
      kind: 'join-waist',
      layers: ['shell', 'net'],
      plies: 3,
      crossing: 6,
      clearance: 11,
      secondRow: 4,
      panelled: true,
      gathered: ['net'],
      pleated: ['shell'],
      stretched: ['lining'],
    },
    [
      'Sew the shell and net to the bodice’s waist seam as one, gore seams on panel seams.',
      'The net: spread',
      'The pleats of the shell stay as they are basted',
      'The lining is cut smaller: stretch it to each panel',
      '3 plies under the needle, 6 where',
      'A second row 0.4 cm above the first leaves 1.1 cm to the bones.',
    ],
  ],
  [
    { kind: 'waist-stay', length: 742, grams: 1234, closes: true },
    [
      'Tack the petersham, 74.2 cm to',
      'It carries the skirt, 1.23 kg without',
      ', and fastens before the closure.',
    ],
  ],
  [
    {
      kind: 'pleat',
      layer: 'shell',
      places: 2,
      folds: 2,
      pleat: {
        name: 'p1',
        kind: 'inverted',
        at: 'front/side',
        gore: 'front',
        fromSeam: 33,
        foldDepth: 41,
        stitchedDown: 152,
        hem: 'first',
      },
    },
    [
      'Lay the shell’s p1 (2), an inverted pleat on the front, 3.3 cm from front/side along the waist seam: each of its 2 folds 4.1 cm deep',
      'from the waist seam for 15.2 cm',
      'Its hem is sewn first',
    ],
  ],
  [
    {
      kind: 'pleat',
      layer: 'shell',
      places: 1,
      folds: 1,
      pleat: { name: 'kick', kind: 'kick', at: 'centre-back', foldDepth: 52, aboveHem: 203, towards: 'back' },
    },
    [
      'a kick pleat at centre back: its fold 5.2 cm deep',
      'It begins 20.3 cm above the hem.',
      'points to the back.',
      'Press it now',
    ],
  ],
  [
    {
      kind: 'darts',
      layer: 'shell',
      darts: [
        { name: 'd1', gore: 'front', takesIn: 22, length: 91, towards: 'front' },
        { name: 'd2', gore: 'back', takesIn: 33, length: 124, towards: 'back' },
      ],
    },
    [
      'Fold d1 on the front to the front, d2 on the back to the back, each',
      'd1 on the front, 2.2 cm at the waist and 9.1 cm long and d2 on the back, 3.3 cm at the waist and 12.4 cm long.',
    ],
  ],
  [
    { kind: 'tucks', layer: 'shell', tucks: { count: 3, width: 21, aboveHem: 62, apart: 43 }, toEase: 17 },
    [
      'Sew the shell’s growth tucks, 3 of them: fold on each fold line, wrong sides together, and stitch 2.1 cm from',
      'stitched 6.2 cm above the finished hem, the next 4.3 cm above it;',
      'is 1.7 cm longer than the upper',
    ],
  ],
  [
    { kind: 'press-pleats', layer: 'shell', pleats: ['p1', 'p2'] },
    ['Press the shell’s pleats for good, hem and all: p1 and p2.'],
  ],
  [
    {
      kind: 'hang',
      bias: ['side'],
      onBias: [{ layer: 'silk', drop: 11 }],
      flounces: ['frill'],
      petticoat: true,
    },
    [
      'Hang the gown over its petticoat, with the frill on it.',
      'The silk is all on the bias: its own weight draws it up to 1.1 cm longer',
    ],
  ],
  [
    {
      kind: 'level',
      offFloor: 23,
      train: true,
      petticoat: true,
      flounces: ['frill', 'ruffle'],
      atHem: ['frill'],
      overskirts: ['tail'],
    },
    [
      'A pin every 7.5 cm all round, 2.3 cm off the floor as far round as',
      'The hem is that of the frill.',
      'Level the ruffle at its own hem too.',
      'Then the tail, fastened on',
    ],
  ],
  [
    {
      kind: 'trim',
      layers: [
        { name: 'shell', below: 16, shorter: 0 },
        { name: 'lining', below: 0, shorter: 21 },
      ],
      roughCut: true,
    },
    ['Shell 1.6 cm below its hem line; lining 2.1 cm shorter, on its hem line.', 'The extra at the hem'],
  ],
  [
    { kind: 'hem', layer: 'shell', finish: 'turned', length: 4012, allowance: 31, toEase: 165 },
    ['Turn up the shell’s hem 3.1 cm, 401.2 cm round', '16.5 cm has to be eased'],
  ],
  [
    { kind: 'hem', layer: 'shell', finish: 'faced', length: 4012, facing: 'shell-facing' },
    ['Face the shell’s hem, 401.2 cm round.', 'Lay the shell-facing on'],
  ],
  [
    { kind: 'hem', layer: 'shell', finish: 'rolled', length: 4012 },
    ['Roll the shell’s hem, 401.2 cm round,'],
  ],
  [
    { kind: 'hem', layer: 'shell', finish: 'raw', length: 4012, edged: false },
    ['clean in one sweep, 401.2 cm round'],
  ],
  [
    { kind: 'bag-hem', inner: 'lining', outer: 'shell', length: 4012, allowance: 12 },
    ['Bag the hems: lining and shell right sides together, seam on seam, 401.2 cm round.', 'Sew at 1.2 cm,'],
  ],
  [
    {
      kind: 'turn-through',
      inner: 'lining',
      outer: 'shell',
      gap: { layer: 'lining', at: 'centre-back', length: 151 },
    },
    ['through the gap in the lining’s centre back (15.1 cm).', 'Roll the shell 2 to 3 mm'],
  ],
  [
    {
      kind: 'part-hem',
      name: 'tail',
      layers: [
        { name: 'velvet', finish: 'faced' },
        { name: 'silk', finish: 'rolled' },
      ],
    },
    ['Finish the tail’s hems: face that of the velvet and roll that of the silk.'],
  ],
  [
    {
      kind: 'edging',
      name: 'galloon',
      layer: 'net',
      start: 'side/back',
      side: 'left',
      repeats: 41,
      ease: 93,
      curved: true,
      hollow: ['back'],
      own: true,
    },
    [
      'Lay the galloon round the net, its outer edge on the hem line, starting at left side/back: 41 repeats.',
      '9.3 cm in all to ease',
      'In the hollow of back ease',
      'hide the join',
    ],
  ],
  [{ kind: 'cut-behind', layer: 'net', edging: 'galloon' }, ['Cut the net away behind the galloon']],
  [
    { kind: 'level-scallops', edging: 'galloon', hang: { highPoints: 36, lowPoints: 21 } },
    [
      'Level the galloon by its scallops’ high points, now that they are on: 3.6 cm off the floor, the low points 2.1 cm.',
    ],
  ],
  [{ kind: 'bustle', over: false, number: 1 }, ['Sew the bustle, 1 point as pinned: ribbons in pairs']],
  [{ kind: 'bustle', over: true, number: 5 }, ['5 points as pinned: loops at the pick-ups']],
  [
    { kind: 'fell-lining', layers: ['lining', 'cotton'], at: 'side/back', side: 'right' },
    ['Fell the lining and cotton to the closure at right side/back'],
  ],
  [
    {
      kind: 'own-waist',
      finish: 'band',
      layers: ['shell', 'net'],
      shaped: false,
      width: 36,
      overlap: 31,
      sewn: 742,
      grams: 850,
    },
    [
      'Sew the waistband to the waist edge of the shell and net as one, 74.2 cm round',
      'fell its inside down: 3.6 cm wide.',
      '3.1 cm of it runs on',
      'It carries the skirt, 850 g',
    ],
  ],
  [
    { kind: 'own-waist', finish: 'facing', layers: ['shell'], width: 52, sewn: 742 },
    ['Face the waist edge of the shell, 74.2 cm round', 'catch it to the seams, 5.2 cm deep'],
  ],
  [
    { kind: 'own-waist', finish: 'stay', layers: ['shell'], width: 25, sewn: 742 },
    ['Sew a petersham 2.5 cm wide along the waist edge of the shell, 74.2 cm round'],
  ],
  [
    {
      kind: 'slit',
      seam: 'front/side',
      side: 'left',
      from: 602,
      facing: { name: 'slit-facing', depth: 41 },
      stay: 'stay',
    },
    [
      'the slit in the left front/side, from 60.2 cm below',
      'Sew the slit-facing, 4.1 cm wide',
      'Lay the stay over',
    ],
  ],
  [
    {
      kind: 'wrap-edges',
      at: 'centre-front',
      layers: ['lining', 'shell'],
      edges: 'faced',
      facing: { name: 'wrap-facing', depth: 61 },
    },
    [
      'both edges of the wrap, past centre front',
      'lining and shell as one',
      'Sew the wrap-facing, 6.1 cm deep',
    ],
  ],
  [
    { kind: 'wrap-ties', name: 'ties', length: 951, width: 26, over: 'left' },
    ['Make the ties', '95.1 cm long and 2.6 cm wide', 'through a slot at her left'],
  ],
  [
    {
      kind: 'fasten-wrap',
      at: 'centre-back',
      over: 'left',
      overlap: 244,
      overlapAtHem: 317,
      fastened: 'hooks',
      tiesCut: false,
    },
    [
      'Lay her left side over the other, centre back on centre back',
      'by 24.4 cm at the waist and 31.7 cm at the hem',
      'the bars to what lies under them',
    ],
  ],
  [
    {
      kind: 'own-waist',
      finish: 'band',
      layers: ['shell'],
      shaped: false,
      width: 36,
      overlap: 244,
      wraps: true,
      sewn: 742,
    },
    ['98.6 cm from edge to edge', 'level with the edges of the wrap'],
  ],
  [
    {
      kind: 'pocket',
      seam: 'side/back',
      side: 'right',
      from: 83,
      to: 234,
      layer: 'pocket',
      outermost: 'shell',
    },
    ['Sew the pocket to the shell’s right side/back, from 8.3 cm to 23.4 cm below'],
  ],
  [
    { kind: 'loops', name: 'loops', count: 13, length: 47, width: 6 },
    ['the strip, 0.6 cm wide, and cut it into 13 of 4.7 cm.'],
  ],
  [
    { kind: 'bias', name: 'binding', cloth: 'satin', width: 41, length: 2510 },
    ['Cut the binding on the bias from its block of satin: 251 cm in all, 4.1 cm wide.'],
  ],
  [
    { kind: 'facing', facing: 'shell-facing', faces: 'shell', depth: 71 },
    ['Join the pieces of the shell-facing, 7.1 cm deep, as the gores of the shell'],
  ],
  [
    {
      kind: 'casings',
      layer: 'coutil',
      width: 9,
      bones: [
        { along: 'front/side', side: 'left', casing: 263, count: 1 },
        { along: 'centre-back', casing: 254, count: 4 },
      ],
    },
    [
      'Sew the casings to the coutil, over its open seams, for bones 0.9 cm wide.',
      'Left front/side 26.3 cm and centre back 25.4 cm (4), from edge to edge.',
    ],
  ],
  [
    { kind: 'bodice-layers', layers: ['coutil', 'satin'], tape: 752, lining: 'cotton' },
    ['Lay coutil and satin on', 'Tack the waist tape, 75.2 cm', 'The cotton stays apart'],
  ],
  [
    {
      kind: 'bones',
      material: 'flat-steel',
      clear: 14,
      bones: [{ along: 'centre-back', side: 'right', length: 228, count: 4 }],
    },
    ['Push the flat steels into', 'Right centre back 4 × 22.8 cm.', 'Each ends 1.4 cm or more clear'],
  ],
  [
    { kind: 'upper-facing', facing: 'bodice-facing', depth: 42 },
    ['the pieces of the bodice-facing, 4.2 cm deep'],
  ],
  [{ kind: 'upper-edge', finish: 'bound', length: 951 }, ['Bind the upper edge, 95.1 cm round']],
  [
    { kind: 'upper-edge', finish: 'faced', length: 951, facing: 'bodice-facing' },
    ['Lay the bodice-facing on the upper edge, 95.1 cm round'],
  ],
  [
    { kind: 'strap', name: 'strap', from: 'front/side', to: 'side/back', length: 401, width: 16 },
    ['Make the strap, 1.6 cm wide', 'at front/side and side/back.', '40.1 cm from edge to edge'],
  ],
  [
    {
      kind: 'bodice-close',
      closing: { kind: 'lacing', at: 'centre-back', fromEdge: 13, modesty: 121 },
      lacing: { eyelets: 14, pitch: 24, lace: 4330 },
    },
    [
      'at the centre back and set 14 eyelets a side, 2.4 cm apart, 1.3 cm from the edge.',
      'Lace: 433 cm',
      'the lacing, 12.1 cm wide',
    ],
  ],
];

describe('a step’s sentences', () => {
  it.each(STEPS.map(([work, parts]) => [work.kind, work, parts] as const))('%s', (_, work, parts) =>
    expectParts(work, parts),
  );

  it('what is not there is not spoken of', () => {
    const seams = {
      kind: 'sew-seams',
      layer: 'net',
      french: true,
      stretch: false,
      bias: false,
      seams: [],
      slits: [],
      pockets: [],
      godets: [],
    };
    expect(lines(seams).join('\n')).toContain('French seams');
    expect(lines(seams)).toHaveLength(3);
    const bare = { kind: 'mark', layers: [], sheers: [], gaps: [], bustle: [] };
    expect(lines(bare)).toHaveLength(1);
    const no = { oneWay: false, slippery: false, stretch: false };
    const cut = { kind: 'cut', cloth: 'crepe', layers: ['crepe'], strips: [], bias: [], roughCut: [], ...no };
    expect(lines(cut)).toEqual(['Cut the crepe by its lay.']);
    const zip = {
      kind: 'close',
      closure: 'zip',
      at: 'centre-back',
      layers: ['shell'],
      starts: 0,
      stops: 231,
      zip: { stock: 231, shortenBy: 0 },
    };
    expect(lines(zip)).toEqual([
      'Set the zip into the centre back seam, through the shell.',
      'A 23.1 cm zip.',
      'stop it 23.1 cm below the waist seam.',
    ]);
    const hem = { kind: 'hem', layer: 'shell', finish: 'turned', length: 4012, allowance: 31, toEase: 0 };
    expect(lines(hem)).toHaveLength(1);
  });
});

describe('short sentences of the papers', () => {
  const { bench, client } = say;

  it('each name and figure in its place', () => {
    expect(bench.opens('a zip', 'the back')).toBe('Opens by a zip at the back.');
    expect(bench.opensTo('a zip', 'the back', '2 cm', '25 cm')).toBe(
      'Opens by a zip at the back, from 2 cm to 25 cm below the waist seam.',
    );
    expect(bench.fastened('hooks', 'a', 'b')).toBe('hooks, a to b');
    expect(client.openingWords('zip', 'side/back', 'left')).toBe('zip at side/back, on your left');
    expect(ENGLISH_PATTERN.firstPage.corrected('101 %', '98 %')).toContain(
      'drawn at 101 % across and 98 % down',
    );
    expect(ENGLISH_PATTERN.firstPage.pages(2, 13)).toBe('pages 2 to 13');
    expect(ENGLISH_PATTERN.pageOf(3, 14)).toBe('page 3 of 14');
    expect(ENGLISH_PATTERN.gap.cut('61 cm', 'C4', '60 cm')).toEqual([
      'straight on 61 cm',
      'to C4; along the',
      'grain 60 cm',
    ]);
  });
});

describe('remarks of a lay', () => {
  const plan = (own: object) =>
    ({
      layers: ['shell'],
      sections: [{ fold: 'single', from: 0, to: 4000 }],
      joins: [],
      railroaded: [],
      facts: { edgingDepth: 0, oneWay: false },
      buy: 4100,
      cutShort: false,
      ...own,
    }) as never;

  it('none where there is nothing to know', () => expect(layRemarks(plan({}), 'cm')).toEqual([]));

  it('figures in their places', () => {
    const said = layRemarks(
      plan({
        layers: ['shell', 'net'],
        cutShort: true,
        facts: { edgingDepth: 63, oneWay: true, repeatDown: 125 },
        sections: [
          { fold: 'lengthwise', from: 0, to: 2010 },
          { fold: 'single', from: 2010, to: 3330 },
          { fold: 'crosswise', from: 3330, to: 4000 },
        ],
        railroaded: ['net'],
        joins: [{ gore: 'back', layer: 'shell', parts: 3 }],
        apart: {
          layers: [
            { layer: 'shell', length: 3110 },
            { layer: 'net', length: 1220 },
          ],
          length: 4330,
          buy: 4500,
        },
      }),
      'cm',
    );
    expect(said[0]).toMatch(/^CUT SHORT/);
    expect(said.slice(1, 3)).toEqual([
      'Laid apart: shell 311 cm and net 122 cm, 450 cm to buy; this lay buys 40 cm less.',
      'First cut 6.3 cm of edging off each side inside the selvedge.',
    ]);
    expect(said).toContain('Cut the cloth straight across at 201 cm and 333 cm before folding.');
    expect(said).toContain('The grain of the net runs across this cloth.');
    expect(said.join('\n')).toContain('back of the shell is cut in 3 parts');
    expect(said.join('\n')).toContain('turn the upper layer round in its own plane');
    expect(said).toHaveLength(10);
  });

  it('of one layer, and where nothing is saved', () => {
    const apart = { layers: [{ layer: 'shell', length: 4000 }], length: 4000, buy: 4100 };
    const said = layRemarks(
      plan({
        apart,
        railroaded: ['shell'],
        joins: [{ gore: 'back', layer: 'shell', parts: 2 }],
        sections: [{ fold: 'crosswise', from: 0, to: 1 }],
      }),
      'in',
    );
    expect(said).toEqual([
      // 4000 and 4100: 157.480, 161.417
      'Laid apart: shell 157 1/2 in, 161 7/16 in to buy; this lay buys as much.',
      'Fold crosswise: right sides together, ends together.',
      'The grain of the pieces runs across this cloth.',
      'back is cut in 2 parts: join them along the grain, marks on marks, before anything else.',
    ]);
  });
});

describe('remarks on a piece', () => {
  const mm = (own: object) => say.remark(own as never).join('\n');

  it.each<[object, string]>([
    [
      { kind: 'godet', seam: 'side/back', from: 555 },
      'let into side/back, its point 55.5 cm below the waist seam',
    ],
    [
      { kind: 'flounce', sewnTo: 'shell', aboveHem: 123, ring: 6010, gatheredTo: 4020 },
      'join to a ring of 601 cm, gather it to 402 cm and sew it to the line 12.3 cm above the hem of shell',
    ],
    [
      { kind: 'flounce', sewnTo: 'shell', aboveHem: 0, ring: 4020 },
      'join to a ring of 402 cm and sew it flat to the line of the hem of shell',
    ],
    [
      { kind: 'tiers', cuts: [1610, 3220], yoke: 805 },
      'join end to end, cut off tiers of 161 cm, 322 cm; gather the first to the yoke of 80.5 cm, each other to the one above, by quarters',
    ],
    [
      { kind: 'strap', from: 'a/b', to: 'c/d', width: 16 },
      'fold it lengthwise, sew and turn it: 1.6 cm wide\nfrom a/b to c/d',
    ],
    [
      { kind: 'cape', between: { from: 'a', to: 'b' }, overArm: 211, gatheredTo: 333 },
      'gather it to 33.3 cm, sew it to the upper edge from a to b, 21.1 cm of it free over the arm',
    ],
    [
      {
        kind: 'waistband',
        width: 36,
        sewn: 742,
        overlap: 31,
        shaped: false,
        places: [
          { name: 'side/back', at: 147 },
          { name: 'front/side', at: 269 },
        ],
      },
      '74.2 cm and 3.1 cm to overlap long; fold it lengthwise: 3.6 cm wide\nfrom its end: side/back 14.7 cm, front/side 26.9 cm',
    ],
    [
      { kind: 'placket', opening: 257, width: 31 },
      'one strip down one edge of the opening and up the other, 25.7 cm each\nfolded over it: 3.1 cm wide',
    ],
    [
      { kind: 'pocket', seam: 'side/back', opening: 151 },
      'let into side/back: open 15.1 cm between its notches',
    ],
    [
      { kind: 'loops', width: 6, count: 13, length: 47 },
      'one strip, sewn and turned 0.6 cm wide, then cut into 13 of 4.7 cm',
    ],
    [
      { kind: 'binding', strip: { width: 41, length: 2510, joins: 1 }, edge: 'hem' },
      'cut at 45° to the thread, as one spiral or in strips: 251 cm of bias 4.1 cm wide for the hem, 1 join',
    ],
    [{ kind: 'gathers', from: 2222, to: 741 }, 'gather the top from 222.2 cm to 74.1 cm'],
    [
      { kind: 'top-pleats', from: 2222, to: 741, count: 12, depth: 33, towards: 'back' },
      'pleat the top from 222.2 cm to 74.1 cm: 12 pleats, each fold 3.3 cm deep, towards the back',
    ],
    [
      { kind: 'dart', name: 'd1', takesIn: 22, length: 91, towards: 'back' },
      'd1: takes in 2.2 cm at the waist, 9.1 cm long, folded to the back',
    ],
    [
      { kind: 'wrap', at: 'centre-back', over: 'left', atWaist: 124, atHem: 153 },
      'wraps 12.4 cm past centre-back at the waist, 15.3 cm at the hem: that line is marked; her left side lies on top',
    ],
    [
      { kind: 'ties', length: 951, width: 26 },
      'fold it lengthwise, sew and turn it: 95.1 cm long, 2.6 cm wide',
    ],
    [{ kind: 'over-seams', seams: ['a/b', 'b/c'] }, 'cut over seams, marked from the front: a/b, b/c'],
    [
      { kind: 'flounce', sewnTo: 'shell', aboveHem: 0, ring: 4020, open: true },
      'join to a length of 402 cm and sew it flat to the line of the hem of shell',
    ],
    [
      { kind: 'kick-pleat', name: 'k', at: 'centre-back', aboveHem: 203, depth: 52 },
      'k: kick pleat at centre-back, from 20.3 cm above the hem, each fold 5.2 cm deep',
    ],
    [
      { kind: 'pleat', name: 'p', lies: 'box', at: 'a/b', fromSeam: 33, depth: 41, stitchedDown: 152 },
      'p: box pleat 3.3 cm from a/b as sewn, each fold 4.1 cm deep, stitched down 15.2 cm',
    ],
    [
      { kind: 'tucks', count: 2, width: 21, longer: 84, folds: [60, 140] },
      '2 growth tucks 2.1 cm wide, cut 8.4 cm longer: fold 6 cm, 14 cm above the hem line',
    ],
    [
      { kind: 'yoke', of: 'net', round: 961 },
      'of net: joined to a ring of 96.1 cm, its lower edge takes the first tier',
    ],
    [
      { kind: 'hem-facing', faces: 'shell', depth: 71 },
      'faces the hem of shell, 7.1 cm deep\ncut smaller at the hem: lay raw edges level',
    ],
  ])('%j', (own, wanted) => expect(mm(own)).toBe(wanted));
});
