import type { BustlePlace } from '../../gown/bustle-place.ts';
import type { Side } from '../../gown/station.ts';

/** What a train hangs from: a seam, or a line down a gore. All mm. */
export interface TrainLine {
  /** The seam's, or the gore's. */
  readonly name: string;
  /** Of a line down a gore: the share of its width from its front edge, 0 … 1. */
  readonly across?: number;
  /** Where its other side has one that differs. */
  readonly side?: Side;
  /** Such lines in the whole skirt that are alike: 1 at a centre, 2 elsewhere where her sides are alike. */
  readonly copies: number;
  /** Sewn length from the waist seam to the hem, and from the waist seam to the floor. */
  readonly length: number;
  readonly toFloor: number;
}

/** One point of a bustle. All mm, down the cloth from the waist seam. */
export type BustlePoint = BustlePlace & BustleFigures;

export interface BustleFigures {
  /** Where the point on her other side is another. */
  readonly side?: Side;
  readonly copies: number;
  readonly anchor: number;
  readonly pickUp: number;
  /** pickUp − anchor = length − (floor − clearance). */
  readonly lift: number;
  readonly loopBottom: number;
  /** Between the loop's bottom and the hem; negative hangs out below. */
  readonly aboveHem: number;
}

/** What has to be picked up so that a seam clears the floor; 0 where it clears it already. mm. */
export function bustleLift(length: number, toFloor: number, clearance: number): number {
  return Math.max(0, length - (toFloor - clearance));
}

export function bustlePoint(seam: TrainLine, anchor: number, clearance: number, loop: number): BustlePoint {
  const lift = bustleLift(seam.length, seam.toFloor, clearance);
  const pickUp = anchor + lift;
  return {
    ...(seam.across === undefined ? { seam: seam.name } : { gore: seam.name, across: seam.across }),
    ...(seam.side === undefined ? {} : { side: seam.side }),
    copies: seam.copies,
    anchor,
    pickUp,
    lift,
    loopBottom: pickUp + loop,
    aboveHem: seam.length - pickUp - loop,
  };
}

/** Points that a bustle usually has: an odd number, so that one is at the centre. Common practice. */
export const USUAL_POINTS = { least: 3, most: 5 } as const;
export const USUAL_POINTS_WHEN_HEAVY = { least: 7, most: 9 } as const;

/** Lift below which a point is not worth its loop, mm. From memory. */
export const LEAST_LIFT = 20;

/** Where an anchor is advised when none is asked for, mm below the waist seam; the fitter moves it. From memory. */
export const USUAL_ANCHOR = 150;

/** How far a loop hangs when the spec does not say, mm. From memory. */
export const USUAL_LOOP = 20;

/**
 * Seams that a bustle is advised at: the centre, then outwards while there is something to lift and the usual number
 * is not passed. The seams come in any order.
 */
export function seamsAdvised(seams: readonly TrainLine[], clearance: number, heavy: boolean): TrainLine[] {
  const most = heavy ? USUAL_POINTS_WHEN_HEAVY.most : USUAL_POINTS.most;
  const liftOf = (seam: TrainLine): number => bustleLift(seam.length, seam.toFloor, clearance);
  // What her two sides have of one name is advised on both or on neither.
  const lifted = [...new Set(seams.map(({ name }) => name))]
    .map((name) => seams.filter((seam) => seam.name === name))
    .map((own) => ({ own, lift: Math.max(...own.map(liftOf)) }))
    .filter(({ lift }) => lift >= LEAST_LIFT)
    .sort((a, b) => b.lift - a.lift);
  const advised: TrainLine[] = [];
  for (const { own } of lifted) {
    if (pointsIn(advised) + pointsIn(own) > most) break;
    advised.push(...own);
  }
  return advised;
}

export function pointsIn(points: readonly { readonly copies: number }[]): number {
  return points.reduce((sum, point) => sum + point.copies, 0);
}

/** Whether a number of points is what is usual for the train. */
export function isUsualNumber(points: number, heavy: boolean): boolean {
  const { least, most } = heavy ? USUAL_POINTS_WHEN_HEAVY : USUAL_POINTS;
  return points % 2 === 1 && points >= least && points <= most;
}
