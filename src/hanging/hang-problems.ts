import { note, warning } from '../diagnostics/finding.ts';
import { inWords } from '../diagnostics/in-words.ts';
import { quoted } from '../diagnostics/safe-text.ts';

/** What hanging finds. Figures come as text in the spec's own units. */

export const bustledHemOnFloor = warning(
  'bustled-hem-on-floor',
  (
    places: readonly { readonly beside: string; readonly station: string }[],
    advice?: { readonly lines: readonly string[]; readonly clears: boolean },
  ) => ({
    message: `Bustled, the hem lies on the floor ${inWords(
      places.map(({ beside, station }) => `${beside} from ${quoted(station)}`),
    )}.`,
    why: 'The points hold the hem up in their own places alone; between them she treads on it.',
    hint:
      advice === undefined || advice.lines.length === 0
        ? 'Set a point more there, or lift the points beside it higher; let the fitter pin it first.'
        : advice.clears
          ? `Have these among the \`points\` of \`bustle\`: ${advice.lines.join(', ')}. Hung so by computation, the hem clears the floor all round; let the fitter pin it first.`
          : 'Points more between these did not clear it when they were tried: ask for more `clearance`, so that all are lifted higher, or for a shorter train; let the fitter pin it first.',
  }),
);

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

export const hemOnFloor = warning(
  'hem-on-floor',
  ({ beside, station, asked }: { beside: string; station: string; asked: string }) => ({
    message: `Hung by computation, the hem lies on the floor ${beside} from ${quoted(station)}, where ${asked} off it was asked.`,
    why: 'She treads on it as she walks, and most of all on stairs.',
    hint: 'Measure to the floor there again, over the petticoat and in the shoes; level the hem on her before it is finished.',
  }),
);

export const trainLiesOtherwise = note(
  'train-lies-otherwise',
  ({ lies, asked, longer }: { lies: string; asked: string; longer: boolean }) => ({
    message: `Hung by computation, ${lies} of the train lie on the floor at the centre back; ${asked} was asked.`,
    why: longer
      ? 'The cloth hangs closer to her than the tape ran, and more of it reaches the floor.'
      : 'The cloth hangs out behind her before it reaches the floor, and that takes up some of its length.',
    hint: `Where what lies matters more than what is measured, ask for as much ${longer ? 'less' : 'more'}; let her walk in the toile first.`,
  }),
);

export const notAtRest = note('hang-not-at-rest', (stretch: string) => ({
  message: `Hung by computation, the cloth did not come to rest: somewhere it is stretched by ${stretch}.`,
  why: 'The views and the figures of how it hangs are not to be relied on; the pattern is as true as ever.',
  hint: 'Look at the gown in a toile, or send the spec to whoever looks after the tool.',
}));
