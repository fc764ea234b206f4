import SVGPathCommander from 'svg-path-commander';
import { bezier, clipped, type ReadPdf, type XY } from './read-pdf.ts';

/** A sheet as the report has it. */
export interface ReportedSheet {
  readonly page: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly bottom: number;
}

export interface Segment {
  readonly from: XY;
  readonly to: XY;
}

/**
 * The pattern put together again from the sheets of a PDF, by the rectangles that the report gives and nothing else:
 * pattern coordinates, mm, y down. Join marks and text of the sheets themselves stay out.
 */
export function reassembled(
  pdf: ReadPdf,
  sheets: readonly ReportedSheet[],
  scale: { across: number; down: number } = { across: 1, down: 1 },
): Segment[] {
  return sheets.flatMap((sheet) => {
    const frame = {
      left: sheet.left,
      bottom: sheet.bottom,
      right: sheet.left + sheet.width * scale.across,
      top: sheet.bottom + sheet.height * scale.down,
    };
    const toPattern = ({ x, y }: XY): XY => ({
      x: sheet.x + (x - sheet.left) / scale.across,
      y: sheet.y + sheet.height - (y - sheet.bottom) / scale.down,
    });
    return pdf.pages[sheet.page - 1]!.lines.filter((line) => line.inForm).flatMap(({ from, to, clip }) => {
      const shown = clip === undefined ? ([from, to] as [XY, XY]) : clipped(from, to, clip);
      const framed = shown === undefined ? undefined : clipped(shown[0], shown[1], frame);
      return framed === undefined ? [] : [{ from: toPattern(framed[0]), to: toPattern(framed[1]) }];
    });
  });
}

/** Every path of an SVG as short straight bits, parsed and turned to cubics by another library. */
export function svgSegments(svg: string): Segment[] {
  const paths = [...svg.matchAll(/<path[^>]* d="([^"]+)"/g)].map((match) => match[1]!);
  return paths.flatMap((d) => {
    const found: Segment[] = [];
    let start: XY = { x: 0, y: 0 };
    let at = start;
    for (const segment of SVGPathCommander.pathToCurve(d)) {
      const [command, ...numbers] = segment as [string, ...number[]];
      if (command === 'M') {
        start = { x: numbers[0]!, y: numbers[1]! };
        at = start;
      } else if (command === 'C') {
        const [a, b, c, e, f, g] = numbers as [number, number, number, number, number, number];
        const curve = [at, { x: a, y: b }, { x: c, y: e }, { x: f, y: g }] as const;
        for (let part = 1; part <= 64; part++) {
          const to = bezier(curve, part / 64);
          found.push({ from: at, to });
          at = to;
        }
      } else if (command === 'Z') {
        if (Math.hypot(at.x - start.x, at.y - start.y) > 1e-3) found.push({ from: at, to: start });
        at = start;
      }
    }
    return found;
  });
}

export function lengthOfAll(segments: readonly Segment[]): number {
  return segments.reduce((sum, { from, to }) => sum + Math.hypot(to.x - from.x, to.y - from.y), 0);
}

/** The farthest that any point of `lines` lies from the nearest of `others`, mm; looked for up to 5 mm away. */
export function farthest(lines: readonly Segment[], others: readonly Segment[]): number {
  const grid = new Map<string, Segment[]>();
  const cell = 10;
  const put = (x: number, y: number, segment: Segment) => {
    const key = `${x} ${y}`;
    const list = grid.get(key);
    if (list === undefined) grid.set(key, [segment]);
    else list.push(segment);
  };
  for (const segment of others) {
    for (const { x, y } of spread(segment, cell / 2)) {
      for (let dx = -1; dx <= 1; dx++) {
        for (let dy = -1; dy <= 1; dy++) put(Math.floor(x / cell) + dx, Math.floor(y / cell) + dy, segment);
      }
    }
  }
  let worst = 0;
  for (const line of lines) {
    for (const point of spread(line, 5)) {
      const near = grid.get(`${Math.floor(point.x / cell)} ${Math.floor(point.y / cell)}`) ?? [];
      let best = 5;
      for (const segment of near) best = Math.min(best, distanceTo(segment, point));
      worst = Math.max(worst, best);
    }
  }
  return worst;
}

function spread({ from, to }: Segment, step: number): XY[] {
  const parts = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / step));
  return Array.from({ length: parts + 1 }, (_, i) => ({
    x: from.x + ((to.x - from.x) * i) / parts,
    y: from.y + ((to.y - from.y) * i) / parts,
  }));
}

function distanceTo({ from, to }: Segment, point: XY): number {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const size = dx * dx + dy * dy;
  const t =
    size === 0 ? 0 : Math.min(1, Math.max(0, ((point.x - from.x) * dx + (point.y - from.y) * dy) / size));
  return Math.hypot(from.x + dx * t - point.x, from.y + dy * t - point.y);
}
