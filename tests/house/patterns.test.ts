import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseAst } from 'rolldown/parseAst';
import { analyse } from 'scslre';
import { describe, expect, it } from 'vitest';

/**
 * A pattern that tries the same characters again from every place takes minutes for a text of 100 kB. Whether one can
 * is found by looking at the pattern, with a library that does nothing else: nothing here is timed.
 */
const SOURCE = join(import.meta.dirname, '../../src');
const files = readdirSync(SOURCE, { recursive: true, encoding: 'utf8' }).filter((path) =>
  /(?<!\.d)\.(ts|js)$/.test(path),
);

interface Pattern {
  readonly pattern: string;
  readonly flags: string;
}

/** Every pattern written in a file, and what `new RegExp` is given. */
function patternsIn(path: string): Pattern[] {
  const text = readFileSync(join(SOURCE, path), 'utf8');
  const found: Pattern[] = [];
  const walk = (node: unknown): void => {
    if (Array.isArray(node)) {
      node.forEach(walk);
      return;
    }
    if (typeof node !== 'object' || node === null) return;
    const own = node as { readonly regex?: Pattern };
    if (own.regex !== undefined) found.push(own.regex);
    else Object.values(node).forEach(walk);
  };
  walk(parseAst(text, { lang: path.endsWith('.ts') ? 'ts' : 'js' }));
  return found;
}

const slowParts = ({ pattern, flags }: Pattern) =>
  analyse({ source: pattern, flags }, { reportTypes: { Move: true, Self: true, Trade: true } }).reports;

describe('every pattern takes time linear in the text', () => {
  const all = files.flatMap((path) => patternsIn(path).map((pattern) => ({ path, ...pattern })));

  it('and there are many', () => expect(all.length).toBeGreaterThan(80));

  it.each([...new Set(all.map(({ path }) => path))])('%s', (path) => {
    const slow = all.filter((one) => one.path === path && slowParts(one).length > 0);
    expect(slow.map(({ pattern, flags }) => `/${pattern}/${flags}`)).toEqual([]);
  });

  it('none is put together while the program runs, but one of letters alone', () => {
    const made = files.filter((path) => /\bRegExp\(/.test(readFileSync(join(SOURCE, path), 'utf8')));
    expect(made).toEqual(['print/text/text-direction.ts']);
  });

  it.each([
    ['spaces before what never comes', String.raw`\s*½`],
    ['noughts before what never comes', '0+$'],
    ['two runs of one kind', String.raw`^\d+\d+x`],
    ['a run of runs', '^(a+)+$'],
  ])('would find %s', (_what, pattern) => {
    expect(slowParts({ pattern, flags: '' })).not.toEqual([]);
  });
});
