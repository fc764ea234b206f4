import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { LAY_CUT_SHORT } from '../lay/plan/lay-problems.ts';

/** What the process ends with; scripts rely on it. */
export const ExitStatus = {
  /** It did what was asked; there may be warnings. */
  done: 0,
  /** The spec is wrong, or a check of the draft failed. */
  specWrong: 1,
  /** The command line is wrong. */
  wrongCommandLine: 2,
  /** Could not read or write, or a fault of the tool itself. */
  fault: 3,
  /** Ctrl-C cut the lays short: what was found by then is written, and marked. What shells give for an interrupt. */
  cutShort: 130,
} as const;

export type ExitStatus = (typeof ExitStatus)[keyof typeof ExitStatus];

/** What findings come to. */
export function statusOf(diagnostics: readonly Diagnostic[]): ExitStatus {
  if (diagnostics.some(({ level }) => level === 'error')) return ExitStatus.specWrong;
  return isCutShort(diagnostics) ? ExitStatus.cutShort : ExitStatus.done;
}

export function isCutShort(diagnostics: readonly Diagnostic[]): boolean {
  return diagnostics.some(({ code }) => code === LAY_CUT_SHORT);
}
