import { inflateSync } from 'node:zlib';
import { type Kept, keptOrWorked } from '../../kept/kept.ts';

/** A stream compressed, or as it was compressed before: that is read back, and taken where it says the very same. */
export function compressed(content: string, kept: Kept, compress: () => Uint8Array): Uint8Array {
  return keptOrWorked(kept, {
    what: 'stream',
    from: content,
    read: (known) => {
      if (typeof known !== 'string') return undefined;
      const bytes = Buffer.from(known, 'base64');
      return inflated(bytes) === content ? bytes : undefined;
    },
    write: (bytes) => Buffer.from(bytes).toString('base64'),
    work: compress,
  });
}

function inflated(bytes: Uint8Array): string | undefined {
  try {
    return inflateSync(bytes).toString('latin1');
  } catch {
    return undefined;
  }
}
