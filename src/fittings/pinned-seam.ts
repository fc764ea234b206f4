import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { lengthInUnits } from '../diagnostics/value-text.ts';
import type { GownDraft } from '../draft/draft-gown.ts';
import { allowanceFor, hasGore } from '../gown/layer.ts';
import { goresAt } from '../gown/lines.ts';
import type { SeamTake } from './alterations.ts';
import * as problems from './fitting-problems.ts';
import type { PinnedFitting } from './pinned-fitting.ts';
import { READ_OFF } from './pinned-hem.ts';

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
  return [{ from: waist + from, to: waist + Math.min(to, length), amount: takeIn, open }];
}

/** A word for each place of the file that asks for less cloth beyond the seam than it is let out by. */
function letOutTooFar(
  { gown, fitting }: Pick<PinnedFitting, 'gown' | 'fitting'>,
  draft: GownDraft,
  station: number,
  j: number,
): Diagnostic[] {
  const { seam, takeIn } = fitting.seams![j]!;
  const gores = goresAt(draft.gown, station);
  const say = (mm: number): string => lengthInUnits(mm, gown.units);
  const said = new Set<number>();
  return gown.layers
    .filter(({ name }) => fitting.layer === undefined || fitting.layer === name)
    .filter((layer) => gores.some((gore) => hasGore(layer, gore)))
    .flatMap((layer) => {
      const { width, place, ofLayer } = allowanceFor(layer.allowances, seam);
      if (-takeIn <= width || said.has(place.start)) return [];
      said.add(place.start);
      const of = ofLayer ? layer.name : '';
      const own = fitting.place('seams', j, 'take-in');
      return [problems.letOutPastAllowance(own, seam, of, say(-takeIn), say(width), place)];
    });
}
