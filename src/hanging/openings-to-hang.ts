import type { GownDraft } from '../draft/draft-gown.ts';
import type { Gown } from '../gown/gown.ts';
import { isSame, type Side, type Station } from '../gown/station.ts';
import type { ClosureFacts } from '../making/closure/closure-facts.ts';
import type { GownHung } from './sewn-gown.ts';
import type { ViewExtras } from './view-extras.ts';

export function openingOf(sewn: GownHung, closure: ClosureFacts | undefined): ViewExtras['opening'] {
  if (closure?.stops === undefined) return undefined;
  const columns = sewn.seams.filter(({ station }) => isSame(sewn.stations[station]!, closure.station));
  // Of two seams of one name the left one comes first.
  const seam = closure.side === 'right' ? columns[columns.length - 1] : columns[0];
  return seam === undefined ? undefined : { column: seam.column, from: closure.starts, to: closure.stops };
}

/** Seams that are open from a depth on down to the hem. */
export function slitsOf(
  gown: Gown,
  { lengths }: GownDraft,
  sewn: GownHung,
): NonNullable<ViewExtras['slits']> {
  return gown.slits.flatMap(({ stations, side, aboveHem = 0, belowWaist }) =>
    seamsAt(sewn, stations, side).map(({ station, column }) => ({
      column,
      from: belowWaist ?? lengths[station]! - aboveHem,
    })),
  );
}

export function pocketsOf({ pockets }: Gown, sewn: GownHung): NonNullable<ViewExtras['pockets']> {
  return pockets.flatMap(({ stations, side, belowWaist, opening }) =>
    seamsAt(sewn, stations, side).map(({ column }) => ({
      column,
      from: belowWaist,
      to: belowWaist + opening,
    })),
  );
}

/** Where seams of one name lie on the cloth all round: on both sides of a mirrored gown, unless one is asked for. */
function seamsAt(
  { seams, stations }: GownHung,
  of: readonly Station[],
  side: Side | undefined,
): GownHung['seams'] {
  const own = seams.filter(({ station }) => of.some((one) => isSame(stations[station]!, one)));
  // On a mirrored gown the left one of two comes first.
  return side === undefined || own.length < 2 ? own : [own[side === 'left' ? 0 : own.length - 1]!];
}
