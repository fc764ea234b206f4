import type { GownDraft } from '../draft/draft-gown.ts';
import type { Spec } from '../gown-file/spec.ts';

export type Side = 'left' | 'right';

/** One fitting of a spec, and the drafts of both sides as the fittings before it left them. */
export interface PinnedFitting {
  readonly spec: Spec;
  readonly index: number;
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
