import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { pointAt } from '../../src/geometry/evaluate.ts';
import type { PathMark } from '../../src/print/drawing.ts';
import { firstPage } from '../../src/print/pattern/first-page.ts';
import { drawPiece } from '../../src/print/pattern/piece-drawing.ts';
import { labelsOf } from '../../src/publish/pattern-files.ts';
import { paperOf, sheetPlan } from '../../src/publish/pattern-sheets.ts';
import { longChecks } from '../../src/sheets/long-checks.ts';
import { projectFile } from '../cli/gorewright.ts';
import { made } from '../making/made.ts';
import { textsOf } from './page-texts.ts';

function firstPageOf(file: string) {
  const { gown } = made(readFileSync(projectFile(file), 'utf8'));
  const plan = sheetPlan(gown, paperOf(gown));
  return { plan, labels: labelsOf(gown), page: firstPage(plan, labelsOf(gown), longChecks(plan.pieces)) };
}

const paths = (marks: readonly unknown[]) =>
  (marks as readonly PathMark[]).filter(({ kind }) => kind === 'path');

describe.each(['examples/lantern.yaml', 'examples/puffin.yaml', 'templates/box-pleats.yaml'])(
  '%s',
  (file) => {
    const { plan, labels, page } = firstPageOf(file);

    it('names every kind of line that its pieces are drawn with, drawn as on the sheets', () => {
      const texts = textsOf(page).map(({ text }) => text);
      const names = { cut: 'cut here', sew: 'sew here: the seam line', fold: 'lay on the fold of the cloth' };
      const drawn = plan.pieces.flatMap(({ cutPiece }) => paths(drawPiece(cutPiece, labels).marks));
      for (const [kind, name] of Object.entries(names)) {
        const used = drawn.filter((mark) =>
          kind === 'fold' ? mark.data?.edge === 'fold' : mark.class === kind && mark.data?.edge !== 'fold',
        );
        expect(texts.includes(name)).toBe(used.length > 0);
        if (used.length === 0) continue;
        // The sample stands on the line of its name, to the left of it.
        const text = textsOf(page).find((own) => own.text === name)!;
        const sample = paths(page.marks).find(({ runs }) => {
          const start = pointAt(runs[0]![0]!, 0);
          return start.x < text.left && Math.abs(start.y - text.baseline) < 2.5 && start.x > text.left - 25;
        })!;
        expect([sample.line.width, sample.line.dash]).toEqual([used[0]!.line.width, used[0]!.line.dash]);
      }
      const marked = plan.pieces.some(({ cutPiece }) => cutPiece.marks.length > 0);
      expect(texts.some((text) => text.startsWith('mark, do not cut'))).toBe(marked);
    });

    it('a label of the map lies on no line where one of its sheet’s corners is clear', () => {
      const outlines = paths(page.marks)
        .filter(({ closed, line }) => closed && line.width === 0.35)
        .flatMap(({ runs }) =>
          runs.flat().flatMap((curve) => Array.from({ length: 60 }, (_, i) => pointAt(curve, i / 60))),
        );
      const cells = paths(page.marks).filter(({ closed, line }) => closed && line.width === 0.1);
      const struck = (left: number, right: number, baseline: number, size: number) =>
        outlines.some(({ x, y }) => x > left && x < right && y < baseline && y > baseline - 0.7 * size);
      let looked = 0;
      for (const { text, left, right, baseline, size } of textsOf(page)) {
        const sheet = plan.sheets.findIndex(({ label }) => label === text);
        if (sheet < 0) continue;
        const corners = cells[sheet]!.runs[0]!.map((curve) => pointAt(curve, 0));
        const [x0, x1] = [Math.min(...corners.map(({ x }) => x)), Math.max(...corners.map(({ x }) => x))];
        const [y0, y1] = [Math.min(...corners.map(({ y }) => y)), Math.max(...corners.map(({ y }) => y))];
        expect(left).toBeGreaterThan(x0);
        expect(right).toBeLessThan(x1);
        const wide = right - left;
        const anyClear = [x0 + 0.4, x1 - 0.4 - wide].some((x) =>
          [y1 - 0.6, y0 + 0.8 * size + 0.3].some(
            (y) => !struck(x - 0.5, x + wide + 0.5, y + 0.5, 1.6 * size),
          ),
        );
        if (anyClear) expect(struck(left, right, baseline, size), text).toBe(false);
        looked++;
      }
      expect(looked).toBe(plan.sheets.length);
    });
  },
);
