import { error, warning } from '../diagnostics/finding.ts';
import { quoted } from '../diagnostics/safe-text.ts';
import type { SeamMeasures } from './measure-gown.ts';

/** What is not true of a draft. Figures come as text in the spec's own units, angles in degrees. */

/** Where a layer is not cut as the gown itself. */
const inLayer = (layer: string | undefined): string =>
  layer === undefined ? '' : ` in layer ${quoted(layer)}`;

export const seamsDiffer = error(
  'seams-differ',
  ({ name, gores }: SeamMeasures, a: string, b: string, layer?: string) => ({
    message: `The two sides of seam ${quoted(name)}${inLayer(layer)} differ: ${quoted(gores[0])} ${a}, ${quoted(gores[1])} ${b}.`,
    why: 'The longer side would have to be eased in, which puckers all the way down the skirt.',
    hint: 'Check the lengths at this station and the widths of both gores.',
  }),
);

const breaks = (edge: string) => (name: string, sum: string, layer?: string) => ({
  message: `The ${edge} breaks at ${quoted(name)}${inLayer(layer)}: the two angles add to ${sum} instead of 180°.`,
  why: `Sewn together the ${edge} would have a corner at the seam.`,
  hint: 'Check the lengths and drops at this station against those beside it.',
});

export const notSmooth = {
  hem: error('hem-not-smooth', breaks('hem')),
  waist: error('waist-not-smooth', breaks('waist')),
};

export const layerMissesWaist = error(
  'layer-misses-waist-seam',
  (layer: string, by: string, words: 'longer' | 'shorter') => ({
    message: `As drafted, layer ${quoted(layer)} is ${by} ${words} than the waist seam all round.`,
    why: 'It would have to be eased or stretched onto the bodice.',
    hint: 'Cut it less much smaller or less full, or soften the drop of the edge and the change from girth to girth.',
  }),
);

/** A godet, a flounce or a strip that does not meet what it is sewn to. */
export const partMissesSeam = error(
  'part-misses-seam',
  (name: string, layer: string, by: string, sum: string) => ({
    message: `${quoted(name)} (layer ${quoted(layer)}) does not meet what it is sewn to: a side is off by ${by}, the angles at its hem add to ${sum}.`,
    why: 'Its longer side would pucker, or the sewn hem have a corner.',
    hint: 'Make it less wide, or let its seam run more nearly square to the hem.',
  }),
);

export const hemFarFromSquare = warning('hem-far-from-square', (seam: string, offSquare: string) => ({
  message: `The hem meets seam ${quoted(seam)} ${offSquare} off square.`,
  why: 'A hem so steep is cut far off the grain there: it stretches, and a turned hem must be eased a great deal.',
  hint: 'Let the train begin earlier, make it shorter, or spread it over more gores.',
}));

export const outlineCrossesItself = error('outline-crosses-itself', (gore: string) => ({
  message: `The seam line of gore ${quoted(gore)} crosses itself.`,
  why: 'Such a piece cannot be cut.',
  hint: 'Check the widths, lengths and drops of this gore; one of them does not fit the others.',
}));

export const topsMissBodice = error(
  'tops-miss-waist-seam',
  (sewn: string, bodice: string, within: string, tops: readonly (readonly [string, string])[]) => ({
    message: `The gores' tops measure ${sewn} all round, but the waist seam measures ${bodice}.`,
    why: 'The skirt would have to be eased or stretched onto the bodice.',
    hint: `Make the tops add up to the waist seam, within ${within}.`,
    table: [['gore', 'top'], ...tops],
  }),
);
