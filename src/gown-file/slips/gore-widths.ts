import type { Diagnostic, Level } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/gore-slip-problems.ts';
import type { Page } from '../checks/page.ts';
import { levelLengths } from './length-neighbours.ts';
import { USUAL } from './usual-figures.ts';
import { type Figure, figureAt, meantBeside, meantBy, spanOf } from './written-figure.ts';

/** A gore's flare, whole even on the fold, and what in the file makes it so. */
export interface Flare {
  readonly gore: string;
  readonly index: number;
  readonly top: number;
  readonly angle: number;
  readonly key: 'hem' | 'half-hem' | 'flare' | 'half-flare';
  /** The width that was written, and where; none where the flare was. */
  readonly width?: Figure;
  /** Of the width written, for one of the whole: halves on the fold. */
  readonly part: number;
}

/** Each gore's width against its neighbours', and all of them against a hem's. */
export function goreWidths(page: Page): Diagnostic[] {
  const flares = flaresOf(page);
  const odd = [...unlikeNeighbours(page, flares), ...oddEdge(page)];
  // What one odd gore does to the whole hem follows from it.
  const whole = odd.length > 0 ? [] : [...narrowerThanTop(page, flares), ...hemAllRound(page, flares)];
  return [...odd, ...hemWidthLevel(page), ...whole];
}

/** Nothing where one of them cannot be told: the others have nothing to be held against. */
export function flaresOf(page: Page): Flare[] | undefined {
  const at = page.sketch.lengths?.hemWidthAt;
  const gores = page.sketch.gores ?? [];
  const flares: Flare[] = [];
  for (const [index, gore] of gores.entries()) {
    const onFold = gore.onFold === true;
    const panel = gore.name === undefined ? undefined : page.sketch.bodice?.panels?.[gore.name];
    const top = (onFold ? (gore.halfTop === undefined ? undefined : 2 * gore.halfTop) : gore.top) ?? panel;
    if (top === undefined || gore.name === undefined) return undefined;
    const base = { gore: gore.name, index, top, part: onFold ? 2 : 1 };
    const angle = onFold ? gore.halfFlare : gore.flare;
    const hem = onFold ? gore.halfHem : gore.hem;
    if (typeof angle === 'number')
      flares.push({ ...base, angle: base.part * angle, key: onFold ? 'half-flare' : 'flare' });
    else if (angle?.[0] !== undefined && angle[1] !== undefined)
      flares.push({ ...base, angle: angle[0] + angle[1], key: 'flare' });
    else if (hem !== undefined && at !== undefined && at > 0) {
      const key = onFold ? 'half-hem' : 'hem';
      const width = figureAt(page, ['gores', index, key]);
      flares.push({ ...base, angle: (base.part * hem - top) / at, key, ...(width && { width }) });
    } else return undefined;
  }
  return flares;
}

/** Gores beside each other may differ so much in how they flare, by edge and for their tops, before it is odd. */
const BETWEEN_TWO = 1.22;
const BESIDE_ONE = 1.9;
/** Where the other gores differ among themselves by more than this, one more is odd only far out. */
const EVEN = 1.35;
const UNEVEN = 2.1;
const FAR = 2.7;
/** The first or the last gore may be flatter than its neighbour by so much more. */
const FLAT_FRONT = 1.5;
/** Flares below this are all alike: nearly straight, radians by edge. */
const STRAIGHT = 0.02;

function unlikeNeighbours(page: Page, flares: readonly Flare[] | undefined): Diagnostic[] {
  if (flares === undefined || flares.length < 2) return [];
  const odd = oddOneOut(page, flares);
  if (odd === undefined) return [];
  const { i: worst, beside } = odd;
  const level: Level = odd.by > FAR ? 'warning' : 'note';
  const flare = flares[worst]!;
  const at = page.sketch.lengths?.hemWidthAt ?? 0;
  const angle = beside.reduce((sum, other) => sum + other.angle, 0) / beside.length;
  const expected = (flare.top + angle * at) / flare.part;
  const { width } = flare;
  const span = width === undefined ? page.at('gores', flare.index, flare.key) : spanOf(width);
  return [
    problems.goreUnlikeNeighbours(span, level, {
      gore: flare.gore,
      key: flare.key,
      degrees: inDegrees(flare.angle),
      beside: beside.map((other) => `${other.gore} ${inDegrees(other.angle)}`),
      // Of two gores either may be the odd one.
      meant:
        flares.length > 2 && width
          ? meantBeside(width, expected, (value) => isNear(value, expected))
          : undefined,
    }),
  ];
}

/** One edge of a gore that leans farther out than this many times any other of the skirt. */
const LEANS = 1.45;
/** Edges that must be known: of fewer, one may well lean more than the rest. */
const ENOUGH_EDGES = 6;

/** Where the two edges of a gore are given apart: one that leans far more than all others. */
function oddEdge(page: Page): Diagnostic[] {
  const edges = (page.sketch.gores ?? []).flatMap(({ onFold, flare, halfFlare }, i) => {
    if (onFold === true) return halfFlare === undefined ? [] : [{ i, angle: halfFlare, fold: true }];
    if (typeof flare === 'number') return [{ i, angle: flare / 2, fold: false }];
    return (flare ?? []).flatMap((angle) => (angle === undefined ? [] : [{ i, angle, fold: false }]));
  });
  const sorted = edges.toSorted((a, b) => b.angle - a.angle);
  const [first, second] = sorted;
  // A front on the fold has all of its flare at the one edge.
  if (first === undefined || second === undefined || edges.length < ENOUGH_EDGES || first.fold) return [];
  if (first.angle <= LEANS * Math.max(second.angle, STRAIGHT)) return [];
  return [
    problems.edgeLeansOut(
      page.at('gores', first.i, 'flare'),
      page.sketch.gores?.[first.i]?.name ?? '',
      inDegrees(first.angle),
      inDegrees(second.angle),
    ),
  ];
}

/** A gore that is pegged while its neighbours are not. */
const PEGGED_GORE = 0.8;

function narrowerThanTop(page: Page, flares: readonly Flare[] | undefined): Diagnostic[] {
  return (flares ?? []).flatMap(({ gore, top, width, part }, i) => {
    if (width === undefined || part * width.value >= PEGGED_GORE * top) return [];
    if (besides(page, flares!, i).some(({ angle }) => angle < 0)) return [];
    return [
      problems.goreNarrowerThanTop(spanOf(width), {
        gore,
        hem: page.say(part * width.value),
        top: page.say(top),
        meant: meantBy(width, (1.5 * top) / part, (value) => part * value >= top),
      }),
    ];
  });
}

/** The one beside which the others agree best: a slip puts its neighbours out of step too. */
function oddOneOut(page: Page, flares: readonly Flare[]) {
  const odd = flares.flatMap((_, i) => {
    const beside = besides(page, flares, i);
    const by = oddness(page, flares, i);
    if (by <= (beside.length > 1 ? BETWEEN_TWO : BESIDE_ONE)) return [];
    const others = flares.filter((_, j) => j !== i);
    const uneven = Math.max(...others.map((_, j) => oddness(page, others, j)));
    return uneven > EVEN && by <= UNEVEN ? [] : [{ i, beside, by, uneven }];
  });
  return odd.toSorted((a, b) => a.uneven - b.uneven || b.by - a.by)[0];
}

/** A repaired width lies as near as this to what is expected. */
const NEAR = 1.3;
const isNear = (value: number, expected: number) => Math.abs(Math.log(value / expected)) < Math.log(NEAR);
const inDegrees = (angle: number): string => `${Number(((angle * 180) / Math.PI).toFixed(1))}°`;

/** How many times it flares more than the fullest beside it, or less than the straightest, by edge and for its top. */
function oddness(page: Page, flares: readonly Flare[], i: number): number {
  const beside = besides(page, flares, i);
  if (beside.length === 0) return 1;
  const own = flares[i]!;
  const by = (measure: (flare: Flare) => number) => {
    const others = beside.map(measure);
    return {
      over: measure(own) / Math.max(...others),
      under: Math.min(...others) / measure(own),
    };
  };
  const edge = by(({ angle }) => Math.max(angle / 2, STRAIGHT));
  const forTop = by(({ angle, top }) => Math.max(angle / top, (2 * STRAIGHT) / top));
  // A flat front is common: five gores of 1914 flare by 7° in front and by 18° beside it (Bennett).
  const under = Math.min(edge.under, forTop.under) / (beside.length > 1 ? 1 : FLAT_FRONT);
  return Math.max(1, Math.min(edge.over, forTop.over), under);
}

function besides(page: Page, flares: readonly Flare[], i: number): Flare[] {
  const n = flares.length;
  const around =
    page.mirrored || n < 3 ? [flares[i - 1], flares[i + 1]] : [flares[(i + n - 1) % n], flares[(i + 1) % n]];
  return around.filter((flare) => flare !== undefined);
}

/** Hem widths hold near the level hem: far from it, a slip in the distance makes every gore too wide or too narrow. */
const LEVEL = { note: 1.15, warning: 2.2 };

function hemWidthLevel(page: Page): Diagnostic[] {
  const figure = figureAt(page, ['lengths', 'hem-width-at']);
  const lengths = levelLengths(page).map(({ down }) => down - (page.sketch.lengths?.offFloor ?? 0));
  if (figure === undefined || lengths.length === 0 || !(figure.value > 0)) return [];
  const [least, most] = [Math.min(...lengths), Math.max(...lengths)];
  // Lengths that leave no skirt have been spoken of.
  if (least < USUAL.level.possible[0]) return [];
  const off = Math.max(figure.value / most, least / figure.value);
  if (!(off > LEVEL.note)) return [];
  const expected = figure.value > most ? most : least;
  return [
    problems.hemWidthFarFromHem(spanOf(figure), off > LEVEL.warning ? 'warning' : 'note', {
      at: page.say(figure.value),
      hem: page.say(expected),
      meant: meantBeside(
        figure,
        expected,
        (value) => value > least / LEVEL.note && value < most * LEVEL.note,
      ),
    }),
  ];
}

/** Full circles that a hem may make: more is a rare skirt, much more a slip. */
const CIRCLES = { note: 1.1, warning: 2.6 };
/** A hem all round that is narrower than this part of the waist. */
const PEGGED = { note: 0.8, warning: 0.55 };

/** The angles of all gores together; nothing where they cannot be told. */
export function flareRound(
  page: Page,
  flares: readonly Flare[] | undefined = flaresOf(page),
): number | undefined {
  const { sweep, bodice, lengths } = page.sketch;
  const at = lengths?.hemWidthAt;
  if (sweep !== undefined && bodice?.waistSeam !== undefined && at !== undefined && at > 0)
    return (sweep - bodice.waistSeam) / at;
  return flares?.reduce((sum, { angle, part }) => sum + angle * (page.mirrored && part === 1 ? 2 : 1), 0);
}

function hemAllRound(page: Page, flares: readonly Flare[] | undefined): Diagnostic[] {
  const waist = page.sketch.bodice?.waistSeam;
  const at = page.sketch.lengths?.hemWidthAt;
  const sweep = figureAt(page, ['sweep']);
  const round = flareRound(page, flares);
  if (round === undefined || waist === undefined) return widerThanHalfCircle(page, flares);
  const long = at ?? Math.max(0, ...levelLengths(page).map(({ down }) => down));
  const circles = round / (2 * Math.PI);
  const hem = waist + round * long;
  const level = (off: boolean): Level => (off ? 'warning' : 'note');
  const span = sweep === undefined ? page.keyAt('gores') : spanOf(sweep);
  const meant =
    sweep &&
    meantBy(sweep, waist + (Math.PI / 2) * long, (value) => {
      const turns = (value - waist) / long / (2 * Math.PI);
      return value > waist && turns <= 1;
    });
  if (circles > CIRCLES.note)
    return [
      problems.moreThanCircle(span, level(circles > CIRCLES.warning), {
        hem: page.say(hem),
        circles: circles.toFixed(1),
        meant,
      }),
    ];
  return hem < PEGGED.note * waist
    ? [
        problems.hemNarrowerThanWaist(span, level(hem < PEGGED.warning * waist), {
          hem: page.say(hem),
          waist: page.say(waist),
          meant,
        }),
      ]
    : [];
}

/** A gore of more than half a circle, radians: a whole skirt in one piece is the widest that is cut. */
const HALF_CIRCLE = 1.03 * Math.PI;

/** Of an overskirt, whose waist is not known here. */
function widerThanHalfCircle(page: Page, flares: readonly Flare[] | undefined): Diagnostic[] {
  return (flares ?? [])
    .filter(({ angle }) => angle > HALF_CIRCLE)
    .map(({ gore, index, key, angle, width }) => {
      const span = width === undefined ? page.at('gores', index, key) : spanOf(width);
      return problems.goreMoreThanHalfCircle(span, gore, inDegrees(angle));
    });
}
