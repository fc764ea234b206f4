import { createHash } from 'node:crypto';
import { isDeepStrictEqual } from 'node:util';
import type { DraftedGown } from '../drafted-gown.ts';
import { shapeText } from '../gown/shape-text.ts';
import { hangTask } from '../hanging/hang-task.ts';
import type { Hanging, HangTask, HangTold, HungGown } from '../hanging/hung-gown.ts';
import { type Kept, NOTHING_KEPT } from '../kept/kept.ts';
import { HangThread } from './hang-thread.ts';

/** Hangs a gown in a thread of its own, or as it hung before. */
export async function hangGown(
  gown: DraftedGown,
  kept: Kept = NOTHING_KEPT,
  thread?: HangThread,
): Promise<Hanging> {
  const key = createHash('sha256').update('hanging').update(shapeText(gown.asked)).digest('hex');
  const before = hungBefore(kept.recall(key));
  const hanging = before ?? (await hangNow(gown, thread));
  if (before !== undefined || isDeepStrictEqual(JSON.parse(JSON.stringify(hanging)), hanging))
    kept.keep(key, hanging);
  return hanging;
}

async function hangNow(gown: DraftedGown, thread: HangThread | undefined): Promise<Hanging> {
  const task = hangTask(gown);
  return { task: toldOf(task), hung: await hangIn(thread, task) };
}

function toldOf({ layer, notHung, isBodiceDrafted, sewn }: HangTask): HangTold {
  return { layer, notHung, isBodiceDrafted, sewn: { cloth: { bendingLength: sewn.cloth.bendingLength } } };
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

/** What was kept of a gown that hung, if it is one: what was hung, views and figures, of numbers that are. */
function hungBefore(kept: unknown): Hanging | undefined {
  if (typeof kept !== 'object' || kept === null || !isReal(kept)) return undefined;
  const { task, hung } = kept as Partial<Hanging>;
  const isTold =
    typeof task?.layer === 'string' &&
    Array.isArray(task.notHung) &&
    typeof task.isBodiceDrafted === 'boolean' &&
    typeof task.sewn?.cloth?.bendingLength === 'number';
  const isHung =
    typeof hung?.figures === 'object' && Array.isArray(hung.views) && hung.views.length === VIEWS;
  return isTold && isHung ? (kept as Hanging) : undefined;
}

/** Front, from her left, back and from above. */
const VIEWS = 4;

function isReal(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  return typeof value !== 'object' || value === null || Object.values(value).every(isReal);
}
