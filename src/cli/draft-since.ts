import { safeText } from '../diagnostics/safe-text.ts';
import type { DraftedGown } from '../drafted-gown.ts';
import { draft } from '../pipeline.ts';
import { type PatternOptions, paperOf } from '../publish/pattern-sheets.ts';
import { type SheetsSince, sheetsSince } from '../publish/sheets-since.ts';
import { ENGLISH_SINCE as words } from '../words/english-tables.ts';
import { MachineFault } from './fault.ts';
import { readAtRevision } from './git-file.ts';
import type { Machine } from './machine.ts';
import { hasErrors, printFindings } from './print-findings.ts';
import { checkRevision } from './revision.ts';

/**
 * `--since`: which sheets show something else than those printed from the spec at a revision.
 *
 * @throws MachineFault where that revision cannot be read or drafted
 */
export function draftSince(
  file: string,
  revision: string,
  now: DraftedGown,
  options: PatternOptions,
  machine: Machine,
): SheetsSince {
  checkRevision(revision);
  const { source, diagnostics, readBase } = readAtRevision({ file, revision }, machine);
  const drafting = source === undefined ? { diagnostics } : draft(source, readBase);
  if (drafting.gown === undefined) {
    printFindings(
      drafting.diagnostics.filter((one) => hasErrors([one])),
      machine,
    );
    throw new MachineFault(
      `${safeText(file)} at ${safeText(revision)} cannot be drafted, so nothing was printed from it`,
      'Give the revision that your sheets were printed from.',
    );
  }
  return sheetsSince(drafting.gown, now, paperOf(now, options.paper), options);
}

/** In words: what to print, and what of the old paper stays. */
export function sinceText({ again, gone, count }: SheetsSince, revision: string, file: string): string {
  const since = safeText(revision);
  if (again.length === 0 && gone.length === 0) return `${words.none(since)}\n`;
  const first =
    again.length === 0
      ? words.nothing(since)
      : again.length === count
        ? words.every(since)
        : words.some(count, again, since, safeText(file));
  return `${[first, ...(gone.length === 0 ? [] : [words.gone(gone)])].join(' ')}\n`;
}
