import { describe, expect, it } from 'vitest';
import * as problems from '../../src/making/problems.ts';

/** What the workroom's findings say, every figure and name another letter: each stands where it belongs. */

const SPAN = { start: 0, end: 1, source: { name: 'x', text: '' } };
type Told = ReturnType<typeof problems.openingTooSmall>;
const say = <Figures extends readonly unknown[]>(
  problem: (span: never, ...figures: Figures) => Told,
  ...figures: Figures
) => problem(SPAN as never, ...figures);
const bare = (text: string) => text.replaceAll('`', '');

describe('findings of the workroom', () => {
  it.each<[Told, string, string]>([
    [
      say(problems.openingTooSmall, { passes: 'A', girth: 'B', over: 'hip', needed: 'C' }),
      'The opening lets A through (waist seam and twice the opening), her hip measures B.',
      'Open at least C below',
    ],
    [
      say(problems.openingTooSmall, { passes: 'A', girth: 'B', over: 'shoulders', needed: 'C' }),
      'The opening lets A through (waist seam and twice the opening), her shoulders measure B.',
      'Open at least C below',
    ],
    [
      say(problems.openingNotGiven, 'A'),
      'The closure has no opening.',
      'It has to open at least A to let her in.',
    ],
    [say(problems.openingNotGiven, undefined), 'The closure has no opening.', 'Say how far it opens'],
    [
      say(problems.openingLongerThanSeam, 'A', 'B', 'C'),
      'The opening ends A below the waist seam, but B is only C long.',
      'Shorten',
    ],
    [
      say(problems.noStockZip, 'A', 'B'),
      'An opening of A is longer than the longest zip that shops usually keep, B (common practice).',
      'Order',
    ],
    [
      say(problems.needleNearBone, 'A', 'B'),
      'A is left between the needle and the ends of the bones (common practice: more than B).',
      'Shorten the bones',
    ],
    [
      say(problems.edgeUnfinished, 'laced'),
      'The bodice edge above the opening is laced, and nothing',
      'Give finish',
    ],
    [
      say(problems.layersNotNeighbours, ['A', 'B'], 'C'),
      'The layers A and B cannot be handled as one, because C lies between them.',
      'Group',
    ],
    [say(problems.baggedWithoutGap, ['A', 'B']), 'The hem of A and B is bagged, and no seam', 'Give one'],
    [say(problems.baggedAlone, 'A'), 'The hem of A is bagged, but no other layer', 'Give the neighbouring'],
    [
      say(problems.baggedNotEqual, ['A', 'B'], 'C', 'D'),
      'The hems of A and B are bagged together but differ by C all round.',
      'Start with equal hems; the outer layer is rolled about D inside',
    ],
    [
      say(problems.gapWithoutSeam, 'A', 'B', 'C'),
      'A gap of A does not fit into B: C has no seam there.',
      'Choose',
    ],
    [
      say(problems.gapTooLong, 'A', 'B', 'C'),
      'A gap of A does not fit into B: the seam is C long.',
      'Choose',
    ],
    [
      say(problems.hemSurplusShows, {
        layer: 'A',
        surplus: 'B',
        share: 'C',
        most: 'D',
        satin: true,
        depth: 'E',
      }),
      'Turned up E, the hem of A has B to ease, C of its length (common practice: up to D on satin).',
      'Turn up less',
    ],
    [
      say(problems.hemSurplusShows, {
        layer: 'A',
        surplus: 'B',
        share: 'C',
        most: 'D',
        satin: false,
        depth: 'E',
      }),
      'Turned up E, the hem of A has B to ease, C of its length (common practice: up to D).',
      'Turn',
    ],
    [say(problems.edgingWithoutRepeat, 'A'), 'The edging A has no repeat.', 'Measure'],
    [
      say(problems.edgingShort, { name: 'A', supply: 'B', need: 'C', buy: 'D', cloth: 'E' }),
      'The cloth E gives B of A from its two edges, cut inside the selvedges, and the hem needs C.',
      'Buy at least D of E.',
    ],
    [
      say(problems.scallopsOffFloor, 'A', 'B'),
      'The scallops’ high points hang A off the floor, their low points B.',
      'Walk',
    ],
    [
      say(problems.sweepNarrowOverHoop, {
        sweep: 'A',
        hoop: 'B',
        ratio: 'C',
        least: 'D',
        needed: 'E',
        widest: 'F',
      }),
      'At the hoop’s level the skirt is A round, C times the hoop of B (common practice: D times).',
      'Widen the gores to E round at that level, or take a hoop of at most F.',
    ],
    [
      say(problems.sweepNarrowOverHoop, { sweep: 'A', hoop: 'B', ratio: 'C', least: 'D', needed: 'E' }),
      'At the hoop’s level',
      'Widen the gores to E round at that level.',
    ],
    [
      say(problems.hoopSmall, 'A', 'B', true),
      'A bottom hoop of A is smaller than is comfortable to walk in with a train (common practice: B).',
      'Take a hoop of B or more',
    ],
    [
      say(problems.hoopSmall, 'A', 'B', false),
      'A bottom hoop of A is smaller than is comfortable to walk in (common practice: B).',
      'Take',
    ],
    [say(problems.hemLow, 'A', 'B'), 'The front hem hangs A off the floor (textbook: B).', 'Walk'],
    [say(problems.bustleWithoutTrain), 'No point of the bustle', 'Give the gown a train'],
    [
      say(problems.bustlePointLiftsNothing, 'A'),
      'The bustle point at A has nothing to lift',
      'Take this point out',
    ],
    [
      say(problems.bustleNumber, { points: 4, least: 3, most: 9, heavy: true }),
      'The bustle has 4 points (common practice: an odd number, 3 to 9 on a heavy train).',
      'Add',
    ],
    [
      say(problems.bustleNumber, { points: 1, least: 3, most: 9, heavy: false }),
      'The bustle has 1 point (common practice: an odd number, 3 to 9).',
      'Add',
    ],
    [
      say(problems.bustleLoopBelowHem, 'A', 'B'),
      'The loop at A ends B below the hem.',
      'Put the anchor higher',
    ],
    [
      say(problems.hoursOverTotal, 'A', 'B'),
      'The tasks add up to A hours, more than the B given in all.',
      'Correct',
    ],
    [
      say(problems.priceRoundedAway, 'A', 'B'),
      'The price of A is rounded to whole steps of B and comes to 0.',
      'Look',
    ],
    [say(problems.calendarClash, 'A', 'B'), 'The milestone B falls before A is done.', 'Change'],
    [say(problems.unknownMilestone, 'A', 'B'), 'The calendar has no milestone A.', 'The milestones are B.'],
    [say(problems.orderImpossible, 'A'), 'No order of making does these before each other: A.', 'Change'],
    [
      say(problems.biasWithoutRoughCut, { layer: 'A', drop: 'B', byRule: true, left: 'C', least: 'D' }),
      'Layer A is on the bias, and no more than C is left below its hem to trim. Its own weight alone draws it up to B longer (by a rule for its weave, from memory).',
      'Hang it for a day at least before it is levelled, and leave D or more',
    ],
    [
      say(problems.biasWithoutRoughCut, {
        layer: 'A',
        drop: 'B',
        byRule: false,
        left: undefined,
        least: 'D',
      }),
      'Layer A is on the bias, and nothing is left below its hem to trim. Its own weight alone draws it up to B longer.',
      'Hang',
    ],
    [
      say(problems.biasWithoutRoughCut, {
        layer: 'A',
        drop: undefined,
        byRule: true,
        left: undefined,
        least: 'D',
      }),
      'Layer A is on the bias, and nothing is left below its hem to trim.',
      'Hang',
    ],
    [
      say(problems.tucksAboveWaist, 'A', 'B', 'C'),
      'The growth tucks of layer A reach B above its hem line, and the layer is cut C long where it is shortest.',
      'Take fewer',
    ],
    [
      say(problems.tucksLieOver, 'A', 'B', 'C'),
      'The growth tucks of layer A are B wide and C apart.',
      'Let apart be more',
    ],
    [
      say(problems.tucksEased, 'A', 'B', 'C', 'D'),
      'In each growth tuck of layer A the lower line is B longer than the upper, C of it (common practice: up to D).',
      'Take narrower',
    ],
  ])('%#', ({ message, hint }, says, hints) => {
    // A whole sentence is told whole, the beginning of one by its beginning.
    if (says.endsWith('.')) expect(bare(message)).toBe(says);
    else expect(bare(message).startsWith(says)).toBe(true);
    expect(bare(hint).startsWith(hints)).toBe(true);
  });

  it('where a point of a bustle is', () => {
    const percent = (share: number) => `${100 * share} %`;
    const place = (own: object) => problems.bustlePlace(own as never, percent);
    expect(place({ seam: 'a/b' })).toBe('a/b');
    expect(place({ gore: 'back', across: 0.25, side: 'left' })).toBe('back, 25 % across on her left');
  });
});
