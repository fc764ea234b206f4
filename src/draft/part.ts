import type { LayerSpec } from '../gown-file/spec.ts';
import type { CutPiece, Piece } from './piece.ts';

/**
 * What is cut for a gown beside its gores: flounces, strips, godets. A flounce or a strip is handled as a layer of its
 * own; a godet belongs to the layers that it is let into.
 */
export interface Part {
  /** The layer that it is cut with: one of the gown's, or one that stands for the part and its cloth. */
  readonly layer: LayerSpec;
  readonly piece: Piece;
  /** Allowance by edge, mm; the hem's is the layer's. */
  readonly allowances: Readonly<Record<string, number>>;
  /** Distances from the top at which the piece's side edges are notched, by edge. */
  readonly notches: ReadonlyMap<string, readonly number[]>;
  /** True where the top is gathered or eased by quarters. */
  readonly quartered: boolean;
  /** True where its top is a point: cut straight across above it, with no corners to fold back. */
  readonly pointed?: boolean;
  /** True where its lower edge is a seam and no hem: its corners are those of the top. */
  readonly lowerSewn?: boolean;
  /** Lines inside it that are marked, not cut. */
  readonly marks?: CutPiece['marks'];
  /** What the maker does with it, for the text on the piece. */
  readonly remarks?: readonly string[];
}

/** A layer that stands for a part cut from a cloth of its own. */
export function partLayer(
  name: string,
  cloth: string,
  hem: LayerSpec['hem'],
  allowances: LayerSpec['allowances'],
): LayerSpec {
  return { name, cloth, hem, shorter: 0, cutSmallerAcross: 0, cutSmallerAlong: 0, allowances };
}
