import type { AddCommand } from '../command.ts';
import type { DraftFlags } from '../draft-into-folder.ts';

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
      const { draftIntoFolder } = await import('../draft-into-folder.ts');
      end(await draftIntoFolder(file, flags, machine));
    });
};
