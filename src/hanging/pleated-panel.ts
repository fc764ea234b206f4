import type { GownDraft } from '../draft/draft-gown.ts';
import type { Point } from '../geometry/curve.ts';
import type { GorePleating } from './gore-folds.ts';
import { depthsAcross, steady } from './gown-panels.ts';
import { placedPleats } from './placed-pleats.ts';
import type { PleatColumn } from './pleat-column.ts';
import { pleatsAllAlong } from './pleats-all-along.ts';
import type { Folded, Panel } from './sewn-cloth.ts';

/**
 * A gore with its pleats opened out flat, and how they lie folded. Every fold is a column, and so is its inner edge, in a
 * mesh of twice the stride too.
 *
 * ```
 *            outer edge                under 'last': the same from the other side
 *   gore ────────────┐  ply 2
 *          ┌─────────┘  ply 1          columns: gore, outer edge, inner edge, line, gore
 *          └──────────┬─ gore  ply 0
 *      inner edge    line
 * ```
 */
export function pleatedPanel(draft: GownDraft, gore: number, pleating: GorePleating, down: number): Panel {
  const columns =
    pleating.is === 'placed'
      ? placedPleats(draft, gore, pleating.folds, down)
      : pleatsAllAlong(draft, gore, pleating);
  const flat = flatOf(draft, gore, columns, down);
  const across = columns.length - 1;
  return {
    name: draft.gown.gores[gore]!.name,
    across,
    strips: [{ first: 0, down, flat }],
    folded: { ...foldedOf(columns, draft.gown.gores[gore]!.top), widens: pleating.is === 'filled' },
  };
}

/** Every fold opened out square to its line, the gore beyond it moved on by what it takes. */
function flatOf(draft: GownDraft, gore: number, columns: readonly PleatColumn[], down: number): Float64Array {
  const frame = draft.frames[gore]!;
  const { waist, hem } = draft;
  const [top, bottom] = [waist, hem].map((edge) => {
    const width = frame.widthAt(edge.valueAt(edge.ways[gore]!));
    const shares = columns.map(({ share, beside }) => Math.min(1, Math.max(0, share + beside / width)));
    return depthsAcross(draft, gore, edge, shares);
  }) as [number[], number[]];
  const pointAt = (column: number, row: number): Point => {
    const { share, beside } = columns[column]!;
    const slant = top[column]! + ((bottom[column]! - top[column]!) * row) / down;
    return frame.pointAt(slant, share + beside / frame.widthAt(slant));
  };
  const flat = new Float64Array(2 * columns.length * (down + 1));
  let [movedX, movedY] = [0, 0];
  for (const [column, { fold, into, from, share }] of columns.entries()) {
    const [a, b] = [pointAt(column, 0), pointAt(column, down)];
    const long = Math.sqrt((b.x - a.x) ** 2 + (b.y - a.y) ** 2);
    // Square to the line, to the last side edge.
    const [x, y] = [(b.y - a.y) / long, (a.x - b.x) / long];
    const isWedge = from > 0;
    // What begins above the hem is let in beside the gore, which stays where it is.
    const out = fold === undefined ? 0 : isWedge && share === 0 ? into - 2 * fold.depth : into;
    for (let row = 0; row <= down; row++) {
      const point = pointAt(column, row);
      const letIn = row < from ? 0 : out;
      const at = 2 * (column * (down + 1) + row);
      flat[at] = steady(point.x + movedX + x * letIn);
      flat[at + 1] = steady(point.y + movedY + y * letIn);
    }
    if (fold !== undefined && !isWedge && into >= 2 * fold.depth) {
      movedX += x * into;
      movedY += y * into;
    }
  }
  return flat;
}

function foldedOf(columns: readonly PleatColumn[], sewn: number): Omit<Folded, 'widens'> {
  const stitched = columns.flatMap(({ fold, into }, end) => {
    if (fold === undefined || into < 2 * fold.depth || !(fold.stitchedDown > 0)) return [];
    const first = columns.findIndex((other) => other.fold === fold);
    return [
      { columns: [columns[first]!.into > 0 ? first - 1 : first, end] as const, down: fold.stitchedDown },
    ];
  });
  return {
    along: columns.map(({ along }) => along / sewn),
    aside: columns.map(({ aside }) => aside),
    plies: columns.map(({ ply }) => ply),
    from: columns.map(({ from }) => from),
    shows: columns.map(({ shows }) => shows),
    folds: columns.flatMap(({ isFold }, column) => (isFold ? [column] : [])),
    seen: columns.flatMap(({ isOuter, fold, from }, column) =>
      isOuter ? [{ column, from: fold === undefined ? 0 : from }] : [],
    ),
    stitched,
  };
}
