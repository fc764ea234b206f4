import { draft } from '../pipeline.ts';
import { checkTable } from './check-table.ts';
import { ExitStatus } from './exit-status.ts';
import { findingsJson } from './findings-json.ts';
import type { Machine } from './machine.ts';
import { hasErrors, printFindings } from './print-findings.ts';
import { readSource } from './read-source.ts';

export interface CheckFlags {
  readonly json?: boolean;
}

/** `check`: reads, drafts and trues; prints findings and figures. */
export function checkGown(file: string, flags: CheckFlags, machine: Machine): ExitStatus {
  const { source, diagnostics: unreadable } = readSource(file, machine);
  const { gown, diagnostics } = source === undefined ? { diagnostics: unreadable } : draft(source);
  if (flags.json) {
    machine.out(`${JSON.stringify({ ...gown?.report, findings: findingsJson(diagnostics) }, null, 2)}\n`);
  } else {
    printFindings(diagnostics, machine);
    if (gown !== undefined) machine.out(checkTable(gown.report, gown.spec.units));
  }
  return hasErrors(diagnostics) ? ExitStatus.specWrong : ExitStatus.done;
}
