import type { OutlineBody } from './sewn-cloth.ts';
import type { Surface } from './surface.ts';

/** Directions in which an outline is known, all round; levels lie so far apart, mm. */
const DIRECTIONS = 128;
const STEP = 10;
/** Cloth lower than this lies on the floor: it goes out much farther than what hangs over it, mm. */
const LYING = 40;
/** Looked at between two places of a surface, down and across. */
const BETWEEN = 3;

/** How far out cloth that hangs comes, at every height and in every direction: what other cloth hangs over. */
export function outlineBody(surfaces: readonly Surface[]): OutlineBody {
  const highest = Math.max(...surfaces.map(({ place }) => highestOf(place)));
  const levels = Math.max(2, Math.ceil((highest - LYING) / STEP) + 1);
  const reach = new Float64Array(levels * DIRECTIONS);
  const body = { lowest: LYING, step: STEP, directions: DIRECTIONS, reach };
  for (const surface of surfaces) eachBetween(surface, (x, y, z) => note(body, x, y, z));
  fill(body, levels);
  return body;
}

function highestOf(place: Float64Array): number {
  let most = 0;
  for (let i = 2; i < place.length; i += 3) most = Math.max(most, place[i]!);
  return most;
}

function eachBetween(
  { columns, rows, place, closed }: Surface,
  see: (x: number, y: number, z: number) => void,
): void {
  for (let column = 0; column < (closed ? columns : columns - 1); column++) {
    const [first, next] = [column * rows, ((column + 1) % columns) * rows];
    for (let row = 0; row + 1 < rows; row++) {
      for (let i = 0; i < BETWEEN; i++) {
        for (let k = 0; k < BETWEEN; k++) {
          const [u, v] = [i / BETWEEN, k / BETWEEN];
          const at = (axis: number): number => {
            const here =
              place[3 * (first + row) + axis]! * (1 - v) + place[3 * (first + row + 1) + axis]! * v;
            const there = place[3 * (next + row) + axis]! * (1 - v) + place[3 * (next + row + 1) + axis]! * v;
            return here * (1 - u) + there * u;
          };
          see(at(0), at(1), at(2));
        }
      }
    }
  }
}

function note({ lowest, step, directions, reach }: OutlineBody, x: number, y: number, z: number): void {
  const level = Math.round((z - lowest) / step);
  if (level < 0 || level * directions >= reach.length) return;
  const at = level * directions + (Math.round(directionOf(x, y, directions)) % directions);
  reach[at] = Math.max(reach[at]!, Math.sqrt(x * x + y * y));
}

/** Where nothing was seen: as in the next directions of the level, or as the level below or above. */
function fill({ directions, reach }: OutlineBody, levels: number): void {
  for (let level = 0; level < levels; level++) {
    const own = reach.subarray(level * directions, (level + 1) * directions);
    const seen = own.slice();
    for (let k = 0; k < directions; k++) {
      for (let off = 1; own[k] === 0 && off <= NEXT; off++)
        own[k] = Math.max(seen[(k + off) % directions]!, seen[(k + directions - off) % directions]!);
      if (own[k] === 0 && level > 0) own[k] = reach[(level - 1) * directions + k]!;
    }
  }
  for (let level = levels - 2; level >= 0; level--) {
    for (let k = 0; k < directions; k++)
      if (reach[level * directions + k] === 0)
        reach[level * directions + k] = reach[(level + 1) * directions + k]!;
  }
}

const NEXT = 6;

/** A direction as a number from 0 to `directions`, by divisions alone: along the sides of a square set on its corner. */
export function directionOf(x: number, y: number, directions: number): number {
  const round = Math.abs(x) + Math.abs(y);
  if (!(round > 0)) return 0;
  const quarter = y >= 0 ? (x >= 0 ? y : round - x) : x < 0 ? 2 * round - y : 3 * round + x;
  return ((quarter / round) * directions) / 4;
}
