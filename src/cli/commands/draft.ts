import { join, parse, resolve } from 'node:path';
import { plainText } from '../../diagnostics/plain-text.ts';
import type { AddCommand } from '../command.ts';
import { ExitStatus } from '../exit-status.ts';
import { WrongCommandLine } from '../fault.ts';
import { hasErrors, printFindings } from '../print-findings.ts';

interface DraftFlags {
  readonly out?: string;
  readonly paper?: string;
  readonly replace?: boolean;
  readonly json?: boolean;
}

/** `draft SPEC` */
export const addDraft: AddCommand = (program, machine, end) => {
  program
    .command('draft')
    .summary('everything: pattern, chalk tables, report')
    .description(
      'Drafts the gown and writes all that comes of it into one folder: the pattern full size as SVG and as sheets for a printer, the chalk tables, and a report with every figure. Each file is replaced whole; files that are not from this tool, or that you changed, are never overwritten unless you say so.',
    )
    .argument('<spec>', 'the gown spec')
    .option('-o, --out <folder>', "where to write (default: out/ and the spec's name)")
    .option('--paper <size>', 'a4, a3, letter, legal or tabloid, in place of the paper in the spec')
    .option('--replace', 'overwrite files of the same names even if they are yours or were changed')
    .option('--json', 'print what was written as JSON')
    .action(async (file: string, flags: DraftFlags) => {
      const { paperNamed, PAPERS } = await import('../../sheets/paper.ts');
      const paper = flags.paper === undefined ? undefined : paperNamed(flags.paper);
      if (flags.paper !== undefined && paper === undefined) {
        const names = PAPERS.map(({ name }) => name).join(', ');
        throw new WrongCommandLine(
          `--paper: there is no paper "${plainText(flags.paper)}". There are: ${names}.`,
        );
      }
      const { draft, draftOutputs } = await import('../../pipeline.ts');
      const { readSource } = await import('../read-source.ts');
      const { findingsJson } = await import('../findings-json.ts');
      const { source, diagnostics: unreadable } = readSource(file, machine);
      const { gown, diagnostics } = source === undefined ? { diagnostics: unreadable } : draft(source);
      if (gown === undefined || hasErrors(diagnostics)) {
        if (flags.json) machine.out(`${JSON.stringify({ findings: findingsJson(diagnostics) }, null, 2)}\n`);
        else printFindings(diagnostics, machine);
        return end(ExitStatus.specWrong);
      }
      const { fontBytes } = await import('../package-files.ts');
      const { writeOutputs } = await import('../write-outputs.ts');
      const outputs = await draftOutputs(gown, diagnostics, {
        ...(paper && { paper: paper.name }),
        font: fontBytes,
      });
      const all = outputs.diagnostics;
      if (!flags.json) printFindings(all, machine);
      if (hasErrors(all)) return end(ExitStatus.specWrong);
      const folder = flags.out ?? join('out', nameOf(file));
      const names = writeOutputs(resolve(machine.folder, folder), outputs, {
        replace: flags.replace ?? false,
        shown: folder,
      });
      if (flags.json) {
        machine.out(`${JSON.stringify({ folder, files: names, findings: findingsJson(all) }, null, 2)}\n`);
      } else {
        machine.out(names.map((name) => `${plainText(join(folder, name))}\n`).join(''));
      }
      end(ExitStatus.done);
    });
};

/** The spec's name without its folder and ending; a file called `..yaml` must not lead out of `out`. */
function nameOf(file: string): string {
  const { name } = parse(file);
  return /^\.*$/.test(name) ? 'gown' : name;
}
