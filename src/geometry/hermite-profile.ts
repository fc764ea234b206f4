/** A smooth height over a way: value and slope anywhere, with the places where its pieces join. */
export interface Profile {
  readonly valueAt: (x: number) => number;
  readonly slopeAt: (x: number) => number;
  /** Places where a higher derivative jumps; integrals should be broken here. */
  readonly joins: readonly number[];
}

/** The piecewise cubic through knots (x, y) with the given slopes; beyond its ends it runs on straight. */
export function hermiteProfile(
  x: readonly number[],
  y: readonly number[],
  slopes: readonly number[],
): Profile {
  const pieceAt = (at: number): number => {
    let low = 0;
    let high = x.length - 2;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (at > x[middle + 1]!) low = middle + 1;
      else high = middle;
    }
    return low;
  };
  return {
    joins: x,
    valueAt: (at) => {
      if (at <= x[0]!) return y[0]! + slopes[0]! * (at - x[0]!);
      const end = x.length - 1;
      if (at >= x[end]!) return y[end]! + slopes[end]! * (at - x[end]!);
      const i = pieceAt(at);
      const h = x[i + 1]! - x[i]!;
      const t = (at - x[i]!) / h;
      const s = 1 - t;
      return (
        y[i]! * s * s * (1 + 2 * t) +
        y[i + 1]! * t * t * (3 - 2 * t) +
        h * t * s * (slopes[i]! * s - slopes[i + 1]! * t)
      );
    },
    slopeAt: (at) => {
      if (at <= x[0]!) return slopes[0]!;
      const end = x.length - 1;
      if (at >= x[end]!) return slopes[end]!;
      const i = pieceAt(at);
      const h = x[i + 1]! - x[i]!;
      const t = (at - x[i]!) / h;
      const rise = (y[i + 1]! - y[i]!) / h;
      return 6 * rise * t * (1 - t) + slopes[i]! * (1 - t) * (1 - 3 * t) + slopes[i + 1]! * t * (3 * t - 2);
    },
  };
}
