import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import * as problems from '../../diagnostics/material-problems.ts';
import { nearest } from '../nearest.ts';
import type { FilePath, PathOf } from '../spec.ts';
import { layersOf } from './layers-of.ts';
import type { Page } from './page.ts';

/** A name and where it is used. */
interface Named {
  readonly name: string;
  readonly span: Diagnostic['span'];
}

/** Every gore, layer, cloth and edging that is named somewhere exists, and every cloth and edging is used. */
export function checkReferences(page: Page): Diagnostic[] {
  return [
    ...checkGoresNamed(page),
    ...checkLayersNamed(page),
    ...checkClothsNamed(page),
    ...checkEdging(page),
  ];
}

/** Names that are used and not there. */
function unknown(
  kind: Parameters<typeof problems.unknownName>[1],
  used: readonly Named[],
  known: readonly string[],
): Diagnostic[] {
  return used
    .filter(({ name }) => !known.includes(name))
    .map(({ name, span }) => problems.unknownName(span, kind, name, known, nearest(name, known)));
}

function checkGoresNamed(page: Page): Diagnostic[] {
  const gores = page.goreNames;
  if (gores === undefined) return [];
  const roughCut = page.keysOf('rough-cut').map((name) => ({ name, span: page.keyAt('rough-cut', name) }));
  const ofLayers = (page.sketch.layers ?? []).flatMap((layer, i) =>
    named(page, layer.gores, 'layers', i, 'gores'),
  );
  return [
    ...unknown('gore', roughCut, [...gores, ...goresBeside(page)]),
    ...unknown('gore', ofLayers, gores),
    ...unknown(
      'gore',
      (page.sketch.pleats ?? []).flatMap(({ gore }, i) => one(page, gore, 'pleats', i, 'gore')),
      gores,
    ),
    ...unknown(
      'gore',
      (page.sketch.darts ?? []).flatMap(({ gore }, i) => one(page, gore, 'darts', i, 'gore')),
      gores,
    ),
    ...unknown(
      'gore',
      (page.sketch.bustle?.points ?? []).flatMap(({ gore }, i) =>
        one(page, gore, 'bustle', 'points', i, 'gore'),
      ),
      gores,
    ),
    ...unknown(
      'gore',
      (page.sketch.stones ?? []).flatMap(({ places = [] }, i) =>
        places.flatMap(({ gore }, j) => one(page, gore, 'stones', i, 'places', j, 'gore')),
      ),
      gores,
    ),
  ];
}

/** What else hangs on the bias: flounces, godets and the gores of overskirts. */
function goresBeside(page: Page): string[] {
  const { flounces = [], godets = [], overskirts = [] } = page.sketch;
  const own = overskirts.flatMap((overskirt) => overskirt.gores ?? []);
  return [...flounces, ...godets, ...own].flatMap(({ name }) => name ?? []);
}

function checkLayersNamed(page: Page): Diagnostic[] {
  const {
    layers = [],
    overskirts = [],
    sewnAsOne,
    trims = [],
    fittings = [],
    flounces = [],
    godets = [],
    pleats = [],
    stones = [],
  } = page.sketch;
  if (page.hasList('layers') && page.sketch.layers?.length === 0)
    return [problems.noLayers(page.keyAt('layers'))];
  const names = layers.flatMap(({ name }) => name ?? []);
  // Where a layer's name could not be read, no other name can be called unknown.
  if (names.length < layers.length) return [];
  const others = [
    ...[...overskirts, ...(page.sketch.capes ?? [])].flatMap((part) => part.layers ?? []),
    ...(page.sketch.bodice?.layers ?? []),
    ...(page.sketch.straps ?? []),
    ...flounces,
    ...(page.sketch.tiers ?? []),
  ];
  const cut = page.keysOf('cut').map((name) => ({ name, span: page.keyAt('cut', name) }));
  return [
    ...unknown(
      'layer',
      (sewnAsOne?.waist ?? []).flatMap((stack, i) => named(page, stack, 'sewn-as-one', 'waist', i)),
      names,
    ),
    ...unknown('layer', named(page, sewnAsOne?.closure, 'sewn-as-one', 'closure'), names),
    ...unknown(
      'layer',
      trims.flatMap(({ layer }, i) => one(page, layer, 'trims', i, 'layer')),
      names,
    ),
    ...unknown(
      'layer',
      fittings.flatMap(({ layer }, i) => one(page, layer, 'fittings', i, 'layer')),
      names,
    ),
    ...unknown(
      'layer',
      flounces.flatMap(({ layer }, i) => one(page, layer, 'flounces', i, 'layer')),
      names,
    ),
    ...unknown(
      'layer',
      godets.flatMap((godet, i) => named(page, godet.layers, 'godets', i, 'layers')),
      names,
    ),
    ...unknown(
      'layer',
      pleats.flatMap((pleat, i) => named(page, pleat.layers, 'pleats', i, 'layers')),
      names,
    ),
    ...unknown(
      'layer',
      stones.flatMap(({ layer }, i) => one(page, layer, 'stones', i, 'layer')),
      names,
    ),
    ...unknown('layer', cut, [...names, ...others.flatMap(({ name }) => name ?? [])]),
  ];
}

function checkClothsNamed(page: Page): Diagnostic[] {
  if (!page.hasSection('cloths')) return [];
  const { edging, flounces = [], tiers = [], straps = [], bodice } = page.sketch;
  const layers = layersOf(page);
  const above = bodice?.layers ?? [];
  const used = [
    ...above.flatMap(({ cloth }, i) => one(page, cloth, 'bodice', 'layers', i, 'cloth')),
    ...one(page, bodice?.draft?.facing?.cloth, 'bodice', 'draft', 'facing', 'cloth'),
    ...straps.flatMap(({ cloth }, i) => one(page, cloth, 'straps', i, 'cloth')),
    ...layers.flatMap(({ layer, path }) => [
      ...one(page, layer.cloth, ...path, 'cloth'),
      ...one(page, layer.facing?.cloth, ...path, 'facing', 'cloth'),
    ]),
    ...flounces.flatMap(({ cloth }, i) => one(page, cloth, 'flounces', i, 'cloth')),
    ...tiers.flatMap(({ cloth }, i) => one(page, cloth, 'tiers', i, 'cloth')),
    ...one(page, edging?.cloth, 'edging', 'cloth'),
    ...one(page, page.sketch.waist?.cloth, 'waist', 'cloth'),
    ...one(page, page.sketch.closure?.cloth, 'closure', 'cloth'),
    ...one(page, page.sketch.wrap?.edgeFacing?.cloth, 'wrap', 'edge-facing', 'cloth'),
    ...one(page, page.sketch.wrap?.ties?.cloth, 'wrap', 'ties', 'cloth'),
    ...(page.sketch.overskirts ?? []).flatMap(({ edgeFacing }, i) =>
      one(page, edgeFacing?.cloth, 'overskirts', i, 'edge-facing', 'cloth'),
    ),
    ...(page.sketch.slits ?? []).flatMap(({ facing }, i) =>
      one(page, facing?.cloth, 'slits', i, 'facing', 'cloth'),
    ),
    ...(page.sketch.pockets ?? []).flatMap(({ cloth }, i) => one(page, cloth, 'pockets', i, 'cloth')),
    ...(page.sketch.loops ?? []).flatMap(({ cloth }, i) => one(page, cloth, 'loops', i, 'cloth')),
    ...(page.sketch.trims ?? []).flatMap(({ cloth }, i) => one(page, cloth, 'trims', i, 'cloth')),
  ];
  const cloths = page.keysOf('cloths');
  const faults = unknown('cloth', used, cloths);
  // Where a layer's cloth could not be read, none can be called unused.
  if (
    [...layers.map(({ layer }) => layer), ...flounces, ...tiers, ...above].some(
      ({ cloth }) => cloth === undefined,
    )
  )
    return faults;
  const unused = cloths.filter((cloth) => used.every(({ name }) => name !== cloth));
  return [...faults, ...unused.map((name) => problems.unusedCloth(page.keyAt('cloths', name), name))];
}

function checkEdging(page: Page): Diagnostic[] {
  const { edging } = page.sketch;
  const asked = layersOf(page).flatMap(({ layer, path }) => one(page, layer.edging, ...path, 'edging'));
  const known = edging?.name === undefined ? [] : [edging.name];
  // An edging whose own name could not be read may be the one that is asked for.
  const faults = page.has('edging') && known.length === 0 ? [] : unknown('edging', asked, known);
  if (page.has('edging') && asked.length === 0) faults.push(problems.unusedEdging(page.keyAt('edging')));
  if (edging?.from === 'own-edges' && !page.has('edging', 'cloth'))
    faults.push(problems.ownEdgesOfWhat(page.at('edging', 'from')));
  return faults;
}

function one(page: Page, name: string | undefined, ...path: FilePath): Named[] {
  return name === undefined ? [] : [{ name, span: page.at(...path) }];
}

function named(
  page: Page,
  names: readonly (string | undefined)[] | undefined,
  ...path: PathOf<number>
): Named[] {
  return (names ?? []).flatMap((name, i) => one(page, name, ...path, i));
}
