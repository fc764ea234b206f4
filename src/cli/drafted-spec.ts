import { draft } from '../pipeline.ts';
import type { NamedGown } from '../publish/comparison.ts';
import { readAtRevision } from './git-file.ts';
import type { Machine } from './machine.ts';
import { basesBeside, readSource } from './read-source.ts';
import { fileAtRevision } from './revision.ts';

/** A spec from a file, or from a file at a revision, drafted; `gown` only where it can be. */
export function draftedSpec(
  name: string,
  machine: Machine,
): { readonly gown?: NamedGown; readonly diagnostics: NamedGown['diagnostics'] } {
  const asked = fileAtRevision(name, machine);
  const { source, diagnostics, readBase } =
    asked === undefined
      ? { ...readSource(name, machine), readBase: basesBeside(name, machine) }
      : readAtRevision(asked, machine);
  if (source === undefined) return { diagnostics };
  const drafting = draft(source, readBase);
  const { spec, gown } = drafting;
  if (spec === undefined || gown === undefined) return { diagnostics: drafting.diagnostics };
  return { gown: { name, spec, gown, diagnostics: drafting.diagnostics }, diagnostics: drafting.diagnostics };
}
