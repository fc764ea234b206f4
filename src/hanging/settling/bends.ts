import { cloth } from './cloth';

/**
 * Bending, along the rows and along the columns: the energy of an isometric sheet is quadratic in its places (Bergou,
 * Wardetzky and others, "A quadratic bending model for inextensible surfaces", 2006), so each bend is a linear
 * condition of three numbers, and all but these is worked out before the first step.
 */
class Bends {
  before: StaticArray<f64> = new StaticArray<f64>(0);
  after: StaticArray<f64> = new StaticArray<f64>(0);
  lean: StaticArray<f64> = new StaticArray<f64>(0);
  reach: StaticArray<f64> = new StaticArray<f64>(0);
  stiffness: StaticArray<f64> = new StaticArray<f64>(0);
  /** One over the rest length to the place below. */
  private down: StaticArray<f64> = new StaticArray<f64>(0);
  /** How much of a bend, along the column and across it, is taken back for one of ease; 0 where it is left alone. */
  private shareAlong: StaticArray<f64> = new StaticArray<f64>(0);
  private shareAcross: StaticArray<f64> = new StaticArray<f64>(0);

  begin(count: i32): void {
    this.before = new StaticArray<f64>(count);
    this.after = new StaticArray<f64>(count);
    this.lean = new StaticArray<f64>(count);
    this.reach = new StaticArray<f64>(count);
    this.stiffness = new StaticArray<f64>(count);
    this.down = new StaticArray<f64>(count);
    this.shareAlong = new StaticArray<f64>(count);
    this.shareAcross = new StaticArray<f64>(count);
  }

  prepare(): void {
    const rows = cloth.rows;
    for (let own = 0; own < this.down.length; own++) this.down[own] = 1 / cloth.along[own];
    for (let column = 0; column < cloth.columns; column++) {
      for (let row = 0; row < rows; row++) {
        const own = column * rows + row;
        if (row > 0 && row + 1 < rows) this.shareAlong[own] = this.shareOfAlong(own);
        if (this.reach[own] !== 0 && !isFree(column)) this.shareAcross[own] = this.shareOfAcross(column, row);
      }
    }
  }

  solve(): void {
    const rows = cloth.rows;
    for (let column = 0; column < cloth.columns; column++) {
      const first = column * rows;
      const last = first + rows - 1;
      const onPlane = isOnPlane(column);
      const before = columnBefore(column) * rows - first;
      const after = columnAfter(column) * rows - first;
      for (let own = first; own <= last; own++) {
        if (this.shareAlong[own] !== 0) this.along(own);
        if (this.shareAcross[own] === 0) continue;
        if (onPlane || own === first || own === last) {
          const up = own === first ? own : own - 1;
          this.acrossAtEdge(own, own + before, own + after, up, own === last ? own : own + 1, onPlane);
        } else this.across(own, own + before, own + after);
      }
    }
  }

  private shareOfAlong(own: i32): f64 {
    const ease = cloth.ease;
    const up = this.down[own - 1];
    const down = this.down[own];
    const middle = up + down;
    const reach = (cloth.along[own - 1] + cloth.along[own]) / 2;
    const sum = ease[own - 1] * up * up + ease[own] * middle * middle + ease[own + 1] * down * down;
    return sum === 0 ? 0 : 1 / (sum + (reach * reach) / (this.stiffness[own] * cloth.area[own]));
  }

  private along(own: i32): void {
    const place = cloth.place;
    const ease = cloth.ease;
    const up = this.down[own - 1];
    const down = this.down[own];
    const middle = up + down;
    const share = this.shareAlong[own];
    const o = 3 * own;
    const bx = up * place[o - 3] + down * place[o + 3] - middle * place[o];
    const by = up * place[o - 2] + down * place[o + 4] - middle * place[o + 1];
    const bz = up * place[o - 1] + down * place[o + 5] - middle * place[o + 2];
    move(own - 1, -ease[own - 1] * up * share, bx, by, bz);
    move(own, ease[own] * middle * share, bx, by, bz);
    move(own + 1, -ease[own + 1] * down * share, bx, by, bz);
  }

  private shareOfAcross(column: i32, row: i32): f64 {
    const ease = cloth.ease;
    const rows = cloth.rows;
    const own = column * rows + row;
    const onPlane = isOnPlane(column);
    const p = this.before[own];
    const q = this.after[own];
    const lean = this.lean[own];
    const partBefore: f64 = onPlane ? 0 : p;
    const partAfter: f64 = onPlane ? p + q : q;
    const mine = this.mine(own, row === 0, row + 1 === rows);
    let sum = ease[own] * mine * mine;
    sum += ease[columnBefore(column) * rows + row] * partBefore * partBefore;
    sum += ease[columnAfter(column) * rows + row] * partAfter * partAfter;
    if (row > 0) sum += ease[own - 1] * lean * lean;
    if (row + 1 < rows) sum += ease[own + 1] * lean * lean;
    const reach = this.reach[own];
    return sum === 0 ? 0 : 1 / (sum + (reach * reach) / (this.stiffness[own] * cloth.area[own]));
  }

  /** What a place adds to its own bend: beyond the top and the bottom it stands in for the place that is not there. */
  private mine(own: i32, isTop: bool, isBottom: bool): f64 {
    const lean = this.lean[own];
    return -(this.before[own] + this.after[own]) + (isTop ? lean : 0) - (isBottom ? lean : 0);
  }

  private across(own: i32, before: i32, after: i32): void {
    const place = cloth.place;
    const ease = cloth.ease;
    const p = this.before[own];
    const q = this.after[own];
    const lean = this.lean[own];
    const mine = -(p + q);
    const share = this.shareAcross[own];
    const b = 3 * before;
    const a = 3 * after;
    const o = 3 * own;
    const x = p * place[b] + q * place[a] + mine * place[o] + lean * (place[o - 3] - place[o + 3]);
    const y =
      p * place[b + 1] + q * place[a + 1] + mine * place[o + 1] + lean * (place[o - 2] - place[o + 4]);
    const z =
      p * place[b + 2] + q * place[a + 2] + mine * place[o + 2] + lean * (place[o - 1] - place[o + 5]);
    move(before, -ease[before] * p * share, x, y, z);
    move(after, -ease[after] * q * share, x, y, z);
    move(own, -ease[own] * mine * share, x, y, z);
    if (lean === 0) return;
    move(own - 1, -ease[own - 1] * lean * share, x, y, z);
    move(own + 1, ease[own + 1] * lean * share, x, y, z);
  }

  /** On the mirrored plane the two neighbours are one place and its image: their bend along x is nothing. */
  private acrossAtEdge(own: i32, before: i32, after: i32, up: i32, down: i32, onPlane: bool): void {
    const place = cloth.place;
    const ease = cloth.ease;
    const p: f64 = onPlane ? 0 : this.before[own];
    const q: f64 = onPlane ? this.before[own] + this.after[own] : this.after[own];
    const above: f64 = up === own ? 0 : this.lean[own];
    const below: f64 = down === own ? 0 : -this.lean[own];
    const mine = this.mine(own, up === own, down === own);
    const share = this.shareAcross[own];
    const b = 3 * before;
    const a = 3 * after;
    const o = 3 * own;
    const u = 3 * up;
    const d = 3 * down;
    const x: f64 = onPlane
      ? 0
      : p * place[b] + q * place[a] + mine * place[o] + above * place[u] + below * place[d];
    const y =
      p * place[b + 1] + q * place[a + 1] + mine * place[o + 1] + above * place[u + 1] + below * place[d + 1];
    const z =
      p * place[b + 2] + q * place[a + 2] + mine * place[o + 2] + above * place[u + 2] + below * place[d + 2];
    move(before, -ease[before] * p * share, x, y, z);
    move(after, -ease[after] * q * share, x, y, z);
    move(own, -ease[own] * mine * share, x, y, z);
    move(up, -ease[up] * above * share, x, y, z);
    move(down, -ease[down] * below * share, x, y, z);
  }
}

function move(i: i32, by: f64, x: f64, y: f64, z: f64): void {
  const place = cloth.place;
  const a = 3 * i;
  place[a] += by * x;
  place[a + 1] += by * y;
  place[a + 2] += by * z;
}

function isOnPlane(column: i32): bool {
  return column === cloth.columns - 1 ? cloth.lastOnPlane : column === 0 && cloth.firstOnPlane;
}

/** A side edge that nothing is sewn to. */
function isFree(column: i32): bool {
  return !cloth.ring && !isOnPlane(column) && (column === 0 || column === cloth.columns - 1);
}

function columnBefore(column: i32): i32 {
  return column > 0 ? column - 1 : isOnPlane(0) ? 1 : cloth.columns - 1;
}

function columnAfter(column: i32): i32 {
  return column < cloth.columns - 1 ? column + 1 : isOnPlane(column) ? column - 1 : 0;
}

export const bends = new Bends();
