import type { Part } from '../draft/part.ts';
import type { PartKind } from '../draft/part-kind.ts';
import type { PieceRemark } from '../draft/piece-remark.ts';
import { lengthOfRun } from '../geometry/length.ts';

/** What the maker does with a flounce, a run of strips or a godet; a panel is sewn as its gores are. */
export function partRemarks(part: Part): PieceRemark[] {
  const { of } = part;
  switch (of.kind) {
    case 'panel':
      return [];
    case 'godet':
      return [{ kind: 'godet', seam: of.godet.seam, from: of.godet.from }];
    case 'flounce':
      return [flounceRemark(part, of)];
    case 'tiers':
      return [{ kind: 'tiers', cuts: of.run.tiers, ...(of.runs === 1 && { yoke: of.tiers.yoke }) }];
    case 'strap':
      return [{ kind: 'strap', from: of.strap.from, to: of.strap.to, width: of.strap.width }];
    case 'cape':
      return [capeRemark(of)];
    case 'hem-facing':
    case 'waist-facing':
    case 'upper-facing':
      return [of, ...seamsCutOver(part)];
    default:
      return [of];
  }
}

function seamsCutOver({ marks = [] }: Part): PieceRemark[] {
  return marks.length === 0 ? [] : [{ kind: 'over-seams', seams: marks.map(({ name }) => name) }];
}

function flounceRemark({ piece }: Part, { flounce, open }: PartKind & { kind: 'flounce' }): PieceRemark {
  const ring = lengthOfRun(piece.edges[0]!.curves) * (piece.copies ?? 1);
  return {
    kind: 'flounce',
    sewnTo: flounce.sewnTo.name,
    aboveHem: flounce.aboveHem,
    ring,
    open,
    ...(flounce.kind !== 'circular' && { gatheredTo: ring / flounce.fullness }),
  };
}

function capeRemark({ cape, inner }: PartKind & { kind: 'cape' }): PieceRemark {
  const { from, to, overArm, fullness } = cape;
  return {
    kind: 'cape',
    ...(from !== undefined && to !== undefined && { between: { from, to } }),
    overArm,
    ...(fullness !== undefined && { gatheredTo: inner }),
  };
}
