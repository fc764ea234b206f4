import { parentPort, workerData } from 'node:worker_threads';
import { type LayMessage, type LayWork, planOne, sourcesOf } from './lay-task.ts';

/** A thread of its own: it is told which lay to plan next, until there is none left. */
const work: LayWork = workerData;
const send = (message: LayMessage) => parentPort?.postMessage(message);

parentPort?.on('message', (index: number) => {
  const planned = planOne(work, index, (lay, length) => send({ kind: 'shorter', lay, length }));
  send({ kind: 'done', index, planned, sources: sourcesOf(planned.lays, work.gown) });
});
