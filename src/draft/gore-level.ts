import type { Point } from '../geometry/curve.ts';
import { integrate } from '../geometry/integrate.ts';

/**
 * A level line: leaves the axis squarely at (0, `from`), and its direction turns by `turn`·τ + `bulge`·τ(1 − τ) over
 * its length. A circle where `bulge` is 0.
 */
export interface GoreLevel {
  readonly from: number;
  readonly length: number;
  readonly turn: number;
  readonly bulge: number;
}

export function levelAngle(level: Pick<GoreLevel, 'turn' | 'bulge'>, part: number): number {
  return level.turn * part + level.bulge * part * (1 - part);
}

export function levelPoint(level: GoreLevel, part: number): Point {
  const x = integrate((at) => Math.cos(levelAngle(level, at)), 0, part, 1);
  const rise = integrate((at) => Math.sin(levelAngle(level, at)), 0, part, 1);
  return { x: level.length * x, y: level.from - level.length * rise };
}

/**
 * The level that meets the seam squarely at `end`, where the seam runs at angle `turn`: from a place on the axis, or
 * from wherever the circle begins.
 */
export function levelTo(from: number | undefined, end: Point, turn: number): GoreLevel {
  const bulge = from === undefined ? 0 : bulgeFor(turn, (from - end.y) / end.x, 0);
  const { across, rise } = levelReach({ turn, bulge });
  const length = end.x / across;
  return { from: from ?? end.y + length * rise, length, turn, bulge };
}

/** The bulge for which a level of this turn rises by `slope` times its reach: Newton, from a guess. */
export function bulgeFor(turn: number, slope: number, guess: number): number {
  let bulge = guess;
  for (let step = 0; step < 12; step++) {
    const { across, rise, acrossBy, riseBy } = levelReach({ turn, bulge });
    const change = (rise - slope * across) / (riseBy - slope * acrossBy);
    bulge -= change;
    if (Math.abs(change) < 1e-13) break;
  }
  return bulge;
}

/** Nodes and weights of the eight-point Gauss-Legendre rule on 0…1. */
const NODES = [0.1834346424956498, 0.525532409916329, 0.7966664774136267, 0.9602898564975363].flatMap(
  (node) => [(1 - node) / 2, (1 + node) / 2],
);
const WEIGHTS = [0.362683783378362, 0.3137066458778873, 0.2223810344533745, 0.1012285362903763].flatMap(
  (weight) => [weight / 2, weight / 2],
);

/** How far a level of length 1 reaches across and rises, and how they change with its bulge and its turn. */
export function levelReach(level: Pick<GoreLevel, 'turn' | 'bulge'>): {
  readonly across: number;
  readonly rise: number;
  readonly acrossBy: number;
  readonly riseBy: number;
  readonly acrossByTurn: number;
  readonly riseByTurn: number;
} {
  let across = 0;
  let rise = 0;
  let acrossBy = 0;
  let riseBy = 0;
  let acrossByTurn = 0;
  let riseByTurn = 0;
  for (const [i, part] of NODES.entries()) {
    const angle = levelAngle(level, part);
    const cos = WEIGHTS[i]! * Math.cos(angle);
    const sin = WEIGHTS[i]! * Math.sin(angle);
    const lever = part * (1 - part);
    across += cos;
    rise += sin;
    acrossBy -= sin * lever;
    acrossByTurn -= sin * part;
    riseByTurn += cos * part;
    riseBy += cos * lever;
  }
  return { across, rise, acrossBy, riseBy, acrossByTurn, riseByTurn };
}
