/** What the curve does at its two ends: a given slope, or free (no bend there). */
export type EndSlope = number | 'free';

/**
 * Slopes at the knots of a smooth curve through (x, y) that rises only where its knots rise.
 * The knots are cut at their flats and turning points, where the slope is 0; between them the slopes are those of
 * the clamped cubic spline, reduced to at most three times the gentler neighbouring chord, which keeps every piece
 * monotone (F. N. Fritsch and R. E. Carlson, "Monotone piecewise cubic interpolation", SIAM J. Numer. Anal. 17, 1980).
 * `x` must increase strictly.
 */
export function monotoneSlopes(
  x: readonly number[],
  y: readonly number[],
  first: EndSlope,
  last: EndSlope,
): number[] {
  const chords = x.slice(1).map((right, i) => (y[i + 1]! - y[i]!) / (right - x[i]!));
  const slopes: number[] = new Array(x.length).fill(0);
  let begin = 0;
  while (begin < chords.length) {
    let end = begin + 1;
    while (end < chords.length && chords[end]! * chords[begin]! > 0) end++;
    if (chords[begin] !== 0) {
      const run = splineSlopes(
        x.slice(begin, end + 1),
        chords.slice(begin, end),
        begin === 0 ? first : 0,
        end === chords.length ? last : 0,
      );
      for (let i = begin; i <= end; i++) slopes[i] = run[i - begin]!;
    }
    begin = end;
  }
  return slopes.map((slope, i) => reduced(slope, chords[i - 1], chords[i]));
}

/** Slopes of the cubic spline over one monotone run (Thomas algorithm on the usual tridiagonal system). */
function splineSlopes(
  x: readonly number[],
  chords: readonly number[],
  first: EndSlope,
  last: EndSlope,
): number[] {
  const n = x.length;
  const diagonal: number[] = [];
  const upper: number[] = [];
  const right: number[] = [];
  for (let i = 0; i < n; i++) {
    const end = i === 0 ? first : i === n - 1 ? last : undefined;
    let lower = 0;
    let own = 1;
    let next = 0;
    let value = 0;
    if (end === undefined) {
      const before = x[i]! - x[i - 1]!;
      const after = x[i + 1]! - x[i]!;
      lower = 1 / before;
      next = 1 / after;
      own = 2 * (lower + next);
      value = 3 * (chords[i - 1]! * lower + chords[i]! * next);
    } else if (end === 'free') {
      // No bend at the end: 2m₀ + m₁ = 3 × the chord.
      own = 2;
      if (i === 0) next = 1;
      else lower = 1;
      value = 3 * (i === 0 ? chords[0]! : chords[n - 2]!);
    } else {
      value = end;
    }
    const factor = i === 0 ? 0 : lower / diagonal[i - 1]!;
    diagonal.push(own - factor * (upper[i - 1] ?? 0));
    right.push(value - factor * (right[i - 1] ?? 0));
    upper.push(next);
  }
  const slopes: number[] = new Array(n).fill(0);
  for (let i = n - 1; i >= 0; i--) slopes[i] = (right[i]! - upper[i]! * (slopes[i + 1] ?? 0)) / diagonal[i]!;
  return slopes;
}

/** No steeper than three times the gentler chord beside it, and never against it. */
function reduced(slope: number, before: number | undefined, after: number | undefined): number {
  const a = before ?? after ?? 0;
  const b = after ?? before ?? 0;
  if (a * b <= 0 || slope * a <= 0) return 0;
  return Math.sign(a) * Math.min(Math.abs(slope), 3 * Math.abs(a), 3 * Math.abs(b));
}
