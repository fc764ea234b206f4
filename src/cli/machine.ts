import { safeLines } from '../diagnostics/safe-text.ts';
import { MachineFault, systemCode } from './fault.ts';

/** What a command sees of the machine that it runs on, so that tests can give another. */
export interface Machine {
  /** Folder that relative paths start from. */
  readonly folder: string;
  /** Results. Nothing in them reaches a terminal but text, whatever a spec or a file's name holds. */
  out(text: string): void;
  /** Messages, as safe. */
  err(text: string): void;
  /** Messages with colours or a moving line of our own: all else in them must be safe already. */
  styled(text: string): void;
  readonly outIsTerminal: boolean;
  readonly errIsTerminal: boolean;
  /** Columns of the terminal, where there is one. */
  readonly columns?: number;
  /** Colour in messages: on a terminal that shows it, and never with NO_COLOR. */
  readonly colour: boolean;
  /** Waits until everything is written; fails with a MachineFault where it could not be. */
  flush(): Promise<void>;
}

/** The machine that this process runs on. */
export function thisMachine(): Machine {
  const { stdout, stderr, env } = process;
  const out = new Pipe(stdout, 'the results');
  const err = new Pipe(stderr, 'the messages');
  return {
    get folder() {
      return workingFolder();
    },
    out: (text) => out.write(safeLines(text)),
    err: (text) => err.write(shortLines(safeLines(text))),
    styled: (text) => err.write(text),
    outIsTerminal: stdout.isTTY === true,
    errIsTerminal: stderr.isTTY === true,
    ...(stdout.isTTY ? { columns: stdout.columns } : {}),
    colour: stderr.isTTY === true && (env.NO_COLOR ?? '') === '' && env.TERM !== 'dumb',
    flush: async () => {
      await out.done();
      await err.done();
    },
  };
}

/** @throws MachineFault where the folder was deleted under whoever stands in it */
function workingFolder(): string {
  try {
    return process.cwd();
  } catch {
    throw new MachineFault(
      'the folder that you are in is there no more',
      'Go to another one with `cd` and run it again.',
    );
  }
}

/** Longer, a line of a message is no message: it repeats something that somebody typed or wrote. */
const LONGEST_LINE = 2000;

/** Lines of messages, each cut where nobody reads on. */
export function shortLines(text: string): string {
  if (text.length <= LONGEST_LINE) return text;
  return text
    .split('\n')
    .map((line) => (line.length <= LONGEST_LINE ? line : `${line.slice(0, LONGEST_LINE)}…`))
    .join('\n');
}

/** A stream that may end early: `gorewright schema | head` is no fault, a full disk behind `>` is one. */
class Pipe {
  private error: Error | undefined;
  private last: Promise<void> = Promise.resolve();

  constructor(
    private readonly stream: NodeJS.WriteStream,
    private readonly what: string,
  ) {
    stream.on('error', (error) => {
      this.error ??= error;
    });
  }

  write(text: string): void {
    if (this.error !== undefined) return;
    this.last = new Promise((resolve) => {
      this.stream.write(text, (error) => {
        if (error) this.error ??= error;
        resolve();
      });
    });
  }

  async done(): Promise<void> {
    await this.last;
    if (this.error === undefined || systemCode(this.error) === 'EPIPE') return;
    throw new MachineFault(
      `could not write ${this.what} (${systemCode(this.error)})`,
      'Free some space or write to another place.',
    );
  }
}
