// CommonJS, like all of this folder: Node starts it without the loader of modules, which is slow to wake.
const { readFileSync } = require('node:fs');
const { createRequire } = require('node:module');
const { dirname, join } = require('node:path');
const { Script } = require('node:vm');

const BUNDLE = join(__dirname, '../dist/main.cjs');
const COMPILED = join(__dirname, '../dist/main.compiled');

/** The built program, from the code compiled ahead where this Node takes it; and its code as compiled so far. */
function compiledProgram() {
  const source = readFileSync(BUNDLE, 'utf8');
  const script = new Script(`(function (exports, require, module, __filename, __dirname) {${source}\n})`, {
    filename: BUNDLE,
    cachedData: compiledAhead(),
  });
  const module = { exports: {} };
  script.runInThisContext()(module.exports, createRequire(BUNDLE), module, BUNDLE, dirname(BUNDLE));
  return { run: module.exports.run, compiled: () => script.createCachedData() };
}

function compiledAhead() {
  try {
    return readFileSync(COMPILED);
  } catch {
    return undefined;
  }
}

module.exports = { COMPILED, compiledProgram };
