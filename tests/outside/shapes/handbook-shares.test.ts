import { describe, expect, it } from 'vitest';
import { draftedTrue } from '../drafted.ts';
import { factsOf } from '../facts.ts';
import type { Gore } from '../measure/gore.ts';
import { measuredGown } from '../measure/gown.ts';
import { plainGown, type Tree } from '../plain-gown.ts';
import { expectTrue } from '../truth/untruths.ts';
import { widthOnTheFlat } from './levels.ts';

const INCH = 25.4;
/** Where a book names no depth of the hip: 7 in below the waist, as H1 has it (common practice). */
const HIP_DOWN = 7;

async function goresOf(fields: Tree): Promise<Gore[]> {
  const yaml = plainGown({ units: 'in', ...fields });
  const { svg, report } = await draftedTrue(yaml);
  expectTrue(svg, report, yaml);
  return measuredGown(svg, report, factsOf(yaml)).layers[0]!.gores as Gore[];
}

const within = (measured: number, inches: number, tolerance = 0.3) =>
  expect(Math.abs(measured - inches * INCH), `${measured / INCH} in against ${inches}`).toBeLessThan(
    tolerance,
  );

const level = (length: number) => ({
  measured: 'finished',
  at: { 'centre-front': length, 'centre-back': length },
});

describe('gored skirts from dressmaking handbooks, by shares of waist, hip and hem', () => {
  it('H1: five gores, waist 25, hip 40, hem 81 in (E. A. Bennett, The Perfect Dressmaking System, 1914, p. 13)', async () => {
    // A fifth of the hip in each gore; 10 of the hem in the front and a quarter of the rest in each other: 17.75.
    const hem = 17.75 / 81;
    const gores = await goresOf({
      bodice: {
        'waist-seam': 25,
        'drop-below-waist': { 'centre-front': 1.5, 'front/side': 1, 'side/back': 0.5 },
      },
      gores: [
        { name: 'front', 'on-fold': true, 'half-top': 2.5, 'half-share': ['10%', percent(5 / 81)] },
        { name: 'side', top: 5, share: ['20%', percent(hem)] },
        { name: 'back', top: 5, share: ['20%', percent(hem)] },
      ],
      petticoat: {
        girths: [
          { down: 0, girth: 25 },
          { down: 7, girth: 40 },
          { down: 39.5, girth: 81 },
        ],
      },
      lengths: {
        measured: 'finished',
        at: { 'centre-front': 38, 'front/side': 38.5, 'side/back': 39, 'centre-back': 39.5 },
      },
    });
    const [front, side, back] = gores as [Gore, Gore, Gore];
    within(2 * front.waist.length, 5, 0.1);
    within(side.waist.length, 5, 0.1);
    within(back.waist.length, 5, 0.1);
    within(widthOnTheFlat(front, 7 * INCH, 1.5 * INCH, 1 * INCH), 4);
    within(widthOnTheFlat(side, 7 * INCH, 1 * INCH, 0.5 * INCH), 8);
    within(widthOnTheFlat(back, 7 * INCH, 0.5 * INCH, 0), 8);
    within(2 * front.hem.length, 10);
    within(side.hem.length, 17.75);
    within(back.hem.length, 17.75);
    within(front.front.length, 38, 0.1);
    within(front.back.length, 38.5, 0.1);
    within(side.front.length, 38.5, 0.1);
    within(side.back.length, 39, 0.1);
    within(back.front.length, 39, 0.1);
    within(back.back.length, 39.5, 0.1);
  });

  it('H2: nine gores, waist 24, hip 39 in (C. C. Ingalls, Text-Book on Domestic Art, 1911, draft 38)', async () => {
    const tops = [1.5, 8 / 3, 8 / 3, 8 / 3, 2.5];
    const hips = [2.25, 4, 4, 4, 5.25];
    const gores = await goresOf(
      hipped(['front', 'side-front', 'side', 'side-back', 'back'], 24, 39, tops, hips),
    );
    expectHips(gores, tops, hips);
  });

  it('H3: five gores, waist 24, hip 39 in, the waist edge raised by ¼, ½, ¾ in (Ingalls, five-gored underskirt: rules, derived)', async () => {
    const tops = [3, 4, 5];
    const hips = [4, 6, 9.5];
    // Raised against the centre front: so much lies the front below the level of the back.
    const drops = [0.75, 0.5, 0.25, 0];
    const spec = hipped(['front', 'side', 'back'], 24, 39, tops, hips);
    const gores = await goresOf({
      ...spec,
      bodice: {
        'waist-seam': 24,
        'drop-below-waist': { 'centre-front': 0.75, 'front/side': 0.5, 'side/back': 0.25 },
      },
      lengths: {
        measured: 'finished',
        at: { 'centre-front': 29.25, 'front/side': 29.5, 'side/back': 29.75, 'centre-back': 30 },
      },
    });
    for (const [i, gore] of gores.entries()) {
      within(gore.waist.length, tops[i]!, 0.1);
      within(widthOnTheFlat(gore, HIP_DOWN * INCH, drops[i]! * INCH, drops[i + 1]! * INCH), hips[i]!);
      within(gore.front.length, 30 - drops[i]!, 0.1);
      within(gore.back.length, 30 - drops[i + 1]!, 0.1);
    }
  });

  const h4 = [
    {
      gores: 'six',
      names: ['front', 'side-front', 'side-back', 'back'],
      folds: [0, 3],
      hips: [10 / 3, 20 / 3, 20 / 3, 10 / 3],
      hems: [20 / 3, 61 / 3, 61 / 3, 20 / 3],
    },
    {
      gores: 'seven',
      names: ['front', 'side-front', 'side-back', 'back'],
      folds: [0],
      hips: [10 / 3, 37 / 6, 37 / 6, 13 / 3],
      hems: [5, 52 / 3, 52 / 3, 43 / 3],
    },
  ];
  for (const { gores: count, names, folds, hips, hems } of h4) {
    it(`H4: ${count} gores, hip 40, hem 108 in (L. I. Baldt, Clothing for Women, 1916, gore division rules; derived)`, async () => {
      // The rules divide hip and hem; the waist of 26 in is shared as the hips are (common practice).
      const tops = hips.map((hip) => (hip * 26) / 40);
      const whole = 2 * hems.reduce((sum, hem) => sum + hem, 0);
      expect(Math.abs(whole - 108)).toBeLessThan(0.001);
      const gores = await goresOf({
        bodice: { 'waist-seam': 26 },
        gores: names.map((name, i) => {
          const shares = [percent(hips[i]! / 40), percent(hems[i]! / 108)];
          return folds.includes(i)
            ? { name, 'on-fold': true, 'half-top': tops[i], 'half-share': shares }
            : { name, top: tops[i], share: shares };
        }),
        petticoat: {
          girths: [
            { down: 0, girth: 26 },
            { down: HIP_DOWN, girth: 40 },
            { down: 40, girth: 108 },
          ],
        },
        lengths: level(40),
      });
      for (const [i, gore] of gores.entries()) {
        within(widthOnTheFlat(gore, HIP_DOWN * INCH, 0, 0), hips[i]!);
        within(gore.hem.length, hems[i]!);
        within(gore.back.length, 40, 0.1);
      }
    });
  }
});

function hipped(names: string[], waist: number, hip: number, tops: number[], hips: number[]): Tree {
  return {
    bodice: { 'waist-seam': waist },
    gores: names.map((name, i) => {
      const share = percent(hips[i]! / hip);
      return i === 0
        ? { name, 'on-fold': true, 'half-top': tops[i], 'half-share': share }
        : { name, top: tops[i], share };
    }),
    petticoat: {
      girths: [
        { down: 0, girth: waist },
        { down: HIP_DOWN, girth: hip },
      ],
    },
    lengths: level(HIP_DOWN + 2),
  };
}

function expectHips(gores: readonly Gore[], tops: readonly number[], hips: readonly number[]) {
  for (const [i, gore] of gores.entries()) {
    within(gore.waist.length, tops[i]!, 0.1);
    within(widthOnTheFlat(gore, HIP_DOWN * INCH, 0, 0), hips[i]!);
    within(gore.back.length, HIP_DOWN + 2, 0.1);
  }
}

const percent = (part: number) => `${part * 100}%`;
