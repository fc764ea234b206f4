import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { isDeepStrictEqual } from 'node:util';
import { Worker } from 'node:worker_threads';
import type { DraftedGown } from '../drafted-gown.ts';
import { hangTask } from '../hanging/gown-to-hang.ts';
import { type Hanging, type HungGown, hungAtFirst, hungGown } from '../hanging/hung-gown.ts';
import { type Kept, NOTHING_KEPT } from '../kept/kept.ts';
import { workroom } from '../workroom/workroom.ts';
import { noThread } from './fault.ts';
import type { HangOrder } from './hang-worker.ts';

/** Beside the bundle; from the source tree, where there is none, the gown is hung in this thread. */
const WORKER = new URL('./hang-worker.cjs', import.meta.url);

/** Hangs a gown in a thread of its own, or as it hung before. */
export async function hangGown(gown: DraftedGown, kept: Kept = NOTHING_KEPT): Promise<Hanging> {
  const task = hangTask(gown, workroom(gown, []).facts);
  const key = createHash('sha256').update('hanging').update(JSON.stringify(task, listed)).digest('hex');
  const hung = hungBefore(kept.recall(key)) ?? (await hang({ task, atFirst: false }));
  if (isDeepStrictEqual(JSON.parse(JSON.stringify(hung)), hung)) kept.keep(key, hung);
  return { task, hung };
}

/** A first picture of a gown, in a tenth of the work. */
export async function hangAtFirst(gown: DraftedGown): Promise<Hanging> {
  const task = hangTask(gown, workroom(gown, []).facts);
  return { task, hung: await hang({ task, atFirst: true }) };
}

/** What JSON would leave out of a task, or write in another way. */
function listed(_key: string, value: unknown): unknown {
  if (value instanceof Map || value instanceof Set || ArrayBuffer.isView(value))
    return [...(value as Iterable<unknown>)];
  return Object.is(value, -0) ? '-0' : value;
}

async function hang(order: HangOrder): Promise<HungGown> {
  if (existsSync(WORKER)) return inThread(order);
  return order.atFirst ? hungAtFirst(order.task) : hungGown(order.task);
}

/** What was kept of a gown that hung, if it is one: views and figures, of numbers that are. */
function hungBefore(kept: unknown): HungGown | undefined {
  if (typeof kept !== 'object' || kept === null || !isReal(kept)) return undefined;
  const hung = kept as Partial<HungGown>;
  const isHung = typeof hung.figures === 'object' && Array.isArray(hung.views) && hung.views.length === VIEWS;
  return isHung ? (kept as HungGown) : undefined;
}

/** Front, from her left, back and from above. */
const VIEWS = 4;

function isReal(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  return typeof value !== 'object' || value === null || Object.values(value).every(isReal);
}

function inThread(order: HangOrder): Promise<HungGown> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(WORKER, { workerData: order });
    worker.on('error', (error) => reject(noThread(error, 'to hang the gown') ?? error));
    // A thread that ends without a word would be waited for, and nothing to wait with.
    worker.on('exit', (code) =>
      reject(new Error(`the thread that hangs the gown ended by itself (${code})`)),
    );
    worker.on('message', (hung: HungGown) => resolve(worker.terminate().then(() => hung)));
  });
}
