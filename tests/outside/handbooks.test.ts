import { describe, expect, it } from 'vitest';
import { draftedTrue } from './drafted.ts';
import { factsOf } from './facts.ts';
import { type Gore, ringOf, sectorOf } from './measure/gore.ts';
import { measuredGown } from './measure/gown.ts';
import { samplesOf } from './measure/path.ts';
import { cross, distance, dot, minus, unitOf } from './measure/segment.ts';
import { level, plainGown, sevenGores } from './plain-gown.ts';
import { expectTrue } from './truth/untruths.ts';

const INCH = 25.4;

async function goresOf(yaml: string): Promise<Gore[]> {
  const { svg, report } = await draftedTrue(yaml);
  expectTrue(svg, report, yaml);
  return measuredGown(svg, report, factsOf(yaml)).layers[0]!.gores as Gore[];
}

const within = (measured: number, expected: number, tolerance = 0.1) =>
  expect(Math.abs(measured - expected), `${measured} against ${expected}`).toBeLessThan(tolerance);

describe('gored skirts from dressmaking handbooks', () => {
  it('H1: five gores, waist 25, lengths 38/39/39.5, hem 81 in (E. A. Bennett, The Perfect Dressmaking System, 1914, p. 13)', async () => {
    // All of the difference in length is made at the waist edge, so the hem lies at one slant distance all round.
    // Her printed 17.5 for the hems of the four other gores is a slip: her shares add to 80.
    const yaml = plainGown({
      units: 'in',
      bodice: {
        'waist-seam': 25,
        'drop-below-waist': { 'centre-front': 1.5, 'front/side': 1, 'side/back': 0.5 },
      },
      gores: [
        { name: 'front', 'on-fold': true, 'half-top': 2.5, 'half-hem': 5 },
        { name: 'side', top: 5, hem: 17.75 },
        { name: 'back', top: 5, hem: 17.75 },
      ],
      lengths: {
        measured: 'finished',
        'hem-width-at': 39.5,
        at: { 'centre-front': 38, 'front/side': 38.5, 'side/back': 39, 'centre-back': 39.5 },
      },
    });
    const [front, side, back] = await goresOf(yaml);
    within(2 * front!.waist.length, 5 * INCH);
    within(side!.waist.length, 5 * INCH);
    within(back!.waist.length, 5 * INCH);
    within(front!.front.length, 38 * INCH);
    within(front!.back.length, 38.5 * INCH);
    within(side!.back.length, 39 * INCH);
    within(back!.back.length, 39.5 * INCH);
    within(2 * front!.hem.length, 10 * INCH);
    within(side!.hem.length, 17.75 * INCH);
    within(2 * (front!.hem.length + side!.hem.length + back!.hem.length), 81 * INCH);
    for (const gore of [front!, side!, back!]) {
      const { apex, outer } = ringOf(gore);
      for (const { point } of samplesOf(gore.hem, 20)) within(distance(point, apex), outer, 0.02);
    }
  });

  for (const measured of ['finished', 'cut'] as const) {
    it(`H5: front gore 5 in top, 10 bottom, 42 long, ${measured} (M. Prince Browne, "A Simple Skirt", Every Woman's Encyclopaedia 1)`, async () => {
      const yaml = plainGown({
        units: 'in',
        bodice: { 'waist-seam': 25 },
        gores: [
          { name: 'front', 'on-fold': true, 'half-top': 2.5, 'half-hem': 5 },
          { name: 'side', top: 5, hem: 10 },
          { name: 'back', top: 5, hem: 10 },
        ],
        lengths: { ...level(measured === 'cut' ? 47 : 42, 42), measured },
        allowances: { seam: 1, waist: 0.5, hem: 4.5 },
        layers: [{ name: 'shell', cloth: 'calico', hem: 'turned' }],
      });
      const [front, side, back] = await goresOf(yaml);
      const { apex, inner, outer } = ringOf(front!);
      within(inner, 42 * INCH);
      within(outer, 84 * INCH);
      within((2 * sectorOf(front!, 0, 0).flare * 180) / Math.PI, 6.821, 0.01);
      // Sag of the whole gore's hem, from chord to arc.
      within(outer * (1 - Math.cos(sectorOf(front!, 0, 0).flare)), 0.149 * INCH, 0.05);
      within(84 * INCH * (1 - Math.cos(sectorOf(side!, 0, 0).flare / 2)), 0.149 * INCH, 0.05);
      // Cut length down the fold, and the cut line's way from the fold along the two sewing lines: half of 7 and of 12.
      const [top, bottom] = foldEnds(front!);
      within(bottom - top, 47 * INCH);
      within(cutWidthAt(front!, apex, inner), 3.5 * INCH);
      within(cutWidthAt(front!, apex, outer), 6 * INCH);
      // The hem is the waist curve set off by one length all round.
      for (const gore of [front!, side!, back!]) {
        const ring = ringOf(gore);
        for (const { point } of samplesOf(gore.hem, 20))
          within(distance(point, ring.apex) - ring.inner, 42 * INCH, 0.02);
      }
    });
  }

  for (const [gores, backFold, copies] of [
    [6, true, [1, 2, 2, 1]],
    [7, false, [1, 2, 2, 2]],
  ] as const) {
    it(`H6: the same pieces make ${gores} gores (I. D. Conover, A Complete Course in Dressmaking, vol. 5, p. 17)`, async () => {
      const back = backFold
        ? { name: 'back', 'on-fold': true, 'half-top': 4, 'half-hem': 12 }
        : { name: 'back', top: 4, hem: 12 };
      const yaml = sevenGores(back);
      const { svg, report } = await draftedTrue(yaml);
      expectTrue(svg, report, yaml);
      expect(report.gores.map((gore) => gore.copies)).toEqual(copies);
      const pieces = measuredGown(svg, report, factsOf(yaml)).pattern.pieces;
      expect(pieces.map((piece) => piece.gore)).toEqual(['front', 'side', 'side-back', 'back']);
      expect(pieces.map((piece) => /on fold/.test(piece.text))).toEqual(copies.map((count) => count === 1));
      expect(pieces.map((piece) => /pair/.test(piece.text))).toEqual(copies.map((count) => count === 2));
    });
  }

  it('H8: front 44, side 40, back 39 in on a stout figure is no fault (I. Rosenfeld, The Practical Designer, 1911, lesson 84)', async () => {
    const yaml = plainGown({
      units: 'in',
      bodice: { 'waist-seam': 40 },
      gores: [
        { name: 'front', 'on-fold': true, 'half-top': 6, 'half-hem': 14 },
        { name: 'side', top: 8, hem: 18 },
        { name: 'back', top: 6, hem: 16 },
      ],
      lengths: {
        measured: 'finished',
        'hem-width-at': 40,
        at: { 'centre-front': 44, 'front/side': 42, 'side/back': 40, 'centre-back': 39 },
      },
    });
    const { diagnostics } = await draftedTrue(yaml);
    expect(diagnostics.filter((d) => d.level === 'error')).toEqual([]);
    const [front, side, back] = await goresOf(yaml);
    within(front!.front.length, 44 * INCH);
    within(side!.back.length, 40 * INCH);
    within(back!.back.length, 39 * INCH);
  });
});

/** Where the cut line leaves the fold above and below, as ways down the fold from the waist seam. */
function foldEnds(gore: Gore): readonly [number, number] {
  const down = unitOf(minus(gore.front.to, gore.front.from));
  const ways = samplesOf(gore.piece.cut, 1)
    .filter(({ point }) => Math.abs(cross(down, minus(point, gore.front.from))) < 0.01)
    .map(({ point }) => dot(minus(point, gore.front.from), down));
  return [Math.min(...ways), Math.max(...ways)];
}

/** Way along the arc of one radius from the fold to the cut line on the other side. */
function cutWidthAt(gore: Gore, apex: { x: number; y: number }, radius: number): number {
  const down = unitOf(minus(gore.front.to, gore.front.from));
  const angles = samplesOf(gore.piece.cut, 0.05)
    .filter(({ point }) => Math.abs(distance(point, apex) - radius) < 0.05)
    .map(({ point }) => Math.atan2(Math.abs(cross(down, minus(point, apex))), dot(down, minus(point, apex))));
  return radius * Math.max(...angles);
}
