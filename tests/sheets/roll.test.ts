import { expect, test } from 'vitest';
import { boundsOfCurves } from '../../src/geometry/bounds.ts';
import { layOutProjector } from '../../src/sheets/lay-out-projector.ts';
import { layOutSheets } from '../../src/sheets/lay-out-sheets.ts';
import { paperNamed } from '../../src/sheets/paper.ts';
import { lanternGores, sectorPiece } from './sector-piece.ts';

const ROLL = {
  paper: paperNamed('roll:914')!,
  margins: { left: 10, right: 10, top: 10, bottom: 10 },
  lap: 0,
  scale: { across: 1, down: 1 },
};

test('every piece lies whole on one length, and no length is as long as 5 m', () => {
  const pieces = [0, 1, 2].flatMap((copy) => lanternGores([`layer${copy}`]));
  const plan = layOutSheets(pieces, { ...ROLL, layersApart: true });
  expect(plan.sheets.length).toBeGreaterThan(1);
  for (const sheet of plan.sheets) expect(sheet.pageHeight).toBeLessThan(5000);
  for (const [index, { cutPiece }] of plan.pieces.entries()) {
    const box = boundsOfCurves(cutPiece.cutEdges.flatMap((edge) => edge.curves));
    const on = plan.sheets.filter((sheet) => sheet.pieces.includes(index));
    expect(on).toHaveLength(1);
    expect(box.left).toBeGreaterThanOrEqual(on[0]!.x);
    expect(box.right).toBeLessThanOrEqual(on[0]!.x + on[0]!.width);
    expect(box.top).toBeGreaterThanOrEqual(on[0]!.y);
    expect(box.bottom).toBeLessThanOrEqual(on[0]!.y + on[0]!.height);
  }
});

test('a length is as wide as the roll and as long as its pieces', () => {
  const [sheet, ...others] = layOutSheets(lanternGores(), ROLL).sheets;
  expect(others).toEqual([]);
  expect(sheet!.width).toBeCloseTo(894, 9);
  // Shorter than the gores one below the other, longer than the longest.
  expect(sheet!.height).toBeLessThan(1045 + 1060 + 1120 + 1390 + 1760);
  expect(sheet!.height).toBeGreaterThan(1760);
  expect(sheet!.pageHeight).toBeGreaterThan(sheet!.height + 20);
});

test('a piece wider than the roll is joined from lengths like sheets', () => {
  const half = Math.PI / 2;
  const wide = sectorPiece({
    gore: 'circle',
    top: 400,
    front: half / 2,
    back: half / 2,
    frontLength: 1100,
    backLength: 1100,
  });
  const plan = layOutSheets([wide], ROLL);
  expect(plan.sheets.length).toBeGreaterThan(1);
  expect(plan.sheets.some(({ neighbours }) => neighbours.right !== undefined)).toBe(true);
  for (const sheet of plan.sheets) expect(sheet.pageHeight).toBeLessThan(5000);
});

test('what is too wide comes first, the others lie whole, and no length is longer than what lies on it', () => {
  const half = Math.PI / 2;
  const circle = { top: 400, front: half / 2, back: half / 2, frontLength: 1100, backLength: 1100 };
  const gores = lanternGores();
  const plan = layOutSheets([gores[0]!, sectorPiece({ gore: 'circle', ...circle }), ...gores.slice(1)], ROLL);
  expect(plan.pieces.map(({ cutPiece }) => cutPiece.gore)).toEqual([
    gores[0]!.gore,
    'circle',
    ...gores.slice(1).map(({ gore }) => gore),
  ]);
  const boxes = plan.pieces.map(({ cutPiece }) => boundsOfCurves(cutPiece.cutEdges.flatMap((e) => e.curves)));
  const onSheets = (piece: number) => plan.sheets.filter(({ pieces }) => pieces.includes(piece));
  expect(onSheets(1).map(({ label }) => label)).toEqual(['A1', 'A2']);
  expect(plan.sheets.map(({ label, page }) => [label, page])).toEqual([
    ['A1', 2],
    ['A2', 3],
    ['A3', 4],
  ]);
  for (const [index, box] of boxes.entries()) {
    const on = onSheets(index);
    expect(on, plan.pieces[index]!.cutPiece.gore).toHaveLength(index === 1 ? 2 : 1);
    expect(box.left).toBeGreaterThanOrEqual(on[0]!.x);
    expect(box.right).toBeLessThanOrEqual(on.at(-1)!.x + on.at(-1)!.width);
    for (const sheet of on) expect(box.bottom).toBeLessThanOrEqual(sheet.y + sheet.height);
  }
  for (const sheet of plan.sheets) {
    const lowest = Math.max(...sheet.pieces.map((piece) => boxes[piece]!.bottom - sheet.y));
    expect(sheet.height - lowest, sheet.label).toBeLessThan(10);
  }
  // Lengths that are joined are cut alike: the chord of a quarter ring of 400 mm at its top and 1100 mm long, its seams and room.
  const [left, right] = onSheets(1);
  expect(left!.pageHeight).toBe(right!.pageHeight);
  const chord = Math.SQRT2 * (400 / half + 1100);
  expect(left!.height).toBeGreaterThan(chord);
  expect(left!.height).toBeLessThan(chord + 60);
});

test('rolls are named by their width, in mm or inches', () => {
  expect(paperNamed('roll:914')).toMatchObject({ name: 'roll-914', width: 914 });
  expect(paperNamed('roll:36in')).toMatchObject({ name: 'roll-914' });
  expect(paperNamed('roll:36in')!.width).toBeCloseTo(914.4, 9);
  for (const name of ['roll:', 'roll:50', 'roll:9999', 'roll:914x', 'rolls', 'a5', '']) {
    expect(paperNamed(name), name).toBeUndefined();
  }
});

test('a projector’s page holds the whole pattern within what a PDF page may be', () => {
  const plan = layOutProjector([...lanternGores(['shell']), ...lanternGores(['lining'], 20)]);
  expect(plan.sheets).toHaveLength(1);
  expect(plan.sheets[0]!.pieces).toHaveLength(10);
  // 14 400 units of 1/72 in (ISO 32000-1:2008, annex C).
  expect(plan.sheets[0]!.pageHeight).toBeLessThan(5080);
  expect(plan.paper.width).toBeLessThan(5080);
});
