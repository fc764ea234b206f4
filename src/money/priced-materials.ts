import type { Gown } from '../gown/gown.ts';
import type { Layer } from '../gown/layer.ts';
import type { BoughtCloth } from '../lay/plan/lay-facts.ts';
import type { EdgingFacts } from '../making/edging/edging-facts.ts';
import type { StripFacts } from '../making/supplies/strip-facts.ts';
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
}

/** Cloths at the length that their lays say to buy, each cloth once; then edging, strips and the spec's notions. */
export function pricedMaterials(
  gown: Pick<Gown, 'edging' | 'notions'>,
  { layers, bought, edging, strips }: Bought,
): PricedMaterials {
  const priced: Priced[] = [];
  const withoutPrice: string[] = [];
  const withoutLength: string[] = [];
  const add = (price: string | undefined, rest: Omit<Priced, 'price'>): void => {
    if (price === undefined) withoutPrice.push(rest.name);
    else priced.push({ ...rest, price });
  };
  const cloths = new Map(layers.map(({ cloth }) => [cloth.name, cloth]));
  for (const { name, price, pricedPer } of cloths.values()) {
    const lengths = bought.filter((one) => one.cloth === name);
    if (lengths.length === 0) withoutLength.push(name);
    else
      add(price, { kind: 'cloth', name, length: lengths.reduce((sum, { buy }) => sum + buy, 0), pricedPer });
  }
  if (edging !== undefined && edging.from === 'bought-in') {
    const { price, pricedPer, soldBy } = gown.edging!;
    const length = soldBy === undefined ? edging.buy : Math.ceil(edging.buy / soldBy - 1e-9) * soldBy;
    add(price, {
      kind: 'edging',
      name: edging.name,
      length,
      ...(pricedPer === undefined ? {} : { pricedPer }),
    });
  }
  for (const { kind, layer, along, buy, trim } of strips) {
    const per = trim.pricedPer === undefined ? {} : { pricedPer: trim.pricedPer };
    add(trim.price, {
      kind: 'strip',
      name: `${kind} ${along}`,
      strip: { kind, layer, along },
      length: buy,
      ...per,
    });
  }
  for (const { name, count, length, price, pricedPer } of gown.notions) {
    const quantity = length === undefined ? { count: count ?? 1 } : { length };
    add(price, { kind: 'notion', name, ...quantity, ...(pricedPer === undefined ? {} : { pricedPer }) });
  }
  return { priced, withoutPrice, withoutLength };
}
