import { type Figure, halfWidthOf } from './figure.ts';
import { type SpacePoint, spaceApart } from './space-point.ts';
import { CIRCLE, CIRCLE_POINTS } from './unit-circle.ts';

/**
 * A place on the bodice's edge, and which way the cloth goes out from there, as seen from above: even parts of the edge go
 * even parts of the way round, as over a hoop, and not as the flat front and back of a waist face.
 */
export interface EdgePlace {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly outX: number;
  readonly outY: number;
}

export interface SewnEdge {
  /** At a part of the way round, 0 to 1, from the centre front by her left; to the centre back on a half. */
  readonly placeAt: (part: number) => EdgePlace;
  /** How much closer than her own girth it holds her: 1 where the edge lies as she is. */
  readonly closeness: number;
}

/** Rounds in which the edge's height and its way round settle; each gains a digit. */
const ROUNDS = 12;

/**
 * The bodice's edge in the air: ellipses of her girths at the height that the edge has there, so scaled that the edge
 * is as long as it is sewn.
 * @param heightAt height of the edge above the floor at a part of the way
 * @param length all of it, mm: of the half, where `half`
 */
export function sewnEdge(
  figure: Figure,
  heightAt: (part: number) => number,
  length: number,
  half: boolean,
): SewnEdge {
  const count = half ? CIRCLE_POINTS / 2 : CIRCLE_POINTS;
  let parts = Array.from({ length: count + 1 }, (_, i) => i / count);
  let closeness = 1;
  let points: SpacePoint[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    points = parts.map((part, i) => edgePoint(figure, heightAt(part), closeness, i));
    const passed = [0];
    for (let i = 1; i <= count; i++) passed.push(passed[i - 1]! + spaceApart(points[i - 1]!, points[i]!));
    const whole = passed[count]!;
    parts = passed.map((own) => own / whole);
    closeness *= length / whole;
  }
  return {
    closeness,
    placeAt: (wanted) => {
      const { part, turned: isBeyond } = half
        ? mirroredPart(wanted)
        : { part: wanted - Math.floor(wanted), turned: false };
      const found = parts.findIndex((own) => own >= part);
      const next = found < 0 ? count : Math.max(1, found);
      const share = (part - parts[next - 1]!) / (parts[next]! - parts[next - 1]!);
      const at = (values: (i: number) => number): number =>
        values(next - 1) + (values(next) - values(next - 1)) * share;
      const turned = part * count;
      const onCircle = Math.min(count - 1, Math.floor(turned));
      const around = (axis: number): number =>
        circleAt(onCircle, axis) +
        (circleAt(onCircle + 1, axis) - circleAt(onCircle, axis)) * (turned - onCircle);
      const side = isBeyond ? -1 : 1;
      return {
        x: side * at((i) => points[i]![0]),
        y: at((i) => points[i]![1]),
        z: at((i) => points[i]![2]),
        outX: side * around(0),
        outY: around(1),
      };
    },
  };
}

/** Beyond its ends a half goes on as its image. */
function mirroredPart(part: number): { part: number; turned: boolean } {
  if (part < 0) return { part: -part, turned: true };
  return part > 1 ? { part: 2 - part, turned: true } : { part, turned: false };
}

function edgePoint(figure: Figure, height: number, closeness: number, i: number): SpacePoint {
  const roundness = figure.roundnessAt(height);
  const width = halfWidthOf(figure.girthAt(height) * closeness, roundness);
  return [width * circleAt(i, 0), width * roundness * circleAt(i, 1), height];
}

function circleAt(i: number, axis: number): number {
  return CIRCLE[2 * (i % CIRCLE_POINTS) + axis]!;
}
