import type { Point } from '../geometry/curve.ts';
import type { DepthMap } from './depth-map.ts';
import { drawn, LEAST_LINE } from './drawn-lines.ts';
import type { Hang } from './hang.ts';
import { keptApart } from './kept-apart.ts';
import { type Opening, openingLine } from './lines-on-skirt.ts';
import type { SeenPoint } from './seen.ts';
import { lengthOfLine } from './smoothed-line.ts';
import { strokeAt } from './strokes-across.ts';
import type { Surface } from './surface.ts';
import { SKIRT, visibleParts } from './visible-parts.ts';

/** Cloth from the sewn edge to the hem at a column of the whole cloth, mm. */
export function hemDepth({ depth, rows, stride }: Hang, column: number): number {
  return depth[(Math.round(column / stride) + 1) * rows - 1]!;
}

/** A pocket or a slit as far as it is seen, but for the outline, with a tack across each end that is sewn. */
export function slotSeen(
  map: DepthMap,
  hang: Hang,
  seen: Surface,
  slot: Opening,
  outlines: readonly (readonly Point[])[],
): { readonly lines: Point[][]; readonly tacks: Point[][] } {
  const whole = openingLine(hang, seen, slot);
  const lines = keptApart(drawn(visibleParts(map, whole, SKIRT)), outlines, LEAST_LINE);
  const isEnd = (at: Point | undefined, end: SeenPoint): boolean =>
    at !== undefined && lengthOfLine([at, { x: end[0], y: end[1] }]) < 1;
  const [first, last] = [whole[0]!, whole[whole.length - 1]!];
  return {
    lines,
    tacks: lines.flatMap((line) => [
      ...(isEnd(line[0], first) ? [strokeAt(line[0]!, line[1]!)] : []),
      ...(slot.to < hemDepth(hang, slot.column) && isEnd(line.at(-1), last)
        ? [strokeAt(line.at(-1)!, line.at(-2)!)]
        : []),
    ]),
  };
}
