import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stringify } from 'yaml';
import type { Piece } from '../../src/draft/piece.ts';
import { draft } from '../../src/pipeline.ts';
import { evenly } from '../evenly.ts';
import { away, edgeOf, type Place, sampled } from '../fittings/sampled.ts';

const SIZES = { mm: 1, cm: 10, in: 25.4 } as const;

/** Where the straight sides of a sector meet. */
function apexOf(piece: Piece): Place {
  const [a, b] = [piece.edges[1]!, piece.edges[3]!].map(({ curves }) => sampled(curves, 1));
  const minus = (p: Place, q: Place): Place => ({ x: p.x - q.x, y: p.y - q.y });
  const cross = (p: Place, q: Place): number => p.x * q.y - p.y * q.x;
  const [u, v] = [minus(a![1]!, a![0]!), minus(b![1]!, b![0]!)];
  const t = cross(minus(b![0]!, a![0]!), v) / cross(u, v);
  return { x: a![0]!.x + t * u.x, y: a![0]!.y + t * u.y };
}

/**
 * The sewn edge of a row of sectors from its last end forwards, read off the flat pieces: how far along, and how deep
 * below the level waist, which is so far from each gore's apex that the depth runs on from gore to gore.
 */
function edgeFromBack(pieces: readonly Piece[], depthAtEnd: number): { along: number; depth: number }[] {
  const line: { along: number; depth: number }[] = [];
  let [along, depth] = [0, depthAtEnd];
  for (const piece of [...pieces].reverse()) {
    const apex = apexOf(piece);
    const points = sampled(edgeOf(piece, 'waist'), 300).reverse();
    const level = away(points[0]!, apex) - depth;
    for (const [i, point] of points.entries()) {
      if (i > 0) along += away(point, points[i - 1]!);
      line.push({ along, depth: away(point, apex) - level });
    }
    depth = line.at(-1)!.depth;
  }
  return line;
}

function depthAt(line: readonly { along: number; depth: number }[], along: number): number {
  const found = line.findIndex((place) => place.along >= along);
  const i = found < 0 ? line.length - 1 : Math.max(1, found);
  const [a, b] = [line[i - 1]!, line[i]!];
  return b.along === a.along
    ? b.depth
    : a.depth + ((b.depth - a.depth) * (along - a.along)) / (b.along - a.along);
}

const cases = fc.record({
  units: fc.constantFrom('mm' as const, 'cm' as const, 'in' as const),
  point: fc.constantFrom(undefined, 'centre-front', 'centre-back'),
  drops: fc.array(evenly(2, 50), { minLength: 4, maxLength: 4 }),
  to: fc.constantFrom('centre-back', 'c/d'),
  share: evenly(0.25, 0.75),
});

describe("an overskirt's waist edge", () => {
  it("is the gown's sewn edge, everywhere between its ends", () => {
    fc.assert(
      fc.property(cases, (own) => {
        const by = (mm: number): number => mm / SIZES[own.units];
        const end = own.to === 'centre-back' ? 480 : 360;
        const whole = own.to === 'centre-back' ? 360 : 240;
        // From the seam a/b to where it ends: all of that stretch, or a little less of it.
        const tops = [whole * own.share, whole * (1 - own.share)];
        const text = stringify({
          format: 1,
          gown: 'Edge',
          units: own.units,
          bodice: {
            'waist-seam': by(960),
            ...(own.point === undefined ? {} : { point: own.point }),
            'drop-below-waist': {
              'centre-front': by(Math.round(own.drops[0]!)),
              'a/b': by(Math.round(own.drops[1]! / 2)),
              'c/d': by(Math.round(own.drops[2]! / 2)),
              'centre-back': by(Math.round(own.drops[3]!)),
            },
          },
          gores: ['a', 'b', 'c', 'd'].map((name) => ({ name, top: by(120), flare: '15deg' })),
          lengths: { at: { 'centre-front': by(1000), 'centre-back': by(1000) } },
          allowances: { seam: by(15), waist: by(15), hem: by(15) },
          layers: [{ name: 'shell', cloth: 'calico', hem: 'faced' }],
          cloths: { calico: { width: by(3000) } },
          overskirts: [
            {
              name: 'train',
              from: 'a/b',
              to: own.to,
              gores: [
                { name: 'outer', top: by(tops[0]!), flare: '14deg' },
                { name: 'inner', top: by(tops[1]!), flare: '18deg' },
              ],
              lengths: {
                at: {
                  'outer-edge': by(900),
                  [own.to === 'centre-back' ? 'centre-back' : 'back-edge']: by(1200),
                },
              },
              layers: [{ name: 'over', cloth: 'calico', hem: 'faced' }],
            },
          ],
        });
        const { gown, diagnostics } = draft({ name: 'edge.yaml', text });
        const errors = diagnostics.filter(({ level }) => level === 'error');
        expect(
          errors.map(({ message }) => message),
          text,
        ).toEqual([]);
        const skirt = edgeFromBack(gown!.drafts.gown.pieces, Math.round(own.drops[3]!));
        const atEnd = depthAt(skirt, 480 - end);
        const over = edgeFromBack(gown!.overskirts[0]!.drafts.gown.pieces, atEnd);
        // Lines fitted within 0.004 mm, a gore after the other.
        for (let along = 0; along <= whole; along += 5)
          expect(
            Math.abs(depthAt(over, along) - depthAt(skirt, along + 480 - end)),
            `${along}\n${text}`,
          ).toBeLessThan(0.03);
      }),
      { seed: 14, numRuns: 40, endOnFailure: true },
    );
  });
});
