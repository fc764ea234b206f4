// Compiles to WebAssembly what most of the work is done by, the search for a lay and the settling of cloth, where what is
// there was not made from the sources as they stand. Run by the build, and by vitest's configuration, so that no test ever
// runs an old one.
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
/**
 * A folder of sources, where its compiled code goes, and what its face is called. Beside the code stands what it lets its
 * host ask, as TypeScript: written here, kept by git so that types are there before a build.
 */
const CODES = [
  { sources: 'src/lay/search', wasm: 'src/lay/pack/search.wasm', face: 'SearchCode' },
  { sources: 'src/hanging/settling', wasm: 'src/hanging/settling.wasm', face: 'SettlingCode' },
];

const FLAGS = '-O3 --noAssert --uncheckedBehavior always --runtime stub --enable simd --use abort='.split(
  ' ',
);

/** All that is compiled, of one code or of all. */
function compiledSources(codes = CODES) {
  return codes.flatMap(({ sources }) =>
    readdirSync(join(ROOT, sources))
      .sort()
      .map((name) => join(ROOT, sources, name)),
  );
}

/** What stands at the end of the compiled file: a section of its own, which holds a hash of all that it is made from. */
function madeFrom(code) {
  const hash = createHash('sha256');
  const compiler = join(ROOT, 'node_modules/assemblyscript/package.json');
  for (const file of [__filename, compiler, ...compiledSources([code])]) {
    hash.update(file.slice(ROOT.length)).update('\0').update(readFileSync(file)).update('\0');
  }
  const name = Buffer.from('sources');
  const content = Buffer.concat([Buffer.of(name.length), name, hash.digest()]);
  return Buffer.concat([Buffer.of(0, content.length), content]);
}

async function compileAll() {
  for (const code of CODES) await compile(code);
}

async function compile(code) {
  const { sources, wasm } = code;
  const section = madeFrom(code);
  const [compiled, types] = [join(ROOT, wasm), join(ROOT, wasm.replace(/wasm$/, 'd.wasm.ts'))];
  const isThere = existsSync(types) && existsSync(compiled);
  if (isThere && readFileSync(compiled).subarray(-section.length).equals(section)) return;
  const { default: asc } = await import('assemblyscript/asc');
  const written = {};
  const { error, stderr } = await asc.main(
    [`${sources}/index.ts`, '--baseDir', ROOT, '--outFile', 'code.wasm', '--bindings', 'raw', ...FLAGS],
    { writeFile: (name, content) => Object.assign(written, { [name]: content }) },
  );
  if (error) throw new Error(`${sources} does not compile\n${stderr}`);
  replace(types, typesOf(written['code.d.ts'], code));
  replace(compiled, Buffer.concat([written['code.wasm'], section]));
}

/** The functions that the compiler says it exports. */
function typesOf(bindings, { sources, face }) {
  const functions = [...bindings.matchAll(/^ {2}export function (.*)$/gm)].map(
    ([, declared]) => `  ${declared}`,
  );
  return `// Written from ${sources}/index.ts by bin/compile-search.js: change it there.
declare const bytes: Uint8Array<ArrayBuffer>;
export default bytes;

/** What the code lets its host ask; a flag is 0 or 1. */
export interface ${face} {
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

module.exports = { compileAll, compiledSources };

if (require.main === module) {
  compileAll().catch((error) => {
    console.error(error.message);
    process.exitCode = 1;
  });
}
