// Run by the build: keeps the compiled code of a check beside the bundle, since half of a command's start would else go
// into compiling. Another version of Node does not take it, and compiles the bundle as usual.
const { writeFileSync } = require('node:fs');
const { COMPILED, compiledProgram } = require('./program.js');

const quiet = {
  folder: process.cwd(),
  out: () => {},
  err: () => {},
  outIsTerminal: false,
  errIsTerminal: false,
  colour: false,
  flush: async () => {},
};

const { run, compiled } = compiledProgram();
run(['check', ...process.argv.slice(2)], quiet).then((status) => {
  if (status !== 0) throw new Error(`the spec to compile for does not pass its check (${status})`);
  writeFileSync(COMPILED, compiled());
});
