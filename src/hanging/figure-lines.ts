import type { Point } from '../geometry/curve.ts';
import { halfWidthOf } from './figure.ts';
import type { ViewFrom } from './seen.ts';
import { smoothedLine } from './smoothed-line.ts';
import { CIRCLE, CIRCLE_POINTS } from './unit-circle.ts';
import { upperBody } from './upper-body.ts';

/** What is known of her for the lines above and below the gown. mm. */
export interface Wearer {
  /** Level waist above the floor, in her shoes. */
  readonly waistHeight: number;
  readonly heel: number;
  readonly waist: number;
  /** Barefoot; as tall as her waist says where nobody measured it. */
  readonly height?: number;
  /** Nothing of the gown is above her waist. */
  readonly bare: boolean;
}

/** Height of the waist for one of her height (from memory: drawing manuals, eight heads tall). */
const WAIST = 0.62;

/** Her height as the drawing has it, mm. */
export function heightOf({ waistHeight, heel, height }: Wearer): number {
  return height ?? (waistHeight - heel) / WAIST;
}

/** Across, height: from under the jaw over the shoulder, down the outside of the arm, round the hand and up inside to the armpit. */
const ARM = [
  [0.027, 0.884],
  [0.029, 0.86],
  [0.034, 0.846],
  [0.06, 0.833],
  [0.1, 0.816],
  [0.118, 0.79],
  [0.128, 0.74],
  [0.14, 0.68],
  [0.155, 0.625],
  [0.185, 0.545],
  [0.206, 0.49],
  [0.22, 0.45],
  [0.229, 0.42],
  [0.234, 0.395],
  [0.231, 0.37],
  [0.224, 0.362],
  [0.218, 0.372],
  [0.212, 0.4],
  [0.205, 0.43],
  [0.18, 0.49],
  [0.15, 0.56],
  [0.117, 0.635],
  [0.104, 0.7],
  [0.093, 0.752],
] as const;
/** Outside and inside of a leg, to the ankle. */
const LEG = [
  [0.098, 0.5],
  [0.085, 0.38],
  [0.071, 0.285],
  [0.076, 0.215],
  [0.06, 0.11],
  [0.053, 0.045],
] as const;
const INNER_LEG = [
  [0.004, 0.47],
  [0.01, 0.38],
  [0.017, 0.285],
  [0.012, 0.215],
  [0.026, 0.11],
  [0.032, 0.045],
] as const;
/** Her toes from the front, from outside to inside: above the floor, whatever the heel. */
const TOES = [
  [0.064, 0.012],
  [0.058, 0.001],
  [0.036, 0.001],
  [0.03, 0.012],
] as const;
/** From the side, forwards positive: shin and calf, to the ankle. */
const SHIN = [
  [0.056, 0.48],
  [0.046, 0.38],
  [0.032, 0.295],
  [0.03, 0.26],
  [0.022, 0.15],
  [0.012, 0.06],
] as const;
const CALF = [
  [-0.062, 0.48],
  [-0.04, 0.36],
  [-0.03, 0.29],
  [-0.048, 0.21],
  [-0.036, 0.12],
  [-0.026, 0.05],
] as const;
/** Over the instep to the toes and back under the ball of the foot, above the floor; the seat of the heel stands on the shoe's. */
const INSTEP = [
  [0.045, 0.024],
  [0.09, 0.006],
  [0.088, 0.001],
  [0.05, 0.001],
] as const;
const SEAT = [
  [-0.012, 0.004],
  [-0.036, 0.006],
  [-0.038, 0.02],
] as const;
/** A shoe's heel is drawn from this height on, mm, as wide at the top and at the floor, for one of her height. */
const LEAST_HEEL = 10;
const HEEL = { back: -0.036, top: 0.022, end: 0.009 } as const;

/** From the side, forwards positive: from her chest up the throat, over face and head, and down the back of her neck. */
const CHEST = [
  [0.066, 0.765],
  [0.055, 0.785],
  [0.034, 0.815],
  [0.018, 0.834],
  [0.012, 0.85],
  [0.017, 0.865],
] as const;
const HEAD = [
  [0.036, 0.867],
  [0.05, 0.872],
  [0.054, 0.882],
  [0.051, 0.893],
  [0.055, 0.903],
  [0.055, 0.913],
  [0.062, 0.922],
  [0.055, 0.936],
  [0.052, 0.952],
  [0.046, 0.975],
  [0.026, 0.993],
  [0, 0.999],
  [-0.03, 0.993],
  [-0.053, 0.972],
  [-0.06, 0.945],
  [-0.053, 0.917],
] as const;
const SPINE = [
  [-0.041, 0.893],
  [-0.036, 0.87],
  [-0.042, 0.846],
  [-0.057, 0.818],
  [-0.065, 0.79],
  [-0.066, 0.765],
] as const;

/** Where these lines end that go on behind a bodice. */
const IN_BODICE = { front: [0.072, 0.735], back: [-0.062, 0.735] } as const;

const HAND = { step: 12, rounds: 5, tolerance: 0.7 };
/** Her face is smaller than the rest of her. */
const FACE = { step: 6, rounds: 5, tolerance: 0.4 };

/** Light lines for proportion. mm of the view, the floor at 0, y down. */
export function figureLines(side: ViewFrom, wearer: Wearer): Point[][] {
  if (side === 'above') return [];
  const tall = heightOf(wearer);
  const at = ([across, height]: readonly [number, number]): Point => ({
    x: across * tall,
    y: -heightAt(wearer, height),
  });
  const onFloor = ([across, height]: readonly [number, number]): Point => ({
    x: across * tall,
    y: -height * tall,
  });
  const mirrored = ({ x, y }: Point): Point => ({ x: -x, y });
  const drawn = (points: readonly Point[]): Point[] => smoothedLine(points, HAND);
  if (side === 'side') {
    // From her left she faces left.
    const [front, back] = (['front', 'back'] as const).map((half) =>
      wearer.bare ? sideOf(wearer, half) : [mirrored(at(IN_BODICE[half]))],
    ) as [Point[], Point[]];
    const upper = [...CHEST, ...HEAD, ...SPINE].map(at).map(mirrored);
    const leg = [
      ...[...SHIN.map(at), ...INSTEP.map(onFloor), ...SEAT.map(at)].map(mirrored),
      ...[...CALF].reverse().map(at).map(mirrored),
    ];
    return [
      smoothedLine([...front, ...upper, ...[...back].reverse()], FACE),
      drawn(leg),
      ...heelOfShoe(wearer).map((line) => line.map(mirrored)),
    ];
  }
  const both = (line: readonly Point[]): Point[][] => [drawn(line), drawn(line.map(mirrored))];
  return [
    headLine(wearer),
    ...both(ARM.map(at)),
    ...(wearer.bare ? both(flankOf(wearer)) : []),
    ...both([...LEG.map(at), ...TOES.map(onFloor), ...[...INNER_LEG].reverse().map(at)]),
  ];
}

/** From the side, forwards positive: a heel of hers, if it is one. */
function heelOfShoe(wearer: Wearer): Point[][] {
  const { heel } = wearer;
  if (heel < LEAST_HEEL) return [];
  const tall = heightOf(wearer);
  const at = (across: number, height: number): Point => ({ x: across * tall, y: -height });
  return [
    [
      at(HEEL.back, heel),
      at(HEEL.back + 0.003, 0),
      at(HEEL.back + 0.003 + HEEL.end, 0),
      at(HEEL.back + HEEL.top, heel),
    ],
  ];
}

/** Heights of her trunk between waist and arm, for one of her height. */
const TRUNK = [0.62, 0.645, 0.67, 0.695, 0.715, 0.735, 0.752] as const;

/** From the front: the side of her trunk. */
function flankOf(wearer: Wearer): Point[] {
  const body = upperBody(wearer.waist, heightOf(wearer), []);
  return TRUNK.map((part) => {
    const z = heightAt(wearer, part);
    const above = z - wearer.waistHeight;
    return { x: halfWidthOf(body.girthAt(above), body.roundnessAt(above)), y: -z };
  });
}

/** From her left, facing left: her front or her back. */
function sideOf(wearer: Wearer, side: 'front' | 'back'): Point[] {
  const body = upperBody(wearer.waist, heightOf(wearer), []);
  return TRUNK.map((part) => {
    const z = heightAt(wearer, part);
    const above = z - wearer.waistHeight;
    const roundness = body.roundnessAt(above);
    const deep = halfWidthOf(body.girthAt(above), roundness) * roundness;
    return { x: (side === 'front' ? -deep : deep) - body.forwardAt(above), y: -z };
  });
}

/** A part of her height above the floor: what stands above her waist goes on from where that is. mm. */
export function heightAt(wearer: Wearer, part: number): number {
  const { waistHeight, heel } = wearer;
  if (part <= WAIST) return heel + ((waistHeight - heel) * part) / WAIST;
  return waistHeight + ((heightOf(wearer) + heel - waistHeight) * (part - WAIST)) / (1 - WAIST);
}

/** Her head from the front, for one of her height: its middle, half its height and width, and by how much the chin is narrower. */
const OVAL = { middle: 0.934, half: 0.065, halfWidth: 0.045, chin: 0.16 } as const;
/** Of the points of the circle these are drawn through. */
const EVERY = CIRCLE_POINTS / 32;

function headLine(wearer: Wearer): Point[] {
  const tall = heightOf(wearer);
  return Array.from({ length: CIRCLE_POINTS / EVERY + 1 }, (_, k) => {
    const i = 2 * ((k * EVERY) % CIRCLE_POINTS);
    const [x, up] = [CIRCLE[i]!, CIRCLE[i + 1]!];
    return {
      x: x * OVAL.halfWidth * (1 + OVAL.chin * up) * tall,
      y: -heightAt(wearer, OVAL.middle + up * OVAL.half),
    };
  });
}
