/** A text that spans point into: a spec, or a file that it is based on. */
export interface Source {
  /** As the user named it; for messages only. */
  readonly name: string;
  readonly text: string;
}

/** A stretch of a source, in UTF-16 offsets, end exclusive. Line and column are worked out when printed. */
export interface Span {
  readonly source: Source;
  readonly start: number;
  readonly end: number;
}

export type Level = 'error' | 'warning' | 'note';

/** One problem or finding. Collected by every stage, sorted by place and printed in one place. */
export interface Diagnostic {
  /** Kebab-case, scripts may rely on it. */
  readonly code: string;
  readonly level: Level;
  readonly span: Span;
  /** What is wrong: a whole sentence with the figures in it, in the units of the spec. */
  readonly message: string;
  /** Why it matters at the table, in whole sentences. */
  readonly why: string;
  /** What to do, in whole sentences. */
  readonly hint: string;
  /** Rows of a small table printed below the message, the first row its heads. */
  readonly table?: readonly (readonly string[])[];
}
