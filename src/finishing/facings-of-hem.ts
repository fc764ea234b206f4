import type { GownDraft } from '../draft/draft-gown.ts';
import { cutOfHalves, mirroredPiece } from '../draft/halves-apart.ts';
import type { Piece } from '../draft/piece.ts';
import type { Curve, Line } from '../geometry/curve.ts';
import { rotated } from '../geometry/transform.ts';
import { WRAP_EDGE } from '../gown/wrap.ts';
import { type Agreed, type FacingSide, type FacingSides, facingPiece, facingSides } from './hem-facing.ts';

/** A facing that has no room on its gore. */
export interface TooDeep {
  readonly gore: string;
}

/**
 * The facing of every gore's hem, in their order. At each seam both are equally high and the inner edge runs straight
 * through: the gore whose inner edge meets the seam by itself decides for both.
 * @param depth mm
 */
export function facingsOfHem(
  { pieces, gown }: Pick<GownDraft, 'pieces'> & { readonly gown: Pick<GownDraft['gown'], 'round'> },
  depth: number,
): readonly Piece[] | TooDeep {
  return facingsBelow(pieces, gown.round !== 'mirrored', depth);
}

/** The same of the waist: upside down a waist is a hem, and the ring runs the other way. */
export function facingsOfWaist({ pieces, gown }: GownDraft, depth: number): readonly Piece[] | TooDeep {
  const turned = [...pieces].reverse().map(upsideDown);
  const facings = facingsBelow(turned, gown.round !== 'mirrored', depth);
  return 'gore' in facings ? facings : facings.map(upsideDown).reverse();
}

/** Turned half round in its plane: its lower edge is then its upper one. Its grain runs down as before, or a lay shows it the wrong way up. */
function upsideDown(piece: Piece): Piece {
  const turn = (curve: Curve): Curve => rotated(curve, Math.PI);
  const { from, to } = turn(piece.grain) as Line;
  const [upper, right, lower, left] = piece.edges.map(({ name, curves }) => ({
    name,
    curves: curves.map(turn),
  }));
  return {
    ...piece,
    edges: [lower!, left!, upper!, right!],
    frontEdge: piece.backEdge,
    backEdge: piece.frontEdge,
    grain: { kind: 'line', from: to, to: from },
  };
}

function facingsBelow(pieces: readonly Piece[], isRing: boolean, depth: number): readonly Piece[] | TooDeep {
  const all = pieces.map((piece) => facingSides(piece, depth));
  const lacking = all.indexOf(undefined);
  if (lacking >= 0) return { gore: pieces[lacking]!.gore };
  const sides = all as FacingSides[];
  const beside = (i: number): FacingSides | undefined =>
    sides[isRing ? (i + sides.length) % sides.length : i];
  return sides.map((own, i) =>
    facingPiece(own, {
      left: agreed(own.left, beside(i - 1)?.right),
      right: agreed(own.right, beside(i + 1)?.left),
    }),
  );
}

function agreed(own: FacingSide, other: FacingSide | undefined): Agreed {
  if (other === undefined || own.edge === WRAP_EDGE || own.atHem <= other.atHem) return own;
  return { height: other.height, atTop: Math.PI - other.atTop };
}

/** What is cut: as the gores are, left and right apart where her sides differ. @param facings one a gore, in their order */
export function cutFacings({ gown, cutAs }: GownDraft, facings: readonly Piece[]): readonly Piece[] {
  if (cutAs === undefined || gown.round !== 'two-halves') return facings;
  const half = facings.length / 2;
  return facings.slice(0, half).flatMap((left, i) => {
    const right = facings[facings.length - 1 - i]!;
    return cutOfHalves(asHalf(left), asHalf(mirroredPiece(right)));
  });
}

/** One of the left half, before it was known that her sides differ. */
function asHalf({ side: _, ...piece }: Piece): Piece {
  return { ...piece, cut: piece.frontEdge === 'fold' || piece.backEdge === 'fold' ? 'on-fold' : 'pair' };
}
