import type { AddCommand } from '../command.ts';
import type { MeasuresFlags } from '../print-measures.ts';

/** `measures [SPEC] [--from TEMPLATE]` */
export const addMeasures: AddCommand = (program, machine, end) => {
  program
    .command('measures')
    .summary('a blank form of what to measure, for the fitting')
    .description(
      "Prints a blank form to fill in at the fitting: the stations of your spec or of a template, the bodice's panels, hip and shoulders, shoes and petticoat. None of the spec's own measures is printed. With --out it is a PDF with a figure that shows where.",
    )
    .argument('[spec]', 'the gown spec')
    .option('--from <template>', 'a template, in place of a spec')
    .option('-o, --out <file>', 'write a PDF; a file that is there already is never overwritten')
    .option('--paper <size>', 'a4, a3, letter, legal or tabloid, in place of the paper in the spec')
    .action(async (file: string | undefined, flags: MeasuresFlags) => {
      const { printMeasures } = await import('../print-measures.ts');
      end(await printMeasures(file, flags, machine));
    });
};
