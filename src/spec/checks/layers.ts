import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/gown-problems.ts';
import { nearest } from '../nearest.ts';
import type { Page } from './page.ts';

type Path = readonly (string | number)[];

/** Every gore, layer, cloth and edging that is named somewhere exists, and every cloth is used. */
export function checkReferences(page: Page): Diagnostic[] {
  return [
    ...checkGoresNamed(page),
    ...checkLayersNamed(page),
    ...checkClothsNamed(page),
    ...checkEdging(page),
    ...checkJoins(page),
  ];
}

function checkGoresNamed(page: Page): Diagnostic[] {
  const gores = page.goreNames;
  if (gores === undefined) return [];
  const roughCut = page.keysOf('rough-cut').map((name) => ({ name, span: page.keyAt('rough-cut', name) }));
  const ofLayers = (page.sketch.layers ?? []).flatMap((layer, i) =>
    (layer.gores ?? []).flatMap((name, j) =>
      name === undefined ? [] : [{ name, span: page.at('layers', i, 'gores', j) }],
    ),
  );
  return [...roughCut, ...ofLayers]
    .filter(({ name }) => !gores.includes(name))
    .map(({ name, span }) => problems.unknownName(span, 'gore', name, gores, nearest(name, gores)));
}

function checkLayersNamed(page: Page): Diagnostic[] {
  const { layers = [], sewnAsOne, trims = [], fittings = [] } = page.sketch;
  if (page.hasList('layers') && page.sketch.layers?.length === 0)
    return [problems.noLayers(page.keyAt('layers'))];
  const names = layers.flatMap(({ name }) => name ?? []);
  if (names.length < layers.length) return [];
  const faults: Diagnostic[] = [];
  const check = (name: string | undefined, ...path: Path) => {
    if (name !== undefined && !names.includes(name))
      faults.push(problems.unknownName(page.at(...path), 'layer', name, names, nearest(name, names)));
  };
  for (const [i, stack] of (sewnAsOne?.waist ?? []).entries())
    for (const [j, name] of (stack ?? []).entries()) check(name, 'sewn-as-one', 'waist', i, j);
  for (const [i, name] of (sewnAsOne?.closure ?? []).entries()) check(name, 'sewn-as-one', 'closure', i);
  for (const [i, trim] of trims.entries()) check(trim.layer, 'trims', i, 'layer');
  for (const [i, fitting] of fittings.entries()) check(fitting.layer, 'fittings', i, 'layer');
  for (const name of page.keysOf('cut'))
    if (!names.includes(name))
      faults.push(problems.unknownName(page.keyAt('cut', name), 'layer', name, names, nearest(name, names)));
  return faults;
}

function checkClothsNamed(page: Page): Diagnostic[] {
  if (!page.has('cloths')) return [];
  const cloths = page.keysOf('cloths');
  const { layers = [], edging } = page.sketch;
  const faults: Diagnostic[] = [];
  for (const [i, layer] of layers.entries()) {
    if (layer.cloth !== undefined && !cloths.includes(layer.cloth))
      faults.push(
        problems.unknownName(
          page.at('layers', i, 'cloth'),
          'cloth',
          layer.cloth,
          cloths,
          nearest(layer.cloth, cloths),
        ),
      );
  }
  if (edging?.cloth !== undefined && !cloths.includes(edging.cloth))
    faults.push(
      problems.unknownName(
        page.at('edging', 'cloth'),
        'cloth',
        edging.cloth,
        cloths,
        nearest(edging.cloth, cloths),
      ),
    );
  const used = new Set([...layers.map((layer) => layer.cloth), edging?.cloth]);
  // Where a layer's cloth could not be read, none can be called unused.
  if (layers.some((layer) => layer.cloth === undefined)) return faults;
  return [
    ...faults,
    ...cloths
      .filter((name) => !used.has(name))
      .map((name) => problems.unusedCloth(page.keyAt('cloths', name), name)),
  ];
}

function checkEdging(page: Page): Diagnostic[] {
  const { layers = [], edging } = page.sketch;
  const asked = layers.flatMap((layer, i) =>
    layer.edging === undefined ? [] : [{ name: layer.edging, span: page.at('layers', i, 'edging') }],
  );
  const faults = asked
    .filter(({ name }) => !page.has('edging') || (edging?.name !== undefined && name !== edging.name))
    .map(({ name, span }) => {
      const names = edging?.name === undefined ? [] : [edging.name];
      return problems.unknownName(span, 'edging', name, names, nearest(name, names));
    });
  if (page.has('edging') && asked.length === 0) faults.push(problems.unusedEdging(page.keyAt('edging')));
  if (edging?.from === 'own-edges' && !page.has('edging', 'cloth'))
    faults.push(problems.ownEdgesOfWhat(page.at('edging', 'from')));
  return faults;
}

/** At the waist every layer is in one stack and no more. */
function checkJoins(page: Page): Diagnostic[] {
  const stacks = page.sketch.sewnAsOne?.waist;
  if (stacks === undefined) return [];
  const seen = new Set<string>();
  const faults: Diagnostic[] = [];
  for (const [i, stack] of stacks.entries()) {
    for (const [j, name] of (stack ?? []).entries()) {
      if (name === undefined) continue;
      if (seen.has(name)) faults.push(problems.layerJoinedTwice(page.at('sewn-as-one', 'waist', i, j), name));
      seen.add(name);
    }
  }
  const left = (page.sketch.layers ?? []).flatMap(({ name }) =>
    name !== undefined && !seen.has(name) ? [name] : [],
  );
  return left.length > 0
    ? [...faults, problems.layerNotJoined(page.keyAt('sewn-as-one', 'waist'), left)]
    : faults;
}
