import type { Span } from '../diagnostics/diagnostic.ts';
import { hermiteProfile } from '../geometry/hermite-profile.ts';
import { monotoneSlopes } from '../geometry/monotone-slopes.ts';
import type { Allowances, BodiceSpec, LengthsSpec, OverskirtSpec, Spec } from '../gown-file/spec.ts';
import { endsOfOverskirt, stationsOf } from '../gown-file/stations.ts';
import { topOf } from './gown-of-spec.ts';
import { wornLengths } from './worn-lengths.ts';

/** Stations of a gown that the two ends of an overskirt stand for in its draft. */
const ENDS = ['centre-front', 'centre-back'] as const;

/**
 * An overskirt written as a gown of its own, so that one draft serves both: its outer edge stands where a gown has its
 * centre front, its back edge, if it has one, where a gown has its centre back, and its waist is what its tops make.
 */
export function overskirtAsGown(spec: Spec, index: number): Spec {
  const overskirt = overskirtAt(spec, index);
  const {
    sweep: _s,
    train: _t,
    petticoat: _p,
    flounces: _f,
    tiers: _i,
    godets: _g,
    overskirts: _o,
    straps: _r,
    capes: _c,
    fittings: _fit,
    ...rest
  } = spec;
  const { sweep, train } = overskirt;
  const standingIn = (name: string): string => inPlaceOf(overskirt, name);
  return {
    ...rest,
    symmetry: 'mirrored',
    bodice: waistUnder(spec, overskirt),
    gores: overskirt.gores,
    lengths: lengthsUnder(spec, overskirt),
    allowances: { ...spec.allowances, ...edgeFinish(spec, overskirt) },
    layers: overskirt.layers.map((layer) => ({
      ...layer,
      allowances: renamed(layer.allowances, standingIn),
    })),
    ...(sweep === undefined ? {} : { sweep }),
    ...(train === undefined ? {} : { train: { ...train, begins: standingIn(train.begins) } }),
    places: placesBelow(spec, `overskirts.${index}`, standingIn),
  };
}

function overskirtAt(spec: Spec, index: number): OverskirtSpec {
  const overskirt = spec.overskirts?.[index];
  if (overskirt === undefined) throw new RangeError(`there is no overskirt ${index}`);
  return overskirt;
}

/** The names that the stations of an overskirt's draft have outside of it. */
export function overskirtEdge(overskirt: Pick<OverskirtSpec, 'to'>, edge: string): string {
  const place = (ENDS as readonly string[]).indexOf(edge);
  return place < 0 ? edge : endsOfOverskirt(overskirt.to)[place]!;
}

function inPlaceOf(overskirt: OverskirtSpec, name: string): string {
  const place = (endsOfOverskirt(overskirt.to) as string[]).indexOf(name);
  return place < 0 ? name : ENDS[place]!;
}

/** Free edges take what finishes them: nothing where they are bound, else the hem's allowance. */
function edgeFinish(spec: Spec, overskirt: OverskirtSpec): Allowances {
  const usual = overskirt.edges === 'bound' ? 0 : (spec.allowances.hem ?? 0);
  const free = endsOfOverskirt(overskirt.to).filter((name) => name !== 'centre-back');
  return Object.fromEntries(free.map((name) => [inPlaceOf(overskirt, name), spec.allowances[name] ?? usual]));
}

function lengthsUnder(spec: Spec, overskirt: OverskirtSpec): LengthsSpec {
  const named = (lengths: Allowances): Allowances => renamed(lengths, (name) => inPlaceOf(overskirt, name));
  const { measuredIn, ...own } = overskirt.lengths;
  const worn = wornLengths({
    ...spec,
    symmetry: 'mirrored',
    bodice: { ...spec.bodice, ...waistUnder(spec, overskirt), waistSeam: spec.bodice.waistSeam },
    gores: overskirt.gores,
    train: overskirt.train,
    lengths: {
      ...own,
      at: named(own.at),
      ...(own.toFloor && { toFloor: named(own.toFloor) }),
      ...(measuredIn && {
        measuredIn: {
          ...measuredIn,
          ...(measuredIn.dropBelowWaist && { dropBelowWaist: named(measuredIn.dropBelowWaist) }),
        },
      }),
    },
  } as Spec);
  return { ...own, ...worn };
}

/** The stretch of the gown's sewn edge that the overskirt lies on, which may drop below the level waist there. */
function waistUnder(spec: Spec, overskirt: OverskirtSpec): BodiceSpec {
  const tops = overskirt.gores.map((gore) => gore.top ?? gore.halfTop ?? 0);
  const half = tops.reduce((sum, top) => sum + top, 0);
  const bodice = { waistSeam: 2 * half, panels: {}, dropBelowWaist: {} };
  const drop = dropOver(spec);
  const end = stationWays(spec)[overskirt.to ?? 'centre-back'];
  if (drop === undefined || end === undefined) return bodice;
  const names = stationsOf(
    overskirt.gores.map((gore) => gore.name),
    'mirrored',
  );
  const ways = names.map((_, i) => end - tops.slice(i).reduce((sum, top) => sum + top, 0));
  const drops = Object.fromEntries(names.map((name, i) => [name, Math.max(0, drop(ways[i]!))]));
  const isLevel = Object.values(drops).every((own) => own === 0);
  // The edge runs on past the overskirt's ends, so it need not be level there.
  return isLevel ? bodice : { ...bodice, dropBelowWaist: drops, point: 'centre-front' };
}

/** How far each station lies from the first one round the half, mm along the gores' tops. */
function stationWays(spec: Spec): Record<string, number> {
  let way = 0;
  const names = stationsOf(
    spec.gores.map((gore) => gore.name),
    spec.symmetry,
  );
  return Object.fromEntries(
    names.map((name, i) => {
      if (i > 0) way += topOf(spec, spec.gores[i - 1]!);
      return [name, way];
    }),
  );
}

/** The sewn edge's drop over the way round; undefined where it is level. */
function dropOver(spec: Spec): ((way: number) => number) | undefined {
  const ways = stationWays(spec);
  const names = Object.keys(ways);
  const drops = names.map((name) => spec.bodice.dropBelowWaist[name] ?? 0);
  if (drops.every((drop) => drop === 0)) return undefined;
  const x = names.map((name) => ways[name]!);
  return hermiteProfile(x, drops, monotoneSlopes(x, drops, 0, 0)).valueAt;
}

function renamed(named: Allowances, name: (name: string) => string): Allowances {
  return Object.fromEntries(Object.entries(named).map(([own, value]) => [name(own), value]));
}

/** The places of a section, as if it were a file: what it has none for is shown at the section itself. */
function placesBelow(spec: Spec, path: string, standingIn: (name: string) => string): Map<string, Span> {
  const places = new Map<string, Span>();
  for (const [key, span] of spec.places) {
    if (key === path) places.set('', span);
    else if (key.startsWith(`${path}.`)) {
      const steps = key.slice(path.length + 1).split('.');
      places.set(steps.map(standingIn).join('.'), span);
    }
  }
  return places;
}
