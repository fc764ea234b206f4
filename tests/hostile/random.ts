/** Numbers that look random and are the same for the same seed on every machine (splitmix32). */
export class Random {
  private state: number;

  constructor(seed: number) {
    this.state = Math.imul(seed ^ 0x9e3779b9, 0x85ebca6b) >>> 0;
  }

  /** From 0 up to, not including, 1. */
  share(): number {
    this.state = (this.state + 0x9e3779b9) >>> 0;
    let bits = this.state;
    bits = Math.imul(bits ^ (bits >>> 16), 0x21f0aaad);
    bits = Math.imul(bits ^ (bits >>> 15), 0x735a2d97);
    return ((bits ^ (bits >>> 15)) >>> 0) / 2 ** 32;
  }

  /** A whole number from 0 up to, not including, `end`. */
  below(end: number): number {
    return Math.floor(this.share() * end);
  }

  chance(probability: number): boolean {
    return this.share() < probability;
  }

  pick<T>(list: readonly T[]): T {
    const item = list[this.below(list.length)];
    if (item === undefined) throw new RangeError('nothing to pick from');
    return item;
  }
}
