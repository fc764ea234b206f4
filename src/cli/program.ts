import { Command } from 'commander';
import { version } from '../../package.json';
import { safeText } from '../diagnostics/safe-text.ts';
import type { AddCommand } from './command.ts';
import { addAudit } from './commands/audit.ts';
import { addCheck } from './commands/check.ts';
import { addCompare } from './commands/compare.ts';
import { addDraft } from './commands/draft.ts';
import { addEstimate } from './commands/estimate.ts';
import { addLay } from './commands/lay.ts';
import { addMeasures } from './commands/measures.ts';
import { addNew } from './commands/new.ts';
import { addQuote } from './commands/quote.ts';
import { addRead } from './commands/read.ts';
import { addSchema } from './commands/schema.ts';
import { addWatch } from './commands/watch.ts';
import type { ExitStatus } from './exit-status.ts';
import type { Machine } from './machine.ts';

/** Every command by its name, in the order in which a gown meets them. Each loads its heavy modules when it runs. */
const COMMANDS: Readonly<Record<string, AddCommand>> = {
  estimate: addEstimate,
  new: addNew,
  measures: addMeasures,
  check: addCheck,
  draft: addDraft,
  watch: addWatch,
  lay: addLay,
  quote: addQuote,
  compare: addCompare,
  read: addRead,
  audit: addAudit,
  schema: addSchema,
};

/**
 * The command line as a whole; of its commands only the one that is `asked`, if that names one: to put all twelve
 * together takes longer than to check a small gown.
 */
export function program(machine: Machine, end: (status: ExitStatus) => void, asked?: string): Command {
  const root = new Command('gorewright')
    .description(
      "Drafts a one-off gown from one YAML file: a trued pattern, sheets for a home printer, lays and the workroom's papers.",
    )
    .version(version, '--version', 'print the version')
    .helpOption('-h, --help', 'print this help')
    .helpCommand(false)
    .exitOverride()
    .configureOutput({
      writeOut: (text) => machine.out(text),
      writeErr: (text) => machine.err(text),
      getOutHelpWidth: () => machine.columns ?? 100,
      getErrHelpWidth: () => machine.columns ?? 100,
      outputError: (text, write) => {
        // What was typed is repeated in it.
        const lines = text
          .trimEnd()
          .replace(/^error: /, 'gorewright: ')
          .split('\n');
        write(`${lines.map(safeText).join('\n')}\n`);
      },
    })
    .addHelpText('after', CLOSING);
  for (const add of commandsFor(asked)) add(root, machine, end);
  for (const command of root.commands) {
    command
      .copyInheritedSettings(root)
      .showHelpAfterError(`Run "gorewright ${command.name()} --help" to see what it takes.`);
  }
  return root.showHelpAfterError('Run "gorewright --help" to see the commands.');
}

function commandsFor(asked: string | undefined): readonly AddCommand[] {
  const own = asked !== undefined && Object.hasOwn(COMMANDS, asked) ? COMMANDS[asked] : undefined;
  return own === undefined ? Object.values(COMMANDS) : [own];
}

const CLOSING = `
Ends with 0 when done (there may be warnings), 1 when the spec is wrong or a check failed,
2 when the command line is wrong, 3 when it could not read or write, 130 when Ctrl-C cut the lays short.`;
