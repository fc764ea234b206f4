import { describe, expect, it } from 'vitest';
import { handlingText } from '../../src/cli/lay-table.ts';
import { layWords } from '../../src/diagnostics/lay-words.ts';
import type { CutPiece } from '../../src/draft/piece.ts';
import type { Curve, Line, Point } from '../../src/geometry/curve.ts';
import { pointAt } from '../../src/geometry/evaluate.ts';
import { chooseWay, handlingOf, isAsFolded } from '../../src/lay/plan/choose-way.ts';
import { inCuttingOrder } from '../../src/lay/plan/cutting-order.ts';
import { layFaults } from '../../src/lay/plan/lay-faults.ts';
import { biasItem, layItem, railroadedItem } from '../../src/lay/plan/lay-items.ts';
import { layNames } from '../../src/lay/plan/lay-names.ts';
import { laysTooLong } from '../../src/lay/plan/lays-too-long.ts';
import { piecedAlongGrain } from '../../src/lay/plan/piecing.ts';
import { laidWidth, sectionStrip, shapesOf } from '../../src/lay/plan/section-strip.ts';
import { spareAreas } from '../../src/lay/plan/spare-areas.ts';
import { unfolded } from '../../src/lay/plan/unfold.ts';
import { waysOf } from '../../src/lay/plan/ways.ts';
import { trueOutline, workingOutline } from '../../src/lay/plan/working-outline.ts';
import { clothOf, factsOf, flatPiece } from './laid.ts';

/** What is known of a lay once it is packed, and before: rectangles placed by hand, nothing searched for. mm. */

const corners = (left: number, top: number, width: number, height: number): Point[] => [
  { x: left, y: top },
  { x: left + width, y: top },
  { x: left + width, y: top + height },
  { x: left, y: top + height },
];
const outline = (points: readonly Point[]): Line[] =>
  points.map((from, i) => ({ kind: 'line', from, to: points[(i + 1) % points.length]! }));
const placed = (gore: string, ...box: [number, number, number, number]) =>
  ({ gore, copy: 1, outline: outline(corners(...box)) }) as never;
/** 1000 wide with selvedges of 20 and 30 of edging: from 50 to 950. */
const FACTS = factsOf(clothOf({ width: 1000, selvedge: 20 }), 30);
const boxOf = (curves: readonly Curve[]) => {
  const points = curves.map((curve) => pointAt(curve, 0));
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)].map(
    (own) => Math.round(own * 1e6) / 1e6,
  );
};

describe('a finished lay checked afresh', () => {
  const faults = (...pieces: never[]) => layFaults(pieces, FACTS, 2000);

  it.each<[string, [number, number, number, number], string[]]>([
    ['within', [50, 0, 900, 2000], []],
    ['over the left selvedge', [49, 10, 100, 100], ['a 1 lies 1.00 mm outside the cloth']],
    ['over the right one', [900, 10, 52, 100], ['a 1 lies 2.00 mm outside the cloth']],
    ['above', [100, -3, 100, 100], ['a 1 lies 3.00 mm outside the cloth']],
    ['below', [100, 1950, 100, 54], ['a 1 lies 4.00 mm outside the cloth']],
    ['by less than chalk is wide', [49.96, -0.04, 100, 100], []],
  ])('%s', (_, box, wanted) => expect(faults(placed('a', ...box))).toEqual(wanted));

  it('how deep two run into each other', () => {
    const a = placed('a', 100, 100, 300, 300);
    expect(faults(a, placed('b', 393, 100, 200, 300))).toEqual(['b 1 and a 1 overlap by 7.00 mm']);
    expect(faults(a, placed('b', 400, 100, 200, 300), placed('c', 100, 400, 300, 300))).toEqual([]);
    expect(faults(a, placed('b', 399.97, 100, 200, 300))).toEqual([]);
    // Right across: neither has a corner in the other.
    // Its lower edge lies 140 from where the other ends.
    expect(faults(a, placed('b', 60, 200, 600, 60))).toEqual(['b 1 and a 1 overlap by 140.00 mm']);
    expect(faults(a, placed('b', 200, 200, 50, 50))).toEqual(['b 1 and a 1 overlap by 150.00 mm']);
  });
});

describe('the order of cutting', () => {
  const item = (layer: string, kind: string, height = 100) => ({ layer, kind, whole: { height } });
  const [pair, single, other] = [item('shell', 'pair'), item('shell', 'single'), item('lining', 'pair', 300)];
  const piece = (own: object, cut: number, x: number, y: number, at: object = {}) =>
    ({
      item: own,
      cut,
      cutAt: { x, y },
      placed: { section: 0, gore: `${cut}`, mirrored: false, ...at },
    }) as never;

  it('layer by layer, down the cloth, then across; plies of one cut share a number', () => {
    const pieces = [
      piece(single, 0, 300, 500),
      piece(pair, 1, 100, 200),
      piece(pair, 1, 900, 200, { mirrored: true }),
      // Its middle lies lower, its top as high as the next one's.
      piece(other, 2, 500, 350),
      piece(single, 3, 200, 500),
      piece(other, 4, 400, 340, { section: 1 }),
    ];
    const order = inCuttingOrder(pieces, ['lining', 'shell']);
    expect(order.map(({ number, gore, copy }) => [number, gore, copy])).toEqual([
      [1, '2', 1],
      [2, '1', 1],
      [2, '1', 2],
      // Of two as high the left one first.
      [3, '3', 1],
      [4, '0', 2],
      // A stretch that is folded otherwise is cut after the one before it.
      [5, '4', 1],
    ]);
  });

  it('by the top of a piece, not its middle', () => {
    const [tall, low] = [item('shell', 'single', 800), item('shell', 'single', 100)];
    const order = inCuttingOrder([piece(low, 0, 100, 100), piece(tall, 1, 500, 420)], ['shell']);
    expect(order.map(({ gore }) => gore)).toEqual(['1', '0']);
  });
});

describe('spare cloth', () => {
  const section = (own: object = {}) => ({ fold: 'single', from: 0, to: 2000, upperTurned: false, ...own });
  const spare = (pieces: never[], sections: object[] = [section()]) =>
    spareAreas(pieces, sections as never, FACTS, 2000).map(({ x, y, width, height }) => [
      x,
      y,
      width,
      height,
    ]);

  it('the largest free rectangles, from the selvedge and edging on', () => {
    // 900 of cloth: 300 free at the right beside the piece, and the whole width below it.
    expect(spare([placed('a', 50, 0, 600, 1199)])).toEqual([
      [50, 1200, 900, 800],
      [650, 0, 300, 1200],
    ]);
    // What is begun of a square is not free: 605 takes 610.
    expect(spare([placed('a', 50, 0, 605, 1205)])).toEqual([
      [50, 1210, 900, 790],
      [660, 0, 290, 1210],
    ]);
  });

  it('a slanting side takes all from its leftmost to its rightmost point in a square', () => {
    const slanting = {
      outline: outline([
        { x: 50, y: 0 },
        { x: 650, y: 0 },
        { x: 50, y: 600 },
      ]),
    } as never;
    const found = spare([slanting]);
    expect(found[0]).toEqual([50, 600, 900, 1400]);
    // Its upper left corner lies nearest: at or beyond 650 − y.
    for (const [x, y, width, height] of found as [number, number, number, number][])
      expect(y >= 600 || x >= 650 - y || width * height === 0).toBe(true);
    expect(found.slice(1).some(([x]) => x! < 650)).toBe(true);
  });

  it('nothing that is too small to keep', () => {
    expect(spare([placed('a', 50, 0, 810, 2000)])).toEqual([]);
    expect(spare([placed('a', 50, 0, 800, 2000)])).toEqual([[850, 0, 100, 2000]]);
    // 100 by 590 are under six hundred square centimetres, by 600 they are as many.
    expect(spare([placed('a', 50, 0, 800, 2000), placed('b', 850, 591, 100, 1409)])).toEqual([]);
    expect(spare([placed('a', 50, 0, 800, 2000), placed('b', 850, 601, 100, 1399)])).toEqual([
      [850, 0, 100, 600],
    ]);
  });

  it('none lies over a cut across the cloth', () => {
    const cut = [section({ to: 1000 }), section({ from: 1000 })];
    expect(spare([placed('a', 50, 0, 600, 2000)], cut)).toEqual([
      [650, 0, 300, 1000],
      [650, 1010, 300, 990],
    ]);
    // Cut at the fold, its upper half turned round.
    expect(spare([placed('a', 50, 0, 600, 2000)], [section({ upperTurned: true })])[0]).toEqual([
      650, 0, 300, 1000,
    ]);
  });
});

describe('ways to fold', () => {
  const item = (gore: string, kind: string, part?: string) => ({ kind, part, cut: { gore } }) as never;
  const names = (...items: never[]) => waysOf(items).map(({ folds }) => layWords(folds));

  it('pairs alone: flat, double, or turning from one to the other at a gore', () => {
    expect(names(item('a', 'pair'), item('b', 'pair'))).toEqual([
      'single throughout',
      'folded lengthwise throughout',
      'folded crosswise throughout',
      'a folded lengthwise, then b single',
      'a folded lengthwise, then b folded crosswise',
    ]);
  });

  it('a front on the fold needs a fold along the length, or is cut whole', () => {
    expect(names(item('front', 'on-fold'), item('side', 'pair'), item('back', 'pair'))).toEqual([
      'single throughout',
      'folded lengthwise throughout',
      'front folded lengthwise, then side and back folded crosswise',
      'front single, then side and back folded crosswise',
      'front folded lengthwise, then side and back single',
      'front and side folded lengthwise, then back single',
      'front and side folded lengthwise, then back folded crosswise',
    ]);
  });

  it('what has no partner is cut flat', () => {
    expect(names(item('a', 'single'))).toEqual(['single throughout']);
    expect(names(item('a', 'pair'), item('b', 'single'))).toEqual([
      'single throughout',
      'a folded lengthwise, then b single',
      'b single, then a folded crosswise',
    ]);
    expect(names(...['a', 'b', 'c'].map((gore) => item(gore, 'single')), item('d', 'pair'))[1]).toBe(
      'd folded lengthwise, then a to c single',
    );
  });

  it('which of them does all that can be done with a fold', () => {
    const [flat, along, across] = waysOf([item('a', 'pair'), item('b', 'single')]);
    expect(
      [flat!, along!, across!].map((way) => [
        isAsFolded(way, 'single'),
        isAsFolded(way, 'lengthwise'),
        isAsFolded(way, 'crosswise'),
      ]),
    ).toEqual([
      [true, false, false],
      [false, true, false],
      [false, false, true],
    ]);
  });
});

describe('the way that is taken', () => {
  const item = (gore: string, kind: string, width: number, half?: number) => ({
    kind,
    cut: { gore },
    whole: { width },
    ...(half === undefined ? {} : { half: { width: half } }),
  });
  const way = (fold: string, ...items: object[]) => ({
    folds: [{ fold, gores: ['g'] }],
    fold,
    sections: [{ fold, items }],
  });
  const tried = (own: object, length: number, cuts = 1, packed = true) =>
    ({
      way: own,
      length,
      packed: packed
        ? [
            {
              section: (own as { sections: object[] }).sections[0],
              packing: { placements: Array.from({ length: cuts }) },
            },
          ]
        : undefined,
    }) as never;
  const toLay = (fold: string) =>
    ({
      spec: { fold },
      layers: [{ name: 'shell' }],
      facts: FACTS,
      span: {},
      say: (mm: number) => `${mm}`,
    }) as never;
  const flat = way('single', item('a', 'pair', 300));
  const along = way('lengthwise', item('a', 'pair', 300), item('b', 'on-fold', 900, 460));

  it('as asked, even where another is shorter', () => {
    const ways = [tried(flat, 3000), tried(along, 3500)];
    const { taken, diagnostics } = chooseWay(ways, toLay('lengthwise'));
    expect([taken.way.fold, diagnostics]).toEqual(['lengthwise', []]);
    expect(chooseWay(ways, toLay('any')).taken.way.fold).toBe('single');
  });

  it('else it is said what does not fit, and by how much', () => {
    const ways = [tried(flat, 3000), tried(along, Infinity, 0, false)];
    const { taken, diagnostics } = chooseWay(ways, toLay('lengthwise'));
    expect(taken.way.fold).toBe('single');
    // The half of the widest, and half of 900.
    expect(diagnostics[0]!.message).toMatch(/b/);
    expect(`${diagnostics[0]!.message} ${diagnostics[0]!.why}`).toContain('460');
    expect(`${diagnostics[0]!.message} ${diagnostics[0]!.why}`).toContain('450');
    expect(chooseWay([tried(flat, 3000)], toLay('crosswise')).diagnostics).toHaveLength(1);
  });

  it('how it is handled: pieces to mark, how many are cut double, an upper layer turned round', () => {
    expect(handlingOf(tried(flat, 1, 4), FACTS)).toEqual({ pieces: 4, double: 0, upperTurned: false });
    expect(handlingOf(tried(along, 1, 3), FACTS)).toEqual({ pieces: 3, double: 3, upperTurned: false });
    const packed = [flat, along].map((own, i) => ({
      section: own.sections[0],
      packing: { placements: Array.from({ length: i + 2 }) },
    }));
    expect(handlingOf({ way: { sections: [] }, packed } as never, FACTS)).toMatchObject({
      pieces: 5,
      double: 3,
    });
    const across = tried(way('crosswise', item('a', 'pair', 1)), 1, 2);
    expect(handlingOf(across, { ...FACTS, oneWay: true }).upperTurned).toBe(true);
    expect(handlingOf(across, FACTS).upperTurned).toBe(false);
    expect(handlingOf(tried(flat, 1, 2), { ...FACTS, oneWay: true }).upperTurned).toBe(false);
    const text = (pieces: number, double: number, upperTurned: boolean) =>
      handlingText({ handling: { pieces, double, upperTurned } } as never);
    expect([text(1, 0, false), text(4, 0, false), text(5, 3, false), text(2, 2, true)]).toEqual([
      '1 piece to mark',
      '4 pieces to mark',
      '5 pieces to mark, 3 cut double',
      '2 pieces to mark, all cut double, upper layer cut off and turned round',
    ]);
  });
});

describe('pieces as they are laid', () => {
  it('on the fold: the half, and the whole, twice as wide about its fold', () => {
    const half = flatPiece('front', corners(40, 10, 200, 900), 'on-fold', { foldEdge: 3 });
    const item = layItem(
      {
        ...half,
        notches: [
          {
            edge: 'back',
            distance: 1,
            ticks: [{ kind: 'line', from: { x: 240, y: 300 }, to: { x: 230, y: 300 } }],
          },
        ],
      },
      'shell',
    );
    expect([item.copies, item.half!.foldOnRight]).toEqual([1, false]);
    expect([item.half!.width, item.whole.width, item.whole.height, item.whole.area]).toEqual([
      200, 400, 900, 360_000,
    ]);
    expect(boxOf(item.whole.outline)).toEqual([-160, 10, 240, 910]);
    expect(item.whole.grain.from.x).toBe(40);
    expect(item.whole.notches.map(({ from }) => from.x)).toEqual([240, -160]);
    expect(
      layItem(flatPiece('back', corners(0, 0, 200, 900), 'on-fold', { foldEdge: 1 }), 'shell').half!
        .foldOnRight,
    ).toBe(true);
  });

  it('as many as one layer needs', () => {
    const copies = (cut: 'pair' | 'single', own?: number) =>
      layItem(flatPiece('a', corners(0, 0, 10, 10), cut, own === undefined ? {} : { copies: own }), 'shell')
        .copies;
    expect([copies('pair'), copies('single'), copies('single', 5)]).toEqual([2, 1, 5]);
  });

  it('across the cloth: its length is its width, its head to the left', () => {
    const item = railroadedItem(layItem(flatPiece('a', corners(0, 0, 200, 900), 'pair'), 'shell'));
    expect([item.railroaded, item.whole.width, item.whole.height]).toEqual([true, 900, 200]);
    expect(item.whole.grain.from.x).toBeLessThan(item.whole.grain.to.x);
    expect(item.whole.grain.from.y).toBeCloseTo(item.whole.grain.to.y, 9);
  });

  it.each([
    [1, 45],
    [-1, 315],
  ])('on the bias, its thread leaning by %s: turned until that runs along the cloth', (lean, tilt) => {
    const cut = flatPiece('a', corners(0, 0, 200, 900), 'pair');
    const grain: Line = {
      kind: 'line',
      from: { x: 100 + lean * 50, y: 400 },
      to: { x: 100 - lean * 50, y: 500 },
    };
    const item = biasItem({ ...cut, piece: { ...cut.piece, grain } }, 'shell');
    expect(item.tilt).toBe(tilt);
    expect(item.whole.grain.from.x).toBeCloseTo(item.whole.grain.to.x, 9);
    expect(item.whole.grain.from.y).toBeLessThan(item.whole.grain.to.y);
    // (200 + 900) ÷ √2 both ways.
    expect(item.whole.width).toBeCloseTo(1100 / Math.SQRT2, 3);
  });
});

describe('what is packed on a stretch', () => {
  const pair = layItem(flatPiece('side', corners(0, 0, 100, 500), 'pair'), 'shell');
  const fold = layItem(flatPiece('front', corners(0, 0, 80, 500), 'on-fold', { foldEdge: 3 }), 'shell');
  const single = layItem(flatPiece('pad', corners(0, 0, 50, 50), 'single', { copies: 3 }), 'shell');
  const all = [fold, pair, single];
  const shapes = shapesOf(all);
  const strip = (items: typeof all, kind: 'single' | 'lengthwise' | 'crosswise', own = FACTS) =>
    sectionStrip(items, kind, own, shapes);
  const attitudes = (items: typeof all, kind: 'single' | 'lengthwise' | 'crosswise', oneWay = true) =>
    strip(items, kind, { ...FACTS, oneWay }).problem.items.map((item) =>
      item.attitudes.map(({ shape, mirrored, turned }) => [shape, mirrored, turned]),
    );

  it('between selvedges and edging; folded along its length half of that', () => {
    expect([
      laidWidth(FACTS, 'single'),
      laidWidth(FACTS, 'crosswise'),
      laidWidth(FACTS, 'lengthwise'),
    ]).toEqual([900, 900, 450]);
    expect(strip(all, 'lengthwise').problem.width).toBeCloseTo(450.01, 9);
    expect(shapes).toEqual([fold.whole, fold.half, pair.whole, single.whole]);
  });

  it('flat: every piece, the second of a pair mirrored; folded: one for both', () => {
    expect(attitudes(all, 'single')).toEqual([
      [[0, false, false]],
      [[2, false, false]],
      [[2, true, false]],
      [[3, false, false]],
      [[3, false, false]],
      [[3, false, false]],
    ]);
    expect(attitudes([fold, pair], 'lengthwise')).toEqual([
      [[1, false, false]],
      [
        [2, false, false],
        [2, true, false],
      ],
    ]);
    // Without a direction each may lie the other way up as well; turned, a half changes its side of the fold.
    expect(attitudes([fold], 'lengthwise', false)).toEqual([
      [
        [1, false, false],
        [1, true, true],
      ],
    ]);
    expect(attitudes([single], 'single', false)[0]).toEqual([
      [3, false, false],
      [3, false, true],
    ]);
  });

  it('a half’s middle is held where its fold meets the cloth’s', () => {
    expect(strip([fold], 'lengthwise').problem.items[0]!.middleAt).toBeCloseTo(40, 9);
    expect(strip([pair], 'lengthwise').problem.items[0]!.middleAt).toBeUndefined();
  });

  it('a repeat is counted from the fold, or from the middle of the cloth', () => {
    const repeat = (kind: 'single' | 'lengthwise') =>
      strip([pair], kind, { ...FACTS, repeatDown: 120, repeatAcross: 90 }).problem.repeat!;
    expect([repeat('single').down, repeat('single').across!.step]).toEqual([120, 90]);
    expect(repeat('single').across!.origin).toBeCloseTo(450.005, 9);
    expect(repeat('lengthwise').across!.origin).toBe(0);
    // Grains lie in the middle of a pair's and a whole's bounds, at the left of a half's.
    expect(repeat('single').anchors.map((own) => Math.round(own))).toEqual([0, 0, 0, 0]);
    expect(strip([pair], 'single').problem.repeat).toBeUndefined();
  });

  const open = (
    items: typeof all,
    kind: 'single' | 'lengthwise' | 'crosswise',
    placements: object[],
    own = FACTS,
  ) => {
    const section = { fold: kind, items };
    const packed = { section, length: 1200, strip: strip(items, kind, own), packing: { placements } };
    return unfolded(packed as never, 2, 300, own).map(({ placed: one, cut }) => [
      cut,
      one.mirrored,
      one.turned,
      one.face,
      ...boxOf(one.outline),
    ]);
  };
  const at = (x: number, y: number, own: object = {}) => ({
    x,
    y,
    attitude: { mirrored: false, turned: false, ...own },
  });

  it('opened out: one ply at each side of the fold along the length', () => {
    // Middle at 500 ± 200, 300 + 260 down; 100 by 500.
    expect(open([pair], 'lengthwise', [at(200, 260)])).toEqual([
      [0, false, 0, 'up', 650, 310, 750, 810],
      [0, true, 0, 'down', 250, 310, 350, 810],
    ]);
    // The half becomes the whole, its fold on the cloth's.
    expect(open([fold], 'lengthwise', [at(40, 260)])).toEqual([[0, false, 0, 'up', 420, 310, 580, 810]]);
  });

  it('flat it lies from the selvedge and edging on; folded across, the upper ply runs the other way', () => {
    const near = (box: (string | number | boolean)[][]) =>
      box.map((row) => row.map((own) => (typeof own === 'number' ? Math.round(own * 10) / 10 : own)));
    expect(near(open([single], 'single', [at(25, 25), at(75, 25), at(125, 25)]))[0]).toEqual([
      0,
      false,
      0,
      'up',
      50,
      300,
      100,
      350,
    ]);
    // 1200 in all: 300 + 1200 − 250.
    expect(near(open([pair], 'crosswise', [at(150, 250)]))).toEqual([
      [0, false, 0, 'up', 150, 300, 250, 800],
      [0, true, 180, 'down', 150, 1000, 250, 1500],
    ]);
    // One way: cut off and turned round in its own plane, it keeps its direction and changes its side.
    expect(near(open([pair], 'crosswise', [at(150, 250)], { ...FACTS, oneWay: true }))).toEqual([
      [0, false, 0, 'up', 150, 300, 250, 800],
      [0, true, 0, 'down', 750, 900, 850, 1400],
    ]);
  });
});

describe('a piece wider than its cloth', () => {
  const piece = (width: number, own: Partial<CutPiece> = {}) => ({
    ...flatPiece('back', corners(0, 0, width, 1000), 'pair'),
    ...own,
  });
  const parts = (cut: CutPiece, usable: number) =>
    piecedAlongGrain(cut, usable, 15)?.map(({ cutEdges, piece: { frontEdge, backEdge, cut: how } }) => [
      boxOf(cutEdges.flatMap(({ curves }) => curves)),
      frontEdge,
      backEdge,
      how,
    ]);

  it('the first as wide as the cloth, seam allowance at both sides of each join', () => {
    // Joined at 485: 500 and 15 + 215.
    expect(parts(piece(700), 500)).toEqual([
      [[0, 0, 500, 1000], 'front', 'join', 'pair'],
      [[470, 0, 700, 1000], 'join', 'back', 'pair'],
    ]);
    // Joined at 485 and 955.
    expect(parts(piece(1200), 500)!.map(([box]) => box)).toEqual([
      [0, 0, 500, 1000],
      [470, 0, 970, 1000],
      [940, 0, 1200, 1000],
    ]);
    // 30 would be left: the join is moved until it is 60.
    expect(parts(piece(515), 500)!.map(([box]) => box)).toEqual([
      [0, 0, 470, 1000],
      [440, 0, 515, 1000],
    ]);
    expect(parts(piece(700), 70)).toBeUndefined();
  });

  it('edges of several curves stay whole where they are not cut, and fall into both parts where they are', () => {
    const own = piece(700);
    const [top, back, hem, front] = own.cutEdges;
    const line = (x: number, y: number, toX: number, toY: number): Line => ({
      kind: 'line',
      from: { x, y },
      to: { x: toX, y: toY },
    });
    const cutEdges = [
      { ...top!, curves: [line(0, 0, 300, 0), line(300, 0, 700, 0)] },
      { ...back!, curves: [line(700, 0, 700, 400), line(700, 400, 700, 1000)] },
      hem!,
      front!,
    ];
    const names = piecedAlongGrain({ ...own, cutEdges }, 500, 15)!.map((part) =>
      part.cutEdges.map(({ name, curves }) => `${name} ${curves.length}`),
    );
    expect(names).toEqual([
      ['top 2', 'join 1', 'hem 1', 'front 1'],
      ['top 1', 'back 2', 'hem 1', 'join 1'],
    ]);
  });

  it('on the fold half the cloth’s width is kept, and what is left is a pair', () => {
    const fold = flatPiece('front', corners(0, 0, 400, 1000), 'on-fold', { foldEdge: 3 });
    // Half of 500 less 15 is 235.
    expect(parts(fold, 500)).toEqual([
      [[0, 0, 250, 1000], 'fold', 'join', 'on-fold'],
      [[220, 0, 400, 1000], 'join', 'back', 'pair'],
    ]);
    const back = flatPiece('back', corners(0, 0, 400, 1000), 'on-fold', { foldEdge: 1 });
    expect(parts(back, 500)!.map(([box]) => box)).toEqual([
      [150, 0, 400, 1000],
      [0, 0, 180, 1000],
    ]);
  });

  it('matching marks down the join, inwards from both cut edges; the other marks stay with their part', () => {
    const tick = (x: number): Line => ({ kind: 'line', from: { x, y: 80 }, to: { x: x + 5, y: 80 } });
    const notches = [
      { edge: 'front', distance: 80, ticks: [tick(0)] },
      { edge: 'back', distance: 80, ticks: [tick(694)] },
    ];
    const [first, second] = piecedAlongGrain(piece(700, { notches }), 500, 15)!;
    const marks = ({ notches: own }: CutPiece) =>
      own.map(({ edge, distance, ticks }) => [
        edge,
        Math.round(distance),
        Math.round(ticks[0]!.from.x),
        Math.round(ticks[0]!.to.x),
      ]);
    // 1000 ÷ 450 is two: at thirds.
    expect(marks(first!)).toEqual([
      ['front', 80, 0, 5],
      ['join', 333, 500, 494],
      ['join', 667, 500, 494],
    ]);
    expect(marks(second!)).toEqual([
      ['back', 80, 694, 699],
      ['join', 333, 470, 476],
      ['join', 667, 470, 476],
    ]);
    // Where the grain line was, it stays; the other part has its own down its middle.
    expect([first!.piece.grain.from.x, second!.piece.grain.from]).toEqual([350, { x: 585, y: 250 }]);
    expect(second!.piece.grain.to.y).toBe(750);
    expect(first!.allowances.join).toBe(15);
  });
});

describe('outlines that are packed', () => {
  const circle: Curve[] = [
    { kind: 'arc', centre: { x: 0, y: 0 }, radius: 200, start: 0, sweep: 2 * Math.PI },
  ];
  const notched: Curve[] = outline([
    { x: 0, y: 0 },
    { x: 100, y: 0 },
    { x: 100, y: 50 },
    { x: 99.5, y: 52 },
    { x: 100, y: 54 },
    { x: 100, y: 200 },
    { x: 0, y: 200 },
  ]);

  it('few corners, none inside the true outline, none farther outside than a millimetre', () => {
    const ring = workingOutline(circle);
    expect(ring.length).toBeLessThan(trueOutline(circle).length / 5);
    for (const [i, from] of ring.entries()) {
      const to = ring[(i + 1) % ring.length]!;
      const away = Math.abs(from.x * to.y - from.y * to.x) / Math.hypot(to.x - from.x, to.y - from.y);
      // Chords of the true circle's polygon may cut 0.005 off it.
      expect(away).toBeGreaterThan(200 - 0.006);
      expect(Math.hypot(from.x, from.y)).toBeLessThan(201.01);
    }
    const xs = ring.map(({ x }) => x);
    expect([Math.min(...xs), Math.max(...xs)]).toEqual([expect.closeTo(-200, 2), expect.closeTo(200, 2)]);
  });

  it('a small hollow is bridged, and a box stays a box', () => {
    expect(workingOutline(notched)).toHaveLength(4);
    const box = workingOutline(outline(corners(5, 6, 70, 80)));
    expect(box).toHaveLength(4);
    for (const { x, y } of corners(5, 6, 70, 80))
      expect(box).toContainEqual({ x: expect.closeTo(x, 6), y: expect.closeTo(y, 6) });
  });
});

describe('names of lays, and cloth that no gown takes', () => {
  it('a cloth, or a cloth and its layer; never two alike', () => {
    const of = (cloth: string, layer?: string) => ({ cloth, layer });
    expect(layNames([of('crepe'), of('net', 'veil'), of('net', 'top')])).toEqual([
      'crepe',
      'net-veil',
      'net-top',
    ]);
    expect(layNames([of('net', 'veil'), of('net-veil'), of('net-veil-2')])).toEqual([
      'net-veil-3',
      'net-veil',
      'net-veil-2',
    ]);
  });

  it('area of all copies in all layers over the usable width', () => {
    const lay = (pieces: CutPiece[], layers = ['layer']) =>
      laysTooLong(
        {
          pieces,
          lays: [{ layers: layers.map((name) => ({ name })), facts: FACTS, cloth: 'calico', span: {} }],
        } as never,
        (mm) => `${mm}`,
      );
    // 900 wide: two pieces of 900 by 100 001 are over two hundred metres, by 99 999 they are not.
    const strip = (height: number, cut: 'pair' | 'single', copies?: number) =>
      flatPiece('a', corners(0, 0, 900, height), cut, copies === undefined ? {} : { copies });
    expect(lay([strip(100_001, 'pair')])[0]!.message).toContain('200002');
    expect(lay([strip(99_999, 'pair')])).toEqual([]);
    expect(lay([strip(50_001, 'single', 4)])).toHaveLength(1);
    expect(lay([strip(49_999, 'single', 4)])).toEqual([]);
    expect(lay([{ ...strip(50_001, 'pair'), layers: ['layer', 'other'] }], ['layer', 'other'])).toHaveLength(
      1,
    );
    expect(lay([{ ...strip(150_000, 'pair'), layers: ['third'] }])).toEqual([]);
  });
});
