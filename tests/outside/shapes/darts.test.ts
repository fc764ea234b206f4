import { describe, expect, it } from 'vitest';
import { made } from '../../making/made.ts';
import { draftedPattern, mustDraft } from '../drafted.ts';
import { angleOf, dartsOf, nearest } from '../measure/dart-legs.ts';
import { pleatLinesOf, uprightOf } from '../measure/folding.ts';
import { samplesOf } from '../measure/path.ts';
import { readPattern } from '../measure/pattern.ts';
import { cross, distance, minus } from '../measure/segment.ts';
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

  it.each([
    ['front', 0, 'front'],
    // The skirt's back half: both darts of it lie nearer to the centre back (common practice: towards the centre).
    ['back', 1, 'back'],
    ['back', 0, 'back'],
  ] as const)(
    'end in a fold that lies on the cut edge of the waist: %s, dart %i, folded to the %s, both plies of it (by turning the drafted outline)',
    async (gore, which, to) => {
      const { legs, cut } = await dartsOf(gore, skirt());
      const [left, right] = [legs[2 * which]!, legs[2 * which + 1]!];
      const { point } = left;
      // As seen from the leg that it is folded over, towards the other one.
      const [on, other] = to === 'front' ? [left, right] : [right, left];
      const sign = to === 'front' ? 1 : -1;
      const start = angleOf(minus(on.top, point));
      const angle = sign * (angleOf(minus(other.top, point)) - start);
      const from = (own: { x: number; y: number }) => sign * (angleOf(minus(own, point)) - start);
      const high = (own: { y: number }) => own.y < point.y - 50;
      const beside = cut.filter((own) => high(own.point) && from(own.point) < 1e-3);
      const between = cut.filter(
        ({ point: own }) => high(own) && from(own) / angle > 0.02 && from(own) / angle < 0.98,
      );
      expect(between.length).toBeGreaterThan(100);
      for (const { point: own } of between.filter((_, i) => i % 20 === 0)) {
        const way = minus(own, point);
        const far = Math.hypot(way.x, way.y);
        const at = from(own);
        // The ply next to that leg is turned over about it; the other goes round with the gore beyond the dart.
        const folded = start + sign * (at < angle / 2 ? -at : at - angle);
        const lies = { x: point.x + far * Math.cos(folded), y: point.y + far * Math.sin(folded) };
        expect(Math.min(...beside.map((one) => distance(one.point, lies)))).toBeLessThan(0.15);
      }
    },
  );

  it('let a pleat lie past them where it is said to, as the waist is sewn', async () => {
    const yaml = skirt({
      darts: [{ gore: 'back', at: '25%', 'takes-in': 20, length: 120 }],
      pleats: [
        {
          name: 'knife',
          kind: 'knife',
          at: 'front/back',
          'from-seam': 110,
          gore: 'back',
          'fold-depth': 25,
          towards: 'back',
        },
      ],
    });
    const { svg } = mustDraft(await draftedPattern(yaml), yaml);
    const back = readPattern(svg).pieces.find(({ gore }) => gore === 'back')!;
    const turned = uprightOf(back);
    const [first] = pleatLinesOf(svg, 'back', 'shell', turned).sort((a, b) => a.from.x - b.from.x);
    const way = minus(first!.to, first!.from);
    const waist = samplesOf(back.sew.get('waist')!, 0.5).map((own) => ({ ...own, point: turned(own.point) }));
    const beyond = waist.map(({ point, distance: along }) => ({
      along,
      side: cross(way, minus(point, first!.from)),
    }));
    const met = beyond.find(({ side }, i) => i > 0 && side < 0 !== beyond[i - 1]!.side < 0)!;
    const { length } = back.sew.get('waist')!;
    const fromSeam = waist[0]!.point.x < waist.at(-1)!.point.x ? met.along : length - met.along;
    // Between the dart's legs the edge is that of its fold: longer than what it takes in.
    const { legs } = await dartsOf('back', yaml);
    const [a, b] = legs.map(({ top }) => nearest(waist, top));
    const inDart = Math.abs(waist[b!]!.distance - waist[a!]!.distance);
    expect(Math.abs(fromSeam - inDart - 110)).toBeLessThan(1.2);
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
