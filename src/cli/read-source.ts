import { realpathSync } from 'node:fs';
import { dirname, join, resolve, sep } from 'node:path';
import type { Diagnostic, Source } from '../diagnostics/diagnostic.ts';
import { safeText } from '../diagnostics/safe-text.ts';
import type { ReadBase } from '../gown-file/based-on.ts';
import { decodeSpec, LARGEST_SPEC } from '../gown-file/decode-spec.ts';
import { faultOf, MachineFault, systemCode } from './fault.ts';
import type { Machine } from './machine.ts';
import { readAtMost } from './read-at-most.ts';

/**
 * The text of a spec, named as the user named it; or what the file is instead.
 *
 * @throws MachineFault where it cannot be read
 */
export function readSource(file: string, machine: Machine): { source?: Source; diagnostics: Diagnostic[] } {
  return decodeSpec(readAtMost(LARGEST_SPEC, resolve(machine.folder, file), file), file);
}

/**
 * How a spec's own folder is read for what the spec is based on. A link that leads out of that folder is not followed:
 * a spec from somewhere else must not print another file's lines.
 */
export function basesBeside(file: string, machine: Machine): ReadBase {
  const folder = dirname(resolve(machine.folder, file));
  return (path) => {
    const name = join(dirname(file), path);
    const real = realPath(join(folder, path), name);
    if (real === undefined) return undefined;
    if (!real.startsWith(join(realpathSync(folder), sep))) {
      throw new MachineFault(
        `${safeText(name)} is a link that leads out of the spec's folder`,
        'Copy the file into the folder.',
      );
    }
    return decodeSpec(readAtMost(LARGEST_SPEC, real, name), name);
  };
}

function realPath(path: string, name: string): string | undefined {
  try {
    return realpathSync(path);
  } catch (error) {
    if (['ENOENT', 'ENOTDIR'].includes(systemCode(error))) return undefined;
    throw faultOf(error, 'read', name);
  }
}
