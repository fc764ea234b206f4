import { existsSync } from 'node:fs';
import { Worker } from 'node:worker_threads';
import type { KeptEntries } from '../kept/kept-entries.ts';
import type { LaysPlanned } from '../lay/plan/plan-lays.ts';
import { noThread } from './fault.ts';
import { type LayMessage, type LayWork, planOne, withSources } from './lay-task.ts';

/** Beside the bundle; from the source tree, where there is none, layers are planned in this thread. */
const WORKER = new URL('./lay-worker.cjs', import.meta.url);

export type OnShorter = (lay: string, length: number) => void;

/** Plans the lays in so many threads, each taking the next that waits; the lays are the same however many there are. */
export async function inThreads(
  work: LayWork,
  kept: KeptEntries,
  threads: number,
  onShorter: OnShorter,
): Promise<LaysPlanned[]> {
  if (!existsSync(WORKER)) return work.gown.lays.map((_, index) => planOne(work, index, kept, onShorter));
  const planned: LaysPlanned[] = [];
  const waiting = work.gown.lays.map((_, index) => index);
  const workers = Array.from({ length: threads }, () => new Worker(WORKER, { workerData: work }));
  try {
    await Promise.all(
      workers.map((worker) =>
        untilNoneWaits(worker, waiting, onShorter, ({ index, planned: own, sources, kept: found }) => {
          kept.add(found);
          planned[index] = { ...own, lays: withSources(own.lays, sources, work.gown) };
        }),
      ),
    );
  } finally {
    // Where one has failed the others would keep the program waiting for nothing.
    await Promise.all(workers.map((worker) => worker.terminate()));
  }
  return planned;
}

type Done = Extract<LayMessage, { kind: 'done' }>;

function untilNoneWaits(
  worker: Worker,
  waiting: number[],
  onShorter: OnShorter,
  onDone: (done: Done) => void,
): Promise<void> {
  return new Promise((resolve, reject) => {
    const next = () => {
      const index = waiting.shift();
      if (index === undefined) resolve();
      else worker.postMessage(index);
    };
    worker.on('error', (error) => reject(noThread(error, 'to plan the cloth') ?? error));
    // A thread that ends without a word would leave its layer waited for, and nothing to wait with.
    worker.on('exit', (code) =>
      reject(new Error(`the thread that plans the cloth ended by itself (${code})`)),
    );
    worker.on('message', (message: LayMessage) => {
      if (message.kind === 'shorter') return onShorter(message.lay, message.length);
      onDone(message);
      next();
    });
    next();
  });
}
