import { describe, expect, it } from 'vitest';
import { formatDiagnostic } from '../../src/diagnostics/format-diagnostic.ts';
import { overlaps } from '../../src/fittings/fitting-faults.ts';
import type { Tree } from '../outside/plain-gown.ts';
import { drafting, fitted } from './fitted.ts';

const on = (entry: Tree): Tree => ({ date: '2027-03-01', ...entry });

/** Four gores all the way round, each side with its own. */
const RING: Tree = {
  symmetry: 'none',
  bodice: { 'waist-seam': 400 },
  gores: ['a', 'b', 'c', 'd'].map((name) => ({ name, top: 100, flare: '10deg' })),
  lengths: { at: { 'd/a': 900, 'a/b': 900, 'b/c': 900, 'c/d': 900 } },
  train: undefined,
};

/** The finding of a code, as it is printed. */
function told(code: string, fittings: readonly Tree[], fields: Tree = {}): string {
  const { diagnostics } = drafting({ ...fields, fittings });
  const found = diagnostics.find((diagnostic) => diagnostic.code === code);
  const others = diagnostics.map((diagnostic) => diagnostic.code).join(', ');
  if (found === undefined) throw new Error(`no ${code} among ${others}`);
  return formatDiagnostic(found, { colour: false });
}

describe('a fitting that contradicts the shape is told with both lines', () => {
  it.each([
    [
      'fitting-below-hem',
      [on({ seams: [{ seam: 'side-front/side', from: 100, to: 1900, 'take-in': 5 }] })],
      'to: 1900',
      '(`side-front/side: 1000`)',
    ],
    [
      'fitting-takes-all',
      [on({ seams: [{ seam: 'side/back', from: 0, to: 400, 'take-in': 120 }] })],
      'seams:',
      '(`- name: side`)',
    ],
    ['fitting-above-waist', [on({ hem: { 'all-round': 970 } })], 'hem:', '(`at:`)'],
    [
      'fitting-disagrees',
      [on({ hem: { 'side-front/side': 9 }, levelled: [{ from: 'side-front/side', along: 0, up: 3 }] })],
      'up: 3',
      '(`side-front/side: 9`)',
    ],
    [
      'fitting-overlaps',
      [
        on({
          seams: [
            { seam: 'side/back', from: 100, to: 400, 'take-in': 5 },
            { seam: 'side/back', from: 300, to: 600, 'take-in': 5 },
          ],
        }),
      ],
      'from: 300',
      '(`from: 100`)',
    ],
    [
      'fitting-centre-on-one-side',
      [on({ side: 'left', hem: { 'centre-back': 5 } })],
      'centre-back: 5',
      '(`side: left`)',
    ],
    [
      'fitting-past-centre',
      [on({ levelled: [{ from: 'side/back', along: 2000, up: 3 }] })],
      'along: 2000',
      '(`at:`)',
    ],
    [
      'fitting-past-allowance',
      [on({ seams: [{ seam: 'side/back', from: 100, to: 400, 'take-in': -20 }] })],
      'take-in: -20',
      '(`seam: 15`)',
    ],
  ])('%s', (code, fittings, ownLine, otherLine) => {
    const text = told(code, fittings);
    expect(text).toContain(ownLine);
    expect(text).toContain(otherLine);
    expect(text).toMatch(/^gown\.yaml:\d+:\d+: /);
  });

  it('a side on a gown whose sides have gores of their own', () => {
    expect(told('fitting-side-of-ring', [on({ side: 'left', hem: { 'a/b': 5 } })], RING)).toContain(
      '(`symmetry: none`)',
    );
  });

  it('nothing is drafted from it', () => {
    const { gown, diagnostics } = drafting({ fittings: [on({ hem: { 'all-round': 970 } })] });
    expect(diagnostics.some(({ level }) => level === 'error')).toBe(true);
    expect(gown?.report.fittings ?? []).toEqual([]);
  });
});

describe('what the waist needs is told', () => {
  it('an edge that moves on a flaring skirt, with how much', () => {
    expect(told('fitting-moves-waist', [on({ waist: { 'centre-back': 4 } })])).toMatch(
      /waist edge is [\d.]+ mm shorter all round/,
    );
  });

  it('a seam taken in at the waist, with what the bodice loses', () => {
    const seams = [{ seam: 'side/back', from: 0, to: 300, 'take-in': 3 }];
    expect(told('fitting-reaches-bodice', [on({ seams })])).toContain('taken in by 12 mm all round');
  });
});

it('a ring all the way round is fitted at its own seams', () => {
  const { report } = fitted(
    [on({ hem: { 'a/b': 10 }, seams: [{ seam: 'd/a', from: 50, to: 400, 'take-in': 4 }] })],
    RING,
  );
  expect(report.stations.map(({ length }) => Math.round(length * 100) / 100)).toEqual([900, 890, 900, 900]);
  for (const seam of report.seams) {
    expect(seam.difference).toBeLessThan(0.01);
    expect(seam.hemAngle).toBeCloseTo(180, 1);
  }
  expect(report.fittings[0]?.gores.map(({ name }) => name)).toEqual(['a', 'b', 'd']);
});

it('the report traces every fitting: what it was, what it moved, which gores', () => {
  const { report } = fitted([
    on({ hem: { 'all-round': 20 } }),
    { date: '2027-04-01', side: 'left', seams: [{ seam: 'side/back', from: 100, to: 400, 'take-in': 5 }] },
  ]);
  expect(report.fittings).toHaveLength(2);
  const [first, second] = report.fittings;
  expect(first).toMatchObject({ date: '2027-03-01' });
  expect(first!.lengths.find(({ station }) => station === 'centre-front')?.length).toEqual([960, 940]);
  expect(first!.gores.map(({ name }) => name)).toEqual(['front', 'side-front', 'side', 'back']);
  expect(first!.hem[0]).toBeGreaterThan(first!.hem[1]);
  expect(second).toMatchObject({
    date: '2027-04-01',
    side: 'left',
    gores: [
      { name: 'side', side: 'left' },
      { name: 'back', side: 'left' },
    ],
  });
  expect(second!.hem[0]).toBe(first!.hem[1]);
});

describe('stretches of one seam lie on one another', () => {
  const place = () => ({ source: { name: 'invented', text: '' }, start: 0, end: 0 });
  const [first, later] = [
    { seam: 'a/b', from: 100, to: 400 },
    { seam: 'a/b', from: 300, to: 600 },
  ];
  it.each([
    ['on both of her sides', first, later, 1],
    ['one on both sides, the other on her left', first, { ...later, side: 'left' as const }, 1],
    ['one on her left, the other on both sides', { ...first, side: 'left' as const }, later, 1],
    ['both on her left', { ...first, side: 'left' as const }, { ...later, side: 'left' as const }, 1],
    ['one on each side', { ...first, side: 'left' as const }, { ...later, side: 'right' as const }, 0],
    ['of two seams', first, { ...later, seam: 'b/c' }, 0],
    ['one begins where the other ends', first, { ...later, from: 400 }, 0],
    ['one ends where the other begins', { ...first, to: 300 }, later, 0],
  ])('%s', (_, one, other, found) => expect(overlaps([one, other], place)).toHaveLength(found));
});
