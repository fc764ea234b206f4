import type { Diagnostic, Span } from './diagnostic.ts';
import { lineAndColumn } from './place.ts';
import { listed, nearestIs, problem } from './problem.ts';
import { quoted } from './safe-text.ts';

/** Problems of gores and their names: folds, widths, tops against the bodice. */

type Table = readonly (readonly string[])[];

export const badName = (span: Span, kind: string, name: string): Diagnostic => ({
  ...problem('bad-name', span),
  message: `${quoted(name)} cannot name a ${kind}`,
  why: 'names become parts of file names and of stations such as `front/side`',
  hint: 'use letters, digits and hyphens only, beginning with a letter or digit',
});

export const reservedName = (span: Span, kind: string, name: string): Diagnostic => ({
  ...problem('reserved-name', span),
  message: `${quoted(name)} cannot name a ${kind}, as it already means something else`,
  why: 'an edge or a station of that name could not be told from it',
  hint: 'choose another name, such as `front` or `side-back`',
});

export const duplicateName = (span: Span, kind: string, name: string, earlier: Span): Diagnostic => ({
  ...problem('duplicate-name', span),
  message: `two ${kind}s are named ${quoted(name)}; the first is on line ${lineAndColumn(earlier).line}`,
  why: 'seams, lays and papers tell them apart by name',
  hint: 'give one of them another name',
});

export const noGores = (span: Span): Diagnostic => ({
  ...problem('no-gores', span),
  message: 'there are no gores',
  why: 'a skirt has at least one',
  hint: 'list them from the centre front round to the centre back, each with its `name`',
});

export const wholeOnFold = (span: Span, gore: string, key: string, half: string): Diagnostic => ({
  ...problem('whole-on-fold', span),
  message: `${quoted(key)} is given for the gore ${quoted(gore)}, which is cut on the fold: it takes ${quoted(half)}`,
  why: 'the pattern of a gore on the fold is one half of it; taken for the half, a whole width makes the gore twice as wide',
  hint: `write ${quoted(half)} with half of the width, from the fold to the seam`,
});

export const halfWithoutFold = (span: Span, gore: string, key: string, whole: string): Diagnostic => ({
  ...problem('half-without-fold', span),
  message: `${quoted(key)} is given for the gore ${quoted(gore)}, which is not on the fold`,
  why: 'only a gore on the fold has a half',
  hint: `write ${quoted(whole)} with the whole width, or add \`on-fold: true\``,
});

export const foldInside = (span: Span, gore: string): Diagnostic => ({
  ...problem('fold-inside', span),
  message: `the gore ${quoted(gore)} is on the fold, but it is neither the first nor the last`,
  why: 'the fold lies at the centre front or the centre back; a gore between them is cut as a mirrored pair',
  hint: 'take `on-fold` out, or put the gore first or last',
});

export const foldWithoutSymmetry = (span: Span, gore: string): Diagnostic => ({
  ...problem('fold-without-symmetry', span),
  message: `the gore ${quoted(gore)} is on the fold in a skirt whose sides differ`,
  why: 'with `symmetry: none` every gore is given whole, and a fold would make its sides alike',
  hint: 'take `on-fold` out and give whole widths',
});

export const grainOnFold = (span: Span, gore: string, grain: string): Diagnostic => ({
  ...problem('grain-on-fold', span),
  message: `the gore ${quoted(gore)} is on the fold and cannot have its grain at the ${quoted(grain)}`,
  why: 'the fold lies along the thread, so the grain runs down the fold',
  hint: 'take `grain` out',
});

export const severalWidths = (span: Span, gore: string, keys: readonly string[]): Diagnostic => ({
  ...problem('several-widths', span),
  message: `the gore ${quoted(gore)} has ${keys.map(quoted).join(' and ')}, and one of them is enough`,
  why: 'each decides how wide the gore gets, and they need not agree',
  hint: 'keep one: `hem` or `flare` for the gore, or `sweep` for the whole skirt',
});

export const noWidth = (span: Span, gore: string, key: string): Diagnostic => ({
  ...problem('no-width', span),
  message: `nothing says how wide the gore ${quoted(gore)} gets`,
  why: 'a gore needs a width at the hem, or a flare, or its part of the whole hem',
  hint: `add ${quoted(key)} with its width at the hem, or one \`sweep\` for the skirt, or \`girths\` of the petticoat`,
});

export const grainBesideFlares = (span: Span, gore: string): Diagnostic => ({
  ...problem('grain-beside-flares', span),
  message: `the gore ${quoted(gore)} has two flares and a \`grain\` beside them`,
  why: 'two flares already say where the grain lies between them',
  hint: 'take `grain` out, or give one flare',
});

export const panelOfNoGore = (
  span: Span,
  panel: string,
  gores: readonly string[],
  near: string | undefined,
): Diagnostic => ({
  ...problem('panel-of-no-gore', span),
  message: `the panel ${quoted(panel)} has no gore of that name${nearestIs(near)}`,
  why: 'each panel of the bodice is sewn to the gore of its name',
  hint: `the gores are ${listed(gores)}`,
});

export const noTop = (span: Span, gore: string, key: string): Diagnostic => ({
  ...problem('no-top', span),
  message: `the gore ${quoted(gore)} has neither a top nor a bodice panel`,
  why: 'nothing says how wide it is at the waist',
  hint: `add ${quoted(gore)} to \`bodice.panels\`, or ${quoted(key)} to the gore`,
});

export const topMissesPanel = (
  span: Span,
  gore: string,
  top: string,
  panel: string,
  difference: string,
  table: Table,
): Diagnostic => ({
  ...problem('top-misses-panel', span),
  message: `the top of ${quoted(gore)} is ${top} and its bodice panel ${panel}: ${difference}`,
  why: 'beyond 1.5 mm the seam lines of skirt and bodice do not meet at the waist',
  hint: 'measure both along the seam line and correct one; without a top the gore takes its panel',
  table,
});

export const topsMissWaist = (
  span: Span,
  what: string,
  sum: string,
  waist: string,
  difference: string,
  table: Table,
): Diagnostic => ({
  ...problem('tops-miss-waist', span),
  message: `${what} make ${sum} all round and the waist seam is ${waist}: ${difference}`,
  why: 'the skirt would not go onto the bodice without a tuck or a stretch',
  hint: 'measure the waist seam again, or correct the widths in the table (a gore that is not on the fold counts twice)',
  table,
});
