import type { DraftedBodice } from '../bodice/draft-asked.ts';
import type { LayerDraft, LayerDrafts } from '../draft/draft-layers.ts';
import type { Gown } from '../gown/gown.ts';
import type { BustleFacts } from '../making/bustle/bustle-facts.ts';
import { bustleOffered } from '../making/bustle/bustle-offered.ts';
import type { ClosureFacts } from '../making/closure/closure-facts.ts';
import type { Found } from '../making/findings.ts';
import type { Skirt } from '../making/skirt.ts';
import { aboveWaist } from './above-waist.ts';
import { SHEAR_LENGTH } from './bending-lengths.ts';
import { tiesOf } from './bustle-ties.ts';
import { clothOfGown } from './cloth-of-gown.ts';
import type { Wearer } from './figure-lines.ts';
import { gatheredColumns } from './gather-lines.ts';
import { gownToHang } from './gown-to-hang.ts';
import type { HangTask } from './hung-gown.ts';
import { openingOf, pocketsOf, slitsOf } from './openings-to-hang.ts';
import { notHung, outermostLayer } from './outermost-layer.ts';
import { flouncesOver, overskirtsOver } from './parts-over.ts';
import { columnsInFolds, pleatLines } from './pleat-lines.ts';
import type { GownHung } from './sewn-gown.ts';
import { wrapLine } from './wrap-line.ts';

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
  const outer = outermostLayer(drafts);
  const toHang = gownToHang(gown, outer, skirt);
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
    parts: [
      ...flouncesOver(gown, outer.layer.name),
      ...overskirtsOver(gown, drafted.overskirts, sewn),
      ...upper.capes,
    ],
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
