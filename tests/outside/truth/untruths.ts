import { expect } from 'vitest';
import { factsOf, type GownFacts } from '../facts.ts';
import { measuredGown, type Report } from '../measure/gown.ts';
import { allowanceUntruths } from './allowances.ts';
import { figureUntruths } from './figures.ts';
import { measureUntruths } from './measures.ts';
import { notchUntruths } from './notches.ts';
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
    ...figureUntruths(gown),
  ];
}

/** Fails with the whole list, so that one run shows every fault. */
export function expectTrue(svg: string, report: Report, yaml: string): void {
  expect(untruths(svg, report, factsOf(yaml))).toEqual([]);
}
