import type { Spec, TiersSpec } from '../gown-file/spec.ts';
import { stripsFor } from './flounces.ts';
import { type Part, partLayer } from './part.ts';
import { JOINS, sectorPiece } from './sector-piece.ts';
import { usableWidth } from './usable-width.ts';

/** One run of strips: all tiers of one depth, cut together and not tier by tier. */
export interface TierRun {
  readonly name: string;
  readonly depth: number;
  /** Length of the run, all its tiers end to end, mm. */
  readonly length: number;
  readonly strips: number;
  /** Tiers that the run is cut into, from the top, mm. */
  readonly tiers: readonly number[];
}

/** The runs that a set of tiers is cut as, one for each depth. */
export function tierRuns(spec: Spec, tiers: TiersSpec): TierRun[] {
  const seam = seamOf(tiers);
  const widest = usableWidth(spec, tiers.cloth) - 2 * seam;
  const depths = tiers.tiers.map((_, i) => tiers.depths[i] ?? tiers.depths[tiers.depths.length - 1] ?? 0);
  const all = [...new Set(depths)];
  return all.map((depth, k) => {
    const own = tiers.tiers.filter((_, i) => depths[i] === depth);
    // Where a tier is cut off the run, both of its new ends need an allowance.
    const length = own.reduce((sum, tier) => sum + tier, 0) + 2 * seam * (own.length - 1);
    const name = all.length === 1 ? tiers.name : `${tiers.name}-${k + 1}`;
    return { name, depth, length, strips: stripsFor(length, widest), tiers: own };
  });
}

/** Strips across the cloth, as parts. */
export function tierParts(spec: Spec): Part[] {
  return (spec.tiers ?? []).flatMap((tiers) => {
    const seam = seamOf(tiers);
    const runs = tierRuns(spec, tiers);
    return runs.map(
      (run): Part => ({
        layer: partLayer(tiers.name, tiers.cloth, 'raw', tiers.allowances),
        piece: sectorPiece({
          name: run.name,
          top: run.length / run.strips,
          hem: run.length / run.strips,
          depth: run.depth,
          layers: [tiers.name],
          copies: run.strips,
        }),
        allowances: { top: tiers.allowances.top ?? seam, [JOINS.left]: seam, [JOINS.right]: seam },
        notches: new Map(),
        // The quarters are the tiers', which are cut off the run later.
        quartered: false,
      }),
    );
  });
}

/** Net does not fray: its strips are lapped with no allowance unless one is given (common practice). */
function seamOf(tiers: TiersSpec): number {
  return tiers.allowances.seam ?? 0;
}
