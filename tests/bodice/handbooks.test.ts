import { describe, expect, it } from 'vitest';
import type { BodiceMeasures } from '../../src/bodice/bodice-measures.ts';
import { bonesAlong } from '../../src/bodice/bones.ts';
import { capePiece } from '../../src/bodice/cape.ts';
import { draftBodice } from '../../src/bodice/draft-bodice.ts';
import { laceThrough, lacingOf } from '../../src/bodice/lacing.ts';
import { measureBodice } from '../../src/bodice/measure-bodice.ts';
import { drafted, plain } from './drafted.ts';
import { walked } from './measured.ts';

/** Figures read in handbooks and public tutorials, or worked out by hand from them where that is said. */

const INCH = 25.4;
const inches = (values: readonly number[]): number[] => values.map((value) => value * INCH);

describe('The Practical Corsetiere', () => {
  /** A half-body of panels in inches: `widths[panel]` by level. */
  function shared(
    girths: readonly (readonly [at: string, above: number, girth: number, front?: number])[],
    widths: readonly Readonly<Record<string, number>>[],
    side: number,
  ): BodiceMeasures {
    const measures = plain(
      girths.map(([at, above, girth]) => [at, above * INCH, girth * INCH]),
      widths.length,
      3 * INCH,
    );
    return {
      ...measures,
      girths: girths.map(([at, above, girth, front]) => ({
        at,
        above: above * INCH,
        girth: girth * INCH,
        ...(front === undefined ? {} : { front: front * INCH }),
      })),
      sideSeam: `p${side - 1}/p${side}`,
      panels: measures.panels.map((panel, i) => ({
        ...panel,
        widths: Object.fromEntries(Object.entries(widths[i]!).map(([at, width]) => [at, width * INCH])),
      })),
    };
  }

  it('pages 18, 30: twelve panels, waist 28 under a hip of 38: an inch at each seam, the side seam too', () => {
    // Derived from the rules read. The hip's widths are those from which an inch a seam leaves the waist's.
    const hip = [2.75, 3.5, 3.25, 3.25, 3.5, 2.75];
    const { left } = drafted(
      shared(
        [
          ['underbust', 4, 34],
          ['waist', 0, 28],
          ['hip', -6, 38],
        ],
        hip.map((width) => ({ hip: width })),
        3,
      ),
    );
    const at = (level: string) =>
      left.widths.map((own) => own[left.levels.findIndex((one) => one.at === level)]!);
    expect(at('waist')).toEqual(inches([2.25, 2.5, 2.25, 2.25, 2.5, 2.25]).map((w) => expect.closeTo(w, 6)));
    expect(at('waist').reduce((sum, width) => sum + width, 0)).toBeCloseTo(14 * INCH, 6);
    // What the two panels at the side seam lose there: half of what each loses at its two seams.
    const loses = (p: number) => (at('hip')[p]! - at('waist')[p]!) / 2;
    expect(loses(2) + loses(3)).toBeCloseTo(1 * INCH, 6);
  });

  it('page 40: bust 40, waist 30, hip 39: the draft as blocked is told where it misses', () => {
    // Back 10.75, 10, 10.5 as printed; fronts that leave what the page finds: 1.5 to remove at the waist, 0.5 to add at the hip.
    const draft = draftBodice(
      shared(
        [
          ['bust', 8.5, 40],
          ['waist', 0, 30],
          ['hip', -6, 39],
        ],
        [
          { bust: 9.25, waist: 6.5, hip: 8.5 },
          { bust: 10.75, waist: 10, hip: 10.5 },
        ],
        1,
      ),
    );
    const misses = ('faults' in draft ? draft.faults : []).flatMap((fault) =>
      fault.code === 'widths-do-not-add-up'
        ? [[fault.level, (fault.rows.reduce((sum, row) => sum + row.width, 0) - fault.wanted) / INCH]]
        : [],
    );
    expect(misses).toEqual([
      ['waist', expect.closeTo(1.5, 9)],
      ['hip', expect.closeTo(-0.5, 9)],
    ]);
  });

  it.each([
    ['page 52: bust 47, back 13 of 23.5', 47, 40, 46, 13, 0.553],
    ['page 56: bust 43, back 12.5 of 21.5', 43, 36, 44, 12.5, 0.581],
  ])('%s', (_page, bust, waist, hip, back, share) => {
    const { left } = drafted(
      shared(
        [
          ['bust', 8, bust, bust - 2 * back],
          ['waist', 0, waist],
          ['hip', -6, hip],
        ],
        [{}, {}, {}, {}],
        2,
      ),
    );
    const [p0, p1, p2, p3] = left.widths.map((own) => own[0]! / INCH);
    expect(p0! + p1! + p2! + p3!).toBeCloseTo(bust / 2, 9);
    expect(p2! + p3!).toBeCloseTo(back, 9);
    expect((p2! + p3!) / (bust / 2)).toBeCloseTo(share, 3);
  });
});

it('corsetacademy.net, tutorial 2: front shares 0.535 and 0.513, princess seams 19 apart', () => {
  const measures = plain(
    [
      ['bust', 160, 860],
      ['underbust', 80, 780],
      ['waist', 0, 680],
      ['high-hip', -120, 900],
      ['hip', -190, 980],
    ],
    5,
    150,
    -100,
  );
  const fronts: Record<string, number> = { bust: 460, underbust: 400 };
  const draft = drafted({
    ...measures,
    girths: measures.girths.map((level) => ({
      ...level,
      ...(fronts[level.at] === undefined ? {} : { front: fronts[level.at]! }),
    })),
    bustPointsApart: 190,
    sideSeam: 'p1/p2',
  });
  const front = (l: number) => draft.left.widths[0]![l]! + draft.left.widths[1]![l]!;
  expect(front(0) / 430).toBeCloseTo(0.535, 3);
  expect(front(1) / 390).toBeCloseTo(0.513, 3);
  expect(2 * draft.left.widths[0]![0]!).toBeCloseTo(190, 9);
  expect(measureBodice(draft).levels.map(({ sewn }) => sewn)).toEqual(
    [860, 780, 680, 900, 980].map((girth) => expect.closeTo(girth, 1)),
  );
});

describe('Instructions in Spirella Corsetry, ch. 13: what the lacing leaves open at bust, waist, hip', () => {
  const measures = plain(
    [
      ['bust', 7 * INCH, 36 * INCH],
      ['waist', 0, 26 * INCH],
      ['hip', -7 * INCH, 38 * INCH],
    ],
    4,
    6 * INCH,
    -6 * INCH,
  );
  const gap = (bust: number, waist: number, hip: number) => ({
    bust: bust * INCH,
    waist: waist * INCH,
    hip: hip * INCH,
  });
  it.each([
    ['back', [{ at: 'centre-back', gap: gap(3, 2, 3) }], [3, 2, 3]],
    ['front', [{ at: 'centre-front', gap: gap(2, 2, 1) }], [2, 2, 1]],
    // Three in all: half in front, half behind.
    ['both', ['centre-front', 'centre-back'].map((at) => ({ at, gap: gap(1.5, 1.5, 1.5) })), [3, 3, 3]],
  ] as const)('laced at the %s', (_where, lacings, off) => {
    const { levels } = measureBodice(drafted({ ...measures, lacings }));
    expect(levels.map(({ body, sewn }) => (body - sewn) / INCH)).toEqual(
      off.map((inch) => expect.closeTo(inch, 2)),
    );
    expect(levels.map(({ open }) => open / INCH)).toEqual(off.map((inch) => expect.closeTo(inch, 9)));
  });
});

describe('bones', () => {
  const steel = { kind: 'spiral-steel', width: 7, clear: INCH / 2, step: INCH / 4 } as const;

  it('Baldt, Clothing for Women: ½ in short of the casing, ¾ lower at the sides than at the centre back', () => {
    // Five and a half above the waist at the centre back, 4¾ at the sides, one below.
    const measures = plain(
      [
        ['bust', 7 * INCH, 900],
        ['waist', 0, 660],
        ['hip', -7 * INCH, 960],
      ],
      4,
      5.5 * INCH,
      -INCH,
    );
    const above = { ...measures.upperEdge.above, 'p1/p2': 4.75 * INCH };
    const figures = measureBodice(drafted({ ...measures, upperEdge: { above, points: [] } }));
    const bone = (name: string) => {
      const seam = figures.seams.find((one) => one.name === name)!.lengths[0];
      return bonesAlong({ along: name, count: 2 }, seam, steel)!;
    };
    expect(bone('centre-back').room / INCH).toBeCloseTo(5.5 + 1 - 2 * 0.5, 2);
    expect((bone('centre-back').room - bone('p1/p2').room) / INCH).toBeCloseTo(0.75, 2);
    expect(bone('centre-back').casing / INCH).toBeCloseTo(6.5, 2);
  });

  it('½ in less than the seam: ¼ clear of each edge (sewing columns, common practice)', () => {
    const bone = bonesAlong({ along: 'p0/p1', count: 2 }, 10 * INCH, { ...steel, clear: INCH / 4 })!;
    expect(bone.length / INCH).toBeCloseTo(9.5, 9);
  });

  it('never longer than there is room for: steel by the step below, synthetic bone to the millimetre', () => {
    const seam = 213.7;
    const rule = { kind: 'spiral-steel', width: 7, clear: 10, step: 10 } as const;
    expect(bonesAlong({ along: 'a/b', count: 2 }, seam, rule)!.length).toBe(190);
    expect(bonesAlong({ along: 'a/b', count: 2 }, seam, { ...rule, kind: 'synthetic' })!.length).toBe(193);
    expect(bonesAlong({ along: 'a/b', count: 2 }, 19, rule)).toBeUndefined();
    expect(bonesAlong({ along: 'a/b', count: 2 }, 29, rule)).toBeUndefined();
  });
});

describe('lace: 2(n − 1)√(p² + g²) + g', () => {
  // Sixteen pairs 2.5 cm apart: 230 cm over a gap of 7, 840 over one of 27 (derived).
  const places = Array.from({ length: 16 }, (_, i) => 25 * i);
  it.each([
    [70, 230],
    [270, 840],
  ])('over a gap of %d mm, %d cm', (gap, lace) => {
    expect(laceThrough(places, () => gap) / 10).toBeCloseTo(lace, 0);
  });

  it('eyelets stand evenly, and the lace spans from row to row', () => {
    const lacing = lacingOf({
      edge: 272,
      gap: [50, 50],
      pitch: 25,
      fromEdge: 15,
      fromEnds: 15,
      doubledAtWaist: false,
      waist: 200,
      tails: 1000,
    })!;
    // 242 between the first and the last: ten spaces of 24.2.
    expect(lacing.eyelets).toBe(11);
    expect(lacing.pitch).toBeCloseTo(24.2, 9);
    expect(lacing.places[0]).toBe(15);
    expect(lacing.places[10]).toBeCloseTo(257, 9);
    expect(lacing.worn).toBeCloseTo(20 * Math.hypot(24.2, 80) + 80, 6);
    expect(lacing.lace).toBeCloseTo(lacing.worn + 1000, 9);
  });

  it('one more pair at the waist where she is laced in by loops', () => {
    const measures = {
      edge: 230,
      gap: [50, 50],
      pitch: 25,
      fromEdge: 15,
      fromEnds: 15,
      waist: 120,
      tails: 0,
    } as const;
    const plainly = lacingOf({ ...measures, doubledAtWaist: false })!;
    const doubled = lacingOf({ ...measures, doubledAtWaist: true })!;
    expect(doubled.eyelets).toBe(plainly.eyelets + 1);
    // Between the eyelets at 115 and 140, where the waist is.
    expect(doubled.places.filter((place) => !plainly.places.includes(place))).toEqual([127.5]);
    expect(lacingOf({ ...measures, edge: 30, doubledAtWaist: false })).toBeUndefined();
    // The edge ends at the waist: the last two eyelets are the nearest to it.
    const low = lacingOf({ ...measures, waist: 230, doubledAtWaist: true })!;
    expect(low.places.filter((place) => !plainly.places.includes(place))).toEqual([202.5]);
  });
});

describe('capes: R = inner edge ÷ angle', () => {
  const degrees = (angle: number) => (angle * Math.PI) / 180;
  const cape = (sewnTo: number, length: number, shape: { angle: number } | { fullness: number }) =>
    capePiece({ name: 'cape', layers: ['cape'], sewnTo, overArm: 0, length, shape })!;

  it('washuu.net, Cloak 3: neck 17 in, 270°: R = 57.3 · N/A, 3.608 (it prints 3.6)', () => {
    expect(cape(17 * INCH, 20 * INCH, { angle: degrees(270) }).radius! / INCH).toBeCloseTo(3.608, 3);
  });

  it.each([
    [180, 12.1, 163.7],
    [270, 8.06, 226.5],
    [360, 6.05, 289.3],
  ])('neck 38, length 40 cm, %d°: R %d, hem %d (derived)', (angle, radius, hem) => {
    const drawn = cape(380, 400, { angle: degrees(angle) });
    expect(drawn.radius! / 10).toBeCloseTo(radius, 1);
    expect(drawn.hem / 10).toBeCloseTo(hem, 1);
    const [inner, , outer] = drawn.piece.edges.map(({ curves }) => walked(curves).length);
    expect(inner).toBeCloseTo(380, 1);
    expect(outer! / 10).toBeCloseTo(hem, 1);
  });

  it('Rosenfeld 1918, p. 14: a circle 12 in across is 37.7 round; the page prints 36, three times the diameter', () => {
    const drawn = cape(Math.PI * 12 * INCH, INCH, { angle: degrees(360) });
    expect(drawn.radius! / INCH).toBeCloseTo(6, 9);
    expect(drawn.inner / INCH).toBeCloseTo(37.7, 1);
  });

  it('lengths by place: the hem lies so far down the cloth from the inner edge there, and square to both ends', () => {
    const angle = degrees(150);
    const lengths = [280, 400, 320];
    const drawn = capePiece({
      name: 'cape',
      layers: ['cape'],
      sewnTo: 742,
      overArm: 0,
      length: lengths.map((length, i) => ({ part: i / 2, length })),
      shape: { angle },
    })!;
    const [inner, back, hem, front] = drawn.piece.edges.map(({ curves }) => walked(curves));
    expect([front!.length, back!.length]).toEqual([expect.closeTo(280, 3), expect.closeTo(320, 3)]);
    // The apex lies a radius above the middle of the inner edge, on the line that halves the angle.
    const middle = inner!.points[Math.round((inner!.points.length - 1) / 2)]!;
    const apex = { x: middle.x, y: middle.y - drawn.radius! };
    const turnOf = ({ x, y }: { x: number; y: number }) => Math.atan2(x - apex.x, y - apex.y);
    const awayAt = (turn: number) => {
      const nearest = hem!.points.reduce((best, point) =>
        Math.abs(turnOf(point) - turn) < Math.abs(turnOf(best) - turn) ? point : best,
      );
      return Math.hypot(nearest.x - apex.x, nearest.y - apex.y) - drawn.radius!;
    };
    expect([-angle / 2, 0, angle / 2].map(awayAt)).toEqual(
      lengths.map((length) => expect.closeTo(length, 0)),
    );
  });

  it('what hangs over the arm lengthens the inner edge, and gathers take their fullness of it', () => {
    const sleeve = capePiece({
      name: 'sleeve',
      layers: ['tulle'],
      sewnTo: 120,
      overArm: 240,
      length: 380,
      shape: { fullness: 2 },
    })!;
    expect(sleeve.inner).toBe(360);
    expect(sleeve.piece.edges.map(({ curves }) => walked(curves).length)).toEqual(
      [720, 380, 720, 380].map((length) => expect.closeTo(length, 9)),
    );
    expect(sleeve.radius).toBeUndefined();
  });
});
