import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { lengthInUnits } from '../diagnostics/value-text.ts';
import type { GownDraft } from '../draft/draft-gown.ts';
import { allowanceFor, hasGore } from '../gown/layer.ts';
import { goresAt } from '../gown/lines.ts';
import type { SeamTake } from './alterations.ts';
import * as problems from './fitting-problems.ts';
import type { PinnedFitting } from './pinned-fitting.ts';
import { READ_OFF } from './pinned-hem.ts';
import { RUNS_OUT_OVER, STEEPEST } from './seam-inset.ts';

/** Nearer to the waist or the hem than this a stretch reaches it, mm. */
const REACHES = 3;

/** A stretch of a seam as it was pinned; nothing where the seam ends above it. */
export function seamTake(
  { gown, fitting }: PinnedFitting,
  draft: GownDraft,
  station: number,
  j: number,
  diagnostics: Diagnostic[],
): SeamTake[] {
  const { seam, from, to, takeIn } = fitting.seams![j]!;
  const length = draft.lengths[station]!;
  const say = (mm: number): string => lengthInUnits(mm, gown.units);
  if (to > length + READ_OFF) {
    const other = gown.place('lengths', 'at', seam);
    const own = fitting.place('seams', j, 'to');
    diagnostics.push(problems.fittingBelowHem(own, seam, say(to), say(length), other));
    return [];
  }
  diagnostics.push(...letOutTooFar({ gown, fitting }, draft, station, j));
  const waist = draft.waist.valueAt(draft.waist.ways[station]!);
  const open = { above: from <= REACHES, below: to >= length - REACHES };
  const end = Math.min(to, length);
  diagnostics.push(...unsmooth({ gown, fitting }, j, { end, open }));
  const amounts = typeof takeIn === 'number' ? { amount: takeIn } : { amount: takeIn[0], until: takeIn[1] };
  return [{ from: waist + from, to: waist + end, ...amounts, open }];
}

/** Run out more steeply than this a seam steps back and dents what it lies on: 1 in 10. Common practice. */
const STEEP = 0.1;

/** Where the seam line would step, or come back so fast that it dents. */
function unsmooth(
  { gown, fitting }: Pick<PinnedFitting, 'gown' | 'fitting'>,
  j: number,
  { end, open }: { readonly end: number; readonly open: SeamTake['open'] },
): Diagnostic[] {
  const own = fitting.seams![j]!;
  const { seam, from, to, takeIn } = own;
  const say = (mm: number): string => lengthInUnits(mm, gown.units);
  const place = fitting.place('seams', j, 'take-in');
  if (typeof takeIn === 'number') {
    const over = (end - from) * RUNS_OUT_OVER;
    const runsOut = !open.above || !open.below;
    if (!runsOut || STEEPEST * Math.abs(takeIn) <= STEEP * over) return [];
    return [problems.fittingDents(place, seam, say(Math.abs(takeIn)), say(over), say(from), say(end))];
  }
  const meets = (at: number, amount: number, key: 'from' | 'to'): boolean =>
    fitting.seams!.some(
      (other) =>
        other !== own &&
        other.seam === seam &&
        (other.side ?? 'both') === (own.side ?? 'both') &&
        other[key] === at &&
        typeof other.takeIn !== 'number' &&
        other.takeIn[key === 'from' ? 0 : 1] === amount,
    );
  return [
    ...(open.above || takeIn[0] === 0 || meets(from, takeIn[0], 'to')
      ? []
      : [problems.fittingSteps(place, seam, say(takeIn[0]), say(from), 'above')]),
    ...(open.below || takeIn[1] === 0 || meets(to, takeIn[1], 'from')
      ? []
      : [problems.fittingSteps(place, seam, say(takeIn[1]), say(to), 'below')]),
  ];
}

/** A word for each place of the file that asks for less cloth beyond the seam than it is let out by. */
function letOutTooFar(
  { gown, fitting }: Pick<PinnedFitting, 'gown' | 'fitting'>,
  draft: GownDraft,
  station: number,
  j: number,
): Diagnostic[] {
  const { seam, takeIn } = fitting.seams![j]!;
  const letOut = -(typeof takeIn === 'number' ? takeIn : Math.min(...takeIn));
  const gores = goresAt(draft.gown, station);
  const say = (mm: number): string => lengthInUnits(mm, gown.units);
  const said = new Set<number>();
  return gown.layers
    .filter(({ name }) => fitting.layer === undefined || fitting.layer === name)
    .filter((layer) => gores.some((gore) => hasGore(layer, gore)))
    .flatMap((layer) => {
      const { width, place, ofLayer } = allowanceFor(layer.allowances, seam);
      if (letOut <= width || said.has(place.start)) return [];
      said.add(place.start);
      const of = ofLayer ? layer.name : '';
      const own = fitting.place('seams', j, 'take-in');
      return [problems.letOutPastAllowance(own, seam, of, say(letOut), say(width), place)];
    });
}
