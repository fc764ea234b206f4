import type { ChalkTable } from '../../chalk/chalk.ts';
import type { Point } from '../../geometry/curve.ts';
import type { Drawing, LineStyle, Mark } from '../drawing.ts';
import { textMark } from '../page/ruled-marks.ts';

const CUT: LineStyle = { width: 0.35 };
const SEAM: LineStyle = { width: 0.2, dash: [1.5, 0.8] };
const GRAIN: LineStyle = { width: 0.2, dash: [4, 1, 0.8, 1] };
const TEXT = 2.6;
const MARGIN = 4;

/** Points of one line of the table in order, across and down, mm. */
export type ChalkedLine = readonly Point[];

/** A piece as its table plots it, with the letters of its corners; `size` mm at most on paper. */
export function chalkFigure(
  table: ChalkTable,
  lines: { readonly cut: ChalkedLine; readonly seam: ChalkedLine },
  size: { readonly width: number; readonly height: number },
): Drawing {
  const xs = lines.cut.map((point) => point.x);
  const ys = lines.cut.map((point) => point.y);
  const [left, right, top, bottom] = [
    Math.min(0, ...xs),
    Math.max(0, ...xs),
    Math.min(...ys),
    Math.max(...ys),
  ];
  const scale = Math.min(
    (size.width - 2 * MARGIN) / (right - left),
    (size.height - 2 * MARGIN) / (bottom - top),
  );
  const place = ({ x, y }: Point): Point => ({
    x: MARGIN + (x - left) * scale,
    y: MARGIN + (y - top) * scale,
  });
  const middle = place({ x: xs.reduce((sum, x) => sum + x, 0) / xs.length, y: (top + bottom) / 2 });
  const letters = table.stretches.map(({ line, from }): Mark => {
    const at = place({ x: from.across, y: from.down });
    return textMark(from.letter, letterPlace(at, middle, line === 'cut' ? 2.2 : -2.2), TEXT, {
      anchor: 'middle',
    });
  });
  return {
    x: 0,
    y: 0,
    width: (right - left) * scale + 2 * MARGIN,
    height: (bottom - top) * scale + 2 * MARGIN,
    marks: [
      closed(lines.cut.map(place), CUT),
      closed(lines.seam.map(place), SEAM),
      {
        kind: 'path',
        runs: [[{ kind: 'line', from: place({ x: 0, y: top }), to: place({ x: 0, y: bottom }) }]],
        closed: false,
        line: GRAIN,
      },
      ...letters,
    ],
  };
}

/** Outside the piece for the cut line's letters, inside for the seam line's. */
function letterPlace(at: Point, middle: Point, away: number): Point {
  const [dx, dy] = [at.x - middle.x, at.y - middle.y];
  const length = Math.hypot(dx, dy) || 1;
  return { x: at.x + (dx / length) * away, y: at.y + (dy / length) * away + TEXT * 0.35 };
}

function closed(points: readonly Point[], line: LineStyle): Mark {
  const run = points.map((from, i) => ({
    kind: 'line' as const,
    from,
    to: points[(i + 1) % points.length]!,
  }));
  return { kind: 'path', runs: [run], closed: true, line };
}
