// Run by the build for each bundle: works with it as a maker does, and keeps the code compiled for that beside it, since
// half of a command's start would else go into compiling. Another version of Node does not take it, and compiles as usual.
const { mkdtempSync, rmSync, writeFileSync } = require('node:fs');
const { tmpdir } = require('node:os');
const { join } = require('node:path');
const { compiledFile, compiledProgram } = require('./program.js');

const quiet = {
  folder: process.cwd(),
  out: () => {},
  err: () => {},
  styled: () => {},
  outIsTerminal: false,
  errIsTerminal: false,
  colour: false,
  flush: async () => {},
};

const [name, spec] = process.argv.slice(2);
const folder = mkdtempSync(join(tmpdir(), 'gorewright-'));
const USES = {
  start: [['--version'], ['--help']],
  check: [['check', spec]],
  main: [['draft', spec, '-o', folder]],
};

async function compile() {
  const { run, compiled } = compiledProgram(name);
  for (const argv of USES[name]) {
    const status = await run(argv, quiet);
    if (status !== 0) throw new Error(`what is compiled for fails: ${argv.join(' ')} (${status})`);
  }
  writeFileSync(compiledFile(name), compiled());
}

compile().finally(() => rmSync(folder, { recursive: true }));
