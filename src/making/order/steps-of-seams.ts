import type { Gore } from '../../gown/lines.ts';
import type { MakingFacts } from '../making-facts.ts';
import { seamsByName } from '../skirt.ts';
import { step, type UnplacedStep } from './step.ts';
import type { StepId } from './step-id.ts';
import { openPockets, openSlits } from './steps-of-finishing.ts';
import { alongSeams, gapOf, stepStrip } from './steps-on-cloth.ts';
import type { OpenSeam } from './work-to-waist.ts';

/** Each layer by itself: its seams, what is let into them or sewn along them, its fullness. */
export function layerSteps(facts: MakingFacts): UnplacedStep[] {
  return [...seamSteps(facts), ...godetSteps(facts), ...gatherSteps(facts), ...seamStrips(facts)];
}

function seamSteps({ bench, closure }: MakingFacts): UnplacedStep[] {
  const { skirt } = bench;
  return skirt.layers.flatMap(({ layer, seams, godets }) => {
    if (seams.length === 0) return [];
    const own = seams.some((seam) => seam.name === closure?.at);
    const openAbove: OpenSeam | undefined =
      closure !== undefined && own ? { at: closure.at, side: closure.side, stops: closure.stops } : undefined;
    const neighbours = seams.flatMap((seam) => seam.withLayer ?? []);
    return [
      step(`seams:${layer.name}`, ['stay-edges', ...neighbours.map((name): StepId => `seams:${name}`)], {
        kind: 'sew-seams',
        layer: layer.name,
        french: layer.seams === 'french',
        bias: layer.grain === 'bias',
        stretch: (layer.cloth.stretch ?? false) || layer.shape.smallerAcross > 0,
        seams: seamsByName(seams),
        openAbove,
        gap: gapOf(layer),
        godets: godets.map(({ name, seam, from }) => ({ name, seam, from })),
        slits: openSlits(bench).filter(({ seam }) => seams.some(({ name }) => name === seam)),
        pockets: layer === bench.gown.layers.at(-1) ? openPockets(bench) : [],
      }),
    ];
  });
}

function godetSteps({ bench: { skirt } }: MakingFacts): UnplacedStep[] {
  return skirt.layers.flatMap(({ layer, godets }) =>
    godets.map(({ name, seam, copies, side }) =>
      step(
        `godet:${layer.name}:${name}`,
        [`seams:${layer.name}`],
        { kind: 'godet', layer: layer.name, name, seam, copies, side },
        { before: ['hang'] },
      ),
    ),
  );
}

/** Layers whose waist edge is longer than what it is sewn to. */
function gatherSteps({ bench: { gown, skirt } }: MakingFacts): UnplacedStep[] {
  return skirt.layers.flatMap(({ layer, clothAtWaist, waist, gores, pleatedTops }) => {
    const ofGore = gown.gores.find((gore) => gores.includes(gore.name) && isGathered(gore));
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

/** What is sewn along the waist edge or a seam, other than the tapes that stay an edge from the start. */
function seamStrips({ strips }: MakingFacts): UnplacedStep[] {
  return alongSeams(strips).map((strip, i) =>
    step(
      `strip-along:${strip.layer}/${i + 1}`,
      [`seams:${strip.layer}`, gatherId(strip.layer)],
      { kind: 'strip', strip: stepStrip(strip) },
      { before: ['hang'] },
    ),
  );
}

/** Darts take a gore's fullness away before its seams are sewn. */
export function isGathered({ fullness }: Pick<Gore, 'fullness'>): boolean {
  return fullness !== undefined && fullness.by !== 'darts';
}

export function gatherId(layer: string): StepId {
  return `gather:${layer}`;
}
