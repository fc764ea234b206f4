import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Resvg } from '@resvg/resvg-js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { run } from '../../src/cli/main.ts';
import { projectFile } from '../cli/gorewright.ts';
import { RecordingMachine } from '../cli/recording-machine.ts';
import { Repository } from './repository.ts';

const LONG = readFileSync(projectFile('templates/round-train.yaml'), 'utf8');
const SHORTER = LONG.replace('on-floor: 60 ', 'on-floor: 58 ');

let repository: Repository;

async function gorewright(...argv: string[]) {
  const machine = new RecordingMachine(repository.folder);
  const status = await run(argv, machine);
  return { status, stdout: machine.stdout, stderr: machine.stderr };
}

interface Sheet {
  readonly label: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const reportIn = (folder: string): { pattern: { sheets: Sheet[] } } =>
  JSON.parse(readFileSync(join(repository.folder, folder, 'report.json'), 'utf8'));

/** The pattern without its words, at two dots a millimetre, by a renderer that is not ours. */
function picture(folder: string) {
  const svg = readFileSync(join(repository.folder, folder, 'pattern.svg'), 'utf8').replace(
    /<text[\s\S]*?<\/text>/g,
    '',
  );
  const [width] = /width="([\d.]+)mm"/.exec(svg)!.slice(1).map(Number);
  const image = new Resvg(svg, {
    fitTo: { mode: 'width', value: Math.round(width! * DOTS) },
    background: 'white',
  }).render();
  return { pixels: image.pixels, width: image.width, height: image.height, scale: image.width / width! };
}

const DOTS = 2;

type Picture = ReturnType<typeof picture>;

function isDark({ pixels, width, height }: Picture, column: number, row: number): boolean {
  if (column < 0 || row < 0 || column >= width || row >= height) return false;
  return pixels[4 * (row * width + column)]! < 200;
}

function isDarkNear(own: Picture, column: number, row: number): boolean {
  for (let c = column - 1; c <= column + 1; c++)
    for (let r = row - 1; r <= row + 1; r++) if (isDark(own, c, r)) return true;
  return false;
}

/** Dots that are black on one picture and far from any line on the other, within a sheet's rectangle. */
function differences(a: Picture, b: Picture, sheet: Sheet): number {
  let count = 0;
  for (let y = sheet.y + 1; y < sheet.y + sheet.height - 1; y += 1 / DOTS) {
    const [rowA, rowB] = [Math.round(y * a.scale), Math.round(y * b.scale)];
    for (let x = sheet.x + 1; x < sheet.x + sheet.width - 1; x += 1 / DOTS) {
      const columnA = Math.round(x * a.scale);
      const columnB = Math.round(x * b.scale);
      if (
        (isDark(a, columnA, rowA) && !isDarkNear(b, columnB, rowB)) ||
        (isDark(b, columnB, rowB) && !isDarkNear(a, columnA, rowA))
      )
        count++;
    }
  }
  return count;
}

describe('draft --since', () => {
  beforeAll(async () => {
    repository = new Repository();
    repository.commit({ 'gown.yaml': LONG });
    expect((await gorewright('draft', 'gown.yaml', '-o', 'printed')).status).toBe(0);
    repository.commit({ 'gown.yaml': SHORTER });
  });
  afterAll(() => repository.remove());

  it('lists the sheets that changed, and every other one shows the same lines as before', async () => {
    const { status, stdout } = await gorewright(
      'draft',
      'gown.yaml',
      '-o',
      'again',
      '--since',
      'HEAD~1',
      '--json',
    );
    expect(status).toBe(0);
    const { since, files } = JSON.parse(stdout);
    expect(files).toContain('pattern-a4-again.pdf');
    const sheets = reportIn('again').pattern.sheets;
    expect(since.count).toBe(sheets.length);
    expect(since.again.length).toBeGreaterThan(0);
    expect(since.again.length).toBeLessThan(sheets.length / 2);
    const [before, after] = [picture('printed'), picture('again')];
    const changed = sheets.filter((sheet) => differences(before, after, sheet) > 0).map(({ label }) => label);
    expect(changed.filter((label) => !since.again.includes(label))).toEqual([]);
    // What is printed again for nothing is a waste of paper; words and arrows may be all that differs on some.
    expect(changed.length).toBeGreaterThan(since.again.length / 2);
  });

  it('the file of changed sheets has those sheets', async () => {
    const { stdout } = await gorewright('draft', 'gown.yaml', '-o', 'again', '--since', 'HEAD~1');
    const [, again] = /Print again, of \d+ sheets, the (\d+) that changed since HEAD~1/.exec(stdout) ?? [];
    const file = join(repository.folder, 'again/pattern-a4-again.pdf');
    const pages = Number(execFileSync('qpdf', ['--show-npages', file], { encoding: 'utf8' }));
    expect(pages).toBe(Number(again));
  });

  it('the pattern laid out so still passes its audit', async () => {
    const { status } = await gorewright('audit', 'again/pattern-a4.pdf', 'gown.yaml');
    expect(status).toBe(0);
  });

  it('says so where nothing changed, and writes no second file', async () => {
    const { stdout } = await gorewright('draft', 'gown.yaml', '-o', 'same', '--since', 'HEAD');
    expect(stdout).toContain('No sheet has changed since HEAD.');
    expect(stdout).not.toContain('again.pdf');
  });

  it('refuses what is no revision, and one that cannot be drafted', async () => {
    expect((await gorewright('draft', 'gown.yaml', '--since', '--output=x')).status).toBe(2);
    repository.commit({ 'gown.yaml': 'gown: nothing yet\n' });
    repository.commit({ 'gown.yaml': SHORTER });
    const { status, stderr } = await gorewright('draft', 'gown.yaml', '-o', 'never', '--since', 'HEAD~1');
    expect(status).toBe(3);
    expect(stderr).toContain('gown.yaml at HEAD~1 cannot be drafted');
  });
});
