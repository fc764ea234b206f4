import { type FSWatcher, watch } from 'node:fs';
import { basename, dirname } from 'node:path';
import { safeText } from '../diagnostics/safe-text.ts';
import { MachineFault } from './fault.ts';

/** Files that are watched: `onSaved` is called once a save of one of them is over. */
export class WatchedFiles {
  private readonly folders = new Map<string, { readonly watcher: FSWatcher; readonly names: Set<string> }>();
  private waiting: NodeJS.Timeout | undefined;

  constructor(
    private readonly onSaved: () => void,
    private readonly onLost: (folder: string) => void,
  ) {}

  /**
   * Editors replace a file by renaming another one, so its folder is what is watched.
   *
   * @throws MachineFault where its folder cannot be
   */
  add(path: string): void {
    const [folder, name] = [dirname(path), basename(path)];
    const known = this.folders.get(folder);
    if (known !== undefined) return void known.names.add(name);
    const names = new Set([name]);
    try {
      const watcher = watch(folder, (_event, changed) => {
        if (changed === null || names.has(changed)) this.settle();
      });
      watcher.on('error', () => this.onLost(folder));
      this.folders.set(folder, { watcher, names });
    } catch {
      throw new MachineFault(`${safeText(folder)} cannot be watched`, 'Use draft after each change.');
    }
  }

  close(): void {
    clearTimeout(this.waiting);
    for (const { watcher } of this.folders.values()) watcher.close();
  }

  private settle(): void {
    clearTimeout(this.waiting);
    this.waiting = setTimeout(this.onSaved, SETTLES);
  }
}

/** An editor writes a file in several steps; after this long without another it is taken as saved, ms. */
const SETTLES = 40;
