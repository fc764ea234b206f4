import type { Diagnostic, Level, Span } from '../diagnostics/diagnostic.ts';

/**
 * Everything that the workroom's stage can find, one small factory each. Texts in `say…` arguments are lengths and
 * amounts already in the spec's units. A rule's origin is named: textbook, or common practice.
 */

export const openingTooSmall = (
  span: Span,
  at: { passes: string; girth: string; over: 'hip' | 'shoulders'; needed: string },
): Diagnostic =>
  problem('opening-too-small', 'warning', span, {
    message: `the opening lets ${at.passes} through (waist seam and twice the opening), her ${at.over} ${at.over === 'hip' ? 'measures' : 'measure'} ${at.girth}`,
    why: 'she cannot get into the gown',
    hint: `open at least ${at.needed} below the waist seam, or let her get in the other way`,
  });

export const openingNotGiven = (span: Span, needed: string | undefined): Diagnostic =>
  problem('opening-not-given', 'warning', span, {
    message: 'the closure has no `opening`',
    why: 'zip, marks and steps cannot be worked out without it',
    hint:
      needed === undefined
        ? 'say how far it opens below the waist seam'
        : `it has to open at least ${needed} to let her in`,
  });

export const openingLongerThanSeam = (span: Span, ends: string, seam: string, length: string): Diagnostic =>
  problem('opening-longer-than-seam', 'error', span, {
    message: `the opening ends ${ends} below the waist seam, but ${seam} is only ${length} long`,
    why: 'the closure would run out of the hem',
    hint: 'shorten the opening, or put it into a longer seam',
  });

export const noStockZip = (span: Span, opening: string, longest: string): Diagnostic =>
  problem('no-stock-zip', 'warning', span, {
    message: `an opening of ${opening} is longer than the longest zip that shops usually keep, ${longest} (common practice)`,
    why: 'the zip will have to be ordered or cut from a coil',
    hint: 'order it now, or shorten the opening',
  });

export const needleNearBone = (span: Span, left: string, least: string): Diagnostic =>
  problem('needle-near-bone', 'warning', span, {
    message: `${left} is left between the needle and the ends of the bones (common practice: more than ${least})`,
    why: 'a needle that meets a bone can shatter and fly',
    hint: 'shorten the bones or leave the second row out, wear eye protection, and follow the machine’s manual',
  });

export const edgeUnfinished = (span: Span, beside: 'finished' | 'laced'): Diagnostic =>
  problem('closure-edge-unfinished', 'warning', span, {
    message: `the bodice edge above the opening is ${beside}, and nothing finishes the skirt’s raw edges beside it`,
    why: 'the skirt’s own edges would fray below a clean bodice',
    hint: 'give `finish: placket`, `facing` or `hook` in `closure`, and cut for it',
  });

export const layersNotNeighbours = (span: Span, group: string, between: string): Diagnostic =>
  problem('layers-not-neighbours', 'warning', span, {
    message: `${group} cannot be handled as one, because ${between} lies between them`,
    why: 'no order of sewing makes this gown',
    hint: 'group layers that lie next to each other, or change the order of `layers`',
  });

export const baggedWithoutGap = (span: Span, layers: string): Diagnostic =>
  problem('bagged-hem-without-gap', 'warning', span, {
    message: `the hem of ${layers} is bagged, and no seam is left open to turn it through`,
    why: 'once waist and hem are closed there is no way to the right side',
    hint: 'give one of the layers a `gap`, such as `gap: {at: centre-back, length: 45cm}`',
  });

export const baggedAlone = (span: Span, layer: string): Diagnostic =>
  problem('bagged-hem-alone', 'warning', span, {
    message: `the hem of ${layer} is bagged, but no other layer has a bagged hem to be sewn to`,
    why: 'a bagged hem is two layers sewn to each other and turned',
    hint: 'give the neighbouring layer `hem: bagged` as well, or choose another hem',
  });

export const baggedNotEqual = (span: Span, layers: string, difference: string): Diagnostic =>
  problem('bagged-hem-not-equal', 'warning', span, {
    message: `the hems of ${layers} are bagged together but differ by ${difference} all round`,
    why: 'the shorter layer would pull the hem up and inside',
    hint: 'start with equal hems; the outer layer is rolled 2 to 3 mm inside when it is pressed (common practice)',
  });

export const gapDoesNotFit = (span: Span, gap: string, seam: string, why: string): Diagnostic =>
  problem('gap-does-not-fit', 'warning', span, {
    message: `a gap of ${gap} does not fit into ${seam}: ${why}`,
    why: 'the hem could not be turned through it',
    hint: 'choose a longer seam of this layer, or a shorter gap',
  });

export const hemSurplusShows = (
  span: Span,
  hem: { layer: string; surplus: string; share: string; most: string; satin: boolean; depth: string },
): Diagnostic =>
  problem('hem-surplus', 'warning', span, {
    message: `turned up ${hem.depth}, the hem of ${hem.layer} has ${hem.surplus} to ease, ${hem.share} of its length (common practice: up to ${hem.most}${hem.satin ? ' on satin' : ''})`,
    why: 'the surplus shows as pleats and ripples on the right side',
    hint: 'turn up less, face it with a shaped facing, or steam it away on a cloth that lets you: try it on a scrap cut to this flare',
  });

export const edgingWithoutRepeat = (span: Span, name: string): Diagnostic =>
  problem('edging-without-repeat', 'warning', span, {
    message: `the edging ${name} has no \`repeat\``,
    why: 'how many motifs go round, and how much has to be eased, cannot be worked out; a motif could be cut in half at the join',
    hint: 'measure one motif along its edge and add `repeat`',
  });

export const edgingShort = (
  span: Span,
  edging: { name: string; supply: string; need: string; buy: string; cloth: string },
): Diagnostic =>
  problem('edging-short', 'warning', span, {
    message: `${edging.cloth} gives ${edging.supply} of ${edging.name} from its two edges, and the hem needs ${edging.need}`,
    why: 'the edging would not reach round',
    hint: `buy at least ${edging.buy} of ${edging.cloth}`,
  });

export const scallopsOffFloor = (span: Span, high: string, low: string): Diagnostic =>
  problem('scallops-off-floor', 'note', span, {
    message: `the scallops’ high points hang ${high} off the floor, their low points ${low}`,
    why: 'common practice brings the high points to the floor; the wearer’s walk decides',
    hint: 'walk it in at the fitting, in the shoes',
  });

export const sweepNarrowOverHoop = (
  span: Span,
  at: { sweep: string; hoop: string; ratio: string; least: string; widest: string },
): Diagnostic =>
  problem('sweep-narrow-over-hoop', 'warning', span, {
    message: `at the hoop’s level the skirt is ${at.sweep} round, ${at.ratio} times the hoop of ${at.hoop} (common practice: ${at.least} times)`,
    why: 'the hoop shows through, and the hem swings with it',
    hint: `widen the gores, or take a hoop of at most ${at.widest}`,
  });

export const hoopSmall = (span: Span, hoop: string, least: string, train: boolean): Diagnostic =>
  problem('hoop-small', 'warning', span, {
    message: `a bottom hoop of ${hoop} is smaller than is comfortable to walk in${train ? ' with a train' : ''} (common practice: ${least})`,
    why: 'she steps against the hoop at every stride',
    hint: `take a hoop of ${least} or more, and walk it in at a fitting`,
  });

export const hemLow = (span: Span, offFloor: string, usual: string): Diagnostic =>
  problem('hem-low', 'note', span, {
    message: `the front hem hangs ${offFloor} off the floor (textbook: ${usual})`,
    why: 'she may tread on it, most of all on stairs',
    hint: 'walk it in at the fitting, in the shoes, up and down a step',
  });

export const bustleWithoutTrain = (span: Span): Diagnostic =>
  problem('bustle-lifts-nothing', 'warning', span, {
    message: 'no seam named in `bustle` has anything to lift',
    why: 'its points would do nothing',
    hint: 'give the gown a train, name seams inside it, or leave the bustle out',
  });

export const bustlePointLiftsNothing = (span: Span, seam: string): Diagnostic =>
  problem('bustle-point-lifts-nothing', 'warning', span, {
    message: `the bustle point at ${seam} has nothing to lift: the hem clears the floor there`,
    why: 'it would only gather the skirt at its anchor',
    hint: 'take this point out',
  });

export const bustleNumber = (span: Span, points: number, usual: string): Diagnostic =>
  problem('bustle-number', 'warning', span, {
    message: `the bustle has ${points} ${points === 1 ? 'point' : 'points'} (common practice: ${usual})`,
    why: 'with an even number the middle of the train hangs through; with too few each point carries too much',
    hint: 'add the centre back or a pair of seams, and let the fitter pin it first',
  });

export const bustleLoopBelowHem = (span: Span, seam: string, below: string): Diagnostic =>
  problem('bustle-loop-below-hem', 'warning', span, {
    message: `the loop at ${seam} ends ${below} below the hem`,
    why: 'it shows, and it is trodden on',
    hint: 'put the anchor higher, or make the loop shorter',
  });

export const hoursOverTotal = (span: Span, tasks: string, hours: string): Diagnostic =>
  problem('tasks-over-hours', 'warning', span, {
    message: `the tasks add up to ${tasks} hours, more than the ${hours} given in all`,
    why: 'one of the two is wrong, and the quote follows the tasks',
    hint: 'correct `hours`, or leave it out',
  });

export const calendarClash = (span: Span, earlier: string, later: string): Diagnostic =>
  problem('calendar-clash', 'warning', span, {
    message: `“${later}” falls before “${earlier}” is done`,
    why: 'the work cannot be done in that order',
    hint: 'change the days in `dates.before`',
  });

export const unknownMilestone = (span: Span, name: string, known: string): Diagnostic =>
  problem('unknown-milestone', 'error', span, {
    message: `the calendar has no milestone “${name}”`,
    why: 'its days would be left out',
    hint: `the milestones are ${known}`,
  });

export const orderImpossible = (span: Span, steps: string): Diagnostic =>
  problem('order-impossible', 'error', span, {
    message: `no order of making does these before each other: ${steps}`,
    why: 'each waits for another of them',
    hint: 'change what is sewn as one, or a hem',
  });

function problem(
  code: string,
  level: Level,
  span: Span,
  words: Pick<Diagnostic, 'message' | 'why' | 'hint'>,
): Diagnostic {
  return { code, level, span, ...words };
}
