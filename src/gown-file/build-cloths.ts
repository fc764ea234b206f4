import type { ShapedSpec } from './shape/spec-shape.ts';
import type { ClothSpec, EdgingSpec, NotionSpec, TrimSpec } from './spec.ts';

/** What is taken off each side of a cloth whose selvedge is not measured, mm (common practice: 5 to 15). */
export const USUAL_SELVEDGE = 10;

const METRE = 1000;
const YARD = 914.4;

type Step = { readonly step: number; readonly inYards: boolean } | undefined;

export function clothOf(
  { soldBy, pricedPer, headToTail, ...cloth }: ShapedSpec['cloths'][string],
  units: string,
): ClothSpec {
  return {
    ...cloth,
    selvedge: cloth.selvedge ?? USUAL_SELVEDGE,
    oneWay: cloth.oneWay ?? headToTail === false,
    fold: cloth.fold ?? 'any',
    shrinkage: cloth.shrinkage ?? 0,
    endLoss: cloth.endLoss ?? 0,
    safety: cloth.safety ?? 0,
    ...sold(pricedPer, soldBy, units),
  };
}

export function edgingOf(
  { soldBy, pricedPer, ...edging }: NonNullable<ShapedSpec['edging']>,
  units: string,
): EdgingSpec {
  return { ...edging, from: edging.from ?? 'bought-in', ...sold(pricedPer, soldBy, units) };
}

export function trimOf(
  { soldBy, pricedPer, ...trim }: NonNullable<ShapedSpec['trims']>[number],
  units: string,
): TrimSpec {
  return { ...trim, ...sold(pricedPer, soldBy, units) };
}

export function notionOf(
  { pricedPer, ...notion }: NonNullable<ShapedSpec['notions']>[number],
  units: string,
): NotionSpec {
  return { ...notion, ...sold(pricedPer, undefined, units) };
}

/** A price is for a metre or a yard: as said, else as the shop's step was written, else as the file measures. */
function sold(said: 'm' | 'yd' | undefined, soldBy: Step, units: string) {
  const inYards = said === undefined ? (soldBy?.inYards ?? units === 'in') : said === 'yd';
  return { pricedPer: inYards ? YARD : METRE, ...(soldBy && { soldBy: soldBy.step }) };
}
