import { closeSync, openSync, readSync } from 'node:fs';
import { faultOf } from './fault.ts';

/**
 * A file's bytes, but no more than one beyond `most`, which tells that it is too large: a device or a pipe may never
 * end, and says nothing of its size.
 *
 * @param name the file as the user named it, for messages
 * @throws MachineFault where it cannot be read
 */
export function readAtMost(most: number, path: string, name: string): Uint8Array {
  try {
    const file = openSync(path, 'r');
    try {
      let bytes = new Uint8Array(Math.min(most + 1, FIRST));
      let length = 0;
      let read = -1;
      while (read !== 0 && length <= most) {
        if (length === bytes.length) bytes = longer(bytes, Math.min(most + 1, 2 * length));
        read = readSync(file, bytes, length, bytes.length - length, null);
        length += read;
      }
      return bytes.subarray(0, length);
    } finally {
      closeSync(file);
    }
  } catch (error) {
    throw faultOf(error, 'read', name);
  }
}

/** Bytes made ready at first: a spec fits. */
const FIRST = 1 << 18;

function longer(bytes: Uint8Array, length: number): Uint8Array<ArrayBuffer> {
  const copy = new Uint8Array(length);
  copy.set(bytes);
  return copy;
}
