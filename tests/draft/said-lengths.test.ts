import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stringify } from 'yaml';
import { draft } from '../../src/pipeline.ts';
import { evenly } from '../evenly.ts';
import { edgeOf, lengthOf, sampled } from '../fittings/sampled.ts';

const NAMES = ['a', 'b', 'c', 'd', 'e', 'f'];
const SIZES = { mm: 1, cm: 10, in: 25.4 } as const;
/** Both turnings of a cut length, mm. */
const TURNINGS = 30;

interface Said {
  readonly symmetry: 'mirrored' | 'none';
  readonly measured: 'finished' | 'cut';
  readonly units: keyof typeof SIZES;
  readonly shape: 'round' | 'pointed' | 'square';
  readonly stations: readonly string[];
  readonly train: readonly [begins: number, full: number, ends: number];
  /** mm; undefined where it is left to the shape. */
  readonly lengths: readonly (number | undefined)[];
}

const said: fc.Arbitrary<Said> = fc
  .record({
    symmetry: fc.constantFrom('mirrored' as const, 'none' as const),
    measured: fc.constantFrom('finished' as const, 'cut' as const),
    units: fc.constantFrom('mm' as const, 'cm' as const, 'in' as const),
    shape: fc.constantFrom('round' as const, 'pointed' as const, 'square' as const),
    order: fc.uniqueArray(fc.integer({ min: 0, max: 6 }), { minLength: 3, maxLength: 3 }),
    walk: fc.array(evenly(-60, 60), { minLength: 7, maxLength: 7 }),
    named: fc.array(fc.boolean(), { minLength: 7, maxLength: 7 }),
    innerNamed: fc.boolean(),
    train: evenly(120, 400),
  })
  .map((raw) => {
    const closed = raw.symmetry === 'none';
    const seams = NAMES.slice(1).map((name, i) => `${NAMES[i]}/${name}`);
    const stations = closed ? ['f/a', ...seams] : ['centre-front', ...seams, 'centre-back'];
    const [begins, full, ends] = [...raw.order].sort((p, q) => p - q) as [number, number, number];
    // Round the other way there is no train: its end is the ring's last seam at most.
    const last = stations.length - 1;
    const train = (closed ? [begins, full, ends] : [Math.min(begins, last - 1), last, last]) as Said['train'];
    const lengths = stations.map((_, i) => {
      const inside = i > train[0] && i < train[2] && i !== train[1];
      const isNeeded = i === 0 || i === train[1] || (!closed && i === last);
      if (inside && !raw.innerNamed) return undefined;
      if (!isNeeded && !raw.named[i]) return undefined;
      return Math.round(1000 + raw.walk[i]! + (inside ? raw.train / 2 : i === train[1] ? raw.train : 0));
    });
    return { ...raw, stations, train, lengths };
  });

function specOf({ symmetry, measured, units, shape, stations, train, lengths }: Said): string {
  const size = SIZES[units];
  const name = (i: number): string => stations[i % stations.length]!;
  const at = lengths.flatMap((length, i) => (length === undefined ? [] : [[name(i), length / size]]));
  return stringify({
    format: 1,
    gown: 'Said',
    units,
    symmetry,
    bodice: { 'waist-seam': (symmetry === 'none' ? 720 : 1440) / size },
    gores: NAMES.map((own) => ({ name: own, top: 120 / size, flare: '17deg' })),
    lengths: { measured, at: Object.fromEntries(at) },
    train: {
      begins: name(train[0]),
      shape,
      ...(symmetry === 'none' ? { full: name(train[1]), ends: name(train[2]) } : {}),
    },
    allowances: { seam: 15 / size, waist: 20 / size, hem: 10 / size },
    layers: [{ name: 'shell', cloth: 'calico', hem: 'faced' }],
    cloths: { calico: { width: 3000 / size } },
  });
}

describe('a length that is said is the length that is cut', () => {
  it('at every station named, in a train, where it begins and where it ends, on both sides of the seam', () => {
    fc.assert(
      fc.property(said, (own) => {
        const text = specOf(own);
        const { gown, diagnostics } = draft({ name: 'said.yaml', text });
        expect(
          diagnostics.filter(({ level }) => level === 'error'),
          text,
        ).toEqual([]);
        const { pieces } = gown!.drafts.gown;
        const less = own.measured === 'cut' ? TURNINGS : 0;
        for (const [i, length] of own.lengths.entries()) {
          if (length === undefined) continue;
          const name = own.stations[i]!;
          const sides = pieces.flatMap((piece) =>
            [piece.frontEdge, piece.backEdge].includes(name) ? [lengthOf(sampled(edgeOf(piece, name)))] : [],
          );
          expect(sides.length, `${name}\n${text}`).toBeGreaterThan(0);
          // 0.01 mm: chords of two millimetres, and cubics that lie within 0.004 mm of their line.
          for (const side of sides)
            expect(Math.abs(side - (length - less)), `${name}\n${text}`).toBeLessThan(0.01);
        }
      }),
      { seed: 15, numRuns: 60, endOnFailure: true },
    );
  });

  it('a train is its shape on either side, from the length that the skirt has there', () => {
    const own: Said = {
      symmetry: 'none',
      measured: 'finished',
      units: 'cm',
      shape: 'round',
      stations: ['f/a', 'a/b', 'b/c', 'c/d', 'd/e', 'e/f'],
      train: [1, 3, 5],
      lengths: [1000, 1000, undefined, 1400, undefined, 880],
    };
    const { gown } = draft({ name: 'said.yaml', text: specOf(own) });
    const { hem } = gown!.drafts.gown;
    const [begins, full, ends] = own.train.map((i) => hem.ways[i]!) as [number, number, number];
    // t²(3 − 2t) from either foot to the longest place (the design's shape of a round train).
    for (let part = 0; part <= 1; part += 1 / 64) {
      const s = part * part * (3 - 2 * part);
      expect(hem.valueAt(begins + part * (full - begins))).toBeCloseTo(1000 + 400 * s, 6);
      expect(hem.valueAt(ends + part * (full - ends))).toBeCloseTo(880 + 520 * s, 6);
    }
  });
});
