import { describe, expect, it } from 'vitest';
import { draftedTrue } from '../drafted.ts';
import { factsOf } from '../facts.ts';
import type { Gore } from '../measure/gore.ts';
import { measuredGown } from '../measure/gown.ts';
import { plainGown, type Tree } from '../plain-gown.ts';
import { expectTrue } from '../truth/untruths.ts';
import { widthOnTheFlat } from './levels.ts';

/** Widths and seams at every level (asked of this draft). */
const WIDTH = 0.3;
const SEAM = 0.1;
const LEVELS = 20;

interface Level {
  readonly down: number;
  readonly girth: number;
}

async function goresOf(fields: Tree): Promise<Gore[]> {
  const yaml = plainGown({ units: 'mm', ...fields });
  const { svg, report } = await draftedTrue(yaml);
  expectTrue(svg, report, yaml);
  return measuredGown(svg, report, factsOf(yaml)).layers[0]!.gores as Gore[];
}

/** Twenty levels from the waist to the hem, on the flat outline of each gore. */
function expectLevels(
  gores: readonly Gore[],
  length: number,
  expected: (gore: number, down: number) => number,
) {
  const off: string[] = [];
  for (const [i, gore] of gores.entries()) {
    for (let k = 0; k <= LEVELS; k++) {
      const down = (length * k) / LEVELS;
      const width = widthOnTheFlat(gore, down, 0, 0);
      if (!(Math.abs(width - expected(i, down)) <= WIDTH))
        off.push(
          `${gore.piece.gore} at ${down}: ${width.toFixed(2)}, expected ${expected(i, down).toFixed(2)}`,
        );
    }
    for (const seam of [gore.front, gore.back])
      if (!(Math.abs(seam.length - length) <= SEAM))
        off.push(`${gore.piece.gore}: seam ${seam.length.toFixed(3)}`);
  }
  expect(off).toEqual([]);
}

const level = (length: number) => ({
  measured: 'finished',
  at: { 'centre-front': length, 'centre-back': length },
});

describe('gores over profiles, re-measured on the flat at twenty levels', () => {
  const profiles: readonly { name: string; length: number; girths: readonly Level[] }[] = [
    {
      name: 'a hoop',
      length: 1080,
      girths: pairs([0, 720], [220, 1180], [500, 2050], [800, 2700], [1040, 3100]),
    },
    {
      name: 'hips and a narrow hem',
      length: 720,
      girths: pairs([0, 700], [90, 860], [210, 980], [420, 985], [740, 900]),
    },
    {
      name: 'a bell',
      length: 1000,
      girths: pairs([0, 640], [150, 1300], [350, 1900], [700, 2300], [1000, 2450]),
    },
    {
      name: 'a bustle shelf',
      length: 1020,
      girths: pairs([0, 680], [120, 1350], [240, 1600], [600, 1900], [1020, 2700]),
    },
    {
      name: 'a mermaid',
      length: 1100,
      girths: pairs([0, 680], [200, 960], [600, 900], [750, 1000], [1100, 2400]),
    },
  ];
  for (const { name, length, girths } of profiles) {
    for (const perHalf of [3, 5]) {
      it(`${name}, in ${2 * perHalf} gores`, async () => {
        const waist = girths[0]!.girth;
        const names = ['front', 'side-front', 'side', 'side-back', 'back'].slice(0, perHalf);
        const gores = await goresOf({
          bodice: { 'waist-seam': waist },
          gores: names.map((gore) => ({ name: gore, top: waist / (2 * perHalf) })),
          petticoat: { girths },
          lengths: level(length),
        });
        const girth = splineThrough(girths);
        expectLevels(gores, length, (_, down) => girth(down) / (2 * perHalf));
      });
    }
  }

  it('gores of different widths, the front on the fold, one with its front edge on the grain', async () => {
    const girths = profiles[0]!.girths;
    const gores = await goresOf({
      bodice: { 'waist-seam': 720 },
      gores: [
        { name: 'front', 'on-fold': true, 'half-top': 70 },
        { name: 'side', top: 130, grain: 'front-edge' },
        { name: 'back', top: 160 },
      ],
      petticoat: { girths },
      lengths: level(1080),
    });
    const girth = splineThrough(girths);
    const tops = [70, 130, 160];
    expectLevels(gores, 1080, (i, down) => (girth(down) * tops[i]!) / 720);
  });

  it('half a ball of radius 500 from 20° below its pole: arcs and circles of latitude (geometry)', async () => {
    const radius = 500;
    const angles = [20, 30, 40, 50, 60, 70, 80, 90].map((degrees) => (degrees * Math.PI) / 180);
    const top = angles[0]!;
    const girthAt = (angle: number) => 2 * Math.PI * radius * Math.sin(angle);
    const girths = angles.map((angle) => ({
      down: radius * (Math.cos(top) - Math.cos(angle)),
      girth: girthAt(angle),
    }));
    const arc = radius * (Math.PI / 2 - top);
    const height = radius * Math.cos(top);
    const perHalf = 8;
    const gores = await goresOf({
      bodice: { 'waist-seam': girthAt(top) },
      gores: Array.from({ length: perHalf }, (_, i) => ({
        name: `g${i}`,
        top: girthAt(top) / (2 * perHalf),
      })),
      petticoat: { measured: 'vertical', girths },
      lengths: {
        measured: 'to-floor',
        'off-floor': 0,
        at: { 'centre-front': height, 'centre-back': height },
      },
    });
    // A cubic through eight latitudes is not a sine: its slant is long by a fraction of a millimetre.
    for (const gore of gores) expect(Math.abs(gore.back.length - arc)).toBeLessThan(0.6);
    const off = gores.flatMap((gore) =>
      Array.from({ length: LEVELS }, (_, k) => (arc * k) / LEVELS)
        .map((down) => widthOnTheFlat(gore, down, 0, 0) - girthAt(top + down / radius) / (2 * perHalf))
        .filter((error) => Math.abs(error) > WIDTH),
    );
    expect(off).toEqual([]);
  });
});

describe('under a dropped edge', () => {
  it('widths at the levels and seams from the edge are as given', async () => {
    const girths = pairs([0, 700], [200, 1180], [500, 2050], [1040, 3100]);
    const drops = { 'centre-front': 40, 'front/side': 22 };
    const lengths = { 'centre-front': 1010, 'front/side': 1025, 'side/back': 1050, 'centre-back': 1055 };
    const gores = await goresOf({
      bodice: { 'waist-seam': 760, 'drop-below-waist': drops },
      gores: [
        { name: 'front', 'on-fold': true, 'half-top': 80, 'half-share': '10%' },
        { name: 'side', top: 160, share: '21%' },
        { name: 'back', top: 140, share: '19%' },
      ],
      petticoat: { girths },
      lengths: { measured: 'finished', at: lengths },
    });
    const shares = [0.1, 0.21, 0.19];
    const edges = [40, 22, 0, 0];
    for (const [i, gore] of gores.entries()) {
      for (const { down, girth } of girths.slice(1)) {
        const width = widthOnTheFlat(gore, down, edges[i]!, edges[i + 1]!);
        expect(Math.abs(width - girth * shares[i]!), `${gore.piece.gore} at ${down}`).toBeLessThan(WIDTH);
      }
    }
  });
});

function pairs(...levels: readonly (readonly [number, number])[]): Level[] {
  return levels.map(([down, girth]) => ({ down, girth }));
}

/**
 * The girth between levels as the books make it: the natural cubic spline (no bend at the ends) on each stretch that
 * only rises or only falls, flat where it turns, its slopes held to three times the gentler chord beside them.
 */
function splineThrough(levels: readonly Level[]): (down: number) => number {
  const x = levels.map(({ down }) => down);
  const y = levels.map(({ girth }) => girth);
  const n = x.length;
  const chord = x.slice(1).map((next, i) => (y[i + 1]! - y[i]!) / (next - x[i]!));
  const turns = (i: number) => i > 0 && i < n - 1 && chord[i - 1]! * chord[i]! <= 0;
  // One dense system for all slopes, a row a level; solved by elimination.
  const rows = x.map((_, i) => {
    const row = new Array<number>(n + 1).fill(0);
    if (turns(i)) row[i] = 1;
    else if (i === 0) [row[0], row[1], row[n]] = [2, 1, 3 * chord[0]!];
    else if (i === n - 1) [row[n - 1], row[n - 2], row[n]] = [2, 1, 3 * chord[n - 2]!];
    else {
      const [before, after] = [1 / (x[i]! - x[i - 1]!), 1 / (x[i + 1]! - x[i]!)];
      [row[i - 1], row[i], row[i + 1]] = [before, 2 * (before + after), after];
      row[n] = 3 * (chord[i - 1]! * before + chord[i]! * after);
    }
    return row;
  });
  const slopes = solved(rows).map((slope, i) => {
    const beside = [chord[i - 1], chord[i]].flatMap((one) => one ?? []);
    const most = 3 * Math.min(...beside.map(Math.abs));
    return Math.sign(slope) * Math.min(Math.abs(slope), most);
  });
  return (down) => {
    if (down >= x[n - 1]!) return y[n - 1]! + slopes[n - 1]! * (down - x[n - 1]!);
    const i = Math.max(0, x.findIndex((next) => next > down) - 1);
    const h = x[i + 1]! - x[i]!;
    const t = (down - x[i]!) / h;
    const [a, b] = [slopes[i]! * h, slopes[i + 1]! * h];
    return (
      y[i]! + t * (a + t * (3 * (y[i + 1]! - y[i]!) - 2 * a - b + t * (a + b - 2 * (y[i + 1]! - y[i]!))))
    );
  };
}

function solved(rows: number[][]): number[] {
  const n = rows.length;
  for (let i = 0; i < n; i++) {
    for (let k = i + 1; k < n; k++) {
      const factor = rows[k]![i]! / rows[i]![i]!;
      for (let j = i; j <= n; j++) rows[k]![j] = rows[k]![j]! - factor * rows[i]![j]!;
    }
  }
  const found = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    let right = rows[i]![n]!;
    for (let j = i + 1; j < n; j++) right -= rows[i]![j]! * found[j]!;
    found[i] = right / rows[i]![i]!;
  }
  return found;
}
