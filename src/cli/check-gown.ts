import { sortDiagnostics } from '../diagnostics/place.ts';
import { readSpec } from '../gown-file/read-spec.ts';
import { resolvedText } from '../gown-file/resolved-text.ts';
import { paperOf } from '../publish/pattern-sheets.ts';
import { tooLarge } from '../publish/too-large.ts';
import { checkTable } from './check-table.ts';
import { ExitStatus } from './exit-status.ts';
import { findingsJson } from './findings-json.ts';
import { jsonText } from './json-text.ts';
import type { Machine } from './machine.ts';
import { hasErrors, printFindings } from './print-findings.ts';
import { readGown } from './read-gown.ts';
import { basesBeside, readSource } from './read-source.ts';

export interface CheckFlags {
  readonly json?: boolean;
  readonly resolved?: boolean;
}

/** `check`: reads, drafts and trues; prints findings and figures. */
export function checkGown(file: string, flags: CheckFlags, machine: Machine): ExitStatus {
  if (flags.resolved) return printResolved(file, machine);
  const { gown, diagnostics: found } = readGown(file, machine);
  const diagnostics =
    gown === undefined ? found : sortDiagnostics([...found, ...tooLarge(gown, paperOf(gown))]);
  if (flags.json) {
    machine.out(jsonText({ ...gown?.report, findings: findingsJson(diagnostics) }));
  } else {
    printFindings(diagnostics, machine);
    if (gown !== undefined) machine.out(checkTable(gown.report, gown.gown.units));
  }
  return hasErrors(diagnostics) ? ExitStatus.specWrong : ExitStatus.done;
}

/** The whole spec, with everything that it keeps of those that it is based on. */
function printResolved(file: string, machine: Machine): ExitStatus {
  const { source, diagnostics: unreadable } = readSource(file, machine);
  const { tree, diagnostics } =
    source === undefined ? { diagnostics: unreadable } : readSpec(source, basesBeside(file, machine));
  printFindings(diagnostics, machine);
  if (tree !== undefined) machine.out(resolvedText(tree));
  return hasErrors(diagnostics) ? ExitStatus.specWrong : ExitStatus.done;
}
