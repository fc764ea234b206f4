import type { Diagnostic, Span } from '../diagnostics/diagnostic.ts';
import { problem } from '../diagnostics/problem.ts';

/** What hanging finds. Texts in the arguments are lengths already in the spec's units. */

export const bustledHemOnFloor = (span: Span, beside: string, station: string): Diagnostic => ({
  ...problem('bustled-hem-on-floor', span, 'warning'),
  message: `bustled, the hem lies on the floor ${beside} from ${station}`,
  why: 'the points hold the hem up at their seams alone; between them she treads on it',
  hint: 'a point more there, or lift the points beside it higher; the fitter pins it first',
});

export const hemHangsOtherwise = (
  span: Span,
  at: { station: string; hangs: string; asked: string; why: 'folds' | 'shape' },
): Diagnostic => ({
  ...problem('hem-hangs-otherwise', span, 'note'),
  message: `hung by computation, the hem is ${at.hangs} off the floor near ${at.station}, ${at.asked} was asked`,
  why:
    at.why === 'folds'
      ? 'the cloth is fuller than what it hangs over and falls in folds, which stand out and lift the hem between them'
      : 'the lengths are along the cloth, and it hangs a little otherwise than the tape',
  hint: 'level the hem on her before it is finished',
});
