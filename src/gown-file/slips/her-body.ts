import * as problems from '../../diagnostics/body-slip-problems.ts';
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { Page } from '../checks/page.ts';
import type { FilePath } from '../spec.ts';
import { type Figure, figureAt, meantBeside, spanOf } from './written-figure.ts';

/**
 * Her girths as so many times her waist, and how far above or below the waist they lie, mm: what bodies have,
 * children's and stout ones too. EN 13402-3's sizes of women lie within 1.2 to 1.35 at the bust and 1.2 to 1.45 at the
 * hip, from memory; the rest is common practice.
 */
const LEVELS: Readonly<Record<string, { readonly times: Range; readonly away: Range }>> = {
  'high-bust': { times: [0.88, 1.45, 1.2], away: [110, 300, 210] },
  bust: { times: [0.95, 1.62, 1.28], away: [80, 250, 165] },
  underbust: { times: [0.88, 1.25, 1.06], away: [35, 170, 85] },
  'high-hip': { times: [0.92, 1.5, 1.24], away: [50, 150, 90] },
  hip: { times: [0.95, 1.75, 1.35], away: [120, 290, 200] },
};

/** Least, most, and what a maker would expect. */
type Range = readonly [least: number, most: number, typical: number];

/** One girth, or one height, as a part of another: common practice. */
const BESIDE: readonly {
  readonly of: 'girth' | 'height';
  readonly at: string;
  readonly part: Range;
  readonly whole: string;
}[] = [
  { of: 'girth', at: 'high-bust', part: [0.8, 1.03, 0.93], whole: 'bust' },
  { of: 'girth', at: 'underbust', part: [0.68, 1.03, 0.86], whole: 'bust' },
  { of: 'girth', at: 'high-hip', part: [0.8, 1.06, 0.92], whole: 'hip' },
  { of: 'height', at: 'underbust', part: [0.38, 0.72, 0.52], whole: 'bust' },
  { of: 'height', at: 'bust', part: [0.6, 0.93, 0.77], whole: 'high-bust' },
];

/** Over the front, side seam to side seam, and over one half of her, as a part of the whole girth. */
const PARTS = { front: [0.42, 0.64, 0.51], left: [0.45, 0.55, 0.5] } as const satisfies Record<string, Range>;
/** From bust point to bust point, as a part of the bust (EN sizes, from memory: 18 to 24 cm on 84 to 110). */
const BUST_POINTS: Range = [0.14, 0.28, 0.2];
/** What is taken off or added, as a part of the girth: lacing and ease, common practice. */
const REDUCED: Range = [0, 0.16, 0.05];
/** How far the upper edge may lie above the bust, mm. */
const ABOVE_BUST = 140;

/** Measures of her body that can hardly be one body's: a digit that slipped, before any panel is drafted from it. */
export function unlikeHerBody(page: Page): Diagnostic[] {
  const girths = girthsOf(page);
  const waist = girths.find(({ at }) => at === 'waist')?.girth;
  return [
    ...againstHerWaist(page, girths, waist),
    ...girths.flatMap(({ at, height, girth, front, left }) => [
      ...(height === undefined || LEVELS[at] === undefined ? [] : outside(page, height, LEVELS[at]!.away)),
      ...(front === undefined || girth === undefined
        ? []
        : outside(page, front, scaled(PARTS.front, girth.value))),
      ...(left === undefined || girth === undefined
        ? []
        : outside(page, left, scaled(PARTS.left, girth.value))),
    ]),
    ...BESIDE.flatMap(({ of, at, part, whole }) => {
      const [own, other] = [at, whole].map((name) => girths.find((level) => level.at === name)?.[of]);
      return own === undefined || other === undefined ? [] : outside(page, own, scaled(part, other.value));
    }),
    ...besideHerBust(page, girths),
    ...reductions(page, girths),
  ];
}

interface HerGirth {
  readonly at: string;
  readonly girth: Figure | undefined;
  readonly front: Figure | undefined;
  readonly left: Figure | undefined;
  /** From the waist, up or down. */
  readonly height: Figure | undefined;
}

function girthsOf(page: Page): HerGirth[] {
  return (page.sketch.body?.girths ?? []).flatMap(({ at, below }, i) => {
    if (at === undefined) return [];
    const own = (key: 'above' | 'below' | 'girth' | 'front' | 'left'): Figure | undefined =>
      figureAt(page, ['body', 'girths', i, key]);
    const height = own(below === undefined ? 'above' : 'below');
    const figures = { girth: own('girth'), front: own('front'), left: own('left') };
    return [{ at, ...figures, height }];
  });
}

/** Where most of her girths are out beside the waist, it is the waist that slipped. */
function againstHerWaist(page: Page, girths: readonly HerGirth[], waist: Figure | undefined): Diagnostic[] {
  if (waist === undefined) return [];
  const known = girths.flatMap(({ at, girth }) => {
    const level = LEVELS[at];
    return level === undefined || girth === undefined ? [] : [{ girth, times: level.times }];
  });
  const out = known.filter(({ girth, times }) => !isWithin(girth.value / waist.value, times));
  if (out.length > known.length / 2 && known.length > 1) {
    const typical = median(known.map(({ girth, times }) => girth.value / times[2]));
    return [unlike(page, waist, [typical * 0.8, typical * 1.25, typical])];
  }
  return out.map(({ girth, times }) => unlike(page, girth, scaled(times, waist.value)));
}

function besideHerBust(page: Page, girths: readonly HerGirth[]): Diagnostic[] {
  const bust = girths.find(({ at }) => at === 'bust');
  const points = figureAt(page, ['body', 'bust-points-apart']);
  const edges = page.keysOf('bodice', 'draft', 'upper-edge');
  const top = bust?.height?.value;
  return [
    ...(points === undefined || bust?.girth === undefined
      ? []
      : outside(page, points, scaled(BUST_POINTS, bust.girth.value))),
    ...edges.flatMap((station) => {
      const figure = figureAt(page, ['bodice', 'draft', 'upper-edge', station]);
      if (figure === undefined || top === undefined) return [];
      return outside(page, figure, [20, top + ABOVE_BUST, top]);
    }),
  ];
}

function reductions(page: Page, girths: readonly HerGirth[]): Diagnostic[] {
  return page.keysOf('bodice', 'draft', 'reduce').flatMap((at) => {
    const path: FilePath = ['bodice', 'draft', 'reduce', at];
    const figure = figureAt(page, path);
    const girth = girths.find((level) => level.at === at)?.girth;
    if (figure === undefined || girth === undefined) return [];
    return outside(page, figure, scaled(REDUCED, girth.value));
  });
}

function outside(page: Page, figure: Figure, range: Range): Diagnostic[] {
  return isWithin(Math.abs(figure.value), range) ? [] : [unlike(page, figure, range)];
}

function unlike(page: Page, figure: Figure, [least, most, typical]: Range): Diagnostic {
  const size = Math.abs(figure.value);
  const isFar = size < least / FAR || size > most * FAR;
  return problems.unlikeHerBody(spanOf(figure), isFar ? 'warning' : 'note', {
    label: figure.written.label,
    figure: page.say(figure.value),
    least: page.say(Math.round(least)),
    most: page.say(Math.round(most)),
    meant: meantBeside(figure, typical, (value) => value >= least && value <= most),
  });
}

/** So many times beyond what bodies have it is no odd body any more. */
const FAR = 1.3;

function scaled([least, most, typical]: Range, by: number): Range {
  return [least * by, most * by, typical * by];
}

function isWithin(value: number, [least, most]: Range): boolean {
  return value >= least && value <= most;
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)]!;
}
