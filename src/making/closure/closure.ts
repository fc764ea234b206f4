/** The way she gets in: up from the floor over the hips, or down over the head and shoulders. */
export type Entry = 'steps-in' | 'over-the-head';

/**
 * Girth that passes an opening: the waist seam's own and both sides of the opening, waist + 2D (closed form). All mm.
 * @param waist sewn waist seam
 * @param opening D, how far it opens below the waist seam
 */
export function girthThatPasses(waist: number, opening: number): number {
  return waist + 2 * opening;
}

/** The opening that lets a girth through: (girth − waist)/2, never below 0. mm. */
export function openingFor(waist: number, girth: number): number {
  return Math.max(0, (girth - waist) / 2);
}

/** Whether she gets in, and by which measure. */
export interface Passage {
  readonly passes: number;
  /** The girths that have to pass the way she gets in; empty when none was given. */
  readonly against: readonly { readonly entry: Entry; readonly girth: number; readonly room: number }[];
  /** Undefined when no girth was given to judge by. */
  readonly clear: boolean | undefined;
  /** Opening that would just do, mm. */
  readonly needed: number | undefined;
}

/**
 * Stepping in, the hip has to pass; over the head, the shoulders; where the way is not given, either will do.
 * All mm.
 */
export function passageOf(
  waist: number,
  opening: number,
  body: { readonly hip?: number; readonly shoulders?: number; readonly entry?: Entry },
): Passage {
  const passes = girthThatPasses(waist, opening);
  const against: { entry: Entry; girth: number; room: number }[] = [];
  if (body.hip !== undefined && body.entry !== 'over-the-head') {
    against.push({ entry: 'steps-in', girth: body.hip, room: passes - body.hip });
  }
  if (body.shoulders !== undefined && body.entry !== 'steps-in') {
    against.push({ entry: 'over-the-head', girth: body.shoulders, room: passes - body.shoulders });
  }
  if (against.length === 0) return { passes, against, clear: undefined, needed: undefined };
  const least = Math.min(...against.map((one) => one.girth));
  return { passes, against, clear: against.some((one) => one.room >= 0), needed: openingFor(waist, least) };
}

/** Lengths of zip that shops keep, mm from stop to stop. Common practice. */
export const STOCK_ZIPS = [200, 220, 250, 300, 350, 400, 500, 550, 600] as const;

export interface ZipToBuy {
  readonly stock: number;
  /** Taken off at the bottom: a new stop is sewn at the opening's length and the rest cut off, mm. */
  readonly shortenBy: number;
}

/** The shortest stock zip that is long enough: buy longer and shorten (textbook). Undefined past the longest. mm. */
export function zipToBuy(opening: number): ZipToBuy | undefined {
  const stock = STOCK_ZIPS.find((length) => length >= opening - 0.05);
  return stock === undefined ? undefined : { stock, shortenBy: Math.max(0, stock - opening) };
}

export interface PliesAtWaist {
  /** Through the skirt, and through skirt and bodice, in one sewing of the waist seam. */
  readonly skirt: number;
  readonly together: number;
  /** Where pressed-open seams of skirt and bodice meet at the waist seam: each lies double there. */
  readonly atCrossings: number;
}

/**
 * Thicknesses under the needle: one for each layer and each ply of the bodice; twice that where their seams, pressed
 * open, cross the waist seam.
 */
export function pliesAtWaist(layers: number, bodicePlies: number): PliesAtWaist {
  const together = layers + bodicePlies;
  return { skirt: layers, together, atCrossings: 2 * together };
}

/** How far a second row of stitching usually lies above the first, mm. From memory. */
export const USUAL_SECOND_ROW = 3;

/** What has to stay between needle and bone, mm: common practice says above 6. */
export const LEAST_BONE_CLEARANCE = 6;

/** Between the upper row of stitching and the ends of the bones, mm. Negative: the needle meets the bone. */
export function boneClearance(bonesEnd: number, secondRow: number): number {
  return bonesEnd - secondRow;
}
