import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { BodiceMeasures } from '../../src/bodice/bodice-measures.ts';
import { type BodiceDraft, draftBodice } from '../../src/bodice/draft-bodice.ts';
import type { HalfBodice } from '../../src/bodice/draft-half.ts';
import { measureBodice } from '../../src/bodice/measure-bodice.ts';
import { evenly } from '../evenly.ts';
import { SEED } from '../seed.ts';
import { anyBodice, EXAMPLE } from './bodies.ts';
import { drafted, heights } from './drafted.ts';
import { cornersOf, walked, widthAbove } from './measured.ts';

/** All that is promised of a bodice, asked of its outlines by a measurer that knows nothing else. */

/** Shrinking a body takes minutes and makes it no plainer: the first that misses is shown as it was drawn. */
const RUNS = { numRuns: Number(process.env.BODIES ?? 40), seed: SEED, endOnFailure: true };
/** A tenth of a millimetre and a tenth of a degree: what specialists' seams and edges are trued to (design). */
const MM = 0.1;
const ANGLE = (0.1 * Math.PI) / 180;

/** Two bodies of a hundred are steeper than flat cloth can follow, which is said; the others must all be true. */
function possible(measures: BodiceMeasures): BodiceDraft | undefined {
  const draft = draftBodice(measures);
  if (!('faults' in draft)) return draft;
  expect(draft.faults.map(({ code }) => code)).toEqual(draft.faults.map(() => 'panel-widens-too-fast'));
  return undefined;
}

function holdsTrue(draft: BodiceDraft): void {
  const { measures, left, right } = draft;
  for (const half of left === right ? [left] : [left, right]) {
    const { upper, lower } = heights(half);
    for (let i = 1; i < half.pieces.length; i++) {
      const inFront = walked(half.pieces[i - 1]!.edges[1]!.curves).length;
      const behind = walked(half.pieces[i]!.edges[3]!.curves).length;
      expect(Math.abs(inFront - behind)).toBeLessThan(MM);
      expect(Math.abs(inFront - (upper[i]! - lower[i]!))).toBeLessThan(MM);
      const [a, b] = [cornersOf(half, i - 1), cornersOf(half, i)];
      if (!measures.upperEdge.points.includes(half.stations[i]!))
        expect(Math.abs(a[1]! + b[0]! - Math.PI)).toBeLessThan(ANGLE);
      if (!measures.lowerEdge.points.includes(half.stations[i]!))
        expect(Math.abs(a[2]! + b[3]! - Math.PI)).toBeLessThan(ANGLE);
    }
  }
  for (const level of measures.girths) {
    const [own, wanted] = [left, right]
      .map((half) => coveredAt(half, level.at))
      .reduce(([sum, all], [width, part]) => [sum + width, all + part], [0, 0] as const);
    expect(Math.abs(own - wanted)).toBeLessThan(MM);
  }
}

/** Of the panels that a level crosses from seam to seam: how wide they are there, and how wide they should be. */
function coveredAt(half: HalfBodice, at: string): readonly [number, number] {
  const l = half.levels.findIndex((level) => level.at === at);
  const { above } = half.levels[l]!;
  const { upper, lower } = heights(half);
  let [own, wanted] = [0, 0];
  for (let p = 0; p < half.pieces.length; p++) {
    const top = Math.min(upper[p]!, upper[p + 1]!);
    const bottom = Math.max(lower[p]!, lower[p + 1]!);
    if (above > top - 1 || above < bottom + 1) continue;
    own += widthAbove(half, p, above, [upper[p]!, upper[p + 1]!]);
    wanted += half.widths[p]![l]!;
  }
  return [own, wanted];
}

it('the bodice of the example is true', () => {
  const draft = drafted(EXAMPLE);
  holdsTrue(draft);
  // Whole at every level: (girth − reduction) less the gap behind.
  const sewn = Object.fromEntries(measureBodice(draft).levels.map((level) => [level.at, level.sewn]));
  expect(sewn.bust).toBeCloseTo(920 - 20 - 50, 1);
  expect(sewn.underbust).toBeCloseTo(780 - 20 - 50, 1);
  expect(sewn.waist).toBeCloseTo(700 - 50 - 50, 1);
  expect(sewn['high-hip']).toBeCloseTo(880 - 50, 1);
});

it('any body: seams, edges and girths', () => {
  fc.assert(
    fc.property(anyBodice, (measures) => {
      const draft = possible(measures);
      if (draft !== undefined) holdsTrue(draft);
    }),
    RUNS,
  );
});

it('a body whose halves differ, or that is laced at one side: each half has its own girth', () => {
  fc.assert(
    fc.property(anyBodice, evenly(-0.03, 0.03), fc.boolean(), (measures, lean, isLaced) => {
      const girths = measures.girths.map((level) => ({ ...level, left: level.girth * (0.5 + lean) }));
      const lacings = isLaced ? [{ at: 'p0/p1', side: 'left' as const, gap: 30 }] : [];
      const draft = possible({ ...measures, girths, lacings });
      if (draft === undefined) return;
      holdsTrue(draft);
      for (const [l, level] of girths.entries()) {
        const by = measures.reduce[level.at] ?? 0;
        const kept = (level.girth - by) / level.girth;
        expect(draft.left.levels[l]!.half).toBeCloseTo(level.left * kept - (isLaced ? 30 : 0), 6);
        expect(draft.right.levels[l]!.half).toBeCloseTo((level.girth - level.left) * kept, 6);
      }
    }),
    { ...RUNS, numRuns: 15 },
  );
});

it('what a fold joins is cut whole where the halves differ, and true on both sides', () => {
  const girths = EXAMPLE.girths.map((level) => ({ ...level, left: level.girth / 2 + 6 }));
  const draft = drafted({ ...EXAMPLE, girths });
  const names = draft.pieces.map(({ gore, side }) => [gore, side]);
  expect(names).toEqual([
    ['front', undefined],
    ...['side-front', 'side', 'side-back', 'back'].flatMap((name) => [
      [name, 'left'],
      [name, 'right'],
    ]),
  ]);
  const front = draft.pieces[0]!;
  const [upper, right, lower, left] = front.edges.map(({ curves }) => walked(curves).length);
  const own = (half: HalfBodice, edge: number) => walked(half.pieces[0]!.edges[edge]!.curves).length;
  expect(upper).toBeCloseTo(own(draft.left, 0) + own(draft.right, 0), 3);
  expect(lower).toBeCloseTo(own(draft.left, 2) + own(draft.right, 2), 3);
  expect(right).toBeCloseTo(left!, 2);
});

it('changing one girth moves what it must and nothing else', () => {
  const before = drafted(EXAMPLE).left;
  const girths = EXAMPLE.girths.map((level) =>
    level.at === 'high-hip' ? { ...level, girth: level.girth + 40 } : level,
  );
  const after = drafted({ ...EXAMPLE, girths }).left;
  for (const [l, { at }] of before.levels.entries())
    for (const [p] of before.pieces.entries()) {
      const change = after.widths[p]![l]! - before.widths[p]![l]!;
      if (at === 'high-hip') expect(change).toBeGreaterThan(1);
      else expect(change).toBe(0);
    }
  // The waist is a turning point of every panel: above it no line moves.
  expect(heights(after).upper[0]).toBe(heights(before).upper[0]);
  for (const [p, piece] of before.pieces.entries()) {
    const [a, b] = [piece, after.pieces[p]!].map(({ edges }) => walked(edges[0]!.curves).length);
    expect(a).toBeCloseTo(b!, 2);
  }
});
