import { createHash } from 'node:crypto';
import { isDeepStrictEqual } from 'node:util';
import type { DraftedGown } from '../drafted-gown.ts';
import { hangTask } from '../hanging/gown-to-hang.ts';
import type { Hanging, HangTask, HungGown } from '../hanging/hung-gown.ts';
import { type Kept, NOTHING_KEPT } from '../kept/kept.ts';
import { HangThread } from './hang-thread.ts';

/** Hangs a gown in a thread of its own, or as it hung before. */
export async function hangGown(
  gown: DraftedGown,
  kept: Kept = NOTHING_KEPT,
  thread?: HangThread,
): Promise<Hanging> {
  const task = hangTask(gown);
  const key = createHash('sha256').update('hanging').update(JSON.stringify(task, listed)).digest('hex');
  const hung = hungBefore(kept.recall(key)) ?? (await hangIn(thread, task));
  if (isDeepStrictEqual(JSON.parse(JSON.stringify(hung)), hung)) kept.keep(key, hung);
  return { task, hung };
}

/** A first picture of a gown, in a tenth of the work. */
export async function hangAtFirst(gown: DraftedGown, thread: HangThread): Promise<Hanging> {
  const task = hangTask(gown);
  return { task, hung: await thread.hang({ task, atFirst: true }) };
}

/** Hung in a thread that is there already, or in one for this gown alone. */
async function hangIn(thread: HangThread | undefined, task: HangTask): Promise<HungGown> {
  if (thread !== undefined) return thread.hang({ task, atFirst: false });
  const own = new HangThread();
  try {
    return await own.hang({ task, atFirst: false });
  } finally {
    own.end();
  }
}

/** What JSON would leave out of a task, or write in another way. */
function listed(_key: string, value: unknown): unknown {
  if (value instanceof Map || value instanceof Set || ArrayBuffer.isView(value))
    return [...(value as Iterable<unknown>)];
  return Object.is(value, -0) ? '-0' : value;
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
