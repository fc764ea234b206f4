import { error } from './finding.ts';
import { quoted } from './safe-text.ts';

/** Problems of what finishes the gown, as far as the spec alone tells them. */

export const facingOfOtherHem = error('facing-of-other-hem', (layer: string, hem: string) => ({
  message: `The layer ${quoted(layer)} has a facing, and its hem is ${hem}.`,
  why: 'A facing is sewn to the hem that it faces; this one would be cut for nothing.',
  hint: 'Write `hem: faced`, or take `facing` out.',
}));

export const bandWithoutCloth = error('band-without-cloth', () => ({
  message: 'The waistband has no `cloth`.',
  why: 'Nothing says what to cut it from, nor what to buy for it.',
  hint: 'Add `cloth` with the name of one of the cloths.',
}));

export const waistBesideBodice = error('waist-beside-bodice', () => ({
  message: 'The skirt has a `waist` of its own, and a bodice is drafted for it.',
  why: 'Its upper edge would be sewn to both.',
  hint: 'Take `waist` out, or the bodice.',
}));

export const waistTakesNo = error('waist-takes-no', (finish: string, key: string) => ({
  message: `A waist that is finished with a ${finish} takes no ${quoted(key)}.`,
  why: 'It would be read, and nothing would come of it.',
  hint: `Take ${quoted(key)} out.`,
}));

export const facingOfFullWaist = error('facing-of-full-waist', (name: string) => ({
  message: `The waist is faced, and ${quoted(name)} is gathered or pleated to it.`,
  why: 'A facing has the shape of a smooth edge; over gathers it would not lie.',
  hint: 'Write `finish: band`, which takes the fullness in.',
}));
