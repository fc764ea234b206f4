import type { Layer } from '../../gown/layer.ts';
import type { MakingFacts } from '../making-facts.ts';
import { step, type UnplacedStep } from './step.ts';
import { cutId } from './step-id.ts';

/** Pieces that finish an edge or an opening are made up before they are sewn on. */
export function finishingSteps({ bench: { gown } }: MakingFacts): UnplacedStep[] {
  return gown.layers.flatMap(facingSteps);
}

function facingSteps({ name, facing }: Layer): UnplacedStep[] {
  if (facing === undefined) return [];
  const { layer, depth } = facing;
  return [
    step(
      `facing:${name}`,
      [cutId(layer), 'mark'],
      { kind: 'facing', facing: layer.name, faces: name, depth },
      { before: [`hem:${name}`] },
    ),
  ];
}
