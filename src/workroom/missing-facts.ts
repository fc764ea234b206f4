import type { Gown } from '../gown/gown.ts';
import type { BustleFacts } from '../making/bustle/bustle-facts.ts';
import type { ClosureFacts } from '../making/closure/closure-facts.ts';
import type { EdgingFacts } from '../making/edging/edging-facts.ts';
import type { Bench } from '../making/findings.ts';
import type { PetticoatFacts } from '../making/petticoat/petticoat-facts.ts';
import type { WeightFacts } from '../making/supplies/weight-facts.ts';
import type { WaistFacts } from '../making/waist/waist-facts.ts';
import type { Pricing } from '../money/pricing.ts';

/** Something that the spec does not say, so that a paper is without it or takes something else. */
export interface MissingFact {
  readonly fact:
    | 'closure'
    | 'girths'
    | 'waist-groups'
    | 'closure-layers'
    | 'bodice-plies'
    | 'bones-end'
    | 'off-floor'
    | 'floor-lengths'
    | 'hoop-height'
    | 'edging-start'
    | 'bustle-floor'
    | 'bustle-floor-estimated'
    | 'cloth-weight'
    | 'price'
    | 'lay'
    | 'no-prices'
    | 'rate'
    | 'hours'
    | 'fittings-included'
    | 'expires'
    | 'event';
  readonly names?: readonly string[];
}

export interface FactsSoFar {
  readonly waist: WaistFacts;
  readonly closure: ClosureFacts | undefined;
  readonly edging: EdgingFacts | undefined;
  readonly bustle: BustleFacts | undefined;
  readonly petticoat: PetticoatFacts | undefined;
  readonly weight: WeightFacts;
  readonly pricing: Pricing;
}

export function missingFacts({ gown, skirt }: Bench, facts: FactsSoFar): MissingFact[] {
  const missing: MissingFact[] = [];
  const add = (fact: MissingFact['fact'], when: boolean, names?: readonly string[]): void => {
    if (when) missing.push(names === undefined ? { fact } : { fact, names });
  };
  const several = gown.layers.length > 1;
  add('closure', facts.closure === undefined && gown.wrap === undefined);
  add('girths', facts.closure?.passage !== undefined && facts.closure.passage.against.length === 0);
  const ownWaist = gown.waist !== undefined;
  add('waist-groups', !facts.waist.grouped && several && !ownWaist);
  add('closure-layers', facts.closure !== undefined && several && gown.sewnAsOne?.closure === undefined);
  add(
    'bodice-plies',
    facts.waist.groups.some((group) => group.bodicePliesAssumed),
  );
  add('bones-end', facts.waist.bonesEnd === undefined && !ownWaist);
  const floorless = skirt.stations
    .filter((station) => station.floor === undefined)
    .map((station) => station.name);
  add('floor-lengths', facts.petticoat?.hoop !== undefined && facts.petticoat.hoop.sweep === undefined, [
    ...new Set(floorless),
  ]);
  add('hoop-height', facts.petticoat?.hoop?.offFloorAssumed === true);
  add('edging-start', facts.edging?.startAssumed === true, [facts.edging?.start ?? '']);
  add('bustle-floor', (facts.bustle?.withoutFloor.length ?? 0) > 0, facts.bustle?.withoutFloor ?? []);
  add('bustle-floor-estimated', (facts.bustle?.estimated.length ?? 0) > 0, facts.bustle?.estimated ?? []);
  const weightless = facts.weight.layers
    .filter((layer) => layer.net === undefined)
    .map((layer) => layer.cloth);
  for (const { name, grams } of facts.weight.stones) if (grams === undefined) weightless.push(name);
  add('cloth-weight', weightless.length > 0, [...new Set(weightless)]);
  return [
    ...missing,
    ...missingForQuote(gown, facts.pricing),
    ...(gown.dates?.event === undefined ? [{ fact: 'event' as const }] : []),
  ];
}

function missingForQuote({ labour }: Gown, { materials, quote, hours }: Pricing): MissingFact[] {
  if (quote === undefined) return [{ fact: 'no-prices' }];
  const missing: MissingFact[] = [];
  if (materials.withoutPrice.length > 0) missing.push({ fact: 'price', names: materials.withoutPrice });
  if (materials.withoutLength.length > 0) missing.push({ fact: 'lay', names: materials.withoutLength });
  const worked = hours !== undefined && hours.tasks.length > 0;
  if (labour?.rate === undefined) missing.push({ fact: 'rate' });
  if (!worked) missing.push({ fact: 'hours' });
  if (quote !== undefined && labour?.fittingsIncluded === undefined)
    missing.push({ fact: 'fittings-included' });
  if (quote !== undefined && labour?.expires === undefined) missing.push({ fact: 'expires' });
  return missing;
}
