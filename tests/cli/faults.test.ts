import { createHash } from 'node:crypto';
import {
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  watch,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { beforeAll, describe, expect, it } from 'vitest';
import { LOCK_NAME } from '../../src/cli/output-lock.ts';
import { freshFolder, gorewright, inShell, projectFile, started } from './gorewright.ts';

const folder = freshFolder();
/** Every file that each of two gowns comes to, by name: its hash. */
const whole: Record<'one' | 'two', Record<string, string>> = { one: {}, two: {} };

beforeAll(() => {
  const spec = readFileSync(projectFile('templates/full-circle.yaml'), 'utf8');
  writeFileSync(join(folder, 'one.yaml'), spec);
  writeFileSync(join(folder, 'two.yaml'), spec.replace(/^gown: .*/m, 'gown: Another'));
  for (const gown of ['one', 'two'] as const) {
    expect(gorewright(['draft', `${gown}.yaml`], folder)).toMatchObject({ status: 0 });
    whole[gown] = hashes(join(folder, 'out', gown));
  }
});

describe('the same spec gives the same bytes', () => {
  it('in another folder, language and time zone, under another name', () => {
    const other = join(freshFolder(), 'açaí ☂');
    mkdirSync(other);
    writeFileSync(join(other, 'one.yaml'), readFileSync(join(folder, 'one.yaml')));
    const environment = {
      TZ: 'Pacific/Chatham',
      LANG: 'tr_TR.UTF-8',
      LC_ALL: 'tr_TR.UTF-8',
      HOME: other,
      USER: 'nobody',
    };
    expect(gorewright(['draft', 'one.yaml', '-o', 'there'], other, environment).status).toBe(0);
    expect(hashes(join(other, 'there'))).toEqual(whole.one);
  });

  it('and nothing of the machine is in them', () => {
    for (const file of readdirSync(join(folder, 'out/one'))) {
      const text = readFileSync(join(folder, 'out/one', file), 'latin1');
      expect(text).not.toContain(folder);
      expect(text).not.toMatch(/20[2-9]\d-\d\d-\d\d|D:20\d\d/);
    }
  });
});

it('the PDFs are sound, says a program that did not write them', () => {
  const pdfs = readdirSync(join(folder, 'out/one')).filter((name) => name.endsWith('.pdf'));
  expect(pdfs).not.toEqual([]);
  for (const pdf of pdfs) {
    const { status, stdout, stderr } = inShell(`qpdf --check out/one/${pdf}`, folder);
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(stdout).toContain('No syntax or stream encoding errors found');
  }
});

describe('a disk that fills up', () => {
  it.each([0.1, 0.5, 0.9])(
    'at %d of the largest file: one clear line, status 3, nothing left behind',
    (share) => {
      const largest = Math.max(
        ...readdirSync(join(folder, 'out/one')).map((name) => statSync(join(folder, 'out/one', name)).size),
      );
      const kilobytes = Math.floor((largest * share) / 1024);
      const { status, stdout, stderr } = inShell(
        `mkdir -p small; export -f gorewright
      if unshare -rm mount -t tmpfs none small 2> /dev/null; then
        limited() { unshare -rm bash -c 'mount -t tmpfs -o size=${kilobytes}k none small; '"$1"; }
      else # where no disk may be mounted, files may be at most as large
        limited() { bash -c 'ulimit -f ${kilobytes}; '"$1"; }
      fi
      limited 'mkdir small/out; gorewright draft one.yaml -o small/out; s=$?; ls -A small/out 1>&2; exit $s'`,
        folder,
      );
      expect(stderr).toMatch(/^gorewright: cannot write into small\/out: [^\n]+\n$/);
      expect(stdout).toBe('');
      expect(status).toBe(3);
      rmSync(join(folder, 'small'), { recursive: true });
    },
  );
});

describe('stopped at any moment', () => {
  it('each file is whole, a mixture shows, and the next run puts it right', async () => {
    const out = join(folder, 'killed');
    let caughtWriting = 0;
    for (let round = 0; round < 4 || (caughtWriting === 0 && round < 30); round++) {
      rmSync(out, { recursive: true, force: true });
      cpSync(join(folder, 'out/one'), out, { recursive: true });
      writeFileSync(join(out, 'hers.txt'), 'hers');
      const { child, ended } = started(['draft', 'two.yaml', '-o', 'killed'], folder);
      await firstChange(out);
      await wait(Math.random() * 8);
      child.kill('SIGKILL');
      await ended;
      if (existsSync(join(out, LOCK_NAME))) caughtWriting++;
      expectEachWhole(out);
      expect(gorewright(['draft', 'two.yaml', '-o', 'killed'], folder).status).toBe(0);
      expect(hashes(out)).toEqual({ ...whole.two, 'hers.txt': sha256('hers') });
    }
    expect(caughtWriting).toBeGreaterThan(0);
  });
});

describe('two runs at once into one folder', () => {
  it('one comes after the other, whole', async () => {
    const runs = ['one', 'two', 'one', 'two'].map(
      (gown) => started(['draft', `${gown}.yaml`, '-o', 'both'], folder).ended,
    );
    for (const { status, stderr } of await Promise.all(runs))
      expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect([whole.one, whole.two]).toContainEqual(hashes(join(folder, 'both')));
  });
});

describe('an output folder that cannot be', () => {
  it.each([
    ['a file', 'one.yaml'],
    ['below a file', 'one.yaml/out'],
    ['a folder of the system', '/proc/out'],
    ['a name that is too long', 'x'.repeat(300)],
  ])('%s: one clear line, status 3', (_what, out) => {
    const { status, stdout, stderr } = gorewright(['draft', 'one.yaml', '-o', out], folder);
    expect(stderr).toMatch(/^gorewright: cannot write into [^\n]+\n$/);
    expect(stderr).not.toContain('system says');
    expect({ status, stdout }).toEqual({ status: 3, stdout: '' });
  });

  it('one that may not be written to', () => {
    // To the superuser every folder is open, so the run gives up that power first.
    const { status, stderr } = inShell(
      `mkdir closed; chmod 555 closed; export -f gorewright
      powers=-dac_override,-dac_read_search
      [ "$(id -u)" = 0 ] && lesser="setpriv --bounding-set $powers --inh-caps $powers"
      $lesser bash -c 'gorewright draft one.yaml -o closed/out'`,
      folder,
    );
    expect(stderr).toMatch(/^gorewright: cannot write into closed\/out: you may not\. [^\n]+\n$/);
    expect(status).toBe(3);
  });
});

function sha256(bytes: string | Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}

function hashes(of: string): Record<string, string> {
  return Object.fromEntries(readdirSync(of).map((name) => [name, sha256(readFileSync(join(of, name)))]));
}

/** Resolves when something changes in the folder: the run has begun to write. */
function firstChange(of: string): Promise<void> {
  return new Promise((resolve) => {
    const watcher = watch(of, () => {
      watcher.close();
      resolve();
    });
  });
}

function expectEachWhole(of: string): void {
  const found = hashes(of);
  for (const [name, hash] of Object.entries(found)) {
    if (name === 'hers.txt') expect(hash).toBe(sha256('hers'));
    else if (!name.startsWith('.')) expect([whole.one[name], whole.two[name]], name).toContain(hash);
  }
  const report: { files: Record<string, string> } = JSON.parse(readFileSync(join(of, 'report.json'), 'utf8'));
  const mixed = Object.entries(report.files).some(([name, hash]) => found[name] !== hash);
  // What the tool keeps for itself is put in place beside the outputs, and is none of them.
  const outputs = (files: Record<string, string>) =>
    Object.fromEntries(Object.entries(files).filter(([name]) => !name.startsWith('.')));
  const { 'hers.txt': _hers, ...visible } = outputs(found);
  if (!mixed) expect([whole.one, whole.two].map(outputs)).toContainEqual(visible);
}
