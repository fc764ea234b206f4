/** A value held between two limits, the lower before the upper; plain comparisons, as no number here is `NaN`. */
export function held(value: f64, least: f64, most: f64): f64 {
  const low = value < most ? value : most;
  return low > least ? low : least;
}
