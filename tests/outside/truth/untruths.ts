import { expect } from 'vitest';
import { parse } from 'yaml';
import { factsOf, type GownFacts } from '../facts.ts';
import { measuredGown, type Report } from '../measure/gown.ts';
import { readPattern } from '../measure/pattern.ts';
import { allowanceUntruths } from './allowances.ts';
import { facingUntruths } from './facings.ts';
import { figureUntruths } from './figures.ts';
import { measureUntruths } from './measures.ts';
import { notchUntruths } from './notches.ts';
import { openingUntruths } from './openings.ts';
import { seamUntruths } from './seams.ts';
import { sheetUntruths } from './sheet.ts';

/** Everything that is not as the spec and the trade want it, one sentence each with the measured figure. */
export function untruths(svg: string, report: Report, facts: GownFacts): string[] {
  const gown = measuredGown(svg, report, facts);
  return [
    ...sheetUntruths(gown),
    ...seamUntruths(gown),
    ...measureUntruths(gown),
    ...allowanceUntruths(gown),
    ...notchUntruths(gown),
    ...facingUntruths(gown),
    ...openingUntruths(gown),
    ...figureUntruths(gown),
  ];
}

/** Fails with the whole list, so that one run shows every fault. */
export function expectTrue(svg: string, report: Report, yaml: string): void {
  expect(untruths(svg, report, factsOf(yaml, draftedEdge(svg, yaml)))).toEqual([]);
}

/** Lower edges of a drafted bodice's panels, measured on the pattern: nothing else says what the gores' tops are to be. */
function draftedEdge(svg: string, yaml: string): Record<string, unknown> {
  if (!/^ +draft:/m.test(yaml)) return {};
  const gores = parse(yaml).gores as { name: string; 'on-fold'?: boolean }[];
  const panels = readPattern(svg).pieces.filter(({ part }) => part === 'bodice');
  const half = gores.map(({ name }) => panels.find(({ gore }) => gore === name)!.sew.get('waist')!.length);
  const whole = gores.map((gore, i) => [gore.name, `${half[i]! * (gore['on-fold'] ? 2 : 1)}mm`]);
  const round = 2 * half.reduce((sum, length) => sum + length, 0);
  return { 'waist-seam': `${round}mm`, panels: Object.fromEntries(whole) };
}
