import { CLEAR, ordersToTry, type Position } from './nest-on-grid.ts';
import { ROW, type WorkingShape } from './working-shape.ts';

/** Pieces on lengths of a roll: `x` runs along the roll, `y` across it. */
export interface RollNest {
  /** In the order of the pieces given. */
  readonly positions: readonly (Position & { readonly length: number })[];
  /** How much of the roll each length takes, mm. */
  readonly used: readonly number[];
}

/** Whether a piece lies whole on a length of a roll in this turn. */
export function fitsRoll(shape: WorkingShape, width: number, longest: number): boolean {
  return shape.height + 2 * ROW <= width && shape.width + 2 * CLEAR <= longest;
}

/**
 * Lays pieces on a roll `width` wide, cut into lengths no longer than `longest`: each piece in the turn and at the
 * height where it ends soonest, on the first length that has room. Every turn given fits the roll.
 */
export function nestOnRoll(
  pieces: readonly (readonly WorkingShape[])[],
  width: number,
  longest: number,
): RollNest {
  let best: RollNest | undefined;
  for (const order of ordersToTry(pieces, TRIES)) {
    const nest = nestInOrder(pieces, order, width, longest);
    if (best === undefined || cost(nest) < cost(best)) best = nest;
  }
  return best!;
}

const TRIES = 10;

/** The roll that is used, each length having to be cut and carried besides. */
function cost({ used }: RollNest): number {
  return used.reduce((sum, length) => sum + length, 0) + 100 * used.length;
}

function nestInOrder(
  pieces: readonly (readonly WorkingShape[])[],
  order: readonly number[],
  width: number,
  longest: number,
): RollNest {
  const rows = Math.floor(width / ROW);
  const lengths: Float64Array[] = [];
  const positions: (Position & { length: number })[] = [];
  for (const index of order) {
    let placed: Position | undefined;
    let length = 0;
    for (; placed === undefined; length++) {
      lengths[length] ??= new Float64Array(rows).fill(CLEAR);
      placed = soonestEnd(pieces[index]!, lengths[length]!, longest);
    }
    take(lengths[length - 1]!, placed);
    positions[index] = { ...placed, length: length - 1 };
  }
  const used = lengths.map((_, length) =>
    Math.max(
      ...positions.filter((one) => one.length === length).map(({ x, shape }) => x + shape.width + CLEAR),
    ),
  );
  return { positions, used };
}

function soonestEnd(
  shapes: readonly WorkingShape[],
  taken: Float64Array,
  longest: number,
): Position | undefined {
  let best: Position | undefined;
  let bestEnd = longest - CLEAR;
  for (const shape of shapes) {
    const lowest = taken.length - shape.rowLeft.length;
    for (let row = 1; row <= lowest; row++) {
      const x = leftmost(shape, taken, row);
      if (x + shape.width < bestEnd) {
        bestEnd = x + shape.width;
        best = { shape, x, y: row * ROW };
      }
    }
  }
  return best;
}

function leftmost(shape: WorkingShape, taken: Float64Array, top: number): number {
  let x = CLEAR;
  for (let row = 0; row < shape.rowLeft.length; row++)
    x = Math.max(x, taken[top + row]! - shape.rowLeft[row]!);
  return x;
}

function take(taken: Float64Array, { shape, x, y }: Position): void {
  const top = Math.round(y / ROW);
  for (let row = 0; row < shape.rowRight.length; row++) {
    taken[top + row] = Math.max(taken[top + row]!, x + shape.rowRight[row]!);
  }
}
