import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { run } from '../../src/cli/main.ts';
import { drafted } from './drafted.ts';

const specs = new URL('broken/', import.meta.url);

/**
 * Each file is a spec that a tired maker might type. Its first line says what the message must speak of; the line that
 * the message must point at ends in `# <- here`.
 */
describe('broken specs: an error at the right line, and no output', () => {
  let folder = '';
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'broken-'));
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  for (const file of readdirSync(specs).sort()) {
    it(file.replace('.yaml.txt', '').replaceAll('-', ' '), async () => {
      const yaml = readFileSync(new URL(file, specs), 'utf8');
      const says = new RegExp(/^# says: (.*)$/m.exec(yaml)![1]!);
      const marked = yaml.split('\n').flatMap((line, i) => (line.includes('# <- here') ? [i + 1] : []));
      const { svg, report, files, diagnostics } = await drafted(yaml);
      const there = diagnostics.filter((d) => d.level === 'error' && marked.includes(d.line));
      expect(there, JSON.stringify(diagnostics)).not.toEqual([]);
      expect(there.map((d) => d.message).join('\n')).toMatch(says);
      expect(svg).toBe('');
      expect(report).toBeUndefined();
      expect([...files.keys()]).toEqual([]);
      await expectRefused(folder, yaml, marked);
    });
  }
});

/** The command says it too, with the place, ends with status 1 and writes nothing at all. */
async function expectRefused(folder: string, yaml: string, lines: readonly number[]): Promise<void> {
  writeFileSync(join(folder, 'gown.yaml'), yaml);
  let [out, err] = ['', ''];
  const status = await run(['draft', 'gown.yaml', '-o', 'out'], {
    folder,
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    styled: () => {},
    outIsTerminal: false,
    errIsTerminal: false,
    colour: false,
    flush: async () => {},
  });
  expect(status).toBe(1);
  expect(out).toBe('');
  expect(
    lines.some((line) => err.includes(`gown.yaml:${line}:`)),
    err,
  ).toBe(true);
  expect(err).not.toMatch(/\bat .*\(.*:\d+:\d+\)|undefined|NaN|\[object/);
  expect(readdirSync(folder)).toEqual(['gown.yaml']);
}
