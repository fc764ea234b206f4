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

/** `check`: reads, drafts and trues each; prints findings and figures. The status is the worst of them. */
export function checkGowns(files: readonly string[], flags: CheckFlags, machine: Machine): ExitStatus {
  const checked = files.map((file): Checked => {
    if (files.length > 1 && flags.json !== true) machine.out(`${file}\n`);
    return flags.resolved === true
      ? { status: printResolved(file, machine) }
      : checkGown(file, flags, machine);
  });
  const reports = checked.flatMap(({ report }, i) =>
    report === undefined ? [] : { spec: files[i]!, ...report },
  );
  const [only] = checked;
  if (files.length > 1 && flags.json === true && flags.resolved !== true) machine.out(jsonText(reports));
  else if (only?.report !== undefined) machine.out(jsonText(only.report));
  const isWrong = checked.some(({ status }) => status !== ExitStatus.done);
  return isWrong ? ExitStatus.specWrong : ExitStatus.done;
}

interface Checked {
  readonly status: ExitStatus;
  /** What `--json` prints. */
  readonly report?: object;
}

function checkGown(file: string, flags: CheckFlags, machine: Machine): Checked {
  const { gown, diagnostics: found } = readGown(file, machine);
  const diagnostics =
    gown === undefined ? found : sortDiagnostics([...found, ...tooLarge(gown, paperOf(gown))]);
  const status = hasErrors(diagnostics) ? ExitStatus.specWrong : ExitStatus.done;
  if (flags.json) return { status, report: { ...gown?.report, findings: findingsJson(diagnostics) } };
  printFindings(diagnostics, machine);
  if (gown !== undefined) machine.out(checkTable(gown.report, gown.gown.units));
  return { status };
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
