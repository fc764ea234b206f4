import { createHash } from 'node:crypto';

/**
 * What was worked out before, by a hash of all that it depends on. A stage that takes long is handed one, as it is
 * handed a seed: it asks before it works, and gives what it found. What comes back may be anything, and is looked at
 * before it is used.
 */
export interface Kept {
  /** What is kept under a key; undefined where nothing is. */
  recall(key: string): unknown;
  /** Keeps what can be written as JSON. */
  keep(key: string, value: unknown): void;
}

/** Where nothing is kept: everything is worked out. */
export const NOTHING_KEPT: Kept = { recall: () => undefined, keep: () => {} };

/** The same without what was kept before: all is worked out, and kept anew. */
export function forgetting(kept: Kept): Kept {
  return { recall: () => undefined, keep: (key, value) => kept.keep(key, value) };
}

/** A piece of work that is done once for all that is alike. */
export interface Work<T> {
  /** What it is, so that works of different kinds never meet. */
  readonly what: string;
  /** All that its result depends on, the tool itself apart. */
  readonly from: unknown;
  /** The result of what was kept, looked at afresh; undefined where it cannot be one. */
  readonly read: (kept: unknown) => T | undefined;
  /** The result as it is kept; undefined where it should not be. */
  readonly write: (result: T) => unknown;
  readonly work: () => T;
}

/** What was kept, where it is as fit as what would be worked out now; else the work. */
export function keptOrWorked<T>(kept: Kept, { what, from, read, write, work }: Work<T>): T {
  if (kept === NOTHING_KEPT) return work();
  const key = createHash('sha256')
    .update(JSON.stringify([what, from]))
    .digest('hex');
  const recalled = kept.recall(key);
  const known = recalled === undefined ? undefined : read(recalled);
  const result = known ?? work();
  const written = write(result);
  if (written !== undefined) kept.keep(key, written);
  return result;
}
