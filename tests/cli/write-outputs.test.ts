import { createHash } from 'node:crypto';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { MachineFault } from '../../src/cli/fault.ts';
import { LOCK_NAME } from '../../src/cli/output-lock.ts';
import { type Outputs, refuseUnwritable, writeOutputs } from '../../src/cli/write-outputs.ts';
import { FailingDisk } from './failing-disk.ts';

const OLD = outputs({ 'pattern.svg': 'old pattern', 'lay-shell.svg': 'old lay', 'chalk.csv': 'same' });
const NEW = outputs({
  'pattern.svg': 'new pattern, longer',
  'lay-lining.svg': 'new lay',
  'chalk.csv': 'same',
});

describe('outputs are written whole, the report last', () => {
  it('holds the hash of every other file', () => {
    const folder = freshFolder();
    expect(writeOutputs(folder, OLD)).toEqual(['pattern.svg', 'lay-shell.svg', 'chalk.csv', 'report.json']);
    expect(readdirSync(folder).sort()).toEqual(['chalk.csv', 'lay-shell.svg', 'pattern.svg', 'report.json']);
    const report = JSON.parse(readFileSync(join(folder, 'report.json'), 'utf8'));
    expect(report.gown).toBe('Test');
    for (const [name, hash] of Object.entries(report.files))
      expect(sha256(readFileSync(join(folder, name)))).toBe(hash);
  });

  it('removes an earlier output that is not made any more, unless it was changed', () => {
    const folder = freshFolder();
    writeOutputs(folder, OLD);
    writeOutputs(folder, NEW);
    expect(readdirSync(folder).sort()).toEqual(['chalk.csv', 'lay-lining.svg', 'pattern.svg', 'report.json']);
    writeFileSync(join(folder, 'lay-lining.svg'), 'with my own marks');
    writeOutputs(folder, OLD);
    expect(readFileSync(join(folder, 'lay-lining.svg'), 'utf8')).toBe('with my own marks');
  });

  it('writes the same bytes twice', () => {
    const [one, two] = [freshFolder(), freshFolder()];
    writeOutputs(one, NEW);
    writeOutputs(two, NEW);
    for (const name of readdirSync(one))
      expect(readFileSync(join(one, name))).toEqual(readFileSync(join(two, name)));
  });
});

describe("nothing of the maker's is touched", () => {
  it.each([
    ['a file of the same name that this tool did not write', 'pattern.svg', 'was not written by this tool'],
    ['a report of another program', 'report.json', 'was not written by this tool'],
  ])('%s', (_what, name, why) => {
    const folder = freshFolder();
    writeFileSync(join(folder, name), 'my own');
    expect(() => writeOutputs(folder, OLD)).toThrow(why);
    expect(readdirSync(folder)).toEqual([name]);
    expect(readFileSync(join(folder, name), 'utf8')).toBe('my own');
    writeOutputs(folder, OLD, { replace: true });
    expect(contentOf(folder, 'pattern.svg')).toBe('old pattern');
  });

  it('an output that she marked by hand', () => {
    const folder = freshFolder();
    writeOutputs(folder, OLD);
    writeFileSync(join(folder, 'pattern.svg'), 'with my own marks');
    expect(() => writeOutputs(folder, NEW)).toThrow('was changed since it was written');
    expect(contentOf(folder, 'pattern.svg')).toBe('with my own marks');
    expect(contentOf(folder, 'lay-shell.svg')).toBe('old lay');
  });

  it.each([
    ['a note of hers in it', (text: string) => text.replace('"Test"', '"Test, hem too long"')],
    ['a space more', (text: string) => text.replace('{', '{ ')],
    ['its seal taken out', (text: string) => text.replace(/,\s*"seal": "[0-9a-f]+"/, '')],
    [
      'a hash that she changed',
      (text: string) => text.replace(/"pattern.svg": ".{8}/, '"pattern.svg": "00000000'),
    ],
  ])('a report that was changed by hand: %s', (_what, change) => {
    const folder = freshFolder();
    writeOutputs(folder, OLD);
    const changed = change(contentOf(folder, 'report.json'));
    expect(changed).not.toBe(contentOf(folder, 'report.json'));
    writeFileSync(join(folder, 'report.json'), changed);
    for (const next of [OLD, NEW])
      expect(() => writeOutputs(folder, next)).toThrow('report.json was changed since it was written');
    expect(contentOf(folder, 'report.json')).toBe(changed);
    expect(contentOf(folder, 'pattern.svg')).toBe('old pattern');
    writeOutputs(folder, NEW, { replace: true });
    expect(contentOf(folder, 'pattern.svg')).toBe('new pattern, longer');
  });

  it('other files, folders and links beside the outputs', () => {
    const folder = freshFolder();
    mkdirSync(join(folder, 'photos'));
    writeFileSync(join(folder, 'notes.txt'), 'pins: 40');
    writeFileSync(join(folder, '.gorewright-mine'), 'hers too');
    symlinkSync('notes.txt', join(folder, 'link'));
    writeOutputs(folder, OLD);
    writeOutputs(folder, NEW);
    expect(contentOf(folder, 'notes.txt')).toBe('pins: 40');
    expect(contentOf(folder, '.gorewright-mine')).toBe('hers too');
    expect(existsSync(join(folder, 'photos'))).toBe(true);
    expect(contentOf(folder, 'link')).toBe('pins: 40');
  });

  it('a file outside that a forged report names', () => {
    const folder = freshFolder();
    const inside = join(folder, 'out');
    writeOutputs(inside, OLD);
    writeFileSync(join(folder, 'spec.yaml'), 'precious');
    const report = JSON.parse(contentOf(inside, 'report.json'));
    report.files['../spec.yaml'] = sha256('precious');
    // Sealed again, as whoever reads this code can.
    const { seal: _, ...rest } = report;
    const text = (value: object) => `${JSON.stringify(value, null, 2)}\n`;
    writeFileSync(join(inside, 'report.json'), text({ ...rest, seal: sha256(text(rest)) }));
    writeOutputs(inside, NEW);
    expect(contentOf(folder, 'spec.yaml')).toBe('precious');
  });

  it('a folder or a link in the place of an output', () => {
    const folder = freshFolder();
    mkdirSync(join(folder, 'pattern.svg'));
    expect(() => writeOutputs(folder, OLD)).toThrow('is a folder');
    const other = freshFolder();
    writeFileSync(join(other, 'hers.svg'), 'hers');
    symlinkSync('hers.svg', join(other, 'pattern.svg'));
    expect(() => writeOutputs(other, OLD)).toThrow('is a link');
    expect(contentOf(other, 'hers.svg')).toBe('hers');
  });
});

describe('a folder that cannot be written', () => {
  it('leads through a file', () => {
    const folder = freshFolder();
    writeFileSync(join(folder, 'file'), '');
    expect(() => writeOutputs(join(folder, 'file', 'out'), OLD)).toThrow(/cannot write into .*file/);
    expect(() => writeOutputs(join(folder, 'file'), OLD)).toThrow(MachineFault);
    expect(readFileSync(join(folder, 'file'), 'utf8')).toBe('');
  });

  it('leaves no empty folders behind', () => {
    const folder = freshFolder();
    const tooLong = outputs({ [`${'x'.repeat(40)}.svg`]: 'x' });
    expect(() => writeOutputs(join(folder, 'a', 'b', 'c'.repeat(256)), tooLong)).toThrow(
      'the name is too long',
    );
    expect(readdirSync(folder)).toEqual([]);
  });
});

describe('a folder is refused before anything is planned', () => {
  it('where its path leads through a file, however deep', () => {
    const folder = freshFolder();
    writeFileSync(join(folder, 'notes'), 'hers');
    for (const path of ['notes', 'notes/out', 'notes/a/b/c'])
      expect(() => refuseUnwritable(join(folder, path), path)).toThrow(
        new RegExp(`^cannot write into ${path}: `),
      );
  });

  it('and not where it is there, or can be made; nothing is made yet', () => {
    const folder = freshFolder();
    refuseUnwritable(folder, 'out');
    refuseUnwritable(join(folder, 'a/b/c'), 'a/b/c');
    expect(readdirSync(folder)).toEqual([]);
  });
});

describe('a disk that fails at any step', () => {
  const earlier = writtenTo(new FailingDisk(), OLD).files;
  const steps = writtenTo(new FailingDisk(earlier), NEW).count;
  const everyStep = Array.from({ length: steps }, (_, step) => step + 1);

  it('has a good number of steps', () => expect(steps).toBeGreaterThan(20));

  it.each(['full', 'killed'] as const)(
    '%s: each earlier output is whole or replaced whole, a mixture shows',
    (how) => {
      for (const step of everyStep) {
        const disk = new FailingDisk([...earlier, ['/out/hers.txt', Buffer.from('hers')]], step, how);
        try {
          writtenTo(disk, NEW);
        } catch (error) {
          expect(error).toBeInstanceOf(Error);
        }
        expectWhole(disk, step);
        const after = new FailingDisk(disk.files);
        writtenTo(after, NEW);
        expect(visible(after), `after step ${step}`).toEqual({
          'pattern.svg': 'new pattern, longer',
          'lay-lining.svg': 'new lay',
          'chalk.csv': 'same',
          'hers.txt': 'hers',
          'report.json': expect.any(String),
        });
        expect(hidden(after), `after step ${step}`).toEqual([]);
      }
    },
  );

  it('a full disk is one clear line and leaves nothing of its own', () => {
    for (const step of everyStep) {
      const disk = new FailingDisk(earlier, step, 'full');
      expect(() => writtenTo(disk, NEW), `step ${step}`).toThrow(
        /^cannot write into \/out: the disk is full\. /,
      );
      expect(hidden(disk).filter((name) => name !== LOCK_NAME)).toEqual([]);
    }
  });
});

describe('two runs at once', () => {
  it('goes on where a stopped run left its lock', () => {
    const folder = freshFolder();
    mkdirSync(folder, { recursive: true });
    writeFileSync(
      join(folder, LOCK_NAME),
      JSON.stringify({ process: process.pid, temporary: [], files: {} }),
    );
    writeOutputs(folder, OLD);
    expect(existsSync(join(folder, LOCK_NAME))).toBe(false);
  });

  it('waits for a run that is alive, then says so', () => {
    const folder = freshFolder();
    // The parent of this process is alive for as long as the test is.
    writeFileSync(
      join(folder, LOCK_NAME),
      JSON.stringify({ process: process.ppid, temporary: [], files: {} }),
    );
    expect(() => writeOutputs(folder, OLD, { patience: 60 })).toThrow('another run is writing');
    expect(readdirSync(folder)).toEqual([LOCK_NAME]);
  });
});

function outputs(files: Record<string, string>): Outputs {
  return { files: new Map(Object.entries(files)), report: { gown: 'Test' } };
}

function freshFolder(): string {
  return mkdtempSync(join(tmpdir(), 'gorewright-'));
}

function contentOf(folder: string, name: string): string {
  return readFileSync(join(folder, name), 'utf8');
}

function sha256(bytes: string | Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}

function writtenTo(disk: FailingDisk, what: Outputs): FailingDisk {
  writeOutputs('/out', what, { disk });
  return disk;
}

function visible(disk: FailingDisk): Record<string, string> {
  const names = [...disk.files.keys()]
    .map((path) => path.slice('/out/'.length))
    .filter((name) => !name.startsWith('.'));
  return Object.fromEntries(
    names.map((name) => [name, Buffer.from(disk.files.get(`/out/${name}`) ?? []).toString()]),
  );
}

function hidden(disk: FailingDisk): string[] {
  return [...disk.files.keys()]
    .map((path) => path.slice('/out/'.length))
    .filter((name) => name.startsWith('.'));
}

function expectWhole(disk: FailingDisk, step: number): void {
  const { 'report.json': report = '{}', ...files } = visible(disk);
  expect(files['hers.txt']).toBe('hers');
  const old: Record<string, unknown> = { ...Object.fromEntries(OLD.files), 'hers.txt': 'hers' };
  const made: Record<string, unknown> = Object.fromEntries(NEW.files);
  for (const [name, text] of Object.entries(files))
    expect([old[name], made[name]], `${name}, step ${step}`).toContain(text);
  // The report is whole, and is the new one only when all that it lists is in place.
  const listed: Record<string, string> = JSON.parse(report).files;
  if (!('lay-lining.svg' in listed)) return;
  for (const [name, hash] of Object.entries(listed))
    expect(sha256(files[name] ?? ''), `${name}, step ${step}`).toBe(hash);
}
