import { tuckedUp } from '../gown/layer.ts';
import { draftGown } from './draft-gown.ts';
import type { LayerDraft } from './draft-layers.ts';

/** A layer as it hangs, its growth tucks sewn: its lines end where the hem then lies. */
export function tuckedLayer({ layer, draft }: LayerDraft): LayerDraft {
  const by = tuckedUp(layer);
  if (by === 0) return { layer, draft };
  const sewn = draftGown(draft.gown, { ...draft.shape, shorter: draft.shape.shorter + by });
  return 'reason' in sewn ? { layer, draft } : { layer, draft: sewn };
}
