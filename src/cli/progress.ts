import { safeText } from '../diagnostics/safe-text.ts';
import type { Machine } from './machine.ts';

/** A step shorter than this needs no word: a line that flashes by only disturbs. */
const SILENT_MS = 1_000;
const REDRAW_MS = 100;

/** One line on the terminal that says what takes long, and goes away again. Silent where nobody looks. */
export class Progress {
  private readonly began = performance.now();
  private drawnAt = Number.NEGATIVE_INFINITY;
  private drawn = false;

  constructor(private readonly machine: Machine) {}

  /** Called as often as a step likes; draws at most ten times a second, and not within the first second. */
  say(text: string): void {
    const now = performance.now();
    if (!this.machine.errIsTerminal || now - this.began < SILENT_MS || now - this.drawnAt < REDRAW_MS) return;
    this.machine.styled(`\r\u001b[K${safeText(text).slice(0, (this.machine.columns ?? 80) - 1)}`);
    this.drawnAt = now;
    this.drawn = true;
  }

  /** Clears the line before anything else is printed. */
  done(): void {
    if (this.drawn) this.machine.styled('\r\u001b[K');
    this.drawn = false;
  }
}
