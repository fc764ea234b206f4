import { describe, expect, test } from 'vitest';
import type { CutPiece } from '../../src/draft/piece.ts';
import type { Line } from '../../src/geometry/curve.ts';
import { changedSheets } from '../../src/sheets/changed-sheets.ts';
import { essentialRuns, longGrain } from '../../src/sheets/essential-runs.ts';
import { gapsOf } from '../../src/sheets/gaps.ts';
import { gridSheets } from '../../src/sheets/grid-sheets.ts';
import { longChecks } from '../../src/sheets/long-checks.ts';
import { sheetFrame } from '../../src/sheets/sheet-frame.ts';
import { visitCells } from '../../src/sheets/touched-sheets.ts';
import { flatPiece } from '../lay/laid.ts';
import { rectangle } from '../lay/polygons.ts';
import { line } from '../line.ts';
import { upright } from '../quads.ts';
import { sectorPiece } from './sector-piece.ts';

/** What of a pattern is on which sheet, by hand or by dense samples; nothing is drafted or nested. mm. */

const CELL = { width: 190, height: 268 };

describe('the sheets that a line touches', () => {
  const visited = (points: readonly number[], reach: number, at = [0, 0]) => {
    const cells = new Set<string>();
    visitCells(Float64Array.from(points), at[0]!, at[1]!, CELL, reach, (row, column) => {
      cells.add(`${row} ${column}`);
      return true;
    });
    return [...cells].sort();
  };

  test.each([
    ['along the first row', [10, 10, 400, 10], 0, ['0 0', '0 1', '0 2']],
    ['the other way', [400, 10, 10, 10], 0, ['0 0', '0 1', '0 2']],
    ['down the first column', [10, 10, 10, 600], 0, ['0 0', '1 0', '2 0']],
    ['up it', [10, 600, 10, 10], 0, ['0 0', '1 0', '2 0']],
    ['within a hair of the next sheet at the right', [100, 10, 189.8, 10], 0.35, ['0 0', '0 1']],
    ['and short of it', [100, 10, 189.5, 10], 0.35, ['0 0']],
    ['within a hair of the one below', [10, 100, 10, 267.8], 0.35, ['0 0', '1 0']],
    ['of the one at the left', [190.2, 10, 300, 10], 0.35, ['0 0', '0 1']],
    ['of the one above', [10, 268.2, 10, 300], 0.35, ['0 0', '1 0']],
    // 380 by 536: two sheets each way, from corner to corner.
    ['slanting through a corner', [0, 536, 380, 0], 0, ['0 1', '0 2', '1 0', '1 1', '2 0']],
    ['two stretches', [10, 10, 10, 300, 200, 300], 0, ['0 0', '1 0', '1 1']],
  ])('%s', (_, points, reach, wanted) => expect(visited(points, reach)).toEqual(wanted));

  test('moved, and all that dense samples of a slanting line lie on', () => {
    const [x, y, toX, toY] = [-310, 1200, 770, -900];
    const samples = Array.from({ length: 20_001 }, (_, i) => {
      const [atX, atY] = [x + ((toX - x) * i) / 20_000 + 55, y + ((toY - y) * i) / 20_000 + 21];
      return `${Math.floor(atY / CELL.height)} ${Math.floor(atX / CELL.width)}`;
    });
    expect(visited([x, y, toX, toY], 0, [55, 21])).toEqual([...new Set(samples)].sort());
  });

  test('looks no further once it is told to stop', () => {
    let looks = 0;
    visitCells(Float64Array.from([10, 10, 900, 10]), 0, 0, CELL, 0, () => ++looks < 2);
    expect(looks).toBe(2);
  });
});

describe('straight stretches that no sheet shows', () => {
  const sides = (left: Line, right: Line, grain: Line) =>
    ({
      grain,
      cutPiece: {
        piece: { frontEdge: 'front', backEdge: 'back' },
        cutEdges: [
          { name: 'waist', curves: [line(50, 10, 150, 10)] },
          { name: 'back', curves: [right] },
          { name: 'hem', curves: [line(150, 1300, 50, 1300)] },
          { name: 'front', curves: [left] },
        ],
      },
    }) as never;

  test('how long along the line and along the grain, and from which sheet to which', () => {
    // Rows 1 and 2 are left out, from 268 to 804. The grain leans 3 in 4, so that 536 down it are 670 along.
    const piece = sides(line(50, 1300, 50, 10), line(150, 10, 150, 1300), line(20, 100, 620, 900));
    const shown = (row: number) => row === 0 || row >= 3;
    const gaps = gapsOf(piece, 7, CELL, shown);
    expect(gaps.map(({ line: own }) => own)).toEqual(['cut', 'cut', 'grain']);
    const [back, front, grain] = gaps;
    expect(back).toMatchObject({
      piece: 7,
      from: { x: 150, y: expect.closeTo(268, 9) },
      to: { x: 150, y: expect.closeTo(804, 9) },
      fromCell: [0, 0],
      toCell: [3, 0],
      length: expect.closeTo(536, 9),
      // 4 of 5 of it.
      alongGrain: expect.closeTo(428.8, 9),
    });
    // The other side runs upwards.
    expect(front).toMatchObject({ fromCell: [3, 0], toCell: [0, 0], alongGrain: expect.closeTo(428.8, 9) });
    // From 268 down, x is 20 + 3 × 42, to x = 20 + 3 × 176: columns 0 and 2.
    expect(grain).toMatchObject({
      from: { x: expect.closeTo(146, 9), y: expect.closeTo(268, 9) },
      to: { x: expect.closeTo(548, 9), y: expect.closeTo(804, 9) },
      fromCell: [0, 0],
      toCell: [3, 2],
      length: expect.closeTo(670, 9),
      alongGrain: expect.closeTo(670, 9),
    });
  });

  test('none where all is shown, nor after a corner that is too short to measure from', () => {
    const straight = line(150, 10, 150, 820);
    const piece = sides(straight, straight, straight);
    expect(gapsOf(piece, 0, CELL, () => true)).toEqual([]);
    // 16 of it lie on the last sheet, 820 − 804; 20 are the least.
    expect(gapsOf(piece, 0, CELL, (row) => row !== 1 && row !== 2)).toEqual([]);
    expect(gapsOf(piece, 0, CELL, (row) => row !== 1)).toHaveLength(3);
  });
});

describe('what must be shown', () => {
  const corners = rectangle(400, 1000);
  const piece = flatPiece('front', corners, 'pair');

  test('of a straight side its first and last 60, of all else the whole', () => {
    const { cut } = essentialRuns(piece);
    const lengths = cut.flat().map((curve) => {
      const { from, to } = curve as Line;
      return Math.round(Math.hypot(to.x - from.x, to.y - from.y));
    });
    expect(lengths.toSorted((a, b) => a - b)).toEqual([60, 60, 60, 60, 400, 400]);
  });

  test('the grain line runs on to 30 within the cut line', () => {
    const { from, to } = longGrain(piece);
    const ys = corners.map(({ y }) => y);
    expect([from.y, to.y].toSorted((a, b) => a - b)).toEqual(
      [Math.min(...ys) + 30, Math.max(...ys) - 30].map((y) => expect.closeTo(y, 6)),
    );
    expect(from.x).toBeCloseTo(piece.piece.grain.from.x, 9);
    // The same way as the piece's own.
    expect(Math.sign(to.y - from.y)).toBe(Math.sign(piece.piece.grain.to.y - piece.piece.grain.from.y));
  });

  test('of the stretch that its middle lies in, where a slit parts it', () => {
    const whole = upright(400, 1000, [0, 0, 0, 0], { piece: { grain: line(200, 100, 200, 900) } });
    const slit = (top: number, foot: number) => {
      const ring = [
        [0, 1000],
        [0, foot],
        [300, foot],
        [300, top],
        [0, top],
        [0, 0],
      ] as const;
      const curves = ring.slice(1).map(([x, y], i) => line(ring[i]![0], ring[i]![1], x, y));
      return { ...whole, cutEdges: whole.cutEdges.map((edge, i) => (i === 3 ? { ...edge, curves } : edge)) };
    };
    const ends = (piece: CutPiece) => [longGrain(piece).from.y, longGrain(piece).to.y];
    // Its middle is at 500.
    expect(ends(slit(600, 700))).toEqual([30, 570].map((own) => expect.closeTo(own, 6)));
    expect(ends(slit(300, 400))).toEqual([430, 970].map((own) => expect.closeTo(own, 6)));
  });

  test('on the bias too; where its middle lies off the piece, as far as that can be', () => {
    const near = (x: number, y: number) => ({ x: expect.closeTo(x, 6), y: expect.closeTo(y, 6) });
    // Of 45°: 30 along it is 21.2 across and down. The cut line is from -15 to 415.
    const inset = 30 / Math.SQRT2;
    const onBias = (grain: Line) => longGrain(upright(400, 1000, undefined, { piece: { grain } }));
    expect(onBias(line(100, 300, 300, 500))).toEqual({
      kind: 'line',
      from: near(-15 + inset, 185 + inset),
      to: near(415 - inset, 615 - inset),
    });
    expect(onBias(line(100, 300, 300, 180))).toMatchObject({
      from: near(-15 + 30 * Math.cos(Math.atan2(120, 200)), 369 - 30 * Math.sin(Math.atan2(120, 200))),
    });
    expect(onBias(line(500, 300, 600, 400))).toMatchObject({
      from: near(415 + inset, 215 + inset),
      to: near(600, 400),
    });
    expect(onBias(line(-200, 300, -100, 400))).toMatchObject({
      from: near(-200, 300),
      to: near(-15 - inset, 485 - inset),
    });
  });
});

describe('long checks', () => {
  const gore = (name: string, top: number, long: number, layers: string[]) => ({
    cutPiece: sectorPiece({
      gore: name,
      layers,
      top,
      front: 0.2,
      back: 0.2,
      frontLength: long - 11,
      backLength: long,
    }),
  });

  test('the first front edge, the widest hem straight across, and each back edge; of two layers the longer', () => {
    const pieces = [
      gore('front', 80, 900, ['lining']),
      gore('front', 80, 930, ['shell']),
      gore('back', 200, 1200, ['shell']),
    ];
    const checks = longChecks(pieces as never);
    expect(checks.map(({ piece, edge, along }) => [piece, edge, along])).toEqual([
      [1, 'before/front', 'seam'],
      [2, 'hem', 'chord'],
      [1, 'front/after', 'seam'],
      [2, 'back/after', 'seam'],
    ]);
    expect(checks.map(({ length }) => length)).toEqual([
      expect.closeTo(919, 6),
      // From corner to corner: radii 500 + 1189 and 500 + 1200 at 0.4 between them, by the cosine rule.
      expect.closeTo(Math.sqrt(1689 ** 2 + 1700 ** 2 - 2 * 1689 * 1700 * Math.cos(0.4)), 6),
      expect.closeTo(930, 6),
      expect.closeTo(1200, 6),
    ]);
    expect(longChecks(pieces as never, 2)).toHaveLength(2);
  });
});

describe('sheets of a grid', () => {
  const frame = sheetFrame(
    { name: 'x', width: 300, height: 400 },
    { left: 11, right: 13, top: 17, bottom: 19 },
    6,
  );

  test('a frame is what margins, lap and the strip for its name leave', () => {
    // 300 − 11 − 13 − 6; the strip below is 9 at least: 400 − 17 − 19 − 9.
    expect(frame).toEqual({ left: 11, bottom: 28, width: 270, height: 355, right: 6, below: 9 });
    const lapped = sheetFrame(
      { name: 'x', width: 300, height: 400 },
      { left: 11, right: 13, top: 17, bottom: 19 },
      12,
    );
    expect([lapped.below, lapped.bottom, lapped.height]).toEqual([12, 31, 352]);
  });

  test('down each column, then on; each with its pieces and its neighbours', () => {
    const used = [new Set(['0 1', '0 0', '1 0']), new Set(['1 0', '1 1'])];
    const sheets = gridSheets(used, CELL, frame, 400);
    expect(
      sheets.map(({ page, label, x, y, pieces, neighbours }) => ({ page, label, x, y, pieces, neighbours })),
    ).toEqual([
      { page: 2, label: 'A1', x: 0, y: 0, pieces: [0], neighbours: { right: 'A2', below: 'B1' } },
      { page: 3, label: 'B1', x: 0, y: 268, pieces: [0, 1], neighbours: { above: 'A1', right: 'B2' } },
      { page: 4, label: 'A2', x: 190, y: 0, pieces: [0], neighbours: { left: 'A1', below: 'B2' } },
      { page: 5, label: 'B2', x: 190, y: 268, pieces: [1], neighbours: { left: 'B1', above: 'A2' } },
    ]);
    expect(sheets[0]).toMatchObject({ left: 11, bottom: 28, pageHeight: 400, width: 190, height: 268 });
  });
});

describe('sheets that have to be printed again', () => {
  const frame = sheetFrame(
    { name: 'x', width: 300, height: 400 },
    { left: 5, right: 5, top: 5, bottom: 5 },
    0,
  );
  const plan = (cutPiece: CutPiece, used: string[], own: object = {}) => ({
    paper: 'x',
    frame,
    pieces: [{ cutPiece, grain: line(60, 100, 60, 400), turned: 0 }],
    sheets: gridSheets([new Set(used)], CELL, frame, 400),
    ...own,
  });
  const at = (width: number, height: number) => flatPiece('front', rectangle(width, height), 'pair');
  const compared = (old: object, now: object, remarks = ['', '']) =>
    changedSheets(
      { plan: old, remarksOn: () => [remarks[0]] } as never,
      { plan: now, remarksOn: () => [remarks[1]] } as never,
    );
  const ALL = ['0 0', '0 1', '1 0', '1 1'];

  test('none where nothing changed, or by less than prints otherwise', () => {
    expect(compared(plan(at(300, 500), ALL), plan(at(300, 500), ALL))).toEqual({
      again: [],
      gone: [],
      count: 4,
    });
    expect(compared(plan(at(300, 500), ALL), plan(at(300.05, 500), ALL)).again).toEqual([]);
  });

  test('a right side that moved: those that show it, or the waist and hem up to it', () => {
    expect(compared(plan(at(300, 500), ALL), plan(at(301, 500), ALL)).again).toEqual(['A2', 'B2']);
    // Lower at the hem: both below.
    expect(compared(plan(at(300, 500), ALL), plan(at(300, 504), ALL)).again).toEqual(
      expect.arrayContaining(['B1', 'B2']),
    );
  });

  test('one that is gone, one that is new, and all where the grid is another', () => {
    const narrow = plan(at(150, 500), ['0 0', '1 0']);
    expect(compared(plan(at(300, 500), ALL), narrow)).toMatchObject({ gone: ['A2', 'B2'], count: 2 });
    expect(compared(narrow, plan(at(300, 500), ALL)).again).toEqual(['A1', 'B1', 'A2', 'B2']);
    const other = plan(at(300, 500), ALL, { paper: 'y' });
    expect(compared(plan(at(300, 500), ALL), other).again).toHaveLength(4);
  });

  test('a mark more, a mark less, a mark that runs on: the sheets that it lies on', () => {
    const marked = (...marks: Line[]) =>
      plan({ ...at(300, 500), marks: marks.map((own) => ({ name: 'fold-line', curves: [own] })) }, ALL);
    // On the first sheet alone, and from the first row into the second.
    const [here, on] = [line(50, 60, 120, 90), line(50, 60, 90, 400)];
    expect(compared(marked(), marked(here)).again).toEqual(['A1']);
    expect(compared(marked(here), marked()).again).toEqual(['A1']);
    expect(compared(marked(here), marked(here)).again).toEqual([]);
    expect(compared(marked(on), marked(line(50, 60, 82, 332))).again).toEqual(['B1']);
    expect(compared(marked(line(50, 60, 82, 332)), marked(on)).again).toEqual(['B1']);
    // Up and to the left it is the same line.
    expect(compared(marked(on), marked(line(90, 400, 50, 60))).again).toEqual([]);
    // In the second column, and beside it.
    const aside = (x: number) => line(x, 60, x + 20, 90);
    expect(compared(marked(aside(200)), marked(aside(203))).again).toEqual(['A2']);
    expect(compared(marked(aside(165)), marked(aside(180))).again).toEqual(['A1', 'A2']);
  });

  test('words on a piece: the sheet that they stand on alone', () => {
    const { x, y } = at(300, 500).labelAt;
    const label = gridSheets([new Set(ALL)], CELL, frame, 400).find(
      (sheet) => x >= sheet.x && x <= sheet.x + sheet.width && y >= sheet.y && y <= sheet.y + sheet.height,
    )!;
    expect(compared(plan(at(300, 500), ALL), plan(at(300, 500), ALL), ['one', 'other']).again).toEqual([
      label.label,
    ]);
    const thrice = { ...at(300, 500), layers: ['other'] };
    expect(compared(plan(at(300, 500), ALL), plan(thrice, ALL)).again).toEqual([label.label]);
  });
});
