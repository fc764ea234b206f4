import type { Page } from './page.ts';

/** The layers of the gown, of its capes and of its overskirts, each with its way. */
export function layersOf(page: Page) {
  const { layers = [], overskirts = [], capes = [] } = page.sketch;
  return [
    ...layers.map((layer, i) => ({ layer, path: ['layers', i] as const })),
    ...capes.flatMap((cape, i) =>
      (cape.layers ?? []).map((layer, j) => ({ layer, path: ['capes', i, 'layers', j] as const })),
    ),
    ...overskirts.flatMap((overskirt, i) =>
      (overskirt.layers ?? []).map((layer, j) => ({ layer, path: ['overskirts', i, 'layers', j] as const })),
    ),
  ];
}
