/**
 * A value clamped between two limits; where they cross, the lower one. Plain comparisons, as no number here is `NaN`.
 */
export function clamp(value: f64, least: f64, most: f64): f64 {
  const low = value < most ? value : most;
  return low > least ? low : least;
}
