import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/shaping-problems.ts';
import type { Page } from './page.ts';

/** Pleats have a depth; gathers have none. */
export function checkFullness(page: Page): Diagnostic[] {
  const { gores = [], layers = [] } = page.sketch;
  const places = [
    ...gores.map((gore, i) => ({ full: gore.fullness, path: ['gores', i, 'fullness'] as const })),
    ...layers.map((layer, i) => ({ full: layer.fullness, path: ['layers', i, 'fullness'] as const })),
  ];
  return places.flatMap(({ full, path }) => {
    if (typeof full !== 'object') return [];
    const unused = (['depth', 'towards'] as const).filter((key) => page.has(...path, key));
    if (full.by === 'pleats')
      return unused.includes('depth') ? [] : [problems.pleatsWithoutDepth(page.keyAt(...path))];
    // A word that could not be read has been spoken of.
    if (full.by === undefined && page.has(...path, 'by')) return [];
    return unused.map((key) => problems.gathersWithPleats(page.keyAt(...path, key), key));
  });
}
