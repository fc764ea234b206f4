import { Option } from 'commander';
import type { AddCommand } from '../command.ts';
import type { DraftFlags } from '../draft-flags.ts';
import { effortOption } from '../effort-option.ts';
import { listed } from '../listed.ts';

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
    .option(
      '--paper <size>',
      'a4, a3, letter, legal, tabloid, or a roll by its width (roll:914), in place of the paper in the spec',
    )
    .addOption(
      new Option('--sheets <which>', 'ends leaves out sheets that show nothing but straight seams').choices([
        'all',
        'ends',
      ]),
    )
    .option('--gores <names>', 'only these on the sheets, such as front,back', listed)
    .option('--layer <names>', 'only these on the sheets', listed)
    .option('--layers-apart', 'a piece for each layer, also where only the hems differ')
    .option('--sheet <labels>', 'these sheets once more in a file of their own, such as C4', listed)
    .option(
      '--since <revision>',
      'the sheets that changed since then once more in a file of their own, such as HEAD~1',
    )
    .option('--toile', 'the same gores for a toile: calico, wide allowances; into a folder of its own')
    .option('--projector', 'a page for a projector too, with a layer for each piece and cloth')
    .option('--audit', 'read the sheets back and compare them with the draft before anything is written')
    .option('--every <length>', 'between the levels of the chalk tables, such as 10cm or 4in')
    .addOption(effortOption())
    .option('--replace', 'overwrite files of the same names even if they are yours or were changed')
    .option('--json', 'print what was written as JSON')
    .action(async (file: string, flags: DraftFlags) => {
      const { draftIntoFolder } = await import('../draft-into-folder.ts');
      end(await draftIntoFolder(file, flags, machine));
    });
};
