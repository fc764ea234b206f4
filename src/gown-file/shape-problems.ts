import type * as z from 'zod/mini';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import * as problems from '../diagnostics/value-problems.ts';
import { nearest } from './nearest.ts';
import { insteadOf } from './not-drafted.ts';
import { keysAt } from './shape/form.ts';
import type { FaultAtPath } from './shape/leaf.ts';
import { childOf, isScalar, placeOfWritten, type Written, writtenAt } from './written.ts';

type Path = readonly (string | number)[];

/** What the schema library found, in words and with its place. */
export function problemsOfIssue(issue: z.core.$ZodIssue, root: Written): Diagnostic[] {
  const path = issue.path.filter((step) => typeof step !== 'symbol');
  // An alias of nothing, which has been spoken of.
  if (writtenAt(root, path)?.kind === 'left-out') return [];
  if (issue.code === 'unrecognized_keys')
    return issue.keys.map((key) => unknownKeyAt(root, path, key, issue.keys.length <= MOST_GUESSED));
  if (issue.code === 'invalid_union') return problemsOfUnion(issue, root, path);
  if (issue.code === 'custom') {
    const { diagnostic, expected } = (issue.params ?? {}) as FaultAtPath;
    return diagnostic === undefined ? missingOrWrong(root, path, expected ?? 'a value') : [diagnostic];
  }
  const written = writtenAt(root, path);
  if (issue.code === 'too_big' && written?.kind === 'list' && written.items.length > PAIR) {
    const most = Number(issue.maximum);
    if (most > PAIR)
      return [problems.tooManyItems(placeOfWritten(written), written.label, written.items.length, most)];
  }
  return missingOrWrong(root, path, expectedBy(issue));
}

/** Items of the only list whose length is fixed. */
const PAIR = 2;

/** Of several forms, the one whose kind was written tells what is wrong with it. */
function problemsOfUnion(issue: z.core.$ZodIssueInvalidUnion, root: Written, path: Path): Diagnostic[] {
  const written = writtenAt(root, path);
  const branch = issue.errors[written === undefined || isScalar(written) ? 0 : issue.errors.length - 1] ?? [];
  return branch.flatMap((inner) => problemsOfIssue({ ...inner, path: [...path, ...inner.path] }, root));
}

function expectedBy(issue: z.core.$ZodIssue): string {
  if (issue.code === 'too_big' || issue.code === 'too_small') return 'a pair, such as `[10deg, 10.5deg]`,';
  const expected = issue.code === 'invalid_type' ? issue.expected : '';
  if (expected === 'array' || expected === 'tuple') return 'a list';
  return 'a section';
}

function missingOrWrong(root: Written, path: Path, expected: string): Diagnostic[] {
  const written = writtenAt(root, path);
  if (written === undefined) return missing(root, path, expected);
  if (written.kind === 'nothing')
    return [problems.emptyValue(placeOfWritten(written), written.label, expected)];
  return [problems.wrongKind(placeOfWritten(written), written.label, kindInWords(written), expected)];
}

function missing(root: Written, path: Path, expected: string): Diagnostic[] {
  const key = String(path.at(-1) ?? '');
  const parent = path.slice(0, -1);
  const section = writtenAt(root, parent) ?? root;
  if (misspelt(section, parent, key)) return [];
  const from = `from ${sectionName(section, parent)}`;
  return [problems.missingKey(placeOfSection(section, parent), key, from, expected)];
}

/** A required key that stands there under a wrong name has been spoken of. */
function misspelt(section: Written, path: Path, key: string): boolean {
  if (section.kind !== 'map' || section.entries.size > MOST_GUESSED) return false;
  const keys = keysAt(path);
  return [...section.entries.keys()].some((other) => !keys.includes(other) && nearest(other, keys) === key);
}

/** Keys of one section whose meaning is guessed at. No section has as many; a file of thousands would take seconds. */
const MOST_GUESSED = 60;

function unknownKeyAt(root: Written, path: Path, key: string, guess: boolean): Diagnostic {
  const section = writtenAt(root, path) ?? root;
  const span = childOf(section, key)?.key ?? section.span;
  const keys = keysAt(path);
  const instead = keys.length === 0 ? undefined : insteadOf(key);
  if (instead !== undefined) return problems.notDrafted(span, key, instead);
  return problems.unknownKey(
    span,
    key,
    `of ${sectionName(section, path)}`,
    guess ? nearest(key, keys) : undefined,
    keys,
  );
}

/** The top of a file has no key of its own: its first line stands for it. */
function placeOfSection(section: Written, path: Path) {
  if (path.length > 0) return placeOfWritten(section);
  const { source, start } = section.span;
  const end = source.text.indexOf('\n', start);
  return { source, start, end: end === -1 ? source.text.length : end };
}

function sectionName(section: Written, path: Path): string {
  const [last, before] = [path.at(-1), path.at(-2)];
  if (last === undefined) return 'the spec';
  const own = SINGULAR.get(String(typeof last === 'number' || before === 'cloths' ? before : ''));
  if (own === undefined) return `\`${section.label}\``;
  const name = childOf(section, 'name');
  const named =
    typeof last === 'string' ? last : name !== undefined && isScalar(name) ? name.text : undefined;
  return named === undefined ? `this ${own}` : `the ${own} \`${named.slice(0, 40)}\``;
}

const SINGULAR: ReadonlyMap<string, string> = new Map([
  ['gores', 'gore'],
  ['layers', 'layer'],
  ['cloths', 'cloth'],
  ['trims', 'trim'],
  ['notions', 'notion'],
  ['fittings', 'fitting'],
  ['girths', 'girth'],
  ['points', 'bustle point'],
  ['seams', 'seam'],
  ['levelled', 'levelled point'],
]);

function kindInWords(written: Written): string {
  if (written.kind === 'map') return 'a section';
  if (written.kind === 'list') return `a list of ${written.items.length}`;
  return written.kind === 'number' ? 'a number' : written.kind === 'flag' ? 'true or false' : 'text';
}
