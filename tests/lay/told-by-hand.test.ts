import { describe, expect, it } from 'vitest';
import type { Span } from '../../src/diagnostics/diagnostic.ts';
import { layWords } from '../../src/diagnostics/lay-words.ts';
import * as problems from '../../src/lay/plan/lay-problems.ts';
import { waysOf } from '../../src/lay/plan/ways.ts';
import { clothOf, factsOf, flatPiece, laid } from './laid.ts';

/** Lays of rectangles, whose every figure is known: each way, its sections, what it uses and what to buy. mm. */

const rectangle = (
  gore: string,
  width: number,
  height: number,
  cut: 'pair' | 'single' | 'on-fold' = 'pair',
  options: object = {},
) =>
  flatPiece(
    gore,
    [
      { x: 0, y: 0 },
      { x: width, y: 0 },
      { x: width, y: height },
      { x: 0, y: height },
    ],
    cut,
    options,
  );
const NEAR = 2;
const planOf = (...given: Parameters<typeof laid>) => {
  const { plan, diagnostics } = laid(...given);
  if (plan === undefined) throw new Error(diagnostics.map(({ message }) => message).join('; '));
  return { plan, said: diagnostics.map(({ code }) => code) };
};
const rows = ({ ways }: ReturnType<typeof planOf>['plan']) =>
  ways.map(({ folds, length, taken, tooWide }) => [
    layWords(folds),
    length === undefined ? undefined : Math.round(length / NEAR) * NEAR,
    taken,
    tooWide !== undefined,
  ]);

describe('the ways of a lay', () => {
  it('of a pair of 600 × 500 on 1400: each with its length, its share of the cloth and what to buy', () => {
    const { plan, said } = planOf([rectangle('a', 600, 500)], { endLoss: 30, soldBy: 100 }, 2e4);
    expect(said).toEqual([]);
    expect(rows(plan).map(([words, length]) => [words, length])).toEqual([
      ['single throughout', 500],
      ['folded lengthwise throughout', 500],
      ['folded crosswise throughout', 1000],
    ]);
    expect(plan.ways.map(({ used }) => Math.round(used! * 1000))).toEqual([857, 857, 429]);
    expect(plan.ways.map(({ buy }) => buy)).toEqual([600, 600, 1100]);
    expect(plan.ways.every(({ handling }) => handling !== undefined)).toBe(true);
    // Of two as long the one with fewer pieces to cut.
    expect(rows(plan).map((row) => row[2])).toEqual([false, true, false]);
    expect([plan.fold, layWords(plan.way), plan.buy, Math.round(plan.used * 1000)]).toEqual([
      'lengthwise',
      'folded lengthwise throughout',
      600,
      857,
    ]);
    expect([plan.name, plan.cloth, plan.layers, plan.apart, plan.cutShort]).toEqual([
      'cloth',
      'cloth',
      ['layer'],
      undefined,
      false,
    ]);
    expect(plan.sections).toEqual([{ fold: 'lengthwise', from: 0, to: plan.length, upperTurned: false }]);
    expect(plan.pieces).toHaveLength(2);
  });

  it('a fold that leaves less than a piece is wide has no length and says so; of the others that with fewer pieces to cut is taken', () => {
    const { plan } = planOf([rectangle('a', 800, 500)], {}, 2e4);
    expect(rows(plan)).toEqual([
      ['single throughout', 1000, false, false],
      ['folded lengthwise throughout', undefined, false, true],
      ['folded crosswise throughout', 1000, true, false],
    ]);
    const [, folded] = plan.ways;
    expect([folded!.used, folded!.buy, folded!.handling]).toEqual([undefined, undefined, undefined]);
  });

  it('sections follow one another down the cloth; across a one-way cloth the upper ply is turned', () => {
    const pieces = [rectangle('a', 600, 500), rectangle('b', 1200, 300)];
    const { plan } = planOf(pieces, { fold: 'crosswise', oneWay: true }, 2e4);
    expect(plan.sections.map(({ fold, upperTurned }) => [fold, upperTurned])).toEqual([['crosswise', true]]);
    expect(plan.length).toBeCloseTo(2 * 800, -1);
    const mixed = planOf(pieces, { fold: 'lengthwise' }, 2e4).plan;
    expect(mixed.sections.map(({ fold }) => fold)).toEqual(['lengthwise', 'crosswise']);
    expect(mixed.sections[0]!.from).toBe(0);
    expect(mixed.sections[1]!.from).toBe(mixed.sections[0]!.to);
    expect(mixed.sections[1]!.to).toBeCloseTo(mixed.length, 9);
  });

  it('two layers: each by itself, and together no longer than end to end', () => {
    const of = (layers: string[], width: number) => ({ ...rectangle(layers.join('-'), width, 400), layers });
    const pieces = [of(['shell'], 600), of(['net'], 690)];
    const { plan } = planOf(pieces, {}, 2e4, ['shell', 'net']);
    expect(plan.apart!.layers.map(({ layer, length, buy }) => [layer, Math.round(length), buy])).toEqual([
      ['shell', 400, 400],
      ['net', 400, 400],
    ]);
    expect([Math.round(plan.apart!.length), plan.apart!.buy]).toEqual([800, 800]);
    expect(plan.length).toBeLessThanOrEqual(plan.apart!.length);
    expect(plan.pieces.map(({ layer }) => layer).sort()).toEqual(['net', 'net', 'shell', 'shell']);
    // A layer that nothing is cut for is none to lay apart.
    expect(planOf(pieces.slice(0, 1), {}, 2e4, ['shell', 'net']).plan.apart).toBeUndefined();
  });

  it('of ten layers cut alike every copy is there; area over what is used', () => {
    const { plan } = planOf([rectangle('a', 700, 300, 'single', { copies: 4 })], { selvedge: 0 }, 2e4);
    expect(plan.pieces.map(({ copy }) => copy).sort()).toEqual([1, 2, 3, 4]);
    expect(plan.used).toBeCloseTo((4 * 700 * 300) / (1400 * plan.length), 9);
    expect(plan.length).toBeCloseTo(600, -1);
    expect(factsOf(clothOf({ selvedge: 20 }), 15).usable).toBe(1400 - 70);
  });
});

describe('ways to fold, told once', () => {
  const item = (gore: string, kind: string, part?: string) => ({ kind, part, cut: { gore } }) as never;
  const names = (...items: never[]) => waysOf(items).map(({ folds }) => layWords(folds));

  it('a back on the fold is never folded across', () => {
    expect(names(item('front', 'pair'), item('back', 'on-fold'))).toEqual([
      'single throughout',
      'folded lengthwise throughout',
      'back folded lengthwise, then front folded crosswise',
      'back single, then front folded crosswise',
      'front folded lengthwise, then back single',
    ]);
    expect(names(item('front', 'on-fold'), item('back', 'on-fold'))).toEqual([
      'single throughout',
      'folded lengthwise throughout',
      'front folded lengthwise, then back single',
    ]);
  });

  it('parts of one gore in three places make no way twice', () => {
    const told = names(item('a', 'pair'), item('a', 'pair', 'bodice'), item('a', 'pair', 'strap'));
    expect(told).toEqual([...new Set(told)]);
    expect(told).toContain('a folded lengthwise, then a single');
  });
});

describe('what is said of a lay', () => {
  const HERE = { source: { name: 'gown.yaml', text: '' }, start: 0, end: 0 } as Span;
  const layers = (count: number) => ['shell', 'net', 'lining'].slice(0, count);

  it('of one layer, of two, of three', () => {
    const repeat = (count: number) =>
      problems.repeatAssumed(HERE, { layers: layers(count), cloth: 'brocade' }).message;
    const goes =
      'every piece of `brocade` begins on a whole repeat, and a motif is taken to lie on the middle of the cloth.';
    expect([1, 2, 3].map(repeat)).toEqual([
      `Layer \`shell\`: ${goes}`,
      `Layers \`shell\` and \`net\`: ${goes}`,
      `Layers \`shell\`, \`net\` and \`lining\`: ${goes}`,
    ]);
    const long = (count: number) =>
      problems.layTooLong(HERE, { layers: layers(count), cloth: 'crepe', least: '300 m' }).message;
    expect([long(1), long(2)]).toEqual([
      'Layer `shell` takes at least 300 m of `crepe`.',
      'Layers `shell` and `net` take at least 300 m of `crepe`.',
    ]);
    const fold = (count: number) =>
      problems.foldImpossible(HERE, { layers: layers(count), fold: 'on a fold', way: 'single' }).message;
    expect([fold(1), fold(2)]).toEqual([
      'Layer `shell` cannot be cut on a fold as asked: it has no mirrored pairs or halves to cut double.',
      'Layers `shell` and `net` cannot be cut on a fold as asked: they have no mirrored pairs or halves to cut double.',
    ]);
    const short = (count: number) => problems.layCutShort(HERE, layers(count)).message;
    expect([short(1), short(2)].map((text) => text.slice(0, 40))).toEqual([
      'The lay of layer `shell` was cut short by Ctrl-C'.slice(0, 40),
      'The lay of layers `shell` and `net` was cut short'.slice(0, 40),
    ]);
  });
});
