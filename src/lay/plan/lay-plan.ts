import type { LayFolds } from '../../diagnostics/lay-words.ts';
import type { CutPiece } from '../../draft/piece.ts';
import type { Curve, Line } from '../../geometry/curve.ts';

/** How cloth lies while it is cut: flat, folded along its length, or folded across it. */
export type Fold = 'single' | 'lengthwise' | 'crosswise';

/** The lay of one cloth: where each piece is cut from it. Coordinates in mm of unfolded cloth, right side up, x across. */
export interface LayPlan {
  /** Names it among the gown's lays: the cloth, and its layer where the cloth's layers are kept apart. */
  readonly name: string;
  readonly cloth: string;
  /** What is cut from it, in the order in which it is cut. */
  readonly layers: readonly string[];
  readonly facts: ClothFacts;
  /** The way taken: one fold throughout, or several in sections. */
  readonly fold: Fold | 'sections';
  /** The same by gores, as the table of ways names it. */
  readonly way: LayFolds;
  readonly sections: readonly LaySection[];
  /** Length of cloth that the pieces take, before anything is added for buying. */
  readonly length: number;
  /** Share of the cloth, selvedges included, that becomes pieces. */
  readonly used: number;
  /** Length to buy; undefined only where nothing is cut. */
  readonly buy: number;
  /** In cutting order. */
  readonly pieces: readonly PlacedPiece[];
  /** Free rectangles, the largest first. */
  readonly spare: readonly Rectangle[];
  /** Every way that was looked at. */
  readonly ways: readonly LayWay[];
  /** Joins made in pieces that are wider than the cloth. */
  readonly joins: readonly LayJoin[];
  /** Layers whose grain runs across the cloth. */
  readonly railroaded: readonly string[];
  /** What its layers would take if each were laid by itself; only where there are several. */
  readonly apart?: LaidApart;
  /** The search was stopped before it had done its work: a shorter lay was still being looked for. */
  readonly cutShort: boolean;
}

export interface LayJoin {
  readonly gore: string;
  readonly layer: string;
  readonly parts: number;
}

/** Layers of one cloth laid and bought one by one, mm. */
export interface LaidApart {
  readonly layers: readonly { readonly layer: string; readonly length: number; readonly buy: number }[];
  /** All of them. */
  readonly length: number;
  readonly buy: number;
}

/** A cloth as it lies on the table, mm. */
export interface ClothFacts {
  /** From edge to edge. */
  readonly width: number;
  /** What is not used at each side: selvedge, and edging cut off first. */
  readonly selvedge: number;
  readonly edgingDepth: number;
  /** Between them. */
  readonly usable: number;
  readonly oneWay: boolean;
  readonly repeatDown: number | undefined;
  readonly repeatAcross: number | undefined;
}

/** A stretch of the lay that is folded in one way. */
export interface LaySection {
  readonly fold: Fold;
  /** Along the cloth, mm. */
  readonly from: number;
  readonly to: number;
  /** On one-way cloth folded crosswise: cut along the fold, the upper layer turned round in its own plane. */
  readonly upperTurned: boolean;
}

/** One piece on the cloth. */
export interface PlacedPiece {
  /** Cutting order, from 1. Pieces cut through two layers at once share a number. */
  readonly number: number;
  readonly layer: string;
  readonly gore: string;
  /** 1 … of the pieces of this gore in the layer. */
  readonly copy: number;
  readonly mirrored: boolean;
  /** 0 or 180; 90 and 270 where the grain runs across the cloth; 45, 135, 225 and 315 on the bias. */
  readonly turned: number;
  /** Index into the sections. */
  readonly section: number;
  /** On a folded stretch: which way this ply lies while it is cut. */
  readonly face: 'up' | 'down';
  readonly source: CutPiece;
  /** `1 of 2` where the gore is pieced. */
  readonly part?: string;
  /** Closed, in cloth coordinates. */
  readonly outline: readonly Curve[];
  /** Along the grain, the head last, in cloth coordinates. */
  readonly grain: Line;
  readonly notches: readonly Line[];
}

export interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Pieces to mark, how many of them are cut double, and whether an upper layer is cut off and turned round. */
export interface LayHandling {
  readonly pieces: number;
  readonly double: number;
  readonly upperTurned: boolean;
}

/** A gore that takes more than the cloth has, folded so. mm. */
export interface TooWide {
  readonly gore: string;
  readonly width: number;
  readonly usable: number;
}

/** A row of the table of ways. */
export interface LayWay {
  readonly folds: LayFolds;
  readonly fold: Fold | 'sections';
  /** Undefined where it cannot be cut so, and then `tooWide` says what stands against it. */
  readonly length: number | undefined;
  readonly used: number | undefined;
  readonly buy: number | undefined;
  /** How it is handled at the table. */
  readonly handling: LayHandling | undefined;
  readonly tooWide: TooWide | undefined;
  readonly taken: boolean;
}
