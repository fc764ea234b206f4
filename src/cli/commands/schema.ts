import type { AddCommand } from '../command.ts';
import { ExitStatus } from '../exit-status.ts';

/** `schema` */
export const addSchema: AddCommand = (program, machine, end) => {
  program
    .command('schema')
    .summary("print the spec's JSON Schema, for an editor's completion")
    .description(
      "Prints the JSON Schema of a gown spec. An editor that knows it offers the spec's words as you type and marks mistakes.",
    )
    .action(async () => {
      const { specSchema } = await import('../../gown-file/spec-schema.ts');
      machine.out(`${JSON.stringify(specSchema(), null, 2)}\n`);
      end(ExitStatus.done);
    });
};
