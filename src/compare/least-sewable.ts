/** The least allowance that is sewn where more was planned, mm: the width of a machine's foot, 1/4 in (common practice). */
export const LEAST_ALLOWANCE = 6;

/** Where the gown itself asks for less, a rolled edge say, this part of it still does (common practice). */
const OF_A_NARROW_ONE = 0.75;

/**
 * The least allowance with which a seam can still be sewn that was to have `wanted`, mm. Whatever says that cloth can
 * be let out or must be cut again asks here.
 */
export function leastSewable(wanted: number): number {
  return Math.min(LEAST_ALLOWANCE, OF_A_NARROW_ONE * wanted);
}
