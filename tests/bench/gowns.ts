/**
 * `npm run bench`: how long each stage takes for gowns of 5 to 48 gores in 1 to 16 layers, as multiples of a bare
 * `node -e 0` measured in the same run, so that figures of two machines can be compared.
 */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { cutPieces } from '../../src/allowances/cut-pieces.ts';
import { fontBytes } from '../../src/cli/package-files.ts';
import { textTable } from '../../src/cli/text-table.ts';
import { draftLayers } from '../../src/draft/draft-layers.ts';
import { gownOfSpec } from '../../src/gown/gown-of-spec.ts';
import { readSpec } from '../../src/gown-file/read-spec.ts';
import { gownToLay } from '../../src/lay/plan/lay-to-plan.ts';
import { planLays } from '../../src/lay/plan/plan-lays.ts';
import { type DraftedGown, draft } from '../../src/pipeline.ts';
import { patternFiles } from '../../src/publish/pattern-files.ts';
import { paperOf, sheetPlan } from '../../src/publish/pattern-sheets.ts';
import { measureGown } from '../../src/truing/measure-gown.ts';
import { trueGown } from '../../src/truing/true-gown.ts';
import { median, timed } from './bare-start.ts';
import { benchSpec } from './bench-spec.ts';
import { redrafts } from './redrafts.ts';

const GORES = [5, 9, 24, 48];
const LAYERS = [1, 4, 16];
const RUNS = 5;
const COLD_RUNS = 9;
const BIN = join(process.cwd(), 'bin/gorewright.js');

const bare = timed(['-e', '0'], COLD_RUNS).milliseconds;
const folder = mkdtempSync(join(tmpdir(), 'gorewright-bench-'));
process.stdout.write(
  `A bare start, node -e 0: ${bare.toFixed(0)} ms. All other figures are multiples of it.\n\n`,
);
coldStarts();
redraftTable();
const rows: StageTimes[] = [];
for (const layers of LAYERS) for (const gores of GORES) rows.push(await stageTimes(gores, layers));
stageTable(rows);
growthTable(rows);
rmSync(folder, { recursive: true });

/** Whole processes of the built command line. */
function coldStarts(): void {
  const example = join(process.cwd(), 'examples/lantern.yaml');
  const commands: readonly (readonly [string, readonly string[]])[] = [
    ['--help', ['--help']],
    ['schema', ['schema']],
    ['check, the example', ['check', example]],
    ['check, the most pieces', ['check', mostPieces()]],
  ];
  const line = (name: string, argv: readonly string[], runs: number) => {
    const { milliseconds, megabytes } = timed([BIN, ...argv], runs);
    return [name, times(milliseconds), `${milliseconds.toFixed(0)} ms`, `${megabytes.toFixed(0)} MB`];
  };
  const lines = [
    ...commands.map(([name, argv]) => line(name, argv, COLD_RUNS)),
    line('draft, the most pieces', ['draft', mostPieces(), '-o', join(folder, 'most')], 1),
  ];
  process.stdout.write(`${textTable([['a cold start', 'ratio', 'time', 'memory peak'], ...lines])}\n`);
}

/**
 * As many pieces as are drawn at most, `src/publish/too-large.ts`: 25 gores a half in 40 layers. In a file as long as one
 * that is read may be: a note fills it up.
 */
function mostPieces(): string {
  const file = join(folder, 'most.yaml');
  const spec = benchSpec(50, 40);
  const line = `${'words and words '.repeat(6).trimEnd()}\n  `;
  writeFileSync(
    file,
    `${spec}notes: |\n  ${line.repeat(Math.floor((LONGEST_SPEC - spec.length) / line.length) - 1)}\n`,
  );
  return file;
}

/** Bytes. */
const LONGEST_SPEC = 100_000;

/** What one changed line costs, beside the first draft of what it was changed to. */
function redraftTable(): void {
  const lines = redrafts(BIN, join(process.cwd(), 'examples/lantern.yaml'), folder).map(
    ({ name, first, again }) => [
      name,
      times(first.milliseconds),
      times(again.milliseconds),
      (again.milliseconds / first.milliseconds).toFixed(2),
      `${Math.max(first.megabytes, again.megabytes).toFixed(0)} MB`,
    ],
  );
  const heads = ['the example drafted again', 'the first time', 'again', 'share', 'memory peak'];
  process.stdout.write(`${textTable([heads, ...lines])}\n`);
}

interface StageTimes {
  readonly gores: number;
  readonly layers: number;
  readonly pieces: number;
  readonly sheets: number;
  /** Milliseconds by stage. */
  readonly stages: Readonly<Record<string, number>>;
}

/** Each stage on its own, warm: medians of a few runs. */
async function stageTimes(gores: number, layers: number): Promise<StageTimes> {
  const source = { name: 'bench.yaml', text: benchSpec(gores, layers) };
  const spec = readSpec(source).spec;
  const { gown, diagnostics } = draft(source);
  if (spec === undefined || gown === undefined)
    throw new Error(JSON.stringify(diagnostics.map(({ message }) => message)));
  const one = gownToLay({ ...gown, layers: gown.layers.slice(0, 1) });
  const planned = await medianTime(() => sheetPlan(gown, paperOf(gown, 'a4')));
  let sheets = 0;
  const drawn = await medianTime(async () => {
    sheets = (await patternFiles(gown, { paper: 'a4', font: fontBytes })).report.sheets.length;
  });
  const stages = {
    read: await medianTime(() => readSpec(source)),
    draft: await medianTime(() => {
      const asked = gownOfSpec(spec);
      return draftLayers(asked, asked.layers);
    }),
    true: await medianTime(() => trued(gown)),
    allow: await medianTime(() => cutPieces(gown.gown, gown.drafts.layers)),
    'lay, one layer': await medianTime(() => planLays(one, { say: String }), 1),
    sheets: planned,
    render: drawn - planned,
  };
  process.stderr.write(`${gores} gores, ${layers} layers\n`);
  return { gores, layers, pieces: gown.cut.pieces.length, sheets, stages };
}

function trued({ gown, drafts }: DraftedGown): void {
  trueGown(gown, drafts.gown, measureGown(drafts.gown));
}

async function medianTime(work: () => unknown, runs = RUNS): Promise<number> {
  const all: number[] = [];
  for (let run = 0; run < runs; run++) {
    const began = performance.now();
    await work();
    all.push(performance.now() - began);
  }
  return median(all);
}

function stageTable(all: readonly StageTimes[]): void {
  const names = Object.keys(all[0]?.stages ?? {});
  const lines = all.map(({ gores, layers, pieces, sheets, stages }) => {
    const sum = Object.values(stages).reduce((a, b) => a + b, 0);
    return [
      `${gores} gores, ${layers} layer${layers === 1 ? '' : 's'}`,
      String(pieces),
      ...names.map((name) => times(stages[name] ?? Number.NaN)),
      times(sum),
      String(sheets),
      (sheets / (((stages.sheets ?? Number.NaN) + (stages.render ?? Number.NaN)) / 1000)).toFixed(0),
      memoryPeak(gores, layers),
    ];
  });
  const heads = ['gown', 'pieces', ...names, 'in all', 'sheets', 'sheets/s', 'memory peak'];
  process.stdout.write(`${textTable([heads, ...lines])}\n`);
}

/** Of a whole draft, lays and all; the largest gowns are left out, as planning their cloth takes minutes. */
function memoryPeak(gores: number, layers: number): string {
  if (gores * layers > 100) return '-';
  const path = join(folder, 'bench.yaml');
  writeFileSync(path, benchSpec(gores, layers));
  const { megabytes } = timed([BIN, 'draft', path, '-o', join(folder, `out-${gores}-${layers}`)], 1);
  return `${megabytes.toFixed(0)} MB`;
}

/** What twice the gores, and twice the layers, multiply each stage's time by; 2 is linear. */
function growthTable(all: readonly StageTimes[]): void {
  const names = Object.keys(all[0]?.stages ?? {});
  const at = (gores: number, layers: number) =>
    all.find((row) => row.gores === gores && row.layers === layers);
  const growth = (from: StageTimes | undefined, to: StageTimes | undefined, doublings: number) =>
    names.map((name) =>
      (((to?.stages[name] ?? Number.NaN) / (from?.stages[name] ?? Number.NaN)) ** (1 / doublings)).toFixed(2),
    );
  const lines = [
    ['gores, 24 to 48 in 4 layers', ...growth(at(24, 4), at(48, 4), 1)],
    ['layers, 1 to 4 with 9 gores', ...growth(at(9, 1), at(9, 4), 2)],
    ['layers, 4 to 16 with 9 gores', ...growth(at(9, 4), at(9, 16), 2)],
  ];
  process.stdout.write(textTable([['growth for each doubling of', ...names], ...lines]));
}

function times(milliseconds: number): string {
  return `${(milliseconds / bare).toFixed(2)}×`;
}
