import { pleatFacts } from '../allowances/pleat-facts.ts';
import type { LayerDraft } from '../draft/draft-layers.ts';
import type { Gown } from '../gown/gown.ts';

/** A pleat that has its place, in one layer, as `report.json` holds it: mm, all round. */
export interface PleatReport {
  readonly name: string;
  readonly layer: string;
  readonly kind: string;
  readonly at: string;
  readonly places: number;
  /** Folds of each, and how deep one fold is. */
  readonly folds: number;
  readonly foldDepth: number;
  /** Cloth across the grain that all of them take. */
  readonly underlay: number;
  /** What they add to the waist edge and to the hem as these are cut, along them. */
  readonly atWaist: number;
  readonly atHem: number;
}

export function pleatReport(gown: Pick<Gown, 'pleats'>, layers: readonly LayerDraft[]): PleatReport[] {
  return layers.flatMap((own) =>
    pleatFacts(gown, own).map(({ pleat, layer, places, folds, underlay, atWaist, atHem }) => ({
      name: pleat.name,
      layer,
      kind: pleat.kind,
      at: pleat.at,
      places,
      folds,
      foldDepth: rounded(pleat.foldDepth),
      underlay: rounded(underlay),
      atWaist: rounded(atWaist),
      atHem: rounded(atHem),
    })),
  );
}

function rounded(length: number): number {
  return Math.round(length * 1e4) / 1e4;
}
