import { MachineFault, systemCode } from './fault.ts';

/** What a command sees of the machine that it runs on, so that tests can give another. */
export interface Machine {
  /** Folder that relative paths start from. */
  readonly folder: string;
  /** Results. */
  out(text: string): void;
  /** Messages. */
  err(text: string): void;
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
    folder: process.cwd(),
    out: (text) => out.write(text),
    err: (text) => err.write(text),
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
