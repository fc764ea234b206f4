import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { run } from '../../src/cli/main.ts';
import { readPdf } from '../print/read-pdf.ts';
import { freshFolder, gorewright, projectFile, started } from './gorewright.ts';
import { RecordingMachine } from './recording-machine.ts';

const folder = freshFolder();
const template = readFileSync(projectFile('templates/six-gores.yaml'), 'utf8');
const priced = template
  .replace(/^ {2}lining: \{/m, '  lining: {price: 7.90, sold-by: 0.1m, ')
  .replace(/^ {2}shell: *\{/m, '  shell: {price: 24.50, sold-by: 0.5m, ');
writeFileSync(join(folder, 'gown.yaml'), template);
writeFileSync(
  join(folder, 'priced.yaml'),
  `${priced}\ncurrency: EUR\nlabour: {rate: 20, hours: 10, margin: 25%, deposit: 50%}\n`,
);

interface Lay {
  readonly layer: string;
  readonly width: number;
  readonly length: number;
  readonly buy: number;
  readonly cost: number | null;
  readonly supposed?: string;
  readonly ways: readonly { readonly taken: boolean; readonly length?: number }[];
}

describe('lay', () => {
  it('is the same in threads of its own as in one', async () => {
    const alone = await outcome('lay', 'priced.yaml', '--json');
    expect(alone.status).toBe(0);
    expect(gorewright(['lay', 'priced.yaml', '--json'], folder)).toMatchObject({
      status: 0,
      stdout: alone.stdout,
    });
  });

  it('takes the shortest way and buys whole steps', async () => {
    const { lays }: { lays: Lay[] } = JSON.parse((await outcome('lay', 'priced.yaml', '--json')).stdout);
    expect(lays.map(({ layer }) => layer)).toEqual(['lining', 'shell']);
    for (const { length, ways, buy } of lays) {
      const taken = ways.filter((way) => way.taken);
      expect(taken).toHaveLength(1);
      expect(length).toBeCloseTo(Math.min(...ways.flatMap((way) => way.length ?? [])), 3);
      expect(buy).toBeGreaterThanOrEqual(length);
    }
    expect((lays[1]?.buy ?? 0) % 500).toBe(0);
    // 24.50 a metre: money is exact, so a length in half metres costs a whole number of quarters.
    expect(lays[1]?.cost).toBe(24.5 * ((lays[1]?.buy ?? 0) / 1000));
  });

  it('asks what would be, for some layers and several widths', async () => {
    const { stdout } = await outcome(
      'lay',
      'priced.yaml',
      '--layer',
      'shell',
      '--width',
      '150',
      '--width',
      '45in',
      '--one-way',
      '--json',
    );
    const { lays }: { lays: Lay[] } = JSON.parse(stdout);
    expect(lays.map(({ width, supposed }) => [width, supposed])).toEqual([
      [1500, '150 cm wide, all tops one way'],
      [1143, '114.3 cm wide, all tops one way'],
    ]);
    expect(lays[1]?.length).toBeGreaterThan(lays[0]?.length ?? 0);
  });

  it('says in words what to buy and what it costs', async () => {
    const { stdout } = await outcome('lay', 'priced.yaml');
    expect(stdout).toMatch(/^shell, from shell: 140 cm wide, 138 cm of it to use/m);
    expect(stdout).toMatch(/^in all +EUR \d+\.\d\d$/m);
  });

  it('buys one length of a cloth that two layers are cut from, and says what that saves', async () => {
    const text = priced.replace('cloth: lining', 'cloth: shell');
    writeFileSync(join(folder, 'shared.yaml'), `${text}\ncurrency: EUR\n`);
    const { lays } = JSON.parse((await outcome('lay', 'shared.yaml', '--json')).stdout);
    expect(lays).toHaveLength(1);
    const [{ cloth, layers, buy, cost, apart }] = lays;
    expect([cloth, layers]).toEqual(['shell', ['lining', 'shell']]);
    expect(cost).toBe(24.5 * (buy / 1000));
    expect(apart.buy).toBe(apart.layers[0].buy + apart.layers[1].buy);
    expect(buy).toBeLessThanOrEqual(apart.buy);
    const { stdout } = await outcome('lay', 'shared.yaml');
    expect(stdout).toMatch(/^lining and shell, from shell: /m);
    const saved = apart.buy - buy;
    expect(stdout).toMatch(
      saved === 0 ? /buys as much\.$/m : new RegExp(`buys ${saved / 10} cm less\\.$`, 'm'),
    );
    // One row of the table of what to buy, at the one length.
    expect(stdout.split('\n').filter((line) => line.startsWith('shell '))).toEqual([
      expect.stringContaining(`${(buy / 1000).toFixed(2)} m`),
    ]);
  });

  it('keeps the layers of a cloth apart where it is asked to', async () => {
    const text = priced
      .replace('cloth: lining', 'cloth: shell')
      .replace(/^ {2}shell: *\{/m, '  shell: {apart: true, ');
    writeFileSync(join(folder, 'apart.yaml'), `${text}\ncurrency: EUR\n`);
    const { lays } = JSON.parse((await outcome('lay', 'apart.yaml', '--json')).stdout);
    expect(lays.map((lay: { layers: string[] }) => lay.layers)).toEqual([['lining'], ['shell']]);
    expect(lays.every((lay: object) => !('apart' in lay))).toBe(true);
  });

  it('stops at Ctrl-C and keeps the best lays so far', async () => {
    const { child, ended } = started(
      ['lay', projectFile('examples/lantern.yaml'), '--effort', 'thorough', '--json'],
      folder,
    );
    // Thorough takes minutes: whenever this comes, the threads are at work.
    await wait(3000);
    child.kill('SIGINT');
    const { status, stdout } = await ended;
    expect(status).toBe(130);
    expect(JSON.parse(stdout).lays).toHaveLength(3);
  });

  it.each([
    ['a layer that is not there', ['--layer', 'organza']],
    ['a width that is none', ['--width', 'wide']],
    ['a fold that is none', ['--fold', 'diagonal']],
  ])('%s is a wrong command line', async (_what, flags) => {
    expect(await outcome('lay', 'gown.yaml', ...flags)).toMatchObject({ status: 2, stdout: '' });
  });
});

describe('quote', () => {
  it("is the client's: the price and what falls due, never the margin", async () => {
    const { status, stdout } = await outcome('quote', 'priced.yaml');
    expect(status).toBe(0);
    expect(stdout).toMatch(/EUR \d+\.\d\d/);
    expect(stdout).not.toMatch(/margin|overhead|25 %/);
  });

  it('as JSON adds up to the last cent', async () => {
    const { stdout } = await outcome('quote', 'priced.yaml', '--json');
    const { quote } = JSON.parse(stdout);
    const cents = (text: string) => BigInt(text.replace('.', ''));
    const due = quote.stages.reduce(
      (sum: bigint, stage: { amount: string }) => sum + cents(stage.amount),
      0n,
    );
    expect(due).toBe(cents(quote.total));
    expect([quote.withoutPrice, quote.withoutLength]).toEqual([[], []]);
  });

  it("writes the client's pages where asked, and never over another file", async () => {
    const flags = ['quote', 'priced.yaml', '-o', 'quote.pdf', '--paper', 'a4'];
    expect(await ending(flags)).toMatchObject({ status: 0 });
    const { pages } = await readPdf(new Uint8Array(readFileSync(join(folder, 'quote.pdf'))));
    const said = pages.map(({ text }) => text).join(' ');
    // She approves the gown as it hangs, from all four sides.
    for (const view of ['front', 'from her left', 'back', 'from above']) expect(said).toContain(view);
    expect(await ending(flags)).toMatchObject({
      status: 3,
      stderr: expect.stringContaining('is left as it is'),
    });
  });

  it('without prices says so', async () => {
    const { status, stdout } = await outcome('quote', 'gown.yaml');
    expect({ status, stdout }).toEqual({ status: 0, stdout: expect.stringContaining('nothing to quote') });
  });
});

/** Each command line is run once: planning takes its time. */
const outcomes = new Map<string, Promise<{ status: number; stdout: string; stderr: string }>>();

function outcome(...argv: string[]): Promise<{ status: number; stdout: string; stderr: string }> {
  const line = argv.join(' ');
  const ended = outcomes.get(line) ?? ending(argv);
  outcomes.set(line, ended);
  return ended;
}

async function ending(argv: readonly string[]) {
  const machine = new RecordingMachine(folder);
  const status = await run(argv, machine);
  return { status, stdout: machine.stdout, stderr: machine.stderr };
}
