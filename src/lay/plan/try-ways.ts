import type { StripPacking } from '../pack/strip-problem.ts';
import { isAsFolded, type TriedWay } from './choose-way.ts';
import type { LayItem } from './lay-items.ts';
import type { ClothFacts } from './lay-plan.ts';
import type { LayToPlan } from './lay-to-plan.ts';
import type { PackedSection, SectionPacker, SectionUse } from './pack-section.ts';
import { laidWidth, SHARED_LINE } from './section-strip.ts';
import { type UnfoldedPiece, unfolded } from './unfold.ts';
import { type Way, waysOf } from './ways.ts';

export interface WaysAsked {
  readonly items: readonly LayItem[];
  /** What a way that may well be cut is packed for; others are only compared with it. */
  readonly use: Exclude<SectionUse, 'comparing'>;
  /** A piece lies across the cloth, where no fold runs its way. */
  readonly singleOnly: boolean;
  /** Tried already. */
  readonly known?: TriedWay;
  readonly onBetter?: (length: number) => void;
}

/** Every way to lay these pieces, a single lay first, that one no longer than any of the others. */
export function tryWays(
  { items, use, singleOnly, known, onBetter }: WaysAsked,
  packer: SectionPacker,
  toLay: LayToPlan,
): readonly TriedWay[] {
  const ways = singleOnly ? waysOf(items).slice(0, 1) : waysOf(items);
  const tried = ways.map((way) =>
    tryWay(way, use, packer, toLay, way.fold === 'single' ? onBetter : undefined),
  );
  return withSingleAtBest(
    known === undefined ? tried : [...tried, known],
    use,
    packer,
    toLay.facts,
    onBetter,
  );
}

function tryWay(
  way: Way,
  use: SectionUse,
  packer: SectionPacker,
  { facts, spec }: LayToPlan,
  onBetter?: (length: number) => void,
): TriedWay {
  for (const section of way.sections) {
    const wide = packer.tooWide(section);
    if (wide !== undefined) {
      const { item, width } = wide;
      const tooWide = { gore: item.cut.gore, width, usable: laidWidth(facts, section.fold) };
      return { way, packed: undefined, length: Infinity, tooWide };
    }
  }
  const mayBeCut = way.fold === 'single' || (spec.fold !== 'any' && isAsFolded(way, spec.fold));
  const packed = way.sections.map((section) => packer.pack(section, mayBeCut ? use : 'comparing', onBetter));
  return { way, packed, length: lengthOf(packed), tooWide: undefined };
}

export function lengthOf(packed: readonly PackedSection[]): number {
  return packed.reduce((sum, { length }) => sum + length, 0);
}

/**
 * Any fold opens out to a lay of single cloth that is no longer: where the search found a shorter fold, the single lay
 * starts again from it.
 */
function withSingleAtBest(
  tried: readonly TriedWay[],
  use: WaysAsked['use'],
  packer: SectionPacker,
  facts: ClothFacts,
  onBetter?: (length: number) => void,
): readonly TriedWay[] {
  const single = tried[0]!;
  const shortest = tried
    .filter(({ way }) => opensOut(way, facts))
    .reduce((a, b) => (b.length < a.length ? b : a));
  if (shortest === single || shortest.packed === undefined) return tried;
  const section = single.way.sections[0]!;
  const start = openedOut(shortest, packer.pack(section, use), facts);
  const better = packer.better(section, start, use, onBetter);
  return [{ ...single, packed: [better], length: better.length }, ...tried.slice(1)];
}

/** On a pattern that repeats across, a fold and a single cloth do not have their motifs at the same places. */
function opensOut({ fold }: Way, { repeatAcross }: ClothFacts): boolean {
  return repeatAcross === undefined || fold === 'single';
}

function openedOut(tried: TriedWay, single: PackedSection, facts: ClothFacts): StripPacking {
  const pieces = unfoldedPieces(tried.packed!, facts);
  const margin = facts.selvedge + facts.edgingDepth - SHARED_LINE / 2;
  const free = [...pieces];
  const placements = single.strip.pieces.map(({ item }, i) => {
    const attitudes = single.strip.problem.items[i]!.attitudes;
    const index = free.findIndex(
      (piece) => piece.item === item && attitudes.some(({ mirrored }) => mirrored === piece.lie.mirrored),
    );
    const { lie } = free.splice(index, 1)[0]!;
    const attitude = attitudes.find(
      ({ mirrored, turned }) => mirrored === lie.mirrored && turned === lie.turned,
    )!;
    return { attitude, x: lie.x - margin, y: lie.y };
  });
  return { length: tried.length, placements };
}

export function unfoldedPieces(packed: readonly PackedSection[], facts: ClothFacts): UnfoldedPiece[] {
  let from = 0;
  return packed.flatMap((section, index) => {
    const pieces = unfolded(section, index, from, facts);
    from += section.length;
    return pieces;
  });
}
