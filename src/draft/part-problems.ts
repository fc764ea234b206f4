import { error } from '../diagnostics/finding.ts';
import { quoted } from '../diagnostics/safe-text.ts';

/** Parts that find no room on the drafted gown, or cannot be cut. */

export const godetBeyondSeam = error(
  'godet-beyond-seam',
  (name: string, seam: string, from: string, length: string) => ({
    message: `The godet ${quoted(name)} begins ${from} down the seam ${quoted(seam)}, which is ${length} long.`,
    why: 'No seam is left to let it into.',
    hint: 'Let `from`, measured from the waist seam, lie above the hem.',
  }),
);

export const flounceAboveWaist = error('flounce-above-waist', (name: string, layer: string) => ({
  message: `The flounce ${quoted(name)} would be sewn on above the waist of layer ${quoted(layer)}.`,
  why: 'There is no cloth to sew it to.',
  hint: 'Let `above-hem` be less than the layer is long.',
}));

export const partCrossesItself = error('outline-crosses-itself', (name: string) => ({
  message: `The outline of ${quoted(name)} crosses itself.`,
  why: 'Such a piece cannot be cut.',
  hint: 'Cut it in more pieces, make it less wide, or longer.',
}));
