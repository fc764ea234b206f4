import type { Point } from '../../geometry/curve.ts';
import type { SheetPlan } from '../../sheets/sheet-plan.ts';
import type { LineStyle, Mark } from '../drawing.ts';
import { type Strip, stacked } from '../page/page-strip.ts';
import { TYPE } from '../page/page-type.ts';
import { lineMark, textMark } from '../page/ruled-marks.ts';
import { wrapText } from '../text/wrap-text.ts';
import { grainPath, PATTERN_LINES } from './piece-drawing.ts';

/** What each line of the pattern is, drawn as on the sheets; only those that this pattern has. */
export function legend({ pieces }: SheetPlan, width: number): Strip {
  const cut = pieces.map(({ cutPiece }) => cutPiece);
  const hasFold = cut.some(({ piece }) => piece.frontEdge === 'fold' || piece.backEdge === 'fold');
  const hasNotches = cut.some(({ notches }) => notches.length > 0);
  const hasMarks = cut.some(({ marks }) => marks.length > 0);
  return stacked([
    heading('The lines'),
    entry('cut here', width, plain(PATTERN_LINES.cut)),
    entry('sew here: the seam line', width, plain(PATTERN_LINES.sew)),
    ...(hasFold ? [entry('lay on the fold of the cloth', width, plain(PATTERN_LINES.fold))] : []),
    entry('lay along the straight thread', width, (from, to) => [grainPath({ kind: 'line', from, to })]),
    ...(hasNotches
      ? [entry('notches: one at a front edge, two at a back edge; like meets like', width, notches)]
      : []),
    ...(hasMarks
      ? [entry('mark, do not cut; its name stands beside it', width, plain(PATTERN_LINES.mark))]
      : []),
  ]);
}

type Sample = (from: Point, to: Point) => readonly Mark[];

/** Of a line, mm: two dashes and gaps of the longest pattern of dashes. */
const SAMPLE = 18;
const GAP = 2.5;
const LINE = TYPE.small * TYPE.leading;

function heading(text: string): Strip {
  return {
    height: LINE * 1.4,
    draw: (at) => [textMark(text, { x: at.x, y: at.y + TYPE.small }, TYPE.small, { bold: true })],
  };
}

function entry(text: string, width: number, sample: Sample): Strip {
  const lines = wrapText(text, width - SAMPLE - GAP, TYPE.small);
  return {
    height: lines.length * LINE + 1,
    draw: (at) => {
      const y = at.y + 0.6 * TYPE.small;
      return [
        ...sample({ x: at.x, y }, { x: at.x + SAMPLE, y }),
        ...lines.map((line, i) =>
          textMark(line, { x: at.x + SAMPLE + GAP, y: at.y + TYPE.small + i * LINE - 0.3 }, TYPE.small),
        ),
      ];
    },
  };
}

function plain(style: LineStyle): Sample {
  return (from, to) => [lineMark(from, to, style)];
}

/** A stretch of cut line with one tick, and with two. */
function notches(from: Point, to: Point): Mark[] {
  const tick = (x: number): Mark =>
    lineMark({ x: from.x + x, y: from.y }, { x: from.x + x, y: from.y + 2 }, PATTERN_LINES.notch);
  return [lineMark(from, to, PATTERN_LINES.cut), tick(4), tick(12), tick(14.5)];
}
