import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/material-problems.ts';
import type { Page } from './page.ts';

/** At the waist every layer is in one stack and no more. */
export function checkJoins(page: Page): Diagnostic[] {
  const stacks = page.sketch.sewnAsOne?.waist;
  if (stacks === undefined || !page.hasList('sewn-as-one', 'waist')) return [];
  const seen = new Set<string>();
  const faults: Diagnostic[] = [];
  for (const [i, stack] of stacks.entries()) {
    for (const [j, name] of (stack ?? []).entries()) {
      if (name === undefined) return [];
      if (seen.has(name)) faults.push(problems.layerJoinedTwice(page.at('sewn-as-one', 'waist', i, j), name));
      seen.add(name);
    }
  }
  const names = (page.sketch.layers ?? []).flatMap(({ name }) => name ?? []);
  const left = names.filter((name) => !seen.has(name));
  return left.length > 0
    ? [...faults, problems.layerNotJoined(page.keyAt('sewn-as-one', 'waist'), left)]
    : faults;
}
