import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Script } from 'node:vm';

const BUNDLE = fileURLToPath(new URL('../dist/main.cjs', import.meta.url));
export const COMPILED = fileURLToPath(new URL('../dist/main.compiled', import.meta.url));

/** The built program, from the code compiled ahead where this Node takes it; and its code as compiled so far. */
export function compiledProgram() {
  const source = readFileSync(BUNDLE, 'utf8');
  const cachedData = existsSync(COMPILED) ? readFileSync(COMPILED) : undefined;
  const script = new Script(`(function (exports, require, module, __filename, __dirname) {${source}\n})`, {
    filename: BUNDLE,
    ...(cachedData === undefined ? {} : { cachedData }),
  });
  const module = { exports: {} };
  script.runInThisContext()(module.exports, createRequire(BUNDLE), module, BUNDLE, dirname(BUNDLE));
  return { run: module.exports.run, compiled: () => script.createCachedData() };
}
