import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { lineAndColumn } from '../../src/diagnostics/place.ts';
import { readSpec } from '../../src/gown-file/read-spec.ts';

const folder = new URL('bad/', import.meta.url);
const specs = readdirSync(folder).filter((file) => file.endsWith('.yaml'));

/** Each spec in the folder has beside it what is to be said of it, a line each: `line:column level[code] message`. */
describe('bad specs: all of their problems in one run, each at its place', () => {
  it.each(specs)('%s', (file) => {
    const source = { name: file, text: readFileSync(new URL(file, folder), 'utf8') };
    const expected = readFileSync(new URL(file.replace('.yaml', '.txt'), folder), 'utf8')
      .trimEnd()
      .split('\n');
    const { spec, diagnostics } = readSpec(source);
    expect(diagnostics.map(inOneLine)).toEqual(expected);
    expect(spec === undefined).toBe(diagnostics.some((diagnostic) => diagnostic.level === 'error'));
  });
});

function inOneLine({
  span,
  level,
  code,
  message,
}: ReturnType<typeof readSpec>['diagnostics'][number]): string {
  const { line, column } = lineAndColumn(span);
  return `${line}:${column} ${level}[${code}] ${message}`;
}
