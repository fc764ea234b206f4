import { note, warning } from '../diagnostics/finding.ts';
import { quoted } from '../diagnostics/safe-text.ts';

/** What hanging finds. Figures come as text in the spec's own units. */

export const bustledHemOnFloor = warning('bustled-hem-on-floor', (beside: string, station: string) => ({
  message: `Bustled, the hem lies on the floor ${beside} from ${quoted(station)}.`,
  why: 'The points hold the hem up in their own places alone; between them she treads on it.',
  hint: 'Set a point more there, or lift the points beside it higher; let the fitter pin it first.',
}));

export const hemHangsOtherwise = note(
  'hem-hangs-otherwise',
  (at: { station: string; hangs: string; asked: string; why: 'folds' | 'shape' }) => ({
    message: `Hung by computation, the hem is ${at.hangs} off the floor near ${quoted(at.station)}; ${at.asked} was asked.`,
    why:
      at.why === 'folds'
        ? 'The cloth is fuller than what it hangs over and falls in folds, which stand out and lift the hem between them.'
        : 'The lengths are along the cloth, and it hangs a little otherwise than the tape.',
    hint: 'Level the hem on her before it is finished.',
  }),
);
