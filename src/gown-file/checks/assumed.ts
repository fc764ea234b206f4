import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/material-problems.ts';
import { USUAL_ALLOWANCE, USUAL_SELVEDGE } from '../shape/usual.ts';
import type { Page } from './page.ts';

/** Measures that the spec leaves out and that are then the usual ones: said, so that nobody is surprised at the table. */
export function checkAssumed(page: Page): Diagnostic[] {
  return [...assumedAllowances(page), ...assumedSelvedges(page)];
}

function assumedSelvedges(page: Page): Diagnostic[] {
  return Object.keys(page.sketch.cloths ?? {})
    .filter((name) => page.hasSection('cloths', name) && !page.has('cloths', name, 'selvedge'))
    .map((name) => problems.selvedgeAssumed(page.keyAt('cloths', name), name, page.say(USUAL_SELVEDGE)));
}

function assumedAllowances(page: Page): Diagnostic[] {
  const hems = (page.sketch.layers ?? []).filter(
    (layer) => layer.hem !== 'raw' && layer.allowances?.hem === undefined,
  );
  const needed = hems.length > 0 ? ['seam', 'waist', 'hem'] : ['seam', 'waist'];
  const left = needed.filter((edge) => !page.has('allowances', edge));
  const readable = page.hasSection('allowances') || !page.has('allowances');
  if (left.length === 0 || !page.has('gores') || !readable) return [];
  return [
    problems.allowanceAssumed(
      page.has('allowances') ? page.keyAt('allowances') : page.keyAt('gores'),
      left,
      page.say(USUAL_ALLOWANCE),
    ),
  ];
}
