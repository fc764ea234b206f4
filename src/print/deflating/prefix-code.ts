import { bits } from './bits';

/** Short codes for what comes often (Huffman, 1952), none longer than a limit, in deflate's canonical order (RFC 1951, 3.2.2). */
export class PrefixCode {
  private widths: StaticArray<u8>;
  /** The first bit lowest. */
  private codes: StaticArray<u16>;
  /** Symbols and after them pairs: how often they come, and in which pair they are. */
  private weights: StaticArray<i32>;
  private parents: StaticArray<i32>;
  /** Symbols that come, by how often. */
  private order: StaticArray<i32>;
  private used: i32 = 0;
  /** The next in `order` and the first pair that are in no pair yet, and where pairs end. */
  private leaf: i32 = 0;
  private pair: i32 = 0;
  private end: i32 = 0;

  constructor(
    private readonly symbols: i32,
    private readonly limit: i32,
  ) {
    this.widths = new StaticArray<u8>(symbols);
    this.codes = new StaticArray<u16>(symbols);
    this.weights = new StaticArray<i32>(2 * symbols);
    this.parents = new StaticArray<i32>(2 * symbols);
    this.order = new StaticArray<i32>(symbols);
  }

  clear(): void {
    for (let symbol = 0; symbol < this.symbols; symbol++) this.weights[symbol] = 0;
  }

  count(symbol: i32): void {
    this.weights[symbol]++;
  }

  width(symbol: i32): i32 {
    return this.widths[symbol];
  }

  put(symbol: i32): void {
    bits.put(this.codes[symbol], this.widths[symbol]);
  }

  /** How many symbols there are up to the last that is used; `least` at least. */
  ends(least: i32): i32 {
    let end = this.symbols;
    while (end > least && this.widths[end - 1] === 0) end--;
    return end;
  }

  /** Makes the code from the counts. */
  make(): void {
    // A code of one symbol is none: readers differ in what they make of it.
    this.list();
    for (let symbol = 0; this.used < 2; symbol++)
      if (this.weights[symbol] === 0) {
        this.weights[symbol] = 1;
        this.used++;
      }
    // Counts that lie closer together make a code less deep, a little longer than the shortest of that depth.
    while (this.measure() > this.limit)
      for (let symbol = 0; symbol < this.symbols; symbol++)
        if (this.weights[symbol] > 1) this.weights[symbol] = (this.weights[symbol] + 1) >> 1;
    this.number();
  }

  /** Lists the symbols that come, those that come least often first. */
  private list(): void {
    this.used = 0;
    for (let symbol = 0; symbol < this.symbols; symbol++) {
      if (this.weights[symbol] === 0) continue;
      let at = this.used++;
      for (; at > 0 && this.weights[this.order[at - 1]] > this.weights[symbol]; at--)
        this.order[at] = this.order[at - 1];
      this.order[at] = symbol;
    }
  }

  /** How long each code is: the two that come least often become a pair, again and again. @returns the longest */
  private measure(): i32 {
    this.list();
    this.leaf = 0;
    this.pair = this.symbols;
    this.end = this.symbols;
    for (let left = this.used; left > 1; left--) {
      const first = this.take();
      const second = this.take();
      this.weights[this.end] = this.weights[first] + this.weights[second];
      this.parents[first] = this.end;
      this.parents[second] = this.end++;
    }
    let longest = 0;
    for (let symbol = 0; symbol < this.symbols; symbol++) {
      let width = 0;
      if (this.weights[symbol] > 0) for (let at = symbol; at < this.end - 1; at = this.parents[at]) width++;
      this.widths[symbol] = <u8>width;
      longest = max(longest, width);
    }
    return longest;
  }

  /** The lightest that is in no pair yet: the next symbol or, as pairs grow heavier, the pair made first. */
  private take(): i32 {
    const hasPair = this.pair < this.end;
    if (this.leaf === this.used) return this.pair++;
    const symbol = this.order[this.leaf];
    if (hasPair && this.weights[this.pair] < this.weights[symbol]) return this.pair++;
    this.leaf++;
    return symbol;
  }

  private number(): void {
    let code = 0;
    for (let width = 1; width <= this.limit; width++) {
      code <<= 1;
      for (let symbol = 0; symbol < this.symbols; symbol++)
        if (this.widths[symbol] === width) this.codes[symbol] = reversed(code++, width);
    }
  }
}

function reversed(code: i32, width: i32): u16 {
  let turned = 0;
  for (let i = 0; i < width; i++) turned |= ((code >> i) & 1) << (width - 1 - i);
  return <u16>turned;
}
