import * as problems from '../../diagnostics/body-slip-problems.ts';
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { Page } from '../checks/page.ts';
import type { FilePath } from '../spec.ts';
import { flareRound } from './gore-widths.ts';
import { levelLengths } from './length-neighbours.ts';
import { USUAL } from './usual-figures.ts';
import { figureAt, meantBy, spanOf } from './written-figure.ts';

/** What a body can be, one girth beside another. */
export function againstBody(page: Page): Diagnostic[] {
  return [...againstWaist(page), ...tightAtHip(page), ...pointLowest(page)];
}

/** Whole files in the wrong unit: the waist and the length are both off, and by the same. */
export function unitsSlipped(page: Page): Diagnostic[] {
  const { units: given } = page.sketch;
  const waist = page.sketch.bodice?.waistSeam;
  const lengths = levelLengths(page).map(({ down }) => down);
  if (waist === undefined || lengths.length === 0 || given === undefined) return [];
  const long = Math.min(...lengths);
  const suits = (by: number) =>
    waist * by >= USUAL.waist.least &&
    waist * by <= USUAL.waist.most &&
    long * by >= USUAL.level.least &&
    long * by <= USUAL.level.most;
  const size = { mm: 1, cm: 10, in: 25.4 };
  if (suits(1)) return [];
  const out = waist > USUAL.waist.most || long > USUAL.level.possible[1] || waist < USUAL.waist.least;
  const meant = out
    ? (['cm', 'in', 'mm'] as const).find((unit) => unit !== given && suits(size[unit] / size[given]))
    : undefined;
  return meant === undefined
    ? []
    : [problems.unitsSlipped(page.at('units'), given, meant, page.say(waist), page.say(long))];
}

/** Other girths of her and of what hangs from the waist, as so many times the waist seam: common practice. */
const TIMES_WAIST: readonly (readonly [path: FilePath, least: number, most: number, typical: number])[] = [
  [['closure', 'hip'], 1.02, 1.75, 1.35],
  [['closure', 'shoulders'], 1.05, 1.9, 1.45],
];

function againstWaist(page: Page): Diagnostic[] {
  const waist = page.sketch.bodice?.waistSeam;
  if (waist === undefined) return [];
  const yokes = (page.sketch.tiers ?? []).map((_, i) => [['tiers', i, 'yoke'], 0.95, 2.2, 1.3] as const);
  return [...TIMES_WAIST, ...yokes].flatMap(([path, least, most, typical]) => {
    const figure = figureAt(page, path);
    if (figure === undefined) return [];
    const times = figure.value / waist;
    if (times >= least && times <= most) return [];
    return [
      problems.unlikeWaist(spanOf(figure), times < least / 1.3 || times > most * 1.3 ? 'warning' : 'note', {
        label: figure.written.label,
        figure: page.say(figure.value),
        waist: page.say(waist),
        meant: meantBy(figure, typical * waist, (value) => value >= least * waist && value <= most * waist),
      }),
    ];
  });
}

/** How far below the waist the hip is measured, mm (common practice), and what part of it a skirt may have there. */
const HIP_LEVEL = 200;
const TIGHT = { note: 0.83, warning: 0.6 };

/** How wide the gores are at the hip. */
function tightAtHip(page: Page): Diagnostic[] {
  const hip = page.sketch.closure?.hip;
  const waist = page.sketch.bodice?.waistSeam;
  const isFull = (page.sketch.gores ?? []).some(({ fullness }) => fullness !== undefined);
  const flare = flareRound(page);
  if (page.has('fitted-to') || hip === undefined || waist === undefined || flare === undefined || isFull)
    return [];
  const wide = waist + flare * HIP_LEVEL;
  if (wide >= TIGHT.note * hip) return [];
  const sweep = figureAt(page, ['sweep']);
  return [
    problems.tightAtHip(
      sweep === undefined ? page.keyAt('gores') : spanOf(sweep),
      wide < TIGHT.warning * hip ? 'warning' : 'note',
      { wide: page.say(Math.round(wide)), level: page.say(HIP_LEVEL), hip: page.say(hip) },
    ),
  ];
}

/** A bodice that comes to a point is lowest there. */
function pointLowest(page: Page): Diagnostic[] {
  const { point, dropBelowWaist = {} } = page.sketch.bodice ?? {};
  const figure = point && figureAt(page, ['bodice', 'drop-below-waist', point]);
  const others = Object.entries(dropBelowWaist).flatMap(([station, drop]) =>
    station === point || drop === undefined ? [] : [drop],
  );
  if (point === undefined || figure === undefined || others.every((drop) => drop <= figure.value)) return [];
  const lowest = Math.max(...others);
  return [
    problems.pointNotLowest(spanOf(figure), {
      point,
      drop: page.say(figure.value),
      other: page.say(lowest),
      meant: meantBy(figure, 2 * lowest, (value) => value > lowest && value <= USUAL.drop.most),
    }),
  ];
}
