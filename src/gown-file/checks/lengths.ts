import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/station-problems.ts';
import { BOUNDS } from '../shape/bounds.ts';
import { USUAL_OFF_FLOOR } from '../shape/usual.ts';
import type { Page } from './page.ts';

/** What the lengths need beside themselves: the floor, the level of the hem widths, both centres, the train. */
export function checkLengths(page: Page): Diagnostic[] {
  if (page.sketch.lengths === undefined || !page.hasSection('lengths')) return [];
  return [
    ...checkNeededStations(page),
    ...checkFloor(page),
    ...checkHemWidthAt(page),
    ...checkPoint(page),
    ...checkTrain(page),
    ...checkWearing(page),
  ];
}

function checkNeededStations(page: Page): Diagnostic[] {
  const { stations } = page;
  if (!page.hasSection('lengths', 'at') || stations === undefined) return [];
  const needed = page.mirrored ? [page.front, page.back] : [stations[0]!];
  return needed
    .filter((station) => !page.has('lengths', 'at', station))
    .map((station) => problems.lengthMissing(page.keyAt('lengths', 'at'), station));
}

function checkFloor(page: Page): Diagnostic[] {
  const { measured, offFloor, at = {} } = page.sketch.lengths!;
  if (measured !== 'to-floor') {
    return page.has('lengths', 'off-floor')
      ? [problems.offFloorUnused(page.keyAt('lengths', 'off-floor'), measured ?? 'finished')]
      : [];
  }
  if (!page.has('lengths', 'off-floor'))
    return [problems.offFloorMissing(page.at('lengths', 'measured'), page.say(USUAL_OFF_FLOOR))];
  return Object.entries(at)
    .filter(
      ([, length]) =>
        offFloor !== undefined && length !== undefined && length - offFloor < BOUNDS.length.least,
    )
    .map(([station, length]) =>
      problems.hemAboveWaist(
        page.at('lengths', 'at', station),
        station,
        page.say(length!),
        page.say(offFloor!),
      ),
    );
}

function checkHemWidthAt(page: Page): Diagnostic[] {
  const gores = page.sketch.gores ?? [];
  const index = gores.findIndex((_, i) => page.has('gores', i, 'hem') || page.has('gores', i, 'half-hem'));
  const asked = page.has('sweep') ? 'sweep' : index >= 0 ? 'hem' : undefined;
  const given = page.has('lengths', 'hem-width-at');
  if (asked !== undefined && !given) return [problems.hemWidthAtMissing(page.keyAt('lengths'), asked)];
  return asked === undefined && given
    ? [problems.hemWidthAtUnused(page.keyAt('lengths', 'hem-width-at'))]
    : [];
}

function checkPoint(page: Page): Diagnostic[] {
  const point = page.sketch.bodice?.point;
  if (point === undefined || !page.mirrored) return [];
  return (page.sketch.bodice?.dropBelowWaist?.[point] ?? 0) > 0 || !page.has('bodice', 'point')
    ? []
    : [problems.pointWithoutDrop(page.at('bodice', 'point'), point)];
}

/** A heel that is worn moves the lengths only where the one that she was measured in is known. */
function checkWearing(page: Page): Diagnostic[] {
  const known = page.has('lengths', 'measured-in', 'heel') || !page.has('lengths', 'worn-in', 'heel');
  return known ? [] : [problems.heelMeasuredInMissing(page.keyAt('lengths', 'worn-in', 'heel'))];
}

function checkTrain(page: Page): Diagnostic[] {
  const { train, lengths } = page.sketch;
  if (train === undefined || !page.hasSection('train')) return [];
  const faults = page.mirrored ? trainBothSidesAlike(page) : trainOfOneSide(page);
  if (lengths?.measured === 'to-floor' && !page.has('train', 'on-floor'))
    faults.push(problems.onFloorMissing(page.keyAt('train')));
  return faults;
}

function trainBothSidesAlike(page: Page): Diagnostic[] {
  const faults = (['full', 'ends'] as const)
    .filter((key) => page.has('train', key))
    .map((key) => problems.trainAlikeBothSides(page.keyAt('train', key), key));
  if (page.sketch.train?.begins === page.stations?.at(-1))
    faults.push(problems.trainBeginsBehind(page.at('train', 'begins')));
  return faults;
}

/** All the way round a train begins, is longest and ends at stations in this order; the closing seam comes last again. */
function trainOfOneSide(page: Page): Diagnostic[] {
  const { stations } = page;
  const { begins, full, ends } = page.sketch.train ?? {};
  const left = (['full', 'ends'] as const).filter((key) => !page.has('train', key));
  if (left.length > 0) return [problems.trainWithoutSymmetry(page.keyAt('train'), left)];
  if (
    stations === undefined ||
    [begins, full, ends].some((name) => name === undefined || !stations.includes(name))
  )
    return [];
  const [first, longest, last] = [begins!, full!, ends!].map((name) => stations.indexOf(name)) as [
    number,
    number,
    number,
  ];
  return first < longest && (longest < last || last === 0)
    ? []
    : [problems.trainOutOfOrder(page.at('train', 'begins'), stations)];
}
