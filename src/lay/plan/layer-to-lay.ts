import type { Span } from '../../diagnostics/diagnostic.ts';
import type { Units } from '../../diagnostics/units.ts';
import type { CutPiece } from '../../draft/piece.ts';
import type { Cloth } from '../../gown/cloth.ts';
import type { Gown } from '../../gown/gown.ts';
import { allowanceAt, type Layer } from '../../gown/layer.ts';
import { clothFacts } from './cloth-facts.ts';
import type { ClothFacts } from './lay-plan.ts';

/** A cloth as the shop sells it. */
export type ClothAsSold = Omit<Cloth, 'name' | 'place'>;

/** One layer and its cloth: data alone, which can be handed to another thread. */
export interface LayerOnCloth {
  readonly layer: string;
  readonly cloth: string;
  readonly spec: ClothAsSold;
  readonly facts: ClothFacts;
  /** Allowance of a join along the grain, mm. */
  readonly seam: number;
  readonly span: Span;
}

/** What lay planning needs of a drafted gown. */
export interface GownToLay {
  readonly units: Units;
  readonly layers: readonly LayerOnCloth[];
  readonly pieces: readonly CutPiece[];
}

/** One layer to lay. */
export interface LayerToLay extends LayerOnCloth {
  readonly pieces: readonly CutPiece[];
  readonly say: (mm: number) => string;
}

/** A drafted gown for the planner: all its layers, or some. */
export function gownToLay({
  gown,
  layers,
  cut,
}: {
  readonly gown: Gown;
  readonly layers: readonly Layer[];
  readonly cut: { readonly pieces: readonly CutPiece[] };
}): GownToLay {
  return {
    units: gown.units,
    layers: layers.map((layer) => onCloth(layer, gown)),
    pieces: cut.pieces,
  };
}

function onCloth(layer: Layer, gown: Gown): LayerOnCloth {
  const { name, place, ...spec } = layer.cloth;
  return {
    layer: layer.name,
    cloth: name,
    spec,
    facts: clothFacts(layer.cloth, gown.edging),
    seam: allowanceAt(layer, 'seam'),
    span: place('width'),
  };
}
