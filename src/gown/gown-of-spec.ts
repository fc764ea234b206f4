import type { GoreSpec, Spec } from '../spec/spec.ts';
import type { Gore, Gown, LengthRule, Station, Train, WidthRule } from './gown.ts';
import { slantLevels } from './slant-levels.ts';

/** The allowances that hold where the spec names none: the usual 5/8 in seam (textbook) all round. */
export const DEFAULT_ALLOWANCE = 15;

/** Builds the ring of gores from a spec that has read without errors. */
export function gownOfSpec(spec: Spec): Gown {
  const closed = spec.symmetry === 'none';
  const names = stationNames(spec);
  const stations = names.map((name) => stationOf(spec, name));
  const pointedAt = spec.bodice.point === undefined ? -1 : names.indexOf(spec.bodice.point);
  const train = trainOf(spec, names);
  return {
    name: spec.gown,
    closed,
    gores: spec.gores.map((gore, index) => goreOf(spec, gore, index)),
    stations,
    ...(pointedAt >= 0 ? { pointedAt } : {}),
    lengths: lengthRuleOf(spec),
    ...(train === undefined ? {} : { train }),
    waistSeam: spec.bodice.waistSeam,
  };
}

/** Names of the stations in order, one more than the gores; a closed ring ends where it began. */
export function stationNames(spec: Pick<Spec, 'symmetry' | 'gores'>): string[] {
  const gores = spec.gores.map((gore) => gore.name);
  const inner = gores.slice(1).map((name, i) => `${gores[i]}/${name}`);
  if (spec.symmetry === 'none') {
    const closing = `${gores[gores.length - 1]}/${gores[0]}`;
    return [closing, ...inner, closing];
  }
  return ['centre-front', ...inner, 'centre-back'];
}

/** Which side of a gore lies on the fold; one gore alone is folded at the centre front. */
export function foldOf(spec: Pick<Spec, 'gores'>, index: number): 'front' | 'back' | undefined {
  if (!spec.gores[index]!.onFold) return undefined;
  return index === 0 ? 'front' : 'back';
}

function stationOf(spec: Spec, name: string): Station {
  const given = spec.lengths.at[name];
  const drop = spec.bodice.dropBelowWaist[name] ?? 0;
  if (given === undefined) return { name, drop };
  const turnings =
    spec.lengths.measured === 'cut'
      ? (spec.allowances.waist ?? DEFAULT_ALLOWANCE) + (spec.allowances.hem ?? DEFAULT_ALLOWANCE)
      : 0;
  return { name, drop, length: given - turnings };
}

function lengthRuleOf(spec: Spec): LengthRule {
  return spec.lengths.measured === 'to-floor'
    ? { measured: 'to-floor', offFloor: spec.lengths.offFloor ?? 0 }
    : { measured: 'finished' };
}

function trainOf(spec: Spec, names: readonly string[]): Train | undefined {
  if (spec.train === undefined) return undefined;
  return {
    begins: names.indexOf(spec.train.begins),
    onFloor: spec.train.onFloor ?? 0,
    shape: spec.train.shape,
  };
}

function goreOf(spec: Spec, gore: GoreSpec, index: number): Gore {
  const fold = foldOf(spec, index);
  const whole = spec.bodice.panels[gore.name];
  const panel = whole === undefined ? undefined : fold === undefined ? whole : whole / 2;
  const top = (fold === undefined ? gore.top : gore.halfTop) ?? panel;
  if (top === undefined) throw new Error(`gore ${gore.name} has no top`);
  return {
    name: gore.name,
    ...(fold === undefined ? {} : { fold }),
    top,
    ...(panel === undefined ? {} : { panel }),
    width: widthRuleOf(spec, gore, top),
    grain: grainOf(gore, fold),
  };
}

function widthRuleOf(spec: Spec, gore: GoreSpec, top: number): WidthRule {
  const flare = gore.onFold ? gore.halfFlare : gore.flare;
  if (flare !== undefined)
    return { kind: 'flare', angle: typeof flare === 'number' ? flare : flare[0] + flare[1] };
  const share = top / spec.bodice.waistSeam;
  const hem =
    (gore.onFold ? gore.halfHem : gore.hem) ?? (spec.sweep === undefined ? undefined : spec.sweep * share);
  if (hem !== undefined) return { kind: 'hem', width: hem, at: spec.lengths.hemWidthAt ?? 0 };
  if (spec.petticoat === undefined) throw new Error(`gore ${gore.name} has no width below its top`);
  const levels = slantLevels(spec.petticoat).filter((level) => level.down > 0);
  return {
    kind: 'girths',
    levels: levels.map(({ down, girth }) => ({ down, width: girth * (gore.share ?? share) })),
  };
}

function grainOf(gore: GoreSpec, fold: 'front' | 'back' | undefined): Gore['grain'] {
  if (fold !== undefined) return { frontPart: fold === 'front' ? 0 : 1 };
  if (typeof gore.flare === 'object') return { front: gore.flare[0], back: gore.flare[1] };
  return { frontPart: gore.grain === 'centre' ? 0.5 : gore.grain === 'front-edge' ? 0 : 1 };
}
