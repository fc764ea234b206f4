import { isSameHash, recordedCuts } from '../compare/cloth-state.ts';
import type { NamedGown } from '../publish/comparison.ts';
import { draftedSpec } from './drafted-spec.ts';
import { MachineFault } from './fault.ts';
import { commitsOf } from './git-file.ts';
import type { Machine } from './machine.ts';
import { fileAtRevision } from './revision.ts';

/** Commits of a spec that are looked through: years of a gown's life. More would keep the maker waiting. */
const MOST_COMMITS = 200;

/**
 * By layer: the version that its cloth was cut from, where the spec records one that is neither the old nor the new
 * one and the file's git history has it. Without git, or where it is not found, the layer is left out.
 */
export function versionsCutFrom(
  name: string,
  old: NamedGown,
  now: NamedGown,
  machine: Machine,
): ReadonlyMap<string, NamedGown> {
  const wanted = Object.entries(recordedCuts(old.spec, now.spec)).filter(
    ([, hash]) => ![old, now].some(({ gown }) => isSameHash(hash, gown.gown.content)),
  );
  const found = new Map<string, NamedGown>();
  if (wanted.length === 0) return found;
  const file = fileAtRevision(name, machine)?.file ?? name;
  for (const commit of commitsQuietly(file, machine)) {
    if (found.size === wanted.length) break;
    const version = draftedQuietly(`${file}@${commit.slice(0, 12)}`, machine);
    for (const [layer, hash] of wanted)
      if (version !== undefined && !found.has(layer) && isSameHash(hash, version.gown.gown.content))
        found.set(layer, version);
  }
  return found;
}

function commitsQuietly(file: string, machine: Machine): readonly string[] {
  return orNothing(() => commitsOf(file, MOST_COMMITS, machine)) ?? [];
}

function draftedQuietly(name: string, machine: Machine): NamedGown | undefined {
  return orNothing(() => draftedSpec(name, machine).gown);
}

/** What the history cannot give is no fault here: the comparison says that the version was not found. */
function orNothing<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch (error) {
    if (error instanceof MachineFault) return undefined;
    throw error;
  }
}
