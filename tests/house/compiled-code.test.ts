import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { settlingCode } from '../../src/hanging/settle.ts';
import { searchCode } from '../../src/lay/pack/search-code.ts';

it.each([
  { types: 'lay/pack/search', code: searchCode({ makePair: () => {}, isStopped: () => false }) },
  { types: 'hanging/settling', code: settlingCode() },
])('what is compiled exports what its types say, each function with so many numbers: $types', (given) => {
  const types = readFileSync(new URL(`../../src/${given.types}.d.wasm.ts`, import.meta.url), 'utf8');
  const promised = [...types.matchAll(/^ {2}(\w+)\((.*)\): \w+;$/gm)].map(([, name, numbers]) => [
    name,
    numbers === '' ? 0 : numbers!.split(', ').length,
  ]);
  const exported = Object.entries(given.code)
    .filter(([, value]) => typeof value === 'function')
    .map(([name, value]) => [name, (value as unknown as (...numbers: number[]) => unknown).length]);
  expect(exported.sort()).toEqual(promised.sort());
  expect(exported.length).toBeGreaterThan(20);
});
