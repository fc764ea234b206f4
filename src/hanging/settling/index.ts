/**
 * The innermost part of hanging, in AssemblyScript: TypeScript's syntax with typed numbers (`i32` integer, `f64` double
 * precision), compiled to WebAssembly. It needs no warming up and gives the same bits on every machine. Its host,
 * `../settle.ts`, begins a cloth, fills its arrays where they stand, says what surrounds it and lets it settle; each in an
 * instance of its own. Nothing is checked here.
 */
import { bends } from './bends';
import { cloth } from './cloth';
import { shear } from './shear';
import { stretch } from './stretch';
import { ties } from './ties';
import { body, floor, outline, touch } from './touch';

/** @param ring the last column is sewn to the first */
export function begin(columns: i32, rows: i32, ring: i32, firstOnPlane: i32, lastOnPlane: i32): void {
  cloth.begin(columns, rows, ring !== 0, firstOnPlane !== 0, lastOnPlane !== 0);
  bends.begin(columns * rows);
}

// Where the arrays stand that the host fills, by place; see `ClothMesh`.

/** Three numbers a place. */
export function placesAt(): usize {
  return changetype<usize>(cloth.place);
}

export function motionAt(): usize {
  return changetype<usize>(cloth.motion);
}

export function easeAt(): usize {
  return changetype<usize>(cloth.ease);
}

/** How far a place falls in a step. */
export function fallsAt(): usize {
  return changetype<usize>(cloth.falls);
}

export function areaAt(): usize {
  return changetype<usize>(cloth.area);
}

export function alongAt(): usize {
  return changetype<usize>(cloth.along);
}

export function acrossAt(): usize {
  return changetype<usize>(cloth.across);
}

export function gatheredAt(): usize {
  return changetype<usize>(cloth.gathered);
}

/** How far off the body a place lies. */
export function liftedAt(): usize {
  return changetype<usize>(cloth.lifted);
}

export function cellAt(): usize {
  return changetype<usize>(cloth.cell);
}

export function skewAt(): usize {
  return changetype<usize>(cloth.skew);
}

export function bendBeforeAt(): usize {
  return changetype<usize>(bends.before);
}

export function bendAfterAt(): usize {
  return changetype<usize>(bends.after);
}

export function bendLeanAt(): usize {
  return changetype<usize>(bends.lean);
}

export function bendReachAt(): usize {
  return changetype<usize>(bends.reach);
}

/** Bending length³ · fall. */
export function stiffnessAt(): usize {
  return changetype<usize>(bends.stiffness);
}

// What surrounds it; nothing where it is not said.

export function setFloor(height: f64, grip: f64): void {
  floor.set(height, grip);
}

export function beginBody(levels: i32, lowest: f64, step: f64, grip: f64): void {
  body.begin(levels, lowest, step, grip);
}

export function halfWidthAt(): usize {
  return changetype<usize>(body.halfWidth);
}

export function halfDepthAt(): usize {
  return changetype<usize>(body.halfDepth);
}

export function beginOutline(levels: i32, directions: i32, lowest: f64, step: f64, above: f64): void {
  outline.begin(levels, directions, lowest, step, above);
}

export function reachAt(): usize {
  return changetype<usize>(outline.reach);
}

export function beginTies(count: i32): void {
  ties.begin(count);
}

/** Draws a place up to one between two rows, `part` of the way to the lower of them. */
export function setTie(tie: i32, anchor: i32, part: f64, pickUp: i32, outside: f64): void {
  ties.set(tie, anchor, part, pickUp, outside, 3);
}

/** Stitches two places of one height together, each column carrying its own weight; the one under the other lies so far out. */
export function setStitch(tie: i32, on: i32, under: i32, outside: f64): void {
  ties.set(tie, on, 0, under, outside, 2);
}

/**
 * Lets it fall step by step.
 * @param shearing shear length · fall
 * @param keeps part of its motion that is kept from step to step
 * @param drawnIn most that a length is drawn in in one step, as a share of it
 */
export function settle(steps: i32, shearing: f64, keeps: f64, drawnIn: f64): void {
  bends.prepare();
  stretch.begin(drawnIn);
  for (let step = 0; step < steps; step++) {
    cloth.drop();
    bends.solve();
    shear(shearing);
    stretch.solveRows();
    stretch.solveColumns();
    ties.solve();
    touch();
    cloth.keepMotion(keeps);
  }
}
