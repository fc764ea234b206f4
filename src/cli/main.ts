import { CommanderError } from 'commander';
import { safeText } from '../diagnostics/safe-text.ts';
import { ExitStatus } from './exit-status.ts';
import { MachineFault, WrongCommandLine } from './fault.ts';
import { type Machine, thisMachine } from './machine.ts';
import { program } from './program.ts';

/**
 * Runs one command line, without the `node` and the script before it.
 *
 * @returns the exit status; it never throws
 */
export async function run(argv: readonly string[], machine: Machine = thisMachine()): Promise<ExitStatus> {
  const status = await statusOf(() => runCommand(argv, machine), machine);
  const flushed = await statusOf(async () => {
    await machine.flush();
    return ExitStatus.done;
  }, machine);
  return flushed === ExitStatus.done ? status : flushed;
}

async function runCommand(argv: readonly string[], machine: Machine): Promise<ExitStatus> {
  if (argv.includes('')) throw new WrongCommandLine('an argument is empty. Give a name there.');
  let status: ExitStatus = ExitStatus.done;
  const ended = (last: ExitStatus) => {
    status = last;
  };
  const commands = program(machine, ended, argv[0]);
  await commands.parseAsync([...argv], { from: 'user' });
  return status;
}

async function statusOf(work: () => Promise<ExitStatus>, machine: Machine): Promise<ExitStatus> {
  try {
    return await work();
  } catch (error) {
    if (error instanceof CommanderError)
      return error.exitCode === 0 ? ExitStatus.done : ExitStatus.wrongCommandLine;
    if (error instanceof WrongCommandLine) {
      machine.err(`gorewright: ${error.message}\n`);
      return ExitStatus.wrongCommandLine;
    }
    machine.err(`gorewright: ${error instanceof MachineFault ? error.message : ownFault(error)}\n`);
    return ExitStatus.fault;
  }
}

function ownFault(error: unknown): string {
  const said = safeText(error instanceof Error ? error.message : String(error)).slice(0, 300);
  return `a fault of this tool, not of your spec (${said}). Keep the spec as it is and show both to whoever looks after the tool.`;
}
