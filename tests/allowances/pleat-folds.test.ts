import { describe, expect, it } from 'vitest';
import { withPleats } from '../../src/allowances/open-pleats.ts';
import { pleatFacts } from '../../src/allowances/pleat-facts.ts';
import { pleatFolds } from '../../src/allowances/pleat-folds.ts';
import type { CutPiece, Piece } from '../../src/draft/piece.ts';
import type { Line } from '../../src/geometry/curve.ts';
import { lengthOfRun } from '../../src/geometry/length.ts';
import { line } from '../line.ts';

/** Pleats on a rectangle 300 wide and 1000 long, 30 deep each: every place by hand. mm. */

/** Front at the left as her left is drawn: `front/side` at the left, `side/back` at the right. */
function rectangle(own: Partial<Piece> = {}, [right, left] = ['side/back', 'front/side']): Piece {
  return {
    gore: 'side',
    layers: ['shell'],
    edges: [
      { name: 'waist', curves: [line(0, 0, 300, 0)] },
      { name: right!, curves: [line(300, 0, 300, 1000)] },
      { name: 'hem', curves: [line(300, 1000, 0, 1000)] },
      { name: left!, curves: [line(0, 1000, 0, 0)] },
    ],
    frontEdge: left!,
    backEdge: right!,
    grain: line(150, 200, 150, 800),
    cut: 'pair',
    ...own,
  };
}
const pleat = (kind: string, at: string, own: object = {}) =>
  ({ name: 'p', kind, at, foldDepth: 30, layers: ['shell'], stitchedDown: 0, ...own }) as never;
const folds = (own: never, piece = rectangle()) =>
  pleatFolds([own], piece).map(({ line: fold, under }) => [fold.from.x, fold.to.x, under]);

describe('where a pleat folds', () => {
  const inside = { gore: 'side', fromSeam: 80 };

  it.each([
    ['knife', 'back', [[80, 80, 'left']]],
    ['knife', 'front', [[80, 80, 'right']]],
    [
      'box',
      undefined,
      [
        [110, 110, 'left'],
        [50, 50, 'right'],
      ],
    ],
    [
      'inverted',
      undefined,
      [
        [80, 80, 'right'],
        [80, 80, 'left'],
      ],
    ],
  ])('within a gore, 80 from its front seam: %s towards the %s', (kind, towards, wanted) => {
    const own = { ...inside, ...(towards === undefined ? {} : { towards }) };
    expect(folds(pleat(kind as string, 'front/side', own))).toEqual(wanted);
  });

  it('on her right the front lies at the right, and 80 from it is 220', () => {
    const right = rectangle({ side: 'right' }, ['front/side', 'side/back']);
    expect(folds(pleat('knife', 'front/side', { ...inside, towards: 'front' }), right)).toEqual([
      [220, 220, 'left'],
    ]);
    expect(folds(pleat('knife', 'front/side', { ...inside, towards: 'back' }), right)).toEqual([
      [220, 220, 'right'],
    ]);
  });

  it('at a seam each gore has half; of a knife pleat the one whose edge lies on top has all', () => {
    const before = rectangle();
    const after = rectangle({ gore: 'back' }, ['centre-back', 'side/back']);
    const both = (kind: string, own: object = {}) =>
      [before, after].map((piece) => folds(pleat(kind, 'side/back', own), piece));
    expect(both('inverted')).toEqual([[[300, 300, 'left']], [[0, 0, 'right']]]);
    expect(both('box')).toEqual([[[270, 270, 'right']], [[30, 30, 'left']]]);
    // Its outer fold points to the other gore.
    expect(both('knife', { towards: 'back' })).toEqual([[[300, 300, 'left']], []]);
    expect(both('knife', { towards: 'front' })).toEqual([[], [[0, 0, 'right']]]);
    expect(both('kick')).toEqual([[], []]);
  });

  it('at a fold of the cloth, and down the middle of a piece that was one', () => {
    const folded = rectangle({ cut: 'on-fold', frontEdge: 'fold' }, ['side/back', 'fold']);
    expect(folds(pleat('inverted', 'centre-front'), folded)).toEqual([[0, 0, 'right']]);
    expect(folds(pleat('inverted', 'centre-back'), folded)).toEqual([]);
    const behind = rectangle({ cut: 'on-fold', backEdge: 'fold' }, ['fold', 'side/back']);
    expect(folds(pleat('inverted', 'centre-back'), behind)).toEqual([[300, 300, 'left']]);
    const whole = rectangle({ middle: 'front' });
    expect(folds(pleat('box', 'centre-front'), whole)).toEqual([
      [180, 180, 'left'],
      [120, 120, 'right'],
    ]);
  });

  it('none on another gore, nor at another seam', () => {
    expect(folds(pleat('box', 'front/side', { ...inside, gore: 'back' }))).toEqual([]);
    expect(folds(pleat('box', 'centre-back'))).toEqual([]);
  });
});

describe('a pleat opened out', () => {
  const piece = rectangle();
  const cut: CutPiece = {
    gore: 'side',
    layers: ['shell'],
    piece,
    cutEdges: piece.edges,
    notches: [],
    marks: [],
    roughCut: 0,
    allowances: {},
    labelAt: { x: 200, y: 500 },
  };
  const opened = (own: never) => withPleats(cut, pleatFolds([own], piece));
  const linesOf = ({ marks }: CutPiece, name: string) =>
    marks.filter((mark) => mark.name === name).map(({ curves }) => Math.round((curves[0] as Line).from.x));

  it.each([
    // Outer fold, inner fold 30 on, and 30 more the line that it is brought to.
    ['back', [80, 110], [140]],
    ['front', [110, 140], [80]],
  ])('knife towards the %s: folds and the line between', (towards, foldLines, placement) => {
    const own = opened(pleat('knife', 'front/side', { gore: 'side', fromSeam: 80, towards }));
    expect(linesOf(own, 'fold-line').toSorted((a, b) => a - b)).toEqual(foldLines);
    expect(linesOf(own, 'placement-line')).toEqual(placement);
    // Twice its depth wider at waist and hem; what lies beyond has moved on by as much.
    const [waist, right, hem, left] = own.piece.edges;
    expect([lengthOfRun(waist!.curves), lengthOfRun(hem!.curves)]).toEqual([360, 360]);
    expect([(right!.curves[0] as Line).from.x, (left!.curves[0] as Line).from.x]).toEqual([360, 0]);
    expect([own.labelAt.x, own.piece.grain.from.x]).toEqual([260, 210]);
  });

  it('an inverted one takes four depths, its two outer folds brought to one line', () => {
    const own = opened(pleat('inverted', 'front/side', { gore: 'side', fromSeam: 80 }));
    expect(lengthOfRun(own.piece.edges[2]!.curves)).toBe(420);
    // 80 and 200 are the outer folds, 110 and 170 the inner ones, 140 where both come to lie.
    expect(linesOf(own, 'fold-line').toSorted((a, b) => a - b)).toEqual([80, 110, 170, 200]);
    expect(new Set(linesOf(own, 'placement-line'))).toEqual(new Set([140]));
  });

  it('counted all round: places, folds, and the cloth that all of them take', () => {
    const draft = {
      gown: { gores: [] },
      pieces: [piece, rectangle({ gore: 'back', cut: 'single' }, ['centre-back', 'side/back'])],
    };
    const layer = { name: 'shell', gores: ['side', 'back'] };
    const facts = (own: never) => {
      const [only] = pleatFacts({ pleats: [own] } as never, { layer, draft } as never);
      const { places, folds: each, underlay, atWaist, atHem } = only!;
      return [places, each, underlay, atWaist, atHem].map((own) => Math.round(own * 1e6) / 1e6);
    };
    // A pair: one on each of her sides, of 2 × 30.
    expect(facts(pleat('knife', 'front/side', { gore: 'side', fromSeam: 80, towards: 'back' }))).toEqual([
      2, 1, 120, 120, 120,
    ]);
    expect(facts(pleat('box', 'front/side', { gore: 'side', fromSeam: 80 }))).toEqual([2, 2, 240, 240, 240]);
    // On a piece that is cut once, once.
    expect(facts(pleat('knife', 'centre-back', { gore: 'back', fromSeam: 80, towards: 'front' }))).toEqual([
      1, 1, 60, 60, 60,
    ]);
    expect(facts(pleat('knife', 'no/such', { towards: 'back' }))).toEqual([0, 1, 0, 0, 0]);
    const other = pleat('knife', 'front/side', { gore: 'side', fromSeam: 80, layers: ['net'] });
    expect(pleatFacts({ pleats: [other] } as never, { layer, draft } as never)).toEqual([]);
  });
});
