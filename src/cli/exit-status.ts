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
} as const;

export type ExitStatus = (typeof ExitStatus)[keyof typeof ExitStatus];
