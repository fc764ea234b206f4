import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { settlingCode } from '../../src/hanging/settle.ts';
import { searchCode } from '../../src/lay/pack/search-code.ts';
import { deflatingCode } from '../../src/print/pdf/deflated.ts';

it.each([
  { types: 'lay/pack/search', code: searchCode({ makePair: () => {}, isStopped: () => false }), least: 20 },
  { types: 'hanging/settling', code: settlingCode(), least: 20 },
  { types: 'print/pdf/deflating', code: deflatingCode(), least: 2 },
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
  expect(exported.length).toBeGreaterThan(given.least);
});
