import type { Span } from '../diagnostics/diagnostic.ts';
import type { Allowances, Spec } from '../spec/spec.ts';

/** Name of the free edge of an overskirt, where a gown has its centre front. */
export const OUTER_EDGE = 'outer-edge';
const IN_ITS_PLACE = 'centre-front';

/**
 * An overskirt written as a gown of its own, so that one draft serves both: its outer edge stands where a gown has its
 * centre front, and its waist is what its tops make.
 */
export function overskirtAsGown(spec: Spec, index: number): Spec {
  const overskirt = spec.overskirts?.[index];
  if (overskirt === undefined) throw new RangeError(`there is no overskirt ${index}`);
  const {
    sweep: _s,
    train: _t,
    petticoat: _p,
    flounces: _f,
    tiers: _i,
    godets: _g,
    overskirts: _o,
    ...rest
  } = spec;
  const finish = overskirt.edges === 'bound' ? 0 : (spec.allowances.hem ?? 0);
  const half = overskirt.gores.reduce((sum, gore) => sum + (gore.top ?? gore.halfTop ?? 0), 0);
  const { sweep, train } = overskirt;
  return {
    ...rest,
    symmetry: 'mirrored',
    bodice: { waistSeam: 2 * half, panels: {}, dropBelowWaist: {} },
    gores: overskirt.gores,
    lengths: { ...overskirt.lengths, at: standingIn(overskirt.lengths.at) },
    allowances: { ...spec.allowances, [IN_ITS_PLACE]: spec.allowances[OUTER_EDGE] ?? finish },
    roughCut: {},
    layers: overskirt.layers.map((layer) => ({ ...layer, allowances: standingIn(layer.allowances) })),
    ...(sweep === undefined ? {} : { sweep }),
    ...(train === undefined
      ? {}
      : { train: { ...train, begins: train.begins === OUTER_EDGE ? IN_ITS_PLACE : train.begins } }),
    places: placesBelow(spec, `overskirts.${index}`),
  };
}

/** The name that an edge of the overskirt has outside of its draft. */
export function overskirtEdge(edge: string): string {
  return edge === IN_ITS_PLACE ? OUTER_EDGE : edge;
}

function standingIn(named: Allowances): Allowances {
  return Object.fromEntries(
    Object.entries(named).map(([name, value]) => [name === OUTER_EDGE ? IN_ITS_PLACE : name, value]),
  );
}

/** The places of a section, as if it were a file: what it has none for is shown at the section itself. */
function placesBelow(spec: Spec, path: string): Map<string, Span> {
  const places = new Map<string, Span>();
  for (const [key, span] of spec.places) {
    if (key === path) places.set('', span);
    else if (key.startsWith(`${path}.`))
      places.set(key.slice(path.length + 1).replace(OUTER_EDGE, IN_ITS_PLACE), span);
  }
  return places;
}
