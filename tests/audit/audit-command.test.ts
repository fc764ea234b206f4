import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { run } from '../../src/cli/main.ts';
import { RecordingMachine } from '../cli/recording-machine.ts';

const EXAMPLE = readFileSync(join(import.meta.dirname, '../../examples/lantern.yaml'), 'utf8');

let folder: string;

async function command(...line: string[]) {
  const machine = new RecordingMachine(folder);
  return { status: await run(line, machine), out: machine.stdout, err: machine.stderr };
}

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'gorewright-audit-'));
  writeFileSync(join(folder, 'gown.yaml'), EXAMPLE);
  const drafted = await command(
    'draft',
    'gown.yaml',
    '-o',
    'out',
    '--paper',
    'letter',
    '--sheets',
    'ends',
    '--audit',
  );
  expect(drafted.err).toContain('m of line compared, farthest 0.00');
  expect(drafted.status).toBe(0);
});

afterAll(() => rmSync(folder, { recursive: true }));

test('a pattern agrees with the spec that made it, laid out as it was', async () => {
  const { status, out, err } = await command('audit', 'out/pattern-letter.pdf', 'gown.yaml');
  expect(err).toBe('');
  expect(out).toMatch(
    /sheets, [\d.]+ m of line compared, farthest 0\.00\d mm off; test square 100\.00 mm across, 100\.00 mm down; made from spec format 1, content [0-9a-f]{8}/,
  );
  expect(status).toBe(0);
});

test('a later version of the spec is told from the one on paper, and where they part', async () => {
  writeFileSync(join(folder, 'later.yaml'), EXAMPLE.replace(/half-flare: 17deg/, 'half-flare: 16deg'));
  const { status, err } = await command('audit', 'out/pattern-letter.pdf', 'later.yaml');
  expect(err).toContain('warning[other-content]');
  expect(err).toMatch(/error\[line-off\]: Sheet [A-Z]+\d+, page \d+: a line of /);
  expect(status).toBe(1);
});

test('a version that changes no line is a warning only', async () => {
  writeFileSync(join(folder, 'renamed.yaml'), EXAMPLE.replace(/^client: .*$/m, 'client: LAN-08'));
  const { status, err } = await command('audit', 'out/pattern-letter.pdf', 'renamed.yaml');
  expect(err).toContain('warning[other-content]');
  expect(err).not.toContain('error');
  expect(status).toBe(0);
});

test('as JSON', async () => {
  const { out } = await command('audit', 'out/pattern-letter.pdf', 'gown.yaml', '--json');
  expect(JSON.parse(out)).toMatchObject({ faults: [], square: { across: expect.closeTo(100, 2) } });
});

test('what is no pattern is said to be none', async () => {
  expect(await command('audit', 'gown.yaml', 'gown.yaml')).toMatchObject({
    status: 1,
    err: expect.stringContaining('error[unreadable]'),
  });
  expect(await command('audit', 'nowhere.pdf', 'gown.yaml')).toMatchObject({
    status: 3,
    err: expect.stringContaining('there is no such file'),
  });
});
