import { foldPlaces, pleatsOf } from '../allowances/pleats.ts';
import type { TopFullness } from '../allowances/top-fullness.ts';
import type { Layer } from '../gown/layer.ts';
import type { Gore, GownLines } from '../gown/lines.ts';
import { runsRound } from '../gown/lines.ts';
import type { Pleat } from '../gown/parts.ts';

/** One fold of a pleat on a gore: its outer edge lies on a line down the gore, its cloth underneath. mm. */
export interface GoreFold {
  /** Part of the way across where its line lies, from the gore's first side edge, and how far beyond that all the way down. */
  readonly share: number;
  readonly beside: number;
  /** The side of the line on which its cloth lies: that of the gore's first side edge or of its last. */
  readonly under: 'first' | 'last';
  /** From its outer edge in to its inner edge: it takes twice this of cloth. */
  readonly depth: number;
  readonly stitchedDown: number;
  /** Above the hem, where it begins; from the top where that is not said. */
  readonly begins?: number;
}

/** How a gore is pleated. */
export type GorePleating =
  /** Folds that have their place: the gore is cut wider by what they take, alike all the way down. */
  | { readonly is: 'placed'; readonly folds: readonly GoreFold[] }
  /** Its whole top, from its first side edge on: the folds' share of the gore is the same all the way down. */
  | { readonly is: 'filled'; readonly full: TopFullness; readonly frontFirst: boolean };

/** Pleats less deep than this are finer than the grid, mm: they stay closed as gathers do. */
const LEAST_DEPTH = 18;

/** How every gore of a layer is pleated; undefined where it is not, or in folds too fine to be hung one by one. */
export function pleatingOf(
  lines: GownLines,
  pleats: readonly Pleat[],
  layer: Pick<Layer, 'name'>,
  fullAt: (gore: number) => TopFullness | undefined,
): (GorePleating | undefined)[] {
  const own = pleats.filter(({ layers }) => layers.includes(layer.name));
  return lines.gores.map((gore, i): GorePleating | undefined => {
    const frontFirst = gore.side !== 'right';
    const full = fullAt(i);
    if (full?.rule.by === 'pleats') {
      const isFine = pleatsOf(full).depth < LEAST_DEPTH || full.rule.where === 'waist';
      return isFine ? undefined : { is: 'filled', full, frontFirst };
    }
    const folds = own.flatMap((pleat) => foldsOnGore(pleat, lines, i));
    return folds.length === 0 ? undefined : { is: 'placed', folds };
  });
}

/** Folds of a gore that is pleated all along, with where each line lies along its top as it is sewn. */
export function foldsAllAlong(full: TopFullness, frontFirst: boolean): SewnFold[] {
  const { rule, cut } = full;
  const places = foldPlaces(full);
  const each = rule.towards === 'box' ? 6 : 3;
  const folds: SewnFold[] = [];
  let taken = 0;
  for (let first = 0; first < places.length; first += 3) {
    const [a, b, c] = places.slice(first, first + 3) as [number, number, number];
    const under =
      rule.towards === 'box' ? (first % each === 0 ? 'last' : 'first') : knifeUnder(rule, frontFirst);
    folds.push({ under, cut: [a / cut, b / cut, c / cut], sewn: a - taken });
    taken += c - a;
  }
  return folds;
}

/** A fold whose cloth lies within the gore's own width: its two edges and the line on it, as parts of the way across. */
export interface SewnFold {
  readonly under: GoreFold['under'];
  readonly cut: readonly [number, number, number];
  /** Along the top as it is sewn, mm. */
  readonly sewn: number;
}

/** Its outer fold points to the front, over the cloth in front of it, or to the back. */
function knifeUnder({ towards }: TopFullness['rule'], frontFirst: boolean): GoreFold['under'] {
  return (towards === 'back') === frontFirst ? 'first' : 'last';
}

function foldsOnGore(pleat: Pleat, lines: GownLines, i: number): GoreFold[] {
  const gore = lines.gores[i]!;
  if (pleat.fromSeam !== undefined && pleat.gore !== gore.name) return [];
  return ([0, 1] as const)
    .filter((end) => lines.stations[i + end]!.name === pleat.at)
    .flatMap((end) => {
      if (pleat.fromSeam !== undefined) return inGore(pleat, gore, end);
      const isCentre = !runsRound(lines) && (i + end === 0 || i + end === lines.gores.length);
      return atEdge(pleat, gore, end, isCentre);
    });
}

/** Folds whose line has the gore's own cloth on both sides of it. */
function inGore(pleat: Pleat, gore: Gore, end: 0 | 1): GoreFold[] {
  const { fromSeam = 0, foldDepth, kind, towards } = pleat;
  const away = Math.min(1, fromSeam / gore.top);
  const at = fold(pleat, end === 0 ? away : 1 - away);
  if (kind === 'inverted') return [at(0, 'first'), at(0, 'last')];
  if (kind === 'box') return [at(-foldDepth, 'last'), at(foldDepth, 'first')];
  return [at(0, (towards === 'front') === (gore.side !== 'right') ? 'last' : 'first')];
}

/**
 * At a side edge: half of the pleat, the other gore having the other half. A knife pleat is all on the gore whose edge lies on
 * top; on the plane of a mirrored gown, where it cannot lie to one side, it is half a fold on both.
 */
function atEdge(pleat: Pleat, gore: Gore, end: 0 | 1, isCentre: boolean): GoreFold[] {
  const { foldDepth, kind, towards } = pleat;
  const inwards = end === 0 ? 'last' : 'first';
  const at = fold(pleat, end);
  if (kind === 'box') return [at(end === 0 ? foldDepth : -foldDepth, end === 0 ? 'first' : 'last')];
  if (kind === 'inverted') return [at(0, inwards)];
  if (isCentre) return [{ ...at(0, inwards), depth: foldDepth / 2 }];
  const isInFront = (end === 1) === (gore.side !== 'right');
  return isInFront === (towards !== 'front') ? [at(0, inwards)] : [];
}

function fold(
  { foldDepth, stitchedDown, kind, aboveHem }: Pleat,
  share: number,
): (beside: number, under: GoreFold['under']) => GoreFold {
  return (beside, under) => ({
    share,
    beside,
    under,
    depth: foldDepth,
    stitchedDown: kind === 'kick' ? 0 : stitchedDown,
    ...(kind === 'kick' && aboveHem !== undefined && { begins: aboveHem }),
  });
}
