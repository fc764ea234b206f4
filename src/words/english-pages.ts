import type { Basics } from './english-basics.ts';
import { englishChalk } from './english-chalk.ts';
import { englishClient } from './english-client.ts';
import { englishCosting } from './english-costing.ts';
import { englishJobSheet } from './english-job-sheet.ts';
import { englishRows } from './english-rows.ts';

/** Headings, labels and sentences of every paper. Functions take figures already written out, or names. */
export function englishPages(basics: Basics) {
  const { unit } = basics;
  return {
    units: `All figures in ${unit === 'in' ? 'inches' : unit}.`,
    /** What the papers' files call themselves. */
    files: { job: 'job sheet', client: 'for the client', chalk: 'chalk tables' },
    views: {
      front: 'front',
      back: 'back',
      side: 'from her left',
      above: 'from above',
      bustled: (name: string): string => `${name}, bustled`,
      under: (name: string): string => `${name}, without the gown`,
      floor: 'floor',
      floorAssumed: 'floor, where it usually lies: no length to the floor is given',
    },
    hung: {
      drawn: (layer: string): string =>
        `The ${layer} as it hangs, worked out from the pattern; folds fall anew each time it is worn.`,
      tiers: 'Without the gown: its net tiers as they hang, worked out from the pattern.',
      edging: 'Dashed: the edging.',
      figure: (isBodiceDrafted: boolean): string =>
        isBodiceDrafted ? 'The figure is for proportion only.' : 'Bodice and figure are for proportion only.',
      without: (parts: string): string => `Not drawn: ${parts}.`,
    },
    opening: 'Crossed by strokes: the opening.',
    cutShort: 'LAYS CUT SHORT: draft again before you buy',
    ...englishJobSheet(basics),
    ...englishRows(basics),
    ...englishChalk(),
    ...englishCosting(basics),
    ...englishClient(basics),
  };
}
