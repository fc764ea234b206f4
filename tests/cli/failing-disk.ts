import type { FileSystem } from '../../src/cli/file-system.ts';

/**
 * A disk in memory that fails at its n-th change or reading. `full` fails as a full disk does, leaving half of a file,
 * and works again afterwards; `killed` never works again, as for a process that was stopped there.
 */
export class FailingDisk implements FileSystem {
  readonly files = new Map<string, Uint8Array>();
  private steps = 0;
  private dead = false;

  constructor(
    earlier: Iterable<readonly [string, Uint8Array]> = [],
    private readonly failAt = Number.POSITIVE_INFINITY,
    private readonly how: 'full' | 'killed' = 'full',
  ) {
    for (const [path, bytes] of earlier) this.files.set(path, bytes);
  }

  kind(path: string) {
    this.step();
    if (path === '/out') return 'folder' as const;
    return this.files.has(path) ? ('file' as const) : ('missing' as const);
  }

  modified(): number {
    this.step();
    // Old enough for what was left there to be taken as left.
    return Date.now() - 10_000;
  }

  read(path: string): Uint8Array {
    this.step();
    return this.held(path);
  }

  create(path: string, bytes: Uint8Array): void {
    if (this.files.has(path)) throw systemError('EEXIST');
    this.step(() => this.files.set(path, bytes.slice(0, bytes.length / 2)));
    this.files.set(path, bytes);
  }

  rename(from: string, to: string): void {
    this.step();
    this.files.set(to, this.held(from));
    this.files.delete(from);
  }

  remove(path: string): void {
    this.step();
    this.held(path);
    this.files.delete(path);
  }

  makeFolder(): void {
    this.step();
  }

  removeFolder(): void {
    this.step();
  }

  /** How many steps were asked for. */
  get count(): number {
    return this.steps;
  }

  private step(halfDone: () => void = () => {}): void {
    if (this.dead) throw new Error('stopped');
    this.steps++;
    if (this.steps !== this.failAt) return;
    halfDone();
    this.dead = this.how === 'killed';
    throw this.dead ? new Error('stopped') : systemError('ENOSPC');
  }

  private held(path: string): Uint8Array {
    const bytes = this.files.get(path);
    if (bytes === undefined) throw systemError('ENOENT');
    return bytes;
  }
}

function systemError(code: string): Error {
  return Object.assign(new Error(code), { code });
}
