import type { Span } from '../diagnostics/diagnostic.ts';
import type { Layer } from '../gown/layer.ts';
import type { PartKind } from './part-kind.ts';
import type { CutPiece, Piece } from './piece.ts';

/**
 * What is cut for a gown beside its gores: flounces, strips, godets. A flounce or a strip is handled as a layer of its
 * own; a godet belongs to the layers that it is let into.
 */
export interface Part {
  /** Where it stands in the file. */
  readonly place: () => Span;
  readonly of: PartKind;
  /** The layer that it is cut with: one of the gown's, or one that stands for the part and its cloth. */
  readonly layer: Layer;
  readonly piece: Piece;
  /** Allowances of edges that the layer knows by another name, mm. */
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
  /** Extra below the hem, cut off after hanging, mm. */
  readonly roughCut: number;
}
