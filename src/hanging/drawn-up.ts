import type { ClothMesh } from './cloth-mesh.ts';
import type { Tie } from './sewn-cloth.ts';

/** Lays hung cloth as hands do that hook up a bustle, for it to settle from there: the cloth between two loops is
 * picked up with them, what is below comes up as it is, and what is between button and loop hangs as a fold.
 */
export function drawUp(mesh: ClothMesh, ties: readonly Tie[]): void {
  const before = mesh.place.slice();
  for (let column = 0; column < mesh.columns; column++) {
    const tie = tieAt(mesh, ties, column * mesh.stride);
    if (tie !== undefined && tie.pickUp > tie.anchor) drawColumn(mesh, before, column, tie);
  }
}

function drawColumn(
  { place, along, rows, held }: ClothMesh,
  before: Float64Array,
  column: number,
  tie: Tie,
): void {
  const first = column * rows;
  const at = (depth: number): number[] => {
    let [passed, row] = [0, 0];
    while (row + 2 < rows && passed + along[first + row]! < depth) passed += along[first + row++]!;
    const part = Math.min(1, (depth - passed) / along[first + row]!);
    return [0, 1, 2].map((axis) => {
      const a = 3 * (first + row) + axis;
      return before[a]! + (before[a + 3]! - before[a]!) * part;
    });
  };
  const [anchor, picked] = [at(tie.anchor), at(tie.pickUp)];
  const out = Math.sqrt(anchor[0]! * anchor[0]! + anchor[1]! * anchor[1]!);
  const outward = out > 0 ? [anchor[0]! / out, anchor[1]! / out, 0] : [0, 1, 0];
  let depth = 0;
  for (let row = 0; row < rows; row++) {
    if (row > 0) depth += along[first + row - 1]!;
    const own = first + row;
    if (held[own] === 1 || depth <= tie.anchor) continue;
    const fold = Math.min(depth - tie.anchor, tie.pickUp - depth);
    const part = Math.min(1, (depth - tie.anchor) / (tie.pickUp - tie.anchor));
    for (let axis = 0; axis < 3; axis++) {
      const off = tie.outside * part * outward[axis]!;
      place[3 * own + axis] =
        fold > 0
          ? anchor[axis]! + off - (axis === 2 ? fold : 0) + FOLD_LEANS * fold * outward[axis]!
          : before[3 * own + axis]! + anchor[axis]! - picked[axis]! + off;
    }
  }
}

/** How far a fold leans out from her for each mm that it hangs, as it starts. */
const FOLD_LEANS = 0.35;

/** What a column between the loops is drawn up by, as if it had one of its own; undefined where none is near. */
function tieAt(
  { closing, columns, stride }: ClothMesh,
  ties: readonly Tie[],
  column: number,
): Tie | undefined {
  const round = closing === 'ring' ? columns * stride : 0;
  const ahead = (from: number, to: number): number =>
    round > 0 ? (((to - from) % round) + round) % round : to - from;
  const sorted = [...ties].sort((a, b) => a.column - b.column);
  const gaps = sorted.slice(1).map((tie, i) => tie.column - sorted[i]!.column);
  const reach = gaps.length === 0 ? ALONE : Math.max(...gaps);
  const near = (side: 1 | -1): { tie: Tie; off: number } | undefined =>
    sorted
      .map((tie) => ({ tie, off: side === 1 ? ahead(column, tie.column) : ahead(tie.column, column) }))
      .filter(({ off }) => off >= 0 && off <= reach)
      .sort((a, b) => a.off - b.off)[0];
  const [after, earlier] = [near(1), near(-1)];
  if (after !== undefined && earlier !== undefined) {
    if (after.off + earlier.off === 0) return after.tie;
    return between(earlier.tie, after.tie, earlier.off / (earlier.off + after.off));
  }
  const only = after ?? earlier;
  if (only === undefined) return undefined;
  const lift = (only.tie.pickUp - only.tie.anchor) * (1 - only.off / reach);
  return { ...only.tie, pickUp: only.tie.anchor + lift };
}

/** Columns on both sides that a single loop lifts. */
const ALONE = 24;

function between(a: Tie, b: Tie, part: number): Tie {
  const at = (value: (tie: Tie) => number): number => value(a) + (value(b) - value(a)) * part;
  return { ...a, anchor: at((tie) => tie.anchor), pickUp: at((tie) => tie.pickUp) };
}
