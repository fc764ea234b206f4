import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stringify } from 'yaml';
import type { Piece } from '../../src/draft/piece.ts';
import { type DraftedGown, draft } from '../../src/pipeline.ts';
import { evenly } from '../evenly.ts';
import type { Tree } from '../outside/plain-gown.ts';
import { distanceTo, edgeOf, lengthOf, sampled } from './sampled.ts';

const NAMES = ['a', 'b', 'c', 'd', 'e', 'f'];
const SIZES = { mm: 1, cm: 10, in: 25.4 } as const;
/** What nobody pinned stays to this, mm: finer than a thread. */
const STAYS = 0.01;

interface Pinned {
  readonly symmetry: 'mirrored' | 'none';
  readonly units: keyof typeof SIZES;
  readonly shape: 'round' | 'pointed' | 'square';
  readonly widths: 'flare' | 'girths';
  readonly what: 'hem' | 'seam' | 'waist';
  /** The station that is pinned. */
  readonly place: number;
  readonly by: number;
  readonly train: number;
  readonly drop: number;
}

const pinnings: fc.Arbitrary<Pinned> = fc.record({
  symmetry: fc.constantFrom('mirrored' as const, 'none' as const),
  units: fc.constantFrom('mm' as const, 'cm' as const, 'in' as const),
  shape: fc.constantFrom('round' as const, 'pointed' as const, 'square' as const),
  widths: fc.constantFrom('flare' as const, 'flare' as const, 'girths' as const),
  what: fc.constantFrom('hem' as const, 'hem' as const, 'seam' as const, 'waist' as const),
  place: fc.integer({ min: 1, max: 5 }),
  by: evenly(-40, 40),
  train: evenly(150, 450),
  drop: evenly(0, 50),
});

function stationsOf(symmetry: Pinned['symmetry']): string[] {
  const seams = NAMES.slice(1).map((name, i) => `${NAMES[i]}/${name}`);
  return symmetry === 'none' ? ['f/a', ...seams] : ['centre-front', ...seams, 'centre-back'];
}

function specOf(pinned: Pinned, fittings?: readonly Tree[]): string {
  const { symmetry, units, shape } = pinned;
  const size = SIZES[units];
  const closed = symmetry === 'none';
  const stations = stationsOf(symmetry);
  const full = closed ? 3 : 6;
  const waist = (closed ? 1 : 2) * 720;
  return stringify({
    format: 1,
    gown: 'Stays',
    units,
    symmetry,
    bodice: {
      'waist-seam': waist / size,
      'drop-below-waist': { [stations[0]!]: Math.round(pinned.drop) / size },
    },
    gores: NAMES.map((name) => ({
      name,
      top: 120 / size,
      ...(pinned.widths === 'flare' ? { flare: '17deg' } : {}),
    })),
    lengths: {
      at: { [stations[0]!]: 1000 / size, [stations[full]!]: (1000 + Math.round(pinned.train)) / size },
    },
    train: {
      begins: stations[1],
      shape,
      ...(closed ? { full: stations[full], ends: stations[5] } : {}),
    },
    ...(pinned.widths === 'flare'
      ? {}
      : {
          petticoat: {
            girths: [
              [0, 1],
              [250, 1.5],
              [1000, 2.7],
            ].map(([down, times]) => ({ down: down! / size, girth: (times! * waist) / size })),
          },
        }),
    allowances: { seam: 15 / size, waist: 15 / size, hem: 15 / size },
    layers: [{ name: 'shell', cloth: 'calico', hem: 'faced' }],
    cloths: { calico: { width: 3000 / size } },
    ...(fittings === undefined ? {} : { fittings }),
  });
}

function entryOf({ symmetry, units, what, place, by }: Pinned): Tree {
  const size = SIZES[units];
  const name = stationsOf(symmetry)[place]!;
  const entry = {
    hem: { hem: { [name]: Math.round(by) / size } },
    waist: { waist: { [name]: Math.round(by / 40) / size } },
    seam: {
      seams: [{ seam: name, from: 150 / size, to: 700 / size, 'take-in': Math.round(by / 5) / size }],
    },
  }[what];
  return { date: '2027-03-01', ...entry };
}

function drafted(text: string): DraftedGown {
  const { gown, diagnostics } = draft({ name: 'stays.yaml', text });
  const wrong = diagnostics.filter(({ level, code }) => level === 'error' && code !== 'tops-miss-waist-seam');
  if (gown === undefined || wrong.length > 0)
    throw new Error(`${wrong.map(({ message }) => message).join('\n')}\n${text}`);
  return gown;
}

/** Both sides of every seam of a gown, measured. */
function seamsOf({ drafts }: DraftedGown): Map<string, number[]> {
  const seams = new Map<string, number[]>();
  for (const piece of drafts.gown.pieces)
    for (const name of new Set([piece.frontEdge, piece.backEdge]))
      seams.set(name, [...(seams.get(name) ?? []), lengthOf(sampled(edgeOf(piece, name)))]);
  return seams;
}

/** The farthest that one outline lies from another, both as drawn: a gore is laid by its own grain. */
function farthest(one: Piece, other: Piece): number {
  const [a, b] = [one, other].map((piece) =>
    sampled(
      piece.edges.flatMap(({ curves }) => curves),
      60,
    ),
  );
  const top = sampled(edgeOf(one, 'waist'), 1)[0]!;
  const shift = sampled(edgeOf(other, 'waist'), 1)[0]!;
  const moved = b!.map(({ x, y }) => ({ x: x + top.x - shift.x, y: y + top.y - shift.y }));
  return Math.max(...a!.filter((_, i) => i % 7 === 0).map((point) => distanceTo(moved, point)));
}

describe('what nobody pinned stays', () => {
  it('seams to 0.01 mm, and the whole outline of a gore with nothing pinned on it', () => {
    fc.assert(
      fc.property(pinnings, (pinned) => {
        const text = specOf(pinned, [entryOf(pinned)]);
        const [before, after] = [drafted(specOf(pinned)), drafted(text)];
        const name = stationsOf(pinned.symmetry)[pinned.place]!;
        const now = seamsOf(after);
        const moved = { hem: -1, waist: 1, seam: 0 }[pinned.what];
        const size = pinned.what === 'waist' ? Math.round(pinned.by / 40) : Math.round(pinned.by);
        for (const [seam, lengths] of seamsOf(before)) {
          const wanted = seam === name ? moved * size : 0;
          for (const [i, length] of lengths.entries())
            expect(Math.abs(now.get(seam)![i]! - length - wanted), `${seam}\n${text}`).toBeLessThan(STAYS);
        }
        for (const [i, piece] of before.drafts.gown.pieces.entries()) {
          if (piece.frontEdge === name || piece.backEdge === name) continue;
          expect(farthest(piece, after.drafts.gown.pieces[i]!), `${piece.gore}\n${text}`).toBeLessThan(STAYS);
        }
      }),
      { seed: 9, numRuns: 10, endOnFailure: true },
    );
  }, 240_000);
});
