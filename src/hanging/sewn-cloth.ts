/**
 * What is hung, in plain numbers that pass from thread to thread. Lengths in mm; x to the wearer's left, y to her back,
 * z up from the floor.
 *
 * Cloth is a grid: columns run down the panels, rows run round, and where two panels are sewn together they share a
 * column, so that a seam cannot open.
 */
export interface SewnCloth {
  /** From the first column round; each begins on the column where the one before ends. */
  readonly panels: readonly Panel[];
  /** Rows below the top one. */
  readonly down: number;
  readonly closing: Closing;
  /** By place (see `placeIndex`): 1 where the cloth is held. */
  readonly held: Uint8Array;
  /** Where every place lies before the cloth is let go; three numbers a place. */
  readonly start: Float64Array;
  /**
   * By place: the share of its width to which the cloth between here and the next column may be pushed together without
   * resisting, where it is gathered or pleated in folds smaller than the grid; 1 where it is smooth.
   */
  readonly gathered: Float64Array;
  /** By place: how far off what is worn under it it lies, over other plies of itself, mm. */
  readonly lifted: Float64Array;
  /** Bending length, mm: the third root of bending stiffness over weight (Peirce 1930). */
  readonly bendingLength: number;
  /** How many times stiffer than the cloth the hem is in bending: it is turned, faced or braided. */
  readonly hemStiffness: number;
  /** Shear stiffness over weight, mm: how much of its own cloth one width of it carries before it shears by 1. */
  readonly shearLength: number;
}

/**
 * `ring`: the last column is sewn to the first. `mirrored`: the first and the last column lie on the plane x = 0, and
 * the other half is this one's mirror image; `half`: the last column alone does, and the first side edge is free. `open`:
 * both side edges are free.
 */
export type Closing = 'ring' | 'mirrored' | 'half' | 'open';

/** Flat cloth between two columns: a gore, and what is sewn to its hem. */
export interface Panel {
  readonly name: string;
  /** Columns of cloth between its two side edges. */
  readonly across: number;
  /** From the top down; each begins on the row on which the one before ends. */
  readonly strips: readonly Strip[];
  /** Where it is pleated. */
  readonly folded?: Folded;
}

/** How a pleated panel lies folded; by column. mm. */
export interface Folded {
  /** Where it is sewn on: part of the panel's sewn top edge from its first side edge. */
  readonly along: readonly number[];
  /** From there to where it lies folded, to the last side edge; alike all the way down unless the folds widen as the skirt does. */
  readonly aside: readonly number[];
  readonly widens: boolean;
  /** Plies of its cloth under it. */
  readonly plies: readonly number[];
  /** The row in which its fold begins: above that it lies with its line. */
  readonly from: readonly number[];
  /** The cloth from here to the next column adds to the width of the skirt as it is sewn. */
  readonly shows: readonly boolean[];
  /** Columns that are pressed into a fold: cloth does not resist there. */
  readonly folds: readonly number[];
  /** Folds that are seen from outside, and their first row. */
  readonly seen: readonly { readonly column: number; readonly from: number }[];
  /** Columns that are stitched together so far down. */
  readonly stitched: readonly { readonly columns: readonly [number, number]; readonly down: number }[];
}

/** One flat piece of cloth. Where two are sewn together the upper one's width holds, and the lower is gathered to it. */
export interface Strip {
  /** Its first row, and the rows below that one. */
  readonly first: number;
  readonly down: number;
  /** x, y of its places lying flat, column by column from its first side edge, each from the top down. */
  readonly flat: Float64Array;
}

/** Two plies bend at least twice as hard as one, and eight times where they are one (Bernoulli); a hem lies between. */
const HEM_STIFFNESS = 4;

/**
 * What is left of its width where cloth lies in ripples that the grid is too coarse for: 3 mm high where columns stand
 * 36 mm apart. So little more cloth than what is below it spreads, and is not driven into a single fold.
 */
const RIPPLES = 0.98;

/** Cloth that is not yet held anywhere. */
export function newCloth(
  panels: SewnCloth['panels'],
  down: number,
  closing: SewnCloth['closing'],
  { bendingLength, shearLength }: Pick<SewnCloth, 'bendingLength' | 'shearLength'>,
): SewnCloth {
  const count = columnsOf({ panels, closing }) * (down + 1);
  return {
    panels,
    down,
    closing,
    held: new Uint8Array(count),
    start: new Float64Array(3 * count),
    gathered: new Float64Array(count).fill(RIPPLES),
    lifted: new Float64Array(count),
    bendingLength,
    hemStiffness: HEM_STIFFNESS,
    shearLength,
  };
}

/** From a place of a strip to another, lying flat, mm; rows counted from the cloth's first. */
export function flatApart(strip: Strip, c0: number, r0: number, c1: number, r1: number): number {
  const a = flatIndex(strip, c0, r0);
  const b = flatIndex(strip, c1, r1);
  const x = strip.flat[b]! - strip.flat[a]!;
  const y = strip.flat[b + 1]! - strip.flat[a + 1]!;
  return Math.sqrt(x * x + y * y);
}

export function flatIndex({ first, down }: Strip, column: number, row: number): number {
  return 2 * (column * (down + 1) + row - first);
}

/** The strip that a row ends or that it lies in. */
export function stripOf({ strips }: Panel, row: number): Strip {
  return strips.find(({ first, down }) => row <= first + down) ?? strips[strips.length - 1]!;
}

/** What stands inside the skirt: levels that are ellipses, from the floor up. */
export interface Body {
  /** Height of the first level and the distance from one to the next, mm. */
  readonly lowest: number;
  readonly step: number;
  /** Half the width (along x) and half the depth (along y) at each level, mm. */
  readonly halfWidth: Float64Array;
  readonly halfDepth: Float64Array;
}

/** Cloth that other cloth hangs over: how far out it comes, by level and by direction (see `directionOf`). mm. */
export interface OutlineBody {
  readonly lowest: number;
  readonly step: number;
  readonly directions: number;
  readonly reach: Float64Array;
}

/** A place of a column drawn up to another one above it, as a bustle's loop is hooked to its button. Depths of cloth, mm. */
export interface Tie {
  readonly column: number;
  readonly anchor: number;
  readonly pickUp: number;
  /** How far outside of the anchor the picked-up place comes to lie, mm; negative inside, behind the cloth. */
  readonly outside: number;
}

export interface Surroundings {
  readonly body?: Body;
  readonly outline?: OutlineBody;
  /** Height of the floor, mm; absent where nothing reaches it. */
  readonly floor?: number;
  /** Grip of the floor: friction for one of pressure. */
  readonly floorGrip: number;
  readonly bodyGrip: number;
}

export function columnsOf({ panels, closing }: Pick<SewnCloth, 'panels' | 'closing'>): number {
  const between = panels.reduce((sum, panel) => sum + panel.across, 0);
  return closing === 'ring' ? between : between + 1;
}

/** Columns of both halves of a mirrored cloth all the way round: its first and its last column stand once. */
export function columnsAllRound(cloth: Pick<SewnCloth, 'panels' | 'closing'>): number {
  return 2 * (columnsOf(cloth) - 1);
}

/** Where a place stands among all places: column by column, each from the top down. */
export function placeIndex(cloth: Pick<SewnCloth, 'down'>, column: number, row: number): number {
  return column * (cloth.down + 1) + row;
}
