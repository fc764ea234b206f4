import { chalkTables } from '../../src/chalk/chalk-tables.ts';
import { sharedTables } from '../../src/chalk/shared-tables.ts';
import { hangTask } from '../../src/hanging/hang-task.ts';
import { hungAtFirst } from '../../src/hanging/hung-gown.ts';
import type { PaperInput } from '../../src/print/papers/paper-input.ts';
import { drawnViews } from '../../src/publish/views-file.ts';
import { english } from '../../src/words/english.ts';
import type { Made } from './made.ts';

const A4 = { width: 210, height: 297 };

/** What the papers are made from, without lays and without the gown hung. */
export function inputOf({ gown, facts, findings }: Made, paper = A4): PaperInput {
  return {
    gown: gown.gown,
    measures: gown.measures,
    cutPieces: gown.cut.pieces,
    workroom: facts,
    chalk: sharedTables(chalkTables(gown.cut.pieces, gown.gown.units)),
    lays: [],
    diagnostics: findings,
    cutShort: false,
    words: english(gown.gown.units),
    paper,
  };
}

/** With the gown hung, coarsely: the page is shared out as it is when a gown is drafted. */
export function hungInputOf(made: Made, paper = A4): PaperInput {
  const task = hangTask(made.gown);
  return { ...inputOf(made, paper), views: drawnViews(made.gown, { task, hung: hungAtFirst(task) }) };
}
