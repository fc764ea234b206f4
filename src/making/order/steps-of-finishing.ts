import type { Layer } from '../../gown/layer.ts';
import { isOneOf } from '../../gown/openings.ts';
import type { Bench } from '../findings.ts';
import type { MakingFacts } from '../making-facts.ts';
import { step, type UnplacedStep } from './step.ts';
import { cutId, type StepId, togetherId } from './step-id.ts';
import { alongSeams } from './steps-on-cloth.ts';
import type { OpenStretch } from './work-to-waist.ts';

/** Pieces that finish an edge or an opening are made up before they are sewn on. */
export function finishingSteps(facts: MakingFacts): UnplacedStep[] {
  return [
    ...facts.bench.gown.layers.flatMap((layer) => facingSteps(layer, `hem:${layer.name}`)),
    ...facts.bench.gown.overskirts.flatMap(({ name, gown }) =>
      gown.layers.flatMap((layer) => facingSteps(layer, `overskirt-hem:${name}`)),
    ),
    ...facts.bench.gown.capes.flatMap(({ name, layers }) =>
      layers.flatMap((layer) => facingSteps(layer, `beside:${name}`)),
    ),
    ...ownWaistSteps(facts),
    ...slitSteps(facts),
    ...pocketSteps(facts),
    ...loopSteps(facts),
    ...biasSteps(facts),
  ];
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
        ...names.map((name): StepId => `gather:${name}`),
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
        overlap: gown.wrap?.overlap ?? waist.overlap,
        wraps: gown.wrap !== undefined,
        sewn: skirt.waist,
        grams,
      },
      { before: ['hang'] },
    ),
  ];
}

function facingSteps({ name, facing }: Layer, before: StepId): UnplacedStep[] {
  if (facing === undefined) return [];
  const { layer, depth } = facing;
  return [
    step(
      `facing:${name}`,
      [cutId(layer), 'mark'],
      { kind: 'facing', facing: layer.name, faces: name, depth },
      { before: [before] },
    ),
  ];
}

/** Where slits begin, by the skirt's own seam. */
export function openSlits({ gown, skirt }: Bench): OpenStretch[] {
  return gown.slits.map(({ seam, side, aboveHem, belowWaist, stations }) => {
    const long = Math.max(
      0,
      ...skirt.stations
        .filter(({ station }) => stations.some((one) => isOneOf(station, one)))
        .map(({ finished }) => finished),
    );
    return { seam, side, from: aboveHem === undefined ? (belowWaist ?? 0) : long - aboveHem };
  });
}

export function openPockets({ gown }: Bench): OpenStretch[] {
  return gown.pockets.map(({ seam, side, belowWaist, opening }) => ({
    seam,
    side,
    from: belowWaist,
    to: belowWaist + opening,
  }));
}

/** The edges of a slit are faced before the gown hangs; its hem is turned over them when it is closed. */
function slitSteps({ bench }: MakingFacts): UnplacedStep[] {
  const { gown } = bench;
  const stretches = openSlits(bench);
  return gown.slits.map(({ seam, facing, stayLayer }, i) =>
    step(
      `slit:${i + 1}`,
      [
        ...gown.layers.map(({ name }): StepId => `seams:${name}`),
        ...[facing?.layer, stayLayer].flatMap((layer) => (layer === undefined ? [] : [cutId(layer)])),
      ],
      {
        kind: 'slit',
        ...stretches[i]!,
        seam,
        facing: facing === undefined ? undefined : { name: facing.layer.name, depth: facing.depth },
        stay: stayLayer?.name,
      },
      { before: ['hang'] },
    ),
  );
}

/** A bag is sewn to the edges of its opening before the seam is closed above and below it. */
function pocketSteps({ bench }: MakingFacts): UnplacedStep[] {
  const { gown } = bench;
  const outermost = gown.layers.at(-1)!.name;
  const stretches = openPockets(bench);
  return gown.pockets.map(({ layer }, i) =>
    step(
      `pocket:${i + 1}`,
      [cutId(layer), 'mark'],
      { kind: 'pocket', ...stretches[i]!, to: stretches[i]!.to!, layer: layer.name, outermost },
      { before: [`seams:${outermost}`] },
    ),
  );
}

function loopSteps({ bench: { gown } }: MakingFacts): UnplacedStep[] {
  return gown.loops.map(({ layer, count, length, width }) =>
    step(
      `loops:${layer.name}`,
      [cutId(layer)],
      { kind: 'loops', name: layer.name, count, length, width },
      { before: ['fit'] },
    ),
  );
}

/** A binding that is cut from cloth is joined before it goes round its edge. */
function biasSteps({ bench: { gown }, strips }: MakingFacts): UnplacedStep[] {
  return gown.trims.flatMap(({ bias, layer, along }) => {
    const strip = strips.find((one) => one.isCut && one.layer === layer.name && one.along === along);
    if (bias === undefined || strip === undefined) return [];
    const before: StepId[] =
      along === 'hem' ? [`hem:${layer.name}`] : [`strip-along:${layer.name}/${stripNumber(strips, strip)}`];
    return [
      step(
        `bias:${bias.name}`,
        [cutId(bias)],
        {
          kind: 'bias',
          name: bias.name,
          cloth: bias.cloth.name,
          width: strip.width,
          length: strip.length.length * strip.copies,
        },
        { before },
      ),
    ];
  });
}

/** Which of the strips along seams and the waist it is. */
function stripNumber(strips: MakingFacts['strips'], own: MakingFacts['strips'][number]): number {
  return 1 + alongSeams(strips).indexOf(own);
}
