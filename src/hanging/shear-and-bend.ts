import { type ClothMesh, isOnPlane } from './cloth-mesh.ts';

/**
 * Shear of every four places, as soft as the cloth is: the squared diagonals of a parallelogram of sides a, b differ by
 * 4ab·sin γ, and stretch does not change that. Energy G·γ²·ab/2, softened as in Macklin, Müller, Chentanez, "XPBD", 2016.
 * @param stiffness shear length · fall, see `settle`
 */
export function solveShear(
  { place, ease, cell, skew, columns, rows, closing }: ClothMesh,
  stiffness: number,
): void {
  const pairs = closing === 'ring' ? columns : columns - 1;
  for (let column = 0; column < pairs; column++) {
    const first = column * rows;
    const next = (column + 1 === columns ? 0 : column + 1) * rows;
    for (let row = 0; row + 1 < rows; row++) {
      const i = first + row;
      const j = next + row;
      const area = cell[i]!;
      if (area < LEAST_CELL) continue;
      const a = 3 * i;
      const b = 3 * j + 3;
      const c = 3 * i + 3;
      const d = 3 * j;
      const fx = place[b]! - place[a]!;
      const fy = place[b + 1]! - place[a + 1]!;
      const fz = place[b + 2]! - place[a + 2]!;
      const rx = place[d]! - place[c]!;
      const ry = place[d + 1]! - place[c + 1]!;
      const rz = place[d + 2]! - place[c + 2]!;
      const falling = fx * fx + fy * fy + fz * fz;
      const rising = rx * rx + ry * ry + rz * rz;
      const ea = ease[i]!;
      const eb = ease[j + 1]!;
      const ec = ease[i + 1]!;
      const ed = ease[j]!;
      const sum = (ea + eb) * falling + (ec + ed) * rising;
      if (sum === 0) continue;
      // Both sides of the softened condition are multiplied by (2 · area)².
      const move = (falling - rising - skew[i]!) / 2 / (sum + (4 * area) / stiffness);
      place[a]! += ea * move * fx;
      place[a + 1]! += ea * move * fy;
      place[a + 2]! += ea * move * fz;
      place[b]! -= eb * move * fx;
      place[b + 1]! -= eb * move * fy;
      place[b + 2]! -= eb * move * fz;
      place[c]! -= ec * move * rx;
      place[c + 1]! -= ec * move * ry;
      place[c + 2]! -= ec * move * rz;
      place[d]! += ed * move * rx;
      place[d + 1]! += ed * move * ry;
      place[d + 2]! += ed * move * rz;
    }
  }
}

/** A cell smaller than this has no cloth in it: above a godet's point, mm². */
const LEAST_CELL = 1;

/**
 * Bending, along the rows and along the columns: the energy of an isometric sheet is quadratic in its places (Bergou,
 * Wardetzky and others, "A quadratic bending model for inextensible surfaces", 2006), so each bend is a linear
 * condition of three numbers.
 * @param stiffness by place: bending length³ · fall
 */
export function solveBends(mesh: ClothMesh, stiffness: Float64Array): void {
  const { columns, rows, closing } = mesh;
  for (let column = 0; column < columns; column++) {
    const onPlane = isOnPlane(closing, column, columns);
    const isFree = closing !== 'ring' && !onPlane && (column === 0 || column === columns - 1);
    const before = (column === 0 ? (onPlane ? 1 : columns - 1) : column - 1) * rows;
    const after = (column === columns - 1 ? (onPlane ? column - 1 : 0) : column + 1) * rows;
    const first = column * rows;
    for (let row = 0; row < rows; row++) {
      if (row > 0 && row + 1 < rows) bendAlong(mesh, first + row, stiffness[first + row]!);
      if (mesh.bends.reach[first + row]! === 0) continue;
      if (isFree) continue;
      bendAcross(mesh, first + row, before + row, after + row, row, onPlane, stiffness[first + row]!);
    }
  }
}

function bendAlong({ place, ease, along, area }: ClothMesh, own: number, stiffness: number): void {
  const up = 1 / along[own - 1]!;
  const down = 1 / along[own]!;
  const reach = (along[own - 1]! + along[own]!) / 2;
  const middle = up + down;
  const a = 3 * own - 3;
  const o = 3 * own;
  const b = 3 * own + 3;
  const sum = ease[own - 1]! * up * up + ease[own]! * middle * middle + ease[own + 1]! * down * down;
  if (sum === 0) return;
  const share = 1 / (sum + (reach * reach) / (stiffness * area[own]!));
  const above = ease[own - 1]! * up * share;
  const mine = ease[own]! * middle * share;
  const below = ease[own + 1]! * down * share;
  for (let axis = 0; axis < 3; axis++) {
    const bend = up * place[a + axis]! + down * place[b + axis]! - middle * place[o + axis]!;
    place[a + axis]! -= above * bend;
    place[o + axis]! += mine * bend;
    place[b + axis]! -= below * bend;
  }
}

/** On the mirrored plane the two neighbours are one place and its image: their bend along x is nothing. */
function bendAcross(
  { place, ease, area, bends, rows }: ClothMesh,
  own: number,
  before: number,
  after: number,
  row: number,
  onPlane: boolean,
  stiffness: number,
): void {
  const p = bends.before[own]!;
  const q = bends.after[own]!;
  const lean = bends.lean[own]!;
  const above = row === 0 ? own : own - 1;
  const below = row + 1 === rows ? own : own + 1;
  // On the plane both neighbours are the same place, so their shares add up there.
  const partBefore = onPlane ? 0 : p;
  const partAfter = onPlane ? p + q : q;
  let mine = -(p + q);
  let up = lean;
  let down = -lean;
  if (above === own) {
    mine += lean;
    up = 0;
  }
  if (below === own) {
    mine -= lean;
    down = 0;
  }
  const sum =
    ease[before]! * partBefore * partBefore +
    ease[after]! * partAfter * partAfter +
    ease[own]! * mine * mine +
    ease[above]! * up * up +
    ease[below]! * down * down;
  if (sum === 0) return;
  const reach = bends.reach[own]!;
  const share = 1 / (sum + (reach * reach) / (stiffness * area[own]!));
  const b = 3 * before;
  const a = 3 * after;
  const o = 3 * own;
  const u = 3 * above;
  const d = 3 * below;
  for (let axis = onPlane ? 1 : 0; axis < 3; axis++) {
    const bend =
      share *
      (partBefore * place[b + axis]! +
        partAfter * place[a + axis]! +
        mine * place[o + axis]! +
        up * place[u + axis]! +
        down * place[d + axis]!);
    place[b + axis]! -= ease[before]! * partBefore * bend;
    place[a + axis]! -= ease[after]! * partAfter * bend;
    place[o + axis]! -= ease[own]! * mine * bend;
    if (up !== 0) place[u + axis]! -= ease[above]! * up * bend;
    if (down !== 0) place[d + axis]! -= ease[below]! * down * bend;
  }
}
