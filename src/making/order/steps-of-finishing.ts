import type { Layer } from '../../gown/layer.ts';
import type { MakingFacts } from '../making-facts.ts';
import { step, type UnplacedStep } from './step.ts';
import { cutId, type StepId, togetherId } from './step-id.ts';
import { gatherId } from './steps-of-seams.ts';

/** Pieces that finish an edge or an opening are made up before they are sewn on. */
export function finishingSteps(facts: MakingFacts): UnplacedStep[] {
  return [...facts.bench.gown.layers.flatMap(facingSteps), ...ownWaistSteps(facts)];
}

/** A skirt that is sewn to no bodice: its layers, basted as one, and what finishes them. */
function ownWaistSteps({ bench: { gown, skirt }, grams }: MakingFacts): UnplacedStep[] {
  const { waist, layers } = gown;
  if (waist === undefined) return [];
  const names = layers.map(({ name }) => name);
  return [
    step(
      togetherId('waist', names),
      [
        ...names.map((name): StepId => `seams:${name}`),
        ...names.map(gatherId),
        togetherId('baste', names),
        'finish-opening',
        'close',
        ...(waist.layer === undefined ? [] : [cutId(waist.layer)]),
      ],
      {
        kind: 'own-waist',
        layers: names,
        finish: waist.finish,
        shaped: waist.upper !== undefined,
        width: waist.width,
        overlap: waist.overlap,
        sewn: skirt.waist,
        grams,
      },
      { before: ['hang'] },
    ),
  ];
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
