import type { Diagnostic, Level, Span } from './diagnostic.ts';
import { finding } from './finding.ts';
import { quoted } from './safe-text.ts';

/** Figures that can be read and are likely slips of the finger: held against their neighbours, bodies and cloths. */

/** The end of a sentence, and what was meant where that is plain. */
const asked = (meant: string | undefined): string =>
  meant === undefined ? '.' : `. Did you mean ${quoted(meant)}?`;

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
): Diagnostic =>
  finding('unusual-figure', level, span, {
    message: `${quoted(at.label)} is ${at.figure}; ${at.of} commonly lies between ${at.least} and ${at.most}${asked(at.meant)}`,
    why: 'A digit too many or a decimal that moved is cut as it stands.',
    hint: 'Look at it again; where it is meant, leave it.',
  });

export const namedSeamNarrower = (span: Span, seam: string, width: string, others: string): Diagnostic =>
  finding('named-seam-narrower', 'note', span, {
    message: `The allowance at ${quoted(seam)} is ${width}, less than the ${others} of the other seams.`,
    why: 'A seam is named to leave more: to let out, or for a zip.',
    hint: 'Look at it again; where it is meant, leave it.',
  });

interface Doubt {
  readonly meant: string | undefined;
}

export const lengthUnlikeNeighbours = (
  span: Span,
  level: Level,
  at: Doubt & { readonly station: string; readonly length: string; readonly expected: string },
): Diagnostic => {
  const message = `The length at ${quoted(at.station)} is ${at.length}; those beside it make it about ${at.expected}${asked(at.meant)}`;
  const hint = 'Measure this station again, and those on both sides.';
  return level === 'error'
    ? finding('length-no-hem-has', level, span, {
        message,
        why: 'No hem rises or falls so far from one seam to the next: its gores would run to many metres, or come to nothing.',
        hint,
      })
    : finding('length-unlike-neighbours', level, span, {
        message,
        why: 'The hem would rise or fall there, and the gores on both sides with it.',
        hint,
      });
};

export const goreUnlikeNeighbours = (
  span: Span,
  level: Level,
  at: Doubt & {
    readonly gore: string;
    readonly key: string;
    readonly degrees: string;
    readonly beside: readonly string[];
  },
): Diagnostic =>
  finding('gore-unlike-neighbours', level, span, {
    message: `${quoted(at.key)} lets the gore ${quoted(at.gore)} flare by ${at.degrees}, beside ${at.beside.join(' and ')}${asked(at.meant)}`,
    why: 'A gore that flares far more or less than those beside it hangs in a fold of its own, or pulls flat.',
    hint: 'Look at its width again, and at `hem-width-at`; where it is meant, leave it.',
  });

export const hemWidthFarFromHem = (
  span: Span,
  level: Level,
  at: Doubt & { readonly at: string; readonly hem: string },
): Diagnostic =>
  finding('hem-width-far-from-hem', level, span, {
    message: `The widths hold ${at.at} below the waist, and the hem lies ${at.hem} below it${asked(at.meant)}`,
    why: 'From there the gores run on straight: every hem comes out wider or narrower than the width that was written.',
    hint: 'Give the distance at which the hem widths were measured, commonly that of the level hem.',
  });

export const moreThanCircle = (
  span: Span,
  level: Level,
  at: Doubt & { readonly hem: string; readonly circles: string },
): Diagnostic =>
  finding('more-than-a-circle', level, span, {
    message: `The hem comes to ${at.hem} all round, ${at.circles} full circles${asked(at.meant)}`,
    why: 'Cloth fuller than a circle hangs in deep folds, and takes many widths of cloth.',
    hint: 'Look at `sweep`, `hem` or `flare` of the gores, and `hem-width-at`.',
  });

export const hemNarrowerThanWaist = (
  span: Span,
  level: Level,
  at: Doubt & { readonly hem: string; readonly waist: string },
): Diagnostic =>
  finding('hem-narrower-than-waist', level, span, {
    message: `The hem comes to ${at.hem} all round, and the waist seam is ${at.waist}${asked(at.meant)}`,
    why: 'She could not walk in it, nor get into it.',
    hint: 'Look at `sweep`, `hem` or `flare` of the gores, and `hem-width-at`.',
  });

export const unitsSlipped = (
  span: Span,
  given: string,
  meant: string,
  waist: string,
  length: string,
): Diagnostic =>
  finding('units-slipped', 'warning', span, {
    message: `In ${quoted(given)} the waist seam is ${waist} and the skirt ${length} long. Did you mean ${quoted(`units: ${meant}`)}?`,
    why: 'Every bare number of the file is read in this unit.',
    hint: 'Look at `units`, or give these measures a unit of their own.',
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
): Diagnostic =>
  finding('train-unlike-lengths', level, span, {
    message: `The train is ${at.onFloor} on the floor, but the length of ${at.length} at ${quoted(at.station)} leaves ${at.found}${asked(at.meant)}`,
    why: 'The gores are cut to the finished lengths, while papers and bustle speak of the other.',
    hint: 'Correct `on-floor`, or the lengths of the train.',
  });

export const trainFallsBack = (
  span: Span,
  at: Doubt & { readonly station: string; readonly length: string },
): Diagnostic =>
  finding('train-falls-back', 'warning', span, {
    message: `In the train the length at ${quoted(at.station)} is ${at.length}, out of order with those beside it${asked(at.meant)}`,
    why: 'A train grows from where it begins to where it is longest; here its hem would rise again on the way.',
    hint: 'Measure this station again, or begin the train elsewhere.',
  });

export const unlikeWaist = (
  span: Span,
  level: Level,
  at: Doubt & { readonly label: string; readonly figure: string; readonly waist: string },
): Diagnostic =>
  finding('unlike-the-waist', level, span, {
    message: `${quoted(at.label)} is ${at.figure} with a waist seam of ${at.waist}${asked(at.meant)}`,
    why: 'Hardly a body has both, and what passes over it is reckoned from them.',
    hint: 'Measure it again, over what she will wear.',
  });

export const unlikeHerBody = (
  span: Span,
  level: Level,
  at: Doubt & {
    readonly label: string;
    readonly figure: string;
    readonly least: string;
    readonly most: string;
  },
): Diagnostic =>
  finding('unlike-her-body', level, span, {
    message: `${quoted(at.label)} is ${at.figure}; beside her other measures it commonly lies between ${at.least} and ${at.most}${asked(at.meant)}`,
    why: 'The panels are drafted from it: what slipped here is cut into every one of them.',
    hint: 'Measure it again, over what she will wear; a body may be unlike others.',
  });

export const tiersUnlikeSkirt = (
  span: Span,
  level: Level,
  at: Doubt & { readonly deep: string; readonly skirt: string },
): Diagnostic =>
  finding('tiers-unlike-skirt', level, span, {
    message: `The tiers are ${at.deep} deep together, and the skirt is ${at.skirt} long${asked(at.meant)}`,
    why: 'They would show below the hem, or end far above it.',
    hint: 'Look at `depths`: the finished depth of one tier.',
  });

export const hoopUnlikeGirths = (
  span: Span,
  level: Level,
  at: Doubt & { readonly hoop: string; readonly girth: string },
): Diagnostic =>
  finding('hoop-unlike-girths', level, span, {
    message: `The lowest hoop is ${at.hoop} round, and the lowest girth of the petticoat ${at.girth}${asked(at.meant)}`,
    why: 'They are measured at nearly one place.',
    hint: 'Measure both again.',
  });

export const oddPartOfLength = (
  span: Span,
  at: Doubt & {
    readonly label: string;
    readonly figure: string;
    readonly what: string;
    readonly skirt: string;
  },
): Diagnostic =>
  finding('odd-part-of-length', 'note', span, {
    message: `${quoted(at.label)} puts ${at.what} at ${at.figure}, on a skirt ${at.skirt} long${asked(at.meant)}`,
    why: 'It would be cut as it stands.',
    hint: 'Look at it again; where it is meant, leave it.',
  });

export const priceOfNothing = (span: Span, label: string): Diagnostic =>
  finding('price-of-nothing', 'warning', span, {
    message: `${quoted(label)} is 0.`,
    why: 'It goes into the quote for nothing.',
    hint: 'Write what it costs, or take the line out where it costs nothing.',
  });

export const tooLargeToDraft = (
  span: Span,
  at: { readonly hem: string; readonly longest: string; readonly sheets: string },
): Diagnostic =>
  finding('too-large-to-draft', 'error', span, {
    message: `These gores are up to ${at.longest} long and ${at.hem} round the hem: some ${at.sheets} sheets of paper.`,
    why: 'No gown is so large; it is most likely a digit too many, or a wrong `units`.',
    hint: 'Look at the lengths, the widths and `hem-width-at`.',
  });

export const oddStep = (span: Span, label: string, step: string): Diagnostic =>
  finding('odd-step', 'note', span, {
    message: `${quoted(label)} is ${step}, which hardly a shop sells by.`,
    why: 'What to buy is rounded up to whole steps of it.',
    hint: 'Shops sell by `0.1m`, `0.25m` or `0.5m`, or `1/8yd`; leave it out where any length is sold.',
  });

export const pointNotLowest = (
  span: Span,
  at: Doubt & { readonly point: string; readonly drop: string; readonly other: string },
): Diagnostic =>
  finding('point-not-lowest', 'note', span, {
    message: `The bodice comes to a point at ${quoted(at.point)}, ${at.drop} down, and lies ${at.other} down elsewhere${asked(at.meant)}`,
    why: 'A point is the lowest place of its edge; this one would be cut as a notch.',
    hint: 'Measure the drops again, or take `point` out.',
  });

export const tierStepsDiffer = (span: Span, least: string, most: string): Diagnostic =>
  finding('tier-steps-differ', 'note', span, {
    message: `This tier is ${most} times the edge above it, and another only ${least} times.`,
    why: 'Tiers are gathered about as full as each other, commonly 1.5 to 2.5 to one.',
    hint: 'Look at the lengths of the tiers again; where it is meant, leave it.',
  });

export const girthBelowHem = (
  span: Span,
  level: Level,
  at: Doubt & { readonly down: string; readonly hem: string },
): Diagnostic =>
  finding('girth-below-hem', level, span, {
    message: `The lowest girth lies ${at.down} below the waist, and the hem ${at.hem}${asked(at.meant)}`,
    why: 'The skirt is shaped between its girths: one far below the hem makes the whole of it too narrow or too wide.',
    hint: 'Look at `down`; give the last girth at the level of the hem.',
  });

export const godetUnlikeOthers = (
  span: Span,
  at: Doubt & { readonly width: string; readonly others: readonly string[] },
): Diagnostic =>
  finding('godet-unlike-others', 'note', span, {
    message: `This godet is ${at.width} wide at the hem, beside ${at.others.join(' and ')}${asked(at.meant)}`,
    why: 'It would be cut as it stands.',
    hint: 'Look at it again; where it is meant, leave it.',
  });

export const edgeLeansOut = (span: Span, gore: string, angle: string, next: string): Diagnostic =>
  finding('edge-leans-out', 'note', span, {
    message: `One edge of the gore ${quoted(gore)} leans out by ${angle}, and no other edge by more than ${next}.`,
    why: 'It would be far more on the bias than the edge that it is sewn to, and drop more.',
    hint: 'Look at its `flare` again; where it is meant, leave it.',
  });

export const goreNarrowerThanTop = (
  span: Span,
  at: Doubt & { readonly gore: string; readonly hem: string; readonly top: string },
): Diagnostic =>
  finding('gore-narrower-than-top', 'note', span, {
    message: `The gore ${quoted(at.gore)} is ${at.hem} wide at the hem and ${at.top} at the top, and its neighbours grow wider${asked(at.meant)}`,
    why: 'It would pull the skirt in at one place.',
    hint: 'Look at its `hem` again; where it is meant, leave it.',
  });

export const tightAtHip = (
  span: Span,
  level: Level,
  at: { readonly wide: string; readonly level: string; readonly hip: string },
): Diagnostic =>
  finding('tight-at-hip', level, span, {
    message: `${at.level} below the waist the gores are ${at.wide} round, and her hip is ${at.hip}.`,
    why: 'The skirt would not pass her hip, or ride up to where it does.',
    hint: 'Look at the widths of the gores, at `sweep` and `hem-width-at`, and at `hip`.',
  });

export const goreMoreThanHalfCircle = (span: Span, gore: string, angle: string): Diagnostic =>
  finding('gore-more-than-half-circle', 'note', span, {
    message: `The gore ${quoted(gore)} flares by ${angle}, more than half a circle.`,
    why: 'Such a piece takes a great deal of cloth, and most of its hem is on the bias.',
    hint: 'Look at its `flare` or `hem` again; where it is meant, leave it.',
  });

export const girthFallsIn = (
  span: Span,
  level: Level,
  at: Doubt & { readonly girth: string; readonly above: string },
): Diagnostic =>
  finding('girth-falls-in', level, span, {
    message: `This girth is ${at.girth}, and the one above it ${at.above}${asked(at.meant)}`,
    why: 'The skirt would be shaped in there by as much, and shorten her step.',
    hint: 'Measure both again; where it is meant, leave it.',
  });

export const flounceBelowHem = (
  span: Span,
  at: Doubt & { readonly depth: string; readonly below: string },
): Diagnostic =>
  finding('flounce-below-hem', 'note', span, {
    message: `This flounce is ${at.depth} deep and hangs ${at.below} below the hem that it is sewn on above${asked(at.meant)}`,
    why: 'It would be the longest part of the skirt, where the lengths speak of the hem.',
    hint: 'Look at `depth` and `above-hem`; where it is meant, leave it.',
  });
