import type { AddCommand } from '../command.ts';
import type { QuoteFlags } from '../quote-gown.ts';

/** `quote SPEC` */
export const addQuote: AddCommand = (program, machine, end) => {
  program
    .command('quote')
    .summary("the client's price")
    .description(
      "Prints the client's price: cloth at the lengths that the lays say to buy, trims, notions and work, what falls due when, and what counts as a change. Your own reckoning, with overhead and margin, is in the job sheet.",
    )
    .argument('<spec>', 'the gown spec')
    .option('-o, --out <file>', "also write the client's pages as PDF into this new file")
    .option('--paper <size>', 'of those pages, in place of the paper in the spec')
    .option('--json', 'print the quote as JSON')
    .action(async (file: string, flags: QuoteFlags) => {
      const { quoteGown } = await import('../quote-gown.ts');
      end(await quoteGown(file, flags, machine));
    });
};
