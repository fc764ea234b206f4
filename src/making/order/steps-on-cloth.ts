import type { Cloth } from '../../gown/cloth.ts';
import { finishingLayers } from '../../gown/finishing.ts';
import type { Gown } from '../../gown/gown.ts';
import type { Layer } from '../../gown/layer.ts';
import type { MakingFacts, UnplacedStep } from '../making-facts.ts';
import type { StripFacts } from '../supplies/strip-facts.ts';
import type { CautionKind, GapMark, StepStrip } from './step.ts';

/** From the scraps to the marked pieces. */
export function clothSteps(facts: MakingFacts): UnplacedStep[] {
  const cloths = clothsUsed(facts.bench.gown);
  const steps: UnplacedStep[] = [
    step('test-scraps', [], {
      kind: 'test-scraps',
      cloths: cloths.map(({ name, weave, shrinkage }) => ({ name, weave, shrinkage })),
    }),
  ];
  for (const { name, shrinkage } of cloths) {
    if (shrinkage > 0)
      steps.push(step(`shrink:${name}`, ['test-scraps'], { kind: 'shrink', cloth: name, shrinkage }));
  }
  const own = facts.edging?.own;
  if (own !== undefined && facts.edging !== undefined) {
    steps.push(
      step('cut-own-edges', ['test-scraps', `shrink:${own.cloth}`], {
        kind: 'cut-own-edges',
        cloth: own.cloth,
        edging: facts.edging.name,
        depth: facts.edging.depth,
      }),
    );
  }
  return [...steps, ...cutSteps(facts), ...partCuts(facts), markStep(facts), stayStep(facts)];
}

/** Of its layers, its parts, what is drafted above its waist, and its overskirts, each once. */
function clothsUsed(gown: Gown): Cloth[] {
  const { layers, flounces, tiers, overskirts, askedBodice, straps, capes } = gown;
  const all = [
    ...layers,
    ...finishingLayers(gown),
    ...[...flounces, ...tiers, ...straps].map(({ layer }) => layer),
    ...(askedBodice?.layers ?? []),
    ...capes.flatMap((cape) => cape.layers),
    ...overskirts.flatMap((overskirt) => [...overskirt.gown.layers, ...finishingLayers(overskirt.gown)]),
  ];
  return [...new Map(all.map(({ cloth }) => [cloth.name, cloth])).values()];
}

function cutSteps({ bench: { gown }, hems, edging }: MakingFacts): UnplacedStep[] {
  return gown.layers.map(({ name, cloth, shape }, index) => {
    const fromOwnEdges = edging?.own?.cloth === cloth.name ? ['cut-own-edges'] : [];
    const cautions: CautionKind[] = [
      ...(index === 0 ? (['floor-cutting', 'blades'] as const) : []),
      ...(isSequinned(cloth) ? (['sequins'] as const) : []),
    ];
    return step(
      `cut:${name}`,
      ['test-scraps', `shrink:${cloth.name}`, ...fromOwnEdges],
      {
        kind: 'cut',
        layer: name,
        cloth: cloth.name,
        oneWay: cloth.oneWay,
        stretch: (cloth.stretch ?? false) || shape.smallerAcross > 0 || shape.smallerAlong > 0,
        slippery: isSheer(cloth),
        roughCut: byDepth(hems[index]!.roughCut),
      },
      cautions,
    );
  });
}

/** Flounces, strips and finishing pieces; godets are cut with their layers. */
function partCuts({ bench: { gown } }: MakingFacts): UnplacedStep[] {
  const parts = [
    ...gown.flounces.map(({ layer, kind }) => ({ layer, strips: kind === 'straight' })),
    ...gown.tiers.map(({ layer }) => ({ layer, strips: true })),
    ...finishingLayers(gown).map((layer) => ({ layer, strips: false })),
  ];
  return parts.map(({ layer: { name, cloth }, strips }) =>
    step(`cut:${name}`, ['test-scraps', `shrink:${cloth.name}`], {
      kind: 'cut-part',
      name,
      cloth: cloth.name,
      strips,
    }),
  );
}

function byDepth(
  cuts: readonly { readonly gore: string; readonly depth: number }[],
): { gores: string[]; depth: number }[] {
  const depths = [...new Set(cuts.map((cut) => cut.depth))];
  return depths.map((depth) => ({
    depth,
    gores: cuts.filter((cut) => cut.depth === depth).map((cut) => cut.gore),
  }));
}

function markStep({ bench: { gown }, closure, bustle }: MakingFacts): UnplacedStep {
  const layers = gown.layers.map(({ name }) => name);
  const zipEnds =
    closure?.stops === undefined
      ? undefined
      : { at: closure.at, starts: closure.starts, stops: closure.stops };
  return step(
    'mark',
    [...gown.layers, ...gown.flounces, ...gown.tiers, ...finishingLayers(gown)].map(
      ({ name }) => `cut:${name}`,
    ),
    {
      kind: 'mark',
      layers,
      sheers: gown.layers.filter(({ cloth }) => isSheer(cloth)).map(({ name }) => name),
      zipEnds,
      gaps: gown.layers.flatMap((layer) => gapOf(layer) ?? []),
      bustle: bustle?.points ?? [],
    },
  );
}

function stayStep({ bench: { gown }, strips }: MakingFacts): UnplacedStep {
  const tapes = strips.filter((strip) => strip.kind === 'stay-tape' && strip.along !== 'hem').map(stepStrip);
  return step('stay-edges', ['mark'], {
    kind: 'stay-edges',
    layers: gown.layers.map(({ name }) => name),
    tapes,
  });
}

export function gapOf({ name, gap }: Layer): GapMark | undefined {
  return gap === undefined ? undefined : { layer: name, at: gap.at, length: gap.length, from: gap.from };
}

export function stepStrip({ kind, layer, along, width, length }: StripFacts): StepStrip {
  return { kind, layer, along, width, length: length.length, drawnIn: length.drawnIn };
}

/** Cloth that is marked inside its allowance and cut on paper, by its weave or its name. */
export function isSheer({ name, weave = '' }: Pick<Cloth, 'name' | 'weave'>): boolean {
  return /organza|chiffon|georgette|tulle|voile|\bnet\b|sheer/i.test(`${weave} ${name}`);
}

export function isNet({ name, weave = '' }: Pick<Cloth, 'name' | 'weave'>): boolean {
  return /tulle|\bnet\b|netting/i.test(`${weave} ${name}`);
}

function isSequinned({ name, weave = '' }: Pick<Cloth, 'name' | 'weave'>): boolean {
  return /sequin|bead|paillette/i.test(`${weave} ${name}`);
}

export function step(
  id: string,
  after: readonly string[],
  work: UnplacedStep['work'],
  cautions: readonly CautionKind[] = [],
  hold = false,
): UnplacedStep {
  return { id, after, work, cautions, hold };
}
