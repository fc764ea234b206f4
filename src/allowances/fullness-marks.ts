import { tapeText } from '../diagnostics/tape-text.ts';
import type { Units } from '../diagnostics/units.ts';
import type { Notch, Piece } from '../draft/piece.ts';
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

/** What the maker does with the top, for the text on the piece. */
export function fullnessRemarks(full: TopFullness, units: Units): string[] {
  const { by, darts = [] } = full.rule;
  if (by !== 'darts') return [fullnessRemark(full, units)];
  return darts.map(
    ({ name, takesIn, length }) =>
      `${name}: takes in ${tapeText(takesIn, units)} at the waist, ${tapeText(length, units)} long`,
  );
}

export function fullnessRemark(full: TopFullness, units: Units): string {
  const from = tapeText(full.cut, units);
  const to = tapeText(full.sewn, units);
  if (full.rule.by === 'gathers') return `gather the top from ${from} to ${to}`;
  const { count, depth } = pleatsOf(full);
  const kind = full.rule.towards === 'box' ? 'box pleat' : 'pleat';
  const lie =
    full.rule.towards === undefined || full.rule.towards === 'box'
      ? ''
      : `, towards the ${full.rule.towards}`;
  return `pleat the top from ${from} to ${to}: ${count} ${count === 1 ? kind : `${kind}s`}, each fold ${tapeText(depth, units)} deep${lie}`;
}
