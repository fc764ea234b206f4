import type { Machine } from '../../src/cli/machine.ts';
import { plainLines } from '../../src/diagnostics/plain-text.ts';

/** A machine without a terminal that keeps what was printed. */
export class RecordingMachine implements Machine {
  stdout = '';
  stderr = '';
  readonly outIsTerminal: boolean = false;
  readonly errIsTerminal: boolean = false;
  readonly colour = false;

  constructor(readonly folder: string) {}

  out(text: string): void {
    this.stdout += plainLines(text);
  }

  err(text: string): void {
    this.stderr += text;
  }

  styled(text: string): void {
    this.err(text);
  }

  async flush(): Promise<void> {}
}
