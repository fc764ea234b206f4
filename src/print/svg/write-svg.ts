import type { Curve } from '../../geometry/curve.ts';
import { endOf, pointAt, startOf } from '../../geometry/evaluate.ts';
import type { Drawing, GroupMark, LineStyle, Mark, PathMark, TextMark, UseMark } from '../drawing.ts';
import { arcToCubics } from '../pdf/arc-to-cubics.ts';
import { markupText } from '../text/markup-text.ts';
import { writtenText } from '../text/plain-text.ts';

/**
 * A drawing as SVG 1.1, width and height in mm and a viewBox in the same numbers. Coordinates are absolute, in mm,
 * rounded to 1e-4; nothing carries a transform except turned text. A drawing within it becomes a nested `<svg>`.
 */
export function writeSvg(drawing: Drawing): string {
  const box = viewBox(drawing);
  const open =
    `<svg xmlns="http://www.w3.org/2000/svg" stroke-linejoin="round" version="1.1" width="${number(drawing.width)}mm" ` +
    `height="${number(drawing.height)}mm" viewBox="${box}" font-family="Helvetica, Arial, sans-serif">`;
  const title = drawing.title === undefined ? [] : [`<title>${escaped(drawing.title)}</title>`];
  return [open, ...title, ...drawing.marks.flatMap((mark) => linesOf(mark)), '</svg>', ''].join('\n');
}

function linesOf(mark: Mark): string[] {
  switch (mark.kind) {
    case 'path':
      return [pathElement(mark)];
    case 'text':
      return [textElement(mark)];
    case 'group':
      return groupElement(mark);
    case 'use':
      return nestedSvg(mark);
  }
}

function groupElement(group: GroupMark): string[] {
  return [`<g${attributes(group)}>`, ...group.marks.flatMap((mark) => linesOf(mark)), '</g>'];
}

function pathElement(path: PathMark): string {
  const data = path.runs.map((run) => runData(run, path.closed)).join('');
  const fill = path.fill === undefined ? 'none' : grey(path.fill);
  return `<path${attributes(path)} d="${data}" fill="${fill}"${stroke(path.line)}/>`;
}

function runData(run: readonly Curve[], closed: boolean): string {
  const first = run[0];
  if (first === undefined) return '';
  return `M${point(startOf(first))}${run.map(segment).join('')}${closed ? 'Z' : ''}`;
}

function segment(curve: Curve): string {
  switch (curve.kind) {
    case 'line':
      return `L${point(curve.to)}`;
    case 'cubic':
      return `C${point(curve.control1)} ${point(curve.control2)} ${point(curve.to)}`;
    case 'arc': {
      if (curve.radius > LARGEST_RADIUS) return arcToCubics(curve).map(segment).join('');
      // Past a half circle the ends alone no longer fix the centre well, so long arcs go in shorter parts.
      const parts = Math.max(1, Math.ceil(Math.abs(curve.sweep) / LONGEST_ARC));
      const flag = curve.sweep > 0 ? 1 : 0;
      const ends = Array.from({ length: parts }, (_, part) =>
        part === parts - 1 ? endOf(curve) : pointAt(curve, (part + 1) / parts),
      );
      return ends
        .map((end) => `A${number(curve.radius)} ${number(curve.radius)} 0 0 ${flag} ${point(end)}`)
        .join('');
    }
  }
}

/** Radians. */
const LONGEST_ARC = (2 * Math.PI) / 3;

/** mm. Viewers that reckon in single precision place the centre of a flatter arc too coarsely. */
const LARGEST_RADIUS = 50_000;

function textElement(text: TextMark): string {
  const { x, y } = text.at;
  const anchor = text.anchor === 'start' ? '' : ` text-anchor="${text.anchor}"`;
  const weight = text.bold === true ? ' font-weight="bold"' : '';
  const turned = text.angle === undefined || text.angle === 0 ? '' : ` ${turnedText(text.angle, x, y)}`;
  const place = `x="${number(x)}" y="${number(y)}" font-size="${number(text.size)}"`;
  return `<text${attributes(text)} ${place}${anchor}${weight}${turned}>${escaped(text.text)}</text>`;
}

function turnedText(angle: number, x: number, y: number): string {
  return `transform="rotate(${number((angle * 180) / Math.PI)} ${number(x)} ${number(y)})"`;
}

function nestedSvg(use: UseMark): string[] {
  const scale = use.scale ?? { x: 1, y: 1 };
  const whole = {
    x: use.offset.x + use.drawing.x * scale.x,
    y: use.offset.y + use.drawing.y * scale.y,
    width: use.drawing.width * scale.x,
    height: use.drawing.height * scale.y,
  };
  const seen = use.clip ?? whole;
  const inside = {
    x: (seen.x - use.offset.x) / scale.x,
    y: (seen.y - use.offset.y) / scale.y,
    width: seen.width / scale.x,
    height: seen.height / scale.y,
  };
  const place = (['x', 'y', 'width', 'height'] as const)
    .map((key) => `${key}="${number(seen[key])}"`)
    .join(' ');
  return [
    `<svg ${place} viewBox="${viewBox(inside)}" preserveAspectRatio="none" overflow="hidden">`,
    ...use.drawing.marks.flatMap((mark) => linesOf(mark)),
    '</svg>',
  ];
}

function attributes(mark: {
  readonly class?: string;
  readonly data?: Readonly<Record<string, string>>;
}): string {
  const own = mark.class === undefined ? '' : ` class="${escaped(mark.class)}"`;
  const data = Object.entries(mark.data ?? {}).map(([name, value]) => ` data-${name}="${escaped(value)}"`);
  return own + data.join('');
}

function stroke(line: LineStyle): string {
  if (line.width === 0) return '';
  const phase = line.dashPhase === undefined ? '' : ` stroke-dashoffset="${number(line.dashPhase)}"`;
  const dash =
    line.dash === undefined
      ? ''
      : ` stroke-dasharray="${line.dash.map((length) => number(length)).join(' ')}"${phase}`;
  return ` stroke="${grey(line.grey ?? 0)}" stroke-width="${number(line.width)}"${dash}`;
}

function grey(level: number): string {
  const byte = Math.round(level * 255)
    .toString(16)
    .padStart(2, '0');
  return level === 0 ? 'black' : `#${byte}${byte}${byte}`;
}

function viewBox(box: { x: number; y: number; width: number; height: number }): string {
  return [box.x, box.y, box.width, box.height].map(number).join(' ');
}

function point(at: { x: number; y: number }): string {
  return `${number(at.x)} ${number(at.y)}`;
}

/** Rounded to 1e-4 mm; never an exponent, never a negative zero. */
function number(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`a drawing holds the number ${value}`);
  const rounded = Math.round(value * 1e4) / 1e4;
  return rounded === 0 ? '0' : String(rounded);
}

function escaped(text: string): string {
  return markupText(writtenText(text));
}
