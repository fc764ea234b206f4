import { error, listed, nearestIs, warning } from './finding.ts';
import { named, quoted } from './safe-text.ts';

/** Problems of stations, lengths and trains. */

export const unknownStation = error(
  'unknown-station',
  (name: string, stations: readonly string[], near: string | undefined) => ({
    message: `${quoted(name)} is no station of this skirt${nearestIs(near)}.`,
    why: 'What stands here would apply nowhere.',
    hint: `It can be ${listed(stations)}.`,
  }),
);

export const stationOfNoGore = error(
  'station-of-no-gore',
  (name: string, strangers: readonly string[], stations: readonly string[], near: string | undefined) => ({
    message: `${quoted(name)} names ${named(strangers)}, and no gore is called that${nearestIs(near)}.`,
    why: 'A seam is named by the two gores that it joins.',
    hint: `It can be ${listed(stations)}.`,
  }),
);

export const notNeighbours = error(
  'not-neighbours',
  (name: string, stations: readonly string[], turned: string | undefined) => ({
    message:
      turned === undefined
        ? `${quoted(name)} joins gores that are not neighbours.`
        : `${quoted(name)} has its gores the wrong way round; this seam is ${quoted(turned)}.`,
    why: 'A seam joins a gore and the next one towards the back, in this order.',
    hint: turned === undefined ? `The stations are ${listed(stations)}.` : `Write ${quoted(turned)}.`,
  }),
);

export const centreWithoutSymmetry = error(
  'centre-without-symmetry',
  (name: string, stations: readonly string[]) => ({
    message: `${quoted(name)} is no station of a skirt whose sides differ.`,
    why: 'With `symmetry: none` the gores run all the way round, and only their seams are stations.',
    hint: `The seam at the centre front is ${quoted(stations[0] ?? '')}; the stations are ${listed(stations)}.`,
  }),
);

export const foldNotSeam = error('fold-not-seam', (name: string) => ({
  message: `${quoted(name)} lies on the fold, where there is no seam.`,
  why: 'A fold cannot be opened, taken in or left unsewn.',
  hint: 'Name a seam, or take `on-fold` out of the gore.',
}));

export const allowanceOnFold = warning('allowance-on-fold', (name: string) => ({
  message: `An allowance is given for ${quoted(name)}, which lies on the fold.`,
  why: 'Nothing is sewn there, so it is not used.',
  hint: 'Take it out, or take `on-fold` out of the gore.',
}));

export const lengthMissing = error('length-missing', (station: string) => ({
  message: `The length at ${quoted(station)} is missing.`,
  why: 'Lengths between are filled in from it.',
  hint: `Add ${quoted(`${station}:`)} with its length from the sewn edge of the bodice.`,
}));

export const offFloorUnused = error('off-floor-unused', (measured: string) => ({
  message: `\`off-floor\` is given, but the lengths are measured ${quoted(measured)}.`,
  why: 'It is taken off lengths to the floor only, and could be taken off twice or not at all.',
  hint: 'Write `measured: to-floor`, or take `off-floor` out.',
}));

export const offFloorMissing = warning('off-floor-missing', (usual: string) => ({
  message: 'Lengths go to the floor, and nothing says how high the hem hangs.',
  why: 'The hem will lie on the floor all round.',
  hint: `Add \`off-floor\`, commonly about ${usual} at the front, walked in and adjusted; write 0 to keep it on the floor.`,
}));

export const hemAboveWaist = error(
  'hem-above-waist',
  (station: string, length: string, offFloor: string) => ({
    message: `At ${quoted(station)} the floor is ${length} down and the hem hangs ${offFloor} above it.`,
    why: 'No skirt is left.',
    hint: 'Look at `off-floor` and at this length.',
  }),
);

export const hemWidthAtMissing = error('hem-width-at-missing', (key: string) => ({
  message: `${quoted(key)} is given, and \`hem-width-at\` is missing from \`lengths\`.`,
  why: 'A width holds at a distance below the waist; lower down the gore is wider.',
  hint: 'Add `hem-width-at` with the slant distance below the level waist where the widths were measured.',
}));

export const hemWidthAtUnused = warning('hem-width-at-unused', () => ({
  message: '`hem-width-at` is given, but no gore has a `hem` and the skirt no `sweep`.',
  why: 'It is not used.',
  hint: 'Take it out, or give the widths that hold there.',
}));

export const pointWithoutDrop = error('point-without-drop', (point: string) => ({
  message: `The bodice comes to a point at ${quoted(point)}, where it has no drop.`,
  why: 'A level edge has no point.',
  hint: `Add ${quoted(point)} to \`drop-below-waist\`, or take \`point\` out.`,
}));

export const heelMeasuredInMissing = error('heel-measured-in-missing', () => ({
  message: 'Nothing says which heel she was measured in.',
  why: 'Lengths move by the difference of the two heels, and it is not known.',
  hint: 'Add `measured-in: {heel: …}` to the lengths, or take `worn-in` out.',
}));

export const trainWithoutSymmetry = error('train-without-symmetry', (left: readonly string[]) => ({
  message: `A train is given for a skirt whose sides differ, without ${named(left)}.`,
  why: 'All the way round nothing says where it is longest and where it has risen again.',
  hint: 'Add `full` and `ends`, each with a seam, or give the finished length at each seam of the train instead.',
}));

export const trainAlikeBothSides = error('train-alike-both-sides', (key: string) => ({
  message: `${quoted(key)} is given for a train whose sides are alike.`,
  why: 'It is longest at the centre back and rises again as it fell, so this is not used.',
  hint: 'Take it out, or write `symmetry: none` and give the gores all the way round.',
}));

export const trainOutOfOrder = error('train-out-of-order', (stations: readonly string[]) => ({
  message: 'The train does not begin, get full and end in this order.',
  why: 'The hem would have to fall and rise at once.',
  hint: `Name three seams in the order of the gores: ${listed(stations)}.`,
}));

export const onFloorMissing = error('on-floor-missing', () => ({
  message: 'The train has no `on-floor`, and the lengths go to the floor.',
  why: 'Nothing says how long the train is.',
  hint: 'Add `on-floor` with the length that lies on the floor at the centre back, or give finished lengths.',
}));

export const trainBeginsBehind = error('train-begins-behind', () => ({
  message: 'The train begins at the centre back, where it is to be longest.',
  why: 'No way is left for the hem to fall.',
  hint: 'Name a seam further to the front.',
}));
