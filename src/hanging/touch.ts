import type { ClothMesh } from './cloth-mesh.ts';
import type { Body, Surroundings } from './sewn-cloth.ts';
import { leaveOutline } from './touch-outline.ts';

/** Keeps the cloth out of the body and above the floor, both of which hold it by friction; and mirrored cloth on its plane. */
export function solveTouch(
  mesh: ClothMesh,
  { body, outline, floor, bodyGrip, floorGrip }: Surroundings,
): void {
  const { place, ease } = mesh;
  if (body !== undefined) {
    for (let i = 0; i < ease.length; i++) if (ease[i]! > 0) leaveBody(mesh, i, body, bodyGrip);
  }
  if (outline !== undefined) leaveOutline(mesh, outline);
  if (floor !== undefined) {
    for (let i = 0; i < ease.length; i++) {
      const deep = floor - place[3 * i + 2]!;
      if (deep > 0 && ease[i]! > 0) rise(mesh, i, deep, floorGrip);
    }
  }
  if (mesh.closing === 'mirrored' || mesh.closing === 'half') keepOnPlane(mesh);
}

function rise({ place, before }: ClothMesh, i: number, deep: number, grip: number): void {
  const a = 3 * i;
  place[a + 2]! += deep;
  const x = place[a]! - before[a]!;
  const y = place[a + 1]! - before[a + 1]!;
  const slid = Math.sqrt(x * x + y * y);
  const held = grip * deep >= slid ? 1 : (grip * deep) / slid;
  place[a]! -= held * x;
  place[a + 1]! -= held * y;
}

function leaveBody({ place, before }: ClothMesh, i: number, body: Body, grip: number): void {
  const a = 3 * i;
  const levels = body.halfWidth.length - 1;
  const up = (place[a + 2]! - body.lowest) / body.step;
  if (!(up >= 0 && up < levels)) return;
  const level = Math.floor(up);
  const part = up - level;
  const widthBelow = body.halfWidth[level]!;
  const depthBelow = body.halfDepth[level]!;
  const width = widthBelow + (body.halfWidth[level + 1]! - widthBelow) * part;
  const depth = depthBelow + (body.halfDepth[level + 1]! - depthBelow) * part;
  const x = place[a]! / width;
  const y = place[a + 1]! / depth;
  const outward = Math.sqrt(x * x + y * y);
  if (outward >= 1 || !(outward > 0)) return;
  // Square to the surface where outward = 1, by one step of Newton's.
  const narrowing = (widthBelow - body.halfWidth[level + 1]!) / (body.step * width);
  const nx = x / (width * outward);
  const ny = y / (depth * outward);
  const nz = outward * narrowing;
  const deep = (1 - outward) / (nx * nx + ny * ny + nz * nz);
  place[a]! += nx * deep;
  place[a + 1]! += ny * deep;
  place[a + 2]! += nz * deep;
  if (grip === 0) return;
  const steep = Math.sqrt(nx * nx + ny * ny + nz * nz);
  slide(place, before, a, nx / steep, ny / steep, nz / steep, grip * deep * steep);
}

/** Takes back what a place has slid along a surface, as far as the friction there holds. */
function slide(
  place: Float64Array,
  before: Float64Array,
  a: number,
  nx: number,
  ny: number,
  nz: number,
  hold: number,
): void {
  const x = place[a]! - before[a]!;
  const y = place[a + 1]! - before[a + 1]!;
  const z = place[a + 2]! - before[a + 2]!;
  const out = x * nx + y * ny + z * nz;
  const tx = x - out * nx;
  const ty = y - out * ny;
  const tz = z - out * nz;
  const slid = Math.sqrt(tx * tx + ty * ty + tz * tz);
  const held = hold >= slid ? 1 : hold / slid;
  place[a]! -= held * tx;
  place[a + 1]! -= held * ty;
  place[a + 2]! -= held * tz;
}

/** Mirrored cloth lies on its own side of the plane: on the other it would lie inside its image. */
function keepOnPlane({ place, columns, rows, closing }: ClothMesh): void {
  const last = 3 * (columns - 1) * rows;
  const first = closing === 'mirrored' ? 3 * rows : 0;
  for (let a = first; a < last; a += 3) if (place[a]! < 0) place[a] = 0;
  for (let row = 0; row < rows; row++) {
    if (closing === 'mirrored') place[3 * row] = 0;
    place[last + 3 * row] = 0;
  }
}
