import type { Hang } from './hang.ts';
import { columnLine, slantedLine } from './lines-on-skirt.ts';
import { FINER, type Surface } from './surface.ts';
import type { SeenLine } from './turning-lines.ts';
import type { SlantedLine } from './wrap-line.ts';

/** A column, with parts of one, down which the fold of a pleat shows, and the row of the whole cloth in which it begins. */
export interface PleatLine {
  readonly column: number;
  readonly from: number;
}

/** Seams down the skirt, the folds of pleats and the edge of a wrap. */
export function seamLines(
  hang: Hang,
  seen: Surface,
  { pleats, edge }: { readonly pleats: readonly PleatLine[]; readonly edge: SlantedLine | undefined },
): SeenLine[] {
  return [
    ...hang.seams
      .filter(({ station, onFold }) => station !== edge?.station && onFold !== true)
      .map(({ column, from = 0 }) => columnLine(hang, seen, column * FINER, from)),
    ...pleats.map(({ column, from }) => {
      const line = columnLine(hang, seen, Math.round((column / hang.stride) * FINER) % seen.columns, 0);
      return line.slice((from / hang.stride) * FINER);
    }),
    ...(edge === undefined ? [] : [slantedLine(hang, seen, edge)]),
  ];
}
