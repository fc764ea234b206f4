import type { Source } from '../diagnostics/diagnostic.ts';
import { type Drafting, draft } from '../pipeline.ts';
import type { Machine } from './machine.ts';
import { basesBeside, readSource } from './read-source.ts';

export interface GownRead extends Drafting {
  /** Every text that was read, the spec's own first. */
  readonly sources: readonly Source[];
}

/** A spec's file to a drafted gown, with what it is based on read from beside it. */
export function readGown(file: string, machine: Machine): GownRead {
  const { source, diagnostics } = readSource(file, machine);
  if (source === undefined) return { diagnostics, sources: [] };
  const sources = [source];
  const readBase = basesBeside(file, machine);
  const drafting = draft(source, (path) => {
    const base = readBase(path);
    if (base?.source !== undefined) sources.push(base.source);
    return base;
  });
  return { ...drafting, sources };
}
