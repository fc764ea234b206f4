import { execFile } from 'node:child_process';
import { existsSync, realpathSync, statSync } from 'node:fs';
import { basename, dirname, isAbsolute, join, posix, relative, resolve, sep } from 'node:path';
import type { Diagnostic, Source } from '../diagnostics/diagnostic.ts';
import { plainText } from '../diagnostics/plain-text.ts';
import type { ReadBase } from '../spec/based-on.ts';
import { decodeSpec, LARGEST_SPEC } from '../spec/decode-spec.ts';
import { MachineFault, systemCode, WrongCommandLine } from './fault.ts';
import type { Machine } from './machine.ts';

/** A file as it was at a revision of the git repository that it lies in. */
export interface Revision {
  readonly file: string;
  readonly revision: string;
}
