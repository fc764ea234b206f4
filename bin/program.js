// CommonJS, like all of this folder: Node starts it without the loader of modules, which is slow to wake.
const { readFileSync } = require('node:fs');
const { createRequire } = require('node:module');
const { dirname, join } = require('node:path');
const { setFlagsFromString } = require('node:v8');
const { Script } = require('node:vm');

const DIST = join(__dirname, '../dist');

/**
 * What each bundle of the command line is there for. A bundle is read and its code taken up whole before its first line
 * runs, so that what says the version, or checks a spec, is kept apart from what draws and writes PDFs. `holds` are the
 * files loaded late that it has; `main` has all. `flag` is for the V8 of Node 20: later ones count calls, know no such
 * flag and would say so, and have a compiler between the slow and the fast that costs them less.
 */
const STARTS = {
  start: { when: (argv) => argv.length === 0 || ['--help', '-h', '--version'].includes(argv[0]), holds: [] },
  check: {
    when: ([command]) => ['check', 'new', 'schema'].includes(command),
    holds: ['check-gown', 'chosen-template', 'package-files', 'write-new-file', 'spec-schema'],
    // It is over before code made fast for the long run has paid for the making: that waits sixty times as long as usual.
    flag: '--interrupt-budget=4000000',
  },
  // A draft does most things a few times and some for seconds: six times as long costs these little.
  main: { when: () => true, flag: '--interrupt-budget=400000' },
};

/** Which bundle a command line needs. */
function bundleFor(argv) {
  return Object.keys(STARTS).find((name) => STARTS[name].when(argv));
}

/** A built bundle, from the code compiled ahead where this Node takes it; and its code as compiled so far. Undefined where it is not built. */
function compiledProgram(name) {
  const path = join(DIST, `${name}.cjs`);
  const source = contentOf(path, 'latin1');
  if (source === undefined) return undefined;
  const { flag } = STARTS[name];
  if (flag !== undefined && process.versions.v8.startsWith('11.3.')) setFlagsFromString(flag);
  const script = new Script(`(function (exports, require, module, __filename, __dirname) {${source}\n})`, {
    filename: path,
    cachedData: contentOf(compiledFile(name)),
  });
  const module = { exports: {} };
  script.runInThisContext()(module.exports, createRequire(path), module, path, dirname(path));
  return { run: module.exports.run, compiled: () => script.createCachedData() };
}

function compiledFile(name) {
  return join(DIST, `${name}.compiled`);
}

function contentOf(path, encoding) {
  try {
    return readFileSync(path, encoding);
  } catch {
    return undefined;
  }
}

module.exports = { STARTS, bundleFor, compiledFile, compiledProgram, FOLDER: join(__dirname, '..') };
