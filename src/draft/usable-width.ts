import type { Cloth } from '../gown/cloth.ts';

/** Width of a cloth between its selvedges, mm. */
export function usableWidth({ width, selvedge }: Cloth): number {
  return width - 2 * selvedge;
}
