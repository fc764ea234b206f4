import { specLines } from '../compare/spec-lines.ts';
import { safeText } from '../diagnostics/safe-text.ts';
import { draft } from '../pipeline.ts';
import { draftLines } from '../words/draft-lines.ts';
import { ExitStatus } from './exit-status.ts';
import type { Machine } from './machine.ts';
import { hasErrors } from './print-findings.ts';
import { basesBeside, readSource } from './read-source.ts';

/**
 * `read`: a spec as what it means, a line a value. A file that cannot be read as a spec comes out as it is, and that is
 * no failure: git asks this of every version that ever was.
 */
export function readAloud(file: string, machine: Machine): ExitStatus {
  const { source } = readSource(file, machine);
  if (source === undefined) {
    machine.out(`${safeText(file)}: not a spec that can be read\n`);
    return ExitStatus.done;
  }
  const { spec, gown, diagnostics } = draft(source, basesBeside(file, machine));
  const fault = diagnostics.find((one) => hasErrors([one]));
  if (spec === undefined || gown === undefined) {
    const said = fault === undefined ? '' : `: ${fault.message}`;
    machine.out(`# not a spec that can be read${safeText(said)}\n`);
    for (const line of source.text.split(/\r?\n/)) machine.out(`${safeText(line.replaceAll('\t', '  '))}\n`);
    return ExitStatus.done;
  }
  const lines = [...specLines(spec), ...draftLines(gown.report)];
  machine.out(lines.map((line) => `${safeText(line)}\n`).join(''));
  return ExitStatus.done;
}
