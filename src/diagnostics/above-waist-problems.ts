import { error, listed } from './finding.ts';
import { quoted } from './safe-text.ts';

/** Problems of the body, of a bodice that is drafted over it, and of what is sewn to its upper edge. */

export const edgeTwice = error('edge-twice', (key: string) => ({
  message: `The bodice is drafted, and ${quoted(key)} is typed beside it.`,
  why: 'The edge that the skirt is sewn to would have two lengths.',
  hint: 'Take it out: the draft gives each panel its lower edge, and the waist seam is their sum.',
}));

export const makingWithoutDraft = error('making-without-draft', (key: string) => ({
  message: `${quoted(key)} says how a bodice is made, and none is drafted.`,
  why: 'Of a bodice made elsewhere only its edge is known: this would not be used.',
  hint: 'Draft the bodice (`bodice.draft`), or take it out.',
}));

export const draftWithoutBody = error('draft-without-body', () => ({
  message: 'A bodice is drafted, and the spec has no `body`.',
  why: 'Its panels take their widths from her girths.',
  hint: 'Add `body:` with `girths` at the waist and above it, and below it as far as the edge drops.',
}));

export const draftWithoutSymmetry = error('draft-without-symmetry', () => ({
  message: 'A bodice is drafted for a gown with `symmetry: none`.',
  why: 'Its panels are one half, and the gores here run all the way round.',
  hint: 'Take `symmetry` out and let `left` in the girths, or a fitting, say where her halves differ; or give `waist-seam` and `panels`.',
}));

export const panelsUnlikeGores = error(
  'panels-unlike-gores',
  (panels: readonly string[], gores: readonly string[]) => ({
    message: `The panels are ${listed(panels)} and the gores ${listed(gores)}.`,
    why: 'Each gore is sewn to the panel of its name, and their seams meet.',
    hint: 'Name the panels as the gores, in the same order; a gore that spans two panels is two gores, and a panel more than the gores needs a gore of its own. Panels that run on into the skirt without a waist seam (a princess gown) are not drafted.',
  }),
);

export const bonesEndTwice = error('bones-end-twice', () => ({
  message: '`bones-end` is given beside the bones of a drafted bodice.',
  why: 'Where they end is known from `bones.clear`, and the two need not agree.',
  hint: 'Take it out.',
}));

export const heightMissing = error('height-missing', (level: string) => ({
  message: `Nothing says how high the ${quoted(level)} lies.`,
  why: 'Only the waist itself has no height.',
  hint: 'Add `above:` or `below:` with its distance from the waist, along the body.',
}));

export const heightTwice = error('height-twice', (level: string) => ({
  message: `The ${quoted(level)} is both above and below the waist.`,
  why: 'It can be measured at one height only.',
  hint: 'Keep `above` or `below`.',
}));

export const heightOfWaist = error('height-of-waist', () => ({
  message: 'The waist has a height above or below itself.',
  why: 'All heights count from it.',
  hint: 'Take the height out, or give the level another name.',
}));

export const gapMissing = error('gap-missing', (usual: string) => ({
  message: 'The bodice is laced, and nothing says how wide it gapes.',
  why: 'The panels are narrower by it.',
  hint: `Add \`gap:\`, commonly ${usual}; 0 where its edges meet.`,
}));

export const onlyForLacing = error('only-for-lacing', (key: string, kind: string) => ({
  message: `${quoted(key)} is given for a closing by ${quoted(kind)}.`,
  why: 'Only lacing has it, so it would not be used.',
  hint: 'Take it out, or write `kind: lacing`.',
}));

export const sideOfCentre = error('closing-side-of-centre', (station: string) => ({
  message: `${quoted(station)} lies on neither side of her.`,
  why: 'A side is told only of a seam that both sides have.',
  hint: 'Take `side` out.',
}));

export const noDraftedEdge = error('no-drafted-edge', (what: string) => ({
  message: `${what} is sewn to the upper edge, and no bodice is drafted.`,
  why: 'Nothing says how long that edge is, or where its stations lie.',
  hint: 'Draft the bodice (`bodice.draft`), or give a cape `sewn-to` in place of `from` and `to`.',
}));

export const capeEdgeUnclear = error('cape-edge-unclear', (cape: string) => ({
  message: `The cape ${quoted(cape)} wants either \`from\` and \`to\`, or \`sewn-to\`.`,
  why: 'Its inner edge is as long as what it is sewn to and what hangs over the arm.',
  hint: 'Name two stations of the upper edge, or give the length that it is sewn to on one side.',
}));

export const capeShapeUnclear = error('cape-shape-unclear', (cape: string) => ({
  message: `The cape ${quoted(cape)} wants either \`angle\` or \`fullness\`.`,
  why: 'It is cut as part of a ring, or gathered from a straight piece.',
  hint: 'Keep one, such as `angle: 180deg` or `fullness: 2`.',
}));

export const facingOfOtherEdge = error('facing-of-other-edge', (finish: string) => ({
  message: `The bodice has a facing, and its upper edge is ${finish}.`,
  why: 'A facing is sewn to the edge that it faces; this one would be cut for nothing.',
  hint: 'Write `upper-finish: faced`, or take `facing` out.',
}));

export const panelsWithoutGores = error('panels-without-gores', () => ({
  message: 'A bodice is drafted, and no gores are sewn to it.',
  why: 'Panels end at the waist seam: a princess gown, whose panels run on into the skirt, is not drafted.',
  hint: 'Give a gore of its name to every panel, and `sweep` for the hem; sewn at a waist seam, the seams run through from bust to hem all the same.',
}));
