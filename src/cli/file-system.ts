import {
  closeSync,
  fsyncSync,
  lstatSync,
  mkdirSync,
  openSync,
  readFileSync,
  renameSync,
  rmdirSync,
  unlinkSync,
  writeSync,
} from 'node:fs';
import { systemCode } from './fault.ts';

export type FileKind = 'missing' | 'file' | 'folder' | 'other';

/** The few things that writing outputs asks of a disk; tests give one that fails at a chosen step. */
export interface FileSystem {
  /** Does not follow links: a link is `other`. */
  kind(path: string): FileKind;
  /** Milliseconds since the epoch. */
  modified(path: string): number;
  read(path: string): Uint8Array;
  /** Makes a new file with these bytes; fails with EEXIST where there is one. */
  create(path: string, bytes: Uint8Array): void;
  /** Replaces `to` in one step. */
  rename(from: string, to: string): void;
  remove(path: string): void;
  /** Makes one folder in a folder that is there. */
  makeFolder(path: string): void;
  /** Fails unless it is empty. */
  removeFolder(path: string): void;
}

export const disk: FileSystem = {
  kind(path) {
    try {
      const found = lstatSync(path);
      return found.isFile() ? 'file' : found.isDirectory() ? 'folder' : 'other';
    } catch (error) {
      if (systemCode(error) === 'ENOENT') return 'missing';
      throw error;
    }
  },
  modified: (path) => lstatSync(path).mtimeMs,
  read: (path) => readFileSync(path),
  create(path, bytes) {
    const file = openSync(path, 'wx');
    try {
      for (let done = 0; done < bytes.length; ) done += writeSync(file, bytes, done);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
  },
  rename: (from, to) => renameSync(from, to),
  remove: (path) => unlinkSync(path),
  // One at a time: making several at once never ends in a folder that refuses, such as /proc.
  makeFolder: (path) => mkdirSync(path),
  removeFolder: (path) => rmdirSync(path),
};
