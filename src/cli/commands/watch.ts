import type { AddCommand } from '../command.ts';
import type { WatchFlags } from '../watch-gown.ts';

/** `watch SPEC` */
export const addWatch: AddCommand = (program, machine, end) => {
  program
    .command('watch')
    .summary('drafts on every save and shows the gown')
    .description(
      'Drafts the gown whenever its spec is saved and shows its page in a browser on this machine: drawings, pattern, lays, findings with their lines. While the spec is wrong the last good gown stays in view. Nothing is written; Ctrl-C ends it.',
    )
    .argument('<spec>', 'the gown spec')
    .option('--open', 'open the page in the browser')
    .action(async (file: string, flags: WatchFlags) => {
      const { watchGown } = await import('../watch-gown.ts');
      end(await watchGown(file, flags, machine));
    });
};
