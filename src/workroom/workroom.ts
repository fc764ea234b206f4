import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { LayerDrafts } from '../draft/draft-layers.ts';
import type { CutPiece } from '../draft/piece.ts';
import { placeOf, type Spec } from '../spec/spec.ts';
import { type BustleFacts, bustleFacts } from './bustle-facts.ts';
import { type CalendarEntry, calendar, clashesIn, isMilestone, USUAL_DAYS_BEFORE } from './calendar.ts';
import { type ClosureFacts, closureFacts } from './closure-facts.ts';
import { type EdgingFacts, edgingFacts } from './edging-facts.ts';
import { benchOf, type Found } from './findings.ts';
import { type HemFacts, hemFacts } from './hem-facts.ts';
import type { BoughtCloth } from './lay-facts.ts';
import { type MissingFact, missingFacts } from './missing-facts.ts';
import { type Notion, notionsFor } from './notions.ts';
import { orderOfMaking } from './order-of-making.ts';
import { type PetticoatFacts, petticoatFacts } from './petticoat-facts.ts';
import { type Pricing, pricing } from './pricing.ts';
import * as problems from './problems.ts';
import { type Skirt, skirtOf } from './skirt.ts';
import type { Step } from './step.ts';
import { type StripFacts, stripFacts } from './strip-facts.ts';
import { type LayerThread, threadFacts } from './thread-facts.ts';
import { type WaistFacts, waistFacts } from './waist-facts.ts';
import { type WeightFacts, weightFacts } from './weight-facts.ts';

/** Every figure that the papers print: worked out here, drawn elsewhere. */
export interface Workroom {
  readonly skirt: Skirt;
  readonly waist: WaistFacts;
  readonly closure: ClosureFacts | undefined;
  readonly hems: readonly HemFacts[];
  readonly strips: readonly StripFacts[];
  readonly edging: EdgingFacts | undefined;
  readonly petticoat: PetticoatFacts | undefined;
  readonly bustle: BustleFacts | undefined;
  readonly weight: WeightFacts;
  readonly thread: readonly LayerThread[];
  readonly notions: readonly Notion[];
  readonly order: readonly Step[];
  readonly pricing: Pricing;
  readonly calendar: readonly CalendarEntry[] | undefined;
  readonly missing: readonly MissingFact[];
}

/** What the workroom makes of a drafted gown and its lays. Without lays nothing is said of lengths to buy. */
export function workroom(
  spec: Spec,
  drafts: LayerDrafts,
  cutPieces: readonly CutPiece[],
  bought: readonly BoughtCloth[],
): Found<Workroom> {
  const skirt = skirtOf(spec, drafts.gown, drafts.layers, cutPieces);
  const bench = benchOf(spec, skirt);
  const waist = waistFacts(bench);
  const closure = closureFacts(bench);
  const hems = hemFacts(bench, cutPieces);
  const strips = stripFacts(bench);
  const edging = edgingFacts(bench, bought);
  const petticoat = petticoatFacts(bench, drafts.gown);
  const bustle = bustleFacts(bench);
  const weight = weightFacts(bench);
  const thread = threadFacts(bench, waist.facts, strips, edging.facts);
  const order = orderOfMaking({
    bench,
    waist: waist.facts,
    hems: hems.facts,
    strips,
    closure: closure.facts,
    edging: edging.facts,
    bustle: bustle.facts,
    grams: weight.inAll,
  });
  const priced = pricing(bench, { bought, edging: edging.facts, strips });
  const dates = calendarOf(spec);
  const parts = { waist: waist.facts, closure: closure.facts, edging: edging.facts, bustle: bustle.facts };
  const facts: Workroom = {
    skirt,
    ...parts,
    hems: hems.facts,
    strips,
    petticoat: petticoat.facts,
    weight,
    thread,
    notions: notionsFor(bench, { ...parts, strips, thread }),
    order: order.facts,
    pricing: priced.facts,
    calendar: dates.facts,
    missing: missingFacts(bench, { ...parts, petticoat: petticoat.facts, weight, pricing: priced.facts }),
  };
  const found = [waist, closure, hems, edging, petticoat, bustle, order, priced, dates];
  return { facts, findings: found.flatMap((part) => part.findings) };
}

function calendarOf(spec: Spec): Found<readonly CalendarEntry[] | undefined> {
  const event = spec.dates?.event;
  const before = spec.dates?.before ?? {};
  const findings: Diagnostic[] = Object.keys(before)
    .filter((name) => !isMilestone(name))
    .map((name) =>
      problems.unknownMilestone(
        placeOf(spec, 'dates', 'before', name),
        name,
        Object.keys(USUAL_DAYS_BEFORE).join(', '),
      ),
    );
  if (event === undefined) return { facts: undefined, findings };
  const entries = calendar(event, before);
  const clashes = clashesIn(entries).map(({ earlier, later }) =>
    problems.calendarClash(placeOf(spec, 'dates', 'before'), earlier, later),
  );
  return { facts: entries, findings: [...findings, ...clashes] };
}
