/**
 * Points of the unit circle by halving a quarter again and again: square roots alone, so that every machine finds the
 * same last digit, which sines do not promise.
 */

/** Halvings of a quarter circle; 256 parts of it lie 6 mm apart on a hem of 6 m. */
const HALVINGS = 8;

/** x, y of `4 · parts` points, from (0, −1) by (1, 0) round: from the centre front by her left. */
export const CIRCLE: Float64Array = roundFrom(quarter());

/** Points in all. */
export const CIRCLE_POINTS = CIRCLE.length / 2;

function quarter(): number[][] {
  let points = [
    [0, -1],
    [1, 0],
  ];
  for (let round = 0; round < HALVINGS; round++) {
    points = points.flatMap((point, i) => {
      const next = points[i + 1];
      if (next === undefined) return [point];
      const [x, y] = [point[0]! + next[0]!, point[1]! + next[1]!];
      const length = Math.sqrt(x * x + y * y);
      return [point, [x / length, y / length]];
    });
  }
  return points.slice(0, -1);
}

function roundFrom(first: readonly number[][]): Float64Array {
  const turned = (points: readonly number[][]): number[][] => points.map(([x, y]) => [-y!, x!]);
  const second = turned(first);
  const third = turned(second);
  return Float64Array.from([...first, ...second, ...third, ...turned(third)].flat());
}
