/** Round the skirt at the hoop's level, at least this many times the hoop. Common practice. */
export const LEAST_SWEEP_TO_HOOP = 1.3;

/** The smallest bottom hoop that is comfortable to walk in, mm round; with a train. Common practice. */
export const LEAST_HOOP = 2500;
export const LEAST_HOOP_WITH_TRAIN = 3000;

/** The skirt against its hoop, at the hoop's level. */
export interface SweepOverHoop {
  readonly hoop: number;
  readonly sweep: number;
  readonly ratio: number;
  /** Hoop that the skirt would be wide enough for, mm round. */
  readonly widestHoop: number;
  readonly wideEnough: boolean;
}

/** @param sweep round the skirt at the hoop's level, mm; @param hoop the hoop's own round, mm */
export function sweepOverHoop(sweep: number, hoop: number): SweepOverHoop {
  const ratio = sweep / hoop;
  return {
    hoop,
    sweep,
    ratio,
    widestHoop: sweep / LEAST_SWEEP_TO_HOOP,
    wideEnough: ratio >= LEAST_SWEEP_TO_HOOP - 1e-9,
  };
}

/** Waist to floor of the woman that these hoops suit, mm; a child's stride is shorter as she is. From memory. */
const LENGTH_OF_A_WOMAN = 1050;

/** Sewn waists under this are likely a child's: the smallest of women's sizes is 60 cm (EN 13402-3, from memory). */
const CHILDS_WAIST = 600;

/**
 * @param length from her waist to the floor, where it is known, mm; a child's hoop may be smaller in proportion
 * @param wearer where the spec says who she is; else her waist tells
 */
export function leastHoop(
  train: boolean,
  waist?: number,
  length?: number,
  wearer?: 'adult' | 'child',
): number {
  const least = train ? LEAST_HOOP_WITH_TRAIN : LEAST_HOOP;
  const isChilds = wearer === undefined ? waist !== undefined && waist < CHILDS_WAIST : wearer === 'child';
  return isChilds && length !== undefined ? least * Math.min(1, length / LENGTH_OF_A_WOMAN) : least;
}

/**
 * From the waist along the cloth to a hoop, of a length that goes on past it to the floor: the cloth runs on as
 * straight as it came, so that what lies below the hoop is longer than the hoop is high. All mm.
 */
export function slantToHoop(toFloor: number, hoopOffFloor: number, waist: number, hoop: number): number {
  const out = radiusOf(hoop) - radiusOf(waist);
  let slant = toFloor - hoopOffFloor;
  for (let step = 0; step < STEPS; step++) {
    const height = Math.sqrt(Math.max(0, slant * slant - out * out));
    // Farther out than the cloth reaches: it lies flat, and nothing better is known than what hangs below.
    if (height < 1) return toFloor - hoopOffFloor;
    slant = toFloor - (hoopOffFloor * slant) / height;
  }
  return slant;
}

/** Each step comes some twenty times nearer. */
const STEPS = 12;

/** The height that a slant over a hoop stands for; undefined where the hoop is farther out than the slant is long. */
export function heightUnderSlant(slant: number, waist: number, hoop: number): number | undefined {
  const out = radiusOf(hoop) - radiusOf(waist);
  return slant < Math.abs(out) ? undefined : Math.sqrt(slant * slant - out * out);
}

function radiusOf(girth: number): number {
  return girth / (2 * Math.PI);
}
