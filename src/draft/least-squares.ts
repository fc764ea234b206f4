/** One thing that is wanted to be nought: what it is now, and how it changes with the unknowns from `from` on. */
export interface Row {
  readonly from: number;
  readonly by: readonly number[];
  readonly miss: number;
}

/** The change of the unknowns that makes the squares of all rows least: the normal equations, by Cholesky's method. */
export function leastSquares(rows: readonly Row[], count: number): number[] {
  const normal = Array.from({ length: count }, () => new Float64Array(count));
  const right = new Float64Array(count);
  for (const { from, by, miss } of rows) {
    for (const [i, own] of by.entries()) {
      right[from + i]! -= own * miss;
      const line = normal[from + i]!;
      for (let j = 0; j <= i; j++) line[from + j]! += own * by[j]!;
    }
  }
  return solved(normal, right);
}

/** @param lower the lower half of a symmetric positive matrix, overwritten by its root */
function solved(lower: readonly Float64Array[], right: Float64Array): number[] {
  const count = right.length;
  for (let i = 0; i < count; i++) {
    const row = lower[i]!;
    for (let j = 0; j <= i; j++) {
      const other = lower[j]!;
      let sum = row[j]!;
      for (let k = 0; k < j; k++) sum -= row[k]! * other[k]!;
      row[j] = i === j ? Math.sqrt(sum) : sum / other[j]!;
    }
  }
  for (let i = 0; i < count; i++) {
    let sum = right[i]!;
    for (let k = 0; k < i; k++) sum -= lower[i]![k]! * right[k]!;
    right[i] = sum / lower[i]![i]!;
  }
  for (let i = count - 1; i >= 0; i--) {
    let sum = right[i]!;
    for (let k = i + 1; k < count; k++) sum -= lower[k]![i]! * right[k]!;
    right[i] = sum / lower[i]![i]!;
  }
  return [...right];
}
