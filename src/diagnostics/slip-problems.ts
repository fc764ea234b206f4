import type { Diagnostic, Level, Span } from './diagnostic.ts';
import { quoted } from './plain-text.ts';
import { problem } from './problem.ts';

/** Figures that can be read and are likely slips of the finger: held against their neighbours, bodies and cloths. */

const asked = (meant: string | undefined): string => (meant === undefined ? '' : `; did you mean ${meant}?`);

export const unusualFigure = (
  span: Span,
  level: Level,
  at: {
    readonly label: string;
    readonly figure: string;
    readonly of: string;
    readonly least: string;
    readonly most: string;
    readonly meant: string | undefined;
  },
): Diagnostic => ({
  ...problem('unusual-figure', span, level),
  message: `${quoted(at.label)} is ${at.figure}; ${at.of} commonly lies between ${at.least} and ${at.most}${asked(at.meant)}`,
  why: 'a digit too many or a decimal that moved is cut as it stands',
  hint: 'look at it again; where it is meant, leave it',
});

export const namedSeamNarrower = (span: Span, seam: string, width: string, others: string): Diagnostic => ({
  ...problem('named-seam-narrower', span, 'note'),
  message: `the allowance at ${quoted(seam)} is ${width}, less than the ${others} of the other seams`,
  why: 'a seam is named to leave more: to let out, or for a zip',
  hint: 'look at it again; where it is meant, leave it',
});

interface Doubt {
  readonly meant: string | undefined;
}

export const lengthUnlikeNeighbours = (
  span: Span,
  level: Level,
  at: Doubt & { readonly station: string; readonly length: string; readonly expected: string },
): Diagnostic => ({
  ...problem(level === 'error' ? 'length-no-hem-has' : 'length-unlike-neighbours', span, level),
  message: `the length at ${quoted(at.station)} is ${at.length}; those beside it make it about ${at.expected}${asked(at.meant)}`,
  why:
    level === 'error'
      ? 'no hem rises or falls so far from one seam to the next: its gores would run to many metres, or come to nothing'
      : 'the hem would rise or fall there, and the gores on both sides with it',
  hint: 'measure this station again, and those on both sides',
});

export const goreUnlikeNeighbours = (
  span: Span,
  level: Level,
  at: Doubt & {
    readonly gore: string;
    readonly key: string;
    readonly degrees: string;
    readonly beside: readonly string[];
  },
): Diagnostic => ({
  ...problem('gore-unlike-neighbours', span, level),
  message: `${quoted(at.key)} lets the gore ${quoted(at.gore)} flare by ${at.degrees}, beside ${at.beside.join(' and ')}${asked(at.meant)}`,
  why: 'a gore that flares far more or less than those beside it hangs in a fold of its own, or pulls flat',
  hint: 'look at its width again, and at `hem-width-at`; where it is meant, leave it',
});

export const hemWidthFarFromHem = (
  span: Span,
  level: Level,
  at: Doubt & { readonly at: string; readonly hem: string },
): Diagnostic => ({
  ...problem('hem-width-far-from-hem', span, level),
  message: `the widths hold ${at.at} below the waist, and the hem lies ${at.hem} below it${asked(at.meant)}`,
  why: 'from there the gores run on straight: every hem comes out wider or narrower than the width that was written',
  hint: 'give the distance at which the hem widths were measured, commonly that of the level hem',
});

export const moreThanCircle = (
  span: Span,
  level: Level,
  at: Doubt & { readonly hem: string; readonly circles: string },
): Diagnostic => ({
  ...problem('more-than-a-circle', span, level),
  message: `the hem comes to ${at.hem} all round, ${at.circles} full circles${asked(at.meant)}`,
  why: 'cloth fuller than a circle hangs in deep folds, and takes many widths of cloth',
  hint: 'look at `sweep`, `hem` or `flare` of the gores, and `hem-width-at`',
});

export const hemNarrowerThanWaist = (
  span: Span,
  level: Level,
  at: Doubt & { readonly hem: string; readonly waist: string },
): Diagnostic => ({
  ...problem('hem-narrower-than-waist', span, level),
  message: `the hem comes to ${at.hem} all round, and the waist seam is ${at.waist}${asked(at.meant)}`,
  why: 'she could not walk in it, nor get into it',
  hint: 'look at `sweep`, `hem` or `flare` of the gores, and `hem-width-at`',
});

export const unitsSlipped = (
  span: Span,
  given: string,
  meant: string,
  waist: string,
  length: string,
): Diagnostic => ({
  ...problem('units-slipped', span, 'warning'),
  message: `in ${quoted(given)} the waist seam is ${waist} and the skirt ${length} long; did you mean \`units: ${meant}\`?`,
  why: 'every bare number of the file is read in this unit',
  hint: 'look at `units`, or give these measures a unit of their own',
});

export const trainUnlikeLengths = (
  span: Span,
  level: Level,
  at: Doubt & {
    readonly onFloor: string;
    readonly found: string;
    readonly station: string;
    readonly length: string;
  },
): Diagnostic => ({
  ...problem('train-unlike-lengths', span, level),
  message: `the train is ${at.onFloor} on the floor, but the length of ${at.length} at ${quoted(at.station)} leaves ${at.found}${asked(at.meant)}`,
  why: 'the gores are cut to the finished lengths, while papers and bustle speak of the other',
  hint: 'correct `on-floor`, or the lengths of the train',
});

export const trainFallsBack = (
  span: Span,
  at: Doubt & { readonly station: string; readonly length: string },
): Diagnostic => ({
  ...problem('train-falls-back', span, 'warning'),
  message: `in the train the length at ${quoted(at.station)} is ${at.length}, out of order with those beside it${asked(at.meant)}`,
  why: 'a train grows from where it begins to where it is longest; here its hem would rise again on the way',
  hint: 'measure this station again, or begin the train elsewhere',
});

export const unlikeWaist = (
  span: Span,
  level: Level,
  at: Doubt & { readonly label: string; readonly figure: string; readonly waist: string },
): Diagnostic => ({
  ...problem('unlike-the-waist', span, level),
  message: `${quoted(at.label)} is ${at.figure} with a waist seam of ${at.waist}${asked(at.meant)}`,
  why: 'hardly a body has both, and what passes over it is reckoned from them',
  hint: 'measure it again, over what she will wear',
});

export const tiersUnlikeSkirt = (
  span: Span,
  level: Level,
  at: Doubt & { readonly deep: string; readonly skirt: string },
): Diagnostic => ({
  ...problem('tiers-unlike-skirt', span, level),
  message: `the tiers are ${at.deep} deep together, and the skirt is ${at.skirt} long${asked(at.meant)}`,
  why: 'they would show below the hem, or end far above it',
  hint: 'look at `depths`: the finished depth of one tier',
});

export const hoopUnlikeGirths = (
  span: Span,
  level: Level,
  at: Doubt & { readonly hoop: string; readonly girth: string },
): Diagnostic => ({
  ...problem('hoop-unlike-girths', span, level),
  message: `the lowest hoop is ${at.hoop} round, and the lowest girth of the petticoat ${at.girth}${asked(at.meant)}`,
  why: 'they are measured at nearly one place',
  hint: 'measure both again',
});

export const oddPartOfLength = (
  span: Span,
  at: Doubt & {
    readonly label: string;
    readonly figure: string;
    readonly what: string;
    readonly skirt: string;
  },
): Diagnostic => ({
  ...problem('odd-part-of-length', span, 'note'),
  message: `${quoted(at.label)} puts ${at.what} at ${at.figure}, on a skirt ${at.skirt} long${asked(at.meant)}`,
  why: 'it would be cut as it stands',
  hint: 'look at it again; where it is meant, leave it',
});

export const priceOfNothing = (span: Span, label: string): Diagnostic => ({
  ...problem('price-of-nothing', span, 'warning'),
  message: `${quoted(label)} is 0`,
  why: 'it goes into the quote for nothing',
  hint: 'write what it costs, or take the line out where it costs nothing',
});

export const tooLargeToDraft = (
  span: Span,
  at: { readonly hem: string; readonly longest: string; readonly sheets: string },
): Diagnostic => ({
  ...problem('too-large-to-draft', span),
  message: `these gores are up to ${at.longest} long and ${at.hem} round the hem: some ${at.sheets} sheets of paper`,
  why: 'no gown is so large; it is most likely a digit too many, or a wrong `units`',
  hint: 'look at the lengths, the widths and `hem-width-at`',
});

export const oddStep = (span: Span, label: string, step: string): Diagnostic => ({
  ...problem('odd-step', span, 'note'),
  message: `${quoted(label)} is ${step}, which hardly a shop sells by`,
  why: 'what to buy is rounded up to whole steps of it',
  hint: 'shops sell by 0.1, 0.25 or 0.5 m, or 1/8 yd; leave it out where any length is sold',
});

export const pointNotLowest = (
  span: Span,
  at: Doubt & { readonly point: string; readonly drop: string; readonly other: string },
): Diagnostic => ({
  ...problem('point-not-lowest', span, 'note'),
  message: `the bodice comes to a point at ${quoted(at.point)}, ${at.drop} down, and lies ${at.other} down elsewhere${asked(at.meant)}`,
  why: 'a point is the lowest place of its edge; this one would be cut as a notch',
  hint: 'measure the drops again, or take `point` out',
});

export const tierStepsDiffer = (span: Span, least: string, most: string): Diagnostic => ({
  ...problem('tier-steps-differ', span, 'note'),
  message: `this tier is ${most} times the edge above it, and another only ${least} times`,
  why: 'tiers are gathered about as full as each other, commonly 1.5 to 2.5 to one',
  hint: 'look at the lengths of the tiers again; where it is meant, leave it',
});

export const girthBelowHem = (
  span: Span,
  level: Level,
  at: Doubt & { readonly down: string; readonly hem: string },
): Diagnostic => ({
  ...problem('girth-below-hem', span, level),
  message: `the lowest girth lies ${at.down} below the waist, and the hem ${at.hem}${asked(at.meant)}`,
  why: 'the skirt is shaped between its girths: one far below the hem makes the whole of it too narrow or too wide',
  hint: 'look at `down`; give the last girth at the level of the hem',
});

export const godetUnlikeOthers = (
  span: Span,
  at: Doubt & { readonly width: string; readonly others: readonly string[] },
): Diagnostic => ({
  ...problem('godet-unlike-others', span, 'note'),
  message: `this godet is ${at.width} wide at the hem, beside ${at.others.join(' and ')}${asked(at.meant)}`,
  why: 'it would be cut as it stands',
  hint: 'look at it again; where it is meant, leave it',
});

export const edgeLeansOut = (span: Span, gore: string, angle: string, next: string): Diagnostic => ({
  ...problem('edge-leans-out', span, 'note'),
  message: `one edge of the gore ${quoted(gore)} leans out by ${angle}, and no other edge by more than ${next}`,
  why: 'it would be far more on the bias than the edge that it is sewn to, and drop more',
  hint: 'look at its `flare` again; where it is meant, leave it',
});

export const goreNarrowerThanTop = (
  span: Span,
  at: Doubt & { readonly gore: string; readonly hem: string; readonly top: string },
): Diagnostic => ({
  ...problem('gore-narrower-than-top', span, 'note'),
  message: `the gore ${quoted(at.gore)} is ${at.hem} wide at the hem and ${at.top} at the top, and its neighbours grow wider${asked(at.meant)}`,
  why: 'it would pull the skirt in at one place',
  hint: 'look at its `hem` again; where it is meant, leave it',
});

export const tightAtHip = (
  span: Span,
  level: Level,
  at: { readonly wide: string; readonly level: string; readonly hip: string },
): Diagnostic => ({
  ...problem('tight-at-hip', span, level),
  message: `${at.level} below the waist the gores are ${at.wide} round, and her hip is ${at.hip}`,
  why: 'the skirt would not pass her hip, or ride up to where it does',
  hint: 'look at the widths of the gores, at `sweep` and `hem-width-at`, and at `hip`',
});

export const goreMoreThanHalfCircle = (span: Span, gore: string, angle: string): Diagnostic => ({
  ...problem('gore-more-than-half-circle', span, 'note'),
  message: `the gore ${quoted(gore)} flares by ${angle}, more than half a circle`,
  why: 'such a piece takes a great deal of cloth, and most of its hem is on the bias',
  hint: 'look at its `flare` or `hem` again; where it is meant, leave it',
});

export const girthFallsIn = (
  span: Span,
  level: Level,
  at: Doubt & { readonly girth: string; readonly above: string },
): Diagnostic => ({
  ...problem('girth-falls-in', span, level),
  message: `this girth is ${at.girth}, and the one above it ${at.above}${asked(at.meant)}`,
  why: 'the skirt would be shaped in there by as much, and shorten her step',
  hint: 'measure both again; where it is meant, leave it',
});

export const flounceBelowHem = (
  span: Span,
  at: Doubt & { readonly depth: string; readonly below: string },
): Diagnostic => ({
  ...problem('flounce-below-hem', span, 'note'),
  message: `this flounce is ${at.depth} deep and hangs ${at.below} below the hem that it is sewn on above${asked(at.meant)}`,
  why: 'it would be the longest part of the skirt, where the lengths speak of the hem',
  hint: 'look at `depth` and `above-hem`; where it is meant, leave it',
});
