import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { HOSTILE_TEXT } from './hostile-values.ts';
import { mutantOf } from './mutant.ts';
import { STARTING_SPECS } from './starting-specs.ts';
import { type Trial, trialOf } from './trial.ts';

/** `SPECS=5000` for a soak, from a seed that it prints; `SEED=7 SPECS=1` to see one spec again. */
const specCount = Number(process.env.SPECS ?? 100);
const firstSeed = Number(process.env.SEED ?? (process.env.SPECS === undefined ? 1 : Date.now() % 2 ** 31));
const patience = 60_000 + specCount * 500;

/** All that can be drafted are drawn; of so many one has its cloth planned, and every file looked through. */
const WRITTEN = 10;
const DRAWN = { mostSheets: 0, lays: false };
const ALL_LOOKED_AT = { mostSheets: 40, lays: true };

describe(`specs that something happened to (from seed ${firstSeed})`, () => {
  it(
    'are drafted, or refused with a place and a reason; never a fault, never a figure that is none',
    async () => {
      let drafted = 0;
      let written = 0;
      for (let seed = firstSeed; seed < firstSeed + specCount; seed++) {
        const { from, text } = mutantOf(seed);
        let trial: Trial = await trialOf(text, DRAWN);
        if (trial.isDrafted && drafted++ % WRITTEN === 0) trial = await trialOf(text, ALL_LOOKED_AT);
        if (trial.isWritten) written++;
        expect(trial.faults, `SEED=${seed} SPECS=1, from ${from}:\n${text}`).toEqual([]);
      }
      // A change that makes every spec unreadable would try nothing.
      if (specCount >= 100) {
        expect(drafted).toBeGreaterThan(specCount / 6);
        expect(written).toBeGreaterThan(0);
      }
    },
    patience,
  );
});

/** Specs that something went wrong with once, each with what it was. */
describe('specs that once went wrong', () => {
  const folder = join(import.meta.dirname, 'found');
  it.each(readdirSync(folder).sort())('%s', async (file) => {
    const { faults } = await trialOf(readFileSync(join(folder, file), 'utf8'), ALL_LOOKED_AT);
    expect(faults).toEqual([]);
  });
});

describe('hostile words where any words may stand', () => {
  const plain = STARTING_SPECS.find(({ name }) => name === 'templates/full-circle.yaml')!.text;
  const words = HOSTILE_TEXT.filter((word) => word.trim() !== '');
  const batches = Array.from({ length: Math.ceil(words.length / 7) }, (_, i) =>
    words.slice(7 * i, 7 * i + 7),
  );

  it.each(batches.map((batch, i) => ({ i, batch })))('are printed safely ($i)', async ({ batch }) => {
    const { faults, isWritten } = await trialOf(specWith(plain, batch), ALL_LOOKED_AT);
    expect(faults).toEqual([]);
    expect(isWritten).toBe(true);
  });
});

/** Each word stands somewhere on the pattern or in the papers; written with escapes, so that all of it arrives. */
function specWith(plain: string, words: readonly string[]): string {
  const word = (i: number, longest = 60) => words[i % words.length]!.slice(0, longest);
  const spec = parse(plain);
  const [cloth] = Object.keys(spec.cloths);
  Object.assign(spec, {
    gown: word(0, 300),
    client: word(1),
    notes: word(2, 300),
    labour: {
      rate: 20,
      tasks: { [`${word(3)} a`]: 3 },
      stages: { [`${word(4)} b`]: '100%' },
      notes: word(5, 300),
    },
    notions: [
      { name: word(6), price: 1, supplier: word(0), colour: word(1), notes: word(2) },
      { name: word(3), count: 2, price: '0.5' },
    ],
    currency: 'EUR',
  });
  Object.assign(spec.bodice, { notes: word(4) });
  Object.assign(spec.gores[0], { notes: word(5) });
  Object.assign(spec.cloths[cloth!], {
    supplier: word(6),
    colour: word(0),
    'dye-lot': word(1),
    notes: word(2),
  });
  const escaped = (character: string) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`;
  return JSON.stringify(spec).replace(/[\u007f-\uffff]/g, escaped);
}
