import { describe, expect, it } from 'vitest';
import type { GoreFrame } from '../../src/draft/gore-frame.ts';
import { goreFrames, longestStation } from '../../src/draft/gore-frames.ts';
import { hemProfile } from '../../src/draft/hem-profile.ts';
import { plainHems } from '../../src/draft/plain-hem.ts';
import { waistProfile } from '../../src/draft/waist-profile.ts';
import { expectFrame } from './frame-holds.ts';

/** Hems and waists over gores that are straight strips 100 wide, so that every place round is known. mm. */

const strips = (count: number): GoreFrame[] =>
  Array.from({ length: count }, () => ({ widthAt: () => 100 }) as unknown as GoreFrame);
type Depth = number | undefined;
const gownOf = (round: string, lengths: readonly Depth[], own: object = {}, drops: readonly number[] = []) =>
  ({
    round,
    gores: lengths.slice(1).map((_, i) => ({
      name: `g${i}`,
      top: 100,
      width: { kind: 'flare', angle: 0 },
      grain: { frontPart: 0.5 },
    })),
    stations: lengths.map((length, i) => ({
      drop: drops[i] ?? 0,
      ...(length === undefined ? {} : { length }),
    })),
    lengths: { measured: 'finished' },
    ...own,
  }) as never;
const PLAIN = { shorter: 0, smallerAcross: 0, smallerAlong: 0 };
const hem = (gown: never, count: number, shape: object = PLAIN) => {
  const profile = hemProfile(gown, strips(count), { ...PLAIN, ...shape })!;
  expect(profile.ways).toEqual(Array.from({ length: count + 1 }, (_, i) => expect.closeTo(100 * i, 6)));
  return profile;
};
const at = (profile: { valueAt: (way: number) => number }, ...ways: number[]) =>
  ways.map((way) => Math.round(profile.valueAt(way) * 1e6) / 1e6);
const train = (begins: number, full: number, own: object = {}) => ({
  train: { begins, full, onFloor: 300, shape: 'round', ...own },
});

describe('a hem', () => {
  it('goes through the lengths that are said below its drops, and level at the centres', () => {
    const own = hem(gownOf('mirrored', [1000, undefined, 1060, 1100], {}, [20, 0, 0, 0]), 3);
    expect(at(own, 0, 200, 300)).toEqual([1020, 1060, 1100]);
    expect([own.slopeAt(0), own.slopeAt(300)]).toEqual([0, 0]);
    expect(own.valueAt(100)).toBeGreaterThan(1020);
    expect(own.valueAt(100)).toBeLessThan(1060);
  });

  it('of a layer is as much shorter as its cloth stretches and as is said', () => {
    const own = hem(gownOf('mirrored', [1000, 1040, 1100, 1100]), 3, { smallerAlong: 0.1, shorter: 25 });
    expect(at(own, 0, 100, 300)).toEqual([875, 911, 965]);
    const plain = hem(gownOf('mirrored', [1000, 1040, 1100, 1100]), 3);
    expect(own.slopeAt(100)).toBeCloseTo(0.9 * plain.slopeAt(100), 9);
    expect(own.slopeAt(150)).toBeCloseTo(0.9 * plain.slopeAt(150), 9);
    expect(at(hem(gownOf('mirrored', [1000, 1000]), 1, { shorter: 5 }), 40)).toEqual([995]);
    expect(at(hem(gownOf('mirrored', [1000, 1000]), 1, { smallerAlong: 0.5 }), 40)).toEqual([500]);
  });

  it('of a ring closes without a corner', () => {
    const own = hem(gownOf('ring', [1000, 1040, 1100, 1050, 1000]), 4);
    expect(own.slopeAt(0)).toBeCloseTo(own.slopeAt(400), 9);
    expect(at(own, 0, 100, 200, 300, 400)).toEqual([1000, 1040, 1100, 1050, 1000]);
  });

  it('measured to the floor stays off it, and on it where a train lies', () => {
    const floor = { lengths: { measured: 'to-floor', offFloor: 25 } };
    const lengths = [1000, 1010, 1020, 1020];
    expect(at(hem(gownOf('mirrored', lengths, floor), 3), 0, 100, 300)).toEqual([975, 985, 995]);
    const own = hem(gownOf('mirrored', lengths, { ...floor, ...train(1, 3) }), 3);
    // From 25 short of the floor to 300 past it; half-way through a round train half of that.
    expect(at(own, 0, 100, 200, 300)).toEqual([975, 985, 1020 - 25 + 325 / 2, 1320]);
    const beside = hem(
      gownOf('ring', [1000, 1000, 1000, 1000, 1000, 1000], { ...floor, ...train(1, 3, { ends: 4 }) }),
      5,
    );
    expect(at(beside, 100, 300, 400, 450, 350)).toEqual([975, 1300, 975, 975, 975 + 325 / 2]);
  });

  it('with a train of its own lengths has the train’s shape where none is named inside', () => {
    const own = hem(gownOf('mirrored', [1000, 1000, undefined, 1400], train(1, 3)), 3);
    expect(at(own, 0, 50, 100, 200, 300)).toEqual([1000, 1000, 1000, 1200, 1400]);
    const pointed = hem(
      gownOf('mirrored', [1000, 1000, undefined, 1400], train(1, 3, { shape: 'pointed' })),
      3,
    );
    expect(at(pointed, 200, 300)).toEqual([1100, 1400]);
    // Where it begins at a station without a length, from the last one before; full at one without, from there too.
    expect(
      at(hem(gownOf('mirrored', [990, 1010, undefined, undefined, 1400], train(2, 4)), 4), 200, 300, 400),
    ).toEqual([1010, 1205, 1400]);
    expect(
      at(hem(gownOf('mirrored', [1000, undefined, undefined, undefined], train(1, 3)), 3), 100, 300),
    ).toEqual([1000, 1000]);
    // Beside it the skirt runs level into the train, whatever it did before.
    const front = hem(gownOf('mirrored', [900, 1000, undefined, 1400], train(1, 3)), 3);
    expect(at(front, 0, 100)).toEqual([900, 1000]);
    expect(front.slopeAt(100)).toBe(0);
    expect(front.slopeAt(99.999)).toBeCloseTo(0, 3);
  });

  it('through a station named inside its train, and by the train’s shape through those that are not', () => {
    const own = hem(gownOf('mirrored', [1000, 1000, undefined, 1310, 1400], train(1, 4)), 4);
    // A third of the way a round train has 7 in 27 of its 400.
    expect(at(own, 100, 200, 300, 400)).toEqual([
      1000,
      Math.round((1000 + (400 * 7) / 27) * 1e6) / 1e6,
      1310,
      1400,
    ]);
    expect(own.slopeAt(400)).toBe(0);
    const pointed = hem(
      gownOf('mirrored', [1000, 1000, undefined, 1310, 1400], train(1, 4, { shape: 'pointed' })),
      4,
    );
    expect(at(pointed, 200)).toEqual([Math.round((1000 + 400 / 9) * 1e6) / 1e6]);
    expect(pointed.slopeAt(400)).toBeGreaterThan(0.2);
    const begun = hem(gownOf('mirrored', [980, undefined, 1200, 1400], train(1, 3)), 3);
    expect(at(begun, 0, 100, 200, 300)).toEqual([980, 980, 1200, 1400]);
    const noLonger = hem(gownOf('mirrored', [1000, 1000, 1200, undefined, undefined], train(1, 4)), 4);
    expect(at(noLonger, 200, 400)).toEqual([1200, 1000]);
  });

  it('of a ring has a length before its train and another after it', () => {
    const shaped = hem(
      gownOf('ring', [1000, 1020, undefined, 1400, 1100, 1000], train(1, 3, { ends: 4 })),
      5,
    );
    expect(at(shaped, 0, 100, 200, 300, 350, 400, 500)).toEqual([1000, 1020, 1210, 1400, 1250, 1100, 1000]);
    const later = hem(
      gownOf('ring', [1000, 1020, undefined, 1400, undefined, 1000], train(1, 3, { ends: 4 })),
      5,
    );
    expect(at(later, 300, 350, 400, 500)).toEqual([1400, 1200, 1000, 1000]);
    const named = hem(
      gownOf('ring', [1000, 1020, 1333, 1400, undefined, undefined, 1100, 1000], train(1, 3, { ends: 6 })),
      7,
    );
    // Behind the full train from 1400 to 1100 over three gores: two thirds and one third of the way out.
    const share = (t: number) => t * t * (3 - 2 * t);
    expect(at(named, 100, 200, 300, 400, 500, 600, 700)).toEqual(
      [1020, 1333, 1400, 1100 + 300 * share(2 / 3), 1100 + 300 * share(1 / 3), 1100, 1000].map(
        (value) => Math.round(value * 1e6) / 1e6,
      ),
    );
    const behind = hem(
      gownOf(
        'ring',
        [1000, 1020, undefined, 1400, 1210, undefined, undefined, 1000],
        train(1, 3, { ends: 6 }),
      ),
      7,
    );
    expect(at(behind, 200, 400, 500, 600)).toEqual(
      [1210, 1210, 1000 + 400 * share(1 / 3), 1000].map((value) => Math.round(value * 1e6) / 1e6),
    );
  });
});

describe('a waist edge', () => {
  const waist = (round: string, drops: readonly number[], own: object = {}, tops = [100, 120, 90]) => {
    const gown = gownOf(
      round,
      drops.map(() => 1000),
      own,
      drops,
    ) as { gores: object[] };
    return waistProfile({
      ...gown,
      gores: gown.gores.map((gore, i) => ({ ...gore, top: tops[i]! })),
    } as never)!;
  };
  const lengthBetween = (profile: { valueAt: (way: number) => number }, from: number, to: number) => {
    let sum = 0;
    const step = (to - from) / 4000;
    for (let i = 0; i < 4000; i++)
      sum += Math.hypot(step, profile.valueAt(from + (i + 1) * step) - profile.valueAt(from + i * step));
    return sum;
  };

  it('goes through every drop, each gore’s stretch as long as its top, and level at both centres', () => {
    const own = waist('mirrored', [50, 30, 10, 0]);
    [100, 120, 90].forEach((top, i) => {
      expect(lengthBetween(own, own.ways[i]!, own.ways[i + 1]!)).toBeCloseTo(top, 4);
    });
    expect(own.ways.map((way) => Math.round(own.valueAt(way) * 1e6) / 1e6)).toEqual([50, 30, 10, 0]);
    expect([own.slopeAt(0), own.slopeAt(own.ways[3]!)]).toEqual([0, 0]);
    expect(own.ways[3]).toBeLessThan(310);
  });

  it('comes to a point at the station that says so, and at no other', () => {
    const front = waist('mirrored', [50, 30, 10, 0], { pointedAt: 0 });
    expect(front.slopeAt(0)).toBeLessThan(-0.1);
    expect(front.slopeAt(front.ways[3]!)).toBe(0);
    const back = waist('mirrored', [0, 10, 30, 60], { pointedAt: 3 });
    expect(back.slopeAt(0)).toBe(0);
    expect(back.slopeAt(back.ways[3]!)).toBeGreaterThan(0.1);
  });

  it('of a ring closes without a corner; level it is as wide as its tops', () => {
    const ring = waist('ring', [20, 40, 10, 20]);
    expect(ring.slopeAt(0)).toBeCloseTo(ring.slopeAt(ring.ways[3]!), 9);
    expect(Math.abs(ring.slopeAt(0))).toBeGreaterThan(0.05);
    expect(waist('mirrored', [0, 0, 0, 0]).ways).toEqual(
      [0, 100, 220, 310].map((way) => expect.closeTo(way, 9)),
    );
  });

  it('on another edge lies as deep as that, spaced as its own tops ask', () => {
    const edge = {
      ways: [0, 100, 220, 310],
      joins: [0, 310],
      valueAt: (way: number) => 5 + way / 10,
      slopeAt: () => 0.1,
    };
    const own = waist('mirrored', [0, 0, 0, 0], { edge });
    // Down a tenth of each top that it had: straight lines of 100, 120 and 90.
    const across = (top: number) => Math.sqrt(top * top - (top / 10) ** 2);
    const ways = [0, across(100), across(100) + across(120), across(100) + across(120) + across(90)];
    expect(own.ways).toEqual(ways.map((way) => expect.closeTo(way, 3)));
    expect(own.valueAt(own.ways[2]!)).toBeCloseTo(27, 6);
  });
});

describe('gores laid flat', () => {
  const waistOf = (depths: readonly number[], ways: readonly number[]) => ({
    ways,
    joins: [...ways],
    valueAt: () => depths[0]!,
    slopeAt: () => 0,
  });
  const gore = (own: object) => ({ name: 'g', top: 120, grain: { frontPart: 0.5 }, ...own });
  const framesOf = (own: object, depth = 0) =>
    goreFrames(
      {
        gores: [gore(own)],
        stations: [
          { drop: depth, length: 1000 },
          { drop: depth, length: 1000 },
        ],
      } as never,
      waistOf([depth], [0, 120]) as never,
    );
  const one = (own: object, depth = 0) => {
    const frames = framesOf(own, depth);
    if ('reason' in frames) throw new Error(frames.reason);
    return frames[0]!;
  };
  const width = (own: object, depth: number, ...levels: number[]) =>
    levels.map((s) => one({ width: own }, depth).widthAt(s));

  it('by their flare or by their hem, from the level of their own edge', () => {
    expect(width({ kind: 'flare', angle: 0.2 }, 0, 0, 500)).toEqual(
      [120, 220].map((value) => expect.closeTo(value, 6)),
    );
    expect(width({ kind: 'flare', angle: 0.2 }, 40, 40, 540)).toEqual(
      [120, 220].map((value) => expect.closeTo(value, 6)),
    );
    expect(width({ kind: 'hem', width: 320, at: 1000 }, 0, 0, 500, 1000)).toEqual(
      [120, 220, 320].map((value) => expect.closeTo(value, 6)),
    );
    expect(width({ kind: 'hem', width: 320, at: 1040 }, 40, 40, 540, 1040)).toEqual(
      [120, 220, 320].map((value) => expect.closeTo(value, 6)),
    );
  });

  it('about their grain: its part of the flare at the front, or two angles with what is left between them', () => {
    const downs = (grain: object) => {
      const frame = one({ width: { kind: 'flare', angle: 0.2 }, grain });
      return [-frame.downAt(500, 0), frame.downAt(500, 1)];
    };
    const near = (...values: number[]) => values.map((value) => expect.closeTo(value, 9));
    expect(downs({ frontPart: 0.5 })).toEqual(near(0.1, 0.1));
    expect(downs({ frontPart: 0.25 })).toEqual(near(0.05, 0.15));
    expect(downs({ front: 0.02, back: 0.12 })).toEqual(near(0.05, 0.15));
  });

  it('over girths, with either edge or their middle on the straight thread', () => {
    const girths = {
      kind: 'girths',
      levels: [
        { down: 200, width: 200 },
        { down: 1000, width: 300 },
      ],
    };
    const frame = (grain: object) => one({ width: girths, grain });
    const places = (grain: object, part: number) =>
      [300, 600, 900].map((s) => frame(grain).pointAt(s, part).x);
    const spread = (values: readonly number[]) => Math.max(...values) - Math.min(...values);
    expect(spread(places({ frontPart: 0 }, 0))).toBeLessThan(1e-6);
    expect(spread(places({ frontPart: 1 }, 1))).toBeLessThan(1e-6);
    expect(spread(places({ frontPart: 0.5 }, 0.5))).toBeLessThan(0.5);
    expect(spread(places({ frontPart: 0 }, 1))).toBeGreaterThan(20);
    expect(spread(places({ frontPart: 1 }, 0))).toBeGreaterThan(20);
    expect(spread(places({ front: 0.1, back: 0.1 }, 0.5))).toBeLessThan(0.5);
    for (const grain of [{ frontPart: 0 }, { frontPart: 1 }, { frontPart: 0.5 }])
      expectFrame(frame(grain), [50, 300, 900], 0.02);
    expect([200, 1000].map(frame({ frontPart: 0.5 }).widthAt)).toEqual(
      [200, 300].map((value) => expect.closeTo(value, 1)),
    );
    // Over girths a gore is measured from the level waist, whatever the drop of its edge.
    expect(one({ width: girths }, 40).widthAt(200)).toBeCloseTo(200, 1);
  });

  it('full at the waist, all of it gone at the hem: 1 − t²(3 − 2t) of it on the way', () => {
    const fading = { plain: 80, to: 1000 };
    const levels = [{ down: 1000, width: 180 }];
    const frame = one({ width: { kind: 'girths', levels, fading } });
    for (const t of [0, 0.25, 0.5, 0.9]) {
      const plain = one({ width: { kind: 'girths', levels }, top: 80 });
      expect(plain.widthAt(0)).toBeCloseTo(80, 1);
      expect(frame.widthAt(1000 * t) - plain.widthAt(1000 * t)).toBeCloseTo(
        40 * (1 - t * t * (3 - 2 * t)),
        0,
      );
    }
  });

  it('that narrow to nothing, or widen faster than cloth can, are told by name', () => {
    expect(framesOf({ width: { kind: 'flare', angle: -20 } }, 0)).not.toHaveProperty('reason');
    const deep = goreFrames(
      {
        gores: [gore({ width: { kind: 'flare', angle: -0.9 } })],
        stations: [
          { drop: 0, length: 1000 },
          { drop: 400, length: 1000 },
        ],
      } as never,
      { ways: [0, 120], joins: [0, 120], valueAt: (way: number) => way * 4, slopeAt: () => 4 } as never,
    );
    expect(deep).toEqual({ reason: 'narrows-to-nothing', gore: 'g' });
    const fast = {
      kind: 'girths',
      levels: [
        { down: 50, width: 900 },
        { down: 1000, width: 950 },
      ],
    };
    expect(framesOf({ width: fast })).toEqual({ reason: 'widens-too-fast', gore: 'g' });
  });

  it('reach to the longest station and the train on it', () => {
    const stations = [{ drop: 30, length: 900 }, { drop: 0, length: 950 }, { drop: 5 }];
    expect(longestStation({ stations } as never)).toBe(950);
    expect(longestStation({ stations: [...stations, { drop: 60, length: 899 }] } as never)).toBe(959);
    expect(longestStation({ stations, train: { onFloor: 300 } } as never)).toBe(1250);
  });

  it('their hems without fullness: where they lie and how wide they are', () => {
    const gown = {
      ...(gownOf('mirrored', [1000, 1000, 1000]) as object),
      gores: ['a', 'b'].map((name) => ({
        name,
        top: 100,
        width: { kind: 'flare', angle: 0.2 },
        grain: { frontPart: 0.5 },
      })),
    } as never;
    const near = (value: number) => expect.closeTo(value, 6);
    expect(plainHems(gown, PLAIN)).toEqual(
      Array(2).fill({ level: near(1000), least: near(1000), width: near(300), waist: near(100) }),
    );
    // Cut a tenth shorter along, a hem 90 higher lies 100 higher on the plain gown.
    expect(plainHems(gown, { ...PLAIN, shorter: 90, smallerAlong: 0.1 })).toMatchObject([
      { level: near(900), width: near(280) },
      {},
    ]);
    const leaning = plainHems(gownOf('mirrored', [1000, 1060]), PLAIN);
    expect(leaning).toMatchObject([{ least: near(1000), level: near(1030) }]);
  });
});
