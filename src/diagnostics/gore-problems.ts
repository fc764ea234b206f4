import type { Span } from './diagnostic.ts';
import { error, listed, nearestIs } from './finding.ts';
import { lineAndColumn } from './place.ts';
import { named, quoted } from './safe-text.ts';

/** Problems of gores and their names: folds, widths, tops against the bodice. */

type Table = readonly (readonly string[])[];

export const badName = error('bad-name', (kind: string, name: string) => ({
  message: `${quoted(name)} cannot name a ${kind}.`,
  why: 'Names become parts of file names and of stations such as `front/side`.',
  hint: 'Use letters, digits and hyphens only, beginning with a letter or digit.',
}));

export const reservedName = error('reserved-name', (kind: string, name: string) => ({
  message: `${quoted(name)} cannot name a ${kind}, as it already means something else.`,
  why: 'An edge or a station of that name could not be told from it.',
  hint: 'Choose another name, such as `front` or `side-back`.',
}));

export const duplicateName = error('duplicate-name', (kind: string, name: string, earlier: Span) => ({
  message: `Two ${kind}s are named ${quoted(name)}; the first is on line ${lineAndColumn(earlier).line}.`,
  why: 'Seams, lays and papers tell them apart by name.',
  hint: 'Give one of them another name.',
}));

export const noGores = error('no-gores', () => ({
  message: 'There are no gores.',
  why: 'A skirt has at least one.',
  hint: 'List them from the centre front round to the centre back, each with its `name`.',
}));

export const wholeOnFold = error('whole-on-fold', (gore: string, key: string, half: string) => ({
  message: `${quoted(key)} is given for the gore ${quoted(gore)}, which is cut on the fold: it takes ${quoted(half)}.`,
  why: 'The pattern of a gore on the fold is one half of it; taken for the half, a whole width makes the gore twice as wide.',
  hint: `Write ${quoted(half)} with half of the width, from the fold to the seam.`,
}));

export const halfWithoutFold = error('half-without-fold', (gore: string, key: string, whole: string) => ({
  message: `${quoted(key)} is given for the gore ${quoted(gore)}, which is not on the fold.`,
  why: 'Only a gore on the fold has a half.',
  hint: `Write ${quoted(whole)} with the whole width, or add \`on-fold: true\`.`,
}));

export const foldInside = error('fold-inside', (gore: string) => ({
  message: `The gore ${quoted(gore)} is on the fold, but it is neither the first nor the last.`,
  why: 'The fold lies at the centre front or the centre back; a gore between them is cut as a mirrored pair.',
  hint: 'Take `on-fold` out, or put the gore first or last.',
}));

export const foldWithoutSymmetry = error('fold-without-symmetry', (gore: string) => ({
  message: `The gore ${quoted(gore)} is on the fold in a skirt whose sides differ.`,
  why: 'With `symmetry: none` every gore is given whole, and a fold would make its sides alike.',
  hint: 'Take `on-fold` out and give whole widths.',
}));

export const grainOnFold = error('grain-on-fold', (gore: string, grain: string) => ({
  message: `The gore ${quoted(gore)} is on the fold and cannot have its grain at the ${quoted(grain)}.`,
  why: 'The fold lies along the thread, so the grain runs down the fold.',
  hint: 'Take `grain` out.',
}));

export const severalWidths = error('several-widths', (gore: string, keys: readonly string[]) => ({
  message: `The gore ${quoted(gore)} has ${named(keys)}, and one of them is enough.`,
  why: 'Each decides how wide the gore gets, and they need not agree.',
  hint: 'Keep one: `hem` or `flare` for the gore, or `sweep` for the whole skirt.',
}));

export const noWidth = error('no-width', (gore: string, key: string) => ({
  message: `Nothing says how wide the gore ${quoted(gore)} gets.`,
  why: 'A gore needs a width at the hem, or a flare, or its part of the whole hem.',
  hint: `Add ${quoted(key)} with its width at the hem, or one \`sweep\` for the skirt, or \`girths\` of the petticoat.`,
}));

export const grainBesideFlares = error('grain-beside-flares', (gore: string) => ({
  message: `The gore ${quoted(gore)} has two flares and a \`grain\` beside them.`,
  why: 'Two flares already say where the grain lies between them.',
  hint: 'Take `grain` out, or give one flare.',
}));

export const panelOfNoGore = error(
  'panel-of-no-gore',
  (panel: string, gores: readonly string[], near: string | undefined) => ({
    message: `The panel ${quoted(panel)} has no gore of that name${nearestIs(near)}.`,
    why: 'Each panel of the bodice is sewn to the gore of its name.',
    hint: `The gores are ${listed(gores)}.`,
  }),
);

export const noTop = error('no-top', (gore: string, key: string) => ({
  message: `The gore ${quoted(gore)} has neither a top nor a bodice panel.`,
  why: 'Nothing says how wide it is at the waist.',
  hint: `Add ${quoted(gore)} to \`bodice.panels\`, or ${quoted(key)} to the gore.`,
}));

export const topMissesPanel = error(
  'top-misses-panel',
  (gore: string, top: string, panel: string, difference: string, within: string, table: Table) => ({
    message: `The top of ${quoted(gore)} is ${top} and its bodice panel ${panel}: ${difference}.`,
    why: `Beyond ${within} the seam lines of skirt and bodice do not meet at the waist.`,
    hint: 'Measure both along the seam line and correct one; without a top the gore takes its panel.',
    table,
  }),
);

export const topsMissWaist = error(
  'tops-miss-waist',
  (what: string, sum: string, waist: string, difference: string, table: Table) => ({
    message: `${what} make ${sum} all round and the waist seam is ${waist}: ${difference}.`,
    why: 'The skirt would not go onto the bodice without a tuck or a stretch.',
    hint: 'Measure the waist seam again, or correct the widths in the table (a gore that is not on the fold counts twice).',
    table,
  }),
);
