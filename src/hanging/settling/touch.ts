import { cloth } from './cloth';

/** Keeps the cloth out of the body and above the floor, both of which hold it by friction; and mirrored cloth on its plane. */
export function touch(): void {
  const ease = cloth.ease;
  for (let i = 0; i < ease.length; i++) {
    if (ease[i] === 0) continue;
    body.push(3 * i);
    outline.push(3 * i);
    floor.push(3 * i);
  }
  if (cloth.lastOnPlane) keepOnPlane();
}

class Floor {
  private isThere: bool = false;
  private height: f64 = 0;
  private grip: f64 = 0;

  set(height: f64, grip: f64): void {
    this.isThere = true;
    this.height = height;
    this.grip = grip;
  }

  push(a: i32): void {
    const place = cloth.place;
    const deep = this.height - place[a + 2];
    if (!this.isThere || !(deep > 0)) return;
    place[a + 2] += deep;
    slide(a, 0, 0, 1, this.grip * deep);
  }
}

/** What stands inside the skirt: levels that are ellipses. */
class Body {
  halfWidth: StaticArray<f64> = new StaticArray<f64>(0);
  halfDepth: StaticArray<f64> = new StaticArray<f64>(0);
  private lowest: f64 = 0;
  private step: f64 = 1;
  private grip: f64 = 0;

  begin(levels: i32, lowest: f64, step: f64, grip: f64): void {
    this.halfWidth = new StaticArray<f64>(levels);
    this.halfDepth = new StaticArray<f64>(levels);
    this.lowest = lowest;
    this.step = step;
    this.grip = grip;
  }

  push(a: i32): void {
    const place = cloth.place;
    const up = (place[a + 2] - this.lowest) / this.step;
    if (!(up >= 0 && up < ((this.halfWidth.length - 1) as f64))) return;
    const level = up as i32;
    const part = up - (level as f64);
    const widthBelow = this.halfWidth[level];
    const depthBelow = this.halfDepth[level];
    const lifted = cloth.lifted[a / 3];
    const width = widthBelow + (this.halfWidth[level + 1] - widthBelow) * part + lifted;
    const depth = depthBelow + (this.halfDepth[level + 1] - depthBelow) * part + lifted;
    const x = place[a] / width;
    const y = place[a + 1] / depth;
    const squared = x * x + y * y;
    if (squared >= 1 || !(squared > 0)) return;
    const outward = Math.sqrt(squared);
    // Square to the surface where outward = 1, by one step of Newton's.
    const narrowing = (widthBelow - this.halfWidth[level + 1]) / (this.step * width);
    const nx = x / (width * outward);
    const ny = y / (depth * outward);
    const nz = outward * narrowing;
    const steep = Math.sqrt(nx * nx + ny * ny + nz * nz);
    const deep = (1 - outward) / (steep * steep);
    place[a] += nx * deep;
    place[a + 1] += ny * deep;
    place[a + 2] += nz * deep;
    if (this.grip !== 0) slide(a, nx / steep, ny / steep, nz / steep, this.grip * deep * steep);
  }
}

/** Takes back what a place has slid along a surface of this normal, as far as the friction there holds. */
function slide(a: i32, nx: f64, ny: f64, nz: f64, hold: f64): void {
  const place = cloth.place;
  const before = cloth.before;
  const x = place[a] - before[a];
  const y = place[a + 1] - before[a + 1];
  const z = place[a + 2] - before[a + 2];
  const out = x * nx + y * ny + z * nz;
  const tx = x - out * nx;
  const ty = y - out * ny;
  const tz = z - out * nz;
  const slid = Math.sqrt(tx * tx + ty * ty + tz * tz);
  const held: f64 = hold >= slid ? 1 : hold / slid;
  place[a] -= held * tx;
  place[a + 1] -= held * ty;
  place[a + 2] -= held * tz;
}

/** Other cloth, which this hangs over: how far out it comes by level and direction. */
class Outline {
  reach: StaticArray<f64> = new StaticArray<f64>(0);
  private levels: i32 = 0;
  private directions: i32 = 0;
  private lowest: f64 = 0;
  private step: f64 = 1;
  private above: f64 = 0;

  /** @param above how far off it this cloth lies, mm */
  begin(levels: i32, directions: i32, lowest: f64, step: f64, above: f64): void {
    this.reach = new StaticArray<f64>(levels * directions);
    this.levels = levels;
    this.directions = directions;
    this.lowest = lowest;
    this.step = step;
    this.above = above;
  }

  /** Straight out from the middle. */
  push(a: i32): void {
    if (this.levels === 0) return;
    const place = cloth.place;
    const directions = this.directions;
    const x = place[a];
    const y = place[a + 1];
    const out = Math.sqrt(x * x + y * y);
    const high = (this.levels as f64) - 1.001;
    const height = (place[a + 2] - this.lowest) / this.step;
    const up = height > high ? high : height > 0 ? height : 0;
    const level = up as i32;
    const along = this.directionOf(x, y);
    const whole = along as i32;
    const direction = whole % directions;
    const next = (direction + 1) % directions;
    const u = up - (level as f64);
    const v = along - (whole as f64);
    const reach = this.reach;
    const row = level * directions;
    const low = reach[row + direction] * (1 - v) + reach[row + next] * v;
    const over = reach[row + directions + direction] * (1 - v) + reach[row + directions + next] * v;
    const wanted = low * (1 - u) + over * u + this.above;
    if (!(out > 0) || out >= wanted) return;
    place[a] = (x * wanted) / out;
    place[a + 1] = (y * wanted) / out;
  }

  /** As `directionOf` of the host says it. */
  private directionOf(x: f64, y: f64): f64 {
    const round = Math.abs(x) + Math.abs(y);
    if (!(round > 0)) return 0;
    const quarter = y >= 0 ? (x >= 0 ? y : round - x) : x < 0 ? 2 * round - y : 3 * round + x;
    return ((quarter / round) * (this.directions as f64)) / 4;
  }
}

/** Mirrored cloth lies on its own side of the plane: on the other it would lie inside its image. */
function keepOnPlane(): void {
  const place = cloth.place;
  const rows = cloth.rows;
  const last = 3 * (cloth.columns - 1) * rows;
  for (let a = cloth.firstOnPlane ? 3 * rows : 0; a < last; a += 3) if (place[a] < 0) place[a] = 0;
  for (let row = 0; row < rows; row++) {
    if (cloth.firstOnPlane) place[3 * row] = 0;
    place[last + 3 * row] = 0;
  }
}

export const floor = new Floor();
export const body = new Body();
export const outline = new Outline();
