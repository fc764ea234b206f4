import bytes, { type SearchCode } from './search.wasm';

export type { SearchCode };

/** What it asks of its host in turn. */
export interface SearchHost {
  /** Makes the no-fit polygon of two lies and sets it. */
  makePair(fixed: number, moving: number): void;
  isStopped(work: number): boolean;
}

let compiled: WebAssembly.Module | undefined;

/** The code with a memory of its own. */
export function searchCode({ makePair, isStopped }: SearchHost): SearchCode {
  compiled ??= new WebAssembly.Module(bytes);
  const imports = { 'no-fit-pairs': { makePair }, 'moving-apart': { isStopped } };
  return new WebAssembly.Instance(compiled, imports).exports as SearchCode;
}
