import type { Curve, Point } from '../../geometry/curve.ts';
import { endOf, startOf } from '../../geometry/evaluate.ts';
import type { Drawing, GroupMark, LineStyle, Mark, PathMark, TextMark, UseMark } from '../drawing.ts';
import { arcToCubics } from './arc-to-cubics.ts';

/** PDF's unit, 1/72 in, in a millimetre (ISO 32000-1). */
export const POINTS_PER_MM = 72 / 25.4;

/** What a content stream refers to by name; the writer keeps it. */
export interface PdfResources {
  /** The name of a drawing's Form XObject. */
  readonly form: (drawing: Drawing) => string;
  /** The name of what switches a group. */
  readonly layer: (names: readonly string[], offAtFirst: boolean) => string;
  /** A text ready to show. */
  readonly text: (text: string, bold: boolean) => EncodedText;
}

export interface EncodedText {
  readonly font: string;
  /** Operands of `Tj`, in order. */
  readonly strings: readonly string[];
  /** In ems. */
  readonly width: number;
  /** The font has no bold of its own: thicken with a stroke. */
  readonly thicken: boolean;
}

/** The operators that draw a drawing: points, the drawing's lower left corner at 0 0, y up. */
export function pdfContent(drawing: Drawing, resources: PdfResources): string {
  const { x: left, y: top, height } = drawing;
  const bottom = top + height;
  const page: Page = {
    resources,
    state: { line: '', fill: '' },
    x: (x) => (x - left) * POINTS_PER_MM,
    y: (y) => (bottom - y) * POINTS_PER_MM,
  };
  return ['1 j', ...drawing.marks.flatMap((mark) => operators(mark, page))].join('\n');
}

interface Page {
  readonly resources: PdfResources;
  /** What the stream has set last, so that it is not set again for every line. */
  readonly state: { line: string; fill: string };
  readonly x: (x: number) => number;
  readonly y: (y: number) => number;
}

function operators(mark: Mark, page: Page): string[] {
  switch (mark.kind) {
    case 'path':
      return pathOperators(mark, page);
    case 'text':
      return textOperators(mark, page);
    case 'group':
      return groupOperators(mark, page);
    case 'use':
      return useOperators(mark, page);
  }
}

function groupOperators(group: GroupMark, page: Page): string[] {
  const inside = group.marks.flatMap((mark) => operators(mark, page));
  if (group.switchedBy === undefined) return inside;
  const name = page.resources.layer(group.switchedBy, group.offAtFirst === true);
  return [`/OC /${name} BDC`, ...inside, 'EMC'];
}

function pathOperators(path: PathMark, page: Page): string[] {
  const runs = path.runs.filter((run) => run.length > 0);
  const stroked = path.line.width > 0;
  const filled = path.fill !== undefined;
  if (runs.length === 0 || (!stroked && !filled)) return [];
  const shape = runs.flatMap((run) => [
    `${point(startOf(run[0]!), page)} m`,
    ...run.flatMap((curve) => segments(curve, page)),
    ...(path.closed ? ['h'] : []),
  ]);
  const paint = stroked && filled ? 'B' : stroked ? 'S' : 'f';
  return [
    ...(stroked ? lineOperators(path.line, page) : []),
    ...(path.fill === undefined ? [] : fillOperators(path.fill, page)),
    ...shape,
    paint,
  ];
}

function segments(curve: Curve, page: Page): string[] {
  switch (curve.kind) {
    case 'line':
      return [`${point(endOf(curve), page)} l`];
    case 'cubic':
      return [`${point(curve.control1, page)} ${point(curve.control2, page)} ${point(curve.to, page)} c`];
    case 'arc':
      return arcToCubics(curve).flatMap((cubic) => segments(cubic, page));
  }
}

function lineOperators(line: LineStyle, page: Page): string[] {
  const dash = (line.dash ?? []).map((length) => pdfNumber(length * POINTS_PER_MM)).join(' ');
  const phase = pdfNumber((line.dashPhase ?? 0) * POINTS_PER_MM);
  const style = `${pdfNumber(line.grey ?? 0)} G ${pdfNumber(line.width * POINTS_PER_MM)} w [${dash}] ${phase} d`;
  if (style === page.state.line) return [];
  page.state.line = style;
  return [style];
}

function fillOperators(grey: number, page: Page): string[] {
  const fill = `${pdfNumber(grey)} g`;
  if (fill === page.state.fill) return [];
  page.state.fill = fill;
  return [fill];
}

function textOperators(text: TextMark, page: Page): string[] {
  const encoded = page.resources.text(text.text, text.bold === true);
  if (encoded.strings.length === 0) return [];
  const size = text.size * POINTS_PER_MM;
  const back = { start: 0, middle: 0.5, end: 1 }[text.anchor] * encoded.width * size;
  // Clockwise as drawn is negative with y up.
  const cos = Math.cos(text.angle ?? 0);
  const sin = -Math.sin(text.angle ?? 0);
  const x = page.x(text.at.x) - back * cos;
  const y = page.y(text.at.y) - back * sin;
  const matrix = [cos, sin, -sin, cos, x, y].map((value) => pdfNumber(value)).join(' ');
  const operators = [
    ...fillOperators(0, page),
    'BT',
    `/${encoded.font} ${pdfNumber(size)} Tf ${matrix} Tm`,
    ...encoded.strings.map((string) => `${string} Tj`),
    'ET',
  ];
  if (!encoded.thicken) return operators;
  return ['q', `0 G ${pdfNumber(0.03 * size)} w [] 0 d 2 Tr 0 g`, ...operators, 'Q'];
}

function useOperators(use: UseMark, page: Page): string[] {
  const { drawing, offset, clip } = use;
  const scale = use.scale ?? { x: 1, y: 1 };
  const left = page.x(drawing.x * scale.x + offset.x);
  const bottom = page.y((drawing.y + drawing.height) * scale.y + offset.y);
  const matrix = [scale.x, 0, 0, scale.y].map((value) => pdfNumber(value, 1e8)).join(' ');
  return [
    'q',
    ...(clip === undefined ? [] : [clipOperator(clip, page)]),
    `${matrix} ${pdfNumber(left)} ${pdfNumber(bottom)} cm`,
    `/${page.resources.form(drawing)} Do`,
    'Q',
  ];
}

function clipOperator(clip: NonNullable<UseMark['clip']>, page: Page): string {
  const x = page.x(clip.x);
  const y = page.y(clip.y + clip.height);
  const sides = [x, y, clip.width * POINTS_PER_MM, clip.height * POINTS_PER_MM];
  return `${sides.map((value) => pdfNumber(value)).join(' ')} re W n`;
}

function point(at: Point, page: Page): string {
  return `${pdfNumber(page.x(at.x))} ${pdfNumber(page.y(at.y))}`;
}

/** Rounded to 0.001 pt (0.00035 mm), or as finely as asked: more digits would make the file larger, not truer. */
export function pdfNumber(value: number, steps = 1000): string {
  if (!Number.isFinite(value)) throw new RangeError(`a drawing holds the number ${value}`);
  const count = Math.round(value * steps);
  if (count === 0) return '0';
  if (steps === 1000 && Math.abs(count) < MOST_THOUSANDTHS) return ofThousandths(count);
  const rounded = count / steps;
  return Math.abs(rounded) < 1e-6 ? rounded.toFixed(8) : String(rounded);
}

/** Put together of whole numbers, several times as fast as a number with decimals is written. */
function ofThousandths(count: number): string {
  const size = Math.abs(count);
  const whole = Math.floor(size / 1000);
  return `${count < 0 ? '-' : ''}${whole}${DECIMALS[size - 1000 * whole]!}`;
}

const MOST_THOUSANDTHS = 1e9;

/** What stands behind the whole, by thousandths. */
const DECIMALS = Array.from({ length: 1000 }, (_, count) => String(count / 1000).slice(1));
