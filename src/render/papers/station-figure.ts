import type { Point } from '../../geometry/curve.ts';
import type { Drawing, LineStyle, Mark } from '../drawing.ts';
import { lineMark, textMark } from '../ruled-marks.ts';

const OUTLINE: LineStyle = { width: 0.35 };
const THIN: LineStyle = { width: 0.2 };
const FLOOR: LineStyle = { width: 0.2, dash: [1.2, 0.8] };
const TEXT = 2.8;

/**
 * A small figure of a skirt from her left, front to the left: the stations as lines from the bodice's edge to the
 * floor, numbered, with their names beside it. A sketch of where, not of what: nothing in it is to scale.
 */
export function stationFigure(names: readonly string[], width: number): Drawing {
  const height = 52;
  const [left, waist, hem] = [8, 20, 66];
  const [top, floor] = [6, 46];
  const middle = (left + hem) / 2;
  const across = (part: number, from: number, to: number): number => from + (to - from) * part;
  const marks: Mark[] = [
    lineMark({ x: middle - waist / 2, y: top }, { x: middle + waist / 2, y: top }, OUTLINE),
    lineMark({ x: left - 4, y: floor }, { x: hem + 6, y: floor }, FLOOR),
  ];
  for (const [i] of names.entries()) {
    const part = names.length < 2 ? 0.5 : i / (names.length - 1);
    // Round a body seen from the side the outer stations crowd together.
    const shown = (1 - Math.cos(Math.PI * part)) / 2;
    const from: Point = { x: across(shown, middle - waist / 2, middle + waist / 2), y: top };
    const to: Point = { x: across(shown, left, hem), y: floor };
    marks.push(lineMark(from, to, i === 0 || i === names.length - 1 ? OUTLINE : THIN));
    marks.push(
      textMark(String(i + 1), { x: to.x, y: floor + 1.4 * TEXT }, TEXT, { anchor: 'middle', bold: true }),
    );
  }
  const column = Math.min(hem + 16, width - 40);
  const lineHeight = Math.min(1.5 * TEXT, (height - 4) / Math.max(1, names.length));
  for (const [i, name] of names.entries()) {
    marks.push(
      textMark(
        `${i + 1}  ${name}`,
        { x: column, y: top + lineHeight * (i + 0.5) },
        Math.min(TEXT, lineHeight / 1.2),
      ),
    );
  }
  return { x: 0, y: 0, width, height, marks };
}
