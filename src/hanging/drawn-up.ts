import type { ClothMesh } from './cloth-mesh.ts';
import type { Body, Tie } from './sewn-cloth.ts';

/**
 * Lays hung cloth as hands do that hook up a bustle, for it to settle from there: the cloth between two loops is picked
 * up with them, what is between button and loop hangs as a fold, and what is below the loop is let down over what she
 * wears. Let go as it lay, spread out behind her, it would come to rest as a fin on end: cloth can, but no hand leaves
 * it so.
 */
export function drawUp(mesh: ClothMesh, ties: readonly Tie[], body: Body | undefined): void {
  const before = mesh.place.slice();
  for (let column = 0; column < mesh.columns; column++) {
    const tie = tieAt(mesh, ties, column * mesh.stride);
    if (tie !== undefined && tie.pickUp > tie.anchor) drawColumn(mesh, before, column, tie, body);
  }
}

function drawColumn(
  { place, along, rows, held }: ClothMesh,
  before: Float64Array,
  column: number,
  tie: Tie,
  body: Body | undefined,
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
  const [x, y, z] = at(tie.anchor) as [number, number, number];
  const out = Math.sqrt(x * x + y * y);
  const [outX, outY] = out > 0 ? [x / out, y / out] : [0, 1];
  let [depth, reach, height] = [0, tie.outside, z];
  for (let row = 0; row < rows; row++) {
    if (row > 0) depth += along[first + row - 1]!;
    const own = first + row;
    if (held[own] === 1 || depth <= tie.anchor) continue;
    const fold = Math.min(depth - tie.anchor, tie.pickUp - depth);
    if (fold > 0) {
      const part = (depth - tie.anchor) / (tie.pickUp - tie.anchor);
      const off = tie.outside * part + FOLD_LEANS * fold;
      place.set([x + off * outX, y + off * outY, z - fold], 3 * own);
      continue;
    }
    const length = Math.min(along[own - 1]!, depth - tie.pickUp);
    const beyond = outOf(body, height - length, outX, outY) + LIES_OFF - out - reach;
    const further = Math.min(STEEPEST * length, Math.max(LEANS * length, beyond));
    reach += further;
    height = Math.max(LIES_OFF, height - Math.sqrt(length * length - further * further));
    place.set([x + reach * outX, y + reach * outY, height], 3 * own);
  }
}

/** How far out what she wears comes at a height, in a direction; nothing above its highest level. mm. */
function outOf(body: Body | undefined, height: number, x: number, y: number): number {
  if (body === undefined) return 0;
  const level = Math.round((Math.max(0, height) - body.lowest) / body.step);
  const [width, depth] = [body.halfWidth[level], body.halfDepth[level]];
  if (width === undefined || depth === undefined) return 0;
  return 1 / Math.sqrt((x * x) / (width * width) + (y * y) / (depth * depth));
}

/** What is let down starts so far off what she wears, mm, leans out by so much for each mm, and goes out no more steeply. */
const LIES_OFF = 4;
const LEANS = 0.05;
const STEEPEST = 0.95;

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
