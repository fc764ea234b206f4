// Written from src/lay/search/index.ts by bin/compile-search.js: change it there.
declare const bytes: Uint8Array<ArrayBuffer>;
export default bytes;

/** What the code lets its host ask; a flag is 0 or 1. */
export interface SearchCode {
  beginPairs(lies: number): void;
  newPolygon(halfWidth: number, halfHeight: number, slack: number, sides: number, cells: number): number;
  setSide(polygon: number, side: number, x: number, y: number, directionX: number, directionY: number, length: number, insideAtEnds: number): void;
  finishPolygon(polygon: number): void;
  setPair(fixed: number, moving: number, polygon: number, signX: number, signY: number): void;
  beginLayout(items: number, lies: number, shapes: number, width: number, gap: number): void;
  setShape(shape: number, halfWidth: number, halfHeight: number, anchor: number): void;
  setItem(item: number, start: number, end: number, area: number, middle: number): void;
  setLie(at: number, lie: number): void;
  setPattern(across: number, origin: number, down: number): void;
  beginSearch(seed: number, anywhere: number, touching: number, nearby: number, improved: number): void;
  settleAll(): number;
  moveApart(idlePasses: number, idleRounds: number): number;
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
