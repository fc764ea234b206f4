import { inflateSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deflated } from '../../src/print/pdf/deflated.ts';

describe('what is compressed', () => {
  const bytes = (count: number, byte: (i: number) => number) =>
    Uint8Array.from({ length: count }, (_, i) => byte(i));
  const CASES: readonly (readonly [string, Uint8Array, most: number])[] = [
    ['nothing', bytes(0, () => 0), 30],
    ['one byte', bytes(1, () => 65), 30],
    ['two alike', bytes(2, () => 65), 30],
    ['a match right at the end', bytes(6, (i) => 65 + (i % 3)), 40],
    ['a million alike', bytes(1_000_000, () => 7), 2000],
    ['a thousand bytes over and over', bytes(200_000, (i) => noise(i % 1000)), 4000],
    // A match lies 32 kB back at most (RFC 1951, 2): nothing is gained, and a byte of noise takes a byte.
    ['the same again too far back', bytes(100_000, (i) => noise(i % 40_000)), 101_000],
    // One of ten takes 3.32 bits, and a code of whole bits 3.4; what is alike here and there makes little of it shorter.
    ['noise of digits', bytes(100_000, (i) => 48 + (noise(i) % 10)), 48_500],
    ['every length of a match', bytes(70_000, (i) => (i % 301 < 5 ? noise(i) : 65)), 4000],
  ];

  it.each(CASES)(
    '%s is read back by another library, and is no larger than it has to be',
    (_what, content, most) => {
      const compressed = deflated(content);
      expect(Buffer.compare(inflateSync(compressed), content)).toBe(0);
      expect(compressed.length).toBeLessThan(most);
    },
  );

  it('whatever it is', () => {
    fc.assert(
      fc.property(
        fc.array(fc.uint8Array({ maxLength: 300 }), { maxLength: 20 }),
        fc.array(fc.nat(19)),
        (parts, order) => {
          const content = Buffer.concat(order.map((i) => parts[i] ?? new Uint8Array()));
          expect(Buffer.compare(inflateSync(deflated(content)), content)).toBe(0);
        },
      ),
    );
  });

  it('is the same after whatever came before', () => {
    const [first, second] = [deflated(CASES[5]![1]), deflated(CASES[7]![1])];
    expect(deflated(CASES[5]![1])).toEqual(first);
    expect(deflated(CASES[7]![1])).toEqual(second);
  });
});

/** A byte that tells nothing of the next: a common integer hash. */
function noise(i: number): number {
  let mixed = Math.imul(i ^ 0x9e3779b9, 2246822519);
  mixed = Math.imul(mixed ^ (mixed >>> 13), 3266489917);
  return (mixed ^ (mixed >>> 16)) & 255;
}
