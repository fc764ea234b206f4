import type { Diagnostic, Span } from './diagnostic.ts';
import { quoted } from './plain-text.ts';
import { listed, problem } from './problem.ts';

/** Problems of the body, of a bodice that is drafted over it, and of what is sewn to its upper edge. */

export const edgeTwice = (span: Span, key: string): Diagnostic => ({
  ...problem('edge-twice', span),
  message: `the bodice is drafted, and ${quoted(key)} is typed beside it`,
  why: 'the edge that the skirt is sewn to would have two lengths',
  hint: 'take it out: the draft gives each panel its lower edge, and the waist seam is their sum',
});

export const draftWithoutBody = (span: Span): Diagnostic => ({
  ...problem('draft-without-body', span),
  message: 'a bodice is drafted, and the spec has no `body`',
  why: 'its panels take their widths from her girths',
  hint: 'add `body:` with `girths` at the waist and above it, and below it as far as the edge drops',
});

export const draftWithoutSymmetry = (span: Span): Diagnostic => ({
  ...problem('draft-without-symmetry', span),
  message: 'a bodice is drafted for a gown with `symmetry: none`',
  why: 'its panels are one half, and the gores here run all the way round',
  hint: 'take `symmetry` out and let `left` in the girths, or a fitting, say where her halves differ; or give `waist-seam` and `panels`',
});

export const panelsUnlikeGores = (
  span: Span,
  panels: readonly string[],
  gores: readonly string[],
): Diagnostic => ({
  ...problem('panels-unlike-gores', span),
  message: `the panels are ${listed(panels)} and the gores ${listed(gores)}`,
  why: 'each gore is sewn to the panel of its name, and their seams meet',
  hint: 'name the panels as the gores, in the same order; a gore that spans two panels is two gores',
});

export const bonesEndTwice = (span: Span): Diagnostic => ({
  ...problem('bones-end-twice', span),
  message: '`bones-end` is given beside the bones of a drafted bodice',
  why: 'where they end is known from `bones.clear`, and the two need not agree',
  hint: 'take it out',
});

export const heightMissing = (span: Span, level: string): Diagnostic => ({
  ...problem('height-missing', span),
  message: `nothing says how high the ${quoted(level)} lies`,
  why: 'only the waist itself has no height',
  hint: 'add `above:` or `below:` with its distance from the waist, along the body',
});

export const heightTwice = (span: Span, level: string): Diagnostic => ({
  ...problem('height-twice', span),
  message: `the ${quoted(level)} is both above and below the waist`,
  why: 'it can be measured at one height only',
  hint: 'keep `above` or `below`',
});

export const heightOfWaist = (span: Span): Diagnostic => ({
  ...problem('height-of-waist', span),
  message: 'the waist has a height above or below itself',
  why: 'all heights count from it',
  hint: 'take the height out, or give the level another name',
});

export const gapMissing = (span: Span): Diagnostic => ({
  ...problem('gap-missing', span),
  message: 'the bodice is laced, and nothing says how wide it gapes',
  why: 'the panels are narrower by it',
  hint: 'add `gap:`, commonly 5 cm; 0 where its edges meet',
});

export const onlyForLacing = (span: Span, key: string, kind: string): Diagnostic => ({
  ...problem('only-for-lacing', span),
  message: `${quoted(key)} is given for a closing by ${quoted(kind)}`,
  why: 'only lacing has it, so it would not be used',
  hint: 'take it out, or write `kind: lacing`',
});

export const sideOfCentre = (span: Span, station: string): Diagnostic => ({
  ...problem('closing-side-of-centre', span),
  message: `${quoted(station)} lies on neither side of her`,
  why: 'a side is told only of a seam that both sides have',
  hint: 'take `side` out',
});

export const noDraftedEdge = (span: Span, what: string): Diagnostic => ({
  ...problem('no-drafted-edge', span),
  message: `${what} is sewn to the upper edge, and no bodice is drafted`,
  why: 'nothing says how long that edge is, or where its stations lie',
  hint: 'draft the bodice (`bodice.draft`), or give a cape `sewn-to` in place of `from` and `to`',
});

export const capeEdgeUnclear = (span: Span, cape: string): Diagnostic => ({
  ...problem('cape-edge-unclear', span),
  message: `the cape ${quoted(cape)} wants either \`from\` and \`to\`, or \`sewn-to\``,
  why: 'its inner edge is as long as what it is sewn to and what hangs over the arm',
  hint: 'name two stations of the upper edge, or give the length that it is sewn to on one side',
});

export const capeShapeUnclear = (span: Span, cape: string): Diagnostic => ({
  ...problem('cape-shape-unclear', span),
  message: `the cape ${quoted(cape)} wants either \`angle\` or \`fullness\``,
  why: 'it is cut as part of a ring, or gathered from a straight piece',
  hint: 'keep one, such as `angle: 180deg` or `fullness: 2`',
});
