import type { Point } from '../../geometry/curve.ts';
import { oval } from '../../geometry/oval.ts';
import type { SheetPlan } from '../../sheets/sheet-plan.ts';
import type { PatternWords } from '../../words/english-pattern.ts';
import type { LineStyle, Mark } from '../drawing.ts';
import { type Strip, stacked } from '../page/page-strip.ts';
import { TYPE } from '../page/page-type.ts';
import { lineMark, textMark } from '../page/ruled-marks.ts';
import { wrapText } from '../text/wrap-text.ts';
import { grainPath, PATTERN_LINES } from './piece-drawing.ts';

/** What each line of the pattern is, drawn as on the sheets; only those that this pattern has. */
export function legend({ pieces }: SheetPlan, text: PatternWords['legend'], width: number): Strip {
  const cut = pieces.map(({ cutPiece }) => cutPiece);
  const hasFold = cut.some(({ piece }) => piece.frontEdge === 'fold' || piece.backEdge === 'fold');
  const hasNotches = cut.some(({ notches }) => notches.length > 0);
  const marked = new Set(cut.flatMap(({ marks }) => marks.map(({ name }) => name)));
  const hasMarks = [...marked].some((name) => !PLEATED.includes(name));
  const hasStones = cut.some(({ stones = [] }) => stones.length > 0);
  const hasPleats = marked.has('fold-line');
  return stacked([
    heading(text.title),
    entry(text.cut, width, plain(PATTERN_LINES.cut)),
    entry(text.sew, width, plain(PATTERN_LINES.sew)),
    ...(hasFold ? [entry(text.fold, width, plain(PATTERN_LINES.fold))] : []),
    entry(text.grain, width, (from, to) => [grainPath({ kind: 'line', from, to })]),
    ...(hasNotches ? [entry(text.notches, width, notches)] : []),
    ...(hasPleats ? [entry(text.pleatFold, width, plain(PATTERN_LINES.pleatFold))] : []),
    ...(marked.has('placement-line') ? [entry(text.placement, width, placement)] : []),
    ...(marked.has('dart-leg-line') ? [entry(text.dart, width, dart)] : []),
    ...(marked.has('tuck-fold-line') ? [entry(text.tuck, width, plain(PATTERN_LINES.pleatFold))] : []),
    ...(marked.has('bustle-pick-up') ? [entry(text.bustle, width, bustlePoint)] : []),
    ...(hasStones ? [entry(text.stone, width, stones)] : []),
    ...(hasMarks ? [entry(text.mark, width, plain(PATTERN_LINES.mark))] : []),
  ]);
}

const PLEATED = [
  'fold-line',
  'placement-line',
  'pleat-arrow',
  'stitched-to',
  'tuck-fold-line',
  'tuck-stitch-line',
  'dart-leg-line',
  'dart-fold-line',
  'bustle-anchor',
  'bustle-pick-up',
];

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

/** Three dots and a motif. */
function stones(from: Point, to: Point): Mark[] {
  const dots = [1, 4, 7].map((x, i) => {
    const at = { x: from.x + x, y: from.y + (i % 2) };
    return lineMark(at, { x: at.x + PATTERN_LINES.stone.width, y: at.y }, PATTERN_LINES.stone);
  });
  const motif = oval({ x: to.x - 5, y: to.y }, 3, 2);
  return [...dots, { kind: 'path', runs: [motif], closed: true, line: PATTERN_LINES.motif }];
}

function bustlePoint(from: Point, to: Point): Mark[] {
  const ring = oval({ x: from.x + 4, y: from.y }, 2, 2);
  const cross = [1, -1].map((side) =>
    lineMark({ x: to.x - 8, y: to.y - 2 * side }, { x: to.x - 4, y: to.y + 2 * side }, PATTERN_LINES.notch),
  );
  return [{ kind: 'path', runs: [ring], closed: true, line: PATTERN_LINES.notch }, ...cross];
}

/** A dart on its side, its point to the right. */
function dart(from: Point, to: Point): Mark[] {
  return [-2, 0, 2].map((y) => lineMark({ x: from.x, y: from.y + y }, to, PATTERN_LINES.mark));
}

/** The line that a fold is brought to, and the arrow to it. */
function placement(from: Point, to: Point): Mark[] {
  const tip = { x: to.x - 1, y: from.y };
  const upright = (x: number, line: LineStyle): Mark =>
    lineMark({ x, y: from.y - 2 }, { x, y: from.y + 2 }, line);
  return [
    lineMark({ x: from.x + 1, y: from.y }, tip, PATTERN_LINES.arrow),
    lineMark(tip, { x: tip.x - 2.5, y: tip.y - 1 }, PATTERN_LINES.arrow),
    lineMark(tip, { x: tip.x - 2.5, y: tip.y + 1 }, PATTERN_LINES.arrow),
    upright(from.x + 1, PATTERN_LINES.pleatFold),
    upright(to.x - 1, PATTERN_LINES.mark),
  ];
}

/** A stretch of cut line with one tick, and with two. */
function notches(from: Point, to: Point): Mark[] {
  const tick = (x: number): Mark =>
    lineMark({ x: from.x + x, y: from.y }, { x: from.x + x, y: from.y + 2 }, PATTERN_LINES.notch);
  return [lineMark(from, to, PATTERN_LINES.cut), tick(4), tick(12), tick(14.5)];
}
