#!/usr/bin/env node
const { compiledProgram } = require('./program.js');

// Until a command says how it ended: one that waits for what never comes ends the process without a word.
process.exitCode = 3;

compiledProgram()
  .run(process.argv.slice(2))
  .then((status) => {
    process.exitCode = status;
  });
