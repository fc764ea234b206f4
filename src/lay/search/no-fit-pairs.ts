import { NoFitRegion, ROUGH_CELLS } from './no-fit-region';

/** Made by the host when first asked for, which hands it to `set`. */
declare function makePair(fixed: i32, moving: i32): void;

/**
 * A pair's rough entry has two to this power of bytes: cells for a unit of shift across, down, where they stand, and
 * where the boundary stands in short.
 */
export const ENTRY_SHIFT = 4;
export const CELLS_AT = 8;
export const SIDES_AT = 12;

/** A region as a pair in their attitudes meets it: multiply a shift by the signs before asking. */
class NoFitPair {
  constructor(
    readonly region: NoFitRegion,
    readonly signX: f64,
    readonly signY: f64,
  ) {}
}

/** The no-fit regions of every two lies. */
class NoFitPairs {
  private lies: i32 = 0;
  /** By fixed lie · `lies` + moving lie. */
  private pairs: StaticArray<usize> = new StaticArray<usize>(0);
  /** Rough entries, by moving lie · `lies` + fixed lie, so that those of one move stand together. */
  private entries: usize = 0;
  /** The lies that items have had, as they came, and for each lie how many of them its pairs are made with. */
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

  /** Makes what is not yet made of the pairs of a moving lie with all that items have had. */
  makeAll(moving: i32): void {
    while (this.madeWith[moving] < this.metCount) this.make(this.met[this.madeWith[moving]++], moving);
  }

  set(fixed: i32, moving: i32, region: NoFitRegion, signX: f64, signY: f64): void {
    this.pairs[fixed * this.lies + moving] = changetype<usize>(new NoFitPair(region, signX, signY));
    const entry = this.roughOf(moving) + (fixed << ENTRY_SHIFT);
    store<f32>(entry, ((signX * ROUGH_CELLS) / (2 * region.halfWidth)) as f32);
    store<f32>(entry, ((signY * ROUGH_CELLS) / (2 * region.halfHeight)) as f32, 4);
    store<usize>(entry, changetype<usize>(region.rough), CELLS_AT);
    store<usize>(entry, changetype<usize>(region.shortSides), SIDES_AT);
  }

  /** Of a pair that is sure to be made. */
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

  /** The entries of one moving lie, by fixed lie: bytes as `ENTRY_SHIFT` says. */
  roughOf(moving: i32): usize {
    return this.entries + ((moving * this.lies) << ENTRY_SHIFT);
  }
}

export const pairs = new NoFitPairs();
