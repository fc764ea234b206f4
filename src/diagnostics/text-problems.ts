import type { Span } from './diagnostic.ts';
import { error } from './finding.ts';
import { lineAndColumn } from './place.ts';
import { quoted } from './safe-text.ts';

/** Problems of a spec's text, before anything in it is understood as a gown. */

export const tooLarge = error('spec-too-large', (limit: number) => ({
  message: `The file is larger than ${limit / 1000} kB.`,
  why: 'A gown spec is a few kB of text; this is another kind of file.',
  hint: 'Give the spec itself, and keep pictures and notes in files beside it.',
}));

export const notUtf8 = error('not-utf8', (found: string) => ({
  message: `The file is ${found}, not UTF-8 text.`,
  why: 'Letters and figures could be misread.',
  hint: 'Save it again as UTF-8, which every editor offers under "encoding".',
}));

export const controlCharacter = error('control-character', (codePoint: number) => ({
  message: `The file holds a character that is not text (U+${codePoint.toString(16).toUpperCase().padStart(4, '0')}).`,
  why: 'This may not be a spec at all, or it was damaged on its way.',
  hint: 'Delete the character, or give the spec itself.',
}));

export const emptySpec = error('empty-spec', () => ({
  message: 'There is no spec in this file.',
  why: 'Nothing can be drafted from it.',
  hint: 'Start from a template: `gorewright new FILE --from floor-length`.',
}));

export const notASpec = error('not-a-spec', (found: string) => ({
  message: `The file holds ${found}, not the sections of a gown.`,
  why: 'Nothing can be drafted from it.',
  hint: 'Write sections at the left margin, such as `format: 1` and `gown: Lantern`; `gorewright new FILE` shows how.',
}));

export const notYaml = error('not-yaml', (reason: string) => ({
  message: `The file cannot be read from here: ${lowerFirst(reason)}.`,
  why: 'What follows could be taken for something else than was meant.',
  hint: 'Look for a missing colon, quote or bracket here or on the line above, and for lines that start too far left or right.',
}));

export const tabForIndent = error('tab-for-indent', () => ({
  message: 'A tab stands where the line is set in.',
  why: 'YAML takes only spaces there, as tabs are of no fixed width.',
  hint: 'Put spaces in place of the tab.',
}));

export const severalDocuments = error('several-documents', () => ({
  message: 'A second document begins here.',
  why: 'One file describes one gown.',
  hint: 'Put the other gown into a file of its own; `based-on` lets it share what is the same.',
}));

export const otherYaml = error('other-yaml', () => ({
  message: 'The file asks for another YAML than 1.2.',
  why: 'In older YAML `no` is false and `1:30` is ninety, so that a measure could be misread.',
  hint: 'Take this line out.',
}));

export const keyIsNoText = error('key-is-no-text', () => ({
  message: 'A key is a list or a section, not a word.',
  why: 'No section of a spec has such keys.',
  hint: 'Write a word before the colon, or put quotes round text that has brackets in it.',
}));

export const tagNotRead = error('tag-not-read', () => ({
  message: 'A tag (`!…`) stands here, and a spec has none.',
  why: 'It would change what the value means.',
  hint: 'Take the tag out, or put quotes round text that begins with `!`.',
}));

export const mergeKey = error('merge-key', () => ({
  message: '`<<` does not merge sections in a spec.',
  why: 'What it would bring in would be left out.',
  hint: 'Write the values out, or share a whole spec with `based-on`.',
}));

export const unsafeName = error('unsafe-name', (name: string) => ({
  message: `${quoted(name)} cannot be a key or a name.`,
  why: 'It means something to the machine that reads the file.',
  hint: 'Choose another word.',
}));

export const duplicateKey = error('duplicate-key', (name: string, earlier: Span) => ({
  message: `${quoted(name)} stands twice in this section; the first is on line ${lineAndColumn(earlier).line}.`,
  why: 'Only one of the two values could hold, and nobody can tell which was meant.',
  hint: 'Keep the one that is right.',
}));

export const nestedTooDeep = error('nested-too-deep', () => ({
  message: 'Sections are nested deeper than in any spec.',
  why: 'A value that holds itself, or brackets that never close, would be read for ever.',
  hint: 'Look for a missing bracket, or an alias (`*name`) inside the section that it names.',
}));

export const tooManyValues = error('too-many-values', () => ({
  message: 'The spec has more values, aliases written out, than any gown.',
  why: 'Aliases of aliases grow without end.',
  hint: 'Write the values out instead of repeating aliases (`*name`).',
}));

export const unknownAlias = error('unknown-alias', (name: string) => ({
  message: `The alias ${quoted(`*${name}`)} names no anchor above it.`,
  why: 'There is no value to put here.',
  hint: `Write the value itself, or mark the one that is meant with \`&${name.slice(0, 40)}\` above this line.`,
}));

const lowerFirst = (text: string) =>
  /^[A-Z][a-z]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
