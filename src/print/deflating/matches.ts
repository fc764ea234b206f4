import { block } from './block';

const WINDOW = 1 << 15;
/** Three alike, which deflate allows, are found among digits everywhere and mostly far away: said as they are, they take less. */
const LEAST = 4;
const MOST = 258;

/** Earlier places that are looked at for one match. */
const LOOKS = 32;

/** A match as long as this is taken as it is; a shorter one waits for what the next byte finds. */
const LONG = 32;

/**
 * Finds what was said before (Ziv, Lempel, 1977): places with the same first four bytes stand in chains, the latest
 * first. Before a match is taken, the place after it is asked for a longer one.
 */
class Matches {
  private input: usize = 0;
  private length: i32 = 0;
  /** By a hash of four bytes, the latest place, and by place the one before it; counted from 1. */
  private latest: StaticArray<i32> = new StaticArray<i32>(WINDOW);
  private before: StaticArray<i32> = new StaticArray<i32>(WINDOW);
  private found: i32 = 0;
  private away: i32 = 0;

  begin(input: usize, length: i32): void {
    this.input = input;
    this.length = length;
    memory.fill(changetype<usize>(this.latest), 0, 4 * WINDOW);
  }

  /** Fills a block from a place on. @returns where it ends */
  fill(from: i32): i32 {
    let at = from;
    block.begin();
    while (at < this.length && !block.isFull()) {
      this.find(at, LEAST - 1);
      this.enter(at);
      let length = this.found;
      if (length < LEAST) {
        block.literal(this.byte(at++));
        continue;
      }
      let away = this.away;
      while (length < LONG && !block.isFull()) {
        this.find(at + 1, length);
        if (this.found <= length) break;
        block.literal(this.byte(at++));
        this.enter(at);
        length = this.found;
        away = this.away;
      }
      block.match(length, away);
      for (let i = 1; i < length; i++) this.enter(at + i);
      at += length;
    }
    return at;
  }

  private byte(at: i32): i32 {
    return load<u8>(this.input + at);
  }

  private hash(at: i32): i32 {
    return (load<u32>(this.input + at) * 0x9e3779b1) >> 17;
  }

  private enter(at: i32): void {
    if (at + LEAST > this.length) return;
    const hash = this.hash(at);
    this.before[at & (WINDOW - 1)] = this.latest[hash];
    this.latest[hash] = at + 1;
  }

  /** The longest match at a place that is longer than `least`, the nearest of several. */
  private find(at: i32, least: i32): void {
    this.found = 0;
    const most = min(MOST, this.length - at);
    if (most <= least || most < LEAST) return;
    const farthest = max(0, at - WINDOW + 1);
    let longest = least;
    let looks = LOOKS;
    for (let other = this.latest[this.hash(at)] - 1; other >= farthest; other = this.next(other)) {
      const length = this.alike(other, at, longest, most);
      if (length > longest) {
        longest = length;
        this.found = length;
        this.away = at - other;
        if (length === most) return;
      }
      if (--looks === 0) return;
    }
  }

  private next(place: i32): i32 {
    return this.before[place & (WINDOW - 1)] - 1;
  }

  /** How many bytes are alike at two places; 0 where they are no more than `least`. */
  private alike(a: i32, b: i32, least: i32, most: i32): i32 {
    if (this.byte(a + least) !== this.byte(b + least)) return 0;
    let length = 0;
    while (length < most && this.byte(a + length) === this.byte(b + length)) length++;
    return length;
  }
}

export const matches = new Matches();
