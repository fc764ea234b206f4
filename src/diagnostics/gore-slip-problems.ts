import type { Diagnostic, Level, Span } from './diagnostic.ts';
import { finding } from './finding.ts';
import { quoted } from './safe-text.ts';
import { asked, type Doubt } from './slip-words.ts';

/** What widths, hems and flares of gores say against one another. */

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

export const goreMoreThanHalfCircle = (span: Span, gore: string, angle: string): Diagnostic =>
  finding('gore-more-than-half-circle', 'note', span, {
    message: `The gore ${quoted(gore)} flares by ${angle}, more than half a circle.`,
    why: 'Such a piece takes a great deal of cloth, and most of its hem is on the bias.',
    hint: 'Look at its `flare` or `hem` again; where it is meant, leave it.',
  });
