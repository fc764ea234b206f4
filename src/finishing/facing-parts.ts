import type { DraftedCape } from '../bodice/cape-parts.ts';
import type { LayerDraft, LayerDrafts } from '../draft/draft-layers.ts';
import { withKicks } from '../draft/kick-extension.ts';
import type { Part } from '../draft/part.ts';
import type { Piece } from '../draft/piece.ts';
import { wrappedPieces } from '../draft/wrapped.ts';
import type { Gown } from '../gown/gown.ts';
import { hasGore, type Layer } from '../gown/layer.ts';
import type { Pleat } from '../gown/parts.ts';
import { notchesOfFacing } from './facing-notches.ts';
import { cutFacings, facingsOfHem, type TooDeep } from './facings-of-hem.ts';
import { facingPiece, facingSides } from './hem-facing.ts';
import { type JoinedFacing, joinedFacings } from './joined-facings.ts';

/** A layer whose facing has no room on one of its gores. */
export interface FacingTooDeep extends TooDeep {
  readonly layer: Layer;
}

/** The facings of every faced hem that asks for them, each as a layer of its own; or what is too deep. */
export function facingParts(
  { layers }: LayerDrafts,
  capes: readonly DraftedCape[],
  /** Among them godets, whose hems are the layers' that they are let into. */
  sewnOn: readonly Part[],
  { godets, slits, pleats }: Pick<Gown, 'godets' | 'slits' | 'pleats'>,
): {
  readonly parts: readonly Part[];
  readonly tooDeep: readonly FacingTooDeep[];
} {
  const open = [...godets, ...slits].map(({ seam }) => seam);
  const made = [
    ...layers.map((own) => ({ own, facings: facingsOf(own, open, kicksOf(pleats, own.layer)) })),
    ...sewnOn
      .filter(({ of }) => of.kind === 'godet')
      .map(({ layer, piece }) => ({ own: { layer }, facings: facingAlone(layer, piece) })),
    ...capes.flatMap(({ cape, piece }) =>
      cape.layers.map((layer) => ({ own: { layer }, facings: facingAlone(layer, piece) })),
    ),
  ];
  return {
    parts: made.flatMap(({ own, facings }) => ('gore' in facings ? [] : partsOf(own.layer, facings))),
    tooDeep: made.flatMap(({ own: { layer }, facings }) =>
      'gore' in facings ? [{ ...facings, layer }] : [],
    ),
  };
}

/** Kick pleats of a layer: its facing is cut over their extensions too. */
function kicksOf(pleats: readonly Pleat[], { name }: Layer): Pleat[] {
  return pleats.filter(({ kind, layers }) => kind === 'kick' && layers.includes(name));
}

function facingsOf(
  { layer, draft }: LayerDraft,
  open: readonly string[],
  kicks: readonly Pleat[],
): readonly JoinedFacing[] | TooDeep {
  if (layer.facing === undefined) return [];
  const pieces = wrappedPieces(draft).map((piece) => withKicks(piece, kicks, draft.pieces).piece);
  const facings = facingsOfHem({ ...draft, pieces }, layer.facing.depth);
  if ('gore' in facings) return facings;
  const cut = cutFacings(draft, facings).filter(({ gore }) => hasGore(layer, { name: gore }));
  return joinedFacings(cut, layer.facing.layer, [...open, ...kicks.map(({ at }) => at)]);
}

/** Of a piece that has no neighbours. */
function facingAlone({ facing }: Layer, piece: Piece): readonly JoinedFacing[] | TooDeep {
  if (facing === undefined) return [];
  const sides = facingSides(piece, facing.depth);
  if (sides === undefined) return { gore: piece.gore };
  return [{ piece: facingPiece(sides, sides), seams: [] }];
}

function partsOf(faces: Layer, facings: readonly JoinedFacing[]): Part[] {
  if (faces.facing === undefined) return [];
  const { layer, place, depth } = faces.facing;
  return facings.map(
    ({ piece, seams }): Part => ({
      of: { kind: 'hem-facing', faces: faces.name, depth },
      layer,
      piece: { ...piece, layers: [layer.name] },
      allowances: {},
      notches: notchesOfFacing(piece),
      quartered: false,
      marks: seams,
      roughCut: 0,
      place,
    }),
  );
}
