import { boundsOfCurves } from '../../geometry/bounds.ts';
import type { Curve, Point } from '../../geometry/curve.ts';
import { translated } from '../../geometry/transform.ts';
import type { PatternWords } from '../../words/english-pattern.ts';
import type { Drawing, LineStyle, Mark } from '../drawing.ts';
import { wrapText } from '../text/wrap-text.ts';

/** One piece before and after, the new lines already where they are laid on the old ones; mm. */
export interface Overlay {
  readonly gore: string;
  readonly layers: readonly string[];
  readonly verdict: string;
  readonly title: string;
  /** What becomes of it, a line each. */
  readonly words: readonly string[];
  /** Cut lines are whole outlines, seam lines one run an edge. */
  readonly old: { readonly cut: Runs; readonly sew: Runs };
  readonly now: { readonly cut: Runs; readonly sew: Runs };
}

type Runs = readonly (readonly Curve[])[];

const OLD: LineStyle = { width: 1, dash: [9, 5], grey: 0.45 };
const OLD_SEAM: LineStyle = { width: 0.5, dash: [9, 5], grey: 0.45 };
const NOW: LineStyle = { width: 1 };
const NOW_SEAM: LineStyle = { width: 0.5 };

const MARGIN = 25;
const GAP = 60;
const TITLE = 22;
const TEXT = 15;
/** Width at least, so that the words below a narrow piece still read. */
const LEAST_WIDTH = 380;

/** Old and new versions of pieces laid over each other, side by side, full size: the old lines dashed. */
export function overlayDrawing(title: string, overlays: readonly Overlay[], words: PatternWords): Drawing {
  const panels = overlays.map((overlay) => panelOf(overlay));
  const legend = textMark(words.overlay, {
    x: MARGIN,
    y: MARGIN + TITLE + 1.6 * TEXT,
  });
  const top = MARGIN + TITLE + 3 * TEXT + GAP / 2;
  let x = MARGIN;
  const marks: Mark[] = [
    { ...textMark(title, { x: MARGIN, y: MARGIN + TITLE }), size: TITLE, bold: true },
    legend,
  ];
  for (const panel of panels) {
    marks.push(panel.marksAt({ x, y: top }));
    x += panel.width + GAP;
  }
  const width = Math.max(x - GAP, MARGIN + 900) + MARGIN;
  const height = top + Math.max(0, ...panels.map((panel) => panel.height)) + MARGIN;
  return { x: 0, y: 0, width, height, marks, title };
}

function panelOf(overlay: Overlay) {
  const all = [overlay.old.cut, overlay.now.cut].flat(2);
  const box = boundsOfCurves(all);
  const width = Math.max(LEAST_WIDTH, box.right - box.left);
  const lines = overlay.words.flatMap((line) => wrapText(line, width, TEXT));
  const head = TITLE + (lines.length + 1) * TEXT * 1.3 + 10;
  return {
    width,
    height: head + box.bottom - box.top,
    marksAt: (at: Point): Mark => {
      const shift = { x: at.x - box.left, y: at.y + head - box.top };
      const path = (runs: Runs, line: LineStyle, name: string): Mark => ({
        kind: 'path',
        runs: runs.map((run) => run.map((curve) => translated(curve, shift))),
        closed: name.endsWith('cut'),
        line,
        class: name,
      });
      return {
        kind: 'group',
        class: 'piece',
        data: { gore: overlay.gore, layers: overlay.layers.join(' '), verdict: overlay.verdict },
        marks: [
          { ...textMark(overlay.title, { x: at.x, y: at.y + TITLE }), size: TITLE, bold: true },
          ...lines.map((line, i) => textMark(line, { x: at.x, y: at.y + TITLE + (i + 1) * TEXT * 1.3 })),
          path(overlay.old.sew, OLD_SEAM, 'old sew'),
          path(overlay.now.sew, NOW_SEAM, 'new sew'),
          path(overlay.old.cut, OLD, 'old cut'),
          path(overlay.now.cut, NOW, 'new cut'),
        ],
      };
    },
  };
}

function textMark(text: string, at: Point) {
  return { kind: 'text', text, at, size: TEXT, anchor: 'start' } as const;
}
