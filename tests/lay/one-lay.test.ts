import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { layWords } from '../../src/diagnostics/lay-words.ts';
import type { CutPiece } from '../../src/draft/piece.ts';
import { layNames } from '../../src/lay/plan/lay-names.ts';
import type { LayPlan } from '../../src/lay/plan/lay-plan.ts';
import { gownToLay } from '../../src/lay/plan/lay-to-plan.ts';
import { planLays } from '../../src/lay/plan/plan-lays.ts';
import { draft } from '../../src/pipeline.ts';
import type { Mark } from '../../src/print/drawing.ts';
import { layFigures, layFiles } from '../../src/publish/lay-files.ts';
import { layReport } from '../../src/report/lay-report.ts';
import { layRemarks } from '../../src/words/lay-remarks.ts';
import { type Tree, threeGores } from '../outside/plain-gown.ts';
import { faultsOf, flatPiece, laid, laysOf, pairsMirror, ringOf } from './laid.ts';
import { rectangle } from './polygons.ts';

const example = (name: string) =>
  readFileSync(join(import.meta.dirname, `../../examples/${name}.yaml`), 'utf8');
const LAYERS = ['lining', 'shell'];

describe('rectangles of two layers whose best lay is known', () => {
  // Two fill 1000 of 1400 and leave 400; the other layer's two fill just that.
  const shell = ofLayers(flatPiece('front', rectangle(500, 900), 'pair'), ['shell']);
  const lining = ofLayers(flatPiece('front', rectangle(400, 450), 'pair'), ['lining']);

  it('one layer fills what the other leaves spare', () => {
    const { plan } = laid([shell, lining], { width: 1400, soldBy: 100 }, 3e5, LAYERS);
    expect(plan!.length).toBeCloseTo(900, 1);
    expect(plan!.used).toBeCloseTo(1, 3);
    expect(countsOf(plan!)).toEqual({ 'lining front': 2, 'shell front': 2 });
    expect(faultsOf(plan!)).toEqual([]);
  });

  it('what it saves is said: 450 and 900 apart, 900 together', () => {
    const { plan } = laid([shell, lining], { width: 1400, soldBy: 100 }, 3e5, LAYERS);
    expect(plan!.apart!.layers.map(({ layer, length, buy }) => [layer, Math.round(length), buy])).toEqual([
      ['lining', 450, 500],
      ['shell', 900, 900],
    ]);
    expect([Math.round(plan!.apart!.length), plan!.apart!.buy, plan!.buy]).toEqual([1350, 1400, 900]);
    expect(layRemarks(plan!, 'mm')[0]).toBe(
      'Laid apart: lining 450 mm and shell 900 mm, 1400 mm to buy; this lay buys 500 mm less.',
    );
  });

  it('nothing is said to be saved where nothing is', () => {
    const all = [shell, ofLayers(shell, ['lining'])];
    const { plan } = laid(all, { width: 1000, soldBy: 100 }, 3e5, LAYERS);
    expect([Math.round(plan!.length), plan!.apart!.buy, plan!.buy]).toEqual([1800, 1800, 1800]);
    expect(layRemarks(plan!, 'mm')[0]).toBe(
      'Laid apart: lining 900 mm and shell 900 mm, 1800 mm to buy; this lay buys as much.',
    );
  });

  it('a length of one layer alone is compared with nothing', () => {
    const { plan } = laid([shell], { width: 1400 }, 3e5, ['shell']);
    expect(plan!.apart).toBeUndefined();
    expect(layRemarks(plan!, 'cm').join()).not.toMatch(/apart/);
  });

  it('a piece that two layers have alike is cut for both', () => {
    const both = ofLayers(flatPiece('back', rectangle(350, 600), 'pair'), LAYERS);
    const { plan } = laid([both], { width: 1400 }, 3e5, LAYERS);
    expect(countsOf(plan!)).toEqual({ 'lining back': 2, 'shell back': 2 });
    expect(plan!.length).toBeCloseTo(600, 1);
    for (const layer of LAYERS) {
      const [a, b] = plan!.pieces.filter((piece) => piece.layer === layer);
      expect([a!.mirrored, b!.mirrored].sort()).toEqual([false, true]);
      expect([a!.copy, b!.copy].sort()).toEqual([1, 2]);
    }
  });

  it('is cut layer by layer, each down the cloth', () => {
    const { plan } = laid([shell, lining], { width: 1400 }, 3e5, LAYERS);
    expect(plan!.pieces.map(({ number }) => number)).toEqual([1, 2, 3, 4]);
    expect(plan!.pieces.map(({ layer }) => layer)).toEqual(['lining', 'lining', 'shell', 'shell']);
    const tops = plan!.pieces.slice(0, 2).map((piece) => Math.min(...ringOf(piece).map(({ y }) => y)));
    expect(tops[0]!).toBeLessThanOrEqual(tops[1]!);
  });

  it('a layer too wide for the cloth lies across it, and the other along it', () => {
    const wide = ofLayers(flatPiece('tier', rectangle(1500, 300), 'single'), ['shell']);
    const { plan, diagnostics } = laid([lining, wide], { width: 1000 }, 3e5, LAYERS);
    expect(diagnostics.map(({ code }) => code)).toEqual(['railroaded-to-fit']);
    expect(plan!.railroaded).toEqual(['shell']);
    expect(layRemarks(plan!, 'cm')).toContain('The grain of the shell runs across this cloth.');
    expect(plan!.pieces.map(({ layer, turned }) => `${layer} ${turned % 180}`).sort()).toEqual([
      'lining 0',
      'lining 0',
      'shell 90',
    ]);
    expect(faultsOf(plan!)).toEqual([]);
  });

  it('a layer cut in parts takes its own allowance at the join, and says whose join it is', () => {
    const wide = ofLayers(flatPiece('back', rectangle(1200, 600), 'single'), ['shell']);
    const { plan } = laid([lining, wide], { width: 1000, oneWay: true }, 3e5, LAYERS);
    expect(plan!.joins).toEqual([{ gore: 'back', layer: 'shell', parts: 2 }]);
    expect(layRemarks(plan!, 'cm').join(' ')).toMatch(/back of the shell is cut in 2 parts/);
    expect(countsOf(plan!)).toEqual({ 'lining front': 2, 'shell back': 2 });
    expect(faultsOf(plan!)).toEqual([]);
  });

  it('no lay at all where one layer cannot be cut from the cloth: half of it would be bought for nothing', () => {
    const wide = ofLayers(flatPiece('back', rectangle(300, 300), 'single'), ['shell']);
    const { plan, diagnostics } = laid([lining, wide], { width: 80, oneWay: true }, 3e5, LAYERS);
    expect(plan).toBeUndefined();
    expect(diagnostics.some(({ level: severity }) => severity === 'error')).toBe(true);
  });
});

const twoOfOne = example('lantern').replace('cloth: cupro', 'cloth: crepe');

describe('a gown with two layers of one cloth', () => {
  const folds = ['any', 'single', 'lengthwise', 'crosswise'] as const;
  const plans = [false, true].flatMap((oneWay) =>
    folds.map((fold) => ({ oneWay, fold, plan: stopped(twoOfOne, { oneWay, fold }) })),
  );

  it.each(plans)(
    '$fold, one-way $oneWay: every copy of both once, nothing overlapping or outside',
    ({ plan, oneWay }) => {
      const each = { front: 1, 'side-front': 2, side: 2, 'side-back': 2, back: 2 };
      const expected = LAYERS.flatMap((layer) =>
        Object.entries(each).map(([gore, n]) => [`${layer} ${gore}`, n]),
      );
      expect(countsOf(plan)).toEqual(Object.fromEntries(expected));
      expect(faultsOf(plan)).toEqual([]);
      if (oneWay) expect(plan.pieces.every(({ turned }) => turned === 0)).toBe(true);
      for (const layer of LAYERS)
        for (const gore of ['side-front', 'side', 'side-back', 'back']) {
          const [a, b] = plan.pieces.filter((piece) => piece.layer === layer && piece.gore === gore);
          expect([a!.mirrored, b!.mirrored].sort()).toEqual([false, true]);
          expect(pairsMirror(a!, b!), `${layer} ${gore}`).toBe(true);
        }
    },
  );

  it.each(plans)(
    '$fold, one-way $oneWay: never longer than its layers end to end, however short the search',
    ({ plan, fold }) => {
      expect(plan.length).toBeLessThanOrEqual(plan.apart!.length + 1e-6);
      expect(plan.length).toBeCloseTo(plan.sections.at(-1)!.to, 6);
      if (fold === 'single' || fold === 'lengthwise')
        expect(plan.sections.every((section) => section.fold === fold)).toBe(true);
      if (fold === 'crosswise') expect(plan.sections.some((section) => section.fold === fold)).toBe(true);
    },
  );

  it.each(plans)(
    '$fold, one-way $oneWay: all ways are compared, and end to end is one of them',
    ({ plan }) => {
      const names = plan.ways.map(({ folds }) => layWords(folds));
      expect(names).toContain('single throughout');
      expect(names).toContain('folded lengthwise throughout');
      // At the same gore in both layers: five gores can change their fold at four places.
      expect(names.filter((name) => /^front.* folded lengthwise, then .* single$/.test(name))).toHaveLength(
        4,
      );
      const endToEnd = plan.ways.find(({ folds }) => folds === 'layers-end-to-end')!;
      expect(endToEnd.length).toBeCloseTo(plan.apart!.length, 6);
      expect(plan.ways.filter(({ taken }) => taken)).toHaveLength(1);
    },
  );

  it('is shorter than the two lays that it had', () => {
    const [plan] = laysOf(twoOfOne, {}, LAYERS).lays;
    const alone = LAYERS.map((layer) => laysOf(twoOfOne, {}, [layer]).lays[0]!);
    expect(plan!.length).toBeLessThan(alone[0]!.length + alone[1]!.length);
    // What it is compared with is what each layer would take with nothing else cut from its cloth, not a lay that was
    // looked for less.
    for (const [i, { length }] of plan!.apart!.layers.entries())
      expect(length).toBeCloseTo(alone[i]!.length, 6);
  });

  it('kept apart, each has a lay of its own, as before', () => {
    const text = twoOfOne.replace('\n  crepe:\n', '\n  crepe:\n    apart: true\n');
    const { gown } = draft({ name: 'gown.yaml', text });
    const lays = gownToLay(gown!).lays.filter(({ cloth }) => cloth === 'crepe');
    expect(lays.map(({ name, layers }) => [name, layers.map((layer) => layer.name)])).toEqual([
      ['crepe-lining', ['lining']],
      ['crepe-shell', ['shell']],
    ]);
  });
});

describe('Puffin’s velvet: the skirt’s sides and back, and the train that comes off', () => {
  const { gown } = draft({ name: 'puffin.yaml', text: example('puffin') });
  const { lays } = planLays(gownToLay(gown!), { say: (mm) => `${(mm / 25.4).toFixed(2)} in` });
  const velvet = lays.find(({ cloth }) => cloth === 'velvet')!;
  const EIGHTH = 914.4 / 8;

  it('is one lay, bought as one length in eighths of a yard', () => {
    expect(lays.map(({ cloth }) => cloth)).toEqual(['sateen', 'velvet', 'brocade', 'chiffon', 'net']);
    expect(velvet.layers).toEqual(['velvet', 'train-velvet']);
    expect(velvet.buy).toBeCloseTo(Math.ceil(velvet.length / EIGHTH - 1e-3) * EIGHTH, 3);
    expect(faultsOf(velvet)).toEqual([]);
    expect(velvet.pieces.every(({ turned }) => turned === 0)).toBe(true);
  });

  it('saves a quarter of a yard and more against the two lays apart', () => {
    const bought = velvet.apart!.layers.map(({ length }) => Math.ceil(length / EIGHTH - 1e-3) * EIGHTH);
    expect(velvet.apart!.buy).toBeCloseTo(bought[0]! + bought[1]!, 3);
    expect(velvet.apart!.buy - velvet.buy).toBeGreaterThanOrEqual(2 * EIGHTH - 1e-6);
  });

  it('is in the report by its cloth, at the price of the one length', () => {
    const report = layReport(gown!.gown, lays).find(({ cloth }) => cloth === 'velvet')!;
    expect(report.layers).toEqual(['velvet', 'train-velvet']);
    expect(report).not.toHaveProperty('layer');
    // 18 a yard.
    expect(report.cost).toBeCloseTo((18 * velvet.buy) / 914.4, 2);
    expect(report.apart!.buy).toBeCloseTo(velvet.apart!.buy, 3);
  });
});

it('edging is cut off both sides of the one length before any layer is laid', () => {
  const { lays } = laysOf(
    lace({
      layers: [
        { name: 'under', cloth: 'lace', hem: 'raw', shorter: 3 },
        { name: 'lace', cloth: 'lace', hem: 'raw', edging: 'scallops' },
      ],
      edging: { name: 'scallops', depth: 8, repeat: 12, from: 'own-edges', cloth: 'lace' },
    }),
  );
  expect(lays).toHaveLength(1);
  for (const { x } of lays[0]!.pieces.flatMap(ringOf)) {
    expect(x).toBeGreaterThan(80 - 0.05);
    expect(x).toBeLessThan(1220 + 0.05);
  }
});

it('on a pattern every piece of either layer begins on a whole repeat, and whole repeats are bought', () => {
  const text = lace({
    layers: [
      { name: 'under', cloth: 'lace', hem: 'raw', shorter: 3 },
      { name: 'lace', cloth: 'lace', hem: 'raw' },
    ],
    cloths: { lace: { width: 130, selvedge: 0, 'repeat-down': 20, 'repeat-across': 10 } },
  });
  for (const fold of ['single', 'lengthwise', 'any'] as const) {
    const plan = stopped(text, { fold });
    expect(faultsOf(plan)).toEqual([]);
    expect(plan.length / 200).toBeCloseTo(Math.round(plan.length / 200), 3);
    expect(plan.length).toBeLessThanOrEqual(plan.apart!.length + 1e-6);
  }
});

describe('what a lay is called', () => {
  it('is the cloth, and its layer where the layers are kept apart', () => {
    expect(
      layNames([
        { cloth: 'crepe', layer: undefined },
        { cloth: 'net', layer: 'lining' },
      ]),
    ).toEqual(['crepe', 'net-lining']);
  });

  it('is never another lay’s name, whatever cloths and layers are called', () => {
    const names = layNames([
      { cloth: 'net', layer: 'lining-silk' },
      { cloth: 'net-lining', layer: 'silk' },
      { cloth: 'net-lining-silk', layer: undefined },
    ]);
    expect(names).toEqual(['net-lining-silk-2', 'net-lining-silk-3', 'net-lining-silk']);
  });
});

describe('the papers of a lay of two layers', () => {
  const text = twoOfOne.replace('\n  crepe:\n', '\n  crepe:\n    fold: single\n');
  const { gown } = draft({ name: 'gown.yaml', text });
  const toLay = gownToLay(gown!);
  let looks = 0;
  const { lays } = planLays(toLay, {
    say: (mm) => `${(mm / 10).toFixed(1)} cm`,
    shouldStop: () => ++looks > 200,
  });
  const crepe = lays.find(({ cloth }) => cloth === 'crepe')!;
  const [figure] = layFigures(gown!.gown, lays, 210);

  it('list what each number is, layer by layer, as it lies on the cloth', () => {
    const [, lining, shell] = /In cutting order, lining: ([^;]+); shell: ([^;]+)\.$/.exec(figure!.caption)!;
    const numbers = [lining!, shell!].flatMap((list) => list.split(', '));
    expect(numbers.map((text) => Number.parseInt(text, 10))).toEqual([...Array(18).keys()].map((i) => i + 1));
    for (const { number, layer, gore, mirrored } of crepe.pieces) {
      const side = gore === 'front' ? '' : mirrored ? ' right' : ' left';
      expect((layer === 'lining' ? lining : shell)!.split(', ')).toContain(`${number} ${gore}${side}`);
    }
  });

  it('say what it saves, beside its own length and what to buy', () => {
    const apart = crepe.apart!.layers.map(({ layer, length }) => `${layer} ${inCm(length)}`);
    const saved = crepe.apart!.buy - crepe.buy;
    expect(saved).toBeGreaterThanOrEqual(0);
    expect(figure!.caption).toContain(
      `Laid apart: ${apart.join(' and ')}, ${inCm(crepe.apart!.buy)} to buy; this lay buys ${
        saved === 0 ? 'as much' : `${inCm(saved)} less`
      }.`,
    );
    expect(figure!.caption).toContain(`lay ${inCm(crepe.length)}, buy ${inCm(crepe.buy)}`);
  });

  it('print no name smaller than can be read: the number alone then stands for it', () => {
    const texts = flat(figure!.drawing!.marks).filter((mark) => mark.kind === 'text');
    const gores = texts.filter(({ text }) => /^(front|side|back)/.test(text));
    // Common practice: nothing under 1.5 mm.
    for (const { size } of gores) expect(size).toBeGreaterThanOrEqual(1.5);
    for (const { number } of crepe.pieces)
      expect(texts.some(({ text, size }) => text === String(number) && size > 1.5)).toBe(true);
  });

  it('lie in files named by their cloths', () => {
    const files = layFiles(gown!.gown, lays);
    expect([...files.keys()]).toEqual(['lay-crepe.svg', 'lay-organza.svg']);
    const layers = [...files.get('lay-crepe.svg')!.matchAll(/class="placed"[^>]* data-layer="([^"]+)"/g)];
    expect(layers.map(([, layer]) => layer)).toEqual(crepe.pieces.map(({ layer }) => layer));
  });
});

function flat(marks: readonly Mark[]): Mark[] {
  return marks.flatMap((mark) => (mark.kind === 'group' ? flat(mark.marks) : [mark]));
}

function ofLayers(piece: CutPiece, layers: readonly string[]): CutPiece {
  return { ...piece, layers, piece: { ...piece.piece, layers } };
}

function countsOf({ pieces }: LayPlan): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const { layer, gore } of pieces) counts[`${layer} ${gore}`] = (counts[`${layer} ${gore}`] ?? 0) + 1;
  return counts;
}

/** The first lay as a search leaves it that is stopped soon. */
function stopped(text: string, cloth: object): LayPlan {
  const { gown } = draft({ name: 'gown.yaml', text });
  const toLay = gownToLay(gown!);
  let looks = 0;
  const { lays } = planLays(
    { ...toLay, lays: [{ ...toLay.lays[0]!, ...withSpec(toLay.lays[0]!, cloth) }] },
    { say: String, shouldStop: () => ++looks > 200 },
  );
  return lays[0]!;
}

function withSpec<T extends { readonly spec: object; readonly facts: object }>(lay: T, cloth: object) {
  const oneWay = 'oneWay' in cloth ? { oneWay: cloth.oneWay } : {};
  return { spec: { ...lay.spec, ...cloth } as T['spec'], facts: { ...lay.facts, ...oneWay } as T['facts'] };
}

function lace(fields: Tree): string {
  return threeGores({
    cloths: { lace: { width: 130, selvedge: 0 } },
    ...fields,
  });
}

/** As read off a tape, to a millimetre. */
const inCm = (mm: number): string => `${Number((mm / 10).toFixed(1))} cm`;

it('of so many shapes that they cannot be tried together each layer lies by itself, end to end, and none is lost', () => {
  const layers = ['lining', 'shell'];
  const pieces = layers.flatMap((layer, i) =>
    Array.from({ length: 101 }, (_, k) => ({
      ...flatPiece(`g${k}`, rectangle(30 + k / 4, 40 + i), 'single'),
      layers: [layer],
    })),
  );
  const { plan } = laid(pieces, {}, 1e3, layers);
  expect(plan!.way).toBe('layers-end-to-end');
  expect(plan!.pieces).toHaveLength(202);
  expect(plan!.length).toBeCloseTo(plan!.apart!.length, 6);
  expect(faultsOf(plan!)).toEqual([]);
});
