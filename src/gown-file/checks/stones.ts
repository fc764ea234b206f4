import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/stone-problems.ts';
import type { Page } from './page.ts';

/** Each set of stones by itself: it has a size, and its spans go somewhere. */
export function checkStones(page: Page): Diagnostic[] {
  return (page.sketch.stones ?? []).flatMap(({ name, size, over, offSeat }, i) => {
    if (name === undefined) return [];
    const hasSize = size !== undefined || page.has('stones', i, 'size') || page.has('stones', i, 'sold-as');
    return [
      ...(hasSize ? [] : [problems.stonesWithoutSize(page.at('stones', i, 'name'), name)]),
      ...spanFault(page, name, over, i, 'over'),
      ...spanFault(page, name, offSeat, i, 'off-seat'),
    ];
  });
}

function spanFault(
  page: Page,
  name: string,
  span: readonly (number | undefined)[] | undefined,
  i: number,
  key: 'over' | 'off-seat',
): Diagnostic[] {
  const [from, to] = span ?? [];
  if (from === undefined || to === undefined || from < to) return [];
  return [problems.stonesOverNothing(page.keyAt('stones', i, key), name, page.say(from), page.say(to))];
}
