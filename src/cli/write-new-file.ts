import { randomBytes } from 'node:crypto';
import { linkSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { safeText } from '../diagnostics/safe-text.ts';
import { faultOf, MachineFault, systemCode } from './fault.ts';
import { disk } from './file-system.ts';
import { quietly, removeIfThere } from './output-lock.ts';

/**
 * Writes a file that must not be there yet, whole or not at all.
 *
 * @param name the file as the user named it, for messages
 * @throws MachineFault where there is a file of that name, or it cannot be written
 */
export function writeNewFile(path: string, content: string | Uint8Array, name: string): void {
  const temporary = join(dirname(path), `.gorewright-${randomBytes(4).toString('hex')}-0`);
  try {
    disk.create(temporary, typeof content === 'string' ? Buffer.from(content) : content);
    putInPlace(temporary, path);
  } catch (error) {
    quietly(() => removeIfThere(temporary, disk));
    throw systemCode(error) === 'EEXIST' ? alreadyThere(name) : faultOf(error, 'write', name);
  }
}

/** A link fails where the name is taken, a rename does not; some disks have no links. */
function putInPlace(temporary: string, path: string): void {
  try {
    linkSync(temporary, path);
    disk.remove(temporary);
  } catch (error) {
    if (systemCode(error) === 'EEXIST') throw error;
    if (disk.kind(path) !== 'missing') throw Object.assign(new Error('taken'), { code: 'EEXIST' });
    disk.rename(temporary, path);
  }
}

function alreadyThere(name: string): MachineFault {
  return new MachineFault(
    `cannot write ${safeText(name)}: something of that name is there already, and is left as it is`,
    'Give another name, or move it away first.',
  );
}
