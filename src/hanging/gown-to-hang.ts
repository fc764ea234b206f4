import { topFullness } from '../allowances/top-fullness.ts';
import type { DraftedBodice } from '../bodice/draft-asked.ts';
import type { GownDraft } from '../draft/draft-gown.ts';
import type { LayerDraft, LayerDrafts } from '../draft/draft-layers.ts';
import { tuckedLayer } from '../draft/tucked-up.ts';
import type { Gown } from '../gown/gown.ts';
import { hasGore } from '../gown/layer.ts';
import type { Flounce, Tiers } from '../gown/parts.ts';
import type { OnGore } from '../gown/sections.ts';
import { isSame, type Side, type Station } from '../gown/station.ts';
import type { BustleFacts } from '../making/bustle/bustle-facts.ts';
import { bustleOffered } from '../making/bustle/bustle-offered.ts';
import type { ClosureFacts } from '../making/closure/closure-facts.ts';
import type { Found } from '../making/findings.ts';
import type { Skirt } from '../making/skirt.ts';
import { aboveWaist, edgeBetween } from './above-waist.ts';
import { bendingLengthOf } from './bending-lengths.ts';
import { clothOfGown, type GownHung, type GownToHang } from './cloth-of-gown.ts';
import type { Wearer } from './figure-lines.ts';
import { gatheredColumns } from './gather-lines.ts';
import { pleatingOf } from './gore-folds.ts';
import type { HangTask } from './hung-gown.ts';
import { overskirtToHang } from './overskirt-to-hang.ts';
import type { ClothOver, FlounceOver } from './part-to-hang.ts';
import type { GodetToHang } from './placed-panels.ts';
import { columnsInFolds, pleatLines } from './pleat-lines.ts';
import { columnsOf, type Tie } from './sewn-cloth.ts';
import type { ViewExtras } from './views.ts';
import { wrapLine } from './wrap-line.ts';

/** Shear stiffness over weight, mm: soft beside real cloth (15 m and more), or rows, columns and shear would lock. */
const SHEAR_LENGTH = 5000;

/** The outermost layer that goes all round: what is seen. Where none does, the gown's own lines stand for it. */
function outermostLayer({ layers, gown }: LayerDrafts): LayerDraft {
  const whole = layers.findLast(({ layer, draft }) => draft.gown.gores.every((gore) => hasGore(layer, gore)));
  return whole === undefined ? { layer: layers[layers.length - 1]!.layer, draft: gown } : tuckedLayer(whole);
}

/** The one place where hanging reads the gown as it is drafted. */
function gownToHang(gown: Gown, drafts: LayerDrafts, skirt: Skirt): GownToHang {
  const outer = outermostLayer(drafts);
  const { layer, draft } = outer;
  const { hip } = gown.closure ?? {};
  const flounce = flounceAtHem(gown, layer.name);
  return {
    draft,
    ...(gown.petticoat === undefined ? {} : { petticoat: gown.petticoat }),
    waist: gown.waistSeam,
    ...(hip === undefined ? {} : { hip }),
    girths: (gown.body?.girths ?? []).flatMap(({ below, girth }) =>
      below === undefined ? [] : [{ below, girth }],
    ),
    tiers: gown.tiers.map(tiersUnder),
    floors: draft.gown.stations.map((_, i) => skirt.stations[i % skirt.stations.length]?.floor?.length),
    heel: gown.measuring.wornIn?.heel ?? 0,
    bendingLength: bendingLengthOf(layer.cloth),
    shearLength: SHEAR_LENGTH,
    godets: godetsOf(gown, outer),
    ...(flounce === undefined ? {} : { flounce }),
    pleated: draft.gown.gores.map((gore) => (gore.fullness ?? layer.fullness)?.by === 'pleats'),
    pleating: pleatingOf(draft.gown, gown.pleats, layer, (gore) => topFullness(layer, draft, gore)),
  };
}

function tiersUnder({ yoke, tiers, depths, layer }: Tiers): GownToHang['tiers'][number] {
  const last = depths[depths.length - 1] ?? 0;
  return {
    bendingLength: bendingLengthOf(layer.cloth),
    yoke,
    tiers: tiers.map((girth, i) => ({ girth, depth: depths[i] ?? last })),
  };
}

/** The one flounce that is sewn to the hem itself; those above it hang over the skirt. */
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

/** A drafted gown, as far as it is hung. */
export interface DraftedToHang {
  readonly gown: Gown;
  readonly drafts: LayerDrafts;
  readonly facts: {
    readonly skirt: Skirt;
    readonly closure: Found<ClosureFacts | undefined>;
    readonly bustle: Found<BustleFacts | undefined>;
  };
  readonly bodice?: DraftedBodice;
  /** In the order of the gown's. */
  readonly overskirts: readonly { readonly drafts: LayerDrafts }[];
}

/** A gown's task for the thread that hangs it. */
export function hangTask(drafted: DraftedToHang): HangTask {
  const { gown, drafts, bodice, facts } = drafted;
  const { skirt } = facts;
  const closure = facts.closure.facts;
  const bustle = facts.bustle.facts;
  const toHang = gownToHang(gown, drafts, skirt);
  const outer = outermostLayer(drafts);
  const { sewn, under } = clothOfGown(toHang);
  const edge = wrapLine(gown, outer, sewn);
  const opening = openingOf(sewn, closure);
  const edging = gown.edging?.depth;
  const { waistHeight } = sewn;
  const { height } = gown.body ?? {};
  const wearer: Wearer = {
    waistHeight,
    heel: toHang.heel,
    waist: toHang.waist,
    ...(height && { height }),
    bare: gown.waist !== undefined,
  };
  const inFolds = columnsInFolds(sewn.cloth);
  const pleats = pleatLines(sewn.cloth, outer.draft.gown.gores, outer.layer);
  const gathered = gatheredColumns(sewn.cloth, panelsPleated(sewn.cloth, outer));
  const pockets = pocketsOf(gown, sewn);
  const upper = aboveWaist(gown, bodice, { draft: outer.draft, sewn }, wearer, SHEAR_LENGTH);
  return {
    layer: outer.layer.name,
    notHung: notHung(drafts),
    sewn,
    ...(under && { under }),
    parts: [...flouncesOver(gown, outer.layer.name), ...overskirtsOver(drafted, sewn), ...upper.capes],
    above: upper.drawn,
    isBodiceDrafted: bodice !== undefined || gown.waist !== undefined,
    extras: {
      wearer,
      ...(opening === undefined ? {} : { opening }),
      ...(gown.slits.length === 0 ? {} : { slits: slitsOf(gown, outer.draft, sewn) }),
      ...(edging === undefined ? {} : { edging }),
      ...(pleats.length === 0 ? {} : { pleats }),
      ...(inFolds.length === 0 ? {} : { inFolds }),
      ...(gathered.length === 0 ? {} : { gathered }),
      ...(pockets.length === 0 ? {} : { pockets }),
      ...(edge === undefined ? {} : { edge }),
    },
    ties: bustle === undefined ? [] : tiesOf(sewn, bustle.kind, bustle.points),
    offered:
      bustle === undefined
        ? []
        : bustleOffered(drafts.gown, skirt, bustle).map((point) => ({
            point,
            ties: tiesOf(sewn, bustle.kind, [point]),
          })),
  };
}

/** By panel of the cloth, godets' among them. */
function panelsPleated({ panels }: GownHung['cloth'], { layer, draft }: LayerDraft): boolean[] {
  return panels.map(({ name }) => {
    const gore = draft.gown.gores.find((own) => own.name === name);
    return (gore?.fullness ?? layer.fullness)?.by === 'pleats';
  });
}

/** Flounces above the hem of the layer that is seen; those of a layer inside are hidden. */
function flouncesOver({ flounces }: Gown, layer: string): FlounceOver[] {
  return flounces
    .filter(({ sewnTo, aboveHem }) => sewnTo.name === layer && aboveHem > 0)
    .map(({ name, depth, fullness, kind, aboveHem, layer: own }) => ({
      is: 'flounce' as const,
      name,
      depth,
      fullness,
      kind,
      aboveHem,
      bendingLength: bendingLengthOf(own.cloth),
      shearLength: SHEAR_LENGTH,
    }))
    .sort((a, b) => a.aboveHem - b.aboveHem);
}

/** Overskirts and trains that come off, on the gown's edge between their stations. */
function overskirtsOver({ gown, overskirts }: DraftedToHang, sewn: GownHung): ClothOver[] {
  return gown.overskirts.flatMap(({ name, from, to = 'centre-back' }, i) => {
    const drafts = overskirts[i]?.drafts;
    const outer = drafts && outermostLayer(drafts);
    const on = edgeBetween(sewn, from, to);
    if (outer === undefined || on === undefined) return [];
    const { draft, layer } = outer;
    const facts = { bendingLength: bendingLengthOf(layer.cloth), shearLength: SHEAR_LENGTH };
    return [overskirtToHang({ name, draft, ...on }, facts)];
  });
}

/** What is worn over the layer that is drawn and is not: a layer of some gores only. */
function notHung({ layers }: LayerDrafts): string[] {
  const outer = layers.findLastIndex(({ layer, draft }) =>
    draft.gown.gores.every((gore) => hasGore(layer, gore)),
  );
  return layers.slice(outer < 0 ? layers.length : outer + 1).map(({ layer }) => layer.name);
}

function openingOf(sewn: GownHung, closure: ClosureFacts | undefined): ViewExtras['opening'] {
  if (closure?.stops === undefined) return undefined;
  const columns = sewn.seams.filter(({ station }) => isSame(sewn.stations[station]!, closure.station));
  // Of two seams of one name the left one comes first.
  const seam = closure.side === 'right' ? columns[columns.length - 1] : columns[0];
  return seam === undefined ? undefined : { column: seam.column, from: closure.starts, to: closure.stops };
}

/** Seams that are open from a depth on down to the hem. */
function slitsOf(gown: Gown, { lengths }: GownDraft, sewn: GownHung): NonNullable<ViewExtras['slits']> {
  return gown.slits.flatMap(({ stations, side, aboveHem = 0, belowWaist }) =>
    seamsAt(sewn, stations, side).map(({ station, column }) => ({
      column,
      from: belowWaist ?? lengths[station]! - aboveHem,
    })),
  );
}

function pocketsOf({ pockets }: Gown, sewn: GownHung): NonNullable<ViewExtras['pockets']> {
  return pockets.flatMap(({ stations, side, belowWaist, opening }) =>
    seamsAt(sewn, stations, side).map(({ column }) => ({
      column,
      from: belowWaist,
      to: belowWaist + opening,
    })),
  );
}

/** Where seams of one name lie on the cloth all round: on both sides of a mirrored gown, unless one is asked for. */
function seamsAt(
  { seams, stations }: GownHung,
  of: readonly Station[],
  side: Side | undefined,
): GownHung['seams'] {
  const own = seams.filter(({ station }) => of.some((one) => isSame(stations[station]!, one)));
  // On a mirrored gown the left one of two comes first.
  return side === undefined || own.length < 2 ? own : [own[side === 'left' ? 0 : own.length - 1]!];
}

/** How far a loop on the outside, or a tie on the inside, keeps the cloth off what it is drawn up to, mm. From memory. */
const LOOP_OFF = 12;

function tiesOf(sewn: GownHung, kind: BustleFacts['kind'], points: BustleFacts['points']): Tie[] {
  const outside = kind === 'over' ? LOOP_OFF : -LOOP_OFF;
  return points
    .filter(({ lift }) => lift > 0)
    .flatMap((point) => {
      const columns =
        point.seam === undefined
          ? columnsOnGore(sewn, point, point.side)
          : columnsAt(sewn, point.seam, point.side);
      return columns.map((column) => ({ column, anchor: point.anchor, pickUp: point.pickUp, outside }));
    });
}

function columnsAt({ stations, closing }: GownHung, seam: string, side: Side | undefined): number[] {
  return stations.flatMap(({ name, side: own, column }, i) => {
    const again = closing === 'ring' && i === stations.length - 1;
    return name !== seam || (side !== undefined && own !== side) || again ? [] : [column];
  });
}

/** The nearest columns that a mesh of twice the stride has as well. */
function columnsOnGore({ gores, cloth }: GownHung, at: OnGore, side: Side | undefined): number[] {
  const all = columnsOf(cloth);
  const columns = gores
    .filter(({ name, side: own }) => name === at.gore && (side === undefined || own === side))
    .map(({ side: own, first, across }) => {
      const share = own === 'right' ? 1 - at.across : at.across;
      return (first + 2 * Math.round((across * share) / 2)) % all;
    });
  return [...new Set(columns)];
}
