import { existsSync } from 'node:fs';
import { Worker } from 'node:worker_threads';
import type { DraftedGown } from '../drafted-gown.ts';
import { hangTask } from '../hanging/gown-to-hang.ts';
import { type Hanging, type HangTask, type HungGown, hungGown } from '../hanging/hung-gown.ts';
import { workroom } from '../workroom/workroom.ts';

/** Beside the bundle; from the source tree, where there is none, the gown is hung in this thread. */
const WORKER = new URL('./hang-worker.cjs', import.meta.url);

/** Hangs a gown in a thread of its own; undefined where no layer goes all round. */
export async function hangGown(gown: DraftedGown): Promise<Hanging | undefined> {
  const task = hangTask(gown.gown, gown.drafts, workroom(gown, []).facts);
  if (task === undefined) return undefined;
  return { task, hung: existsSync(WORKER) ? await inThread(task) : hungGown(task) };
}

function inThread(task: HangTask): Promise<HungGown> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(WORKER, { workerData: task });
    worker.on('error', reject);
    worker.on('message', (hung: HungGown) => resolve(worker.terminate().then(() => hung)));
  });
}
