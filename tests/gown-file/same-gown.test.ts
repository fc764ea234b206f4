import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Document, isMap, isScalar, parseDocument, Scalar, visit } from 'yaml';
import { readSpec } from '../../src/gown-file/read-spec.ts';
import type { Spec } from '../../src/gown-file/spec.ts';

const folder = new URL('../../examples/', import.meta.url);
const examples = readdirSync(folder)
  .filter((file) => file.endsWith('.yaml'))
  // The library that rewrites them here would drop the nought of a dye lot.
  .map(
    (file) => [file, readFileSync(new URL(file, folder), 'utf8').replace(/: (0\d+)$/gm, ": '$1'")] as const,
  );

function whole(text: string): Omit<Spec, 'places'> {
  const { spec, diagnostics } = readSpec({ name: 'x', text });
  expect(diagnostics.filter(({ level }) => level === 'error')).toEqual([]);
  const { places: _, ...rest } = spec!;
  return rest;
}

describe.each(examples)('%s is the same gown', (_, text) => {
  it('whatever order its keys stand in, with or without comments', () => {
    const shuffle = (document: Document, seed: readonly number[]) => {
      let next = 0;
      visit(document, {
        Map(_key, map) {
          map.items = map.items
            .map((pair) => ({ pair, at: seed[next++ % seed.length]! }))
            .sort((a, b) => a.at - b.at)
            .map(({ pair }) => pair);
        },
        Node(_key, node) {
          node.comment = null;
          node.commentBefore = null;
        },
      });
      return document.toString();
    };
    fc.assert(
      fc.property(fc.array(fc.nat(1000), { minLength: 7, maxLength: 40 }), (seed) => {
        const shuffled = parseDocument(text, { keepSourceTokens: true });
        // A station of `lengths.at` may come in any order: what holds is its name.
        expect(whole(shuffle(shuffled, seed))).toEqual(whole(text));
      }),
      { numRuns: 15 },
    );
  });

  it('whatever units its bare lengths are in', () => {
    const document = parseDocument(text);
    const own = String(document.get('units'));
    const other = own === 'cm' ? 'in' : 'cm';
    const pricedPer = own === 'in' ? 'yd' : 'm';
    visit(document, {
      Pair(_key, { key, value }, path) {
        const name = isScalar(key) ? String(key.value) : '';
        const section = path.flatMap((node) =>
          'key' in node && isScalar(node.key) ? [String(node.key.value)] : [],
        );
        if (isScalar(value) && isLength(name, section, value))
          value.value = `${value.source ?? value.value} ${own}`;
      },
      Map(_key, map) {
        if (isMap(map) && map.has('price') && !map.has('sold-by'))
          map.set('priced-per', new Scalar(pricedPer));
      },
    });
    for (const list of ['tiers'] as const) {
      for (const [i] of (document.getIn([list]) as { items?: unknown[] } | undefined)?.items?.entries() ??
        []) {
        const tiers = document.getIn([list, i, 'tiers']) as { items: Scalar[] };
        for (const tier of tiers.items) tier.value = `${tier.value}${own}`;
      }
    }
    document.set('units', other);
    const { units, ...rest } = whole(document.toString());
    const { units: _units, ...base } = whole(text);
    expect(units).toBe(other);
    expect(rest).toEqual(base);
  });
});

/** Bare numbers of these are no lengths. */
const NO_LENGTHS = new Set([
  'format',
  'weight',
  'price',
  'count',
  'rate',
  'hours',
  'dye-lot',
  'fittings-included',
  'plies',
]);

function isLength(key: string, section: readonly string[], value: Scalar): boolean {
  const bare = /^[\d./ ]+$/.test(String(value.source ?? value.value));
  return bare && !NO_LENGTHS.has(key) && !section.includes('dates') && !section.includes('measured');
}
