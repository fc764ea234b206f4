import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { run } from '../../src/cli/main.ts';
import { RecordingMachine } from './recording-machine.ts';

/**
 * Every folder beside this file's `commands` is a test: `command` holds the command line, one argument a line;
 * `expected.txt` what comes of it; all else is copied into the folder that the command is run in.
 */
const CASES = join(import.meta.dirname, 'commands');

describe('command lines', () => {
  it.each(readdirSync(CASES).sort())('%s', async (name) => {
    const given = join(CASES, name);
    const folder = mkdtempSync(join(tmpdir(), 'gorewright-'));
    cpSync(given, folder, { recursive: true, filter: (path) => !/\/(command|expected\.txt)$/.test(path) });
    const before = new Set(filesIn(folder));
    const argv = readFileSync(join(given, 'command'), 'utf8')
      .split('\n')
      .filter((line) => line !== '');
    const machine = new RecordingMachine(folder);
    const status = await run(argv, machine);
    expect(machine.stderr).not.toContain('a fault of this tool');
    const written = filesIn(folder)
      .filter((file) => !before.has(file))
      .sort();
    rmSync(folder, { recursive: true });
    const section = (title: string, text: string) => (text === '' ? '' : `\n--- ${title}\n${text}`);
    const outcome = [
      `status ${status}\n`,
      section('stdout', machine.stdout),
      section('stderr', machine.stderr),
      section('written', written.map((file) => `${file}\n`).join('')),
    ];
    // The hash of what a spec says changes with every key that specs learn.
    const stable = outcome.join('').replace(/content [0-9a-f]{8}/g, 'content ········');
    await expect(stable).toMatchFileSnapshot(join(given, 'expected.txt'));
  });
});

function filesIn(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' });
}
