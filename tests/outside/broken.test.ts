import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { drafted } from './drafted.ts';

const folder = new URL('broken/', import.meta.url);

/**
 * Each file is a spec that a tired maker might type. Its first line says what the message must speak of; the line that
 * the message must point at ends in `# <- here`.
 */
describe('broken specs: an error at the right line, and no output', () => {
  for (const file of readdirSync(folder).sort()) {
    it(file.replace('.yaml.txt', '').replaceAll('-', ' '), async () => {
      const yaml = readFileSync(new URL(file, folder), 'utf8');
      const says = new RegExp(/^# says: (.*)$/m.exec(yaml)![1]!);
      const marked = yaml.split('\n').flatMap((line, i) => (line.includes('# <- here') ? [i + 1] : []));
      const { svg, report, files, diagnostics } = await drafted(yaml);
      const errors = diagnostics.filter((d) => d.level === 'error');
      const there = errors.filter((d) => marked.includes(d.line));
      expect(there, JSON.stringify(diagnostics)).not.toEqual([]);
      expect(there.map((d) => d.message).join('\n')).toMatch(says);
      expect(svg).toBe('');
      expect(report).toBeUndefined();
      expect([...files.keys()]).toEqual([]);
    });
  }
});
