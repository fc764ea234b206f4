import { describe, expect, it } from 'vitest';
import { draftedTrue } from '../drafted.ts';
import { type Gore, goreOf, innerAngle } from '../measure/gore.ts';
import { distanceTo, samplesOf } from '../measure/path.ts';
import { readPattern } from '../measure/pattern.ts';
import { plainGown, type Tree } from '../plain-gown.ts';

const gown = {
  units: 'mm',
  bodice: { 'waist-seam': 720 },
  gores: [
    { name: 'front', 'on-fold': true, 'half-top': 90, 'half-hem': 220 },
    { name: 'side', top: 140, hem: 380 },
    { name: 'back', top: 130, hem: 360 },
  ],
  lengths: { 'hem-width-at': 1000, at: { 'centre-front': 1000, 'centre-back': 1000 } },
  allowances: { seam: 15, waist: 12, hem: 20 },
  cloths: { calico: { width: 3000, selvedge: 0 } },
};

async function overskirtOf(overskirt: Tree, fields: Tree = {}) {
  const whole = { layers: [{ name: 'over', cloth: 'calico', hem: 'faced' }], ...overskirt };
  const { svg, report, diagnostics } = await draftedTrue(
    plainGown({ ...gown, overskirts: [whole], ...fields }),
  );
  const pieces = readPattern(svg).pieces;
  const open = (name: string, front: string, back: string): Gore =>
    goreOf(pieces.find((piece) => piece.gore === name)!, front, back);
  return { pieces, open, report, diagnostics };
}

describe('trains that come off and overskirts', () => {
  it('a train of its own gores: lengths at its ends, one curve, free edges finished and not notched', async () => {
    const { open, report } = await overskirtOf({
      name: 'train',
      from: 'front/side',
      gores: [
        { name: 'wing', top: 120, hem: 320 },
        { name: 'tail', top: 150, hem: 420 },
      ],
      lengths: { 'hem-width-at': 1000, at: { 'outer-edge': 980, 'centre-back': 1600 } },
      train: { begins: 'outer-edge', shape: 'round' },
      edges: 'turned',
    });
    const wing = open('wing', 'outer-edge', 'wing/tail');
    const tail = open('tail', 'wing/tail', 'centre-back');
    expect(Math.abs(wing.front.length - 980)).toBeLessThan(0.1);
    expect(Math.abs(tail.back.length - 1600)).toBeLessThan(0.1);
    expect(Math.abs(wing.back.length - tail.front.length)).toBeLessThan(0.1);
    expect(Math.abs(wing.waist.length - 120)).toBeLessThan(0.1);
    for (const edge of ['waist', 'hem'] as const)
      expect(Math.abs(innerAngle(wing, edge, 'back') + innerAngle(tail, edge, 'front') - 180)).toBeLessThan(
        0.1,
      );
    expect(wing.piece.notches.some((notch) => notch.edge === 'outer-edge')).toBe(false);
    expect(wing.piece.notches.some((notch) => notch.edge === 'wing/tail')).toBe(true);
    // Turned: as wide as a hem; the seam keeps its own.
    expectWidth(wing, 'front', 20);
    expectWidth(wing, 'back', 15);
    for (const piece of [wing.piece, tail.piece]) {
      expect(piece.layers).toEqual(['over']);
      expect(piece.text).toContain('pair');
    }
    expect(JSON.stringify(report)).toContain('"outer-edge"');
  });

  it('bound edges have no allowance', async () => {
    const { open } = await overskirtOf({
      name: 'train',
      from: 'side/back',
      gores: [{ name: 'tail', top: 130, flare: '25deg' }],
      lengths: { at: { 'outer-edge': 700, 'centre-back': 1100 } },
      train: { begins: 'outer-edge', shape: 'pointed' },
      edges: 'bound',
    });
    const tail = open('tail', 'outer-edge', 'centre-back');
    expectWidth(tail, 'front', 0);
    expectWidth(tail, 'back', 15);
  });

  it('two panels that end before the centre back have two free edges each', async () => {
    const { open, pieces } = await overskirtOf({
      name: 'panels',
      from: 'front/side',
      to: 'side/back',
      gores: [{ name: 'panel', top: 140, hem: 260 }],
      lengths: { 'hem-width-at': 900, at: { 'outer-edge': 900, 'back-edge': 940 } },
      edges: 'turned',
    });
    const panel = open('panel', 'outer-edge', 'back-edge');
    expect(Math.abs(panel.front.length - 900)).toBeLessThan(0.1);
    expect(Math.abs(panel.back.length - 940)).toBeLessThan(0.1);
    expectWidth(panel, 'front', 20);
    expectWidth(panel, 'back', 20);
    expect(pieces.find((piece) => piece.gore === 'panel')!.notches).toHaveLength(0);
  });

  it('on a bodice edge that drops, its waist drops with it', async () => {
    const { open } = await overskirtOf(
      {
        name: 'train',
        from: 'front/side',
        gores: [
          { name: 'wing', top: 140, hem: 320 },
          { name: 'tail', top: 130, hem: 420 },
        ],
        lengths: { 'hem-width-at': 1000, at: { 'outer-edge': 980, 'centre-back': 1000 } },
      },
      {
        bodice: { 'waist-seam': 720, 'drop-below-waist': { 'centre-front': 50, 'front/side': 30 } },
        lengths: {
          'hem-width-at': 1000,
          at: { 'centre-front': 950, 'front/side': 970, 'centre-back': 1000 },
        },
      },
    );
    const wing = open('wing', 'outer-edge', 'wing/tail');
    expect(Math.abs(wing.waist.length - 140)).toBeLessThan(0.1);
    expect(Math.abs(wing.front.length - 980)).toBeLessThan(0.1);
    // 30 lower at its outer edge than where it reaches the level waist, over 140: the edge leans by that much.
    const lean = innerAngle(wing, 'waist', 'front') - 90;
    expect(Math.abs(lean)).toBeGreaterThan(5);
    expect(Math.abs(innerAngle(wing, 'waist', 'back') - 90)).toBeLessThan(3);
  });
});

/** The cut line keeps its distance along the middle of a side. */
function expectWidth(gore: Gore, side: 'front' | 'back', width: number) {
  const path = gore[side];
  const middle = samplesOf(path, 10).filter(
    ({ distance }) => distance > path.length * 0.3 && distance < path.length * 0.7,
  );
  for (const { point } of middle)
    expect(Math.abs(distanceTo(gore.piece.cut, point) - width)).toBeLessThan(0.05);
}
