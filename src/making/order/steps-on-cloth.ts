import type { ClothSpec } from '../../gown-file/spec.ts';
import type { MakingFacts, UnplacedStep } from '../making-facts.ts';
import type { StripFacts } from '../supplies/strip-facts.ts';
import type { CautionKind, GapMark, StepStrip } from './step.ts';

/** From the scraps to the marked pieces. */
export function clothSteps(facts: MakingFacts): UnplacedStep[] {
  const { spec } = facts.bench;
  const cloths = [
    ...new Set(
      [
        ...spec.layers,
        ...(spec.flounces ?? []),
        ...(spec.tiers ?? []),
        ...(spec.overskirts ?? []).flatMap((own) => own.layers),
      ].map(({ cloth }) => cloth),
    ),
  ];
  const steps: UnplacedStep[] = [
    step('test-scraps', [], {
      kind: 'test-scraps',
      cloths: cloths.map((name) => ({
        name,
        weave: spec.cloths[name]?.weave,
        shrinkage: spec.cloths[name]?.shrinkage ?? 0,
      })),
    }),
  ];
  for (const name of cloths) {
    const shrinkage = spec.cloths[name]?.shrinkage ?? 0;
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

function cutSteps({ bench: { spec }, hems, edging }: MakingFacts): UnplacedStep[] {
  return spec.layers.map((layer, index) => {
    const cloth = spec.cloths[layer.cloth];
    const fromOwnEdges = edging?.own?.cloth === layer.cloth ? ['cut-own-edges'] : [];
    const cautions: CautionKind[] = [
      ...(index === 0 ? (['floor-cutting', 'blades'] as const) : []),
      ...(isSequinned(layer.cloth, cloth) ? (['sequins'] as const) : []),
    ];
    return step(
      `cut:${layer.name}`,
      ['test-scraps', `shrink:${layer.cloth}`, ...fromOwnEdges],
      {
        kind: 'cut',
        layer: layer.name,
        cloth: layer.cloth,
        oneWay: cloth?.oneWay ?? false,
        stretch: (cloth?.stretch ?? false) || layer.cutSmallerAcross > 0 || layer.cutSmallerAlong > 0,
        slippery: isSheer(layer.cloth, cloth),
        roughCut: byDepth(hems[index]!.roughCut),
      },
      cautions,
    );
  });
}

/** Flounces, strips and godets with the layers that they are cut with. */
function partCuts({ bench: { spec } }: MakingFacts): UnplacedStep[] {
  const parts = [
    ...(spec.flounces ?? []).map(({ name, cloth, kind }) => ({ name, cloth, strips: kind === 'straight' })),
    ...(spec.tiers ?? []).map(({ name, cloth }) => ({ name, cloth, strips: true })),
  ];
  return parts.map(({ name, cloth, strips }) =>
    step(`cut:${name}`, ['test-scraps', `shrink:${cloth}`], { kind: 'cut-part', name, cloth, strips }),
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

function markStep({ bench: { spec }, closure, bustle }: MakingFacts): UnplacedStep {
  const layers = spec.layers.map((layer) => layer.name);
  const zipEnds =
    closure?.stops === undefined
      ? undefined
      : { at: closure.at, starts: closure.starts, stops: closure.stops };
  return step(
    'mark',
    [...layers, ...(spec.flounces ?? []), ...(spec.tiers ?? [])].map((own) =>
      typeof own === 'string' ? `cut:${own}` : `cut:${own.name}`,
    ),
    {
      kind: 'mark',
      layers,
      sheers: spec.layers
        .filter((layer) => isSheer(layer.cloth, spec.cloths[layer.cloth]))
        .map((layer) => layer.name),
      zipEnds,
      gaps: spec.layers.flatMap((layer) => gapOf(layer) ?? []),
      bustle: bustle?.points ?? [],
    },
  );
}

function stayStep({ bench: { spec }, strips }: MakingFacts): UnplacedStep {
  const tapes = strips.filter((strip) => strip.kind === 'stay-tape' && strip.along !== 'hem').map(stepStrip);
  return step('stay-edges', ['mark'], {
    kind: 'stay-edges',
    layers: spec.layers.map((layer) => layer.name),
    tapes,
  });
}

export function gapOf(layer: MakingFacts['bench']['spec']['layers'][number]): GapMark | undefined {
  if (layer.gap === undefined) return undefined;
  return { layer: layer.name, at: layer.gap.at, length: layer.gap.length, from: layer.gap.from };
}

export function stepStrip({ kind, layer, along, width, length }: StripFacts): StepStrip {
  return { kind, layer, along, width, length: length.length, drawnIn: length.drawnIn };
}

/** Cloth that is marked inside its allowance and cut on paper, by its weave or its name. */
export function isSheer(name: string, cloth: ClothSpec | undefined): boolean {
  return /organza|chiffon|georgette|tulle|voile|\bnet\b|sheer/i.test(`${cloth?.weave ?? ''} ${name}`);
}

export function isNet(name: string, cloth: ClothSpec | undefined): boolean {
  return /tulle|\bnet\b|netting/i.test(`${cloth?.weave ?? ''} ${name}`);
}

function isSequinned(name: string, cloth: ClothSpec | undefined): boolean {
  return /sequin|bead|paillette/i.test(`${cloth?.weave ?? ''} ${name}`);
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
