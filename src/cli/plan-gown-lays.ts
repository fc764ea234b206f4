import { existsSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import { tapeText } from '../diagnostics/tape-text.ts';
import type { DraftedGown } from '../drafted-gown.ts';
import { gownToLay } from '../lay/plan/lay-to-plan.ts';
import type { LayEffort, LaysPlanned } from '../lay/plan/plan-lays.ts';
import { type LayMessage, type LayWork, planOne, withSources } from './lay-task.ts';
import type { Machine } from './machine.ts';
import { Progress } from './progress.ts';

/** Beside the bundle; from the source tree, where there is none, lays are planned in this thread. */
const WORKER = new URL('./lay-worker.cjs', import.meta.url);

/**
 * Plans every cloth, several lays at a time, with a line of progress on a terminal. The lays are the same
 * however many threads there are. Ctrl-C once keeps the best so far; twice ends the program.
 */
export async function planGownLays(
  drafted: Pick<DraftedGown, 'gown' | 'layers' | 'cut'>,
  effort: LayEffort,
  machine: Machine,
  stopped: LayStop = newStop(),
): Promise<LaysPlanned> {
  const gown = gownToLay(drafted);
  const work: LayWork = { gown, effort, stop: stopped };
  const progress = new Progress(machine);
  const onShorter = (lay: string, length: number) =>
    progress.say(`Planning the cloth: ${lay} ${tapeText(length, gown.units)} so far. Ctrl-C keeps the best.`);
  const stop = () => Atomics.store(work.stop, 0, 1);
  process.once('SIGINT', stop);
  try {
    const threads = Math.min(availableParallelism(), gown.lays.length);
    const planned =
      threads > 1 || effort === 'thorough'
        ? await inThreads(work, threads, onShorter)
        : inThisThread(work, onShorter);
    return {
      lays: planned.flatMap(({ lays }) => lays),
      diagnostics: planned.flatMap(({ diagnostics }) => diagnostics),
    };
  } finally {
    process.off('SIGINT', stop);
    progress.done();
  }
}

/** Set to 1 from outside to have the planning end with the best so far. */
export type LayStop = Int32Array<SharedArrayBuffer>;

export function newStop(): LayStop {
  return new Int32Array(new SharedArrayBuffer(4));
}

type OnShorter = (lay: string, length: number) => void;

function inThisThread(work: LayWork, onShorter: OnShorter): LaysPlanned[] {
  return work.gown.lays.map((_, index) => planOne(work, index, onShorter));
}

async function inThreads(work: LayWork, threads: number, onShorter: OnShorter): Promise<LaysPlanned[]> {
  if (!existsSync(WORKER)) return inThisThread(work, onShorter);
  const planned: LaysPlanned[] = [];
  const waiting = work.gown.lays.map((_, index) => index);
  const one = () =>
    new Promise<void>((resolve, reject) => {
      const worker = new Worker(WORKER, { workerData: work });
      const next = () => {
        const index = waiting.shift();
        if (index !== undefined) return worker.postMessage(index);
        resolve(worker.terminate().then(() => undefined));
      };
      worker.on('error', reject);
      worker.on('message', (message: LayMessage) => {
        if (message.kind === 'shorter') return onShorter(message.lay, message.length);
        const lays = withSources(message.planned.lays, message.sources, work.gown);
        planned[message.index] = { ...message.planned, lays };
        next();
      });
      next();
    });
  await Promise.all(Array.from({ length: threads }, one));
  return planned;
}
