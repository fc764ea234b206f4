import type { Diagnostic, Span } from './diagnostic.ts';
import { problem } from './problem.ts';
import { quoted } from './safe-text.ts';

/** Problems of a spec that is based on another. */

export const basedOnNoFile = (span: Span): Diagnostic => ({
  ...problem('based-on-no-file', span),
  message: '`based-on` names no file',
  why: 'what this gown keeps of another cannot be found',
  hint: 'write the name of a spec in this folder, such as lantern.yaml',
});

export const baseMissing = (span: Span, path: string): Diagnostic => ({
  ...problem('base-missing', span),
  message: `there is no file ${quoted(path)} beside this spec`,
  why: 'everything that this gown keeps of it is missing',
  hint: 'look at the spelling; the path goes from the folder of this spec',
});

export const baseNotReadHere = (span: Span): Diagnostic => ({
  ...problem('base-not-read-here', span),
  message: 'a spec that is based on another cannot be read by itself here',
  why: 'what it keeps of the other would be missing',
  hint: 'give the whole spec: gorewright check --resolved prints it',
});

export const outsideFolder = (span: Span, path: string): Diagnostic => ({
  ...problem('based-on-outside-folder', span),
  message: `${quoted(path)} is not in the folder of this spec`,
  why: 'a spec may be opened by somebody else, and must not reach for other files of theirs',
  hint: 'put both specs into one folder, and write the path with `/`, without a leading `/` or `..`',
});

export const basedOnItself = (span: Span, chain: readonly string[]): Diagnostic => ({
  ...problem('based-on-itself', span),
  message: `the specs are based on each other in a circle: ${chain.map(quoted).join(' → ')}`,
  why: 'none of them is whole',
  hint: 'let one of them say everything',
});

export const chainTooLong = (span: Span, longest: number): Diagnostic => ({
  ...problem('based-on-too-long', span),
  message: `more than ${longest} specs stand one on the other`,
  why: 'nobody can tell any more where a measure comes from',
  hint: 'write out the one below: gorewright check --resolved prints it whole',
});

export const withoutWhat = (span: Span): Diagnostic => ({
  ...problem('without-what', span),
  message: '`without` is not a list of what to leave out',
  why: 'what was meant to go would stay in the gown',
  hint: 'write a list of keys, such as [train, layers.organza, gores.side.hem]',
});

export const withoutBase = (span: Span): Diagnostic => ({
  ...problem('without-base', span),
  message: '`without` is given, and the spec is based on no other',
  why: 'there is nothing to leave out',
  hint: 'take it out, or add `based-on`',
});

export const nothingToLeaveOut = (span: Span, path: string): Diagnostic => ({
  ...problem('nothing-to-leave-out', span),
  message: `the spec below has no ${quoted(path)}`,
  why: 'what was meant to go may still be in the gown',
  hint: 'write its keys with points between, the items of a list by their names: gores.side.hem',
});

export const fittingsInherited = (span: Span): Diagnostic => ({
  ...problem('fittings-inherited', span, 'note'),
  message: 'the fittings of the spec below alter this gown too',
  why: 'they were pinned on the body that it was made for',
  hint: 'for another body write `without: [fittings]`',
});
