import { NoFitPolygon, ROUGH_CELLS } from './no-fit-polygon';

/** Asks the host to make the no-fit polygon of two lies and to hand it to `setPair`. */
declare function makePair(fixed: i32, moving: i32): void;

/**
 * A pair's entry for rough pricing, of two to this power of bytes: rough cells per unit of shift across and down (`f32`
 * each), then the addresses of the cells and of the boundary in single precision.
 */
export const ENTRY_SHIFT = 4;
export const CELLS_AT = 8;
export const SIDES_AT = 12;

/** A no-fit polygon shared by several pairs of lies: multiply a shift by the signs before asking it. */
class NoFitPair {
  constructor(
    readonly polygon: NoFitPolygon,
    readonly signX: f64,
    readonly signY: f64,
  ) {}
}

/** The no-fit polygons of all pairs of lies, memoized. */
class NoFitPairs {
  private lies: i32 = 0;
  /** By fixed lie · `lies` + moving lie. */
  private pairs: StaticArray<usize> = new StaticArray<usize>(0);
  /** Entries for rough pricing, by moving lie · `lies` + fixed lie, so that those of one move lie side by side in memory. */
  private entries: usize = 0;
  /** Every lie that an item has had, in the order of its first use; and for each lie with how many of them its pairs are made. */
  private met: StaticArray<i32> = new StaticArray<i32>(0);
  private metCount: i32 = 0;
  private isMet: StaticArray<u8> = new StaticArray<u8>(0);
  private madeWith: StaticArray<i32> = new StaticArray<i32>(0);

  begin(lies: i32): void {
    this.lies = lies;
    this.pairs = new StaticArray<usize>(lies * lies);
    this.entries = heap.alloc((lies * lies) << ENTRY_SHIFT);
    this.met = new StaticArray<i32>(lies);
    this.isMet = new StaticArray<u8>(lies);
    this.madeWith = new StaticArray<i32>(lies);
  }

  /** No item has had any lie yet. */
  forget(): void {
    this.metCount = 0;
    this.isMet.fill(0);
    this.madeWith.fill(0);
  }

  /** An item has this lie. */
  meet(lie: i32): void {
    if (this.isMet[lie] === 1) return;
    this.isMet[lie] = 1;
    this.met[this.metCount++] = lie;
  }

  /** Makes the pairs of a moving lie with every lie that an item has had, unless made before. */
  makeAll(moving: i32): void {
    while (this.madeWith[moving] < this.metCount) this.make(this.met[this.madeWith[moving]++], moving);
  }

  set(fixed: i32, moving: i32, polygon: NoFitPolygon, signX: f64, signY: f64): void {
    this.pairs[fixed * this.lies + moving] = changetype<usize>(new NoFitPair(polygon, signX, signY));
    const entry = this.roughOf(moving) + (fixed << ENTRY_SHIFT);
    store<f32>(entry, ((signX * ROUGH_CELLS) / (2 * polygon.halfWidth)) as f32);
    store<f32>(entry, ((signY * ROUGH_CELLS) / (2 * polygon.halfHeight)) as f32, 4);
    store<usize>(entry, changetype<usize>(polygon.rough), CELLS_AT);
    store<usize>(entry, changetype<usize>(polygon.sides32), SIDES_AT);
  }

  /** Of a pair that has been made. */
  known(fixed: i32, moving: i32): NoFitPair {
    return changetype<NoFitPair>(this.pairs[fixed * this.lies + moving]);
  }

  get(fixed: i32, moving: i32): NoFitPair {
    this.make(fixed, moving);
    return this.known(fixed, moving);
  }

  private make(fixed: i32, moving: i32): void {
    if (this.pairs[fixed * this.lies + moving] === 0) makePair(fixed, moving);
  }

  /** Address of the entries of one moving lie, by fixed lie; see `ENTRY_SHIFT`. */
  roughOf(moving: i32): usize {
    return this.entries + ((moving * this.lies) << ENTRY_SHIFT);
  }
}

export const pairs = new NoFitPairs();
