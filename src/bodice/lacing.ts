/** How two edges are laced together. Lengths in mm. */
export interface LacingMeasures {
  /** Of one laced edge. */
  readonly edge: number;
  /** Between the two edges, at their upper and at their lower end. */
  readonly gap: readonly [number, number];
  /** Eyelet to eyelet, as near as the edge divides evenly. */
  readonly pitch: number;
  /** From the edge to the middle of an eyelet, and from the edge's ends to the first and the last. */
  readonly fromEdge: number;
  readonly fromEnds: number;
  /** One more pair beside the waist, for the loops that she is laced in by. */
  readonly doubledAtWaist: boolean;
  /** How far along the edge the waist lies, from its upper end. */
  readonly waist: number;
  /** Lace that hangs free at both ends together. */
  readonly tails: number;
}

export interface Lacing {
  /** On each side. */
  readonly eyelets: number;
  readonly pitch: number;
  /** Middle of each eyelet, from the upper end of the edge. */
  readonly places: readonly number[];
  /** Between the two rows of eyelets, at their ends: the gap and twice what they stand from the edge. */
  readonly between: readonly [number, number];
  /** Laced as it is worn, without its tails. */
  readonly worn: number;
  /** To buy, with them. */
  readonly lace: number;
}

/** @returns undefined where the edge is too short for two eyelets */
export function lacingOf(measures: LacingMeasures): Lacing | undefined {
  const { edge, gap, fromEdge, fromEnds, tails } = measures;
  const run = edge - 2 * fromEnds;
  if (!(run > 0)) return undefined;
  const spaces = Math.max(1, Math.round(run / measures.pitch));
  const pitch = run / spaces;
  const even = Array.from({ length: spaces + 1 }, (_, i) => fromEnds + i * pitch);
  const places = measures.doubledAtWaist ? doubled(even, measures.waist) : even;
  const between = [gap[0] + 2 * fromEdge, gap[1] + 2 * fromEdge] as const;
  const worn = laceThrough(places, (place) => between[0] + ((between[1] - between[0]) * place) / edge);
  return { eyelets: places.length, pitch, places, between, worn, lace: worn + tails };
}

/** One more eyelet half way between the two that the waist lies between, or the two next to it. */
function doubled(places: readonly number[], waist: number): number[] {
  const past = places.findIndex((place) => place >= waist);
  const after = past < 0 ? places.length - 1 : Math.max(1, past);
  return [...places.slice(0, after), (places[after - 1]! + places[after]!) / 2, ...places.slice(after)];
}

/**
 * Lace through rows of eyelets: across at one end, then crossed from pair to pair twice over,
 * 2(n − 1)√(p² + g²) + g where pitch and gap are even.
 */
export function laceThrough(places: readonly number[], across: (place: number) => number): number {
  const rungs = places.slice(1).map((place, i) => {
    const before = places[i]!;
    return 2 * Math.hypot(place - before, (across(before) + across(place)) / 2);
  });
  return across(places[0]!) + rungs.reduce((sum, rung) => sum + rung, 0);
}
