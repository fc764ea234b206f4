import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Units } from '../diagnostics/units.ts';
import { lengthInUnits } from '../diagnostics/value-text.ts';
import type { LayerDraft, LayerDrafts } from '../draft/draft-layers.ts';
import { ANGLE_AGREES, SEAM_AGREES, WAIST_AGREES } from '../geometry/tolerances.ts';
import { halves } from '../gown/lines.ts';
import { type GownMeasures, mayComeToAPoint, measureGown, type SeamMeasures } from './measure-gown.ts';
import { degrees } from './true-gown.ts';
import { layerMissesWaist, notSmooth, seamsDiffer } from './truing-problems.ts';

/** One layer and the figures of its own seam lines. */
export interface LayerMeasures extends LayerDraft {
  readonly measures: GownMeasures;
}

/** Every layer measured; layers of one draft share its figures. */
export function measureLayers(drafts: LayerDrafts, plain: GownMeasures): LayerMeasures[] {
  const known = new Map([[drafts.gown, plain]]);
  return drafts.layers.map(({ layer, draft }) => {
    const measures = known.get(draft) ?? measureGown(draft);
    known.set(draft, measures);
    return { layer, draft, measures };
  });
}

/** Holds every layer that is not cut as the gown itself against the same truths. */
export function trueLayers(
  { units }: { readonly units: Units },
  drafts: LayerDrafts,
  layers: readonly LayerMeasures[],
): Diagnostic[] {
  const plain = { draft: drafts.gown, measures: measureGown(drafts.gown) };
  return layers.flatMap((own, i) => {
    const isFirst = layers.findIndex(({ draft }) => draft === own.draft) === i;
    if (own.draft === drafts.gown || !isFirst) return [];
    const { layer, measures } = own;
    // What the gown's own edge misses by has been said of it.
    const missed = missedAtWaist(own) - missedAtWaist(plain);
    const words = missed > 0 ? 'longer' : 'shorter';
    return [
      ...measures.seams
        .filter(({ gores }) => gores.every((gore) => layer.gores.includes(gore)))
        .flatMap((seam) => trueSeam(own, seam, units)),
      ...(Math.abs(missed) <= WAIST_AGREES
        ? []
        : [layerMissesWaist(layer.place(), layer.name, lengthInUnits(Math.abs(missed), units), words)]),
    ];
  });
}

function trueSeam({ draft, layer }: LayerMeasures, seam: SeamMeasures, units: Units): Diagnostic[] {
  const place = layer.place();
  const [a, b] = seam.lengths;
  const edges = (['hem', 'waist'] as const).filter(
    (edge) =>
      Math.abs(seam[`${edge}Angle`] - Math.PI) > ANGLE_AGREES && !mayComeToAPoint(draft, seam.station, edge),
  );
  const say = (length: number): string => lengthInUnits(length, units);
  return [
    ...(Math.abs(a - b) > SEAM_AGREES ? [seamsDiffer(place, seam, say(a), say(b), layer.name)] : []),
    ...edges.map((edge) => notSmooth[edge](place, seam.name, degrees(seam[`${edge}Angle`]), layer.name)),
  ];
}

/** How much longer a layer's tops are, as sewn, than those that the gown's gores have; mm all round. */
function missedAtWaist({ draft, measures }: Pick<LayerMeasures, 'draft' | 'measures'>): number {
  const tops = draft.gown.gores.reduce((sum, gore) => sum + gore.top, 0) * halves(draft.gown);
  return measures.waist.sewn - tops * (1 - draft.shape.smallerAcross);
}
