import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { draftedTrue } from './drafted.ts';
import { readPattern } from './measure/pattern.ts';
import { expectTrue } from './truth/untruths.ts';

const folder = new URL('tight/', import.meta.url);

/** A curve shorter than this has no direction once it is written in decimals, mm. */
const NO_LENGTH = 0.01;

/** Gowns in which the random ones once found something wrong; the first line of each says what. */
describe('tight places', () => {
  for (const file of readdirSync(folder).sort()) {
    it(file.replace('.yaml', '').replaceAll('-', ' '), { timeout: 60_000 }, async () => {
      const yaml = readFileSync(new URL(file, folder), 'utf8');
      const { svg, report } = await draftedTrue(yaml);
      for (const piece of readPattern(svg).pieces) {
        for (const path of [piece.cut, ...piece.sew.values()]) {
          const shortest = Math.min(...path.segments.map((segment) => segment.length));
          expect(shortest, piece.gore).toBeGreaterThan(NO_LENGTH);
        }
      }
      expectTrue(svg, report, yaml);
    });
  }
});
