import { pleatsOf } from '../allowances/pleats.ts';
import type { Gown } from '../gown/gown.ts';
import type { Layer } from '../gown/layer.ts';
import { topsOf } from './gown-panels.ts';
import { columnsOf, type SewnCloth } from './sewn-cloth.ts';

/** Two folds nearer than this in the columns of the cloth are drawn as one line. */
const AS_ONE = 0.15;

/**
 * Where the folds of pleats show, as columns of the hung cloth all the way round, with parts of columns: the outer fold of
 * a knife pleat, the two edges of a box pleat's face.
 */
export function pleatLines(cloth: SewnCloth, gores: Gown['gores'], layer: Pick<Layer, 'fullness'>): number[] {
  const lines: number[] = [];
  let first = 0;
  for (const panel of cloth.panels) {
    const gore = gores.find(({ name }) => name === panel.name);
    const rule = gore?.fullness ?? layer.fullness;
    if (gore !== undefined && rule?.by === 'pleats') {
      const cut = topsOf(panel)[panel.across]!;
      const { count, depth } = pleatsOf({ rule, ratio: cut / gore.top, cut, sewn: gore.top });
      const shown = gore.top / count;
      const face = rule.towards === 'box' ? Math.min(shown, 2 * depth) : 0;
      for (let pleat = 0; pleat < count; pleat++)
        for (const side of face > 0 ? [-0.5, 0.5] : [0])
          lines.push(first + (panel.across * ((pleat + 0.5) * shown + side * face)) / gore.top);
    }
    first += panel.across;
  }
  const apart = lines.filter((line, i) => i === 0 || line - lines[i - 1]! > AS_ONE);
  if (cloth.closing !== 'mirrored') return apart;
  const all = 2 * (columnsOf(cloth) - 1);
  return [
    ...apart,
    ...apart.filter((line) => line > AS_ONE && line < all / 2 - AS_ONE).map((line) => all - line),
  ];
}
