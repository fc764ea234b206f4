import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/station-problems.ts';
import { nearest } from '../nearest.ts';
import type { FilePath, PathOf } from '../spec.ts';
import { endsOfOverskirt } from '../stations.ts';
import type { Page } from './page.ts';

/** Every station that is named anywhere exists, and where cloth is sewn or opened there is a seam and no fold. */
export function checkStations(page: Page): Diagnostic[] {
  const { stations } = page;
  if (stations === undefined) return [];
  const keys = (...path: PathOf<string>) =>
    page.keysOf(...path).map((key) => ({ name: key, span: page.keyAt(...path, key) }));
  const check = ({ name, span }: Named, extra: readonly string[] = []) =>
    faultOfStation(page, stations, name, span, extra);
  return [
    ...keys('lengths', 'at').flatMap((named) => check(named)),
    ...keys('lengths', 'to-floor').flatMap((named) => check(named)),
    ...keys('lengths', 'measured-in', 'drop-below-waist').flatMap((named) => check(named)),
    ...keys('bodice', 'drop-below-waist').flatMap((named) => check(named)),
    ...keys('allowances').flatMap((named) => [
      ...check(named, [...EDGES, ...edgesOfWrap(page), ...edgesOfOverskirts(page)]),
      ...allowanceOnFold(page, named),
    ]),
    ...(page.sketch.layers ?? []).flatMap((_, i) =>
      keys('layers', i, 'allowances').flatMap((named) => [
        ...check(named, [...EDGES, ...edgesOfWrap(page)]),
        ...allowanceOnFold(page, named),
      ]),
    ),
    ...namedElsewhere(page).flatMap((named) => check(named)),
    ...alongTrims(page).flatMap((named) => check(named, ['waist', 'hem', ...edgesOfWrap(page)])),
    ...seamsNamed(page).flatMap((named) => [
      ...check(named),
      ...(page.folds.includes(named.name) ? [problems.foldNotSeam(named.span, named.name)] : []),
    ]),
  ];
}

interface Named {
  readonly name: string;
  readonly span: Diagnostic['span'];
}

const EDGES = ['seam', 'waist', 'hem'];

function faultOfStation(
  page: Page,
  stations: readonly string[],
  name: string,
  span: Named['span'],
  extra: readonly string[],
): Diagnostic[] {
  if (stations.includes(name) || extra.includes(name)) return [];
  const known = [...extra, ...stations];
  if (!page.mirrored && /^centre-(front|back)$/.test(name))
    return [problems.centreWithoutSymmetry(span, name, stations)];
  const [front, back, ...more] = name.split('/');
  if (front === undefined || back === undefined || more.length > 0)
    return [problems.unknownStation(span, name, known, nearest(name, known))];
  const gores = page.goreNames ?? [];
  const strangers = [front, back].filter((gore) => !gores.includes(gore));
  if (strangers.length > 0)
    return [problems.stationOfNoGore(span, name, strangers, known, nearest(name, known))];
  return [
    problems.notNeighbours(
      span,
      name,
      stations,
      stations.includes(`${back}/${front}`) ? `${back}/${front}` : undefined,
    ),
  ];
}

function allowanceOnFold(page: Page, { name, span }: Named): Diagnostic[] {
  return page.folds.includes(name) ? [problems.allowanceOnFold(span, name)] : [];
}

function namedElsewhere(page: Page): Named[] {
  const { train, edging, fittings = [], overskirts = [], pleats = [] } = page.sketch;
  const places: Named[] = [];
  const add = (name: string | undefined, ...path: FilePath) => {
    if (name !== undefined) places.push({ name, span: page.at(...path) });
  };
  for (const key of ['begins', 'full', 'ends'] as const) add(train?.[key], 'train', key);
  add(edging?.start, 'edging', 'start');
  for (const [i, pleat] of pleats.entries()) add(pleat.at, 'pleats', i, 'at');
  for (const [i, overskirt] of overskirts.entries()) {
    add(overskirt.from, 'overskirts', i, 'from');
    add(overskirt.to, 'overskirts', i, 'to');
  }
  for (const [i, fitting] of fittings.entries()) {
    for (const part of ['hem', 'waist'] as const)
      for (const name of page.keysOf('fittings', i, part))
        if (name !== 'all-round') places.push({ name, span: page.keyAt('fittings', i, part, name) });
    for (const name of page.keysOf('fittings', i, 'bodice', 'upper-edge'))
      if (name !== 'all-round')
        places.push({ name, span: page.keyAt('fittings', i, 'bodice', 'upper-edge', name) });
    for (const [j, level] of (fitting.levelled ?? []).entries())
      add(level.from, 'fittings', i, 'levelled', j, 'from');
  }
  return places;
}

function edgesOfWrap(page: Page): string[] {
  return page.has('wrap') ? ['wrap-edge'] : [];
}

/** Allowances of the gown hold for its overskirts as well. */
function edgesOfOverskirts(page: Page): string[] {
  return (page.sketch.overskirts ?? []).flatMap(({ gores = [], to = 'centre-back' }) => {
    const names = gores.flatMap(({ name }) => name ?? []);
    const free = endsOfOverskirt(to).filter((name) => name !== 'centre-back');
    return [...free, ...names.slice(1).map((name, i) => `${names[i]}/${name}`)];
  });
}

function alongTrims(page: Page): Named[] {
  return (page.sketch.trims ?? []).flatMap(({ along }, i) =>
    along === undefined ? [] : [{ name: along, span: page.at('trims', i, 'along') }],
  );
}

function seamsNamed(page: Page): Named[] {
  const { closure, bustle, layers = [], fittings = [], godets = [] } = page.sketch;
  const places: Named[] = [];
  const add = (name: string | undefined, ...path: FilePath) => {
    if (name !== undefined) places.push({ name, span: page.at(...path) });
  };
  add(closure?.at, 'closure', 'at');
  add(page.sketch.wrap?.at, 'wrap', 'at');
  for (const [i, slit] of (page.sketch.slits ?? []).entries()) add(slit.seam, 'slits', i, 'seam');
  for (const [i, pocket] of (page.sketch.pockets ?? []).entries()) add(pocket.seam, 'pockets', i, 'seam');
  for (const [i, godet] of godets.entries()) add(godet.seam, 'godets', i, 'seam');
  for (const [i, layer] of layers.entries()) add(layer.gap?.at, 'layers', i, 'gap', 'at');
  for (const [i, fitting] of fittings.entries()) {
    for (const [j, seam] of (fitting.seams ?? []).entries())
      add(seam.seam, 'fittings', i, 'seams', j, 'seam');
    for (const [j, seam] of (fitting.bodice?.seams ?? []).entries())
      add(seam.seam, 'fittings', i, 'bodice', 'seams', j, 'seam');
  }
  // A loop may be sewn at the middle of a folded back as well as in a seam.
  for (const [i, point] of (bustle?.points ?? []).entries())
    if (point.seam !== 'centre-back') add(point.seam, 'bustle', 'points', i, 'seam');
  return places;
}
