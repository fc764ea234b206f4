import { describe, expect, it } from 'vitest';
import { sectorFrame } from '../../src/draft/sector-frame.ts';
import { insetSide, sameSide } from '../../src/fittings/altered-side.ts';
import { seamInset } from '../../src/fittings/seam-inset.ts';
import { draft } from '../../src/pipeline.ts';
import { expectFrame } from '../draft/frame-holds.ts';
import { plainGown, type Tree } from '../outside/plain-gown.ts';
import { away } from './sampled.ts';

/** Cones that are fitted: all that happens to them is known by their whole angle. mm, degrees. */

const DEGREE = Math.PI / 180;
const on = (entry: Tree): Tree => ({ date: '2027-03-01', ...entry });
const RING: Tree = {
  symmetry: 'none',
  gores: ['a', 'b', 'c'].map((name) => ({ name, top: 240, flare: '20deg' })),
  lengths: { measured: 'finished', at: { 'c/a': 900 } },
};
const HALVES: Tree = {
  gores: ['a', 'b', 'c'].map((name) => ({ name, top: 120, flare: '10deg' })),
  lengths: { measured: 'finished', at: { 'centre-front': 900, 'centre-back': 900 } },
};
function drafted(fittings: readonly Tree[], fields: Tree) {
  const text = plainGown({ units: 'mm', bodice: { 'waist-seam': 720 }, ...fields, fittings });
  const { gown, diagnostics } = draft({ name: 'cone.yaml', text });
  if (gown === undefined) throw new Error(diagnostics.map(({ message }) => message).join('; '));
  const said = (code: string) => diagnostics.filter((one) => one.code === code).map(({ message }) => message);
  return { gown, said };
}

describe('a waist edge that was moved on a cone of 60°', () => {
  it.each([
    ['all the way round', RING],
    ['of two halves', HALVES],
  ])('%s is shorter by its angle times that, and its seams make that good', (_, fields) => {
    const { gown, said } = drafted([on({ waist: { 'all-round': 12 } })], fields);
    const [, by, words] = /waist edge is ([\d.]+) mm (longer|shorter) all round/.exec(
      said('fitting-moves-waist')[0]!,
    )!;
    expect(Number(by)).toBeCloseTo(60 * DEGREE * 12, 2);
    expect(words).toBe('shorter');
    expect(said('fitting-moves-waist')[0]).toContain('its seams are let out by so much');
    expect(said('fitting-reaches-bodice')).toEqual([]);
    expect(gown.measures.waist.sewn).toBeCloseTo(720, 1);
    for (const length of gown.drafts.gown.lengths) expect(length).toBeCloseTo(912, 2);
    const down = drafted([on({ waist: { 'all-round': -12 } })], fields).said('fitting-moves-waist');
    expect(down).toEqual([expect.stringMatching(/12\.57 mm longer.*its seams are taken in by so much/)]);
  });
});

describe('a hem pinned round a ring', () => {
  // Round the hem every gore has 240 and 20° of 900.
  const each = 240 + 20 * DEGREE * 900;
  const hem = (from: string, along: number) => {
    const pins = [0, 75, 150].map((more, i) => ({ from, along: along + more, up: [4, 9, 4][i] }));
    const { gown } = drafted([on({ levelled: pins })], RING);
    const { hem: own } = gown.drafts.gown;
    return Array.from({ length: 600 }, (_, i) => own.valueAt((own.ways[3]! * i) / 600));
  };

  it('is the same hem from whichever seam its pins were counted, on past the seam that closes it', () => {
    const own = hem('a/b', 100);
    expect(Math.min(...own)).toBeCloseTo(900 - 9, 1);
    expect(Math.max(...own)).toBeCloseTo(900, 2);
    for (const other of [hem('c/a', each + 100), hem('b/c', 2 * each + 100)])
      other.forEach((depth, i) => {
        expect(depth).toBeCloseTo(own[i]!, 1);
      });
  });
});

describe('a layer that is fitted by itself', () => {
  const layers = ['lining', 'shell'].map((name) => ({ name, cloth: 'calico', hem: 'raw' }));
  const up = (by: number, layer?: string) =>
    on({ hem: { 'all-round': by }, ...(layer === undefined ? {} : { layer }) });
  const lengthsOf = (fittings: readonly Tree[]) => {
    const { gown } = drafted(fittings, { ...HALVES, layers });
    return [
      gown.drafts.gown,
      ...layers.map(({ name }) => gown.drafts.layers.find(({ layer }) => layer.name === name)!.draft),
    ].map(({ lengths }) => lengths.map((length) => Math.round(length * 100) / 100));
  };

  it('goes on with its own lines, and has what all of them have', () => {
    const all = (length: number) => Array(4).fill(length);
    const [lining, shell] = drafted([up(10)], { ...HALVES, layers }).gown.drafts.layers;
    expect(lining!.draft).toBe(shell!.draft);
    expect(lengthsOf([up(15, 'lining')])).toEqual([all(900), all(885), all(900)]);
    expect(lengthsOf([up(10), up(15, 'lining')])).toEqual([all(890), all(875), all(890)]);
    expect(lengthsOf([up(15, 'lining'), up(10), up(5, 'shell'), up(1)])).toEqual([
      all(889),
      all(874),
      all(884),
    ]);
  });

  it('is traced as the layer that it is; what is wrong with a fitting of all is said once', () => {
    const steep = on({ seams: [{ seam: 'a/b', from: 100, to: 200, 'take-in': 12 }] });
    const { gown, said } = drafted([up(15, 'lining'), steep, up(5, 'shell')], { ...HALVES, layers });
    expect(gown.report.fittings).toMatchObject([{ layer: 'lining' }, {}, { layer: 'shell' }]);
    expect(gown.report.fittings![1]).not.toHaveProperty('layer');
    expect(said('fitting-dents')).toHaveLength(1);
  });

  it('two steep seams are told, each once, though her sides differ', () => {
    const steep = (seam: string, own: Tree = {}) => ({ seam, from: 100, to: 200, 'take-in': 12, ...own });
    const fitting = on({
      seams: [
        steep('a/b'),
        steep('b/c'),
        { seam: 'centre-back', from: 100, to: 700, 'take-in': 2 },
        { ...steep('b/c'), from: 300, to: 700, 'take-in': 2, side: 'left' },
      ],
    });
    const found = drafted([fitting], HALVES).said('fitting-dents');
    expect(found).toHaveLength(2);
    expect(new Set(found).size).toBe(2);
  });
});

describe('a seam taken in, hem let down past it', () => {
  it('keeps its length, both gores lie flat as frames do as far as the new hem', () => {
    const { gown } = drafted(
      [on({ hem: { 'all-round': -160 }, seams: [{ seam: 'a/b', from: 200, to: 700, 'take-in': 8 }] })],
      HALVES,
    );
    for (const length of gown.drafts.gown.lengths) expect(length).toBeCloseTo(1060, 2);
    for (const frame of gown.drafts.gown.frames.slice(0, 2)) expectFrame(frame, [62.5, 302.5, 1060], 0.002);
    for (const { lengths, hemAngle, waistAngle } of gown.measures.seams) {
      expect(Math.abs(lengths[0] - lengths[1])).toBeLessThan(0.02);
      expect(hemAngle).toBeCloseTo(Math.PI, 4);
      expect(waistAngle).toBeCloseTo(Math.PI, 4);
    }
  });

  it.each(['front', 'back'] as const)(
    '%s edge: a millimetre of it is a millimetre, from the waist up and down',
    (side) => {
      const frame = sectorFrame(150, 0.08, 0.12);
      const inset = seamInset([{ from: 150, to: 450, amount: 9, open: { above: true, below: false } }]);
      const edge = insetSide(frame, side, inset, { from: 20, top: -80, bottom: 600 });
      // What is counted from keeps its number.
      expect(edge.placeAt(20).slant).toBeCloseTo(20, 9);
      const steps = 6000;
      let sum = 0;
      for (let i = 0; i < steps; i++)
        sum += away(edge.pointAt(-60 + (620 * i) / steps), edge.pointAt(-60 + (620 * (i + 1)) / steps));
      expect(sum).toBeCloseTo(620, 4);
      for (const s of [-60, 20, 200, 333, 400, 560]) {
        const { slant, part } = edge.placeAt(s);
        const by = part * frame.widthAt(slant);
        expect(side === 'front' ? by : frame.widthAt(slant) - by).toBeCloseTo(inset.valueAt(slant), 9);
        const [a, b] = [edge.pointAt(s - 0.01), edge.pointAt(s + 0.01)];
        const down = edge.downwards(s);
        expect((b.x - a.x) / 0.02).toBeCloseTo(down.x, 5);
        expect((b.y - a.y) / 0.02).toBeCloseTo(down.y, 5);
      }
      const same = sameSide(frame, side);
      const part = side === 'front' ? 0 : 1;
      expect(same.placeAt(123)).toEqual({ slant: 123, part });
      expect(same.pointAt(123)).toEqual(frame.pointAt(123, part));
      const [a, b] = [frame.pointAt(122, part), frame.pointAt(124, part)];
      expect(same.downwards(123)).toEqual({
        x: expect.closeTo((b.x - a.x) / 2, 9),
        y: expect.closeTo((b.y - a.y) / 2, 9),
      });
    },
  );
});
