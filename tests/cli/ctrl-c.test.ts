import { cpSync, existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readPdf } from '../print/read-pdf.ts';
import { freshFolder, gorewright, projectFile, started } from './gorewright.ts';

/** Loaded before the program: says when Ctrl-C is listened for, and hangs for ever where `HANG` says. */
const WATCHED = `
const { once, off } = process;
const hang = (where) => { if (process.env.HANG === where) { process.stderr.write('busy\\n'); for (;;); } };
process.once = function (event, heard) {
  const result = once.call(this, event, heard);
  if (event === 'SIGINT') process.stderr.write('listening\\n');
  return result;
};
process.off = function (event, heard) {
  const result = off.call(this, event, heard);
  if (event === 'SIGINT') hang('after the lays');
  return result;
};
const immediate = setImmediate;
globalThis.setImmediate = (...given) => { const set = immediate(...given); hang('while drawing'); return set; };
`;

/** A draft that looks for lays far longer than any test waits. */
function longDraft(hang = '') {
  const folder = freshFolder();
  cpSync(projectFile('examples/lantern.yaml'), join(folder, 'gown.yaml'));
  writeFileSync(join(folder, 'watched.cjs'), WATCHED);
  const { child, ended } = started(['draft', 'gown.yaml', '-o', 'made', '--effort', 'thorough'], folder, {
    NODE_OPTIONS: `--require ${join(folder, 'watched.cjs')}`,
    HANG: hang,
  });
  const says = (word: string) =>
    new Promise<void>((resolve) =>
      child.stderr!.on('data', (data) => {
        if (String(data).includes(word)) resolve();
      }),
    );
  return { folder, child, ended, says };
}

describe('Ctrl-C while the cloth is planned', () => {
  it('keeps the best so far, marked on every paper, and ends otherwise than done', async () => {
    const { folder, child, ended, says } = longDraft();
    await says('listening');
    child.kill('SIGINT');
    const { status, stderr } = await ended;
    expect(status).toBe(130);
    expect(stderr).toContain('warning[lay-cut-short]');
    const made = (name: string) => new Uint8Array(readFileSync(join(folder, 'made', name)));
    const textOf = (name: string) => new TextDecoder().decode(made(name));
    const report = JSON.parse(textOf('report.json'));
    expect(report.lays.length).toBeGreaterThan(1);
    for (const lay of report.lays) expect(lay.cutShort).toBe(true);
    const drawings = readdirSync(join(folder, 'made')).filter((name) => /^lay-.*\.svg$/.test(name));
    expect(drawings).toHaveLength(report.lays.length);
    for (const name of drawings) expect(textOf(name)).toContain('CUT SHORT');
    expect(report.findings.map(({ code }: { code: string }) => code)).toContain('lay-cut-short');
    for (const name of ['job-sheet-a4.pdf', 'client-a4.pdf'])
      for (const { text } of (await readPdf(made(name))).pages) expect(text).toContain('LAYS CUT SHORT');
    const client = (await readPdf(made('client-a4.pdf'))).pages.map(({ text }) => text).join(' ');
    expect(client).toContain('the price may come out lower');
  });

  it('ends the program at once when it comes again, whatever is being done', async () => {
    const { folder, child, ended, says } = longDraft('after the lays');
    await says('listening');
    child.kill('SIGINT');
    await says('busy');
    child.kill('SIGINT');
    await ended;
    expect(child.signalCode).toBe('SIGINT');
    expect(existsSync(join(folder, 'made'))).toBe(false);
  });

  it('ends the program at once while it is busy drawing and would not hear it', async () => {
    const { folder, child, ended, says } = longDraft('while drawing');
    await says('busy');
    child.kill('SIGINT');
    await ended;
    expect(child.signalCode).toBe('SIGINT');
    expect(readdirSync(folder).sort()).toEqual(['gown.yaml', 'watched.cjs']);
  });
});

describe('a thread that plans the cloth', () => {
  it.each([
    ['ends without a word', 'process.exit(0)'],
    ['ends as if done', ''],
    ['breaks', 'throw new Error("broken")'],
  ])('%s: the program says so, writes nothing and ends with 3', (_what, code) => {
    const folder = freshFolder();
    cpSync(projectFile('examples/lantern.yaml'), join(folder, 'gown.yaml'));
    const copy = join(folder, 'tool');
    for (const part of ['bin', 'dist', 'package.json'])
      cpSync(projectFile(part), join(copy, part), { recursive: true });
    writeFileSync(join(copy, 'dist/lay-worker.cjs'), code);
    const { status, stdout, stderr } = gorewright(
      ['lay', 'gown.yaml'],
      folder,
      {},
      join(copy, 'bin/gorewright.js'),
    );
    expect(stderr).toMatch(/^gorewright: [^\n]+\n$/);
    expect({ status, stdout }).toEqual({ status: 3, stdout: '' });
  });
});
