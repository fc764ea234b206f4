import type { Drawing } from '../drawing.ts';

/** What a paper is made of, from top to bottom. Texts are plain; lengths mm. See `flowPages`. */
export type Block =
  | HeadingBlock
  | ParagraphBlock
  | ItemBlock
  | CautionBlock
  | TableBlock
  | FigureBlock
  | FieldsBlock
  | LinesBlock
  | ColumnsBlock
  | FittedBlock
  | GapBlock
  | PageBreakBlock;

/** 1 the paper's title, 2 a section, 3 a part of one. Stays with what follows; 1 and 2 become PDF bookmarks. */
export interface HeadingBlock {
  readonly kind: 'heading';
  readonly level: 1 | 2 | 3;
  readonly text: string;
}

export interface ParagraphBlock {
  readonly kind: 'paragraph';
  readonly text: string;
  /** Bold words that the paragraph starts with. */
  readonly lead?: string;
  readonly bold?: boolean;
}

/** A line of a list: a box to tick, a number, both, or (neither) a dash. Never cut by a page end. */
export interface ItemBlock {
  readonly kind: 'item';
  readonly text: string;
  readonly tick?: boolean;
  /** As printed: `7` or `4.2`. */
  readonly number?: string;
  /** Indented paragraphs below: what the step needs, where to stop. */
  readonly notes?: readonly string[];
}

/** A boxed reminder; its lead is `Caution` unless given. */
export interface CautionBlock {
  readonly kind: 'caution';
  readonly text: string;
  readonly lead?: string;
}

/**
 * A table that is moved whole to the next page where it fits there, else cut between rows only, its heads repeated.
 * Column widths follow the contents unless `shares` gives them as parts of the whole.
 */
export interface TableBlock {
  readonly kind: 'table';
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
  readonly shares?: readonly number[];
  /** By column; `start` where not given. Figures stand at the `end`. */
  readonly align?: readonly ('start' | 'end')[];
  /** A box to tick in front of each row. */
  readonly tick?: boolean;
  /** Indices of rows in bold: totals. */
  readonly boldRows?: readonly number[];
  readonly caption?: string;
}

/** A drawing placed in the flow, scaled down (never up, unless `width` says so) to fit. */
export interface FigureBlock {
  readonly kind: 'figure';
  readonly drawing: Drawing;
  /** On paper; the column's width or the drawing's own where not given. */
  readonly width?: number;
  readonly maxHeight?: number;
  readonly caption?: string;
}

/** Labels with a rule to write on, in columns: a form. */
export interface FieldsBlock {
  readonly kind: 'fields';
  readonly fields: readonly string[];
  readonly columns?: number;
}

/** Empty ruled lines for notes. */
export interface LinesBlock {
  readonly kind: 'lines';
  readonly count: number;
}

/** Blocks side by side, kept on one page. */
export interface ColumnsBlock {
  readonly kind: 'columns';
  readonly columns: readonly (readonly Block[])[];
  readonly shares?: readonly number[];
}

/**
 * Blocks that stand on one side of paper together, whatever they hold: the first of the versions that fits the room, else
 * the last one smaller. `above` is what stands over them on that page, mm.
 */
export interface FittedBlock {
  readonly kind: 'fitted';
  readonly versions: readonly (readonly Block[])[];
  readonly above: number;
}

export interface GapBlock {
  readonly kind: 'gap';
  readonly height: number;
}

export interface PageBreakBlock {
  readonly kind: 'page-break';
}
