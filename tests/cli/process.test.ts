import { copyFileSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { freshFolder, gorewright, inShell, projectFile } from './gorewright.ts';

describe('the built command line', () => {
  it('says its version', () => {
    const { version } = JSON.parse(readFileSync(projectFile('package.json'), 'utf8'));
    expect(gorewright(['--version'], freshFolder())).toEqual({
      status: 0,
      stdout: `${version}\n`,
      stderr: '',
    });
  });

  it('finds its templates from any folder', () => {
    const folder = freshFolder();
    expect(gorewright(['new', 'gown.yaml'], folder).status).toBe(0);
    expect(gorewright(['check', 'gown.yaml'], folder).status).toBe(0);
    expect(readdirSync(folder)).toEqual(['gown.yaml']);
  });

  it('prints no colour where there is no terminal', () => {
    const folder = freshFolder();
    writeFileSync(join(folder, 'gown.yaml'), 'format: 2\n');
    const { stdout, stderr } = gorewright(['check', 'gown.yaml'], folder, {
      FORCE_COLOR: '3',
      TERM: 'xterm-256color',
    });
    expect(stdout + stderr).not.toContain('\u001b');
  });

  it('colours messages on a terminal, and not with NO_COLOR', () => {
    const folder = freshFolder();
    writeFileSync(join(folder, 'gown.yaml'), 'format: 2\n');
    const onTerminal = (set: string) =>
      inShell(
        // `script` asks the shell named by SHELL; one that is not bash would drop the function.
        `export ${set} SHELL="$BASH"; export -f gorewright; script -qec 'gorewright check gown.yaml' /dev/null`,
        folder,
      ).stdout;
    expect(onTerminal('TERM=xterm')).toContain('\u001b[1;31m');
    expect(onTerminal('TERM=xterm NO_COLOR=1')).not.toContain('\u001b');
  });
});

describe('results that nobody can take', () => {
  it('ends quietly when the reader has had enough', () => {
    const { status, stderr } = inShell(
      'gorewright schema | head -c 10 > /dev/null; exit $PIPESTATUS',
      freshFolder(),
    );
    expect(stderr).toBe('');
    expect(status).toBe(0);
  });

  it('says that the disk behind > is full', () => {
    const { status, stderr } = inShell('gorewright schema > /dev/full', freshFolder());
    expect(stderr).toBe(
      'gorewright: could not write the results (ENOSPC). Free some space or write to another place.\n',
    );
    expect(status).toBe(3);
  });
});

describe('odd names of files', () => {
  // Every one of these is a name that a file may have on a common system.
  const NAMES = [
    'a b.yaml',
    '-x.yaml',
    '--help',
    "it's.yaml",
    'a\nb.yaml',
    'a\u001b[31mb.yaml',
    '£€ß漢字.yaml',
    '$(id).yaml',
    '..yaml',
    '.yaml',
    'x'.repeat(250),
  ];

  it.each(NAMES)('%j is written and read', (name) => {
    const folder = freshFolder();
    const made = gorewright(['new', '--', name], folder);
    expect(made).toMatchObject({ status: 0, stderr: '' });
    for (const raw of ['\u001b', 'a\nb']) expect(made.stdout).not.toContain(raw);
    expect(readdirSync(folder)).toEqual([name]);
    expect(gorewright(['check', '--', name], folder).status).toBe(0);
  });

  it.each([
    ['one that is too long', 'x'.repeat(300)],
    ['a folder', '.'],
    ['a path through a file', 'file/gown.yaml'],
  ])('%s is one clear line', (_what, name) => {
    const folder = freshFolder();
    writeFileSync(join(folder, 'file'), '');
    for (const command of ['new', 'check']) {
      if (name.includes('\u0000')) continue;
      const { status, stderr } = gorewright([command, name], folder);
      expect(status).toBe(3);
      expect(stderr).toMatch(/^gorewright: cannot [^\n]+\n$/);
      expect(stderr).not.toContain('system says');
    }
  });
});

describe('files that are no specs', () => {
  it.each([
    ['a device that never ends', '/dev/zero'],
    ['this program itself', process.execPath],
  ])('%s is one finding', (_what, path) => {
    const { status, stderr } = gorewright(['check', path], freshFolder());
    expect(status).toBe(1);
    expect(stderr).toMatch(/\n1 error\n$/);
  });

  it('a link out of the folder is not followed by based-on', () => {
    const folder = freshFolder();
    mkdirSync(join(folder, 'gowns'));
    writeFileSync(join(folder, 'secret.yaml'), 'password: 12345\n');
    symlinkSync('../secret.yaml', join(folder, 'gowns/base.yaml'));
    writeFileSync(join(folder, 'gowns/gown.yaml'), 'based-on: base.yaml\n');
    const { status, stdout, stderr } = gorewright(['check', '--resolved', 'gowns/gown.yaml'], folder);
    expect(stdout + stderr).not.toContain('password');
    expect(stderr).toMatch(/^gorewright: gowns\/base.yaml is a link [^\n]+\n$/);
    expect(status).toBe(3);
  });

  it('a spec that may not be changed is read', () => {
    const folder = freshFolder();
    mkdirSync(join(folder, 'kept'));
    copyFileSync(projectFile('templates/full-circle.yaml'), join(folder, 'kept/gown.yaml'));
    expect(
      inShell(
        'chmod 400 kept/gown.yaml; chmod 500 kept; gorewright check kept/gown.yaml; s=$?; chmod 700 kept; exit $s',
        folder,
      ).status,
    ).toBe(0);
  });
});

describe('plain words for what a system or a file can do', () => {
  it.each([
    ['brackets that never close', `notes: ${'['.repeat(50_000)}`],
    ['brackets that close', `notes: ${'['.repeat(50_000)}${']'.repeat(50_000)}`],
    ['maps in maps', `notes: ${'{a: '.repeat(20_000)}1${'}'.repeat(20_000)}`],
    ['lists in lists', `${'- '.repeat(60_000)}1`],
    ['sections in sections', Array.from({ length: 400 }, (_, i) => `${' '.repeat(i)}a:`).join('\n')],
  ])('nesting without end: %s', (_what, text) => {
    const folder = freshFolder();
    writeFileSync(join(folder, 'gown.yaml'), `${text}\n`);
    const { status, stderr } = gorewright(['check', 'gown.yaml'], folder);
    expect(stderr).toContain('error[nested-too-deep]: Sections are nested deeper than in any spec.\n');
    expect(stderr).not.toContain('call stack');
    expect(status).toBe(1);
  });

  it('a folder that was deleted under whoever stands in it', () => {
    const { status, stderr } = inShell(
      'mkdir gone; cd gone; rmdir ../gone; gorewright check gown.yaml',
      freshFolder(),
    );
    expect(stderr).toBe(
      'gorewright: the folder that you are in is there no more. Go to another one with `cd` and run it again.\n',
    );
    expect(status).toBe(3);
    const version = inShell('mkdir gone; cd gone; rmdir ../gone; gorewright --version', freshFolder());
    expect(version).toMatchObject({ status: 0, stderr: '' });
  });

  it('too many open files', () => {
    const folder = freshFolder();
    copyFileSync(projectFile('templates/full-circle.yaml'), join(folder, 'gown.yaml'));
    // From as few as a Node can start with upwards, until it is done.
    const says = [20, 24, 27, 64].map((files) =>
      inShell(`ulimit -n ${files}; gorewright draft gown.yaml -o made`, folder),
    );
    const ours = says.filter(({ stderr }) => stderr.startsWith('gorewright'));
    for (const { status, stderr } of ours) {
      expect(stderr).toMatch(/^gorewright: cannot [^\n]+: too many files are open\. [^\n]+\n$/);
      expect(status).toBe(3);
    }
    expect(says.at(-1)).toMatchObject({ status: 0, stderr: '' });
  });

  it('a spec that may not be read', () => {
    const folder = freshFolder();
    copyFileSync(projectFile('templates/full-circle.yaml'), join(folder, 'gown.yaml'));
    const { status, stderr } = inShell(
      `chmod 000 gown.yaml; export -f gorewright
      powers=-dac_override,-dac_read_search
      [ "$(id -u)" = 0 ] && lesser="setpriv --bounding-set $powers --inh-caps $powers"
      $lesser bash -c 'gorewright check gown.yaml'`,
      folder,
    );
    expect(stderr).toBe(
      'gorewright: cannot read gown.yaml: you may not. Ask whoever keeps it to let you read it, or copy it.\n',
    );
    expect(status).toBe(3);
  });

  it.each([
    ['a file', ['check', 'y'.repeat(100_000)]],
    ['an option', [`--${'y'.repeat(100_000)}`]],
    ['a command', ['y'.repeat(100_000)]],
    ['a paper', ['draft', 'gown.yaml', '--paper', 'y'.repeat(100_000)]],
  ])('%s with a name of 100 kB is a short message', (_what, argv) => {
    const { status, stderr } = gorewright(argv, freshFolder());
    expect(stderr).toMatch(/^gorewright: /);
    expect(stderr.length).toBeLessThan(3000);
    expect(status).toBeGreaterThan(1);
  });
});

describe('what is loaded before the first line', () => {
  it('of the version and of a check holds nothing that writes PDFs', () => {
    const sizeOf = (name: string) => readFileSync(projectFile(`dist/${name}.cjs`)).length;
    for (const name of ['start', 'check'])
      expect(readFileSync(projectFile(`dist/${name}.cjs`), 'utf8')).not.toContain('endobj');
    expect(readFileSync(projectFile('dist/main.cjs'), 'utf8')).toContain('endobj');
    expect(sizeOf('start')).toBeLessThan(sizeOf('check') / 4);
    expect(sizeOf('check')).toBeLessThan(sizeOf('main') / 3);
  });

  it.each(['check', 'new', 'schema', 'measures', 'read'])('of %s is all that it needs', (command) => {
    const folder = freshFolder();
    copyFileSync(projectFile('templates/full-circle.yaml'), join(folder, 'gown.yaml'));
    const files = command === 'schema' ? [] : [command === 'new' ? 'other.yaml' : 'gown.yaml'];
    expect(gorewright([command, ...files], folder).status).toBe(0);
    expect(gorewright([command, '--help'], folder).status).toBe(0);
    expect(gorewright([command, '--nothing'], folder).status).toBe(2);
  });

  it('of the help is all commands, as of a wrong command line', () => {
    const help = gorewright(['--help'], freshFolder());
    expect(gorewright([], freshFolder()).stderr).toContain(help.stdout.trim().split('\n')[0]);
    expect(gorewright(['--nothing'], freshFolder()).status).toBe(2);
    expect(gorewright(['nothing'], freshFolder()).status).toBe(2);
  });
});
