import type { LayerDraft, LayerDrafts } from '../draft/draft-layers.ts';
import type { Spec } from '../gown-file/spec.ts';
import type { BustleFacts } from '../making/bustle/bustle-facts.ts';
import type { ClosureFacts } from '../making/closure/closure-facts.ts';
import type { Skirt } from '../making/skirt.ts';
import { bendingLengthOf } from './bending-lengths.ts';
import { clothOfGown, type GownHung, type GownToHang } from './cloth-of-gown.ts';
import type { HangTask } from './hung-gown.ts';
import type { Tie } from './sewn-cloth.ts';
import type { ViewExtras } from './views.ts';

/** Shear stiffness over weight, mm: soft beside real cloth (15 m and more), or rows, columns and shear would lock. */
const SHEAR_LENGTH = 5000;

/** The outermost layer that goes all round: what is seen. */
function outermostLayer({ layers }: LayerDrafts): LayerDraft | undefined {
  return layers.findLast(({ layer }) => layer.gores === undefined) ?? layers[layers.length - 1];
}

/** The one place where hanging reads the gown as it is drafted. */
function gownToHang(spec: Spec, drafts: LayerDrafts, skirt: Skirt): GownToHang | undefined {
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

/** A gown's task for the thread that hangs it; undefined where no layer goes all round. */
export function hangTask(
  spec: Spec,
  drafts: LayerDrafts,
  { skirt, closure, bustle }: Made,
): HangTask | undefined {
  const gown = gownToHang(spec, drafts, skirt);
  if (gown === undefined) return undefined;
  const sewn = clothOfGown(gown);
  const opening = openingOf(sewn, closure);
  const edging = spec.edging?.depth;
  const { waistHeight } = sewn;
  return {
    layer: outermostLayer(drafts)!.layer.name,
    notHung: notHung(spec, drafts),
    sewn,
    extras: {
      wearer: { waistHeight, heel: gown.heel, waist: gown.waist },
      ...(opening === undefined ? {} : { opening }),
      ...(edging === undefined ? {} : { edging }),
    },
    ties: bustle === undefined ? [] : tiesOf(sewn, bustle),
  };
}

/** Parts that are sewn to the gown and hang otherwise than it: the drawing shows the skirt without them. */
function notHung({ flounces, tiers, godets, overskirts }: Spec, drafts: LayerDrafts): string[] {
  const outer = outermostLayer(drafts)?.layer;
  return [
    ...(flounces ?? []).map(({ name }) => name),
    ...(tiers ?? []).map(({ name }) => name),
    ...(godets ?? []).map(({ name }) => name),
    ...(overskirts ?? []).map(({ name }) => name),
    ...drafts.layers.flatMap(({ layer }) =>
      layer.gores !== undefined && layer.name !== outer?.name ? [layer.name] : [],
    ),
  ];
}

/** What the workroom says of what hangs. */
export interface Made {
  readonly skirt: Skirt;
  readonly closure: ClosureFacts | undefined;
  readonly bustle: BustleFacts | undefined;
}

function openingOf(sewn: GownHung, closure: ClosureFacts | undefined): ViewExtras['opening'] {
  if (closure?.stops === undefined) return undefined;
  const columns = sewn.seams.filter(({ station }) => sewn.stationNames[station] === closure.at);
  // Of two seams of one name the left one comes first.
  const seam = closure.side === 'right' ? columns[columns.length - 1] : columns[0];
  return seam === undefined ? undefined : { column: seam.column, from: closure.starts, to: closure.stops };
}

/** How far a loop on the outside, or a tie on the inside, keeps the cloth off what it is drawn up to, mm. From memory. */
const LOOP_OFF = 12;

function tiesOf({ stations, stationNames, closing }: GownHung, { kind, points }: BustleFacts): Tie[] {
  const outside = kind === 'over' ? LOOP_OFF : -LOOP_OFF;
  return points.flatMap(({ seam, anchor, pickUp, lift }) =>
    stationNames.flatMap((name, station): Tie[] => {
      const again = closing === 'ring' && station === stationNames.length - 1;
      if (name !== seam || again || lift <= 0) return [];
      return [{ column: stations[station]!, anchor, pickUp, outside }];
    }),
  );
}
