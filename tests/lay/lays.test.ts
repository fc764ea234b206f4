import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { layWords } from '../../src/diagnostics/lay-words.ts';
import { pointAt } from '../../src/geometry/evaluate.ts';
import type { LayPlan } from '../../src/lay/plan/lay-plan.ts';
import { layRemarks } from '../../src/words/lay-remarks.ts';
import { level, plainGown, sevenGores } from '../outside/plain-gown.ts';
import { faultsOf, flatPiece, laid, laysOf, pairsMirror, ringOf } from './laid.ts';
import { rectangle } from './polygons.ts';

const lantern = readFileSync(join(import.meta.dirname, '../../examples/lantern.yaml'), 'utf8');
const sixGores = readFileSync(join(import.meta.dirname, '../../templates/six-gores.yaml'), 'utf8');

describe('rectangles whose best lay is known', () => {
  const side = flatPiece('side', rectangle(350, 900), 'pair');
  const back = flatPiece('back', rectangle(350, 900), 'pair');

  it('four to the width take one length', () => {
    const { plan } = laid([side, back], { width: 1400 });
    expect(plan!.length).toBeCloseTo(900, 1);
    expect(plan!.used).toBeCloseTo(1, 3);
    expect(faultsOf(plan!)).toEqual([]);
  });

  it('the selvedge is not cut into: a thousandth too narrow takes two lengths', () => {
    const { plan } = laid([side, back], { width: 1420, selvedge: 10.5 });
    expect(plan!.length).toBeCloseTo(1800, 1);
    expect(faultsOf(plan!)).toEqual([]);
  });

  it('every way is as long as it must be', () => {
    const { plan } = laid([side, back], { width: 1000 });
    const lengths = Object.fromEntries(plan!.ways.map(({ fold, length }) => [fold, Math.round(length!)]));
    // Two across the width and one on the half width, so nothing is gained or lost by folding along; across, both lengths lie double.
    expect(lengths).toMatchObject({ single: 1800, lengthwise: 1800, crosswise: 1800 });
  });

  it('a whole front of two halves lies on the fold, and across the fold when it is cut single', () => {
    const half = flatPiece('front', rectangle(300, 800), 'on-fold', { foldEdge: 3 });
    for (const fold of ['lengthwise', 'single'] as const) {
      const { plan } = laid([half], { width: 800, fold });
      expect(plan!.fold).toBe(fold);
      expect(plan!.length).toBeCloseTo(800, 1);
      expect(plan!.pieces).toHaveLength(1);
      const xs = ringOf(plan!.pieces[0]!).map(({ x }) => x);
      expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(600, 6);
      if (fold === 'lengthwise') expect((Math.max(...xs) + Math.min(...xs)) / 2).toBeCloseTo(400, 6);
    }
  });

  it('strips come out of one run, as many as are asked for', () => {
    const strip = flatPiece('tier', rectangle(1000, 150), 'single', { copies: 5 });
    const { plan } = laid([strip], { width: 1000 });
    expect(plan!.length).toBeCloseTo(750, 1);
    expect(plan!.pieces.map(({ copy }) => copy)).toEqual([1, 2, 3, 4, 5]);
  });
});

describe('H7: two gores, bottom twice the top (M. S. Woolman, A Sewing Course for Teachers, Fig. 15)', () => {
  const INCH = 25.4;
  // One side on the straight thread, so that two of them head to tail are a rectangle.
  const gore = flatPiece(
    'gore',
    [
      { x: 0, y: 0 },
      { x: 12 * INCH, y: 0 },
      { x: 24 * INCH, y: 40 * INCH },
      { x: 0, y: 40 * INCH },
    ],
    'single',
    { copies: 2 },
  );

  it('tops 12 and bottoms 24 come out of 36 in with no waste', () => {
    const { plan } = laid([gore], { width: 36 * INCH });
    expect(plan!.length / INCH).toBeCloseTo(40, 2);
    expect(plan!.used).toBeCloseTo(1, 3);
    expect(plan!.pieces.map(({ turned }) => turned).sort()).toEqual([0, 180]);
    expect(faultsOf(plan!)).toEqual([]);
  });

  it('one-way cloth needs 48 in for the same length (derived: a third more)', () => {
    const narrow = laid([gore], { width: 36 * INCH, oneWay: true }).plan!;
    const wide = laid([gore], { width: 48 * INCH, oneWay: true }).plan!;
    expect(narrow.length / INCH).toBeGreaterThan(41);
    expect(wide.length / INCH).toBeCloseTo(40, 2);
    expect([...narrow.pieces, ...wide.pieces].every(({ turned }) => turned === 0)).toBe(true);
  });
});

describe('H6: the same pieces with the back on the fold or seamed (I. D. Conover, A Complete Course in Dressmaking, vol. 5, p. 17)', () => {
  it.each([
    [{ name: 'back', 'on-fold': true, 'half-top': 4, 'half-hem': 12 }, [1, 2, 2, 1]],
    [{ name: 'back', top: 4, hem: 12 }, [1, 2, 2, 2]],
  ])('%j', (back, copies) => {
    const [plan] = laysOf(sevenGores(back, { cloths: { calico: { width: 54 } } })).lays;
    const counts = ['front', 'side', 'side-back', 'back'].map(
      (gore) => plan!.pieces.filter((piece) => piece.gore === gore).length,
    );
    expect(counts).toEqual(copies);
    expect(faultsOf(plan!)).toEqual([]);
  });
});

it('H10: a plain gored petticoat takes two to three lengths of 36 to 44 in cloth (Baldt 1916; Kinne & Cooley, Clothing and Health, lesson 12)', () => {
  // Bennett's five gores (H1), level at 38 in, with a hem of 4 in.
  const text = plainGown({
    units: 'in',
    bodice: { 'waist-seam': 25 },
    gores: [
      { name: 'front', 'on-fold': true, 'half-top': 2.5, 'half-hem': 5 },
      { name: 'side', top: 5, hem: 17.75 },
      { name: 'back', top: 5, hem: 17.75 },
    ],
    lengths: level(38),
    allowances: { seam: '15mm', waist: '15mm', hem: 4 },
    layers: [{ name: 'shell', cloth: 'calico', hem: 'turned' }],
    cloths: { calico: { width: 36, selvedge: 0 } },
  });
  const length = 42 * 25.4;
  for (const width of [36, 44]) {
    const [plan] = laysOf(text, { width: width * 25.4 }).lays;
    expect(plan!.length).toBeGreaterThan(2 * length * 0.97);
    expect(plan!.length).toBeLessThan(3 * length);
  }
});

describe('every fold of a gown', () => {
  const folds = ['single', 'lengthwise', 'crosswise'] as const;
  const plans = [false, true].flatMap((oneWay) =>
    folds.map((fold) => ({ oneWay, fold, plan: laysOf(lantern, { oneWay, fold }, ['shell']).lays[0]! })),
  );

  it.each(plans)('$fold, one-way $oneWay: all pieces, nothing overlapping or outside', ({ plan }) => {
    const counts = new Map<string, number>();
    for (const { gore } of plan.pieces) counts.set(gore, (counts.get(gore) ?? 0) + 1);
    expect(Object.fromEntries(counts)).toEqual({
      front: 1,
      'side-front': 2,
      side: 2,
      'side-back': 2,
      back: 2,
    });
    expect(faultsOf(plan)).toEqual([]);
  });

  it.each(plans)(
    '$fold, one-way $oneWay: left and right mirror, and one is said to be mirrored',
    ({ plan }) => {
      for (const gore of ['side-front', 'side', 'side-back', 'back']) {
        const [a, b] = plan.pieces.filter((piece) => piece.gore === gore);
        expect([a!.mirrored, b!.mirrored].sort()).toEqual([false, true]);
        expect([a!.copy, b!.copy].sort()).toEqual([1, 2]);
        expect(pairsMirror(a!, b!), gore).toBe(true);
      }
    },
  );

  it.each(plans)('$fold, one-way $oneWay: tops lie the way that the cloth lets them', ({ plan, oneWay }) => {
    for (const { grain, turned, gore } of plan.pieces) {
      const drawn = grain.from.y < grain.to.y ? 0 : 180;
      expect(turned, gore).toBe(drawn);
      if (oneWay) expect(turned, gore).toBe(0);
    }
  });

  it.each(plans)(
    '$fold, one-way $oneWay: the way taken is as asked and its figures are its own',
    ({ plan, fold }) => {
      const used = fold === 'crosswise' ? ['crosswise', 'sections'] : [fold];
      expect(used).toContain(plan.fold);
      expect(plan.sections.some((section) => section.fold === fold)).toBe(true);
      const taken = plan.ways.filter((way) => way.taken);
      expect(taken.map(({ length, folds }) => [length, folds])).toEqual([[plan.length, plan.way]]);
      const bottom = Math.max(...plan.pieces.flatMap(ringOf).map(({ y }) => y));
      expect(plan.length).toBeGreaterThan(bottom - 0.05);
      expect(plan.sections[plan.sections.length - 1]!.to).toBeCloseTo(plan.length, 6);
    },
  );

  it('folded lengthwise, both plies are cut at once: each pair is symmetric about the fold', () => {
    const { plan } = plans.find(({ fold }) => fold === 'lengthwise')!;
    for (const piece of plan.pieces) {
      const partner = plan.pieces.find((other) => other !== piece && other.number === piece.number) ?? piece;
      const xs = ringOf(piece).map(({ x }) => x);
      const others = ringOf(partner).map(({ x }) => x);
      expect(Math.min(...xs) + Math.max(...others)).toBeCloseTo(plan.facts.width, 3);
    }
  });

  it('crosswise on one-way cloth the lay says that the upper layer is cut off and turned', () => {
    const directed = plans.find(({ fold, oneWay }) => fold === 'crosswise' && oneWay)!.plan;
    expect(directed.sections.filter(({ fold }) => fold === 'crosswise').every((s) => s.upperTurned)).toBe(
      true,
    );
    expect(layRemarks(directed, 'cm').join(' ')).toMatch(/turn the upper layer round in its own plane/);
    const free = plans.find(({ fold, oneWay }) => fold === 'crosswise' && !oneWay)!.plan;
    expect(free.sections.some((s) => s.upperTurned)).toBe(false);
    expect(layRemarks(free, 'cm').join(' ')).not.toMatch(/turn the upper layer/);
  });

  it('a single lay is never longer than any fold, since every fold opens out to one', () => {
    const [plan] = laysOf(lantern, {}, ['lining']).lays;
    const single = plan!.ways.find(({ fold }) => fold === 'single')!;
    for (const { length, folds } of plan!.ways)
      expect(single.length, layWords(folds)).toBeLessThanOrEqual(length! + 1e-6);
  });

  it('the one-way shell comes near the rough model of its scenario, and far under a fold throughout', () => {
    // The model says about 4.7 m single and 5.75 m folded lengthwise, each ± 5 % (invented scenario).
    const single = plans.find(({ fold, oneWay }) => fold === 'single' && oneWay)!.plan.length;
    const folded = plans.find(({ fold, oneWay }) => fold === 'lengthwise' && oneWay)!.plan.length;
    expect(single).toBeLessThan(4700 * 1.05);
    expect(folded).toBeLessThan(5750 * 1.05);
  });

  it.each(['lengthwise', 'crosswise'] as const)('a lay folded %s does not hang on the seed', (fold) => {
    const lengths = [1, 2, 3].map((seed) => laysOf(sixGores, { fold }, ['lining'], seed).lays[0]!.length);
    expect(Math.max(...lengths)).toBeLessThan(Math.min(...lengths) * 1.02);
  });

  it('spare rectangles are clear of every piece', () => {
    for (const { plan } of plans) {
      for (const { x, y, width, height } of plan.spare) {
        const corners = rectangle(width, height).map((corner) => ({ x: corner.x + x, y: corner.y + y }));
        expectClearOf(plan, corners);
      }
    }
  });
});

it('the same spec gives the same lay', () => {
  const [first] = laysOf(lantern, {}, ['organza']).lays;
  const [second] = laysOf(lantern, {}, ['organza']).lays;
  expect(second).toEqual(first);
});

/** No sampled point of any cut line lies well inside the rectangle. */
function expectClearOf(plan: LayPlan, corners: readonly { x: number; y: number }[]): void {
  const [a, , c] = corners;
  for (const { outline } of plan.pieces) {
    for (const curve of outline) {
      for (let t = 0; t <= 1; t += 1 / 16) {
        const { x, y } = pointAt(curve, t);
        expect(x > a!.x + 0.1 && x < c!.x - 0.1 && y > a!.y + 0.1 && y < c!.y - 0.1).toBe(false);
      }
    }
  }
}
