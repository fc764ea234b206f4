// Written from src/hanging/settling/index.ts by bin/compile-search.js: change it there.
declare const bytes: Uint8Array<ArrayBuffer>;
export default bytes;

/** What the code lets its host ask; a flag is 0 or 1. */
export interface SettlingCode {
  begin(columns: number, rows: number, ring: number, firstOnPlane: number, lastOnPlane: number): void;
  placesAt(): number;
  motionAt(): number;
  easeAt(): number;
  fallsAt(): number;
  areaAt(): number;
  alongAt(): number;
  acrossAt(): number;
  gatheredAt(): number;
  liftedAt(): number;
  cellAt(): number;
  skewAt(): number;
  bendBeforeAt(): number;
  bendAfterAt(): number;
  bendLeanAt(): number;
  bendReachAt(): number;
  stiffnessAt(): number;
  setFloor(height: number, grip: number): void;
  beginBody(levels: number, lowest: number, step: number, grip: number): void;
  halfWidthAt(): number;
  halfDepthAt(): number;
  beginOutline(levels: number, directions: number, lowest: number, step: number, above: number): void;
  reachAt(): number;
  beginTies(count: number): void;
  setTie(tie: number, anchor: number, part: number, pickUp: number, outside: number): void;
  setStitch(tie: number, on: number, under: number, outside: number): void;
  settle(steps: number, shearing: number, keeps: number, drawnIn: number): void;
}
