import { describe, expect, it } from 'vitest';
import type { Curve, Point } from '../../src/geometry/curve.ts';
import { pointAt } from '../../src/geometry/evaluate.ts';
import { english } from '../../src/words/english.ts';
import { example, made, skirt } from './made.ts';

const DEPTH = 60;
const REPEAT = 140;
const LACE = `edging: {name: lace, depth: 6, repeat: 14, start: side/back}`;
const EDGED = '  - {name: shell, cloth: crepe, hem: raw, edging: lace}';

/** How the chords of a hem turn, added up by sense: what an eye on the pattern sees. */
function turnsOfChords(curves: readonly Curve[]): { outwards: number; inwards: number } {
  const points = curves.flatMap((curve, i) =>
    Array.from({ length: 400 }, (_, k) => pointAt(curve, (k + (i === 0 ? 0 : 1)) / 400)),
  );
  const way = (a: Point, b: Point) => Math.atan2(b.y - a.y, b.x - a.x);
  let [outwards, inwards] = [0, 0];
  for (let i = 2; i < points.length; i++) {
    const turn = way(points[i - 1]!, points[i]!) - way(points[i - 2]!, points[i - 1]!);
    const wrapped = Math.atan2(Math.sin(turn), Math.cos(turn));
    if (wrapped > 0) outwards += wrapped;
    else inwards -= wrapped;
  }
  return { outwards, inwards };
}

describe('an edging round a level hem', () => {
  it('laps flare × depth in each gore and eases nothing outside (geometry)', () => {
    const { facts } = made(
      skirt({ layers: EDGED, more: LACE }).replace(
        'measured: to-floor\n  off-floor: 2.5\n  hem-width-at: 100\n  at: {centre-front: 104, centre-back: 106}',
        'hem-width-at: 100\n  at: {centre-front: 100, centre-back: 100}',
      ),
    );
    // Top 12, 40 at 100 down: 0.28 radians in each of the three gores of the half.
    const rows = facts.edging!.hems[0]!.byGore;
    expect(rows.map(({ gore }) => gore)).toEqual(['front', 'side', 'back']);
    for (const { length, lap, lapPerMotif, easeOuter } of rows) {
      expect(length).toBeCloseTo(400, 2);
      expect(lap).toBeCloseTo(0.28 * DEPTH, 3);
      expect(lapPerMotif).toBeCloseTo((0.28 * DEPTH * REPEAT) / 400, 3);
      expect(easeOuter).toBeLessThan(0.001);
    }
  });
});

describe('an edging round a train', () => {
  const { facts, gown } = made(example('lantern'));
  const rows = facts.edging!.hems[0]!.byGore;
  const layer = gown.drafts.layers.find(({ layer: own }) => own.name === 'organza')!;

  it('is told by gore as the chords of its hem turn', () => {
    for (const [i, piece] of layer.draft.pieces.entries()) {
      const whole = piece.cut === 'on-fold' ? 2 : 1;
      const { outwards, inwards } = turnsOfChords(piece.edges[2]!.curves);
      expect(Math.abs(rows[i]!.lap - whole * outwards * DEPTH), piece.gore).toBeLessThan(0.2);
      expect(Math.abs(rows[i]!.easeOuter - whole * inwards * DEPTH), piece.gore).toBeLessThan(0.2);
    }
  });

  it('laps more than an average would, by what it eases in the hollow where the train begins', () => {
    const copies = (gore: string) => (gore === 'front' ? 1 : 2);
    const sum = (of: (row: (typeof rows)[number]) => number) =>
      rows.reduce((all, row) => all + copies(row.gore) * of(row), 0);
    const { innerSurplus } = facts.edging!.hems[0]!.plan!;
    expect(Math.abs(sum(({ lap }) => lap) - sum(({ easeOuter }) => easeOuter) - innerSurplus!)).toBeLessThan(
      0.1,
    );
    expect(sum(({ easeOuter }) => easeOuter)).toBeGreaterThan(10);
    expect(rows.find(({ gore }) => gore === 'side-back')!.easeOuter).toBeGreaterThan(5);
    expect(rows.find(({ gore }) => gore === 'front')!.easeOuter).toBeLessThan(1);
  });

  it('says so where it is sewn', () => {
    const words = english('cm');
    const step = facts.order.find(({ work }) => work.kind === 'edging')!;
    const { notes } = words.step(step.work);
    const hollow = rows.filter(({ easeOuter }) => easeOuter >= 1).map(({ gore }) => gore);
    expect(hollow.length).toBeGreaterThan(0);
    for (const gore of hollow) expect(notes.join(' ')).toContain(gore);
    expect(notes.join(' ')).toContain('ease its outer edge');
  });
});

describe("an edging off a cloth's own edges", () => {
  it('is cut inside the selvedge, and the step says so', () => {
    const own = LACE.replace('depth: 6', 'from: own-edges, cloth: crepe, depth: 6');
    const { facts } = made(skirt({ layers: EDGED, more: own }));
    const step = facts.order.find(({ work }) => work.kind === 'cut-own-edges')!;
    expect(english('cm').step(step.work).does).toContain('inside the selvedge, 6 cm deep');
  });
});
