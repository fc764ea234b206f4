// Run by `npm run build`: everything that is run from `dist` alone, so that what is installed needs no other package.
const { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } = require('node:fs');
const { createHash } = require('node:crypto');
const { execFileSync } = require('node:child_process');
const { join } = require('node:path');

const ROOT = join(__dirname, '..');
const DIST = join(ROOT, 'dist');
const { STARTS } = require('./program.js');

const FONT = 'dejavu-fonts-ttf';

/** Each file of `dist` that is run: from which source, and which files loaded late it holds; all where that is not said. */
const BUNDLES = {
  main: { from: 'main' },
  check: { from: 'main', holds: STARTS.check.holds },
  start: { from: 'main', holds: STARTS.start.holds },
  'lay-worker': { from: 'lay-worker' },
  'hang-worker': { from: 'hang-worker' },
};

/** The tools of the build are left out by NODE_ENV=production and by --omit=dev: no fault of whoever installs. */
function lacksTools() {
  try {
    for (const tool of ['esbuild', 'assemblyscript/package.json', `${FONT}/package.json`])
      require.resolve(tool, { paths: [ROOT] });
    return false;
  } catch {
    return true;
  }
}

async function build() {
  rmSync(DIST, { recursive: true, force: true });
  execFileSync('npm', ['run', '-s', 'search'], {
    cwd: ROOT,
    stdio: 'inherit',
    shell: process.platform === 'win32',
  });
  const inputs = await Promise.all(Object.entries(BUNDLES).map(([name, holds]) => bundle(name, holds)));
  const font = join(ROOT, 'node_modules', FONT);
  cpSync(join(font, 'ttf/DejaVuSans.ttf'), join(DIST, 'DejaVuSans.ttf'));
  writeFileSync(join(DIST, 'licences.txt'), licences([...bundled(inputs.flat()), font]));
  for (const name of Object.keys(STARTS)) {
    const args = [join(__dirname, 'compile-ahead.js'), name, 'examples/lantern.yaml'];
    execFileSync(process.execPath, args, { cwd: ROOT, stdio: 'inherit' });
  }
}

/**
 * Bundles one file of `src/cli`. What a command loads only when it runs is left out, unless it is among `holds`: a
 * bundle is read whole before its first line runs, and most of it is what draws and writes PDFs.
 *
 * @returns paths of all that is in it
 */
async function bundle(name, { from, holds }) {
  const { outputFiles, metafile } = await require('esbuild').build({
    absWorkingDir: ROOT,
    entryPoints: { [name]: `src/cli/${from}.ts` },
    bundle: true,
    platform: 'node',
    target: 'node20',
    format: 'cjs',
    mainFields: ['module', 'main'],
    loader: { '.wasm': 'binary', '.html': 'text', '.client.js': 'text' },
    minify: true,
    outdir: 'dist',
    outExtension: { '.js': '.cjs' },
    define: { 'import.meta.url': 'here', BUILT_FROM: JSON.stringify(sourcesHash()) },
    banner: { js: "const here=require('node:url').pathToFileURL(__filename).href;" },
    logLevel: 'warning',
    metafile: true,
    write: false,
    plugins: [processesWhenAsked, ...(holds === undefined ? [] : [withoutOthers(holds)])],
  });
  mkdirSync(DIST, { recursive: true });
  for (const { path, text } of outputFiles) writeFileSync(path, asAscii(text));
  return Object.keys(metafile.inputs);
}

/** The library of commands reads Node's code for other processes at every start, and starts none here. */
const processesWhenAsked = {
  name: 'processes-when-asked',
  setup: ({ onResolve, onLoad }) => {
    onResolve({ filter: /^node:child_process$/ }, ({ importer }) =>
      /[\\/]commander[\\/]/.test(importer) ? { path: 'when-asked', namespace: 'processes' } : undefined,
    );
    onLoad({ filter: /./, namespace: 'processes' }, () => ({
      contents: "exports.spawn = (...asked) => require('node:child_process').spawn(...asked);",
    }));
  },
};

/** Letters beyond ASCII stand in regular expressions alone by now. Without them a bundle takes half the room, and less time to read. */
function asAscii(text) {
  return text.replace(/[^\0-\x7f]/g, (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`);
}

function withoutOthers(holds) {
  const isLeftOut = ({ kind, path }) =>
    kind === 'dynamic-import' && !holds.some((file) => path.endsWith(`/${file}.ts`));
  return {
    name: 'without-others',
    setup: ({ onResolve }) =>
      onResolve({ filter: /^\.{1,2}\// }, (asked) =>
        isLeftOut(asked) ? { path: asked.path, external: true } : undefined,
      ),
  };
}

/** Names the sources as they stand, and the packages: what another state of them has worked out is not read by this one. */
function sourcesHash() {
  const hash = createHash('sha256').update(readFileSync(join(ROOT, 'package-lock.json')));
  const src = join(ROOT, 'src');
  for (const path of readdirSync(src, { recursive: true }).sort())
    if (/\.(ts|js|html)$/.test(path)) hash.update(`${path}\0`).update(readFileSync(join(src, path)));
  return hash.digest('hex').slice(0, 16);
}

/** Folders of the packages that have a line in the bundle. */
function bundled(inputs) {
  const folders = inputs.flatMap((path) => /^.*node_modules\/(?:@[^/]+\/)?[^/]+(?=\/)/.exec(path)?.[0] ?? []);
  return [...new Set(folders)].sort().map((folder) => join(ROOT, folder));
}

/** Each package's own terms, as they ask; where a package has no file of them, what its description says. */
function licences(folders) {
  const head = 'What gorewright is built from, and the terms of each. Its own are in README.md.\n';
  const parts = folders.map((folder) => {
    const { name, version, license, author } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
    const file = readdirSync(folder).find((entry) => /^(licen[cs]e|copying)/i.test(entry));
    const by = typeof author === 'object' ? author.name : author;
    const terms =
      file === undefined ? `Licence: ${license}. Author: ${by}.\n` : readFileSync(join(folder, file), 'utf8');
    return `\n${'-'.repeat(80)}\n${name} ${version} (${license})\n\n${terms.trim()}\n`;
  });
  return [head, ...parts].join('');
}

if (lacksTools()) {
  const line =
    'not built: the tools for that were left out (NODE_ENV=production, or --omit=dev). Run `npm ci --include=dev`.';
  console.error(`gorewright: ${line}`);
  // What installs it goes on, and the program says the same when it is run; who asked for a build is told that it failed.
  process.exitCode = process.argv.includes('--if-possible') ? 0 : 1;
} else {
  build().catch((error) => {
    console.error(error);
    process.exitCode = 1;
  });
}
