import { buyLength } from './buy-length.ts';
import { handlingOf, type TriedWay } from './choose-way.ts';
import { inCuttingOrder } from './cutting-order.ts';
import { layFaults } from './lay-faults.ts';
import type { LayItem } from './lay-items.ts';
import type { ClothFacts, LayPlan, LaySection, LayWay } from './lay-plan.ts';
import type { LayToPlan } from './lay-to-plan.ts';
import type { PackedSection } from './pack-section.ts';
import { spareAreas } from './spare-areas.ts';
import { unfoldedPieces } from './try-ways.ts';

/** The way taken as a plan: opened out, in cutting order, with what it comes to. */
export function finishedLay(
  taken: TriedWay,
  tried: readonly TriedWay[],
  items: readonly LayItem[],
  toLay: LayToPlan,
  known: Pick<LayPlan, 'joins' | 'railroaded' | 'apart' | 'cutShort'>,
): LayPlan {
  const { facts, spec, name, cloth } = toLay;
  const layers = toLay.layers.map((layer) => layer.name);
  const area = items.reduce((sum, { whole, copies }) => sum + whole.area * copies, 0);
  const { length, way } = taken;
  const pieces = inCuttingOrder(unfoldedPieces(taken.packed!, facts), layers);
  const faults = layFaults(pieces, facts, length);
  if (faults.length > 0) throw new Error(`the lay of ${name} fails its check: ${faults.join('; ')}`);
  const sections = sectionsOf(taken.packed!, facts);
  return {
    name,
    cloth,
    layers,
    facts,
    fold: way.fold,
    way: way.folds,
    sections,
    length,
    used: area / (length * facts.width),
    buy: buyLength(length, spec),
    pieces,
    spare: spareAreas(pieces, sections, facts, length),
    ways: tried.map((one) => rowOf(one, one === taken, area, toLay)),
    ...known,
  };
}

function rowOf(tried: TriedWay, taken: boolean, area: number, { facts, spec }: LayToPlan): LayWay {
  const { way, packed, length, tooWide } = tried;
  const row = { folds: way.folds, fold: way.fold, tooWide, taken };
  if (packed === undefined) {
    return { ...row, length: undefined, used: undefined, buy: undefined, handling: undefined };
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
