import type { Diagnostic, Span } from './diagnostic.ts';
import { listed, nearestIs, problem } from './problem.ts';
import { quoted } from './safe-text.ts';

/** Problems of stations, lengths and trains. */

export const unknownStation = (
  span: Span,
  name: string,
  stations: readonly string[],
  near: string | undefined,
): Diagnostic => ({
  ...problem('unknown-station', span),
  message: `${quoted(name)} is no station of this skirt${nearestIs(near)}`,
  why: 'what stands here would apply nowhere',
  hint: `it can be ${listed(stations)}`,
});

export const stationOfNoGore = (
  span: Span,
  name: string,
  strangers: readonly string[],
  stations: readonly string[],
  near: string | undefined,
): Diagnostic => ({
  ...problem('station-of-no-gore', span),
  message: `${quoted(name)} names ${strangers.map(quoted).join(' and ')}, and no gore is called that${nearestIs(near)}`,
  why: 'a seam is named by the two gores that it joins',
  hint: `it can be ${listed(stations)}`,
});

export const notNeighbours = (
  span: Span,
  name: string,
  stations: readonly string[],
  turned: string | undefined,
): Diagnostic => ({
  ...problem('not-neighbours', span),
  message:
    turned === undefined
      ? `${quoted(name)} joins gores that are not neighbours`
      : `${quoted(name)} has its gores the wrong way round; this seam is ${quoted(turned)}`,
  why: 'a seam joins a gore and the next one towards the back, in this order',
  hint: turned === undefined ? `the stations are ${listed(stations)}` : `write ${quoted(turned)}`,
});

export const centreWithoutSymmetry = (span: Span, name: string, stations: readonly string[]): Diagnostic => ({
  ...problem('centre-without-symmetry', span),
  message: `${quoted(name)} is no station of a skirt whose sides differ`,
  why: 'with `symmetry: none` the gores run all the way round, and only their seams are stations',
  hint: `the seam at the centre front is ${quoted(stations[0] ?? '')}; the stations are ${listed(stations)}`,
});

export const foldNotSeam = (span: Span, name: string): Diagnostic => ({
  ...problem('fold-not-seam', span),
  message: `${quoted(name)} lies on the fold, where there is no seam`,
  why: 'a fold cannot be opened, taken in or left unsewn',
  hint: 'name a seam, or take `on-fold` out of the gore',
});

export const allowanceOnFold = (span: Span, name: string): Diagnostic => ({
  ...problem('allowance-on-fold', span, 'warning'),
  message: `an allowance is given for ${quoted(name)}, which lies on the fold`,
  why: 'nothing is sewn there, so it is not used',
  hint: 'take it out, or take `on-fold` out of the gore',
});

export const lengthMissing = (span: Span, station: string): Diagnostic => ({
  ...problem('length-missing', span),
  message: `the length at ${quoted(station)} is missing`,
  why: 'lengths between are filled in from it',
  hint: `add ${quoted(`${station}:`)} with its length from the sewn edge of the bodice`,
});

export const offFloorUnused = (span: Span, measured: string): Diagnostic => ({
  ...problem('off-floor-unused', span),
  message: `\`off-floor\` is given, but the lengths are measured ${quoted(measured)}`,
  why: 'it is taken off lengths to the floor only, and could be taken off twice or not at all',
  hint: 'write `measured: to-floor`, or take `off-floor` out',
});

export const offFloorMissing = (span: Span): Diagnostic => ({
  ...problem('off-floor-missing', span, 'warning'),
  message: 'lengths go to the floor, and nothing says how high the hem hangs',
  why: 'the hem will lie on the floor all round',
  hint: 'add `off-floor`, commonly 2 to 2.5 cm at the front, walked in and adjusted; write 0 to keep it on the floor',
});

export const hemAboveWaist = (span: Span, station: string, length: string, offFloor: string): Diagnostic => ({
  ...problem('hem-above-waist', span),
  message: `at ${quoted(station)} the floor is ${length} down and the hem hangs ${offFloor} above it`,
  why: 'no skirt is left',
  hint: 'look at `off-floor` and at this length',
});

export const hemWidthAtMissing = (span: Span, key: string): Diagnostic => ({
  ...problem('hem-width-at-missing', span),
  message: `${quoted(key)} is given, and \`hem-width-at\` is missing from \`lengths\``,
  why: 'a width holds at a distance below the waist; lower down the gore is wider',
  hint: 'add `hem-width-at` with the slant distance below the level waist where the widths were measured',
});

export const hemWidthAtUnused = (span: Span): Diagnostic => ({
  ...problem('hem-width-at-unused', span, 'warning'),
  message: '`hem-width-at` is given, but no gore has a `hem` and the skirt no `sweep`',
  why: 'it is not used',
  hint: 'take it out, or give the widths that hold there',
});

export const pointWithoutDrop = (span: Span, point: string): Diagnostic => ({
  ...problem('point-without-drop', span),
  message: `the bodice comes to a point at ${quoted(point)}, where it has no drop`,
  why: 'a level edge has no point',
  hint: `add ${quoted(point)} to \`drop-below-waist\`, or take \`point\` out`,
});

export const heelMeasuredInMissing = (span: Span): Diagnostic => ({
  ...problem('heel-measured-in-missing', span),
  message: 'nothing says which heel she was measured in',
  why: 'lengths move by the difference of the two heels, and it is not known',
  hint: 'add `measured-in: {heel: …}` to the lengths, or take `worn-in` out',
});

export const trainWithoutSymmetry = (span: Span, left: readonly string[]): Diagnostic => ({
  ...problem('train-without-symmetry', span),
  message: `a train is given for a skirt whose sides differ, without ${left.map(quoted).join(' and ')}`,
  why: 'all the way round nothing says where it is longest and where it has risen again',
  hint: 'add `full` and `ends`, each with a seam, or give the finished length at each seam of the train instead',
});

export const trainAlikeBothSides = (span: Span, key: string): Diagnostic => ({
  ...problem('train-alike-both-sides', span),
  message: `${quoted(key)} is given for a train whose sides are alike`,
  why: 'it is longest at the centre back and rises again as it fell, so this is not used',
  hint: 'take it out, or write `symmetry: none` and give the gores all the way round',
});

export const trainOutOfOrder = (span: Span, stations: readonly string[]): Diagnostic => ({
  ...problem('train-out-of-order', span),
  message: 'the train does not begin, get full and end in this order',
  why: 'the hem would have to fall and rise at once',
  hint: `name three seams in the order of the gores: ${listed(stations)}`,
});

export const onFloorMissing = (span: Span): Diagnostic => ({
  ...problem('on-floor-missing', span),
  message: 'the train has no `on-floor`, and the lengths go to the floor',
  why: 'nothing says how long the train is',
  hint: 'add `on-floor` with the length that lies on the floor at the centre back, or give finished lengths',
});

export const trainBeginsBehind = (span: Span): Diagnostic => ({
  ...problem('train-begins-behind', span),
  message: 'the train begins at the centre back, where it is to be longest',
  why: 'no way is left for the hem to fall',
  hint: 'name a seam further to the front',
});
