import type { Allowances, LayerSpec, Spec } from '../gown-file/spec.ts';
import type { Cloth, HemFinish } from './cloth.ts';
import { type Allowance, type Facing, type Layer, type LayerAllowances, PLAIN, tuckedUp } from './layer.ts';
import type { PlaceIn } from './placed.ts';

/** What the layers of a gown or an overskirt begin from. */
export interface LayersAsked {
  readonly gores: readonly string[];
  readonly allowances: GownAllowances;
  readonly clothNamed: (name: string) => Cloth;
  /** What the gown's own lines take off lengths that were measured with their turnings, mm; none of other lengths. */
  readonly turnings?: number;
}

/** What the gown asks for where a layer asks for nothing else; `named` by station. */
export interface GownAllowances {
  readonly seam: Allowance;
  readonly waist: Allowance;
  readonly hem: Allowance;
  readonly named: Readonly<Record<string, Allowance>>;
}

export function gownAllowances(given: Allowances, place: PlaceIn<['allowances']>): GownAllowances {
  const own = (edge: string): Allowance => ({ width: given[edge]!, place: place(edge) });
  return { seam: own('seam'), waist: own('waist'), hem: own('hem'), named: namedIn(given, place) };
}

export function layerOf(spec: LayerSpec, asked: LayersAsked, place: PlaceIn<['layers', number]>): Layer {
  const { name, hem, facing, grain, growthTucks, fullness, seams, edging, gap, notes } = spec;
  const tucks =
    growthTucks === undefined
      ? undefined
      : { ...growthTucks, apart: growthTucks.apart ?? USUAL_TUCKS_APART * growthTucks.width };
  const allowances = layerAllowances(spec.allowances, hem, asked.allowances, (...path) =>
    place('allowances', ...path),
  );
  const layer: Layer = {
    name,
    cloth: asked.clothNamed(spec.cloth),
    hem,
    shape: {
      shorter: spec.shorter + turnedMore(allowances, asked.turnings) - tuckedUp({ ...(tucks && { tucks }) }),
      smallerAcross: spec.cutSmallerAcross,
      smallerAlong: spec.cutSmallerAlong,
      ...(fullness === undefined ? {} : { fullness: { ratio: fullness.ratio, where: fullness.where } }),
    },
    ...(fullness === undefined ? {} : { fullness }),
    allowances,
    gores: spec.gores ?? asked.gores,
    ...(edging === undefined ? {} : { edging }),
    ...(grain === 'bias' ? { grain } : {}),
    ...(tucks && { tucks }),
    seams: seams ?? 'pressed-open',
    ...(gap === undefined ? {} : { gap }),
    ...(notes === undefined ? {} : { notes }),
    place,
  };
  return facing === undefined ? layer : { ...layer, facing: facingOf(layer, facing, asked, place) };
}

/** From one tuck's stitching to the next, as a multiple of their width: each hangs clear of the one below (common practice). */
const USUAL_TUCKS_APART = 1.5;

/** A facing is cut so much smaller at the edge where it turns inside, mm: the seam then rolls inwards (common practice). */
export const TURNS_INSIDE = 2;

/** The inner edge of a facing is neatened or turned under once, mm (textbook: 1/4 in). */
export const NEATENED = 6;

function facingOf(
  layer: Layer,
  { depth, cloth }: NonNullable<LayerSpec['facing']>,
  asked: LayersAsked,
  place: PlaceIn<['layers', number]>,
): Facing {
  const { allowances } = layer;
  const here = place('facing');
  const hem = { ...allowances.hem, width: Math.max(0, allowances.hem.width - TURNS_INSIDE) };
  const inner = { width: NEATENED, place: here };
  const own: Layer = {
    ...layer,
    name: `${layer.name}-facing`,
    cloth: cloth === undefined ? layer.cloth : asked.clothNamed(cloth),
    shape: PLAIN,
    allowances: { ...allowances, hem, named: { ...allowances.named, 'inner-edge': inner } },
    place: () => here,
  };
  return { depth, layer: own, place: () => here };
}

/** Of a cut length this layer turns in more, or less, than the gown's lines count on: its own allowances lie in it. */
function turnedMore({ waist, hem }: LayerAllowances, turnings: number | undefined): number {
  return turnings === undefined ? 0 : waist.width + hem.width - turnings;
}

/**
 * The layer's own before the gown's, a named station before `seam`. A raw edge takes no hem allowance unless the layer
 * itself names one.
 */
export function layerAllowances(
  given: Allowances,
  hem: HemFinish,
  gown: GownAllowances,
  place: PlaceIn<['allowances']>,
): LayerAllowances {
  const own = (edge: 'seam' | 'waist' | 'hem', usual: Allowance): Allowance => {
    const width = given[edge];
    return width === undefined ? usual : { width, place: place(edge), ofLayer: true };
  };
  return {
    waist: own('waist', gown.waist),
    hem: own('hem', hem === 'raw' ? { width: 0, place: gown.hem.place } : gown.hem),
    seam: own('seam', gown.seam),
    named: { ...gown.named, ...namedIn(given, place, { ofLayer: true }) },
  };
}

const EDGES = ['seam', 'waist', 'hem', 'top'];

function namedIn(
  given: Allowances,
  place: PlaceIn<['allowances']>,
  from: Pick<Allowance, 'ofLayer'> = {},
): Record<string, Allowance> {
  const names = Object.keys(given).filter((edge) => !EDGES.includes(edge));
  return Object.fromEntries(
    names.map((name) => [name, { width: given[name]!, place: place(name), ...from }]),
  );
}

/** What lengths with their turnings in them have at both ends, by the gown's allowances. */
export function turningsOf(
  { allowances }: Pick<Spec, 'allowances'>,
  { measured }: Pick<Spec['lengths'], 'measured'>,
): Pick<LayersAsked, 'turnings'> {
  return measured === 'cut' ? { turnings: allowances.waist! + allowances.hem! } : {};
}
