import type { GownDraft } from '../draft/draft-gown.ts';
import { lengthOfRun } from '../geometry/length.ts';
import type { Fullness } from '../gown/cloth.ts';
import type { Layer } from '../gown/layer.ts';
import { fullnessOf } from '../gown/lines-of-layer.ts';

/** How full a piece is at its top, and by what; undefined where it is sewn flat. */
export interface TopFullness {
  readonly ratio: number;
  readonly rule: Fullness;
  /** Length of the top as cut and as sewn, mm. */
  readonly cut: number;
  readonly sewn: number;
}

export function topFullness(layer: Layer, draft: GownDraft, index: number): TopFullness | undefined {
  const rule = layer.fullness ?? draft.gown.gores[index]?.fullness;
  if (rule === undefined) return undefined;
  const ratio = fullnessOf(draft.gown.gores[index]!, draft.shape);
  const cut = lengthOfRun(draft.pieces[index]!.edges[0]!.curves);
  return { ratio, rule, cut, sewn: cut / ratio };
}
