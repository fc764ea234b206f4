import type { ClothMesh } from './cloth-mesh.ts';
import type { Tie } from './sewn-cloth.ts';

/** A place between two rows of a column. */
interface Between {
  readonly above: number;
  /** Part of the way to the row below. */
  readonly part: number;
}

/**
 * Part of its ease that a place keeps in the hand. Not nothing: a button that could not give way at all would keep the
 * cloth above it as long as it was when it was taken hold of, which was up to a fifth too long.
 */
const HELD = 0.02;

/** Places that are held together, having been drawn up. */
export class Ties {
  readonly ends: readonly {
    readonly anchor: Between;
    /** A place. */
    readonly pickUp: number;
    readonly outside: number;
  }[];

  constructor(
    private readonly mesh: ClothMesh,
    ties: readonly Tie[],
  ) {
    this.ends = ties.map(({ column, anchor, pickUp, outside }) => {
      const own = Math.round(column / mesh.stride) % mesh.columns;
      const picked = nearestPlace(mesh, own, pickUp);
      // Picked up at the nearest place, and drawn up by as much all the same.
      return {
        anchor: atDepth(mesh, own, anchor + picked.depth - pickUp),
        pickUp: picked.place,
        outside,
      };
    });
  }

  /** Hands are stronger than cloth: what they hold, the cloth around follows. */
  hold(): void {
    const { ease } = this.mesh;
    for (const { anchor, pickUp } of this.ends) {
      ease[pickUp]! *= HELD;
      // The button hangs from the waist close above it.
      ease[anchor.above]! *= HELD;
      ease[anchor.above + 1]! *= HELD;
    }
  }
}

function nearestPlace(
  { along, rows }: ClothMesh,
  column: number,
  depth: number,
): { place: number; depth: number } {
  let [passed, row] = [0, 0];
  while (row + 2 < rows && passed + along[column * rows + row]! / 2 < depth) {
    passed += along[column * rows + row]!;
    row++;
  }
  return { place: column * rows + row, depth: passed };
}

function atDepth({ along, rows }: ClothMesh, column: number, depth: number): Between {
  let [passed, row] = [0, 0];
  while (row + 2 < rows && passed + along[column * rows + row]! < depth) {
    passed += along[column * rows + row]!;
    row++;
  }
  const own = column * rows + row;
  return { above: own, part: Math.min(1, Math.max(0, (depth - passed) / along[own]!)) };
}
