import type { Diagnostic, Span } from '../diagnostics/diagnostic.ts';
import { runsRound } from '../gown/lines.ts';
import type { Fitting } from '../gown/sections.ts';
import * as problems from './fitting-problems.ts';
import { ALL_ROUND, type PinnedFitting } from './pinned-fitting.ts';

/** A side where both sides are one edge, or where each has gores of its own. */
export function sideFaults({ gown, fitting, drafts }: PinnedFitting): Diagnostic[] {
  const { side, seams = [], hem = {}, waist = {} } = fitting;
  const sides = [
    ...(side === undefined ? [] : [{ side, path: ['side'] as const }]),
    ...seams.flatMap((seam, j) =>
      seam.side === 'left' || seam.side === 'right'
        ? [{ side: seam.side, path: ['seams', j, 'side'] as const }]
        : [],
    ),
  ];
  if (runsRound(drafts.left.gown)) {
    const other = gown.place('symmetry');
    return sides.map((one) => problems.sideOfRing(fitting.place(...one.path), one.side, other));
  }
  if (side === undefined) return [];
  const other = fitting.place('side');
  return [...CENTRES, ALL_ROUND].flatMap((name) =>
    (['hem', 'waist'] as const)
      .filter((edge) => ({ hem, waist })[edge][name] !== undefined)
      .map((edge) => problems.centreOnOneSide(fitting.place(edge, name), name, side, other)),
  );
}

const CENTRES = ['centre-front', 'centre-back'];

/** Stretches of one seam that lie on one another. */
export function overlapFaults({ fitting }: PinnedFitting): Diagnostic[] {
  return overlaps(fitting.seams ?? [], (j) => fitting.place('seams', j, 'from'));
}

type Stretch = Pick<NonNullable<Fitting['seams']>[number], 'seam' | 'from' | 'to' | 'side'>;

export function overlaps(seams: readonly Stretch[], placeAt: (seam: number) => Span): Diagnostic[] {
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
    return [problems.fittingOverlaps(placeAt(j), seam.seam, placeAt(k))];
  });
}
