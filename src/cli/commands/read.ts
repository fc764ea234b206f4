import type { AddCommand } from '../command.ts';

/** `read SPEC` */
export const addRead: AddCommand = (program, machine, end) => {
  program
    .command('read')
    .summary('a spec read aloud, a line a value: for `git diff`')
    .description(
      'Prints what a spec means, a line a value, lengths in millimetres whatever they were written in, and the main figures of its draft. Meant for `git diff`: comments, units and the order of keys make no difference in it. A file that is no spec comes out as it is.',
    )
    .argument('<spec>', 'the gown spec')
    .action(async (file: string) => {
      const { readAloud } = await import('../read-aloud.ts');
      end(readAloud(file, machine));
    });
};
