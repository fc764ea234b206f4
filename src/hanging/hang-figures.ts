import type { Hang } from './hang.ts';
import type { HungSeam } from './sewn-gown.ts';

/** What the hanging cloth measures. mm. */
export interface HangFigures {
  /** Off the floor, along the sewn hem from the centre front by her left. */
  readonly hem: readonly HemPlace[];
  /** Stretches of the hem that lie on the floor, along it. */
  readonly touches: readonly { readonly from: number; readonly to: number }[];
  /** Of what lies on the floor behind her: how far behind her heels it ends, and how wide it lies. */
  readonly train?: TrainLain;
  /** Length of cloth that lies on the floor at the centre back, or on a gown without one at the seam where most lies, up from the hem; 0 where it hangs clear. */
  readonly lainBehind: number;
  readonly stretch: number;
  readonly assumedFloor: boolean;
}

/** Left is to her left. */
export interface TrainLain {
  readonly behindHeel: number;
  readonly left: number;
  readonly right: number;
}

export interface HemPlace {
  readonly along: number;
  readonly height: number;
  /** Seen from above, behind the middle of her waist and to her left. */
  readonly behind: number;
  readonly left: number;
  /** The station next to it, and how far along the hem that is. */
  readonly near: { readonly station: string; readonly beside: number };
}

/** Along the hem between two figures, mm. */
const EVERY = 50;
/** Cloth this near the floor lies on it, mm: a hem rests on its own thickness and on small folds. */
export const LIES = 4;
/** How far her heels stand behind the middle of her waist, mm. From memory. */
export const HEEL_BEHIND = 50;

/** @param beside places of what hangs over the skirt: a train may be sewn on */
export function hangFigures(hang: Hang, beside: readonly Float64Array[] = []): HangFigures {
  const hem = hemPlaces(hang);
  const train = trainOf([hang.place, ...beside]);
  return {
    hem,
    touches: touchesOf(hem),
    ...(train === undefined ? {} : { train }),
    lainBehind: lainBehind(hang),
    stretch: hang.stretch,
    assumedFloor: hang.assumedFloor,
  };
}

function hemPlaces({ columns, rows, place, seams, stationNames }: Hang): HemPlace[] {
  const at = (column: number, axis: number): number =>
    place[3 * ((column % columns) * rows + rows - 1) + axis]!;
  const places: Omit<HemPlace, 'near'>[] = [];
  const reached = [0];
  let [passed, wanted] = [0, 0];
  for (let column = 0; column < columns; column++) {
    const [x, y, z] = [0, 1, 2].map((axis) => at(column + 1, axis) - at(column, axis)) as [
      number,
      number,
      number,
    ];
    const length = Math.sqrt(x * x + y * y + z * z);
    for (; wanted < passed + length; wanted += EVERY) {
      const part = (wanted - passed) / length;
      places.push({
        along: wanted,
        left: at(column, 0) + x * part,
        behind: at(column, 1) + y * part,
        height: at(column, 2) + z * part,
      });
    }
    passed += length;
    reached.push(passed);
  }
  const stations = seams.map(({ station, column }) => ({
    station: stationNames[station]!,
    at: reached[column]!,
  }));
  return places.map((own) => ({ ...own, near: nearestOf(stations, own.along, passed) }));
}

function nearestOf(
  stations: readonly { readonly station: string; readonly at: number }[],
  along: number,
  round: number,
): HemPlace['near'] {
  return stations
    .map(({ station, at }) => {
      const apart = Math.abs(at - along);
      return { station, beside: Math.min(apart, round - apart) };
    })
    .reduce((best, one) => (one.beside < best.beside ? one : best));
}

function touchesOf(hem: readonly HemPlace[]): { from: number; to: number }[] {
  const touches: { from: number; to: number }[] = [];
  for (const [i, { along, height }] of hem.entries()) {
    if (height > LIES) continue;
    const last = touches[touches.length - 1];
    if (last !== undefined && i > 0 && hem[i - 1]!.height <= LIES) last.to = along;
    else touches.push({ from: along, to: along });
  }
  return touches;
}

/** Cloth lower than this is on the floor with the folds that it lies in, mm. */
const LIES_IN_FOLDS = 25;

function lainBehind(hang: Hang): number {
  const behind = hang.seams.filter(({ station }) => hang.stationNames[station] === 'centre-back');
  const seams = behind.length > 0 ? behind : hang.seams;
  return Math.max(0, ...seams.map((seam) => lainAt(hang, seam)));
}

/** Up from the hem to where it leaves the floor, small folds and all; between two places in proportion. */
function lainAt({ rows, place, depth }: Hang, { column }: HungSeam): number {
  const first = column * rows;
  const height = (row: number): number => place[3 * (first + row) + 2]!;
  let row = rows - 1;
  if (height(row) > LIES_IN_FOLDS) return 0;
  while (row > 1 && height(row - 1) <= LIES_IN_FOLDS) row--;
  const part = (LIES_IN_FOLDS - height(row)) / (height(row - 1) - height(row));
  const lies = depth[first + row]! - part * (depth[first + row]! - depth[first + row - 1]!);
  return depth[first + rows - 1]! - lies;
}

function trainOf(places: readonly Float64Array[]): TrainLain | undefined {
  let [behind, left, right] = [0, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const place of places) {
    for (let i = 0; i < place.length; i += 3) {
      if (place[i + 2]! > LIES || place[i + 1]! < HEEL_BEHIND) continue;
      behind = Math.max(behind, place[i + 1]! - HEEL_BEHIND);
      left = Math.max(left, place[i]!);
      right = Math.min(right, place[i]!);
    }
  }
  return behind > 0 ? { behindHeel: behind, left, right } : undefined;
}
