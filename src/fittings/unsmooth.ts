import type { Diagnostic, Span } from '../diagnostics/diagnostic.ts';
import type { Fitting } from '../gown/sections.ts';
import type { FittedEdge } from './fitting-problems.ts';
import * as problems from './fitting-problems.ts';
import { RUNS_OUT_OVER, STEEPEST } from './seam-inset.ts';

/** A stretch of a seam as it was pinned. */
export type PinnedStretch = NonNullable<Fitting['seams']>[number];

/** Where such a stretch lies, and how it is told. */
export interface StretchPlace {
  /** Which of its ends reach the edge of the cloth. */
  readonly reaches: Readonly<Record<End, boolean>>;
  readonly length: number;
  readonly words: Readonly<Record<End, EndWords>>;
  /** A distance along the seam, with what it is counted from. */
  readonly sayPlace: (mm: number) => string;
  readonly say: (mm: number) => string;
  readonly span: Span;
}

type End = 'from' | 'to';

interface EndWords {
  readonly beyond: 'above' | 'below';
  readonly edge: FittedEdge;
}

/** Run out more steeply than this a seam steps back and dents what it lies on: 1 in 10. Common practice. */
const STEEP = 0.1;

/** Where the seam line would step, or come back so fast that it dents. */
export function unsmooth(
  own: PinnedStretch,
  all: readonly PinnedStretch[],
  { reaches, length, words, sayPlace, say, span }: StretchPlace,
): Diagnostic[] {
  const { seam, takeIn } = own;
  if (typeof takeIn === 'number') {
    const over = length * RUNS_OUT_OVER;
    if ((reaches.from && reaches.to) || STEEPEST * Math.abs(takeIn) <= STEEP * over) return [];
    return [problems.fittingDents(span, seam, say(Math.abs(takeIn)), say(over), say(own.from), say(own.to))];
  }
  return ENDS.flatMap(({ key, other, amount, otherAmount }) => {
    const by = takeIn[amount];
    const meets = all.some(
      (one) =>
        one !== own &&
        one.seam === seam &&
        (one.side ?? 'both') === (own.side ?? 'both') &&
        one[other] === own[key] &&
        typeof one.takeIn !== 'number' &&
        one.takeIn[otherAmount] === by,
    );
    if (reaches[key] || by === 0 || meets) return [];
    const { beyond, edge } = words[key];
    return [problems.fittingSteps(span, seam, say(by), sayPlace(own[key]), beyond, edge)];
  });
}

const ENDS = [
  { key: 'from', other: 'to', amount: 0, otherAmount: 1 },
  { key: 'to', other: 'from', amount: 1, otherAmount: 0 },
] as const;
