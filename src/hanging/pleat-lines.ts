import { pleatsOf } from '../allowances/pleats.ts';
import type { Gown } from '../gown/gown.ts';
import type { Layer } from '../gown/layer.ts';
import { topsOf } from './gown-panels.ts';
import type { PleatLine } from './seam-lines.ts';
import { columnsAllRound, type Panel, type SewnCloth } from './sewn-cloth.ts';

/** Two folds nearer than this in the columns of the cloth are drawn as one line. */
const AS_ONE = 0.15;

/**
 * Where the folds of pleats show, as columns of the hung cloth all the way round, with parts of columns where they are
 * too fine to be hung one by one: the outer fold of a knife pleat, the two edges of a box pleat's face.
 */
export function pleatLines(
  cloth: SewnCloth,
  gores: Gown['gores'],
  layer: Pick<Layer, 'fullness'>,
): PleatLine[] {
  const lines: PleatLine[] = [];
  let first = 0;
  for (const panel of cloth.panels) {
    const gore = gores.find(({ name }) => name === panel.name);
    const own =
      panel.folded?.seen ??
      (gore === undefined ? [] : fineFolds(panel, gore, layer).map((column) => ({ column, from: 0 })));
    for (const { column, from } of own) lines.push({ column: first + column, from });
    first += panel.across;
  }
  const apart = lines.filter(({ column }, i) => i === 0 || column - lines[i - 1]!.column > AS_ONE);
  if (cloth.closing !== 'mirrored') return apart;
  const all = columnsAllRound(cloth);
  return [
    ...apart,
    ...apart
      .filter(({ column }) => column > AS_ONE && column < all / 2 - AS_ONE)
      .map(({ column, from }) => ({ column: all - column, from })),
  ];
}

/** Columns that lie inside the folds of pleats, all the way round. */
export function columnsInFolds(cloth: SewnCloth): number[] {
  let first = 0;
  const own = cloth.panels.flatMap(({ across, folded }) => {
    const begins = first;
    first += across;
    const { shows = [] } = folded ?? {};
    return shows.flatMap((is, column) =>
      !is && column > 0 && column < across && shows[column - 1] === false ? [begins + column] : [],
    );
  });
  if (cloth.closing !== 'mirrored') return own;
  const all = columnsAllRound(cloth);
  return [...own, ...own.map((column) => all - column)];
}

function fineFolds(panel: Panel, gore: Gown['gores'][number], layer: Pick<Layer, 'fullness'>): number[] {
  const rule = gore.fullness ?? layer.fullness;
  if (rule?.by !== 'pleats') return [];
  const cut = topsOf(panel)[panel.across]!;
  const { count, depth } = pleatsOf({ rule, ratio: cut / gore.top, cut, sewn: gore.top });
  const shown = gore.top / count;
  const face = rule.towards === 'box' ? Math.min(shown, 2 * depth) : 0;
  return Array.from({ length: count }, (_, pleat) =>
    (face > 0 ? [-0.5, 0.5] : [0]).map(
      (side) => (panel.across * ((pleat + 0.5) * shown + side * face)) / gore.top,
    ),
  ).flat();
}
