import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/shaping-problems.ts';
import { WAIST_AGREES } from '../../geometry/tolerances.ts';
import type { FilePath } from '../spec.ts';
import { endsOfOverskirt } from '../stations.ts';
import { checkFullness } from './fullness.ts';
import { checkGores } from './gores.ts';
import { checkLengths } from './lengths.ts';
import { checkNames } from './names.ts';
import { Page } from './page.ts';
import { checkStations } from './stations.ts';
import { checkTops } from './tops.ts';

/** Flounces, tiers, godets, and overskirts, which are skirts of their own on part of the waist. */
export function checkParts(page: Page): Diagnostic[] {
  return [
    ...checkPartNames(page),
    ...checkLayersShared(page),
    ...checkTiers(page),
    ...checkCapeLayers(page),
    ...(page.sketch.overskirts ?? []).flatMap((_, i) => checkOverskirt(page, i)),
  ];
}

/** Names of parts stand beside those of gores and layers on pieces and in file names. */
function checkPartNames(page: Page): Diagnostic[] {
  const { gores = [], layers = [], overskirts = [] } = page.sketch;
  const taken = new Map<string, Diagnostic['span']>();
  for (const [i, gore] of gores.entries())
    if (gore.name !== undefined) taken.set(gore.name, page.at('gores', i, 'name'));
  for (const [i, layer] of layers.entries())
    if (layer.name !== undefined) taken.set(layer.name, page.at('layers', i, 'name'));
  const own: { name: string | undefined; path: FilePath; kind: string }[] = [
    ...(
      ['flounces', 'tiers', 'godets', 'pleats', 'stones', 'overskirts', 'straps', 'capes'] as const
    ).flatMap((list) =>
      (page.sketch[list] ?? []).map(({ name }, i) => ({
        name,
        path: [list, i, 'name'] as const,
        kind: KINDS[list],
      })),
    ),
    ...(page.sketch.bodice?.layers ?? []).map(({ name }, i) => ({
      name,
      path: ['bodice', 'layers', i, 'name'] as const,
      kind: 'layer',
    })),
    ...overskirts.flatMap((overskirt, i) =>
      (overskirt.gores ?? []).map(({ name }, j) => ({
        name,
        path: ['overskirts', i, 'gores', j, 'name'] as const,
        kind: 'gore',
      })),
    ),
  ];
  return own.flatMap(({ name, path, kind }) => {
    if (name === undefined) return [];
    const earlier = taken.get(name);
    if (earlier !== undefined) return [problems.nameTaken(page.at(...path), kind, name, earlier)];
    taken.set(name, page.at(...path));
    return [];
  });
}

/** An overskirt or a cape may be cut with a layer of the gown, but then from its cloth. */
function checkLayersShared(page: Page): Diagnostic[] {
  return (['overskirts', 'capes'] as const).flatMap((list) => sharedBy(page, list));
}

function sharedBy(page: Page, list: 'overskirts' | 'capes'): Diagnostic[] {
  const { layers = [] } = page.sketch;
  return (page.sketch[list] ?? []).flatMap((part, i) =>
    (part.layers ?? []).flatMap(({ name, cloth }, j) => {
      const other = layers.findIndex((layer) => name !== undefined && layer.name === name);
      const same = layers[other]?.cloth === undefined || cloth === undefined || layers[other].cloth === cloth;
      if (name === undefined || other === -1 || same) return [];
      const span = page.at(list, i, 'layers', j, 'name');
      return [problems.nameTaken(span, 'layer', name, page.at('layers', other, 'name'))];
    }),
  );
}

const KINDS = {
  flounces: 'flounce',
  tiers: 'set of tiers',
  godets: 'godet',
  pleats: 'pleat',
  stones: 'set of stones',
  overskirts: 'overskirt',
  straps: 'strap',
  capes: 'cape',
} as const;

/** What a layer of the skirt may have and one of a cape cannot. */
function checkCapeLayers(page: Page): Diagnostic[] {
  return (page.sketch.capes ?? []).flatMap(({ layers = [] }, i) =>
    layers.flatMap(({ name, grain, growthTucks }, j) => [
      ...(grain === 'bias'
        ? [problems.notOfCapes(page.keyAt('capes', i, 'layers', j, 'grain'), 'grain: bias', name ?? '')]
        : []),
      ...(growthTucks === undefined
        ? []
        : [
            problems.notOfCapes(
              page.keyAt('capes', i, 'layers', j, 'growth-tucks'),
              'growth-tucks',
              name ?? '',
            ),
          ]),
    ]),
  );
}

function checkTiers(page: Page): Diagnostic[] {
  return (page.sketch.tiers ?? []).flatMap(({ tiers = [], depths, yoke }, i) => {
    const faults: Diagnostic[] = [];
    if (page.hasList('tiers', i, 'tiers') && tiers.length === 0)
      faults.push(problems.noTiers(page.keyAt('tiers', i, 'tiers')));
    if (
      depths !== undefined &&
      page.hasList('tiers', i, 'depths') &&
      tiers.length > 0 &&
      depths.length !== tiers.length
    )
      faults.push(problems.depthsOfOtherTiers(page.keyAt('tiers', i, 'depths'), depths.length, tiers.length));
    const edges = [yoke, ...tiers];
    for (const [j, tier] of tiers.entries()) {
      const above = edges[j];
      if (tier !== undefined && above !== undefined && tier < above)
        faults.push(
          problems.tierShorterThanEdge(page.at('tiers', i, 'tiers', j), page.say(tier), page.say(above)),
        );
    }
    return faults;
  });
}

/** An overskirt checked as the gown that it is drafted as: its outer edge stands where a gown has its centre front. */
function checkOverskirt(page: Page, index: number): Diagnostic[] {
  const overskirt = page.sketch.overskirts![index]!;
  const { gores, sweep, lengths, train, layers, to = 'centre-back' } = overskirt;
  const sketch = { units: page.sketch.units, gores, sweep, lengths, train, layers };
  const own = new Page(sketch, page.sectionAt('overskirts', index)!, ...endsOfOverskirt(to));
  return [
    ...[checkNames, checkGores, checkTops, checkLengths, checkStations, checkFullness].flatMap((check) =>
      check(own),
    ),
    ...checkFreeEdges(own),
    ...checkFastening(page, index),
    ...checkRelease(page, index),
  ];
}

function checkFreeEdges(own: Page): Diagnostic[] {
  const gores = own.sketch.gores ?? [];
  const free = own.back === 'centre-back' ? [0] : [0, gores.length - 1];
  return [...new Set(free)]
    .filter((i) => gores[i]?.onFold === true && (i === 0 || gores.length > 1))
    .map((i) => problems.foldAtOuterEdge(own.keyAt('gores', i, 'on-fold'), i === 0 ? 'first' : 'last'));
}

function checkFastening(page: Page, index: number): Diagnostic[] {
  const { from, to, gores = [] } = page.sketch.overskirts![index]!;
  const { stations } = page;
  if (stations === undefined || from === undefined) return [];
  if (!page.mirrored) return [problems.overskirtWithoutSymmetry(page.at('overskirts', index))];
  const last = to ?? 'centre-back';
  const [start, end] = [stations.indexOf(from), stations.indexOf(last)];
  if (start === -1 || end === -1) return [];
  if (start >= end) return [problems.overskirtBackwards(page.at('overskirts', index, 'from'), from, last)];
  const waist = sum((page.sketch.gores ?? []).slice(start, end).map((gore) => topOf(page, gore)));
  const tops = sum(gores.map((gore) => gore.top ?? gore.halfTop));
  if (waist === undefined || tops === undefined || Math.abs(waist - tops) <= WAIST_AGREES + 1e-6) return [];
  return [
    problems.overskirtMissesWaist(
      page.at('overskirts', index, 'from'),
      page.say(tops),
      page.say(waist),
      from,
      last,
    ),
  ];
}

/** Sewn waists under this are likely a child's: the smallest of women's sizes is 60 cm (EN 13402-3, from memory). */
const CHILDS_WAIST = 600;

function checkRelease(page: Page, index: number): Diagnostic[] {
  const { body } = page.sketch;
  const waist = page.waistSeam ?? body?.girths?.find(({ at }) => at === 'waist')?.girth;
  if (waist === undefined || page.has('overskirts', index, 'quick-release')) return [];
  // Who is measured says who she is; else her waist tells.
  const isChild = body === undefined ? waist < CHILDS_WAIST : body.wearer === 'child';
  if (!isChild) return [];
  return [problems.childsTrain(page.at('overskirts', index, 'name'), page.say(waist))];
}

/** Of the half, as the stations go. */
function topOf(page: Page, gore: NonNullable<Page['sketch']['gores']>[number]): number | undefined {
  const panel = gore.name === undefined ? undefined : page.sketch.bodice?.panels?.[gore.name];
  if (gore.onFold === true) return gore.halfTop ?? (panel === undefined ? undefined : panel / 2);
  return gore.top ?? panel;
}

function sum(parts: readonly (number | undefined)[]): number | undefined {
  return parts.reduce<number | undefined>(
    (all, part) => (all === undefined || part === undefined ? undefined : all + part),
    0,
  );
}
