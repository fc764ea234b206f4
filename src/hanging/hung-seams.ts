import type { GownDraft } from '../draft/draft-gown.ts';
import { runsRound } from '../gown/lines.ts';
import type { PlacedPanel } from './placed-panels.ts';
import type { GownToHang, HungSeam } from './sewn-gown.ts';

/** Where the gore in front of a station ends and the one behind it begins: two columns where a godet lies between. */
export function seamColumns(placed: readonly PlacedPanel[], station: number): [number, number] {
  const before = placed.find(({ from, to }) => from !== to && to === station);
  const after = placed.find(({ from, to }) => from !== to && from === station);
  const ends = before === undefined ? after!.first : before.first + before.panel.across;
  return [before === undefined && after!.first > 0 ? 0 : ends, after === undefined ? ends : after.first];
}

/** Every seam once for each side that it lies on; of the two seams of a godet the second begins at its point. */
export function seamsOf({ draft, godets }: GownToHang, placed: readonly PlacedPanel[]): HungSeam[] {
  const { panel, first } = placed[placed.length - 1]!;
  const round = runsRound(draft.gown);
  const last = first + panel.across;
  const all = round ? last : 2 * last;
  const stations = round ? draft.gown.stations.slice(0, -1) : draft.gown.stations;
  return stations.flatMap((_, station): HungSeam[] => {
    const columns = new Set(seamColumns(placed, station));
    const point = godets.find((godet) => godet.station === station)?.from;
    const own = [...columns].filter(
      (column) => round || point === undefined || (column > 0 && column < last),
    );
    const mirrored = round
      ? []
      : own.filter((column) => column > 0 && column < last).map((column) => all - column);
    return [...own, ...mirrored].map((column, i) => ({
      station,
      column,
      ...(i > 0 && point !== undefined && { from: point }),
      ...(isOnFold(draft.gown, station) && { onFold: true }),
    }));
  });
}

function isOnFold({ gores, stations }: GownDraft['gown'], station: number): boolean {
  if (station === 0) return gores[0]?.fold === 'front';
  return station === stations.length - 1 && gores[gores.length - 1]?.fold === 'back';
}
