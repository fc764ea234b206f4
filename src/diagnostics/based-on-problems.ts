import { error, note } from './finding.ts';
import { quoted } from './safe-text.ts';

/** Problems of a spec that is based on another. */

export const basedOnNoFile = error('based-on-no-file', () => ({
  message: '`based-on` names no file.',
  why: 'What this gown keeps of another cannot be found.',
  hint: 'Write the name of a spec in this folder, such as `lantern.yaml`.',
}));

export const baseMissing = error('base-missing', (path: string) => ({
  message: `There is no file ${quoted(path)} beside this spec.`,
  why: 'Everything that this gown keeps of it is missing.',
  hint: 'Look at the spelling; the path goes from the folder of this spec.',
}));

export const baseNotReadHere = error('base-not-read-here', () => ({
  message: 'A spec that is based on another cannot be read by itself here.',
  why: 'What it keeps of the other would be missing.',
  hint: 'Give the whole spec: `gorewright check --resolved` prints it.',
}));

export const outsideFolder = error('based-on-outside-folder', (path: string) => ({
  message: `${quoted(path)} is not in the folder of this spec.`,
  why: 'A spec may be opened by somebody else, and must not reach for other files of theirs.',
  hint: 'Put both specs into one folder, and write the path with `/`, without a leading `/` or `..`.',
}));

export const basedOnItself = error('based-on-itself', (chain: readonly string[]) => ({
  message: `The specs are based on each other in a circle: ${chain.map(quoted).join(' → ')}.`,
  why: 'None of them is whole.',
  hint: 'Let one of them say everything.',
}));

export const chainTooLong = error('based-on-too-long', (longest: number) => ({
  message: `More than ${longest} specs stand one on the other.`,
  why: 'Nobody can tell any more where a measure comes from.',
  hint: 'Write out the one below: `gorewright check --resolved` prints it whole.',
}));

export const withoutWhat = error('without-what', () => ({
  message: '`without` is not a list of what to leave out.',
  why: 'What was meant to go would stay in the gown.',
  hint: 'Write a list of keys, such as [train, layers.organza, gores.side.hem].',
}));

export const withoutBase = error('without-base', () => ({
  message: '`without` is given, and the spec is based on no other.',
  why: 'There is nothing to leave out.',
  hint: 'Take it out, or add `based-on`.',
}));

export const nothingToLeaveOut = error('nothing-to-leave-out', (path: string) => ({
  message: `The spec below has no ${quoted(path)}.`,
  why: 'What was meant to go may still be in the gown.',
  hint: 'Write its keys with points between, the items of a list by their names: `gores.side.hem`.',
}));

export const fittingsInherited = note('fittings-inherited', () => ({
  message: 'The fittings of the spec below alter this gown too.',
  why: 'They were pinned on the body that it was made for.',
  hint: 'For another body write `without: [fittings]`.',
}));
