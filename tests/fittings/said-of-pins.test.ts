import { describe, expect, it } from 'vitest';
import { sideFaults } from '../../src/fittings/fitting-faults.ts';
import { hemAtRest, hemKnots } from '../../src/fittings/pinned-hem.ts';
import { isForBoth } from '../../src/fittings/resolve-fitting.ts';
import { unsmooth } from '../../src/fittings/unsmooth.ts';
import type { Tree } from '../outside/plain-gown.ts';
import { drafting, fitted } from './fitted.ts';

const on = (entry: Tree): Tree => ({ date: '2027-03-01', ...entry });
const span = { source: { name: 'invented', text: '' }, start: 0, end: 0 };

describe('a stretch of seam as it was pinned', () => {
  const told = (
    own: object,
    all: readonly object[] = [],
    reaches = { from: false, to: false },
    length = 300,
  ) =>
    unsmooth({ seam: 'a/b', from: 100, to: 400, ...own } as never, [own, ...all] as never, {
      reaches,
      length,
      words: { from: { beyond: 'above', edge: 'waist' }, to: { beyond: 'below', edge: 'hem' } },
      sayPlace: (mm) => `${mm} down`,
      say: (mm) => `${mm} mm`,
      span,
    }).map(({ code, message }) => [code, message]);

  it('runs out no more steeply than 1 in 10 over a third of it: 1.875 times the amount at its steepest', () => {
    // A third of 300 is 100: 5.33 at most.
    expect([told({ takeIn: 5.3 }), told({ takeIn: -5.3 })]).toEqual([[], []]);
    for (const takeIn of [5.4, -5.4]) {
      const [[code, message]] = told({ takeIn }) as [[string, string]];
      expect(code).toBe('fitting-dents');
      for (const figure of ['5.4 mm', '100 mm', '400 mm', '`a/b`']) expect(message).toContain(figure);
    }
    expect(told({ takeIn: 5.4 }, [], { from: true, to: false })).toHaveLength(1);
    expect(told({ takeIn: 5.4 }, [], { from: false, to: true })).toHaveLength(1);
    expect(told({ takeIn: 5.4 }, [], { from: true, to: true })).toEqual([]);
    expect(told({ takeIn: 5.4 }, [], { from: false, to: false }, 310)).toEqual([]);
  });

  it('of two amounts steps at an end that is neither nought, nor at an edge, nor met by the next', () => {
    const steps = (own: object, all: readonly object[] = [], reaches?: { from: boolean; to: boolean }) =>
      told({ seam: 'a/b', from: 100, to: 400, ...own }, all, reaches).map(([code, message]) => [
        code,
        /(\d+) down/.exec(message!)?.[1],
      ]);
    expect(steps({ takeIn: [3, 5] })).toEqual([
      ['fitting-steps', '100'],
      ['fitting-steps', '400'],
    ]);
    expect([steps({ takeIn: [0, 5] }), steps({ takeIn: [3, 0] })]).toEqual([
      [['fitting-steps', '400']],
      [['fitting-steps', '100']],
    ]);
    expect(steps({ takeIn: [3, 5] }, [], { from: true, to: false })).toEqual([['fitting-steps', '400']]);
    expect(steps({ takeIn: [3, 5] }, [], { from: false, to: true })).toEqual([['fitting-steps', '100']]);
    const next = { seam: 'a/b', from: 400, to: 600, takeIn: [5, 0] };
    const before = { seam: 'a/b', from: 0, to: 100, takeIn: [0, 3] };
    expect(steps({ takeIn: [3, 5] }, [before, next])).toEqual([]);
    expect(steps({ takeIn: [3, 5] }, [next])).toEqual([['fitting-steps', '100']]);
    for (const other of [{ seam: 'b/c' }, { from: 410 }, { takeIn: [4, 0] }, { takeIn: 5 }, { side: 'left' }])
      expect(steps({ takeIn: [3, 5] }, [before, { ...next, ...other }])).toEqual([['fitting-steps', '400']]);
    expect(steps({ takeIn: [3, 5], side: 'both' }, [before, next])).toEqual([]);
    expect(steps({ takeIn: [3, 5], side: 'left' }, [before, next])).toHaveLength(2);
  });
});

describe('on which side of her', () => {
  const faults = (fitting: object, round: string) =>
    sideFaults({
      gown: { place: () => ({ ...span, start: 7 }) },
      fitting: {
        place: (...path: unknown[]) => ({ ...span, start: path.length, end: Number(path[1] ?? 0) }),
        ...fitting,
      },
      drafts: { left: { gown: { round } } },
    } as never).map(({ code, span: at }) => [code, at.start, at.end]);

  it('a ring has none: each entry that names one is told, at its own place', () => {
    const seams = [{ side: 'left' }, {}, { side: 'both' }, { side: 'right' }];
    expect(faults({ side: 'left', seams }, 'ring')).toEqual([
      ['fitting-side-of-ring', 1, 0],
      ['fitting-side-of-ring', 3, 0],
      ['fitting-side-of-ring', 3, 3],
    ]);
    expect(faults({ seams: [{}, { side: 'both' }] }, 'ring')).toEqual([]);
  });

  it('her centres lie on both: what is pinned there on one side is told, hem and waist', () => {
    const pinned = { hem: { 'centre-back': 5, 'a/b': 3 }, waist: { 'centre-front': 2, 'all-round': 1 } };
    expect(faults({ side: 'right', ...pinned }, 'mirrored').map(([code]) => code)).toEqual(
      new Array(3).fill('fitting-centre-on-one-side'),
    );
    expect(faults(pinned, 'mirrored')).toEqual([]);
    expect(faults({ side: 'right', hem: { 'a/b': 3 } }, 'mirrored')).toEqual([]);
  });

  it('a fitting is for both where neither it nor a seam of it says one', () => {
    const both = (fitting: object) => isForBoth(fitting as never);
    expect([both({}), both({ seams: [{}, { side: 'both' }] })]).toEqual([true, true]);
    expect([both({ side: 'left' }), both({ seams: [{}, { side: 'right' }] })]).toEqual([false, false]);
  });
});

describe('pins along a hem', () => {
  const { drafts } = fitted([]);
  const { ways } = drafts.gown.hem;
  const wayOf = (place: number) => {
    const gore = Math.min(ways.length - 2, Math.floor(place));
    return ways[gore]! + (place - gore) * (ways[gore + 1]! - ways[gore]!);
  };
  const pinned = (fitting: object) =>
    ({ fitting: { place: () => span, ...fitting }, gown: { units: 'mm', place: () => span } }) as never;

  it('the side that was not pinned rests from 75 mm beside its centres on (textbook: pins every 7.5 cm)', () => {
    expect(hemAtRest(pinned({}), drafts.gown)).toEqual([]);
    expect(hemAtRest(pinned({ hem: {}, levelled: [] }), drafts.gown)).toEqual([]);
    for (const fitting of [{ hem: { 'a/b': 3 } }, { levelled: [{ from: 'side/back', along: 0, up: 3 }] }]) {
      const knots = hemAtRest(pinned(fitting), drafts.gown);
      const inner = ways.slice(1, -1).filter((way) => way > 75 && way < ways.at(-1)! - 75);
      expect(knots.map(({ place }) => wayOf(place))).toEqual(
        [75, ...inner, ways.at(-1)! - 75].map((way) => expect.closeTo(way, 9)),
      );
      expect(knots.every(({ up }) => up === 0)).toBe(true);
    }
  });

  it('at stations, where no pin was read off, all of them; beside pins those that are named, and it runs out', () => {
    const found: never[] = [];
    const all = hemKnots(pinned({ hem: { 'side/back': 6, 'all-round': 2 } }), drafts.gown, found);
    expect(all.map(({ place, up }) => [place, up])).toEqual([
      [0, 2],
      [1, 2],
      [2, 2],
      [3, 6],
      [4, 2],
    ]);
    expect(hemKnots(pinned({}), drafts.gown, found)).toEqual([]);
    const levelled = [
      { from: 'side-front/side', along: 0, up: 4 },
      { from: 'side-front/side', along: 75, up: 5 },
    ];
    const knots = hemKnots(pinned({ levelled, hem: { 'side/back': 6 } }), drafts.gown, found);
    expect(found).toEqual([]);
    expect(knots.slice(0, 3).map(({ up }) => up)).toEqual([4, 5, 6]);
    expect(knots[0]!.place).toBe(2);
    expect(knots[2]!.place).toBe(3);
    // 75 mm before the first pin and after the last it is where the rest is; so it is at both centres.
    const [before, after, ...ends] = knots.slice(3);
    expect(wayOf(before!.place)).toBeCloseTo(ways[2]! - 75, 9);
    expect(wayOf(after!.place)).toBeCloseTo(wayOf(knots[1]!.place) + 75, 9);
    expect([before!.up, after!.up, ...ends.map(({ place, up }) => [place, up])]).toEqual([
      0,
      0,
      [0, 0],
      [4, 0],
    ]);
    // With pins at the centre itself there is nothing to run out to there.
    const near = hemKnots(
      pinned({ levelled: [{ from: 'centre-front', along: 0, up: 4 }], hem: { 'all-round': 1 } }),
      drafts.gown,
      found,
    );
    expect(near.map(({ place, up }) => [place > 0 && place < 1 ? 'in' : place, up])).toEqual([
      [0, 4],
      ['in', 1],
      [4, 1],
    ]);
  });
});

describe('what is said where more than the skirt changes', () => {
  const said = (code: string, fittings: readonly Tree[], fields: Tree = {}) =>
    drafting({ ...fields, fittings }).diagnostics.filter((one) => one.code === code);

  it('the bodice taken in or let out, at the fitting that reached it', () => {
    const seams = (takeIn: number) => [{ seam: 'side/back', from: 0, to: 300, 'take-in': takeIn }];
    const first = on({ hem: { 'all-round': 5 } });
    const [finding] = said('fitting-reaches-bodice', [first, { date: '2027-04-02', seams: seams(-3) }]);
    expect(finding!.message).toContain('let out by 12 mm all round');
    expect(finding!.span.source.text.slice(0, finding!.span.start)).toContain('2027-04-02');
    expect(
      said('fitting-reaches-bodice', [
        on({ seams: [{ seam: 'side/back', from: 50, to: 300, 'take-in': 3 }] }),
      ]),
    ).toEqual([]);
  });

  it('the waist edge longer or shorter, by what it was moved', () => {
    const by = (up: number) =>
      said('fitting-moves-waist', [on({ waist: { 'centre-back': up } })]).map(
        ({ message }) => /[\d.]+ mm (longer|shorter) all round/.exec(message)?.[1],
      );
    expect([by(4), by(-4)]).toEqual([['shorter'], ['longer']]);
    expect(said('fitting-moves-waist', [on({ hem: { 'centre-back': 4 } })])).toEqual([]);
  });

  it('a seam let out past its allowance, once for every place that gives one, only of layers that were fitted', () => {
    const layers = [
      { name: 'lining', cloth: 'calico', hem: 'turned' },
      { name: 'shell', cloth: 'calico', hem: 'faced', allowances: { 'side/back': 8 } },
      {
        name: 'over',
        cloth: 'calico',
        hem: 'faced',
        gores: ['front', 'side-front'],
        allowances: { seam: 4 },
      },
    ];
    const out = (takeIn: number | number[], own: Tree = {}) =>
      said(
        'fitting-past-allowance',
        [on({ seams: [{ seam: 'side/back', from: 300, to: 900, 'take-in': takeIn }], ...own })],
        { layers },
      ).map(({ message }) => message);
    expect(out(-7)).toEqual([]);
    expect(out(-10)).toEqual([expect.stringContaining('shell')]);
    expect(out(-16)).toHaveLength(2);
    expect(out(-16, { layer: 'lining' })).toEqual([expect.not.stringContaining('shell')]);
    expect(out([0, -10], {})).toHaveLength(1);
  });
});
