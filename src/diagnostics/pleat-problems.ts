import { error } from './finding.ts';
import { quoted } from './safe-text.ts';

/** Problems of pleats that have their place. */

export const pleatWithout = error('pleat-without', (name: string, kind: string, key: string) => ({
  message: `The ${kind} pleat ${quoted(name)} has no ${quoted(key)}.`,
  why: 'Its folds cannot be drawn without it.',
  hint:
    key === 'towards'
      ? 'Write `towards: back` where its outer fold points to the back of her, else `towards: front`.'
      : 'Write how far above the hem it begins, such as `above-hem: 25`.',
}));

export const pleatHasNo = error('pleat-has-no', (name: string, kind: string, key: string) => ({
  message: `${quoted(key)} is given for the ${kind} pleat ${quoted(name)}, which has none.`,
  why: 'It would not be used, and the pleat would come out otherwise than was meant.',
  hint: 'Take it out, or choose the kind of pleat that has it: see `pleats` in the reference.',
}));

export const pleatAtCentre = error('pleat-at-centre', (name: string, kind: string, station: string) => ({
  message: `The ${kind} pleat ${quoted(name)} lies at ${station}, where both sides of her are cut alike.`,
  why: 'Its fold would point to one side only.',
  hint: 'Make it `kind: inverted` or `kind: box`, or let it lie `from-seam` beside the centre, once on each side.',
}));

export const pleatOnFold = error('pleat-on-fold', (name: string, station: string) => ({
  message: `The kick pleat ${quoted(name)} lies at ${station}, which is a fold of the cloth.`,
  why: 'A kick pleat is cut on to the two edges of a seam.',
  hint: 'Make it `kind: inverted`, or cut that gore with a seam there.',
}));

export const pleatOnOtherGore = error(
  'pleat-on-other-gore',
  (name: string, gore: string, station: string) => ({
    message: `The pleat ${quoted(name)} is measured from ${quoted(station)}, and gore ${quoted(gore)} does not lie there.`,
    why: 'From which seam it is measured decides where it is folded.',
    hint: 'Name one of the two gores of that seam, or another seam.',
  }),
);

export const pleatOnFullness = error('pleat-on-fullness', (name: string, gore: string) => ({
  message: `The pleat ${quoted(name)} lies on gore ${quoted(gore)}, whose top is gathered or pleated already.`,
  why: 'Where its folds lie on the sewn waist could not be told.',
  hint: 'Take out the `fullness` there, or give all of its pleats their places.',
}));

export const pleatInOpening = error('pleat-in-opening', (name: string, station: string) => ({
  message: `The pleat ${quoted(name)} is stitched down over ${quoted(station)}, where the closure opens.`,
  why: 'She could not get in.',
  hint: 'Put the closure at another seam, let the pleat be `stitched-down: 0`, or make it a kick pleat below the opening.',
}));

export const pleatTooWide = error(
  'pleat-too-wide',
  (name: string, gore: string, layer: string, depth: string, room: string) => ({
    message: `The folds of pleat ${quoted(name)} are ${depth} deep, and gore ${quoted(gore)} (layer ${quoted(layer)}) has room for ${room} there.`,
    why: 'What lies under a fold would reach over the next seam, and be caught in it.',
    hint: 'Take a smaller `fold-depth`, put the pleat farther from the seam, or let the gore be wider at its top.',
  }),
);

export const pleatsOverlap = error(
  'pleats-overlap',
  (name: string, other: string, gore: string, layer: string) => ({
    message: `The pleats ${quoted(name)} and ${quoted(other)} lie over each other on gore ${quoted(gore)} (layer ${quoted(layer)}).`,
    why: 'One would be folded into the other.',
    hint: 'Put them farther apart, or take a smaller `fold-depth`.',
  }),
);

export const pleatOnDart = error('pleat-on-dart', (name: string, dart: string, gore: string) => ({
  message: `A fold of the pleat ${quoted(name)} lies over the dart ${quoted(dart)} of gore ${quoted(gore)}.`,
  why: 'Under a fold the cloth lies flat, and a dart does not.',
  hint: 'Move one of the two, take a smaller `fold-depth`, or let the pleat take in what the dart does.',
}));

export const pleatOnCurve = error(
  'pleat-on-curve',
  (name: string, station: string, gore: string, bend: string) => ({
    message: `The pleat ${quoted(name)} lies at ${quoted(station)}, and the edge of gore ${quoted(gore)} there bends by ${bend}.`,
    why: 'A fold is a straight line.',
    hint: 'Let that edge lie on the straight thread (`grain: front-edge` or `back-edge`), put the pleat `from-seam` inside the gore, or make it a kick pleat below the bend.',
  }),
);

export const pleatBelowHem = error(
  'pleat-below-hem',
  (name: string, key: string, length: string, seam: string) => ({
    message: `${quoted(key)} of pleat ${quoted(name)} is ${length}, and the gore ${seam} long there.`,
    why: 'Nothing would be left to open, or nothing above it to sew.',
    hint: 'Let it be shorter than the gore.',
  }),
);

export const pleatOnBias = error('pleat-on-bias', (name: string, layer: string) => ({
  message: `The pleat ${quoted(name)} is in layer ${quoted(layer)}, which is cut on the bias.`,
  why: 'A pressed fold on the bias stretches and falls open.',
  hint: 'Name its other layers under `layers`, or cut that one on the straight thread.',
}));

export const pleatWithFacing = error('pleat-with-facing', (name: string, layer: string) => ({
  message: `The pleat ${quoted(name)} is in layer ${quoted(layer)}, whose hem has shaped facings.`,
  why: 'They are cut to the hem as it is sewn, and would not reach across what lies under the folds.',
  hint: 'Turn that hem up, or face it with a strip: `hem: faced` without `facing`.',
}));
