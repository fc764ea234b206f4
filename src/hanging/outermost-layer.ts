import type { LayerDraft, LayerDrafts } from '../draft/draft-layers.ts';
import { tuckedLayer } from '../draft/tucked-up.ts';
import { hasGore } from '../gown/layer.ts';

/** The outermost layer that goes all round: what is seen. Where none does, the gown's own lines stand for it. */
export function outermostLayer({ layers, gown }: LayerDrafts): LayerDraft {
  const whole = layers.findLast(({ layer, draft }) => draft.gown.gores.every((gore) => hasGore(layer, gore)));
  return whole === undefined ? { layer: layers[layers.length - 1]!.layer, draft: gown } : tuckedLayer(whole);
}

/** What is worn over the layer that is drawn and is not: a layer of some gores only. */
export function notHung({ layers }: LayerDrafts): string[] {
  const outer = layers.findLastIndex(({ layer, draft }) =>
    draft.gown.gores.every((gore) => hasGore(layer, gore)),
  );
  return layers.slice(outer < 0 ? layers.length : outer + 1).map(({ layer }) => layer.name);
}
