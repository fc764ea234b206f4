// Written from src/print/deflating/index.ts by bin/compile-search.js: change it there.
declare const bytes: Uint8Array<ArrayBuffer>;
export default bytes;

/** What the code lets its host ask; a flag is 0 or 1. */
export interface DeflatingCode {
  inputAt(length: number): number;
  deflate(length: number): number;
  outputAt(): number;
}
