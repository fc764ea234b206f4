import { execFileSync } from 'node:child_process';
import { copyFileSync, mkdirSync, readdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { ExitStatus } from '../../src/cli/exit-status.ts';
import { run } from '../../src/cli/main.ts';
import { freshFolder, projectFile } from '../cli/gorewright.ts';
import { RecordingMachine } from '../cli/recording-machine.ts';

const { done, specWrong, wrongCommandLine, fault } = ExitStatus;
let folder: string;

beforeAll(() => {
  folder = freshFolder();
  copyFileSync(projectFile('templates/full-circle.yaml'), join(folder, 'gown.yaml'));
  const git = (...args: string[]) =>
    execFileSync('git', ['-c', 'user.name=maker', '-c', 'user.email=maker@invalid', ...args], {
      cwd: folder,
    });
  git('init', '-q');
  git('add', 'gown.yaml');
  symlinkSync('gown.yaml', join(folder, 'link.yaml'));
  mkdirSync(join(folder, 'folder'));
  writeFileSync(join(folder, 'folder/kept.txt'), 'hers');
  git('add', 'link.yaml', 'folder');
  git('commit', '-qm', 'one');
});

/** Runs it, and holds it to what every end of a run has in common. */
async function ends(argv: readonly string[]): Promise<number> {
  const machine = new RecordingMachine(folder);
  const status = await run(argv, machine);
  const said = machine.stderr;
  expect(said).not.toMatch(/ {4}at |a fault of this tool|system says/);
  expect((machine.stdout + said).replaceAll('\n', '')).not.toMatch(/\p{Cc}|[\u202a-\u202e\u2066-\u2069]/u);
  if (status === fault) expect(said).toMatch(/^gorewright: [^\n]+\n$/);
  if (status === wrongCommandLine) expect(said).toMatch(/^gorewright: [^\n]+\n(?:Run "[^\n]+\n)?$/);
  if (status === specWrong) expect(said).toMatch(/error\[/);
  if (status === done) expect(machine.stdout).not.toBe('');
  return status;
}

const LONG = 'x'.repeat(5000);

describe('values of options that are none: one line, and nothing is written', () => {
  const cases: readonly (readonly [string, readonly string[], readonly string[]])[] = [
    [
      '--paper',
      ['draft', 'gown.yaml'],
      [
        '',
        'a0',
        'roll:',
        'roll:0',
        'roll:-1',
        'roll:1e3',
        'roll:99999999999',
        '../x',
        'a4/../x',
        '__proto__',
        '\u001b[2J',
        'a4,a3',
        LONG,
      ],
    ],
    [
      '--gores',
      ['draft', 'gown.yaml'],
      ['', ',', 'Front', '*', '..', '__proto__', 'toString', '\u202efront', 'front;back', LONG],
    ],
    ['--layer', ['draft', 'gown.yaml'], [',', 'front', '\u001b]0;x\u0007', LONG]],
    ['--sheets', ['draft', 'gown.yaml'], ['', 'some', 'ALL']],
    [
      '--every',
      ['draft', 'gown.yaml'],
      [
        '',
        '0',
        '-1',
        '1e-9',
        '1e9',
        'NaN',
        'Infinity',
        '1/0',
        '10%',
        '17deg',
        '10cm;',
        '9.99mm',
        '1001cm',
        LONG,
      ],
    ],
    ['--effort', ['lay', 'gown.yaml'], ['', 'none', '1']],
    ['--width', ['lay', 'gown.yaml'], ['', ',', '0', '-5', '1e9', 'NaN', '11m', '140cm,x', LONG]],
    ['--layer', ['lay', 'gown.yaml'], [',', 'front', '__proto__', LONG]],
    ['--fold', ['lay', 'gown.yaml'], ['', 'double', 'Single']],
    ['--from', ['new', 'new.yaml'], ['', '../gown', 'nothing', '__proto__', LONG]],
    ['--paper', ['measures'], ['', 'a0', 'roll:279', '\u009b']],
  ];

  it.each(cases)('%s of %j', async (option, command, values) => {
    const before = readdirSync(folder);
    for (const value of values)
      expect(await ends([...command, `${option}=${value}`]), value).toBe(wrongCommandLine);
    expect(readdirSync(folder)).toEqual(before);
  });

  it('--sheet, which is known once the sheets are laid out', async () => {
    for (const label of ['Z99', 'A1,\u202e']) {
      expect(await ends(['draft', 'gown.yaml', '--out=sheets', `--sheet=${label}`]), label).toBe(
        wrongCommandLine,
      );
    }
    expect(readdirSync(folder)).not.toContain('sheets');
  });
});

describe('where to write', () => {
  const NOWHERE = ['/dev/null', '/dev/full', '/proc/gown', 'gown.yaml', 'gown.yaml/x', LONG, 'a\u0000b'];

  it.each(NOWHERE)('%j holds no output', async (out) => {
    const before = readdirSync(folder);
    expect(await ends(['compare', `--out=${out}`, 'gown.yaml', 'gown.yaml'])).toBe(fault);
    expect(await ends(['measures', `--out=${out}`])).toBe(fault);
    expect(await ends(['new', '--', out])).toBe(fault);
    expect(readdirSync(folder)).toEqual(before);
  });

  it('a draft neither', async () => {
    for (const out of ['/proc/gown', 'gown.yaml/x', LONG]) {
      expect(await ends(['draft', '--replace', `--out=${out}`, 'gown.yaml'])).toBe(fault);
    }
  });
});

describe('revisions', () => {
  // Options, ranges, paths, dates, searches and shells: nothing of these may reach git.
  it.each([
    '',
    '-h',
    '--help',
    '--output=x',
    '@',
    '@{0}',
    '@{-1}',
    '@{upstream}',
    '@{yesterday}',
    ':/one',
    ':gown.yaml',
    'HEAD:gown.yaml',
    'HEAD^{tree}',
    'HEAD^{/one}',
    'HEAD..HEAD',
    '^HEAD',
    'HEAD~-1',
    'HEAD HEAD',
    'HEAD\nHEAD',
    'HEAD;id',
    '$(id)',
    '`id`',
    '|id',
    '../x',
    'refs/../x',
    '~',
    '^',
    '/',
    '\\',
    '.',
    '\u001b[2J',
    '\u202eHEAD',
    LONG,
  ])('%j is none', async (revision) => {
    expect(await ends(['compare', `gown.yaml@${revision}`, 'gown.yaml'])).toBe(wrongCommandLine);
    expect(await ends(['compare', 'gown.yaml', `gown.yaml@${revision}`])).toBe(wrongCommandLine);
  });

  it.each(['HEAD~1', 'HEAD^2', `HEAD~${'9'.repeat(40)}`, 'main2', '0000000', 'é', 'HEAD~1~1~1', 'ORIG_HEAD'])(
    '%j is not in this repository',
    async (revision) => {
      expect(await ends(['compare', `gown.yaml@${revision}`, 'gown.yaml'])).toBe(fault);
    },
  );

  it.each([
    'none.yaml',
    '*',
    ':(top)gown.yaml',
    'folder',
    'folder/../folder',
    'link.yaml',
    '.git/config',
    '/etc/passwd',
    '../x.yaml',
    '\u001b',
  ])('%j is no file of it', async (file) => {
    expect(await ends(['compare', `${file}@HEAD`, 'gown.yaml'])).toBe(fault);
  });

  it.each(['HEAD', 'HEAD~0', 'HEAD^0'])('%j is the same gown', async (revision) => {
    expect(await ends(['compare', `gown.yaml@${revision}`, 'gown.yaml'])).toBe(done);
  });
});

describe('files that are no patterns', () => {
  it.each([
    ['gown.yaml', specWrong],
    ['/dev/null', specWrong],
    ['/dev/zero', fault],
    ['folder', fault],
    ['none.pdf', fault],
    [LONG, fault],
  ] as const)('%s ends the audit with %i', async (pdf, status) => {
    expect(await ends(['audit', pdf, 'gown.yaml'])).toBe(status);
  });
});
