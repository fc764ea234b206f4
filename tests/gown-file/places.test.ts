import { readFileSync } from 'node:fs';
import { describe, expect, expectTypeOf, it } from 'vitest';
import { readSpec } from '../../src/gown-file/read-spec.ts';
import { type FilePath, type PathOf, placeOf } from '../../src/gown-file/spec.ts';

const name = 'lantern.yaml';
const text = readFileSync(new URL(`../../examples/${name}`, import.meta.url), 'utf8');
const spec = readSpec({ name, text }).spec!;
const textAt = (...path: FilePath) => {
  const { start, end } = placeOf(spec, ...path);
  return text.slice(start, end);
};

describe('a path into the file', () => {
  it('leads to what the file says there', () => {
    expect(textAt('gown')).toBe('Lantern');
    expect(textAt('gores', 0, 'name')).toBe('front');
    expect(textAt('petticoat', 'hoop-off-floor')).toBe('4');
    expect(textAt('bodice', 'panels', 'side-back')).toBe('7.9');
  });

  it('or to the nearest section that is there', () => {
    expect(textAt('gores', 0, 'notes')).toBe('front');
    expect(textAt('lengths', 'measured-in', 'heel')).toBe('lengths');
  });

  it('is one that a file can have, or it does not compile', () => {
    expectTypeOf<['lengths', 'measured-in', 'petticoat', 'girths', number, 'down']>().toExtend<FilePath>();
    expectTypeOf<['layers', number, 'fullness', 'by']>().toExtend<FilePath>();
    expectTypeOf<['gores', number, 'hemWidth']>().not.toExtend<FilePath>();
    expectTypeOf<['gores', 'side', 'hem']>().not.toExtend<FilePath>();
    expectTypeOf<['gown', 'name']>().not.toExtend<FilePath>();
    expectTypeOf<['sewn-as-one', 'waist', number]>().toExtend<PathOf<number>>();
    expectTypeOf<['lengths', 'at']>().toExtend<PathOf<string>>();
    expectTypeOf<['lengths', 'worn-in']>().not.toExtend<PathOf<string>>();
  });
});
