import type { Piece } from '../draft/piece.ts';
import { lengthOfRun } from '../geometry/length.ts';
import { WRAP_EDGE } from '../gown/wrap.ts';

/** One balance mark half way up each seam; which seam it is says its name, as so short a seam has no room for more. */
export function notchesOfFacing({ edges }: Piece): Map<string, readonly number[]> {
  const sides = [edges[1]!, edges[3]!].filter(({ name }) => !['fold', WRAP_EDGE].includes(name));
  return new Map(sides.map(({ name, curves }) => [name, [lengthOfRun(curves) / 2]]));
}
