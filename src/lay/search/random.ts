/**
 * Seeded pseudo-random numbers in 32-bit integer steps, so that every machine draws the same: xoshiro128**
 * (D. Blackman and S. Vigna, "Scrambled linear pseudorandom number generators", 2021), seeded by splitmix32.
 */
class Random {
  private a: i32 = 0;
  private b: i32 = 0;
  private c: i32 = 0;
  private d: i32 = 0;
  private state: i32 = 0;

  seed(seed: i32): void {
    this.state = seed;
    this.a = this.split();
    this.b = this.split();
    this.c = this.split();
    this.d = this.split();
  }

  /** From 0 up to, not including, 1. */
  unit(): f64 {
    return (this.bits() as f64) / 4294967296.0;
  }

  /** A whole number from 0 up to, not including, `count`. */
  below(count: i32): i32 {
    return (((this.bits() as u64) * (count as u64)) >> 32) as i32;
  }

  /** 32 random bits. */
  bits(): u32 {
    const result = rotl<i32>(this.b * 5, 7) * 9;
    const shifted = this.b << 9;
    this.c ^= this.a;
    this.d ^= this.b;
    this.b ^= this.c;
    this.a ^= this.d;
    this.c ^= shifted;
    this.d = rotl<i32>(this.d, 11);
    return result as u32;
  }

  private split(): i32 {
    this.state += 0x9e3779b9;
    let z = (this.state ^ (this.state >>> 16)) * 0x21f0aaad;
    z = (z ^ (z >>> 15)) * 0x735a2d97;
    return z ^ (z >>> 15);
  }
}

export const random = new Random();
