import type { DraftedBodice } from '../bodice/draft-asked.ts';
import type { GownDraft } from '../draft/draft-gown.ts';
import type { Gown } from '../gown/gown.ts';
import { bandToDraw } from './band-to-draw.ts';
import { bendingLengthOf } from './bending-lengths.ts';
import { draftedShape, plainShape } from './bodice-shape.ts';
import { type BodiceDrawn, bodiceToDraw, type HalfEdge } from './bodice-to-draw.ts';
import { capeToHang, type InnerEdge } from './cape-to-hang.ts';
import type { DrawnPart } from './drawn-part.ts';
import { heightOf, type Wearer } from './figure-lines.ts';
import type { OverskirtOnEdge } from './overskirt-to-hang.ts';
import type { ClothOver } from './part-to-hang.ts';
import { columnsOf } from './sewn-cloth.ts';
import type { GownHung } from './sewn-gown.ts';
import type { SpacePoint } from './space-point.ts';
import { strapToDraw } from './strap-to-draw.ts';
import { type KnownGirth, upperBody } from './upper-body.ts';

/** What she wears above the skirt. */
export interface AboveWaist {
  readonly drawn: readonly DrawnPart[];
  readonly capes: readonly ClothOver[];
}

/** Bodice, straps and capes, from the edge that the skirt is sewn to upwards. */
export function aboveWaist(
  gown: Gown,
  bodice: DraftedBodice | undefined,
  skirt: { readonly draft: GownDraft; readonly sewn: GownHung },
  wearer: Wearer,
  shearLength: number,
): AboveWaist {
  if (wearer.bare) {
    const { waist } = gown;
    const band = waist?.finish === 'band' ? [bandToDraw(sewnHalves(skirt.sewn), waist.width)] : [];
    return { drawn: band, capes: [] };
  }
  const tall = heightOf(wearer);
  const body = upperBody(wearer.waist, tall, knownGirths(gown, bodice));
  const closing = bodice?.asked.draft.closing;
  const drawn = bodiceToDraw({
    shape: bodice === undefined ? plainShape(skirt.draft, tall) : draftedShape(bodice),
    body,
    waistHeight: wearer.waistHeight,
    lower: sewnHalves(skirt.sewn),
    ...(closing && {
      closing: {
        station: closing.at,
        laced: closing.kind === 'lacing',
        ...(closing.side && { side: closing.side }),
      },
    }),
  });
  return {
    drawn: [
      // Above a skirt of its own waist stands she: her shape, and no seams or edges of a bodice.
      gown.waist === undefined ? drawn.part : { ...drawn.part, seams: [], edges: [] },
      ...gown.straps.flatMap(({ from, to, width }) => strapsOf(drawn, { from, to, width }, wearer)),
    ],
    capes: gown.capes.flatMap((cape) => {
      const inner = innerEdge(drawn, cape);
      const cloth = cape.layers[cape.layers.length - 1]?.cloth;
      if (inner === undefined || cloth === undefined) return [];
      return [capeToHang(cape, inner, { wearer, body, bendingLength: bendingLengthOf(cloth), shearLength })];
    }),
  };
}

/** As the bodice is sewn; of a made one as her body is. */
function knownGirths({ body }: Gown, bodice: DraftedBodice | undefined): KnownGirth[] {
  if (bodice !== undefined)
    return bodice.figures.levels.map(({ above, sewn, open }) => ({ above, girth: sewn + open }));
  return (body?.girths ?? []).map(({ above, below, girth }) => ({ above: above ?? -(below ?? 0), girth }));
}

/** The skirt's sewn edge by her sides, both from the centre front. */
export function sewnHalves({ cloth, edge, stations }: GownHung): {
  readonly left: HalfEdge;
  readonly right: HalfEdge;
} {
  const at = (column: number): SpacePoint => edge[column]!;
  const count = columnsOf(cloth);
  if (cloth.closing === 'mirrored') {
    const left = Array.from({ length: count }, (_, column) => at(column));
    return { left, right: left };
  }
  const middle = stations.find(({ name }) => name === 'centre-back')?.column ?? Math.round(count / 2);
  return {
    left: Array.from({ length: middle + 1 }, (_, column) => at(column)),
    right: Array.from({ length: count - middle + 1 }, (_, k) => at((count - k) % count)).map(([x, y, z]) => [
      -x,
      y,
      z,
    ]),
  };
}

/** The part of the sewn edge between two stations, on her left where she has it on both sides. */
export function edgeBetween(
  sewn: GownHung,
  from: string,
  to: string,
): Pick<OverskirtOnEdge, 'edge' | 'meets' | 'image'> | undefined {
  const { cloth, stations } = sewn;
  const at = (column: number): SpacePoint => sewn.edge[column % columnsOf(cloth)]!;
  const image = cloth.closing === 'mirrored';
  const start = stations.find(({ name }) => name === from)?.column;
  const ends = stations.filter(({ name }) => name === to).map(({ column }) => column);
  const end =
    ends.find((column) => start !== undefined && column > start) ?? (image ? undefined : columnsOf(cloth));
  if (start === undefined || end === undefined) return undefined;
  return {
    edge: Array.from({ length: end - start + 1 }, (_, k) => at(start + k)),
    meets: { front: image && from === 'centre-front', back: image && to === 'centre-back' },
    image,
  };
}

function strapsOf(
  drawn: BodiceDrawn,
  strap: { readonly from: string; readonly to: string; readonly width: number },
  wearer: Wearer,
): DrawnPart[] {
  return (['left', 'right'] as const).flatMap((side) => {
    const [front, back] = [drawn.upperAt(side, strap.from), drawn.upperAt(side, strap.to)];
    return front === undefined || back === undefined
      ? []
      : [strapToDraw({ front, back, width: strap.width, side }, wearer)];
  });
}

/** What a cape is sewn to on her left, in front of the arm and behind it. */
function innerEdge(drawn: BodiceDrawn, { from, to }: Gown['capes'][number]): InnerEdge | undefined {
  if (from === undefined || to === undefined) return undefined;
  const along = drawn.upperBetween('left', from, to);
  if (along.length < 2) return undefined;
  // The arm is where the edge comes farthest to her side.
  const side = along.reduce((best, place, i) => (place[0] > along[best]![0] ? i : best), 0);
  return { before: along.slice(0, side + 1), behind: along.slice(side) };
}
