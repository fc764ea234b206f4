import type { FinishingWork } from '../making/order/work-of-finishing.ts';
import { type StepWriters, text } from './step-text.ts';

/** Facings, bands and what lies in openings, in words. */
export const FINISHING_WRITERS: StepWriters<FinishingWork> = {
  facing: ({ facing, faces, depth }, { length }) =>
    text(
      `Join the pieces of the ${facing}, ${length(depth)} deep, as the gores of the ${faces} are joined; press the seams open.`,
      [
        'Neaten its inner edge.',
        'Where it is cut over a seam that seam is marked on it: mark and seam meet when it is laid on.',
      ],
    ),
};
