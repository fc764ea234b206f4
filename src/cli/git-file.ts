import { spawnSync } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';
import { dirname, join, posix, relative, resolve, sep } from 'node:path';
import type { Diagnostic, Source } from '../diagnostics/diagnostic.ts';
import { safeText } from '../diagnostics/safe-text.ts';
import type { ReadBase } from '../gown-file/based-on.ts';
import { decodeSpec, LARGEST_SPEC } from '../gown-file/decode-spec.ts';
import { MachineFault, systemCode } from './fault.ts';
import type { Machine } from './machine.ts';
import type { FileAtRevision } from './revision.ts';

/** A spec as it was at a revision, and the reader of what it is based on, at the same revision. */
export interface SourceAtRevision {
  readonly source?: Source;
  readonly diagnostics: readonly Diagnostic[];
  readonly readBase: ReadBase;
}

/**
 * Reads a file as git keeps it at a revision. Git is run without a shell, and nothing is fetched, checked out or
 * written.
 *
 * @throws MachineFault where there is no git, no repository, no such revision or no such file in it
 */
export function readAtRevision(asked: FileAtRevision, machine: Machine): SourceAtRevision {
  const path = resolve(machine.folder, asked.file);
  const folder = nearestFolder(dirname(path));
  const git = new Git(folder, asked);
  const inFolder = relative(folder, path).split(sep).join('/');
  const tree = { git, commit: git.commitOf(asked.revision), path: posix.join(git.prefix(), inFolder) };
  const bytes = blobAt(tree.git, tree.commit, tree.path);
  if (bytes === undefined) {
    throw new MachineFault(
      `${safeText(asked.file)} is not in the repository at ${safeText(asked.revision)}`,
      'Look with `git log --follow --stat` at what it was called then, or commit it first.',
    );
  }
  return {
    ...decodeSpec(bytes, `${asked.file}@${asked.revision}`),
    readBase: (base) => {
      const own = blobAt(tree.git, tree.commit, posix.join(posix.dirname(tree.path), base));
      const name = `${join(dirname(asked.file), base)}@${asked.revision}`;
      return own === undefined ? undefined : decodeSpec(own, name);
    },
  };
}

/**
 * Hashes of the commits that changed a file, the latest first.
 *
 * @throws MachineFault where there is no git or no repository
 */
export function commitsOf(file: string, most: number, machine: Machine): string[] {
  const path = resolve(machine.folder, file);
  const folder = nearestFolder(dirname(path));
  const git = new Git(folder, { file, revision: 'HEAD' });
  const inFolder = relative(folder, path).split(sep).join('/');
  return git
    .run(['rev-list', `--max-count=${most}`, 'HEAD', '--', inFolder])
    .toString()
    .split('\n')
    .filter((line) => /^[0-9a-f]{40,64}$/.test(line));
}

/** The folder itself may be gone by now, as the file may. */
function nearestFolder(folder: string): string {
  let at = folder;
  while (!(existsSync(at) && statSync(at).isDirectory())) at = dirname(at);
  return at;
}

/** A file's bytes in a commit; undefined where it has no such file. More than a spec may have is cut short. */
function blobAt(git: Git, commit: string, path: string): Uint8Array | undefined {
  const entry = git.run(['ls-tree', '-z', '--full-tree', commit, '--', path]).toString();
  const match = /^(\d{6}) (\w+) ([0-9a-f]{40,64})\t([^\0]*)\0$/.exec(entry);
  if (match === null || match[4] !== path) return undefined;
  const [, mode, , object = ''] = match;
  if (mode !== '100644' && mode !== '100755') {
    const found = mode === '120000' ? 'a link' : mode === '040000' ? 'a folder' : 'another repository';
    throw new MachineFault(
      `${safeText(path)} is ${found} in the repository, not a file`,
      'Give the file itself.',
    );
  }
  const size = Number(git.run(['cat-file', '-s', object]).toString());
  return size > LARGEST_SPEC ? new Uint8Array(LARGEST_SPEC + 1) : git.run(['cat-file', 'blob', object]);
}

/** Longer than git takes for any of this on a slow disk, ms. */
const PATIENCE = 20_000;

/** What git must not do when asked for a file: ask for a password, fetch, read a path as a pattern, speak another language. */
const QUIET = {
  GIT_TERMINAL_PROMPT: '0',
  GIT_NO_LAZY_FETCH: '1',
  GIT_OPTIONAL_LOCKS: '0',
  GIT_LITERAL_PATHSPECS: '1',
  LC_ALL: 'C',
};

class Git {
  constructor(
    private readonly folder: string,
    private readonly asked: FileAtRevision,
  ) {}

  /** The folder's path from the top of its repository, ending in `/`; empty at the top. */
  prefix(): string {
    return this.run(['rev-parse', '--show-prefix']).toString().replace(/\n$/, '');
  }

  commitOf(revision: string): string {
    const { status, stdout } = this.spawn(['rev-parse', '--verify', '--quiet', `${revision}^{commit}`]);
    const commit = stdout.toString().trim();
    if (status === 0 && /^[0-9a-f]{40,64}$/.test(commit)) return commit;
    const shallow = this.run(['rev-parse', '--is-shallow-repository']).toString().trim() === 'true';
    throw new MachineFault(
      `there is no revision ${safeText(revision)} in the repository of ${safeText(this.asked.file)}`,
      shallow
        ? 'Its history was cut short when it was cloned: run `git fetch --unshallow` first.'
        : 'Look with `git log --oneline` at the revisions there are.',
    );
  }

  /** What a command prints. */
  run(args: readonly string[]): Buffer {
    const { status, stdout, stderr } = this.spawn(args);
    if (status === 0) return stdout;
    throw this.fault(stderr.toString());
  }

  private spawn(args: readonly string[]) {
    const result = spawnSync('git', args, {
      cwd: this.folder,
      env: { ...process.env, ...QUIET },
      maxBuffer: 4 * LARGEST_SPEC,
      timeout: PATIENCE,
      windowsHide: true,
    });
    if (result.error === undefined) return result;
    const missing = systemCode(result.error) === 'ENOENT';
    throw new MachineFault(
      missing
        ? `git is not installed here, so ${safeText(this.asked.file)} at ${safeText(this.asked.revision)} cannot be read`
        : `git could not be run (${systemCode(result.error)})`,
      missing ? 'Install git, or give two files.' : 'Run it again, or give two files.',
    );
  }

  private fault(said: string): MachineFault {
    const file = safeText(this.asked.file);
    if (said.includes('not a git repository'))
      return new MachineFault(
        `${file} lies in no git repository, so it has no revision ${safeText(this.asked.revision)}`,
        'Give two files, or keep the specs in git: `git init`, then commit them.',
      );
    if (said.includes('dubious ownership'))
      return new MachineFault(
        `git will not read the repository of ${file}, as it belongs to another user`,
        'Ask whoever keeps it, or look up `safe.directory` in git’s manual.',
      );
    const line = safeText(said.split('\n').find((text) => text !== '') ?? 'no reason given').slice(0, 200);
    return new MachineFault(`git could not read ${file}: ${line}`, 'Look with `git status` and `git fsck`.');
  }
}
