import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { placeOf } from '../gown-file/spec.ts';
import * as problems from './fitting-problems.ts';
import { ALL_ROUND, type PinnedFitting } from './pinned-fitting.ts';

/** A side where both sides are one edge, or where each has gores of its own. */
export function sideFaults({ spec, index, drafts }: PinnedFitting): Diagnostic[] {
  const { side, seams = [], hem = {}, waist = {} } = spec.fittings![index]!;
  const sides = [
    ...(side === undefined ? [] : [{ side, path: ['side'] as const }]),
    ...seams.flatMap((seam, j) =>
      seam.side === 'left' || seam.side === 'right'
        ? [{ side: seam.side, path: ['seams', j, 'side'] as const }]
        : [],
    ),
  ];
  if (drafts.left.gown.closed) {
    const other = placeOf(spec, 'symmetry');
    return sides.map((one) =>
      problems.sideOfRing(placeOf(spec, 'fittings', index, ...one.path), one.side, other),
    );
  }
  if (side === undefined) return [];
  const other = placeOf(spec, 'fittings', index, 'side');
  return [...CENTRES, ALL_ROUND].flatMap((name) =>
    (['hem', 'waist'] as const)
      .filter((edge) => ({ hem, waist })[edge][name] !== undefined)
      .map((edge) =>
        problems.centreOnOneSide(placeOf(spec, 'fittings', index, edge, name), name, side, other),
      ),
  );
}

const CENTRES = ['centre-front', 'centre-back'];

/** Stretches of one seam that lie on one another. */
export function overlapFaults({ spec, index }: PinnedFitting): Diagnostic[] {
  const { seams = [] } = spec.fittings![index]!;
  return seams.flatMap((seam, j) => {
    const k = seams.findIndex(
      (other, i) =>
        i < j &&
        other.seam === seam.seam &&
        other.from < seam.to &&
        seam.from < other.to &&
        ((other.side ?? 'both') === 'both' || (seam.side ?? 'both') === 'both' || other.side === seam.side),
    );
    if (k < 0) return [];
    const own = placeOf(spec, 'fittings', index, 'seams', j, 'from');
    return [problems.fittingOverlaps(own, seam.seam, placeOf(spec, 'fittings', index, 'seams', k, 'from'))];
  });
}
