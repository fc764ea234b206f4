import type { Usual } from './usual.ts';
import { BODIES } from './usual-bodies.ts';
import { CUTS } from './usual-cuts.ts';
import { FINISHES } from './usual-finishes.ts';
import { GOODS } from './usual-goods.ts';
import { SKIRTS } from './usual-skirts.ts';

export const USUAL = { ...CUTS, ...FINISHES, ...GOODS, ...SKIRTS, ...BODIES };

/**
 * Which figure of a spec is which: paths with `*` for any name or number. An overskirt's are the gown's, below
 * `overskirts.*`. A nought is never unusual here: it says that there is none.
 */
export const FIGURES: readonly (readonly [string, Usual])[] = [
  ['rough-cut.*', USUAL.roughCut],
  ['layers.*.gap.length', USUAL.gap],
  ['layers.*.fullness.depth', USUAL.pleat],
  ['gores.*.fullness.depth', USUAL.pleat],
  ['cloths.*.width', USUAL.clothWidth],
  ['cloths.*.selvedge', USUAL.selvedge],
  ['cloths.*.weight', USUAL.clothWeight],
  ['cloths.*.shrinkage', USUAL.shrinkage],
  ['cloths.*.sold-by', USUAL.soldBy],
  ['cloths.*.repeat-down', USUAL.repeat],
  ['cloths.*.repeat-across', USUAL.repeat],
  ['lengths.off-floor', USUAL.offFloor],
  ['lengths.worn-in.heel', USUAL.heel],
  ['lengths.measured-in.heel', USUAL.heel],
  ['train.on-floor', USUAL.onFloor],
  ['bodice.waist-seam', USUAL.waist],
  ['bodice.drop-below-waist.*', USUAL.drop],
  ['bodice.bones-end', USUAL.bonesEnd],
  ['bodice.second-row', USUAL.secondRow],
  ['body.height', USUAL.bodyHeight],
  ['bodice.closing.gap', USUAL.laced],
  ['bodice.closing.gap.*', USUAL.laced],
  ['bodice.closing.eyelets', USUAL.eyelets],
  ['bodice.closing.from-edge', USUAL.eyeletEdge],
  ['bodice.bones.width', USUAL.boneWidth],
  ['bodice.bones.clear', USUAL.bonesEnd],
  ['bodice.draft.facing.depth', USUAL.upperFacing],
  ['straps.*.length', USUAL.strapLength],
  ['straps.*.width', USUAL.trimWidth],
  ['capes.*.length', USUAL.capeLength],
  ['capes.*.length.*', USUAL.capeLength],
  ['closure.hip', USUAL.hip],
  ['closure.shoulders', USUAL.shoulders],
  ['closure.opening', USUAL.opening],
  ['closure.starts', USUAL.closureStarts],
  ['bustle.clearance', USUAL.clearance],
  ['bustle.loop', USUAL.loop],
  ['bustle.points.*.anchor', USUAL.anchor],
  ['waist.width', USUAL.waistWidth],
  ['waist.overlap', USUAL.bandOverlap],
  ['layers.*.facing.depth', USUAL.edgeFacing],
  ['slits.*.facing.depth', USUAL.edgeFacing],
  ['wrap.edge-facing.depth', USUAL.edgeFacing],
  ['wrap.overlap', USUAL.wrapOverlap],
  ['wrap.overlap-at-hem', USUAL.wrapOverlap],
  ['wrap.ties.length', USUAL.tieLength],
  ['wrap.ties.width', USUAL.trimWidth],
  ['pleats.*.fold-depth', USUAL.foldDepth],
  ['darts.*.takes-in', USUAL.dart],
  ['darts.*.length', USUAL.dartLength],
  ['pockets.*.opening', USUAL.pocketOpening],
  ['pockets.*.depth', USUAL.pocketDepth],
  ['pockets.*.width', USUAL.pocketWidth],
  ['petticoat.hoop', USUAL.hoop],
  ['petticoat.hoop-off-floor', USUAL.hoopOffFloor],
  ['petticoat.ease', USUAL.ease],
  ['flounces.*.depth', USUAL.flounceDepth],
  ['flounces.*.above-hem', USUAL.aboveHem],
  ['tiers.*.depths', USUAL.flounceDepth],
  ['tiers.*.depths.*', USUAL.flounceDepth],
  ['godets.*.width', USUAL.godetWidth],
  ['edging.depth', USUAL.edgingDepth],
  ['edging.repeat', USUAL.edgingRepeat],
  ['edging.braid', USUAL.trimWidth],
  ['edging.scallop', USUAL.scallop],
  ['edging.sold-by', USUAL.soldBy],
  ['trims.*.width', USUAL.trimWidth],
  ['trims.*.sold-by', USUAL.soldBy],
  ['notions.*.length', USUAL.notionLength],
  ['fittings.*.hem.*', USUAL.pinnedUp],
  ['fittings.*.waist.*', USUAL.pinnedUp],
  ['fittings.*.levelled.*.up', USUAL.pinnedUp],
  ['fittings.*.seams.*.take-in', USUAL.takeIn],
  ['fittings.*.bodice.upper-edge.*', USUAL.pinnedUp],
  ['fittings.*.bodice.seams.*.take-in', USUAL.takeIn],
  ['paper.lap', USUAL.lap],
  ['paper.margin', USUAL.margin],
  ['paper.margin.*', USUAL.margin],
];

/** Steps that cloth and trims are sold by, mm: tenths, quarters and halves of a metre or a yard, eighths of a yard. */
export const SOLD_BY: readonly number[] = [
  ...[0.1, 0.2, 0.25, 0.5, 1, 2, 5].map((metres) => metres * 1000),
  ...[1 / 8, 1 / 4, 1 / 2, 1, 2].map((yards) => yards * 914.4),
];
