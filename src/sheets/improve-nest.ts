import { CLEAR, inCorner, LINE_REACH, type Nest, type Position } from './nest-on-grid.ts';
import { type Cell, visitCells } from './touched-sheets.ts';
import { ROW, type WorkingShape } from './working-shape.ts';

/**
 * Takes pieces up one at a time and lays each where it needs the fewest sheets of its own: in holes between the
 * others too, and in every turn. `placings` bounds the work. Never worse than what it is given.
 */
export function improveNest(
  nest: Nest,
  pieces: readonly (readonly WorkingShape[])[],
  cell: Cell,
  placings: number,
): Nest {
  const positions = [...nest.positions];
  const floor = new SharedFloor(cell, positions);
  const order = positions
    .map((_, index) => index)
    .sort((a, b) => floor.own(positions[b]!) - floor.own(positions[a]!) || a - b);
  for (let placing = 0; placing < placings; placing++) {
    const index = order[placing % order.length]!;
    const old = positions[index]!;
    floor.change(old, -1);
    const others = positions.filter((_, other) => other !== index);
    positions[index] = betterPlace(pieces[index]!, others, floor, old) ?? old;
    floor.change(positions[index], 1);
  }
  const improved = inCorner(positions, cell);
  return improved.sheets < nest.sheets ? improved : nest;
}

function betterPlace(
  shapes: readonly WorkingShape[],
  others: readonly Position[],
  floor: SharedFloor,
  old: Position,
): Position | undefined {
  let best: Position | undefined;
  let fewest = floor.added(old, Infinity);
  for (const shape of shapes) {
    if (shape.height > floor.height) continue;
    for (const y of rowsToTry(shape, floor)) {
      for (const x of placesToTry(freeStretches(shape, y, others, floor.width), shape, floor.cell)) {
        const place = { shape, x, y };
        // Strictly fewer, so that equal places do not wander.
        const added = floor.added(place, fewest - 1);
        if (added >= fewest) continue;
        fewest = added;
        best = place;
      }
    }
  }
  return best;
}

/** How many pieces have a line on each sheet. */
class SharedFloor {
  readonly width: number;
  readonly height: number;
  /** What is left of every height after whole rows. */
  readonly phase: number;
  private readonly rows: number;
  private readonly counts: Int32Array;
  private readonly seen: Int32Array;
  private look = 0;

  constructor(
    readonly cell: Cell,
    positions: readonly Position[],
  ) {
    this.width = Math.max(...positions.map(({ shape, x }) => x + shape.width)) + cell.width;
    this.height = Math.max(...positions.map(({ shape, y }) => y + shape.height)) + cell.height;
    this.phase = positions[0]!.y - Math.floor(positions[0]!.y / ROW) * ROW;
    this.rows = Math.ceil(this.height / cell.height) + 2;
    const size = this.rows * (Math.ceil(this.width / cell.width) + 3);
    this.counts = new Int32Array(size);
    this.seen = new Int32Array(size);
    for (const position of positions) this.change(position, 1);
  }

  change(position: Position, by: 1 | -1): void {
    this.visit(position, (index) => {
      this.counts[index] = this.counts[index]! + by;
      return true;
    });
  }

  /** Sheets that only this piece has a line on. */
  own(position: Position): number {
    let count = 0;
    this.visit(position, (index) => {
      if (this.counts[index] === 1) count += 1;
      return true;
    });
    return count;
  }

  /** Sheets that it would be the first on, counted only as far as one more than `enough`. */
  added(position: Position, enough: number): number {
    let count = 0;
    this.visit(position, (index) => {
      if (this.counts[index] === 0) count += 1;
      return count <= enough;
    });
    return count;
  }

  /** Each sheet once. */
  private visit({ shape, x, y }: Position, visit: (index: number) => boolean): void {
    this.look += 1;
    for (const line of shape.lines) {
      visitCells(line, x, y, this.cell, LINE_REACH, (row, column) => {
        const index = column * this.rows + row;
        if (this.seen[index] === this.look) return true;
        this.seen[index] = this.look;
        return visit(index);
      });
    }
  }
}

/** Heights in step with those of the pieces that lie already: their rows are compared one by one. */
function rowsToTry(shape: WorkingShape, { cell, height, phase }: SharedFloor): number[] {
  const rows = new Set<number>();
  const lowest = height - shape.height - CLEAR;
  for (let y = CLEAR; y <= lowest; y += cell.height / 6) rows.add(Math.ceil(y / ROW));
  for (let edge = cell.height; edge <= height; edge += cell.height) {
    const flush = Math.floor((edge - shape.height - CLEAR - phase) / ROW);
    if (flush >= 1) rows.add(flush);
  }
  return [...rows].map((row) => phase + row * ROW).filter((y) => y <= lowest);
}

/** Stretches of x in which a shape at height y meets none of the others. */
function freeStretches(
  shape: WorkingShape,
  y: number,
  others: readonly Position[],
  width: number,
): (readonly [number, number])[] {
  const taken = others.flatMap((other) => takenBy(other, shape, y)).sort(([a], [b]) => a - b);
  const free: (readonly [number, number])[] = [];
  let from = CLEAR;
  for (const [start, end] of [...taken, [width - shape.width, Infinity] as const]) {
    if (start > from) free.push([from, start]);
    from = Math.max(from, end);
  }
  return free;
}

/** The x at which a shape would meet another: rows are single stretches, so they are one stretch too. */
function takenBy(other: Position, shape: WorkingShape, y: number): (readonly [number, number])[] {
  const shift = Math.round((y - other.y) / ROW);
  const first = Math.max(0, -shift);
  const last = Math.min(shape.rowLeft.length, other.shape.rowLeft.length - shift);
  let from = Infinity;
  let to = -Infinity;
  for (let row = first; row < last; row++) {
    from = Math.min(from, other.shape.rowLeft[row + shift]! - shape.rowRight[row]!);
    to = Math.max(to, other.shape.rowRight[row + shift]! - shape.rowLeft[row]!);
  }
  return from < to ? [[other.x + from, other.x + to]] : [];
}

function placesToTry(
  free: readonly (readonly [number, number])[],
  shape: WorkingShape,
  { width }: Cell,
): number[] {
  return free.flatMap(([from, to]) => {
    const steps = Array.from({ length: 8 }, (_, step) => (step * width) / 8);
    const flushLeft = Math.ceil(from / width) * width + CLEAR;
    const flushRight = Math.ceil((from + shape.width) / width) * width - shape.width - CLEAR;
    const places = [...steps.map((step) => from + step), flushLeft, flushRight, to - CLEAR];
    return places.filter((x) => x >= from && x <= to);
  });
}
