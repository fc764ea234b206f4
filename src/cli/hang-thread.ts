import { existsSync } from 'node:fs';
import { Worker } from 'node:worker_threads';
import { type HungGown, hungAtFirst, hungGown } from '../hanging/hung-gown.ts';
import { noThread } from './fault.ts';
import type { HangOrder } from './hang-worker.ts';

/** Beside the bundle; from the source tree, where there is none, the gown is hung in this thread. */
const WORKER = new URL('./hang-worker.cjs', import.meta.url);

/**
 * A thread that hangs one gown after another. The first costs five times what the next ones do, as code that has run is
 * quick, so that whoever hangs again and again keeps it.
 */
export class HangThread {
  private worker: Worker | undefined;
  /** Who waits, in the order in which they are answered. */
  private waiting: { resolve(hung: HungGown): void; reject(why: Error): void }[] = [];

  /** @throws Overtaken where it is let go before it hangs */
  async hang(order: HangOrder): Promise<HungGown> {
    if (!existsSync(WORKER)) return order.atFirst ? hungAtFirst(order.task) : hungGown(order.task);
    return new Promise((resolve, reject) => {
      this.worker ??= this.begun();
      this.waiting.push({ resolve, reject });
      this.worker.postMessage(order);
    });
  }

  /** Ends what is being hung, if anything is; the next gown begins another thread. */
  letGo(): void {
    if (this.waiting.length > 0) this.end();
  }

  /** The same, and ends a thread that waits for work. */
  end(): void {
    this.worker?.removeAllListeners();
    this.worker?.terminate();
    this.fail(new Overtaken());
  }

  private begun(): Worker {
    const worker = new Worker(WORKER);
    worker.on('message', (hung: HungGown) => this.waiting.shift()?.resolve(hung));
    worker.on('error', (error) => this.fail(noThread(error, 'to hang the gown') ?? error));
    // A thread that ends without a word would be waited for, and nothing to wait with.
    worker.on('exit', (code) =>
      this.fail(new Error(`the thread that hangs the gown ended by itself (${code})`)),
    );
    return worker;
  }

  private fail(why: Error): void {
    const waited = this.waiting;
    this.worker = undefined;
    this.waiting = [];
    for (const { reject } of waited) reject(why);
  }
}

/** What was asked for is no longer wanted. */
export class Overtaken extends Error {
  override readonly name = 'Overtaken';
}
