import { createHash } from 'node:crypto';
import { availableParallelism } from 'node:os';
import { tapeText } from '../diagnostics/tape-text.ts';
import type { DraftedGown } from '../drafted-gown.ts';
import { shapeText } from '../gown/shape-text.ts';
import { KeptEntries } from '../kept/kept-entries.ts';
import { gownToLay } from '../lay/plan/lay-to-plan.ts';
import type { LayEffort, LaysPlanned } from '../lay/plan/plan-lays.ts';
import type { LayWork } from './lay-task.ts';
import { inThreads } from './lay-threads.ts';
import type { Machine } from './machine.ts';
import { Progress } from './progress.ts';

/**
 * Plans every cloth, several lays at a time, with a line of progress on a terminal. Ctrl-C once keeps the
 * best so far, and what was cut short says so; a second one ends the program.
 */
export async function planGownLays(
  drafted: Pick<DraftedGown, 'asked' | 'gown' | 'layers' | 'cut'>,
  effort: LayEffort,
  machine: Machine,
  { kept = new KeptEntries(), stopped }: LayMemory = {},
): Promise<LaysPlanned> {
  const gown = gownToLay(drafted);
  const work: LayWork = { gown, effort, kept: kept.earlier, stop: stopped ?? newStop() };
  const progress = new Progress(machine);
  const onShorter = (lay: string, length: number) =>
    progress.say(`Planning the cloth: ${lay} ${tapeText(length, gown.units)} so far. Ctrl-C keeps the best.`);
  const listening = stopped === undefined ? listenForStop(work.stop) : undefined;
  try {
    const key = createHash('sha256')
      .update(`lays ${effort} ${shapeText(drafted.asked)}`)
      .digest('hex');
    const known = kept.recall(key) === true;
    const threads = known ? 1 : Math.min(availableParallelism() + ONE_MORE, gown.lays.length);
    const planned = await inThreads(work, kept, threads, onShorter);
    if (Atomics.load(work.stop, 0) === 0) kept.keep(key, true);
    return {
      lays: planned.flatMap(({ lays }) => lays),
      diagnostics: planned.flatMap(({ diagnostics }) => diagnostics),
    };
  } finally {
    listening?.end();
    progress.done();
  }
}

/**
 * Threads beyond the processors: of three lays on two of them the last would be planned by itself at the end. Lantern's
 * draft took 3.79 s for 4.17 (2026-11-28). Lays that are known take so little that one thread is enough, and never begin
 * others: what is known of them is read by that thread, and looked at afresh.
 */
const ONE_MORE = 1;

export interface LayMemory {
  /** What was worked out before, and takes what is worked out now. */
  readonly kept?: KeptEntries;
  /** Where it is stopped from, in place of Ctrl-C. */
  readonly stopped?: LayStop;
}

/** Set to 1 from outside to have the planning end with the best so far. */
export type LayStop = Int32Array<SharedArrayBuffer>;

export function newStop(): LayStop {
  return new Int32Array(new SharedArrayBuffer(4));
}

/**
 * Ctrl-C sets the flag, once. Only while this thread waits for the lays: one that is busy hears nothing of a Ctrl-C that
 * it listens for, and ends at once for one that it does not.
 */
function listenForStop(flag: LayStop): { end(): void } {
  const stop = () => void Atomics.store(flag, 0, 1);
  const once = setImmediate(() => process.once('SIGINT', stop));
  return {
    end: () => {
      clearImmediate(once);
      process.off('SIGINT', stop);
    },
  };
}
