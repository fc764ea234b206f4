import type { Span } from '../diagnostics/diagnostic.ts';
import type { FlounceSpec, GodetSpec, PleatSpec, Spec, TiersSpec } from '../gown-file/spec.ts';
import { hasGore, type Layer, PLAIN } from './layer.ts';
import { type LayersAsked, layerAllowances } from './layers-of-spec.ts';
import type { GownLines } from './lines.ts';
import { goresAt, stationsNamed } from './lines.ts';
import { layerOfPieces } from './openings.ts';
import type { Flounce, Godet, Pleat, Tiers } from './parts.ts';
import type { PlaceIn } from './placed.ts';

/** A part that is cut from a cloth of its own, as a layer. */
function partLayer(
  { name, cloth, hem, allowances }: Pick<FlounceSpec, 'name' | 'cloth' | 'hem' | 'allowances'>,
  asked: LayersAsked,
  place: () => Span,
  allowancesAt: PlaceIn<['allowances']>,
): Layer {
  return {
    name,
    cloth: asked.clothNamed(cloth),
    hem,
    shape: PLAIN,
    allowances: layerAllowances(allowances, hem, asked.allowances, allowancesAt),
    gores: asked.gores,
    seams: 'pressed-open',
    place,
  };
}

export function flounceOf(
  spec: FlounceSpec,
  layers: readonly Layer[],
  asked: LayersAsked,
  roughCut: Spec['roughCut'],
  place: PlaceIn<['flounces', number]>,
): Flounce {
  const { layer, cloth: _cloth, hem: _hem, allowances, ...rest } = spec;
  const own = partLayer(spec, asked, place, (...path) => place('allowances', ...path));
  const { seam } = own.allowances;
  const top =
    allowances.top === undefined ? seam : { width: allowances.top, place: place('allowances', 'top') };
  return {
    ...rest,
    sewnTo: layers.find(({ name }) => name === layer)!,
    layer: { ...own, allowances: { ...own.allowances, named: { ...own.allowances.named, top } } },
    roughCut: roughCut[spec.name] ?? 0,
    place,
  };
}

/** Net does not fray: its strips are lapped with no allowance unless one is given (common practice). */
export function tiersOf(spec: TiersSpec, asked: LayersAsked, place: PlaceIn<['tiers', number]>): Tiers {
  const { cloth, allowances, ...rest } = spec;
  const seam = allowances.seam ?? 0;
  const given = { seam, top: allowances.top ?? seam, ...allowances };
  const own = partLayer({ name: spec.name, cloth, hem: 'raw', allowances: given }, asked, place, (...path) =>
    place('allowances', ...path),
  );
  const top = { width: given.top, place: place('allowances', 'top') };
  const yokePlace = () => place('yoke-depth');
  return {
    ...rest,
    layer: { ...own, allowances: { ...own.allowances, named: { ...own.allowances.named, top } } },
    ...(rest.yokeDepth !== undefined && {
      yokeLayer: layerOfPieces(`${spec.name}-yoke`, cloth, asked, yokePlace),
    }),
    place,
  };
}

export function godetOf(
  spec: GodetSpec,
  lines: GownLines,
  layers: readonly Layer[],
  roughCut: Spec['roughCut'],
  place: PlaceIn<['godets', number]>,
): Godet {
  const { layers: named, ...rest } = spec;
  const { seam } = spec;
  const station = lines.stations.findIndex(({ name }) => name === seam);
  const own = layers.filter(
    (layer) => named?.includes(layer.name) ?? takesGodet(lines, station, layer, layers),
  );
  return {
    ...rest,
    stations: stationsNamed(lines, seam),
    layers: own.map(({ name }) => name),
    roughCut: roughCut[spec.name] ?? 0,
    place,
  };
}

/**
 * With no layers named, a layer has a godet where it has both of the seam's gores. Where two layers have one gore each,
 * the godet is cut with the inner one.
 */
function takesGodet(lines: GownLines, station: number, layer: Layer, layers: readonly Layer[]): boolean {
  const [before, after] = goresAt(lines, station);
  if (hasGore(layer, before) && hasGore(layer, after)) return true;
  if (!hasGore(layer, before) && !hasGore(layer, after)) return false;
  const [own, lacking] = hasGore(layer, before) ? [before, after] : [after, before];
  const outer = layers.slice(layers.indexOf(layer) + 1);
  return outer.some((other) => hasGore(other, lacking) && !hasGore(other, own));
}

/** Away from a seam the gore behind it has the pleat, at the last seam the one in front, unless the file says which. */
export function pleatOf(
  { gore, layers, ...rest }: PleatSpec,
  lines: GownLines,
  all: readonly Layer[],
  place: PlaceIn<['pleats', number]>,
): Pleat {
  const station = lines.stations.findIndex(({ name }) => name === rest.at);
  const [before, after] = goresAt(lines, station);
  const own = gore ?? (lines.gores[station] === undefined ? before : after).name;
  return {
    ...rest,
    ...(rest.fromSeam === undefined ? {} : { gore: own }),
    layers: layers ?? all.map(({ name }) => name),
    place,
  };
}
