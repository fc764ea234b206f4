// CommonJS, like all of this folder: Node starts it without the loader of modules, which is slow to wake.
const { readFileSync } = require('node:fs');
const { createRequire } = require('node:module');
const { dirname, join, resolve } = require('node:path');
const { Script } = require('node:vm');

const BUNDLE = join(__dirname, '../dist/main.cjs');
const COMPILED = join(__dirname, '../dist/main.compiled');

/** The built program, from the code compiled ahead where this Node takes it; and its code as compiled so far. Undefined where it is not built. */
function compiledProgram() {
  const source = contentOf(BUNDLE, 'utf8');
  if (source === undefined) return undefined;
  const script = new Script(`(function (exports, require, module, __filename, __dirname) {${source}\n})`, {
    filename: BUNDLE,
    cachedData: contentOf(COMPILED),
  });
  const module = { exports: {} };
  script.runInThisContext()(module.exports, createRequire(BUNDLE), module, BUNDLE, dirname(BUNDLE));
  return { run: module.exports.run, compiled: () => script.createCachedData() };
}

function contentOf(path, encoding) {
  try {
    return readFileSync(path, encoding);
  } catch {
    return undefined;
  }
}

module.exports = { COMPILED, compiledProgram, FOLDER: resolve(__dirname, '..') };
