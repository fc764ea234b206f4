import { expect, test } from 'vitest';
import { patternDrawing } from '../../src/print/pattern/pattern-drawing.ts';
import { projectorPages } from '../../src/print/pattern/projector-pages.ts';
import { sheetPages } from '../../src/print/pattern/sheet-pages.ts';
import { writePdf } from '../../src/print/pdf/write-pdf.ts';
import { writeSvg } from '../../src/print/svg/write-svg.ts';
import { layOutProjector } from '../../src/sheets/lay-out-projector.ts';
import { layOutSheets } from '../../src/sheets/lay-out-sheets.ts';
import { longChecks } from '../../src/sheets/long-checks.ts';
import { paperNamed } from '../../src/sheets/paper.ts';
import { lanternGores } from '../sheets/sector-piece.ts';
import { LABELS } from './labels.ts';
import { readPdf } from './read-pdf.ts';
import { farthest, lengthOfAll, reassembled, svgSegments } from './reassembled.ts';

const TEN = { left: 10, right: 10, top: 10, bottom: 10 };

test('a roll’s page is 914 mm wide in points, and its lines are the pattern’s', async () => {
  const plan = layOutSheets([...lanternGores(['shell']), ...lanternGores(['lining'], 20)], {
    paper: paperNamed('roll:914')!,
    margins: TEN,
    lap: 0,
    scale: { across: 1, down: 1 },
  });
  const pattern = patternDrawing(plan, LABELS);
  const { pages } = sheetPages(plan, pattern, LABELS, longChecks(plan.pieces));
  const pdf = await readPdf((await writePdf(pages, { title: 'roll' })).bytes);
  // 914 mm × 72 / 25.4.
  for (const page of pdf.pages) expect(page.box[2]).toBeCloseTo(2590.8661, 3);
  expect(pdf.pages[1]!.box[3]).toBeCloseTo((plan.sheets[0]!.pageHeight * 72) / 25.4, 3);
  const taped = reassembled(pdf, plan.sheets);
  const whole = svgSegments(writeSvg(pattern.whole));
  expect(farthest(whole, taped)).toBeLessThan(0.2);
  expect(farthest(taped, whole)).toBeLessThan(0.2);
  expect(Math.abs(lengthOfAll(taped) - lengthOfAll(whole))).toBeLessThan(2);
});

test('on a projector’s page each piece and cloth can be switched, hidden partners off at first', async () => {
  const plan = layOutProjector([...lanternGores(['shell', 'flounce']), ...lanternGores(['lining'], 20)]);
  const pages = projectorPages(
    plan,
    LABELS,
    (layer) => ({ shell: 'crepe', flounce: 'silk' })[layer] ?? 'cupro',
  );
  const pdf = await readPdf((await writePdf(pages, { title: 'projector' })).bytes);
  const gores = ['front', 'side-front', 'side', 'side-back', 'back'];
  const expected = gores.flatMap((gore) => [`${gore} · crepe`, `${gore} · silk`, `${gore} · cupro`]);
  expect(pdf.layers.filter((name) => !name.startsWith('Test square')).sort()).toEqual(expected.sort());
  expect(pdf.layersOff.sort()).toEqual(gores.map((gore) => `${gore} · cupro`).sort());
  const [sheet] = plan.sheets;
  const below = pages[0]!.height - sheet!.pageHeight;
  const lines = reassembled(pdf, [{ ...sheet!, page: 1, bottom: sheet!.bottom + below }]);
  const whole = svgSegments(writeSvg(patternDrawing(plan, LABELS).whole));
  expect(farthest(lines, whole)).toBeLessThan(0.2);
  expect(farthest(whole, lines)).toBeLessThan(0.2);
});
