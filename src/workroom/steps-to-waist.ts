import type { MakingFacts, UnplacedStep } from './making-facts.ts';
import type { CautionKind, OpenSeam } from './step.ts';
import { gapOf, step } from './steps-on-cloth.ts';
import type { WaistGroup } from './waist-facts.ts';

/** Plies from which common practice counts a seam as bulky. */
const MANY_PLIES = 6;

/** From the first seam to the waist stay. */
export function bodySteps(facts: MakingFacts): UnplacedStep[] {
  return [
    ...seamSteps(facts),
    ...openingFinish(facts),
    ...basteSteps(facts),
    ...closeStep(facts),
    ...waistSteps(facts),
    stayStep(facts),
  ];
}

function seamSteps({ bench: { spec, skirt }, closure }: MakingFacts): UnplacedStep[] {
  return skirt.layers.map(({ spec: layer, seams }) => {
    const own = seams.some((seam) => seam.name === closure?.at);
    const openAbove: OpenSeam | undefined =
      closure !== undefined && own ? { at: closure.at, side: closure.side, stops: closure.stops } : undefined;
    const neighbours = seams.flatMap((seam) => seam.withLayer ?? []);
    const cloth = spec.cloths[layer.cloth];
    return step(`seams:${layer.name}`, ['stay-edges', ...neighbours.map((name) => `seams:${name}`)], {
      kind: 'sew-seams',
      layer: layer.name,
      french: layer.seams === 'french',
      stretch: (cloth?.stretch ?? false) || layer.cutSmallerAcross > 0,
      seams: seams.map(({ name, copies, withLayer }) => ({ name, copies, withLayer })),
      openAbove,
      gap: gapOf(layer),
    });
  });
}

/** Beside a finished or laced bodice edge the skirt's raw edges are finished before they are joined to it. */
function openingFinish({ closure }: MakingFacts): UnplacedStep[] {
  if (closure === undefined || closure.beside === 'sewn') return [];
  return [
    step(
      'finish-opening',
      closure.takes.map((name) => `seams:${name}`),
      {
        kind: 'finish-opening',
        at: closure.at,
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
        basteId(group),
        group.layers.map((name) => `seams:${name}`),
        {
          kind: 'baste-as-one',
          layers: group.layers,
          at: takesAll ? closure.at : undefined,
          stops: takesAll ? closure.stops : undefined,
        },
      );
    });
}

function closeStep({ waist, closure }: MakingFacts): UnplacedStep[] {
  if (closure === undefined) return [];
  const basted = waist.groups.filter((group) => group.layers.some((name) => closure.takes.includes(name)));
  const cautions: CautionKind[] =
    closure.kind === 'zip' ? ['needle-zip'] : closure.kind === 'hooks' ? ['nickel'] : [];
  return [
    step(
      'close',
      [...closure.takes.map((name) => `seams:${name}`), ...basted.map(basteId), 'finish-opening'],
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
      cautions,
    ),
  ];
}

/** Outermost first; each next group is laid over the seam before it. */
function waistSteps({ waist }: MakingFacts): UnplacedStep[] {
  return waist.groups.map((group, index) => {
    const before = waist.groups[index - 1];
    const cautions: CautionKind[] = [
      ...(waist.bonesEnd === undefined ? [] : (['needle-bone'] as const)),
      ...(group.plies.atCrossings >= MANY_PLIES ? (['many-plies'] as const) : []),
    ];
    return step(
      waistId(group),
      [
        ...group.layers.map((name) => `seams:${name}`),
        basteId(group),
        'close',
        ...(before ? [waistId(before)] : []),
      ],
      {
        kind: 'join-waist',
        layers: group.layers,
        plies: group.plies.together,
        crossing: group.plies.atCrossings,
        clearance: waist.clearance,
        secondRow: waist.secondRow,
      },
      cautions,
    );
  });
}

function stayStep({ bench: { skirt }, waist, grams }: MakingFacts): UnplacedStep {
  return step('waist-stay', waist.groups.map(waistId), { kind: 'waist-stay', length: skirt.waist, grams }, [
    'weight',
  ]);
}

function basteId(group: WaistGroup): string {
  return `baste:${group.layers.join('+')}`;
}

export function waistId(group: WaistGroup): string {
  return `waist:${group.layers.join('+')}`;
}
