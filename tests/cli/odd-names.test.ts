import { copyFileSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ExitStatus } from '../../src/cli/exit-status.ts';
import { run } from '../../src/cli/main.ts';
import { freshFolder, projectFile } from './gorewright.ts';
import { RecordingMachine } from './recording-machine.ts';

/** Anything that a command line can hold: no nought, no half of a character, and here nothing that leads elsewhere. */
const name = fc
  .string({ unit: 'grapheme', minLength: 1, maxLength: 40 })
  .map((text) => text.replaceAll('\0', '').replaceAll('/', '∕'))
  .filter((text) => text !== '' && text !== '.' && text !== '..');

describe('names that nobody thought of', () => {
  it('for a spec and its folder: done, or one clear line', async () => {
    await fc.assert(
      fc.asyncProperty(name, name, async (spec, out) => {
        const folder = freshFolder();
        const inside = join(folder, 'inside');
        mkdirSync(inside);
        copyFileSync(projectFile('templates/full-circle.yaml'), join(inside, spec));
        const machine = new RecordingMachine(inside);
        const status = await run(['draft', '--replace', `--out=${out}`, '--', spec], machine);
        if (status === ExitStatus.done) expect(readdirSync(join(inside, out))).toContain('report.json');
        else {
          expect(status).toBe(ExitStatus.fault);
          expect(machine.stderr).toMatch(/^gorewright: cannot [^\n]+\n$/);
        }
        expectPlain(machine);
        expect(readdirSync(folder)).toEqual(['inside']);
      }),
      { numRuns: 15 },
    );
  });

  it('for commands, options and their values: a wrong command line, or one clear line', async () => {
    const folder = freshFolder();
    writeFileSync(join(folder, 'gown.yaml'), '- no spec\n');
    const word = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 12 }),
      fc.constantFrom(
        'draft',
        'check',
        'new',
        'schema',
        'measures',
        'gown.yaml',
        '--out',
        '--paper',
        '--json',
        '--from',
        '-o',
        '--',
        '-',
        '--no-out',
        '__proto__',
        'constructor',
      ),
    );
    await fc.assert(
      fc.asyncProperty(fc.array(word, { maxLength: 6 }), async (argv) => {
        fc.pre(!argv.some((one) => one.includes('\0')));
        const machine = new RecordingMachine(folder);
        const status = await run(argv, machine);
        expect([0, 1, 2, 3]).toContain(status);
        expect(machine.stderr).not.toMatch(/ {4}at |a fault of this tool/);
        if (status !== ExitStatus.done) expect(machine.stderr).not.toBe('');
        expectPlain(machine);
      }),
      { numRuns: 300 },
    );
  });
});

/** Nothing that moves the cursor, turns the reading direction or forges a line. */
function expectPlain({ stdout, stderr }: RecordingMachine): void {
  expect((stdout + stderr).replaceAll('\n', '')).not.toMatch(/\p{Cc}|[\u202a-\u202e\u2066-\u2069]/u);
}
