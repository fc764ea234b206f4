import type { Overskirt } from '../../gown/gown.ts';
import type { Flounce } from '../../gown/parts.ts';
import type { StoneFacts } from '../../stones/stone-facts.ts';
import type { MakingFacts } from '../making-facts.ts';
import { step, type UnplacedStep } from './step.ts';
import { cutId } from './step-id.ts';

/**
 * What is sewn to the skirt or worn with it. It all hangs with the gown, because its weight draws the skirt down; its
 * own hem is levelled, cut and closed only after that.
 */
export function partSteps({ bench: { gown }, stones }: MakingFacts): UnplacedStep[] {
  return [
    ...gown.tiers.map((tiers) =>
      step(
        `tiers:${tiers.name}`,
        [cutId(tiers.layer), ...(tiers.yokeLayer ? [cutId(tiers.yokeLayer)] : []), 'mark'],
        { kind: 'tiers', tiers },
        { before: ['hang'] },
      ),
    ),
    ...gown.flounces.flatMap((flounce) => flounceSteps(flounce, gown.wrap !== undefined)),
    ...gown.overskirts.flatMap(overskirtSteps),
    ...stones.map(stoneStep),
  ];
}

/** They go on across sewn and pressed seams, before the gown hangs: their weight draws it down. */
function stoneStep({ stones, count, gross }: StoneFacts): UnplacedStep {
  const { name, layer, offSeat, places, motif } = stones;
  const isMotif = motif !== undefined || places !== undefined;
  return step(
    `stones:${name}`,
    [`seams:${layer.name}`],
    {
      kind: 'set-stones',
      name,
      layer: layer.name,
      count,
      ...(isMotif ? {} : { gross }),
      scattered: places === undefined,
      seat: offSeat !== undefined || places !== undefined,
    },
    { before: ['hang'] },
  );
}

function flounceSteps(flounce: Flounce, open: boolean): UnplacedStep[] {
  const { name, layer, sewnTo } = flounce;
  return [
    step(
      `flounce:${name}`,
      [cutId(layer), 'mark', `seams:${sewnTo.name}`],
      { kind: 'flounce', flounce, open },
      { before: ['hang'] },
    ),
    step(
      `flounce-hem:${name}`,
      ['trim', `flounce:${name}`],
      { kind: 'part-hem', name, layers: [{ name, finish: layer.hem }] },
      { before: ['fit'] },
    ),
  ];
}

function overskirtSteps(overskirt: Overskirt): UnplacedStep[] {
  const { name, gown } = overskirt;
  return [
    step(
      `overskirt:${name}`,
      [...gown.layers.map(cutId), ...(gown.edgeFacing ? [cutId(gown.edgeFacing.layer)] : []), 'mark'],
      { kind: 'overskirt', overskirt },
      { before: ['hang'] },
    ),
    step(
      `overskirt-hem:${name}`,
      ['trim', `overskirt:${name}`],
      {
        kind: 'part-hem',
        name,
        layers: gown.layers.map((layer) => ({ name: layer.name, finish: layer.hem })),
      },
      { before: ['fit'] },
    ),
  ];
}

/** A layer with a flounce sewn to its hem has no hem of its own to close. */
export function hasFlounceAtHem({ bench: { gown } }: MakingFacts, layer: string): boolean {
  return gown.flounces.some(({ sewnTo, aboveHem }) => sewnTo.name === layer && aboveHem === 0);
}
