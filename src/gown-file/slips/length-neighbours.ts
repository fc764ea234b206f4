import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/slip-problems.ts';
import type { Page } from '../checks/page.ts';
import { judged } from './unusual-figures.ts';
import { USUAL } from './usual-figures.ts';
import { type Figure, figureAt, meantBeside, spanOf } from './written-figure.ts';

/** A length at a station; `down` is from the level waist, so that a bodice that dips does not make it look short. */
export interface NamedLength {
  readonly station: string;
  readonly index: number;
  readonly figure: Figure;
  readonly down: number;
}

/** Each length against those beside it. */
export function lengthsBesideOthers(page: Page): Diagnostic[] {
  const level = levelLengths(page);
  const floor = namedLengths(page, 'to-floor');
  const toFloor = page.sketch.lengths?.measured === 'to-floor';
  return [
    ...shortest(page, level),
    ...besideOthers(page, level, toFloor),
    ...besideOthers(page, floor, true),
  ];
}

/** Those that are not in a train that is set by hand. */
export function levelLengths(page: Page): NamedLength[] {
  const { train, lengths } = page.sketch;
  const { stations = [] } = page;
  const all = namedLengths(page, 'at');
  if (train === undefined || lengths?.measured === 'to-floor') return all;
  const begins = stations.indexOf(train.begins ?? '');
  const ends = page.mirrored ? stations.length : stations.indexOf(train.ends ?? '');
  return begins < 0
    ? []
    : all.filter(
        ({ index }) => index <= begins || (ends > begins && index >= ends) || (ends === 0 && index === 0),
      );
}

export function namedLengths(page: Page, key: 'at' | 'to-floor'): NamedLength[] {
  const drops = page.sketch.bodice?.dropBelowWaist;
  return (page.stations ?? []).flatMap((station, index) => {
    const figure = figureAt(page, ['lengths', key, station]);
    return figure === undefined || !(figure.value > 0)
      ? []
      : [{ station, index, figure, down: figure.value + (drops?.[station] ?? 0) }];
  });
}

/** From the level waist to the level hem, or to the floor; nothing where no length is known. */
export function longestLevel(page: Page): number | undefined {
  const lengths = levelLengths(page).map(({ down }) => down);
  return lengths.length === 0 ? undefined : Math.max(...lengths);
}

/** A skirt may trail behind, and hangs on her somewhere. */
function shortest(page: Page, lengths: readonly NamedLength[]): Diagnostic[] {
  if (page.front !== 'centre-front' || lengths.length === 0) return [];
  const least = lengths.reduce((a, b) => (b.down < a.down ? b : a));
  return judged(page, least.figure, USUAL.level);
}

/**
 * How far a length may lie from what those beside it make of it: the floor is level, so that lengths to it differ
 * little; a hem may be cut to fall or rise, and then it does so step by step.
 */
const TO_FLOOR = { note: 1.08, warning: 1.25 };
const FINISHED = { note: 1.12, warning: 1.7 };
const ASYMMETRIC = { note: 1.3, warning: 1.6 };
/** No hem rises and falls by so much from one seam to the next and back. */
const NO_HEM = 3;
/** Steps of a hem that is level or nearly so: only beside such lengths is another one odd. */
const REGULAR = 1.05;

function besideOthers(page: Page, lengths: readonly NamedLength[], toFloor: boolean): Diagnostic[] {
  const limits = !page.mirrored ? ASYMMETRIC : toFloor ? TO_FLOOR : FINISHED;
  const odd = oddOneOut(page, lengths, limits.note);
  if (odd === undefined) return [];
  const { length, expected, off, rest } = odd;
  const ofMany = lengths.length > 2;
  // Part of a skirt may well hang lower on one side.
  if (page.front !== 'centre-front' && !ofMany) return [];
  if (limits === FINISHED && ofMany && off < limits.warning && rest > REGULAR) return [];
  const level = off > NO_HEM && ofMany ? 'error' : off > limits.warning ? 'warning' : 'note';
  return [found(page, length, expected, level)];
}

/** The one beside which the others agree best: a slip puts its neighbours out of step too. */
function oddOneOut(page: Page, lengths: readonly NamedLength[], least: number) {
  const hem = page.sketch.lengths?.hemWidthAt;
  const odd = lengths.flatMap((length, i) => {
    const beside = besides(page, lengths, i);
    const sides = beside.map(({ down }) => down);
    if (sides.length === 0) return [];
    const fromEdge = beyond(
      length.figure.value,
      beside.map(({ figure }) => figure.value),
    );
    const off = Math.min(beyond(length.down, sides), fromEdge);
    const others = lengths.filter((other) => other !== length).map(({ down }) => down);
    // Of two lengths the one is odd that the level of the hem widths does not agree with.
    const rest = roughness(others.length > 1 || hem === undefined ? others : [...others, hem]);
    const expected = sides.reduce((a, b) => a + b, 0) / sides.length;
    return off > least ? [{ length, expected, off, rest }] : [];
  });
  return odd.reduce<(typeof odd)[number] | undefined>(
    (a, b) => (a === undefined || b.rest < a.rest - 1e-9 || (b.rest <= a.rest && b.off > a.off) ? b : a),
    undefined,
  );
}

function found(
  page: Page,
  { station, figure, down }: NamedLength,
  expected: number,
  level: Diagnostic['level'],
) {
  const drop = down - figure.value;
  const near = (value: number) => Math.abs(Math.log((value + drop) / expected)) < Math.log(NEAR);
  return problems.lengthUnlikeNeighbours(spanOf(figure), level, {
    station,
    length: page.say(figure.value),
    expected: page.say(Math.round(expected - drop)),
    meant: meantBeside(figure, expected - drop, near),
  });
}

/** A repaired length lies as near as this to what is expected. */
const NEAR = 1.1;

function besides(page: Page, lengths: readonly NamedLength[], i: number): NamedLength[] {
  const n = lengths.length;
  const around =
    page.mirrored || n < 3
      ? [lengths[i - 1], lengths[i + 1]]
      : [lengths[(i + n - 1) % n], lengths[(i + 1) % n]];
  return around.filter((length) => length !== undefined);
}

/** How many times it is longer than the longest beside it, or shorter than the shortest; 1 where it lies between. */
function beyond(length: number, sides: readonly number[]): number {
  return Math.max(1, length / Math.max(...sides), Math.min(...sides) / length);
}

/** The greatest step from one to the next, as so many times. */
function roughness(lengths: readonly number[]): number {
  return lengths.reduce((most, length, i) => {
    const before = lengths[i - 1] ?? length;
    return Math.max(most, length / before, before / length);
  }, 1);
}
