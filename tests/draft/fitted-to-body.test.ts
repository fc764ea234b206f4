import { describe, expect, it } from 'vitest';
import { stringify } from 'yaml';
import { draft } from '../../src/pipeline.ts';
import { walked } from '../bodice/measured.ts';
import { plainGown, type Tree } from '../outside/plain-gown.ts';

/** Skirts without a petticoat that follow her girths to the hip, measured on their outlines. */

const BODY = [
  { at: 'waist', girth: 700 },
  { at: 'high-hip', below: 90, girth: 880 },
  { at: 'hip', below: 200, girth: 990 },
];

function skirt(fields: Tree = {}) {
  const text = plainGown({
    units: 'mm',
    body: { girths: BODY },
    bodice: { 'waist-seam': 700 },
    gores: ['front', 'side', 'back'].map((name, i) => ({ name, top: [120, 130, 100][i] })),
    'fitted-to': 'hip',
    sweep: 1800,
    lengths: { 'hem-width-at': 1000, at: { 'centre-front': 1000, 'centre-back': 1000 } },
    ...fields,
  });
  return draft({ name: 'gown.yaml', text: typeof text === 'string' ? text : stringify(text) });
}

function drafted(fields: Tree = {}) {
  const { gown, diagnostics } = skirt(fields);
  expect(diagnostics.filter(({ level }) => level === 'error')).toEqual([]);
  return gown!;
}

/** Round the skirt at a level: the lines across its gores, walked. */
function roundAt(gown: ReturnType<typeof drafted>, down: number): number {
  const { frames } = gown.drafts.gown;
  return 2 * frames.reduce((sum, frame) => sum + walked(frame.levelAt(down)).length, 0);
}

describe('fitted to the hip', () => {
  it('has her girths at every level that is measured, and the sweep at the hem', () => {
    const gown = drafted();
    for (const [down, girth] of [
      [0, 700],
      [90, 880],
      [200, 990],
    ] as const)
      expect(Math.abs(roundAt(gown, down) - girth)).toBeLessThan(0.1);
    expect(Math.abs(gown.report.hem.sewn - 1800)).toBeLessThan(0.1);
    for (const { difference, hemAngle } of gown.report.seams) {
      expect(difference).toBeLessThan(0.1);
      expect(Math.abs(hemAngle - 180)).toBeLessThan(0.1);
    }
  });

  it('girths that grow evenly down to the sweep are a cone: ring sectors of one angle', () => {
    // 0.4 mm a mm: 700 at the waist, 740, 780 and 1100.
    const gown = drafted({
      body: {
        girths: [
          { at: 'waist', girth: 700 },
          { at: 'high-hip', below: 100, girth: 740 },
          { at: 'hip', below: 200, girth: 780 },
        ],
      },
      sweep: 1100,
    });
    for (const { top, hem } of gown.report.gores) expect(hem).toBeCloseTo((1100 / 700) * top, 1);
    // θ = (b − a)/ℓ (design): the two sides of a gore run apart at that angle, straight.
    const [, back, , front] = gown.drafts.gown.pieces[1]!.edges;
    const ways = [back!, front!].map(({ curves }) => {
      const { points } = walked(curves);
      const [a, b] = [points[0]!, points.at(-1)!];
      return Math.atan2(Math.abs(b.x - a.x), Math.abs(b.y - a.y));
    });
    expect(ways[0]! + ways[1]!).toBeCloseTo((130 * (1100 / 700) - 130) / 1000, 4);
    for (const down of [30, 150, 400, 800])
      expect(Math.abs(roundAt(gown, down) - (700 + 0.4 * down))).toBeLessThan(0.1);
  });

  it('with ease it has so much more all round below the waist, at the waist nothing', () => {
    const gown = drafted({ 'fitted-to': { level: 'hip', ease: 20 } });
    expect(roundAt(gown, 0)).toBeCloseTo(700, 1);
    expect(Math.abs(roundAt(gown, 90) - 900)).toBeLessThan(0.1);
    expect(Math.abs(roundAt(gown, 200) - 1010)).toBeLessThan(0.1);
  });

  it('to the high hip only, it runs on from there: the hip is not followed, and a narrow hem is found tight there', () => {
    const text = skirt({ 'fitted-to': 'high-hip', sweep: 900 });
    expect(text.diagnostics.map(({ code }) => code)).toContain('tighter-than-body');
    expect(roundAt(text.gown!, 90)).toBeCloseTo(880, 1);
  });
});

it('a skirt that is not fitted is held against her girths all the same', () => {
  const body = { girths: [BODY[0], BODY[2]] };
  const tight = (sweep: number): number =>
    skirt({ 'fitted-to': undefined, body, sweep }).diagnostics.filter(
      ({ code }) => code === 'tighter-than-body',
    ).length;
  // Straight from 700 at the waist, 990 at 200 mm wants a sweep of 2150 at 1000 mm; three in a thousand less are borne.
  expect(tight(2120)).toBe(1);
  expect(tight(2160)).toBe(0);
});
