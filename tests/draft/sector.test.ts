import { describe, expect, it } from 'vitest';
import { sectorFrame } from '../../src/draft/sector-frame.ts';
import { boundsOfCurves } from '../../src/geometry/bounds.ts';
import { lengthOf, lengthOfRun } from '../../src/geometry/length.ts';

const CM = 10;
const INCH = 25.4;

describe('a gore as the development of its part of a cone', () => {
  it.each([
    // Given top arc, bottom arc and slant; expected radii and angle.
    [
      'L. I. Baldt, Clothing for Women, 1916, fig. 56',
      72 * INCH,
      112 * INCH,
      12 * INCH,
      21.6 * INCH,
      33.6 * INCH,
      190.9859,
    ],
    [
      'Math Central, Univ. of Regina, QQ.09.07, 8 in as the cloth’s length',
      32 * INCH,
      44 * INCH,
      8 * INCH,
      21.333 * INCH,
      29.333 * INCH,
      85.944,
    ],
    [
      'one of ten gores, waist 68, hem 360, slant 105 cm (derived)',
      6.8 * CM,
      36 * CM,
      105 * CM,
      24.452 * CM,
      129.452 * CM,
      15.934,
    ],
  ])('%s', (_, top, bottom, slant, inner, outer, degrees) => {
    const flare = (bottom - top) / slant;
    const frame = sectorFrame(top, flare / 2, flare / 2);
    const [waist] = frame.levelAt(0);
    const [hem] = frame.levelAt(slant);
    if (waist?.kind !== 'arc' || hem?.kind !== 'arc') throw new Error('a flared gore has arcs');
    expect(waist.radius / inner).toBeCloseTo(1, 4);
    expect(hem.radius / outer).toBeCloseTo(1, 4);
    expect((Math.abs(hem.sweep) * 180) / Math.PI).toBeCloseTo(degrees, 2);
    expect(lengthOf(waist)).toBeCloseTo(top, 6);
    expect(lengthOf(hem)).toBeCloseTo(bottom, 6);
    expect(lengthOfRun(frame.sideFrom('back', 0, slant))).toBeCloseTo(slant, 6);
  });

  it('sags at the hem as R(1 − cos θ/2): 7.743 cm for one of four gores (derived)', () => {
    const flare = (90 - 17) / 105;
    const frame = sectorFrame(17 * CM, flare / 2, flare / 2);
    const box = boundsOfCurves(frame.levelAt(105 * CM));
    expect(box.bottom - box.top).toBeCloseTo(77.43, 1);
  });

  it('runs smoothly from flared through straight to pegged', () => {
    const corner = (flare: number) => sectorFrame(200, flare / 2, flare / 2).pointAt(900, 1);
    for (const flare of [-0.1, -1e-6, -1e-9, 0, 1e-9, 1e-6, 0.1]) {
      const point = corner(flare);
      // To first order in θ the corner moves out by half of θ times the slant.
      expect(point.x).toBeCloseTo(100 + (flare / 2) * 900, Math.abs(flare) > 0.01 ? -1 : 3);
      expect(Number.isFinite(point.y)).toBe(true);
    }
    expect(sectorFrame(200, 0, 0).levelAt(500)[0]!.kind).toBe('line');
  });

  it('leans by its two flares about the grain', () => {
    const frame = sectorFrame(100, 0.2, 0.1);
    expect(frame.downAt(0, 0)).toBeCloseTo(-0.2, 12);
    expect(frame.downAt(0, 1)).toBeCloseTo(0.1, 12);
  });
});
