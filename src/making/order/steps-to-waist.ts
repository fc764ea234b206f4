import type { Fullness } from '../../gown/cloth.ts';
import type { MakingFacts } from '../making-facts.ts';
import type { WaistGroup } from '../waist/waist-facts.ts';
import { step, type UnplacedStep } from './step.ts';
import { cutId, type StepId, togetherId } from './step-id.ts';
import { BODICE_READY } from './steps-of-bodice.ts';
import { gatherId } from './steps-of-seams.ts';

/** From the opening to the waist stay. */
export function waistSteps(facts: MakingFacts): UnplacedStep[] {
  return [
    ...openingFinish(facts),
    ...basteSteps(facts),
    ...closeStep(facts),
    ...joinSteps(facts),
    ...stayStep(facts),
  ];
}

/**
 * Beside a finished or laced bodice edge the skirt's raw edges are finished before they are joined to it, and wherever
 * the spec says with what.
 */
function openingFinish({ closure, bench: { gown } }: MakingFacts): UnplacedStep[] {
  if (closure === undefined || (closure.beside === 'sewn' && closure.finish === undefined)) return [];
  const piece = gown.closure?.piece;
  return [
    step(
      'finish-opening',
      [
        ...closure.takes.map((name): StepId => `seams:${name}`),
        ...(piece === undefined ? [] : [cutId(piece.layer)]),
      ],
      {
        kind: 'finish-opening',
        piece: piece?.layer.name,
        at: closure.at,
        side: closure.side,
        finish: closure.finish,
        beside: closure.beside,
        stops: closure.stops,
      },
    ),
  ];
}

/** Layers that are handled as one are basted together along the waist, and along the opening where it takes them. */
function basteSteps({ waist, closure }: MakingFacts): UnplacedStep[] {
  return waist.groups
    .filter((group) => group.layers.length > 1)
    .map((group) => {
      const takesAll = closure !== undefined && group.layers.every((name) => closure.takes.includes(name));
      return step(
        togetherId('baste', group.layers),
        group.layers.flatMap((name): StepId[] => [`seams:${name}`, gatherId(name)]),
        {
          kind: 'baste-as-one',
          layers: group.layers,
          at: takesAll ? closure.at : undefined,
          side: takesAll ? closure.side : undefined,
          stops: takesAll ? closure.stops : undefined,
        },
      );
    });
}

function closeStep({ waist, closure }: MakingFacts): UnplacedStep[] {
  if (closure === undefined) return [];
  const basted = waist.groups.filter((group) => group.layers.some((name) => closure.takes.includes(name)));
  return [
    step(
      'close',
      [
        ...closure.takes.map((name): StepId => `seams:${name}`),
        ...basted.map((group) => togetherId('baste', group.layers)),
        'finish-opening',
      ],
      {
        kind: 'close',
        closure: closure.kind,
        at: closure.at,
        side: closure.side,
        layers: closure.takes,
        starts: closure.starts,
        stops: closure.stops,
        zip: closure.zip,
      },
    ),
  ];
}

/** Outermost first; each next group is laid over the seam before it. */
function joinSteps({ waist, bench: { gown } }: MakingFacts): UnplacedStep[] {
  if (gown.waist !== undefined) return [];
  const layerNamed = (name: string) => gown.layers.find((layer) => layer.name === name)!;
  const isFullBy = (name: string, by: Fullness['by']): boolean => {
    const own = layerNamed(name);
    if (own.fullness !== undefined) return own.fullness.by === by;
    return gown.gores.some((gore) => own.gores.includes(gore.name) && gore.fullness?.by === by);
  };
  const isCutSmaller = (name: string): boolean => layerNamed(name).shape.smallerAcross > 0;
  return waist.groups.map((group, index) => {
    const before = waist.groups[index - 1];
    return step(
      waistId(group),
      [
        ...group.layers.map((name): StepId => `seams:${name}`),
        togetherId('baste', group.layers),
        ...group.layers.map(gatherId),
        'close',
        BODICE_READY,
        ...(before ? [waistId(before)] : []),
      ],
      {
        kind: 'join-waist',
        layers: group.layers,
        plies: group.plies.together,
        crossing: group.plies.atCrossings,
        clearance: waist.clearance,
        secondRow: waist.secondRow,
        panelled: gown.bodice.panelled,
        gathered: group.layers.filter((name) => isFullBy(name, 'gathers')),
        pleated: group.layers.filter((name) => isFullBy(name, 'pleats')),
        stretched: group.layers.filter((name) => isCutSmaller(name)),
      },
    );
  });
}

function stayStep({ bench: { skirt, gown }, waist, grams, closure }: MakingFacts): UnplacedStep[] {
  if (gown.waist !== undefined) return [];
  return [
    step('waist-stay', waist.groups.map(waistId), {
      kind: 'waist-stay',
      length: skirt.waist,
      grams,
      closes: closure !== undefined,
    }),
  ];
}

function waistId(group: WaistGroup): StepId {
  return togetherId('waist', group.layers);
}
