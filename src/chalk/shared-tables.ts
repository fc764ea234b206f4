import type { ChalkLetteredCorner, ChalkLevel, ChalkOrdinate, ChalkStretch, ChalkTable } from './chalk.ts';

/** A layer that is chalked by another one's table: what differs from it. */
export interface ChalkDifference {
  readonly table: ChalkTable;
  /** Levels above its hem where it is not as wide as the table that it shares. */
  readonly levels: readonly ChalkLevel[];
  /** Curves that the shared table does not have so. */
  readonly curves: readonly ChalkStretch[];
  /** Corners that are elsewhere, or have another letter. */
  readonly corners: readonly ChalkLetteredCorner[];
}

/** A table that several layers of one piece are chalked by. */
export interface SharedChalk {
  /** The longest of them. */
  readonly table: ChalkTable;
  readonly others: readonly ChalkDifference[];
}

/**
 * Layers that differ only near the hem share one table: the sides are chalked by its levels, and for each of the others
 * stands what is different, so that nothing is to be read twice and compared.
 */
export function sharedTables(tables: readonly ChalkTable[]): SharedChalk[] {
  const longestFirst = [...tables].sort((a, b) => lengthOf(b) - lengthOf(a));
  const taken = new Set<ChalkTable>();
  const shared = new Map<ChalkTable, SharedChalk>();
  for (const table of longestFirst) {
    if (taken.has(table)) continue;
    const like = tables.filter((other) => other !== table && !taken.has(other) && isLike(other, table));
    for (const own of [table, ...like]) taken.add(own);
    const first = tables.find((own) => own === table || like.includes(own))!;
    shared.set(first, { table, others: like.map((other) => differenceOf(other, table)) });
  }
  return tables.flatMap((table) => shared.get(table) ?? []);
}

function lengthOf({ stretches }: ChalkTable): number {
  return Math.max(...stretches.map(({ from }) => from.down));
}

function ordinatesOf({ points }: ChalkStretch): ChalkOrdinate[] {
  return points.flatMap((point) => (point.kind === 'ordinate' ? [point] : []));
}

/** Levels that may differ between layers that share a table: those that the hem runs through. */
const MOST_DIFFERENT = 3;

function isLike(other: ChalkTable, table: ChalkTable): boolean {
  const same = (
    ['gore', 'part', 'side', 'cut', 'bias', 'copies', 'frontEdge', 'backEdge', 'every', 'step'] as const
  ).every((key) => other[key] === table[key]);
  if (!same) return false;
  const [waist, own] = [waistOf(table), waistOf(other)];
  return sameText(waist, own) && differentLevels(other, table).length <= MOST_DIFFERENT;
}

/** Corners and curves at the top, by their places. */
function waistOf({ stretches, frontEdge, backEdge }: ChalkTable): unknown {
  return stretches
    .filter(({ edge }) => edge !== 'hem' && edge !== frontEdge && edge !== backEdge)
    .map(({ line, edge, from, to, points }) => [line, edge, placed(from), placed(to), points]);
}

function placed({ down, across }: { readonly down: number; readonly across: number }): readonly number[] {
  return [down, across];
}

function differentLevels(other: ChalkTable, table: ChalkTable): ChalkLevel[] {
  const known = new Map(table.levels.map((level) => [level.down, level.cells]));
  return other.levels.filter(({ down, cells }) => !sameText(known.get(down), cells));
}

function differenceOf(other: ChalkTable, table: ChalkTable): ChalkDifference {
  const curves = (own: ChalkTable) => own.stretches.filter((stretch) => ordinatesOf(stretch).length > 0);
  // Sets of texts: a steep hem has thousands of corners, and each would be held against each.
  const knownCurves = new Set(curves(table).map(curveText));
  const knownCorners = new Set(table.corners.map((corner) => JSON.stringify(corner)));
  return {
    table: other,
    levels: differentLevels(other, table),
    curves: curves(other).filter((stretch) => !knownCurves.has(curveText(stretch))),
    corners: other.corners.filter((own) => !knownCorners.has(JSON.stringify(own))),
  };
}

function curveText({ line, edge, from, to, points }: ChalkStretch): string {
  return JSON.stringify([line, edge, from, to, points]);
}

function sameText(a: unknown, b: unknown): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
