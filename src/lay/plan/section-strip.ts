import { type Attitude, middleOfBounds, type StripItem, type StripProblem } from '../pack/strip-problem.ts';
import type { LayItem, LayShape } from './lay-items.ts';
import type { ClothFacts, Fold } from './lay-plan.ts';
import { foldAt } from './whole-outline.ts';

/**
 * How far two pieces may run into each other, mm: a tenth of a pencil line. Above zero so that pieces which fill the
 * width exactly find their place; larger would take cloth from a seam.
 */
export const SHARED_LINE = 0.01;

/** What is packed for one item on one stretch of cloth. */
export interface SectionPiece {
  readonly item: LayItem;
  /** 0 … of the item's copies; on a folded stretch one piece stands for both plies. */
  readonly copy: number;
  readonly shape: LayShape;
}

/** A stretch of cloth with one fold as a strip to pack, and whom the strip's items stand for. */
export interface SectionStrip {
  readonly fold: Fold;
  readonly problem: StripProblem;
  readonly pieces: readonly SectionPiece[];
}

/** Width between selvedges as the cloth lies, mm. */
export function laidWidth(facts: ClothFacts, fold: Fold): number {
  return fold === 'lengthwise' ? facts.usable / 2 : facts.usable;
}

/** All shapes of a lay in one list, each once, so that strips of any fold and layer share their no-fit polygons. */
export function shapesOf(items: readonly LayItem[]): LayShape[] {
  const shapes = items.flatMap(({ whole, half }) => (half === undefined ? [whole] : [whole, half]));
  return [...new Set(shapes)];
}

/**
 * On a single layer every piece is packed; on a fold one of each pair, and the half of a piece on the fold, its fold
 * held against x = 0.
 */
export function sectionStrip(
  items: readonly LayItem[],
  fold: Fold,
  facts: ClothFacts,
  shapes: readonly LayShape[],
): SectionStrip {
  const laid = items.flatMap((item) => laidOf(item, fold, facts, shapes));
  const width = laidWidth(facts, fold) + SHARED_LINE;
  return {
    fold,
    pieces: laid.map(({ piece }) => piece),
    problem: {
      width,
      shapes: shapes.map(({ working }) => working),
      items: laid.map(({ packed }) => packed),
      gap: -SHARED_LINE,
      ...repeatOf(facts, fold, width, shapes),
    },
  };
}

interface Laid {
  readonly piece: SectionPiece;
  readonly packed: StripItem;
}

function laidOf(item: LayItem, fold: Fold, facts: ClothFacts, shapes: readonly LayShape[]): Laid[] {
  const turns = facts.oneWay ? [false] : [false, true];
  if (fold === 'lengthwise' && item.half !== undefined) {
    const { half } = item;
    const shape = shapes.indexOf(half);
    const attitudes = turns.map((turned) => ({ shape, turned, mirrored: half.foldOnRight !== turned }));
    return [
      {
        piece: { item, copy: 0, shape: half },
        packed: { attitudes, middleAt: Math.abs(middleOfBounds(half.working).x - foldAt(item.cut)) },
      },
    ];
  }
  const shape = shapes.indexOf(item.whole);
  const lies = (mirrored: boolean): Attitude[] => turns.map((turned) => ({ shape, mirrored, turned }));
  const pieces = fold === 'single' ? item.copies : item.copies / 2;
  return Array.from({ length: pieces }, (_, copy) => {
    // Of a pair, one ply gives each; either may be the one that is marked.
    const attitudes =
      fold === 'single' ? lies(item.kind === 'pair' && copy === 1) : [...lies(false), ...lies(true)];
    return { piece: { item, copy, shape: item.whole }, packed: { attitudes } };
  });
}

function repeatOf(
  { repeatDown, repeatAcross }: ClothFacts,
  fold: Fold,
  width: number,
  shapes: readonly LayShape[],
): Pick<StripProblem, 'repeat'> {
  if (repeatDown === undefined && repeatAcross === undefined) return {};
  const origin = fold === 'lengthwise' ? 0 : width / 2;
  return {
    repeat: {
      anchors: shapes.map(grainOf),
      ...(repeatDown === undefined ? {} : { down: repeatDown }),
      ...(repeatAcross === undefined ? {} : { across: { step: repeatAcross, origin } }),
    },
  };
}

/** How far the grain lies to the right of the middle of the bounds, mm. */
function grainOf({ working, grain }: LayShape): number {
  const xs = working.map(({ x }) => x);
  return grain.from.x - (Math.min(...xs) + Math.max(...xs)) / 2;
}
