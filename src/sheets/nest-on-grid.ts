import { type Cell, visitCells } from './touched-sheets.ts';
import { ROW, type WorkingShape } from './working-shape.ts';

/** Where a piece's bounding box begins, and which of its turns lies there. */
export interface Position {
  readonly shape: WorkingShape;
  readonly x: number;
  readonly y: number;
}

export interface Nest {
  /** In the order of the pieces given. */
  readonly positions: readonly Position[];
  readonly sheets: number;
}

/**
 * Lays pieces side by side on a grid of sheets so that few sheets have a line on them. Each piece is pushed to the
 * left against those before it, at many heights and turns, and stands where it needs the fewest new sheets. Several
 * orders are tried, always the same ones: the work is counted, not timed. Of each piece's turns the first two, upright
 * and head to tail, are tried in all orders, the lying ones in some.
 */
export function nestOnGrid(pieces: readonly (readonly WorkingShape[])[], cell: Cell): Nest {
  let best: Nest | undefined;
  const tries = Math.max(3, Math.min(MOST_TRIES, Math.floor(PLACINGS / pieces.length)));
  const upright = pieces.map((shapes) => shapes.slice(0, 2));
  for (const [index, order] of ordersToTry(pieces, tries).entries()) {
    for (const shapes of index < tries / 2 ? [upright, pieces] : [upright]) {
      const nest = nestInOrder(shapes, order, cell);
      if (best === undefined || nest.sheets < best.sheets) best = nest;
    }
  }
  return best!;
}

/** Orders tried, and pieces placed in all of them together: larger finds a sheet or two less and takes longer. */
const MOST_TRIES = 8;
const PLACINGS = 60;

/** Distance from the grid's own corner, so that no line lies on its edge, mm. */
export const CLEAR = 1;

function nestInOrder(
  pieces: readonly (readonly WorkingShape[])[],
  order: readonly number[],
  cell: Cell,
): Nest {
  const tallest = Math.max(...pieces.map((shapes) => Math.max(...shapes.map((shape) => shape.height))));
  const floor = new Floor(cell, tallest + cell.height);
  const positions: Position[] = [];
  for (const index of order) positions[index] = floor.place(pieces[index]!, tallest);
  return inCorner(positions, cell);
}

/** Positions moved by whole sheets so that the first row and column have a line, and the sheets counted. */
export function inCorner(positions: readonly Position[], cell: Cell): Nest {
  const touched = new Map<string, readonly [number, number]>();
  for (const { shape, x, y } of positions) {
    for (const line of shape.allLines) {
      visitCells(line, x, y, cell, LINE_REACH, (row, column) => {
        touched.set(`${row} ${column}`, [row, column]);
        return true;
      });
    }
  }
  const places = [...touched.values()];
  const up = Math.min(...places.map(([row]) => row)) * cell.height;
  const left = Math.min(...places.map(([, column]) => column)) * cell.width;
  const moved = positions.map((position) => ({ ...position, x: position.x - left, y: position.y - up }));
  return { positions: moved, sheets: touched.size };
}

/** The grid as it fills: how far right each row is taken, and which sheets have a line. */
class Floor {
  private readonly taken: Float64Array;
  private readonly rows: number;
  private used = new Int32Array(0);
  private seen = new Int32Array(0);
  private look = 0;

  constructor(
    private readonly cell: Cell,
    height: number,
  ) {
    this.taken = new Float64Array(Math.ceil(height / ROW) + 4).fill(CLEAR);
    this.rows = Math.ceil(height / cell.height) + 2;
  }

  place(shapes: readonly WorkingShape[], tallest: number): Position {
    let best: Position | undefined;
    let bestCost = Infinity;
    for (const shape of shapes) {
      for (const row of this.rowsToTry(shape, tallest)) {
        const least = this.leftmost(shape, row);
        const y = row * ROW;
        for (const x of this.placesToTry(shape, least)) {
          // New sheets decide; among equals the place that leaves most room at the right.
          const tie = (x + shape.width) * 1e-5;
          const cost = this.newSheets(shape, x, y, bestCost - tie) + tie;
          if (cost < bestCost) {
            bestCost = cost;
            best = { shape, x, y };
          }
        }
      }
    }
    this.take(best!);
    return best!;
  }

  private rowsToTry(shape: WorkingShape, tallest: number): number[] {
    const { height } = this.cell;
    const lowest = tallest - shape.height + height;
    const rows = new Set<number>();
    for (let y = 0; y <= lowest; y += height / 9) {
      rows.add(Math.ceil((y + CLEAR) / ROW));
      // Its lower end just above the edge of a sheet.
      const flush = (Math.floor((y + shape.height) / height) * height - shape.height - CLEAR) / ROW;
      if (flush >= 1) rows.add(Math.floor(flush));
    }
    return [...rows];
  }

  private placesToTry(shape: WorkingShape, least: number): number[] {
    const { width } = this.cell;
    const flushLeft = Math.ceil(least / width) * width + CLEAR;
    const flushRight = Math.ceil((least + shape.width) / width) * width - shape.width - CLEAR;
    const steps = Array.from({ length: 10 }, (_, step) => least + (step * width) / 10);
    return [...steps, flushLeft, ...(flushRight >= least ? [flushRight] : [])];
  }

  /** The smallest x at which the shape clears everything before it. */
  private leftmost(shape: WorkingShape, top: number): number {
    let x = CLEAR;
    for (let row = 0; row < shape.rowLeft.length; row++) {
      x = Math.max(x, this.taken[top + row]! - shape.rowLeft[row]!);
    }
    return x;
  }

  /** Sheets that get their first line from this; counted only until there are more than `enough`. */
  private newSheets(shape: WorkingShape, x: number, y: number, enough = Infinity): number {
    this.look += 1;
    let count = 0;
    this.grow(x + shape.width);
    this.visit(shape, x, y, (row, column) => {
      const index = column * this.rows + row;
      if (this.used[index] === 0 && this.seen[index] !== this.look) {
        this.seen[index] = this.look;
        count += 1;
      }
      return count <= enough;
    });
    return count;
  }

  private visit(shape: WorkingShape, x: number, y: number, visit: Parameters<typeof visitCells>[5]): void {
    for (const line of shape.lines) visitCells(line, x, y, this.cell, LINE_REACH, visit);
  }

  private take({ shape, x, y }: Position): void {
    this.visit(shape, x, y, (row, column) => {
      this.used[column * this.rows + row] = 1;
      return true;
    });
    const top = Math.round(y / ROW);
    for (let row = 0; row < shape.rowRight.length; row++) {
      this.taken[top + row] = Math.max(this.taken[top + row]!, x + shape.rowRight[row]!);
    }
  }

  private grow(right: number): void {
    const needed = (Math.ceil(right / this.cell.width) + 2) * this.rows;
    if (needed <= this.used.length) return;
    const wider = (old: Int32Array) => {
      const grown = new Int32Array(2 * needed);
      grown.set(old);
      return grown;
    };
    this.used = wider(this.used);
    this.seen = wider(this.seen);
  }
}

/** A line nearer to the edge of a sheet than this, mm, is on both sheets: half of its width would be cut away. */
export const LINE_REACH = 0.3;

/** Orders of the pieces: as given, tallest first, largest and smallest by turns, then shuffles by a fixed rule. */
export function ordersToTry(pieces: readonly (readonly WorkingShape[])[], tries: number): number[][] {
  const given = pieces.map((_, index) => index);
  const size = (index: number) => pieces[index]![0]!.height * 1e4 + pieces[index]![0]!.width;
  const tallestFirst = [...given].sort((a, b) => size(b) - size(a) || a - b);
  const byTurns = tallestFirst.map(
    (_, i) => tallestFirst[i % 2 === 0 ? i / 2 : pieces.length - (i + 1) / 2]!,
  );
  const orders = [given, tallestFirst, byTurns];
  let seed = 1;
  while (orders.length < tries) {
    const shuffled = [...tallestFirst];
    for (let i = shuffled.length - 1; i > 0; i--) {
      seed = (seed * 48271) % 2147483647;
      const j = seed % (i + 1);
      [shuffled[i], shuffled[j]] = [shuffled[j]!, shuffled[i]!];
    }
    orders.push(shuffled);
  }
  return orders.slice(0, tries);
}
