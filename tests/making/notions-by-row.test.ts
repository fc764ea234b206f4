import { describe, expect, it } from 'vitest';
import { english } from '../../src/words/english.ts';
import { made, skirt } from './made.ts';

const notionsOf = (more: string) => made(skirt({ more })).facts.notions;

describe('what to have at hand', () => {
  it('a zip that is sold so long is not to be shortened', () => {
    const words = english('cm').notions;
    expect(words.zip('22 cm', '22 cm')).toBe('zip 22 cm');
    expect(words.zip('25 cm', '23 cm')).toBe('zip 25 cm, to be shortened to 23 cm');
  });

  const HOOKS = 'closure: {kind: hooks, at: centre-back, opening: 24}';
  it('hooks for an opening that closes with hooks, as long as it', () => {
    expect(notionsOf(HOOKS)).toContainEqual({ kind: 'hooks', opening: 240 });
  });

  it.each([
    ['hook-and-bar tape', 0],
    ['hooks and eyes for the bustle', 1],
    ['snap tape', 0],
  ])('once, where the list has %s', (name, listed) => {
    const notions = notionsOf(`${HOOKS}\nnotions: [{name: ${name}, length: 24}]`);
    expect(notions.filter(({ kind }) => kind === 'hooks')).toHaveLength(listed);
  });

  it('none for a zip', () => {
    const zip = 'closure: {kind: zip, at: centre-back, starts: 2.5, opening: 22}';
    expect(notionsOf(zip).filter(({ kind }) => kind === 'hooks')).toEqual([]);
  });
});

describe('a list that is one sentence', () => {
  const { changes } = english('cm').client;
  it.each([undefined, 1, 3])('ends with a full stop and nothing else, fittings %s', (fittings) => {
    const items = changes(fittings);
    expect(items.at(-1)).toMatch(/[a-z]\.$/);
    for (const item of items.slice(0, -1)) expect(item).toMatch(/[a-z];$/);
  });
});
