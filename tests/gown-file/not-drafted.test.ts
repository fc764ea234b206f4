import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { insteadOf, NOT_DRAFTED } from '../../src/gown-file/not-drafted.ts';
import { readSpec } from '../../src/gown-file/read-spec.ts';
import { keysAt } from '../../src/gown-file/shape/form.ts';
import { projectFile } from '../cli/gorewright.ts';

const SPEC = readFileSync(projectFile('templates/six-gores.yaml'), 'utf8');

function found(text: string) {
  return readSpec({ name: 'gown.yaml', text }).diagnostics.filter(({ level }) => level === 'error');
}

describe('words that makers will try', () => {
  it.each(['sleeve', 'sleeves', 'collar', 'elastic', 'ruching', 'Ruffles', 'zip'])(
    '%s: not a list of keys',
    (word) => {
      const [one, ...others] = found(`${SPEC}\n${word}: 12\n`);
      expect(others).toEqual([]);
      expect(one).toMatchObject({ code: 'not-drafted', hint: insteadOf(word) });
      expect(one!.span.source.text.slice(one!.span.start, one!.span.end)).toBe(word);
    },
  );

  it('every key that the advice names is one', () => {
    const sections = keysAt([]);
    const fullness = keysAt(['layers', 0, 'fullness']);
    for (const word of NOT_DRAFTED)
      for (const [, name] of insteadOf(word)!.matchAll(/`([a-z-]+)[^`]*`/g)) {
        const known = [
          ...fullness,
          ...sections,
          ...fullness,
          ...sections.flatMap((section) => [...keysAt([section]), ...keysAt([section, 0])]),
        ];
        expect(known, `${word}: ${name}`).toContain(name);
      }
  });

  it('no word stands for a key that there is at the top', () => {
    expect(NOT_DRAFTED.filter((word) => keysAt([]).includes(word))).toEqual([]);
  });
});
