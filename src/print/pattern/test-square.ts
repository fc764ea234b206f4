import type { Point } from '../../geometry/curve.ts';
import type { Scale } from '../../sheets/sheet-options.ts';
import type { PatternWords } from '../../words/english-pattern.ts';
import type { Mark } from '../drawing.ts';
import type { Strip } from '../page/page-strip.ts';
import { boxMark, lineMark, textMark } from '../page/ruled-marks.ts';

/** Side of the test square as it should measure on paper, mm. */
export const TEST_SQUARE = 100;

/**
 * A square to lay a ruler on, each way: its lower side is the scale bar across and its left side the scale bar down,
 * ticked in centimetres; the other two in inches. Drawn larger or smaller where the printer's error is corrected.
 */
export function testSquare(scale: Scale, text: PatternWords['square']): Strip {
  const width = TEST_SQUARE * scale.across;
  const height = TEST_SQUARE * scale.down;
  const draw = (at: Point): Mark[] => {
    const on = (across: number, down: number): Point => ({
      x: at.x + across * scale.across,
      y: at.y + down * scale.down,
    });
    const line = { width: LINE };
    const ticks = centimetres().flatMap(({ at: place, long }) => [
      lineMark(on(place, TEST_SQUARE), on(place, TEST_SQUARE - long), line),
      lineMark(on(0, place), on(long, place), line),
    ]);
    const inches = [1, 2, 3].flatMap((inch) => [
      lineMark(on(inch * INCH, 0), on(inch * INCH, 3), line),
      lineMark(on(TEST_SQUARE, inch * INCH), on(TEST_SQUARE - 3, inch * INCH), line),
      textMark(`${inch} in`, on(inch * INCH, 6.5), 2.8, { anchor: 'middle' }),
    ]);
    const texts = [
      textMark(text[0], on(50, 46), 5, { anchor: 'middle', bold: true }),
      textMark(text[1], on(50, 53), 5, { anchor: 'middle', bold: true }),
      textMark(text[2], on(50, 60), 3.6, { anchor: 'middle' }),
      textMark('5 cm', on(50, 92), 2.8, { anchor: 'middle' }),
      textMark('5 cm', on(6.5, 51), 2.8),
    ];
    return [boxMark(at.x, at.y, width, height, line), ...ticks, ...inches, ...texts];
  };
  return { height, draw };
}

const INCH = 25.4;
const LINE = 0.25;

function centimetres(): { at: number; long: number }[] {
  return [10, 20, 30, 40, 50, 60, 70, 80, 90].map((at) => ({ at, long: at === 50 ? 5 : 3 }));
}
