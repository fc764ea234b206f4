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

/** Holds places together that were drawn up. */
export class Ties {
  private readonly ends: readonly {
    readonly anchor: Between;
    readonly pickUp: Between;
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
        pickUp: { above: picked.place, part: 0 },
        outside,
      };
    });
  }

  get count(): number {
    return this.ends.length;
  }

  /** Hands are stronger than cloth: what they hold, the cloth around follows. */
  hold(): void {
    const { ease } = this.mesh;
    for (const { anchor, pickUp } of this.ends) {
      ease[pickUp.above]! *= HELD;
      // The button hangs from the waist close above it.
      ease[anchor.above]! *= HELD;
      ease[anchor.above + 1]! *= HELD;
    }
  }

  solve(): void {
    for (const { anchor, pickUp, outside } of this.ends) {
      const [x, y] = [this.at(anchor, 0), this.at(anchor, 1)];
      const out = Math.sqrt(x * x + y * y);
      const wanted = out > 0 ? [(x / out) * outside, (y / out) * outside, 0] : [0, 0, 0];
      const sum = this.ease(anchor) + this.ease(pickUp);
      if (sum === 0) continue;
      for (let axis = 0; axis < 3; axis++) {
        const push = (this.at(pickUp, axis) - this.at(anchor, axis) - wanted[axis]!) / sum;
        this.move(anchor, axis, push);
        this.move(pickUp, axis, -push);
      }
    }
  }

  private at({ above, part }: Between, axis: number): number {
    const { place } = this.mesh;
    return place[3 * above + axis]! * (1 - part) + place[3 * above + 3 + axis]! * part;
  }

  private ease({ above, part }: Between): number {
    const { ease } = this.mesh;
    return ease[above]! * (1 - part) * (1 - part) + ease[above + 1]! * part * part;
  }

  private move({ above, part }: Between, axis: number, push: number): void {
    const { place, ease } = this.mesh;
    place[3 * above + axis]! += ease[above]! * (1 - part) * push;
    place[3 * above + 3 + axis]! += ease[above + 1]! * part * push;
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
