#!/usr/bin/env node
import { compiledProgram } from './program.js';

process.exitCode = await compiledProgram().run(process.argv.slice(2));
