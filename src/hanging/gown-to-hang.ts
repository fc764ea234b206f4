import type { LayerDraft, LayerDrafts } from '../draft/draft-layers.ts';
import type { Spec } from '../gown-file/spec.ts';
import type { ClosureFacts } from '../making/closure/closure-facts.ts';
import type { Skirt } from '../making/skirt.ts';
import { bendingLengthOf } from './bending-lengths.ts';
import type { GownToHang } from './cloth-of-gown.ts';
import type { Hang } from './hang.ts';
import type { ViewExtras } from './views.ts';

/** Shear stiffness over weight, mm: soft beside real cloth (15 m and more), or rows, columns and shear would lock. */
const SHEAR_LENGTH = 5000;

/** The outermost layer that goes all round: what is seen. */
export function outermostLayer({ layers }: LayerDrafts): LayerDraft | undefined {
  return layers.findLast(({ layer }) => layer.gores === undefined) ?? layers[layers.length - 1];
}

/** The one place where hanging reads the gown as it is drafted. */
export function gownToHang(spec: Spec, drafts: LayerDrafts, skirt: Skirt): GownToHang | undefined {
  const outer = outermostLayer(drafts);
  if (outer === undefined) return undefined;
  const { layer, draft } = outer;
  const { cloth } = layer;
  const { hip } = spec.closure ?? {};
  return {
    draft,
    ...(spec.petticoat === undefined ? {} : { petticoat: spec.petticoat }),
    waist: spec.bodice.waistSeam,
    ...(hip === undefined ? {} : { hip }),
    floors: draft.gown.stations.map((_, i) => skirt.stations[i % skirt.stations.length]?.floor?.length),
    heel: spec.lengths.wornIn?.heel ?? 0,
    bendingLength: bendingLengthOf(cloth, spec.cloths[cloth]),
    shearLength: SHEAR_LENGTH,
    pleated: spec.gores.map((gore) => (gore.fullness ?? layer.fullness)?.by === 'pleats'),
  };
}

/** What the views show beside the cloth. */
export function viewExtras(spec: Spec, hang: Hang, closure: ClosureFacts | undefined): ViewExtras {
  const opening = openingOf(spec, hang, closure);
  const edging = spec.edging?.depth;
  return {
    wearer: { waistHeight: hang.waistHeight, heel: spec.lengths.wornIn?.heel ?? 0, waist: spec.bodice.waistSeam },
    ...(opening === undefined ? {} : { opening }),
    ...(edging === undefined ? {} : { edging }),
  };
}

function openingOf(spec: Spec, hang: Hang, closure: ClosureFacts | undefined): ViewExtras['opening'] {
  if (closure?.stops === undefined) return undefined;
  const names = hang.stationNames;
  const seams = hang.seams.filter(({ station }) => names[station] === closure.at);
  // Of two seams of one name the left one comes first.
  const seam = closure.side === 'right' && spec.symmetry !== 'none' ? seams[seams.length - 1] : seams[0];
  return seam === undefined ? undefined : { column: seam.column, from: closure.starts, to: closure.stops };
}
