#!/usr/bin/env node
const { compiledProgram } = require('./program.js');

compiledProgram()
  .run(process.argv.slice(2))
  .then((status) => {
    process.exitCode = status;
  });
