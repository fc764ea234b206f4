import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { formatDiagnostics } from '../diagnostics/format-diagnostic.ts';
import type { Machine } from './machine.ts';

/** Prints every finding with its place, and after several how many there are. */
export function printFindings(diagnostics: readonly Diagnostic[], machine: Machine): void {
  if (diagnostics.length === 0) return;
  const print = machine.colour ? machine.styled : machine.err;
  print.call(machine, `${formatDiagnostics(diagnostics, { colour: machine.colour })}\n\n`);
  machine.err(`${countOf(diagnostics)}\n`);
}

export function hasErrors(diagnostics: readonly Diagnostic[]): boolean {
  return diagnostics.some(({ level }) => level === 'error');
}

function countOf(diagnostics: readonly Diagnostic[]): string {
  return (['error', 'warning', 'note'] as const)
    .map((level) => ({ level, count: diagnostics.filter((diagnostic) => diagnostic.level === level).length }))
    .filter(({ count }) => count > 0)
    .map(({ level, count }) => `${count} ${level}${count === 1 ? '' : 's'}`)
    .join(', ');
}
