import { expect, test } from 'vitest';
import type { CutPiece } from '../../src/draft/piece.ts';
import { flattenedRun } from '../../src/geometry/flatten.ts';
import type { GroupMark, PathMark, TextMark } from '../../src/print/drawing.ts';
import { patternDrawing } from '../../src/print/pattern/pattern-drawing.ts';
import { drawPiece } from '../../src/print/pattern/piece-drawing.ts';
import { writeSvg } from '../../src/print/svg/write-svg.ts';
import { textWidth } from '../../src/print/text/text-width.ts';
import { layOutSheets } from '../../src/sheets/lay-out-sheets.ts';
import { paperNamed } from '../../src/sheets/paper.ts';
import { lanternGores, sectorPiece } from '../sheets/sector-piece.ts';
import { LABELS } from './labels.ts';

const paths = (group: GroupMark) => group.marks.filter((mark): mark is PathMark => mark.kind === 'path');
const texts = (group: GroupMark) => group.marks.filter((mark): mark is TextMark => mark.kind === 'text');

/** Corners of the box of a text's letters. */
function corners({ at, text, size, bold }: TextMark): { x: number; y: number }[] {
  const width = textWidth(text, size, bold);
  return [
    { x: at.x, y: at.y },
    { x: at.x + width, y: at.y },
    { x: at.x, y: at.y - 0.72 * size },
    { x: at.x + width, y: at.y - 0.72 * size },
  ];
}

/** Even-odd rule, on the outline cut finely. */
function isInside(outline: readonly { x: number; y: number }[], point: { x: number; y: number }): boolean {
  let inside = false;
  for (const [index, a] of outline.entries()) {
    const b = outline[(index + 1) % outline.length]!;
    if (a.y > point.y !== b.y > point.y && point.x < a.x + ((point.y - a.y) / (b.y - a.y)) * (b.x - a.x)) {
      inside = !inside;
    }
  }
  return inside;
}

function expectTextInside(piece: CutPiece, group: GroupMark): void {
  const outline = flattenedRun(
    piece.cutEdges.flatMap((edge) => edge.curves),
    0.05,
  );
  expect(texts(group).length).toBeGreaterThan(0);
  for (const text of texts(group)) {
    for (const corner of corners(text)) expect(isInside(outline, corner), text.text).toBe(true);
  }
}

test('a piece holds its cut line, a seam line for each edge, grain and notches', () => {
  const piece = lanternGores(['shell', 'organza'])[1]!;
  const group = drawPiece(piece, LABELS);
  expect(group.class).toBe('piece');
  expect(group.data).toEqual({ gore: 'side-front', layers: 'shell organza' });
  const byClass = (name: string) => paths(group).filter((path) => path.class === name);
  expect(byClass('cut')).toHaveLength(1);
  expect(byClass('cut')[0]!.closed).toBe(true);
  expect(byClass('sew').map((path) => path.data?.edge)).toEqual([
    'waist',
    'side-front/after',
    'hem',
    'before/side-front',
  ]);
  expect(byClass('grain')).toHaveLength(1);
  expect(byClass('notch').map((path) => path.data?.edge)).toEqual(['side-front/after']);
});

test('its text says what to cut, and of what', () => {
  const written = (piece: CutPiece) =>
    texts(drawPiece(piece, LABELS))
      .map((mark) => mark.text)
      .join(' ');
  const [front, sideFront] = lanternGores(['shell', 'organza']);
  expect(written(front!)).toContain('cut 1 on fold');
  expect(written(front!)).toContain('on the fold');
  expect(written(sideFront!)).toContain('cut 1 pair');
  for (const word of [
    'side-front',
    'Lantern',
    'LAN-07',
    'shell, organza',
    'grain',
    'waist 1.5 cm',
    'seams 1.5 cm',
    'hem 1.5 cm',
    'format 1',
    '3f9a12c4',
  ]) {
    expect(written(sideFront!)).toContain(word);
  }
});

test('text stays inside the piece and off the grain line, on broad gores and on narrow strips', () => {
  const strip = sectorPiece({
    gore: 'strip',
    top: 40,
    front: 0.01,
    back: 0.01,
    frontLength: 600,
    backLength: 600,
  });
  const dart = sectorPiece({
    gore: 'dart',
    top: 30,
    front: 0.2,
    back: 0.2,
    frontLength: 150,
    backLength: 150,
  });
  for (const piece of [...lanternGores(), strip, dart]) {
    const group = drawPiece(piece, LABELS);
    expectTextInside(piece, group);
    const { from, to } = piece.piece.grain;
    for (const text of texts(group)) {
      const [a, b] = corners(text);
      const beside = b!.x < from.x || a!.x > from.x;
      const aboveOrBelow = text.at.y < from.y || text.at.y - text.size > to.y;
      expect(beside || aboveOrBelow, `${piece.gore}: ${text.text}`).toBe(true);
    }
  }
});

test('a name of 300 characters, or from right to left, still fits', () => {
  const [, piece] = lanternGores();
  for (const gown of ['Lantern '.repeat(38), 'שמלת ערב '.repeat(30), 'x'.repeat(300)]) {
    expectTextInside(piece!, drawPiece(piece!, { ...LABELS, gown }));
  }
});

test('on sheets no text runs over a join, and the pattern has no transform', () => {
  const plan = layOutSheets([...lanternGores(['shell']), ...lanternGores(['lining'], 20)], {
    paper: paperNamed('a4')!,
    margins: { left: 10, right: 10, top: 10, bottom: 10 },
    lap: 0,
    scale: { across: 1, down: 1 },
  });
  const { whole } = patternDrawing(plan, LABELS);
  for (const group of whole.marks as readonly GroupMark[]) {
    for (const text of texts(group)) {
      const sheets = corners(text).map(
        ({ x, y }) =>
          plan.sheets.find(
            (sheet) =>
              x >= sheet.x && x <= sheet.x + sheet.width && y >= sheet.y && y <= sheet.y + sheet.height,
          )?.label,
      );
      expect(sheets[0], text.text).toBeDefined();
      expect(new Set(sheets).size, text.text).toBe(1);
    }
  }
  const svg = writeSvg(whole);
  expect(svg).not.toContain('transform');
  expect(svg.match(/<g class="piece"/g)).toHaveLength(10);
  expect(svg).toContain('lining: cut');
});
