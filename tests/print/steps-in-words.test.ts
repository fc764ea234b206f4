import { describe, expect, it } from 'vitest';
import { english } from '../../src/words/english.ts';

/**
 * Every step of the making in words, of works made by hand: every name another letter and every figure another, so that
 * each stands where it belongs. A line that ends in … is told by its beginning; holds stand last.
 */

const words = english('mm');
const said = (work: object): string[] => {
  const { does, notes, holds } = words.step(work as never);
  return [does, ...notes, ...holds.map((line) => `Hold: ${line}`)];
};
const lines = (all: readonly string[]) =>
  all.map((line) =>
    line.endsWith('…')
      ? expect.stringMatching(new RegExp(`^${line.slice(0, -1).replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}`))
      : line,
  );
type Row = [work: object, ...lines: string[]];
const asks = (rows: readonly Row[]) =>
  it.each(
    rows.map(([work, ...told], i) => [`${i + 1} ${(work as { kind: string }).kind}`, work, told] as const),
  )('%s', (_, work, told) => expect(said(work)).toEqual(lines(told)));

describe('a bodice', () => {
  const strap = { kind: 'strap', name: 'A', from: 'B', to: 'C', length: 401, width: 22 };
  const cape = { kind: 'cape', name: 'A', from: 'B', to: 'C', gathered: true };
  const closing = { at: 'B', side: 'left', kind: 'zip', fromEdge: 11 };
  const lacing = { eyelets: 13, pitch: 25, lace: 3405 };
  asks([
    [
      { kind: 'toile-bodice', laced: true },
      'Sew the bodice in calico first, with its bones taped on, and fit it on her, laced.',
      'Pin what is too wide…',
      'Hold: no cloth is cut…',
    ],
    [
      { kind: 'toile-bodice', laced: false },
      'Sew the bodice in calico first, with its bones taped on, and fit it on her.',
      'Pin…',
      'Hold: no…',
    ],
    [
      { kind: 'bodice-seams', layers: ['A', 'B'] },
      'Sew the panels of the bodice, each layer by itself: A and B.',
      'Waist marks on…',
      'Press every seam open…',
    ],
    [
      {
        kind: 'casings',
        layer: 'A',
        width: 9,
        bones: [
          { along: 'b/c', side: 'left', casing: 303, count: 2 },
          { along: 'd/e', casing: 314, count: 1 },
        ],
      },
      'Sew the casings to the A, over its open seams, for bones 9 mm wide.',
      'Left b/c 303 mm (2) and d/e 314 mm, from edge to edge.',
      'Close their lower ends…',
    ],
    [
      { kind: 'bodice-layers', layers: ['A', 'B'], tape: 805, lining: 'C' },
      'Lay A and B on each other, right sides out, and baste them as one along every edge.',
      'Tack the waist tape, 805 mm with its ends, to the seams at the waist: it takes the strain.',
      'The C stays apart: it goes in last.',
    ],
    [
      { kind: 'bodice-layers', layers: ['A'], tape: 805 },
      'Stay-stitch the edges of the A.',
      'Tack the waist tape, 805 mm…',
    ],
    [
      { kind: 'bodice-close' },
      'Leave the seam open at which she gets in, or decide now how the bodice closes.',
    ],
    [{ kind: 'bodice-close', closing }, 'Set the zip into the left B.'],
    [
      { kind: 'bodice-close', closing: { ...closing, kind: 'hooks', side: undefined } },
      'Set the hooks and eyes into the B.',
    ],
    [{ kind: 'bodice-close', closing: { ...closing, kind: 'busk' } }, 'Set the busk into the left B.'],
    [
      { kind: 'bodice-close', closing: { ...closing, kind: 'lacing', modesty: 61 }, lacing },
      'Turn in the edges at the left B and set 13 eyelets a side, 25 mm apart, 11 mm from the edge.',
      'Try one on a scrap…',
      'Lace: 3405 mm, with what hangs free for tying.',
      'The panel behind the lacing, 61 mm wide, is sewn to one edge only.',
    ],
    [{ kind: 'bodice-close', closing, lacing }, 'Turn in…', 'Try…', 'Lace…'],
    [
      { kind: 'fit-bodice', beside: ['A', 'B'] },
      'Fit bodice and skirt together on her: the waist seam, the upper edge, the closing.',
      'Pin the A and B on and move them until they sit.',
      'Hold: the upper edge is not closed…',
    ],
    [{ kind: 'fit-bodice', beside: [] }, 'Fit bodice…', 'Hold: the…'],
    [
      {
        kind: 'bones',
        material: 'flat-steel',
        clear: 12,
        bones: [
          { along: 'b/c', side: 'right', length: 281, count: 2 },
          { along: 'd/e', length: 292, count: 1 },
        ],
      },
      'Push the flat steels into their casings from the upper edge, their ends rounded or tipped.',
      'Right b/c 2 × 281 mm and d/e 1 × 292 mm.',
      'Each ends 12 mm or more clear of the waist seam and of the upper edge.',
    ],
    [
      { kind: 'bones', material: 'spiral-steel', clear: 1, bones: [] },
      'Push the spiral steels…',
      '.',
      'Each ends 1 mm…',
    ],
    [{ kind: 'bones', material: 'synthetic', clear: 1, bones: [] }, 'Push the bones…', '.', 'Each…'],
    [
      { kind: 'upper-facing', facing: 'A', depth: 52 },
      'Join the pieces of the A, 52 mm deep, round as the panels are joined; press the seams open.',
      'Neaten its inner edge.',
    ],
    [
      { kind: 'upper-edge', finish: 'bound', length: 861 },
      'Bind the upper edge, 861 mm round, over the ends of the casings.',
    ],
    [
      { kind: 'upper-edge', finish: 'faced', length: 861 },
      'Face the upper edge, 861 mm round, and close the casings under the facing.',
    ],
    [
      { kind: 'upper-edge', finish: 'faced', length: 861, facing: 'A' },
      'Lay the A on the upper edge, 861 mm round, right sides together, its seams…',
    ],
    [
      { kind: 'upper-edge', finish: 'turned', length: 861 },
      'Turn the upper edge down, 861 mm round, over the ends of the casings.',
    ],
    [
      { kind: 'bodice-lining', layer: 'A' },
      'Fell the A to the upper edge, the closing and the waist seam by hand, last of all.',
    ],
    [
      strap,
      'Make the A, 22 mm wide: fold, sew, turn and press; catch it in the upper edge at B and C.',
      '401 mm from edge to edge as drafted…',
    ],
    [
      {
        ...cape,
        hems: [
          { layer: 'D', finish: 'raw', edging: 'E' },
          { layer: 'F', finish: 'rolled' },
        ],
      },
      'Make the A and gather it to the upper edge from B to C, caught in its finish.',
      'Hems and free edges first: D raw and F rolled.',
      'Then the E along the hem of the D, on both sides of her.',
      'Net does not fray: a clean cut is its hem.',
    ],
    [
      { ...cape, from: undefined, gathered: false, hems: [{ layer: 'F', finish: 'turned' }] },
      'Make the A and sew it to its edge, caught in its finish.',
      'Hems and free edges first: F turned.',
    ],
    [{ ...cape, to: undefined, gathered: false, hems: [] }, 'Make the A and sew it to its edge…', 'Hems…'],
  ]);
});

describe('folds', () => {
  const pleat = { name: 'B', at: 'c/d', foldDepth: 31, stitchedDown: 0 };
  const work = (kind: string, own: object = {}, more: object = {}) => ({
    kind: 'pleat',
    layer: 'A',
    places: 1,
    folds: 1,
    pleat: { ...pleat, kind, ...own },
    ...more,
  });
  const dart = (name: string, gore: string, towards: string) => ({
    name,
    gore,
    towards,
    takesIn: 21,
    length: 92,
  });
  const tucks = { kind: 'tucks', layer: 'A', toEase: 0.9 };
  const notDown = 'It is not stitched down: baste it closed from the waist seam to the hem.';
  const now = 'Press it now; its hem is turned up afterwards, folded as it hangs.';
  asks([
    [
      work('knife', { towards: 'back' }),
      'Lay the A’s B, a knife pleat at c/d: its fold 31 mm deep, from its outer edge to its inner edge.',
      'Bring its outer fold to its placement line, as the arrow points.',
      'Its outer fold points to the back.',
      notDown,
      now,
    ],
    [
      work('inverted', { gore: 'E', fromSeam: 42, stitchedDown: 153, hem: 'first' }, { places: 4, folds: 2 }),
      'Lay the A’s B (4), an inverted pleat on the E, 42 mm from c/d along the waist seam: each of its 2 folds 31 mm deep, from its outer edge to its inner edge.',
      'Bring both outer folds to their placement lines, where they meet.',
      'Stitch it down from the waist seam for 153 mm; below, baste it closed to the hem.',
      'Its hem is sewn first, opened out flat; only then is it pressed for good.',
    ],
    [
      work('box'),
      'Lay the A’s B, a box pleat…',
      'Bring both outer folds to their placement lines, away from each other…',
      notDown,
      now,
    ],
    [
      work('kick', { aboveHem: 304 }),
      'Lay the A’s B, a kick pleat at c/d…',
      'The seam goes on round the outer edges…',
      'It begins 304 mm above the hem.',
      now,
    ],
    [
      {
        kind: 'darts',
        layer: 'A',
        darts: [dart('B', 'C', 'front'), { ...dart('D', 'E', 'back'), takesIn: 13, length: 104 }],
      },
      'Sew the A’s darts: B on the C, 21 mm at the waist and 92 mm long and D on the E, 13 mm at the waist and 104 mm long.',
      'Leg on leg…',
      'Fold B on the C to the front, D on the E to the back, each, as its cut edge was shaped for…',
      'Steam the point over a ham.',
    ],
    [
      { kind: 'darts', layer: 'A', darts: [dart('B', 'C', 'front')] },
      'Sew…',
      'Leg…',
      'Fold each to the front, as…',
      'Steam…',
    ],
    [
      { kind: 'darts', layer: 'A', darts: [dart('B', 'C', 'back')] },
      'Sew…',
      'Leg…',
      'Fold each to the back, as…',
      'Steam…',
    ],
    [
      { ...tucks, tucks: { count: 1, width: 14, aboveHem: 105, apart: 56 } },
      'Sew the A’s growth tuck: fold on each fold line, wrong sides together, and stitch 14 mm from the fold.',
      'The lowest is stitched 105 mm above the finished hem; press them down.',
      'Long stitches and no knots…',
    ],
    [
      { ...tucks, tucks: { count: 3, width: 14, aboveHem: 105, apart: 56 }, toEase: 17 },
      'Sew the A’s growth tucks, 3 of them: fold…',
      'The lowest is stitched 105 mm above the finished hem, the next 56 mm above it; press them down.',
      'Long stitches…',
      'On this flare the lower line of each is 17 mm longer than the upper, all round: ease it in.',
    ],
    [
      { kind: 'press-pleats', layer: 'A', pleats: ['B', 'C'] },
      'Press the A’s pleats for good, hem and all: B and C.',
      'Fold on the old creases…',
      'Inside, edge-stitch…',
    ],
  ]);
});

describe('from hanging to the hand-over', () => {
  const hang = { kind: 'hang', bias: [], onBias: [], flounces: [], petticoat: false };
  const level = { kind: 'level', train: false, petticoat: false, flounces: [], atHem: [], overskirts: [] };
  const day = 'Hold: at least 24 hours, before the hem is levelled.';
  const walked = 'Hold: she has walked…';
  const hem = { kind: 'hem', layer: 'A', length: 4210, allowance: 23, edged: false };
  const edging = {
    kind: 'edging',
    name: 'A',
    layer: 'B',
    start: 'centre-back',
    curved: false,
    hollow: [],
    own: false,
  };
  asks([
    [hang, 'Hang the gown.', day],
    [
      { ...hang, bias: ['A', 'B'], flounces: ['C'], petticoat: true },
      'Hang the gown over its petticoat, with the C on it.',
      'The bias edges drop: A and B.',
      day,
    ],
    [
      { ...hang, bias: ['A'], onBias: [{ layer: 'B', drop: 8 }, { layer: 'C' }] },
      'Hang the gown.',
      'The B is all on the bias: its own weight draws it up to 8 mm longer at once, and it goes on growing as it hangs, by how much no figure tells.',
      'The C is all on the bias: it goes on growing as it hangs, by how much no figure tells.',
      'Hang it by its whole waist…',
      day,
    ],
    [
      level,
      'Level the hem on her, in the shoes, measuring from the floor up.',
      'A pin every 7.5 cm all round; write down…',
      walked,
    ],
    [
      {
        ...level,
        offFloor: 26,
        train: true,
        petticoat: true,
        flounces: ['A', 'B'],
        atHem: ['B'],
        overskirts: ['C'],
      },
      'Level the hem on her, in the shoes, over the petticoat, measuring from the floor up.',
      'A pin every 7.5 cm all round, 26 mm off the floor as far round as the hem leaves it; write…',
      'The hem is that of the B.',
      'Level the A at its own hem too.',
      'Then the C, fastened on over the skirt.',
      'Lay the train out…',
      walked,
    ],
    [
      { ...level, offFloor: 26, flounces: ['B'], atHem: ['B'] },
      'Level…',
      'A pin every 7.5 cm all round, 26 mm off the floor; write…',
      'The hem is that of the B.',
      walked,
    ],
    [
      {
        kind: 'trim',
        layers: [
          { name: 'a', below: 22, shorter: 13 },
          { name: 'b', below: 0, shorter: 0 },
        ],
        roughCut: true,
      },
      'Cut every layer to the levelled line and its own allowance.',
      'A 13 mm shorter, 22 mm below its hem line; b on its hem line.',
      'The extra at the hem comes off now.',
    ],
    [
      { kind: 'trim', layers: [{ name: 'a', below: 22, shorter: 0 }], roughCut: false },
      'Cut every…',
      'A 22 mm below its hem line.',
    ],
    [
      { ...hem, finish: 'turned', toEase: 7 },
      'Turn up the A’s hem 23 mm, 4210 mm round, and sew it.',
      '7 mm has to be eased away along the turned edge: gather it on a thread and steam it in.',
    ],
    [{ ...hem, finish: 'turned', toEase: 0 }, 'Turn up the A’s hem 23 mm, 4210 mm round, and sew it.'],
    [{ ...hem, finish: 'turned' }, 'Turn up the A’s hem…'],
    [{ ...hem, finish: 'faced' }, 'Face the A’s hem, 4210 mm round.', 'Cut the facing to the levelled edge…'],
    [
      { ...hem, finish: 'faced', facing: 'B' },
      'Face the A’s hem, 4210 mm round.',
      'Lay the B on right sides together…',
    ],
    [{ ...hem, finish: 'rolled' }, 'Roll the A’s hem, 4210 mm round, by hand or with the foot.'],
    [{ ...hem, finish: 'raw' }, 'Cut the A’s edge clean in one sweep, 4210 mm round; it stays raw.'],
    [{ ...hem, finish: 'raw', edged: true }, 'Cut the A’s edge clean: the edging covers it.'],
    [{ kind: 'part-hem', name: 'A', layers: [{ name: 'B', finish: 'rolled' }] }, 'Roll the A’s hem.'],
    [
      {
        kind: 'part-hem',
        name: 'A',
        layers: [
          { name: 'B', finish: 'turned' },
          { name: 'C', finish: 'faced' },
        ],
      },
      'Finish the A’s hems: turn up and sew that of the B and face that of the C.',
    ],
    [{ kind: 'part-hem', name: 'A', layers: [{ name: 'B', finish: 'raw' }] }, 'Cut clean the A’s hem.'],
    [{ kind: 'part-hem', name: 'A', layers: [{ name: 'B', finish: 'bagged' }] }, 'Bag the A’s hem.'],
    [
      { kind: 'bag-hem', inner: 'A', outer: 'B', length: 4010, allowance: 12 },
      'Bag the hems: A and B right sides together, seam on seam, 4010 mm round.',
      'Sew at 12 mm, clip the curve, trim in steps.',
    ],
    [
      { kind: 'turn-through', inner: 'A', outer: 'B' },
      'Turn A and B to the right side. The spec leaves no gap for it…',
      'Roll the B 2 to 3 mm to the inside and press; then close the gap by hand.',
    ],
    [
      { kind: 'turn-through', inner: 'A', outer: 'B', gap: { layer: 'C', at: 'd/e', length: 151 } },
      'Turn the skirt through the gap in the C’s d/e (151 mm).',
      'Roll the B…',
    ],
    [
      edging,
      'Lay the A round the B, its outer edge on the hem line, starting at centre back.',
      'Cut round a motif and lap the ends where it began.',
    ],
    [
      {
        ...edging,
        side: 'left',
        start: 'c/d',
        repeats: 36,
        ease: 4,
        curved: true,
        hollow: ['E', 'F'],
        own: true,
      },
      'Lay the A round the B, its outer edge on the hem line, starting at left c/d: 36 repeats.',
      '4 mm in all to ease in evenly; eased, never stretched.',
      'Its inner edge is too long where the hem bulges…',
      'In the hollow of E and F ease its outer edge instead, and never stretch the inner.',
      'Cut round a motif and lap the ends where it began; hide the join between the two edges of the cloth in a seam.',
    ],
    [
      { kind: 'cut-behind', layer: 'A', edging: 'B' },
      'Cut the A away behind the B, along the stitches that hold its motifs.',
      'Lift it off…',
    ],
    [
      { kind: 'level-scallops', edging: 'A', hang: { highPoints: 41, lowPoints: 22 } },
      'Level the A by its scallops’ high points, now that they are on: 41 mm off the floor, the low points 22 mm.',
      'The eye follows…',
      'Hold: she has stood…',
    ],
    [
      { kind: 'level-scallops', edging: 'A' },
      'Level the A by its scallops’ high points, now that they are on.',
      'The eye…',
      'Hold: she…',
    ],
    [
      { kind: 'fit', bustle: true },
      'Last fitting: she walks…',
      'Pin the bustle up and let her dance in it.',
      'Hold: nothing more is sewn before she is content with hem and bustle.',
    ],
    [
      { kind: 'fit', bustle: false },
      'Last fitting: she walks…',
      'Hold: nothing more is sewn before she is content with the hem.',
    ],
    [
      { kind: 'bustle', over: true, number: 1 },
      'Sew the bustle, 1 point as pinned: loops at the pick-ups, hooks or buttons outside.',
      'Through the seam allowances…',
    ],
    [
      { kind: 'bustle', over: false, number: 5 },
      'Sew the bustle, 5 points as pinned: ribbons in pairs on the inside, numbered from the centre out.',
      'Through…',
    ],
    [
      { kind: 'fell-lining', layers: ['A', 'B'], at: 'c/d', side: 'right' },
      'Fell the A and B to the closure at right c/d by hand, last of all.',
    ],
    [{ kind: 'finish' }, 'Press from the inside…'],
  ]);
});

describe('what finishes', () => {
  const waist = {
    kind: 'own-waist',
    layers: ['A', 'B'],
    shaped: false,
    width: 36,
    overlap: 0,
    wraps: false,
    sewn: 741,
  };
  const inside = 'A firm interfacing…';
  const slit = { kind: 'slit', seam: 'a/b', side: 'left', from: 612 };
  asks([
    [
      { ...waist, finish: 'band' },
      'Sew the waistband to the waist edge of the A and B as one, 741 mm round: its marks on the seams and centres.',
      'Fold it lengthwise, close its ends, and fell its inside down: 36 mm wide.',
      inside,
    ],
    [
      { ...waist, finish: 'band', layers: ['A'], shaped: true, overlap: 33, grams: 812 },
      'Sew the waistband to the waist edge of the A, 741 mm round: its marks…',
      'Sew its inside to it along the upper edge, turn, and fell the inside down: 36 mm wide.',
      '33 mm of it runs on past the opening: a hook and bar, or a button.',
      inside,
      'It carries the skirt, 812 g without edging and what she wears under it.',
    ],
    [
      { ...waist, finish: 'band', overlap: 312, wraps: true },
      'Sew the waistband to the waist edge of the A and B as one, 1053 mm from edge to edge: its…',
      'Fold it…',
      'Its ends are level with the edges of the wrap.',
      inside,
    ],
    [
      { ...waist, finish: 'facing' },
      'Face the waist edge of the A and B as one, 741 mm round: join…',
      'Cut smaller than the edge, it draws the seam inside; catch it to the seams, 36 mm deep, and to the closure.',
      'A stay tape…',
    ],
    [
      { ...waist, finish: 'facing', wraps: true, overlap: 9, grams: 812 },
      'Face the waist edge of the A and B as one, 750 mm from edge to edge: join…',
      'Cut smaller than the edge, it draws the seam inside; catch it to the seams, 36 mm deep, and to the edges of the wrap.',
      'A stay tape…',
      'It carries the skirt, 812 g…',
    ],
    [
      { ...waist, finish: 'stay', layers: ['A'] },
      'Sew a petersham 36 mm wide along the waist edge of the A, 741 mm round, turn it inside and catch it to the seams.',
      'Shape it with the iron first…',
    ],
    [
      slit,
      'Finish the slit in the left a/b, from 612 mm below the waist seam down.',
      'Turn its allowances in…',
      'Fasten the seam off well…',
    ],
    [
      { ...slit, side: undefined, facing: { name: 'C', depth: 43 }, stay: 'D' },
      'Finish the slit in the a/b, from 612 mm…',
      'Sew the C, 43 mm wide, to both edges…',
      'Lay the D over its upper end…',
    ],
    [
      { kind: 'pocket', seam: 'a/b', side: 'right', from: 82, to: 233, layer: 'C', outermost: 'D' },
      'Sew the C to the D’s right a/b, from 82 mm to 233 mm below the waist seam, one side of the bag to each edge.',
      'A stay tape along the front edge…',
      'When the seam is sewn…',
    ],
    [
      { kind: 'pocket', seam: 'a/b', from: 82, to: 233, layer: 'C', outermost: 'D' },
      'Sew the C to the D’s a/b, from…',
      'A stay…',
      'When…',
    ],
    [
      { kind: 'loops', name: 'A', count: 13, length: 47, width: 6 },
      'Make the A: sew and turn the strip, 6 mm wide, and cut it into 13 of 47 mm.',
      'Each goes on where the fitting shows.',
    ],
    [
      { kind: 'bias', name: 'A', cloth: 'B', width: 34, length: 4210 },
      'Cut the A on the bias from its block of B: 4210 mm in all, 34 mm wide.',
      'As one spiral…',
      'Join ends…',
    ],
    [
      { kind: 'bias', name: 'A', cloth: 'B', length: 4210 },
      'Cut the A on the bias from its block of B: 4210 mm in all.',
      'As one…',
      'Join…',
    ],
    [
      { kind: 'facing', facing: 'A', faces: 'B', depth: 61 },
      'Join the pieces of the A, 61 mm deep, as the gores of the B are joined; press the seams open.',
      'Neaten its inner edge.',
      'Where it is cut over a seam…',
    ],
  ]);
});

describe('from the scraps to the marked pieces', () => {
  const cut = {
    kind: 'cut',
    cloth: 'a',
    layers: ['b', 'c'],
    strips: [],
    oneWay: false,
    bias: [],
    stretch: false,
    slippery: false,
    roughCut: [],
  };
  const mark = { kind: 'mark', sheers: [], gaps: [], bustle: [] };
  const marks = 'Mark every piece before it is lifted: notches, centre front, centre back.';
  asks([
    [
      {
        kind: 'test-scraps',
        cloths: [
          { name: 'A', shrinkage: 0 },
          { name: 'B', shrinkage: 0.03 },
          { name: 'C', shrinkage: 0.045 },
        ],
      },
      'On a scrap of each cloth…',
      'Cloths: A, B and C. Does the mark…',
      'Measure a square of 20 cm of each…',
      'Counted on: B 3 % and C 4.5 %. If it is more, buy more before cutting.',
    ],
    [{ kind: 'test-scraps', cloths: [{ name: 'A', shrinkage: 0 }] }, 'On…', 'Cloths: A. Does…', 'Measure…'],
    [
      { kind: 'shrink', cloth: 'A', shrinkage: 0.03 },
      'Shrink the A before it is laid; 3 % is counted on in the length to buy.',
      'Press it flat…',
    ],
    [
      { kind: 'cut-own-edges', cloth: 'A', edging: 'B', depth: 33 },
      'Cut the B off both edges of the A first, inside the selvedge, 33 mm deep.',
      'The lay is planned…',
    ],
    [
      { kind: 'cut-own-edges', cloth: 'A', edging: 'B' },
      'Cut the B off both edges of the A first, inside the selvedge.',
      'The…',
    ],
    [cut, 'Cut the a by its lay: b and c.'],
    [{ ...cut, layers: ['a'] }, 'Cut the a by its lay.'],
    [{ ...cut, layers: ['b'] }, 'Cut the a by its lay: b.'],
    [
      {
        ...cut,
        strips: ['d', 'e'],
        oneWay: true,
        bias: ['f', 'g'],
        stretch: true,
        slippery: true,
        roughCut: [
          { layers: ['b', 'c'], gores: ['h'], depth: 31 },
          { layers: ['c'], gores: ['i', 'j'], depth: 42 },
        ],
      },
      'Cut the a by its lay: b and c.',
      'D and e: strips, cut as one run.',
      'One way: all tops point the same way.',
      'F and g: on the bias…',
      'Slippery…',
      'Let it lie loose…',
      'H is cut 31 mm longer at the hem; that comes off after hanging.',
      'I and j of c are cut 42 mm longer at the hem; that comes off after hanging.',
    ],
    [mark, marks],
    [
      {
        ...mark,
        sheers: ['A', 'B'],
        zipEnds: { at: 'c/d', side: 'left', starts: 21, stops: 232 },
        gaps: [
          { layer: 'E', at: 'f/g', length: 151 },
          { layer: 'H', at: 'centre-back', from: 310, length: 142 },
        ],
        bustle: [
          { seam: 'i/j', side: 'right', anchor: 61, pickUp: 702 },
          { gore: 'K', across: 0.25, anchor: 62, pickUp: 803 },
        ],
      },
      marks,
      'Opening at left c/d: start 21 mm and stop 232 mm below the waist seam.',
      'Gap in the E at f/g: 151 mm long.',
      'Gap in the H at centre back: from 310 mm to 452 mm below the waist seam.',
      'Bustle, mm below the waist seam: i/j, her right, anchor 61, pick-up 702; K, 25 % across anchor 62, pick-up 803.',
      'On A and B mark inside the allowance, with thread.',
    ],
    [
      { ...mark, zipEnds: { at: 'c/d', starts: 0, stops: 232 } },
      marks,
      'Opening at c/d: stop 232 mm below the waist seam.',
    ],
    [{ kind: 'stay-edges', tapes: [] }, 'Stay-stitch the waist edge…'],
  ]);
});

describe('from the first seam to the waist', () => {
  const sew = {
    kind: 'sew-seams',
    layer: 'A',
    french: false,
    stretch: false,
    bias: false,
    seams: [
      { name: 'b/c', copies: 2 },
      { name: 'centre-back', copies: 1 },
    ],
    godets: [],
    slits: [],
    pockets: [],
  };
  const first = 'Sew the seams of the A by itself, from the front round: b/c (2) and centre back.';
  const pleats = (towards: string | undefined, folds: object[]) => ({
    kind: 'gather',
    layer: 'A',
    fullness: { by: 'pleats', towards },
    folds,
    cloth: 1501,
    edge: 742,
  });
  const flounce = {
    name: 'A',
    sewnTo: { name: 'B' },
    aboveHem: 121,
    kind: 'straight',
    fullness: 1.5,
    depth: 203,
  };
  const opening = { kind: 'finish-opening', at: 'c/d', side: 'left', beside: 'sewn' };
  const waist = {
    kind: 'join-waist',
    layers: ['A'],
    plies: 5,
    crossing: 9,
    secondRow: 3,
    panelled: true,
    gathered: [],
    pleated: [],
    stretched: [],
  };
  const plies = '5 plies under the needle, 9 where pressed-open seams cross: trim the allowances in steps.';
  const zip = { kind: 'close', closure: 'zip', at: 'c/d', side: 'left', layers: ['A'], starts: 0 };
  const over = {
    name: 'A',
    edges: 'faced',
    fastened: 'hooks',
    from: 'centre-front',
    quickRelease: false,
    gown: { layers: [{ name: 'B' }, { name: 'C' }] },
  };
  asks([
    [sew, first, 'One notch on a front edge…', 'Press each seam as sewn, then open.'],
    [
      {
        ...sew,
        french: true,
        stretch: true,
        bias: true,
        seams: [{ name: 'b/c', copies: 2, withLayer: 'D' }, ...sew.seams.slice(1)],
        openAbove: { at: 'centre-back', stops: 234 },
        gap: { at: 'b/c', length: 155 },
        slits: [{ seam: 'e/f', side: 'left', from: 616 }],
        pockets: [
          { seam: 'g/h', side: 'right', from: 87, to: 238 },
          { seam: 'g/h', from: 89 },
        ],
        godets: [{ seam: 'i/j', from: 510, name: 'K' }],
      },
      first,
      'One notch…',
      'French seams: wrong sides together first…',
      'It gives…',
      'On the bias…',
      'At b/c it is sewn to the D.',
      'Hold: leave centre back open down to 234 mm below the waist seam; sew only what lies below.',
      'Hold: leave the A’s b/c open 155 mm to turn the hem.',
      'Hold: leave the left e/f open from 616 mm below the waist seam down, for the slit.',
      'Hold: leave the right g/h open from 87 mm to 238 mm below the waist seam, for the pocket.',
      'Hold: leave g/h open from 89 mm to 89 mm below the waist seam, for the pocket.',
      'Hold: leave i/j open from 510 mm below the waist seam down, for the K.',
    ],
    [
      { ...sew, openAbove: { at: 'b/c', side: 'right' }, slits: [{ seam: 'e/f', from: 616 }] },
      first,
      'One…',
      'Press…',
      'Hold: leave the right b/c open for the closure.',
      'Hold: leave e/f open from 616 mm…',
    ],
    [
      { ...sew, openAbove: { at: 'b/c', side: 'right', stops: 9 } },
      first,
      'One…',
      'Press…',
      'Hold: leave the right b/c open down to 9 mm…',
    ],
    [
      { kind: 'godet', layer: 'A', name: 'B', seam: 'c/d', copies: 2, side: 511 },
      'Let the B into the A’s c/d (2): from the point down, first one side, then the other, 511 mm each.',
      'Pivot exactly…',
    ],
    [
      { kind: 'godet', layer: 'A', name: 'B', seam: 'c/d', copies: 1, side: 511 },
      'Let the B into the A’s c/d: from…',
      'Pivot…',
    ],
    [
      pleats('back', [
        { gore: 'B', depth: 17 },
        { gore: 'C', depth: 17 },
      ]),
      'Lay the pleats of the A’s waist edge, each fold 17 mm deep, towards the back, from 1501 mm to 742 mm; baste across the top.',
      'Measure the pleated edge…',
    ],
    [
      pleats('front', [
        { gore: 'B', depth: 17 },
        { gore: 'C', depth: 18 },
        { gore: 'B', depth: 17 },
      ]),
      'Lay the pleats of the A’s waist edge, each fold 17 mm deep on the B and 18 mm deep on the C, towards the front, from…',
      'Measure…',
    ],
    [
      pleats('box', [{ gore: 'B', depth: 17 }]),
      'Lay the pleats of the A’s waist edge, each fold 17 mm deep, as box pleats, from…',
      'Measure…',
    ],
    [
      pleats(undefined, [{ gore: 'B', depth: 17 }]),
      'Lay the pleats of the A’s waist edge, each fold 17 mm deep, from…',
      'Measure…',
    ],
    [
      { kind: 'gather', layer: 'A', fullness: { by: 'gathers' }, folds: [], cloth: 1501, edge: 742 },
      'Gather the A’s waist edge from 1501 mm to 742 mm, quarter marks on quarter marks.',
      'Two rows of long stitches…',
    ],
    [
      { kind: 'tiers', tiers: { name: 'A', tiers: [1001, 1502, 2253], yoke: 961 } },
      'Make the A: join the strips into one run, cut it into tiers of 1001 mm, 1502 mm and 2253 mm, and close each into a ring.',
      'First finish the lower edge of the lowest…',
      'Gather each tier to the one above, the top one to the yoke of 961 mm; quarter marks on quarter marks.',
    ],
    [
      { kind: 'tiers', tiers: { name: 'A', tiers: [1], yoke: 961, yokeLayer: { name: 'B' } } },
      'Make…',
      'First…',
      'Gather each tier to the one above, the top one to the B, closed into a ring of 961 mm; quarter…',
    ],
    [
      { kind: 'set-stones', name: 'A', layer: 'B', count: 350, gross: 3, scattered: true, seat: true },
      'Set the A on the B by its placing chart: 350, 3 gross to have.',
      'Lay them out first…',
    ],
    [
      { kind: 'set-stones', name: 'A', layer: 'B', count: 350, scattered: false, seat: false },
      'Set the A on the B by its placing chart: 350.',
      'Pin them first…',
      'Where she sits…',
    ],
    [
      { kind: 'flounce', flounce, open: false },
      'Sew the A to the B, 121 mm above its hem line.',
      'Join it into a ring and gather it 1.5 to 1, quarters on quarters.',
      'Where the hem below it moves…',
      'It hangs 203 mm deep; its own hem…',
    ],
    [
      { kind: 'flounce', flounce: { ...flounce, aboveHem: 0, kind: 'circular' }, open: true },
      'Sew the A to the B’s hem line.',
      'Join it into one length; clip its inner edge…',
      'It is the B’s hem: that has no other.',
      'It hangs 203 mm deep…',
    ],
    [
      { kind: 'flounce', flounce, open: true },
      'Sew…',
      'Join it into one length and gather…',
      'Where…',
      'It…',
    ],
    [
      { kind: 'flounce', flounce: { ...flounce, kind: 'circular' }, open: false },
      'Sew…',
      'Join it into a ring; clip…',
      'Where…',
      'It…',
    ],
    [
      { kind: 'overskirt', overskirt: over },
      'Make the A by itself: seams, its end edges faced, and a band at its top.',
      'Layers: B and C.',
      'It fastens with hooks from centre front to centre back.',
      'Its hem stays open…',
    ],
    [
      {
        kind: 'overskirt',
        overskirt: {
          ...over,
          to: 'c/d',
          quickRelease: true,
          gown: { ...over.gown, edgeFacing: { layer: { name: 'E' } } },
        },
      },
      'Make the A by itself: seams, its end edges faced with the E, and…',
      'Layers…',
      'It fastens with hooks from centre front to c/d.',
      'Its hem…',
      'Quick release…',
    ],
    [
      opening,
      'Decide what finishes the skirt’s raw edges at left c/d, below the sewn bodice edge: a placket…',
      'Hold: both edges clean before the waist is sewn.',
    ],
    [
      { ...opening, beside: 'bound', finish: 'guard', piece: 'E', stops: 235 },
      'Finish the skirt’s raw edges at left c/d with a guard (cut as E), down to 235 mm below the waist seam.',
      'The bodice edge above is bound: nothing there will cover a raw edge.',
      'Fold and close it, and baste it behind one edge…',
      'Hold: both…',
    ],
    [
      { ...opening, finish: 'placket' },
      'Finish the skirt’s raw edges at left c/d with a placket.',
      'Hold: both…',
    ],
    [
      { kind: 'baste-as-one', layers: ['A', 'B'] },
      'Lay A and B on each other, right sides up, and baste them as one along the waist edge.',
    ],
    [
      { kind: 'baste-as-one', layers: ['A', 'B'], at: 'c/d', side: 'left', stops: 236 },
      'Lay A and B…',
      'Also along both edges of the opening at left c/d, down to 236 mm below the waist seam; below it they hang free.',
    ],
    [
      { kind: 'baste-as-one', layers: ['A', 'B'], at: 'c/d' },
      'Lay A and B…',
      'Also along both edges of the opening at c/d; below it they hang free.',
    ],
    [zip, 'Set the zip into the left c/d seam, through the A.'],
    [
      { ...zip, layers: ['A', 'B'], starts: 22, stops: 237, zip: { stock: 250, shortenBy: 35 } },
      'Set the zip into the left c/d seam, through A and B as one.',
      'A 250 mm zip, shortened by 35 mm at the bottom: sew a new stop first, then cut.',
      'A hook and bar hold what is left open above it.',
      'Hold: start the zip 22 mm below the waist seam, clear of its bulk.',
      'Hold: stop it 237 mm below the waist seam.',
    ],
    [
      { ...zip, stops: 237, zip: { stock: 250, shortenBy: 0 } },
      'Set…',
      'A 250 mm zip.',
      'Hold: stop it 237 mm below the waist seam.',
    ],
    [
      { ...zip, closure: 'hooks', starts: 22, stops: 237 },
      'Set the hooks and bars along the left c/d, through the A, from 22 mm to 237 mm below the waist seam.',
    ],
    [
      { ...zip, closure: 'lacing', stops: 237 },
      'Set the eyelets or loops for the lacing along the left c/d, through the A, from the waist seam to 237 mm below it.',
      'Put the panel behind the lacing in now.',
    ],
    [{ ...zip, closure: 'hooks' }, 'Set the hooks and bars along the left c/d, through the A.'],
    [
      waist,
      'Sew the A to the bodice’s waist seam, gore seams on panel seams.',
      'Each gore’s top is as long as its panel: nothing is eased, nothing stretched.',
      plies,
    ],
    [
      { ...waist, layers: ['A', 'B'], panelled: false, clearance: 7 },
      'Sew the A and B to the bodice’s waist seam as one.',
      'Each gore’s top is as long as the edge that it is sewn to: nothing…',
      plies,
      'A second row 3 mm above the first leaves 7 mm to the bones.',
    ],
    [
      { ...waist, gathered: ['C', 'D'], pleated: ['E'], stretched: ['F'], clearance: -2 },
      'Sew the A…',
      'Gore seams meet panel seams; between them:',
      'The C and D: spread the fullness evenly, quarter by quarter.',
      'The pleats of the E stay as they are basted: what is over or short is shared among them.',
      'The F is cut smaller: stretch it to each panel evenly as it is pinned, not as it is sewn.',
      plies,
      'A second row 3 mm above the first leaves 0 mm to the bones.',
    ],
    [
      { ...waist, panelled: false, stretched: ['F'] },
      'Sew…',
      'The F is cut smaller: stretch it to the edge evenly…',
      plies,
    ],
    [
      { kind: 'waist-stay', length: 701, grams: 1812, closes: true },
      'Tack the petersham, 701 mm to fit her waist seam, to the waist allowances.',
      'It carries the skirt, 1.81 kg without edging and what she wears under it, and fastens before the closure.',
    ],
    [{ kind: 'waist-stay', length: 701, closes: false }, 'Tack…', 'It carries the skirt.'],
  ]);
});
