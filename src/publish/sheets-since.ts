import { tapeText } from '../diagnostics/tape-text.ts';
import type { DraftedGown } from '../drafted-gown.ts';
import { type ChangedSheets, changedSheets, type PatternOnSheets } from '../sheets/changed-sheets.ts';
import { type KeptPlace, placesOf } from '../sheets/kept-places.ts';
import { groupsOf } from '../sheets/lay-out-grid.ts';
import type { Paper } from '../sheets/paper.ts';
import { remarkText } from '../words/english-remarks.ts';
import { chosenPieces, type PatternOptions, sheetPlan } from './pattern-sheets.ts';

export interface SheetsSince extends ChangedSheets {
  /**
   * Where the earlier version's pieces lay: the new ones lie there again, so that its sheets can be used. Absent where
   * the whole pattern laid anew takes no more sheets.
   */
  readonly places?: readonly KeptPlace[];
}

/** Which sheets show something else than those that were printed from an earlier version of the gown. */
export function sheetsSince(
  old: DraftedGown,
  now: DraftedGown,
  paper: Paper,
  options: PatternOptions = {},
): SheetsSince {
  const before = onSheets(old, paper, options);
  const pieces = chosenPieces(old, options);
  const places = placesOf(
    before.plan,
    pieces,
    groupsOf(pieces, { layersApart: options.layersApart ?? false }),
  );
  const kept = changedSheets(before, onSheets(now, paper, { ...options, places }));
  if (kept.again.length === 0) return { ...kept, places };
  const anew = changedSheets(before, onSheets(now, paper, options));
  return kept.again.length < anew.again.length ? { ...kept, places } : anew;
}

function onSheets(drafted: DraftedGown, paper: Paper, options: PatternOptions): PatternOnSheets {
  const say = (mm: number): string => tapeText(mm, drafted.gown.units);
  return {
    plan: sheetPlan(drafted, paper, options),
    remarksOn: ({ remarks = [] }) => remarks.flatMap((remark) => remarkText(remark, say)),
  };
}
