import { type ChildProcess, type SpawnSyncReturns, spawn, spawnSync } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const ROOT = join(import.meta.dirname, '../..');
const BIN = join(ROOT, 'bin/gorewright.js');

export interface Ended {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

/** Runs the built command line in a process of its own. */
export function gorewright(
  argv: readonly string[],
  folder: string,
  environment: Record<string, string> = {},
  program = BIN,
): Ended {
  return ended(
    `gorewright ${argv.join(' ')}`,
    spawnSync(process.execPath, [program, ...argv], {
      cwd: folder,
      env: { ...process.env, ...environment },
      encoding: 'utf8',
      timeout: PATIENCE,
    }),
  );
}

/** The same through a shell, for redirections and limits; `gorewright` stands for the command. */
export function inShell(script: string, folder: string): Ended {
  const body = `gorewright() { ${JSON.stringify(process.execPath)} ${JSON.stringify(BIN)} "$@"; }\n${script}`;
  return ended(script, spawnSync('bash', ['-c', body], { cwd: folder, encoding: 'utf8', timeout: PATIENCE }));
}

/** Far longer than any of this takes on a slow machine, and shorter than a test may take: what hangs is named. */
const PATIENCE = 100_000;

function ended(what: string, { error, status, stdout, stderr }: SpawnSyncReturns<string>): Ended {
  if (error === undefined) return { status, stdout, stderr };
  throw new Error(`${what.slice(0, 200)}: ${error.message}; by then it had said: ${stderr || stdout}`);
}

/** Starts it and does not wait. */
export function started(
  argv: readonly string[],
  folder: string,
  environment: Record<string, string> = {},
): { child: ChildProcess; ended: Promise<Ended> } {
  const child = spawn(process.execPath, [BIN, ...argv], {
    cwd: folder,
    env: { ...process.env, ...environment },
  });
  let [stdout, stderr] = ['', ''];
  child.stdout.on('data', (data) => (stdout += data));
  child.stderr.on('data', (data) => (stderr += data));
  const ended = new Promise<Ended>((resolve) =>
    child.on('close', (status) => resolve({ status, stdout, stderr })),
  );
  return { child, ended };
}

export function freshFolder(): string {
  return mkdtempSync(join(tmpdir(), 'gorewright-'));
}

export function projectFile(name: string): string {
  return join(ROOT, name);
}
