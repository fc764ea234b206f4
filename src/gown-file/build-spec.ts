import { bodiceOf, bodyOf, capeOf, strapsOf } from './build-bodice.ts';
import { clothOf, edgingOf, notionOf, trimOf } from './build-cloths.ts';
import { goreOf, layerOf, lengthsOf, petticoatOf, trainOf } from './build-gores.ts';
import { flounceOf, overskirtOf, tiersOf } from './build-parts.ts';
import type { ShapedSpec } from './shape/spec-shape.ts';
import type { LabourSpec, PaperSpec, Spec } from './spec.ts';
import { placesOf, type Written } from './written.ts';

/** Sewn, raw edge to seam line: 5/8 in, to the nearest millimetre (textbook). */
export const USUAL_ALLOWANCE = 15;
/** Room left for the floor under a bustled hem where none is given (common practice). */
const USUAL_CLEARANCE = 25;
/** A zip starts clear of the waist seam's bulk (common practice); lacing and hooks begin at the seam. */
const USUAL_START = { zip: 25, lacing: 0, hooks: 0 } as const;
/** Printers leave up to 6.7 mm unprinted; 10 mm suits them all (printer manuals). */
const USUAL_PAPER_MARGIN = 10;

/** A spec that has passed every check, with its defaults filled in. */
export function buildSpec(shaped: ShapedSpec, root: Written): Spec {
  const { basedOn: _basedOn, without: _without, units, bodice, ...given } = shaped;
  const {
    body,
    petticoat,
    flounces,
    tiers,
    overskirts,
    straps,
    capes,
    closure,
    edging,
    trims,
    bustle,
    labour,
    notions,
    paper,
    train,
    ...rest
  } = given;
  return {
    ...rest,
    units,
    symmetry: given.symmetry ?? 'mirrored',
    bodice: bodiceOf(bodice, units),
    gores: given.gores.map(goreOf),
    lengths: lengthsOf(given.lengths),
    allowances: { seam: USUAL_ALLOWANCE, waist: USUAL_ALLOWANCE, hem: USUAL_ALLOWANCE, ...given.allowances },
    roughCut: given.roughCut ?? {},
    layers: given.layers.map(layerOf),
    cloths: Object.fromEntries(
      Object.entries(given.cloths).map(([name, cloth]) => [name, clothOf(cloth, units)]),
    ),
    ...(train && { train: trainOf(train) }),
    ...(body && { body: bodyOf(body) }),
    ...(petticoat && { petticoat: petticoatOf(petticoat) }),
    ...(flounces && { flounces: flounces.map(flounceOf) }),
    ...(tiers && { tiers: tiers.map(tiersOf) }),
    ...(overskirts && { overskirts: overskirts.map(overskirtOf) }),
    ...(straps && { straps: strapsOf(straps, given.layers) }),
    ...(capes && { capes: capes.map(capeOf) }),
    ...(closure && { closure: closureOf(closure, body) }),
    ...(edging && { edging: edgingOf(edging, units) }),
    ...(trims && { trims: trims.map((trim) => trimOf(trim, units)) }),
    ...(bustle && { bustle: { ...bustle, clearance: bustle.clearance ?? USUAL_CLEARANCE } }),
    ...(labour && { labour: labourOf(labour) }),
    ...(notions && { notions: notions.map((notion) => notionOf(notion, units)) }),
    ...(paper && { paper: paperOf(paper) }),
    places: placesOf(root),
  };
}

/** Her hip is measured once: where the closure says none, the body does. */
function closureOf(
  closure: NonNullable<ShapedSpec['closure']>,
  body: ShapedSpec['body'],
): NonNullable<Spec['closure']> {
  const hip = closure.hip ?? body?.girths.find(({ at }) => at === 'hip')?.girth;
  const starts = closure.starts ?? USUAL_START[closure.kind];
  return { ...closure, starts, ...(hip !== undefined && { hip }) };
}

function labourOf(labour: NonNullable<ShapedSpec['labour']>): LabourSpec {
  const { overhead = 0, margin = 0, tax = 0, deposit = 0 } = labour;
  return { ...labour, overhead, margin, tax, deposit };
}

function paperOf(paper: NonNullable<ShapedSpec['paper']>): PaperSpec {
  const { margin = USUAL_PAPER_MARGIN, lap = 0 } = paper;
  const usual = USUAL_PAPER_MARGIN;
  const margins =
    typeof margin === 'number'
      ? { left: margin, right: margin, top: margin, bottom: margin }
      : { left: usual, right: usual, top: usual, bottom: usual, ...margin };
  return { ...paper, margin: margins, lap };
}
