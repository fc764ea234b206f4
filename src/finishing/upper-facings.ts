import type { DraftedBodice } from '../bodice/draft-asked.ts';
import { LOWER_EDGE, UPPER_EDGE } from '../bodice/panel-piece.ts';
import { cutOfHalves } from '../draft/halves-apart.ts';
import type { Part } from '../draft/part.ts';
import type { Piece } from '../draft/piece.ts';
import type { Curve, Line } from '../geometry/curve.ts';
import type { Edge } from '../geometry/edge.ts';
import { reversedRun } from '../geometry/split.ts';
import { reflected } from '../geometry/transform.ts';
import { notchesOfFacing } from './facing-notches.ts';
import { facingsOfHem, type TooDeep } from './facings-of-hem.ts';
import { INNER_EDGE } from './hem-facing.ts';
import { joinedFacings } from './joined-facings.ts';

/**
 * Facings of a bodice's upper edge: within their depth of it every panel's own shape, joined round as the panels are. The
 * panels are turned upside down, so that the edge lies where a hem does, and the facings back again.
 */
export function upperFacings(bodice: DraftedBodice | undefined): readonly Part[] | TooDeep {
  const facing = bodice?.asked.facing;
  if (bodice === undefined || facing === undefined) return [];
  const { left, right } = bodice.draft;
  const { layer, depth, place } = facing;
  const ofHalf = (pieces: readonly Piece[]) =>
    facingsOfHem({ pieces: pieces.map(upsideDown), gown: { round: 'mirrored' } }, depth);
  const [own, other] = [ofHalf(left.pieces), left === right ? undefined : ofHalf(right.pieces)];
  if ('gore' in own) return own;
  if (other !== undefined && 'gore' in other) return other;
  const cut = other === undefined ? own : own.flatMap((piece, i) => cutOfHalves(piece, other[i]!));
  return joinedFacings(cut, layer).map(
    ({ piece, seams }): Part => ({
      of: { kind: 'upper-facing', depth },
      layer,
      piece: { ...upright(piece), layers: [layer.name] },
      allowances: {},
      notches: notchesOfFacing(piece),
      quartered: false,
      lowerSewn: true,
      marks: seams.map(({ name, curves }) => ({ name, curves: curves.map(flipped) })),
      roughCut: 0,
      place,
    }),
  );
}

/** A panel whose upper edge lies where a hem does. */
function upsideDown(piece: Piece): Piece {
  return { ...flippedPiece(piece), ...named(piece, { [LOWER_EDGE]: 'waist', [UPPER_EDGE]: 'hem' }) };
}

function upright(piece: Piece): Piece {
  return { ...flippedPiece(piece), ...named(piece, { [INNER_EDGE]: INNER_EDGE, hem: UPPER_EDGE }) };
}

function named(piece: Piece, names: Readonly<Record<string, string>>): Pick<Piece, 'edges'> {
  const { edges } = flippedPiece(piece);
  return { edges: edges.map((edge) => ({ ...edge, name: names[edge.name] ?? edge.name })) };
}

/** Upside down, its edges in their order from the one above, clockwise as drawn. */
function flippedPiece(piece: Piece): Piece {
  const turned = piece.edges.map(
    ({ name, curves }): Edge => ({ name, curves: reversedRun(curves.map(flipped)) }),
  );
  const [above, back, below, front] = turned as [Edge, Edge, Edge, Edge];
  const { from, to } = piece.grain;
  const grain: Line = {
    kind: 'line',
    from: { x: to.x, y: -to.y },
    to: { x: from.x, y: -from.y },
  };
  return { ...piece, edges: [below, back, above, front], grain };
}

function flipped(curve: Curve): Curve {
  return reflected(curve, { x: 0, y: 0 }, { x: 1, y: 0 });
}
