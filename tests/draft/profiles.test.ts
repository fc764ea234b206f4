import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { integrateAlong, profileThrough, respaced, settledProfile } from '../../src/draft/edge-profiles.ts';
import type { Piece } from '../../src/draft/piece.ts';
import { isSameOutline } from '../../src/draft/same-outline.ts';
import { handSetShape, trainShare, withTrain } from '../../src/draft/train-shape.ts';
import type { Curve } from '../../src/geometry/curve.ts';
import type { Profile } from '../../src/geometry/hermite-profile.ts';
import { translated } from '../../src/geometry/transform.ts';
import { evenly } from '../evenly.ts';

const close = (value: number) => expect.closeTo(value, 9);
const flat = (depth: number): Profile => ({ joins: [0, 1000], valueAt: () => depth, slopeAt: () => 0 });

/** The slope is the derivative of the value, away from where pieces join. */
function slopesHold(profile: Profile, from: number, to: number): void {
  for (let way = from + 1.7; way < to; way += (to - from) / 37) {
    if (profile.joins.some((join) => Math.abs(join - way) < 0.01)) continue;
    const numeric = (profile.valueAt(way + 1e-4) - profile.valueAt(way - 1e-4)) / 2e-4;
    expect(profile.slopeAt(way), `at ${way}`).toBeCloseTo(numeric, 5);
  }
}

describe('the shape of a train, by its formula', () => {
  const centred = { begins: 200, full: 1000 };
  const beside = { begins: 200, full: 600, ends: 1600 };
  const FORMULA = {
    round: (t: number) => t * t * (3 - 2 * t),
    pointed: (t: number) => t * t,
    square: (t: number) => (t >= 0.6 ? 1 : (t / 0.6) ** 2 * (3 - (2 * t) / 0.6)),
  };

  it.each(['round', 'pointed', 'square'] as const)('%s', (shape) => {
    const share = (t: number) => FORMULA[shape](t);
    for (const t of [0, 0.1, 0.35, 0.6, 0.8, 1]) {
      expect(trainShare(shape, centred, 200 + 800 * t)).toBeCloseTo(share(t), 12);
      expect(trainShare(shape, beside, 200 + 400 * t)).toBeCloseTo(share(t), 12);
      expect(trainShare(shape, beside, 1600 - 1000 * t)).toBeCloseTo(share(t), 12);
    }
    expect([0, 150, 1100].map((way) => trainShare(shape, centred, way))).toEqual([0, 0, 1]);
    expect([0, 1700].map((way) => trainShare(shape, beside, way))).toEqual([0, 0]);
    for (const [ways, to] of [
      [centred, 1000],
      [beside, 1800],
    ] as const) {
      const hem = withTrain(flat(1000), shape, ways, { before: -20, full: 300 });
      expect(hem.valueAt(100)).toBeCloseTo(980, 9);
      expect(hem.valueAt(ways.full)).toBeCloseTo(1300, 9);
      expect(hem.valueAt(440)).toBeCloseTo(980 + 320 * share(240 / (ways.full - 200)), 9);
      slopesHold(hem, 0, to);
      expect([hem.slopeAt(100), hem.slopeAt(200)]).toEqual([0, 0]);
      expect([...hem.joins].sort((a, b) => a - b)).toEqual(hem.joins);
      const corners = shape === 'square' ? ('ends' in ways ? [440, 1000] : [680]) : [];
      const wanted = [...new Set([0, 200, 1000, ways.full, ...('ends' in ways ? [1600] : []), ...corners])];
      expect([...new Set(hem.joins)]).toEqual(wanted.sort((a, b) => a - b));
    }
  });

  it('between two lengths of its own, with the skirt as it is beside it', () => {
    const rest: Profile = {
      joins: [0, 100, 300, 1800],
      valueAt: (way) => 900 + way / 100,
      slopeAt: () => 0.01,
    };
    const rise = { before: 902, longest: 1250, after: 916 };
    const hem = handSetShape(rest, 'round', beside, rise);
    expect([0, 200, 1600, 1800].map(hem.valueAt)).toEqual([900, 902, 916, 918].map(close));
    expect([hem.slopeAt(100), hem.slopeAt(1700)]).toEqual([0.01, 0.01]);
    expect(hem.valueAt(400)).toBeCloseTo(902 + 348 / 2, 9);
    expect(hem.valueAt(1100)).toBeCloseTo(916 + 334 / 2, 9);
    expect(hem.valueAt(600)).toBeCloseTo(1250, 9);
    slopesHold(hem, 0, 1800);
    expect(hem.joins).toEqual([0, 100, 200, 600, 1600, 1800]);
    const behind = handSetShape(rest, 'pointed', centred, rise);
    expect([behind.valueAt(100), behind.valueAt(1000), behind.valueAt(600)]).toEqual(
      [901, 1250, 902 + 348 / 4].map(close),
    );
    slopesHold(behind, 0, 1000);
  });
});

describe('a line through the stations', () => {
  it('takes those that are known, and is level where they all are alike', () => {
    const through = profileThrough([0, 100, 300, 400], {
      depths: [10, undefined, 40, 40],
      ends: [0, 0],
      closed: false,
    });
    expect([0, 300, 400].map(through.valueAt)).toEqual([10, 40, 40].map(close));
    expect(through.joins).toEqual([0, 300, 400]);
    const level = profileThrough([0, 100, 300], { depths: [7, undefined, 7], ends: [0, 0], closed: false });
    expect([level.joins, level.valueAt(55), level.slopeAt(55)]).toEqual([[0, 300], 7, 0]);
    const free = profileThrough([0, 100], { depths: [0, 50], ends: ['free', 'free'], closed: false });
    expect([free.slopeAt(0), free.slopeAt(100)]).toEqual([0.5, 0.5].map(close));
  });

  it('of a ring goes on where it closes, wherever it is opened', () => {
    const depths = [12, 30, 55, 41, 20];
    const widths = [100, 130, 90, 110, 150];
    const round = widths.reduce((sum, width) => sum + width, 0);
    const opened = (at: number) => {
      const order = widths.map((_, i) => (i + at) % 5);
      const ways = [0];
      for (const i of order) ways.push(ways.at(-1)! + widths[i]!);
      return profileThrough(ways, {
        depths: [...order, at].map((i) => depths[i]!),
        ends: [0, 0],
        closed: true,
      });
    };
    const whole = opened(0);
    expect(whole.slopeAt(0)).toBeCloseTo(whole.slopeAt(round), 9);
    for (let at = 1; at < 5; at++) {
      const moved = opened(at);
      const shift = widths.slice(0, at).reduce((sum, width) => sum + width, 0);
      for (let way = 3; way < round; way += 17) {
        expect(whole.valueAt((way + shift) % round)).toBeCloseTo(moved.valueAt(way), 9);
        expect(whole.slopeAt((way + shift) % round)).toBeCloseTo(moved.slopeAt(way), 9);
      }
    }
  });
});

describe('an edge over other ways', () => {
  const edge = {
    ...profileThrough([0, 100, 300, 450], { depths: [10, 40, 90, 100], ends: [0, 0], closed: false }),
    ways: [0, 100, 300, 450],
  };

  it('over its own is itself; a gore whose way stays keeps its very line', () => {
    const same = respaced(edge, edge.ways);
    for (const way of [0, 33, 100, 217, 450])
      expect([same.valueAt(way), same.slopeAt(way)]).toEqual(
        [edge.valueAt(way), edge.slopeAt(way)].map(close),
      );
    const wider = respaced(edge, [0, 100, 320, 470]);
    for (const way of [10, 60, 95]) expect(wider.valueAt(way)).toBeCloseTo(edge.valueAt(way), 9);
    for (const way of [330, 400, 465]) expect(wider.valueAt(way)).toBeCloseTo(edge.valueAt(way - 20), 9);
  });

  it('passes every station at its depth, and never runs back', () => {
    fc.assert(
      fc.property(fc.tuple(evenly(40, 260), evenly(80, 500), evenly(60, 400)), (widths) => {
        const now = [0, widths[0], widths[0] + widths[1], widths[0] + widths[1] + widths[2]];
        const moved = respaced(edge, now);
        for (const [i, way] of now.entries())
          expect(moved.valueAt(way)).toBeCloseTo(edge.valueAt(edge.ways[i]!), 9);
        let last = -Infinity;
        for (let way = 0; way <= now[3]!; way += now[3]! / 60) {
          expect(moved.valueAt(way)).toBeGreaterThanOrEqual(last - 1e-9);
          last = moved.valueAt(way);
        }
        slopesHold({ ...moved, joins: now }, 0, now[3]!);
        expect(moved.joins.map((join) => Math.round(join))).toEqual(now.map((way) => Math.round(way)));
      }),
      { numRuns: 20 },
    );
  });

  it('has its joins within a gore where its line passes them', () => {
    const bent = { ...edge, joins: [0, 60, 100, 190, 300, 450] };
    const moved = respaced(bent, [0, 150, 350, 500]);
    for (const [i, join] of moved.joins.entries())
      expect(moved.valueAt(join)).toBeCloseTo(edge.valueAt(bent.joins[i]!), 6);
    expect([...moved.joins].sort((a, b) => a - b)).toEqual(moved.joins);
  });
});

describe('ways at which every gore comes out right', () => {
  it('are found where what is measured grows with the way, and not where it does not', () => {
    const over = (ways: readonly number[]) => ({ ...flat(5), joins: [...ways] });
    const found = settledProfile(
      [1, 1, 1],
      over,
      (_, gore, from, to) => (to - from) * (gore + 2),
      [20, 30, 60],
    );
    expect(found!.ways).toEqual([0, 10, 20, 35].map(close));
    expect(found!.valueAt(3)).toBe(5);
    // What the gore measures hangs on where it begins too.
    const bent = settledProfile(
      [10, 10],
      over,
      (_, __, from, to) => (to - from) * (1 + from / 100),
      [20, 30],
    );
    expect(bent!.ways).toEqual([0, close(20), close(20 + 30 / 1.2)]);
    expect(settledProfile([1], over, () => Number.NaN, [1])).toBeUndefined();
    expect(settledProfile([1], over, () => 1, [2])).toBeUndefined();
  });

  it('an integral is broken where the pieces join', () => {
    const kinked: Profile = {
      joins: [0, 30, 70, 100],
      valueAt: (way) => Math.abs(way - 30) + Math.max(0, way - 70) ** 2,
      slopeAt: () => 0,
    };
    // ∫|w − 30| from 10 to 90 is 200 + 1800, and the square adds 20³/3.
    expect(integrateAlong(kinked, kinked.valueAt, 10, 90)).toBeCloseTo(2000 + 8000 / 3, 9);
    expect(integrateAlong(kinked, () => 2, 40, 45)).toBeCloseTo(10, 12);
  });
});

describe('two pieces of one outline', () => {
  const piece = (x: number, shift = 0): Piece => {
    const corners = [
      [0, 0],
      [x, shift],
      [x, 100],
      [0, 100],
    ] as const;
    const edges = corners.map(([fromX, fromY], i) => {
      const [toX, toY] = corners[(i + 1) % 4]!;
      return {
        name: `${i}`,
        curves: [{ kind: 'line', from: { x: fromX, y: fromY }, to: { x: toX, y: toY } } as Curve],
      };
    });
    return { edges } as unknown as Piece;
  };

  it('lie on one another within a hundredth of a millimetre, edge by edge', () => {
    const own = piece(50);
    expect([
      isSameOutline(own, own),
      isSameOutline(own, piece(50)),
      isSameOutline(own, piece(50.008)),
    ]).toEqual([true, true, true]);
    expect([isSameOutline(own, piece(50.02)), isSameOutline(own, piece(50, 3))]).toEqual([false, false]);
    // As long, and elsewhere.
    const moved = {
      ...own,
      edges: own.edges.map((edge) => ({
        ...edge,
        curves: edge.curves.map((curve) => translated(curve, { x: 1, y: 0 })),
      })),
    };
    expect(isSameOutline(own, moved)).toBe(false);
  });
});
