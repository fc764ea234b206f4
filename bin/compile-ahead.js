// Run by the build: drafts a spec and keeps the code compiled for it beside the bundle, since half of a command's start
// would else go into compiling. Another version of Node does not take it, and compiles the bundle as usual.
const { mkdtempSync, rmSync, writeFileSync } = require('node:fs');
const { tmpdir } = require('node:os');
const { join } = require('node:path');
const { COMPILED, compiledProgram } = require('./program.js');

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

const { run, compiled } = compiledProgram();
const folder = mkdtempSync(join(tmpdir(), 'gorewright-'));
run(['draft', ...process.argv.slice(2), '-o', folder], quiet)
  .then((status) => {
    if (status !== 0) throw new Error(`the spec to compile for cannot be drafted (${status})`);
    writeFileSync(COMPILED, compiled());
  })
  .finally(() => rmSync(folder, { recursive: true }));
