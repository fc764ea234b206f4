/** A place on the hem: which gore, and how far across it, as one number; 0 at the first station, 1 at the second. */
export type HemPlace = number;

/** How far the hem goes up at a place, mm; negative lets it down. */
export interface HemKnot {
  readonly place: HemPlace;
  readonly up: number;
}

/** A stretch of a seam taken in on each side of it, between two slant distances below the level waist; mm. */
export interface SeamTake {
  readonly from: number;
  readonly to: number;
  /** Negative lets out. */
  readonly amount: number;
  /** The amount at `to`, where it changes on the way; it then runs out nowhere else. */
  readonly until?: number;
  /** True at an end of the stretch where it does not run out: the waist or the hem. */
  readonly open: { readonly above: boolean; readonly below: boolean };
}

/** What is altered on one side of the gown, or all the way round one that is drafted so. */
export interface SideAlterations {
  /** One list of knots a fitting: each is a line of its own, and they add up. */
  readonly hems: readonly (readonly HemKnot[])[];
  /** How far the waist edge goes up at each station, mm. */
  readonly waist: readonly number[];
  /** By station. */
  readonly seams: readonly (readonly SeamTake[])[];
}

export interface Alterations {
  readonly left: SideAlterations;
  /** The same object as `left` where both sides are altered alike. */
  readonly right: SideAlterations;
}

export function unaltered(stations: number): Alterations {
  const side: SideAlterations = {
    hems: [],
    waist: new Array(stations).fill(0),
    seams: Array.from({ length: stations }, () => []),
  };
  return { left: side, right: side };
}

export function altersSeams(side: SideAlterations): boolean {
  return side.seams.some((takes) => takes.length > 0);
}

export function altersWaist(side: SideAlterations): boolean {
  return side.waist.some((up) => up !== 0);
}
