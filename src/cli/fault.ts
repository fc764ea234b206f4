import { safeText } from '../diagnostics/safe-text.ts';

/** Something outside the spec went wrong: a file, a folder, a full disk. Printed as one line, exit status 3. */
export class MachineFault extends Error {
  override readonly name = 'MachineFault';

  /**
   * @param what what could not be done, with the path in it, no full stop
   * @param hint what to do, a sentence
   */
  constructor(
    readonly what: string,
    readonly hint: string,
  ) {
    super(`${what}. ${hint}`);
  }
}

/** The command line asks for something that does not exist. Printed as one line, exit status 2. */
export class WrongCommandLine extends Error {
  override readonly name = 'WrongCommandLine';
}

/** A fault from what the operating system said about a path, in a maker's words. */
export function faultOf(error: unknown, doing: string, path: string): MachineFault {
  if (error instanceof MachineFault) return error;
  const code = systemCode(error);
  const [reason, hint] = REASONS[code] ?? [
    code === '' ? 'something failed' : `the system says ${code}`,
    'Try another folder.',
  ];
  const own = hint === OWN_FOLDER && doing.startsWith('read') ? OWN_FILE : hint;
  return new MachineFault(`cannot ${doing} ${safeText(path)}: ${reason}`, own);
}

/** For a thread that could not begin, as the system has nothing left for it; undefined for what broke in it. */
export function noThread(error: Error, what: string): MachineFault | undefined {
  const [code] = /\b(?:EMFILE|ENFILE|ENOMEM|EAGAIN)\b/.exec(error.message) ?? [];
  if (code === undefined) return undefined;
  return faultOf(Object.assign(new Error(code), { code }), 'start', `a thread ${what}`);
}

/** The system's short code for an error, such as ENOENT; empty for an error that is not the system's. */
export function systemCode(error: unknown): string {
  return error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : '';
}

const FREE_SPACE = 'Free some space and run it again; earlier files are as they were.';
const OWN_FOLDER = 'Give a folder that you may write to.';
const OWN_FILE = 'Ask whoever keeps it to let you read it, or copy it.';

const REASONS: Readonly<Record<string, readonly [string, string]>> = {
  ENOENT: ['there is no such file or folder', 'Look at the spelling, and at the folder that you are in.'],
  EACCES: ['you may not', OWN_FOLDER],
  EPERM: ['the system does not allow it', OWN_FOLDER],
  EROFS: ['the disk is read-only', OWN_FOLDER],
  ENOSPC: ['the disk is full', FREE_SPACE],
  EDQUOT: ['your share of the disk is full', FREE_SPACE],
  EFBIG: ['the file would be larger than is allowed here', FREE_SPACE],
  EISDIR: ['it is a folder', 'Give a file.'],
  ENOTDIR: ['a part of that path is a file, not a folder', 'Give another folder.'],
  EEXIST: ['something of that name is there already', 'Give another name.'],
  ENAMETOOLONG: ['the name is too long', 'Give a shorter one.'],
  ELOOP: ['its links lead round in a circle', 'Give the file itself.'],
  EINVAL: ['the name cannot be used here', 'Give another name.'],
  ERR_INVALID_ARG_VALUE: ['the name cannot be used here', 'Give another name.'],
  EBUSY: ['another program holds it', 'Close that program and run it again.'],
  EMFILE: ['too many files are open', 'Close some programs and run it again.'],
  ENFILE: ['too many files are open', 'Close some programs and run it again.'],
  EAGAIN: ['too many programs are running', 'Close some programs and run it again.'],
  ENOMEM: ['there is no memory left', 'Close some programs and run it again.'],
  EIO: ['the disk reports an error', 'Try another disk.'],
};
