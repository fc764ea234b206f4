import type { DraftedBodice } from '../bodice/draft-asked.ts';
import {
  type CalendarEntry,
  calendar,
  clashesIn,
  isMilestone,
  USUAL_DAYS_BEFORE,
} from '../dates/calendar.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { CutPiece } from '../draft/piece.ts';
import type { Gown } from '../gown/gown.ts';
import type { Layer } from '../gown/layer.ts';
import type { BoughtCloth } from '../lay/plan/lay-facts.ts';
import { type CapeHem, type EdgingFacts, edgingFacts } from '../making/edging/edging-facts.ts';
import { type Bench, benchOf, type Found } from '../making/findings.ts';
import type { PageCautions } from '../making/order/cautioned.ts';
import { orderOfMaking } from '../making/order/order-of-making.ts';
import type { Step } from '../making/order/step.ts';
import * as problems from '../making/problems.ts';
import { type Notion, notionsFor } from '../making/supplies/notions.ts';
import { threadRatio, USUAL_STITCH } from '../making/supplies/thread.ts';
import { type LayerThread, threadFacts } from '../making/supplies/thread-facts.ts';
import { type WeightFacts, weightFacts } from '../making/supplies/weight-facts.ts';
import { type Pricing, pricing } from '../money/pricing.ts';
import type { DraftFacts } from './draft-facts.ts';
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

/** The draft's own facts without what was found, and those that ask what is bought. */
interface WorkroomParts extends FactsAlone {
  readonly edging: EdgingFacts | undefined;
  /** Where it is drafted and made here. */
  readonly bodice: DraftedBodice | undefined;
  readonly pricing: Pricing;
  readonly calendar: readonly CalendarEntry[] | undefined;
}

type FactsAlone = {
  readonly [Part in keyof DraftFacts]: DraftFacts[Part] extends Found<infer Facts> ? Facts : DraftFacts[Part];
};

/** A drafted gown as the workroom needs it. */
export interface WorkroomInput {
  readonly gown: Gown;
  readonly facts: DraftFacts;
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
  { gown, facts: own, layers, bodice, capeHems }: Omit<WorkroomInput, 'cut'>,
  bought: readonly BoughtCloth[],
): Found<WorkroomParts> & { readonly bench: Bench } {
  const bench = benchOf(gown, own.skirt);
  const { strips, stones, waist, closure, hems, petticoat, bustle } = own;
  const edging = edgingFacts(bench, bought, capeHems);
  const priced = pricing(bench, { layers, bought, edging: edging.facts, strips, stones: stones.facts });
  const dates = calendarOf(gown);
  const facts: WorkroomParts = {
    ...own,
    waist: waist.facts,
    closure: closure.facts,
    hems: hems.facts,
    edging: edging.facts,
    petticoat: petticoat.facts,
    bustle: bustle.facts,
    stones: stones.facts,
    bodice,
    pricing: priced.facts,
    calendar: dates.facts,
  };
  const found = [waist, closure, hems, edging, petticoat, bustle, priced, dates, stones];
  return { bench, facts, findings: found.flatMap((part) => part.findings) };
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
