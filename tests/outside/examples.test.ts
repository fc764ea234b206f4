import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { drafted, draftedTrue } from './drafted.ts';
import { expectTrue } from './truth/untruths.ts';

const root = new URL('../..', import.meta.url);

describe('every example and template is true', () => {
  for (const folder of ['examples/', 'templates/']) {
    for (const file of readdirSync(new URL(folder, root)).sort()) {
      if (!file.endsWith('.yaml')) continue;
      it(`${folder}${file}`, { timeout: 60_000 }, async () => {
        const yaml = readFileSync(new URL(folder + file, root), 'utf8');
        const { svg, report, files } = await draftedTrue(yaml);
        expectTrue(svg, report, yaml);
        const again = await drafted(yaml);
        expect(again.svg).toBe(svg);
        expect(JSON.stringify(again.report)).toBe(JSON.stringify(report));
        for (const [name, bytes] of again.files) expect(bytes, name).toEqual(files.get(name));
      });
    }
  }
});
