import type { Point } from '../../geometry/curve.ts';
import type { Drawing, LineStyle } from '../drawing.ts';
import { lineMark, textMark } from '../page/ruled-marks.ts';

const STRIP: LineStyle = { width: 0.5 };
const TABLE: LineStyle = { width: 0.35 };
const SLOPE: LineStyle = { width: 0.2, dash: [1.2, 0.8] };
const TEXT = 3;

/** Of the line that the tip comes down to (BS 3356), and of the strip's own end there: the heavy elastica, from Runge-Kutta. */
const DOWN = (41.5 * Math.PI) / 180;
const TIP = (53.865 * Math.PI) / 180;

/** On paper, mm: the table's edge, how far away the tip lies, and how long the line is. */
const EDGE: Point = { x: 20, y: 8 };
const CHORD = 24;
const LINE = 34;
const HEIGHT = 34;

/** A strip of cloth pushed over the table's edge until its tip hangs 41.5° down. */
export function bendingFigure(
  names: { readonly overhang: readonly string[]; readonly slope: string },
  width: number,
): Drawing {
  const along = (length: number, angle: number): Point => ({
    x: EDGE.x + length * Math.cos(angle),
    y: EDGE.y + length * Math.sin(angle),
  });
  const tip = along(CHORD, DOWN);
  const end = along(LINE, DOWN);
  const reach = CHORD * 0.36;
  return {
    x: 0,
    y: 0,
    width,
    height: HEIGHT,
    marks: [
      lineMark({ x: 0, y: EDGE.y + 0.6 }, { x: EDGE.x, y: EDGE.y + 0.6 }, TABLE),
      lineMark({ x: EDGE.x, y: EDGE.y + 0.6 }, { x: EDGE.x, y: HEIGHT - 2 }, TABLE),
      lineMark(EDGE, end, SLOPE),
      {
        kind: 'path',
        closed: false,
        line: STRIP,
        runs: [
          [
            { kind: 'line', from: { x: 8, y: EDGE.y }, to: EDGE },
            {
              kind: 'cubic',
              from: EDGE,
              control1: { x: EDGE.x + reach, y: EDGE.y },
              control2: { x: tip.x - reach * Math.cos(TIP), y: tip.y - reach * Math.sin(TIP) },
              to: tip,
            },
          ],
        ],
      },
      ...names.overhang.map((line, i) =>
        textMark(line, { x: EDGE.x + CHORD * 0.6, y: EDGE.y - 2 + 1.3 * i * TEXT }, TEXT),
      ),
      textMark(names.slope, { x: end.x + 1.5, y: end.y + 1 }, TEXT),
    ],
  };
}
