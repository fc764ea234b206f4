import { error } from './finding.ts';
import { quoted } from './safe-text.ts';

/** Problems of a skirt whose two edges lie over one another. */

export const wrapWithoutWaist = error('wrap-without-waist', () => ({
  message: 'The skirt wraps, and has no `waist` of its own.',
  why: 'Its two edges lie over one another at the waist too: sewn to a bodice it could not be opened.',
  hint: 'Add `waist`, such as `{finish: band, width: 3, cloth: shell}`, in place of `bodice`.',
}));

export const wrapTwice = error('wrap-twice', (station: string) => ({
  message: `The wrap lies at ${quoted(station)}, which her left and her right side both have.`,
  why: 'A skirt wraps at one place; both sides would be left open.',
  hint: 'Choose `centre-front` or `centre-back`, cut with a seam there, or write out both sides with `symmetry: none`.',
}));

export const wrapTakesPlace = error('wrap-takes-place', (station: string, key: string) => ({
  message: `${quoted(key)} names ${quoted(station)}, where the skirt wraps.`,
  why: 'Nothing is sewn there: the two edges lie past it.',
  hint: 'Name another seam. What stands beyond the edges is said under `allowances: {wrap-edge: …}`.',
}));

export const wrapAndClosure = error('wrap-and-closure', () => ({
  message: 'The skirt wraps, and has a `closure` as well.',
  why: 'A wrap is how she gets in.',
  hint: 'Take one of the two out; what holds the wrap is said under `wrap.fastened`.',
}));

export const wrapSaysOverlap = error('wrap-says-overlap', () => ({
  message: 'The waistband has an `overlap` of its own, and the skirt wraps.',
  why: 'The band is as long as the skirt’s edge: its ends lie over one another as the wrap does.',
  hint: 'Take `waist.overlap` out.',
}));

export const wrapOnFullness = error('wrap-on-fullness', (name: string) => ({
  message: `The skirt wraps beside ${quoted(name)}, whose top is gathered or pleated.`,
  why: 'Where the edges lie on the sewn waist could not be told.',
  hint: 'Take the `fullness` out there; darts may stay.',
}));

export const wrapEdgesNotFaced = error('wrap-edges-not-faced', (edges: string) => ({
  message: `The wrap has a facing for its edges, and they are ${edges}.`,
  why: 'It would be cut for nothing.',
  hint: 'Write `edges: faced`, or take `edge-facing` out.',
}));

export const wrapNotTied = error('wrap-not-tied', (fastened: string) => ({
  message: `Ties are to be cut, and the wrap fastens with ${fastened}.`,
  why: 'They would be cut for nothing.',
  hint: 'Write `fastened: ties`, or take `ties` out.',
}));

export const wrapOnCurve = error('wrap-on-curve', (station: string, gore: string, bend: string) => ({
  message: `The skirt wraps at ${quoted(station)}, and the edge of gore ${quoted(gore)} there bends by ${bend}.`,
  why: 'What lies beyond a bent line cannot be cut in one with the gore: it would not lie flat.',
  hint: 'Let that edge lie on the straight thread: `grain: front-edge` at the front of a gore, `back-edge` at its back.',
}));

export const wrapTooWide = error('wrap-too-wide', (overlap: string, gore: string, width: string) => ({
  message: `The edges of the wrap lie over one another by ${overlap}, half of it on gore ${quoted(gore)}, which is ${width} wide there.`,
  why: 'Past the next seam the skirt has another shape, and a straight edge would not lie on it.',
  hint: 'Take a smaller overlap, or make that gore wider.',
}));

export const wrapOnDart = error('wrap-on-dart', (dart: string, gore: string) => ({
  message: `An edge of the wrap comes to lie on the dart ${quoted(dart)} of gore ${quoted(gore)}.`,
  why: 'The edge would be sewn into it.',
  hint: 'Let the overlap end a finger before the dart or past it, or move the dart.',
}));
