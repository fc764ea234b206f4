/**
 * The innermost part of the search for a lay, in AssemblyScript: TypeScript's syntax with typed numbers (`i32` integer,
 * `f64` double precision, `f32` single precision, `v128` a vector of four), compiled to WebAssembly. It needs no warming
 * up and gives the same bits on every machine. Its host, `../pack/layout.ts` and `../pack/no-fit-table.ts`, may call
 * what is exported here and nothing else, in the order below. Never call it with what it cannot index: nothing is checked.
 */
import { drawnPlaces } from './drawn-places';
import { layout } from './layout';
import { movingApart } from './moving-apart';
import { nearPairs } from './near-pairs';
import { beside, neighbours } from './neighbours';
import { pairs } from './no-fit-pairs';
import { NoFitPolygon } from './no-fit-polygon';
import { search } from './place-search';
import { random } from './random';
import { settle } from './settle';

// No-fit polygons stay while one layout after another is begun.

export function beginPairs(lies: i32): void {
  pairs.begin(lies);
}

/** A no-fit polygon, by its address; set its sides, then call `finishPolygon`. */
export function newPolygon(halfWidth: f64, halfHeight: f64, slack: f64, sides: i32, cells: i32): usize {
  return changetype<usize>(new NoFitPolygon(halfWidth, halfHeight, slack, sides, cells));
}

/** A segment of the boundary. Bit 0 of `insideAtEnds`: the points beyond its start are inside; bit 1: those beyond its end. */
export function setSide(
  polygon: usize,
  side: i32,
  x: f64,
  y: f64,
  directionX: f64,
  directionY: f64,
  length: f64,
  insideAtEnds: i32,
): void {
  changetype<NoFitPolygon>(polygon).setSide(side, x, y, directionX, directionY, length, insideAtEnds);
}

export function finishPolygon(polygon: usize): void {
  changetype<NoFitPolygon>(polygon).finish();
}

export function setPair(fixed: i32, moving: i32, polygon: usize, signX: f64, signY: f64): void {
  pairs.set(fixed, moving, changetype<NoFitPolygon>(polygon), signX, signY);
}

// A layout: its shapes and items, then the search for it.

export function beginLayout(items: i32, lies: i32, shapes: i32, width: f64, gap: f64): void {
  layout.begin(items, lies, shapes, width, gap);
}

export function setShape(shape: i32, halfWidth: f64, halfHeight: f64, anchor: f64): void {
  layout.setShape(shape, halfWidth, halfHeight, anchor);
}

export function setItem(item: i32, start: i32, end: i32, area: f64, middle: f64): void {
  layout.setItem(item, start, end, area, middle);
}

export function setLie(at: i32, lie: i32): void {
  layout.setLie(at, lie);
}

export function setPattern(across: f64, origin: f64, down: f64): void {
  layout.setPattern(across, origin, down);
}

export function beginSearch(seed: i32, anywhere: i32, touching: i32, nearby: i32, improved: i32): void {
  random.seed(seed);
  neighbours.begin();
  search.begin(anywhere, touching, nearby, improved);
  movingApart.begin();
  nearPairs.begin();
}

// The search.

/** 1 if all items lie clear of each other. */
export function settleAll(): i32 {
  return settle() as i32;
}

export function moveApart(idlePasses: i32, idleRounds: i32): f64 {
  return movingApart.run(idlePasses, idleRounds);
}

export function put(item: i32, choice: i32, x: f64, y: f64): void {
  layout.put(item, choice, x, y);
}

export function xOf(item: i32): f64 {
  return layout.x[item];
}

export function yOf(item: i32): f64 {
  return layout.y[item];
}

export function choiceOf(item: i32): i32 {
  return layout.choice[item];
}

export function overlap(a: i32, b: i32): f64 {
  return layout.overlap(a, b);
}

export function getLength(): f64 {
  return layout.length;
}

export function setLength(length: f64): void {
  layout.length = length;
}

export function work(): f64 {
  return layout.work;
}

export function unit(): f64 {
  return random.unit();
}

// Its parts, for tests.

/** How many other items this one could touch within `reach` of a place; `nearAt` says which. */
export function near(item: i32, x: f64, y: f64, reach: f64): i32 {
  neighbours.about(item);
  neighbours.fillNear(layout.lie[item], x, y, reach);
  return neighbours.nearCount;
}

export function nearAt(index: i32): i32 {
  return neighbours.near[index];
}

export function addDrawn(x: f64, y: f64): void {
  drawnPlaces.add(beside(x as f32, y as f32), true);
}

/** Prices the places added for an item as it lies; how many of them cost less than the limit. */
export function price(item: i32, limit: f64): i32 {
  neighbours.about(item);
  drawnPlaces.price(item, layout.lie[item], limit as f32);
  const count = drawnPlaces.count;
  drawnPlaces.count = 0;
  return count;
}

export function drawnX(index: i32): f64 {
  return drawnPlaces.xAt(index);
}

export function drawnCost(index: i32): f64 {
  return drawnPlaces.costAt(index);
}
