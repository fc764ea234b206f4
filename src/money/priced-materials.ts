import type { Gown } from '../gown/gown.ts';
import type { Layer } from '../gown/layer.ts';
import type { Trim } from '../gown/sections.ts';
import type { BoughtCloth } from '../lay/plan/lay-facts.ts';
import type { EdgingFacts } from '../making/edging/edging-facts.ts';
import type { StripFacts } from '../making/supplies/strip-facts.ts';
import type { StoneFacts } from '../stones/stone-facts.ts';
import type { Priced } from './quote.ts';

/** What is bought and has a price, and the names of what has none. */
export interface PricedMaterials {
  readonly priced: readonly Priced[];
  readonly withoutPrice: readonly string[];
  /** Cloths whose length to buy is not known because nothing was laid. */
  readonly withoutLength: readonly string[];
}

/** What the gown is made of beside its notions. */
export interface Bought {
  /** Every layer that has pieces. */
  readonly layers: readonly Layer[];
  readonly bought: readonly BoughtCloth[];
  readonly edging: EdgingFacts | undefined;
  readonly strips: readonly StripFacts[];
  readonly stones: readonly StoneFacts[];
}

/** Cloths at the length that their lays say to buy, each cloth once; then edging, strips and the spec's notions. */
export function pricedMaterials(
  gown: Pick<Gown, 'edging' | 'notions'>,
  { layers, bought, edging, strips, stones }: Bought,
): PricedMaterials {
  const priced: Priced[] = [];
  const withoutPrice: string[] = [];
  const withoutLength: string[] = [];
  const add = (
    { price, pricedPer }: Pick<Trim, 'price' | 'pricedPer'>,
    rest: Omit<Priced, 'price'>,
  ): void => {
    if (price === undefined) withoutPrice.push(rest.name);
    else priced.push({ ...rest, price, ...(pricedPer === undefined ? {} : { pricedPer }) });
  };
  for (const cloth of new Map(layers.map((layer) => [layer.cloth.name, layer.cloth])).values()) {
    const { name } = cloth;
    const lengths = bought.filter((one) => one.cloth === name);
    if (lengths.length === 0) withoutLength.push(name);
    else add(cloth, { kind: 'cloth', name, length: lengths.reduce((sum, { buy }) => sum + buy, 0) });
  }
  if (edging !== undefined && edging.from === 'bought-in') {
    const { soldBy } = gown.edging!;
    const length = soldBy === undefined ? edging.buy : Math.ceil(edging.buy / soldBy - 1e-9) * soldBy;
    add(gown.edging!, { kind: 'edging', name: edging.name, length });
  }
  for (const { kind, layer, along, buy, trim, isCut } of strips)
    if (!isCut)
      add(trim, { kind: 'strip', name: `${kind} ${along}`, strip: { kind, layer, along }, length: buy });
  for (const { stones: own, count } of stones)
    add(own.pricePer === undefined ? {} : { price: own.pricePer }, { kind: 'stones', name: own.name, count });
  for (const notion of gown.notions) {
    const { name, count = 1, length } = notion;
    add(notion, { kind: 'notion', name, ...(length === undefined ? { count } : { length }) });
  }
  return { priced, withoutPrice, withoutLength };
}
