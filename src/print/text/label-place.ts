import type { Line, Point } from '../../geometry/curve.ts';

/** A free rectangle for text, mm. */
export interface LabelBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** What a text needs. */
export interface FittedText {
  readonly leastWidth: number;
  /** Less than this, mm², is too small in any shape. */
  readonly area: number;
  readonly heightIn: (width: number) => number;
  /** What else must hold. */
  readonly accepts?: (box: LabelBox) => boolean;
}

/** An area that text must stay within, so that no join of sheets runs through a word. */
export type Window = LabelBox;

/** What is inside an outline, in rows of `ROW` mm from its top down: of each the widest stretch, none where it is out of it. */
export interface RowsInside {
  readonly top: number;
  readonly stretches: readonly (readonly [number, number] | undefined)[];
}

export function rowsInside(outline: readonly Point[]): RowsInside {
  const levels = outline.map((point) => point.y);
  const top = Math.min(...levels);
  const count = Math.ceil((Math.max(...levels) - top) / ROW);
  return {
    top,
    stretches: Array.from({ length: count }, (_, row) => stretchOfRow(outline, top + row * ROW)),
  };
}

/**
 * Where text may stand on a piece: inside its outline, clear of a line (the grain), and within one of
 * the windows.
 */
export class LabelRoom {
  private readonly top: number;
  private readonly rows: RowsInside['stretches'];

  constructor(
    { top, stretches }: RowsInside,
    private readonly grain: Line,
    private readonly windows: readonly Window[],
    /** Boxes taken by other text. */
    private readonly taken: readonly LabelBox[] = [],
    /** Clear of lines, mm. */
    private readonly clear = 3,
  ) {
    this.top = top;
    this.rows = stretches;
  }

  /** The first box, by distance from `near`, that is large enough for the text. */
  boxFor(near: Point, text: FittedText): LabelBox | undefined {
    const starts = this.windows.flatMap((window) => this.startsIn(window, near));
    for (const start of starts.sort((a, b) => a.away - b.away)) {
      const box = this.boxFrom(start, text);
      if (box !== undefined && text.accepts?.(box) !== false) return box;
    }
    return undefined;
  }

  private startsIn(window: Window, near: Point): Start[] {
    const first = Math.max(0, Math.ceil((window.y - this.top) / ROW));
    const end = Math.min(this.rows.length, Math.floor((window.y + window.height - this.top) / ROW));
    const starts: Start[] = [];
    for (let row = first; row < end; row += STEP) {
      const away = Math.hypot(window.x + window.width / 2 - near.x, this.top + row * ROW - near.y);
      starts.push({ window, row, end, away, side: 'left' }, { window, row, end, away, side: 'right' });
    }
    return starts;
  }

  /** Grows a box downwards until the text fits, or it cannot. */
  private boxFrom({ window, row: first, end, side }: Start, text: FittedText): LabelBox | undefined {
    let left = window.x;
    let right = window.x + window.width;
    for (let row = first; row < end; row++) {
      const free = this.freeIn(row, side, left, right);
      if (free === undefined) return undefined;
      [left, right] = free;
      const width = right - left;
      const height = (row + 1 - first) * ROW;
      if (width < text.leastWidth) return undefined;
      if (text.area > width * height) continue;
      const needed = text.heightIn(width);
      if (needed <= height) return { x: left, y: this.top + first * ROW, width, height: needed };
    }
    return undefined;
  }

  private freeIn(
    row: number,
    side: 'left' | 'right',
    left: number,
    right: number,
  ): [number, number] | undefined {
    const stretch = this.rows[row];
    if (stretch === undefined) return undefined;
    let from = Math.max(left, stretch[0] + this.clear);
    let to = Math.min(right, stretch[1] - this.clear);
    const y = this.top + row * ROW;
    if (this.grainCrosses(y)) {
      const { from: a, to: b } = this.grain;
      if (side === 'left') to = Math.min(to, Math.min(a.x, b.x) - this.clear);
      else from = Math.max(from, Math.max(a.x, b.x) + this.clear);
    }
    for (const box of this.taken) {
      if (y + ROW <= box.y || y >= box.y + box.height) continue;
      if (box.x + box.width / 2 > (from + to) / 2) to = Math.min(to, box.x - this.clear);
      else from = Math.max(from, box.x + box.width + this.clear);
    }
    return from < to ? [from, to] : undefined;
  }

  private grainCrosses(y: number): boolean {
    const { from, to } = this.grain;
    return Math.min(from.y, to.y) - this.clear < y + ROW && Math.max(from.y, to.y) + this.clear > y;
  }
}

/** A place to try: from a row of a window down, left or right of the grain. */
interface Start {
  readonly window: Window;
  readonly row: number;
  readonly end: number;
  readonly side: 'left' | 'right';
  /** From where the text should be, mm. */
  readonly away: number;
}

/** mm. Rows lower than this find little more room. */
const ROW = 2;

/** Boxes are tried from every so many rows. */
const STEP = 3;

/** What is inside an outline all through a row: an edge that is nearly level runs far within one. */
function stretchOfRow(outline: readonly Point[], top: number): readonly [number, number] | undefined {
  const levels = [0.01, 0.5, 0.99].map((share) => widestStretch(outline, top + share * ROW));
  let free: readonly [number, number] | undefined = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const level of levels) {
    if (free === undefined || level === undefined) return undefined;
    free = [Math.max(free[0], level[0]), Math.min(free[1], level[1])];
  }
  return free[0] < free[1] ? free : undefined;
}

/** The widest stretch of a level line that lies inside an outline. */
function widestStretch(outline: readonly Point[], y: number): readonly [number, number] | undefined {
  const crossings: number[] = [];
  let from = outline[outline.length - 1]!;
  for (const to of outline) {
    if (from.y > y !== to.y > y) crossings.push(from.x + ((y - from.y) / (to.y - from.y)) * (to.x - from.x));
    from = to;
  }
  crossings.sort((a, b) => a - b);
  let widest: readonly [number, number] | undefined;
  for (let index = 0; index + 1 < crossings.length; index += 2) {
    const stretch = [crossings[index]!, crossings[index + 1]!] as const;
    if (widest === undefined || stretch[1] - stretch[0] > widest[1] - widest[0]) widest = stretch;
  }
  return widest;
}
