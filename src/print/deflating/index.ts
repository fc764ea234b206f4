/**
 * Compresses what a PDF holds (zlib's form, RFC 1950, of deflate, RFC 1951), in AssemblyScript: TypeScript's syntax with
 * typed numbers, compiled to WebAssembly. It gives the same bytes on every machine, which the platform's own zlib does
 * not, and needs no warming up, which is nearly all that a library in JavaScript takes for a gown's papers. Its host,
 * `../pdf/deflated.ts`, puts in what is to be compressed where it is told. Nothing is checked here.
 */
import { bits } from './bits';
import { block } from './block';
import { matches } from './matches';

let room: i32 = -1;
let input: usize = 0;
let output: usize = 0;

/** Where to put so many bytes. */
export function inputAt(length: i32): usize {
  if (length > room) {
    room = length;
    input = heap.alloc(length);
    // A byte takes 15 bits at most, a match of four or more 48, what stands before a block 560 bytes.
    output = heap.alloc(2 * length + 640 * (2 + length / block.size));
  }
  return input;
}

/** @returns how many bytes stand at `outputAt` */
export function deflate(length: i32): i32 {
  bits.begin(output);
  // A window of 32 kB, and the check that these two bytes are a multiple of 31.
  bits.put(0x78, 8);
  bits.put(0x9c, 8);
  matches.begin(input, length);
  let at = 0;
  do {
    at = matches.fill(at);
    block.write(at >= length);
  } while (at < length);
  bits.flush();
  const sum = adler32(length);
  for (let shift = 24; shift >= 0; shift -= 8) bits.put((sum >> shift) & 0xff, 8);
  bits.flush();
  return bits.at - output;
}

export function outputAt(): usize {
  return output;
}

/** So many bytes are summed before their sums may overflow 32 bits (RFC 1950, 8.2). */
const SUMMED = 5552;

function adler32(length: i32): u32 {
  let a: u32 = 1;
  let b: u32 = 0;
  for (let at = 0; at < length; ) {
    for (const end = min(length, at + SUMMED); at < end; at++) {
      a += load<u8>(input + at);
      b += a;
    }
    a %= 65521;
    b %= 65521;
  }
  return (b << 16) | a;
}
