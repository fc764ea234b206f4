import type { AddCommand } from '../command.ts';
import { ExitStatus } from '../exit-status.ts';
import { hasErrors, printFindings } from '../print-findings.ts';

/** `check SPEC` */
export const addCheck: AddCommand = (program, machine, end) => {
  program
    .command('check')
    .summary('read, draft and true a spec; write nothing')
    .description(
      'Reads the spec, drafts it and trues every seam, the waist and the hem. Prints what is wrong with its place in the file, and a table of the figures. Writes no file.',
    )
    .argument('<spec>', 'the gown spec')
    .option('--json', 'print figures and findings as JSON')
    .action(async (file: string, options: { json?: boolean }) => {
      const { draft } = await import('../../pipeline.ts');
      const { readSource } = await import('../read-source.ts');
      const { source, diagnostics: unreadable } = readSource(file, machine);
      const { gown, diagnostics } = source === undefined ? { diagnostics: unreadable } : draft(source);
      if (options.json) {
        const { findingsJson } = await import('../findings-json.ts');
        machine.out(`${JSON.stringify({ ...gown?.report, findings: findingsJson(diagnostics) }, null, 2)}\n`);
      } else {
        const { checkTable } = await import('../check-table.ts');
        printFindings(diagnostics, machine);
        if (gown !== undefined) machine.out(checkTable(gown.report, gown.spec.units));
      }
      end(hasErrors(diagnostics) ? ExitStatus.specWrong : ExitStatus.done);
    });
};
