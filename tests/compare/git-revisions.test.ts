import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { run } from '../../src/cli/main.ts';
import { RecordingMachine } from '../cli/recording-machine.ts';
import { Repository } from './repository.ts';
import { cone, drafted } from './versions.ts';

const long = cone();
const short = cone({ lengths: { at: { 'centre-front': 980, 'centre-back': 980 } } });

async function gorewright(folder: string, ...argv: string[]) {
  const machine = new RecordingMachine(folder);
  const status = await run(argv, machine);
  return { status, stdout: machine.stdout, stderr: machine.stderr };
}

async function verdicts(folder: string, old: string, now: string): Promise<string[]> {
  const { status, stdout, stderr } = await gorewright(folder, 'compare', '--no-lays', '--json', old, now);
  expect(stderr).toBe('');
  expect(status).toBe(0);
  return JSON.parse(stdout).pieces.map((piece: { verdict: string }) => piece.verdict);
}

const RAISED = ['re-mark', 're-mark', 're-mark'];
const KEPT = ['same', 'same', 'same'];

describe('a spec at revisions of a real repository', () => {
  let repository: Repository;
  beforeAll(() => {
    repository = new Repository();
  });
  afterAll(() => repository.remove());

  it('the working file against HEAD, two revisions, a tag, a branch with a slash, a hash', async () => {
    const { folder } = repository;
    const first = repository.commit({ 'gown.yaml': long });
    repository.git('tag', 'v1.0');
    repository.git('branch', 'fittings/second');
    repository.commit({ 'gown.yaml': short });
    repository.write('gown.yaml', long);
    expect(await verdicts(folder, 'gown.yaml@HEAD', 'gown.yaml')).toEqual(['re-cut', 're-cut', 're-cut']);
    for (const revision of ['HEAD~1', 'HEAD^', 'HEAD~', 'v1.0', 'fittings/second', first, first.slice(0, 8)])
      expect(await verdicts(folder, `gown.yaml@${revision}`, 'gown.yaml@HEAD')).toEqual(RAISED);
    expect(await verdicts(folder, 'gown.yaml@HEAD~1', 'gown.yaml')).toEqual(KEPT);
  });

  it.each([
    'a b.yaml',
    'ivory@silk.yaml',
    'gown.yaml@HEAD~1.yaml',
    '-o.yaml',
    '--json.yaml',
    ':(glob)*.yaml',
    'röcke/zürich – №5.yaml',
    'deep/er/gown.yaml',
    'quote\'s "and" $HOME `id`.yaml',
    'star*?[a].yaml',
    'back\\slash.yaml',
    'tab\tname.yaml',
    'line\nname.yaml',
  ])('odd file name %j', async (name) => {
    repository.commit({ [name]: long });
    repository.commit({ [name]: short });
    const { status, stdout, stderr } = await gorewright(
      repository.folder,
      'compare',
      '--no-lays',
      '--json',
      '--',
      `${name}@HEAD~1`,
      name,
    );
    expect(stderr).toBe('');
    expect(status).toBe(0);
    expect(JSON.parse(stdout).pieces[0].verdict).toBe('re-mark');
    expect(JSON.parse(stdout).old.name).toBe(`${name}@HEAD~1`);
  });

  it('from a folder below the top, with dots in the path, and a file that is gone by now', async () => {
    repository.commit({ 'below/gown.yaml': long, 'gone/away.yaml': long });
    repository.commit({ 'below/gown.yaml': short });
    rmSync(join(repository.folder, 'gone'), { recursive: true });
    const below = join(repository.folder, 'below');
    expect(await verdicts(below, 'gown.yaml@HEAD~1', 'gown.yaml')).toEqual(RAISED);
    expect(await verdicts(below, '../below/./gown.yaml@HEAD~1', 'gown.yaml')).toEqual(RAISED);
    expect(await verdicts(repository.folder, 'gone/away.yaml@HEAD', 'below/gown.yaml')).toEqual(RAISED);
    const absolute = join(below, 'gown.yaml');
    expect(await verdicts(tmpdir(), `${absolute}@HEAD~1`, absolute)).toEqual(RAISED);
  });

  it('what a spec is based on is read from the same revision', async () => {
    const own = 'based-on: base.yaml\ngown: Second\n';
    repository.commit({ 'set/base.yaml': long, 'set/second.yaml': own });
    repository.commit({ 'set/base.yaml': short });
    expect(await verdicts(repository.folder, 'set/second.yaml@HEAD~1', 'set/second.yaml')).toEqual(RAISED);
    expect(await verdicts(repository.folder, 'set/second.yaml@HEAD', 'set/second.yaml')).toEqual(KEPT);
  });

  it('cloth that was cut from an earlier version still is held against that version', async () => {
    const layers = { layers: ['lining', 'shell'].map((name) => ({ name, cloth: 'calico', hem: 'faced' })) };
    const hem = (length: number, more = {}) =>
      cone({ ...layers, lengths: { at: { 'centre-front': length, 'centre-back': length } }, ...more });
    const cut = { cut: { shell: drafted(hem(1000)).report.content } };
    const first = repository.commit({ 'kept.yaml': hem(1000) });
    repository.commit({ 'kept.yaml': hem(980, cut) });
    repository.commit({ 'kept.yaml': hem(990, cut) });
    const { stdout } = await gorewright(
      repository.folder,
      'compare',
      '--no-lays',
      '--json',
      'kept.yaml@HEAD~1',
      'kept.yaml',
    );
    const pieces: { layer: string; gore: string; verdict: string; mm: number; cloth: string }[] =
      JSON.parse(stdout).pieces;
    const side = (layer: string) => pieces.find((piece) => piece.layer === layer && piece.gore === 'side');
    // 10 mm longer than the version before, and 10 mm shorter than the one that the shell was cut from.
    expect(side('lining')).toMatchObject({ verdict: 'let-out', cloth: 'not-cut' });
    expect(side('shell')).toMatchObject({ verdict: 're-mark', mm: 10 });
    const text = await gorewright(repository.folder, 'compare', '--no-lays', 'kept.yaml@HEAD~1', 'kept.yaml');
    expect(text.stdout).toContain(`Cloth on the table, cut from kept.yaml@${first.slice(0, 12)}`);
    expect(text.stdout).toContain('Not cut yet: lining');
  });

  it('a wrong spec of an earlier time is told with its line, as that revision has it', async () => {
    repository.commit({ 'wrong.yaml': long.replace('front', 'frnot:') });
    repository.commit({ 'wrong.yaml': long });
    const { status, stderr, stdout } = await gorewright(
      repository.folder,
      'compare',
      'wrong.yaml@HEAD~1',
      'wrong.yaml',
    );
    expect(status).toBe(1);
    expect(stdout).toBe('');
    expect(stderr).toMatch(/^wrong\.yaml@HEAD~1:\d+:\d+: error/);
  });

  it('links and folders in the repository are not followed', async () => {
    mkdirSync(join(repository.folder, 'folder'), { recursive: true });
    writeFileSync(join(repository.folder, 'folder/inside.yaml'), long);
    symlinkSync('gown.yaml', join(repository.folder, 'link.yaml'));
    repository.commit({});
    const link = await gorewright(repository.folder, 'compare', 'link.yaml@HEAD', 'gown.yaml');
    expect(link).toMatchObject({ status: 3, stdout: '' });
    expect(link.stderr).toContain('link.yaml is a link in the repository');
    const folder = await gorewright(repository.folder, 'compare', 'folder@HEAD', 'gown.yaml');
    expect(folder.stderr).toContain('folder is a folder in the repository');
  });

  it('a file that was not there then, and a revision that never was', async () => {
    repository.commit({ 'new.yaml': long });
    const missing = await gorewright(repository.folder, 'compare', 'new.yaml@HEAD~1', 'new.yaml');
    expect(missing).toMatchObject({ status: 3, stdout: '' });
    expect(missing.stderr).toContain('new.yaml is not in the repository at HEAD~1');
    const never = await gorewright(repository.folder, 'compare', 'new.yaml@nowhere', 'new.yaml');
    expect(never).toMatchObject({ status: 3, stdout: '' });
    expect(never.stderr).toContain('there is no revision nowhere');
  });

  it.each([
    '--output=stolen.txt',
    '-p',
    'HEAD@{1}',
    '@{upstream}',
    '@{-1}',
    'HEAD..main',
    'main:gown.yaml',
    ':/pinned',
    'HEAD^{/pinned}',
    'HEAD --output=stolen.txt',
    'HEAD\n--all',
    'HEAD;touch stolen.txt',
    '$(touch stolen.txt)',
    '`touch stolen.txt`',
    '|touch stolen.txt',
    "HEAD' 'x",
    '\u202eDAEH',
    'a'.repeat(300),
    '',
  ])('a revision like %j is refused before git sees it', async (revision) => {
    repository.commit({ 'gown.yaml': long });
    const before = readdirSync(repository.folder);
    const { status, stdout, stderr } = await gorewright(
      repository.folder,
      'compare',
      '--',
      `gown.yaml@${revision}`,
      'gown.yaml',
    );
    expect(status).toBe(2);
    expect(stdout).toBe('');
    expect(stderr).toMatch(/^gorewright: .*revision/);
    expect(stderr.trimEnd()).not.toContain('\n');
    expect(stderr).not.toContain('\u202e');
    expect(readdirSync(repository.folder)).toEqual(before);
  });
});

describe('where git cannot help', () => {
  const folders: string[] = [];
  const path = process.env.PATH;
  afterEach(() => {
    process.env.PATH = path;
    for (const folder of folders.splice(0)) rmSync(folder, { recursive: true });
  });
  const fresh = () => {
    const folder = mkdtempSync(join(tmpdir(), 'gowns-'));
    folders.push(folder);
    writeFileSync(join(folder, 'gown.yaml'), long);
    return folder;
  };

  it('outside every repository', async () => {
    const { status, stderr } = await gorewright(fresh(), 'compare', 'gown.yaml@HEAD', 'gown.yaml');
    expect(status).toBe(3);
    expect(stderr).toContain('gown.yaml lies in no git repository');
    expect(stderr).toContain('git init');
  });

  it('without git on the machine; two files need none', async () => {
    const folder = fresh();
    process.env.PATH = folder;
    const { status, stderr } = await gorewright(folder, 'compare', 'gown.yaml@HEAD', 'gown.yaml');
    expect(status).toBe(3);
    expect(stderr).toContain('git is not installed here');
    expect(await verdicts(folder, 'gown.yaml', 'gown.yaml')).toEqual(KEPT);
  });

  it('in a repository without a commit', async () => {
    const folder = fresh();
    execFileSync('git', ['init', '--quiet'], { cwd: folder });
    const { status, stderr } = await gorewright(folder, 'compare', 'gown.yaml@HEAD', 'gown.yaml');
    expect(status).toBe(3);
    expect(stderr).toContain('there is no revision HEAD');
  });

  it('in a clone whose history was cut short it says how to get the rest', async () => {
    const origin = new Repository();
    origin.commit({ 'gown.yaml': long });
    origin.commit({ 'gown.yaml': short });
    const folder = fresh();
    const clone = join(folder, 'clone');
    execFileSync('git', ['clone', '--quiet', '--depth=1', `file://${origin.folder}`, clone]);
    expect(await verdicts(clone, 'gown.yaml@HEAD', 'gown.yaml')).toEqual(KEPT);
    const { status, stderr } = await gorewright(clone, 'compare', 'gown.yaml@HEAD~1', 'gown.yaml');
    origin.remove();
    expect(status).toBe(3);
    expect(stderr).toContain('git fetch --unshallow');
  });

  it('a name with an @ that is a file is that file, without git', async () => {
    const folder = fresh();
    writeFileSync(join(folder, 'gown.yaml@HEAD'), short);
    expect(await verdicts(folder, 'gown.yaml', 'gown.yaml@HEAD')).toEqual(RAISED);
  });
});
