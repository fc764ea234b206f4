import { describe, expect, it } from 'vitest';
import { draft } from '../../src/pipeline.ts';
import { level, plainGown, type Tree } from '../outside/plain-gown.ts';

const DEGREE = Math.PI / 180;

function measured(gores: readonly Tree[], fields: Tree = {}) {
  const text = plainGown({
    units: 'mm',
    bodice: { 'waist-seam': 720 },
    gores,
    lengths: level(1000),
    ...fields,
  });
  const { gown, diagnostics } = draft({ name: 'gown.yaml', text });
  if (gown === undefined) throw new Error(diagnostics.map(({ message }) => message).join('; '));
  return { ...gown.measures, diagnostics };
}

describe('the tightest curve of a gore', () => {
  it('is its waist: the top divided by the flare, as of a sector (closed form)', () => {
    const { gores } = measured([
      { name: 'front', top: 180, flare: '20deg' },
      { name: 'back', top: 180, flare: '24deg' },
    ]);
    expect(gores[0]!.tightest).toBeCloseTo(180 / (20 * DEGREE), 6);
    expect(gores[1]!.tightest).toBeCloseTo(180 / (24 * DEGREE), 6);
  });

  it('is its hem where it is pegged, the arc then lying about a point below it', () => {
    const { gores } = measured([
      { name: 'front', top: 180, flare: '-6deg' },
      { name: 'back', top: 180, flare: '-6deg' },
    ]);
    for (const gore of gores) expect(gore.tightest).toBeCloseTo(180 / (6 * DEGREE) - 1000, 6);
  });

  it('does not bend where nothing flares', () => {
    const straight = ['front', 'back'].map((name) => ({ name, top: 180, flare: '0deg' }));
    expect(measured(straight).gores.map(({ tightest }) => tightest)).toEqual([Infinity, Infinity]);
  });
});

describe('the seams of a gown', () => {
  const seamed = (name: string) => ({ name, top: 180, flare: '20deg' });
  const folded = (name: string) => ({ name, 'on-fold': true, 'half-top': 180, 'half-flare': '20deg' });
  it.each([
    [
      'both centres seamed',
      [seamed('front'), seamed('back')],
      ['centre-front front front', 'front/back front back', 'centre-back back back'],
    ],
    [
      'the front on the fold',
      [folded('front'), seamed('back')],
      ['front/back front back', 'centre-back back back'],
    ],
    [
      'the back on the fold',
      [seamed('front'), folded('back')],
      ['centre-front front front', 'front/back front back'],
    ],
    ['both on the fold', [folded('front'), folded('back')], ['front/back front back']],
  ])('%s', (_, gores, expected) => {
    const { seams } = measured(gores);
    expect(seams.map(({ name, gores: [a, b] }) => `${name} ${a} ${b}`)).toEqual(expected);
    const isFolded = (gore: Tree) => 'on-fold' in gore;
    expect(measured(gores).gores.map(({ onFold, copies }) => [onFold, copies])).toEqual(
      gores.map((gore) => [isFolded(gore), isFolded(gore) ? 1 : 2]),
    );
    // A level hem of four sectors: each its top and the flare times the length.
    expect(measured(gores).hem.sewn).toBeCloseTo(4 * (180 + 20 * DEGREE * 1000), 5);
    for (const { hemAngle, waistAngle, lengths } of seams) {
      expect(hemAngle).toBeCloseTo(Math.PI, 9);
      expect(waistAngle).toBeCloseTo(Math.PI, 9);
      expect(lengths[0]).toBeCloseTo(1000, 6);
      expect(lengths[1]).toBeCloseTo(1000, 6);
    }
  });

  it('the closing seam of a ring is named last/first, and met once', () => {
    const ring = ['a', 'b', 'c'].map((name) => ({ name, top: 240, flare: '20deg' }));
    const { seams } = measured(ring, {
      symmetry: 'none',
      lengths: { measured: 'finished', at: { 'c/a': 1000 } },
    });
    expect(seams.map(({ name, side }) => [name, side])).toEqual([
      ['c/a', undefined],
      ['a/b', undefined],
      ['b/c', undefined],
    ]);
  });
});

describe('the waist as measured', () => {
  it('is held against the bodice panels that the gores meet', () => {
    const gores = [
      { name: 'front', flare: '20deg' },
      { name: 'back', flare: '20deg' },
    ];
    const bodice = { 'waist-seam': 720, panels: { front: 170, back: 190 } };
    const { waist, gores: tops } = measured(gores, { bodice });
    expect(waist.bodice).toBeCloseTo(720, 9);
    expect(waist.sewn).toBeCloseTo(720, 6);
    expect(tops.map(({ top }) => Math.round(top))).toEqual([170, 190]);
  });
});
