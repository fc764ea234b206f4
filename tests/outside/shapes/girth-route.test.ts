import { describe, expect, it } from 'vitest';
import { draftedTrue } from '../drafted.ts';
import { factsOf } from '../facts.ts';
import { type Gore, ringOf } from '../measure/gore.ts';
import { measuredGown } from '../measure/gown.ts';
import { samplesOf } from '../measure/path.ts';
import { distance } from '../measure/segment.ts';
import { CIRCLES_OF_26, plainGown, type Tree } from '../plain-gown.ts';
import { expectTrue } from '../truth/untruths.ts';

const INCH = 25.4;
const CM = 10;
/** Between the fitted line and its closed form, mm. */
const CLOSE = 0.05;

/** One half's gores, all alike, that take their shares of the girths. */
async function byGirths(
  units: string,
  waist: number,
  girths: Tree[],
  length: number,
  perHalf: number,
  fields: Tree = {},
) {
  const names = ['front', 'side-front', 'side', 'side-back', 'back'].slice(0, perHalf);
  const yaml = plainGown({
    units,
    bodice: { 'waist-seam': waist },
    gores: names.map((name) => ({ name, top: waist / (2 * perHalf) })),
    petticoat: { girths },
    lengths: { measured: 'finished', at: { 'centre-front': length, 'centre-back': length } },
    ...fields,
  });
  const { svg, report } = await draftedTrue(yaml);
  expectTrue(svg, report, yaml);
  return measuredGown(svg, report, factsOf(yaml)).layers[0]!.gores as Gore[];
}

/** Over a cone a gore that takes its girths is exactly the sector: seams straight, waist and hem on two circles. */
function expectSector(gores: readonly Gore[], inner: number, outer: number, hem: number, degrees: number) {
  let round = 0;
  for (const gore of gores) {
    const { apex, inner: r, outer: R } = ringOf(gore);
    expect(Math.abs(r - inner)).toBeLessThan(CLOSE);
    expect(Math.abs(R - outer)).toBeLessThan(CLOSE);
    for (const edge of ['waist', 'hem'] as const)
      for (const { point } of samplesOf(gore[edge], 5))
        expect(Math.abs(distance(point, apex) - (edge === 'waist' ? r : R))).toBeLessThan(0.02);
    expect(Math.abs(gore.hem.length - hem / (2 * gores.length))).toBeLessThan(CLOSE);
    round += 2 * (gore.hem.length / R);
  }
  expect(Math.abs((round * 180) / Math.PI - degrees)).toBeLessThan(0.05);
}

describe('the girth route makes the same sectors as the direct one', () => {
  for (const count of [4, 6, 8, 10]) {
    it(`S7: waist 68, hem 360, slant 105 cm in ${count} gores (regression set; derived)`, async () => {
      const girths = [
        { down: 0, girth: 68 },
        { down: 105, girth: 360 },
      ];
      const gores = await byGirths('cm', 68, girths, 105, count / 2);
      expectSector(gores, 24.452 * CM, 129.452 * CM, 360 * CM, (360 / 105 - 68 / 105) * (180 / Math.PI));
    });
  }

  it('S7 with a level between, on the same cone, and the hem below the last level: straight on', async () => {
    const at = (down: number) => ({ down, girth: 68 + ((360 - 68) * down) / 105 });
    const gores = await byGirths('cm', 68, [at(0), at(30), at(70), at(90)], 105, 3);
    expectSector(gores, 24.452 * CM, 129.452 * CM, 360 * CM, (292 / 105) * (180 / Math.PI));
  });

  for (const { circle, part, radius } of CIRCLES_OF_26) {
    it(`S8: a ${circle} circle skirt, waist 26 in: r = W/2πf, hem = W + 2πfL`, async () => {
      const girthAt = (down: number) => ({ down, girth: 26 + 2 * Math.PI * part * down });
      const gores = await byGirths('in', 26, [girthAt(0), girthAt(12), girthAt(30)], 30, 2, {
        cloths: { calico: { width: '500cm' } },
      });
      const hem = girthAt(30).girth * INCH;
      expectSector(gores, radius * INCH, (radius + 30) * INCH, hem, 360 * part);
    });
  }
});

describe('cone frusta and a ball', () => {
  it('S3: a frustum of radii 10 and 20 cm, 25 cm high, its levels given as heights (analyzemath.com)', async () => {
    const girths = [
      { down: 0, girth: 2 * Math.PI * 10 },
      { down: 25, girth: 2 * Math.PI * 20 },
    ];
    const slant = Math.sqrt(725);
    const gores = await byGirths('cm', 2 * Math.PI * 10, girths, 25, 2, {
      petticoat: { measured: 'vertical', girths },
      lengths: { measured: 'to-floor', 'off-floor': 0, at: { 'centre-front': 25, 'centre-back': 25 } },
    });
    expectSector(gores, slant * CM, 2 * slant * CM, 2 * Math.PI * 20 * CM, 133.7);
  });

  it("S4: diameters 9 and 24 in, axis 18 in, by heights and by slants (King's College London calendar 1896-97; derived)", async () => {
    for (const [measured, down] of [
      ['vertical', 18],
      ['along', 19.5],
    ] as const) {
      const girths = [
        { down: 0, girth: Math.PI * 9 },
        { down, girth: Math.PI * 24 },
      ];
      const gores = await byGirths('in', Math.PI * 9, girths, 19.5, 3, {
        petticoat: { measured, girths },
        lengths: { measured: 'finished', at: { 'centre-front': 19.5, 'centre-back': 19.5 } },
      });
      expectSector(gores, 11.7 * INCH, 31.2 * INCH, Math.PI * 24 * INCH, 138.4615);
    }
  });
});
