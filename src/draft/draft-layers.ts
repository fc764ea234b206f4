import { type Layer, PLAIN } from '../gown/layer.ts';
import type { GownLines } from '../gown/lines.ts';
import { draftGown, type GownDraft } from './draft-gown.ts';
import type { Undraftable } from './undraftable.ts';

/** One layer and the draft of its seam lines. */
export interface LayerDraft {
  readonly layer: Layer;
  readonly draft: GownDraft;
}

/** The gown's own lines and those of every layer; layers of one shape share one draft. */
export interface LayerDrafts {
  readonly gown: GownDraft;
  readonly layers: readonly LayerDraft[];
}

export type LayersUndraftable = Undraftable & { readonly layer?: Layer };

export function draftLayers(gown: GownLines, layers: readonly Layer[]): LayerDrafts | LayersUndraftable {
  const plain = draftGown(gown);
  if ('reason' in plain) return plain;
  const byShape = new Map<string, GownDraft>([[JSON.stringify(PLAIN), plain]]);
  const drafts: LayerDraft[] = [];
  for (const layer of layers) {
    const key = JSON.stringify(layer.shape);
    const draft = byShape.get(key) ?? draftGown(gown, layer.shape);
    if ('reason' in draft) return { ...draft, layer };
    byShape.set(key, draft);
    drafts.push({ layer, draft });
  }
  return { gown: plain, layers: drafts };
}
