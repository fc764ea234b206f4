/**
 * Seeded pseudo-random numbers in 32-bit integer steps, so that every machine draws the same: xoshiro128**
 * (D. Blackman and S. Vigna, "Scrambled linear pseudorandom number generators", 2021), seeded by splitmix32.
 */
export class Random {
  private a: number;
  private b: number;
  private c: number;
  private d: number;

  constructor(seed: number) {
    let state = seed | 0;
    const next = (): number => {
      state = (state + 0x9e3779b9) | 0;
      let z = Math.imul(state ^ (state >>> 16), 0x21f0aaad);
      z = Math.imul(z ^ (z >>> 15), 0x735a2d97);
      return z ^ (z >>> 15);
    };
    this.a = next();
    this.b = next();
    this.c = next();
    this.d = next();
  }

  /** From 0 up to, not including, 1. */
  unit(): number {
    const result = Math.imul(rotated(Math.imul(this.b, 5), 7), 9);
    const shifted = this.b << 9;
    this.c ^= this.a;
    this.d ^= this.b;
    this.b ^= this.c;
    this.a ^= this.d;
    this.c ^= shifted;
    this.d = rotated(this.d, 11);
    return (result >>> 0) / 4294967296;
  }

  /** A whole number from 0 up to, not including, `count`. */
  below(count: number): number {
    return Math.floor(this.unit() * count);
  }

  between(low: number, high: number): number {
    return low + this.unit() * (high - low);
  }

  /** Roughly normal, mean 0 and deviation 1: twelve draws summed, so that no logarithm is needed. */
  normal(): number {
    let sum = -6;
    for (let i = 0; i < 12; i++) sum += this.unit();
    return sum;
  }

  shuffle(values: number[]): void {
    for (let i = values.length - 1; i > 0; i--) {
      const j = this.below(i + 1);
      const value = values[i]!;
      values[i] = values[j]!;
      values[j] = value;
    }
  }
}

function rotated(value: number, by: number): number {
  return (value << by) | (value >>> (32 - by));
}
