import { acrossFrame } from '../draft/across-frame.ts';
import { closedExactly } from '../draft/closed-exactly.ts';
import { type EdgeProfile, integrateAlong, profileThrough, settledProfile } from '../draft/edge-profiles.ts';
import type { GoreFrame } from '../draft/gore-frame.ts';
import { upright } from '../draft/grain-line.ts';
import type { Piece } from '../draft/piece.ts';
import { sectorFrame } from '../draft/sector-frame.ts';
import type { Edge } from '../geometry/edge.ts';
import { lengthOfRun } from '../geometry/length.ts';
import { reversedRun } from '../geometry/split.ts';

/** A cape or a cape sleeve, mm and radians. */
export interface CapeMeasures {
  readonly name: string;
  readonly layers: readonly string[];
  /** Edge that it is sewn to, and what hangs free beside it over the arm. */
  readonly sewnTo: number;
  readonly overArm: number;
  /** One for all, or at places along the inner edge (0 … 1), both ends among them. */
  readonly length: number | readonly CapeLength[];
  readonly shape: { readonly angle: number } | { readonly fullness: number };
  /** Its back edge lies on the fold. */
  readonly onFold?: boolean;
}

export interface CapeLength {
  readonly part: number;
  readonly length: number;
}

export interface Cape {
  readonly piece: Piece;
  /** As sewn: where it is gathered, the edge that it is gathered to. */
  readonly inner: number;
  readonly hem: number;
  /** Of a ring sector: inner edge ÷ angle. */
  readonly radius?: number;
}

/** Edges of a cape's outline beside its hem. */
export const CAPE_EDGES = { inner: 'inner-edge', front: 'front-edge', back: 'back-edge' } as const;

/**
 * A ring sector whose inner edge is its radius times its angle, or a rectangle gathered to the inner edge.
 * @returns undefined where its lengths cannot be laid over it
 */
export function capePiece(cape: CapeMeasures): Cape | undefined {
  const inner = cape.sewnTo + cape.overArm;
  const { shape } = cape;
  const frame =
    'angle' in shape
      ? sectorFrame(inner, shape.angle / 2, shape.angle / 2)
      : sectorFrame(inner * shape.fullness, 0, 0);
  const lengths = lengthsOf(cape);
  const hem = hemOf(frame, lengths);
  if (hem === undefined) return undefined;
  const piece = pieceOf(cape, frame, hem, lengths);
  return {
    piece,
    inner,
    hem: lengthOfRun(piece.edges[2]!.curves),
    ...('angle' in shape ? { radius: inner / shape.angle } : {}),
  };
}

function lengthsOf({ length }: CapeMeasures): readonly CapeLength[] {
  if (typeof length !== 'number') return length;
  return [
    { part: 0, length },
    { part: 1, length },
  ];
}

/** Smooth through its lengths and square to its ends, each at its place along the inner edge. */
function hemOf(frame: GoreFrame, lengths: readonly CapeLength[]): EdgeProfile | undefined {
  const parts = lengths.slice(1).map(({ part }, i) => part - lengths[i]!.part);
  return settledProfile(
    parts.map((part) => part * frame.widthAt(lengths[0]!.length)),
    (ways) =>
      profileThrough(ways, { depths: lengths.map(({ length }) => length), ends: [0, 0], closed: false }),
    (profile, _stretch, from, to) =>
      integrateAlong(profile, (way) => 1 / frame.widthAt(profile.valueAt(way)), from, to),
    parts,
  );
}

function pieceOf(
  cape: CapeMeasures,
  frame: GoreFrame,
  hem: EdgeProfile,
  lengths: readonly CapeLength[],
): Piece {
  const [first, last] = [lengths[0]!.length, lengths[lengths.length - 1]!.length];
  const back = cape.onFold === true ? 'fold' : CAPE_EDGES.back;
  const edges: Edge[] = closedExactly([
    { name: CAPE_EDGES.inner, curves: frame.levelAt(0) },
    { name: back, curves: frame.sideFrom('back', 0, last) },
    { name: 'hem', curves: reversedRun(acrossFrame(frame, hem, 0, hem.ways[hem.ways.length - 1]!)) },
    { name: CAPE_EDGES.front, curves: reversedRun(frame.sideFrom('front', 0, first)) },
  ]);
  return {
    gore: cape.name,
    part: 'cape',
    layers: cape.layers,
    edges,
    frontEdge: CAPE_EDGES.front,
    backEdge: back,
    grain: upright(frame.pointAt(Math.min(first, last) / 2, 0.5), edges),
    cut: cape.onFold === true ? 'on-fold' : 'pair',
  };
}
