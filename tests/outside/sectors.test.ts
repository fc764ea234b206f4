import { describe, expect, it } from 'vitest';
import { draftedTrue } from './drafted.ts';
import { factsOf } from './facts.ts';
import { type Gore, ringOf, sectorOf } from './measure/gore.ts';
import { measuredGown } from './measure/gown.ts';
import { areaOf, samplesOf } from './measure/path.ts';
import { distance } from './measure/segment.ts';
import { CIRCLES_OF_26, level, plainGown, type Tree } from './plain-gown.ts';
import { expectTrue } from './truth/untruths.ts';

const INCH = 25.4;
const CM = 10;
/** Lengths and widths keep to closed forms within this, mm. */
const CLOSE = 0.1;

/** A whole ring, waist to hem, in equal gores; the half of it is what a spec holds. */
async function ring(
  units: 'in' | 'cm',
  waist: number,
  hem: number,
  slant: number,
  perHalf: number,
  fields: Tree = {},
) {
  const names = ['front', 'side-front', 'side', 'side-back', 'back'].slice(0, perHalf);
  const share = 2 * perHalf;
  const yaml = plainGown({
    units,
    bodice: { 'waist-seam': waist },
    gores: names.map((name) => ({ name, top: waist / share, hem: hem / share })),
    lengths: level(slant),
    ...fields,
  });
  const { svg, report } = await draftedTrue(yaml);
  expectTrue(svg, report, yaml);
  return measuredGown(svg, report, factsOf(yaml)).layers[0]!.gores as Gore[];
}

/** Radii at the waist and at the hem, and the angle all round in degrees. */
function expectRing(
  gores: readonly Gore[],
  inner: number,
  outer: number,
  degrees: number,
  radiusDigits = CLOSE,
) {
  let round = 0;
  for (const gore of gores) {
    const { inner: r, outer: R, apex } = ringOf(gore);
    expect(Math.abs(r - inner)).toBeLessThan(radiusDigits);
    expect(Math.abs(R - outer)).toBeLessThan(radiusDigits);
    for (const { point } of samplesOf(gore.waist, 10))
      expect(Math.abs(distance(point, apex) - r)).toBeLessThan(0.02);
    for (const { point } of samplesOf(gore.hem, 10))
      expect(Math.abs(distance(point, apex) - R)).toBeLessThan(0.02);
    round += 2 * sectorOf(gore, 0, 0).flare;
  }
  expect(Math.abs((round * 180) / Math.PI - degrees)).toBeLessThan(0.05);
}

describe('rings and frusta from books', () => {
  it('S1: a circular flounce, arcs 72 and 112 in, 12 in deep (L. I. Baldt, Clothing for Women, 1916, Fig. 56; radii derived)', async () => {
    expectRing(await ring('in', 72, 112, 12, 4), 21.6 * INCH, 33.6 * INCH, 190.9859);
  });

  it('S2: diameters 5 and 8 in, 4 in high (ceemrr.com, Drawings and Nets 6)', async () => {
    const gores = await ring('in', 5 * Math.PI, 8 * Math.PI, Math.hypot(4, 1.5), 2);
    expectRing(gores, 7.12 * INCH, 11.392 * INCH, 126.404);
  });

  it('S3: radii 10 and 20 cm, 25 cm high (analyzemath.com, conical frustum)', async () => {
    const slant = Math.sqrt(725);
    expectRing(await ring('cm', 20 * Math.PI, 40 * Math.PI, slant, 2), slant * CM, 2 * slant * CM, 133.7);
  });

  it("S4: diameters 9 and 24 in, 18 in high (King's College London calendar 1896-97; radii derived)", async () => {
    expectRing(await ring('in', 9 * Math.PI, 24 * Math.PI, 19.5, 3), 11.7 * INCH, 31.2 * INCH, 138.4615);
  });

  it('S5: arcs 32 and 44 in, 8 in apart along the cloth (Math Central, QQ.09.07; derived)', async () => {
    const gores = await ring('in', 32, 44, 8, 2);
    expectRing(gores, (64 / 3) * INCH, (88 / 3) * INCH, 85.944);
    // The trap is 8 taken for the height of the cone: 21.933.
    expect(Math.abs(ringOf(gores[0]!).inner - 21.933 * INCH)).toBeGreaterThan(10);
  });

  it('S6: diameters 12 and 20, 3 cm high (a school frustum exercise; derived)', async () => {
    expectRing(await ring('cm', 12 * Math.PI, 20 * Math.PI, 5, 2), 7.5 * CM, 12.5 * CM, 288);
  });

  const s7 = [
    { gores: 4, angle: 39.834, hem: 90, sag: 7.743 },
    { gores: 6, angle: 26.556, hem: 60, sag: 3.461 },
    { gores: 8, angle: 19.917, hem: 45, sag: 1.95 },
    { gores: 10, angle: 15.934, hem: 36, sag: 1.249 },
  ];
  for (const { gores: count, angle, hem, sag } of s7) {
    it(`S7: waist 68, hem 360, slant 105 cm in ${count} gores (regression set; derived)`, async () => {
      const names = ['front', 'side-front', 'side', 'side-back', 'back'].slice(0, count / 2);
      const bySweep = { sweep: 360, gores: names.map((name) => ({ name, top: 68 / count })) };
      for (const fields of [{}, bySweep]) {
        const gores = await ring('cm', 68, 360, 105, count / 2, fields);
        expectRing(gores, 24.452 * CM, 129.452 * CM, angle * count);
        for (const gore of gores) {
          expect(Math.abs(gore.hem.length - hem * CM)).toBeLessThan(CLOSE);
          expect(Math.abs(sagOf(gore) - sag * CM)).toBeLessThan(CLOSE);
          expect(Math.abs(areaOf(gore.outline) - (((68 + 360) / count) * CM * 105 * CM) / 2)).toBeLessThan(
            20,
          );
        }
      }
    });
  }

  for (const { circle, part, radius } of CIRCLES_OF_26) {
    it(`S8: a ${circle} circle skirt, waist 26 in: r = W/2πf, hem = W + 2πfL`, async () => {
      const length = 30;
      const yaml = plainGown({
        units: 'in',
        bodice: { 'waist-seam': 26 },
        gores: ['front', 'back'].map((name) => ({ name, top: 6.5, flare: `${90 * part}deg` })),
        lengths: { measured: 'finished', at: { 'centre-front': length, 'centre-back': length } },
        cloths: { calico: { width: '500cm' } },
      });
      const { svg, report } = await draftedTrue(yaml);
      expectTrue(svg, report, yaml);
      const gores = measuredGown(svg, report, factsOf(yaml)).layers[0]!.gores as Gore[];
      expectRing(gores, radius * INCH, (radius + length) * INCH, 360 * part);
      const hem = 2 * gores.reduce((sum, gore) => sum + gore.hem.length, 0);
      expect(Math.abs(hem - (26 + 2 * Math.PI * part * length) * INCH)).toBeLessThan(CLOSE);
      // The trap is a quarter of the waist taken for the radius of the full circle.
      if (part === 1) expect(Math.abs(ringOf(gores[0]!).inner - 6.5 * INCH)).toBeGreaterThan(50);
    });
  }
});

/** How far the hem's middle hangs below its chord. */
function sagOf(gore: Gore): number {
  const { apex, outer } = ringOf(gore);
  const middle = { x: (gore.hem.from.x + gore.hem.to.x) / 2, y: (gore.hem.from.y + gore.hem.to.y) / 2 };
  return outer - distance(middle, apex);
}
