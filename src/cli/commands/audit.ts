import type { AuditFlags } from '../audit-pdf.ts';
import type { AddCommand } from '../command.ts';

/** `audit PDF SPEC` */
export const addAudit: AddCommand = (program, machine, end) => {
  program
    .command('audit')
    .summary('compare a pattern on paper with the draft')
    .description(
      "Reads a pattern's PDF back, of today or received later, measures its test square and compares every line of every sheet with the spec's draft. Says which version of the spec made it. A line off by more than 0.1 mm is a fault. Writes no file.",
    )
    .argument('<pdf>', "a pattern's PDF, drafted by this tool, perhaps saved again by another")
    .argument('<spec>', 'the gown spec')
    .option('--json', 'print the result as JSON')
    .action(async (pdf: string, file: string, flags: AuditFlags) => {
      const { auditPdf } = await import('../audit-pdf.ts');
      end(auditPdf(pdf, file, flags, machine));
    });
};
