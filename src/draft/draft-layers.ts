import type { Gown, LayerShape } from '../gown/gown.ts';
import type { LayerSpec } from '../gown-file/spec.ts';
import { draftGown, type GownDraft, PLAIN, type Undraftable } from './draft-gown.ts';

/** One layer and the draft of its seam lines. */
export interface LayerDraft {
  readonly layer: LayerSpec;
  readonly draft: GownDraft;
}

/** The gown's own lines and those of every layer; layers of one shape share one draft. */
export interface LayerDrafts {
  readonly gown: GownDraft;
  readonly layers: readonly LayerDraft[];
}

export type LayersUndraftable = Undraftable & { readonly layer?: number };

export function draftLayers(gown: Gown, layers: readonly LayerSpec[]): LayerDrafts | LayersUndraftable {
  const plain = draftGown(gown);
  if ('reason' in plain) return plain;
  const byShape = new Map<string, GownDraft>([[JSON.stringify(PLAIN), plain]]);
  const drafts: LayerDraft[] = [];
  for (const [index, layer] of layers.entries()) {
    const shape = shapeOf(layer);
    const key = JSON.stringify(shape);
    const draft = byShape.get(key) ?? draftGown(gown, shape);
    if ('reason' in draft) return { ...draft, layer: index };
    byShape.set(key, draft);
    drafts.push({ layer, draft });
  }
  return { gown: plain, layers: drafts };
}

function shapeOf(layer: LayerSpec): LayerShape {
  return {
    shorter: layer.shorter,
    smallerAcross: layer.cutSmallerAcross,
    smallerAlong: layer.cutSmallerAlong,
    ...(layer.fullness === undefined
      ? {}
      : { fullness: { ratio: layer.fullness.ratio, where: layer.fullness.where } }),
  };
}
