import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gownOfSpec, tapeOf } from '../../src/gown/gown-of-spec.ts';
import { wornLengths } from '../../src/gown/worn-lengths.ts';
import { readSpec } from '../../src/gown-file/read-spec.ts';
import { evenly } from '../evenly.ts';
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

describe('a hoop hangs from the waist', () => {
  const cases = fc.record({
    units: fc.constantFrom('mm' as const, 'cm' as const, 'in' as const),
    symmetry: fc.constantFrom('mirrored' as const, 'none' as const),
    measured: fc.constantFrom('along' as const, 'vertical' as const),
    hoop: evenly(250, 560),
    offFloor: evenly(10, 90),
    /** Down to the floor, plumb, by station. */
    heights: fc.tuple(evenly(900, 1100), evenly(900, 1100)),
    off: fc.integer({ min: 0, max: 60 }),
    heels: fc.tuple(fc.integer({ min: 0, max: 60 }), fc.integer({ min: 0, max: 120 })),
  });

  /** Both centres of a mirrored gown, both seams of a ring. */
  const gownOver = (
    own: typeof cases extends fc.Arbitrary<infer T> ? T : never,
    lengths: (by: (mm: number) => number, stations: readonly string[]) => Tree,
  ) => {
    const by = (mm: number): number => mm / { mm: 1, cm: 10, in: 25.4 }[own.units];
    const closed = own.symmetry === 'none';
    const stations = closed ? ['back/front', 'front/back'] : ['centre-front', 'centre-back'];
    const spec = specOf(
      {},
      {
        units: own.units,
        symmetry: own.symmetry,
        bodice: { 'waist-seam': by(round(120)) },
        gores: ['front', 'back'].map((name) => ({ name, top: by(round(120) / (closed ? 2 : 4)) })),
        sweep: by(6000),
        petticoat: { measured: own.measured, hoop: by(round(own.hoop)), 'hoop-off-floor': by(own.offFloor) },
        lengths: {
          'hem-width-at': by(1000),
          'measured-in': { heel: by(own.heels[0]) },
          'worn-in': { heel: by(own.heels[1]) },
          ...lengths(by, stations),
        },
      },
    );
    return stations.map((name) => {
      const { at, offFloor = 0 } = wornLengths(tapeOf(spec));
      return at[name]! - offFloor;
    });
  };

  /** Slant for plumb of the cone from the waist to the hoop, which no heel changes: √(height² + (difference of the radii)²) / height (geometry). */
  const steepness = (own: { hoop: number; offFloor: number }, height: number): number =>
    Math.hypot(height - own.offFloor, own.hoop - 120) / (height - own.offFloor);

  it('as high above the floor as the heel makes it: to-floor lengths, along or plumb, by trigonometry', () => {
    fc.assert(
      fc.property(cases, (own) => {
        const plumb = own.measured === 'vertical';
        const found = gownOver(own, (by, stations) => ({
          measured: 'to-floor',
          'off-floor': by(own.off),
          at: Object.fromEntries(
            stations.map((name, i) => [
              name,
              by(own.heights[i]! * (plumb ? 1 : steepness(own, own.heights[i]!))),
            ]),
          ),
        }));
        const risen = own.heels[1] - own.heels[0];
        for (const [i, height] of own.heights.entries()) {
          const wanted =
            (height + risen - (plumb ? own.off : 0)) * steepness(own, height) - (plumb ? 0 : own.off);
          expect(Math.abs(found[i]! - wanted)).toBeLessThan(1e-4);
        }
      }),
      { seed: 2, numRuns: 200 },
    );
  });

  it('and finished lengths of the same gown come out the same, its floor known or the usual 25 mm below the hem', () => {
    fc.assert(
      fc.property(cases, fc.boolean(), (own, isKnown) => {
        const off = isKnown ? own.off : 25;
        const along = { ...own, off, measured: 'along' as const };
        const heights = own.heights.map((height) => height * steepness(own, height));
        const toFloor = gownOver(along, (by, stations) => ({
          measured: 'to-floor',
          'off-floor': by(off),
          at: Object.fromEntries(stations.map((name, i) => [name, by(heights[i]!)])),
        }));
        const finished = gownOver(along, (by, stations) => ({
          measured: 'finished',
          at: Object.fromEntries(stations.map((name, i) => [name, by(heights[i]! - off)])),
          ...(isKnown ? { 'to-floor': { [stations[0]!]: by(heights[0]!) } } : {}),
        }));
        for (const [i, length] of finished.entries())
          expect(Math.abs(length - toFloor[i]!)).toBeLessThan(1e-4);
      }),
      { seed: 3, numRuns: 200 },
    );
  });

  it('where the shoes she will wear are those that its height was said for, it stays there', () => {
    const hoop = (offFloor: number) => ({ hoop: round(480), 'hoop-off-floor': offFloor });
    const spec = specOf(
      {
        measured: 'to-floor',
        'off-floor': 20,
        'hem-width-at': 1000,
        at: { 'centre-front': 1200, 'centre-back': 1200 },
        'measured-in': { heel: 20, petticoat: hoop(40) },
        'worn-in': { heel: 60 },
      },
      { petticoat: hoop(40), sweep: 6000 },
    );
    // 1200 along the cloth to the floor is this height; 40 more, and the cone runs to a hoop 40 above it again.
    let height = 1000;
    for (let round = 0; round < 60; round++) height = (1200 * (height - 40)) / Math.hypot(height - 40, 360);
    const wanted = ((height + 40) * Math.hypot(height, 360)) / height;
    expect(Math.abs(wornLengths(tapeOf(spec)).at['centre-front']! - wanted)).toBeLessThan(1e-4);
  });
});
