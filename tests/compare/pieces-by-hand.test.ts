import { describe, expect, it } from 'vitest';
import { comparePiece } from '../../src/compare/compare-piece.ts';
import { at, line, quad, upright } from '../quads.ts';

/** Quadrilaterals laid on quadrilaterals: what comes off, what is left, where, by subtraction. mm. */

const near = (value: number, places = 2) => expect.closeTo(value, places);
const stays = { x: 0, y: 0 };
const notch = (edge: string, distance: number) => ({ edge, distance, ticks: [] });
const mark = (name: string, ...ends: readonly [number, number][]) => ({
  name,
  curves: ends.slice(1).map(([x, y], i) => line(at(ends[i]![0], ends[i]![1]), at(x, y))),
});
const edgesOf = ({ edges }: ReturnType<typeof comparePiece>) =>
  Object.fromEntries(edges.map(({ edge, ...own }) => [edge, own]));

const OLD = upright(200, 800);

describe('what comes off', () => {
  it('at each edge its own: the sides from the waist, waist and hem from the front edge', () => {
    // In by 4 at the front's top and 9 at its foot, 6 and 3 at the back, down by 5, up by 20 at the front and 12 at the back.
    const now = quad([at(4, 5), at(194, 5), at(197, 788), at(9, 780)]);
    const found = comparePiece(OLD, now);
    expect(found).toMatchObject({ verdict: 're-mark', shift: stays, slid: stays, marks: ['seam-line'] });
    const edges = edgesOf(found);
    expect(edges.waist).toEqual({
      comesOff: { most: near(5), least: near(5), at: expect.any(Number) },
      from: 'front/side',
    });
    // At the seam line's corners the allowances beyond are measured square to the new line, a hair more than 12 and 20.
    expect(edges.hem).toEqual({
      comesOff: { most: near(20, 0), least: near(12, 0), at: near(0, 6) },
      from: 'front/side',
    });
    expect(edges['front/side']).toEqual({
      comesOff: { most: near(9, 0), least: near(4, 0), at: near(Math.hypot(5, 775), 6) },
    });
    expect(edges['side/back']).toEqual({ comesOff: { most: near(6, 0), least: near(3, 0), at: near(0, 6) } });
    expect(found.amount).toBe(found.edges.find(({ edge }) => edge === 'hem')?.comesOff?.most);
  });

  it('most where it is most, in the middle of an edge too, and from the left along waist and hem', () => {
    // The old hem hangs down in a point 150 from the left, 30 lower.
    const pointed = {
      ...OLD,
      cutEdges: OLD.cutEdges.map((edge, i) =>
        i === 2
          ? { ...edge, curves: [line(at(215, 815), at(150, 845)), line(at(150, 845), at(-15, 815))] }
          : edge,
      ),
    };
    const { verdict, edges, amount } = comparePiece(pointed, OLD);
    expect(verdict).toBe('re-mark');
    // Looked at every four millimetres; at the left end 15/165 of the point.
    expect(edges).toEqual([
      {
        edge: 'hem',
        comesOff: { most: near(29.6, 0), least: near(30 / 11), at: near(149, -1) },
        from: 'front/side',
      },
    ]);
    expect(amount).toBe(edges[0]?.comesOff?.most);
  });

  it('nothing, where it is less than a line stays', () => {
    expect(comparePiece(OLD, upright(200, 800 - 0.04))).toEqual({
      verdict: 'same',
      shift: stays,
      slid: stays,
      edges: [],
      marks: [],
      amount: 0,
    });
    expect(comparePiece(OLD, upright(200, 800 - 0.06)).verdict).toBe('re-mark');
    // Narrower allowances on seam lines that stay.
    const narrow = comparePiece(OLD, upright(200, 800, [15, 15, 9, 15]));
    expect(narrow).toMatchObject({ verdict: 're-mark', marks: [], amount: near(6) });
    expect(edgesOf(narrow)).toEqual({
      hem: { comesOff: { most: near(6), least: near(6), at: expect.any(Number) }, from: 'front/side' },
    });
  });
});

describe('what is left', () => {
  it.each([
    // Let down, let out at the back: so much of 15 is left; at a quarter inch the limit.
    ['hem', upright(200, 805), 10, { from: 'front/side' }],
    ['side/back', upright(204, 800), 11, {}],
    ['waist', upright(200, 803, undefined, {}, [0, -3]), 12, { from: 'front/side' }],
    ['front/side', upright(207, 800, undefined, {}, [-7, 0]), 8, {}],
  ])('%s', (edge, now, least, more) => {
    const found = comparePiece(OLD, now);
    expect(found).toMatchObject({ verdict: 'let-out', shift: stays, slid: stays, marks: ['seam-line'] });
    expect(edgesOf(found)).toEqual({
      [edge]: { left: { wanted: 15, least: near(least), at: expect.any(Number) }, ...more },
    });
    expect(found.amount).toBeCloseTo(least, 2);
  });

  it('its least is where the new line goes out farthest, the shortest of all edges is told', () => {
    // Out at the back by 0 above and 8 below; the hem lower by 3.
    const found = comparePiece(OLD, quad([at(0, 0), at(200, 0), at(208, 803), at(0, 803)], [15, 15, 14, 15]));
    expect(found.verdict).toBe('let-out');
    const edges = edgesOf(found);
    // Clear of the corner of 15 mm: 8·788/803 of it, nearly.
    expect(edges['side/back']).toEqual({
      left: { wanted: 15, least: near(15 - (8 * 788) / 803, 1), at: near(788, -1) },
    });
    expect(edges.hem).toMatchObject({ left: { wanted: 14, least: near(12) }, from: 'front/side' });
    expect(found.amount).toBe(edges['side/back']?.left?.least);
  });

  it('what comes off elsewhere is told beside it, and is no shortage', () => {
    const found = comparePiece(OLD, upright(204, 790));
    expect(found).toMatchObject({ verdict: 'let-out', amount: near(11) });
    expect(edgesOf(found)).toEqual({
      'side/back': { left: { wanted: 15, least: near(11), at: expect.any(Number) } },
      hem: { comesOff: { most: near(10), least: near(10), at: expect.any(Number) }, from: 'front/side' },
    });
    // Lacking at one edge, and long at another: the lack alone says how much.
    const short = comparePiece(OLD, upright(231, 790));
    expect(short).toMatchObject({ verdict: 're-cut', amount: near(16 + 6 - 6, 0) });
  });

  it('is slid where that makes it enough: up or across as little as does', () => {
    // 12 lower leaves 3 at the hem; slid up by 3 to 6, with 12 at the waist.
    const lower = comparePiece(OLD, upright(200, 812));
    expect(lower).toMatchObject({
      verdict: 'let-out',
      slid: { y: near(-3, 1) },
      amount: near(6, 1),
    });
    expect(lower.shift).toEqual(lower.slid);
    // 11 wider at the back leaves 4; slid to the front by 2.
    const wider = comparePiece(OLD, upright(211, 800));
    expect(wider).toMatchObject({
      verdict: 'let-out',
      slid: { x: near(-2, 1) },
      amount: near(6, 1),
    });
    // Smaller than its cloth but lying elsewhere: slid as far as it goes in.
    const aside = comparePiece(OLD, upright(150, 700, undefined, {}, [60, 20]));
    expect(aside).toMatchObject({ verdict: 're-mark', slid: { x: near(-10, 1) } });
  });

  it('cut again where it cannot be sewn: how much is lacking, and the seam line outside', () => {
    // 19 too long in all, 12 of it may be had: 6 at either end.
    const longer = comparePiece(upright(200, 800, [15, 15, 15, 15]), upright(200, 819));
    expect(longer).toMatchObject({ verdict: 're-cut', shift: stays, slid: stays });
    // Unslid the hem runs out by 4.
    expect(edgesOf(longer)).toEqual({
      hem: {
        left: { wanted: 15, least: near(-4), at: expect.any(Number) },
        tooLittle: true,
        from: 'front/side',
      },
    });
    expect(longer.amount).toBeCloseTo(4, 2);
    // 12 too wide where 15 and 5 were left: 3 more than can be had; told for the edge that lacks, unslid.
    const wide = comparePiece(upright(200, 800, [15, 15, 15, 5]), upright(213, 800, [15, 15, 15, 15]));
    expect(wide.verdict).toBe('re-cut');
    expect(edgesOf(wide)).toEqual({
      'side/back': { left: { wanted: 15, least: near(2), at: expect.any(Number) }, tooLittle: true },
      'front/side': { left: { wanted: 15, least: near(5), at: expect.any(Number) }, tooLittle: true },
    });
    expect(wide.amount).toBeCloseTo(4, 2);
  });

  it('a rough cut is wanted too, at the hem alone', () => {
    const rough = (height: number, roughCut: number) => {
      const piece = upright(200, height, [15, 15, 15 + roughCut, 15]);
      return { ...piece, roughCut, allowances: { ...piece.allowances, hem: 15 } };
    };
    const { verdict, edges } = comparePiece(rough(800, 20), rough(810, 20));
    expect(verdict).toBe('let-out');
    expect(edges).toEqual([
      { edge: 'hem', left: { wanted: 35, least: near(25), at: expect.any(Number) }, from: 'front/side' },
    ]);
  });

  it('a narrow allowance needs three quarters of itself: 3 of 4 are enough, 2.9 are not', () => {
    const narrow = (height: number) => upright(200, height, [4, 15, 4, 15]);
    expect(comparePiece(narrow(800), narrow(801.9)).verdict).toBe('let-out');
    expect(comparePiece(narrow(800), narrow(802.2))).toMatchObject({
      verdict: 're-cut',
      amount: near(1.2, 1),
    });
  });

  it('only a corner is missing: told at its edge, with what is missing of it', () => {
    // The old cloth has its lower right corner cut off, 10 mm along either edge.
    const clipped = {
      ...OLD,
      cutEdges: OLD.cutEdges.map((edge, i) => {
        if (i === 1)
          return { ...edge, curves: [line(at(215, -15), at(215, 805)), line(at(215, 805), at(205, 815))] };
        return i === 2 ? { ...edge, curves: [line(at(205, 815), at(-15, 815))] } : edge;
      }),
    };
    const { verdict, edges } = comparePiece(clipped, OLD);
    expect(verdict).toBe('let-out');
    // The corner lies 10/√2 beyond the cut.
    expect(edges).toEqual([
      {
        edge: 'side/back',
        left: { wanted: 15, least: near(15 - 10 / Math.SQRT2), at: near(830, 6) },
        corner: true,
      },
    ]);
  });
});

describe('on the fold', () => {
  const onFold = (width: number, x = 0, y = 0, height = 800) =>
    upright(
      width,
      height,
      [15, 15, 15, 15],
      { piece: { cut: 'on-fold' }, names: ['waist', 'front/side', 'hem', 'fold'] },
      [x, y],
    );

  it('fold lies on fold, wherever each is drawn, and it is slid only along it', () => {
    expect(comparePiece(onFold(100, 40), onFold(100, 70))).toMatchObject({
      verdict: 'same',
      shift: { x: -30, y: 0 },
      slid: stays,
    });
    const wider = comparePiece(onFold(100, 40), onFold(106, 70));
    expect(wider).toMatchObject({ verdict: 'let-out', shift: { x: -30, y: 0 }, amount: near(9) });
    expect(edgesOf(wider)).toEqual({
      'front/side': { left: { wanted: 15, least: near(9), at: expect.any(Number) } },
    });
    const longer = comparePiece(onFold(100, 40), onFold(100, 70, 0, 812));
    expect(longer).toMatchObject({
      verdict: 'let-out',
      shift: { x: -30, y: near(-3, 1) },
      slid: { x: 0, y: near(-3, 1) },
    });
    // Twelve wider on the fold is lacking at either side of it, and no sliding helps.
    expect(comparePiece(onFold(100), onFold(112))).toMatchObject({ verdict: 're-cut', amount: near(3) });
  });

  it('a whole one is cut from both halves of it, one of a pair from a half', () => {
    const whole = upright(
      200,
      800,
      undefined,
      { names: ['waist', 'front/side', 'hem', 'centre'] },
      [-100, 0],
    );
    expect(comparePiece(onFold(100), whole).verdict).not.toBe('re-cut');
    const half = (piece: object) =>
      upright(100, 800, [15, 15, 15, 0], { piece, names: ['waist', 'front/side', 'hem', 'fold'] });
    expect(comparePiece(onFold(100), half({ cut: 'pair' })).verdict).toBe('same');
    expect(comparePiece(onFold(100), { ...whole, piece: { ...whole.piece, cut: 'pair' } }).verdict).toBe(
      're-cut',
    );
  });
});

describe('marks', () => {
  const withNotches = (...notches: ReturnType<typeof notch>[]) => ({ ...OLD, notches });
  const [front, back] = ['front/side', 'side/back'];
  it.each([
    ['none moved', [notch(front!, 100), notch(back!, 200)], [notch(back!, 200), notch(front!, 100.04)], []],
    ['one moved', [notch(front!, 100)], [notch(front!, 100.06)], ['notches']],
    ['to the other side', [notch(front!, 100)], [notch(back!, 100)], ['notches']],
    ['one more', [notch(front!, 100)], [notch(front!, 100), notch(front!, 150)], ['notches']],
    [
      'the lower of two',
      [notch(front!, 100), notch(front!, 300)],
      [notch(front!, 100), notch(front!, 305)],
      ['notches'],
    ],
    [
      'exchanged at a side',
      [notch(front!, 100), notch(back!, 200)],
      [notch(front!, 200), notch(back!, 100)],
      ['notches'],
    ],
  ])('notches: %s', (_, before, after, marks) => {
    expect(comparePiece(withNotches(...before), withNotches(...after))).toMatchObject({
      verdict: 'same',
      marks,
      amount: 0,
    });
  });

  it.each([
    ['where it was', mark('fold-line', [20, 0], [20, 800]), []],
    ['elsewhere above', mark('fold-line', [20.06, 0], [20, 800]), ['folds']],
    ['elsewhere below', mark('fold-line', [20, 0], [20, 799.94]), ['folds']],
    ['by another name', mark('tuck-line', [20, 0], [20, 800]), ['folds']],
    ['in two parts from end to end', mark('fold-line', [20, 0], [25, 400], [20, 800]), []],
  ])('folds: %s', (_, after, marks) => {
    const folded = { ...OLD, marks: [mark('fold-line', [20, 0], [20, 800]), mark('hem', [0, 0], [1, 1])] };
    const found = comparePiece(folded, { ...OLD, marks: [after] });
    expect(found).toMatchObject({ marks, verdict: marks.length === 0 ? 'same' : 're-mark' });
    expect(comparePiece(folded, { ...OLD, marks: [after, mark('tuck-line', [1, 1], [2, 2])] }).marks).toEqual(
      ['folds'],
    );
  });

  it('a piece that was cut on the fold has its notches on both sides of the opened one, each once', () => {
    const fold = upright(100, 800, [15, 15, 15, 15], {
      piece: { cut: 'on-fold' },
      names: ['waist', 'front/side', 'hem', 'fold'],
      notches: [notch('front/side', 100), notch('front/side', 300)],
    });
    const opened = (...notches: ReturnType<typeof notch>[]) =>
      upright(
        200,
        800,
        undefined,
        { piece: { middle: 'front' }, names: ['waist', 'left', 'hem', 'right'], notches },
        [-100, 0],
      );
    const both = [notch('left', 100), notch('right', 100), notch('right', 300), notch('left', 300)];
    expect(comparePiece(fold, opened(...both)).marks).not.toContain('notches');
    expect(comparePiece(fold, opened(...both.slice(0, 2))).marks).toContain('notches');
    // The same marks on a piece that never lay on the fold are other marks.
    expect(
      comparePiece({ ...fold, piece: { ...fold.piece, cut: 'single' } }, opened(...both)).marks,
    ).toContain('notches');
  });

  it('folds of a piece that lies elsewhere are looked for where it lies', () => {
    const own = (x: number) => ({
      ...upright(
        100,
        800,
        [15, 15, 15, 15],
        { piece: { cut: 'on-fold' }, names: ['waist', 'front/side', 'hem', 'fold'] },
        [x, 0],
      ),
      marks: [mark('fold-line', [x + 20, 0], [x + 20, 800])],
    });
    expect(comparePiece(own(40), own(70))).toMatchObject({ verdict: 'same', marks: [] });
  });
});
