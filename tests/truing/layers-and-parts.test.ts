import { describe, expect, it } from 'vitest';
import type { LayerDrafts } from '../../src/draft/draft-layers.ts';
import { godetParts } from '../../src/draft/godets.ts';
import type { Part } from '../../src/draft/part.ts';
import type { Piece } from '../../src/draft/piece.ts';
import type { Line } from '../../src/geometry/curve.ts';
import { draft } from '../../src/pipeline.ts';
import {
  type GownMeasures,
  measureGown,
  type SeamMeasures,
  worstSeams,
} from '../../src/truing/measure-gown.ts';
import { measurePart } from '../../src/truing/measure-parts.ts';
import { measureLayers, trueLayers } from '../../src/truing/true-layers.ts';
import { trueParts } from '../../src/truing/true-parts.ts';
import { plainGown, type Tree } from '../outside/plain-gown.ts';

const UNITS = { units: 'mm' } as const;
const DEGREE = Math.PI / 180;

function drafted(fields: Tree = {}) {
  const text = plainGown({
    units: 'mm',
    bodice: { 'waist-seam': 720 },
    gores: ['front', 'side', 'back'].map((name) => ({ name, top: 120, flare: '16deg' })),
    lengths: { at: { 'centre-front': 1000, 'centre-back': 1100 } },
    layers: [
      { name: 'shell', cloth: 'calico', hem: 'faced' },
      { name: 'net', cloth: 'calico', hem: 'raw', fullness: 2 },
      { name: 'tulle', cloth: 'calico', hem: 'raw', fullness: 2 },
      { name: 'half', cloth: 'calico', hem: 'raw', fullness: 1.5, gores: ['front', 'side'] },
      { name: 'small', cloth: 'calico', hem: 'raw', 'cut-smaller-across': '3%' },
    ],
    godets: [
      { name: 'wedge', seam: 'side/back', from: 600, width: 300 },
      { name: 'fan', seam: 'centre-back', from: 700, width: 200 },
      { name: 'vent', seam: 'centre-front', from: 500, width: 150 },
    ],
    flounces: [],
    ...fields,
  });
  const { gown, diagnostics } = draft({ name: 'layers.yaml', text });
  if (gown === undefined) throw new Error(diagnostics.map(({ message }) => message).join('; '));
  return gown;
}

const gown = drafted();
const PARTS = godetParts(gown.gown, gown.drafts);
const layers = measureLayers(gown.drafts, gown.measures);

/** What is said when the figures of one layer are changed. */
function said(
  name: string,
  change: (measures: GownMeasures) => GownMeasures,
  like: LayerDrafts = gown.drafts,
) {
  const spoiled = layers.map((own) =>
    own.layer.name === name ? { ...own, measures: change(own.measures) } : own,
  );
  return trueLayers(UNITS, like, spoiled);
}

const seam = (name: string, change: Partial<SeamMeasures>) => (measures: GownMeasures) => ({
  ...measures,
  seams: measures.seams.map((own) => (own.name === name ? { ...own, ...change } : own)),
});

describe('layers cut in another way than the gown', () => {
  it('share the figures of what they are cut like, and are true as drafted', () => {
    const [shell, net, tulle, half, small] = layers;
    expect(shell!.measures).toBe(gown.measures);
    expect(tulle!.measures).toBe(net!.measures);
    expect(half!.measures).not.toBe(net!.measures);
    expect(layers.map(({ layer }) => layer.name)).toEqual(['shell', 'net', 'tulle', 'half', 'small']);
    // Gathered twice as full it is sewn to the same length; cut 3 % smaller it is sewn so.
    expect(net!.measures.waist.sewn).toBeCloseTo(720, 1);
    expect(small!.measures.waist.sewn).toBeCloseTo(0.97 * 720, 1);
    expect(trueLayers(UNITS, gown.drafts, layers)).toEqual([]);
  });

  it('are told which seam differs, of which layer, by both of its lengths', () => {
    expect(said('net', seam('side/back', { lengths: [1000, 1000.09] }))).toEqual([]);
    const [finding, ...more] = said('net', seam('side/back', { lengths: [1003, 1000] }));
    expect(more).toEqual([]);
    expect(finding!.code).toBe('seams-differ');
    expect(finding!.message).toBe(
      'The two sides of seam `side/back` in layer `net` differ: `side` 1003 mm, `back` 1000 mm.',
    );
    expect(said('net', seam('side/back', { lengths: [1000, 1000.11] }))).toHaveLength(1);
  });

  it('are told where hem or waist break, and by how much', () => {
    for (const [change, code] of [
      [{ hemAngle: Math.PI + 0.2 * DEGREE }, 'hem-not-smooth'],
      [{ waistAngle: Math.PI - 0.2 * DEGREE }, 'waist-not-smooth'],
    ] as const) {
      const found = said('small', seam('front/side', change));
      expect(found.map((one) => one.code)).toEqual([code]);
      expect(found[0]!.message).toContain(`at \`front/side\` in layer \`small\`: the two angles add to 1`);
      expect(found[0]!.message).toContain(code === 'hem-not-smooth' ? '180.2°' : '179.8°');
    }
    expect(said('small', seam('front/side', { hemAngle: Math.PI + 0.09 * DEGREE }))).toEqual([]);
    expect(said('small', seam('front/side', { waistAngle: Math.PI - 0.09 * DEGREE }))).toEqual([]);
  });

  it('are asked once for a draft that several share, only of gores that they have, never of the gown itself', () => {
    const spoiled = seam('side/back', { lengths: [900, 1000] });
    expect(said('tulle', spoiled)).toEqual([]);
    expect(said('half', spoiled)).toEqual([]);
    expect(said('half', seam('front/side', { lengths: [900, 1000] }))).toHaveLength(1);
    expect(said('shell', spoiled)).toEqual([]);
  });

  it('may miss the waist by what a specialist trues to, longer or shorter', () => {
    const sewn = (by: number) => (measures: GownMeasures) => ({
      ...measures,
      waist: { ...measures.waist, sewn: 720 + by },
    });
    expect([said('net', sewn(1.4)), said('net', sewn(-1.4))]).toEqual([[], []]);
    const [longer, shorter] = [said('net', sewn(2)), said('net', sewn(-2))];
    expect(longer.map(({ code, message }) => [code, message])).toEqual([
      ['layer-misses-waist-seam', 'As drafted, layer `net` is 2 mm longer than the waist seam all round.'],
    ]);
    expect(shorter.map(({ message }) => message)).toEqual([
      'As drafted, layer `net` is 2 mm shorter than the waist seam all round.',
    ]);
    // What is cut smaller across is held against tops that are.
    const small = (by: number) => (measures: GownMeasures) => ({
      ...measures,
      waist: { ...measures.waist, sewn: 698.4 + by },
    });
    expect([said('small', small(1)), said('small', small(-1))]).toEqual([[], []]);
    expect(said('small', small(3))).toHaveLength(1);
  });
});

describe('the worst seams of a layer', () => {
  const measures = gown.measures;
  const all = { gores: ['front', 'side', 'back'] };
  const worst = (change: (own: GownMeasures) => GownMeasures, of = all) =>
    worstSeams(gown.drafts.gown, change(measures), of);
  const figures = (name: string, change: Partial<SeamMeasures>, others: Partial<SeamMeasures> = {}) =>
    worst((own) => seam(name, change)({ ...own, seams: own.seams.map((one) => ({ ...one, ...others })) }));

  it('are the one that differs most and the angle farthest from straight, to either side', () => {
    const none = { lengths: [1000, 1000] as const, hemAngle: Math.PI, waistAngle: Math.PI };
    expect(figures('side/back', {}, none)).toEqual({ difference: 0, hemAngle: Math.PI, waistAngle: Math.PI });
    expect(figures('side/back', { lengths: [1000, 1000.7] }, none).difference).toBeCloseTo(0.7, 9);
    expect(figures('side/back', { lengths: [1000.7, 1000] }, none).difference).toBeCloseTo(0.7, 9);
    for (const off of [0.3, -0.3]) {
      expect(
        figures('side/back', { hemAngle: Math.PI + off }, { ...none, hemAngle: Math.PI - off / 2 }).hemAngle,
      ).toBeCloseTo(Math.PI + off, 12);
      expect(
        figures('front/side', { waistAngle: Math.PI + off }, { ...none, waistAngle: Math.PI - off / 2 })
          .waistAngle,
      ).toBeCloseTo(Math.PI + off, 12);
    }
  });

  it('are those that it has and that are sewn', () => {
    const spoiled = seam('side/back', { lengths: [900, 1000], hemAngle: 2 });
    expect(worst(spoiled, { gores: ['front', 'side'] }).difference).toBeLessThan(1e-3);
    expect(worst(spoiled, { gores: ['front', 'side'] }).hemAngle).toBeCloseTo(Math.PI, 6);
    expect(worst(spoiled).difference).toBeCloseTo(100, 6);
    expect(worst(seam('side/back', { lengths: [900, 1000], free: true })).difference).toBeLessThan(1e-3);
  });
});

describe('what a godet is sewn to', () => {
  const part = (name: string): Part => PARTS.find(({ piece }) => piece.gore === name)!;
  /** One side of a piece drawn out at its lower end, straight on. */
  const longer = (piece: Piece, side: 'front' | 'back', by: number): Piece => {
    const index = side === 'front' ? 3 : 1;
    const line = piece.edges[index]!.curves[0] as Line;
    const [dx, dy] = [line.to.x - line.from.x, line.to.y - line.from.y];
    const grown = { x: (dx * by) / Math.hypot(dx, dy), y: (dy * by) / Math.hypot(dx, dy) };
    const own: Line =
      side === 'front'
        ? { ...line, from: { x: line.from.x - grown.x, y: line.from.y - grown.y } }
        : { ...line, to: { x: line.to.x + grown.x, y: line.to.y + grown.y } };
    return {
      ...piece,
      edges: piece.edges.map((edge, i) => (i === index ? { ...edge, curves: [own] } : edge)),
    };
  };

  it.each(['wedge', 'fan', 'vent'])('%s meets both sides of its seam, its hem straight through', (name) => {
    const measures = measurePart(gown.drafts, part(name));
    expect(measures.difference).toBeLessThan(0.02);
    expect(measures.hemAngle).toBeCloseTo(Math.PI, 4);
    for (const side of ['front', 'back'] as const) {
      const spoiled = { ...part(name), piece: longer(part(name).piece, side, 4) };
      expect(measurePart(gown.drafts, spoiled).difference).toBeCloseTo(4, 1);
    }
  });

  it('is off by what its hem turns, either side, whichever is more', () => {
    const own = part('wedge');
    const before = measurePart(gown.drafts, own).hemAngle;
    expect(before).toBeCloseTo(Math.PI, 4);
    // The same godet let into a seam whose hem slopes otherwise: what the seam is not square by shows.
    const moved = {
      ...own,
      of: { ...own.of, godet: { ...gown.gown.godets.find(({ name }) => name === 'vent')!, from: 600 } },
    } as Part;
    const { hemAngle } = measurePart(gown.drafts, moved);
    expect(Math.abs(hemAngle - Math.PI)).toBeGreaterThan(0.5 * DEGREE);
  });

  it('is said in words: the part, its layer, how far off', () => {
    const own = part('wedge');
    const found = (difference: number, hemAngle = Math.PI) =>
      trueParts(UNITS, [{ part: own, measures: { difference, hemAngle } }]);
    expect([found(0.09), found(0, Math.PI + 0.09 * DEGREE), found(0, Math.PI - 0.09 * DEGREE)]).toEqual([
      [],
      [],
      [],
    ]);
    expect(found(3).map(({ code, message }) => [code, message])).toEqual([
      [
        'part-misses-seam',
        '`wedge` (layer `shell`) does not meet what it is sewn to: a side is off by 3 mm, the angles at its hem add to 180.0°.',
      ],
    ]);
    for (const off of [-0.5, 0.5]) {
      expect(found(0, Math.PI + off * DEGREE)[0]!.message).toContain(`add to ${(180 + off).toFixed(1)}°`);
    }
    expect(found(0.2)[0]!.span).toEqual(own.place());
    expect(found(0.11)).toHaveLength(1);
  });
});

describe('a gown whose two sides differ', () => {
  it('has figures of both, each with its side; what is the same on both has none', () => {
    const bent = drafted({
      layers: [{ name: 'shell', cloth: 'calico', hem: 'faced' }],
      godets: [],
      fittings: [
        {
          date: '2027-03-01',
          side: 'left',
          seams: [{ seam: 'front/side', from: 150, to: 600, 'take-in': 5 }],
        },
      ],
    });
    const { gores, seams } = measureGown(bent.drafts.gown);
    expect(
      gores
        .filter(({ name }) => name === 'side')
        .map(({ side }) => side)
        .sort(),
    ).toEqual(['left', 'right']);
    expect(
      seams
        .filter(({ name }) => name === 'front/side')
        .map(({ side }) => side)
        .sort(),
    ).toEqual(['left', 'right']);
    for (const { name, side } of seams.filter(({ name }) => name.startsWith('centre')))
      expect([name, side]).toEqual([name, undefined]);
    expect(gown.measures.gores.some((gore) => 'side' in gore)).toBe(false);
    expect(gown.measures.seams.some((own) => 'side' in own || 'free' in own)).toBe(false);
  });
});
