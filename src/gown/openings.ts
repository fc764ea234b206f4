import type { LoopsSpec, PocketSpec, SlitSpec } from '../gown-file/spec.ts';
import { type Layer, PLAIN } from './layer.ts';
import { type LayersAsked, NEATENED } from './layers-of-spec.ts';
import { type GownLines, stationsNamed } from './lines.ts';
import type { Placed, PlaceIn } from './placed.ts';
import type { Side, Station } from './station.ts';

/** A seam left open from the hem up. mm. */
export interface Slit extends Omit<SlitSpec, 'facing' | 'notes'>, Placed<['slits', number]> {
  /** The seams of its name that it is in. */
  readonly stations: readonly Station[];
  /** How many there are in the whole skirt. */
  readonly copies: number;
  readonly facing?: { readonly depth: number; readonly layer: Layer };
  /** What its stay is cut as. */
  readonly stayLayer?: Layer;
}

/** A bag let into a seam. mm. */
export interface Pocket extends Omit<PocketSpec, 'cloth' | 'notes'>, Placed<['pockets', number]> {
  readonly stations: readonly Station[];
  readonly copies: number;
  readonly layer: Layer;
}

/** Loops of a rouleau, cut as one strip. mm. */
export interface Loops extends Omit<LoopsSpec, 'cloth' | 'name' | 'notes'>, Placed<['loops', number]> {
  readonly layer: Layer;
}

/** Lap where a strip meets itself, mm: 1/2 in (textbook). */
export const LAPPED = 13;

/** What is cut of cloth for itself, with the gown's seam allowance round it. */
export function layerOfPieces(name: string, cloth: string, asked: LayersAsked, place: Layer['place']): Layer {
  const { seam, waist, hem } = asked.allowances;
  const neatened = { width: NEATENED, place: place() };
  return {
    name,
    cloth: asked.clothNamed(cloth),
    hem: 'raw',
    shape: PLAIN,
    allowances: { seam, waist, hem: { ...hem, width: 0 }, named: { 'inner-edge': neatened } },
    gores: [],
    seams: 'pressed-open',
    place,
  };
}

interface InSeam {
  readonly stations: readonly Station[];
  readonly copies: number;
}

/** Seams of one name: both of a mirrored gown's, or that on the side that is named. */
function inSeam(lines: GownLines, seam: string, side: Side | undefined): InSeam {
  const all = stationsNamed(lines, seam);
  const own = side === undefined ? all : all.filter((station) => (station.side ?? side) === side);
  const each = (station: Station): number =>
    side === undefined ? station.seams : Math.min(1, station.seams);
  return { stations: own, copies: own.reduce((sum, station) => sum + each(station), 0) };
}

export function slitOf(
  { facing, notes: _, ...rest }: SlitSpec,
  number: string,
  lines: GownLines,
  layers: readonly Layer[],
  asked: LayersAsked,
  place: PlaceIn<['slits', number]>,
): Slit {
  const outermost = layers[layers.length - 1]!.cloth.name;
  const cloth = facing?.cloth ?? outermost;
  return {
    ...rest,
    ...inSeam(lines, rest.seam, rest.side),
    ...(facing && {
      facing: {
        depth: facing.depth,
        layer: layerOfPieces(`slit-facing${number}`, cloth, asked, () => place('facing')),
      },
    }),
    ...(rest.stay && {
      stayLayer: layerOfPieces(`slit-stay${number}`, cloth, asked, () => place('stay')),
    }),
    place,
  };
}

export function pocketOf(
  { cloth, notes: _, ...rest }: PocketSpec,
  number: string,
  lines: GownLines,
  asked: LayersAsked,
  place: PlaceIn<['pockets', number]>,
): Pocket {
  return {
    ...rest,
    ...inSeam(lines, rest.seam, rest.side),
    layer: layerOfPieces(`pocket${number}`, cloth, asked, () => place()),
    place,
  };
}

export function loopsOf(
  { cloth, name, notes: _, ...rest }: LoopsSpec,
  number: string,
  asked: LayersAsked,
  place: PlaceIn<['loops', number]>,
): Loops {
  return { ...rest, layer: layerOfPieces(name ?? `loops${number}`, cloth, asked, () => place()), place };
}

/** Whether a station is one that was asked for: where her sides came to differ, on either of them. */
export function isOneOf(
  station: Pick<Station, 'name' | 'side'>,
  asked: Pick<Station, 'name' | 'side'>,
): boolean {
  const sides = [station.side, asked.side];
  return station.name === asked.name && (sides.includes(undefined) || sides[0] === sides[1]);
}

/** Pieces of one kind are told apart by number where there are several. */
export function numberOf(index: number, all: readonly unknown[]): string {
  return all.length === 1 ? '' : `-${index + 1}`;
}
