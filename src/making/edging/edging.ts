/** How an edging with a repeat goes round a hem. All mm. */
export interface EdgingPlan {
  readonly hem: number;
  readonly repeats: number;
  /** Whole repeats, laid flat. */
  readonly length: number;
  /** To ease in along the outer edge, spread evenly; edging is eased and never stretched. */
  readonly ease: number;
  readonly easePerRepeat: number;
  /**
   * How much longer the edging's inner edge is in all than the place that it lies on: flare × depth, what hollow
   * stretches ask of the outer edge taken off. Exact for any hem that runs smoothly through its seams, because the
   * turning of a closed line round a cone is the cone's own angle. What is lapped goes by gore.
   */
  readonly innerSurplus: number | undefined;
  readonly overlapPerMotif: number | undefined;
}

/**
 * @param hem sewn hem all round, which the edging's outer edge follows
 * @param flare all the gores' flares together, radians
 * @param repeat length of one motif; without it nothing can be said of motifs
 */
export function edgingRound(
  hem: number,
  flare: number,
  repeat: number,
  depth: number | undefined,
): EdgingPlan {
  const repeats = wholeRepeats(hem, repeat);
  const length = repeats * repeat;
  const innerSurplus = depth === undefined ? undefined : flare * depth;
  return {
    hem,
    repeats,
    length,
    ease: length - hem,
    easePerRepeat: (length - hem) / repeats,
    innerSurplus,
    overlapPerMotif: innerSurplus === undefined ? undefined : innerSurplus / repeats,
  };
}

/** ⌈hem ÷ repeat⌉; a hem that is whole repeats but for a rounding error is not given one more. */
export function wholeRepeats(hem: number, repeat: number): number {
  return Math.max(1, Math.ceil(hem / repeat - 1e-6));
}

/** Both edges of a cloth, as long as what was bought. mm. */
export function edgingFromOwnEdges(bought: number): number {
  return 2 * bought;
}

/** Length of cloth whose two edges just give an edging. mm. */
export function clothForEdging(edging: number): number {
  return edging / 2;
}

/** Scallops against the floor. Their low points lie on the hem line. mm. */
export interface ScallopHang {
  readonly lowPoints: number;
  readonly highPoints: number;
}

/** @param offFloor how high the hem line hangs; @param scallop from a scallop's low point to its high point */
export function scallopHang(offFloor: number, scallop: number): ScallopHang {
  return { lowPoints: offFloor, highPoints: offFloor + scallop };
}
