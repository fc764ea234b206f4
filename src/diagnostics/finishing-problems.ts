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

export const slitUnmeasured = error('slit-unmeasured', () => ({
  message: 'Nothing says how high the slit goes.',
  why: 'The seam is sewn down to its upper end.',
  hint: 'Add `above-hem`, or `below-waist` for where it begins.',
}));

export const slitTwice = error('slit-twice', () => ({
  message: 'The slit is measured from the hem and from the waist.',
  why: 'The two need not agree, and one of them would be left out.',
  hint: 'Keep `above-hem` or `below-waist`.',
}));

export const closureCutsNothing = error('closure-cuts-nothing', (key: string) => ({
  message: `The closure has a ${quoted(key)}, and no piece is cut for it.`,
  why: 'It would be read, and nothing would come of it.',
  hint: 'Write `finish: placket`, `guard` or `facing`, or take it out.',
}));

export const trimNotCut = error('trim-not-cut', (kind: string) => ({
  message: `A ${quoted(kind)} has a cloth, and is not cut from one.`,
  why: 'Only a binding is cut on the bias; the others are bought.',
  hint: 'Take `cloth` out, or write `kind: binding`.',
}));

export const edgesNotFaced = error('edges-not-faced', (edges: string) => ({
  message: `The overskirt has a facing for its end edges, and they are ${edges}.`,
  why: 'It would be cut for nothing.',
  hint: 'Write `edges: faced`, or take `edge-facing` out.',
}));
