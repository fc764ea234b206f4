import { type Drafting, draft } from '../pipeline.ts';
import type { Machine } from './machine.ts';
import { basesBeside, readSource } from './read-source.ts';

/** A spec's file to a drafted gown, with what it is based on read from beside it. */
export function readGown(file: string, machine: Machine): Drafting {
  const { source, diagnostics } = readSource(file, machine);
  return source === undefined ? { diagnostics } : draft(source, basesBeside(file, machine));
}
