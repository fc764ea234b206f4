import { describe, expect, it } from 'vitest';
import { dartedWaist, takenBeside } from '../../src/allowances/dart-waist.ts';
import { pleatFacts } from '../../src/allowances/pleat-facts.ts';
import type { TopFullness } from '../../src/allowances/top-fullness.ts';
import { withDarts } from '../../src/allowances/with-darts.ts';
import { fullForWrap, withWrapNotches, wrapMarks, wrapRemarks } from '../../src/allowances/wrap-marks.ts';
import type { Piece } from '../../src/draft/piece.ts';
import type { Arc, Cubic, Curve } from '../../src/geometry/curve.ts';
import { at, away, distanceTo, lengthOf, type Place, sampled } from '../fittings/sampled.ts';
import { line } from '../line.ts';

/** What wraps and darts add to a piece 300 wide: by hand, and by dense samples of what is drawn. mm. */

/** From the left to the right about a centre above it: a waist that sags. */
const arc: Arc = {
  kind: 'arc',
  centre: { x: 150, y: -800 },
  radius: Math.hypot(150, 800),
  start: Math.PI / 2 + Math.atan2(150, 800),
  sweep: -2 * Math.atan2(150, 800),
};
const piece = (waist: Curve = line(0, 0, 300, 0), own: Partial<Piece> = {}): Piece => ({
  gore: 'side',
  layers: ['shell'],
  edges: [
    { name: 'waist', curves: [waist] },
    { name: 'side/back', curves: [line(300, 0, 300, 1000)] },
    { name: 'hem', curves: [line(300, 1000, 0, 1000)] },
    { name: 'front/side', curves: [line(0, 1000, 0, 0)] },
  ],
  frontEdge: 'front/side',
  backEdge: 'side/back',
  grain: line(150, 200, 150, 800),
  cut: 'pair',
  ...own,
});
const dart = (name: string, place: number, takesIn: number, towards = 'front', length = 110) => ({
  name,
  at: place,
  takesIn,
  length,
  towards,
});
const darted = (darts: readonly object[], cut: number, sewn: number): TopFullness =>
  ({
    rule: { where: 'waist', by: 'darts', darts, ratio: cut / sewn },
    ratio: cut / sewn,
    cut,
    sewn,
  }) as never;

describe('what a wrap adds', () => {
  const beyond = (side: 'left' | 'right', own: object = {}) =>
    ({
      side,
      line: line(side === 'left' ? 0 : 300, 0, 10, 990),
      sewn: 40,
      cut: 50,
      atHem: 60,
      darts: [],
      ...own,
    }) as never;
  const wrap = { at: 'side/back', over: 'left-over-right' };
  const both = [beyond('left'), beyond('right', { sewn: 41, cut: 44, atHem: 61 })];

  it('a line for each edge, and one remark with how far it goes on at waist and hem', () => {
    expect(wrapMarks({ wrap } as never, both)).toEqual([
      { name: 'side/back', curves: [line(0, 0, 10, 990)] },
      { name: 'side/back', curves: [line(300, 0, 10, 990)] },
    ]);
    const remark = { kind: 'wrap', at: 'side/back', over: 'left-over-right' };
    expect(wrapRemarks({ wrap } as never, both)).toEqual([{ ...remark, atWaist: 40, atHem: 60 }]);
    expect(wrapRemarks({ wrap } as never, [both[1]!])).toEqual([{ ...remark, atWaist: 41, atHem: 61 }]);
    expect(wrapRemarks({ wrap } as never, [])).toEqual([]);
    expect(wrapRemarks({} as never, both)).toEqual([]);
  });

  it('a notch in the waist where the line begins, from the edge as it is cut', () => {
    const notches = new Map([['front/side', [120]]]);
    const of = (all: readonly never[], full?: TopFullness) =>
      Object.fromEntries(withWrapNotches(notches, piece(), all, full));
    expect(of(both)).toEqual({ 'front/side': [120], waist: [50, 350] });
    expect(of([both[0]!])).toEqual({ 'front/side': [120], waist: [50] });
    expect(of([both[1]!])).toEqual({ 'front/side': [120], waist: [300] });
    expect(of([])).toEqual({ 'front/side': [120] });
    expect(of(both, darted([dart('d', 0.5, 20)], 320, 300))).toEqual({ 'front/side': [120] });
  });

  it('darts of what it lies over, each where it comes on the whole top', () => {
    const left = beyond('left', { darts: [{ ...dart('l', 0.3, 10), fromLine: 25 }] });
    const right = beyond('right', { sewn: 30, cut: 30, darts: [{ ...dart('r', 0.3, 8), fromLine: 20 }] });
    const full = darted([dart('own', 0.5, 20)], 320, 300);
    const places = (own: TopFullness | undefined) =>
      own!.rule.darts!.map(({ name, at: place }) => [name, expect.closeTo(place * own!.sewn, 9)]);
    // 40, then 300 with its own dart in the middle, then 30.
    const told = fullForWrap(full, piece(), [left, right]);
    expect([
      ['own', 190],
      ['l', 15],
      ['r', 360],
    ]).toEqual(places(told));
    expect([told!.sewn, told!.cut, told!.rule.ratio]).toEqual([370, 400, 400 / 370]);
    expect(told!.ratio).toBe(400 / 370);
    // On her right the front is drawn at the right: counted from there.
    const onRight = fullForWrap(full, piece(undefined, { side: 'right' }), [left, right]);
    expect([
      ['own', 180],
      ['l', 355],
      ['r', 10],
    ]).toEqual(places(onRight));
    // Over a piece without darts of its own only those of the other.
    const flat = fullForWrap(undefined, piece(), [left]);
    expect([['l', 15]]).toEqual(places(flat));
    expect([flat!.sewn, flat!.cut, flat!.rule.by, flat!.rule.where]).toEqual([340, 350, 'darts', 'waist']);
    // What has none stays as full as it was.
    const gathered = { ...full, rule: { by: 'gathers' } } as unknown as TopFullness;
    expect(fullForWrap(gathered, piece(), both)).toBe(gathered);
    expect(fullForWrap(undefined, piece(), both)).toBeUndefined();
    expect(fullForWrap(full, piece(), [])!.sewn).toBe(300);
  });
});

const direction = (a: Place, b: Place) => Math.atan2(b.y - a.y, b.x - a.x);
const turn = (point: Place, about: Place, by: number): Place => {
  const [x, y] = [point.x - about.x, point.y - about.y];
  return {
    x: about.x + x * Math.cos(by) - y * Math.sin(by),
    y: about.y + x * Math.sin(by) + y * Math.cos(by),
  };
};
const mirrored = (point: Place, about: Place, way: number): Place => {
  const flat = turn(point, about, -way);
  return turn({ x: flat.x, y: 2 * about.y - flat.y }, about, way);
};

describe('a waist with darts', () => {
  const two = [dart('back', 0.7, 12, 'back', 120), dart('front', 0.25, 18)];

  it.each([
    ['straight', line(0, 0, 300, 0), 300],
    ['sagging', arc, arc.radius * Math.abs(arc.sweep)],
  ] as const)(
    '%s: closed, legs are alike, the seam runs straight on and is as long as is sewn',
    (_, waist, cut) => {
      const sewn = cut - 30;
      const darts = dartedWaist(piece(waist), darted(two, cut, sewn));
      expect(darts.map(({ name, folds }) => [name, folds])).toEqual([
        ['front', 'left'],
        ['back', 'right'],
      ]);
      let length = 0;
      for (const { left, right, point, angle, before, after, name } of darts) {
        expect(away(point, left)).toBeCloseTo(away(point, right), 6);
        expect(direction(point, right) - direction(point, left)).toBeCloseTo(angle, 9);
        // So far below the waist seam as it is long: the seam itself is lifted a little at its legs.
        const long = name === 'front' ? 110 : 120;
        expect(distanceTo(sampled([waist]), point)).toBeCloseTo(long, 3);
        const [up, down] = [sampled(before), sampled(after).map((place) => turn(place, point, -angle))];
        expect(away(up.at(-1)!, down[0]!)).toBeLessThan(1e-6);
        expect(direction(down[0]!, down[1]!)).toBeCloseTo(direction(up.at(-2)!, up.at(-1)!), 3);
        expect(up.at(-1)).toMatchObject({ x: expect.closeTo(left.x, 6), y: expect.closeTo(left.y, 6) });
        length += lengthOf(up) + lengthOf(down);
      }
      expect(length).toBeCloseTo(sewn, 2);
      // Where neither dart lifts it, and at both ends, it is the waist that it was.
      const [front, back] = darts;
      const ends = [sampled(front!.before)[0]!, sampled(front!.after).at(-1)!, sampled(back!.after).at(-1)!];
      expect(away(ends[1]!, sampled(back!.before)[0]!)).toBeLessThan(1e-6);
      for (const end of ends) expect(distanceTo(sampled([waist], 4000), end)).toBeLessThan(1e-4);
      expect(away(ends[0]!, at(waist, 0)) + away(ends[2]!, at(waist, 1))).toBeLessThan(1e-6);
      // In the middle of a dart of 18 from a quarter of what is sewn, one of 12 from seven tenths of it and past the first.
      const middle = (one: (typeof darts)[number]) => (one.left.x + one.right.x) / 2;
      if (waist.kind === 'line') {
        expect(middle(front!)).toBeCloseTo(0.25 * sewn + 9, 0);
        expect(middle(back!)).toBeCloseTo(0.7 * sewn + 18 + 6, 0);
        expect(away(front!.left, front!.right)).toBeCloseTo(18, 0);
        expect(away(back!.left, back!.right)).toBeCloseTo(12, 0);
      }
    },
  );

  it('on her right is counted from the right, and folds the other way', () => {
    const [first, second] = dartedWaist(piece(undefined, { side: 'right' }), darted(two, 300, 270));
    expect([first!.name, first!.folds, second!.name, second!.folds]).toEqual([
      'back',
      'left',
      'front',
      'right',
    ]);
    expect((second!.left.x + second!.right.x) / 2).toBeCloseTo(300 - 0.25 * 270 - 9, 0);
    expect((first!.left.x + first!.right.x) / 2).toBeCloseTo(300 - 0.7 * 270 - 18 - 6, 0);
  });

  it('what lies nearer to a side than so much of the sewn top is told by the side', () => {
    const full = darted(two, 300, 270);
    // At 67.5 and 189 from the front, 202.5 and 81 from the back.
    const taken = (side: 'left' | 'right', own = piece()) =>
      [60, 70, 85, 190, 210].map((length) => takenBeside(own, full, side, length));
    expect(taken('left')).toEqual([0, 18, 18, 30, 30]);
    expect(taken('right')).toEqual([0, 0, 12, 12, 30]);
    expect(taken('right', piece(undefined, { side: 'right' }))).toEqual([0, 18, 18, 30, 30]);
    // Darts that are asked to take more or less share what is to be taken.
    expect(takenBeside(piece(), darted(two, 330, 270), 'left', 70)).toBeCloseTo(36, 9);
  });

  it.each(['front', 'back'] as const)(
    'towards the %s: folded and cut through, its cap is the waist that it lies under',
    (towards) => {
      // Bent more at one side of the dart than at the other, so that it matters to which it is folded.
      const uneven: Cubic = {
        kind: 'cubic',
        from: { x: 0, y: 0 },
        control1: { x: 60, y: 70 },
        control2: { x: 200, y: 20 },
        to: { x: 300, y: 0 },
      };
      const cut = lengthOf(sampled([uneven], 20000));
      const full = darted([dart('d', 0.4, 24, towards)], cut, cut - 24);
      const plan = { widths: { waist: 12 }, roughCut: 0, hemCorner: 'plain', waistCorner: 'plain' } as const;
      const { piece: own, cutEdges, marks } = withDarts(piece(uneven), full, plan);
      const [{ left, right, point, angle, before, after }] = dartedWaist(piece(uneven), full) as [
        ReturnType<typeof dartedWaist>[number],
      ];
      const [leg, fold, other] = marks;
      expect([leg!.name, fold!.name, other!.name]).toEqual([
        'dart-leg-line',
        'dart-fold-line',
        'dart-leg-line',
      ]);
      const ends = marks.map(({ curves }) => [at(curves[0]!, 0), at(curves[0]!, 1)]);
      expect([ends[0]![0], ends[2]![0]]).toEqual([left, right]);
      for (const [, tip] of ends) expect(tip).toEqual(point);
      // Its fold lies half-way between its legs, and ends on the cut line.
      const half = (direction(point, left) + direction(point, right)) / 2;
      expect(direction(point, ends[1]![0]!)).toBeCloseTo(half, 6);
      expect(distanceTo(sampled(cutEdges[0]!.curves), ends[1]![0]!)).toBeLessThan(1e-3);
      // All that lies between the legs, folded down: about the near leg, or with the far cloth. Then it is on the closed waist.
      const near = towards === 'front' ? direction(point, left) : direction(point, right);
      const sign = towards === 'front' ? 1 : -1;
      const closed = (by: number) => {
        // The cut line lies 12 above the waist and its lifted ends.
        const [a, b] = [sampled(before, 2000), sampled(after, 2000)];
        const moved = (all: Place[]) =>
          all.map((place, i) => {
            const way = direction(all[Math.max(0, i - 1)]!, all[Math.min(all.length - 1, i + 1)]!);
            return { x: place.x + by * Math.sin(way), y: place.y - by * Math.cos(way) };
          });
        return towards === 'front'
          ? [...moved(a), ...moved(b).map((place) => turn(place, point, -angle))]
          : [...moved(a).map((place) => turn(place, point, angle)), ...moved(b)];
      };
      for (const [edges, by] of [
        [own.edges, 0],
        [cutEdges, 12],
      ] as const) {
        expect(edges.map(({ name }) => name)).toEqual(['waist', 'side/back', 'hem', 'front/side']);
        const whole = closed(by);
        let between = 0;
        for (const place of sampled(edges[0]!.curves, 30)) {
          const turned = sign * (direction(point, place) - near);
          if (turned < 1e-3 || turned > angle - 1e-3 || place.y > point.y) continue;
          between++;
          // From the near leg to the fold it is turned face down; from there to the far leg it lies face up under that.
          const folded =
            turned < angle / 2 ? mirrored(place, point, near) : turn(place, point, -sign * angle);
          expect(distanceTo(whole, folded)).toBeLessThan(0.01);
        }
        expect(between).toBeGreaterThan(20);
      }
    },
  );

  it('a pleat past a dart lies where its cloth does once the dart is sewn', () => {
    // The hem runs up 3 in 4 past 190 from the left: 30 across are 37.5 along it there.
    const shaped = piece(undefined, {
      edges: piece().edges.with(2, {
        name: 'hem',
        curves: [line(300, 917.5, 190, 1000), line(190, 1000, 0, 1000)],
      }),
    });
    const fullness = { where: 'waist', by: 'darts', ratio: 300 / 240, darts: [dart('d', 0.2, 60)] };
    const draft = {
      gown: { gores: [{ name: 'other' }, { name: 'side', fullness }] },
      shape: {},
      pieces: [piece(undefined, { gore: 'other' }), shaped],
    };
    const own = {
      name: 'p',
      kind: 'knife',
      at: 'front/side',
      gore: 'side',
      fromSeam: 165,
      towards: 'back',
      foldDepth: 30,
      layers: ['shell'],
      stitchedDown: 0,
    };
    const facts = (gore: object) => {
      const gores = [{ name: 'other' }, { name: 'side', ...gore }];
      const [only] = pleatFacts(
        { pleats: [own] } as never,
        {
          layer: { name: 'shell', gores: ['other', 'side'] },
          draft: { ...draft, gown: { gores } },
        } as never,
      );
      return [only!.places, only!.atWaist, only!.atHem];
    };
    // At 165 without a dart it lies over 135 to 165; with 60 taken before it over 195 to 225. A pair, each fold twice.
    expect(facts({})).toEqual([2, 120, expect.closeTo(120, 6)]);
    expect(facts({ fullness })).toEqual([2, 120, expect.closeTo(150, 6)]);
  });
});
