import bytes from './search.wasm';

/** What the innermost part of the search, `search/index.ts`, lets its host ask; a flag is 0 or 1. */
export interface SearchCode {
  beginPairs(lies: number): void;
  newRegion(halfWidth: number, halfHeight: number, slack: number, sides: number, cells: number): number;
  setSide(
    region: number,
    side: number,
    x: number,
    y: number,
    directionX: number,
    directionY: number,
    length: number,
    insideAtEnds: number,
  ): void;
  finishRegion(region: number): void;
  setPair(fixed: number, moving: number, region: number, signX: number, signY: number): void;
  beginLayout(items: number, lies: number, shapes: number, width: number, gap: number): void;
  setShape(shape: number, halfWidth: number, halfHeight: number, anchor: number): void;
  setItem(item: number, start: number, end: number, area: number, middle: number): void;
  setLie(at: number, lie: number): void;
  setPattern(across: number, origin: number, down: number): void;
  beginSearch(seed: number, anywhere: number, touching: number, nearby: number, improved: number): void;
  separate(passes: number, strikes: number): number;
  settle(): number;
  put(item: number, choice: number, x: number, y: number): void;
  xOf(item: number): number;
  yOf(item: number): number;
  choiceOf(item: number): number;
  overlap(a: number, b: number): number;
  getLength(): number;
  setLength(length: number): void;
  work(): number;
  unit(): number;
  near(item: number, x: number, y: number, reach: number): number;
  nearAt(index: number): number;
  addDrawn(x: number, y: number): void;
  price(item: number, limit: number): number;
  drawnX(index: number): number;
  drawnCost(index: number): number;
}

/** What it asks of its host in turn. */
export interface SearchHost {
  /** Makes the region of two lies and sets it. */
  makePair(fixed: number, moving: number): void;
  isStopped(work: number): boolean;
}

let compiled: WebAssembly.Module | undefined;

/** The code with a memory of its own. */
export function searchCode({ makePair, isStopped }: SearchHost): SearchCode {
  compiled ??= new WebAssembly.Module(bytes);
  const imports = { 'no-fit-pairs': { makePair }, separation: { isStopped } };
  return new WebAssembly.Instance(compiled, imports).exports as SearchCode;
}
