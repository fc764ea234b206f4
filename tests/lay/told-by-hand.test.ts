import { describe, expect, it } from 'vitest';
import type { Span } from '../../src/diagnostics/diagnostic.ts';
import { layWords } from '../../src/diagnostics/lay-words.ts';
import type { Line } from '../../src/geometry/curve.ts';
import { isAsFolded } from '../../src/lay/plan/choose-way.ts';
import { layFaults } from '../../src/lay/plan/lay-faults.ts';
import * as problems from '../../src/lay/plan/lay-problems.ts';
import { gownToLay } from '../../src/lay/plan/lay-to-plan.ts';
import { planLay } from '../../src/lay/plan/plan-lay.ts';
import { toThread } from '../../src/lay/plan/to-thread.ts';
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
const HERE = { source: { name: 'gown.yaml', text: '' }, start: 0, end: 0 } as Span;
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

  it('folded along its length nothing is turned, one-way or not', () => {
    const { plan } = planOf([rectangle('a', 600, 500)], { fold: 'lengthwise', oneWay: true }, 2e4);
    expect(plan.sections).toEqual([{ fold: 'lengthwise', from: 0, to: plan.length, upperTurned: false }]);
  });

  it('any fold opens out to a flat lay: that is never longer, however little it was looked for', () => {
    const pieces = [310, 420, 530, 290, 350, 470].map((width, i) => {
      const [gore, height] = [`g${i}`, 400 + 110 * i];
      // Leaning, so that how they lie beside one another matters.
      const corners = [
        [0, 0],
        [width * 0.4, 0],
        [width, height],
        [width * 0.2, height],
      ];
      return flatPiece(
        gore,
        corners.map(([x, y]) => ({ x: x!, y: y! })),
        'pair',
      );
    });
    for (const work of [1, 3e3]) {
      const { plan } = planOf(pieces, { width: 1200 }, work);
      const [flat, ...folded] = plan.ways.map(({ length }) => length ?? Infinity);
      for (const length of folded) expect(flat).toBeLessThanOrEqual(length + 1e-6);
    }
  });

  it('work is measured out by how many pieces lie on the strip, and in how many layers; what was kept is asked for', () => {
    const asked: [string, number, number][] = [];
    const keptOf: string[] = [];
    const note = (use: string) => (pieces: number, layers: number) => {
      asked.push([use, pieces, layers]);
      return 2e4;
    };
    const spec = clothOf({});
    const of = (layer: string) => ({ ...rectangle(layer, 600, 500), layers: [layer] });
    planLay(
      {
        name: 'cloth',
        cloth: 'cloth',
        layers: ['shell', 'net'].map((name) => ({ name, seam: 15 })),
        pieces: [of('shell'), of('net')],
        spec,
        facts: factsOf(spec),
        span: HERE,
        say: String,
      },
      {
        seed: 1,
        work: { cutting: note('cutting'), comparing: note('comparing') },
        stopped: () => false,
        kept: {
          recall: (key) => {
            keptOf.push(key);
            return undefined;
          },
          keep: () => {},
        },
      },
    );
    // By itself each layer has a pair, looked for as if it were alone; together they have two.
    const cut = asked.filter(([use]) => use === 'cutting').map(([, pieces, layers]) => [pieces, layers]);
    expect(cut.filter(([pieces]) => pieces === 2)).toEqual([
      [2, 1],
      [2, 1],
    ]);
    expect(cut).toContainEqual([4, 2]);
    expect(cut.every(([pieces, layers]) => pieces === 2 * layers!)).toBe(true);
    expect(asked.every(([, pieces, layers]) => layers <= 2 && pieces >= layers)).toBe(true);
    expect(keptOf.length).toBeGreaterThan(0);
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

describe('two pieces that cross', () => {
  it.each([
    [500, 200, 0],
    [20, 20, 0],
    [700, 10, 0],
    [300, 300, 30],
    [300, 300, -20],
    [300, 300, 100],
  ])(
    'with no corner of either in the other, at %i, %i and turned by %i°, are found whichever comes first',
    (x, y, degrees) => {
      const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
      const outline = (left: number, top: number, width: number, height: number) => {
        const place = (point: { x: number; y: number }) => {
          const [dx, dy] = [point.x + left, point.y + top];
          return { x: x + dx * cos - dy * sin, y: y + dx * sin + dy * cos };
        };
        return rectangle('a', width, height).cutEdges.flatMap(({ curves }) =>
          curves.map((curve) => {
            const { from, to } = curve as Line;
            return { ...curve, from: place(from), to: place(to) };
          }),
        );
      };
      const [flat, upright] = [
        { gore: 'flat', copy: 1, outline: outline(0, 120, 260, 20) },
        { gore: 'upright', copy: 2, outline: outline(100, 0, 30, 260) },
      ] as never[];
      const facts = { width: 1400, selvedge: 0, edgingDepth: 0 } as never;
      expect(layFaults([flat!, upright!], facts, 1000)).toEqual(['upright 2 and flat 1 overlap by 15.00 mm']);
      expect(layFaults([upright!, flat!], facts, 1000)).toEqual(['flat 1 and upright 2 overlap by 15.00 mm']);
    },
  );
});

describe('what is laid on which cloth', () => {
  const cloth = (name: string, apart = false) => ({
    name,
    width: 1400,
    selvedge: 10,
    apart,
    place: (key: string) => `${name} ${key}`,
  });
  const layer = (name: string, of: object) => ({
    name,
    cloth: of,
    allowances: { seam: { width: name.length }, named: {} },
  });
  const [crepe, net] = [cloth('crepe'), cloth('net', true)];
  const layers = [
    layer('shell', crepe),
    layer('tulle', net),
    layer('lining', crepe),
    layer('band', net),
    layer('none', crepe),
  ];

  it('the layers of one cloth together unless they are cut apart; a layer without pieces is in none', () => {
    const pieces = ['shell', 'tulle', 'lining', 'band'].map((name) => ({ layers: [name] }));
    const {
      lays,
      units,
      pieces: all,
    } = gownToLay({ gown: { units: 'cm' }, layers, cut: { pieces } } as never);
    expect(
      lays.map(({ name, cloth: of, layers: own }) => [
        name,
        of,
        ...own.map((one) => `${one.name} ${one.seam}`),
      ]),
    ).toEqual([
      ['crepe', 'crepe', 'shell 5', 'lining 6'],
      [lays[1]!.name, 'net', 'tulle 5'],
      [lays[2]!.name, 'net', 'band 4'],
    ]);
    expect(new Set(lays.map(({ name }) => name)).size).toBe(3);
    expect([units, all, lays[0]!.span]).toEqual(['cm', pieces, 'crepe width']);
    expect([lays[0]!.facts.usable, lays[0]!.spec]).toEqual([
      1380,
      { width: 1400, selvedge: 10, apart: false },
    ]);
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

describe('a piece on the bias', () => {
  it('is turned with all that is on it until its thread runs down the cloth', () => {
    const line = (x: number, y: number, toX: number, toY: number): Line => ({
      kind: 'line',
      from: { x, y },
      to: { x: toX, y: toY },
    });
    const cut = rectangle('a', 300, 500);
    const own = {
      ...cut,
      piece: { ...cut.piece, grain: line(50, 250, 150, 150) },
      notches: [{ edge: 'front', distance: 100, ticks: [line(0, 100, 6, 100)] }],
      marks: [{ name: 'tuck-fold', curves: [line(300, 400, 0, 400)] }],
      labelAt: { x: 150, y: 250 },
    };
    const turned = toThread(own);
    // Up to the right at 45°: upright it runs up, so each point turns by three eighths of a turn, or back by as much.
    const { from, to } = turned.piece.grain as Line;
    expect(from.x).toBeCloseTo(to.x, 9);
    expect(Math.abs(to.y - from.y)).toBeCloseTo(100 * Math.SQRT2, 9);
    const angle = Math.atan2(to.y - from.y, to.x - from.x) - Math.atan2(-100, 100);
    const at = ({ x, y }: { x: number; y: number }) => ({
      x: expect.closeTo(x * Math.cos(angle) - y * Math.sin(angle), 6),
      y: expect.closeTo(x * Math.sin(angle) + y * Math.cos(angle), 6),
    });
    const turnedLine = (one: Line) => ({ kind: 'line', from: at(one.from), to: at(one.to) });
    expect(turned.marks).toEqual([{ name: 'tuck-fold', curves: [turnedLine(line(300, 400, 0, 400))] }]);
    expect(turned.notches).toEqual([
      { edge: 'front', distance: 100, ticks: [turnedLine(line(0, 100, 6, 100))] },
    ]);
    expect(turned.labelAt).toEqual(at({ x: 150, y: 250 }));
    for (const [edges, before] of [
      [turned.cutEdges, own.cutEdges],
      [turned.piece.edges, own.piece.edges],
    ] as const)
      expect(edges).toEqual(
        before.map(({ name, curves }) => ({ name, curves: curves.map((one) => turnedLine(one as Line)) })),
      );
    expect(toThread(cut).cutEdges.map(({ name }) => name)).toEqual(cut.cutEdges.map(({ name }) => name));
  });
});

describe('a fold that is asked for', () => {
  const section = (fold: string, ...kinds: string[]) => ({ fold, items: kinds.map((kind) => ({ kind })) });
  const asked = (fold: string, ...sections: object[]) => {
    const folds = new Set(sections.map((one) => (one as { fold: string }).fold));
    const [only] = folds;
    return isAsFolded({ fold: folds.size === 1 ? only : 'sections', sections } as never, fold as never);
  };

  it('single is single throughout; along the length or across all that can be is', () => {
    expect(asked('single', section('single', 'pair'))).toBe(true);
    // What has no partner lies flat whatever is asked for; that does not make the lay a single one.
    expect(asked('single', section('single', 'pair'), section('lengthwise', 'single'))).toBe(false);
    expect(asked('lengthwise', section('lengthwise', 'pair', 'on-fold'), section('single', 'single'))).toBe(
      true,
    );
    expect(asked('lengthwise', section('lengthwise', 'pair'), section('single', 'pair'))).toBe(false);
    expect(asked('lengthwise', section('lengthwise', 'pair'), section('single', 'on-fold'))).toBe(false);
    expect(asked('crosswise', section('crosswise', 'pair'), section('lengthwise', 'on-fold'))).toBe(true);
    expect(asked('crosswise', section('lengthwise', 'pair'))).toBe(false);
  });
});

describe('what is said of a lay', () => {
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
