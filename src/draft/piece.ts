import type { Curve, Line, Point } from '../geometry/curve.ts';
import type { Edge } from '../geometry/edge.ts';
import type { BustlePlace } from '../gown/bustle-place.ts';
import type { PieceRemark } from './piece-remark.ts';

/** What a piece belongs to, where it is no part of the skirt. */
export type PartOfGown =
  | 'bodice'
  | 'strap'
  | 'cape'
  | 'facing'
  | 'waistband'
  | 'placket'
  | 'guard'
  | 'stay'
  | 'pocket'
  | 'loop'
  | 'binding'
  | 'yoke'
  | 'tie';

/**
 * One gore's seam-line outline, flat, right side up, its grain along y: the exact shape that is sewn.
 * Drawn as the wearer's left half: the front edge at the left, the back edge at the right.
 * Flounces, strips and godets are pieces too: their upper edge stands in the waist's place under its own name.
 */
export interface Piece {
  readonly gore: string;
  /** A bodice's panel has the name of the gore below it; this tells the two apart. */
  readonly part?: PartOfGown;
  /** Layers whose seam lines are this shape. */
  readonly layers: readonly string[];
  /** Clockwise as drawn, closed: waist (left to right), back edge (down), hem (right to left), front edge (up). */
  readonly edges: readonly Edge[];
  /** Names of the edges at either side; `fold` where the piece is half of one on the fold. */
  readonly frontEdge: string;
  readonly backEdge: string;
  /** Along the straight thread: upright, or at 45° on the bias. */
  readonly grain: Line;
  readonly bias?: true;
  /** Whole pieces needed for one layer and how they pair: on-fold 1, a mirrored pair 2, a single 1. */
  readonly cut: 'on-fold' | 'pair' | 'single';
  /** A rectangle: told by its size, and not drawn on paper. */
  readonly bySize?: true;
  /** A strip to be ruled and joined: told by its size, drawn full size, and not printed unless it is asked for. */
  readonly strip?: true;
  /** Alike copies of a single, for strips and flounces; 1 when absent. */
  readonly copies?: number;
  /** The wearer's side, where the two sides differ; printed on the piece. */
  readonly side?: 'left' | 'right';
  /** Which centre it spans, where it would lie on the fold if its two halves were alike and is drawn whole. */
  readonly middle?: 'front' | 'back';
}

/** Everything that is drawn for a seam-line outline. */
export function linesOf({ edges, grain }: Piece): Curve[] {
  return [...edges.flatMap(({ curves }) => curves), grain];
}

/** A mark across a cut edge, at the same distance from the waist on both pieces of the seam. */
export interface Notch {
  readonly edge: string;
  /** From the waist seam along the seam line, mm. */
  readonly distance: number;
  /** One tick a line, from the cut edge inwards; two lines for a double notch. */
  readonly ticks: readonly Line[];
}

/** One set of stones where it lies on a piece. */
export interface StonesMarked {
  readonly name: string;
  readonly layer: string;
  readonly runs: readonly (readonly Curve[])[];
}

/** A point of the bustle on a piece that carries it, of one layer. mm below the waist edge. */
export type BustleMarked = BustlePlace & {
  readonly layer: string;
  readonly anchor: number;
  readonly pickUp: number;
  /** Where both lie on the piece. */
  readonly at: readonly [anchor: Point, pickUp: Point];
};

/** A seam-line outline with allowances: what is cut. */
export interface CutPiece {
  readonly piece: Piece;
  readonly gore: string;
  /** Layers that are cut by this one outline. */
  readonly layers: readonly string[];
  /** Closed, clockwise as drawn; each edge keeps the name of the seam-line edge that it came from. */
  readonly cutEdges: readonly Edge[];
  readonly notches: readonly Notch[];
  /** Lines inside the outline that are marked, not cut: the planned hem under a rough cut. */
  readonly marks: readonly { readonly name: string; readonly curves: Edge['curves'] }[];
  /** Stones, beads or motifs that are set on it and marked: a dot for each, or its outline. A list for each set. */
  readonly stones?: readonly StonesMarked[];
  /** Points of the bustle that are marked on it, for its chalk table. */
  readonly bustle?: readonly BustleMarked[];
  /** Width of the allowance at each edge, mm, for the text on the piece. */
  readonly allowances: Readonly<Record<string, number>>;
  /** Extra below the hem's own allowance, cut off after hanging, mm. */
  readonly roughCut: number;
  /** What the maker does with it beside its lines; printed on the piece. */
  readonly remarks?: readonly PieceRemark[];
  /** Where the text on the piece goes: a point well inside. */
  readonly labelAt: Point;
}
