// Compiles the search for a lay to WebAssembly, where what is there was not made from the sources as they stand. Run by
// the build, and by vitest's configuration, so that no test ever runs an old one.
const { createHash } = require('node:crypto');
const {
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmdirSync,
  writeFileSync,
} = require('node:fs');
const { join } = require('node:path');

const ROOT = join(__dirname, '..');
const SEARCH = join(ROOT, 'src/lay/search');
const WASM = join(ROOT, 'src/lay/pack/search.wasm');
/** What the code lets its host ask, as TypeScript: written here, kept by git so that types are there before a build. */
const TYPES = join(ROOT, 'src/lay/pack/search.d.wasm.ts');

const FLAGS = '-O3 --noAssert --uncheckedBehavior always --runtime stub --enable simd --use abort='.split(
  ' ',
);

function searchSources() {
  return readdirSync(SEARCH)
    .sort()
    .map((name) => join(SEARCH, name));
}

/** What stands at the end of the compiled file: a section of its own, which holds a hash of all that it is made from. */
function madeFrom() {
  const hash = createHash('sha256');
  const compiler = join(ROOT, 'node_modules/assemblyscript/package.json');
  for (const file of [__filename, compiler, ...searchSources()]) {
    hash.update(file.slice(ROOT.length)).update('\0').update(readFileSync(file)).update('\0');
  }
  const name = Buffer.from('sources');
  const content = Buffer.concat([Buffer.of(name.length), name, hash.digest()]);
  return Buffer.concat([Buffer.of(0, content.length), content]);
}

async function compileSearch() {
  const section = madeFrom();
  if (existsSync(TYPES) && existsSync(WASM) && readFileSync(WASM).subarray(-section.length).equals(section))
    return;
  const { default: asc } = await import('assemblyscript/asc');
  const written = {};
  const { error, stderr } = await asc.main(
    ['src/lay/search/index.ts', '--baseDir', ROOT, '--outFile', 'search.wasm', '--bindings', 'raw', ...FLAGS],
    { writeFile: (name, content) => Object.assign(written, { [name]: content }) },
  );
  if (error) throw new Error(`the search does not compile\n${stderr}`);
  replace(TYPES, typesOf(written['search.d.ts']));
  replace(WASM, Buffer.concat([written['search.wasm'], section]));
}

/** The functions that the compiler says it exports. */
function typesOf(bindings) {
  const functions = [...bindings.matchAll(/^ {2}export function (.*)$/gm)].map(
    ([, declared]) => `  ${declared}`,
  );
  return `// Written from src/lay/search/index.ts by bin/compile-search.js: change it there.
declare const bytes: Uint8Array<ArrayBuffer>;
export default bytes;

/** What the innermost part of the search lets its host ask; a flag is 0 or 1. */
export interface SearchCode {
${functions.join('\n')}
}
`;
}

/** In one step, as two runs may compile at once; what is the same stays untouched. */
function replace(file, content) {
  if (existsSync(file) && readFileSync(file).equals(Buffer.from(content))) return;
  const folder = mkdtempSync(`${file}-`);
  writeFileSync(join(folder, 'whole'), content);
  renameSync(join(folder, 'whole'), file);
  rmdirSync(folder);
}

module.exports = { compileSearch, searchSources };

if (require.main === module) {
  compileSearch().catch((error) => {
    console.error(error.message);
    process.exitCode = 1;
  });
}
