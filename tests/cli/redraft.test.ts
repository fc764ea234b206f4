import { createHash } from 'node:crypto';
import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { type DraftAsked, draftedBefore } from '../../src/cli/drafted-before.ts';
import { KEPT_NAME, keptIn } from '../../src/cli/kept-file.ts';
import { findingsToKeep, keptFindings } from '../../src/cli/kept-findings.ts';
import { run } from '../../src/cli/main.ts';
import type { Diagnostic } from '../../src/diagnostics/diagnostic.ts';
import { KeptEntries } from '../../src/kept/kept-entries.ts';
import { gownToLay } from '../../src/lay/plan/lay-to-plan.ts';
import { planLays } from '../../src/lay/plan/plan-lays.ts';
import { draft } from '../../src/pipeline.ts';
import { paperOf, sheetPlan } from '../../src/publish/pattern-sheets.ts';
import { freshFolder, projectFile } from './gorewright.ts';
import { RecordingMachine } from './recording-machine.ts';

const PLAIN = readFileSync(projectFile('templates/full-circle.yaml'), 'utf8');
const folder = freshFolder();

async function drafted(text: string, out: string): Promise<Record<string, string>> {
  writeFileSync(join(folder, 'gown.yaml'), text);
  const machine = new RecordingMachine(folder);
  expect(await run(['draft', 'gown.yaml', '-o', out], machine)).toBe(0);
  const files = readdirSync(join(folder, out)).map((name) => [
    name,
    sha256(readFileSync(join(folder, out, name))),
  ]);
  return Object.fromEntries(files);
}

let fresh: Record<string, string>;

beforeAll(async () => {
  fresh = await drafted(PLAIN, 'fresh');
});

/** A folder as the first draft left it, with its memory changed. */
function remembering(out: string, change: (text: string) => string | Uint8Array): string {
  rmSync(join(folder, out), { recursive: true, force: true });
  cpSync(join(folder, 'fresh'), join(folder, out), { recursive: true });
  const path = join(folder, out, KEPT_NAME);
  writeFileSync(path, change(readFileSync(path, 'utf8')));
  return out;
}

describe('a draft into a folder that was drafted into before', () => {
  const CHANGES: readonly (readonly [string, (text: string) => string])[] = [
    ['nothing', (text) => text],
    ['a note', (text) => text.replace('most of it is on the bias', 'most of it hangs on the bias')],
    ['a price', (text) => text.replace('width: 140', 'width: 140, price: 7.50, sold-by: 0.1m')],
    ['a hem', (text) => text.replace(/hem: 0\.6\b/, 'hem: 1')],
    ['a length', (text) => text.replace('centre-back: 70', 'centre-back: 71')],
    ['a cloth', (text) => text.replace('width: 140', 'width: 112')],
  ];

  it.each(CHANGES)('%s changed: comes to the bytes of a fresh one', async (_what, change) => {
    const text = change(PLAIN);
    const out = remembering('again', (kept) => kept);
    expect(await drafted(text, out)).toEqual(
      await drafted(text, `anew${CHANGES.findIndex(([, one]) => one === change)}`),
    );
  });
});

describe('what is worked out again', () => {
  const { gown } = draft({ name: 'gown.yaml', text: PLAIN });
  const lays = (text: string, kept: KeptEntries) => {
    const drafting = draft({ name: 'gown.yaml', text }).gown!;
    let better = 0;
    const planned = planLays(gownToLay(drafting), { say: String, kept, onProgress: () => better++ });
    return { better, lengths: planned.lays.map(({ length }) => length) };
  };

  it('is no strip of a layer whose pieces and cloth are what they were', () => {
    const first = new KeptEntries();
    const { better, lengths } = lays(PLAIN, first);
    expect(better).toBeGreaterThan(0);
    const again = new KeptEntries(first.entries);
    expect(lays(PLAIN.replace('width: 140', 'width: 140, price: 7.50'), again)).toEqual({
      better: 0,
      lengths,
    });
    expect(again.entries).toEqual(first.entries);
    expect(
      lays(PLAIN.replace('width: 140', 'width: 112'), new KeptEntries(first.entries)).better,
    ).toBeGreaterThan(0);
  });

  it('is no place on a sheet, unless it could not be one', () => {
    const paper = paperOf(gown!);
    const first = new KeptEntries();
    const places = (kept: KeptEntries) =>
      JSON.stringify(sheetPlan(gown!, paper, { kept }).pieces.map(({ cutPiece }) => cutPiece.labelAt));
    const found = places(first);
    const [[key, text] = ['', '']] = first.entries;
    const known = JSON.parse(text) as [number, number, number][];
    const with_ = (value: unknown) => places(new KeptEntries(new Map([[key, JSON.stringify(value)]])));
    expect(places(new KeptEntries(first.entries))).toBe(found);
    for (const wrong of [
      null,
      {},
      [],
      known.slice(1),
      known.map(([turned, x, y]) => [turned, x + 1900, y]),
      known.map(([turned, , y]) => [turned, null, y]),
      known.map(([turned]) => [turned, 1, 1]),
      known.map(([, x, y]) => [45, x, y]),
      known.map(([turned, x, y]) => [turned, -x, y]),
    ])
      expect(with_(wrong)).toBe(found);
  });
});

describe('a draft of the same into a folder that is as it was left', () => {
  const asked: DraftAsked = { sources: [{ name: 'gown.yaml', text: PLAIN }], asked: {} };
  const knownIn = (out: string, draft = asked) =>
    draftedBefore(keptIn(join(folder, out)), draft, join(folder, out));

  it('is known, file by file', () => {
    const known = knownIn(remembering('known', (text) => text));
    expect([...known!.files, KEPT_NAME].sort()).toEqual(Object.keys(fresh).sort());
    expect(known!.files.at(-1)).toBe('report.json');
    expect(known!.diagnostics).toEqual([]);
  });

  it('has its findings again, each at its place, and takes nothing else for one', () => {
    const source = { name: 'gown.yaml', text: PLAIN.replace('gores:', 'notes: Soft.\ngores:') };
    const span = { source, start: 3, end: 9 };
    const finding = { code: 'c', level: 'note', message: 'm', why: 'w', hint: 'h', span } as const;
    const found: Diagnostic[] = [finding, { ...finding, table: [['a', 'b']] }];
    const kept: unknown = JSON.parse(JSON.stringify(findingsToKeep(found, [source])));
    expect(keptFindings(kept, [source])).toEqual(found);
    expect(findingsToKeep(found, [{ ...source }])).toBeUndefined();
    const [first] = kept as [object];
    for (const wrong of [
      null,
      {},
      [null],
      [[]],
      [first, 7],
      ...[
        { level: 'fatal' },
        { message: 4 },
        { why: undefined },
        { table: [7] },
        { table: [[null]] },
        { at: [0, 3] },
        { at: [1, 3, 9] },
        { at: [0, 9, 3] },
        { at: [0, -1, 3] },
        { at: [0, 3, 1e9] },
        { at: [0, 3.5, 9] },
        { at: 'abc' },
      ].map((own) => [{ ...first, ...own }]),
    ])
      expect(keptFindings(wrong, [source])).toBeUndefined();
  });

  it.each([
    ['a space more', { ...asked, sources: [{ name: 'gown.yaml', text: `${PLAIN} ` }] }],
    ['a text that it is based on', { ...asked, sources: [...asked.sources, { name: 'base', text: '' }] }],
    ['another paper', { ...asked, asked: { paper: 'a3' } }],
    ['what nobody has thought of yet', { ...asked, asked: { later: true } }],
  ])('is another with %s', (_what, other) => {
    expect(knownIn('fresh', other)).toBeUndefined();
  });

  const edit = (name: string, change: (bytes: Buffer) => Uint8Array) => (out: string) => {
    const path = join(folder, out, name);
    writeFileSync(path, change(readFileSync(path)));
  };
  const CHANGES: readonly (readonly [string, (out: string) => void])[] = [
    ['a file is gone', (out) => rmSync(join(folder, out, 'chalk.csv'))],
    ['a file was edited', edit('pattern.svg', (bytes) => Buffer.concat([bytes, Buffer.from(' ')]))],
    ['a file is half there', edit('gown.html', (bytes) => bytes.subarray(0, bytes.length / 2))],
    ['the report was edited', edit('report.json', (bytes) => Buffer.from(`${bytes} `))],
    ['a run was stopped there', (out) => writeFileSync(join(folder, out, '.gorewright-writing'), '')],
    [
      'a file is a link',
      (out) => {
        rmSync(join(folder, out, 'chalk.csv'));
        symlinkSync('../fresh/chalk.csv', join(folder, out, 'chalk.csv'));
      },
    ],
    ['its memory is gone', (out) => rmSync(join(folder, out, KEPT_NAME))],
    [
      'a line of its memory is gone',
      edit(KEPT_NAME, (bytes) => Buffer.from(`${bytes}`.replace(/^.* true\n/m, ''))),
    ],
    ['its memory holds more', edit(KEPT_NAME, (bytes) => Buffer.from(`${bytes}x\n`))],
  ];

  it.each(CHANGES)('is not taken where %s', (_what, change) => {
    const out = remembering('changed', (text) => text);
    expect(knownIn(out)).toBeDefined();
    change(out);
    expect(knownIn(out)).toBeUndefined();
  });

  it('is not taken with any byte of its memory changed, or cut off anywhere', () => {
    const out = remembering('spoilt', (text) => text);
    const path = join(folder, out, KEPT_NAME);
    const whole = readFileSync(path);
    fc.assert(
      fc.property(fc.nat(whole.length - 1), fc.integer({ min: 1, max: 255 }), fc.boolean(), (at, by, cut) => {
        const bytes = Buffer.from(cut ? whole.subarray(0, at) : whole);
        if (!cut) bytes[at] = bytes[at]! ^ by;
        writeFileSync(path, bytes);
        expect(knownIn(out)).toBeUndefined();
      }),
      { numRuns: 60 },
    );
    writeFileSync(path, whole);
    expect(knownIn(out)).toBeDefined();
  });

  it('is drafted again where a file is gone, and comes to the same', async () => {
    const out = remembering('changed', (text) => text);
    rmSync(join(folder, out, 'pattern.svg'));
    expect(await drafted(PLAIN, out)).toEqual(fresh);
  });

  it('is refused where a file was edited, as ever', async () => {
    const out = remembering('changed', (text) => text);
    writeFileSync(join(folder, out, 'report.json'), '{}');
    const machine = new RecordingMachine(folder);
    expect(await run(['draft', 'gown.yaml', '-o', out], machine)).not.toBe(0);
    expect(await run(['draft', 'gown.yaml', '-o', out, '--replace'], machine)).toBe(0);
    expect(sha256(readFileSync(join(folder, out, 'report.json')))).toBe(fresh['report.json']);
  });
});

describe('a memory that was tampered with costs time, and nothing else', () => {
  const sealed = (change: (value: unknown) => unknown) => (text: string) =>
    text.replace(/^([0-9a-f]{64}) [0-9a-f]{32} (.*)$/gm, (_line, key: string, json: string) => {
      const own = `${key} ${JSON.stringify(change(JSON.parse(json)))}`;
      return `${key} ${sha256(own).slice(0, 32)} ${own.slice(65)}`;
    });
  const CASES: readonly (readonly [string, (text: string) => string | Uint8Array])[] = [
    ['emptied', () => ''],
    ['cut off', (text) => text.slice(0, text.length / 2)],
    ['a digit changed', (text) => text.replace(/(\d)(\d)\.(\d)/g, '$2$1.$3')],
    ['entries under each other’s names', (text) => swapped(text)],
    ['no text', () => new Uint8Array(5000).map((_, i) => (i * 37) % 256)],
    ['of another version', (text) => text.replace(/^gorewright \S+/, 'gorewright 9.9.9')],
    ['sealed again: everything in one place', sealed((value) => moved(value, (at) => at * 0))],
    ['sealed again: shrunk', sealed((value) => moved(value, (at) => at / 2))],
    ['sealed again: far away', sealed((value) => moved(value, (at) => at + 1e6))],
    ['sealed again: no numbers', sealed(() => 'x')],
    ['sealed again: nothing', sealed(() => [])],
    ['sealed again: a list of nothing', sealed((value) => moved(value, () => null))],
  ];

  it.each(CASES)('%s', async (_what, change) => {
    const out = remembering('spoilt', change);
    expect(await drafted(PLAIN, out)).toEqual(fresh);
  });

  it.each([
    ['a folder', (path: string) => mkdirSync(path)],
    ['a link to a file of hers', (path: string) => symlinkSync('../gown.yaml', path)],
  ])('%s in its place', async (_what, make) => {
    const out = remembering('spoilt', (text) => text);
    rmSync(join(folder, out, KEPT_NAME));
    make(join(folder, out, KEPT_NAME));
    writeFileSync(join(folder, 'gown.yaml'), PLAIN);
    const machine = new RecordingMachine(folder);
    expect(await run(['draft', 'gown.yaml', '-o', out], machine)).toBe(0);
    expect(readFileSync(join(folder, 'gown.yaml'), 'utf8')).toBe(PLAIN);
    for (const [name, hash] of Object.entries(fresh))
      if (name !== KEPT_NAME) expect(sha256(readFileSync(join(folder, out, name)))).toBe(hash);
  });
});

/** The last number of each place, which is how far down it lies. */
function moved(value: unknown, change: (at: number) => unknown): unknown {
  if (!Array.isArray(value)) return value;
  return value.length === 3 && value.every((part) => typeof part === 'number')
    ? [...value.slice(0, 2), change(value[2] as number)]
    : value.map((part) => moved(part, change));
}

function swapped(text: string): string {
  const [head, ...lines] = text.trimEnd().split('\n');
  const keys = lines.map((line) => line.split(' ')[0]);
  const rests: readonly string[] = lines.map((line) => line.slice(65));
  return `${[head, ...keys.map((key, i) => `${key} ${rests[(i + 1) % rests.length]}`)].join('\n')}\n`;
}

function sha256(bytes: string | Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}
