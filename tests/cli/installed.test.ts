import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { freshFolder, gorewright, projectFile } from './gorewright.ts';

const folder = freshFolder();
const prefix = join(folder, 'prefix');

/** Runs npm without a network, in a folder of this test, as somebody who installs. */
function npm(args: readonly string[], where: string, environment: Record<string, string> = {}) {
  const { status, stdout, stderr } = spawnSync('npm', [...args, '--offline', '--no-audit', '--no-fund'], {
    cwd: where,
    encoding: 'utf8',
    env: { ...process.env, NODE_ENV: '', npm_config_cache: join(folder, 'cache'), ...environment },
  });
  return { status, stdout, said: stdout + stderr };
}

describe('what npm packs', () => {
  let files: readonly string[] = [];
  let program = '';

  beforeAll(() => {
    // What the build has made is what is tried; the build itself comes before the tests.
    const packed = npm(
      ['pack', '--json', '--ignore-scripts', '--pack-destination', folder, projectFile('.')],
      folder,
    );
    const [{ filename, files: inside }] = JSON.parse(packed.stdout);
    files = inside.map(({ path }: { path: string }) => path);
    const { status, said } = npm(['install', '--global', '--prefix', prefix, join(folder, filename)], folder);
    expect({ status, said }).toMatchObject({ status: 0 });
    program = join(prefix, 'lib/node_modules/gorewright/bin/gorewright.js');
  });

  it('holds what is run, and nothing of the workshop', () => {
    for (const needed of ['bin/gorewright.js', 'dist/main.cjs', 'dist/lay-worker.cjs', 'dist/DejaVuSans.ttf'])
      expect(files).toContain(needed);
    expect(files.filter((path) => path.startsWith('templates/')).length).toBeGreaterThan(10);
    const rooms = new Set(files.map((path) => path.split('/')[0]));
    expect([...rooms].sort()).toEqual(['README.md', 'bin', 'dist', 'examples', 'package.json', 'templates']);
  });

  it('holds the terms of all that is in it', () => {
    const terms = readFileSync(projectFile('dist/licences.txt'), 'utf8');
    for (const name of ['pdf-lib', 'yaml', 'zod', 'commander', 'pako', 'dejavu-fonts-ttf'])
      expect(terms).toMatch(new RegExp(`^${name} [\\d.]+ \\(`, 'm'));
    expect(terms).toContain('Bitstream Vera');
    expect(readFileSync(projectFile('README.md'), 'utf8')).toContain(
      'Permission is hereby granted, free of charge',
    );
  });

  it('is installed for everybody and runs anywhere, without a package beside it', () => {
    const { version } = JSON.parse(readFileSync(projectFile('package.json'), 'utf8'));
    const linked = spawnSync(join(prefix, 'bin/gorewright'), ['--version'], {
      cwd: folder,
      encoding: 'utf8',
    });
    expect(linked).toMatchObject({ status: 0, stdout: `${version}\n`, stderr: '' });
    expect(existsSync(join(prefix, 'lib/node_modules/gorewright/node_modules'))).toBe(false);
  });

  it('drafts a template, with letters that need its own font', () => {
    const work = freshFolder();
    expect(gorewright(['new', 'gown.yaml', '--from', 'full-circle'], work, {}, program).status).toBe(0);
    const spec = readFileSync(join(work, 'gown.yaml'), 'utf8');
    writeFileSync(join(work, 'gown.yaml'), spec.replace(/^gown: .*/m, 'gown: Платье'));
    const { status, stderr } = gorewright(['draft', 'gown.yaml', '-o', 'made'], work, {}, program);
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    // No finding says that letters are missing: the font was there.
    expect(existsSync(join(work, 'made/pattern-a4.pdf'))).toBe(true);
  });
});

describe('a copy that was not built', () => {
  const copy = join(folder, 'copy');
  const line = /^gorewright: not built[^\n]+\n$/;

  beforeAll(() => {
    mkdirSync(copy);
    for (const part of ['bin', 'package.json', 'package-lock.json'])
      cpSync(projectFile(part), join(copy, part), { recursive: true });
  });

  it('says so in one line when it is run, and what to do', () => {
    const { status, stdout, stderr } = gorewright(['--version'], folder, {}, join(copy, 'bin/gorewright.js'));
    expect(stderr).toMatch(line);
    expect(stderr).toContain('npm run build');
    expect({ status, stdout }).toEqual({ status: 3, stdout: '' });
  });

  it('is installed for production without its tools, and says what is missing', () => {
    const { status, said } = npm(['ci'], copy, { NODE_ENV: 'production' });
    expect(said).toMatch(/^gorewright: not built: the tools[^\n]+npm ci --include=dev/m);
    expect(said).not.toMatch(/npm error|\n {4}at /);
    expect(status).toBe(0);
  });

  it('fails a build that was asked for, in one line', () => {
    const { status, stderr } = spawnSync(process.execPath, ['bin/build.js'], { cwd: copy, encoding: 'utf8' });
    expect(stderr).toMatch(line);
    expect(status).toBe(1);
  });
});
