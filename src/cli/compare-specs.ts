import { existsSync, statSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Comparison } from '../compare/compare.ts';
import { comparisonJson } from '../compare/comparison-json.ts';
import { safeText } from '../diagnostics/safe-text.ts';
import { compareGowns, comparisonSvg, type NamedGown } from '../publish/comparison.ts';
import { comparisonText } from '../words/comparison-text.ts';
import { draftedSpec } from './drafted-spec.ts';
import { ExitStatus, isCutShort, statusOf } from './exit-status.ts';
import { findingsJson } from './findings-json.ts';
import { jsonText } from './json-text.ts';
import type { Machine } from './machine.ts';
import { planGownLays } from './plan-gown-lays.ts';
import { printFindings } from './print-findings.ts';
import { versionsCutFrom } from './versions-cut-from.ts';
import { writeNewFile } from './write-new-file.ts';

export interface CompareFlags {
  readonly json?: boolean;
  readonly out?: string;
  /** False with `--no-lays`. */
  readonly lays?: boolean;
}

/** `compare`: what changed between two versions of a gown, and what it means for cloth and paper. */
export async function compareSpecs(
  old: string,
  now: string,
  flags: CompareFlags,
  machine: Machine,
): Promise<ExitStatus> {
  const versions = [draftedSpec(old, machine), draftedSpec(now, machine)] as const;
  const [before, after] = versions.map(({ gown }) => gown);
  const failed = versions.filter(({ gown }) => gown === undefined).flatMap(({ diagnostics }) => diagnostics);
  if (before === undefined || after === undefined) {
    if (flags.json) machine.out(jsonText({ findings: findingsJson(failed) }));
    else printFindings(failed, machine);
    return ExitStatus.specWrong;
  }
  const cutFrom = versionsCutFrom(now, before, after, machine);
  const comparison = await withLays(before, after, cutFrom, flags, machine);
  const drawing = flags.out === undefined ? undefined : writeDrawing(flags.out, comparison, machine);
  if (flags.json) machine.out(jsonText(comparisonJson(comparison)));
  else {
    machine.out(comparisonText(comparison));
    if (drawing !== undefined) machine.out(`\n${safeText(drawing)}\n`);
  }
  const short = [comparison.old, comparison.now].flatMap(({ findings }) =>
    findings.filter((one) => isCutShort([one])),
  );
  printFindings(short, machine);
  return statusOf([...after.diagnostics, ...short]);
}

/** Lays are planned only where something has changed: that is what takes long. */
async function withLays(
  before: NamedGown,
  after: NamedGown,
  cutFrom: ReadonlyMap<string, NamedGown>,
  { lays }: CompareFlags,
  machine: Machine,
): Promise<Comparison> {
  if (lays === false || before.gown.gown.content === after.gown.gown.content)
    return compareGowns(before, after, cutFrom);
  const laid: NamedGown[] = [];
  for (const version of [before, after]) {
    const planned = await planGownLays(version.gown, 'quick', machine);
    const diagnostics = [...version.diagnostics, ...planned.diagnostics];
    laid.push({ ...version, lays: planned.lays, diagnostics });
  }
  return compareGowns(laid[0]!, laid[1]!, cutFrom);
}

/** Into the file named, or `compare.svg` in a folder. */
function writeDrawing(out: string, comparison: Comparison, machine: Machine): string {
  const path = resolve(machine.folder, out);
  const name = existsSync(path) && statSync(path).isDirectory() ? join(out, 'compare.svg') : out;
  writeNewFile(resolve(machine.folder, name), comparisonSvg(comparison), name);
  return name;
}
