import type { Span } from '../diagnostics/diagnostic.ts';
import type { BodiceLayerSpec, CapeSpec, StrapSpec } from '../gown-file/spec.ts';
import { type Allowances, placeAt, type Spec } from '../gown-file/spec.ts';
import type { AskedBodice, Cape, Strap } from './above-waist.ts';
import type { Cloth } from './cloth.ts';
import { type Allowance, type Facing, type Layer, type LayerAllowances, PLAIN } from './layer.ts';
import { gownAllowances, type LayersAsked, layerOf, NEATENED, TURNS_INSIDE } from './layers-of-spec.ts';
import type { PlaceIn } from './placed.ts';

/** The bodice that a spec asks to have drafted; nothing where its edge is measured. */
export function askedBodice(spec: Spec): AskedBodice | undefined {
  const { body, bodice, units } = spec;
  const { draft, closing, bones, layers: asked = [], dropBelowWaist, point } = bodice;
  if (draft === undefined || body === undefined) return undefined;
  const panels = draft.panels.map(({ name }) => name);
  const { allowances: _, facing: _facing, ...rules } = draft;
  const made = asked.map((layer, i) => panelLayer(spec, layer, panels, i));
  return {
    units,
    body,
    draft: {
      ...rules,
      ...(closing === undefined ? {} : { closing }),
      ...(bones === undefined ? {} : { bones }),
    },
    layers: made,
    ...(draft.facing === undefined ? {} : { facing: facingOfUpper(spec, draft.facing, made) }),
    drops: dropBelowWaist,
    ...(point === undefined ? {} : { point }),
    tops: spec.gores.flatMap(({ name, onFold, top, halfTop }, index) => {
      const own = onFold ? halfTop : top;
      return own === undefined ? [] : [{ gore: name, index, key: onFold ? 'half-top' : 'top', top: own }];
    }),
    fittings: (spec.fittings ?? []).flatMap(({ date, side, bodice: pinned }, i) =>
      pinned === undefined
        ? []
        : [
            {
              date,
              ...(side === undefined ? {} : { side }),
              ...pinned,
              place: (...path) => placeAt(spec, ['fittings', i, 'bodice', ...path]),
            },
          ],
    ),
    placeAt: (path) => placeAt(spec, path),
  };
}

/**
 * The spec with what its drafted bodice decides: the edge that the skirt is sewn to, where its bones end, and how thick
 * it is in the waist seam. A lining is felled over that seam afterwards.
 * @param panels lower edges, of one side
 */
export function sewnToEdge(spec: Spec, panels: Readonly<Record<string, number>>, round: number): Spec {
  const { bodice } = spec;
  const whole = spec.gores.map(({ name, onFold }) => [name, panels[name]! * (onFold ? 2 : 1)] as const);
  const bonesEnd = bodice.bones?.clear ?? bodice.bonesEnd;
  const outer = (bodice.layers ?? []).filter(({ name }) => !/lining/i.test(name));
  return {
    ...spec,
    bodice: {
      ...bodice,
      waistSeam: round,
      panels: Object.fromEntries(whole),
      plies: bodice.plies ?? Math.max(1, outer.length),
      ...(bonesEnd === undefined ? {} : { bonesEnd }),
    },
  };
}

/** Her hip is measured once: where the closure says none, the body does. */
export function withHipOfBody(spec: Spec): Spec {
  const hip = spec.body?.girths.find(({ at }) => at === 'hip')?.girth;
  if (spec.closure === undefined || spec.closure.hip !== undefined || hip === undefined) return spec;
  return { ...spec, closure: { ...spec.closure, hip } };
}

/** A layer's own allowances before the bodice's, the bodice's before the gown's; a bound edge has none. */
function panelLayer(
  spec: Spec,
  { name, cloth, allowances, panels }: BodiceLayerSpec,
  all: readonly string[],
  index: number,
): Layer {
  const draft = spec.bodice.draft!;
  const place = (...path: readonly (string | number)[]) =>
    placeAt(spec, ['bodice', 'layers', index, ...path]);
  const ofDraft = (edge: string) => placeAt(spec, ['bodice', 'draft', 'allowances', edge]);
  const bound = draft.upperFinish === 'bound' ? { 'upper-edge': 0 } : {};
  const given: Allowances = { ...bound, ...draft.allowances };
  const gown = gownAllowances(spec.allowances, (...path) => placeAt(spec, ['allowances', ...path]));
  const own = (edge: string, usual: Allowance | undefined): Allowance | undefined => {
    if (allowances[edge] !== undefined)
      return { width: allowances[edge], place: place('allowances', edge), ofLayer: true };
    return given[edge] === undefined ? usual : { width: given[edge], place: ofDraft(edge) };
  };
  const named = [...Object.keys(given), ...Object.keys(allowances)].filter(
    (edge) => edge !== 'seam' && edge !== 'waist' && edge !== 'hem',
  );
  const widths: LayerAllowances = {
    seam: own('seam', gown.seam)!,
    waist: own('waist', gown.waist)!,
    hem: { width: 0, place: place() },
    named: Object.fromEntries(named.map((edge) => [edge, own(edge, undefined)!])),
  };
  return {
    name,
    cloth: clothNamed(spec, cloth),
    hem: 'raw',
    shape: PLAIN,
    allowances: widths,
    gores: panels ?? all,
    seams: 'pressed-open',
    place: () => place(),
  };
}

/** Of the outermost layer's cloth unless it has one of its own, and its edge so much smaller as rolls it inside. */
function facingOfUpper(
  spec: Spec,
  { depth, cloth }: NonNullable<NonNullable<Spec['bodice']['draft']>['facing']>,
  layers: readonly Layer[],
): Facing {
  const faced = layers.filter(({ name }) => !/lining/i.test(name)).at(-1) ?? layers[0]!;
  const place = (): Span => placeAt(spec, ['bodice', 'draft', 'facing']);
  const edge = faced.allowances.named['upper-edge'] ?? faced.allowances.seam;
  const named = {
    ...faced.allowances.named,
    'upper-edge': { ...edge, width: Math.max(0, edge.width - TURNS_INSIDE) },
    'inner-edge': { width: NEATENED, place: place() },
  };
  const layer: Layer = {
    ...faced,
    name: UPPER_FACING,
    cloth: cloth === undefined ? faced.cloth : clothNamed(spec, cloth),
    allowances: { ...faced.allowances, named },
    place,
  };
  return { depth, layer, place };
}

/** What the facings of the upper edge are called as a layer. */
const UPPER_FACING = 'bodice-facing';

function clothNamed(spec: Spec, name: string): Cloth {
  return { ...spec.cloths[name]!, name, place: (...path) => placeAt(spec, ['cloths', name, ...path]) };
}

/** A strap without a cloth is cut from the skirt's outermost. */
export function strapOf(
  { cloth, ...rest }: StrapSpec,
  layers: readonly Layer[],
  asked: LayersAsked,
  place: PlaceIn<['straps', number]>,
): Strap {
  const { seam, waist, hem } = asked.allowances;
  const layer: Layer = {
    name: rest.name,
    cloth: cloth === undefined ? layers[layers.length - 1]!.cloth : asked.clothNamed(cloth),
    hem: 'raw',
    shape: PLAIN,
    allowances: { seam, waist, hem: { ...hem, width: 0 }, named: {} },
    gores: [],
    seams: 'pressed-open',
    place: () => place(),
  };
  return { ...rest, layer, place };
}

/** A cape's layers have the gown's allowances, but no seam of the gown's: its free edges are finished as its hem is. */
export function capeOf(spec: CapeSpec, asked: LayersAsked, place: PlaceIn<['capes', number]>): Cape {
  const own: LayersAsked = { ...asked, gores: [], allowances: { ...asked.allowances, named: {} } };
  const layers = spec.layers.map((layer, i) => {
    const made = layerOf(layer, own, (...path) => place('layers', i, ...path));
    return { ...made, allowances: withFreeEdges(made.allowances) };
  });
  return { ...spec, layers, place };
}

const FREE_EDGES = ['front-edge', 'back-edge'];

function withFreeEdges(allowances: LayerAllowances): LayerAllowances {
  const free = Object.fromEntries(FREE_EDGES.map((edge) => [edge, allowances.hem]));
  return { ...allowances, named: { ...free, ...allowances.named } };
}
