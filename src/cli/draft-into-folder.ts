import { join, parse, resolve } from 'node:path';
import { plainText } from '../diagnostics/plain-text.ts';
import { draft, draftOutputs } from '../pipeline.ts';
import { askedPaper } from './asked-paper.ts';
import { ExitStatus } from './exit-status.ts';
import { findingsJson } from './findings-json.ts';
import type { Machine } from './machine.ts';
import { fontBytes } from './package-files.ts';
import { hasErrors, printFindings } from './print-findings.ts';
import { basesBeside, readSource } from './read-source.ts';
import { writeOutputs } from './write-outputs.ts';

export interface DraftFlags {
  readonly out?: string;
  readonly paper?: string;
  readonly replace?: boolean;
  readonly json?: boolean;
}

/** `draft`: everything that comes of a spec, into one folder. */
export async function draftIntoFolder(
  file: string,
  flags: DraftFlags,
  machine: Machine,
): Promise<ExitStatus> {
  const paper = askedPaper(flags.paper);
  const { source, diagnostics: unreadable } = readSource(file, machine);
  const drafting =
    source === undefined ? { diagnostics: unreadable } : draft(source, basesBeside(file, machine));
  const { gown } = drafting;
  let { diagnostics } = drafting;
  const folder = flags.out ?? join('out', nameOf(file));
  let files: string[] = [];
  if (gown !== undefined && !hasErrors(diagnostics)) {
    const outputs = await draftOutputs(gown, diagnostics, {
      ...(paper && { paper: paper.name }),
      font: fontBytes,
    });
    diagnostics = outputs.diagnostics;
    if (!hasErrors(diagnostics)) {
      const path = resolve(machine.folder, folder);
      files = writeOutputs(path, outputs, { replace: flags.replace ?? false, shown: folder });
    }
  }
  if (flags.json) {
    machine.out(`${JSON.stringify({ folder, files, findings: findingsJson(diagnostics) }, null, 2)}\n`);
  } else {
    printFindings(diagnostics, machine);
    machine.out(files.map((name) => `${plainText(join(folder, name))}\n`).join(''));
  }
  return hasErrors(diagnostics) ? ExitStatus.specWrong : ExitStatus.done;
}

/** The spec's name without its folder and ending; a file called `..yaml` must not lead out of `out`. */
function nameOf(file: string): string {
  const { name } = parse(file);
  return /^\.*$/.test(name) ? 'gown' : name;
}
