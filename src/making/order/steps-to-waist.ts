import type { MakingFacts, UnplacedStep } from '../making-facts.ts';
import { seamsByName } from '../skirt.ts';
import type { WaistGroup } from '../waist/waist-facts.ts';
import type { CautionKind, OpenSeam } from './step.ts';
import { BODICE_READY } from './steps-of-bodice.ts';
import { gapOf, step } from './steps-on-cloth.ts';

/** Plies from which common practice counts a seam as bulky. */
const MANY_PLIES = 6;

/** From the first seam to the waist stay. */
export function bodySteps(facts: MakingFacts): UnplacedStep[] {
  return [
    ...seamSteps(facts),
    ...godetSteps(facts),
    ...pleatSteps(facts),
    ...gatherSteps(facts),
    ...partSteps(facts),
    ...openingFinish(facts),
    ...basteSteps(facts),
    ...closeStep(facts),
    ...waistSteps(facts),
    stayStep(facts),
  ];
}

function seamSteps({ bench: { skirt }, closure }: MakingFacts): UnplacedStep[] {
  return skirt.layers.flatMap(({ layer, seams, godets }) => {
    if (seams.length === 0) return [];
    const own = seams.some((seam) => seam.name === closure?.at);
    const openAbove: OpenSeam | undefined =
      closure !== undefined && own ? { at: closure.at, side: closure.side, stops: closure.stops } : undefined;
    const neighbours = seams.flatMap((seam) => seam.withLayer ?? []);
    return [
      step(`seams:${layer.name}`, ['stay-edges', ...neighbours.map((name) => `seams:${name}`)], {
        kind: 'sew-seams',
        layer: layer.name,
        french: layer.seams === 'french',
        stretch: (layer.cloth.stretch ?? false) || layer.shape.smallerAcross > 0,
        seams: seamsByName(seams),
        openAbove,
        gap: gapOf(layer),
        godets: godets.map(({ name, seam, from }) => ({ name, seam, from })),
      }),
    ];
  });
}

function godetSteps({ bench: { skirt } }: MakingFacts): UnplacedStep[] {
  return skirt.layers.flatMap(({ layer, godets }) =>
    godets.map(({ name, seam, copies, side }) =>
      step(`godet:${layer.name}:${name}`, [`seams:${layer.name}`], {
        kind: 'godet',
        layer: layer.name,
        name,
        seam,
        copies,
        side,
      }),
    ),
  );
}

/** Laid once the seams are sewn: half of them lie in a seam. */
function pleatSteps({ bench: { skirt } }: MakingFacts): UnplacedStep[] {
  return skirt.layers.flatMap(({ layer, pleats }) =>
    pleats.map(({ pleat, places, folds }) =>
      step(`pleat:${layer.name}:${pleat.name}`, [`seams:${layer.name}`], {
        kind: 'pleat',
        layer: layer.name,
        pleat,
        places,
        folds,
      }),
    ),
  );
}

/** What must be done to a layer before its waist edge is sewn. */
function laidIds({ bench: { skirt } }: MakingFacts, name: string): string[] {
  const own = skirt.layers.find(({ layer }) => layer.name === name);
  return (own?.pleats ?? []).map(({ pleat }) => `pleat:${name}:${pleat.name}`);
}

/** Layers whose waist edge is longer than what it is sewn to. */
function gatherSteps({ bench: { gown, skirt } }: MakingFacts): UnplacedStep[] {
  return skirt.layers.flatMap(({ layer, clothAtWaist, waist, gores, pleatedTops }) => {
    const ofGore = gown.gores.find((gore) => gores.includes(gore.name) && gore.fullness !== undefined);
    const fullness = layer.fullness ?? ofGore?.fullness;
    if (fullness === undefined) return [];
    return [
      step(gatherId(layer.name), [`seams:${layer.name}`], {
        kind: 'gather',
        layer: layer.name,
        fullness,
        folds: pleatedTops,
        cloth: clothAtWaist,
        edge: waist,
      }),
    ];
  });
}

/** Tiers are a petticoat of their own; an overskirt is made by itself and comes to the last fitting. */
function partSteps({ bench: { gown } }: MakingFacts): UnplacedStep[] {
  return [
    ...gown.tiers.map((tiers) =>
      step(`tiers:${tiers.name}`, [`cut:${tiers.name}`, 'mark'], { kind: 'tiers', tiers }),
    ),
    ...gown.overskirts.map((overskirt) =>
      step(`overskirt:${overskirt.name}`, ['mark'], { kind: 'overskirt', overskirt }),
    ),
  ];
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
function basteSteps(facts: MakingFacts): UnplacedStep[] {
  const { waist, closure } = facts;
  return waist.groups
    .filter((group) => group.layers.length > 1)
    .map((group) => {
      const takesAll = closure !== undefined && group.layers.every((name) => closure.takes.includes(name));
      return step(
        basteId(group),
        group.layers.flatMap((name) => [`seams:${name}`, gatherId(name), ...laidIds(facts, name)]),
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
function waistSteps(facts: MakingFacts): UnplacedStep[] {
  const {
    waist,
    bench: { gown },
  } = facts;
  const layerNamed = (name: string) => gown.layers.find((layer) => layer.name === name)!;
  const isGathered = (name: string): boolean =>
    layerNamed(name).fullness !== undefined || gown.gores.some((gore) => gore.fullness !== undefined);
  const isCutSmaller = (name: string): boolean => layerNamed(name).shape.smallerAcross > 0;
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
        ...group.layers.flatMap((name) => [gatherId(name), ...laidIds(facts, name)]),
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
        gathered: group.layers.filter((name) => isGathered(name)),
        stretched: group.layers.filter((name) => isCutSmaller(name)),
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

function gatherId(layer: string): string {
  return `gather:${layer}`;
}

function basteId(group: WaistGroup): string {
  return `baste:${group.layers.join('+')}`;
}

export function waistId(group: WaistGroup): string {
  return `waist:${group.layers.join('+')}`;
}
