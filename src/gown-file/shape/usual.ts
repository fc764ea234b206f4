/** What holds where a spec says nothing. Lengths in mm. */

/** Sewn, raw edge to seam line: 5/8 in, to the nearest millimetre (textbook). */
export const USUAL_ALLOWANCE = 15;

/** How high a front hem hangs off the floor; walked in and adjusted (textbook). */
export const USUAL_OFF_FLOOR = 25;

/** What is taken off each side of a cloth whose selvedge is not measured (common practice: 5 to 15). */
export const USUAL_SELVEDGE = 10;

/** Room left for the floor under a bustled hem where none is given (common practice). */
export const USUAL_CLEARANCE = 25;

/** A zip starts clear of the waist seam's bulk (common practice); lacing and hooks begin at the seam. */
export const USUAL_START = { zip: 25, lacing: 0, hooks: 0 } as const;

/** Cloth of a flounce for one of the edge: half as much again (textbook). */
export const USUAL_RUFFLE = 1.5;

/** A waistband runs on past its opening to take a hook (textbook: 1 1/4 in). */
export const USUAL_OVERLAP = 30;

/** A pocket in a seam: a hand goes in, and its bag holds it (common practice). */
export const USUAL_POCKET = { opening: 165, depth: 300, width: 160 } as const;

/** Printers leave up to 6.7 mm unprinted; 10 mm suits them all (printer manuals). */
export const USUAL_PAPER_MARGIN = 10;

/** Eyelets stand this far apart, and this far from the edge, where nothing is said (common practice). */
export const USUAL_EYELETS = { eyelets: 25, fromEdge: 15 } as const;

/** Lace that hangs free for tying, both ends together (common practice). */
export const USUAL_TAILS = 1000;

/** Bones keep clear of each sewn edge by half an inch, and are a quarter inch wide (common practice). */
export const USUAL_BONES = { clear: 13, width: 7 } as const;

/** Stones keep so far off seams and edges, mm: a presser foot and a finger (from memory). */
export const USUAL_CLEAR_OF_SEAMS = 5;
