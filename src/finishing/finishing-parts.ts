import type { DraftedCape } from '../bodice/cape-parts.ts';
import type { DraftedBodice } from '../bodice/draft-asked.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { LayerDrafts } from '../draft/draft-layers.ts';
import type { Part } from '../draft/part.ts';
import type { Gown } from '../gown/gown.ts';
import { bindingParts } from './binding-parts.ts';
import { edgeFacingParts } from './edge-facing-parts.ts';
import { facingParts } from './facing-parts.ts';
import {
  edgeFacingTooDeep,
  facingTooDeep,
  upperFacingTooDeep,
  waistFacingTooDeep,
} from './finishing-problems.ts';
import { openingParts } from './opening-parts.ts';
import { openingProblems } from './opening-problems.ts';
import { upperFacings } from './upper-facings.ts';
import { waistParts } from './waist-parts.ts';

/** What a gown is finished on: its bodice, its capes, and parts whose hems are faced as its own. */
export interface Finished {
  readonly bodice: DraftedBodice | undefined;
  readonly capes: readonly DraftedCape[];
  readonly sewnOn: readonly Part[];
}

/** All that finishes a gown, as pieces, and what of it cannot be cut. */
export function finishingParts(
  gown: Gown,
  drafts: LayerDrafts,
  { bodice, capes, sewnOn }: Finished,
): { readonly parts: readonly Part[]; readonly diagnostics: readonly Diagnostic[] } {
  const { units } = gown;
  const facings = facingParts(drafts, capes, sewnOn, gown);
  const upper = upperFacings(bodice);
  const ofWaist = waistParts(gown, drafts.layers);
  const ofEdges = edgeFacingParts(gown, drafts.layers);
  return {
    parts: [
      ...facings.parts,
      ...('gore' in ofEdges ? [] : ofEdges),
      ...('gore' in upper ? [] : upper),
      ...('gore' in ofWaist ? [] : ofWaist),
      ...openingParts(gown, drafts),
      ...bindingParts(gown, drafts),
    ],
    diagnostics: [
      ...facings.tooDeep.map((found) => facingTooDeep(found, units)),
      ...('gore' in ofWaist ? [waistFacingTooDeep(gown.waist!, ofWaist, units)] : []),
      ...('gore' in ofEdges ? [edgeFacingTooDeep(ofEdges.facing, ofEdges, units)] : []),
      ...openingProblems(gown, drafts),
      ...('gore' in upper ? [upperFacingTooDeep(gown.askedBodice!.facing!, upper.gore, units)] : []),
    ],
  };
}
