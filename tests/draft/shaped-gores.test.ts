import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stringify } from 'yaml';
import type { GownDraft } from '../../src/draft/draft-gown.ts';
import { type DraftedGown, draft } from '../../src/pipeline.ts';
import { evenly } from '../evenly.ts';
import { distanceTo, edgeOf, lengthOf, sampled } from '../fittings/sampled.ts';

const SIZES = { mm: 1, cm: 10, in: 25.4 } as const;

interface Body {
  readonly symmetry: 'mirrored' | 'none';
  readonly units: keyof typeof SIZES;
  readonly tops: readonly number[];
  readonly grains: readonly string[];
  /** Where the girths were measured, mm down, and how often the waist each is. */
  readonly levels: readonly (readonly [down: number, times: number])[];
  readonly drop: number;
  readonly full: number;
}

const bodies: fc.Arbitrary<Body> = fc
  .record({
    symmetry: fc.constantFrom('mirrored' as const, 'none' as const),
    units: fc.constantFrom('mm' as const, 'cm' as const, 'in' as const),
    tops: fc.array(evenly(60, 180), { minLength: 2, maxLength: 6 }),
    grains: fc.array(fc.constantFrom('centre', 'front-edge', 'back-edge'), { minLength: 6, maxLength: 6 }),
    hip: fc.tuple(evenly(150, 260), evenly(1.1, 1.6)),
    knee: evenly(0.2, 1),
    hem: evenly(-0.2, 1.2),
    drop: fc.constantFrom(0, 0, 40),
    full: evenly(1, 1.4),
  })
  .map(({ hip, knee, hem, ...raw }) => ({
    ...raw,
    levels: [[0, 1], hip, [600, hip[1] + knee], [1000, hip[1] + knee + hem]] as const,
  }));

/** Level cloth as long as the last girth is down; a layer for each girth, which ends at it. */
function drafted(body: Body, factor = 1): DraftedGown | undefined {
  const by = (mm: number): number => (mm * factor) / SIZES[body.units];
  const closed = body.symmetry === 'none';
  const names = body.tops.map((_, i) => 'abcdef'[i]!);
  const waist = (closed ? 1 : 2) * body.tops.reduce((sum, top) => sum + top, 0);
  const first = closed ? `${names.at(-1)}/a` : 'centre-front';
  const stations = [
    first,
    ...names.slice(1).map((name, i) => `${names[i]}/${name}`),
    ...(closed ? [] : ['centre-back']),
  ];
  const text = stringify({
    format: 1,
    gown: 'Shaped',
    units: body.units,
    symmetry: body.symmetry,
    bodice: { 'waist-seam': by(waist), 'drop-below-waist': { [first]: by(body.drop) } },
    gores: names.map((name, i) => ({ name, top: by(body.tops[i]!), grain: body.grains[i] })),
    petticoat: { girths: body.levels.map(([down, times]) => ({ down: by(down), girth: by(times * waist) })) },
    lengths: {
      at: Object.fromEntries(stations.map((name, i) => [name, by(1000 - (i === 0 ? body.drop : 0))])),
    },
    allowances: { seam: by(10), waist: by(10), hem: by(10) },
    layers: [
      ...body.levels
        .slice(1)
        .map(([down], i) => ({ name: `to-${i}`, cloth: 'calico', hem: 'raw', shorter: by(1000 - down) })),
      { name: 'full', cloth: 'calico', hem: 'raw', fullness: Number(body.full.toFixed(2)) },
    ],
    cloths: { calico: { width: by(4000) } },
  });
  const { gown, diagnostics } = draft({ name: 'shaped.yaml', text });
  const errors = diagnostics.filter(({ level }) => level === 'error').map(({ code }) => code);
  // Some bodies widen faster than any seam can follow, which is said.
  expect(errors, text).toEqual(errors.filter((code) => code === 'gore-widens-too-fast'));
  return errors.length > 0 ? undefined : gown;
}

const hemRound = ({ pieces, gown }: GownDraft): number =>
  (gown.round === 'mirrored' ? 2 : 1) *
  pieces.reduce((sum, piece) => sum + lengthOf(sampled(edgeOf(piece, 'hem'), 200)), 0);

describe('gores shaped over girths', () => {
  it('measure every stated girth all round within 0.1 mm, drawn down to it; both sides of a seam are as long as said', () => {
    fc.assert(
      fc.property(bodies, (body) => {
        const gown = drafted(body);
        if (gown === undefined) return;
        const waist = (body.symmetry === 'none' ? 1 : 2) * body.tops.reduce((sum, top) => sum + top, 0);
        for (const [i, [down, times]] of body.levels.slice(1).entries()) {
          const { draft: drawn } = gown.drafts.layers[i]!;
          expect(Math.abs(hemRound(drawn) - times * waist), `${down} down`).toBeLessThan(0.1);
        }
        for (const { layer, draft: drawn } of gown.drafts.layers)
          for (const [i, piece] of drawn.pieces.entries())
            for (const [edge, station] of [
              [piece.edges[3]!, i],
              [piece.edges[1]!, i + 1],
            ] as const)
              expect(
                Math.abs(lengthOf(sampled(edge.curves, 100)) - drawn.lengths[station]!),
                `${layer.name}, ${piece.gore}`,
              ).toBeLessThan(0.01);
      }),
      { seed: 8, numRuns: 12, endOnFailure: true },
    );
  }, 240_000);

  it('grow with their measures: 0.8 times the body is 0.8 times the gore', () => {
    fc.assert(
      fc.property(bodies, (body) => {
        const [once, other] = [drafted(body), drafted(body, 0.8)];
        expect(once === undefined).toBe(other === undefined);
        if (once === undefined || other === undefined) return;
        for (const [k, { draft: drawn }] of once.drafts.layers.entries())
          for (const [i, piece] of drawn.pieces.entries()) {
            const smaller = other.drafts.layers[k]!.draft.pieces[i]!;
            for (const [j, { curves }] of piece.edges.entries()) {
              const line = sampled(smaller.edges[j]!.curves, 200);
              // Each line lies within 0.004 mm of its true one.
              for (const { x, y } of sampled(curves, 7))
                expect(distanceTo(line, { x: 0.8 * x, y: 0.8 * y }), piece.gore).toBeLessThan(0.02);
            }
          }
      }),
      { seed: 9, numRuns: 8, endOnFailure: true },
    );
  }, 240_000);
});

describe('a godet', () => {
  it('grows with its measures', () => {
    fc.assert(
      fc.property(evenly(150, 600), evenly(200, 700), (width, from) => {
        const pieceAt = (factor: number) => {
          const by = (mm: number): number => mm * factor;
          const text = stringify({
            format: 1,
            gown: 'Godet',
            units: 'mm',
            bodice: { 'waist-seam': by(720) },
            gores: ['a', 'b', 'c'].map((name) => ({ name, top: by(120), flare: '16deg' })),
            lengths: { at: { 'centre-front': by(1000), 'centre-back': by(1080) } },
            godets: [{ name: 'wedge', seam: 'a/b', from: by(from), width: by(width) }],
            allowances: { seam: by(10), waist: by(10), hem: by(10) },
            layers: [{ name: 'shell', cloth: 'calico', hem: 'faced' }],
            cloths: { calico: { width: by(3000) } },
          });
          return draft({ name: 'godet.yaml', text }).gown!.cut.pieces.find(({ gore }) => gore === 'wedge')!
            .piece;
        };
        const [once, larger] = [pieceAt(1), pieceAt(1.25)];
        for (const [j, { curves }] of once.edges.entries()) {
          const line = sampled(larger.edges[j]!.curves, 200);
          for (const { x, y } of sampled(curves, 10))
            expect(distanceTo(line, { x: 1.25 * x, y: 1.25 * y })).toBeLessThan(0.02);
        }
      }),
      { seed: 10, numRuns: 20, endOnFailure: true },
    );
  });
});
