import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { GownDraft } from '../draft/draft-gown.ts';
import { placeOf } from '../gown-file/spec.ts';
import { lengthInUnits } from '../gown-file/value-text.ts';
import type { SeamTake } from './alterations.ts';
import * as problems from './fitting-problems.ts';
import type { PinnedFitting } from './pinned-fitting.ts';
import { READ_OFF } from './pinned-hem.ts';

/** Nearer to the waist or the hem than this a stretch reaches it, mm. */
const REACHES = 3;

/** A stretch of a seam as it was pinned; nothing where the seam ends above it. */
export function seamTake(
  { spec, index }: PinnedFitting,
  draft: GownDraft,
  station: number,
  j: number,
  diagnostics: Diagnostic[],
): SeamTake[] {
  const { seam, from, to, takeIn } = spec.fittings![index]!.seams![j]!;
  const length = draft.lengths[station]!;
  const say = (mm: number): string => lengthInUnits(mm, spec.units);
  if (to > length + READ_OFF) {
    const other = placeOf(spec, 'lengths', 'at', seam);
    const own = placeOf(spec, 'fittings', index, 'seams', j, 'to');
    diagnostics.push(problems.fittingBelowHem(own, seam, say(to), say(length), other));
    return [];
  }
  const allowance = spec.allowances[seam] ?? spec.allowances.seam;
  if (allowance !== undefined && -takeIn > allowance) {
    const own = placeOf(spec, 'fittings', index, 'seams', j, 'take-in');
    const key = spec.allowances[seam] === undefined ? 'seam' : seam;
    const other = placeOf(spec, 'allowances', key);
    diagnostics.push(problems.letOutPastAllowance(own, seam, say(-takeIn), say(allowance), other));
  }
  const waist = draft.waist.valueAt(draft.waist.ways[station]!);
  const open = { above: from <= REACHES, below: to >= length - REACHES };
  return [{ from: waist + from, to: waist + Math.min(to, length), amount: takeIn, open }];
}
