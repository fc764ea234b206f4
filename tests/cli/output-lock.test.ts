import { spawn, spawnSync } from 'node:child_process';
import { existsSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { disk } from '../../src/cli/file-system.ts';
import { LOCK_NAME, takeLock, type WritingPlan } from '../../src/cli/output-lock.ts';
import { freshFolder } from './gorewright.ts';

/** Who holds a folder's lock, and for how long: a lock that is never let go of would keep the maker out for ever. */
const OWN: WritingPlan = { process: process.pid, temporary: [], files: {} };
/** Another process, that runs until the tests are done. */
const other = spawn(process.execPath, ['-e', 'setInterval(() => {}, 1000)'], { stdio: 'ignore' });
afterAll(() => other.kill());
const RUNNING = other.pid!;

/** A process that has ended by now. */
const GONE = spawnSync(process.execPath, ['-e', '0']).pid;

/** Takes the lock of a folder in which another run's lock was left so many seconds ago. */
function taken(left: string, secondsAgo: number): WritingPlan | undefined | 'held' {
  const folder = freshFolder();
  const lock = join(folder, LOCK_NAME);
  writeFileSync(lock, left);
  const then = Date.now() / 1000 - secondsAgo;
  utimesSync(lock, then, then);
  try {
    const plan = takeLock(folder, OWN, disk, { patience: 60 });
    expect(existsSync(lock)).toBe(true);
    return plan;
  } catch {
    return 'held';
  }
}

const planOf = (pid: number): string =>
  JSON.stringify({ process: pid, temporary: ['a.tmp'], files: { a: 'b' } });

describe('a lock that another run left', () => {
  it('is held while that run goes on, and for no longer than a minute', () => {
    expect(taken(planOf(RUNNING), 1)).toBe('held');
    expect(taken(planOf(RUNNING), 50)).toBe('held');
    expect(taken(planOf(RUNNING), 70)).toEqual(JSON.parse(planOf(RUNNING)));
  });

  it('is free at once where that run is gone, and says what it had planned', () => {
    expect(taken(planOf(GONE), 0)).toEqual(JSON.parse(planOf(GONE)));
    // An earlier process of this one's number.
    expect(taken(planOf(process.pid), 0)).toEqual(JSON.parse(planOf(process.pid)));
  });

  it('that cannot be read is being filled, or was left so some seconds ago', () => {
    expect(taken('', 0)).toBe('held');
    expect(taken('{"process": 1', 10)).toEqual({ process: 0, temporary: [], files: {} });
  });

  it('is taken where there is none', () => {
    const folder = freshFolder();
    expect(takeLock(folder, OWN, disk, {})).toBeUndefined();
    expect(JSON.parse(Buffer.from(disk.read(join(folder, LOCK_NAME))).toString())).toEqual(OWN);
  });
});
