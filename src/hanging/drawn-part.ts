import type { Surface } from './surface.ts';

/** What is drawn with the skirt: a surface, and lines on it as its places one after the other. */
export interface DrawnPart {
  readonly surface: Surface;
  /** She is in it, and one does not look inside. */
  readonly filled: boolean;
  /** Nothing of it is drawn from above. */
  readonly notFromAbove: boolean;
  /** Brought nearer to the eye by this, mm: what lies on other cloth is not lost in it. */
  readonly lifted: number;
  readonly edges: readonly PlaceLine[];
  readonly seams: readonly PlaceLine[];
  readonly opening: readonly PlaceLine[];
  /** Short strokes where it is gathered. */
  readonly gathers?: readonly PlaceLine[];
  /** Its cloth falls in folds, which are drawn. */
  readonly folds: boolean;
}

/** Places of a surface. */
export type PlaceLine = readonly number[];

/** Down a column of a surface. */
export function columnOf(
  { rows }: Pick<Surface, 'rows'>,
  column: number,
  from = 0,
  to = rows - 1,
): PlaceLine {
  return Array.from({ length: Math.max(0, to - from + 1) }, (_, k) => column * rows + from + k);
}

/** All along a row of a surface, back to its first place where it is closed. */
export function rowOf({ columns, rows, closed }: Surface, row: number): PlaceLine {
  return Array.from({ length: closed ? columns + 1 : columns }, (_, k) => (k % columns) * rows + row);
}
