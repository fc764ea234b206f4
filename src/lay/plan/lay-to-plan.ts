import type { Span } from '../../diagnostics/diagnostic.ts';
import type { Units } from '../../diagnostics/units.ts';
import type { CutPiece } from '../../draft/piece.ts';
import type { Cloth } from '../../gown/cloth.ts';
import type { Gown } from '../../gown/gown.ts';
import { allowanceAt, type Layer } from '../../gown/layer.ts';
import { clothFacts } from './cloth-facts.ts';
import { layNames } from './lay-names.ts';
import type { ClothFacts } from './lay-plan.ts';

/** A cloth as the shop sells it. */
export type ClothAsSold = Omit<Cloth, 'name' | 'place'>;

/** A cloth and what is cut from it in one lay: data alone, which can be handed to another thread. */
export interface ClothToLay {
  /** Names the lay: the cloth, and its layer where the cloth's layers are kept apart. */
  readonly name: string;
  readonly cloth: string;
  readonly spec: ClothAsSold;
  readonly facts: ClothFacts;
  /** Whatever has pieces of that cloth, flounces, strips and overskirts among it, in the order in which it is cut. */
  readonly layers: readonly LayerInLay[];
  readonly span: Span;
}

export interface LayerInLay {
  readonly name: string;
  /** Allowance of a join along the grain, mm. */
  readonly seam: number;
}

/** What lay planning needs of a drafted gown. */
export interface GownToLay {
  readonly units: Units;
  readonly lays: readonly ClothToLay[];
  readonly pieces: readonly CutPiece[];
}

/** One lay to plan. */
export interface LayToPlan extends ClothToLay {
  /** All that is cut, for this lay and others. */
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
  const cutFrom = layers.filter(({ name }) => cut.pieces.some((piece) => piece.layers.includes(name)));
  const together = togetherOf(cutFrom);
  const names = layNames(
    together.map(([{ name, cloth }]) => ({ cloth: cloth.name, layer: cloth.apart ? name : undefined })),
  );
  return {
    units: gown.units,
    lays: together.map((own, i) => onCloth(names[i]!, own, gown)),
    pieces: cut.pieces,
  };
}

type Together = readonly [Layer, ...Layer[]];

/** The layers of one cloth together, unless it is cut on different days. */
function togetherOf(layers: readonly Layer[]): Together[] {
  const together = new Map<string, Layer[]>();
  for (const layer of layers) {
    const key = layer.cloth.apart ? `${layer.cloth.name}/${layer.name}` : layer.cloth.name;
    together.set(key, [...(together.get(key) ?? []), layer]);
  }
  return [...together.values()] as unknown as Together[];
}

function onCloth(layName: string, layers: Together, gown: Gown): ClothToLay {
  const { cloth } = layers[0];
  const { name, place, ...spec } = cloth;
  return {
    name: layName,
    cloth: name,
    spec,
    facts: clothFacts(cloth, gown.edging),
    layers: layers.map((layer) => ({ name: layer.name, seam: allowanceAt(layer, 'seam') })),
    span: place('width'),
  };
}
