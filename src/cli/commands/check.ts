import type { CheckFlags } from '../check-gown.ts';
import type { AddCommand } from '../command.ts';

/** `check SPEC…` */
export const addCheck: AddCommand = (program, machine, end) => {
  program
    .command('check')
    .summary('read, draft and true specs; write nothing')
    .description(
      'Reads the spec, drafts it and trues every seam, the waist and the hem. Prints what is wrong with its place in the file, and a table of the figures; of several specs a line each in place of the table. Writes no file.',
    )
    .argument('<specs...>', 'the gown spec, or several')
    .option('--json', 'print figures and findings as JSON')
    .option('--resolved', 'print the whole spec, with what it keeps of those that it is based on')
    .action(async (files: string[], flags: CheckFlags) => {
      const { checkGowns } = await import('../check-gown.ts');
      end(checkGowns(files, flags, machine));
    });
};
