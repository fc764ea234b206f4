// Run by the build: keeps the compiled code of a check beside the bundle, since half of a command's start would else go
// into compiling. Another version of Node does not take it, and compiles the bundle as usual.
import { writeFileSync } from 'node:fs';
import { COMPILED, compiledProgram } from './program.js';

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
const status = await run(['check', ...process.argv.slice(2)], quiet);
if (status !== 0) throw new Error(`the spec to compile for does not pass its check (${status})`);
writeFileSync(COMPILED, compiled());
