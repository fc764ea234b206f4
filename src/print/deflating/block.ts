import { bits } from './bits';
import { PrefixCode } from './prefix-code';

/** Bytes and matches of one block. */
const SIZE = 1 << 14;

const END = 256;
const LENGTHS = 257;

/** Order in which the lengths of the codes for lengths are written: those that are seldom used last. */
const ORDER: StaticArray<u8> = [16, 17, 18, 0, 8, 7, 9, 6, 10, 5, 11, 4, 12, 3, 13, 2, 14, 1, 15];

/** In place of 3 to 10 zeros, and of 11 to 138. */
const FEW_ZEROS = 17;
const MANY_ZEROS = 18;

/** Collects bytes and matches, and writes them with the codes that suit them (RFC 1951, 3.2.7). */
class Block {
  readonly size: i32 = SIZE;
  /** A byte with 0, or the length of a match with how far it is away. */
  private symbols: StaticArray<u16> = new StaticArray<u16>(SIZE);
  private aways: StaticArray<u16> = new StaticArray<u16>(SIZE);
  private count: i32 = 0;
  private literals: PrefixCode = new PrefixCode(286, 15);
  private distances: PrefixCode = new PrefixCode(30, 15);
  private widths: PrefixCode = new PrefixCode(19, 7);

  begin(): void {
    this.count = 0;
    this.literals.clear();
    this.distances.clear();
  }

  /** There is still room for one match that was put off. */
  isFull(): bool {
    return this.count >= SIZE - 1;
  }

  literal(byte: i32): void {
    this.add(byte, 0);
    this.literals.count(byte);
  }

  match(length: i32, away: i32): void {
    this.add(length, away);
    this.literals.count(lengthSymbol(length));
    this.distances.count(distanceSymbol(away));
  }

  private add(symbol: i32, away: i32): void {
    this.symbols[this.count] = <u16>symbol;
    this.aways[this.count++] = <u16>away;
  }

  write(isLast: bool): void {
    this.literals.count(END);
    this.literals.make();
    this.distances.make();
    bits.put(isLast ? 1 : 0, 1);
    bits.put(2, 2);
    this.writeCodes();
    for (let i = 0; i < this.count; i++) {
      const symbol: i32 = this.symbols[i];
      const away: i32 = this.aways[i];
      if (away === 0) this.literals.put(symbol);
      else this.putMatch(symbol, away);
    }
    this.literals.put(END);
  }

  private putMatch(length: i32, away: i32): void {
    this.literals.put(lengthSymbol(length));
    const past = length - 3;
    const lengthBits = length === 258 || past < 8 ? 0 : highestBit(past) - 2;
    bits.put(past & ((1 << lengthBits) - 1), lengthBits);
    this.distances.put(distanceSymbol(away));
    const further = away - 1;
    const awayBits = further < 4 ? 0 : highestBit(further) - 1;
    bits.put(further & ((1 << awayBits) - 1), awayBits);
  }

  private writeCodes(): void {
    const literals = this.literals.ends(LENGTHS);
    const distances = this.distances.ends(1);
    this.widths.clear();
    this.eachWidth(literals, distances, false);
    this.widths.make();
    let written = 19;
    while (written > 4 && this.widths.width(ORDER[written - 1]) === 0) written--;
    bits.put(literals - 257, 5);
    bits.put(distances - 1, 5);
    bits.put(written - 4, 4);
    for (let i = 0; i < written; i++) bits.put(this.widths.width(ORDER[i]), 3);
    this.eachWidth(literals, distances, true);
  }

  /** Counts or writes the lengths of both codes, runs of zeros as one. */
  private eachWidth(literals: i32, distances: i32, writes: bool): void {
    const all = literals + distances;
    for (let i = 0; i < all; ) {
      const width = this.widthAt(i, literals);
      let run = 1;
      while (width === 0 && i + run < all && run < 138 && this.widthAt(i + run, literals) === 0) run++;
      i += run < 3 ? 1 : run;
      const symbol = run < 3 ? width : run < 11 ? FEW_ZEROS : MANY_ZEROS;
      if (!writes) {
        this.widths.count(symbol);
        continue;
      }
      this.widths.put(symbol);
      if (symbol === FEW_ZEROS) bits.put(run - 3, 3);
      if (symbol === MANY_ZEROS) bits.put(run - 11, 7);
    }
  }

  private widthAt(i: i32, literals: i32): i32 {
    return i < literals ? this.literals.width(i) : this.distances.width(i - literals);
  }
}

/** Lengths of 3 to 10 one by one, then four to every doubling; 258 by itself. */
function lengthSymbol(length: i32): i32 {
  const past = length - 3;
  if (length === 258) return 285;
  if (past < 8) return LENGTHS + past;
  const highest = highestBit(past);
  return LENGTHS + ((highest - 1) << 2) + ((past >> (highest - 2)) & 3);
}

/** The first four one by one, then two to every doubling. */
function distanceSymbol(away: i32): i32 {
  const further = away - 1;
  if (further < 4) return further;
  const highest = highestBit(further);
  return (highest << 1) + ((further >> (highest - 1)) & 1);
}

function highestBit(value: i32): i32 {
  return 31 - clz(value);
}

export const block = new Block();
