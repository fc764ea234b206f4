import { createHash } from 'node:crypto';

/**
 * File names for outputs whose names hold words from the spec (`lay-<layer>.svg`): one plain name in the output
 * folder each, usable on every common system, no two alike even where capitals do not count. A name that is already
 * so stays as it is; another has its unusable characters replaced and a short hash of the whole added.
 */
export function outputNames(wanted: Iterable<string>): Map<string, string> {
  const names = new Map<string, string>();
  const taken = new Set<string>();
  for (const name of wanted) {
    const plain = plainName(name);
    const safe = plain === name && !taken.has(fold(plain)) ? plain : withHash(plain, name);
    taken.add(fold(safe));
    names.set(name, safe);
  }
  return names;
}

/** A name in the folder itself: a report that was tampered with must not lead out of it. */
export function isPlainName(name: string): boolean {
  return outputNames([name]).get(name) === name;
}

/** Longest name in UTF-8 bytes; most systems stop at 255, and a temporary name needs room too. */
const LONGEST_NAME = 150;

// Separators and what Windows refuses, controls, direction marks, lone surrogates.
const UNUSABLE = /[\\/:*?"<>|\p{Cc}\p{Cf}\p{Cs}\u2028\u2029]/gu;
const DEVICE_NAME = /^(con|prn|aux|nul|com\d|lpt\d)(\.|$)/i;

function plainName(name: string): string {
  const plain = name
    .normalize('NFC')
    .replace(UNUSABLE, '-')
    .replace(/^[. ]+/, '')
    .replace(/(?<![. ])[. ]+$/, '');
  if (plain === '') return 'unnamed';
  if (DEVICE_NAME.test(plain)) return `-${plain}`;
  return Buffer.byteLength(plain) <= LONGEST_NAME ? plain : shortened(plain);
}

function shortened(name: string): string {
  const { stem, ending } = split(name);
  let short = '';
  for (const char of stem) {
    if (Buffer.byteLength(short + char + ending) > LONGEST_NAME) break;
    short += char;
  }
  return short + ending;
}

function withHash(plain: string, name: string): string {
  const { stem, ending } = split(plain);
  return `${stem}-${createHash('sha256').update(name).digest('hex').slice(0, 8)}${ending}`;
}

function split(name: string): { stem: string; ending: string } {
  const [, stem = name, ending = ''] = /^(.+)(\.[a-z]{1,5})$/s.exec(name) ?? [];
  return { stem, ending };
}

function fold(name: string): string {
  return name.normalize('NFKC').toLowerCase();
}
