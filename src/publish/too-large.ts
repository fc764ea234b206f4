import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { sortDiagnostics } from '../diagnostics/place.ts';
import { tapeText } from '../diagnostics/tape-text.ts';
import type { DraftedGown } from '../drafted-gown.ts';
import { clothFacts } from '../lay/plan/cloth-facts.ts';
import { gownToLay } from '../lay/plan/lay-to-plan.ts';
import { LONGEST_LAY, laysTooLong } from '../lay/plan/lays-too-long.ts';
import type { GownReport } from '../report/gown-report.ts';
import { groupsOf } from '../sheets/lay-out-grid.ts';
import { type Paper, paperText } from '../sheets/paper.ts';
import { roughSheets } from '../sheets/rough-sheets.ts';
import { chosenPieces, type PatternOptions, sheetOptions } from './pattern-sheets.ts';
import { tooManyPieces, tooManySheets } from './size-problems.ts';

/** Sheets that nobody tapes together: the largest of the templates takes 90 of A4. */
const MOST_SHEETS = 1000;

/** Of the largest gown that is measured, 48 gores in 16 layers, and some more: what takes minutes to lay, not hours. */
const MOST_PIECES = 1000;

/**
 * What is too large to be printed or laid, said before either is tried: as a rule a slipped decimal point, and hours
 * of work where it is none.
 */
export function tooLarge(drafted: DraftedGown, paper: Paper, options: PatternOptions = {}): Diagnostic[] {
  const { gown } = drafted;
  const shapes = distinctPieces(drafted);
  if (shapes > MOST_PIECES) return [tooManyPieces(gown.place('layers'), shapes, MOST_PIECES)];
  if (isOfUsualSize(drafted)) return [];
  const pieces = chosenPieces(drafted, options);
  const asked = sheetOptions(gown, paper, options);
  const sheets = roughSheets(pieces, groupsOf(pieces, asked), asked);
  return sortDiagnostics([
    ...(sheets <= MOST_SHEETS ? [] : [tooManySheets(gown.place('lengths'), sheets, paperText(paper.name))]),
    ...laysTooLong(gownToLay(drafted), (mm) => tapeText(mm, gown.units)),
  ]);
}

/** Gores and parts times their layers, whatever of them is alike: from the figures, without a cut line. */
function distinctPieces({ report }: DraftedGown): number {
  return [report, ...report.overskirts].reduce(
    (sum, { layers, gores, parts }) => sum + layers.length * gores.length + parts.length,
    0,
  );
}

/**
 * Whether the figures of the draft alone say that neither can be: without the cut lines, which a check does not need.
 * Allowances and what lies on one another are within a factor of two.
 */
function isOfUsualSize({ gown, report, layers }: DraftedGown): boolean {
  const [line, area] = [report, ...report.overskirts].map(linesAndArea).reduce(sumOf);
  const narrowest = Math.min(...layers.map(({ cloth }) => clothFacts(cloth, gown.edging).usable));
  return 2 * line < MOST_SHEETS * SHORTEST_DIAGONAL && 2 * area < LONGEST_LAY * narrowest;
}

/** Of a letter sheet's frame with the widest margins, mm. */
const SHORTEST_DIAGONAL = 180;

type Sizes = readonly [line: number, area: number];

function linesAndArea({ layers, gores, parts }: GownReport): Sizes {
  const ofGores = gores.map(
    ({ edges, area }): Sizes => [layers.length * around(edges), 2 * layers.length * area],
  );
  // A part's area is not in the report: it is at most that of a square of the same round.
  const ofParts = parts.map(({ edges, copies }): Sizes => [around(edges), copies * (around(edges) / 4) ** 2]);
  return [...ofGores, ...ofParts].reduce(sumOf, [0, 0]);
}

function around(edges: Readonly<Record<string, number>>): number {
  return Object.values(edges).reduce((sum, length) => sum + length, 0);
}

function sumOf(a: Sizes, b: Sizes): Sizes {
  return [a[0] + b[0], a[1] + b[1]];
}
