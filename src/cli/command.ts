import type { Command } from 'commander';
import type { ExitStatus } from './exit-status.ts';
import type { Machine } from './machine.ts';

/** How a command is added: it names itself, its arguments and options, and reports how it ended. */
export type AddCommand = (program: Command, machine: Machine, end: (status: ExitStatus) => void) => void;
