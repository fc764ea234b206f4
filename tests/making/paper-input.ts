import { chalkTables } from '../../src/chalk/chalk-tables.ts';
import { sharedTables } from '../../src/chalk/shared-tables.ts';
import { silhouetteOf } from '../../src/making/train/silhouette.ts';
import type { PaperInput } from '../../src/print/papers/paper-input.ts';
import { english } from '../../src/words/english.ts';
import type { Made } from './made.ts';

const A4 = { width: 210, height: 297 };

/** What the papers are made from, without lays. */
export function inputOf({ gown, facts, findings }: Made, paper = A4): PaperInput {
  return {
    gown: gown.gown,
    measures: gown.measures,
    cutPieces: gown.cut.pieces,
    workroom: facts,
    silhouette: silhouetteOf(gown.drafts.gown, facts.skirt, facts.closure),
    chalk: sharedTables(chalkTables(gown.cut.pieces, gown.gown.units)),
    lays: [],
    diagnostics: findings,
    words: english(gown.gown.units),
    paper,
  };
}
