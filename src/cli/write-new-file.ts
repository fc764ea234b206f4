import { randomBytes } from 'node:crypto';
import { linkSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { plainText } from '../diagnostics/plain-text.ts';
import { faultOf, MachineFault, systemCode } from './fault.ts';
import { disk } from './file-system.ts';

/**
 * Writes a file that must not be there yet, whole or not at all.
 *
 * @throws MachineFault where there is a file of that name, or it cannot be written
 */
export function writeNewFile(path: string, text: string): void {
  const temporary = join(dirname(path), `.gorewright-${randomBytes(4).toString('hex')}-0`);
  try {
    if (disk.kind(path) !== 'missing') throw alreadyThere(path);
    disk.create(temporary, Buffer.from(text));
    putInPlace(temporary, path);
  } catch (error) {
    if (disk.kind(dirname(path)) === 'folder' && disk.kind(temporary) === 'file') disk.remove(temporary);
    throw faultOf(error, 'write', path);
  }
}

/** A link fails where the name is taken, a rename does not; some disks have no links. */
function putInPlace(temporary: string, path: string): void {
  try {
    linkSync(temporary, path);
    disk.remove(temporary);
  } catch (error) {
    if (systemCode(error) === 'EEXIST') throw alreadyThere(path);
    disk.rename(temporary, path);
  }
}

function alreadyThere(path: string): MachineFault {
  return new MachineFault(
    `${plainText(path)} is there already, and is left as it is`,
    'Give another name, or move it away first.',
  );
}
