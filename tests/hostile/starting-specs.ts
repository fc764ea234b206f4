import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

export interface StartingSpec {
  readonly name: string;
  readonly text: string;
}

const ROOT = join(import.meta.dirname, '../..');

/** Every example and template, and two specs that have each section of the format between them. */
export const STARTING_SPECS: readonly StartingSpec[] = [
  ...['examples', 'templates'].flatMap((folder) =>
    readdirSync(join(ROOT, folder))
      .filter((file) => file.endsWith('.yaml'))
      .sort()
      .map((file) => specAt(`${folder}/${file}`)),
  ),
  specAt('tests/hostile/everything.yaml'),
  specAt('tests/hostile/wrapped.yaml'),
];

function specAt(name: string): StartingSpec {
  return { name, text: readFileSync(join(ROOT, name), 'utf8') };
}
