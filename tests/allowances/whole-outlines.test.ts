import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stringify } from 'yaml';
import type { CutPiece } from '../../src/draft/piece.ts';
import type { Curve } from '../../src/geometry/curve.ts';
import { offsetRun } from '../../src/geometry/offset-run.ts';
import { type DraftedGown, draft } from '../../src/pipeline.ts';
import { evenly } from '../evenly.ts';
import { distanceTo, type Place, sampled } from '../fittings/sampled.ts';
import { isInside, loopsOf } from '../outside/measure/polygons.ts';
import { plainGown, type Tree } from '../outside/plain-gown.ts';

const SIZES = { mm: 1, cm: 10, in: 25.4 } as const;

const polygonOf = (edges: CutPiece['cutEdges']): Place[] =>
  edges.flatMap(({ curves }) => sampled(curves, 40).slice(0, -1));

/** What is wrong with the outlines of a gown's pieces, by a polygon library. */
function crossings({ cut }: DraftedGown): string[] {
  return cut.pieces.flatMap(({ gore, layers, piece, cutEdges }) => {
    const [seam, around] = [polygonOf(piece.edges), polygonOf(cutEdges)];
    const where = `${gore} (${layers.join(', ')})`;
    const outside = seam.filter((point) => !isInside(point, around) && distanceTo(around, point) > 0.06);
    return [
      ...(loopsOf(seam) === 1 ? [] : [`${where}: the seam line crosses itself`]),
      ...(loopsOf(around) === 1 ? [] : [`${where}: the cut line crosses itself`]),
      ...(outside.length === 0 ? [] : [`${where}: the cut line crosses the seam line`]),
    ];
  });
}

function draftedOrRefused(text: string): { gown?: DraftedGown; codes: string[] } {
  const { gown, diagnostics } = draft({ name: 'outlines.yaml', text });
  const errors = diagnostics.filter(({ level }) => level === 'error');
  return {
    ...(errors.length === 0 && gown !== undefined ? { gown } : {}),
    codes: errors.map(({ code }) => code),
  };
}

/** Points, folds, one-sided fittings and godets, of which whole pieces with corners in an edge are made. */
const pointed = fc
  .record({
    units: fc.constantFrom('mm' as const, 'cm' as const, 'in' as const),
    symmetry: fc.constantFrom('mirrored' as const, 'mirrored' as const, 'none' as const),
    point: fc.constantFrom('centre-front', 'centre-back'),
    folds: fc.tuple(fc.boolean(), fc.boolean()),
    drop: evenly(10, 90),
    flare: evenly(4, 24),
    train: evenly(0, 400),
    shape: fc.constantFrom('round', 'pointed', 'square'),
    hem: fc.constantFrom('turned', 'faced', 'raw'),
    hemDepth: evenly(5, 45),
    seam: evenly(6, 30),
    fitted: fc.constantFrom('no', 'hem', 'seam'),
    godet: fc.option(evenly(150, 500), { nil: undefined }),
  })
  .map((raw) => {
    const by = (mm: number): number => Math.round(mm) / SIZES[raw.units];
    const closed = raw.symmetry === 'none';
    const names = closed ? ['a', 'b', 'c', 'd', 'e', 'f'] : ['a', 'b', 'c'];
    const gores = names.map((name, i): Tree => {
      const folded = !closed && ((i === 0 && raw.folds[0]) || (i === 2 && raw.folds[1]));
      return folded
        ? { name, 'on-fold': true, 'half-top': by(120), 'half-flare': `${raw.flare}deg` }
        : { name, top: by(120), flare: `${raw.flare}deg` };
    });
    const drops =
      raw.point === 'centre-front'
        ? { 'centre-front': by(raw.drop), 'a/b': by(raw.drop / 3) }
        : { 'centre-back': by(raw.drop), 'b/c': by(raw.drop / 3) };
    const side = closed ? {} : { side: 'left' };
    return plainGown({
      units: raw.units,
      symmetry: raw.symmetry,
      bodice: {
        'waist-seam': by(720),
        ...(closed
          ? { 'drop-below-waist': { 'c/d': by(raw.drop) } }
          : { point: raw.point, 'drop-below-waist': drops }),
      },
      gores,
      lengths: {
        at: closed
          ? { 'f/a': by(1000), 'c/d': by(1000 + raw.train) }
          : { 'centre-front': by(1000), 'a/b': by(1000), 'centre-back': by(1000 + raw.train) },
      },
      train: { begins: 'a/b', shape: raw.shape, ...(closed ? { full: 'c/d', ends: 'e/f' } : {}) },
      allowances: { seam: by(raw.seam), waist: by(15), hem: by(raw.hemDepth) },
      layers: [
        { name: 'shell', cloth: 'calico', hem: raw.hem },
        { name: 'net', cloth: 'calico', hem: 'raw', fullness: 1.8, shorter: by(20) },
      ],
      ...(raw.godet === undefined
        ? {}
        : { godets: [{ name: 'wedge', seam: 'b/c', from: by(700), width: by(raw.godet) }] }),
      ...(raw.fitted === 'no'
        ? {}
        : {
            fittings: [
              {
                date: '2027-03-01',
                ...side,
                ...(raw.fitted === 'hem'
                  ? { hem: { 'a/b': by(5) } }
                  : { seams: [{ seam: 'a/b', from: by(150), to: by(600), 'take-in': by(5) }] }),
              },
            ],
          }),
    });
  });

describe('no outline crosses itself or its seam line', () => {
  it('at points, on folds that a fitting opened, with godets, in every layer: right, or an error that says so', () => {
    let refused = 0;
    fc.assert(
      fc.property(pointed, (text) => {
        const { gown, codes } = draftedOrRefused(text);
        if (gown === undefined) {
          refused++;
          expect(codes, text).toEqual(codes.filter((code) => code === 'outline-crosses-itself'));
          return;
        }
        expect(crossings(gown), text).toEqual([]);
      }),
      { seed: 21, numRuns: 30, endOnFailure: true },
    );
    // Every one of these can be cut.
    expect(refused).toBe(0);
  }, 240_000);

  it('a godet of any angle up to a whole turn, its allowance true along both sides', () => {
    for (let angle = 20; angle <= 350; angle += 15) {
      const width = Math.round((400 * angle * Math.PI) / 180);
      const text = plainGown({
        units: 'mm',
        bodice: { 'waist-seam': 720 },
        gores: ['a', 'b', 'c'].map((name) => ({ name, top: 120, flare: '20deg' })),
        lengths: { at: { 'centre-front': 1000, 'centre-back': 1000 } },
        godets: [{ name: 'wedge', seam: 'a/b', from: 600, width }],
      });
      const { gown } = draftedOrRefused(text);
      expect(gown === undefined ? 'refused' : crossings(gown), `${angle}°`).toEqual([]);
      const { piece, cutEdges } = gown!.cut.pieces.find(({ gore }) => gore === 'wedge')!;
      const around = sampled(
        cutEdges.flatMap(({ curves }) => curves),
        200,
      );
      // Away from the corners at either end, where the notch between the sides closes.
      // Where the two sides close on each other the notch between them begins so far from the point (geometry).
      const closed = angle > 180 ? 15 / Math.sin(((360 - angle) * Math.PI) / 360) : 0;
      const apex = sampled(piece.edges[0]!.curves, 2)[1]!;
      for (const side of [piece.edges[1]!, piece.edges[3]!])
        for (const point of sampled(side.curves, 40)) {
          const down = Math.hypot(point.x - apex.x, point.y - apex.y);
          if (down < Math.max(30, closed + 20) || down > 360) continue;
          expect(Math.abs(distanceTo(around, point) - 15), `${angle}°`).toBeLessThan(0.05);
        }
    }
  });

  it('what cannot be cut is an error at its own line', () => {
    const text = plainGown({
      units: 'mm',
      bodice: { 'waist-seam': 720 },
      gores: ['a', 'b', 'c'].map((name) => ({ name, top: 120, flare: '20deg' })),
      lengths: { at: { 'centre-front': 1000, 'centre-back': 1000 } },
      godets: [{ name: 'wedge', seam: 'a/b', from: 600, width: 2600 }],
    });
    const { diagnostics } = draft({ name: 'outlines.yaml', text });
    const found = diagnostics.filter(({ code }) => code === 'outline-crosses-itself');
    expect(found.map(({ level, message }) => [level, message.includes('wedge')])).toEqual([['error', true]]);
    expect(text.slice(found[0]!.span.start, found[0]!.span.start + 5)).toBe('wedge');
  });
});

describe('a pleat as deep as the cut line of its waist goes across', () => {
  const spec = (depth: string) =>
    readFileSync(
      new URL('../hostile/found/pleat-deeper-than-its-cut-waist.yaml', import.meta.url),
      'utf8',
    ).replace('fold-depth: 3', `fold-depth: ${depth}`);
  const said = (depth: string) =>
    draft({ name: 'pleat.yaml', text: spec(depth) })
      .diagnostics.filter(({ level }) => level === 'error')
      .map(({ code, message }) => [code, message]);

  it('is an error, as its outline would break off there; one that has room is none', () => {
    // The waist's seam line turns by 75.3° round a radius of 3.235 in: 3.13 in across; its cut line, 5/8 in inside, 2.52 in.
    expect(said('3')).toEqual([
      ['outline-crosses-itself', 'The cut line of `back` (layer `shell`) does not close near its `waist`.'],
    ]);
    expect(said('2.4')).toEqual([]);
  });
});

describe('an allowance wider than the top of its gore', () => {
  it('is alike on both sides of a gore that is, and lies inside when it is pressed open', () => {
    fc.assert(
      fc.property(
        evenly(12, 40),
        evenly(1.0, 1.9),
        evenly(-1, 20),
        evenly(8, 25),
        (top, times, flare, waist) => {
          const seam = top * times;
          const text = stringify({
            format: 1,
            gown: 'Narrow',
            units: 'mm',
            bodice: { 'waist-seam': 4 * top + 240 },
            gores: [
              { name: 'a', top: 120, flare: '10deg' },
              { name: 'narrow', top, flare: `${flare}deg` },
              { name: 'c', top, flare: '12deg' },
            ],
            lengths: { at: { 'centre-front': 600, 'centre-back': 600 } },
            allowances: { seam, waist, hem: 10 },
            layers: [{ name: 'shell', cloth: 'calico', hem: 'faced' }],
            cloths: { calico: { width: 3000 } },
          });
          const { gown } = draftedOrRefused(text);
          if (gown === undefined) return;
          expect(crossings(gown), text).toEqual([]);
          const cut = gown.cut.pieces.find(({ gore }) => gore === 'narrow')!;
          const around = polygonOf(cut.cutEdges);
          // Its grain is its axis: the mirror image of every point lies on the outline.
          const axis = cut.piece.grain.from.x;
          for (const { x, y } of around.filter((_, i) => i % 5 === 0))
            expect(distanceTo([...around, around[0]!], { x: 2 * axis - x, y }), text).toBeLessThan(0.05);
          const [from, to] = [cut.piece.edges[1]!.curves[0]!, cut.piece.edges[1]!.curves[0]!]
            .map((curve) => curve as Extract<Curve, { kind: 'line' }>)
            .map((line, i) => (i === 0 ? line.from : line.to));
          const [dx, dy] = [to!.x - from!.x, to!.y - from!.y];
          const length = Math.hypot(dx, dy);
          for (const point of around) {
            const [px, py] = [point.x - from!.x, point.y - from!.y];
            const [way, off] = [(px * dx + py * dy) / length, (px * dy - py * dx) / length];
            if (off <= 0.001 || way > length - 3 * seam) continue;
            const folded = { x: point.x - (2 * off * dy) / length, y: point.y + (2 * off * dx) / length };
            if (!isInside(folded, around))
              expect(distanceTo([...around, around[0]!], folded), text).toBeLessThan(0.05);
          }
        },
      ),
      { seed: 6, numRuns: 60, endOnFailure: true },
    );
  });
});

describe('a line with a corner, moved to its left', () => {
  it('meets on the line that halves the corner, d / cos(half its turn) away (geometry), whichever way it turns', () => {
    for (let turn = -150; turn <= 150; turn += 12) {
      const angle = (turn * Math.PI) / 180;
      // y grows downwards: a positive turn is clockwise, and the left is the outside of it.
      const run: Curve[] = [
        { kind: 'line', from: { x: -400, y: 0 }, to: { x: 0, y: 0 } },
        { kind: 'line', from: { x: 0, y: 0 }, to: { x: 400 * Math.cos(angle), y: 400 * Math.sin(angle) } },
      ];
      const moved = offsetRun(run, 15, 0.004)!;
      const at = 15 / Math.cos(angle / 2);
      const half = angle / 2 - Math.PI / 2;
      const corner = { x: at * Math.cos(half), y: at * Math.sin(half) };
      expect(distanceTo(sampled(moved, 2), corner), `${turn}°`).toBeLessThan(1e-6);
      expect(moved).toHaveLength(2);
    }
  });
});
