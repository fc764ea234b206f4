import type { SharedChalk } from '../../chalk/shared-tables.ts';
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { CutPiece } from '../../draft/piece.ts';
import type { Gown } from '../../gown/gown.ts';
import type { GownMeasures } from '../../truing/measure-gown.ts';
import type { Words } from '../../words/english.ts';
import type { Workroom } from '../../workroom/workroom.ts';
import type { Drawing } from '../drawing.ts';
import type { DrawnViews } from './views-drawing.ts';

/** A lay as it is shown in the job sheet. */
export interface LayFigure {
  readonly name: string;
  readonly cloth: string;
  /** What is cut from it. */
  readonly layers: readonly string[];
  /** Length to buy, mm. */
  readonly buy: number;
  /** Undefined where nothing could be laid. */
  readonly drawing?: Drawing;
  /** Width, length, what to buy, how it is folded: one line or more. */
  readonly caption: string;
}

/** All that the papers are made from: products of the stages and the words of one language. */
export interface PaperInput {
  readonly gown: Gown;
  readonly measures: GownMeasures;
  readonly cutPieces: readonly CutPiece[];
  readonly workroom: Workroom;
  /** The gown hung; no drawing of it where it was not. */
  readonly views?: DrawnViews;
  /** Layers that differ little share a table. */
  readonly chalk: readonly SharedChalk[];
  readonly lays: readonly LayFigure[];
  readonly diagnostics: readonly Diagnostic[];
  /** A lay was stopped before its search was done: what is bought and what it costs is more than it need be. */
  readonly cutShort: boolean;
  readonly words: Words;
  /** mm. */
  readonly paper: { readonly width: number; readonly height: number };
}
