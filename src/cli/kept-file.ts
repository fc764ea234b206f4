import { lstatSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { version } from '../../package.json';
import { KeptEntries, keptEntries, keptText } from '../kept/kept-entries.ts';

/** Stands beside the outputs: the lays' strips, the sheets' places and more, by what they depend on. */
export const KEPT_NAME = '.gorewright-kept';

/** Names the sources of the bundle; put in by the build. */
declare const BUILT_FROM: string;

/** What another version of the tool, or another state of its sources, has worked out is not taken. */
const TOOL = `gorewright ${version} ${typeof BUILT_FROM === 'undefined' ? 'unbuilt' : BUILT_FROM}`;

/** Larger is no file of ours, bytes. */
const LARGEST = 1 << 24;

/** What the last draft into a folder has kept. Whatever is wrong with it costs the time to work it out, and no more. */
export function keptIn(folder: string): KeptEntries {
  try {
    const path = join(folder, KEPT_NAME);
    const found = lstatSync(path);
    if (!found.isFile() || found.size > LARGEST) return new KeptEntries();
    const text = readFileSync(path, 'utf8');
    const entries = keptEntries(text, TOOL);
    return new KeptEntries(entries, text === keptText(entries, TOOL));
  } catch {
    return new KeptEntries();
  }
}

export function keptFile(kept: KeptEntries): Uint8Array {
  return Buffer.from(keptText(kept.entries, TOOL));
}
