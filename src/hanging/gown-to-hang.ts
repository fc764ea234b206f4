import type { LayerDraft, LayerDrafts } from '../draft/draft-layers.ts';
import type { Gown } from '../gown/gown.ts';
import { hasGore } from '../gown/layer.ts';
import type { Flounce } from '../gown/parts.ts';
import { isSame } from '../gown/station.ts';
import type { BustleFacts } from '../making/bustle/bustle-facts.ts';
import type { ClosureFacts } from '../making/closure/closure-facts.ts';
import type { Skirt } from '../making/skirt.ts';
import { bendingLengthOf } from './bending-lengths.ts';
import { clothOfGown, type GownHung, type GownToHang } from './cloth-of-gown.ts';
import type { GodetToHang } from './gown-panels.ts';
import type { HangTask } from './hung-gown.ts';
import type { Tie } from './sewn-cloth.ts';
import type { ViewExtras } from './views.ts';

/** Shear stiffness over weight, mm: soft beside real cloth (15 m and more), or rows, columns and shear would lock. */
const SHEAR_LENGTH = 5000;

/** The outermost layer that goes all round: what is seen. */
function outermostLayer({ layers }: LayerDrafts): LayerDraft | undefined {
  return layers.findLast(({ layer, draft }) => draft.gown.gores.every((gore) => hasGore(layer, gore)));
}

/** The one place where hanging reads the gown as it is drafted. */
function gownToHang(gown: Gown, drafts: LayerDrafts, skirt: Skirt): GownToHang | undefined {
  const outer = outermostLayer(drafts);
  if (outer === undefined) return undefined;
  const { layer, draft } = outer;
  const { hip } = gown.closure ?? {};
  const flounce = flounceAtHem(gown, layer.name);
  return {
    draft,
    ...(gown.petticoat === undefined ? {} : { petticoat: gown.petticoat }),
    waist: gown.waistSeam,
    ...(hip === undefined ? {} : { hip }),
    floors: draft.gown.stations.map((_, i) => skirt.stations[i % skirt.stations.length]?.floor?.length),
    heel: gown.measuring.wornIn?.heel ?? 0,
    bendingLength: bendingLengthOf(layer.cloth),
    shearLength: SHEAR_LENGTH,
    godets: godetsOf(gown, outer),
    ...(flounce === undefined ? {} : { flounce }),
    pleated: draft.gown.gores.map((gore) => (gore.fullness ?? layer.fullness)?.by === 'pleats'),
  };
}

/** The one flounce that is sewn to the hem itself; those above it hang over the skirt and are not hung. */
function flounceAtHem({ flounces }: Gown, layer: string): Flounce | undefined {
  return flounces.find(({ sewnTo, aboveHem }) => sewnTo.name === layer && aboveHem === 0);
}

function godetsOf({ godets }: Gown, { layer, draft }: LayerDraft): GodetToHang[] {
  return godets
    .filter(({ layers }) => layers.includes(layer.name))
    .flatMap(({ name, from, width, stations }) =>
      stations.map((own) => ({
        station: draft.gown.stations.findIndex((station) => isSame(station, own)),
        name,
        from,
        width,
      })),
    )
    .filter(({ station }) => station >= 0 && draft.lengths[station]! > 0);
}

/** A gown's task for the thread that hangs it; undefined where no layer goes all round. */
export function hangTask(
  gown: Gown,
  drafts: LayerDrafts,
  { skirt, closure, bustle }: Made,
): HangTask | undefined {
  const toHang = gownToHang(gown, drafts, skirt);
  if (toHang === undefined) return undefined;
  const sewn = clothOfGown(toHang);
  const opening = openingOf(sewn, closure);
  const edging = gown.edging?.depth;
  const { waistHeight } = sewn;
  return {
    layer: outermostLayer(drafts)!.layer.name,
    notHung: notHung(gown, drafts),
    sewn,
    extras: {
      wearer: { waistHeight, heel: toHang.heel, waist: toHang.waist },
      ...(opening === undefined ? {} : { opening }),
      ...(edging === undefined ? {} : { edging }),
    },
    ties: bustle === undefined ? [] : tiesOf(sewn, bustle),
  };
}

/** Parts that are sewn to the gown and hang otherwise than it: the drawing shows the skirt without them. */
function notHung(gown: Gown, drafts: LayerDrafts): string[] {
  const { flounces, tiers, overskirts } = gown;
  const outer = outermostLayer(drafts)?.layer;
  const hemFlounce = outer && flounceAtHem(gown, outer.name);
  return [
    ...flounces.filter((own) => own !== hemFlounce).map(({ name }) => name),
    ...tiers.map(({ name }) => name),
    ...overskirts.map(({ name }) => name),
    ...drafts.layers.flatMap(({ layer, draft }) =>
      layer.name !== outer?.name && draft.gown.gores.some((gore) => !hasGore(layer, gore))
        ? [layer.name]
        : [],
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
  const columns = sewn.seams.filter(({ station }) => isSame(sewn.stations[station]!, closure.station));
  // Of two seams of one name the left one comes first.
  const seam = closure.side === 'right' ? columns[columns.length - 1] : columns[0];
  return seam === undefined ? undefined : { column: seam.column, from: closure.starts, to: closure.stops };
}

/** How far a loop on the outside, or a tie on the inside, keeps the cloth off what it is drawn up to, mm. From memory. */
const LOOP_OFF = 12;

function tiesOf({ stations, closing }: GownHung, { kind, points }: BustleFacts): Tie[] {
  const outside = kind === 'over' ? LOOP_OFF : -LOOP_OFF;
  return points.flatMap(({ seam, side, anchor, pickUp, lift }) =>
    stations.flatMap(({ name, side: own, column }, i): Tie[] => {
      const again = closing === 'ring' && i === stations.length - 1;
      const other = name !== seam || (side !== undefined && own !== side);
      return other || again || lift <= 0 ? [] : [{ column, anchor, pickUp, outside }];
    }),
  );
}
