import { parentPort, workerData } from 'node:worker_threads';
import { type HangTask, hungGown } from '../hanging/hung-gown.ts';

/** A thread of its own, beside those that plan the cloth. */
const task: HangTask = workerData;
parentPort?.postMessage(hungGown(task));
