import { describe, expect, it } from 'vitest';
import { fullnessRemarks, quarterNotches } from '../../src/allowances/fullness-marks.ts';
import type { TopFullness } from '../../src/allowances/top-fullness.ts';
import type { CutPiece, Piece } from '../../src/draft/piece.ts';
import { draft } from '../../src/pipeline.ts';
import { english } from '../../src/words/english.ts';
import { distanceTo, edgeOf, sampled } from '../fittings/sampled.ts';
import { plainGown, type Tree } from '../outside/plain-gown.ts';

/** Three gores with seams of 900 mm; invented. */
const STRAIGHT: Tree = {
  units: 'mm',
  bodice: { 'waist-seam': 720 },
  gores: ['front', 'side', 'back'].map((name) => ({ name, top: 120, hem: 240 })),
  lengths: { measured: 'finished', 'hem-width-at': 900, at: { 'centre-front': 900, 'centre-back': 900 } },
};

function drafted(fields: Tree): { pieces: readonly CutPiece[]; found: (code: string) => string[] } {
  const { gown, diagnostics } = draft({ name: 'marks.yaml', text: plainGown(fields) });
  if (gown === undefined) throw new Error(JSON.stringify(diagnostics.map(({ message }) => message)));
  return {
    pieces: gown.cut.pieces,
    found: (code) => diagnostics.filter((one) => one.code === code).map(({ message }) => message),
  };
}

/** Distances of the marks on one edge of a gore, down from the waist. */
function marksOn(pieces: readonly CutPiece[], gore: string, edge: string): number[] {
  const piece = pieces.find((one) => one.gore === gore)!;
  return piece.notches.filter((notch) => notch.edge === edge).map(({ distance }) => distance);
}

describe('marks for godets', () => {
  const seams = ['front/side', 'side/back'];
  const godets = [
    { name: 'long', seam: 'front/side', from: 400, width: 300 },
    { name: 'short', seam: 'side/back', from: 530, width: 300 },
  ];
  const withGodets = () => drafted({ ...STRAIGHT, godets }).pieces;
  const without = () => drafted(STRAIGHT).pieces;

  it.each([
    ['front/side', 'front', 'side', [400, 650]],
    ['side/back', 'side', 'back', [530, 715]],
  ])('%s: where the seam opens, and half-way down (common practice), on both gores', (edge, a, b, points) => {
    const pieces = withGodets();
    for (const gore of [a, b]) {
      for (const point of points) {
        const near = marksOn(pieces, gore, edge).map((mark) => Math.abs(mark - point));
        expect(Math.min(...near)).toBeLessThan(0.01);
      }
    }
    expect(marksOn(pieces, a, edge)).toEqual(marksOn(pieces, b, edge));
  });

  it('come in order, and what was marked before stays where it is clear of them: 1.3 cm (textbook)', () => {
    const points = [
      [400, 650],
      [530, 715],
    ];
    seams.forEach((edge, i) => {
      const clear = marksOn(without(), 'side', edge).filter((mark) =>
        points[i]!.every((point) => Math.abs(mark - point) > 13.5),
      );
      const marks = marksOn(withGodets(), 'side', edge);
      expect(marks).toHaveLength(clear.length + 2);
      [...clear, ...points[i]!]
        .sort((p, q) => p - q)
        .forEach((mark, k) => {
          expect(marks[k]).toBeCloseTo(mark, 2);
        });
    });
  });

  it('take the place of a mark that they fall on', () => {
    const [first = Number.NaN] = marksOn(without(), 'front', 'front/side');
    const moved = drafted({
      ...STRAIGHT,
      godets: [{ name: 'high', seam: 'front/side', from: first + 5, width: 300 }],
    });
    const marks = marksOn(moved.pieces, 'front', 'front/side');
    expect(marks[0]).toBeCloseTo(first + 5, 2);
    expect(marks.every((mark) => Math.abs(mark - first) > 4)).toBe(true);
  });
});

describe('a rough cut', () => {
  it('is trimmed to the hem: a line as far outside the sewn hem as its allowance', () => {
    const { pieces } = drafted({ ...STRAIGHT, 'rough-cut': { side: 30 } });
    const side = pieces.find(({ gore }) => gore === 'side')!;
    const trim = side.marks.find(({ name }) => name === 'hem-trim')!;
    const hem = sampled(edgeOf(side.piece, 'hem'));
    for (const point of sampled(trim.curves, 20)) {
      const distance = distanceTo(hem, point);
      expect(distance).toBeGreaterThan(9.99);
      expect(distance).toBeLessThan(10.02);
    }
    expect(pieces.filter(({ marks }) => marks.some(({ name }) => name === 'hem-trim'))).toEqual([side]);
  });

  it('has no such line under a hem that is left raw: it is cut at the hem itself', () => {
    const raw = { layers: [{ name: 'shell', cloth: 'calico', hem: 'raw' }], 'rough-cut': { side: 30 } };
    const { pieces } = drafted({ ...STRAIGHT, ...raw });
    expect(pieces.flatMap(({ marks }) => marks)).toEqual([]);
  });
});

describe('a hem that bends tighter than its allowance is wide', () => {
  /** The train begins in a bend of radius 9.2 mm, outward of gore `back`. */
  const tight: Tree = {
    units: 'mm',
    bodice: { 'waist-seam': 240 },
    gores: ['front', 'back'].map((name) => ({ name, top: 60, hem: 60 })),
    lengths: {
      measured: 'finished',
      'hem-width-at': 350,
      at: { 'centre-front': 350, 'front/back': 350, 'centre-back': 373.5 },
    },
    train: { begins: 'front/back', 'on-floor': 23.5, shape: 'square' },
  };
  const found = (hem: number, layers: readonly Tree[], more: Tree = {}) =>
    drafted({
      ...tight,
      allowances: { seam: 6, waist: 6, hem },
      layers: layers.map((layer, i) => ({ name: `layer-${i + 1}`, cloth: 'calico', hem: 'faced', ...layer })),
      ...more,
    }).found('hem-too-deep');

  it('is told with the width', () => {
    expect(found(8, [{}])).toEqual([]);
    expect(found(12, [{}])).toEqual([
      'The hem of gore `back` (layer `layer-1`) bends tighter than its allowance of 12 mm is wide.',
    ]);
  });

  it('counts what a rough cut adds', () => {
    expect(found(8, [{}], { 'rough-cut': { back: 5 } })).toEqual([expect.stringContaining('of 13 mm')]);
    expect(found(8, [{}], { 'rough-cut': { front: 5 } })).toEqual([]);
  });

  it('is told once for layers that are alike, and once for each width', () => {
    expect(found(12, [{}, {}])).toHaveLength(1);
    expect(found(12, [{}, { allowances: { hem: 14 } }])).toEqual([
      expect.stringContaining('`layer-1`) bends tighter than its allowance of 12 mm'),
      expect.stringContaining('`layer-2`) bends tighter than its allowance of 14 mm'),
    ]);
  });

  it('is nothing to a layer without that gore', () => {
    expect(found(8, [{}, { gores: ['front'], allowances: { hem: 14 } }])).toEqual([]);
    expect(found(8, [{}, { gores: ['back'], allowances: { hem: 14 } }])).toHaveLength(1);
  });
});

describe('ticks to gather by', () => {
  const strip = {
    edges: [{ name: 'waist', curves: [{ kind: 'line', from: { x: 0, y: 0 }, to: { x: 400, y: 0 } }] }],
  } as unknown as Piece;
  const ticks = (width: number) =>
    quarterNotches(strip, width).map(({ distance, ticks: [tick] }) => [
      distance,
      tick!.from.x,
      tick!.from.y,
      tick!.to.y,
    ]);

  it('stand at the quarters, from the cut edge inwards, short of the seam line', () => {
    // Common practice: a snip of 6 mm, never through the stitching.
    expect(ticks(15)).toEqual([
      [100, 100, -15, -9],
      [200, 200, -15, -9],
      [300, 300, -15, -9],
    ]);
    for (const [, , from, to] of ticks(5)) {
      expect(from).toBe(-5);
      expect(to).toBeCloseTo(-2, 9);
    }
  });

  it('are half as deep on an edge that is cut on the seam line', () => {
    for (const [, , from, to] of ticks(0)) expect([from! + 0, to]).toEqual([0, 3]);
  });
});

describe('what is said of a full top', () => {
  const full = (rule: Tree, cut: number, sewn: number) =>
    ({ rule, cut, sewn, ratio: cut / sewn }) as unknown as TopFullness;

  it.each([
    [{ by: 'gathers' }, 1000, 600, 'gather the top from 100 cm to 60 cm'],
    [
      { by: 'pleats', towards: 'left', depth: 20 },
      1000,
      600,
      'pleat the top from 100 cm to 60 cm: 10 pleats, each fold 2 cm deep, towards the left',
    ],
    [
      { by: 'pleats', towards: 'box', depth: 25 },
      1200,
      400,
      'pleat the top from 120 cm to 40 cm: 8 box pleats, each fold 2.5 cm deep',
    ],
    [
      { by: 'pleats', depth: 20 },
      140,
      100,
      'pleat the top from 14 cm to 10 cm: 1 pleat, each fold 2 cm deep',
    ],
  ])('%j', (rule, cut, sewn, words) => {
    const remarks = fullnessRemarks(full(rule, cut, sewn));
    expect(remarks.flatMap(english('cm').remark)).toEqual([words]);
  });
});
