import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/slip-problems.ts';
import type { Page } from '../checks/page.ts';
import { levelLengths, type NamedLength, namedLengths } from './length-neighbours.ts';
import { figureAt, meantBeside, spanOf } from './written-figure.ts';

/** A train, of the gown or of an overskirt, against its finished lengths. */
export function trainsAndLengths(page: Page): Diagnostic[] {
  return [...trainOnFloor(page), ...trainGrows(page)];
}

/** What lies on the floor is what the finished length is longer by than the way to the floor. */
function trainOnFloor(page: Page): Diagnostic[] {
  const figure = figureAt(page, ['train', 'on-floor']);
  if (figure === undefined || page.sketch.lengths?.measured === 'to-floor') return [];
  const full = page.mirrored ? page.back : page.sketch.train?.full;
  const end = namedLengths(page, 'at').find(({ station }) => station === full);
  const floor = namedLengths(page, 'to-floor').find(({ station }) => station === full);
  const level = levelLengths(page).at(-1);
  const from = floor?.down ?? level?.down;
  if (end === undefined || from === undefined || end === level) return [];
  const along =
    floor === undefined && level !== undefined ? end.figure.value - level.figure.value : undefined;
  // Where the bodice dips, a train may be reckoned from its edge or from the waist.
  const found = along !== undefined && near(along, figure.value) ? along : end.down - from;
  const off = Math.abs(found - figure.value);
  if (near(found, figure.value)) return [];
  return [
    problems.trainUnlikeLengths(spanOf(figure), off > figure.value / 2 ? 'warning' : 'note', {
      onFloor: page.say(figure.value),
      found: page.say(found),
      station: end.station,
      length: page.say(end.figure.value),
      meant: meantBeside(figure, found, (value) => Math.abs(value - found) <= 0.1 * found),
    }),
  ];
}

/** A train on the floor may be measured a tenth otherwise, and from the hem in place of the floor, mm. */
const ROUGHLY = 0.1;
const HEM_OFF_FLOOR = 50;

function near(found: number, onFloor: number): boolean {
  return Math.abs(found - onFloor) <= ROUGHLY * Math.max(found, onFloor) + HEM_OFF_FLOOR;
}

/** Set by hand, a train grows from where it begins to where it is longest. */
function trainGrows(page: Page): Diagnostic[] {
  const { train, lengths } = page.sketch;
  const begins = (page.stations ?? []).indexOf(train?.begins ?? '');
  if (train === undefined || lengths?.measured === 'to-floor' || !page.mirrored || begins < 0) return [];
  const inTrain = namedLengths(page, 'at').filter(({ index }) => index >= begins);
  return inTrain.flatMap((length, i) => {
    const before = inTrain[i - 1];
    if (before === undefined || !isShorter(length, before)) return [];
    // Where the one before stands out above both, it is the odd one.
    const earlier = inTrain[i - 2];
    const odd = earlier !== undefined && length.down >= earlier.down ? before : length;
    const sides = [inTrain[inTrain.indexOf(odd) - 1], inTrain[inTrain.indexOf(odd) + 1]];
    const near = sides.flatMap((side) => (side === undefined ? [] : [side.figure.value]));
    const expected = near.reduce((a, b) => a + b, 0) / Math.max(1, near.length);
    const [least, most] = [Math.min(...near), near.length > 1 ? Math.max(...near) : Infinity];
    return [
      problems.trainFallsBack(spanOf(odd.figure), {
        station: odd.station,
        length: page.say(odd.figure.value),
        meant: meantBeside(
          odd.figure,
          expected * (near.length > 1 ? 1 : 1.2),
          (value) => value >= least && value <= most,
        ),
      }),
    ];
  });
}

/** From the waist and from the edge of the bodice: where it dips, either may be meant. */
function isShorter(length: NamedLength, before: NamedLength): boolean {
  return length.down * LEVEL < before.down && length.figure.value * LEVEL < before.figure.value;
}

/** Lengths that differ less are level. */
const LEVEL = 1.02;
