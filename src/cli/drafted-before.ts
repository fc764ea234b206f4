import type { Diagnostic, Source } from '../diagnostics/diagnostic.ts';
import { type KeptEntries, keptText } from '../kept/kept-entries.ts';
import { LAY_CUT_SHORT } from '../lay/plan/lay-problems.ts';
import { findingsToKeep, keptFindings } from './kept-findings.ts';
import { namesInPlace } from './names-in-place.ts';
import { sha256 } from './report-file.ts';

/** A draft by all that it depends on, the tool itself apart. */
export interface DraftAsked {
  /** Every text that was read for it, the spec's first. */
  readonly sources: readonly Source[];
  /** All that was asked for, whatever it is. */
  readonly asked: object;
}

/** What a draft came to: names of files in its folder, the report's last, and all that was found. */
export interface Drafted {
  readonly files: string[];
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * What the last draft into a folder came to, where nothing that it depends on is another now and all that it left there
 * is as it was: each file is read and its hash compared. Else undefined, and all is drafted.
 */
export function draftedBefore(kept: KeptEntries, draft: DraftAsked, folder: string): Drafted | undefined {
  const key = keyOf(draft);
  const known = kept.isWhole ? kept.recall(key) : undefined;
  if (typeof known !== 'object' || known === null) return undefined;
  const { report, others, findings } = known as Readonly<Record<string, unknown>>;
  if (others !== hashOfOthers(kept.earlier, key)) return undefined;
  const diagnostics = keptFindings(findings, draft.sources);
  const files = typeof report === 'string' ? namesInPlace(folder, report) : undefined;
  return files && diagnostics && { files, diagnostics };
}

/**
 * To be called once all else is kept. What was cut short is no draft to come back to.
 * @param report sha256 of `report.json`, which names all other files by theirs
 */
export function keepDraft(
  kept: KeptEntries,
  draft: DraftAsked,
  diagnostics: readonly Diagnostic[],
  report: string,
): void {
  const findings = findingsToKeep(diagnostics, draft.sources);
  if (findings === undefined || diagnostics.some(({ code }) => code === LAY_CUT_SHORT)) return;
  const key = keyOf(draft);
  kept.keep(key, { report, others: hashOfOthers(kept.entries, key), findings });
}

/** Names of files are said only where there are several: the same spec under another name comes to the same. */
function keyOf({ sources, asked }: DraftAsked): string {
  const read = sources.length === 1 ? sources.map(({ text }) => text) : sources;
  return sha256(JSON.stringify(['draft', read, asked]));
}

/** So that a draft is taken only with a memory that is as it left it. */
function hashOfOthers(entries: ReadonlyMap<string, string>, key: string): string {
  return sha256(keptText(new Map([...entries].filter(([other]) => other !== key)), ''));
}
