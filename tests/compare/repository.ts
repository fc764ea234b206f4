import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';

/** A real git repository in a folder of its own, with nothing of this machine's settings in it. */
export class Repository {
  readonly folder = realpathSync(mkdtempSync(join(tmpdir(), 'gowns-')));

  constructor() {
    this.git('init', '--quiet', '--initial-branch=main');
  }

  git(...args: string[]): string {
    return execFileSync('git', args, { cwd: this.folder, encoding: 'utf8', env: ENVIRONMENT });
  }

  write(name: string, text: string): void {
    const path = join(this.folder, name);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
  }

  /** Writes the files and commits them. */
  commit(files: Readonly<Record<string, string>>): string {
    for (const [name, text] of Object.entries(files)) this.write(name, text);
    this.git('add', '--all');
    this.git('commit', '--quiet', '--allow-empty', '--message=as pinned');
    return this.git('rev-parse', 'HEAD').trim();
  }

  remove(): void {
    rmSync(this.folder, { recursive: true });
  }
}

const ENVIRONMENT = {
  PATH: process.env.PATH,
  HOME: tmpdir(),
  GIT_CONFIG_GLOBAL: '/dev/null',
  GIT_CONFIG_SYSTEM: '/dev/null',
  GIT_AUTHOR_NAME: 'Maker',
  GIT_AUTHOR_EMAIL: 'maker@example.invalid',
  GIT_COMMITTER_NAME: 'Maker',
  GIT_COMMITTER_EMAIL: 'maker@example.invalid',
};
