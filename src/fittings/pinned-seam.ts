import type { Diagnostic, Span } from '../diagnostics/diagnostic.ts';
import { lengthInUnits } from '../diagnostics/value-text.ts';
import type { GownDraft } from '../draft/draft-gown.ts';
import { allowanceFor, hasGore, type Layer } from '../gown/layer.ts';
import { goresAt } from '../gown/lines.ts';
import type { SeamTake } from './alterations.ts';
import * as problems from './fitting-problems.ts';
import type { PinnedFitting } from './pinned-fitting.ts';
import { READ_OFF } from './pinned-hem.ts';
import { type PinnedStretch, unsmooth } from './unsmooth.ts';

/** Nearer to the waist or the hem than this a stretch reaches it, mm. */
export const REACHES = 3;

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
  const { layer } = fitting;
  const layers = gown.layers
    .filter(({ name }) => layer === undefined || layer === name)
    .filter((own) => goresAt(draft.gown, station).some((gore) => hasGore(own, gore)));
  diagnostics.push(...letOutTooFar(fitting.seams![j]!, layers, say, fitting.place('seams', j, 'take-in')));
  const waist = draft.waist.valueAt(draft.waist.ways[station]!);
  const open = { above: from <= REACHES, below: to >= length - REACHES };
  const end = Math.min(to, length);
  diagnostics.push(
    ...unsmooth(fitting.seams![j]!, fitting.seams!, {
      reaches: { from: open.above, to: open.below },
      length: end - from,
      words: { from: { beyond: 'above', edge: 'waist' }, to: { beyond: 'below', edge: 'hem' } },
      sayPlace: (mm) => problems.belowWaistSeam(say(mm)),
      say,
      span: fitting.place('seams', j, 'take-in'),
    }),
  );
  const amounts = typeof takeIn === 'number' ? { amount: takeIn } : { amount: takeIn[0], until: takeIn[1] };
  return [{ from: waist + from, to: waist + end, ...amounts, open }];
}

/** A word for each place of the file that asks for less cloth beyond the seam than it is let out by. */
export function letOutTooFar(
  { seam, takeIn }: PinnedStretch,
  layers: readonly Layer[],
  say: (mm: number) => string,
  span: Span,
): Diagnostic[] {
  const letOut = -(typeof takeIn === 'number' ? takeIn : Math.min(...takeIn));
  const said = new Set<number>();
  return layers.flatMap((layer) => {
    const { width, place, ofLayer } = allowanceFor(layer.allowances, seam);
    if (letOut <= width || said.has(place.start)) return [];
    said.add(place.start);
    const of = ofLayer ? layer.name : '';
    return [problems.letOutPastAllowance(span, seam, of, say(letOut), say(width), place)];
  });
}
