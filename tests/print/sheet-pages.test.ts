import { describe, expect, test } from 'vitest';
import { patternDrawing } from '../../src/print/pattern/pattern-drawing.ts';
import { sheetPages } from '../../src/print/pattern/sheet-pages.ts';
import { writePdf } from '../../src/print/pdf/write-pdf.ts';
import { writeSvg } from '../../src/print/svg/write-svg.ts';
import { layOutSheets } from '../../src/sheets/lay-out-sheets.ts';
import { longChecks } from '../../src/sheets/long-checks.ts';
import { paperNamed } from '../../src/sheets/paper.ts';
import { lanternGores } from '../sheets/sector-piece.ts';
import { LABELS } from './labels.ts';
import { readPdf } from './read-pdf.ts';
import { farthest, lengthOfAll, reassembled, svgSegments } from './reassembled.ts';

const TEN = { left: 10, right: 10, top: 10, bottom: 10 };

async function printed(
  paper: string,
  options: { lap?: number; scale?: { across: number; down: number } } = {},
) {
  const plan = layOutSheets(lanternGores(), {
    paper: paperNamed(paper)!,
    margins: TEN,
    lap: options.lap ?? 0,
    scale: options.scale ?? { across: 1, down: 1 },
  });
  const pattern = patternDrawing(plan, LABELS);
  const { pages, bookmarks } = sheetPages(plan, pattern, LABELS, longChecks(plan.pieces));
  const { bytes } = await writePdf(pages, { title: 'Lantern: pattern', subject: LABELS.trace, bookmarks });
  return { plan, svg: writeSvg(pattern.whole), pdf: await readPdf(bytes), bytes };
}

describe.each([
  ['a4', {}, [0, 0, 595.2756, 841.8898]], // ISO 216 in points
  ['letter', { lap: 12 }, [0, 0, 612, 792]], // ANSI/ASME Y14.1: 8.5 × 11 in
  ['a3', { scale: { across: 100 / 99.2, down: 100 / 100.3 } }, [0, 0, 841.8898, 1190.5512]],
] as const)('%s %j', async (paper, options, box) => {
  const { plan, svg, pdf, bytes } = await printed(paper, options);
  const scale = plan.scale;

  test('sheets taped by the report’s rectangles give the pattern, nothing missing and nothing doubled', () => {
    const taped = reassembled(pdf, plan.sheets, scale);
    const whole = svgSegments(svg);
    expect(farthest(whole, taped)).toBeLessThan(0.2);
    expect(farthest(taped, whole)).toBeLessThan(0.2);
    expect(Math.abs(lengthOfAll(taped) - lengthOfAll(whole))).toBeLessThan(2);
  });

  test('the test square measures 100.0 mm both ways on a printer with the error that was measured', () => {
    const lines = pdf.pages[0]!.lines.filter((line) => !line.inForm);
    const across = lines.map((line) => Math.abs(line.to.x - line.from.x) / scale.across);
    const down = lines.map((line) => Math.abs(line.to.y - line.from.y) / scale.down);
    expect(across.filter((length) => Math.abs(length - 100) < 0.01)).toHaveLength(2);
    expect(down.filter((length) => Math.abs(length - 100) < 0.01)).toHaveLength(2);
  });

  test('page boxes are the paper’s own and no line lies within 10 mm of an edge', () => {
    for (const page of pdf.pages) {
      expect(page.box.map((side) => Math.round(side * 1e4) / 1e4)).toEqual(box);
      for (const { from, to, clip } of page.lines) {
        for (const point of clip === undefined ? [from, to] : []) {
          expect(point.x).toBeGreaterThan(9.99);
          expect(point.y).toBeGreaterThan(9.99);
          expect(point.x).toBeLessThan((box[2] * 25.4) / 72 - 9.99);
          expect(point.y).toBeLessThan((box[3] * 25.4) / 72 - 9.99);
        }
        if (clip !== undefined) expect(clip.left).toBeGreaterThan(9.99);
      }
    }
  });

  test('every sheet names itself, its page, its pieces, the gown and its neighbours', () => {
    for (const sheet of plan.sheets) {
      const { text } = pdf.pages[sheet.page - 1]!;
      expect(text).toContain(sheet.label);
      expect(text).toContain(`page ${sheet.page} of ${pdf.pages.length}`);
      expect(text).toContain('Lantern');
      for (const piece of sheet.pieces) expect(text).toContain(plan.pieces[piece]!.cutPiece.gore);
      for (const label of Object.values(sheet.neighbours)) expect(text).toContain(label);
    }
  });

  test('no sheet is blank, and each is listed once', () => {
    expect(new Set(plan.sheets.map((sheet) => sheet.label)).size).toBe(plan.sheets.length);
    expect(plan.sheets.map((sheet) => sheet.page)).toEqual(plan.sheets.map((_, index) => index + 2));
    expect(pdf.pages).toHaveLength(plan.sheets.length + 1);
    for (const sheet of plan.sheets) {
      expect(reassembled(pdf, [sheet], scale).length, sheet.label).toBeGreaterThan(0);
    }
  });

  test('asks the viewer not to scale, numbers pages as it does, and has bookmarks by piece', () => {
    expect(pdf.printScaling).toBe('None');
    expect(pdf.labels?.[1]).toBe('2');
    expect(pdf.outline.map(({ title }) => title)).toContain('side-front (shell)');
    expect(bytes.length).toBeLessThan(100_000);
  });
});

test('fewer sheets than a plain grid for each piece by a fifth at least', () => {
  for (const paper of ['a4', 'letter']) {
    const options = { paper: paperNamed(paper)!, margins: TEN, lap: 0, scale: { across: 1, down: 1 } };
    const plan = layOutSheets([...lanternGores(), ...lanternGores(['lining'], 20)], options);
    expect(plan.sheets.length).toBeLessThan(0.8 * plan.gridPerPiece);
  }
});

test('the same bytes twice', async () => {
  const [first, second] = [await printed('a4'), await printed('a4')];
  expect(Buffer.from(first.bytes).equals(Buffer.from(second.bytes))).toBe(true);
  expect(first.svg).toBe(second.svg);
});
