import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { sortDiagnostics } from '../diagnostics/place.ts';
import { safeText } from '../diagnostics/safe-text.ts';
import { readSpec } from '../gown-file/read-spec.ts';
import { resolvedText } from '../gown-file/resolved-text.ts';
import type { Drafting } from '../pipeline.ts';
import { paperOf } from '../publish/pattern-sheets.ts';
import { tooLarge } from '../publish/too-large.ts';
import type { GownReport } from '../report/gown-report.ts';
import { checkTable } from './check-table.ts';
import { ExitStatus } from './exit-status.ts';
import { MachineFault, WrongCommandLine } from './fault.ts';
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

/** `check`: reads, drafts and trues; prints findings and figures. Of several specs the worst says how it ended. */
export function checkGowns(files: readonly string[], flags: CheckFlags, machine: Machine): ExitStatus {
  if (files.length === 1) return checkGown(files[0]!, flags, machine);
  if (flags.resolved)
    throw new WrongCommandLine('--resolved prints one spec: name one, or leave it out to check them all.');
  const checked = files.map((file) => checkedAmong(file, machine));
  if (flags.json)
    for (const { fault } of checked) if (fault !== undefined) machine.err(`gorewright: ${fault}\n`);
  if (flags.json) {
    const specs = checked.map(({ file, report, diagnostics, fault }) => ({
      spec: file,
      ...report,
      findings: findingsJson(diagnostics),
      ...(fault === undefined ? {} : { fault }),
    }));
    machine.out(jsonText({ specs }));
  } else for (const one of checked) printAmong(one, machine);
  return Math.max(...checked.map(({ status }) => status)) as ExitStatus;
}

function checkGown(file: string, flags: CheckFlags, machine: Machine): ExitStatus {
  if (flags.resolved) return printResolved(file, machine);
  const { gown, diagnostics } = checkedGown(file, machine);
  if (flags.json) {
    machine.out(jsonText({ ...gown?.report, findings: findingsJson(diagnostics) }));
  } else {
    printFindings(diagnostics, machine);
    if (gown !== undefined) machine.out(checkTable(gown.report, gown.gown.units));
  }
  return hasErrors(diagnostics) ? ExitStatus.specWrong : ExitStatus.done;
}

function checkedGown(file: string, machine: Machine): Drafting {
  const { gown, diagnostics: found } = readGown(file, machine);
  if (gown === undefined) return { diagnostics: found };
  return { gown, diagnostics: sortDiagnostics([...found, ...tooLarge(gown, paperOf(gown))]) };
}

/** One of several specs, and what came of it; a file that cannot be read does not keep the others from being checked. */
interface Checked {
  readonly file: string;
  readonly report?: GownReport;
  readonly diagnostics: readonly Diagnostic[];
  readonly fault?: string;
  readonly status: ExitStatus;
}

function checkedAmong(file: string, machine: Machine): Checked {
  try {
    const { gown, diagnostics } = checkedGown(file, machine);
    const status = hasErrors(diagnostics) ? ExitStatus.specWrong : ExitStatus.done;
    return { file, ...(gown === undefined ? {} : { report: gown.report }), diagnostics, status };
  } catch (error) {
    if (!(error instanceof MachineFault)) throw error;
    return { file, diagnostics: [], fault: error.message, status: ExitStatus.fault };
  }
}

function printAmong({ file, report, diagnostics, fault }: Checked, machine: Machine): void {
  if (fault !== undefined) {
    machine.err(`gorewright: ${fault}\n`);
    return;
  }
  printFindings(diagnostics, machine);
  const gown = report === undefined ? '' : `${safeText(report.gown)}, content ${report.content}, `;
  machine.out(`${safeText(file)}: ${gown}${hasErrors(diagnostics) ? 'wrong' : 'in order'}\n`);
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
