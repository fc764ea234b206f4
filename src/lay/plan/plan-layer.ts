import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { forgetting } from '../../kept/kept.ts';
import type { StripPacking } from '../pack/strip-problem.ts';
import { buyLength } from './buy-length.ts';
import { checkLay } from './check-lay.ts';
import { chooseWay, handlingOf, isAsFolded, type TriedWay } from './choose-way.ts';
import { inCuttingOrder } from './cutting-order.ts';
import { fitToCloth } from './fit-to-cloth.ts';
import type { LayItem } from './lay-items.ts';
import type { ClothFacts, LayPlan, LaySection, LayWay } from './lay-plan.ts';
import { layCutShort } from './lay-problems.ts';
import { layRemarks } from './lay-remarks.ts';
import type { LayerToLay } from './layer-to-lay.ts';
import { type PackedSection, type PackingEffort, SectionPacker } from './pack-section.ts';
import { laidWidth, SHARED_LINE } from './section-strip.ts';
import { spareAreas } from './spare-areas.ts';
import { type UnfoldedPiece, unfolded } from './unfold.ts';
import { type Way, waysOf } from './ways.ts';

export interface LayerPlanned {
  /** Absent where the layer cannot be cut from its cloth. */
  readonly plan?: LayPlan;
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * Plans every way to lay one layer, takes the shortest of those that the cloth's `fold` allows, and checks it afresh. A
 * lay of strips that were packed before and does not pass is planned anew.
 */
export function planLayer(
  toLay: LayerToLay,
  effort: PackingEffort,
  onBetter: (length: number) => void = () => {},
): LayerPlanned {
  try {
    return planned(toLay, effort, onBetter);
  } catch (error) {
    const { kept } = effort;
    if (kept === undefined) throw error;
    return planned(toLay, { ...effort, kept: forgetting(kept) }, onBetter);
  }
}

function planned(toLay: LayerToLay, effort: PackingEffort, onBetter: (length: number) => void): LayerPlanned {
  const fitted = fitToCloth(toLay.pieces, toLay);
  if (!('items' in fitted)) return { diagnostics: fitted.diagnostics };
  const { items, railroaded } = fitted;
  let cutShort = false;
  const stopped = () => {
    const stops = effort.stopped();
    cutShort ||= stops;
    return stops;
  };
  const packer = new SectionPacker(items, toLay.facts, { ...effort, stopped });
  const ways = railroaded ? waysOf(items).slice(0, 1) : waysOf(items);
  const tried = withSingleAtBest(
    ways.map((way) => tryWay(way, packer, toLay, way.fold === 'single' ? onBetter : undefined)),
    packer,
    toLay.facts,
    onBetter,
  );
  const { taken, diagnostics } = chooseWay(tried, toLay);
  const plan = finished(taken, tried, items, toLay, { joins: fitted.joins, railroaded, cutShort });
  const short = cutShort ? [layCutShort(toLay.span, toLay.layer)] : [];
  return { plan, diagnostics: [...fitted.diagnostics, ...diagnostics, ...short] };
}

function tryWay(
  way: Way,
  packer: SectionPacker,
  toLay: LayerToLay,
  onBetter?: (length: number) => void,
): TriedWay {
  for (const section of way.sections) {
    const wide = packer.tooWide(section);
    if (wide !== undefined) {
      const width = laidWidth(toLay.facts, section.fold);
      const why = `${wide.item.cut.gore} takes ${toLay.say(wide.width)}, there are ${toLay.say(width)}`;
      return { way, packed: undefined, length: Infinity, why };
    }
  }
  const { fold } = toLay.spec;
  const mayBeCut = way.fold === 'single' || (fold !== 'any' && isAsFolded(way, fold));
  const packed = way.sections.map((section) => packer.pack(section, mayBeCut, onBetter));
  return { way, packed, length: packed.reduce((sum, { length }) => sum + length, 0), why: undefined };
}

/**
 * Any fold opens out to a lay of single cloth that is no longer: where the search found a shorter fold, the single lay
 * starts again from it.
 */
function withSingleAtBest(
  tried: readonly TriedWay[],
  packer: SectionPacker,
  facts: ClothFacts,
  onBetter: (length: number) => void,
): readonly TriedWay[] {
  const single = tried[0]!;
  const shortest = tried.reduce((a, b) => (b.length < a.length ? b : a));
  if (shortest === single || shortest.packed === undefined || facts.repeatAcross !== undefined) return tried;
  const section = single.way.sections[0]!;
  const start = openedOut(shortest, packer.pack(section, true), facts);
  const better = packer.better(section, start, onBetter);
  return [{ ...single, packed: [better], length: better.length }, ...tried.slice(1)];
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

function unfoldedPieces(packed: readonly PackedSection[], facts: ClothFacts): UnfoldedPiece[] {
  let from = 0;
  return packed.flatMap((section, index) => {
    const pieces = unfolded(section, index, from, facts);
    from += section.length;
    return pieces;
  });
}

function finished(
  taken: TriedWay,
  tried: readonly TriedWay[],
  items: readonly LayItem[],
  toLay: LayerToLay,
  fit: Pick<LayPlan, 'joins' | 'railroaded' | 'cutShort'>,
): LayPlan {
  const { facts, spec, layer, cloth } = toLay;
  const area = items.reduce((sum, { whole, copies }) => sum + whole.area * copies, 0);
  const { length, way } = taken;
  const pieces = inCuttingOrder(unfoldedPieces(taken.packed!, facts));
  const faults = checkLay(pieces, facts, length);
  if (faults.length > 0) throw new Error(`the lay of ${layer} fails its check: ${faults.join('; ')}`);
  const sections = sectionsOf(taken.packed!, facts);
  const plan = {
    layer,
    cloth,
    facts,
    fold: way.fold,
    way: way.name,
    sections,
    length,
    used: area / (length * facts.width),
    buy: buyLength(length, spec),
    pieces,
    spare: spareAreas(pieces, sections, facts, length),
    ways: tried.map((one) => rowOf(one, one === taken, area, toLay)),
    ...fit,
  };
  return { ...plan, remarks: layRemarks(plan, toLay.say) };
}

function rowOf(tried: TriedWay, taken: boolean, area: number, { facts, spec }: LayerToLay): LayWay {
  const { way, packed, length, why } = tried;
  const row = { name: way.name, fold: way.fold, why, taken };
  if (packed === undefined) {
    return { ...row, length: undefined, used: undefined, buy: undefined, handling: '' };
  }
  const used = area / (length * facts.width);
  return { ...row, length, used, buy: buyLength(length, spec), handling: handlingOf(tried, facts) };
}

function sectionsOf(packed: readonly PackedSection[], facts: ClothFacts): LaySection[] {
  let from = 0;
  return packed.map(({ section: { fold }, length }) => {
    const to = from + length;
    const section = { fold, from, to, upperTurned: fold === 'crosswise' && facts.oneWay };
    from = to;
    return section;
  });
}
