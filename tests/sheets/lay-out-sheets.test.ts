import { booleanOp, ClipType, FillRule } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CutPiece } from '../../src/draft/piece.ts';
import { flattenedRun } from '../../src/geometry/flatten.ts';
import { lengthOfRun } from '../../src/geometry/length.ts';
import { sheetLabel } from '../../src/sheets/grid-sheets.ts';
import { hemPartners } from '../../src/sheets/hem-partners.ts';
import { layOutSheets } from '../../src/sheets/lay-out-sheets.ts';
import { longChecks } from '../../src/sheets/long-checks.ts';
import { PAPERS, paperNamed } from '../../src/sheets/paper.ts';
import { evenly } from '../evenly.ts';
import { flatPiece } from '../lay/laid.ts';
import { rectangle } from '../lay/polygons.ts';
import { lanternGores, sectorPiece } from './sector-piece.ts';

const A4 = {
  paper: paperNamed('a4')!,
  margins: { left: 10, right: 10, top: 10, bottom: 10 },
  lap: 0,
  scale: { across: 1, down: 1 },
};

const outline = (piece: CutPiece) =>
  flattenedRun(
    piece.cutEdges.flatMap((edge) => edge.curves),
    0.05,
  );

/** Area that two outlines share, mm², by a polygon library on micrometres. */
function shared(a: CutPiece, b: CutPiece): number {
  const path = (piece: CutPiece) => [
    outline(piece).map(({ x, y }) => ({ x: Math.round(x * 1000), y: Math.round(y * 1000) })),
  ];
  const common = booleanOp(ClipType.Intersection, path(a), path(b), FillRule.NonZero);
  return common.reduce((sum, ring) => {
    const twice = ring.reduce((part, point, index) => {
      const next = ring[(index + 1) % ring.length]!;
      return part + point.x * next.y - next.x * point.y;
    }, 0);
    return sum + Math.abs(twice) / 2 / 1e6;
  }, 0);
}

const someGore = fc.record({
  top: evenly(60, 300),
  front: evenly(0.01, 0.5),
  back: evenly(0.01, 0.5),
  frontLength: evenly(100, 1500),
  backLength: evenly(100, 1500),
});

test('the measure of overlap sees one', () => {
  const [, piece] = lanternGores();
  // Two rings of the sector, 15 mm of allowance round it: a little over a quarter of a square metre.
  expect(shared(piece!, piece!)).toBeGreaterThan(2e5);
});

test('pieces never overlap, every sheet has a piece, and each piece keeps its shape', () => {
  fc.assert(
    fc.property(fc.array(someGore, { minLength: 1, maxLength: 7 }), (measures) => {
      const pieces = measures.map((own, index) => sectorPiece({ ...own, gore: `g${index}`, allowance: 10 }));
      const plan = layOutSheets(pieces, A4);
      expect(plan.pieces).toHaveLength(pieces.length);
      for (const [index, { cutPiece }] of plan.pieces.entries()) {
        expect(cutPiece.gore).toBe(`g${index}`);
        for (const [edge, moved] of cutPiece.piece.edges.entries()) {
          expect(lengthOfRun(moved.curves)).toBeCloseTo(
            lengthOfRun(pieces[index]!.piece.edges[edge]!.curves),
            6,
          );
        }
        for (const other of plan.pieces.slice(0, index)) expect(shared(cutPiece, other.cutPiece)).toBe(0);
        for (const point of outline(cutPiece)) {
          const on = plan.sheets.some(
            (sheet) =>
              point.x >= sheet.x &&
              point.x <= sheet.x + sheet.width &&
              point.y >= sheet.y &&
              point.y <= sheet.y + sheet.height &&
              sheet.pieces.includes(index),
          );
          expect(on).toBe(true);
        }
      }
    }),
    { numRuns: 25, seed: 11 },
  );
});

describe('the grid', () => {
  const plan = layOutSheets(lanternGores(), A4);

  test('begins at the first row and column, and its frames meet without lapping', () => {
    expect(Math.min(...plan.sheets.map((sheet) => sheet.row))).toBe(0);
    expect(Math.min(...plan.sheets.map((sheet) => sheet.column))).toBe(0);
    for (const sheet of plan.sheets) {
      expect(sheet.x).toBeCloseTo(sheet.column * sheet.width, 9);
      expect(sheet.y).toBeCloseTo(sheet.row * sheet.height, 9);
      expect(sheet.left).toBeGreaterThanOrEqual(10);
      expect(sheet.bottom).toBeGreaterThanOrEqual(10);
      expect(sheet.left + sheet.width).toBeLessThanOrEqual(200);
      expect(sheet.bottom + sheet.height).toBeLessThanOrEqual(287);
    }
  });

  test('names neighbours both ways', () => {
    const opposite = { left: 'right', right: 'left', above: 'below', below: 'above' } as const;
    for (const sheet of plan.sheets) {
      for (const side of ['left', 'right', 'above', 'below'] as const) {
        const label = sheet.neighbours[side];
        if (label === undefined) continue;
        const other = plan.sheets.find((one) => one.label === label)!;
        expect(other.neighbours[opposite[side]]).toBe(sheet.label);
      }
    }
  });

  test('takes at most four fifths of the sheets of a plain grid for each piece', () => {
    expect(plan.sheets.length).toBeLessThanOrEqual(0.8 * plan.gridPerPiece);
  });
});

test('rows are letters and columns numbers', () => {
  expect([
    sheetLabel(0, 0),
    sheetLabel(2, 3),
    sheetLabel(25, 9),
    sheetLabel(26, 0),
    sheetLabel(27, 1),
  ]).toEqual(['A1', 'C4', 'Z10', 'AA1', 'AB2']);
});

test('layers that differ only at the hem lie on one another, others do not', () => {
  const shell = lanternGores(['shell']);
  const lining = lanternGores(['lining'], 20);
  const wider = sectorPiece({
    gore: 'side',
    top: 88,
    front: 0.17,
    back: 0.17,
    frontLength: 1060,
    backLength: 1120,
  });
  expect(hemPartners([...shell, ...lining, wider])).toEqual([[0, 5], [1, 6], [2, 7], [3, 8], [4, 9], [10]]);
  const plan = layOutSheets([...lining, ...shell], A4);
  expect(plan.sheets.length).toBe(layOutSheets(shell, A4).sheets.length);
  expect(plan.pieces.map(({ liesOn }) => liesOn)).toEqual([5, 6, 7, 8, 9, ...Array(5).fill(undefined)]);
  expect(layOutSheets([...lining, ...shell], { ...A4, layersApart: true }).sheets.length).toBeGreaterThan(
    1.6 * plan.sheets.length,
  );
});

test('long checks are the seam lines themselves', () => {
  const plan = layOutSheets(lanternGores(), A4);
  const checks = longChecks(plan.pieces);
  // Lengths as the gores were made.
  expect(checks.find(({ edge }) => edge === 'fold')!.length).toBeCloseTo(1015, 6);
  expect(checks.find(({ edge }) => edge === 'back/after')!.length).toBeCloseTo(1760, 6);
  expect(checks.filter(({ along }) => along === 'chord')).toHaveLength(1);
});

// ISO 216 and ANSI/ASME Y14.1, in points of 1/72 in.
test.each([
  ['a4', 595.2756, 841.8898],
  ['a3', 841.8898, 1190.5512],
  ['letter', 612, 792],
  ['legal', 612, 1008],
  ['tabloid', 792, 1224],
])('%s', (name, width, height) => {
  const paper = paperNamed(name)!;
  expect((paper.width * 72) / 25.4).toBeCloseTo(width, 3);
  expect((paper.height * 72) / 25.4).toBeCloseTo(height, 3);
  expect(PAPERS).toContain(paper);
});

test('a printer’s margins and a lap make the frame smaller, a correction makes it show more or less', () => {
  const margins = { left: 10, right: 10, top: 10, bottom: 12.7 };
  const plan = layOutSheets(lanternGores(), { ...A4, margins, lap: 12, scale: { across: 1.01, down: 0.98 } });
  const sheet = plan.sheets[0]!;
  expect(sheet.width * 1.01).toBeCloseTo(210 - 20 - 12, 9);
  expect(sheet.height * 0.98).toBeCloseTo(297 - 10 - 12.7 - 12, 9);
  expect(sheet.bottom).toBeCloseTo(12.7 + 12, 9);
});

describe('ends only', () => {
  const all = layOutSheets(lanternGores(), A4);
  const ends = layOutSheets(lanternGores(), { ...A4, endsOnly: true });

  test('takes far fewer sheets and leaves out none with a waist, a hem or a notch', () => {
    expect(ends.sheets.length).toBeLessThan(0.7 * all.sheets.length);
    const isOnSheet = ({ x, y }: { x: number; y: number }) =>
      ends.sheets.some(
        (sheet) => x >= sheet.x && x <= sheet.x + sheet.width && y >= sheet.y && y <= sheet.y + sheet.height,
      );
    for (const { cutPiece } of ends.pieces) {
      const edges = [...cutPiece.cutEdges, ...cutPiece.piece.edges];
      const kept = edges.filter(({ name }) => name === 'waist' || name === 'hem');
      const points = kept.flatMap(({ curves }) => flattenedRun(curves, 0.05));
      const ticks = cutPiece.notches.flatMap((notch) => notch.ticks.flatMap((tick) => [tick.from, tick.to]));
      for (const point of [...points, ...ticks]) expect(isOnSheet(point)).toBe(true);
    }
  });

  test('each gap is straight along its line, and its distance is what a ruler would read between the cut-offs', () => {
    expect(ends.gaps.filter(({ line }) => line === 'cut').length).toBeGreaterThan(4);
    for (const gap of ends.gaps) {
      expect(Math.hypot(gap.to.x - gap.from.x, gap.to.y - gap.from.y)).toBeCloseTo(gap.length, 9);
      // The grain is upright or level on the sheets.
      const { from, to } = ends.pieces[gap.piece]!.grain;
      const axis = Math.abs(to.x - from.x) < 1e-6 ? 'y' : 'x';
      expect(Math.abs(gap.to[axis] - gap.from[axis])).toBeCloseTo(gap.alongGrain, 6);
      for (const [point, [row, column]] of [
        [gap.from, gap.fromCell],
        [gap.to, gap.toCell],
      ] as const) {
        const sheet = ends.sheets.find((one) => one.row === row && one.column === column)!;
        expect(sheet.pieces).toContain(gap.piece);
        expect(point.x).toBeGreaterThan(sheet.x - 1e-6);
        expect(point.x).toBeLessThan(sheet.x + sheet.width + 1e-6);
        expect(point.y).toBeGreaterThan(sheet.y - 1e-6);
        expect(point.y).toBeLessThan(sheet.y + sheet.height + 1e-6);
      }
    }
  });

  test('sides and gaps together are as long as the side', () => {
    const on = (a: { x: number; y: number }, b: { x: number; y: number }) => Math.hypot(a.x - b.x, a.y - b.y);
    for (const gap of ends.gaps.filter(({ line }) => line === 'cut')) {
      const { cutPiece } = ends.pieces[gap.piece]!;
      const side = cutPiece.cutEdges
        .flatMap((edge) => edge.curves)
        .find(
          (curve) =>
            curve.kind === 'line' &&
            Math.abs(
              on(curve.from, gap.from) +
                on(gap.from, gap.to) +
                on(gap.to, curve.to) -
                on(curve.from, curve.to),
            ) < 1e-6,
        );
      expect(side).toBeDefined();
    }
  });
});

test('no pieces take no sheets', () => {
  for (const name of ['a4', 'roll:914']) {
    const plan = layOutSheets([], { ...A4, paper: paperNamed(name)! });
    expect(plan.sheets).toEqual([]);
    expect(plan.pieces).toEqual([]);
  }
});

test('a line that reaches into the next sheet with half of its width is on both', () => {
  // A4 less 10 mm all round shows 190 across; the piece is kept 1 mm from its corner.
  const places = [{ piece: 'front  layer', turned: 0, x: 1, y: 1 }];
  const columns = (width: number) =>
    layOutSheets([flatPiece('front', rectangle(width, 200), 'pair')], { ...A4, places }).columns;
  expect(columns(188.5)).toBe(1);
  // Its side lies 0.1 mm from where the sheet ends, and is 0.35 mm wide or more.
  expect(columns(188.9)).toBe(2);
});
