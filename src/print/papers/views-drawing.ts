import type { Curve, Point } from '../../geometry/curve.ts';
import type { GownView } from '../../hanging/views.ts';
import type { Drawing, LineStyle, Mark } from '../drawing.ts';
import { lineMark, textMark } from '../page/ruled-marks.ts';
import { textWidth } from '../text/text-width.ts';

/** Views of the hung gown in rows, each row on one floor, with what is written beside them. */
export interface DrawnViews {
  /** The layer that is seen, and parts that are not hung with it. */
  readonly layer: string;
  readonly notHung: readonly string[];
  /** Else it is a plain one. */
  readonly isBodiceDrafted: boolean;
  readonly rows: readonly (readonly { readonly view: GownView; readonly name: string }[])[];
  /** Of these the net tiers alone are seen, without the layer. */
  readonly under?: readonly GownView[];
  /** The train as it lies, from her heels: written and dimensioned on the view from above. mm. */
  readonly train?: {
    readonly heelBehind: number;
    readonly behindHeel: number;
    readonly left: number;
    readonly right: number;
  };
  readonly floor: string;
  /** Length of the scale bar, mm of the gown. */
  readonly scaleBar: number;
  readonly say: (mm: number) => string;
}

/** Room on the page, mm, and the largest scale: mm on paper for one of the gown. */
export interface ViewsRoom {
  readonly width: number;
  readonly height?: number;
  readonly scale?: number;
}

const OUTLINE: LineStyle = { width: 0.35 };
const FINE: LineStyle = { width: 0.16 };
const EDGING: LineStyle = { width: 0.16, dash: [1.4, 0.7] };
const FIGURE: LineStyle = { width: 0.16, grey: 0.62 };
const FLOOR: LineStyle = { width: 0.16, grey: 0.45 };

/** Type, and room between views, mm on paper. */
const TEXT = 2.8;
const GAP = 5;
/** Cloth never nearer to a name than this. */
const NAME = 2 * TEXT;
/** The train's length stands so far from the view from above, and may be set in wider type than it is measured in. */
const DIMENSION = 3;
const WIDER_TYPE = 1.2;
/** Room under a row for the floor's name, the scale and the train's width. */
const BELOW = 9;

export function viewsDrawing(views: DrawnViews, room: ViewsRoom): Drawing {
  const rows = views.rows.filter((row) => row.length > 0);
  const wide = Math.max(...rows.map((row) => row.reduce((sum, { view }) => sum + widthOf(view), 0)));
  const most = Math.max(...rows.map((row) => row.length));
  const tall = rows.reduce((sum, row) => sum + heightOf(row), 0);
  const scale = Math.min(
    room.scale ?? Number.POSITIVE_INFINITY,
    (room.width - (most + 1) * GAP - besideTrain(views)) / wide,
    ((room.height ?? Number.POSITIVE_INFINITY) - rows.length * (NAME + BELOW)) / tall,
  );
  const marks: Mark[] = [];
  let top = 0;
  for (const [i, row] of rows.entries()) {
    const isLast = i === rows.length - 1;
    marks.push(...rowMarks(row, views, { scale, top, width: room.width, isLast }));
    top += NAME + heightOf(row) * scale + BELOW;
  }
  return { x: 0, y: 0, width: room.width, height: top, marks };
}

type Row = DrawnViews['rows'][number];

function rowMarks(
  row: Row,
  views: DrawnViews,
  {
    scale,
    top,
    width,
    isLast,
  }: { readonly scale: number; readonly top: number; readonly width: number; readonly isLast: boolean },
): Mark[] {
  const beside = row.some(({ view }) => view.side === 'above') ? besideTrain(views) : 0;
  const spare = width - beside - row.reduce((sum, { view }) => sum + widthOf(view) * scale, 0);
  const gap = Math.min(3 * GAP, spare / (row.length + 1));
  const floor = top + NAME + heightOf(row) * scale;
  let left = (spare - gap * (row.length - 1)) / 2;
  const marks: Mark[] = [];
  for (const { view, name } of row) {
    const above = view.side === 'above';
    const down = above ? floor - view.box.bottom * scale : floor;
    const place = ({ x, y }: Point): Point => ({
      x: left + (x - view.box.left) * scale,
      y: down + y * scale,
    });
    const across = widthOf(view) * scale;
    const head = above ? down + view.box.top * scale - TEXT : top + TEXT;
    marks.push(
      textMark(name, { x: left + across / 2, y: head }, TEXT, { anchor: 'middle', bold: true }),
      ...(above
        ? []
        : [lineMark({ x: left - GAP / 3, y: floor }, { x: left + across + GAP / 3, y: floor }, FLOOR)]),
      {
        kind: 'group',
        marks: viewMarks(view, place, weightAt(scale)),
        class: 'view',
        data: { side: view.side },
      },
      ...(above && views.train !== undefined ? trainMarks(view, views, views.train, place) : []),
    );
    left += across + gap;
  }
  const first = (spare - gap * (row.length - 1)) / 2;
  marks.push(textMark(views.floor, { x: first - GAP / 3, y: floor + TEXT + 0.4 }, TEXT));
  // One bar for all: the rows are drawn alike.
  return isLast
    ? [...marks, ...scaleMarks(views, scale, { x: first - GAP / 3, y: floor + BELOW - 2 })]
    : marks;
}

/** Room for the train's length beside the view from above. */
function besideTrain({ train, say }: DrawnViews): number {
  return train === undefined ? 0 : DIMENSION + WIDER_TYPE * textWidth(say(train.behindHeel), TEXT);
}

function widthOf({ box }: GownView): number {
  return box.right - box.left;
}

/** From the highest line down to the floor; a view from above takes what it needs. */
function heightOf(row: Row): number {
  return Math.max(
    ...row.map(({ view: { side, box } }) =>
      side === 'above' ? box.bottom - box.top : Math.max(0, -box.top),
    ),
  );
}

/** Small figures want finer lines; 1 at 1:10. */
function weightAt(scale: number): number {
  return Math.min(1, Math.max(0.55, Math.sqrt(scale / 0.1)));
}

function viewMarks(view: GownView, place: (point: Point) => Point, weight: number): Mark[] {
  const lines = (
    all: readonly (readonly Point[])[],
    line: LineStyle,
    name: string,
    closed = false,
  ): Mark[] =>
    all.length === 0
      ? []
      : [
          {
            kind: 'path',
            runs: all.map((points) => drawnThrough(points.map(place), closed)),
            closed,
            line: { ...line, width: line.width * weight },
            class: name,
          },
        ];
  return [
    ...lines(view.figure, FIGURE, 'figure'),
    ...lines(view.folds, FINE, 'fold'),
    ...lines(view.seams, FINE, 'seam'),
    ...lines(view.edging, EDGING, 'edging'),
    ...lines(view.parts, OUTLINE, 'part'),
    ...lines(view.edges, OUTLINE, 'edge'),
    ...lines(view.outlines, OUTLINE, 'outline', true),
    ...lines(view.opening, OUTLINE, 'opening'),
    ...lines(view.strokes, FINE, 'stroke'),
  ];
}

/** As a hand draws through points: a cubic between each two, its handles along the chord of their neighbours. */
function drawnThrough(points: readonly Point[], closed: boolean): Curve[] {
  const last = points.length - 1;
  const at = (i: number): Point | undefined =>
    closed ? points[i < 0 ? last - 1 : i > last ? 1 : i] : points[i];
  return points.slice(1).map((to, k): Curve => {
    const from = points[k]!;
    const [before, after] = [at(k - 1), at(k + 2)];
    if (isCorner(before, from, to) && isCorner(from, to, after)) return { kind: 'line', from, to };
    const out = isCorner(before, from, to) ? undefined : tangent(before!, to, from, to);
    const into = isCorner(from, to, after) ? undefined : tangent(from, after!, from, to);
    return {
      kind: 'cubic',
      from,
      control1: out === undefined ? third(from, to) : { x: from.x + out.x, y: from.y + out.y },
      control2: into === undefined ? third(to, from) : { x: to.x - into.x, y: to.y - into.y },
      to,
    };
  });
}

/** A third of the way from one to the other, along the way of two neighbours. */
function tangent(a: Point, b: Point, from: Point, to: Point): Point {
  const [x, y] = [b.x - a.x, b.y - a.y];
  const length = Math.sqrt(x * x + y * y);
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const reach = Math.sqrt(dx * dx + dy * dy) / 3;
  return length > 0 ? { x: (x / length) * reach, y: (y / length) * reach } : { x: dx / 3, y: dy / 3 };
}

function third(from: Point, to: Point): Point {
  return { x: from.x + (to.x - from.x) / 3, y: from.y + (to.y - from.y) / 3 };
}

/** Turns sharper than 50° stay corners; so do ends. */
const CORNER_COSINE = 0.64;

function isCorner(before: Point | undefined, at: Point, after: Point | undefined): boolean {
  if (before === undefined || after === undefined) return true;
  const [ax, ay, bx, by] = [at.x - before.x, at.y - before.y, after.x - at.x, after.y - at.y];
  const lengths = Math.sqrt((ax * ax + ay * ay) * (bx * bx + by * by));
  return lengths === 0 || (ax * bx + ay * by) / lengths < CORNER_COSINE;
}

/** Length behind the heels and width, with their lines, beside the view from above. */
function trainMarks(
  view: GownView,
  { say }: DrawnViews,
  train: NonNullable<DrawnViews['train']>,
  place: (point: Point) => Point,
): Mark[] {
  const from = place({ x: view.box.right, y: train.heelBehind });
  const to = place({ x: view.box.right, y: train.heelBehind + train.behindHeel });
  const x = from.x + DIMENSION - 1;
  // From above her left is on the left.
  const [left, right] = [place({ x: -train.left, y: 0 }).x, place({ x: -train.right, y: 0 }).x];
  const y = place({ x: 0, y: view.box.bottom }).y + 2;
  return [
    ...spanMarks({ x, y: from.y }, { x, y: to.y }),
    textMark(say(train.behindHeel), { x: x + 1, y: (from.y + to.y) / 2 + TEXT / 3 }, TEXT),
    ...spanMarks({ x: left, y }, { x: right, y }),
    textMark(say(train.left - train.right), { x: (left + right) / 2, y: y + TEXT }, TEXT, {
      anchor: 'middle',
    }),
  ];
}

function spanMarks(from: Point, to: Point): Mark[] {
  const across = from.x === to.x;
  const tick = (at: Point): Mark =>
    across
      ? lineMark({ x: at.x - 0.8, y: at.y }, { x: at.x + 0.8, y: at.y }, FINE)
      : lineMark({ x: at.x, y: at.y - 0.8 }, { x: at.x, y: at.y + 0.8 }, FINE);
  return [lineMark(from, to, FINE), tick(from), tick(to)];
}

function scaleMarks({ scaleBar, say }: DrawnViews, scale: number, at: Point): Mark[] {
  const end = { x: at.x + scaleBar * scale, y: at.y };
  return [...spanMarks(at, end), textMark(say(scaleBar), { x: end.x + 1.5, y: at.y + TEXT / 3 }, TEXT)];
}
