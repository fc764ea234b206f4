import { statSync } from 'node:fs';
import { resolve } from 'node:path';
import { safeText } from '../diagnostics/safe-text.ts';
import { WrongCommandLine } from './fault.ts';
import type { Machine } from './machine.ts';

/** A file as it was at a revision of the git repository that it lies in. */
export interface FileAtRevision {
  readonly file: string;
  readonly revision: string;
}

/**
 * `gown.yaml@HEAD~2` as a file and a revision; undefined for a plain file. A name that has an `@` of its own is a plain
 * file where there is one of that name; with a revision as well, the longest name that is there is the file's.
 *
 * @throws WrongCommandLine where what stands behind the `@` can be no revision
 */
export function fileAtRevision(argument: string, machine: Machine): FileAtRevision | undefined {
  if (isFile(argument, machine)) return undefined;
  const splits = [...argument.matchAll(/@/g)].map(({ index }) => ({
    file: argument.slice(0, index),
    revision: argument.slice(index + 1),
  }));
  const asked = splits.findLast(({ file }) => isFile(file, machine)) ?? splits.at(-1);
  if (asked === undefined || asked.file === '') return undefined;
  checkRevision(asked.revision);
  return asked;
}

/** @throws WrongCommandLine where the text can be no revision, or is a form that is not read here */
export function checkRevision(revision: string): void {
  if (revision === '') throw new WrongCommandLine('a revision must follow the @, such as gown.yaml@HEAD~2.');
  if (REVISION.test(revision) && !revision.includes('..') && revision.length <= LONGEST) return;
  throw new WrongCommandLine(
    `"${safeText(revision.slice(0, 80))}" is no revision that can be read here. Give a commit, a branch, a tag, or one so many before it: HEAD~2, main, v1.2, 4f2a9c1.`,
  );
}

/** Names of branches and tags, hashes, `~2` and `^`: nothing that git would take for an option, a range, a path or a date. */
const REVISION = /^[\p{L}\p{N}_][\p{L}\p{N}_./+-]*([~^]\d*)*$/u;
const LONGEST = 250;

function isFile(name: string, machine: Machine): boolean {
  try {
    return name !== '' && statSync(resolve(machine.folder, name)).isFile();
  } catch {
    return false;
  }
}
