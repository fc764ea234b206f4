import { type ClothMesh, meshOf } from './cloth-mesh.ts';
import { drawUp } from './drawn-up.ts';
import { refined } from './refined.ts';
import { settle } from './settle.ts';
import type { SewnCloth, Surroundings, Tie } from './sewn-cloth.ts';
import { Ties } from './ties.ts';

/** One mesh and how long it is let to settle: counted in steps, never in time. */
export interface Settling {
  /** Every how many rows and columns of the given cloth. */
  readonly stride: number;
  readonly steps: number;
  /** How far a place falls from rest in one step, mm. Larger settles in fewer steps and leaves more stretch. */
  readonly fall: number;
  /** Part of its motion that the cloth keeps from step to step. */
  readonly keeps: number;
}

/**
 * Cloth hung: where every place of the last mesh lies.
 * @param from where it hangs already, in place of where it is let go
 */
export function hangCloth(
  cloth: SewnCloth,
  around: Surroundings,
  settlings: readonly Settling[],
  { ties = [], from }: { readonly ties?: readonly Tie[]; readonly from?: ClothMesh } = {},
): ClothMesh {
  let mesh = from;
  for (const settling of settlings) {
    const next = meshOf(cloth, settling.stride);
    if (mesh !== undefined) refined(mesh, next);
    if (mesh === from) drawUp(next, ties, around.body);
    settled(next, cloth, around, settling, new Ties(next, ties));
    mesh = next;
  }
  if (mesh === undefined) throw new RangeError('nothing says how the cloth settles');
  return mesh;
}

/** Until its motion has died away: only the shape at rest is asked for, so mass and time do not appear. */
function settled(
  mesh: ClothMesh,
  cloth: SewnCloth,
  around: Surroundings,
  { steps, fall, keeps }: Settling,
  ties: Ties,
): void {
  const falls = weigh(mesh, fall);
  const stiffness = bendStiffness(mesh, cloth, fall);
  ties.hold();
  const shearLength = ties.ends.length > 0 ? Math.min(FOLDS_ANY_WAY, cloth.shearLength) : cloth.shearLength;
  settle(mesh, around, { steps, falls, stiffness, shearing: shearLength * fall, keeps, ties });
}

/**
 * Shear length of cloth that is drawn up, mm. Its folds run from loop to loop, slanting over rows and columns, and a grid
 * that resists shear cannot fold so: at 5 m Lantern's bustled hem came to rest 18 cm off the floor on the mean and 46 at
 * most, held out by its own folds, at 0.35 m 5 and 13; its points ask for 3.
 */
const FOLDS_ANY_WAY = 350;

/** Inertia added for what hangs below, so that no place is thrown past its rest by what it carries. */
const STEADIED = 2;
/** No place has less inertia than this, mm²: above the point of a godet there is no cloth at all. */
const LEAST_INERTIA = 25;

/**
 * Gives every place its inertia. Only rest is asked for, so inertia need not be weight: light places that carry much
 * are made slower (as in dynamic relaxation, Barnes 1999).
 * @returns how far each place falls in a step
 */
function weigh({ ease, held, area, along, columns, rows }: ClothMesh, fall: number): Float64Array {
  const falls = new Float64Array(ease.length);
  for (let column = 0; column < columns; column++) {
    let below = 0;
    for (let row = rows - 1; row >= 0; row--) {
      const own = column * rows + row;
      below += area[own]!;
      const reach = row + 1 < rows ? along[own]! : along[own - 1]!;
      const inertia = Math.max(LEAST_INERTIA, area[own]! + (STEADIED * fall * below) / reach);
      ease[own] = held[own] === 1 ? 0 : 1 / inertia;
      falls[own] = held[own] === 1 ? 0 : (fall * area[own]!) / inertia;
    }
  }
  return falls;
}

/** No bend is softer than one that this share of the distance between two places shows: finer folds would be the mesh's own. */
const SHOWN = 0.5;
/**
 * Bends stiffer than this, for the fourth power of the distance between places, are pushed on faster than lengths can
 * follow, and the cloth trembles. Smaller falls need no such bound, and the last steps have them.
 */
const STIFFEST = 0.5;

/** What is left of its stiffness where a fold is pressed: it springs open a little. From memory. */
const PRESSED = 0.05;

/** By place: bending length³ · fall, with the hem's own on the last row. */
function bendStiffness(
  { bends, along, rows, pressed }: ClothMesh,
  cloth: SewnCloth,
  fall: number,
): Float64Array {
  return bends.reach.map((reach, place) => {
    const row = place % rows;
    const down = row === rows - 1 ? along[place - 1]! : along[place]!;
    const apart = reach === 0 ? down : Math.min(reach, down);
    const length = Math.max(cloth.bendingLength, SHOWN * reach);
    const own = row === rows - 1 ? cloth.hemStiffness : 1;
    const stiffness = length * length * length * fall * (pressed[place] === 1 ? PRESSED : own);
    return Math.min(stiffness, STIFFEST * apart * apart * apart * apart);
  });
}
