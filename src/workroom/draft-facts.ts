import type { LayerDrafts } from '../draft/draft-layers.ts';
import type { Gown } from '../gown/gown.ts';
import { type BustleFacts, bustleFacts } from '../making/bustle/bustle-facts.ts';
import { type ClosureFacts, closureFacts } from '../making/closure/closure-facts.ts';
import { benchOf, type Found } from '../making/findings.ts';
import { type HemFacts, hemFacts } from '../making/hem/hem-facts.ts';
import { type PetticoatFacts, petticoatFacts } from '../making/petticoat/petticoat-facts.ts';
import { type Skirt, skirtOf } from '../making/skirt.ts';
import { type StripFacts, stripFacts } from '../making/supplies/strip-facts.ts';
import { type TrainFootprint, trainFootprint } from '../making/train/train-footprint.ts';
import { type WaistFacts, waistFacts } from '../making/waist/waist-facts.ts';
import { type StoneFacts, stoneFacts } from '../stones/stone-facts.ts';
import { stoneFindings } from '../stones/stone-findings.ts';

/** What the draft alone says of the making, before there are lays, and what was found on the way. */
export interface DraftFacts {
  readonly skirt: Skirt;
  readonly waist: Found<WaistFacts>;
  readonly closure: Found<ClosureFacts | undefined>;
  readonly hems: Found<readonly HemFacts[]>;
  readonly strips: readonly StripFacts[];
  readonly petticoat: Found<PetticoatFacts | undefined>;
  readonly bustle: Found<BustleFacts | undefined>;
  /** What lies on the floor; undefined where the floor is not known or nothing reaches it. */
  readonly footprint: TrainFootprint | undefined;
  /** Set by hand: counted, with their places. */
  readonly stones: Found<readonly StoneFacts[]>;
}

export function draftFacts(gown: Gown, drafts: LayerDrafts): DraftFacts {
  const skirt = skirtOf(gown, drafts);
  const bench = benchOf(gown, skirt);
  return {
    skirt,
    waist: waistFacts(bench),
    closure: closureFacts(bench),
    hems: hemFacts(bench),
    strips: stripFacts(bench),
    petticoat: petticoatFacts(bench, drafts.gown),
    bustle: bustleFacts(bench, drafts.gown),
    footprint: trainFootprint(drafts.gown, skirt, gown.godets),
    stones: { facts: stoneFacts(gown, drafts), findings: stoneFindings(gown, drafts) },
  };
}
