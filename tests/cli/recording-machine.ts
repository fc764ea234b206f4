import type { Machine } from '../../src/cli/machine.ts';
import { safeLines } from '../../src/diagnostics/safe-text.ts';

/** A machine without a terminal that keeps what was printed. */
export class RecordingMachine implements Machine {
  stdout = '';
  stderr = '';
  readonly outIsTerminal: boolean = false;
  readonly errIsTerminal: boolean = false;
  readonly colour = false;

  constructor(readonly folder: string) {}

  out(text: string): void {
    this.stdout += safeLines(text);
  }

  err(text: string): void {
    this.stderr += text;
  }

  styled(text: string): void {
    this.err(text);
  }

  async flush(): Promise<void> {}
}
