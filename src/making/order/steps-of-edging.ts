import { baggedPairs } from '../hem/bagged-pairs.ts';
import type { HemFacts } from '../hem/hem-facts.ts';
import type { MakingFacts } from '../making-facts.ts';
import { step, type UnplacedStep } from './step.ts';
import { togetherId } from './step-id.ts';

/** Less is eased in without a thought, mm. */
const WORTH_SAYING = 1;

/**
 * An edging goes on hems that are closed. Scallops on a raw edge are sewn on first and the cloth is then cut away
 * behind them; how they hang is seen only once they are on.
 */
export function edgingSteps(facts: MakingFacts): UnplacedStep[] {
  const { edging, hems } = facts;
  if (edging === undefined) return [];
  const turned = baggedPairs(hems).map(({ inner, outer }) => togetherId('turn', [inner.layer, outer.layer]));
  const laid = edging.hems.flatMap(({ layer, plan, byGore }): UnplacedStep[] => {
    const cutBehind = hems.some((hem) => hem.layer === layer && isCutBehind(facts, hem));
    return [
      step(
        `edging:${layer}`,
        ['trim', ...(cutBehind ? [] : ([`hem:${layer}`] as const)), ...turned],
        {
          kind: 'edging',
          name: edging.name,
          layer,
          start: edging.start,
          side: edging.side,
          repeats: plan?.repeats,
          ease: plan?.ease,
          curved: byGore.some(({ lap }) => lap >= WORTH_SAYING),
          hollow: [
            ...new Set(byGore.filter(({ easeOuter }) => easeOuter >= WORTH_SAYING).map(({ gore }) => gore)),
          ],
          own: edging.from === 'own-edges',
        },
        { before: ['fit', 'level-scallops'] },
      ),
      ...(cutBehind ? [cutBehindStep(layer, edging.name)] : []),
    ];
  });
  return [...laid, ...(isScalloped(facts) && laid.length > 0 ? [levelScallops(facts, edging.name)] : [])];
}

function cutBehindStep(layer: string, edging: string): UnplacedStep {
  return step(
    `hem:${layer}`,
    [`edging:${layer}`],
    { kind: 'cut-behind', layer, edging },
    { before: ['level-scallops', 'fit'] },
  );
}

function levelScallops({ edging }: MakingFacts, name: string): UnplacedStep {
  return step(
    'level-scallops',
    ['level'],
    { kind: 'level-scallops', edging: name, hang: edging?.scallops },
    { before: ['fit'], hold: true },
  );
}

/** A raw hem under a scalloped edging has no edge of its own in the end. */
export function isCutBehind(facts: MakingFacts, { layer, finish }: HemFacts): boolean {
  return (
    finish === 'raw' && isScalloped(facts) && (facts.edging?.hems.some((own) => own.layer === layer) ?? false)
  );
}

function isScalloped({ bench: { gown } }: MakingFacts): boolean {
  return gown.edging?.scallop !== undefined;
}
