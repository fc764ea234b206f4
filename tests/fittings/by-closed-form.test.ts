import { describe, expect, it } from 'vitest';
import type { GownDraft } from '../../src/draft/draft-gown.ts';
import { unaltered } from '../../src/fittings/alterations.ts';
import { bothSides } from '../../src/fittings/both-sides.ts';
import { bent, hemBend } from '../../src/fittings/hem-bend.ts';
import { seamInset } from '../../src/fittings/seam-inset.ts';
import { takesMore } from '../../src/fittings/waist-takes.ts';
import { fitted } from './fitted.ts';

const close = (value: number) => expect.closeTo(value, 9);
const SHUT = { above: false, below: false };
/** t³(10 − 15t + 6t²): half way half, a quarter of the way 0.103515625. */
const QUARTER = 0.103515625;

describe('a seam moved inwards', () => {
  const slopesHold = (inset: ReturnType<typeof seamInset>) => {
    for (let s = 85; s < 520; s += 13.7)
      expect(inset.slopeAt(s)).toBeCloseTo((inset.valueAt(s + 1e-4) - inset.valueAt(s - 1e-4)) / 2e-4, 6);
  };

  it('by one amount comes in over a third of its stretch and goes out over a third', () => {
    const inset = seamInset([{ from: 100, to: 400, amount: 8, open: SHUT }]);
    expect([90, 100, 125, 150, 200, 250, 300, 350, 375, 400, 410].map(inset.valueAt)).toEqual(
      [0, 0, 8 * QUARTER, 4, 8, 8, 8, 4, 8 * QUARTER, 0, 0].map(close),
    );
    slopesHold(inset);
    // Steepest in the middle of a third: 1.875 times the amount over it.
    expect([150, 350, 250].map(inset.slopeAt)).toEqual([0.15, -0.15, 0].map(close));
  });

  it('stays in beyond an end that is open', () => {
    const above = seamInset([{ from: 100, to: 400, amount: 8, open: { above: true, below: false } }]);
    expect([0, 100, 250, 350, 400].map(above.valueAt)).toEqual([8, 8, 8, 4, 0].map(close));
    slopesHold(above);
    const below = seamInset([{ from: 100, to: 400, amount: -8, open: { above: false, below: true } }]);
    expect([0, 100, 150, 400, 500].map(below.valueAt)).toEqual([0, 0, -4, -8, -8].map(close));
    slopesHold(below);
  });

  it('from one amount to another changes all the way, and goes on where it is open', () => {
    const ends = (open: { above: boolean; below: boolean }) =>
      seamInset([{ from: 100, to: 400, amount: 8, until: 2, open }]);
    const inset = ends({ above: true, below: true });
    expect([0, 100, 175, 250, 325, 400, 900].map(inset.valueAt)).toEqual(
      [8, 8, 8 - 6 * QUARTER, 5, 2 + 6 * QUARTER, 2, 2].map(close),
    );
    slopesHold(inset);
    expect(inset.slopeAt(250)).toBeCloseTo((-6 * 1.875) / 300, 9);
    expect([50, 99, 100, 399, 400, 500].map(ends(SHUT).valueAt)).toEqual([
      0,
      0,
      8,
      expect.closeTo(2, 3),
      0,
      0,
    ]);
  });

  it('several of one seam add up, each as many times as its cloth is full', () => {
    const both = seamInset(
      [
        { from: 100, to: 400, amount: 8, open: SHUT },
        { from: 200, to: 500, amount: 3, open: SHUT },
      ],
      2,
    );
    expect(both.valueAt(300)).toBeCloseTo(2 * (8 + 3), 9);
    expect(both.valueAt(250)).toBeCloseTo(2 * (8 + 1.5), 9);
    slopesHold(both);
    expect([seamInset([]).valueAt(5), seamInset([]).slopeAt(5)]).toEqual([0, 0]);
  });
});

describe('her two sides before anything is pinned', () => {
  const lines = {
    gores: [{ name: 'a' }, { name: 'b' }],
    stations: [{ name: 'cf' }, { name: 'a/b' }, { name: 'cb' }],
  } as never;
  const panels = (less: Record<string, number>, seams: string[] = []) => ({ less, seams });

  it('are one where the bodice is alike on both', () => {
    const { left, right } = unaltered(lines);
    expect(right).toBe(left);
    expect(left).toEqual({
      hems: [],
      waist: [0, 0, 0],
      seams: [[], [], []],
      tops: [0, 0],
      withBodice: [false, false, false],
    });
    const alike = unaltered(lines, { left: panels({ b: 3 }, ['a/b']), right: panels({ b: 3 }, ['a/b']) });
    expect(alike.right).toBe(alike.left);
    expect([alike.left.tops, alike.left.withBodice]).toEqual([
      [0, 3],
      [false, true, false],
    ]);
  });

  it('are two where a panel or a seam of it is not', () => {
    for (const [one, other] of [
      [panels({ b: 3 }), panels({})],
      [panels({}), panels({ a: 3 })],
      [panels({ b: 3 }), panels({ b: 4 })],
      [panels({ b: 3 }, ['a/b']), panels({ b: 3 }, [])],
    ] as const) {
      const { left, right } = unaltered(lines, { left: one, right: other });
      expect(right).not.toBe(left);
      expect([left.tops, right.tops]).toEqual(
        [one, other].map(({ less }) => ['a', 'b'].map((name) => less[name] ?? 0)),
      );
      expect(right.withBodice[1]).toBe(other.seams.length > 0);
    }
  });
});

describe('a hem bent by pins', () => {
  const ways = [0, 200, 500];

  it('goes through its pins, level at a centre where both sides are alike', () => {
    const knots = [
      { place: 0, up: 10 },
      { place: 1, up: 20 },
      { place: 1.5, up: 26 },
      { place: 2, up: 4 },
    ];
    const bend = hemBend({ own: knots, other: knots, closed: false }, ways);
    expect([0, 200, 350, 500].map(bend.valueAt)).toEqual([10, 20, 26, 4].map(close));
    expect([bend.slopeAt(0), bend.slopeAt(350), bend.slopeAt(500)]).toEqual([0, 0, 0].map(close));
    expect(bend.slopeAt(200)).toBeGreaterThan(0.02);
  });

  it('runs on into the other side where that was not pinned, without a corner', () => {
    const own = [
      { place: 0, up: 10 },
      { place: 1, up: 10 },
      { place: 2, up: 10 },
    ];
    const other = [
      { place: 0.5, up: 0 },
      { place: 1, up: 0 },
      { place: 1.6, up: 0 },
    ];
    const here = hemBend({ own, other, closed: false }, ways);
    const there = hemBend({ own: other, other: own, closed: false }, ways);
    for (const at of [0, 500]) {
      expect(here.valueAt(at)).toBeCloseTo(there.valueAt(at), 9);
      expect(here.slopeAt(at)).toBeCloseTo(-there.slopeAt(at), 9);
    }
    expect([here.valueAt(200), there.valueAt(200)]).toEqual([10, 0].map(close));
  });

  it('of a ring comes round again', () => {
    const own = [
      { place: 0, up: 6 },
      { place: 1, up: 0 },
      { place: 1.4, up: 3 },
    ];
    const bend = hemBend({ own, other: [], closed: true }, ways);
    expect([bend.valueAt(0), bend.valueAt(500), bend.valueAt(320)]).toEqual([6, 6, 3].map(close));
    expect(bend.slopeAt(0)).toBeCloseTo(bend.slopeAt(500), 9);
  });

  it('takes the first of two pins at one place, and one alone for all of it', () => {
    const alone = hemBend({ own: [{ place: 1, up: 7 }], other: [], closed: false }, ways);
    expect([alone.valueAt(-50), alone.valueAt(400), alone.slopeAt(10)]).toEqual([7, 7, 0]);
    const none = hemBend({ own: [], other: [], closed: false }, ways);
    expect([none.valueAt(3), none.slopeAt(3)]).toEqual([0, 0]);
    const twice = [
      { place: 1, up: 7 },
      { place: 1.003, up: 9 },
      { place: 2, up: 1 },
      { place: 0, up: 1 },
    ];
    expect(hemBend({ own: twice, other: twice, closed: false }, ways).valueAt(200)).toBeCloseTo(7, 9);
    const apart = [
      { place: 1, up: 7 },
      { place: 1.004, up: 9 },
      { place: 2, up: 1 },
      { place: 0, up: 1 },
    ];
    expect(hemBend({ own: apart, other: apart, closed: false }, ways).valueAt(201.2)).toBeCloseTo(9, 9);
  });

  it('lies so much higher than it did; nothing bent is itself', () => {
    const base = { joins: [0, 300], valueAt: (way: number) => 1000 + way / 10, slopeAt: () => 0.1 };
    const bends = [2, 3].map((up) => ({
      joins: [0, 100 * up],
      valueAt: (way: number) => up * way,
      slopeAt: () => up,
    }));
    expect(bent(base, [])).toBe(base);
    const both = bent(base, bends);
    expect([both.valueAt(20), both.slopeAt(20), both.joins]).toEqual([
      close(1002 - 100),
      close(0.1 - 5),
      [0, 200, 300],
    ]);
  });
});

describe('a top that is too long by so much', () => {
  const of = (...folds: (string | undefined)[]) =>
    ({ gown: { gores: folds.map((fold) => ({ fold })) } }) as never;

  it('is taken in at both its seams as they share it, at one where the other is a fold', () => {
    const takes = [
      [1, 2],
      [1, 2],
      [1, 2],
      [1, 2],
    ] as const;
    const more = takesMore(
      takes,
      of(undefined, 'front', 'back', undefined),
      [
        [1, 3],
        [1, 3],
        [1, 3],
        [0, 0],
      ],
      [8, 8, 8, 8],
    );
    expect(more).toEqual([
      [3, 8],
      [1, 10],
      [9, 2],
      [1, 2],
    ]);
  });
});

describe('her two sides as one ring', () => {
  const [left, right] = [
    fitted([{ date: '2027-03-01', hem: { 'all-round': 10, 'side/back': 25 } }]).drafts.gown,
    fitted([]).drafts.gown,
  ];
  const ring = bothSides(left, right);
  const lastWay = ({ hem }: GownDraft): number => hem.ways.at(-1)!;

  it('runs down her left and up her right: lengths, ways, depths and slopes', () => {
    expect(ring.lengths).toEqual([...left.lengths, ...[...right.lengths].reverse().slice(1)]);
    const whole = lastWay(left) + lastWay(right);
    expect(ring.hem.ways).toHaveLength(9);
    expect(ring.hem.ways.at(-1)).toBeCloseTo(whole, 9);
    for (let i = 0; i < 5; i++) {
      expect(ring.hem.ways[i]).toBeCloseTo(left.hem.ways[i]!, 9);
      expect(ring.hem.ways[8 - i]).toBeCloseTo(whole - right.hem.ways[i]!, 9);
    }
    expect([...ring.hem.joins].sort((a, b) => a - b)).toEqual(ring.hem.joins);
    expect(ring.hem.joins).toHaveLength(left.hem.joins.length + right.hem.joins.length);
    for (const edge of ['hem', 'waist'] as const) {
      for (const share of [0.05, 0.3, 0.71]) {
        const [own, other] = [share * left[edge].ways.at(-1)!, share * right[edge].ways.at(-1)!];
        const back = left[edge].ways.at(-1)! + right[edge].ways.at(-1)! - other;
        expect(ring[edge].valueAt(own)).toBe(left[edge].valueAt(own));
        expect(ring[edge].slopeAt(own)).toBe(left[edge].slopeAt(own));
        expect(ring[edge].valueAt(back)).toBeCloseTo(right[edge].valueAt(other), 9);
        expect(ring[edge].slopeAt(back)).toBeCloseTo(-right[edge].slopeAt(other), 9);
      }
    }
  });

  it('has the right half mirrored, gore by gore', () => {
    for (let i = 0; i < 4; i++) {
      const [own, other] = [ring.frames[7 - i]!, right.frames[i]!];
      const [here, there] = [own.pointAt(300, 0.2), other.pointAt(300, 0.8)];
      expect([here.x, here.y, own.downAt(300, 0.2)]).toEqual([
        close(-there.x),
        close(there.y),
        close(-other.downAt(300, 0.8)),
      ]);
      expect(own.widthAt(300)).toBe(other.widthAt(300));
    }
    expect(ring.pieces.map(({ gore, side }) => `${gore} ${side ?? ''}`.trim())).toHaveLength(8);
  });
});

describe('what a fitting did, as it is reported', () => {
  const hemOf = (gown: ReturnType<typeof fitted>) => gown.report.hem.sewn;

  it('hem and waist before and after, the seams that are longer or shorter, the gores that changed', () => {
    const [before, after] = [fitted([]), fitted([{ date: '2027-03-01', hem: { 'side/back': 12 } }])];
    const [trace, ...more] = after.report.fittings;
    expect(more).toEqual([]);
    expect(trace).toMatchObject({ date: '2027-03-01' });
    expect(trace).not.toHaveProperty('side');
    expect(trace).not.toHaveProperty('layer');
    expect(trace!.hem).toEqual([expect.closeTo(hemOf(before), 3), expect.closeTo(hemOf(after), 3)]);
    expect(hemOf(before)).not.toBeCloseTo(hemOf(after), 0);
    expect(trace!.waist).toEqual([expect.closeTo(720, 2), expect.closeTo(720, 2)]);
    const was = before.report.stations.find(({ name }) => name === 'side/back')!.length;
    expect(trace!.lengths).toEqual([
      { station: 'side/back', length: [expect.closeTo(was, 3), expect.closeTo(was - 12, 3)] },
    ]);
    expect(trace!.gores).toEqual([{ name: 'side' }, { name: 'back' }]);
  });

  it('on one side of her, by that side; the hem is that of both', () => {
    const entry = { date: '2027-03-01', side: 'right', hem: { 'side/back': 12 } };
    const [before, after] = [fitted([]), fitted([entry])];
    const trace = after.report.fittings[0]!;
    expect(trace).toMatchObject({ side: 'right' });
    expect(trace.lengths.map(({ station, side }) => [station, side])).toEqual([['side/back', 'right']]);
    expect(trace.gores).toEqual([
      { name: 'side', side: 'right' },
      { name: 'back', side: 'right' },
    ]);
    expect(trace.hem).toEqual([expect.closeTo(hemOf(before), 3), expect.closeTo(hemOf(after), 3)]);
    const left = fitted([{ ...entry, side: 'left' }]).report.fittings[0]!;
    expect(left.gores.map(({ side }) => side)).toEqual(['left', 'left']);
    expect(left.hem).toEqual(trace.hem.map((value) => expect.closeTo(value, 3)));
  });
});
