import type { AddCommand } from '../command.ts';
import type { CompareFlags } from '../compare-specs.ts';

/** `compare OLD NEW` */
export const addCompare: AddCommand = (program, machine, end) => {
  program
    .command('compare')
    .summary('what changed between two versions, and what it means for cut cloth')
    .description(
      'Compares two specs, or one at two moments of its git history (gown.yaml@HEAD~2): what changed in measures, which pieces that are cut stay as they are, are marked anew, let out or cut again, and what to buy and print. Ends with 0 whether or not they differ.',
    )
    .argument('<old>', 'the earlier spec, or one at a revision: gown.yaml@HEAD~2')
    .argument('<new>', 'the later spec')
    .option(
      '-o, --out <file>',
      'also draw old and new pieces over each other, as SVG, into this new file or folder',
    )
    .option('--no-lays', 'leave out what changes in lays and cloth to buy: quicker')
    .option('--json', 'print it as JSON, lengths in mm')
    .action(async (old: string, now: string, flags: CompareFlags) => {
      const { compareSpecs } = await import('../compare-specs.ts');
      end(await compareSpecs(old, now, flags, machine));
    });
};
