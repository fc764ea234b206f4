import { parentPort, workerData } from 'node:worker_threads';
import { type HangTask, hungAtFirst, hungGown } from '../hanging/hung-gown.ts';

/** What a thread of its own hangs, beside those that plan the cloth. */
export interface HangOrder {
  readonly task: HangTask;
  /** A first picture is enough. */
  readonly atFirst: boolean;
}

const { task, atFirst }: HangOrder = workerData;
parentPort?.postMessage(atFirst ? hungAtFirst(task) : hungGown(task));
