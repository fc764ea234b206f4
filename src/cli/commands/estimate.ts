import type { AddCommand } from '../command.ts';
import type { EstimateFlags } from '../estimate-flags.ts';
import { listed } from '../listed.ts';

/** `estimate --from TEMPLATE` */
export const addEstimate: AddCommand = (program, machine, end) => {
  program
    .command('estimate')
    .summary('cloth, paper, hours and a price range before there are measures')
    .description(
      'For the first talk, when nobody is measured yet: how much cloth a layer takes at the usual widths, how many sheets, how many hours, and a price range where a rate and prices are given. It says all that it assumes.',
    )
    .requiredOption('--from <template>', 'the gown that is most like it')
    .option('--size <bust>', 'a size of EN 13402-3, by the bust girth in cm: 76, 80, 84, …')
    .option('--set <measures>', 'what is known, such as waist=74,to-floor=105,train=60', listed)
    .option('--width <widths>', 'cloth of these widths, in place of the usual ones', listed)
    .option('--rate <amount>', 'for an hour')
    .option('--price <amounts>', 'of a metre of each cloth, such as shell=24.50,lining=7.90', listed)
    .option('--paper <size>', 'of the sheets')
    .option('--json', 'print the figures as JSON')
    .action(async (flags: EstimateFlags) => {
      const { estimateGown } = await import('../estimate-gown.ts');
      end(await estimateGown(flags, machine));
    });
};
