import { cpSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Run, timed } from './bare-start.ts';

/** A line of the example changed, as a maker changes one after the first draft. */
const CHANGES: readonly (readonly [name: string, from: string, to: string])[] = [
  ['nothing changed', '', ''],
  ['a price changed', 'price: 24.50', 'price: 26.50'],
  ['a note changed', 'candles on the window sills', 'candles on the tables'],
  ['one gore changed', 'half-flare: 17deg', 'half-flare: 17.5deg'],
];

const RUNS = 3;

export interface Redraft {
  readonly name: string;
  /** Into an empty folder. */
  readonly first: Run;
  /** Into the folder of a draft before the change. */
  readonly again: Run;
}

/** What it takes to draft the example once more after a change, and to draft what it was changed to for the first time. */
export function redrafts(bin: string, example: string, folder: string): Redraft[] {
  const text = readFileSync(example, 'utf8');
  const spec = join(folder, 'changed.yaml');
  const drafted = join(folder, 'drafted');
  const out = join(folder, 'again');
  writeFileSync(spec, text);
  const draft = (into: string) => timed([bin, 'draft', spec, '-o', into], 1);
  draft(drafted);
  return CHANGES.map(([name, from, to]) => {
    if (!text.includes(from)) throw new Error(`the example has no ${from}`);
    writeFileSync(spec, text.replace(from, to));
    const runs = Array.from({ length: RUNS }, () => {
      rmSync(out, { recursive: true, force: true });
      const first = draft(out);
      rmSync(out, { recursive: true });
      cpSync(drafted, out, { recursive: true });
      return { first, again: draft(out) };
    });
    return {
      name,
      first: least(runs.map(({ first }) => first)),
      again: least(runs.map(({ again }) => again)),
    };
  });
}

function least(runs: readonly Run[]): Run {
  return runs.reduce((a, b) => (a.milliseconds <= b.milliseconds ? a : b));
}
