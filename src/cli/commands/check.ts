import type { CheckFlags } from '../check-gown.ts';
import type { AddCommand } from '../command.ts';

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
    .option('--resolved', 'print the whole spec, with what it keeps of those that it is based on')
    .action(async (file: string, flags: CheckFlags) => {
      const { checkGown } = await import('../check-gown.ts');
      end(checkGown(file, flags, machine));
    });
};
