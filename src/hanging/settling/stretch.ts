import { cloth } from './cloth';

/** Most that a length is pushed out in one step, as a share of it. */
const AT_ONCE: f64 = 0.05;

/** From this share of its width on, cloth that may lie in ripples is drawn out. */
const NEARLY: f64 = 0.995;

/** Added to every sum of eases, so that a length between two held places does not divide by nothing. */
const HELD_BOTH: f64 = 1e-12;

/**
 * Puts the cloth at its length along the columns and at its width along the rows; gathered cloth may be narrower.
 *
 * All lengths of a run, a column or a row, are corrected at once: what one moves its neighbours feel, so the corrections
 * solve one equation a length, each with its two neighbours alone (Thomas algorithm; a closed run by one more, as in
 * Deul, Kugelstadt, Weiler, Bender, "Direct position-based solver for stiff rods", 2018). Weight hangs down the columns
 * and pulls along the rows, and passed on from length to length it would take as many rounds as there are places.
 */
class Stretch {
  /** Unit vector of every length of the run, what it misses and how it is pushed, and which lengths are wrong. */
  private way: StaticArray<f64> = new StaticArray<f64>(0);
  private push: StaticArray<f64> = new StaticArray<f64>(0);
  private asks: StaticArray<u8> = new StaticArray<u8>(0);
  /** Above the diagonal of the equations. */
  private upper: StaticArray<f64> = new StaticArray<f64>(0);
  /** How every push changes with the push that closes a ring. */
  private echo: StaticArray<f64> = new StaticArray<f64>(0);
  private drawnIn: f64 = 0;
  /** The run: its first place, from one place to the next, its places, and whether the last goes on to the first. */
  private first: i32 = 0;
  private step: i32 = 0;
  private places: i32 = 0;
  private closed: bool = false;
  /** Its first and its last place lie on the mirrored plane and move only in it. */
  private firstOnPlane: bool = false;
  private lastOnPlane: bool = false;

  begin(drawnIn: f64): void {
    this.drawnIn = drawnIn;
    const most = (cloth.rows > cloth.columns ? cloth.rows : cloth.columns) + 1;
    this.way = new StaticArray<f64>(3 * most);
    this.push = new StaticArray<f64>(most);
    this.asks = new StaticArray<u8>(most);
    this.upper = new StaticArray<f64>(most);
    this.echo = new StaticArray<f64>(most);
  }

  solveColumns(): void {
    this.step = 1;
    this.places = cloth.rows;
    this.closed = false;
    this.firstOnPlane = false;
    this.lastOnPlane = false;
    for (let column = 0; column < cloth.columns; column++) {
      this.first = column * cloth.rows;
      this.solve(cloth.along, null);
    }
  }

  solveRows(): void {
    this.step = cloth.rows;
    this.places = cloth.columns;
    this.closed = cloth.ring;
    this.firstOnPlane = cloth.firstOnPlane;
    this.lastOnPlane = cloth.lastOnPlane;
    for (let row = 0; row < cloth.rows; row++) {
      this.first = row;
      this.solve(cloth.across, cloth.gathered);
    }
  }

  private solve(rests: StaticArray<f64>, gathered: StaticArray<f64> | null): void {
    if (!this.measure(rests, gathered)) return;
    const lengths = this.closed ? this.places : this.places - 1;
    const open = this.closed ? lengths - 1 : lengths;
    if (this.closed) this.hearEcho(open);
    this.eliminate(open);
    if (this.closed) this.close(open);
    this.apply(lengths);
  }

  /** Reads every length; false where all are right. `push` holds what each misses. */
  private measure(rests: StaticArray<f64>, gathered: StaticArray<f64> | null): bool {
    const place = cloth.place;
    const way = this.way;
    const lengths = this.closed ? this.places : this.places - 1;
    let any: u8 = 0;
    for (let k = 0, own = this.first; k < lengths; k++, own += this.step) {
      const a = 3 * own;
      const b = k + 1 === this.places ? 3 * this.first : a + 3 * this.step;
      const x = place[b] - place[a];
      const y = place[b + 1] - place[a + 1];
      const z = place[b + 2] - place[a + 2];
      const length = Math.sqrt(x * x + y * y + z * z);
      const over: f64 = length > 0 ? 1 / length : 0;
      way[3 * k] = x * over;
      way[3 * k + 1] = y * over;
      way[3 * k + 2] = z * over;
      const most = rests[own];
      const least = gathered === null ? most : most * gathered[own];
      const wanted = length > most ? most : length > least ? length : least;
      // What is nearly drawn out is held as it is: its neighbours would else draw it out too far.
      const asks: u8 = wanted === length && length < NEARLY * most ? 0 : 1;
      // Far from right, the ways of the lengths are not yet those that they will have: part of the way is enough.
      const drawn = this.drawnIn * most;
      const pushed = -AT_ONCE * most;
      const miss = length - wanted;
      this.push[k] = miss > drawn ? drawn : miss < pushed ? pushed : miss;
      this.asks[k] = asks;
      if (wanted !== length) any = 1;
    }
    return any !== 0;
  }

  /** What the pushes of length k and the one after it do to each other: less the place between them and their bend. */
  private between(k: i32, next: i32): f64 {
    if ((this.asks[k] & this.asks[next]) === 0) return 0;
    const way = this.way;
    const a = 3 * k;
    const b = 3 * next;
    const bend = way[a] * way[b] + way[a + 1] * way[b + 1] + way[a + 2] * way[b + 2];
    return -cloth.ease[this.first + next * this.step] * bend;
  }

  private own(k: i32): f64 {
    if (this.asks[k] === 0) return 1;
    const ease = cloth.ease;
    const after = k + 1 === this.places ? 0 : k + 1;
    let before = ease[this.first + k * this.step];
    let beyond = ease[this.first + after * this.step];
    // A place on the plane does not give way across it.
    const sideways = this.way[3 * k] * this.way[3 * k];
    if (this.firstOnPlane && k === 0) before *= 1 - sideways;
    if (this.lastOnPlane && after === this.places - 1) beyond *= 1 - sideways;
    return before + beyond + HELD_BOTH;
  }

  /** Of all but the length that closes a ring: one after the other from the first, and back. */
  private eliminate(open: i32): void {
    const upper = this.upper;
    const push = this.push;
    const echo = this.echo;
    let above: f64 = 0;
    let pushed: f64 = 0;
    let echoed: f64 = 0;
    for (let k = 0; k < open; k++) {
      const beside = k === 0 ? 0 : this.between(k - 1, k);
      if (k > 0) {
        above *= beside;
        upper[k - 1] = above;
      }
      above = 1 / (this.own(k) - beside * above);
      pushed = (push[k] - beside * pushed) * above;
      push[k] = pushed;
      if (!this.closed) continue;
      echoed = (echo[k] - beside * echoed) * above;
      echo[k] = echoed;
    }
    for (let k = open - 2; k >= 0; k--) {
      push[k] -= upper[k] * push[k + 1];
      if (this.closed) echo[k] -= upper[k] * echo[k + 1];
    }
  }

  /** What the closing length does to the two beside it. */
  private hearEcho(last: i32): void {
    for (let k = 0; k < last; k++) this.echo[k] = 0;
    this.echo[0] += this.between(last, 0);
    this.echo[last - 1] += this.between(last - 1, last);
  }

  private close(last: i32): void {
    const push = this.push;
    const echo = this.echo;
    const toFirst = this.between(last, 0);
    const toBefore = this.between(last - 1, last);
    const miss = push[last] - toFirst * push[0] - toBefore * push[last - 1];
    const closing = miss / (this.own(last) - toFirst * echo[0] - toBefore * echo[last - 1]);
    push[last] = closing;
    for (let k = 0; k < last; k++) push[k] -= echo[k] * closing;
  }

  private apply(lengths: i32): void {
    const place = cloth.place;
    const ease = cloth.ease;
    const way = this.way;
    const push = this.push;
    for (let k = 0, own = this.first; k < lengths; k++, own += this.step) {
      if (this.asks[k] === 0) continue;
      const next = k + 1 === this.places ? this.first : own + this.step;
      const before = ease[own] * push[k];
      const after = ease[next] * push[k];
      const a = 3 * own;
      const b = 3 * next;
      const x = way[3 * k];
      const y = way[3 * k + 1];
      const z = way[3 * k + 2];
      if (!(this.firstOnPlane && k === 0)) place[a] += before * x;
      place[a + 1] += before * y;
      place[a + 2] += before * z;
      if (!(this.lastOnPlane && k === lengths - 1)) place[b] -= after * x;
      place[b + 1] -= after * y;
      place[b + 2] -= after * z;
    }
  }
}

export const stretch = new Stretch();
