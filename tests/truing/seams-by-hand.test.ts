import { describe, expect, it } from 'vitest';
import type { Piece } from '../../src/draft/piece.ts';
import type { Line } from '../../src/geometry/curve.ts';
import { mayComeToAPoint, measureGown } from '../../src/truing/measure-gown.ts';
import { measurePart } from '../../src/truing/measure-parts.ts';
import { trueOverBody } from '../../src/truing/over-body.ts';
import { trueOverPetticoat } from '../../src/truing/over-petticoat.ts';
import { trueGown } from '../../src/truing/true-gown.ts';
import { line } from '../line.ts';

/** Which sides are held against each other, told by their lengths; all by hand. mm, radians. */

/** 100 wide with upright sides: its hem runs down to the right by what that side is longer. */
function quad(gore: string, left: number, right: number, own: Partial<Piece> = {}): Piece {
  return {
    gore,
    layers: ['shell'],
    edges: [
      { name: 'waist', curves: [line(0, 0, 100, 0)] },
      { name: 'back', curves: [line(100, 0, 100, right)] },
      { name: 'hem', curves: [line(100, right, 0, left)] },
      { name: 'front', curves: [line(0, left, 0, 0)] },
    ],
    frontEdge: 'front',
    backEdge: 'back',
    grain: line(50, 100, 50, 300),
    cut: 'pair',
    ...own,
  };
}
const slope = ({ edges }: Piece) => {
  const [right, left] = [edges[1]!.curves[0] as Line, edges[3]!.curves[0] as Line];
  return Math.atan((right.to.y - left.from.y) / 100);
};
const A = quad('a', 500, 520);
const B = quad('b', 530, 560);
const C = quad('c', 570, 610);
const pieces = [A, B, C];
const station = (name: string, own: object = {}) => ({ name, seams: 1, drop: 0, ...own });
const near = (value: number) => expect.closeTo(value, 9);

describe('the sides that a seam joins', () => {
  const gores = ['a', 'b', 'c'].map((name) => ({ name, top: 100 }));
  const measured = (round: string, names: readonly (string | [string, string])[]) => {
    const stations = names.map((name) =>
      typeof name === 'string' ? station(name) : station(name[0], { side: name[1] }),
    );
    const hem = { ways: [0, 100, 200, 300], slopeAt: (way: number) => way / 1000 };
    const frames = pieces.map(() => ({ downAt: (_: number, part: number) => 0.1 + 0.3 * part }));
    const gown = { round, gores, stations };
    return measureGown({ pieces, gown, hem, frames, shape: {} } as never);
  };
  const sides = (own: ReturnType<typeof measured>) =>
    own.seams.map(({ name, gores: [a, b], lengths: [left, right] }) => [name, a, b, left, right]);

  it('mirrored: at the centres a gore and its mirror image', () => {
    const own = measured('mirrored', ['cf', 'a/b', 'b/c', 'cb']);
    expect(sides(own)).toEqual([
      ['cf', 'a', 'a', 500, 500],
      ['a/b', 'a', 'b', 520, 530],
      ['b/c', 'b', 'c', 560, 570],
      ['cb', 'c', 'c', 610, 610],
    ]);
    expect(own.seams.map(({ hemAngle }) => hemAngle)).toEqual([
      near(Math.PI + 2 * slope(A)),
      near(Math.PI - slope(A) + slope(B)),
      near(Math.PI - slope(B) + slope(C)),
      near(Math.PI - 2 * slope(C)),
    ]);
    expect(own.seams.map(({ waistAngle }) => waistAngle)).toEqual(Array(4).fill(near(Math.PI)));
    expect(own.seams.map(({ offSquare }) => offSquare)).toEqual(
      [0, 0.1, 0.2, 0.3].map((at) => near(Math.atan(at))),
    );
    // Both halves of her: three tops, and three hems.
    expect(own.waist).toEqual({ sewn: near(600), bodice: near(600) });
    const hem = [A, B, C].reduce((sum, piece) => sum + 100 / Math.cos(slope(piece)), 0);
    expect(own.hem.sewn).toBeCloseTo(2 * hem, 9);
    expect(own.gores.map(({ flare }) => flare)).toEqual(Array(3).fill(near(0.3)));
    expect(own.gores.some((gore) => 'panel' in gore || 'side' in gore)).toBe(false);
  });

  it('all round: the last gore meets the first', () => {
    const own = measured('ring', ['c/a', 'a/b', 'b/c', 'c/a']);
    expect(sides(own)).toEqual([
      ['c/a', 'c', 'a', 610, 500],
      ['a/b', 'a', 'b', 520, 530],
      ['b/c', 'b', 'c', 560, 570],
    ]);
    expect(own.seams[0]!.hemAngle).toBeCloseTo(Math.PI - slope(C) + slope(A), 9);
    expect(own.waist.sewn).toBeCloseTo(300, 9);
  });

  it('of two halves each its own side', () => {
    const own = measured('two-halves', ['cf', ['a/b', 'left'], ['b/c', 'right'], 'cf']);
    expect(own.seams.map(({ side }) => side)).toEqual([undefined, 'left', 'right']);
    expect(sides(own)[0]).toEqual(['cf', 'c', 'a', 610, 500]);
  });

  it('without a seam there is nothing to measure; a free one says so', () => {
    const hem = { ways: [0, 1, 2, 3], slopeAt: () => 0 };
    const stations = [
      station('cf', { seams: 0 }),
      station('a/b', { free: true }),
      station('b/c'),
      station('cb'),
    ];
    const gown = { round: 'mirrored', gores, stations };
    const frames = pieces.map(() => ({ downAt: () => 0 }));
    const own = measureGown({ pieces, gown, hem, frames, shape: {} } as never);
    expect(own.seams.map(({ name, free, station: at }) => [name, free, at])).toEqual([
      ['a/b', true, 1],
      ['b/c', undefined, 2],
      ['cb', undefined, 3],
    ]);
  });
});

describe('a corner by design', () => {
  const at = (gown: object, edge: 'hem' | 'waist') =>
    [0, 1, 2].map((place) => mayComeToAPoint({ gown: { gores: [1, 2], ...gown } } as never, place, edge));

  it('where an overskirt ends on the edge that it is sewn to, and nowhere between', () => {
    expect(at({ edge: {} }, 'waist')).toEqual([true, false, true]);
    expect(at({}, 'waist')).toEqual([false, false, false]);
    expect(at({ edge: {}, pointedAt: 1 }, 'waist')).toEqual([true, true, true]);
    expect(at({ edge: {} }, 'hem')).toEqual([false, false, false]);
  });

  it('at the point of a bodice, and at the end of a pointed train', () => {
    expect(at({ pointedAt: 1 }, 'waist')).toEqual([false, true, false]);
    expect(at({ pointedAt: 1 }, 'hem')).toEqual([false, false, false]);
    expect(at({ train: { shape: 'pointed', full: 2 } }, 'hem')).toEqual([false, false, true]);
    expect(at({ train: { shape: 'round', full: 2 } }, 'hem')).toEqual([false, false, false]);
    expect(at({ train: { shape: 'pointed', full: 2 } }, 'waist')).toEqual([false, false, false]);
  });

  it('is no fault of a gown; any other break is, and seams that differ', () => {
    const place = (name: string) => () => name;
    const gown = {
      gores: [1, 2].map(() => ({ place: place('gore') })),
      stations: ['s0', 's1', 's2'].map((name) => ({ place: place(name) })),
    };
    const seam = {
      name: 's1',
      station: 1,
      gores: ['a', 'b'],
      lengths: [500, 500],
      hemAngle: Math.PI,
      waistAngle: Math.PI,
      offSquare: 0,
    };
    const found = (own: object, more: object = {}) =>
      trueGown(
        { units: 'mm', waistSeam: 720 } as never,
        { gown: { ...gown, ...more }, pieces: [] } as never,
        { seams: [{ ...seam, ...own }], waist: { sewn: 720 } } as never,
      ).map(({ code, span, message }) => {
        if (code === 'seams-differ') expect(message).toMatch(/`a` 50\d(\.2)? mm, `b` 50\d(\.2)? mm/);
        return [code, span];
      });
    expect(found({})).toEqual([]);
    expect(found({ waistAngle: 3 })).toEqual([['waist-not-smooth', 's1']]);
    expect(found({ waistAngle: 3 }, { pointedAt: 1 })).toEqual([]);
    expect(found({ waistAngle: 3, station: 2 }, { edge: {} })).toEqual([]);
    expect(found({ hemAngle: 3, station: 2 }, { edge: {} })).toEqual([['hem-not-smooth', 's2']]);
    expect(found({ lengths: [500, 500.2] })).toEqual([['seams-differ', 's1']]);
    expect(found({ lengths: [500.2, 500] })).toEqual([['seams-differ', 's1']]);
    const all = { lengths: [500, 503], hemAngle: 3, waistAngle: 3, offSquare: 0.8 };
    expect(found(all).map(([code]) => code)).toEqual([
      'seams-differ',
      'hem-not-smooth',
      'waist-not-smooth',
      'hem-far-from-square',
    ]);
    expect(found({ lengths: [500, 500.05], offSquare: 0.8 })).toEqual([['hem-far-from-square', 's1']]);
    expect(found({ offSquare: -0.8 })).toEqual([['hem-far-from-square', 's1']]);
    expect(found({ offSquare: -0.78 })).toEqual([]);
  });
});

describe('what a part is sewn to', () => {
  const godet = quad('wedge', 200, 210);
  const layer = { name: 'shell' };
  const measured = (
    seam: string,
    round: string,
    stations: readonly object[],
    own: { piece?: Partial<Piece>; layer?: object; kind?: string } = {},
  ) => {
    const draft = { pieces, gown: { round, gores: pieces, stations } };
    const other = { layer: { name: 'net' }, draft: { pieces: [quad('x', 1, 2)], gown: draft.gown } };
    const part = {
      of: { kind: own.kind ?? 'godet', godet: { seam, from: 300 } },
      piece: { ...godet, ...own.piece },
      layer: own.layer ?? layer,
    };
    return measurePart({ layers: [other, { layer, draft }] } as never, part as never);
  };
  // Its own hem leans as it does from 200 to 210; whichever of its two seams breaks more is told.
  const worst = (...breaks: number[]) => {
    const most = breaks.reduce((far, own) => (Math.abs(own) > Math.abs(far) ? own : far));
    return near(Math.PI + most);
  };
  const named = ['cf', 'a/b', 'b/c', 'cb'].map((name) => station(name));
  const g = slope(godet);

  it.each([
    // Beside it lie 520 and 530: 20 and 20 more than 200 and 300, than 210 and 300.
    ['a/b', 'mirrored', 20, [g - slope(A), slope(B) - g]],
    ['cf', 'mirrored', 10, [slope(A) + g, slope(A) - g]],
    ['cb', 'mirrored', 110, [g - slope(C), -g - slope(C)]],
    ['b/c', 'ring', 60, [g - slope(B), slope(C) - g]],
  ] as const)('a godet at %s of a %s gown', (seam, round, difference, breaks) => {
    const own = measured(seam, round, named);
    expect(own.difference).toBeCloseTo(difference, 9);
    expect(own.hemAngle).toEqual(worst(...breaks));
  });

  it('a godet in the seam that closes a ring lies between its last gore and its first', () => {
    const ring = ['c/a', 'a/b', 'b/c', 'c/a'].map((name) => station(name));
    const own = measured('c/a', 'ring', ring);
    // 610 beside 200, and 500 beside 210.
    expect(own.difference).toBeCloseTo(110, 9);
    expect(own.hemAngle).toEqual(worst(g - slope(C), slope(A) - g));
  });

  it('on the side of her that it is cut for', () => {
    const halves = [
      station('cf'),
      station('s', { side: 'left' }),
      station('s', { side: 'right' }),
      station('cf'),
    ];
    const of = (piece: Partial<Piece>) => measured('s', 'two-halves', halves, { piece }).difference;
    expect(of({ side: 'left' })).toBeCloseTo(20, 9);
    expect(of({ side: 'right' })).toBeCloseTo(60, 9);
    expect(of({})).toBeCloseTo(20, 9);
  });

  it('a flounce is sewn to itself, and so is what has no such layer', () => {
    for (const own of [{ kind: 'flounce' }, { layer: { name: 'gone' } }]) {
      const { difference, hemAngle } = measured('a/b', 'mirrored', named, own);
      expect([difference, hemAngle]).toEqual([near(10), near(Math.PI)]);
    }
  });
});

describe('a gore over what is round', () => {
  const place = () => 'gore';
  const gores = [{ name: 'g', width: { kind: 'girths' }, place }];
  /** Every line of the gore is as long as the body and what `longer` says, from the waist to there. */
  const found = (
    longer: (down: number, part: number) => number,
    own: { gore?: object; drops?: number[]; lengths?: number[]; weave?: string; units?: string } = {},
  ) => {
    const frame = { pointAt: (down: number, part: number) => ({ x: 0, y: down + longer(down, part) }) };
    const { drops = [0, 0], lengths = [900, 900], weave, units = 'mm' } = own;
    const draft = {
      frames: [frame],
      lengths,
      gown: { gores: [{ ...gores[0], ...own.gore }], stations: drops.map((drop) => ({ drop })) },
    };
    const layers = [{ cloth: {} }, { cloth: weave === undefined ? {} : { weave } }];
    return trueOverPetticoat({ layers, units } as never, draft as never).map(({ message, span }) => [
      message,
      span,
    ]);
  };
  const near = (line: number) => (down: number, part: number) =>
    Math.abs(part - line) < 1e-9 ? 0.08 * Math.min(down, 200) : 0;

  it.each([0.1, 0.25, 0.4, 0.5, 0.6, 0.75, 0.9])('is looked at along a line at %f of its width', (line) => {
    expect(found(near(line))).toEqual([
      ['Gore `g` is 8.0 % longer than the body between its seams, 100 mm below the waist.', 'gore'],
    ]);
  });

  it('and at no other; by 5 % of 200 at least, by 2 % on satin (common practice)', () => {
    expect(found(near(0.95))).toEqual([]);
    expect(found((down) => 0.0499 * down)).toEqual([]);
    expect(found((down) => 0.0501 * down)).toHaveLength(1);
    expect(found((down) => -0.0501 * down)[0]![0]).toContain('5.0 % shorter');
    expect(found((down) => 0.0199 * down, { weave: 'satin' })).toEqual([]);
    expect(found((down) => 0.0201 * down, { weave: 'duchess satin' })).toHaveLength(1);
    expect(found((down) => 0.0201 * down, { weave: 'twill' })).toEqual([]);
  });

  it('from the lower of its two stations as far down as its shorter side, where it is most', () => {
    // Longer by a fifth of what lies between 600 and 800.
    const below = (down: number) => 0.2 * Math.max(0, Math.min(down, 800) - 600);
    expect(found(below)[0]![0]).toBe(
      'Gore `g` is 20.0 % longer than the body between its seams, 700 mm below the waist.',
    );
    expect(found(below, { lengths: [640, 900] })).toEqual([]);
    expect(found(below, { lengths: [900, 640] })).toEqual([]);
    // From 50 to 700: the last stretch is that from 500 on, half of it longer.
    for (const drops of [
      [50, 0],
      [0, 50],
    ])
      expect(found(below, { lengths: [650, 650], drops })[0]![0]).toBe(
        'Gore `g` is 10.0 % longer than the body between its seams, 600 mm below the waist.',
      );
    expect(found((down) => 0.2 * down, { lengths: [199, 199] })).toEqual([]);
    expect(found((down) => 0.2 * down, { lengths: [200, 200] })).toHaveLength(1);
  });

  it('is held against a petticoat down to its hem, in order, where more than one girth of that is known', () => {
    const girths = [
      { down: 0, girth: 700 },
      { down: 400, girth: 900 },
    ];
    const draft = {
      frames: [{ widthAt: () => 400 }],
      lengths: [500, 520],
      gown: {
        round: 'mirrored',
        gores: [{ width: { kind: 'flare' } }],
        stations: [{ drop: 10 }, { drop: 0 }],
      },
    };
    const rows = (own: readonly object[]) => {
      const petticoat = { girths: own, ease: 0, place };
      const [found, ...more] = trueOverPetticoat(
        { layers: [], units: 'mm', petticoat } as never,
        draft as never,
      );
      expect(more).toEqual([]);
      return found?.table?.slice(1).map((row) => row.map(Number.parseFloat));
    };
    // 800 round is enough to 200 below: of eight places to 400 three are tight, then eight to the hem at 510, and that.
    const told = rows(girths)!;
    const downs = told.map(([down]) => down!);
    expect(downs).toEqual([...downs].sort((a, b) => a - b));
    // Five eighths of the slant to 400, over which the petticoat's radius grows by 200 / 2π.
    const first = (5 / 8) * Math.hypot(400, 100 / Math.PI);
    expect([downs[0], downs.at(-1), downs.length]).toEqual([Math.round(first), 510, 3 + 9]);
    expect(rows(girths.slice(1))).toBeUndefined();
    expect(rows([])).toBeUndefined();
  });

  it('unless it is gathered, or cut by widths of its own', () => {
    expect(found((down) => 0.2 * down, { gore: { fullness: {} } })).toEqual([]);
    expect(found((down) => 0.2 * down, { gore: { width: { kind: 'flare' } } })).toEqual([]);
  });

  it('is as wide as she is at every level that is measured, all round', () => {
    const draft = (round: string) => ({
      frames: [{ widthAt: (down: number) => 300 + down }, { widthAt: () => 100 }],
      lengths: [500, 600],
      gown: { round, stations: [{ drop: 20 }, { drop: 40 }] },
    });
    const tight = (girths: readonly object[], round = 'mirrored') =>
      trueOverBody(
        { units: 'mm', body: { girths, place: (...path: unknown[]) => path } } as never,
        draft(round) as never,
      ).map(({ message, span }) => [message, span]);
    // 2 × (400 + 100) at 100 below the waist.
    const hip = (girth: number, below: number | undefined = 100) => ({
      at: 'hip',
      girth,
      ...(below === undefined ? {} : { below }),
    });
    expect(tight([hip(1000)])).toEqual([]);
    expect(tight([hip(700, 60), hip(1010)])).toEqual(
      [['At the `hip` the skirt is 1000 mm round and she is 1010 mm.', ['girths', 1, 'girth']]].map(
        ([message, span]) => [String(message).replaceAll('`', ''), span],
      ),
    );
    expect(tight([hip(510)], 'ring')).toHaveLength(1);
    // Above the edge, at it, and below the shortest hem nothing is held.
    expect(tight([hip(9000, 40), hip(9000, 30), { at: 'waist', girth: 9000 }])).toEqual([]);
    expect(tight([hip(9000, 41)])).toHaveLength(1);
    expect([tight([hip(9000, 520)]).length, tight([hip(9000, 521)]).length]).toEqual([1, 0]);
    expect(trueOverBody({ units: 'mm' } as never, draft('ring') as never)).toEqual([]);
  });
});
