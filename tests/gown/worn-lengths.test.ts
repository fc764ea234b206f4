import { describe, expect, it } from 'vitest';
import { gownOfSpec, tapeOf } from '../../src/gown/gown-of-spec.ts';
import { wornLengths } from '../../src/gown/worn-lengths.ts';
import { readSpec } from '../../src/gown-file/read-spec.ts';
import { plainGown, type Tree } from '../outside/plain-gown.ts';

const round = (radius: number) => 2 * Math.PI * radius;
const EXACT = 1e-6;

/** A skirt of a waist of 120 mm radius over a cone that grows 3 for 4 down: slants are 5/4 of heights. */
function specOf(lengths: Tree, fields: Tree = {}) {
  const yaml = plainGown({
    units: 'mm',
    bodice: { 'waist-seam': round(120) },
    gores: ['front', 'side', 'back'].map((name) => ({ name, top: round(120) / 6 })),
    petticoat: CONE,
    lengths,
    ...fields,
  });
  const { spec, diagnostics } = readSpec({ name: 'gown.yaml', text: yaml });
  if (spec === undefined) throw new Error(diagnostics.map(({ message }) => message).join('; '));
  return spec;
}

const CONE = {
  measured: 'vertical',
  girths: [
    { down: 0, girth: round(120) },
    { down: 400, girth: round(420) },
    { down: 800, girth: round(720) },
  ],
};
const ALONG = {
  girths: [
    { down: 0, girth: round(120) },
    { down: 1000, girth: round(720) },
  ],
};
const at = { 'centre-front': 1000, 'front/side': 1004, 'centre-back': 1012 };

describe('heights to the floor become lengths along the cloth', () => {
  it('over a cone: 5 for 4, the hem as high off the floor as was said', () => {
    const spec = specOf({ measured: 'to-floor', 'off-floor': 20, at });
    const lengths = gownOfSpec(spec).stations.map(({ length }) => length);
    for (const [i, name] of ['centre-front', 'front/side'].entries())
      expect(Math.abs(lengths[i]! - at[name as keyof typeof at] * 1.25)).toBeLessThan(EXACT);
    const rule = gownOfSpec(spec).lengths;
    expect('offFloor' in rule && Math.abs(rule.offFloor - 25)).toBeLessThan(EXACT);
  });

  it('under a dropped edge: from the edge on', () => {
    const spec = specOf(
      { measured: 'to-floor', 'off-floor': 20, at },
      { bodice: { 'waist-seam': round(120), 'drop-below-waist': { 'centre-front': 50 } } },
    );
    // The drop is 50 along the body, 40 plumb; the floor lies 1040 below the waist, 1300 along the cloth.
    expect(Math.abs(wornLengths(tapeOf(spec)).at['centre-front']! - 1250)).toBeLessThan(EXACT);
  });

  it('over a ball: along the arc, between levels by the curve through them', () => {
    // A ball of radius 500, its waist 20° from the pole: arc length = radius × angle (geometry).
    const level = (degrees: number) => {
      const angle = (degrees * Math.PI) / 180;
      return { down: 500 * (Math.cos(Math.PI / 9) - Math.cos(angle)), girth: round(500 * Math.sin(angle)) };
    };
    const girths = [20, 30, 40, 50, 60, 70, 80, 90].map(level);
    const spec = specOf(
      {
        measured: 'to-floor',
        'off-floor': 0,
        at: { 'centre-front': level(75).down, 'centre-back': level(75).down },
      },
      {
        bodice: { 'waist-seam': girths[0]!.girth },
        gores: ['front', 'back'].map((name) => ({ name, top: girths[0]!.girth / 4 })),
        petticoat: { measured: 'vertical', girths },
      },
    );
    const arc = 500 * (55 / 180) * Math.PI;
    expect(Math.abs(wornLengths(tapeOf(spec)).at['centre-front']! - arc)).toBeLessThan(0.3);
  });

  it('over one hoop: √(height² + (difference of the radii)²) to the hoop, and on as steep', () => {
    const spec = specOf(
      { measured: 'to-floor', 'off-floor': 0, at: { 'centre-front': 1000, 'centre-back': 1000 } },
      {
        petticoat: { measured: 'vertical', hoop: round(480), 'hoop-off-floor': 40 },
        sweep: 4000,
        lengths: {
          measured: 'to-floor',
          'off-floor': 0,
          'hem-width-at': 1000,
          at: { 'centre-front': 1000, 'centre-back': 1000 },
        },
      },
    );
    expect(
      Math.abs(wornLengths(tapeOf(spec)).at['centre-front']! - Math.hypot(960, 360) * (1000 / 960)),
    ).toBeLessThan(EXACT);
  });

  it('lengths along the cloth stay exactly as given', () => {
    const spec = specOf({ measured: 'to-floor', 'off-floor': 20, at }, { petticoat: ALONG });
    expect(wornLengths(tapeOf(spec))).toEqual({ at, offFloor: 20 });
    const finished = specOf({ measured: 'finished', at });
    expect(wornLengths(tapeOf(finished))).toEqual({ at });
  });
});

describe('lengths move together', () => {
  const floor = { measured: 'to-floor', 'off-floor': 20, at };
  const alongCone = {
    ...CONE,
    measured: 'along',
    girths: [CONE.girths[0], { down: 1000, girth: round(720) }],
  };

  it('a higher heel by 40 over a cone: 50 of cloth at every station', () => {
    for (const lengths of [floor, { measured: 'finished', at }]) {
      const spec = specOf(
        { ...lengths, 'measured-in': { heel: 30 }, 'worn-in': { heel: 70 } },
        { petticoat: alongCone },
      );
      for (const [name, length] of Object.entries(at))
        expect(Math.abs(wornLengths(tapeOf(spec)).at[name]! - length - 50)).toBeLessThan(EXACT);
    }
  });

  it('a higher heel without a petticoat: plumb', () => {
    const spec = specOf(
      { ...floor, 'hem-width-at': 1000, 'measured-in': { heel: 30 }, 'worn-in': { heel: 70 } },
      { petticoat: undefined, sweep: 3000 },
    );
    for (const [name, length] of Object.entries(at))
      expect(Math.abs(wornLengths(tapeOf(spec)).at[name]! - length - 40)).toBeLessThan(EXACT);
  });

  it('measured without a petticoat, worn over a cone: 5 for 4', () => {
    const spec = specOf({ ...floor, 'measured-in': { petticoat: 'none' } }, { petticoat: alongCone });
    for (const [name, length] of Object.entries(at))
      expect(Math.abs(wornLengths(tapeOf(spec)).at[name]! - length * 1.25)).toBeLessThan(EXACT);
  });

  it('a wider hoop: each station to the same floor', () => {
    const narrow = { hoop: round(360), 'hoop-off-floor': 0 };
    const wide = { hoop: round(480), 'hoop-off-floor': 0 };
    const spec = specOf(
      { ...floor, 'hem-width-at': 1000, 'measured-in': { petticoat: narrow } },
      { petticoat: wide, sweep: 4500 },
    );
    for (const [name, length] of Object.entries(at)) {
      const height = Math.sqrt(length ** 2 - 240 ** 2);
      expect(Math.abs(wornLengths(tapeOf(spec)).at[name]! - Math.hypot(height, 360))).toBeLessThan(EXACT);
    }
  });

  it('a bodice that reaches 30 lower in front: that much less of skirt there, and nowhere else', () => {
    const drop = (front: number) => ({ 'centre-front': front });
    const spec = specOf(
      { ...floor, 'measured-in': { 'drop-below-waist': drop(20) } },
      { petticoat: alongCone, bodice: { 'waist-seam': round(120), 'drop-below-waist': drop(50) } },
    );
    expect(Math.abs(wornLengths(tapeOf(spec)).at['centre-front']! - 970)).toBeLessThan(EXACT);
    expect(Math.abs(wornLengths(tapeOf(spec)).at['centre-back']! - 1012)).toBeLessThan(EXACT);
  });

  it('a train keeps what lies on the floor', () => {
    const finished = { 'centre-front': 980, 'front/side': 980, 'side/back': 1100, 'centre-back': 1400 };
    const spec = specOf(
      {
        measured: 'finished',
        at: finished,
        'to-floor': { 'centre-back': 1010 },
        'measured-in': { heel: 30 },
        'worn-in': { heel: 70 },
      },
      { petticoat: alongCone, train: { begins: 'front/side', 'on-floor': 390 } },
    );
    const worn = wornLengths(tapeOf(spec));
    for (const [name, length] of Object.entries(finished))
      expect(Math.abs(worn.at[name]! - length - 50)).toBeLessThan(EXACT);
    expect(Math.abs(worn.toFloor!['centre-back']! - 1060)).toBeLessThan(EXACT);
  });
});
