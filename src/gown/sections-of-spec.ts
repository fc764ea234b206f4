import type { Spec } from '../gown-file/spec.ts';
import type { Layer } from './layer.ts';
import type { LayersAsked } from './layers-of-spec.ts';
import type { GownLines } from './lines.ts';
import { stationNamed, stationsNamed, stationsOnce } from './lines.ts';
import { layerOfPieces } from './openings.ts';
import type { PathBelow, PlaceIn } from './placed.ts';
import type { Bustle, Closure, Edging, Trim } from './sections.ts';

/** How wide a placket, a guard and a facing of an opening are sewn, mm (common practice). */
const USUAL_WIDTHS = { placket: 25, guard: 35, facing: 45 } as const;

export function closureOf(
  spec: Spec,
  lines: GownLines,
  layers: readonly Layer[],
  asked: LayersAsked,
  place: PlaceIn<['closure']>,
): Closure {
  const { at, cloth, width, ...rest } = spec.closure!;
  const station = stationNamed(lines, at, rest.side)!;
  const side = station.seams === 2 ? (rest.side ?? 'left') : rest.side;
  const closure: Closure = { ...rest, ...(side === undefined ? {} : { side }), station, place };
  const { finish } = rest;
  if (finish === undefined || finish === 'hook') return closure;
  const taken = layers.findLast(({ name }) => spec.sewnAsOne?.closure?.includes(name) ?? true);
  const own = cloth ?? (taken ?? layers[layers.length - 1]!).cloth.name;
  const layer = layerOfPieces(PIECES_OF_CLOSURE[finish], own, asked, () => place('finish'));
  return { ...closure, piece: { layer, width: width ?? USUAL_WIDTHS[finish] } };
}

/** Names of the layers that they are cut as. */
const PIECES_OF_CLOSURE = { placket: 'placket', guard: 'zip-guard', facing: 'opening-facing' } as const;

export function edgingOf(
  spec: Spec,
  lines: GownLines,
  closure: Closure | undefined,
  layers: readonly Layer[],
  { clothNamed }: LayersAsked,
  place: PlaceIn<['edging']>,
): Edging {
  const { start, cloth, ...rest } = spec.edging!;
  const own =
    cloth === undefined ? layers.find(({ edging }) => edging === rest.name)?.cloth : clothNamed(cloth);
  const named = start === undefined ? undefined : stationNamed(lines, start, closure?.side);
  const wrapped = spec.wrap && stationNamed(lines, spec.wrap.at);
  return {
    ...rest,
    start: named ?? wrapped ?? closure?.station ?? stationsOnce(lines).at(-1)!,
    startAssumed: start === undefined,
    ...(own === undefined ? {} : { cloth: own }),
    place,
  };
}

export function trimOf(
  { layer, cloth, ...rest }: NonNullable<Spec['trims']>[number],
  number: string,
  lines: GownLines,
  layers: readonly Layer[],
  asked: LayersAsked,
  place: PlaceIn<['trims', number]>,
): Trim {
  return {
    ...rest,
    ...(cloth !== undefined && { bias: layerOfPieces(`binding${number}`, cloth, asked, () => place()) }),
    layer: layers.find(({ name }) => name === layer)!,
    stations: stationsNamed(lines, rest.along),
    place,
  };
}

export function bustleOf(
  { points = [], ...rest }: NonNullable<Spec['bustle']>,
  lines: GownLines,
  place: PlaceIn<['bustle']>,
): Bustle {
  return {
    ...rest,
    points: points.flatMap(({ seam, gore, across, anchor }, i) =>
      (seam === undefined ? [{ gore: gore!, across: across! }] : stationsNamed(lines, seam)).map((at) => ({
        at,
        anchor,
        place: (...path: PathBelow<['bustle', 'points', number]>) => place('points', i, ...path),
      })),
    ),
    place,
  };
}
