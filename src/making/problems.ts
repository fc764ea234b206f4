import { error, note, type Words, warning } from '../diagnostics/finding.ts';
import { named, quoted } from '../diagnostics/safe-text.ts';
import type { BustlePoint } from './bustle/bustle.ts';

/**
 * Everything that the workroom's stage can find. Figures come as text in the spec's own units. A rule's origin is named: textbook, or common practice.
 */

export const openingTooSmall = warning(
  'opening-too-small',
  (at: { passes: string; girth: string; over: 'hip' | 'shoulders'; needed: string }) => ({
    message: `The opening lets ${at.passes} through (waist seam and twice the opening), her ${at.over} ${at.over === 'hip' ? 'measures' : 'measure'} ${at.girth}.`,
    why: 'She cannot get into the gown.',
    hint: `Open at least ${at.needed} below the waist seam, or let her get in the other way.`,
  }),
);

export const openingNotGiven = warning('opening-not-given', (needed: string | undefined) => ({
  message: 'The closure has no `opening`.',
  why: 'Zip, marks and steps cannot be worked out without it.',
  hint:
    needed === undefined
      ? 'Say how far it opens below the waist seam.'
      : `It has to open at least ${needed} to let her in.`,
}));

export const openingLongerThanSeam = error(
  'opening-longer-than-seam',
  (ends: string, seam: string, length: string) => ({
    message: `The opening ends ${ends} below the waist seam, but ${quoted(seam)} is only ${length} long.`,
    why: 'The closure would run out of the hem.',
    hint: 'Shorten the opening, or put it into a longer seam.',
  }),
);

export const noStockZip = warning('no-stock-zip', (opening: string, longest: string) => ({
  message: `An opening of ${opening} is longer than the longest zip that shops usually keep, ${longest} (common practice).`,
  why: 'The zip will have to be ordered or cut from a coil.',
  hint: 'Order it now, or shorten the opening.',
}));

export const needleNearBone = warning('needle-near-bone', (left: string, least: string) => ({
  message: `${left} is left between the needle and the ends of the bones (common practice: more than ${least}).`,
  why: 'A needle that meets a bone can shatter and fly.',
  hint: 'Shorten the bones or leave the second row out, wear eye protection, and follow the machine’s manual.',
}));

export const edgeUnfinished = warning('closure-edge-unfinished', (beside: 'finished' | 'laced') => ({
  message: `The bodice edge above the opening is ${beside}, and nothing finishes the skirt’s raw edges beside it.`,
  why: 'The skirt’s own edges would fray below a clean bodice.',
  hint: 'Give `finish: placket`, `facing` or `hook` in `closure`, and cut for it.',
}));

export const layersNotNeighbours = warning(
  'layers-not-neighbours',
  (group: readonly string[], between: string) => ({
    message: `The layers ${named(group)} cannot be handled as one, because ${quoted(between)} lies between them.`,
    why: 'No order of sewing makes this gown.',
    hint: 'Group layers that lie next to each other, or change the order of `layers`.',
  }),
);

export const baggedWithoutGap = warning('bagged-hem-without-gap', (layers: readonly string[]) => ({
  message: `The hem of ${named(layers)} is bagged, and no seam is left open to turn it through.`,
  why: 'Once waist and hem are closed there is no way to the right side.',
  hint: 'Give one of the layers a `gap`, such as `gap: {at: centre-back, length: 45cm}`.',
}));

export const baggedAlone = warning('bagged-hem-alone', (layer: string) => ({
  message: `The hem of ${quoted(layer)} is bagged, but no other layer has a bagged hem to be sewn to.`,
  why: 'A bagged hem is two layers sewn to each other and turned.',
  hint: 'Give the neighbouring layer `hem: bagged` as well, or choose another hem.',
}));

export const baggedNotEqual = warning(
  'bagged-hem-not-equal',
  (layers: readonly string[], difference: string, rolled: string) => ({
    message: `The hems of ${named(layers)} are bagged together but differ by ${difference} all round.`,
    why: 'The shorter layer would pull the hem up and inside.',
    hint: `Start with equal hems; the outer layer is rolled about ${rolled} inside when it is pressed (common practice).`,
  }),
);

export const gapWithoutSeam = warning('gap-does-not-fit', (gap: string, seam: string, layer: string) =>
  gapDoesNotFit(gap, seam, `${layer} has no seam there`),
);

export const gapTooLong = warning('gap-does-not-fit', (gap: string, seam: string, length: string) =>
  gapDoesNotFit(gap, seam, `the seam is ${length} long`),
);

function gapDoesNotFit(gap: string, seam: string, why: string): Words {
  return {
    message: `A gap of ${gap} does not fit into ${quoted(seam)}: ${why}.`,
    why: 'The hem could not be turned through it.',
    hint: 'Choose a longer seam of this layer, or a shorter gap.',
  };
}

export const hemSurplusShows = warning(
  'hem-surplus',
  (hem: { layer: string; surplus: string; share: string; most: string; satin: boolean; depth: string }) => ({
    message: `Turned up ${hem.depth}, the hem of ${quoted(hem.layer)} has ${hem.surplus} to ease, ${hem.share} of its length (common practice: up to ${hem.most}${hem.satin ? ' on satin' : ''}).`,
    why: 'The surplus shows as pleats and ripples on the right side.',
    hint: 'Turn up less, face it with a shaped facing, or steam it away on a cloth that lets you: try it on a scrap cut to this flare.',
  }),
);

export const edgingWithoutRepeat = warning('edging-without-repeat', (name: string) => ({
  message: `The edging ${quoted(name)} has no \`repeat\`.`,
  why: 'How many motifs go round, and how much has to be eased, cannot be worked out; a motif could be cut in half at the join.',
  hint: 'Measure one motif along its edge and add `repeat`.',
}));

export const edgingShort = warning(
  'edging-short',
  (edging: { name: string; supply: string; need: string; buy: string; cloth: string }) => ({
    message: `The cloth ${quoted(edging.cloth)} gives ${edging.supply} of ${quoted(edging.name)} from its two edges, cut inside the selvedges, and the hem needs ${edging.need}.`,
    why: 'The edging would not reach round.',
    hint: `Buy at least ${edging.buy} of ${quoted(edging.cloth)}.`,
  }),
);

export const scallopsOffFloor = note('scallops-off-floor', (high: string, low: string) => ({
  message: `The scallops’ high points hang ${high} off the floor, their low points ${low}.`,
  why: 'Common practice brings the high points to the floor; the wearer’s walk decides.',
  hint: 'Walk it in at the fitting, in the shoes.',
}));

export const sweepNarrowOverHoop = warning(
  'sweep-narrow-over-hoop',
  (at: { sweep: string; hoop: string; ratio: string; least: string; needed: string; widest?: string }) => ({
    message: `At the hoop’s level the skirt is ${at.sweep} round, ${at.ratio} times the hoop of ${at.hoop} (common practice: ${at.least} times).`,
    why: 'The hoop shows through, and the hem swings with it.',
    // A hoop that this skirt would do for may be too small to walk in: then only wider gores are left.
    hint:
      at.widest === undefined
        ? `Widen the gores to ${at.needed} round at that level.`
        : `Widen the gores to ${at.needed} round at that level, or take a hoop of at most ${at.widest}.`,
  }),
);

export const hoopSmall = warning('hoop-small', (hoop: string, least: string, train: boolean) => ({
  message: `A bottom hoop of ${hoop} is smaller than is comfortable to walk in${train ? ' with a train' : ''} (common practice: ${least}).`,
  why: 'She steps against the hoop at every stride.',
  hint: `Take a hoop of ${least} or more, and walk it in at a fitting.`,
}));

export const hemLow = note('hem-low', (offFloor: string, usual: string) => ({
  message: `The front hem hangs ${offFloor} off the floor (textbook: ${usual}).`,
  why: 'She may tread on it, most of all on stairs.',
  hint: 'Walk it in at the fitting, in the shoes, up and down a step.',
}));

export const bustleWithoutTrain = warning('bustle-lifts-nothing', () => ({
  message: 'No point of the bustle has anything to lift.',
  why: 'Its points would do nothing.',
  hint: 'Give the gown a train, put points inside it, or leave the bustle out.',
}));

export const bustlePointLiftsNothing = warning('bustle-point-lifts-nothing', (seam: string) => ({
  message: `The bustle point at ${quoted(seam)} has nothing to lift: the hem clears the floor there.`,
  why: 'It would only gather the skirt at its anchor.',
  hint: 'Take this point out.',
}));

/** Where a point of the bustle is, for the findings about it. */
export function bustlePlace(
  { seam, gore, across, side }: BustlePoint,
  percent: (share: number) => string,
): string {
  const where = seam ?? `${gore}, ${percent(across)} across`;
  return side === undefined ? where : `${where} on her ${side}`;
}

export const bustleNumber = warning(
  'bustle-number',
  ({ points, least, most, heavy }: { points: number; least: number; most: number; heavy: boolean }) => ({
    message: `The bustle has ${points} ${points === 1 ? 'point' : 'points'} (common practice: an odd number, ${least} to ${most}${heavy ? ' on a heavy train' : ''}).`,
    why: 'With an even number the middle of the train hangs through; with too few each point carries too much.',
    hint: 'Add the centre back or a pair of seams, and let the fitter pin it first.',
  }),
);

export const bustleLoopBelowHem = warning('bustle-loop-below-hem', (seam: string, below: string) => ({
  message: `The loop at ${quoted(seam)} ends ${below} below the hem.`,
  why: 'It shows, and it is trodden on.',
  hint: 'Put the anchor higher, or make the loop shorter.',
}));

export const hoursOverTotal = warning('tasks-over-hours', (tasks: string, hours: string) => ({
  message: `The tasks add up to ${tasks} hours, more than the ${hours} given in all.`,
  why: 'One of the two is wrong, and the quote follows the tasks.',
  hint: 'Correct `hours`, or leave it out.',
}));

export const priceRoundedAway = warning('price-rounded-away', (exact: string, rounding: string) => ({
  message: `The price of ${exact} is rounded to whole steps of ${rounding} and comes to 0.`,
  why: 'The client would be quoted nothing.',
  hint: 'Look at `rounding`: the step that the price is rounded to, such as 5 or 10.',
}));

export const calendarClash = warning('calendar-clash', (earlier: string, later: string) => ({
  message: `The milestone ${quoted(later)} falls before ${quoted(earlier)} is done.`,
  why: 'The work cannot be done in that order.',
  hint: 'Change the days in `dates.before`.',
}));

export const unknownMilestone = error('unknown-milestone', (name: string, known: string) => ({
  message: `The calendar has no milestone ${quoted(name)}.`,
  why: 'Its days would be left out.',
  hint: `The milestones are ${known}.`,
}));

export const orderImpossible = error('order-impossible', (steps: string) => ({
  message: `No order of making does these before each other: ${steps}.`,
  why: 'Each waits for another of them.',
  hint: 'Change what is sewn as one, or a hem.',
}));

export const biasWithoutRoughCut = warning(
  'bias-without-rough-cut',
  (says: {
    layer: string;
    drop: string | undefined;
    byRule: boolean;
    left: string | undefined;
    least: string;
  }) => ({
    message: `Layer ${quoted(says.layer)} is on the bias, and ${says.left === undefined ? 'nothing' : `no more than ${says.left}`} is left below its hem to trim.${says.drop === undefined ? '' : ` Its own weight alone draws it up to ${says.drop} longer${says.byRule ? ' (by a rule for its weave, from memory)' : ''}.`}`,
    why: 'It goes on growing as it hangs, and not evenly round the hem; how far no figure tells.',
    hint: `Hang it for a day at least before it is levelled, and leave ${says.least} or more under \`rough-cut\` for each of its gores (common practice).`,
  }),
);

export const tucksAboveWaist = error('tucks-above-waist', (layer: string, top: string, length: string) => ({
  message: `The growth tucks of layer ${quoted(layer)} reach ${top} above its hem line, and the layer is cut ${length} long where it is shortest.`,
  why: 'No cloth is left above them.',
  hint: 'Take fewer or narrower tucks, or put them nearer to the hem.',
}));

export const tucksLieOver = error('tucks-lie-over', (layer: string, width: string, apart: string) => ({
  message: `The growth tucks of layer ${quoted(layer)} are ${width} wide and ${apart} apart.`,
  why: 'Each would lie over the stitching of the one below.',
  hint: 'Let `apart` be more than their `width`.',
}));

export const tucksEased = warning(
  'tucks-eased',
  (layer: string, surplus: string, share: string, most: string) => ({
    message: `In each growth tuck of layer ${quoted(layer)} the lower line is ${surplus} longer than the upper, ${share} of it (common practice: up to ${most}).`,
    why: 'On a skirt so flared a tuck does not lie flat: its fold ripples.',
    hint: 'Take narrower tucks, or put the growth into the waist: a deeper band or yoke that is let down.',
  }),
);
