import { goresOnce } from '../../gown/lines.ts';
import { baggedPairs } from '../hem/bagged-pairs.ts';
import type { MakingFacts } from '../making-facts.ts';
import { step, type UnplacedStep } from './step.ts';
import { type StepId, togetherId } from './step-id.ts';

/** Pleats that have their place: laid once the seams are sewn, as half of them lie in a seam. */
export function foldSteps(facts: MakingFacts): UnplacedStep[] {
  return [...dartSteps(facts), ...pleatSteps(facts), ...tuckSteps(facts), ...pressSteps(facts)];
}

/** On the flat pieces, before their seams. */
function dartSteps({ bench: { gown, skirt } }: MakingFacts): UnplacedStep[] {
  return skirt.layers.flatMap(({ layer, gores }) => {
    const darts = goresOnce(gown).flatMap(({ name: gore, fullness }) =>
      gores.includes(gore) ? (fullness?.darts ?? []).map((dart) => ({ ...dart, gore })) : [],
    );
    if (darts.length === 0) return [];
    return [
      step(
        `darts:${layer.name}`,
        ['stay-edges'],
        { kind: 'darts', layer: layer.name, darts },
        { before: [`seams:${layer.name}`] },
      ),
    ];
  });
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

/** Once its seams make a ring, before it hangs: the hem is levelled with the tucks sewn. */
function tuckSteps({ bench: { skirt } }: MakingFacts): UnplacedStep[] {
  return skirt.layers.flatMap(({ layer, flare }) =>
    layer.tucks === undefined
      ? []
      : [
          step(
            `tucks:${layer.name}`,
            [`seams:${layer.name}`],
            {
              kind: 'tucks',
              layer: layer.name,
              tucks: layer.tucks,
              toEase: Math.max(0, flare) * 2 * layer.tucks.width,
            },
            { before: ['hang'] },
          ),
        ],
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
