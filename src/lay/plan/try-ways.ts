import type { StripPacking } from '../pack/strip-problem.ts';
import { isAsFolded, type TriedWay } from './choose-way.ts';
import type { LayItem } from './lay-items.ts';
import type { ClothFacts } from './lay-plan.ts';
import type { LayToPlan } from './lay-to-plan.ts';
import type { PackedSection, SectionPacker } from './pack-section.ts';
import { laidWidth, type SectionStrip, SHARED_LINE } from './section-strip.ts';
import { type UnfoldedPiece, unfolded } from './unfold.ts';
import { type Way, waysOf } from './ways.ts';

export interface WaysAsked {
  readonly items: readonly LayItem[];
  /** A piece lies across the cloth, where no fold runs its way. */
  readonly singleOnly: boolean;
  /** Tried already. */
  readonly known?: TriedWay;
  readonly onBetter?: (length: number) => void;
}

/** Every way to lay these pieces, a single lay first, that one no longer than any of the others. */
export function tryWays(asked: WaysAsked, packer: SectionPacker, toLay: LayToPlan): readonly TriedWay[] {
  const { items, singleOnly, known, onBetter } = asked;
  const ways = singleOnly ? waysOf(items).slice(0, 1) : waysOf(items);
  const tried = ways.map((way) => tryWay(way, asked, packer, toLay));
  return withSingleAtBest(known === undefined ? tried : [...tried, known], packer, toLay.facts, onBetter);
}

function tryWay(
  way: Way,
  { known, onBetter }: WaysAsked,
  packer: SectionPacker,
  { facts, spec }: LayToPlan,
): TriedWay {
  for (const section of way.sections) {
    const wide = packer.tooWide(section);
    if (wide !== undefined) {
      const { item, width } = wide;
      const tooWide = { gore: item.cut.gore, width, usable: laidWidth(facts, section.fold) };
      return { way, packed: undefined, length: Infinity, tooWide };
    }
  }
  const isSingle = way.fold === 'single';
  const use = isSingle || (spec.fold !== 'any' && isAsFolded(way, spec.fold)) ? 'cutting' : 'comparing';
  const packed =
    isSingle && known !== undefined && opensOut(known.way, facts)
      ? [betterThan(known, way, packer, facts, onBetter)]
      : way.sections.map((section) => packer.pack(section, use, isSingle ? onBetter : undefined));
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
  packer: SectionPacker,
  facts: ClothFacts,
  onBetter?: (length: number) => void,
): readonly TriedWay[] {
  const single = tried[0]!;
  const shortest = tried
    .filter(({ way }) => opensOut(way, facts))
    .reduce((a, b) => (b.length < a.length ? b : a));
  if (shortest === single || shortest.packed === undefined) return tried;
  const better = betterThan(shortest, single.way, packer, facts, onBetter);
  return [{ ...single, packed: [better], length: better.length }, ...tried.slice(1)];
}

/** The single lay, looked for from a way that was tried: no longer than that way. */
function betterThan(
  known: TriedWay,
  { sections: [single] }: Way,
  packer: SectionPacker,
  facts: ClothFacts,
  onBetter?: (length: number) => void,
): PackedSection {
  return packer.better(single!, (strip) => openedOut(known, strip, facts), onBetter);
}

/** On a pattern that repeats across, a fold and a single cloth do not have their motifs at the same places. */
function opensOut({ fold }: Way, { repeatAcross }: ClothFacts): boolean {
  return repeatAcross === undefined || fold === 'single';
}

function openedOut(tried: TriedWay, strip: SectionStrip, facts: ClothFacts): StripPacking {
  const pieces = unfoldedPieces(tried.packed!, facts);
  const margin = facts.selvedge + facts.edgingDepth - SHARED_LINE / 2;
  const free = [...pieces];
  const placements = strip.pieces.map(({ item }, i) => {
    const attitudes = strip.problem.items[i]!.attitudes;
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
