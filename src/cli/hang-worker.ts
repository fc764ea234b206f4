import { parentPort } from 'node:worker_threads';
import { type HangTask, hungAtFirst, hungGown } from '../hanging/hung-gown.ts';

/** What a thread of its own hangs, beside those that plan the cloth. */
export interface HangOrder {
  readonly task: HangTask;
  /** A first picture is enough. */
  readonly atFirst: boolean;
}

parentPort?.on('message', ({ task, atFirst }: HangOrder) =>
  parentPort?.postMessage(atFirst ? hungAtFirst(task) : hungGown(task)),
);
