import type { Diagnostic, Span } from './diagnostic.ts';
import { lineAndColumn } from './place.ts';
import { problem } from './problem.ts';
import { quoted } from './safe-text.ts';

/** Problems of a spec's text, before anything in it is understood as a gown. */

export const tooLarge = (span: Span, limit: number): Diagnostic => ({
  ...problem('spec-too-large', span),
  message: `the file is larger than ${limit / 1000} kB`,
  why: 'a gown spec is a few kB of text; this is another kind of file',
  hint: 'give the spec itself, and keep pictures and notes in files beside it',
});

export const notUtf8 = (span: Span, found: string): Diagnostic => ({
  ...problem('not-utf8', span),
  message: `the file is ${found}, not UTF-8 text`,
  why: 'letters and figures could be misread',
  hint: 'save it again as UTF-8, which every editor offers under "encoding"',
});

export const controlCharacter = (span: Span, codePoint: number): Diagnostic => ({
  ...problem('control-character', span),
  message: `the file holds a character that is not text (U+${codePoint.toString(16).toUpperCase().padStart(4, '0')})`,
  why: 'this may not be a spec at all, or it was damaged on its way',
  hint: 'delete the character, or give the spec itself',
});

export const emptySpec = (span: Span): Diagnostic => ({
  ...problem('empty-spec', span),
  message: 'there is no spec in this file',
  why: 'nothing can be drafted from it',
  hint: 'start from a template: gorewright new FILE --from floor-length',
});

export const notASpec = (span: Span, found: string): Diagnostic => ({
  ...problem('not-a-spec', span),
  message: `the file holds ${found}, not the sections of a gown`,
  why: 'nothing can be drafted from it',
  hint: 'write sections at the left margin, such as `format: 1` and `gown: Lantern`; gorewright new FILE shows how',
});

export const notYaml = (span: Span, reason: string): Diagnostic => ({
  ...problem('not-yaml', span),
  message: `the file cannot be read from here: ${lowerFirst(reason)}`,
  why: 'what follows could be taken for something else than was meant',
  hint: 'look for a missing colon, quote or bracket here or on the line above, and for lines that start too far left or right',
});

export const tabForIndent = (span: Span): Diagnostic => ({
  ...problem('tab-for-indent', span),
  message: 'a tab stands where the line is set in',
  why: 'YAML takes only spaces there, as tabs are of no fixed width',
  hint: 'put spaces in place of the tab',
});

export const severalDocuments = (span: Span): Diagnostic => ({
  ...problem('several-documents', span),
  message: 'a second document begins here',
  why: 'one file describes one gown',
  hint: 'put the other gown into a file of its own; `based-on` lets it share what is the same',
});

export const otherYaml = (span: Span): Diagnostic => ({
  ...problem('other-yaml', span),
  message: 'the file asks for another YAML than 1.2',
  why: 'in older YAML `no` is false and `1:30` is ninety, so that a measure could be misread',
  hint: 'take this line out',
});

export const keyIsNoText = (span: Span): Diagnostic => ({
  ...problem('key-is-no-text', span),
  message: 'a key is a list or a section, not a word',
  why: 'no section of a spec has such keys',
  hint: 'write a word before the colon, or put quotes round text that has brackets in it',
});

export const tagNotRead = (span: Span): Diagnostic => ({
  ...problem('tag-not-read', span),
  message: 'a tag (`!…`) that a spec does not know',
  why: 'it would change what the value means',
  hint: 'take the tag out, or put quotes round text that begins with `!`',
});

export const mergeKey = (span: Span): Diagnostic => ({
  ...problem('merge-key', span),
  message: '`<<` does not merge sections in a spec',
  why: 'what it would bring in would be left out',
  hint: 'write the values out, or share a whole spec with `based-on`',
});

export const unsafeName = (span: Span, name: string): Diagnostic => ({
  ...problem('unsafe-name', span),
  message: `${quoted(name)} cannot be a key or a name`,
  why: 'it means something to the machine that reads the file',
  hint: 'choose another word',
});

export const duplicateKey = (span: Span, name: string, earlier: Span): Diagnostic => ({
  ...problem('duplicate-key', span),
  message: `${quoted(name)} stands twice in this section; the first is on line ${lineAndColumn(earlier).line}`,
  why: 'only one of the two values could hold, and nobody can tell which was meant',
  hint: 'keep the one that is right',
});

export const nestedTooDeep = (span: Span): Diagnostic => ({
  ...problem('nested-too-deep', span),
  message: 'sections are nested deeper than in any spec',
  why: 'a value that holds itself, or brackets that never close, would be read for ever',
  hint: 'look for a missing bracket, or an alias (`*name`) inside the section that it names',
});

export const tooManyValues = (span: Span): Diagnostic => ({
  ...problem('too-many-values', span),
  message: 'the spec has more values, aliases written out, than any gown',
  why: 'aliases of aliases grow without end',
  hint: 'write the values out instead of repeating aliases (`*name`)',
});

export const unknownAlias = (span: Span, name: string): Diagnostic => ({
  ...problem('unknown-alias', span),
  message: `the alias ${quoted(`*${name}`)} names no anchor above it`,
  why: 'there is no value to put here',
  hint: `write the value itself, or mark the one that is meant with \`&${name.slice(0, 40)}\` above this line`,
});

const lowerFirst = (text: string) =>
  /^[A-Z][a-z]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
