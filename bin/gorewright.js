#!/usr/bin/env node
const { bundleFor, compiledProgram, FOLDER } = require('./program.js');

// Until a command says how it ended: one that waits for what never comes ends the process without a word.
process.exitCode = 3;

const argv = process.argv.slice(2);
const program = compiledProgram(bundleFor(argv));
if (program === undefined)
  console.error(
    `gorewright: not built yet, so there is nothing to run. In ${FOLDER}, run: npm ci --include=dev && npm run build`,
  );
// All is written by then. To end by itself the process would first tidy a memory that nobody needs any more.
else program.run(argv).then((status) => process.exit(status));
