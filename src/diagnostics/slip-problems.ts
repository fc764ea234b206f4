import type { Diagnostic, Level, Span } from './diagnostic.ts';
import { finding } from './finding.ts';
import { quoted } from './safe-text.ts';
import { asked, type Doubt } from './slip-words.ts';

/** Figures that can be read and are likely slips of the finger: held against their neighbours and what is usual. */

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

export const godetUnlikeOthers = (
  span: Span,
  at: Doubt & { readonly width: string; readonly others: readonly string[] },
): Diagnostic =>
  finding('godet-unlike-others', 'note', span, {
    message: `This godet is ${at.width} wide at the hem, beside ${at.others.join(' and ')}${asked(at.meant)}`,
    why: 'It would be cut as it stands.',
    hint: 'Look at it again; where it is meant, leave it.',
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
