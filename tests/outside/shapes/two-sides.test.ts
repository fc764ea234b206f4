import { describe, expect, it } from 'vitest';
import { draftedTrue } from '../drafted.ts';
import { factsOf } from '../facts.ts';
import { type Gore, innerAngle } from '../measure/gore.ts';
import { measuredGown } from '../measure/gown.ts';
import { samplesOf } from '../measure/path.ts';
import { plainGown, type Tree } from '../plain-gown.ts';
import { expectTrue } from '../truth/untruths.ts';

/** Five gores all the way round, no two alike. */
const ring = {
  units: 'mm',
  symmetry: 'none',
  bodice: { 'waist-seam': 720 },
  gores: [
    { name: 'left-front', top: 130, hem: 340 },
    { name: 'left-side', top: 150, hem: 420 },
    { name: 'back', top: 170, hem: 520 },
    { name: 'right-side', top: 140, hem: 380 },
    { name: 'right-front', top: 130, hem: 360, grain: 'front-edge' },
  ],
};

async function ringOf(fields: Tree) {
  const yaml = plainGown({ ...ring, ...fields });
  const { svg, report } = await draftedTrue(yaml);
  expectTrue(svg, report, yaml);
  const gown = measuredGown(svg, report, factsOf(yaml));
  return { gores: gown.layers[0]!.gores as Gore[], pieces: gown.pattern.pieces, report };
}

const at = {
  'right-front/left-front': 900,
  'left-front/left-side': 860,
  'left-side/back': 960,
  'back/right-side': 1090,
  'right-side/right-front': 1010,
};
const byHand = { measured: 'finished', 'hem-width-at': 900, at };

describe('gowns whose two sides differ', () => {
  it('a hem set by hand: every seam as long as said, the closing one too, hem and waist straight through', async () => {
    const { gores } = await ringOf({ lengths: byHand });
    const lengths = Object.values(at);
    for (const [i, gore] of gores.entries()) {
      expect(Math.abs(gore.front.length - lengths[i]!)).toBeLessThan(0.1);
      expect(Math.abs(gore.back.length - lengths[(i + 1) % 5]!)).toBeLessThan(0.1);
    }
    for (const [i, gore] of gores.entries()) {
      const next = gores[(i + 1) % 5]!;
      for (const edge of ['hem', 'waist'] as const)
        expect(Math.abs(innerAngle(gore, edge, 'back') + innerAngle(next, edge, 'front') - 180)).toBeLessThan(
          0.1,
        );
    }
    expect(Math.abs(gores.reduce((sum, gore) => sum + gore.waist.length, 0) - 720)).toBeLessThan(0.1);
  });

  it('nothing is cut as a mirrored pair, and every piece says whose side it is', async () => {
    const { pieces, report } = await ringOf({ lengths: byHand });
    const text = (name: string) => pieces.find((piece) => piece.gore === name)!.text.replace(/\s+/g, ' ');
    for (const name of ['left-front', 'left-side', 'back', 'right-side', 'right-front']) {
      expect(text(name)).not.toMatch(/pair|mirror|fold/);
      expect(text(name)).toContain('cut 1');
    }
    expect(text('left-side')).toMatch(/wearer.s left/);
    expect(text('right-side')).toMatch(/wearer.s right/);
    expect(report.gores.map((gore) => gore.copies)).toEqual([1, 1, 1, 1, 1]);
    expect(Math.abs(report.hem.sewn - report.gores.reduce((sum, gore) => sum + gore.hem, 0))).toBeLessThan(
      0.01,
    );
  });

  it('grain at the front edge lies towards the front on either side of the wearer', async () => {
    const { gores } = await ringOf({ lengths: byHand });
    // The ring comes to a right gore at its back: its front edge is the second one.
    const right = gores[4]!;
    const grain = right.piece.grain[0]!.segments.reduce((a, b) => (b.length > a.length ? b : a));
    const up = Math.atan2(Math.abs(grain.to.x - grain.from.x), Math.abs(grain.to.y - grain.from.y));
    const seam = right.back;
    const lean = Math.atan2(Math.abs(seam.to.x - seam.from.x), Math.abs(seam.to.y - seam.from.y));
    expect(Math.abs(up - lean)).toBeLessThan(0.0005);
  });

  for (const shape of ['round', 'pointed', 'square'] as const) {
    it(`a ${shape} train on one side: level before it and behind it, longest where it was said`, async () => {
      const { gores } = await ringOf({
        lengths: {
          measured: 'to-floor',
          'off-floor': 20,
          'hem-width-at': 900,
          at: { 'right-front/left-front': 1000, 'left-side/back': 1000, 'back/right-side': 1010 },
        },
        train: {
          begins: 'left-front/left-side',
          full: 'back/right-side',
          ends: 'right-front/left-front',
          'on-floor': 400,
          shape,
        },
      });
      expect(Math.abs(gores[0]!.front.length - 980)).toBeLessThan(0.1);
      expect(Math.abs(gores[0]!.back.length - 980)).toBeLessThan(0.1);
      expect(Math.abs(gores[2]!.back.length - 1410)).toBeLessThan(0.1);
      expect(gores[1]!.back.length).toBeGreaterThan(1000);
      expect(gores[3]!.back.length).toBeGreaterThan(1000);
      expect(Math.abs(gores[4]!.back.length - 980)).toBeLessThan(0.1);
      // It only falls up to its longest, and only rises after it.
      const falls = (gore: Gore) => {
        const samples = samplesOf(gore.hem, 5).map(({ point }) => point);
        const top = gore.waist.from;
        const far = samples.map((point) => Math.hypot(point.x - top.x, point.y - top.y));
        return far[far.length - 1]! - far[0]!;
      };
      expect(falls(gores[1]!)).toBeGreaterThan(0);
      expect(falls(gores[3]!)).toBeLessThan(0);
    });
  }

  it('two different sides over a petticoat', async () => {
    const girths = [
      { down: 0, girth: 720 },
      { down: 200, girth: 1150 },
      { down: 600, girth: 1900 },
      { down: 1000, girth: 2300 },
    ];
    const { gores } = await ringOf({
      gores: ring.gores.map(({ hem: _, ...gore }) => gore),
      petticoat: { girths },
      lengths: { measured: 'finished', at },
    });
    const lengths = Object.values(at);
    for (const [i, gore] of gores.entries())
      expect(Math.abs(gore.back.length - lengths[(i + 1) % 5]!)).toBeLessThan(0.1);
  });

  it('a godet in the closing seam is one piece, its neighbours the last gore and the first', async () => {
    const { pieces } = await ringOf({
      lengths: byHand,
      godets: [{ name: 'wedge', seam: 'right-front/left-front', from: 500, width: 300 }],
    });
    const wedge = pieces.find((piece) => piece.gore === 'wedge')!;
    expect([...wedge.sew.keys()].sort()).toEqual(['hem', 'point', 'right-front/wedge', 'wedge/left-front']);
    expect(wedge.text).not.toContain('pair');
    for (const side of ['right-front/wedge', 'wedge/left-front'])
      expect(Math.abs(wedge.sew.get(side)!.length - 400)).toBeLessThan(0.1);
  });
});
