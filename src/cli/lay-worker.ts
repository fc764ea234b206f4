import { parentPort, workerData } from 'node:worker_threads';
import { KeptEntries } from '../kept/kept-entries.ts';
import { type LayMessage, type LayWork, planLayer, sourcesOf } from './lay-task.ts';

/** A thread of its own: it is told which layer to plan next, until there is none left. */
const work: LayWork = workerData;
const send = (message: LayMessage) => parentPort?.postMessage(message);

parentPort?.on('message', (index: number) => {
  const kept = new KeptEntries(work.kept);
  const planned = planLayer(work, index, kept, (layer, length) => send({ kind: 'shorter', layer, length }));
  send({ kind: 'done', index, planned, sources: sourcesOf(planned.lays, work.gown), kept: kept.entries });
});
