import type { BodiceLayerSpec, CapeSpec, StrapSpec } from '../gown-file/bodice-spec.ts';
import { type Allowances, placeOf, type Spec } from '../gown-file/spec.ts';
import type { AskedBodice, Cape, Strap } from './above-waist.ts';
import type { Cloth } from './cloth.ts';
import { type Allowance, type Layer, type LayerAllowances, PLAIN } from './layer.ts';
import { gownAllowances, type LayersAsked, layerOf } from './layers-of-spec.ts';
import type { PlaceIn } from './placed.ts';

/** The bodice that a spec asks to have drafted; nothing where its edge is measured. */
export function askedBodice(spec: Spec): AskedBodice | undefined {
  const { body, bodice, units } = spec;
  const { draft, dropBelowWaist, point } = bodice;
  if (draft === undefined || body === undefined) return undefined;
  const place: PlaceIn = (...path) => placeOf(spec, ...path);
  const panels = draft.panels.map(({ name }) => name);
  const { layers, allowances: _, ...rules } = draft;
  return {
    units,
    body,
    draft: rules,
    layers: layers.map((layer, i) => panelLayer(spec, layer, panels, i)),
    drops: dropBelowWaist,
    ...(point === undefined ? {} : { point }),
    tops: spec.gores.flatMap(({ name, onFold, top, halfTop }, index) => {
      const own = onFold ? halfTop : top;
      return own === undefined ? [] : [{ gore: name, index, key: onFold ? 'half-top' : 'top', top: own }];
    }),
    place,
  };
}

/** The spec with the edge that its drafted bodice has: what the skirt is sewn to. @param panels lower edges, of one side */
export function sewnToEdge(spec: Spec, panels: Readonly<Record<string, number>>, round: number): Spec {
  const whole = spec.gores.map(({ name, onFold }) => [name, panels[name]! * (onFold ? 2 : 1)] as const);
  return { ...spec, bodice: { ...spec.bodice, waistSeam: round, panels: Object.fromEntries(whole) } };
}

/** A layer's own allowances before the bodice's, the bodice's before the gown's; a bound edge has none. */
function panelLayer(
  spec: Spec,
  { name, cloth, allowances, panels }: BodiceLayerSpec,
  all: readonly string[],
  index: number,
): Layer {
  const draft = spec.bodice.draft!;
  const place: PlaceIn = (...path) => placeOf(spec, 'bodice', 'draft', 'layers', index, ...path);
  const ofDraft: PlaceIn = (...path) => placeOf(spec, 'bodice', 'draft', 'allowances', ...path);
  const bound = draft.upperFinish === 'bound' ? { 'upper-edge': 0 } : {};
  const given: Allowances = { ...bound, ...draft.allowances };
  const gown = gownAllowances(spec.allowances, (...path) => placeOf(spec, 'allowances', ...path));
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
    place,
  };
}

function clothNamed(spec: Spec, name: string): Cloth {
  return { ...spec.cloths[name]!, name, place: (...path) => placeOf(spec, 'cloths', name, ...path) };
}

export function strapOf({ cloth, ...rest }: StrapSpec, asked: LayersAsked, place: PlaceIn): Strap {
  const { seam, waist, hem } = asked.allowances;
  const layer: Layer = {
    name: rest.name,
    cloth: asked.clothNamed(cloth),
    hem: 'raw',
    shape: PLAIN,
    allowances: { seam, waist, hem: { ...hem, width: 0 }, named: {} },
    gores: [],
    seams: 'pressed-open',
    place,
  };
  return { ...rest, layer, place };
}

/** A cape's layers have the gown's allowances, but no seam of the gown's: its free edges are finished as its hem is. */
export function capeOf(spec: CapeSpec, asked: LayersAsked, place: PlaceIn): Cape {
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
