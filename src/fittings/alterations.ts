import type { FittedPanels, PanelsApart } from '../gown/above-waist.ts';
import type { GownLines } from '../gown/lines.ts';

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
  /** By gore: what its top is taken in by to meet the panel of this side, run out below the waist; mm. */
  readonly tops: readonly number[];
  /** By station: the bodice was pinned there as far as the waist seam, so that what the gores lose is known by its panels. */
  readonly withBodice: readonly boolean[];
}

export interface Alterations {
  readonly left: SideAlterations;
  /** The same object as `left` where both sides are altered alike. */
  readonly right: SideAlterations;
}

/** @param apart where the panels of the bodice are not what the gores were drafted for */
export function unaltered({ stations, gores }: GownLines, apart?: PanelsApart): Alterations {
  const side = (own: FittedPanels = { less: {}, seams: [] }): SideAlterations => ({
    hems: [],
    waist: new Array(stations.length).fill(0),
    seams: stations.map(() => []),
    tops: gores.map(({ name }) => own.less[name] ?? 0),
    withBodice: stations.map(({ name }) => own.seams.includes(name)),
  });
  const left = side(apart?.left);
  return { left, right: apart === undefined || isAlike(apart) ? left : side(apart.right) };
}

function isAlike({ left, right }: PanelsApart): boolean {
  const panels = [...Object.keys(left.less), ...Object.keys(right.less)];
  return (
    panels.every((name) => left.less[name] === right.less[name]) && left.seams.join() === right.seams.join()
  );
}

export function altersSeams(side: SideAlterations): boolean {
  return side.seams.some((takes) => takes.length > 0);
}

export function altersWaist(side: SideAlterations): boolean {
  return side.waist.some((up) => up !== 0);
}

export function altersTops(side: SideAlterations): boolean {
  return side.tops.some((by) => by !== 0);
}
