import type { BustlePoint } from '../making/bustle/bustle.ts';
import type { Hang } from './hang.ts';
import { LIES } from './hang-figures.ts';
import type { Tie } from './sewn-cloth.ts';
import type { GownHung } from './sewn-gown.ts';

/** A point that the bustle could have more, as it would be tied. */
export interface PointOffered {
  readonly point: BustlePoint;
  readonly ties: readonly Tie[];
}

/** Points that a bustle wants more where its hem lies on the floor; found by hanging the gown with them. */
export interface BustleAdvice {
  readonly points: readonly BustlePoint[];
  /** With these points no part of the hem lies on the floor. */
  readonly clears: boolean;
}

/** Hung anew at most so often: each time with a point more for every stretch that lies on the floor. */
const MOST_ROUNDS = 4;

/** @param hangWith hangs the gown with these ties beside its own */
export function bustleAdvice(
  { offered, sewn }: { readonly offered: readonly PointOffered[]; readonly sewn: GownHung },
  drawnUp: Hang,
  hangWith: (more: readonly Tie[]) => Hang,
): BustleAdvice | undefined {
  let low = lowColumns(drawnUp, sewn);
  if (low.length === 0) return undefined;
  const added = new Set<PointOffered>();
  for (let round = 0; round < MOST_ROUNDS && low.length > 0; round++) {
    const more = low.flatMap((column) => nearestOffered(offered, added, column) ?? []);
    if (more.length === 0) break;
    for (const own of more) added.add(own);
    low = lowColumns(hangWith(tiesOf(added)), sewn);
  }
  if (low.length > 0) return { points: pointsOf(added), clears: false };
  // The first may have come to nothing once their neighbours stood.
  for (const own of [...added]) {
    if (added.size === 1) break;
    added.delete(own);
    if (lowColumns(hangWith(tiesOf(added)), sewn).length > 0) added.add(own);
  }
  return { points: pointsOf(added), clears: true };
}

function pointsOf(added: ReadonlySet<PointOffered>): BustlePoint[] {
  return [...added].map(({ point }) => point);
}

function tiesOf(added: ReadonlySet<PointOffered>): Tie[] {
  return [...added].flatMap(({ ties }) => ties);
}

function nearestOffered(
  offered: readonly PointOffered[],
  added: ReadonlySet<PointOffered>,
  column: number,
): PointOffered | undefined {
  const off = ({ ties }: PointOffered): number =>
    Math.min(...ties.map((tie) => Math.abs(tie.column - column)));
  return offered
    .filter((own) => !added.has(own) && own.ties.length > 0)
    .reduce<PointOffered | undefined>(
      (best, own) => (best === undefined || off(own) < off(best) ? own : best),
      undefined,
    );
}

/** Columns of the sewn cloth in the middle of each stretch of hem that lies on the floor; of a mirrored gown those of her left. */
function lowColumns({ columns, rows, place, stride, mirrored }: Hang, { closing }: GownHung): number[] {
  const last = mirrored ? columns / 2 : columns - 1;
  const lies = (column: number): boolean => place[3 * (column * rows + rows - 1) + 2]! <= LIES;
  const found: number[] = [];
  let from: number | undefined;
  for (let column = 0; column <= last + 1; column++) {
    const isLow = column <= last && lies(column);
    if (isLow) from ??= column;
    else if (from !== undefined) {
      // What lies there up to the middle behind lies there on the other side too.
      const to = closing === 'mirrored' && column > last ? last : column - 1;
      found.push(stride * Math.round((from + to) / 2));
      from = undefined;
    }
  }
  return found;
}
