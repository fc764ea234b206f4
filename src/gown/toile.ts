import type { AskedBodice } from './above-waist.ts';
import type { Cloth } from './cloth.ts';
import type { Gown, Overskirt } from './gown.ts';
import { type Allowance, type Layer, type LayerAllowances, PLAIN } from './layer.ts';
import type { Placed } from './placed.ts';
import type { Closure } from './sections.ts';
import type { WaistFinish } from './waist.ts';
import type { Wrap } from './wrap.ts';

/** Allowances of a toile: wide enough to let out and to pin over, mm. From memory. */
export const TOILE_ALLOWANCES = { seam: 30, waist: 40, hem: 50 } as const;

/** Calico as it is usually sold, mm. Textbook width. */
const CALICO_WIDTH = 1500;

/**
 * The same gores as a toile: one layer of calico with wide allowances, no rough cut, no edging, no trims and no prices.
 * Everything that decides the shape stays as it is.
 */
export function toileOf(gown: Gown): Gown {
  const {
    edging: _edging,
    bustle: _bustle,
    sewnAsOne: _sewn,
    labour: _labour,
    closure,
    waist,
    wrap,
    ...shape
  } = gown;
  const calico: Cloth = {
    name: 'calico',
    width: CALICO_WIDTH,
    selvedge: 10,
    oneWay: false,
    fold: 'any',
    shrinkage: 0,
    pricedPer: 1000,
    endLoss: 0,
    safety: 0,
    place: () => gown.place(),
  };
  const layer = toileLayer(gown, calico);
  const gores = gown.gores.map((gore) => ({ ...gore, roughCut: 0 }));
  const { askedBodice: asked } = gown;
  return {
    ...shape,
    name: `${gown.name} (toile)`,
    gores,
    layers: [layer],
    cloths: [calico],
    flounces: [],
    stones: [],
    tiers: [],
    godets: gown.godets.map((godet) => ({ ...godet, layers: [layer.name], roughCut: 0 })),
    pleats: gown.pleats.map((pleat) => ({ ...pleat, layers: [layer.name] })),
    overskirts: gown.overskirts.map((overskirt) => ({
      ...overskirt,
      gown: overskirtToile(overskirt, calico),
    })),
    // Its opening is pinned, and a tape stands for what will finish its waist.
    ...(closure && { closure: withoutPiece(closure) }),
    ...(waist && { waist: tapeFor(waist) }),
    ...(wrap && { wrap: withoutPieces(wrap) }),
    // Tape shows where straps go.
    straps: [],
    slits: [],
    pockets: [],
    loops: [],
    capes: gown.capes.map((cape) => ({ ...cape, layers: [capeToile(layer)] })),
    ...(asked && { askedBodice: bodiceToile(asked, layer) }),
    trims: [],
    notions: [],
    cut: {},
  };
}

function withoutPiece({ piece: _, finish: _f, ...closure }: Closure): Closure {
  return closure;
}

function withoutPieces({ facing: _, ties: _t, ...wrap }: Wrap): Wrap {
  return wrap;
}

function tapeFor({ layer: _, ...waist }: WaistFinish): WaistFinish {
  return { ...waist, finish: 'stay' };
}

function overskirtToile({ gown: drafted, edges }: Overskirt, calico: Cloth): Gown {
  const { edgeFacing: _, ...gown } = drafted;
  const layer = toileLayer(gown, calico);
  const { hem } = layer.allowances;
  const ends = gown.stations
    .filter(({ free }) => free)
    .map(({ name }) => [name, edges === 'bound' ? { ...hem, width: 0 } : hem] as const);
  return {
    ...gown,
    gores: gown.gores.map((gore) => ({ ...gore, roughCut: 0 })),
    layers: [{ ...layer, allowances: { ...layer.allowances, named: Object.fromEntries(ends) } }],
    cloths: [calico],
  };
}

/** A drafted bodice in calico, with cloth left above its upper edge to draw on. */
function bodiceToile(asked: AskedBodice, layer: Layer): AskedBodice {
  const panels = asked.draft.panels.map(({ name }) => name);
  const { facing: _, ...plain } = asked;
  return {
    ...plain,
    draft: { ...asked.draft, upperFinish: 'turned' },
    layers: [{ ...layer, gores: panels }],
  };
}

function capeToile(layer: Layer): Layer {
  const { allowances } = layer;
  const free = { 'front-edge': allowances.hem, 'back-edge': allowances.hem };
  return { ...layer, gores: [], allowances: { ...allowances, named: free } };
}

function toileLayer({ gores, place }: Pick<Gown, 'gores' | 'place'>, cloth: Cloth): Layer {
  return {
    name: 'toile',
    cloth,
    hem: 'raw',
    shape: PLAIN,
    allowances: toileAllowances(place),
    gores: gores.map(({ name }) => name),
    seams: 'pressed-open',
    place: () => place(),
  };
}

function toileAllowances(place: Placed<[]>['place']): LayerAllowances {
  const own = (width: number): Allowance => ({ width, place: place() });
  return {
    seam: own(TOILE_ALLOWANCES.seam),
    waist: own(TOILE_ALLOWANCES.waist),
    hem: own(TOILE_ALLOWANCES.hem),
    named: {},
  };
}
