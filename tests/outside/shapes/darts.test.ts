import { describe, expect, it } from 'vitest';
import { made } from '../../making/made.ts';
import { draftedPattern, mustDraft } from '../drafted.ts';
import { angleOf, dartsOf, nearest } from '../measure/dart-legs.ts';
import { readPattern } from '../measure/pattern.ts';
import { distance, minus } from '../measure/segment.ts';
import { level, plainGown, type Tree } from '../plain-gown.ts';

const skirt = (fields: Tree = {}): string =>
  plainGown({
    units: 'mm',
    bodice: { 'waist-seam': 700 },
    gores: [
      { name: 'front', 'on-fold': true, 'half-top': 175, 'half-hem': 260 },
      { name: 'back', top: 175, hem: 250 },
    ],
    lengths: level(600),
    allowances: { seam: 15, waist: 12, hem: 20 },
    darts: [
      { gore: 'front', at: '55%', 'takes-in': 25, length: 100 },
      { gore: 'back', at: '35%', 'takes-in': 20, length: 120 },
      { gore: 'back', at: '68%', 'takes-in': 15, length: 110 },
    ],
    ...fields,
  });

describe('darts at the waist', () => {
  it.each([
    ['front', [25]],
    ['back', [20, 15]],
  ] as const)(
    '%s: legs alike, the waist smooth when they are closed, and as long as the top',
    async (gore, taken) => {
      const { legs, waist, report } = await dartsOf(gore, skirt());
      expect(legs).toHaveLength(2 * taken.length);
      let sewn = 0;
      let from = 0;
      for (const [k] of taken.entries()) {
        const [left, right] = [legs[2 * k]!, legs[2 * k + 1]!];
        expect(distance(left.point, right.point)).toBeLessThan(1e-6);
        const lengths = [left, right].map(({ top, point }) => distance(top, point));
        expect(Math.abs(lengths[0]! - lengths[1]!)).toBeLessThan(0.001);
        const [a, b] = [nearest(waist, left.top), nearest(waist, right.top)];
        // One sample beside each leg, on the side of the cloth that is sewn to the bodice.
        const turn = angleOf(minus(right.top, right.point)) - angleOf(minus(left.top, left.point));
        const [before, after] = [waist[a - 2]!.direction, waist[b + 2]!.direction];
        const bend = angleOf(after) - turn - angleOf(before);
        expect(Math.abs((bend * 180) / Math.PI)).toBeLessThan(0.15);
        sewn += waist[a]!.distance - from;
        from = waist[b]!.distance;
      }
      sewn += waist.at(-1)!.distance - from;
      expect(sewn).toBeCloseTo(175, 0);
      expect(Math.abs(sewn - 175)).toBeLessThan(0.25);
      expect(report.waist.sewn).toBeCloseTo(700, 3);
    },
  );

  it('are as long as they are said to be, within what the waist is lifted by, and take in what they are said to', async () => {
    const { legs } = await dartsOf('front', skirt());
    const [left, right] = [legs[0]!, legs[1]!];
    expect(distance(left.top, left.point)).toBeGreaterThan(100);
    expect(distance(left.top, left.point)).toBeLessThan(112);
    expect(Math.abs(distance(left.top, right.top) - 25)).toBeLessThan(2);
  });

  it('end in a fold that lies on the cut edge of the waist: folded to the front, both plies of it (by turning the drafted outline)', async () => {
    const { legs, cut } = await dartsOf('front', skirt());
    const { top, point } = legs[0]!;
    const other = legs[1]!;
    const start = angleOf(minus(top, point));
    const angle = angleOf(minus(other.top, point)) - start;
    const beside = cut.filter(
      (own) => own.point.y < point.y - 50 && angleOf(minus(own.point, point)) < start + 1e-3,
    );
    const between = cut.filter(({ point: own }) => {
      const share = (angleOf(minus(own, point)) - start) / angle;
      return own.y < point.y - 50 && share > 0.02 && share < 0.98;
    });
    expect(between.length).toBeGreaterThan(100);
    for (const { point: own } of between.filter((_, i) => i % 20 === 0)) {
      const way = minus(own, point);
      const [far, at] = [Math.hypot(way.x, way.y), angleOf(way) - start];
      // The ply next to the front leg is turned over about it; the other goes round with the back part of the gore.
      const folded = start + (at < angle / 2 ? -at : at - angle);
      const lies = { x: point.x + far * Math.cos(folded), y: point.y + far * Math.sin(folded) };
      expect(Math.min(...beside.map((one) => distance(one.point, lies)))).toBeLessThan(0.15);
    }
  });

  it('are sewn before the seams, and said in the order of making', () => {
    const { facts } = made(skirt());
    const ids = facts.order.map(({ id }) => id);
    expect(ids.indexOf('darts:shell')).toBeGreaterThan(-1);
    expect(ids.indexOf('darts:shell')).toBeLessThan(ids.indexOf('seams:shell'));
    expect(ids).not.toContain('gather:shell');
  });

  it('leave hem and hip as the gore has them: cloth is added at the waist alone', async () => {
    const [darted, plain] = await Promise.all(
      [skirt(), skirt({ darts: [] })].map(async (yaml) => {
        const { svg } = mustDraft(await draftedPattern(yaml), yaml);
        return readPattern(svg).pieces.find(({ gore }) => gore === 'front')!;
      }),
    );
    expect(darted!.sew.get('hem')!.length).toBeCloseTo(plain!.sew.get('hem')!.length, 2);
  });
});
