import { describe, expect, it } from 'vitest';
import { chalkCsv } from '../../src/chalk/chalk-csv.ts';
import { chalkTable } from '../../src/chalk/chalk-table.ts';
import type { CutPiece } from '../../src/draft/piece.ts';
import type { Curve, Point } from '../../src/geometry/curve.ts';
import { pointAt } from '../../src/geometry/evaluate.ts';
import { chalkPages } from '../../src/print/papers/chalk-pages.ts';
import { printedLines, rowsUnder } from '../print/page-rows.ts';
import { made } from './made.ts';
import { inputOf } from './paper-input.ts';

/** The waist edge drops and the hem runs down to the back, so that no seam is as long as another; cm. */
const SPEC = `format: 1
gown: Trial
units: cm
bodice:
  waist-seam: 72
  panels: {front: 12, side: 12, back: 12}
  drop-below-waist: {centre-front: 6, front/side: 3}
gores:
  - {name: front, top: 12, flare: [6deg, 12deg]}
  - {name: side, top: 12, flare: [10deg, 14deg]}
  - {name: back, top: 12, flare: [12deg, 4deg]}
lengths:
  measured: finished
  at: {centre-front: 100, front/side: 103, side/back: 120, centre-back: 150}
  to-floor: {centre-front: 102, front/side: 104, side/back: 106, centre-back: 108}
allowances: {seam: 1.5, waist: 1.5, hem: 1.5}
layers: [{name: lining, cloth: crepe, hem: turned, shorter: 3}, {name: shell, cloth: crepe, hem: turned}]
cloths: {crepe: {width: 140, selvedge: 1, weight: 100}}
bustle:
  kind: over
  clearance: 2
  points:
    - {seam: centre-back, anchor: 12}
    - {seam: side/back, anchor: 14.5}
    - {gore: back, across: 30%, anchor: 13}
`;
/** By hand: anchor + length − (to the floor − 2). */
const SEAMS = { 'centre-back': [120, 560], 'side/back': [145, 305] } as const;

const whole = made(SPEC);
const marked = (pieces: readonly CutPiece[]): CutPiece[] =>
  pieces.filter(({ marks }) => marks.some(({ name }) => name.startsWith('bustle')));
const carry = marked(whole.gown.cut.pieces);
const pieceOf = (name: string): CutPiece => carry.find(({ gore }) => gore === name)!;

/** Middles of all that is drawn under a name, one after the other; a cross is two lines. */
function middles({ marks }: CutPiece, wanted: 'bustle-anchor' | 'bustle-pick-up'): Point[] {
  const drawn = marks.filter(({ name }) => name === wanted).map(({ curves }) => boxMiddle(curves));
  return wanted === 'bustle-anchor' ? drawn : drawn.filter((_, i) => i % 2 === 0);
}

function boxMiddle(curves: readonly Curve[]): Point {
  const points = dense(curves);
  const half = (values: number[]): number => (Math.min(...values) + Math.max(...values)) / 2;
  return { x: half(points.map(({ x }) => x)), y: half(points.map(({ y }) => y)) };
}

function dense(curves: readonly Curve[]): Point[] {
  return curves.flatMap((curve) => Array.from({ length: 401 }, (_, i) => pointAt(curve, i / 400)));
}

/** As far down a side edge as a tape says, walked along samples from the end that is nearer the waist edge. */
function downSeam({ piece }: CutPiece, seam: string, down: number): Point {
  const edge = dense(piece.edges.find(({ name }) => name === seam)!.curves);
  const walk = edge[0]!.y < edge[edge.length - 1]!.y ? edge : [...edge].reverse();
  let left = down;
  for (const [i, to] of walk.slice(1).entries()) {
    const from = walk[i]!;
    const step = Math.hypot(to.x - from.x, to.y - from.y);
    if (step > 0 && step >= left)
      return { x: from.x + ((to.x - from.x) * left) / step, y: from.y + ((to.y - from.y) * left) / step };
    left -= step;
  }
  throw new Error(`${seam} is shorter than ${down}`);
}

const apart = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);

describe('points of a bustle on the pattern', () => {
  it('stand on both pieces of a seam, of the outermost layer alone', () => {
    expect(carry.map(({ gore, layers }) => [gore, ...layers])).toEqual([
      ['side', 'shell'],
      ['back', 'shell'],
    ]);
  });

  it.each([
    ['side', 0, 'side/back'],
    ['back', 0, 'centre-back'],
    ['back', 1, 'side/back'],
  ] as const)('on the seam line of %s (%i, %s) as far down as the tape says', (gore, k, seam) => {
    const own = pieceOf(gore);
    const [anchor, pickUp] = SEAMS[seam];
    expect(apart(middles(own, 'bustle-anchor')[k]!, downSeam(own, seam, anchor))).toBeLessThan(0.05);
    expect(apart(middles(own, 'bustle-pick-up')[k]!, downSeam(own, seam, pickUp))).toBeLessThan(0.05);
  });

  it('one on a gore lies inside it, and not on a seam', () => {
    const own = pieceOf('back');
    const [ring, cross] = [middles(own, 'bustle-anchor')[2]!, middles(own, 'bustle-pick-up')[2]!];
    for (const seam of ['side/back', 'centre-back'])
      for (const at of [ring, cross])
        expect(
          Math.min(
            ...dense(own.piece.edges.find(({ name }) => name === seam)!.curves).map((p) => apart(p, at)),
          ),
        ).toBeGreaterThan(30);
    expect(middles(own, 'bustle-anchor')).toHaveLength(3);
  });

  it('where her sides differ each piece has its own', () => {
    const pinned = `${SPEC}fittings:\n  - {date: 2027-03-01, side: left, hem: {side/back: 2}}\n`;
    const sided = marked(made(pinned).gown.cut.pieces).filter(({ gore }) => gore === 'side');
    expect(sided.map(({ piece }) => piece.side).sort()).toEqual(['left', 'right']);
    for (const own of sided) {
      // Her left is 2 cm shorter at this seam: there is so much less to pick up.
      const pickUp = own.piece.side === 'left' ? 285 : 305;
      expect(apart(middles(own, 'bustle-pick-up')[0]!, downSeam(own, 'side/back', pickUp))).toBeLessThan(
        0.05,
      );
    }
  });

  it('on a fold the half that lies on the piece', () => {
    const folded = SPEC.replace('waist-seam: 72', 'waist-seam: 60').replace(
      '{name: back, top: 12, flare: [12deg, 4deg]}',
      '{name: back, on-fold: true, half-top: 6, half-flare: 12deg}',
    );
    const own = marked(made(folded).gown.cut.pieces).find(({ gore }) => gore === 'back')!;
    const fold = own.piece.edges.find(({ name }) => name === 'fold')!.curves[0]!;
    const line = pointAt(fold, 0).x;
    const drawn = own.marks
      .filter(({ name }) => name.startsWith('bustle'))
      .flatMap(({ curves }) => dense(curves));
    expect(Math.max(...drawn.map(({ x }) => x))).toBeCloseTo(line, 6);
    const [ring] = own.marks.filter(({ name }) => name === 'bustle-anchor');
    const top = Math.min(pointAt(fold, 0).y, pointAt(fold, 1).y);
    expect(boxMiddle(ring!.curves).y - top).toBeCloseTo(120, 2);
  });
});

describe('points of a bustle in the chalk tables', () => {
  const own = pieceOf('back');
  const cutTop = Math.min(...dense(own.cutEdges.flatMap(({ curves }) => curves)).map(({ y }) => y));
  /** Worked out from the outline, not from the marks; across from a grain line at x. */
  const expectedFrom = (grain: number): [number, number][][] =>
    (['centre-back', 'side/back'] as const).map((seam) =>
      SEAMS[seam].map((down) => {
        const { x, y } = downSeam(own, seam, down);
        return [Math.round(y - cutTop), Math.round(x - grain)];
      }),
    );
  const expected = expectedFrom(own.piece.grain.from.x);

  it('each with its own two places, down and across', () => {
    const rows = chalkTable(own).bustle.slice(0, 2);
    expect(rows.map(({ place }) => place)).toEqual([{ seam: 'centre-back' }, { seam: 'side/back' }]);
    for (const [i, { anchor, pickUp }] of rows.entries())
      expect([anchor, pickUp].map(({ down, across }) => [down, across])).toEqual(expected[i]);
  });

  it('printed by the row', () => {
    const lines = printedLines(chalkPages(inputOf(whole)).pages);
    const heads = ['bustle: down, across', 'anchor', 'pick-up'];
    const { left } = lines.flat().find(({ text }) => text === heads[0])!;
    // Beside it stand the corners.
    const column = lines
      .map((line) => line.filter((cell) => cell.left > left - 0.4))
      .filter((line) => line.length > 0);
    const cm = (mm: number): string => (mm / 10).toFixed(1);
    // Layers that share a table are measured from the grain line of the first.
    const first = whole.gown.cut.pieces.find(({ gore }) => gore === 'back')!;
    const [centre, seam] = expectedFrom(first.piece.grain.from.x).map((ends) =>
      ends.map(([down, across]) => `${cm(down)}, ${cm(across)}`),
    );
    // The side comes first, with its one point; then the back with its three.
    const [side, ...back] = rowsUnder(column, heads);
    expect(side![0]).toBe('side/back');
    expect(back.slice(0, 2)).toEqual([
      ['centre back', ...centre!],
      ['side/back', ...seam!],
    ]);
    expect(back[2]![0]).toBe('back, 30 % across');
  });

  it('and for scripts, mm', () => {
    const rows = chalkCsv([chalkTable(own)])
      .split('\r\n')
      .filter((row) => row.includes(',bustle,'))
      .map((row) => row.split(','));
    expect(rows.slice(0, 4).map((row) => [row[4], row[5], Number(row[8]), Number(row[9])])).toEqual([
      ['centre-back', 'anchor', ...expected[0]![0]!],
      ['centre-back', 'pick-up', ...expected[0]![1]!],
      ['side/back', 'anchor', ...expected[1]![0]!],
      ['side/back', 'pick-up', ...expected[1]![1]!],
    ]);
  });
});
