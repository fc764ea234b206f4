import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { shortLines, thisMachine } from '../../src/cli/machine.ts';
import { program } from '../../src/cli/program.ts';
import { safeLines } from '../../src/diagnostics/safe-text.ts';
import { freshFolder, gorewright, projectFile } from '../cli/gorewright.ts';

/** What moves a cursor, changes a colour or turns a line's direction: none of it may reach a terminal. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for.
const UNSAFE = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069\ufeff]/;

const FORGED = 'a\u001b[2J\u0007\u009b31m\u202e\u2066\u2067\u2068\u2069\u200f\u2028\rb';

/** Each command, with a spec whose every free word is hostile. */
const RUNS: Readonly<Record<string, readonly string[]>> = {
  new: ['new', '--from', FORGED],
  measures: ['measures', 'gown.yaml'],
  check: ['check', 'gown.yaml'],
  draft: ['draft', 'gown.yaml', '-o', `made${FORGED}`],
  lay: ['lay', 'gown.yaml'],
  quote: ['quote', 'gown.yaml'],
  compare: ['compare', 'gown.yaml', 'other.yaml'],
  read: ['read', 'gown.yaml'],
  audit: ['audit', 'gown.yaml', 'gown.yaml'],
  schema: ['schema', FORGED],
  watch: ['watch', `${FORGED}.yaml`],
  estimate: ['estimate', '--from', FORGED],
};

describe('nothing but text reaches the terminal', () => {
  const folder = freshFolder();
  writeFileSync(join(folder, 'gown.yaml'), hostileSpec(FORGED));
  writeFileSync(join(folder, 'other.yaml'), hostileSpec(`${FORGED} 2`));
  const commands = program(thisMachine(), () => {}).commands.map((command) => command.name());

  it.each(commands)('of %s', (command) => {
    const argv = RUNS[command];
    expect(argv, `say here how ${command} is tried`).toBeDefined();
    for (const flags of command === 'quote' || command === 'lay' ? [[], ['--json']] : [[]]) {
      const { status, stdout, stderr } = gorewright([...argv!, ...flags], folder);
      // Those that read the spec have read it, and say all that it holds.
      if (argv!.includes('gown.yaml') && command !== 'audit') expect(status).toBe(0);
      else expect(status).not.toBe(null);
      expect(stdout + stderr).not.toBe('');
      expect(stdout).not.toMatch(UNSAFE);
      expect(stderr).not.toMatch(UNSAFE);
      if (flags.length > 0) expect(() => JSON.parse(stdout)).not.toThrow();
    }
  });
});

describe('the way out', () => {
  it('keeps lines, tabs and letters of every script', () => {
    const text = 'a\tb\nÄß漢字 👗 שמלה\n';
    expect(safeLines(text)).toBe(text);
  });

  it('cuts a line that nobody reads on, and no other', () => {
    const lines = shortLines(`short\n${'x'.repeat(100_000)}\nshort`).split('\n');
    expect(lines.map(({ length }) => length)).toEqual([5, 2001, 5]);
  });
});

function hostileSpec(word: string): string {
  const spec = parse(readFileSync(projectFile('templates/full-circle.yaml'), 'utf8'));
  const [cloth] = Object.keys(spec.cloths);
  Object.assign(spec, {
    gown: word,
    client: 'AA-01',
    notes: word,
    currency: 'EUR',
    labour: { rate: 20, tasks: { [`${word} sewing`]: 3 }, stages: { [`${word} stage`]: '100%' } },
    notions: [{ name: word, price: 1, supplier: word }],
  });
  Object.assign(spec.cloths[cloth!], { supplier: word, colour: word, price: 5 });
  // JSON is YAML; all that is not plain is written with escapes, as the file itself must be text.
  return JSON.stringify(spec).replace(
    /[\u007f-\uffff]/g,
    (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}
