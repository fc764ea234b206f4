import type { GoreSpec, Spec } from '../gown-file/spec.ts';
import { stationsOf } from '../gown-file/stations.ts';
import type { Gore, Gown, LengthRule, Station, Train, WidthRule } from './gown.ts';
import { slantLevels } from './slant-levels.ts';
import { type WornLengths, wornLengths } from './worn-lengths.ts';

/** The allowances that hold where the spec names none: the usual 5/8 in seam (textbook) all round. */
export const DEFAULT_ALLOWANCE = 15;

/** Builds the ring of gores from a spec that has read without errors. */
export function gownOfSpec(spec: Spec): Gown {
  const closed = spec.symmetry === 'none';
  const names = stationNames(spec);
  const worn = wornLengths(spec);
  const stations = names.map((name) => stationOf(spec, worn, name));
  const pointedAt = spec.bodice.point === undefined ? -1 : names.indexOf(spec.bodice.point);
  const train = trainOf(spec, names);
  const tops = spec.gores.map((gore) => topOf(spec, gore));
  return {
    name: spec.gown,
    closed,
    gores: spec.gores.map((gore, index) => goreOf(spec, gore, index, tops)),
    stations,
    ...(pointedAt >= 0 ? { pointedAt } : {}),
    lengths: lengthRuleOf(spec, worn),
    ...(train === undefined ? {} : { train }),
    waistSeam: spec.bodice.waistSeam,
  };
}

/** The stations in order, one more than the gores; a closed ring ends where it began. */
function stationNames(spec: Spec): string[] {
  const names = stationsOf(
    spec.gores.map((gore) => gore.name),
    spec.symmetry,
  );
  return spec.symmetry === 'none' ? [...names, names[0]!] : names;
}

/** Which side of a gore lies on the fold; one gore alone is folded at the centre front. */
export function foldOf(spec: Pick<Spec, 'gores'>, index: number): 'front' | 'back' | undefined {
  if (!spec.gores[index]!.onFold) return undefined;
  return index === 0 ? 'front' : 'back';
}

function stationOf(spec: Spec, worn: WornLengths, name: string): Station {
  const given = worn.at[name];
  const drop = spec.bodice.dropBelowWaist[name] ?? 0;
  if (given === undefined) return { name, drop };
  const turnings =
    spec.lengths.measured === 'cut'
      ? (spec.allowances.waist ?? DEFAULT_ALLOWANCE) + (spec.allowances.hem ?? DEFAULT_ALLOWANCE)
      : 0;
  return { name, drop, length: given - turnings };
}

function lengthRuleOf(spec: Spec, worn: WornLengths): LengthRule {
  return spec.lengths.measured === 'to-floor'
    ? { measured: 'to-floor', offFloor: worn.offFloor ?? 0 }
    : { measured: 'finished' };
}

function trainOf(spec: Spec, names: readonly string[]): Train | undefined {
  if (spec.train === undefined) return undefined;
  const { begins, full, ends, onFloor, shape } = spec.train;
  const last = names.length - 1;
  return {
    begins: names.indexOf(begins),
    full: full === undefined ? last : names.indexOf(full),
    ...(ends === undefined ? {} : { ends: ends === names[last] ? last : names.indexOf(ends) }),
    onFloor: onFloor ?? 0,
    shape,
  };
}

/** On a closed ring, gores whose middle lies in the second half of the waist are on the wearer's right. */
function sideOf(spec: Spec, index: number, tops: readonly number[]): Gore['side'] {
  if (spec.symmetry !== 'none') return undefined;
  const round = tops.reduce((sum, top) => sum + top, 0);
  const before = tops.slice(0, index).reduce((sum, top) => sum + top, 0);
  return before + tops[index]! / 2 > (round / 2) * (1 + 1e-9) ? 'right' : 'left';
}

function goreOf(spec: Spec, gore: GoreSpec, index: number, tops: readonly number[]): Gore {
  const fold = foldOf(spec, index);
  const side = sideOf(spec, index, tops);
  const panel = panelOf(spec, gore);
  const top = tops[index]!;
  return {
    name: gore.name,
    ...(fold === undefined ? {} : { fold }),
    ...(side === undefined ? {} : { side }),
    top,
    ...(panel === undefined ? {} : { panel }),
    width: widthRuleOf(spec, gore, top),
    ...(gore.fullness === undefined
      ? {}
      : { fullness: { ratio: gore.fullness.ratio, where: gore.fullness.where } }),
    grain: grainOf(gore, fold, side),
  };
}

/** The bodice edge that a gore's top meets; of the half, on a fold. */
function panelOf(spec: Pick<Spec, 'bodice'>, gore: GoreSpec): number | undefined {
  const whole = spec.bodice.panels[gore.name];
  return whole === undefined || !gore.onFold ? whole : whole / 2;
}

/** A gore's sewn top, mm; of its half on a fold. */
export function topOf(spec: Pick<Spec, 'bodice'>, gore: GoreSpec): number {
  const top = (gore.onFold ? gore.halfTop : gore.top) ?? panelOf(spec, gore);
  if (top === undefined) throw new Error(`gore ${gore.name} has no top`);
  return top;
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
  const shareAt = (level: number): number =>
    typeof gore.share === 'object' ? (gore.share[level] ?? share) : (gore.share ?? share);
  return {
    kind: 'girths',
    levels: levels.map(({ down, girth }, i) => ({ down, width: girth * shareAt(i) })),
  };
}

/** The ring runs from the front edge to the back edge of a gore on the wearer's left, and the other way on her right. */
function grainOf(gore: GoreSpec, fold: Gore['fold'], side: Gore['side']): Gore['grain'] {
  if (fold !== undefined) return { frontPart: fold === 'front' ? 0 : 1 };
  const [first, second] = side === 'right' ? ['back-edge', 'front-edge'] : ['front-edge', 'back-edge'];
  if (typeof gore.flare === 'object') {
    const [front, back] = gore.flare;
    return side === 'right' ? { front: back, back: front } : { front, back };
  }
  return { frontPart: gore.grain === first ? 0 : gore.grain === second ? 1 : 0.5 };
}
