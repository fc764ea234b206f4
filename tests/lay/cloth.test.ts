import { describe, expect, it } from 'vitest';
import { lengthOf } from '../../src/geometry/length.ts';
import { buyLength } from '../../src/lay/plan/buy-length.ts';
import { layRemarks } from '../../src/words/lay-remarks.ts';
import { threeGores } from '../outside/plain-gown.ts';
import { clothOf, faultsOf, flatPiece, laid, laysOf, ringOf } from './laid.ts';
import { rectangle } from './polygons.ts';

describe('what to buy: ⌈(lay + end loss) × (1 + shrinkage) × (1 + safety) ÷ step⌉ × step (textbook rule)', () => {
  const YARD = 914.4;
  it.each([
    [4687, { soldBy: 100 }, 4700],
    [4700, { soldBy: 100 }, 4700],
    [4700.3, { soldBy: 100 }, 4700],
    [4701, { soldBy: 100 }, 4800],
    [3000, { soldBy: 500 }, 3000],
    [3200, { soldBy: 100, endLoss: 50 }, 3300],
    [3000, { soldBy: 100, shrinkage: 0.05 }, 3200],
    [3000, { soldBy: 250, shrinkage: 0.05, safety: 0.1, endLoss: 30 }, 3500],
    // To the millimetre: (3000 + 90) × 1.05 × 1.1 = 3568.95, where another order of the sum is 5 to 15 off.
    [3000, { soldBy: 1, shrinkage: 0.05, safety: 0.1, endLoss: 90 }, 3569],
    [1000, { soldBy: 100, minimum: 2000 }, 2000],
    [1000, { soldBy: 300, minimum: 2000 }, 2100],
    [2000, { soldBy: YARD / 8 }, 18 * (YARD / 8)],
    [1234, {}, 1240],
  ])('%d mm with %j is %d mm', (length, cloth, expected) => {
    expect(buyLength(length, clothOf(cloth))).toBeCloseTo(expected, 6);
  });
});

describe('a piece wider than its cloth', () => {
  const wide = flatPiece('back', rectangle(1500, 900), 'pair');

  it('is laid across the cloth where that has no direction', () => {
    const { plan, diagnostics } = laid([wide], { width: 1000 });
    expect(diagnostics.map(({ code, level: severity }) => [code, severity])).toEqual([
      ['railroaded-to-fit', 'warning'],
    ]);
    expect(plan!.railroaded).toEqual(['layer']);
    expect(plan!.pieces.map(({ turned }) => turned % 180)).toEqual([90, 90]);
    expect(plan!.length).toBeCloseTo(3000, 1);
    for (const { grain } of plan!.pieces) expect(grain.from.y).toBeCloseTo(grain.to.y, 9);
    expect(faultsOf(plan!)).toEqual([]);
  });

  it.each([{ oneWay: true }, { repeatDown: 100 }])('is pieced along the grain on cloth with %j', (cloth) => {
    const { plan, diagnostics } = laid([wide], { width: 1000, ...cloth });
    expect(diagnostics.map(({ code }) => code)).toEqual(['pieced-to-fit']);
    expect(diagnostics[0]!.message).toMatch(/1500 mm wide .* 1000 mm.* 2 parts/);
    expect(plan!.joins).toEqual([{ gore: 'back', layer: 'layer', parts: 2 }]);
    expect(plan!.pieces.map(({ part }) => part).sort()).toEqual(['1 of 2', '1 of 2', '2 of 2', '2 of 2']);
    expect(faultsOf(plan!)).toEqual([]);
    // The parts make up the piece and an allowance of 15 mm on both sides of the join.
    const area = plan!.pieces.reduce((sum, piece) => sum + areaOf(ringOf(piece)), 0);
    expect(area).toBeCloseTo(2 * 900 * (1500 + 2 * 15), 1);
    // As far from the front edge as the cloth lets it: the first part fills the width.
    const first = plan!.pieces.filter(({ part }) => part === '1 of 2').map((piece) => widthOf(ringOf(piece)));
    for (const width of first) expect(width).toBeCloseTo(1000, 6);
  });

  it('has matching marks on both sides of the join', () => {
    const { plan } = laid([wide], { width: 1000, oneWay: true });
    const marks = ['1 of 2', '2 of 2'].map((part) => {
      const piece = plan!.pieces.find((one) => one.part === part && !one.mirrored)!;
      const top = Math.min(...ringOf(piece).map(({ y }) => y));
      expect(piece.notches.every((tick) => lengthOf(tick) > 3)).toBe(true);
      return piece.notches.map(({ from }) => Math.round((from.y - top) * 1000) / 1000);
    });
    expect(marks[0]!.length).toBeGreaterThan(0);
    expect(marks[0]).toEqual(marks[1]);
  });

  it('on the fold keeps its middle whole and is joined alike at both sides', () => {
    const half = flatPiece('front', rectangle(700, 900), 'on-fold', { foldEdge: 3 });
    const { plan } = laid([half], { width: 1000, oneWay: true });
    const widths = plan!.pieces.map((piece) => [
      piece.part,
      piece.mirrored,
      Math.round(widthOf(ringOf(piece))),
    ]);
    expect(widths.sort()).toEqual(
      [
        ['1 of 2', false, 1000],
        ['2 of 2', false, 230],
        ['2 of 2', true, 230],
      ].sort(),
    );
    expect(faultsOf(plan!)).toEqual([]);
  });

  it('that nothing can save is an error that says the width needed, and loses nothing else', () => {
    const { plan, diagnostics } = laid([wide], { width: 80, oneWay: true });
    expect(plan).toBeUndefined();
    expect(diagnostics.map(({ code, level: severity }) => [code, severity])).toEqual([
      ['wider-than-cloth', 'error'],
    ]);
    expect(diagnostics[0]!.hint).toMatch(/at least 1500 mm wide/);
  });
});

describe('a fold that is asked for and cannot be', () => {
  it('for width is a warning, and the cloth is laid single', () => {
    const piece = flatPiece('side', rectangle(600, 900), 'pair');
    const { plan, diagnostics } = laid([piece], { width: 1000, fold: 'lengthwise' });
    expect(plan!.fold).not.toBe('lengthwise');
    expect(diagnostics.map(({ code, level: severity }) => [code, severity])).toEqual([
      ['fold-does-not-fit', 'warning'],
    ]);
    expect(diagnostics[0]!.message).toMatch(/600 mm.*500 mm/);
    const folded = plan!.ways.find(({ fold }) => fold === 'lengthwise')!;
    expect([folded.length, folded.tooWide]).toEqual([undefined, { gore: 'side', width: 600, usable: 500 }]);
  });

  it('for want of pairs says so', () => {
    const strip = flatPiece('strip', rectangle(600, 100), 'single');
    const { plan, diagnostics } = laid([strip], { fold: 'crosswise' });
    expect(plan!.fold).toBe('single');
    expect(diagnostics.map(({ code }) => code)).toEqual(['fold-does-not-fit']);
  });
});

describe('a pattern that repeats', () => {
  const gore = flatPiece(
    'side',
    [
      { x: 100, y: 0 },
      { x: 300, y: 0 },
      { x: 400, y: 850 },
      { x: 0, y: 850 },
    ],
    'pair',
  );

  it('begins every piece on a whole repeat, and the lay is whole repeats long', () => {
    const { plan } = laid([gore, flatPiece('back', rectangle(380, 700), 'pair')], {
      width: 1400,
      repeatDown: 320,
      oneWay: true,
    });
    for (const piece of plan!.pieces) {
      const top = Math.min(...ringOf(piece).map(({ y }) => y));
      expect(Math.abs(top / 320 - Math.round(top / 320)) * 320).toBeLessThan(0.01);
    }
    expect((plan!.length / 320) % 1).toBeCloseTo(0, 9);
    expect(faultsOf(plan!)).toEqual([]);
  });

  it('puts every grain on a motif across the cloth', () => {
    const { plan } = laid([gore], { width: 1400, repeatAcross: 250, oneWay: true });
    for (const { grain } of plan!.pieces) {
      const steps = (grain.from.x - 700) / 250;
      expect(Math.abs(steps - Math.round(steps)) * 250).toBeLessThan(0.1);
    }
    expect(faultsOf(plan!)).toEqual([]);
  });
});

it('edging from a cloth that is its own source is cut off both sides before the lay', () => {
  const text = (from: object) =>
    threeGores({
      layers: [{ name: 'lace', cloth: 'lace', hem: 'raw', edging: 'scallops' }],
      cloths: { lace: { width: 130, selvedge: 0 } },
      edging: { name: 'scallops', depth: 8, repeat: 12, ...from },
    });
  const [own] = laysOf(text({ from: 'own-edges', cloth: 'lace' })).lays;
  const [bought] = laysOf(text({ from: 'bought-in' })).lays;
  expect([own!.facts.usable, bought!.facts.usable]).toEqual([1140, 1300]);
  for (const piece of own!.pieces) {
    for (const { x } of ringOf(piece)) {
      expect(x).toBeGreaterThan(80 - 0.05);
      expect(x).toBeLessThan(1220 + 0.05);
    }
  }
  expect(layRemarks(own!, 'cm').join(' ')).toMatch(/First cut 8 cm of edging/);
});

function areaOf(ring: readonly { x: number; y: number }[]): number {
  return Math.abs(
    ring.reduce((sum, a, i) => {
      const b = ring[(i + 1) % ring.length]!;
      return sum + a.x * b.y - b.x * a.y;
    }, 0) / 2,
  );
}

function widthOf(ring: readonly { x: number }[]): number {
  const xs = ring.map(({ x }) => x);
  return Math.max(...xs) - Math.min(...xs);
}
