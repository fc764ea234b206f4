import type { Piece } from '../draft/piece.ts';
import { sectorPiece } from '../draft/sector-piece.ts';

/** A cape or a cape sleeve, mm and radians. */
export interface CapeMeasures {
  readonly name: string;
  readonly layers: readonly string[];
  /** Edge that it is sewn to, and what hangs free beside it over the arm. */
  readonly sewnTo: number;
  readonly overArm: number;
  readonly length: number;
  readonly shape: { readonly angle: number } | { readonly fullness: number };
  readonly copies: number;
}

export interface Cape {
  readonly piece: Piece;
  /** As sewn: where it is gathered, the edge that it is gathered to. */
  readonly inner: number;
  readonly hem: number;
  /** Of a ring sector: inner edge ÷ angle. */
  readonly radius?: number;
}

/** A ring sector whose inner edge is its radius times its angle, or a rectangle gathered to the inner edge. */
export function capePiece(cape: CapeMeasures): Cape {
  const inner = cape.sewnTo + cape.overArm;
  const { name, layers, length, copies, shape } = cape;
  const [top, hem] =
    'angle' in shape
      ? [inner, inner + shape.angle * length]
      : [inner * shape.fullness, inner * shape.fullness];
  return {
    piece: sectorPiece({ name, top, hem, depth: length, layers, copies }),
    inner,
    hem,
    ...('angle' in shape ? { radius: inner / shape.angle } : {}),
  };
}
