import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Cloth } from '../../src/gown/cloth.ts';
import { inOtherCloths } from '../../src/gown/other-cloths.ts';
import { readSpec } from '../../src/gown-file/read-spec.ts';
import { gownAsked } from '../../src/pipeline.ts';

const FILES = [
  'examples/lantern',
  'templates/boned-bodice',
  'templates/capelet',
  'templates/circular-flounce',
  'templates/tiered-net',
  'templates/train-that-comes-off',
];

/** Every cloth that is to be found anywhere in a gown, however deep. */
function clothsIn(value: unknown): Cloth[] {
  if (typeof value !== 'object' || value === null) return [];
  const own = 'selvedge' in value && 'width' in value ? [value as Cloth] : [];
  return [...own, ...Object.values(value).flatMap(clothsIn)];
}

describe.each(FILES)('%s', (file) => {
  const text = readFileSync(join(import.meta.dirname, '../..', `${file}.yaml`), 'utf8');
  const gown = gownAsked(readSpec({ name: file, text }).spec!).gown!;

  it('supposed in cloths of another width, has no cloth of the old one anywhere', () => {
    const found = clothsIn(inOtherCloths(gown, (cloth) => ({ ...cloth, width: 777 })));
    expect(found.length).toBe(clothsIn(gown).length);
    expect(found.filter(({ width }) => width !== 777)).toEqual([]);
  });

  it('keeps the cloths that are not supposed otherwise', () => {
    const first = gown.cloths[0]!.name;
    const found = clothsIn(
      inOtherCloths(gown, (cloth) => (cloth.name === first ? { ...cloth, width: 777 } : cloth)),
    );
    for (const { name, width } of found) expect(width === 777).toBe(name === first);
  });
});
