import { type ClothMesh, isOnPlane } from './cloth-mesh.ts';

/** A run of places one after the other: a column, or a row. */
interface Run {
  readonly first: number;
  /** From one place to the next. */
  readonly step: number;
  readonly places: number;
  readonly closed: boolean;
  /** Its first and its last place lie on the mirrored plane and move only in it. */
  readonly firstOnPlane: boolean;
  readonly lastOnPlane: boolean;
}

const OFF_PLANE = { firstOnPlane: false, lastOnPlane: false } as const;

/** Most that a length is drawn in or pushed out in one step, as a share of it. */
const AT_ONCE = 0.05;
/** Most that it is drawn in where the cloth hangs from few places, which could not carry it otherwise. */
const DRAWN_IN_AT_TIES = 0.5;

/** Added to every sum of eases, so that a length between two held places does not divide by nothing. */
const HELD_BOTH = 1e-12;

/**
 * Puts the cloth at its length along the columns and at its width along the rows; gathered cloth may be narrower.
 *
 * All lengths of a run are corrected at once: what one moves its neighbours feel, so the corrections solve one equation
 * a length, each with its two neighbours alone (Thomas algorithm; a closed run by one more, as in Deul, Kugelstadt,
 * Weiler, Bender, "Direct position-based solver for stiff rods", 2018). Weight hangs down the columns and pulls along
 * the rows, and passed on from length to length it would take as many rounds as there are places.
 */
export class Stretch {
  /** Unit vector of every length of the run, and which lengths are wrong. */
  private readonly way: Float64Array;
  private readonly asks: Uint8Array;
  private readonly upper: Float64Array;
  private readonly push: Float64Array;
  /** How every push changes with the push that closes a ring. */
  private readonly echo: Float64Array;

  private readonly drawnIn: number;

  constructor(
    private readonly mesh: ClothMesh,
    isTied: boolean,
  ) {
    this.drawnIn = isTied ? DRAWN_IN_AT_TIES : AT_ONCE;
    const most = Math.max(mesh.rows, mesh.columns) + 1;
    this.way = new Float64Array(3 * most);
    this.asks = new Uint8Array(most);
    this.upper = new Float64Array(most);
    this.push = new Float64Array(most);
    this.echo = new Float64Array(most);
  }

  solveColumns(): void {
    const { columns, rows, along } = this.mesh;
    for (let column = 0; column < columns; column++) {
      const run = { first: column * rows, step: 1, places: rows, closed: false, ...OFF_PLANE };
      this.solve(run, along, undefined);
    }
  }

  solveRows(): void {
    const { columns, rows, across, gathered, closing } = this.mesh;
    const closed = closing === 'ring';
    const onPlane = {
      firstOnPlane: isOnPlane(closing, 0, columns),
      lastOnPlane: isOnPlane(closing, columns - 1, columns),
    };
    for (let row = 0; row < rows; row++)
      this.solve({ first: row, step: rows, places: columns, closed, ...onPlane }, across, gathered);
  }

  private solve(run: Run, rests: Float64Array, gathered: Float64Array | undefined): void {
    if (!this.measure(run, rests, gathered)) return;
    const { places, closed } = run;
    const lengths = closed ? places : places - 1;
    const open = closed ? lengths - 1 : lengths;
    this.solveOpen(run, open, closed);
    if (closed) this.close(run, open);
    this.apply(run, lengths);
  }

  /** Reads every length; false where all are right. `push` holds what each misses. */
  private measure(
    { first, step, places, closed }: Run,
    rests: Float64Array,
    gathered: Float64Array | undefined,
  ): boolean {
    const { place } = this.mesh;
    const { way, asks, push } = this;
    const lengths = closed ? places : places - 1;
    let any = false;
    for (let k = 0; k < lengths; k++) {
      const own = first + k * step;
      const a = 3 * own;
      const b = k + 1 === places ? 3 * first : a + 3 * step;
      const x = place[b]! - place[a]!;
      const y = place[b + 1]! - place[a + 1]!;
      const z = place[b + 2]! - place[a + 2]!;
      const length = Math.sqrt(x * x + y * y + z * z);
      const over = length > 0 ? 1 / length : 0;
      way[3 * k] = x * over;
      way[3 * k + 1] = y * over;
      way[3 * k + 2] = z * over;
      const most = rests[own]!;
      const least = gathered === undefined ? most : most * gathered[own]!;
      const wanted = length > most ? most : Math.max(length, least);
      asks[k] = wanted === length ? 0 : 1;
      // Far from right, the ways of the lengths are not yet those that they will have: part of the way is enough.
      const miss = length - wanted;
      push[k] = Math.max(-AT_ONCE * most, Math.min(this.drawnIn * most, miss));
      if (wanted !== length) any = true;
    }
    return any;
  }

  /** What the pushes of length k and the one after it do to each other: less the place between them and their bend. */
  private between(run: Run, k: number, next: number): number {
    if (this.asks[k] === 0 || this.asks[next] === 0) return 0;
    const { way } = this;
    const bend =
      way[3 * k]! * way[3 * next]! +
      way[3 * k + 1]! * way[3 * next + 1]! +
      way[3 * k + 2]! * way[3 * next + 2]!;
    return -this.mesh.ease[run.first + next * run.step]! * bend;
  }

  private own(run: Run, k: number): number {
    if (this.asks[k] === 0) return 1;
    const { ease } = this.mesh;
    const after = k + 1 === run.places ? 0 : k + 1;
    const sideways = this.way[3 * k]! * this.way[3 * k]!;
    // A place on the plane does not give way across it.
    const easeBefore = ease[run.first + k * run.step]! * (run.firstOnPlane && k === 0 ? 1 - sideways : 1);
    const easeAfter =
      ease[run.first + after * run.step]! * (run.lastOnPlane && after === run.places - 1 ? 1 - sideways : 1);
    return easeBefore + easeAfter + HELD_BOTH;
  }

  private solveOpen(run: Run, open: number, closed: boolean): void {
    const { upper, push, echo } = this;
    let beside = 0;
    for (let k = 0; k < open; k++) {
      const pivot = k === 0 ? this.own(run, k) : this.own(run, k) - beside * upper[k - 1]!;
      if (k > 0) push[k]! -= beside * push[k - 1]!;
      if (closed) {
        echo[k] = k === 0 ? this.between(run, open, 0) : -beside * echo[k - 1]!;
        if (k === open - 1) echo[k]! += this.between(run, k, open);
        echo[k]! /= pivot;
      }
      beside = k + 1 < open ? this.between(run, k, k + 1) : 0;
      upper[k] = beside / pivot;
      push[k]! /= pivot;
    }
    for (let k = open - 2; k >= 0; k--) {
      push[k]! -= upper[k]! * push[k + 1]!;
      if (closed) echo[k]! -= upper[k]! * echo[k + 1]!;
    }
  }

  private close(run: Run, last: number): void {
    const { push, echo } = this;
    const toFirst = this.between(run, last, 0);
    const toBefore = this.between(run, last - 1, last);
    const miss = push[last]! - toFirst * push[0]! - toBefore * push[last - 1]!;
    const closing = miss / (this.own(run, last) - toFirst * echo[0]! - toBefore * echo[last - 1]!);
    push[last] = closing;
    for (let k = 0; k < last; k++) push[k]! -= echo[k]! * closing;
  }

  private apply({ first, step, places, firstOnPlane, lastOnPlane }: Run, lengths: number): void {
    const { place, ease } = this.mesh;
    const { way, push, asks } = this;
    for (let k = 0; k < lengths; k++) {
      if (asks[k] === 0) continue;
      const own = first + k * step;
      const next = k + 1 === places ? first : own + step;
      const before = ease[own]! * push[k]!;
      const after = ease[next]! * push[k]!;
      const a = 3 * own;
      const b = 3 * next;
      const x = way[3 * k]!;
      const y = way[3 * k + 1]!;
      const z = way[3 * k + 2]!;
      if (!(firstOnPlane && k === 0)) place[a]! += before * x;
      place[a + 1]! += before * y;
      place[a + 2]! += before * z;
      if (!(lastOnPlane && k === lengths - 1)) place[b]! -= after * x;
      place[b + 1]! -= after * y;
      place[b + 2]! -= after * z;
    }
  }
}
