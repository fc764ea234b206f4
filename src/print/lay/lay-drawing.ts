import type { Curve, Line, Point } from '../../geometry/curve.ts';
import type { LayPlan, LaySection, Rectangle } from '../../lay/plan/lay-plan.ts';
import type { LayWords } from '../../words/english-lay.ts';
import type { Drawing, LineStyle, Mark, PathMark, TextMark } from '../drawing.ts';
import { rectangleRun, textMark } from '../page/ruled-marks.ts';
import { textWidth } from '../text/text-width.ts';
import { wrapText } from '../text/wrap-text.ts';
import { arrowMark, drawPlacedPiece } from './lay-piece-drawing.ts';
import {
  beside,
  dashed,
  drawnDistance,
  type LayView,
  PAGE_MARGIN,
  pageView,
  screenView,
} from './lay-view.ts';

/** What stands above a lay: whose it is, and in one line how it is laid. */
export interface LayTitle {
  readonly name: string;
  readonly says: string;
}

/** Room beside the cloth for the ruler, and for the arrow and the words beside it, in ems. */
const LEFT = 4;
const RIGHT = 3.6;
const BELOW = 1.5;

/** A viewer that has none of the fonts asked for takes another, up to so many times as wide. */
const OTHER_FONTS = 1.2;

/**
 * A cloth's lay to scale in mm of cloth: x across it, y along it, 0 0 at the cloth's corner. Each cut piece is a path
 * of class `placed`, where it lies on the flat cloth after unfolding.
 */
export function drawLay(plan: LayPlan, title: LayTitle, words: LayWords): Drawing {
  const view = screenView();
  const width = plan.facts.width + (LEFT + RIGHT) * view.text;
  const head = headLines(title, words.remarks(plan), (width - view.text) / OTHER_FONTS, view.text);
  const top = head.height + 1.6 * view.text;
  const corner = { x: (0.5 - LEFT) * view.text, y: -top };
  return {
    x: -LEFT * view.text,
    y: -top,
    width,
    height: top + plan.length + BELOW * view.text,
    title: `${title.name}: ${title.says}`,
    marks: [
      ...head.lines.map((line) => ({ ...line, at: { x: line.at.x + corner.x, y: line.at.y + corner.y } })),
      ...layMarks(plan, view, words),
    ],
  };
}

/** The same for a page: the cloth lies along it, its beginning at the left, as large as the room allows. */
export function layFigure(
  plan: LayPlan,
  words: LayWords,
  room: { readonly width: number; readonly height: number },
): Drawing {
  const scale = Math.min(
    (room.width - 2 * PAGE_MARGIN) / Math.max(1, plan.length),
    (room.height - 2 * PAGE_MARGIN) / plan.facts.width,
  );
  return {
    x: -PAGE_MARGIN,
    y: -PAGE_MARGIN,
    width: plan.length * scale + 2 * PAGE_MARGIN,
    height: plan.facts.width * scale + 2 * PAGE_MARGIN,
    marks: layMarks(plan, pageView(plan, scale), words),
  };
}

/** What is laid how, and what must be known before cutting. */
function headLines(
  title: LayTitle,
  remarks: readonly string[],
  width: number,
  em: number,
): { readonly lines: readonly TextMark[]; readonly height: number } {
  let y = 0;
  const lines = [
    { text: title.name, size: em * 1.3, bold: true },
    { text: title.says, size: em, bold: false },
    ...remarks.map((text) => ({ text, size: em * 0.8, bold: false })),
  ];
  const marks = lines.flatMap(({ text, size, bold }) =>
    wrapText(text, width, size, bold).map((line) => {
      y += size * 1.35;
      return textMark(line, { x: 0, y }, size, { bold });
    }),
  );
  return { lines: marks, height: y };
}

function layMarks(plan: LayPlan, view: LayView, words: LayWords): Mark[] {
  return [
    ...clothMarks(plan, view),
    ...rulerMarks(plan, view, words),
    ...directionMarks(plan, view, words),
    ...plan.spare.flatMap((spare) => spareMarks(spare, view, words)),
    ...plan.sections.flatMap((section, i) => sectionMarks(section, i, plan, view, words)),
    ...plan.pieces.map((piece) => drawPlacedPiece(piece, view, words, plan.layers.length > 1)),
  ];
}

function path(curves: readonly Curve[], view: LayView, line: LineStyle, closed = false): PathMark {
  return { kind: 'path', runs: [curves.map(view.curve)], closed, line };
}

function down(x: number, from: number, to: number): Line {
  return { kind: 'line', from: { x, y: from }, to: { x, y: to } };
}

function across(y: number, left: number, right: number): Line {
  return { kind: 'line', from: { x: left, y }, to: { x: right, y } };
}

/** The cloth's edges, and what is not used at each side. */
function clothMarks({ facts, length }: LayPlan, view: LayView): Mark[] {
  const insets = [facts.selvedge, facts.selvedge + facts.edgingDepth];
  const inner = [...new Set(insets)].filter((inset) => inset > 0);
  return [
    {
      ...path(rectangleRun(0, 0, facts.width, length), view, { width: view.line * 1.2 }, true),
      class: 'cloth',
    },
    ...inner.flatMap((inset) =>
      [inset, facts.width - inset].map((x) => ({
        ...path([down(x, 0, length)], view, dashed(view, 6, 4)),
        class: 'selvedge',
      })),
    ),
  ];
}

/** A tick every 10 cm (4 in) along the cloth; a figure at each where there is room, else at every fifth. */
function rulerMarks({ length }: LayPlan, view: LayView, words: LayWords): Mark[] {
  const step = words.unit === 'in' ? 101.6 : 100;
  const size = view.text * 0.7;
  const spacing = drawnDistance(view, { x: 0, y: 0 }, { x: 0, y: step });
  const widest = textWidth(words.number(Math.floor(length / step) * step), size);
  const every = spacing > (view.alongCloth === 0 ? widest * 1.3 : size * 1.3) ? 1 : 5;
  const marks: Mark[] = [];
  for (let i = 0; i * step <= length + 1e-6; i++) {
    const at = { x: 0, y: i * step };
    const away = { x: -1, y: i * step };
    const named = i % every === 0;
    const tick: Line = {
      kind: 'line',
      from: beside(view, at, away, 0.15),
      to: beside(view, at, away, named ? 0.8 : 0.5),
    };
    marks.push({
      kind: 'path',
      runs: [[tick]],
      closed: false,
      line: { width: view.line * 0.6 },
      class: 'ruler',
    });
    if (!named) continue;
    const place = beside(view, at, away, view.alongCloth === 0 ? 1.3 : 1);
    const anchor = view.alongCloth === 0 ? 'middle' : 'end';
    marks.push(textMark(words.number(i * step), { x: place.x, y: place.y + size * 0.35 }, size, { anchor }));
  }
  return marks;
}

/** Beside the cloth: an arrow to where the tops lie on one-way cloth, both ways on other. */
function directionMarks({ facts, length }: LayPlan, view: LayView, words: LayWords): Mark[] {
  const reach = Math.min(450, length * 0.35);
  const start = Math.min(60, length * 0.05);
  const at = (y: number): Point => beside(view, { x: facts.width, y }, { x: facts.width + 1, y }, 0.9);
  const [top, bottom] = [at(start), at(start + reach)];
  const label = alongText(
    facts.oneWay ? words.topsThisWay : words.topsEitherWay,
    facts.width,
    start + reach / 2,
    2,
    view,
  );
  const up = { ...arrowMark(top, bottom, view), class: 'direction' };
  return facts.oneWay ? [up, label] : [up, { ...arrowMark(bottom, top, view), class: 'direction' }, label];
}

/** Words beside the right edge, along the cloth, `away` ems from it. */
function alongText(text: string, x: number, y: number, away: number, view: LayView): TextMark {
  const size = view.text * 0.75;
  const at = beside(view, { x, y }, { x: x + 1, y }, away);
  const upright = view.alongCloth === 0;
  return {
    kind: 'text',
    text,
    at: upright ? { x: at.x, y: at.y + size * 0.35 } : at,
    size,
    anchor: 'middle',
    ...(upright ? {} : { angle: view.alongCloth }),
  };
}

/** Where the cloth is cut across before folding, where it is folded, and how. */
function sectionMarks(
  section: LaySection,
  index: number,
  { facts, sections }: LayPlan,
  view: LayView,
  words: LayWords,
): Mark[] {
  const { fold, from, to, upperTurned } = section;
  const marks: Mark[] = [];
  const solid = { width: view.line * 1.2 };
  if (index > 0) marks.push({ ...path([across(from, 0, facts.width)], view, solid), class: 'section' });
  if (sections.length > 1) {
    marks.push(alongText(`${index + 1}. ${words.folds[fold]}`, facts.width, (from + to) / 2, 2.9, view));
  }
  if (fold === 'single') return marks;
  const middle = fold === 'lengthwise' ? facts.width / 2 : (from + to) / 2;
  const line = fold === 'lengthwise' ? down(middle, from, to) : across(middle, 0, facts.width);
  marks.push({ ...path([line], view, upperTurned ? solid : dashed(view, 14, 4, 2, 4)), class: 'fold' });
  return [...marks, foldLabel(section, middle, facts.width, view, words)];
}

/** Beside the line, off the cloth: above it where the line runs along the cloth, at the right where across. */
function foldLabel(
  { fold, from, upperTurned }: LaySection,
  middle: number,
  width: number,
  view: LayView,
  words: LayWords,
): TextMark {
  const size = view.text * 0.75;
  const label = { bold: true, class: 'fold-label' };
  const lying = view.alongCloth === 0;
  if (fold === 'crosswise') {
    const at = beside(view, { x: width, y: middle }, { x: width + 1, y: middle }, 0.3);
    const text = upperTurned ? words.cutHere : words.fold;
    return textMark(text, lying ? at : { x: at.x, y: at.y + size * 0.35 }, size, {
      ...label,
      anchor: lying ? 'middle' : 'start',
    });
  }
  const at = beside(view, { x: middle, y: from }, { x: middle, y: from - 1 }, 0.3);
  return textMark(words.fold, lying ? { x: at.x, y: at.y + size * 0.35 } : at, size, {
    ...label,
    anchor: lying ? 'end' : 'middle',
  });
}

/** A free rectangle with its size, set along its longer side. */
function spareMarks({ x, y, width, height }: Rectangle, view: LayView, words: LayWords): Mark[] {
  const text = words.spare(words.number(width), words.number(height), words.unit);
  const corner = view.point({ x, y });
  const opposite = view.point({ x: x + width, y: y + height });
  const [wide, high] = [Math.abs(opposite.x - corner.x), Math.abs(opposite.y - corner.y)];
  const onEnd = high > wide;
  const size = Math.min(
    view.text * 0.75,
    Math.min(wide, high) * 0.6,
    (0.9 * Math.max(wide, high)) / textWidth(text, 1),
  );
  const middle = { x: (corner.x + opposite.x) / 2, y: (corner.y + opposite.y) / 2 };
  const at = onEnd ? { x: middle.x + size * 0.35, y: middle.y } : { x: middle.x, y: middle.y + size * 0.35 };
  return [
    { ...path(rectangleRun(x, y, width, height), view, dashed(view, 2, 4), true), class: 'spare' },
    { ...textMark(text, at, size, { anchor: 'middle' }), ...(onEnd ? { angle: -Math.PI / 2 } : {}) },
  ];
}
