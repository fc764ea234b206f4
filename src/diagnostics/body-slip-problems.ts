import type { Diagnostic, Level, Span } from './diagnostic.ts';
import { finding } from './finding.ts';
import { quoted } from './safe-text.ts';
import { asked, type Doubt } from './slip-words.ts';

/** What does not go with her body, or with the bodice on it. */

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

export const pointNotLowest = (
  span: Span,
  at: Doubt & { readonly point: string; readonly drop: string; readonly other: string },
): Diagnostic =>
  finding('point-not-lowest', 'note', span, {
    message: `The bodice comes to a point at ${quoted(at.point)}, ${at.drop} down, and lies ${at.other} down elsewhere${asked(at.meant)}`,
    why: 'A point is the lowest place of its edge; this one would be cut as a notch.',
    hint: 'Measure the drops again, or take `point` out.',
  });
