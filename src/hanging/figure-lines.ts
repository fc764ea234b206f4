import type { Point } from '../geometry/curve.ts';
import { halfWidthOf } from './figure.ts';
import type { Side } from './seen.ts';
import { smoothedLine } from './smoothed-line.ts';

/** What is known of her for the lines above and below the skirt. mm. */
export interface Wearer {
  /** Level waist above the floor, in her shoes. */
  readonly waistHeight: number;
  readonly heel: number;
  readonly waist: number;
  readonly bust?: number;
}

/** Light lines for proportion, and the bodice as a plain one. mm of the view, the floor at 0, y down. */
export interface FigureLines {
  readonly figure: readonly (readonly Point[])[];
  readonly bodice: readonly (readonly Point[])[];
}

/** Heights and widths of a standing woman for one of her height (from memory: drawing manuals, eight heads tall). */
const WAIST = 0.62;
const BUST = 0.715;
const ARMPIT = 0.75;

/** Across, height: from the neck over the shoulder and down the outside of the arm. */
const ARM = [
  [0.03, 0.872],
  [0.034, 0.848],
  [0.06, 0.833],
  [0.1, 0.816],
  [0.118, 0.79],
  [0.128, 0.74],
  [0.14, 0.68],
  [0.155, 0.625],
  [0.185, 0.545],
  [0.206, 0.49],
  [0.222, 0.45],
  [0.22, 0.425],
] as const;
const INNER_ARM = [
  [0.093, 0.752],
  [0.104, 0.7],
  [0.117, 0.635],
  [0.15, 0.56],
  [0.18, 0.49],
  [0.205, 0.425],
] as const;
/** Outside and inside of a leg. */
const LEG = [
  [0.098, 0.5],
  [0.085, 0.38],
  [0.071, 0.285],
  [0.076, 0.215],
  [0.06, 0.11],
  [0.053, 0.05],
  [0.07, 0.004],
] as const;
const INNER_LEG = [
  [0.004, 0.47],
  [0.01, 0.38],
  [0.017, 0.285],
  [0.012, 0.215],
  [0.026, 0.11],
  [0.032, 0.05],
  [0.028, 0.004],
] as const;
/** From the side, forwards positive: throat to bust, and back of the neck to the shoulder-blades. */
const CHEST = [
  [0.012, 0.868],
  [0.018, 0.845],
  [0.04, 0.815],
  [0.06, 0.775],
] as const;
const SPINE = [
  [-0.036, 0.885],
  [-0.036, 0.85],
  [-0.055, 0.815],
  [-0.064, 0.77],
] as const;

/** How far her bust and back stand before and behind the middle of her waist, for one of her height. */
const FORWARD = { bust: 0.083, top: 0.068, back: -0.05, blade: -0.064 } as const;
/** Girth of the bust over the waist where nobody measured it, mm (EN 13402-3, from memory: 68 to 84, 20). */
const BUST_OVER_WAIST = 200;
const BUST_ROUNDNESS = 0.88;

const HAND = { step: 12, rounds: 5, tolerance: 0.7 };

/** @param edge where the sewn edge of the bodice ends left and right in this view */
export function figureLines(side: Side, wearer: Wearer, edge: readonly [Point, Point]): FigureLines {
  if (side === 'above') return { figure: [], bodice: [] };
  const tall = (wearer.waistHeight - wearer.heel) / WAIST;
  const at = ([across, height]: readonly [number, number]): Point => ({
    x: across * tall,
    y: -(height * tall + wearer.heel),
  });
  const mirrored = ({ x, y }: Point): Point => ({ x: -x, y });
  const drawn = (points: readonly Point[]): Point[] => smoothedLine(points, HAND);
  if (side === 'side') {
    // From her left she faces left.
    const forwards = (line: readonly (readonly [number, number])[]): Point[] =>
      drawn(line.map(at).map(mirrored));
    const point = (forward: number, height: number): Point => mirrored(at([forward, height]));
    return {
      figure: [headLine(tall, wearer.heel, 0.012, 0.055), forwards(CHEST), forwards(SPINE)],
      bodice: [
        drawn([edge[0], point(0.058, 0.672), point(FORWARD.bust, BUST), point(FORWARD.top, ARMPIT)]),
        drawn([edge[1], point(FORWARD.back, 0.685), point(FORWARD.blade, 0.735)]),
        drawn([point(FORWARD.top, ARMPIT), point(0, 0.738), point(FORWARD.blade, 0.735)]),
      ],
    };
  }
  const bust = halfWidthOf(wearer.bust ?? wearer.waist + BUST_OVER_WAIST, BUST_ROUNDNESS);
  const both = (line: readonly Point[]): Point[][] => [drawn(line), drawn(line.map(mirrored))];
  const seam = ([end, sign]: readonly [Point, number]): Point[] =>
    drawn([
      end,
      { x: sign * (bust * 0.93), y: at([0, 0.68]).y },
      { x: sign * bust, y: at([0, BUST]).y },
      at([sign * 0.09, 0.757]),
    ]);
  const dip = side === 'front' ? 0.755 : 0.735;
  return {
    figure: [
      headLine(tall, wearer.heel, 0, 0.046),
      ...both(ARM.map(at)),
      ...both(INNER_ARM.map(at)),
      ...both(LEG.map(at)),
      ...both(INNER_LEG.map(at)),
    ],
    bodice: [
      seam([edge[0], -1]),
      seam([edge[1], 1]),
      drawn([
        at([-0.09, 0.757]),
        at([-0.05, dip + 0.008]),
        at([0, dip]),
        at([0.05, dip + 0.008]),
        at([0.09, 0.757]),
      ]),
    ],
  };
}

/** An oval: eight points through which the hand draws. */
function headLine(tall: number, heel: number, forward: number, halfWidth: number): Point[] {
  const [height, half] = [0.934, 0.064];
  const diagonal = Math.sqrt(0.5);
  const round = [
    [0, -1],
    [diagonal, -diagonal],
    [1, 0],
    [diagonal, diagonal],
    [0, 1],
    [-diagonal, diagonal],
    [-1, 0],
    [-diagonal, -diagonal],
  ] as const;
  const points = round.map(([x, y]) => ({
    // Narrower at the chin.
    x: (-forward + x * halfWidth * (y > 0.5 ? 0.8 : 1)) * tall,
    y: -((height - y * half) * tall + heel),
  }));
  return smoothedLine(points, { step: 8, rounds: 14, tolerance: 0.4 }, true);
}
