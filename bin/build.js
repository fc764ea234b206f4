// Run by `npm run build`: everything that is run from `dist` alone, so that what is installed needs no other package.
const { cpSync, readdirSync, readFileSync, rmSync, writeFileSync } = require('node:fs');
const { execFileSync } = require('node:child_process');
const { join } = require('node:path');

const ROOT = join(__dirname, '..');
const DIST = join(ROOT, 'dist');
const FONT = 'dejavu-fonts-ttf';

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

function build() {
  rmSync(DIST, { recursive: true, force: true });
  execFileSync('npm', ['run', '-s', 'search'], {
    cwd: ROOT,
    stdio: 'inherit',
    shell: process.platform === 'win32',
  });
  const { metafile } = require('esbuild').buildSync({
    absWorkingDir: ROOT,
    entryPoints: ['src/cli/main.ts', 'src/cli/lay-worker.ts'],
    bundle: true,
    platform: 'node',
    target: 'node20',
    format: 'cjs',
    mainFields: ['module', 'main'],
    loader: { '.wasm': 'binary', '.html': 'text', '.client.js': 'text' },
    minify: true,
    outdir: 'dist',
    outExtension: { '.js': '.cjs' },
    define: { 'import.meta.url': 'here' },
    banner: { js: "const here=require('node:url').pathToFileURL(__filename).href;" },
    logLevel: 'warning',
    metafile: true,
  });
  const font = join(ROOT, 'node_modules', FONT);
  cpSync(join(font, 'ttf/DejaVuSans.ttf'), join(DIST, 'DejaVuSans.ttf'));
  writeFileSync(join(DIST, 'licences.txt'), licences([...bundled(metafile), font]));
  execFileSync(process.execPath, [join(__dirname, 'compile-ahead.js'), 'examples/lantern.yaml'], {
    cwd: ROOT,
    stdio: 'inherit',
  });
}

/** Folders of the packages that have a line in the bundle. */
function bundled({ inputs }) {
  const folders = Object.keys(inputs).flatMap(
    (path) => /^.*node_modules\/(?:@[^/]+\/)?[^/]+(?=\/)/.exec(path)?.[0] ?? [],
  );
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
} else build();
