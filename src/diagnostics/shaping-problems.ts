import type { Diagnostic, Span } from './diagnostic.ts';
import { lineAndColumn } from './place.ts';
import { problem } from './problem.ts';
import { quoted } from './safe-text.ts';

/** Problems of what shapes a skirt beside its gores: petticoat, shares, fullness, flounces, tiers, overskirts. */

export const oneGirth = (span: Span): Diagnostic => ({
  ...problem('one-girth', span),
  message: 'the petticoat has fewer than two girths',
  why: 'its shape is drawn between levels',
  hint: 'give the girth at the waist (`down: 0`) and at one level below it at least',
});

export const girthsOutOfOrder = (span: Span, down: string, above: string): Diagnostic => ({
  ...problem('girths-out-of-order', span),
  message: `this girth is ${down} down, and the one before it ${above}`,
  why: 'the levels are read from the waist downwards',
  hint: 'put the girths in order, each level once',
});

export const girthsTooFarOut = (span: Span, apart: string): Diagnostic => ({
  ...problem('girths-too-far-out', span, 'warning'),
  message: `this girth lies farther out than the one above it than ${apart} of cloth can reach`,
  why: 'along the cloth from one hoop to the next is at least as far as the difference of their radii',
  hint: 'look at both girths; where the levels are heights, write `measured: vertical`; cloth fuller than a circle hangs in folds',
});

export const noGirthAtWaist = (span: Span): Diagnostic => ({
  ...problem('no-girth-at-waist', span),
  message: 'the first girth is not at the waist',
  why: 'the shape between the waist and this level would be a guess',
  hint: 'add a girth with `down: 0` before it',
});

export const girthUnderWaist = (span: Span, girth: string, waist: string): Diagnostic => ({
  ...problem('girth-under-waist', span),
  message: `the petticoat is ${girth} round at the waist and the waist seam ${waist}`,
  why: 'the skirt takes its shape from the girths and would be too small at the top',
  hint: 'give the girth at `down: 0` as the waist seam is sewn',
});

export const shareWithoutGirths = (span: Span): Diagnostic => ({
  ...problem('share-without-girths', span),
  message: 'a gore has a share, and there are no `girths` to share',
  why: 'it is not used, and the gore could come out wider or narrower than was meant',
  hint: 'add `petticoat.girths`, or take the shares out',
});

export const sharesNotAll = (span: Span, left: readonly string[]): Diagnostic => ({
  ...problem('shares-not-all', span),
  message: `some gores have a share and ${left.map(quoted).join(', ')} ${left.length === 1 ? 'has' : 'have'} none`,
  why: 'shares by top and shares by hand do not add up to the girth',
  hint: 'give every gore its share, or none',
});

export const sharesNotWhole = (span: Span, whole: string): Diagnostic => ({
  ...problem('shares-not-whole', span),
  message: `the shares of the gores make ${whole} of the girth all round`,
  why: 'the skirt would be tighter or looser than the petticoat',
  hint: 'let all gores of the skirt add up to 100%; one that is not on the fold is in it twice, a half on the fold too',
});

export const nameTaken = (span: Span, kind: string, name: string, earlier: Span): Diagnostic => ({
  ...problem('name-taken', span),
  message: `${quoted(name)} names this ${kind} and something else on line ${lineAndColumn(earlier).line}`,
  why: 'pieces and lays are told apart by name',
  hint: 'give one of them another name',
});

export const noTiers = (span: Span): Diagnostic => ({
  ...problem('no-tiers', span),
  message: 'there are no tiers in the list',
  why: 'nothing would be cut',
  hint: 'list how long each tier is all round, from the top, such as [160, 320, 640]',
});

export const depthsOfOtherTiers = (span: Span, depths: number, tiers: number): Diagnostic => ({
  ...problem('depths-of-other-tiers', span),
  message: `depths are listed for ${depths} tiers; of tiers there are ${tiers}`,
  why: 'one depth holds for one tier',
  hint: 'list a depth for each tier, or give one for all',
});

export const tierShorterThanEdge = (span: Span, tier: string, edge: string): Diagnostic => ({
  ...problem('tier-shorter-than-edge', span),
  message: `a tier of ${tier} is to be gathered to an edge of ${edge}`,
  why: 'it does not reach round',
  hint: 'let each tier be longer than the one above it; net is commonly gathered two or three to one',
});

export const childsTrain = (span: Span, waist: string): Diagnostic => ({
  ...problem('no-quick-release', span, 'note'),
  message: `a waist of ${waist} may be a child's, and nothing says that the overskirt comes off at one pull`,
  why: "a train that is caught must come off; the production's risk assessment and the country's product-safety regulator decide",
  hint: 'write `quick-release: true` and fasten it so, or `quick-release: false` where she is grown up',
});

export const foldAtOuterEdge = (span: Span, which: 'first' | 'last'): Diagnostic => ({
  ...problem('fold-at-outer-edge', span),
  message: `the ${which} gore of an overskirt is on the fold`,
  why: 'it lies at a free edge, which is finished and not folded',
  hint: 'give the gore whole, or put the one on the fold last, at the centre back',
});

export const overskirtWithoutSymmetry = (span: Span): Diagnostic => ({
  ...problem('overskirt-without-symmetry', span),
  message: 'an overskirt is fastened to a skirt whose sides differ',
  why: 'it is given as one half, from a station to the centre back, and mirrored',
  hint: 'write it as a spec of its own with `symmetry: none`',
});

export const overskirtBackwards = (span: Span, from: string, to: string): Diagnostic => ({
  ...problem('overskirt-backwards', span),
  message: `the overskirt goes from ${quoted(from)} to ${quoted(to)}, which does not lie behind it`,
  why: 'no part of the waist is left for it',
  hint: 'let `from` lie nearer to the front than `to`',
});

export const overskirtMissesWaist = (
  span: Span,
  tops: string,
  waist: string,
  from: string,
  to: string,
): Diagnostic => ({
  ...problem('overskirt-misses-waist', span, 'warning'),
  message: `the top of the overskirt is ${tops} on the half, and the waist from ${quoted(from)} to ${quoted(to)} ${waist}`,
  why: 'its fastenings will not lie at these stations',
  hint: 'give the tops what the waist measures there, or mark the fastenings where it ends',
});

export const sharesOfOtherLevels = (span: Span, given: number, levels: number): Diagnostic => ({
  ...problem('shares-of-other-levels', span),
  message: `shares are listed for ${given} levels; girths below the waist there are ${levels}`,
  why: 'one share holds at one level',
  hint: 'list a share for each girth below the waist, or give one share for all',
});

export const pleatsWithoutDepth = (span: Span): Diagnostic => ({
  ...problem('pleats-without-depth', span),
  message: 'pleats are asked for without their `depth`',
  why: 'it decides how many pleats there are and where they are folded',
  hint: 'add `depth`, from fold to fold',
});

export const gathersWithPleats = (span: Span, key: string): Diagnostic => ({
  ...problem('gathers-with-pleats', span),
  message: `${quoted(key)} is given for gathers`,
  why: 'only pleats have one, so it is not used',
  hint: 'write `by: pleats`, or take it out',
});
