import { HOSTILE_NUMBERS, HOSTILE_TEXT } from './hostile-values.ts';
import type { Random } from './random.ts';

/** One change to the characters of a spec, without knowing what they mean. */
export function textChanged(text: string, random: Random): string {
  return random.pick(CHANGES)(text, random);
}

type Change = (text: string, random: Random) => string;

const CHANGES: readonly Change[] = [
  (text, random) => splice(text, random.below(text.length), 1 + random.below(4), ''),
  (text, random) => splice(text, random.below(text.length), 0, random.pick(HOSTILE_TEXT)),
  (text, random) => splice(text, random.below(text.length), 1, random.pick(SYNTAX)),
  (text, random) => splice(text, random.below(text.length), 0, random.pick(SYNTAX)),
  (text, random) => splice(text, random.below(text.length), 1, String.fromCharCode(random.below(0x250))),
  (text, random) => splice(text, random.below(text.length), 1, String.fromCodePoint(random.below(0x10ffff))),
  flippedBit,
  (text, random) => text.slice(0, random.below(text.length)),
  (text, random) => text.slice(random.below(text.length)),
  lineChanged((lines, at) => lines.splice(at, 1)),
  lineChanged((lines, at) => lines.splice(at, 0, lines[at]!)),
  lineChanged((lines, at) => lines.splice(at, 2, lines[at + 1] ?? '', lines[at]!)),
  lineChanged((lines, at, random) => {
    lines[at] = ' '.repeat(random.below(6)) + lines[at]!.trimStart();
  }),
  lineChanged((lines, at) => {
    lines[at] = `\t${lines[at]}`;
  }),
  lineChanged((lines, at, random) => {
    const other = random.below(lines.length);
    [lines[at], lines[other]] = [lines[other]!, lines[at]!];
  }),
  (text, random) => text.replaceAll('\n', random.pick(['\r\n', '\r', '\u2028', '\n\n', ' '])),
  (text, random) => text + text.slice(random.below(text.length)),
  (text, random) => oneOf(text, /-?\d+(\.\d+)?[a-z%°]*/g, random, () => String(random.pick(HOSTILE_NUMBERS))),
  (text, random) => oneOf(text, /(?<=: *)[A-Za-z][^\n,}\]]*/g, random, () => random.pick(HOSTILE_TEXT)),
  (text, random) => oneOf(text, /[a-z][a-z-]+(?=:)/g, random, () => random.pick(HOSTILE_TEXT)),
  (text, random) => text.replaceAll(random.pick([...'.:,-{}[]#"']), random.pick([...'.:,-{}[]#"\'| '])),
];

const SYNTAX: readonly string[] = [
  '{',
  '}',
  '[',
  ']',
  ': ',
  ':',
  ', ',
  '- ',
  '? ',
  '# ',
  '\n',
  '\n---\n',
  '\n...\n',
  '&a ',
  '*a',
  '<<: *a',
  '!x ',
  '!!str ',
  '!!float ',
  '"',
  "'",
  '|\n',
  '>-\n',
  '\t',
  '\\',
  '%YAML 1.1\n',
  '\u00a0',
  '\ufeff',
];

function splice(text: string, at: number, cut: number, put: string): string {
  return text.slice(0, at) + put + text.slice(at + cut);
}

/** As a bad disk would; what is no UTF-8 any more is shown as U+FFFD, as a reader would. */
function flippedBit(text: string, random: Random): string {
  const bytes = new TextEncoder().encode(text);
  const at = random.below(bytes.length);
  bytes[at] = (bytes[at] ?? 0) ^ (1 << random.below(8));
  return new TextDecoder().decode(bytes);
}

function lineChanged(change: (lines: string[], at: number, random: Random) => unknown): Change {
  return (text, random) => {
    const lines = text.split('\n');
    change(lines, random.below(lines.length), random);
    return lines.join('\n');
  };
}

function oneOf(text: string, pattern: RegExp, random: Random, put: () => string): string {
  const matches = [...text.matchAll(pattern)];
  if (matches.length === 0) return text;
  const match = random.pick(matches);
  return splice(text, match.index, match[0].length, put());
}
