import { baggedPairs } from '../hem/bagged-pairs.ts';
import type { MakingFacts } from '../making-facts.ts';
import { step, type UnplacedStep } from './step.ts';
import { type StepId, togetherId } from './step-id.ts';

/** Pleats that have their place: laid once the seams are sewn, as half of them lie in a seam. */
export function foldSteps(facts: MakingFacts): UnplacedStep[] {
  return [...pleatSteps(facts), ...pressSteps(facts)];
}

function pleatSteps(facts: MakingFacts): UnplacedStep[] {
  return facts.bench.skirt.layers.flatMap(({ layer, pleats }) =>
    pleats.map(({ pleat, places, folds }) =>
      step(
        `pleat:${layer.name}:${pleat.name}`,
        [`seams:${layer.name}`],
        { kind: 'pleat', layer: layer.name, pleat, places, folds },
        { before: waistOf(facts, layer.name) },
      ),
    ),
  );
}

/** What is done to a layer's waist edge once it is as long as it is sewn. */
function waistOf({ waist }: MakingFacts, layer: string): StepId[] {
  return waist.groups
    .filter((group) => group.layers.includes(layer))
    .flatMap((group) => [togetherId('baste', group.layers), togetherId('waist', group.layers)]);
}

/** Pleats whose hem comes first are pressed for good once it is sewn. */
function pressSteps({ bench: { skirt }, hems }: MakingFacts): UnplacedStep[] {
  const turned = baggedPairs(hems).map(({ inner, outer }) => togetherId('turn', [inner.layer, outer.layer]));
  return skirt.layers.flatMap(({ layer, pleats }) => {
    const first = pleats.filter(({ pleat }) => pleat.hem === 'first').map(({ pleat }) => pleat.name);
    if (first.length === 0) return [];
    return [
      step(
        `press-pleats:${layer.name}`,
        ['trim', `hem:${layer.name}`, ...turned],
        { kind: 'press-pleats', layer: layer.name, pleats: first },
        { before: ['fit'] },
      ),
    ];
  });
}
