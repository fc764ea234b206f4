import type { BodiceMeasures } from '../../src/bodice/bodice-measures.ts';
import { type BodiceDraft, draftBodice } from '../../src/bodice/draft-bodice.ts';
import type { HalfBodice } from '../../src/bodice/draft-half.ts';

export function drafted(measures: BodiceMeasures): BodiceDraft {
  const draft = draftBodice(measures);
  if ('faults' in draft) throw new Error(JSON.stringify(draft.faults));
  return draft;
}

/** Heights of both edges at every station, as they were asked for or filled in. */
export function heights({ upper, lower }: HalfBodice): { upper: number[]; lower: number[] } {
  return {
    upper: upper.ways.map((way) => -upper.valueAt(way)),
    lower: lower.ways.map((way) => -lower.valueAt(way)),
  };
}

/** A bodice of plain panels: girths at heights, level edges, nothing laced. */
export function plain(
  girths: readonly (readonly [at: string, above: number, girth: number])[],
  panels: number,
  upper: number,
  lower = 0,
): BodiceMeasures {
  const names = Array.from({ length: panels }, (_, i) => `p${i}`);
  const stations = ['centre-front', ...names.slice(1).map((name, i) => `p${i}/${name}`), 'centre-back'];
  const all = (above: number) => Object.fromEntries(stations.map((station) => [station, above]));
  return {
    girths: girths.map(([at, above, girth]) => ({ at, above, girth })),
    panels: names.map((name) => ({ name, onFold: false, widths: {} })),
    reduce: {},
    upperEdge: { above: all(upper), points: [] },
    lowerEdge: { above: all(lower), points: [] },
    lacings: [],
  };
}
