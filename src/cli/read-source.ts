import { closeSync, openSync, readSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Diagnostic, Source } from '../diagnostics/diagnostic.ts';
import { decodeSpec, LARGEST_SPEC } from '../spec/decode-spec.ts';
import { faultOf } from './fault.ts';
import type { Machine } from './machine.ts';

/**
 * The text of a spec, named as the user named it; or what the file is instead.
 *
 * @throws MachineFault where it cannot be read
 */
export function readSource(file: string, machine: Machine): { source?: Source; diagnostics: Diagnostic[] } {
  return decodeSpec(bytesOf(resolve(machine.folder, file), file), file);
}

/** The file's bytes, but not more than tell that it is too large: a device or a pipe may never end. */
function bytesOf(path: string, name: string): Uint8Array {
  try {
    const file = openSync(path, 'r');
    try {
      const bytes = new Uint8Array(LARGEST_SPEC + 1);
      let length = 0;
      let read = -1;
      while (read !== 0 && length < bytes.length) {
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
