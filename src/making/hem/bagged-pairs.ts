import type { HemFacts } from './hem-facts.ts';

export interface BaggedPair {
  readonly inner: HemFacts;
  readonly outer: HemFacts;
}

/** Hems that are sewn to each other, each pair once. */
export function baggedPairs(hems: readonly HemFacts[]): BaggedPair[] {
  const pairs: BaggedPair[] = [];
  const paired = new Set<string>();
  for (const inner of hems) {
    const outer = hems.find((hem) => hem.layer === inner.partner);
    if (outer === undefined || paired.has(inner.layer) || paired.has(outer.layer)) continue;
    pairs.push({ inner, outer });
    paired.add(inner.layer);
    paired.add(outer.layer);
  }
  return pairs;
}
