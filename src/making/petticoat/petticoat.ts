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

export function leastHoop(train: boolean): number {
  return train ? LEAST_HOOP_WITH_TRAIN : LEAST_HOOP;
}

/** Along the cloth from a waist down to a hoop: √(height² + Δradius²), closed form. All mm, girths all round. */
export function slantOverHoop(height: number, waist: number, hoop: number): number {
  return Math.hypot(height, radiusOf(hoop) - radiusOf(waist));
}

/** The height that a slant over a hoop stands for; undefined where the hoop is farther out than the slant is long. */
export function heightUnderSlant(slant: number, waist: number, hoop: number): number | undefined {
  const out = radiusOf(hoop) - radiusOf(waist);
  return slant < Math.abs(out) ? undefined : Math.sqrt(slant * slant - out * out);
}

function radiusOf(girth: number): number {
  return girth / (2 * Math.PI);
}
