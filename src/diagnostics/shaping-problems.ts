import type { Span } from './diagnostic.ts';
import { error, listed, note, warning } from './finding.ts';
import { lineAndColumn } from './place.ts';
import { quoted } from './safe-text.ts';

/** Problems of what shapes a skirt beside its gores: petticoat, shares, fullness, flounces, tiers, overskirts. */

export const oneGirth = error('one-girth', () => ({
  message: 'The petticoat has fewer than two girths.',
  why: 'Its shape is drawn between levels.',
  hint: 'Give the girth at the waist (`down: 0`) and at one level below it at least.',
}));

export const girthsOutOfOrder = error('girths-out-of-order', (down: string, above: string) => ({
  message: `This girth is ${down} down, and the one before it ${above}.`,
  why: 'The levels are read from the waist downwards.',
  hint: 'Put the girths in order, each level once.',
}));

export const girthsTooFarOut = warning('girths-too-far-out', (apart: string) => ({
  message: `This girth lies farther out than the one above it than ${apart} of cloth can reach.`,
  why: 'Along the cloth from one hoop to the next is at least as far as the difference of their radii.',
  hint: 'Look at both girths; where the levels are heights, write `measured: vertical`; cloth fuller than a circle hangs in folds.',
}));

export const noGirthAtWaist = error('no-girth-at-waist', () => ({
  message: 'The first girth is not at the waist.',
  why: 'The shape between the waist and this level would be a guess.',
  hint: 'Add a girth with `down: 0` before it.',
}));

export const girthUnderWaist = error('girth-under-waist', (girth: string, waist: string) => ({
  message: `The petticoat is ${girth} round at the waist and the waist seam ${waist}.`,
  why: 'The skirt takes its shape from the girths and would be too small at the top.',
  hint: 'Give the girth at `down: 0` as the waist seam is sewn.',
}));

export const shareWithoutGirths = error('share-without-girths', () => ({
  message: 'A gore has a share, and there are no `girths` to share.',
  why: 'It is not used, and the gore could come out wider or narrower than was meant.',
  hint: 'Add `petticoat.girths`, or take the shares out.',
}));

export const sharesNotAll = error('shares-not-all', (left: readonly string[]) => ({
  message: `Some gores have a share and ${left.map(quoted).join(', ')} ${left.length === 1 ? 'has' : 'have'} none.`,
  why: 'Shares by top and shares by hand do not add up to the girth.',
  hint: 'Give every gore its share, or none.',
}));

export const sharesNotWhole = error('shares-not-whole', (whole: string) => ({
  message: `The shares of the gores make ${whole} of the girth all round.`,
  why: 'The skirt would be tighter or looser than the petticoat.',
  hint: 'Let all gores of the skirt add up to 100 %; one that is not on the fold is in it twice, a half on the fold too.',
}));

export const nameTaken = error('name-taken', (kind: string, name: string, earlier: Span) => ({
  message: `${quoted(name)} names this ${kind} and something else on line ${lineAndColumn(earlier).line}.`,
  why: 'Pieces and lays are told apart by name.',
  hint: 'Give one of them another name.',
}));

export const noTiers = error('no-tiers', () => ({
  message: 'There are no tiers in the list.',
  why: 'Nothing would be cut.',
  hint: 'List how long each tier is all round, from the top, such as [160, 320, 640].',
}));

export const depthsOfOtherTiers = error('depths-of-other-tiers', (depths: number, tiers: number) => ({
  message: `Depths are listed for ${depths} tiers; of tiers there are ${tiers}.`,
  why: 'One depth holds for one tier.',
  hint: 'List a depth for each tier, or give one for all.',
}));

export const tierShorterThanEdge = error('tier-shorter-than-edge', (tier: string, edge: string) => ({
  message: `A tier of ${tier} is to be gathered to an edge of ${edge}.`,
  why: 'It does not reach round.',
  hint: 'Let each tier be longer than the one above it; net is commonly gathered two or three to one.',
}));

export const childsTrain = note('no-quick-release', (waist: string) => ({
  message: `A waist of ${waist} may be a child's, and nothing says that the overskirt comes off at one pull.`,
  why: "A train that is caught must come off; the production's risk assessment and the country's product-safety regulator decide.",
  hint: 'Write `quick-release: true` and fasten it so, or `quick-release: false` where she is grown up.',
}));

export const foldAtOuterEdge = error('fold-at-outer-edge', (which: 'first' | 'last') => ({
  message: `The ${which} gore of an overskirt is on the fold.`,
  why: 'It lies at a free edge, which is finished and not folded.',
  hint: 'Give the gore whole, or put the one on the fold last, at the centre back.',
}));

export const overskirtWithoutSymmetry = error('overskirt-without-symmetry', () => ({
  message: 'An overskirt is fastened to a skirt whose sides differ.',
  why: 'It is given as one half, from a station to the centre back, and mirrored.',
  hint: 'Write it as a spec of its own with `symmetry: none`.',
}));

export const overskirtBackwards = error('overskirt-backwards', (from: string, to: string) => ({
  message: `The overskirt goes from ${quoted(from)} to ${quoted(to)}, which does not lie behind it.`,
  why: 'No part of the waist is left for it.',
  hint: 'Let `from` lie nearer to the front than `to`.',
}));

export const overskirtMissesWaist = warning(
  'overskirt-misses-waist',
  (tops: string, waist: string, from: string, to: string) => ({
    message: `The top of the overskirt is ${tops} on the half, and the waist from ${quoted(from)} to ${quoted(to)} ${waist}.`,
    why: 'Its fastenings will not lie at these stations.',
    hint: 'Give the tops what the waist measures there, or mark the fastenings where it ends.',
  }),
);

export const sharesOfOtherLevels = error('shares-of-other-levels', (given: number, levels: number) => ({
  message: `Shares are listed for ${given} levels; girths below the waist there are ${levels}.`,
  why: 'One share holds at one level.',
  hint: 'List a share for each girth below the waist, or give one share for all.',
}));

export const pleatsWithoutDepth = error('pleats-without-depth', () => ({
  message: 'Pleats are asked for without their `depth`.',
  why: 'It decides how many pleats there are and where they are folded.',
  hint: 'Add `depth`, from fold to fold.',
}));

export const gathersWithPleats = error('gathers-with-pleats', (key: string) => ({
  message: `${quoted(key)} is given for gathers.`,
  why: 'Only pleats have one, so it is not used.',
  hint: 'Write `by: pleats`, or take it out.',
}));

export const fittedOverPetticoat = error('fitted-over-petticoat', () => ({
  message: 'The gores are fitted to her body, and over the girths of a petticoat.',
  why: 'They can follow one of the two only.',
  hint: 'Take `fitted-to` out, or the girths of the petticoat.',
}));

export const fittedWithoutSweep = error('fitted-without-sweep', () => ({
  message: 'The gores are fitted to her body, and nothing says how full the hem is.',
  why: 'Below that level they run on by `sweep`.',
  hint: 'Add `sweep:` with the full hem all round, and `hem-width-at` under `lengths`.',
}));

export const fittedWithoutBody = error('fitted-without-body', () => ({
  message: 'The gores are fitted to her body, and it is not measured.',
  why: 'Their widths follow its girths.',
  hint: 'Add `body:` with her girths below the waist, such as `{at: hip, below: 20, girth: 99}`.',
}));

export const fittedToNoLevel = error('fitted-to-no-level', (level: string, below: readonly string[]) => ({
  message: `The gores are fitted to ${quoted(level)}, and no girth of that name is measured below the waist.`,
  why: 'They follow her girths from the waist down to it.',
  hint:
    below.length === 0
      ? 'Add it under `body.girths` with `below:` and its girth.'
      : `Measured below the waist: ${listed(below)}. Name one of them, or add a girth.`,
}));

export const fittedBelowSweep = error('fitted-below-sweep', (level: string, below: string, at: string) => ({
  message: `The sweep holds ${at} below the waist, and the gores are fitted to ${quoted(level)} at ${below}.`,
  why: 'Between the two they run from the one width to the other.',
  hint: 'Let `hem-width-at` lie further down: at the hem, say.',
}));

export const notOfCapes = error('not-of-capes', (key: string, layer: string) => ({
  message: `${quoted(key)} is given for ${quoted(layer)}, a layer of a cape.`,
  why: 'Capes are cut on the straight thread and have no tucks, so it would not be used.',
  hint: 'Take it out; the notes of the cape can say what is done by hand.',
}));
