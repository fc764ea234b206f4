import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CutPiece } from '../../src/draft/piece.ts';
import type { Curve } from '../../src/geometry/curve.ts';
import { draft } from '../../src/pipeline.ts';
import { evenly } from '../evenly.ts';
import { at, away, distanceTo, type Place, sampled } from '../fittings/sampled.ts';
import { isInside } from '../outside/measure/polygons.ts';
import { plainGown } from '../outside/plain-gown.ts';

const gowns = fc.record({
  units: fc.constantFrom('mm' as const, 'cm' as const, 'in' as const),
  symmetry: fc.constantFrom('mirrored', 'none'),
  flares: fc.array(evenly(4, 24), { minLength: 4, maxLength: 4 }),
  /** From station to station, mm: hems up to 45° off square. */
  steps: fc.array(evenly(-60, 260), { minLength: 3, maxLength: 3 }),
  hem: fc.integer({ min: 8, max: 60 }),
  seam: fc.integer({ min: 6, max: 30 }),
});

/** Bend of a curve where it ends, 1/mm, positive clockwise as drawn: ⅔ of the area of its last three points over the cube of a side (Bézier). */
function bendAtEnd(curve: Curve): number {
  if (curve.kind === 'line') return 0;
  if (curve.kind === 'arc') return Math.sign(curve.sweep) / curve.radius;
  const [p, q, r] = [curve.control1, curve.control2, curve.to];
  const cross = (q.x - p.x) * (r.y - q.y) - (q.y - p.y) * (r.x - q.x);
  return ((2 / 3) * cross) / away(q, r) ** 3;
}

function turnedRound(curve: Curve): Curve {
  if (curve.kind === 'arc') return { ...curve, start: curve.start + curve.sweep, sweep: -curve.sweep };
  const { from, to } = curve;
  if (curve.kind === 'line') return { kind: 'line', from: to, to: from };
  return { kind: 'cubic', from: to, control1: curve.control2, control2: curve.control1, to: from };
}

/** How a curve goes on beyond its end, by its own bend there; straight where that would come round on itself. */
function goingOn(curve: Curve, by: number): Place[] {
  const end = at(curve, 1);
  const before = at(curve, 1 - 1e-5);
  const heading = Math.atan2(end.y - before.y, end.x - before.x);
  const bend = bendAtEnd(curve);
  const kappa = Math.abs(bend) * by > 0.5 ? 0 : bend;
  return Array.from({ length: Math.ceil(by * 8) }, (_, i) => {
    const way = (i + 1) / 8;
    const turned = kappa * way;
    const [along, aside] =
      Math.abs(turned) < 1e-9 ? [way, 0] : [Math.sin(turned) / kappa, (1 - Math.cos(turned)) / kappa];
    return {
      x: end.x + along * Math.cos(heading) - aside * Math.sin(heading),
      y: end.y + along * Math.sin(heading) + aside * Math.cos(heading),
    };
  });
}

/** The point of a line of points nearest to another. */
function foot(line: readonly Place[], { x, y }: Place): Place {
  let best = line[0]!;
  let least = Infinity;
  for (let i = 1; i < line.length; i++) {
    const [a, b] = [line[i - 1]!, line[i]!];
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const size = dx * dx + dy * dy;
    const part = size === 0 ? 0 : Math.min(1, Math.max(0, ((x - a.x) * dx + (y - a.y) * dy) / size));
    const point = { x: a.x + dx * part, y: a.y + dy * part };
    const apart = away(point, { x, y });
    if (apart < least) [least, best] = [apart, point];
  }
  return best;
}

/** The most that the hem's allowance stands out beyond the piece when it is turned up along the hem line, mm. */
function standsOut({ piece, cutEdges }: CutPiece, reach: number): number {
  const hem = piece.edges[2]!.curves;
  const line = [
    ...goingOn(turnedRound(hem[0]!), reach).reverse(),
    ...sampled(hem, 200),
    ...goingOn(hem.at(-1)!, reach),
  ];
  const around = cutEdges.flatMap(({ curves }) => sampled(curves, 150).slice(0, -1));
  const closed = [...around, around[0]!];
  let most = 0;
  for (const point of cutEdges[2]!.curves.flatMap((curve) => sampled([curve], 12))) {
    const on = foot(line, point);
    const folded = { x: 2 * on.x - point.x, y: 2 * on.y - point.y };
    if (!isInside(folded, around)) most = Math.max(most, distanceTo(closed, folded));
  }
  return most;
}

describe("a turned hem's allowance", () => {
  it('lies inside the piece when it is turned up along the hem line, however far off square the hem is', () => {
    fc.assert(
      fc.property(gowns, (own) => {
        const by = (mm: number): number => Math.round(mm) / { mm: 1, cm: 10, in: 25.4 }[own.units];
        const closed = own.symmetry === 'none';
        const seams = ['a/b', 'b/c', 'c/d'];
        const lengths = own.steps.map((_, i) => own.steps.slice(0, i).reduce((sum, step) => sum + step, 900));
        lengths.push(lengths[2]! + own.steps[2]!);
        const names = closed ? ['d/a', ...seams] : ['centre-front', ...seams];
        const text = plainGown({
          units: own.units,
          symmetry: own.symmetry,
          bodice: { 'waist-seam': by(closed ? 480 : 960) },
          gores: ['a', 'b', 'c', 'd'].map((name, i) => ({
            name,
            top: by(120),
            flare: `${own.flares[i]}deg`,
          })),
          lengths: {
            at: {
              ...Object.fromEntries(names.map((name, i) => [name, by(lengths[i]!)])),
              ...(closed ? {} : { 'centre-back': by(lengths[3]! + own.steps[0]! / 2) }),
            },
          },
          allowances: { seam: by(own.seam), waist: by(10), hem: by(own.hem) },
          layers: [{ name: 'shell', cloth: 'calico', hem: 'turned' }],
        });
        const { gown, diagnostics } = draft({ name: 'turned.yaml', text });
        // A hem that bends tighter than its allowance is deep cannot be turned so; that is said.
        if (diagnostics.some(({ code, level }) => level === 'error' || code === 'hem-too-deep')) return;
        const reach = 4 * Math.max(10, own.hem, own.seam);
        for (const piece of gown!.cut.pieces)
          expect(standsOut(piece, reach), `${piece.gore}\n${text}`).toBeLessThan(0.03);
      }),
      { seed: 7, numRuns: 12, endOnFailure: true },
    );
  }, 240_000);
});
