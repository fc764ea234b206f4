import type { Gown } from '../gown/gown.ts';
import { allowanceAt } from '../gown/layer.ts';
import type { Tiers } from '../gown/parts.ts';
import { stripsFor } from './flounces.ts';
import type { Part } from './part.ts';
import type { TierRun } from './part-kind.ts';
import { sectorPiece } from './sector-piece.ts';
import { usableWidth } from './usable-width.ts';

/** The runs that a set of tiers is cut as, one for each depth. */
export function tierRuns(tiers: Tiers): TierRun[] {
  const seam = allowanceAt(tiers.layer, 'seam');
  const widest = usableWidth(tiers.layer.cloth) - 2 * seam;
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
export function tierParts({ tiers: all }: Pick<Gown, 'tiers'>): Part[] {
  return all.flatMap((tiers) => {
    const runs = tierRuns(tiers);
    return runs.map(
      (run): Part => ({
        of: { kind: 'tiers', tiers, run, runs: runs.length },
        layer: tiers.layer,
        piece: sectorPiece({
          name: run.name,
          top: run.length / run.strips,
          hem: run.length / run.strips,
          depth: run.depth,
          layers: [tiers.name],
          copies: run.strips,
        }),
        allowances: {},
        notches: new Map(),
        // The quarters are the tiers', which are cut off the run later.
        quartered: false,
        roughCut: 0,
        place: tiers.place,
      }),
    );
  });
}
