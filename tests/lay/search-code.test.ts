import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { searchCode } from '../../src/lay/pack/search-code.ts';

it('the compiled search exports what its types say, each function with so many numbers', () => {
  const types = readFileSync(new URL('../../src/lay/pack/search.d.wasm.ts', import.meta.url), 'utf8');
  const promised = [...types.matchAll(/^ {2}(\w+)\((.*)\): \w+;$/gm)].map(([, name, numbers]) => [
    name,
    numbers === '' ? 0 : numbers!.split(', ').length,
  ]);
  const exported = Object.entries(searchCode({ makePair: () => {}, isStopped: () => false }))
    .filter(([, value]) => typeof value === 'function')
    .map(([name, value]) => [name, (value as unknown as (...numbers: number[]) => unknown).length]);
  expect(exported.sort()).toEqual(promised.sort());
  expect(exported.length).toBeGreaterThan(20);
});
