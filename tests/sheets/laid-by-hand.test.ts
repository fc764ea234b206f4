import { describe, expect, it } from 'vitest';
import { boundsOfCurves } from '../../src/geometry/bounds.ts';
import { layOutGrid } from '../../src/sheets/lay-out-grid.ts';
import { layOutProjector } from '../../src/sheets/lay-out-projector.ts';
import { layOutRoll, whichFitRoll } from '../../src/sheets/lay-out-roll.ts';
import { layOutSheets } from '../../src/sheets/lay-out-sheets.ts';
import type { SheetPlan } from '../../src/sheets/sheet-plan.ts';
import { at, line, upright } from '../quads.ts';

/** Rectangles laid on A4, on a roll and on a projector's page: how many sheets, where, which way up, by sums. mm. */

const MARGINS = { left: 10, right: 10, top: 10, bottom: 10 };
const piece = (gore: string, width: number, height: number, own: object = {}) => ({
  ...upright(width, height, [0, 0, 0, 0], {
    piece: { gore, grain: line(at(width / 2, 0.2 * height), at(width / 2, 0.8 * height)), ...own },
  }),
  gore,
  labelAt: at(width / 2, height / 2),
});
const boxes = ({ pieces }: SheetPlan) =>
  pieces.map(({ cutPiece }) => boundsOfCurves(cutPiece.cutEdges.flatMap(({ curves }) => curves)));
/** Which way a piece's grain runs as it lies, degrees clockwise as drawn from downwards. */
const turns = ({ pieces }: SheetPlan) =>
  pieces.map(({ cutPiece, turned }) => {
    const { from, to } = cutPiece.piece.grain;
    return [turned, Math.round((Math.atan2(from.x - to.x, to.y - from.y) * 180) / Math.PI + 360) % 360];
  });

describe('on a roll', () => {
  // 620 less margins; 2000 less margins and the strip of 9 for a name.
  const options = (longest = 2000, own: object = {}) => ({
    paper: { name: 'roll:620', width: 620, height: 300, longest },
    margins: MARGINS,
    lap: 0,
    scale: { across: 1, down: 1 },
    ...own,
  });
  const two = [piece('a', 280, 800), piece('b', 280, 800)];

  it('side by side on one length that is cut off a millimetre past them', () => {
    const plan = layOutRoll(two, options());
    // The first place is 3 along: half of a gap past the clear millimetre.
    expect(plan.sheets).toEqual([
      {
        page: 2,
        row: 0,
        column: 0,
        label: 'A1',
        x: 0,
        y: 0,
        width: 600,
        height: expect.closeTo(804, 6),
        left: 10,
        bottom: 19,
        pageHeight: expect.closeTo(804 + 29, 6),
        pieces: [0, 1],
        neighbours: {},
      },
    ]);
    expect([plan.rows, plan.columns, plan.gridPerPiece, plan.areaBound, plan.gaps]).toEqual([1, 1, 2, 1, []]);
    for (const { left, right, top, bottom } of boxes(plan)) {
      expect([right - left, bottom - top]).toEqual([280, 800].map((own) => expect.closeTo(own, 6)));
      expect(left).toBeGreaterThanOrEqual(5 - 1e-6);
      expect(right).toBeLessThanOrEqual(600);
      expect([top, bottom]).toEqual([3, 803].map((own) => expect.closeTo(own, 6)));
    }
    const [a, b] = boxes(plan);
    expect(Math.max(b!.left - a!.right, a!.left - b!.right)).toBeGreaterThanOrEqual(4);
    for (const [said, own] of turns(plan)) expect(said).toBe(own);
    expect(plan.pieces.map(({ liesOn }) => liesOn)).toEqual([undefined, undefined]);
  });

  it('after others: in further columns, on further pages', () => {
    const plan = layOutRoll(two, options(), { columns: 3, pages: 5 });
    expect(plan.sheets[0]).toMatchObject({ page: 7, column: 3, label: 'A4', x: 1800 });
    for (const { left, right } of boxes(plan)) expect([left > 1800, right < 2400]).toEqual([true, true]);
  });

  it('on two lengths where one is too short, in the printer’s scale', () => {
    const three = [...two, piece('c', 280, 800)];
    const plan = layOutRoll(three, options(900));
    expect(plan.sheets.map(({ label, pieces }) => [label, pieces.length])).toEqual([
      ['A1', 2],
      ['A2', 1],
    ]);
    // 3 × 224,000 on 600 by 871.
    expect(plan.areaBound).toBe(2);
    expect(layOutRoll(three, options(2000)).areaBound).toBe(1);
    const scaled = layOutRoll(two, options(2000, { scale: { across: 1.01, down: 0.98 } }));
    expect(scaled.sheets[0]).toMatchObject({
      width: expect.closeTo(600 / 1.01, 6),
      pageHeight: expect.closeTo(804 * 0.98 + 29, 6),
    });
  });

  it('which lie whole on it: one that shares another’s sheets with that one', () => {
    const lower = piece('a', 280, 700);
    expect(whichFitRoll([...two, lower, piece('c', 700, 700), piece('d', 589.9, 1968.9)], options())).toEqual(
      [true, true, true, false, true],
    );
    expect(whichFitRoll([piece('d', 589.9, 1969.1)], options())).toEqual([false]);
    expect(whichFitRoll([piece('d', 590.1, 1900)], options())).toEqual([false]);
    // 1971 of paper at 0.98 are 2011 of pattern, 600 at 1.01 are 594.
    const scaled = options(2000, { scale: { across: 1.01, down: 0.98 } });
    expect(
      whichFitRoll([piece('d', 500, 2005), piece('e', 500, 2015), piece('f', 590, 1900)], scaled),
    ).toEqual([true, false, false]);
    const plan = layOutRoll([two[0]!, lower], options());
    expect(plan.pieces.map(({ liesOn }) => liesOn)).toEqual([undefined, 0]);
    expect(plan.gridPerPiece).toBe(1);
    const [long, short] = boxes(plan);
    expect(Math.abs(long!.left - short!.left)).toBeLessThan(1e-6);
    // They share the waist's end.
    expect(Math.min(Math.abs(long!.top - short!.top), Math.abs(long!.bottom - short!.bottom))).toBeLessThan(
      1e-6,
    );
    for (const [said, own] of turns(plan)) expect(said).toBe(own);
  });
});

describe('for a projector', () => {
  it.each([
    [1100, 4800, 1200],
    [1300, 1400, 1600],
    [1700, 1700, 2000],
    [4900, 4600, 4990],
  ])('%i by %i: a page %i wide', (width, height, page) => {
    const plan = layOutProjector([piece('a', width, height)]);
    expect(plan.paper).toMatchObject({ name: 'projector', width: page, longest: 4900 });
    expect(plan.sheets).toHaveLength(1);
  });

  it('all on one page, the narrowest that holds them', () => {
    const plan = layOutProjector([piece('a', 1000, 2000), piece('b', 1000, 2000), piece('c', 1000, 2000)]);
    // Three do not lie end to end on 4.9 m, and two side by side not on the 1960 that a page of 2000 leaves.
    expect([plan.paper.width, plan.sheets.length]).toEqual([2500, 1]);
  });
});

describe('on a grid of A4', () => {
  // 190 by 268.
  const options = (own: object = {}) => ({
    paper: { name: 'a4', width: 210, height: 297 },
    margins: MARGINS,
    lap: 0,
    scale: { across: 1, down: 1 },
    ...own,
  });

  it('counted by itself, by its area, and as it lies', () => {
    const one = layOutGrid([piece('a', 400, 500)], options());
    // 200,000 on 50,920; three by two alone, its outline alone on all of them.
    expect([one.areaBound, one.gridPerPiece, one.sheets.length]).toEqual([4, 6, 6]);
    expect([one.rows, one.columns]).toEqual([2, 3]);
    const small = layOutGrid([piece('a', 80, 100), piece('b', 80, 100)], options());
    expect([small.areaBound, small.gridPerPiece, small.sheets.length]).toEqual([1, 2, 1]);
    const scaled = layOutGrid([piece('a', 188, 100)], options({ scale: { across: 1.02, down: 1 } }));
    expect(scaled.sheets[0]).toMatchObject({ width: expect.closeTo(190 / 1.02, 6), height: 268 });
    expect(layOutGrid([], options())).toMatchObject({
      sheets: [],
      rows: 1,
      columns: 1,
      areaBound: 0,
      gridPerPiece: 0,
    });
  });

  it('pieces that differ at the hem lie on one another, the longest below, unless layers are apart', () => {
    const both = [piece('a', 150, 230), piece('a', 150, 250)];
    const plan = layOutGrid(both, options());
    expect(plan.pieces.map(({ liesOn }) => liesOn)).toEqual([1, undefined]);
    expect([plan.gridPerPiece, plan.sheets.length]).toEqual([1, 1]);
    expect(plan.sheets[0]!.pieces).toEqual([0, 1]);
    const apart = layOutGrid(both, options({ layersApart: true }));
    expect(apart.pieces.map(({ liesOn }) => liesOn)).toEqual([undefined, undefined]);
    expect([apart.gridPerPiece, apart.sheets.length]).toEqual([2, 2]);
    for (const [said, own] of [...turns(plan), ...turns(apart)]) expect(said).toBe(own);
  });

  it('where it lay before, where that is asked for', () => {
    const places = [{ piece: 'a  shell', turned: 0, x: 215, y: 301 }];
    const plan = layOutGrid([piece('a', 80, 100)], options({ places }));
    expect(boxes(plan)[0]).toMatchObject({ left: expect.closeTo(215, 3), top: expect.closeTo(301, 3) });
    expect(plan.sheets.map(({ row, column }) => [row, column])).toEqual([[1, 1]]);
    expect([plan.rows, plan.columns]).toEqual([2, 2]);
  });

  it('ends only: a sheet that shows a straight stretch alone is left out, and bridged by a note', () => {
    const long = [piece('a', 120, 1300)];
    const whole = layOutGrid(long, options());
    expect([whole.sheets.length, whole.gaps]).toEqual([5, []]);
    const ends = layOutGrid(long, options({ endsOnly: true }));
    expect(ends.sheets).toHaveLength(2);
    expect(new Set(ends.gaps.map(({ line: own }) => own))).toEqual(new Set(['cut', 'grain']));
    for (const gap of ends.gaps) expect(gap.length).toBeCloseTo(gap.alongGrain, 6);
  });
});

describe('on a roll, where some lie whole and some do not', () => {
  const options = {
    paper: { name: 'roll:620', width: 620, height: 300, longest: 1000 },
    margins: MARGINS,
    lap: 0,
    scale: { across: 1, down: 1 },
  };

  it('what is too large comes first, on lengths that are joined; the rest whole after it', () => {
    // 971 of each length; 700 wide is more than the 600 across it either way.
    const plan = layOutSheets([piece('a', 280, 800), piece('b', 700, 750), piece('c', 280, 700)], options);
    const on = plan.sheets.map(({ label, pieces, page }) => [label, pieces, page]);
    expect(on).toEqual([
      ['A1', [1], 2],
      ['A2', [1], 3],
      ['A3', [0, 2], 4],
    ]);
    expect([plan.columns, plan.rows, plan.gridPerPiece]).toEqual([3, 1, 4]);
    // Cut off a millimetre past the lowest that lies on either.
    const low = boxes(plan)[1]!.bottom;
    expect(plan.sheets.slice(0, 2).map(({ height }) => height)).toEqual(
      [low + 1, low + 1].map((own) => expect.closeTo(own, 6)),
    );
    expect(plan.sheets[0]!.pageHeight).toBeCloseTo(low + 1 + 29, 6);
    expect(plan.sheets[2]!.height).toBeCloseTo(804, 6);
    const [a, b, c] = boxes(plan);
    expect([a!.left > 1200, b!.right < 1200, c!.left > 1200]).toEqual([true, true, true]);
  });

  it('all whole, all large, and none', () => {
    expect(layOutSheets([piece('a', 280, 800)], options).sheets.map(({ label }) => label)).toEqual(['A1']);
    expect(layOutSheets([piece('b', 700, 750)], options).sheets.map(({ label }) => label)).toEqual([
      'A1',
      'A2',
    ]);
    expect(layOutSheets([], options).sheets).toEqual([]);
    const both = [piece('b', 700, 750), piece('b', 700, 700), piece('a', 280, 800)];
    const { pieces } = layOutSheets(both, options);
    expect(pieces.map(({ liesOn }) => liesOn)).toEqual([undefined, 0, undefined]);
    const turned = [both[2]!, both[0]!, both[1]!];
    expect(layOutSheets(turned, options).pieces.map(({ liesOn }) => liesOn)).toEqual([
      undefined,
      undefined,
      1,
    ]);
  });
});
