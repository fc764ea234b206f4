import type { FittingTrace } from '../fittings/fitting-trace.ts';

/** What one fitting did, as `report.json` holds it: mm, before and after. */
export type FittingReport = FittingTrace;

export function fittingReport(trace: FittingTrace): FittingReport {
  return {
    ...trace,
    hem: roundedPair(trace.hem),
    waist: roundedPair(trace.waist),
    lengths: trace.lengths.map((one) => ({ ...one, length: roundedPair(one.length) })),
  };
}

function roundedPair([before, after]: readonly [number, number]): [number, number] {
  return [rounded(before), rounded(after)];
}

/** Kept to a tenth of a micrometre, like every length of the report. */
function rounded(length: number): number {
  return Math.round(length * 1e4) / 1e4;
}
