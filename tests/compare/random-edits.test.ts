import type { Paths64 } from 'clipper2-ts';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { PieceChange, Verdict } from '../../src/compare/piece-change.ts';
import type { CutPiece } from '../../src/draft/piece.ts';
import { pointAt } from '../../src/geometry/evaluate.ts';
import { CLOTH_HOLDS, LINE_STAYS } from '../../src/geometry/tolerances.ts';
import { holds, polygonOf, unfolded } from './cloth-polygons.ts';
import { cone, piecesCompared } from './versions.ts';

const by = (most: number) => fc.integer({ min: -most, max: most });

/** What a maker changes between two fittings, mm and tenths of a degree; most of it small. */
const edits = fc.record({
  front: by(25),
  seam: by(25),
  back: by(40),
  flares: fc.tuple(by(3), by(6), by(6)),
  move: fc.tuple(by(3), by(3)),
  allowance: fc.constantFrom(-5, -3, 0, 0, 2),
  drop: fc.constantFrom(0, 0, 4, 10),
  hem: fc.constantFrom('faced', 'faced', 'turned', 'rolled'),
});

type Edit = typeof edits extends fc.Arbitrary<infer T> ? T : never;

function edited({ front, seam, back, flares, move, allowance, drop, hem }: Edit): string {
  const [a, b] = move;
  return cone({
    bodice: { 'waist-seam': 720, 'drop-below-waist': { 'centre-front': 30 + drop, 'front/side': 20 } },
    gores: [
      { name: 'front', 'on-fold': true, 'half-top': 80 + a, 'half-flare': `${8 + flares[0] / 10}deg` },
      { name: 'side', top: 150 + b, flare: `${18 + flares[1] / 10}deg` },
      { name: 'back', top: 130 - a - b, flare: `${16 + flares[2] / 10}deg` },
    ],
    lengths: {
      measured: 'finished',
      at: { 'centre-front': 970 + front, 'side/back': 1000 + seam, 'centre-back': 1060 + back },
    },
    allowances: { seam: 15 + allowance, waist: '15mm', hem: 20 + allowance },
    layers: [{ name: 'shell', cloth: 'calico', hem }],
  });
}

const UNCHANGED: Edit = {
  front: 0,
  seam: 0,
  back: 0,
  flares: [0, 0, 0],
  move: [0, 0],
  allowance: 0,
  drop: 0,
  hem: 'faced',
};

function clothOf(piece: CutPiece, lines: 'cut' | 'sew', shift = { x: 0, y: 0 }): Paths64 {
  const edges = lines === 'cut' ? piece.cutEdges : piece.piece.edges;
  const outline = polygonOf(
    edges.flatMap((edge) => edge.curves),
    shift,
  );
  const fold = edges.find(({ name }) => name === 'fold')?.curves[0];
  return fold?.kind === 'line' ? unfolded(outline, fold.from.x + shift.x) : [outline];
}

/** How long an edge is by a polygon of it, mm. */
function chordsOf({ curves }: CutPiece['cutEdges'][number]): number {
  return curves.reduce((sum, curve) => {
    const points = Array.from({ length: 65 }, (_, i) => pointAt(curve, i / 64));
    return (
      sum + points.slice(1).reduce((way, p, i) => way + Math.hypot(p.x - points[i]!.x, p.y - points[i]!.y), 0)
    );
  }, 0);
}

/** What curves read as chords may differ by, mm. */
const SLIVER = 0.01;

/** Every verdict against a polygon library; how often each was given. */
function judged(changes: readonly PieceChange[]): Verdict[] {
  for (const { was, piece, shift, verdict, gore, edges } of changes) {
    for (const { edge, left, comesOff, corner } of edges)
      for (const found of [left, comesOff])
        if (found) {
          // A place lies on the edge that it is told of, a corner's on the cut line, a little longer.
          const drawn = (corner ? piece.cutEdges : piece.piece.edges).find(({ name }) => name === edge)!;
          expect(found.at, `${gore}, ${edge}`).toBeGreaterThanOrEqual(0);
          expect(found.at, `${gore}, ${edge}`).toBeLessThanOrEqual(chordsOf(drawn) + 0.5);
        }
    const cloth = clothOf(was!, 'cut');
    const cut = clothOf(piece, 'cut', shift);
    if (verdict === 'same') expect(holds(cloth, cut, LINE_STAYS + SLIVER), gore).toBe(true);
    if (verdict === 'same') expect(holds(cut, cloth, LINE_STAYS + SLIVER), gore).toBe(true);
    if (verdict === 're-mark') expect(holds(cloth, cut, CLOTH_HOLDS + SLIVER), gore).toBe(true);
    if (verdict === 'let-out')
      expect(holds(cloth, clothOf(piece, 'sew', shift), CLOTH_HOLDS), gore).toBe(true);
    if (verdict === 'let-out') expect(holds(cloth, cut, CLOTH_HOLDS - SLIVER), gore).toBe(false);
  }
  return changes.map(({ verdict }) => verdict);
}

it('over a hundred pieces after random edits: what is said to fit the old cloth fits it', () => {
  const old = edited(UNCHANGED);
  const given = fc
    .sample(edits, { numRuns: 40, seed: 20_261_125 })
    .flatMap((edit) => judged(piecesCompared(old, edited(edit)).pieces.changes));
  const count = (verdict: Verdict) => given.filter((one) => one === verdict).length;
  expect(given.length).toBe(120);
  // The edits are mild, so every verdict is met often enough to mean something.
  expect(count('re-mark')).toBeGreaterThan(10);
  expect(count('let-out')).toBeGreaterThan(30);
  expect(count('re-cut')).toBeGreaterThan(5);
}, 60_000);
