/** What a turned-up hem has to lose. All mm but the share. */
export interface HemSurplus {
  readonly depth: number;
  /** The cut edge is longer than the hem line by this. */
  readonly beyondHemLine: number;
  /** The cut edge is longer than the line that it comes to lie on by this: what is eased, pleated or steamed away. */
  readonly toEase: number;
  /** `toEase` as a share of the hem. */
  readonly share: number;
}

/**
 * Closed form on a cone: a line at distance d from another differs from it by flare × d, and the turned-up edge lies
 * d above the hem line where it was cut d below it.
 * @param flare radians, all round
 */
export function hemSurplus(hem: number, flare: number, depth: number): HemSurplus {
  const beyondHemLine = flare * depth;
  return { depth, beyondHemLine, toEase: 2 * beyondHemLine, share: (2 * beyondHemLine) / hem };
}

/** Share of the hem past which the surplus shows. Common practice. */
export const MOST_SURPLUS = 0.05;
export const MOST_SURPLUS_ON_SATIN = 0.02;
