import type { GownDraft } from '../draft/draft-gown.ts';
import type { Gown } from '../gown/gown.ts';
import { isSame, type Side, type Station } from '../gown/station.ts';
import type { GownHung } from './cloth-of-gown.ts';
import type { Opening } from './lines-on-skirt.ts';

/** A stretch of a seam that is left open: a pocket, or a slit, which opens at the hem. */
export interface Slot extends Opening {
  readonly isOpenBelow: boolean;
}

/** The pockets and slits of the skirt that is seen, by the columns of the hung cloth. */
export function slotsToDraw(
  { pockets, slits }: Pick<Gown, 'pockets' | 'slits'>,
  { gown, lengths }: GownDraft,
  sewn: GownHung,
): Slot[] {
  const lengthAt = (own: Station): number =>
    lengths[gown.stations.findIndex((station) => isSame(station, own))] ?? 0;
  const at = (stations: readonly Station[], side: Side | undefined, from: (long: number) => number) =>
    stations.flatMap((station) =>
      columnsOfSeam(sewn, station, side).map((column) => ({
        column,
        from: from(lengthAt(station)),
        station,
      })),
    );
  return [
    ...pockets.flatMap(({ stations, side, belowWaist, opening }) =>
      at(stations, side, () => belowWaist).map(
        ({ column, from }): Slot => ({ column, from, to: from + opening, isOpenBelow: false }),
      ),
    ),
    ...slits.flatMap(({ stations, side, aboveHem, belowWaist }) =>
      at(stations, side, (long) => (aboveHem === undefined ? (belowWaist ?? 0) : long - aboveHem)).map(
        ({ column, from, station }): Slot => ({ column, from, to: lengthAt(station), isOpenBelow: true }),
      ),
    ),
  ];
}

/** Where a seam lies on the cloth all round: on both sides of a mirrored gown, unless one is asked for. */
function columnsOfSeam({ seams, stations }: GownHung, station: Station, side: Side | undefined): number[] {
  const columns = seams
    .filter((seam) => isSame(stations[seam.station]!, station) && seam.from === undefined)
    .map(({ column }) => column);
  // Of two seams of one name the left one comes first.
  return side === undefined || columns.length < 2
    ? columns
    : [columns[side === 'left' ? 0 : columns.length - 1]!];
}
