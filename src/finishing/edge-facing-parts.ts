import type { LayerDraft } from '../draft/draft-layers.ts';
import type { Part } from '../draft/part.ts';
import type { Piece } from '../draft/piece.ts';
import { wrappedPieces } from '../draft/wrapped.ts';
import type { Gown } from '../gown/gown.ts';
import type { Facing } from '../gown/layer.ts';
import { WRAP_EDGE } from '../gown/wrap.ts';
import type { TooDeep } from './facings-of-hem.ts';
import { facingPiece, facingSides } from './hem-facing.ts';

/** A side of a piece that is finished by itself. */
interface FreeSide {
  readonly piece: Piece;
  readonly side: 'front' | 'back';
}

/**
 * Facings of an overskirt's free edges and of a wrap's: of the outermost layer what lies within their depth of the edge,
 * from the waist down to the hem.
 */
export function edgeFacingParts(
  { edgeFacing, wrap, stations }: Pick<Gown, 'edgeFacing' | 'wrap' | 'stations'>,
  layers: readonly LayerDraft[],
): readonly Part[] | (TooDeep & { readonly facing: Facing }) {
  const { draft } = layers[layers.length - 1]!;
  const facing = edgeFacing ?? wrap?.facing;
  if (facing === undefined) return [];
  const free = edgeFacing === undefined ? sidesOfWrap(wrappedPieces(draft)) : endsOf(draft.pieces, stations);
  const parts: Part[] = [];
  for (const { piece: gore, side } of free) {
    const piece = facingOfSide(gore, side, facing.depth);
    if (piece === undefined) return { gore: gore.gore, facing };
    parts.push({
      of: {
        kind: 'edge-facing',
        edge: side === 'front' ? gore.frontEdge : gore.backEdge,
        depth: facing.depth,
      },
      layer: facing.layer,
      piece: { ...piece, gore: `${gore.gore}-edge`, layers: [facing.layer.name] },
      allowances: {},
      notches: new Map(),
      quartered: false,
      roughCut: 0,
      place: facing.place,
    });
  }
  return parts;
}

function endsOf(pieces: readonly Piece[], stations: Gown['stations']): FreeSide[] {
  return (['front', 'back'] as const)
    .filter((side) => (side === 'front' ? stations[0]! : stations[stations.length - 1]!).free === true)
    .map((side) => ({ piece: side === 'front' ? pieces[0]! : pieces[pieces.length - 1]!, side }));
}

function sidesOfWrap(pieces: readonly Piece[]): FreeSide[] {
  return pieces.flatMap((piece) =>
    (['front', 'back'] as const)
      .filter((side) => piece[`${side}Edge`] === WRAP_EDGE)
      .map((side) => ({ piece, side })),
  );
}

/** With its edges counted on from another one, a side stands where a hem does. */
function facingOfSide(piece: Piece, side: 'front' | 'back', depth: number): Piece | undefined {
  const [waist, back, hem, front] = piece.edges;
  const turned = side === 'front' ? [back!, hem!, front!, waist!] : [front!, waist!, back!, hem!];
  const sides = facingSides(
    { ...piece, edges: turned, frontEdge: turned[3]!.name, backEdge: turned[1]!.name },
    depth,
  );
  if (sides === undefined) return undefined;
  const facing = facingPiece(sides, sides);
  const [inner, right, edge, left] = facing.edges;
  // As a gore is drawn: the waist above, the hem below, the faced edge at its own side.
  const edges = side === 'front' ? [left!, inner!, right!, edge!] : [right!, edge!, left!, inner!];
  return { ...facing, edges, frontEdge: edges[3]!.name, backEdge: edges[1]!.name };
}
