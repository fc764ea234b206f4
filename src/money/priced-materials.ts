import type { Layer } from '../gown/layer.ts';
import type { Spec } from '../gown-file/spec.ts';
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

/** Cloths at the length that their lays say to buy, each cloth once; then edging, strips and the spec's notions. */
export function pricedMaterials(
  spec: Spec,
  layers: readonly Layer[],
  bought: readonly BoughtCloth[],
  edging: EdgingFacts | undefined,
  strips: readonly StripFacts[],
): PricedMaterials {
  const priced: Priced[] = [];
  const withoutPrice: string[] = [];
  const withoutLength: string[] = [];
  const add = (price: string | undefined, rest: Omit<Priced, 'price'>): void => {
    if (price === undefined) withoutPrice.push(rest.name);
    else priced.push({ ...rest, price });
  };
  for (const cloth of new Set(layers.map((layer) => layer.cloth.name))) {
    const { price, pricedPer } = spec.cloths[cloth] ?? {};
    const lengths = bought.filter((one) => one.cloth === cloth);
    if (lengths.length === 0) withoutLength.push(cloth);
    else {
      const length = lengths.reduce((sum, one) => sum + one.buy, 0);
      add(price, { kind: 'cloth', name: cloth, length, ...(pricedPer === undefined ? {} : { pricedPer }) });
    }
  }
  if (edging !== undefined && edging.from === 'bought-in') {
    const { price, pricedPer, soldBy } = spec.edging!;
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
  for (const { name, count, length, price, pricedPer } of spec.notions ?? []) {
    const quantity = length === undefined ? { count: count ?? 1 } : { length };
    add(price, { kind: 'notion', name, ...quantity, ...(pricedPer === undefined ? {} : { pricedPer }) });
  }
  return { priced, withoutPrice, withoutLength };
}
