import {
  cpSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { run } from '../../src/cli/main.ts';
import { freshFolder, projectFile } from './gorewright.ts';
import { RecordingMachine } from './recording-machine.ts';

let folder: string;

beforeEach(() => {
  folder = freshFolder();
  for (const show of ['spring', 'autumn']) {
    mkdirSync(join(folder, show));
    const spec = readFileSync(projectFile('templates/full-circle.yaml'), 'utf8');
    writeFileSync(join(folder, show, 'gown.yaml'), spec.replace(/^gown: .*/m, `gown: ${show}`));
  }
});

async function draft(...argv: string[]): Promise<{ status: number; stderr: string }> {
  const machine = new RecordingMachine(folder);
  return { status: await run(['draft', ...argv], machine), stderr: machine.stderr };
}

const gown = () => JSON.parse(readFileSync(join(folder, 'out/gown/report.json'), 'utf8')).gown;

describe('specs of one name in two folders', () => {
  it('do not share a folder unless that is asked for', async () => {
    expect((await draft('spring/gown.yaml')).status).toBe(0);
    const before = readdirSync(join(folder, 'out/gown'));
    expect(await draft('autumn/gown.yaml')).toEqual({
      status: 3,
      stderr:
        'gorewright: out/gown was drafted from spring/gown.yaml, not from autumn/gown.yaml, so nothing was written. Give another folder with --out, or --replace to let this spec have it.\n',
    });
    expect(readdirSync(join(folder, 'out/gown'))).toEqual(before);
    expect(gown()).toBe('spring');
    expect((await draft('autumn/gown.yaml', '-o', 'out/autumn')).status).toBe(0);
    expect((await draft('spring/gown.yaml')).status).toBe(0);
    expect((await draft('autumn/gown.yaml', '--replace')).status).toBe(0);
    expect(gown()).toBe('autumn');
    expect((await draft('spring/gown.yaml')).status).toBe(3);
  });

  it('a spec that was moved, or is reached by a link, keeps its folder', async () => {
    expect((await draft('spring/gown.yaml')).status).toBe(0);
    renameSync(join(folder, 'spring'), join(folder, 'summer'));
    expect((await draft('summer/gown.yaml')).status).toBe(0);
    symlinkSync('summer', join(folder, 'link'));
    expect((await draft('link/gown.yaml')).status).toBe(0);
    // The whole folder somewhere else: what it remembers is told from `out`.
    const moved = freshFolder();
    cpSync(folder, moved, { recursive: true });
    folder = moved;
    expect((await draft('link/gown.yaml')).status).toBe(0);
  });

  it('a folder that is gone is nobody’s, and an index that was spoilt says nothing', async () => {
    expect((await draft('spring/gown.yaml')).status).toBe(0);
    rmSync(join(folder, 'out/gown'), { recursive: true });
    expect((await draft('autumn/gown.yaml')).status).toBe(0);
    for (const spoilt of ['', '[1]', '{"gown": 7}', '{"gown": "\\u0000"}', 'null']) {
      writeFileSync(join(folder, 'out/.gorewright-specs'), spoilt);
      expect((await draft('autumn/gown.yaml')).status).toBe(0);
    }
  });
});
