import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stringify } from 'yaml';
import type { GownDraft } from '../../src/draft/draft-gown.ts';
import type { Piece } from '../../src/draft/piece.ts';
import { draft } from '../../src/pipeline.ts';
import { evenly } from '../evenly.ts';
import { at, away, edgeOf, lengthOf, sampled } from '../fittings/sampled.ts';
import type { Tree } from '../outside/plain-gown.ts';

const SIZES = { mm: 1, cm: 10, in: 25.4 } as const;
const GIRTHS = [
  [0, 1],
  [220, 1.45],
  [600, 2.2],
  [1000, 2.9],
] as const;

interface Shape {
  readonly symmetry: 'mirrored' | 'none';
  readonly units: keyof typeof SIZES;
  readonly widths: 'flare' | 'flares' | 'girths';
  readonly tops: readonly number[];
  readonly flare: number;
  /** By gore: at its front station; 0 where the edge is level. */
  readonly drops: readonly number[];
  readonly hem: number;
  readonly ratio: number;
}

const shapes: fc.Arbitrary<Shape> = fc
  .record({
    symmetry: fc.constantFrom('mirrored' as const, 'none' as const),
    units: fc.constantFrom('mm' as const, 'cm' as const, 'in' as const),
    widths: fc.constantFrom('flare' as const, 'flares' as const, 'girths' as const),
    tops: fc.array(evenly(90, 160), { minLength: 4, maxLength: 4 }),
    flare: evenly(8, 24),
    drops: fc.array(evenly(0, 30), { minLength: 4, maxLength: 4 }),
    isDropped: fc.boolean(),
    hem: evenly(850, 1080),
    ratio: evenly(1.2, 2.5),
  })
  .map((raw) => ({ ...raw, drops: raw.drops.map((drop) => (raw.isDropped ? Math.round(drop) : 0)) }));

/** Every station's hem lies at one slant distance: level cloth, whose hem is an arc in every gore. */
function specOf(shape: Shape, layers: readonly Tree[], gore: Tree = {}): string {
  const { symmetry, units, tops, drops } = shape;
  const size = SIZES[units];
  const names = ['a', 'b', 'c', 'd'];
  const closed = symmetry === 'none';
  const inner = ['a/b', 'b/c', 'c/d'];
  const stations = closed ? ['d/a', ...inner] : ['centre-front', ...inner, 'centre-back'];
  const dropAt = (i: number): number => drops[i % drops.length]!;
  const by = (value: (i: number) => number): Tree =>
    Object.fromEntries(stations.map((name, i) => [name, value(i) / size]));
  const waist = (closed ? 1 : 2) * tops.reduce((sum, top) => sum + top, 0);
  const width = {
    flare: { flare: `${shape.flare}deg` },
    flares: { flare: [`${shape.flare * 0.3}deg`, `${shape.flare * 0.7}deg`] },
    girths: {},
  }[shape.widths];
  return stringify({
    format: 1,
    gown: 'Widths',
    units,
    symmetry,
    bodice: { 'waist-seam': waist / size, 'drop-below-waist': by(dropAt) },
    gores: names.map((name, i) => ({ name, top: tops[i]! / size, ...width, ...gore })),
    lengths: { at: by((i) => shape.hem - dropAt(i)) },
    ...(shape.widths === 'girths'
      ? {
          petticoat: {
            girths: GIRTHS.map(([down, times]) => ({ down: down / size, girth: (times * waist) / size })),
          },
        }
      : {}),
    allowances: { seam: 10 / size, waist: 10 / size, hem: 10 / size },
    layers,
    cloths: { calico: { width: 4000 / size } },
  });
}

function draftsOf(text: string): readonly GownDraft[] {
  const { gown, diagnostics } = draft({ name: 'widths.yaml', text });
  const errors = diagnostics.filter(({ level }) => level === 'error');
  expect(
    errors.map(({ code, message }) => `${code}: ${message}`),
    text,
  ).toEqual([]);
  return gown!.drafts.layers.map((one) => one.draft);
}

const PLAIN = { name: 'plain', cloth: 'calico', hem: 'faced' };
const hemsOf = ({ pieces }: GownDraft): number[] =>
  pieces.map((piece) => lengthOf(sampled(edgeOf(piece, 'hem'))));
const topsOf = ({ pieces }: GownDraft): number[] =>
  pieces.map((piece) => lengthOf(sampled(edgeOf(piece, 'waist'))));

/** Width of a sector at so far down its front edge: the angle between its straight seams times the way to their apex. */
function sectorWidth(piece: Piece, down: number): number {
  const [front, back] = [piece.edges[3]!.curves[0]!, piece.edges[1]!.curves[0]!];
  const [top, low, otherTop, otherLow] = [at(front, 1), at(front, 0), at(back, 0), at(back, 1)];
  const cross = (a: typeof top, b: typeof top): number => a.x * b.y - a.y * b.x;
  const along = { x: low.x - top.x, y: low.y - top.y };
  const other = { x: otherLow.x - otherTop.x, y: otherLow.y - otherTop.y };
  const angle = Math.atan2(Math.abs(cross(along, other)), along.x * other.x + along.y * other.y);
  const apart = { x: otherTop.x - top.x, y: otherTop.y - top.y };
  const toApex = (cross(apart, other) / cross(along, other)) * away(top, low);
  return angle * (down - toApex);
}

describe('a layer that is cut smaller along the grain', () => {
  it('is as wide as the gown at every level, its seams shorter by the share', () => {
    fc.assert(
      fc.property(shapes, evenly(0.01, 0.1), (shape, along) => {
        const layers = [
          PLAIN,
          { ...PLAIN, name: 'net', 'cut-smaller-along': `${(100 * along).toFixed(2)}%` },
        ];
        const share = 1 - Number((100 * along).toFixed(2)) / 100;
        const text = specOf(shape, layers);
        const [plain, smaller] = draftsOf(text) as [GownDraft, GownDraft];
        const [hems, own] = [hemsOf(plain), hemsOf(smaller)];
        // Chords of a millimetre, and a fitted line within 0.004 mm; over girths each level is held to 0.1 mm.
        const near = shape.widths === 'girths' ? 0.1 : 0.02;
        for (const [i, hem] of hems.entries()) expect(Math.abs(own[i]! - hem), text).toBeLessThan(near);
        for (const [i, length] of plain.lengths.entries())
          expect(Math.abs(smaller.lengths[i]! - share * length), text).toBeLessThan(0.001);
        if (shape.widths === 'girths' || shape.drops.some((drop) => drop > 0)) return;
        for (const [i, piece] of plain.pieces.entries())
          for (const down of [0, 0.25, 0.5, 0.75, 1].map((part) => part * shape.hem))
            expect(sectorWidth(smaller.pieces[i]!, share * down)).toBeCloseTo(sectorWidth(piece, down), 4);
      }),
      { seed: 3, numRuns: 40, endOnFailure: true },
    );
  });
});

describe('fullness at the waist only', () => {
  it('keeps the hem of every gore, and the top is as full as said: of the layer or of the gore', () => {
    fc.assert(
      fc.property(shapes, fc.boolean(), (shape, ofGore) => {
        const fullness = { ratio: Number(shape.ratio.toFixed(3)), where: 'waist' };
        const [plain] = draftsOf(specOf(shape, [PLAIN])) as [GownDraft];
        const text = ofGore ? specOf(shape, [PLAIN], { fullness }) : specOf(shape, [{ ...PLAIN, fullness }]);
        const [full] = draftsOf(text) as [GownDraft];
        // 0.05 mm a gore: no chalk line is finer.
        for (const [i, hem] of hemsOf(plain).entries())
          expect(Math.abs(hemsOf(full)[i]! - hem), text).toBeLessThan(0.05);
        for (const [i, top] of topsOf(full).entries())
          expect(Math.abs(top - fullness.ratio * shape.tops[i]!), text).toBeLessThan(0.02);
      }),
      { seed: 4, numRuns: 40, endOnFailure: true },
    );
  });

  it('fades over girths as 1 − t²(3 − 2t) from the waist to the hem', () => {
    fc.assert(
      fc.property(shapes, (shape) => {
        const level: Shape = { ...shape, widths: 'girths', drops: [0, 0, 0, 0] };
        const ratio = Number(shape.ratio.toFixed(3));
        const [plain, full] = draftsOf(
          specOf(level, [PLAIN, { ...PLAIN, name: 'net', fullness: { ratio, where: 'waist' } }]),
        ) as [GownDraft, GownDraft];
        const widthAt = (draft: GownDraft, i: number, s: number): number =>
          lengthOf(sampled(draft.frames[i]!.levelAt(s)));
        for (const [i, top] of shape.tops.entries())
          for (const t of [0.1, 0.3, 0.5, 0.7, 0.9, 1, 1.05]) {
            const fade = t >= 1 ? 0 : 1 - t * t * (3 - 2 * t);
            const more = widthAt(full, i, t * shape.hem) - widthAt(plain, i, t * shape.hem);
            // Each level of a shaped gore is within 0.02 mm of its width, twice.
            expect(Math.abs(more - (ratio - 1) * top * fade), `at ${t}`).toBeLessThan(0.05);
          }
      }),
      { seed: 5, numRuns: 15, endOnFailure: true },
    );
  });
});
