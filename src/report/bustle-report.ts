import type { Workroom } from '../workroom/workroom.ts';

/** A bustle as `report.json` holds it: mm, down the cloth from the waist seam. */
export interface BustleReport {
  readonly kind: string;
  readonly advised: boolean;
  /** In all, both sides counted. */
  readonly number: number;
  readonly clearance: number;
  readonly points: readonly {
    /** The seam; or the gore, and the share of its width from its front edge, 0 … 1. */
    readonly seam?: string;
    readonly gore?: string;
    readonly across?: number;
    /** Where the point on her other side is another. */
    readonly side?: 'left' | 'right';
    readonly copies: number;
    readonly anchor: number;
    readonly pickUp: number;
    readonly lift: number;
  }[];
}

export function bustleReport({
  kind,
  advised,
  number,
  clearance,
  points,
}: NonNullable<Workroom['bustle']>): BustleReport {
  return {
    kind,
    advised,
    number,
    clearance: mm(clearance),
    points: bustlePointsReport(points),
  };
}

export function bustlePointsReport(
  points: NonNullable<Workroom['bustle']>['points'],
): BustleReport['points'] {
  return points.map(({ seam, gore, across, side, copies, anchor, pickUp, lift }) => ({
    ...(seam === undefined ? { gore, across } : { seam }),
    ...(side && { side }),
    copies,
    anchor: mm(anchor),
    pickUp: mm(pickUp),
    lift: mm(lift),
  }));
}

function mm(length: number): number {
  return Math.round(length * 1e4) / 1e4;
}
