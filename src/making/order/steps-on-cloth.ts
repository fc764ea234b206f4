import type { Cloth } from '../../gown/cloth.ts';
import type { Layer } from '../../gown/layer.ts';
import { isSequinned, isSheer, isSlippery } from '../cloth-kinds.ts';
import { cutLayers } from '../cut-layers.ts';
import type { MakingFacts } from '../making-facts.ts';
import type { StripFacts } from '../supplies/strip-facts.ts';
import { step, type UnplacedStep } from './step.ts';
import { cutId } from './step-id.ts';
import type { RoughCut } from './work-on-cloth.ts';
import type { GapMark, StepStrip } from './work-parts.ts';

/** From the scraps to the marked pieces. */
export function clothSteps(facts: MakingFacts): UnplacedStep[] {
  const cut = cutLayers(facts.bench.gown);
  const cloths = [...new Map(cut.map(({ cloth }) => [cloth.name, cloth])).values()];
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
  return [...steps, ...cutSteps(facts, cut), markStep(facts, cut), stayStep(facts)];
}

/** One for each lay: all that is cut from a cloth is cut together. */
function cutSteps(facts: MakingFacts, layers: readonly Layer[]): UnplacedStep[] {
  const { gown } = facts.bench;
  const stripped = [
    ...gown.flounces.filter(({ kind }) => kind === 'straight'),
    ...gown.tiers,
    ...gown.straps,
  ];
  const strips = new Set(stripped.map(({ layer }) => layer.name));
  return [...new Set(layers.map(cutId))].map((id) => {
    const own = layers.filter((layer) => cutId(layer) === id);
    const { cloth } = own[0]!;
    return step(
      id,
      // A toile that does not fit changes the gores as well: they are sewn to its edge.
      ['toile', 'test-scraps', `shrink:${cloth.name}`, ...ownEdgesFirst(facts, cloth)],
      {
        kind: 'cut',
        cloth: cloth.name,
        layers: own.map(({ name }) => name),
        strips: own.flatMap(({ name }) => (strips.has(name) ? name : [])),
        oneWay: cloth.oneWay,
        bias: own.flatMap(({ name, grain }) => (grain === 'bias' ? name : [])),
        stretch: (cloth.stretch ?? false) || own.some(isCutSmaller),
        slippery: isSlippery(cloth),
        beaded: isSequinned(cloth),
        roughCut: roughCuts(facts, own),
      },
    );
  });
}

function ownEdgesFirst({ edging }: MakingFacts, cloth: Cloth): readonly 'cut-own-edges'[] {
  return edging?.own?.cloth === cloth.name ? ['cut-own-edges'] : [];
}

function isCutSmaller({ shape }: Layer): boolean {
  return shape.smallerAcross > 0 || shape.smallerAlong > 0;
}

/** Gores of one depth together, and layers that have the same of them. */
function roughCuts({ hems }: MakingFacts, layers: readonly Layer[]): RoughCut[] {
  const cuts = layers.flatMap(({ name }) => {
    const own = hems.find(({ layer }) => layer === name)?.roughCut ?? [];
    const depths = [...new Set(own.map(({ depth }) => depth))];
    return depths.map((depth) => ({
      depth,
      layers: [name],
      gores: own.filter((cut) => cut.depth === depth).map(({ gore }) => gore),
    }));
  });
  const alike = new Map<string, RoughCut>();
  for (const cut of cuts) {
    const key = `${cut.depth} ${cut.gores.join('/')}`;
    alike.set(key, { ...cut, layers: [...(alike.get(key)?.layers ?? []), ...cut.layers] });
  }
  return [...alike.values()];
}

function markStep({ bench: { gown }, closure, bustle }: MakingFacts, layers: readonly Layer[]): UnplacedStep {
  const zipEnds =
    closure?.stops === undefined
      ? undefined
      : { at: closure.at, side: closure.side, starts: closure.starts, stops: closure.stops };
  return step('mark', [...new Set(layers.map(cutId))], {
    kind: 'mark',
    layers: gown.layers.map(({ name }) => name),
    sheers: gown.layers.filter(({ cloth }) => isSheer(cloth)).map(({ name }) => name),
    zipEnds,
    gaps: gown.layers.flatMap((layer) => gapOf(layer) ?? []),
    bustle: bustle?.points ?? [],
  });
}

function stayStep({ strips }: MakingFacts): UnplacedStep {
  const tapes = strips.filter(isStayOfEdge).map(stepStrip);
  return step('stay-edges', ['mark'], { kind: 'stay-edges', tapes });
}

/** Stays an edge before it is sewn. */
function isStayOfEdge({ kind, along }: StripFacts): boolean {
  return kind === 'stay-tape' && along !== 'hem';
}

/** What is sewn along the waist edge or a seam, other than the tapes that stay an edge from the start. */
export function alongSeams(strips: readonly StripFacts[]): readonly StripFacts[] {
  return strips.filter((strip) => strip.along !== 'hem' && !isStayOfEdge(strip));
}

export function gapOf({ name, gap }: Layer): GapMark | undefined {
  return gap === undefined ? undefined : { layer: name, at: gap.at, length: gap.length, from: gap.from };
}

export function stepStrip({ kind, layer, along, width, length }: StripFacts): StepStrip {
  return { kind, layer, along, width, length: length.length, drawnIn: length.drawnIn };
}
