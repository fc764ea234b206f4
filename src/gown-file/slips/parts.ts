import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/slip-problems.ts';
import type { Page } from '../checks/page.ts';
import { longestLevel } from './length-neighbours.ts';
import { type Figure, figureAt, meantBy, spanOf } from './written-figure.ts';

/** Godets and flounces, against the skirt and each other. */
export function partsOfSkirt(page: Page): Diagnostic[] {
  return [...insideLength(page), ...belowHem(page), ...godetsAlike(page)];
}

/** What lies between the waist and the hem: a godet's point, a flounce's height and depth. */
function insideLength(page: Page): Diagnostic[] {
  const length = longestLevel(page);
  if (length === undefined) return [];
  const judge = (figure: Figure | undefined, least: number, most: number, what: string): Diagnostic[] => {
    if (figure === undefined || (figure.value === 0 && least < 0.1)) return [];
    const part = figure.value / length;
    if (part >= least && part <= most) return [];
    return [
      problems.oddPartOfLength(spanOf(figure), {
        label: figure.written.label,
        figure: page.say(figure.value),
        what,
        skirt: page.say(length),
        meant: meantBy(
          figure,
          ((least + most) / 2) * length,
          (value) => value >= least * length && value <= most * length,
        ),
      }),
    ];
  };
  return [
    ...(page.sketch.godets ?? []).flatMap((_, i) =>
      judge(figureAt(page, ['godets', i, 'from']), 0.3, 0.78, 'the point of a godet'),
    ),
    ...(page.sketch.flounces ?? []).flatMap((_, i) => [
      ...judge(figureAt(page, ['flounces', i, 'depth']), 0.02, 0.6, 'a flounce'),
      ...judge(figureAt(page, ['flounces', i, 'above-hem']), 0.01, 0.8, 'a flounce'),
    ]),
  ];
}

/** A flounce sewn on above the hem ends about at it, mm. */
const BELOW_HEM = 60;

function belowHem(page: Page): Diagnostic[] {
  return (page.sketch.flounces ?? []).flatMap(({ depth, aboveHem = 0 }, i) => {
    const figure = figureAt(page, ['flounces', i, 'depth']);
    if (figure === undefined || depth === undefined || aboveHem === 0) return [];
    if (depth - aboveHem <= BELOW_HEM) return [];
    return [
      problems.flounceBelowHem(spanOf(figure), {
        depth: page.say(depth),
        below: page.say(depth - aboveHem),
        meant: meantBy(figure, aboveHem, (value) => value <= aboveHem + BELOW_HEM && value > aboveHem / 3),
      }),
    ];
  });
}

/** Godets of one skirt differ less than this, as so many times. */
const GODETS_ALIKE = 2.2;

function godetsAlike(page: Page): Diagnostic[] {
  const widths = (page.sketch.godets ?? []).flatMap((_, i) => figureAt(page, ['godets', i, 'width']) ?? []);
  if (widths.length < 2) return [];
  return widths.flatMap((figure) => {
    const others = widths.filter((other) => other !== figure).map(({ value }) => value);
    const [least, most] = [Math.min(...others), Math.max(...others)];
    if (figure.value >= least / GODETS_ALIKE && figure.value <= most * GODETS_ALIKE) return [];
    // Of two, the smaller and the larger are odd alike: the first is spoken of.
    if (widths.length === 2 && figure !== widths[0]) return [];
    return [
      problems.godetUnlikeOthers(spanOf(figure), {
        width: page.say(figure.value),
        others: others.map((value) => page.say(value)),
        meant: meantBy(
          figure,
          Math.sqrt(least * most),
          (value) => value >= least / 1.3 && value <= most * 1.3,
        ),
      }),
    ];
  });
}
