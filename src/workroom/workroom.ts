import type { DraftedBodice } from '../bodice/draft-asked.ts';
import {
  type CalendarEntry,
  calendar,
  clashesIn,
  isMilestone,
  USUAL_DAYS_BEFORE,
} from '../dates/calendar.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { LayerDrafts } from '../draft/draft-layers.ts';
import type { CutPiece } from '../draft/piece.ts';
import type { Gown } from '../gown/gown.ts';
import type { Layer } from '../gown/layer.ts';
import type { BoughtCloth } from '../lay/plan/lay-facts.ts';
import { type BustleFacts, bustleFacts } from '../making/bustle/bustle-facts.ts';
import { type ClosureFacts, closureFacts } from '../making/closure/closure-facts.ts';
import { type CapeHem, type EdgingFacts, edgingFacts } from '../making/edging/edging-facts.ts';
import { type Bench, benchOf, type Found } from '../making/findings.ts';
import { type HemFacts, hemFacts } from '../making/hem/hem-facts.ts';
import type { PageCautions } from '../making/order/cautioned.ts';
import { orderOfMaking } from '../making/order/order-of-making.ts';
import type { Step } from '../making/order/step.ts';
import { type PetticoatFacts, petticoatFacts } from '../making/petticoat/petticoat-facts.ts';
import * as problems from '../making/problems.ts';
import type { Skirt } from '../making/skirt.ts';
import { type Notion, notionsFor } from '../making/supplies/notions.ts';
import { type StripFacts, stripFacts } from '../making/supplies/strip-facts.ts';
import { threadRatio, USUAL_STITCH } from '../making/supplies/thread.ts';
import { type LayerThread, threadFacts } from '../making/supplies/thread-facts.ts';
import { type WeightFacts, weightFacts } from '../making/supplies/weight-facts.ts';
import { type TrainFootprint, trainFootprint } from '../making/train/train-footprint.ts';
import { type WaistFacts, waistFacts } from '../making/waist/waist-facts.ts';
import { type Pricing, pricing } from '../money/pricing.ts';
import { type StoneFacts, stoneFacts } from '../stones/stone-facts.ts';
import { stoneFindings } from '../stones/stone-findings.ts';
import { type MissingFact, missingFacts } from './missing-facts.ts';

/** Every figure that the papers print: worked out here, drawn elsewhere. */
export interface Workroom extends WorkroomParts {
  readonly weight: WeightFacts;
  readonly thread: readonly LayerThread[];
  /** Thread drawn per length sewn at the usual stitch. */
  readonly threadRatio: number;
  readonly notions: readonly Notion[];
  readonly order: readonly Step[];
  readonly cautions: PageCautions;
  readonly missing: readonly MissingFact[];
}

interface WorkroomParts {
  readonly skirt: Skirt;
  readonly waist: WaistFacts;
  readonly closure: ClosureFacts | undefined;
  readonly hems: readonly HemFacts[];
  readonly strips: readonly StripFacts[];
  readonly edging: EdgingFacts | undefined;
  readonly petticoat: PetticoatFacts | undefined;
  /** What lies on the floor; undefined where the floor is not known or nothing reaches it. */
  readonly footprint: TrainFootprint | undefined;
  readonly bustle: BustleFacts | undefined;
  /** Where it is drafted and made here. */
  readonly bodice: DraftedBodice | undefined;
  /** Set by hand: counted, with their places. */
  readonly stones: readonly StoneFacts[];
  readonly pricing: Pricing;
  readonly calendar: readonly CalendarEntry[] | undefined;
}

/** A drafted gown as the workroom needs it. */
export interface WorkroomInput {
  readonly gown: Gown;
  readonly drafts: LayerDrafts;
  readonly skirt: Skirt;
  /** Every layer that has pieces: the gown's, those that stand for a flounce or strips, and the overskirts'. */
  readonly layers: readonly Layer[];
  readonly cut: { readonly pieces: readonly CutPiece[] };
  readonly bodice?: DraftedBodice;
  readonly capeHems?: readonly CapeHem[];
}

/** What the workroom makes of a drafted gown and its lays. Without lays nothing is said of lengths to buy. */
export function workroom(gown: WorkroomInput, bought: readonly BoughtCloth[]): Found<Workroom> {
  const { bench, facts: parts, findings } = workroomParts(gown, bought);
  const weight = weightFacts(gown.layers, gown.cut.pieces, parts.stones);
  const thread = threadFacts(bench, parts.waist, parts.strips, parts.edging, gown.cut.pieces);
  const order = orderOfMaking({ bench, ...parts, grams: weight.inAll });
  const facts: Workroom = {
    ...parts,
    weight,
    thread,
    threadRatio: threadRatio(USUAL_STITCH),
    notions: notionsFor(bench, { ...parts, thread }),
    order: order.facts.order,
    cautions: order.facts.cautions,
    missing: missingFacts(bench, { ...parts, weight }),
  };
  return { facts, findings: [...findings, ...order.findings] };
}

/** The findings alone, for a check: nothing is cut for them. */
export function workroomFindings(
  gown: Omit<WorkroomInput, 'cut'>,
  bought: readonly BoughtCloth[] = [],
): readonly Diagnostic[] {
  const { bench, facts, findings } = workroomParts(gown, bought);
  return [...findings, ...orderOfMaking({ bench, ...facts, grams: undefined }).findings];
}

function workroomParts(
  { gown, drafts, skirt, layers, bodice, capeHems }: Omit<WorkroomInput, 'cut'>,
  bought: readonly BoughtCloth[],
): Found<WorkroomParts> & { readonly bench: Bench } {
  const bench = benchOf(gown, skirt);
  const waist = waistFacts(bench);
  const closure = closureFacts(bench);
  const hems = hemFacts(bench);
  const strips = stripFacts(bench);
  const edging = edgingFacts(bench, bought, capeHems);
  const petticoat = petticoatFacts(bench, drafts.gown);
  const bustle = bustleFacts(bench, drafts.gown);
  const stones = stoneFacts(gown, drafts);
  const priced = pricing(bench, { layers, bought, edging: edging.facts, strips, stones });
  const dates = calendarOf(gown);
  const facts: WorkroomParts = {
    skirt,
    waist: waist.facts,
    closure: closure.facts,
    hems: hems.facts,
    strips,
    edging: edging.facts,
    petticoat: petticoat.facts,
    footprint: trainFootprint(drafts.gown, skirt, gown.godets),
    bustle: bustle.facts,
    bodice,
    stones,
    pricing: priced.facts,
    calendar: dates.facts,
  };
  const found = [waist, closure, hems, edging, petticoat, bustle, priced, dates];
  const findings = [...found.flatMap((part) => part.findings), ...stoneFindings(gown, drafts)];
  return { bench, facts, findings };
}

function calendarOf({ dates }: Gown): Found<readonly CalendarEntry[] | undefined> {
  if (dates === undefined) return { facts: undefined, findings: [] };
  const { event, before = {} } = dates;
  const known = Object.keys(USUAL_DAYS_BEFORE).join(', ');
  const findings: Diagnostic[] = Object.keys(before)
    .filter((name) => !isMilestone(name))
    .map((name) => problems.unknownMilestone(dates.place('before', name), name, known));
  if (event === undefined) return { facts: undefined, findings };
  const entries = calendar(event, before);
  const clashes = clashesIn(entries).map(({ earlier, later }) =>
    problems.calendarClash(dates.place('before'), earlier, later),
  );
  return { facts: entries, findings: [...findings, ...clashes] };
}
