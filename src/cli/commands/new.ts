import { resolve } from 'node:path';
import { safeText } from '../../diagnostics/safe-text.ts';
import type { AddCommand } from '../command.ts';
import { ExitStatus } from '../exit-status.ts';
import { WrongCommandLine } from '../fault.ts';
import type { Template } from '../package-files.ts';

const DEFAULT_TEMPLATE = 'floor-length';

/** `new FILE [--from TEMPLATE]` */
export const addNew: AddCommand = (program, machine, end) => {
  program
    .command('new')
    .summary('write a starter spec to fill in')
    .description(
      'Writes a starter spec with comments, to fill in with your own measures. Without a file it lists the templates. A file that is there already is never overwritten.',
    )
    .argument('[file]', 'the spec to write, such as LAN-07.yaml')
    .option('--from <template>', `the template to start from (default: ${DEFAULT_TEMPLATE})`)
    .action(async (file: string | undefined, options: { from?: string }) => {
      const { chosenTemplate } = await import('../chosen-template.ts');
      const { templates } = await import('../package-files.ts');
      const { writeNewFile } = await import('../write-new-file.ts');
      const all = templates();
      if (file === undefined) {
        if (options.from !== undefined)
          throw new WrongCommandLine('new: say which file to write, such as LAN-07.yaml.');
        machine.out(listOf(all));
        return end(ExitStatus.done);
      }
      const template = chosenTemplate(all, options.from ?? DEFAULT_TEMPLATE);
      writeNewFile(resolve(machine.folder, file), template.text, file);
      machine.out(`Wrote ${safeText(file)} from the template ${template.name}: ${template.about}\n`);
      if (options.from === undefined) machine.out(`\n${listOf(all)}`);
      machine.out(`\nNext: write your measures into it, then run: gorewright check ${quoted(file)}\n`);
      end(ExitStatus.done);
    });
};

function listOf(all: readonly Template[]): string {
  const width = Math.max(...all.map((template) => template.name.length));
  const lines = all.map((template) => `  ${template.name.padEnd(width)}  ${template.about}\n`);
  return `Templates, for --from:\n${lines.join('')}`;
}

/** As it can be typed into a shell. */
function quoted(file: string): string {
  return /^[\w./-]+$/.test(file) ? file : `'${safeText(file).replaceAll("'", "'\\''")}'`;
}
