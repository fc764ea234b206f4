import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/stone-problems.ts';
import type { Page } from './page.ts';

/** Each set of stones by itself: it has a size, its spans go somewhere, and it is scattered or set place by place. */
export function checkStones(page: Page): Diagnostic[] {
  return (page.sketch.stones ?? []).flatMap(({ name, over, offSeat }, i) => {
    if (name === undefined) return [];
    const has = (key: 'size' | 'sold-as' | 'per-dm2' | 'places') => page.has('stones', i, key);
    return [
      ...(has('size') || has('sold-as')
        ? []
        : [problems.stonesWithoutSize(page.at('stones', i, 'name'), name)]),
      ...(has('per-dm2') || has('places')
        ? []
        : [problems.stonesNowhere(page.at('stones', i, 'name'), name)]),
      ...(has('per-dm2') && has('places')
        ? [problems.stonesTwice(page.keyAt('stones', i, 'places'), name)]
        : []),
      ...spanFault(page, name, over, i, 'over'),
      ...spanFault(page, name, offSeat, i, 'off-seat'),
      ...placeFaults(page, i),
    ];
  });
}

/** Each place is told from the waist seam or from the hem. */
function placeFaults(page: Page, i: number): Diagnostic[] {
  return (page.sketch.stones?.[i]?.places ?? []).flatMap((_, j) => {
    const [down, up] = (['below-waist', 'above-hem'] as const).map((key) =>
      page.has('stones', i, 'places', j, key),
    );
    return down === up ? [problems.stonePlaceUnclear(page.at('stones', i, 'places', j))] : [];
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
