import { Option } from 'commander';
import type { AddCommand } from '../command.ts';
import { effortOption } from '../effort-option.ts';
import type { LayFlags } from '../lay-gown.ts';
import { listed } from '../listed.ts';

/** `lay SPEC` */
export const addLay: AddCommand = (program, machine, end) => {
  program
    .command('lay')
    .summary('the lay plans and what to buy')
    .description(
      'Plans how all that is cut from one cloth lies on it: flat, folded along its length, folded across it, or in stretches, whichever is shortest; and says what to buy. With --width, --one-way or --fold it asks what would be, before anyone buys.',
    )
    .argument('<spec>', 'the gown spec')
    .option('--layer <names>', 'only these layers', listed)
    .option('--width <width>', 'suppose a cloth of this width; several can be compared', listed)
    .option('--one-way', 'suppose a cloth with all tops one way')
    .addOption(
      new Option('--fold <how>', 'suppose that it is folded so').choices([
        'any',
        'single',
        'lengthwise',
        'crosswise',
      ]),
    )
    .addOption(effortOption())
    .option('--json', 'print the lays as JSON')
    .action(async (file: string, flags: LayFlags) => {
      const { layGown } = await import('../lay-gown.ts');
      end(await layGown(file, flags, machine));
    });
};
