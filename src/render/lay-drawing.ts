import type { Curve, Line, Point } from '../geometry/curve.ts';
import { enlarged, placed, placedPoint } from '../geometry/transform.ts';
import type { LayPlan, LaySection, PlacedPiece, Rectangle } from '../lay-plans/lay-plan.ts';
import type { Drawing, LineStyle, Mark, PathMark, TextMark } from './drawing.ts';
import { rectangleRun, textMark } from './ruled-marks.ts';

/** How a lay is shown: at full size for a screen, or small and lying along the page. */
interface LayView {
  readonly curve: (curve: Curve) => Curve;
  readonly point: (point: Point) => Point;
  /** Height of text and width of the cut line, mm. */
  readonly text: number;
  readonly line: number;
}

export interface LayWords {
  /** A length as the maker reads it, without its unit: `38`. */
  readonly number: (mm: number) => string;
  readonly unit: string;
}

/** Room round the cloth for ruler and heading, in heights of text. */
const MARGIN = 5;
/** Height of text on a lay at full size, mm: readable when the whole cloth fills a screen. */
const SCREEN_TEXT = 30;
/** The same in the papers: small print, read at the table (common practice: not under 2 mm). */
const PAPER_TEXT = 2.6;

/**
 * A layer's lay at full size: x across the cloth, y along it, 0 0 at the cloth's corner. Each cut piece is a path of
 * class `placed`, in cloth coordinates after unfolding.
 */
export function drawLay(plan: LayPlan, title: string, words: LayWords): Drawing {
  const view: LayView = { curve: (curve) => curve, point: (point) => point, text: SCREEN_TEXT, line: 2 };
  const margin = MARGIN * SCREEN_TEXT;
  return {
    x: -margin,
    y: -margin,
    width: plan.facts.width + 2 * margin,
    height: plan.length + 2 * margin,
    title,
    marks: [
      textMark(title, { x: 0, y: -2.5 * SCREEN_TEXT }, SCREEN_TEXT * 1.2, { bold: true }),
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
  const margin = 2.5 * PAPER_TEXT;
  const scale = Math.min(
    (room.width - 2 * margin) / Math.max(1, plan.length),
    (room.height - 2 * margin) / plan.facts.width,
  );
  const lying = { mirror: false, angle: -Math.PI / 2, shift: { x: 0, y: plan.facts.width } };
  const point = (at: Point): Point => {
    const { x, y } = placedPoint(lying, at);
    return { x: x * scale, y: y * scale };
  };
  const view: LayView = {
    curve: (curve) => enlarged(placed(lying, curve), scale),
    point,
    text: PAPER_TEXT,
    line: 0.3,
  };
  return {
    x: -margin,
    y: -margin,
    width: plan.length * scale + 2 * margin,
    height: plan.facts.width * scale + 2 * margin,
    marks: layMarks(plan, view, words),
  };
}

function layMarks(plan: LayPlan, view: LayView, words: LayWords): Mark[] {
  return [
    ...clothMarks(plan, view),
    ...rulerMarks(plan, view, words),
    ...plan.spare.flatMap((spare) => spareMarks(spare, view, words)),
    ...plan.sections.flatMap((section) => foldMarks(section, plan, view)),
    ...plan.pieces.flatMap((piece) => pieceMarks(piece, view)),
  ];
}

function path(curves: readonly Curve[], view: LayView, line: LineStyle, closed = false): PathMark {
  return { kind: 'path', runs: [curves.map(view.curve)], closed, line };
}

function dashed(view: LayView, ...dash: number[]): LineStyle {
  return { width: view.line * 0.7, dash: dash.map((part) => part * view.line) };
}

/** The cloth's edges, what is not used at each side, and the way that all tops lie. */
function clothMarks({ facts, length }: LayPlan, view: LayView): Mark[] {
  const inside = facts.selvedge + facts.edgingDepth;
  const down = (x: number): Line => ({ kind: 'line', from: { x, y: 0 }, to: { x, y: length } });
  return [
    path(rectangleRun(0, 0, facts.width, length), view, { width: view.line }, true),
    ...(inside === 0
      ? []
      : [
          path([down(inside)], view, dashed(view, 6, 6)),
          path([down(facts.width - inside)], view, dashed(view, 6, 6)),
        ]),
    ...(facts.oneWay ? arrow({ x: facts.width, y: length * 0.5 }, length, view) : []),
  ];
}

/** An arrow beside the cloth: the direction in which every top lies. */
function arrow(at: Point, length: number, view: LayView): Mark[] {
  const reach = Math.min(length / 4, 400);
  const foot = view.point({ x: at.x, y: at.y + reach });
  const head = view.point({ x: at.x, y: at.y - reach });
  const along = { x: head.x - foot.x, y: head.y - foot.y };
  const size = Math.hypot(along.x, along.y);
  const unit = { x: along.x / size, y: along.y / size };
  const out = view.point({ x: at.x + 1, y: at.y });
  const origin = view.point(at);
  const gap = Math.hypot(out.x - origin.x, out.y - origin.y);
  const away = { x: ((out.x - origin.x) / gap) * view.text, y: ((out.y - origin.y) / gap) * view.text };
  const move = (point: Point): Point => ({ x: point.x + away.x, y: point.y + away.y });
  const barb = (side: 1 | -1): Point => ({
    x: head.x - unit.x * view.text + side * unit.y * view.text * 0.4,
    y: head.y - unit.y * view.text - side * unit.x * view.text * 0.4,
  });
  const line = (from: Point, to: Point): Line => ({ kind: 'line', from: move(from), to: move(to) });
  return [
    {
      kind: 'path',
      runs: [[line(foot, head)], [line(barb(1), head)], [line(barb(-1), head)]],
      closed: false,
      line: { width: view.line },
      class: 'direction',
    },
  ];
}

/** A tick every 10 cm along the cloth, a figure every 50 cm. */
const TICK_EVERY = 100;
const FIGURE_EVERY = 5;

function rulerMarks({ length }: LayPlan, view: LayView, words: LayWords): Mark[] {
  const marks: Mark[] = [];
  for (let i = 0; i * TICK_EVERY <= length; i++) {
    const named = i % FIGURE_EVERY === 0;
    const at = view.point({ x: 0, y: i * TICK_EVERY });
    const beside = outwards(view, { x: 0, y: i * TICK_EVERY }, view.text * (named ? 0.8 : 0.4));
    marks.push({
      kind: 'path',
      runs: [[{ kind: 'line', from: at, to: beside }]],
      closed: false,
      line: { width: view.line * 0.7 },
      class: 'ruler',
    });
    if (named) {
      const text = outwards(view, { x: 0, y: i * TICK_EVERY }, view.text * 1.8);
      marks.push(centred(words.number(i * TICK_EVERY), text, view.text * 0.8));
    }
  }
  return marks;
}

/** A place beside the cloth's left edge, `by` mm on the drawing away from it. */
function outwards(view: LayView, at: Point, by: number): Point {
  const from = view.point(at);
  const to = view.point({ x: at.x - 100, y: at.y });
  const size = Math.hypot(to.x - from.x, to.y - from.y);
  return { x: from.x + ((to.x - from.x) / size) * by, y: from.y + ((to.y - from.y) / size) * by };
}

function centred(text: string, at: Point, size: number, bold = false): TextMark {
  return textMark(text, { x: at.x, y: at.y + size * 0.35 }, size, { anchor: 'middle', bold });
}

/** Where the cloth is folded, and where one way of folding gives place to the next. */
function foldMarks(section: LaySection, { facts, length }: LayPlan, view: LayView): Mark[] {
  const middle = (section.from + section.to) / 2;
  const across = (y: number): Line => ({ kind: 'line', from: { x: 0, y }, to: { x: facts.width, y } });
  const ends = section.to < length - 1 ? [path([across(section.to)], view, dashed(view, 2, 4))] : [];
  if (section.fold === 'single') return ends;
  const x = facts.width / 2;
  const fold: Line =
    section.fold === 'lengthwise'
      ? { kind: 'line', from: { x, y: section.from }, to: { x, y: section.to } }
      : across(middle);
  const at = view.point(
    section.fold === 'lengthwise' ? { x, y: section.from + 60 } : { x: facts.width * 0.9, y: middle },
  );
  return [
    ...ends,
    { ...path([fold], view, dashed(view, 14, 4, 2, 4)), class: 'fold' },
    centred(section.upperTurned ? 'cut along the fold' : 'fold', at, view.text * 0.8),
  ];
}

function spareMarks({ x, y, width, height }: Rectangle, view: LayView, words: LayWords): Mark[] {
  const at = view.point({ x: x + width / 2, y: y + height / 2 });
  return [
    { ...path(rectangleRun(x, y, width, height), view, dashed(view, 1, 5), true), class: 'spare' },
    centred(`spare ${words.number(width)} × ${words.number(height)} ${words.unit}`, at, view.text * 0.8),
  ];
}

/** Cut line, grain, cutting number and name; pieces that lie face down say so. */
function pieceMarks(piece: PlacedPiece, view: LayView): Mark[] {
  const { grain } = piece;
  const middle = view.point({ x: (grain.from.x + grain.to.x) / 2, y: (grain.from.y + grain.to.y) / 2 });
  const below = { x: middle.x, y: middle.y + view.text * 1.1 };
  const name = [piece.gore, piece.part].filter((part) => part !== undefined).join(', ');
  const tip = view.point(grain.to);
  const foot = view.point(grain.from);
  const size = Math.hypot(tip.x - foot.x, tip.y - foot.y);
  const unit = size === 0 ? { x: 0, y: 0 } : { x: (tip.x - foot.x) / size, y: (tip.y - foot.y) / size };
  const barb = (side: 1 | -1): Line => ({
    kind: 'line',
    from: {
      x: tip.x - unit.x * view.text * 0.6 + side * unit.y * view.text * 0.25,
      y: tip.y - unit.y * view.text * 0.6 - side * unit.x * view.text * 0.25,
    },
    to: tip,
  });
  return [
    {
      ...path(piece.outline, view, { width: view.line }, true),
      class: 'placed',
      data: {
        gore: piece.gore,
        copy: String(piece.copy),
        mirrored: String(piece.mirrored),
        turned: String(piece.turned),
      },
    },
    {
      kind: 'path',
      runs: [[{ kind: 'line', from: foot, to: tip }], [barb(1)], [barb(-1)]],
      closed: false,
      line: { width: view.line * 0.6 },
      class: 'grain',
    },
    ...piece.notches.map(
      (notch): PathMark => ({ ...path([notch], view, { width: view.line * 0.6 }), class: 'notch' }),
    ),
    centred(String(piece.number), { x: middle.x - view.text, y: middle.y }, view.text * 1.4, true),
    centred(name, { x: below.x, y: below.y + view.text * 0.3 }, view.text * 0.8),
    ...(piece.face === 'down'
      ? [centred('face down', { x: below.x, y: below.y + view.text * 1.3 }, view.text * 0.7)]
      : []),
  ];
}
