import { join } from 'node:path';
import { safeText } from '../diagnostics/safe-text.ts';
import { MachineFault, systemCode } from './fault.ts';
import type { FileSystem } from './file-system.ts';

/** Stands in the output folder while outputs are replaced; one run holds it at a time. */
export const LOCK_NAME = '.gorewright-writing';

/** What a lock says: enough for the next run to go on where a stopped one left off. */
export interface WritingPlan {
  readonly process: number;
  /** Files that are written first under these names, and then renamed. */
  readonly temporary: readonly string[];
  /** sha256 of every output that is being put in place. */
  readonly files: Readonly<Record<string, string>>;
}

/** Writing takes well under a second; a lock older than this was left by a run that was stopped. */
const STALE_AFTER_MS = 60_000;
const WAIT_MS = 5_000;
const LOOK_EVERY_MS = 25;

/**
 * Takes the folder's lock, waiting a few seconds for another run to finish. Gives what a stopped run had planned,
 * if one left its lock behind.
 */
export function takeLock(
  folder: string,
  plan: WritingPlan,
  files: FileSystem,
  { patience = WAIT_MS, shown = folder }: { readonly patience?: number; readonly shown?: string },
): WritingPlan | undefined {
  const lock = join(folder, LOCK_NAME);
  const bytes = Buffer.from(`${JSON.stringify(plan)}\n`);
  let left: WritingPlan | undefined;
  for (let waited = 0; waited <= patience; waited += LOOK_EVERY_MS) {
    try {
      files.create(lock, bytes);
      return left;
    } catch (error) {
      if (systemCode(error) !== 'EEXIST') {
        quietly(() => removeIfThere(lock, files));
        throw error;
      }
    }
    const stale = staleLock(lock, files);
    if (stale === undefined) sleep(LOOK_EVERY_MS);
    else {
      left = stale;
      removeIfThere(lock, files);
    }
  }
  throw new MachineFault(
    `another run is writing into ${safeText(shown)}`,
    `Wait for it to end; if there is none, delete ${LOCK_NAME} in that folder.`,
  );
}

/** Tidying up after a failure must not hide it. */
export function quietly(tidy: () => void): void {
  try {
    tidy();
  } catch {
    // What could not be tidied is left for the next run.
  }
}

/** Removes a file that another run may have removed before. */
export function removeIfThere(path: string, files: FileSystem): void {
  try {
    files.remove(path);
  } catch (error) {
    if (systemCode(error) !== 'ENOENT') throw error;
  }
}

/** The plan in a lock that nobody holds any more; undefined while it is held, or already gone. */
function staleLock(lock: string, files: FileSystem): WritingPlan | undefined {
  try {
    if (files.kind(lock) !== 'file') return undefined;
    const age = Date.now() - files.modified(lock);
    const plan = readPlan(Buffer.from(files.read(lock)).toString());
    // Unreadable: its owner is between making and filling it, or was stopped there.
    const held = plan === undefined ? age < WAIT_MS / 2 : isRunning(plan.process);
    if (held && age < STALE_AFTER_MS) return undefined;
    return plan ?? { process: 0, temporary: [], files: {} };
  } catch (error) {
    if (systemCode(error) === 'ENOENT') return undefined;
    throw error;
  }
}

function readPlan(text: string): WritingPlan | undefined {
  try {
    const plan: unknown = JSON.parse(text);
    return isPlan(plan) ? plan : undefined;
  } catch {
    return undefined;
  }
}

function isPlan(value: unknown): value is WritingPlan {
  if (typeof value !== 'object' || value === null) return false;
  if (!('process' in value && 'temporary' in value && 'files' in value)) return false;
  return (
    typeof value.process === 'number' && Array.isArray(value.temporary) && typeof value.files === 'object'
  );
}

/** A lock with this process's own number was left by an earlier process of the same number. */
function isRunning(process_: number): boolean {
  if (process_ === process.pid || process_ <= 0) return false;
  try {
    process.kill(process_, 0);
    return true;
  } catch (error) {
    return systemCode(error) === 'EPERM';
  }
}

function sleep(milliseconds: number): void {
  Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, milliseconds);
}
