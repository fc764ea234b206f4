import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stringify } from 'yaml';
import { draft } from '../../src/pipeline.ts';
import { evenly } from '../evenly.ts';
import type { Tree } from '../outside/plain-gown.ts';
import { cornerAngle, edgeOf, lengthOf, sampled } from './sampled.ts';

const SIZES = { mm: 1, cm: 10, in: 25.4 } as const;

const moves = fc.record({
  units: fc.constantFrom('mm' as const, 'cm' as const, 'in' as const),
  symmetry: fc.constantFrom('mirrored' as const, 'none' as const),
  widths: fc.constantFrom('flare' as const, 'flare' as const, 'girths' as const),
  fold: fc.boolean(),
  flare: evenly(3, 26),
  drop: fc.integer({ min: 0, max: 40 }),
  place: fc.constantFrom('all-round', 0, 1, 2),
  side: fc.constantFrom(undefined, undefined, 'left'),
  up: fc.integer({ min: -15, max: 15 }),
});

describe('a waist edge that is pinned up or down on a skirt that flares', () => {
  it('meets the bodice still, every top its panel, both sides of every seam equal and the edge straight through', () => {
    fc.assert(
      fc.property(moves, (own) => {
        const by = (mm: number): number => mm / SIZES[own.units];
        const closed = own.symmetry === 'none';
        const names = ['a', 'b', 'c'];
        const stations = closed ? ['c/a', 'a/b', 'b/c'] : ['centre-front', 'a/b', 'b/c', 'centre-back'];
        const width = own.widths === 'flare' ? { flare: `${own.flare}deg` } : {};
        const waist = (closed ? 1 : 2) * 420;
        const pinned = typeof own.place === 'number' ? stations[own.place]! : own.place;
        const isCentre = pinned === 'all-round' || pinned.startsWith('centre');
        const text = stringify({
          format: 1,
          gown: 'Waist',
          units: own.units,
          symmetry: own.symmetry,
          bodice: { 'waist-seam': by(waist), 'drop-below-waist': { [stations[0]!]: by(own.drop) } },
          gores: names.map(
            (name, i): Tree =>
              own.fold && !closed && i === 0
                ? {
                    name,
                    'on-fold': true,
                    'half-top': by(140),
                    ...(own.widths === 'flare' ? { 'half-flare': `${own.flare}deg` } : {}),
                  }
                : { name, top: by(140), ...width },
          ),
          lengths: { at: Object.fromEntries([stations[0], stations.at(-1)].map((name) => [name, by(1000)])) },
          ...(own.widths === 'flare'
            ? {}
            : {
                petticoat: {
                  girths: [
                    [0, 1],
                    [250, 1.5],
                    [1000, 2.5],
                  ].map(([down, times]) => ({ down: by(down!), girth: by(times! * waist) })),
                },
              }),
          allowances: { seam: by(15), waist: by(15), hem: by(15) },
          layers: [
            { name: 'shell', cloth: 'calico', hem: 'faced' },
            { name: 'net', cloth: 'calico', hem: 'raw', fullness: 1.6 },
          ],
          cloths: { calico: { width: by(4000) } },
          fittings: [
            {
              date: '2027-03-01',
              waist: { [pinned]: by(own.up) },
              ...(own.side === undefined || closed || isCentre ? {} : { side: own.side }),
            },
          ],
        });
        const { gown, diagnostics } = draft({ name: 'waist.yaml', text });
        const errors = diagnostics.filter(({ level }) => level === 'error');
        expect(
          errors.map(({ message }) => message),
          text,
        ).toEqual([]);
        for (const { layer, draft: drawn } of gown!.drafts.layers) {
          const full = layer.name === 'net' ? 1.6 : 1;
          const { pieces } = drawn;
          for (const piece of pieces) {
            const top = lengthOf(sampled(edgeOf(piece, 'waist')));
            // Fitted lines, and chords of half a millimetre.
            expect(Math.abs(top / full - 140), `${layer.name}, ${piece.gore}\n${text}`).toBeLessThan(0.02);
          }
          for (const [i, piece] of pieces.entries()) {
            const next = pieces[i + 1] ?? (drawn.gown.round !== 'mirrored' ? pieces[0] : undefined);
            if (next === undefined || piece.backEdge === 'fold') continue;
            const [one, two] = [edgeOf(piece, piece.backEdge), next.edges[3]!.curves];
            expect(Math.abs(lengthOf(sampled(one)) - lengthOf(sampled(two))), text).toBeLessThan(0.05);
            const sum =
              cornerAngle(piece.edges[0]!.curves, piece.edges[1]!.curves) +
              cornerAngle(next.edges[3]!.curves, next.edges[0]!.curves);
            expect(Math.abs(sum - 180), text).toBeLessThan(0.1);
          }
        }
      }),
      { seed: 12, numRuns: 12, endOnFailure: true },
    );
  }, 240_000);
});
