import type { Notch, Piece } from '../draft/piece.ts';
import type { PieceRemark } from '../draft/piece-remark.ts';
import type { Line } from '../geometry/curve.ts';
import { pointAt, tangentAt } from '../geometry/evaluate.ts';
import { lengthOfRun, placeOnRun } from '../geometry/length.ts';
import { along, leftOf } from '../geometry/point.ts';
import { pleatsOf } from './pleats.ts';
import type { TopFullness } from './top-fullness.ts';

/** Depth of a tick on the top edge, mm. */
const TICK = 6;

/** Ticks at the quarters of a top edge, to match against the quarters of the edge that it is gathered to. */
export function quarterNotches(piece: Piece, width: number): Notch[] {
  const edge = piece.edges[0]!;
  const length = lengthOfRun(edge.curves);
  return [0.25, 0.5, 0.75].map((part) => ({
    edge: edge.name,
    distance: length * part,
    ticks: [tickAt(edge.curves, length * part, width)],
  }));
}

function tickAt(run: Piece['edges'][number]['curves'], distance: number, width: number): Line {
  const place = placeOnRun(run, distance);
  const point = pointAt(place.curve, place.t);
  const out = leftOf(tangentAt(place.curve, place.t));
  const depth = width === 0 ? TICK / 2 : Math.min(TICK, width * 0.6);
  return { kind: 'line', from: along(point, out, width), to: along(point, out, width - depth) };
}

/** What the maker does with the top. */
export function fullnessRemarks(full: TopFullness): PieceRemark[] {
  const { by, towards, darts = [] } = full.rule;
  const { cut: from, sewn: to } = full;
  switch (by) {
    case 'gathers':
      return [{ kind: 'gathers', from, to }];
    case 'pleats':
      return [{ kind: 'top-pleats', from, to, ...pleatsOf(full), ...(towards !== undefined && { towards }) }];
    case 'darts':
      return darts.map(({ name, takesIn, length, towards }) => ({
        kind: 'dart',
        name,
        takesIn,
        length,
        towards,
      }));
  }
}
