/** Writes bits, the lowest first, as deflate packs them. */
class Bits {
  /** Of the next whole byte. */
  at: usize = 0;
  private held: u64 = 0;
  private count: i32 = 0;

  begin(at: usize): void {
    this.at = at;
    this.held = 0;
    this.count = 0;
  }

  /** @param width 32 at most */
  put(value: u32, width: i32): void {
    this.held |= (<u64>value) << this.count;
    this.count += width;
    if (this.count < 32) return;
    store<u32>(this.at, <u32>this.held);
    this.at += 4;
    this.held >>= 32;
    this.count -= 32;
  }

  /** To the end of a byte. */
  flush(): void {
    for (; this.count > 0; this.count -= 8) {
      store<u8>(this.at++, <u8>this.held);
      this.held >>= 8;
    }
    this.count = 0;
  }
}

export const bits = new Bits();
