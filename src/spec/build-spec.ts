import type { ShapedSpec } from './shape/spec-shape.ts';
import type {
  ClothSpec,
  EdgingSpec,
  FullnessSpec,
  GoreSpec,
  LabourSpec,
  LayerSpec,
  NotionSpec,
  Spec,
  TrimSpec,
} from './spec.ts';
import { placesOf, type Written } from './written.ts';

/** Sewn, raw edge to seam line: 5/8 in, to the nearest millimetre (textbook). */
const USUAL_ALLOWANCE = 15;
/** What is taken off each side of a cloth whose selvedge is not measured (common practice: 5 to 15 mm). */
const USUAL_SELVEDGE = 10;
/** Room left for the floor under a bustled hem where none is given (common practice). */
const USUAL_CLEARANCE = 25;
/** Printers leave up to 6.7 mm unprinted; 10 mm suits them all (printer manuals). */
const USUAL_PAPER_MARGIN = 10;

const METRE = 1000;
const YARD = 914.4;

/** A spec that has passed every check, with its defaults filled in. */
export function buildSpec(shaped: ShapedSpec, root: Written): Spec {
  const {
    basedOn: _basedOn,
    without: _without,
    petticoat,
    closure,
    edging,
    trims,
    bustle,
    labour,
    notions,
    paper,
    train,
    ...rest
  } = shaped;
  return {
    ...rest,
    symmetry: shaped.symmetry ?? 'mirrored',
    bodice: {
      ...shaped.bodice,
      panels: shaped.bodice.panels ?? {},
      dropBelowWaist: shaped.bodice.dropBelowWaist ?? {},
    },
    gores: shaped.gores.map(goreOf),
    lengths: { ...shaped.lengths, measured: shaped.lengths.measured ?? 'finished' },
    allowances: { seam: USUAL_ALLOWANCE, waist: USUAL_ALLOWANCE, hem: USUAL_ALLOWANCE, ...shaped.allowances },
    roughCut: shaped.roughCut ?? {},
    layers: shaped.layers.map(layerOf),
    cloths: Object.fromEntries(
      Object.entries(shaped.cloths).map(([name, cloth]) => [name, clothOf(cloth, shaped.units)]),
    ),
    ...(train && { train: { ...train, shape: train.shape ?? 'round' } }),
    ...(petticoat && { petticoat: petticoatOf(petticoat) }),
    ...(closure && { closure: { ...closure, starts: closure.starts ?? 0 } }),
    ...(edging && { edging: edgingOf(edging, shaped.units) }),
    ...(trims && { trims: trims.map((trim) => trimOf(trim, shaped.units)) }),
    ...(bustle && { bustle: { ...bustle, clearance: bustle.clearance ?? USUAL_CLEARANCE } }),
    ...(labour && { labour: labourOf(labour) }),
    ...(notions && { notions: notions.map((notion) => notionOf(notion, shaped.units)) }),
    ...(paper && { paper: paperOf(paper) }),
    places: placesOf(root),
  };
}

function goreOf({ halfShare, fullness, ...gore }: ShapedSpec['gores'][number]): GoreSpec {
  const share = halfShare ?? gore.share;
  return {
    ...gore,
    onFold: gore.onFold ?? false,
    grain: gore.grain ?? 'centre',
    ...(share !== undefined && { share }),
    ...(fullness !== undefined && { fullness: fullnessOf(fullness) }),
  };
}

type GivenFullness = NonNullable<ShapedSpec['layers'][number]['fullness']>;

function fullnessOf(fullness: GivenFullness): FullnessSpec {
  const given = typeof fullness === 'number' ? { ratio: fullness } : fullness;
  return { where: 'throughout', by: 'gathers', ...given };
}

function layerOf({ fullness, ...layer }: ShapedSpec['layers'][number]): LayerSpec {
  return {
    ...layer,
    shorter: layer.shorter ?? 0,
    cutSmallerAcross: layer.cutSmallerAcross ?? 0,
    cutSmallerAlong: layer.cutSmallerAlong ?? 0,
    allowances: layer.allowances ?? {},
    ...(fullness !== undefined && { fullness: fullnessOf(fullness) }),
  };
}

function clothOf(
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
    pricedPer: unitOfPrice(pricedPer, soldBy, units),
    ...(soldBy && { soldBy: soldBy.step }),
  };
}

type Step = { readonly step: number; readonly inYards: boolean } | undefined;

/** Metres or yards: as said, else as the shop's step was written, else as the file measures. */
function unitOfPrice(said: 'm' | 'yd' | undefined, soldBy: Step, units: string): number {
  if (said !== undefined) return said === 'yd' ? YARD : METRE;
  return (soldBy?.inYards ?? units === 'in') ? YARD : METRE;
}

function edgingOf(
  { soldBy, pricedPer, ...edging }: NonNullable<ShapedSpec['edging']>,
  units: string,
): EdgingSpec {
  return {
    ...edging,
    from: edging.from ?? 'bought-in',
    pricedPer: unitOfPrice(pricedPer, soldBy, units),
    ...(soldBy && { soldBy: soldBy.step }),
  };
}

function trimOf(
  { soldBy, pricedPer, ...trim }: NonNullable<ShapedSpec['trims']>[number],
  units: string,
): TrimSpec {
  return {
    ...trim,
    pricedPer: unitOfPrice(pricedPer, soldBy, units),
    ...(soldBy && { soldBy: soldBy.step }),
  };
}

function notionOf(
  { pricedPer, ...notion }: NonNullable<ShapedSpec['notions']>[number],
  units: string,
): NotionSpec {
  return { ...notion, pricedPer: unitOfPrice(pricedPer, undefined, units) };
}

function petticoatOf(petticoat: NonNullable<ShapedSpec['petticoat']>): NonNullable<Spec['petticoat']> {
  return {
    ...petticoat,
    measured: petticoat.measured ?? 'along',
    ease: petticoat.ease ?? 0,
    girths: petticoat.girths ?? [],
  };
}

function labourOf(labour: NonNullable<ShapedSpec['labour']>): LabourSpec {
  const { overhead = 0, margin = 0, tax = 0, deposit = 0 } = labour;
  return { ...labour, overhead, margin, tax, deposit };
}

function paperOf(paper: NonNullable<ShapedSpec['paper']>): NonNullable<Spec['paper']> {
  return { ...paper, margin: paper.margin ?? USUAL_PAPER_MARGIN, lap: paper.lap ?? 0 };
}
