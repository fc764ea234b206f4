import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { BodiceFitting } from '../gown/above-waist.ts';
import { runsRound } from '../gown/lines.ts';
import type { Fitting } from '../gown/sections.ts';
import type { Side } from '../gown/station.ts';
import type { Alterations, SideAlterations } from './alterations.ts';
import { overlapFaults, sideFaults } from './fitting-faults.ts';
import { draftedStations, type PinnedFitting, upAt } from './pinned-fitting.ts';
import { hemAtRest, hemKnots } from './pinned-hem.ts';
import { seamTake } from './pinned-seam.ts';

/** What one fitting alters on either side, on top of what was altered before. */
export function resolveFitting(
  pinned: PinnedFitting,
  before: Alterations,
): { readonly alterations: Alterations; readonly diagnostics: readonly Diagnostic[] } {
  const { fitting, drafts } = pinned;
  const diagnostics: Diagnostic[] = [...sideFaults(pinned), ...overlapFaults(pinned)];
  const sideOf = (side: Side): SideAlterations => {
    const own = resolveSide(pinned, side, before[side]);
    diagnostics.push(
      ...own.diagnostics.filter((found) => !diagnostics.some((other) => isSame(found, other))),
    );
    return own.alterations;
  };
  const left = sideOf('left');
  const alike = before.left === before.right && drafts.left === drafts.right && isForBoth(fitting);
  return { alterations: { left, right: alike ? left : sideOf('right') }, diagnostics };
}

function isSame(a: Diagnostic, b: Diagnostic): boolean {
  return a.code === b.code && a.span.start === b.span.start;
}

/** Whether nothing of a fitting was pinned on one side only. */
export function isForBoth({ side, seams = [] }: Fitting | BodiceFitting): boolean {
  return side === undefined && seams.every((seam) => (seam.side ?? 'both') === 'both');
}

function resolveSide(
  pinned: PinnedFitting,
  side: Side,
  before: SideAlterations,
): { alterations: SideAlterations; diagnostics: Diagnostic[] } {
  const { fitting, drafts } = pinned;
  const draft = drafts[side];
  const diagnostics: Diagnostic[] = [];
  const applies = fitting.side === undefined || fitting.side === side;
  const knots = applies ? hemKnots(pinned, draft, diagnostics) : hemAtRest(pinned, draft);
  const stations = draftedStations(draft);
  const waist = stations.map((name, i) => before.waist[i]! + (applies ? upAt(fitting.waist, name) : 0));
  const seams = stations.map((name, i) => {
    const takes = (fitting.seams ?? []).flatMap((seam, j) => {
      const where = seam.side ?? fitting.side ?? 'both';
      if (seam.seam !== name || (where !== 'both' && where !== side)) return [];
      return seamTake(pinned, draft, i, j, diagnostics);
    });
    return takes.length === 0 ? before.seams[i]! : [...before.seams[i]!, ...takes];
  });
  // A ring's last station is its first again.
  if (runsRound(draft.gown)) {
    waist[waist.length - 1] = waist[0]!;
    seams[seams.length - 1] = seams[0]!;
  }
  return { alterations: { ...before, hems: [...before.hems, knots], waist, seams }, diagnostics };
}
