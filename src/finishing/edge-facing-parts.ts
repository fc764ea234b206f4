import type { LayerDraft } from '../draft/draft-layers.ts';
import type { Part } from '../draft/part.ts';
import type { Piece } from '../draft/piece.ts';
import type { Gown } from '../gown/gown.ts';
import type { TooDeep } from './facings-of-hem.ts';
import { facingPiece, facingSides } from './hem-facing.ts';

/**
 * Facings of an overskirt's free edges: of its outermost layer what lies within their depth of the edge, from the waist
 * down to the hem.
 */
export function edgeFacingParts(
  { edgeFacing, stations }: Pick<Gown, 'edgeFacing' | 'stations'>,
  layers: readonly LayerDraft[],
): readonly Part[] | TooDeep {
  const { pieces } = layers[layers.length - 1]!.draft;
  if (edgeFacing === undefined) return [];
  const { layer, depth, place } = edgeFacing;
  const free = (['front', 'back'] as const).filter((side) =>
    side === 'front' ? stations[0]!.free === true : stations[stations.length - 1]!.free === true,
  );
  const parts: Part[] = [];
  for (const side of free) {
    const gore = side === 'front' ? pieces[0]! : pieces[pieces.length - 1]!;
    const piece = facingOfSide(gore, side, depth);
    if (piece === undefined) return { gore: gore.gore };
    parts.push({
      of: { kind: 'edge-facing', edge: side === 'front' ? gore.frontEdge : gore.backEdge, depth },
      layer,
      piece: { ...piece, gore: `${gore.gore}-edge`, layers: [layer.name] },
      allowances: {},
      notches: new Map(),
      quartered: false,
      roughCut: 0,
      place,
    });
  }
  return parts;
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
