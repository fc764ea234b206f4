import type { Diagnostic, Level, Span } from './diagnostic.ts';
import { finding } from './finding.ts';
import { asked, type Doubt } from './slip-words.ts';

/** What is worn underneath and does not go with the skirt. */

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
