import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, join, relative } from 'node:path';
import { describe, expect, it } from 'vitest';
import { thisMachine } from '../../src/cli/machine.ts';
import { program } from '../../src/cli/program.ts';

const ROOT = join(import.meta.dirname, '../..');
const packageFile = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8'));
const readme = readFileSync(join(ROOT, 'README.md'), 'utf8');
const developers = readFileSync(join(ROOT, 'DEVELOPERS.md'), 'utf8');

/** Made by installing, building and drafting; not in git. */
const MADE = ['node_modules', 'dist', 'out'];

it('the top level holds what a visitor expects', () => {
  const visible = readdirSync(ROOT).filter((name) => !name.startsWith('.') && !MADE.includes(name));
  expect(visible.sort()).toEqual(
    [
      'DEVELOPERS.md',
      'README.md',
      'bin',
      'examples',
      'package-lock.json',
      'package.json',
      'src',
      'templates',
      'tests',
      'tsconfig.json',
    ].sort(),
  );
});

describe('what the papers say can be typed', () => {
  it.each(['README.md', 'DEVELOPERS.md'])('%s names only scripts that exist', (name) => {
    const named = [...(name === 'README.md' ? readme : developers).matchAll(/\bnpm (?:run )?([a-z:]+)/g)].map(
      (match) => match[1],
    );
    const scripts = new Set([...Object.keys(packageFile.scripts), 'ci', 'run', 'install', 'link', 'pack']);
    expect(named.filter((script) => script !== undefined && !scripts.has(script))).toEqual([]);
  });

  it('the README names every command, and no other', () => {
    const commands = program(thisMachine(), () => {}).commands.map((command) => command.name());
    const named = new Set([...readme.matchAll(/\bgorewright ([a-z]+)\b/g)].map((match) => match[1]));
    expect([...named].sort()).toEqual(commands.sort());
  });

  it('continuous integration runs the README test command', () => {
    const ci = readFileSync(join(ROOT, '.ci/run'), 'utf8');
    expect(ci).toContain('\nnpm ci && npm run check\n');
    expect(readme).toContain('npm ci && npm run check');
  });
});

describe('DEVELOPERS.md names what there is', () => {
  const named = [...developers.matchAll(/`([^`\n]+)`/g)].map((match) => match[1]!);
  const sources = ['src', 'tests', 'bin'].flatMap((folder) =>
    readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' }).map((path) => join(folder, path)),
  );
  const folders = (room: string): string[] =>
    readdirSync(join(ROOT, room), { withFileTypes: true }).flatMap((entry) =>
      entry.isDirectory() ? [entry.name] : [],
    );

  it('files and folders', () => {
    const paths = named.filter((name) => /^(src|tests|bin|examples|templates)\/[\w./-]+$/.test(name));
    const files = named.filter((name) => /^[\w-]+(\.d)?(\.\w+)?\.(ts|js)$/.test(name));
    expect(paths.length).toBeGreaterThan(20);
    expect(files.length).toBeGreaterThan(20);
    expect(paths.filter((path) => !existsSync(join(ROOT, path)))).toEqual([]);
    expect(files.filter((file) => !sources.some((path) => basename(path) === file))).toEqual([]);
  });

  it('names in the code', () => {
    const text = sources
      .filter((path) => /\.(ts|js)$/.test(path))
      .map((path) => readFileSync(join(ROOT, path), 'utf8'))
      .join('\n');
    const words = new Set(text.match(/\w+/g));
    const names = named.filter((name) => /^([a-z]+[A-Z]\w*|[A-Z]\w+)$/.test(name));
    expect(names.length).toBeGreaterThan(30);
    expect(names.filter((name) => !words.has(name))).toEqual([]);
  });

  it('every room of the house, and every folder of tests', () => {
    const rows = new Set(
      [...developers.matchAll(/^\| (`[^|]+) \|/gm)].flatMap(([, cell]) => cell!.match(/[\w/-]+/g)!),
    );
    expect(folders('src').filter((room) => !rows.has(room))).toEqual([]);
    expect(folders('tests').filter((folder) => !rows.has(`tests/${folder}`))).toEqual([]);
  });
});

it('no path of one machine is in any file', () => {
  const wrong = textFiles(ROOT).filter((path) => MACHINE_PATH.test(readFileSync(path, 'utf8')));
  expect(wrong.map((path) => relative(ROOT, path))).toEqual([]);
});

it('the lock file names no registry', () => {
  expect(readFileSync(join(ROOT, 'package-lock.json'), 'utf8')).not.toContain('"resolved": "http');
});

const MACHINE_PATH = /(?:^|[^\w.])\/(?:home|Users|root|work|tmp)\/\w/m;

function textFiles(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return [...MADE, '.git'].includes(entry.name) ? [] : textFiles(path);
    return /\.(ts|js|json|ya?ml|md|svg|csv|txt)$|\/run$/.test(entry.name) ? [path] : [];
  });
}
