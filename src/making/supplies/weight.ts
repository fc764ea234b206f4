/** Weight of one layer as it hangs, in grams; undefined where the cloth's weight was not given. */
export interface LayerWeight {
  readonly layer: string;
  readonly cloth: string;
  /** Inside the seam lines, and inside the cut lines with every allowance, mm² for the whole layer. */
  readonly netArea: number;
  readonly cutArea: number;
  readonly gramsPerSquareMetre: number | undefined;
  readonly net: number | undefined;
  /** What hangs from the waist: allowances are in the gown too. */
  readonly withAllowances: number | undefined;
}

/** mm² × g/m² → g. */
export function gramsOf(area: number, gramsPerSquareMetre: number): number {
  return (area / 1e6) * gramsPerSquareMetre;
}

export function layerWeight(
  layer: { readonly name: string; readonly netArea: number; readonly cutArea: number },
  cloth: { readonly name: string; readonly weight?: number },
): LayerWeight {
  const grams = cloth.weight;
  return {
    layer: layer.name,
    cloth: cloth.name,
    netArea: layer.netArea,
    cutArea: layer.cutArea,
    gramsPerSquareMetre: grams,
    net: grams === undefined ? undefined : gramsOf(layer.netArea, grams),
    withAllowances: grams === undefined ? undefined : gramsOf(layer.cutArea, grams),
  };
}

/** All layers together, g; undefined when any cloth's weight is missing, because a part would pass for the whole. */
export function weightInAll(layers: readonly LayerWeight[]): number | undefined {
  let sum = 0;
  for (const layer of layers) {
    if (layer.withAllowances === undefined) return undefined;
    sum += layer.withAllowances;
  }
  return sum;
}
