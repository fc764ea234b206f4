import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse, stringify } from 'yaml';
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
        const flat = unfolded(yaml);
        if (flat === yaml) expectTrue(svg, report, yaml);
        else {
          const plain = await draftedTrue(flat);
          expectTrue(plain.svg, plain.report, flat);
        }
        const again = await drafted(yaml);
        expect(again.svg).toBe(svg);
        expect(JSON.stringify(again.report)).toBe(JSON.stringify(report));
        for (const [name, bytes] of again.files) expect(bytes, name).toEqual(files.get(name));
      });
    }
  }
});

/** Cloth that is cut to be folded is measured folded (`shapes/growth-tucks`, `properties/pleated`): here the gown without. */
function unfolded(yaml: string): string {
  if (!/^ *(pleats|growth-tucks):/m.test(yaml)) return yaml;
  const { pleats: _pleats, ...spec } = parse(yaml);
  const layers = spec.layers.map(({ 'growth-tucks': _tucks, ...layer }: Record<string, unknown>) => layer);
  return stringify({ ...spec, layers });
}
