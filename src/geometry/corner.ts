import { type Crossing, crossingsOf } from './crossings.ts';
import type { Curve, Line, Point } from './curve.ts';
import { endOf, startOf, tangentAt } from './evaluate.ts';
import { along, distance } from './point.ts';
import { partOf } from './split.ts';
import { tidied } from './tidied.ts';

/** Two runs, the second following the first, cut or lengthened so that one ends where the other begins. */
export interface Corner {
  readonly before: readonly Curve[];
  readonly after: readonly Curve[];
}

/**
 * Brings two runs together: where they cross both are cut at the crossing nearest to their corner, where they fall
 * short both run straight on until they meet.
 * @param reach how far a run may be lengthened, mm
 * @param corner where the corner is looked for: the end of the first run unless given
 * @returns undefined where they do not meet within reach
 */
export function meeting(
  before: readonly Curve[],
  after: readonly Curve[],
  reach: number,
  corner: Point = endOf(before[before.length - 1]!),
): Corner | undefined {
  const first = [...before, straightOn(before, reach)];
  const second = [straightBack(after, reach), ...after];
  let best: { i: number; j: number; crossing: Crossing; away: number } | undefined;
  for (let i = first.length - 1; i >= 0; i--) {
    for (let j = 0; j < second.length; j++) {
      for (const crossing of crossingsOf(first[i]!, second[j]!)) {
        const away = distance(crossing.point, corner);
        if (best === undefined || away < best.away) best = { i, j, crossing, away };
      }
    }
  }
  if (best === undefined) return undefined;
  const { i, j, crossing } = best;
  return {
    before: tidied([...first.slice(0, i), partOf(first[i]!, 0, crossing.t)]),
    after: tidied([partOf(second[j]!, crossing.u, 1), ...second.slice(j + 1)]),
  };
}

/** Straight continuation of a run beyond its end. */
export function straightOn(run: readonly Curve[], length: number): Line {
  const last = run[run.length - 1]!;
  const from = endOf(last);
  return { kind: 'line', from, to: along(from, tangentAt(last, 1), length) };
}

function straightBack(run: readonly Curve[], length: number): Line {
  const to = startOf(run[0]!);
  return { kind: 'line', from: along(to, tangentAt(run[0]!, 0), -length), to };
}
