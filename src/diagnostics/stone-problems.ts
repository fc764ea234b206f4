import { error, warning } from './finding.ts';
import { quoted } from './safe-text.ts';

/** Problems of stones and beads that are set by hand. */

export const stonesWithoutSize = error('stones-without-size', (name: string) => ({
  message: `The stones ${quoted(name)} have neither \`size\` nor \`sold-as\`.`,
  why: 'Without a size they cannot be kept clear of seams and edges.',
  hint: 'Write how wide one is, such as `size: 4mm`, or a size of the trade, such as `sold-as: 11/0`.',
}));

export const stonesOverNothing = error('stones-over-nothing', (name: string, from: string, to: string) => ({
  message: `The stones ${quoted(name)} go from ${from} to ${to}, which is no way.`,
  why: 'None would be set.',
  hint: 'Write the nearer end of the span first, then the farther one.',
}));

export const stonesNowhere = error('stones-nowhere', (name: string) => ({
  message: `The stones ${quoted(name)} have neither \`per-dm2\` nor \`places\`.`,
  why: 'Nothing says how many there are, nor where.',
  hint: 'Write `per-dm2` to have them scattered, or `places` to set them one by one.',
}));

export const stonesTwice = error('stones-twice', (name: string) => ({
  message: `The stones ${quoted(name)} have both \`per-dm2\` and \`places\`.`,
  why: 'They are either scattered or set one by one.',
  hint: 'Make two sets of them.',
}));

export const stonePlaceUnclear = error('stone-place-unclear', () => ({
  message: 'This place needs one of `below-waist` and `above-hem`.',
  why: 'The level that it is set at cannot be told.',
  hint: 'Write how far below the waist seam it lies, or how far above the hem, along the cloth.',
}));

export const stoneOffCloth = warning('stone-off-cloth', (name: string, gore: string, layer: string) => ({
  message: `A place of the ${quoted(name)} lies on no cloth: on gore ${quoted(gore)} of layer ${quoted(layer)} there is none there.`,
  why: 'That one is neither counted nor drawn.',
  hint: 'Move it, or set it on another layer.',
}));

export const stoneNearEdge = warning(
  'stone-near-edge',
  (says: { name: string; gore: string; edge: string; away: string; needed: string }) => ({
    message: `A place of the ${quoted(says.name)} on gore ${quoted(says.gore)} has its middle ${says.away} from ${quoted(says.edge)}; it needs ${says.needed} to be clear of it.`,
    why: 'It would lie in the seam or under the presser foot, and on both sides of it or on neither.',
    hint: 'Move it away, or set it by hand once that seam is sewn, and leave it out here.',
  }),
);

export const stonesOverlap = warning(
  'stones-overlap',
  (says: { name: string; apart: string; needed: string; most: string }) => ({
    message: `The ${quoted(says.name)} are asked for so close that their middles may lie ${says.apart} apart, and ${says.needed} are needed for each to have its own cloth.`,
    why: 'They would lie on one another.',
    hint: `Ask for ${says.most} on a square decimetre or fewer, or for smaller ones. Where they are to overlap like scales, leave it so.`,
  }),
);

export const stonesKeptApart = warning(
  'stones-kept-apart',
  (says: { name: string; asked: string; apart: string; most: string }) => ({
    message: `The ${quoted(says.name)} are asked for at ${says.asked} on a square decimetre and kept ${says.apart} apart: no more than about ${says.most} find room.`,
    why: 'There are fewer than were asked for; the papers count what is there.',
    hint: 'Ask for fewer, or let them lie closer.',
  }),
);
