import { readFileSync } from 'node:fs';
import { Resvg } from '@resvg/resvg-js';
import { describe, expect, it } from 'vitest';
import { type Drafted, draftedTrue } from './drafted.ts';
import type { Report, Sheet } from './measure/gown.ts';
import { readPattern } from './measure/pattern.ts';
import { missingFrom, type PdfPage, type Raster, readPages, readSvgInk, taped } from './measure/raster.ts';

const PIXELS_PER_MM = 6;
/** Every line within this of where it belongs, mm. */
const LINE = 0.2;
/** Marks that join sheets, and the frame, reach this far in from the frame's edges, mm. */
const MARKS = 8;

/** Two renderers measure a long curve each in its own way, and may end a dash of a seam line a pixel apart. */
const DASH_ENDS = 2;

const template = (name: string) =>
  readFileSync(new URL(`../../templates/${name}.yaml`, import.meta.url), 'utf8');

describe('the paper, re-assembled by the rectangles of the report and rendered by another program', () => {
  for (const [paper, width, height] of [
    // P1: ISO 216, 210 × 297 mm; P2: ANSI/ASME Y14.1, 8.5 × 11 in.
    ['a4', 595.2756, 841.8898],
    ['letter', 612, 792],
  ] as const) {
    it(`${paper}: its size, true scale, and every line of the pattern in its place`, {
      timeout: 60_000,
    }, async () => {
      const made = await draftedTrue(template('pencil'), paper);
      const pdf = made.files.get(`pattern-${paper}.pdf`) as Uint8Array;
      const { pages, printScaling } = await readPages(pdf, PIXELS_PER_MM);
      // P4: ISO 32000-1, table 150 and annex C.
      expect(printScaling).toBe('None');
      for (const page of pages) {
        expect(Math.abs(page.width - width)).toBeLessThan(0.01);
        expect(Math.abs(page.height - height)).toBeLessThan(0.01);
        expect(page.userUnit).toBe(1);
      }
      expectSheets(made.report.pattern!.sheets, pages);
      expectSquare(pages[0]!);
      // P3: what a 100 mm bar reads after "fit to page", derived from the two sizes.
      expect(pages[0]!.text).toMatch(/94\.1.*97\.3/s);
      expect(((100 * 792) / 841.8898).toFixed(1)).toBe('94.1');
      expect(((100 * 595.2756) / 612).toFixed(1)).toBe('97.3');
      expectLines(made, pages);
      expectNoticed(made, pages);
    });
  }

  it('P5: the SVG is drawn full scale, 1 in = 25.4 mm = 96 px (CSS Values and Units)', async () => {
    const { svg } = await draftedTrue(template('full-circle'));
    const [, , width, height] = readPattern(svg).viewBox;
    const image = new Resvg(svg, { dpi: 96 });
    expect(Math.abs(image.width - width! * 3.7795276)).toBeLessThan(1);
    expect(Math.abs(image.height - height! * 3.7795276)).toBeLessThan(1);
  });
});

/** Every sheet has ink on it, lies inside what printers reach, and no page is left over. */
function expectSheets(sheets: readonly Sheet[], pages: readonly PdfPage[]): void {
  expect(sheets.map((sheet) => sheet.page)).toEqual(sheets.map((_, i) => i + 2));
  expect(pages).toHaveLength(sheets.length + 1);
  expect(new Set(sheets.map((sheet) => sheet.label)).size).toBe(sheets.length);
  for (const sheet of sheets) {
    const { raster, width, height, text } = pages[sheet.page - 1]!;
    expect(text).toContain(sheet.label);
    expect(sheet.left).toBeGreaterThanOrEqual(10);
    expect(sheet.bottom).toBeGreaterThanOrEqual(10);
    expect(sheet.left + sheet.width).toBeLessThanOrEqual((width * 25.4) / 72 - 10 + 0.001);
    expect(sheet.bottom + sheet.height).toBeLessThanOrEqual((height * 25.4) / 72 - 10 + 0.001);
    expect(inkOutside(raster, 10 - LINE), `ink in the margins of ${sheet.label}`).toBe(0);
  }
}

function inkOutside({ width, height, ink }: Raster, margin: number): number {
  const edge = Math.floor(margin * PIXELS_PER_MM) - 1;
  let count = 0;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const near = x < edge || y < edge || x >= width - edge || y >= height - edge;
      if (near && ink[y * width + x]! > 60) count++;
    }
  }
  return count;
}

/** The test square: two lines across and two down, each 100 mm long and 100 mm apart. */
function expectSquare(page: PdfPage): void {
  for (const turned of [false, true]) {
    const lines = linesAcross(page.raster, turned).filter(({ length }) => Math.abs(length - 100) < 1);
    const square = lines.flatMap((one) => lines.map((other) => ({ one, other, apart: other.at - one.at })));
    const pair = square.find(({ apart }) => Math.abs(apart - 100) < 0.1);
    expect(pair, JSON.stringify(lines)).toBeDefined();
    for (const line of [pair!.one, pair!.other]) expect(Math.abs(line.length - 100)).toBeLessThan(0.6);
  }
}

/** Longest unbroken dark run of each row (or column), for neighbouring rows as one line at their middle of ink, mm. */
function linesAcross(raster: Raster, turned: boolean): { at: number; length: number }[] {
  const [rows, columns] = turned ? [raster.width, raster.height] : [raster.height, raster.width];
  const dark = (row: number, column: number) =>
    raster.ink[turned ? column * raster.width + row : row * raster.width + column]!;
  const lines: { at: number; length: number; weight: number; row: number }[] = [];
  for (let row = 0; row < rows; row++) {
    let [run, longest, weight, best] = [0, 0, 0, 0];
    for (let column = 0; column < columns; column++) {
      const ink = dark(row, column);
      [run, weight] = ink > 40 ? [run + 1, weight + ink] : [0, 0];
      if (run > longest) [longest, best] = [run, weight];
    }
    if (longest < 90 * PIXELS_PER_MM) continue;
    const last = lines.at(-1);
    const part = { at: row + 0.5, length: longest / PIXELS_PER_MM, weight: best, row };
    if (last !== undefined && last.row === row - 1) {
      const weight = last.weight + best;
      lines[lines.length - 1] = {
        at: (last.at * last.weight + part.at * best) / weight,
        length: Math.max(last.length, part.length),
        weight,
        row,
      };
    } else lines.push(part);
  }
  return lines.map(({ at, length }) => ({ at: at / PIXELS_PER_MM, length }));
}

/** Nothing missing, and nothing drawn that is not the pattern's, its text's or the joining marks'. */
function expectLines({ svg, report }: Drafted & { report: Report }, pages: readonly PdfPage[]): void {
  const { sheets } = report.pattern!;
  const drawing = readSvgInk(svg, PIXELS_PER_MM);
  const paper = taped(drawing, sheets, pages, PIXELS_PER_MM);
  const radius = LINE * PIXELS_PER_MM;
  const at = ({ x, y }: { x: number; y: number }) =>
    `${(x / PIXELS_PER_MM).toFixed(1)}, ${(y / PIXELS_PER_MM).toFixed(1)}`;
  const missing = missingFrom(drawing, paper, radius).map(at);
  expect(missing.length <= DASH_ENDS ? [] : missing, 'on the SVG, not on paper').toEqual([]);
  const extra = missingFrom(paper, drawing, radius).filter(
    ({ x, y }) => !isFurniture(x / PIXELS_PER_MM, y / PIXELS_PER_MM, sheets, pages),
  );
  expect(extra.map(at), 'on paper, not on the SVG').toEqual([]);
}

/** The comparison itself: a sheet left out, or taped half a millimetre aside, must show. */
function expectNoticed({ svg, report }: Drafted & { report: Report }, pages: readonly PdfPage[]): void {
  const { sheets } = report.pattern!;
  const drawing = readSvgInk(svg, PIXELS_PER_MM);
  const spoiled = [
    sheets.slice(1),
    sheets.map((sheet, i) => (i === 1 ? { ...sheet, left: sheet.left + 0.5 } : sheet)),
  ];
  for (const wrong of spoiled) {
    const paper = taped(drawing, wrong, pages, PIXELS_PER_MM);
    expect(missingFrom(drawing, paper, LINE * PIXELS_PER_MM).length).toBeGreaterThan(20);
  }
}

function isFurniture(x: number, y: number, sheets: readonly Sheet[], pages: readonly PdfPage[]): boolean {
  const sheet = sheets.find((s) => x >= s.x && x < s.x + s.width && y >= s.y && y < s.y + s.height);
  if (sheet === undefined) return false;
  const [left, bottom] = [x - sheet.x + sheet.left, sheet.y + sheet.height - y + sheet.bottom];
  const inset = Math.min(x - sheet.x, sheet.x + sheet.width - x, y - sheet.y, sheet.y + sheet.height - y);
  if (inset < MARKS) return true;
  return pages[sheet.page - 1]!.textBoxes.some(
    (box) => left > box.left - 1 && left < box.right + 1 && bottom > box.bottom && bottom < box.top,
  );
}
