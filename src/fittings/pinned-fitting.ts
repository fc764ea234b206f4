import type { GownDraft } from '../draft/draft-gown.ts';
import type { Gown } from '../gown/gown.ts';
import type { Fitting } from '../gown/sections.ts';
import type { Side } from '../gown/station.ts';

/** One fitting of a gown, and the drafts of both sides as the fittings before it left them. */
export interface PinnedFitting {
  readonly gown: Gown;
  readonly fitting: Fitting;
  readonly drafts: Readonly<Record<Side, GownDraft>>;
}

export function draftedStations(draft: GownDraft): string[] {
  return draft.gown.stations.map(({ name }) => name);
}

/** Word for a whole edge, in place of its stations one by one. */
export const ALL_ROUND = 'all-round';

/** How far an edge goes up at a station, mm. */
export function upAt(edge: Readonly<Record<string, number>> | undefined, station: string): number {
  return edge?.[station] ?? edge?.[ALL_ROUND] ?? 0;
}
