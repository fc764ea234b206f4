import type { Machine } from '../../src/cli/machine.ts';

/** A machine without a terminal that keeps what was printed. */
export class RecordingMachine implements Machine {
  stdout = '';
  stderr = '';
  readonly outIsTerminal: boolean = false;
  readonly errIsTerminal: boolean = false;
  readonly colour = false;

  constructor(readonly folder: string) {}

  out(text: string): void {
    this.stdout += text;
  }

  err(text: string): void {
    this.stderr += text;
  }

  async flush(): Promise<void> {}
}
