import { describe, expect, it } from 'vitest';
import { draftLayers } from '../../src/draft/draft-layers.ts';
import { gownOfSpec } from '../../src/gown/gown-of-spec.ts';
import { readSpec } from '../../src/gown-file/read-spec.ts';
import { skirtOf } from '../../src/making/skirt.ts';
import { trainFootprint } from '../../src/making/train/train-footprint.ts';
import { plainGown, type Tree } from '../outside/plain-gown.ts';

function footprintOf(fields: Tree) {
  const { spec, diagnostics } = readSpec({ name: 'gown.yaml', text: plainGown({ units: 'mm', ...fields }) });
  if (spec === undefined) throw new Error(diagnostics.map(({ message }) => message).join('; '));
  const gown = gownOfSpec(spec);
  const drafts = draftLayers(gown, gown.layers);
  if ('reason' in drafts) throw new Error(drafts.reason);
  return trainFootprint(drafts.gown, skirtOf(gown, drafts), gown.godets);
}

/** Four gores of a cone: 720 round at the waist, 2400 at 1000 down; all its gores together turn by 1.68 radians. */
const cone = {
  bodice: { 'waist-seam': 720 },
  gores: ['front', 'back'].map((name) => ({ name, top: 180, hem: 600 })),
};
const turn = 1680 / 1000;
const radius = (down: number) => (720 + 1680 * (down / 1000)) / turn;
const both = (length: number) => ({ 'centre-front': length, 'centre-back': length });

describe('what lies on the floor', () => {
  it('a cone 200 too long all round lies as the ring sector that it was cut as (geometry)', () => {
    const print = footprintOf({
      ...cone,
      lengths: { measured: 'finished', 'hem-width-at': 1000, at: both(1200), 'to-floor': both(1000) },
    })!;
    expect(Math.abs(print.length - 200)).toBeLessThan(0.01);
    expect(Math.abs(print.width - 2 * radius(1200) * Math.sin(turn / 2))).toBeLessThan(0.05);
    expect(Math.abs(print.radius - 2400 / (2 * Math.PI))).toBeLessThan(0.01);
    // Every place of the hem lies on the outer circle, every one of the floor line on the inner.
    const apex = { x: 0, y: -radius(1000) };
    const rings = print.outline.map(({ x, y }) => Math.hypot(x - apex.x, y - apex.y));
    for (const own of rings)
      expect(Math.min(Math.abs(own - radius(1000)), Math.abs(own - radius(1200)))).toBeLessThan(0.05);
  });

  it('a train is as long as was said, alike on both sides, and ends where it has risen off the floor', () => {
    const print = footprintOf({
      ...cone,
      lengths: { measured: 'to-floor', 'off-floor': 20, 'hem-width-at': 1000, at: both(1040) },
      train: { begins: 'front/back', 'on-floor': 600, shape: 'round' },
    })!;
    expect(Math.abs(print.length - 600)).toBeLessThan(0.01);
    const xs = print.outline.map(({ x }) => x);
    expect(Math.abs(Math.max(...xs) + Math.min(...xs))).toBeLessThan(0.001);
    // No wider than the sector of the two back gores.
    expect(print.width).toBeLessThan(2 * radius(1640) * Math.sin(turn / 4));
    expect(print.width).toBeGreaterThan(radius(1040) * Math.sin(turn / 4));
  });

  it('a godet spreads it by its angle', () => {
    const train = {
      ...cone,
      lengths: { measured: 'finished', 'hem-width-at': 1000, at: both(1200), 'to-floor': both(1000) },
    };
    const plain = footprintOf(train)!;
    const spread = footprintOf({
      ...train,
      godets: [{ name: 'tail', seam: 'centre-back', from: 600, width: 240 }],
    })!;
    // 240 over a side of 600: 0.4 radians, half of them to each side.
    const end = ({ outline }: typeof plain) =>
      outline.reduce((most, point) => (point.x > most.x ? point : most));
    const apex = { x: 0, y: 600 - 1000 };
    const [a, b] = [end(plain), end(spread)].map(({ x, y }) => Math.atan2(x - apex.x, y - apex.y));
    expect(Math.abs(b! - a! - 0.2)).toBeLessThan(1e-3);
  });

  it('of a train on one side', () => {
    const names = ['a', 'b', 'c', 'd'];
    const print = footprintOf({
      bodice: { 'waist-seam': 720 },
      symmetry: 'none',
      gores: names.map((name) => ({ name, top: 180, hem: 600 })),
      lengths: {
        measured: 'to-floor',
        'off-floor': 20,
        'hem-width-at': 1000,
        at: { 'd/a': 1040, 'b/c': 1040 },
      },
      train: { begins: 'a/b', full: 'b/c', ends: 'd/a', 'on-floor': 400, shape: 'round' },
    })!;
    expect(Math.abs(print.length - 400)).toBeLessThan(0.01);
    const xs = print.outline.map(({ x }) => x);
    // It falls over one gore and rises over two: it reaches farther on the side where it rises.
    expect(Math.max(...xs)).toBeGreaterThan(-Math.min(...xs));
  });

  it('a sweep with no floor length is only a hem, and so is a hem that does not reach the floor', () => {
    const finished = { measured: 'finished', 'hem-width-at': 1000 };
    expect(footprintOf({ ...cone, lengths: { ...finished, at: both(1200) } })).toBeUndefined();
    expect(
      footprintOf({ ...cone, lengths: { ...finished, at: both(980), 'to-floor': both(1000) } }),
    ).toBeUndefined();
  });
});
