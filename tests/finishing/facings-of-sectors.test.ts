import { describe, expect, it } from 'vitest';
import type { Part } from '../../src/draft/part.ts';
import type { Piece } from '../../src/draft/piece.ts';
import { bindingParts } from '../../src/finishing/binding-parts.ts';
import { edgeFacingParts } from '../../src/finishing/edge-facing-parts.ts';
import { notchesOfFacing } from '../../src/finishing/facing-notches.ts';
import { facingsOfHem, facingsOfWaist } from '../../src/finishing/facings-of-hem.ts';
import { joinedFacings } from '../../src/finishing/joined-facings.ts';
import { areaInside } from '../../src/geometry/area.ts';
import type { Cubic, Point } from '../../src/geometry/curve.ts';
import { endOf, startOf, tangentAt } from '../../src/geometry/evaluate.ts';
import { lengthOfRun } from '../../src/geometry/length.ts';
import { at, quad } from '../quads.ts';
import { sectorPiece } from '../sheets/sector-piece.ts';

/** Facings of gores that are exact sectors of a ring: what a facing is then follows in closed form. mm, radians. */

const DEPTH = 60;
/** Top, half angle on either side, length: the ring's inner radius is top ÷ 2·half. */
const GORES = [
  { gore: 'front', top: 100, half: 0.1, long: 700, frontEdge: 'centre-front', backEdge: 'front/side' },
  { gore: 'side', top: 120, half: 0.15, long: 700, frontEdge: 'front/side', backEdge: 'side/back' },
  { gore: 'back', top: 140, half: 0.05, long: 700, frontEdge: 'side/back', backEdge: 'centre-back' },
];
const pieces = GORES.map(
  ({ half, long, ...gore }) =>
    sectorPiece({ ...gore, front: half, back: half, frontLength: long, backLength: long }).piece,
);
const draft = { pieces, gown: { round: 'mirrored' } };
const radii = GORES.map(({ top, half, long }) => ({ waist: top / (2 * half), hem: top / (2 * half) + long }));

const lengths = ({ edges }: Piece) => edges.map(({ name, curves }) => [name, lengthOfRun(curves)]);
const areaOf = ({ edges }: Piece) => Math.abs(areaInside(edges.flatMap(({ curves }) => curves)));
const rounded = (rows: (string | number)[][]) =>
  rows.map(([name, own]) => [name, expect.closeTo(own as number, 2)]);

describe('the facing of a hem', () => {
  it('its inner edge is the ring’s arc a depth further in, its sides are as high as it is deep', () => {
    const facings = facingsOfHem(draft as never, DEPTH) as Piece[];
    for (const [i, facing] of facings.entries()) {
      const { half, frontEdge, backEdge } = GORES[i]!;
      const { hem } = radii[i]!;
      expect(lengths(facing)).toEqual(
        rounded([
          ['inner-edge', 2 * half * (hem - DEPTH)],
          [backEdge, DEPTH],
          ['hem', 2 * half * hem],
          [frontEdge, DEPTH],
        ]),
      );
      // A ring's area is its middle arc times its depth.
      expect(areaOf(facing)).toBeCloseTo(2 * half * (hem - DEPTH / 2) * DEPTH, 0);
      expect([facing.part, facing.gore]).toEqual(['facing', GORES[i]!.gore]);
      // The thread runs down the cloth, within the facing.
      const { from, to } = facing.grain;
      expect(from.x).toBeCloseTo(to.x, 9);
      expect(Math.hypot(from.x, from.y)).toBeGreaterThan(hem - DEPTH);
      expect(Math.hypot(to.x, to.y)).toBeLessThan(hem);
      // A balance mark half way up each seam.
      expect([...notchesOfFacing(facing)]).toEqual([
        [backEdge, [expect.closeTo(DEPTH / 2, 2)]],
        [frontEdge, [expect.closeTo(DEPTH / 2, 2)]],
      ]);
    }
  });

  it('names the gore that is not so deep', () => {
    const short = pieces.with(
      1,
      sectorPiece({ ...GORES[1]!, front: 0.1, back: 0.1, frontLength: 50, backLength: 50 }).piece,
    );
    expect(facingsOfHem({ ...draft, pieces: short } as never, DEPTH)).toEqual({ gore: 'side' });
  });

  it('of a fold has no mark there, and its thread runs near it', () => {
    const [front] = pieces.map((piece) => ({
      ...piece,
      edges: piece.edges.map((edge) => ({
        ...edge,
        name: edge.name === 'centre-front' ? 'fold' : edge.name,
      })),
    }));
    // The fold lies at the left: 0.15 of the hem in from it, told as angles of the ring.
    const folded = { ...draft, pieces: [{ ...front!, frontEdge: 'fold' }, ...pieces.slice(1)] };
    const { grain } = (facingsOfHem(folded as never, DEPTH) as Piece[])[0]!;
    const { hem } = radii[0]!;
    const angle = -0.1 + 0.15 * 0.2;
    expect(grain.from.x).toBeCloseTo((hem - DEPTH / 2) * Math.sin(angle), 0);
    expect([...notchesOfFacing(front!).keys()]).toEqual(['front/side']);
  });
});

describe('a hem off square', () => {
  // 0.05° over 200: square to its side a facing of 40 falls 0.035 short of one side of the gore, and is run on to it. At
  // 1° 0.698 of it is cut off at the other side: of a last curve of 0.78 a crumb is left.
  it.each([
    [0.05, 200],
    [-0.05, 200],
    [1, 199.22],
  ])('by %f°: the last digit of a drawing turns no end of the inner edge', (degrees, split) => {
    const lean = (degrees * Math.PI) / 180;
    const line = (x: number, y: number, toX: number, toY: number) =>
      ({ kind: 'line', from: { x, y }, to: { x: toX, y: toY } }) as const;
    const at = (way: number) => ({ x: 200 - way, y: 1000 + way * Math.tan(lean) });
    const cubic = (a: number, b: number): Cubic => ({
      kind: 'cubic',
      from: at(a),
      control1: at((2 * a + b) / 3),
      control2: at((a + 2 * b) / 3),
      to: at(b),
    });
    const hem = split < 200 ? [cubic(0, split), cubic(split, 200)] : [cubic(0, 200)];
    const [right, left] = [at(0), at(200)];
    const edges = [
      { name: 'waist', curves: [line(0, 0, 200, 0)] },
      { name: 'side/back', curves: [line(200, 0, right.x, right.y)] },
      { name: 'hem', curves: hem },
      { name: 'front/side', curves: [line(left.x, left.y, 0, 0)] },
    ];
    const [facing] = facingsOfHem(
      { pieces: [{ ...pieces[1]!, edges }], gown: { round: 'mirrored' } } as never,
      40,
    ) as Piece[];
    const inner = facing!.edges[0]!.curves as readonly Cubic[];
    expect(lengthOfRun(inner)).toBeCloseTo(200 / Math.cos(lean), 6);
    // Drawn to a tenth of a micrometre, as files are.
    const drawn = ({ x, y }: Point) => ({ x: Math.round(x * 1e4) / 1e4, y: Math.round(y * 1e4) / 1e4 });
    const last = inner.at(-1)!;
    for (const [a, b] of [
      [inner[0]!.from, inner[0]!.control1 ?? inner[0]!.to],
      [last.control2 ?? last.from, last.to],
    ].map((ends) => ends.map(drawn) as [Point, Point])) {
      expect((Math.atan2(b.y - a.y, b.x - a.x) * 180) / Math.PI).toBeCloseTo(-degrees, 3);
    }
  });
});

describe('the facing of a waist', () => {
  it('is the ring’s upper end, and stands as its gore does', () => {
    const facings = facingsOfWaist(draft as never, DEPTH) as Piece[];
    for (const [i, facing] of facings.entries()) {
      const { half, frontEdge, backEdge, gore } = GORES[i]!;
      const { waist } = radii[i]!;
      expect(lengths(facing)).toEqual(
        rounded([
          ['waist', 2 * half * waist],
          [backEdge, DEPTH],
          ['inner-edge', 2 * half * (waist + DEPTH)],
          [frontEdge, DEPTH],
        ]),
      );
      expect([facing.gore, facing.frontEdge, facing.backEdge]).toEqual([gore, frontEdge, backEdge]);
      // The waist above, the front at the left, as the gore is drawn.
      const [upper, , lower] = facing.edges.map(({ curves }) => startOf(curves[0]!));
      expect(upper!.y).toBeLessThan(lower!.y);
      expect(upper!.x).toBeLessThan(0);
      expect(facing.grain.from.y).toBeLessThan(facing.grain.to.y);
    }
  });
});

describe('facings of neighbours whose edges slope otherwise', () => {
  // Upright sides, one edge of the first falling by 40 on 200: 60 deep it is 60/cos of that along a side. At a seam both
  // are as high as the one with the sharper corner there; the second is square.
  const sloped = DEPTH / Math.cos(Math.atan2(40, 200));
  const gores = (top: number, foot: number, seams: readonly [string, string, string]) => {
    const [front, middle, back] = seams;
    return [
      quad([at(0, 0), at(200, top), at(200, 1000 + foot), at(0, 1000)], undefined, {
        names: ['waist', middle, 'hem', front],
      }).piece,
      quad([at(0, 0), at(200, 0), at(200, 1000), at(0, 1000)], undefined, {
        names: ['waist', back, 'hem', middle],
      }).piece,
    ];
  };
  const centres = ['centre-front', 'a/b', 'centre-back'] as const;
  const round = ['b/a', 'a/b', 'b/a'] as const;
  const sides = (facings: unknown) =>
    (facings as Piece[]).map((own) => {
      const long = new Map(lengths(own) as [string, number][]);
      return [long.get(own.frontEdge), long.get(own.backEdge)];
    });
  const near = (rows: number[][]) => rows.map((row) => row.map((own) => expect.closeTo(own, 6)));

  it('hems: at a seam of both, at a centre its own, all the way round at each', () => {
    const half = facingsOfHem({ pieces: gores(0, 40, centres), gown: { round: 'mirrored' } } as never, DEPTH);
    expect(sides(half)).toEqual(
      near([
        [sloped, sloped],
        [sloped, DEPTH],
      ]),
    );
    const whole = facingsOfHem({ pieces: gores(0, 40, round), gown: { round: 'ring' } } as never, DEPTH);
    expect(sides(whole)).toEqual(
      near([
        [DEPTH, sloped],
        [sloped, DEPTH],
      ]),
    );
    const wrapped = facingsOfHem(
      { pieces: gores(0, 40, ['b/a', 'wrap-edge', 'b/a']), gown: { round: 'ring' } } as never,
      DEPTH,
    );
    expect(sides(wrapped)).toEqual(
      near([
        [DEPTH, sloped],
        [DEPTH, DEPTH],
      ]),
    );
  });

  it('waists the same, upside down', () => {
    const half = facingsOfWaist(
      { pieces: gores(40, 0, centres), gown: { round: 'mirrored' } } as never,
      DEPTH,
    );
    expect(sides(half)).toEqual(
      near([
        [sloped, DEPTH],
        [DEPTH, DEPTH],
      ]),
    );
    const whole = facingsOfWaist({ pieces: gores(40, 0, round), gown: { round: 'ring' } } as never, DEPTH);
    expect(sides(whole)).toEqual(
      near([
        [sloped, DEPTH],
        [DEPTH, sloped],
      ]),
    );
  });

  it('an inner edge runs straight through the seam: the neighbour’s direction there', () => {
    const [, square] = facingsOfHem(
      { pieces: gores(0, 40, centres), gown: { round: 'mirrored' } } as never,
      DEPTH,
    ) as Piece[];
    const inner = square!.edges[0]!.curves;
    const { x, y } = tangentAt(inner[0]!, 0);
    expect([x, y]).toEqual([200, 40].map((own) => expect.closeTo(own / Math.hypot(200, 40), 3)));
    // From there it comes to its own depth before three quarters of its way, and goes on level.
    const level = inner.at(-1)!;
    expect(startOf(inner[0]!)).toEqual({ x: expect.closeTo(0, 6), y: expect.closeTo(1000 - sloped, 6) });
    expect([startOf(level).y, endOf(level).y]).toEqual([940, 940].map((own) => expect.closeTo(own, 6)));
    expect(startOf(level).x).toBeCloseTo(20, 6);
  });
});

describe('facings of a free edge', () => {
  const layer = { name: 'tail-facing' };
  const asked = (free: readonly boolean[]) =>
    edgeFacingParts(
      {
        edgeFacing: { layer, depth: DEPTH, place: () => ({}) },
        stations: free.map((own) => ({ free: own })),
      } as never,
      [{ draft: { pieces: [] } }, { draft: { pieces } }] as never,
    ) as readonly Part[];

  it('each of its own side: as long as that side, as wide as it is deep', () => {
    expect(asked([false, true, false])).toEqual([]);
    const [front, back] = asked([true, false, true]);
    // The first gore's front edge and the last one's back edge, both 700 long and straight.
    for (const [facing, edge, gore, side] of [
      [front!, 'centre-front', 0, 3],
      [back!, 'centre-back', 2, 1],
    ] as const) {
      const { half } = GORES[gore]!;
      const [upper, , lower] = facing.piece.edges;
      expect(facing.of).toEqual({ kind: 'edge-facing', edge, depth: DEPTH });
      expect(facing.piece.gore).toBe(`${GORES[gore]!.gore}-edge`);
      expect(facing.piece.edges[side]!.name).toBe(edge);
      expect(lengthOfRun(facing.piece.edges[side]!.curves)).toBeCloseTo(700, 6);
      // Along an arc of radius r a line at distance d from a side meets it after r · asin(d / r).
      const arc = (radius: number) => radius * Math.asin(DEPTH / radius);
      const { waist, hem } = radii[gore]!;
      expect(2 * half * waist).toBeGreaterThan(arc(waist));
      expect(lengthOfRun(upper!.curves)).toBeCloseTo(arc(waist), 2);
      expect(lengthOfRun(lower!.curves)).toBeCloseTo(arc(hem), 2);
      expect([facing.piece.frontEdge, facing.piece.backEdge]).toEqual([
        facing.piece.edges[3]!.name,
        facing.piece.edges[1]!.name,
      ]);
    }
  });

  it('of a gore that has both free edges each is called by its own, and lies in the facing’s layer', () => {
    const single = edgeFacingParts(
      {
        edgeFacing: { layer, depth: DEPTH, place: () => ({}) },
        stations: [{ free: true }, { free: true }],
      } as never,
      [{ draft: { pieces: pieces.slice(1, 2) } }] as never,
    ) as readonly Part[];
    expect(single.map(({ piece }) => [piece.gore, piece.layers, piece.part])).toEqual([
      ['side-front-edge', ['tail-facing'], 'facing'],
      ['side-back-edge', ['tail-facing'], 'facing'],
    ]);
  });

  it('too deep for its gore, and where none is asked', () => {
    const none = { edgeFacing: undefined, stations: [{ free: true }, { free: true }] };
    expect(edgeFacingParts(none as never, [{ draft: { pieces } }] as never)).toEqual([]);
  });
});

describe('facings cut as one', () => {
  const allowances = (seam: number) => ({
    seam: { width: seam },
    waist: { width: 6 },
    hem: { width: 8 },
    named: {},
  });
  const layer = (width: number, seam: number) => ({
    name: 'f',
    cloth: { name: 'calico', width, selvedge: 0 },
    hem: 'raw',
    gores: GORES.map(({ gore }) => gore),
    allowances: allowances(seam),
  });
  const facings = facingsOfHem(draft as never, DEPTH) as Piece[];
  const names = (all: readonly Piece[], width: number, seam: number, open: string[] = []) =>
    joinedFacings(all, layer(width, seam) as never, open).map(({ piece }) => piece.gore);

  it('hem and inner edge go on over the seam, at its angle; its place is marked', () => {
    // Allowances as wide as these cost more than the curve.
    const [both] = joinedFacings(facings.slice(0, 2), layer(3000, 200) as never);
    const { piece, seams } = both!;
    expect(piece.gore).toBe('front-side');
    expect(seams.map(({ name }) => name)).toEqual(['front/side']);
    expect(lengthOfRun(seams[0]!.curves)).toBeCloseTo(DEPTH, 2);
    const [front, side] = [0, 1].map((i) => facings[i]!);
    const sum = (edge: number) =>
      lengthOfRun(front!.edges[edge]!.curves) + lengthOfRun(side!.edges[edge]!.curves);
    expect(lengths(piece)).toEqual(
      rounded([
        ['inner-edge', sum(0)],
        ['side/back', DEPTH],
        ['hem', sum(2)],
        ['centre-front', DEPTH],
      ]),
    );
    expect(areaOf(piece)).toBeCloseTo(areaOf(front!) + areaOf(side!), 0);
    // Closed: each edge ends where the next begins.
    for (const [i, { curves }] of piece.edges.entries()) {
      const next = startOf(piece.edges[(i + 1) % 4]!.curves[0]!);
      const end = endOf(curves.at(-1)!);
      expect(Math.hypot(end.x - next.x, end.y - next.y)).toBeLessThan(1e-2);
    }
    expect([piece.frontEdge, piece.backEdge]).toEqual(['centre-front', 'side/back']);
  });

  it('only where that takes less cloth, where the cloth is wide enough, and where the seam is sewn', () => {
    // Without allowances a bend only takes more.
    expect(names(facings, 3000, 0)).toEqual(['front', 'side', 'back']);
    // Gores as good as straight, 100, 120 and 140 wide: every seam that is left out saves two allowances.
    const straight = GORES.map(
      ({ half: _, long, ...gore }) =>
        sectorPiece({ ...gore, front: 1e-5, back: 1e-5, frontLength: long, backLength: long }).piece,
    );
    const level = facingsOfHem({ ...draft, pieces: straight } as never, DEPTH) as Piece[];
    // 360 and 2 × 50 across; 220 and 100; 260 and 100.
    expect(names(level, 461, 50)).toEqual(['front-side-back']);
    expect(names(level, 459, 50)).toEqual(['front-side', 'back']);
    expect(names(level, 319, 50)).toEqual(['front', 'side', 'back']);
    expect(names(level, 461, 50, ['front/side'])).toEqual(['front', 'side-back']);
    // Opened out on the fold the first alone is 200 and 100 wide, with the second 440 and 100.
    const folded = level.with(0, { ...level[0]!, cut: 'on-fold', frontEdge: 'fold' });
    expect(names(folded, 541, 50)).toEqual(['front-side', 'back']);
    expect(names(folded, 539, 50)).toEqual(['front', 'side-back']);
  });
});

describe('a binding’s block', () => {
  const layer = { name: 'binding', cloth: { name: 'calico', width: 1000, selvedge: 20 } };
  const own = { layer: { name: 'shell', gores: GORES.map(({ gore }) => gore) } };
  const drafts = {
    layers: [
      {
        ...own,
        draft: {
          pieces,
          lengths: [700, 710, 720, 730],
          gown: {
            round: 'mirrored',
            gores: GORES.map(({ gore }) => ({ name: gore })),
            stations: ['centre-front', 'front/side', 'side/back', 'centre-back'].map((name) => ({ name })),
          },
        },
      },
    ],
  };
  const lengthOf = (trim: object) => {
    const [part] = bindingParts(
      { trims: [{ layer: { name: 'shell' }, bias: layer, stations: [], ...trim }], godets: [] } as never,
      drafts as never,
    );
    return part?.of.kind === 'binding' ? part.of.strip : undefined;
  };

  it('is for all there is of the edge: round twice the half, and each seam as often as it is there', () => {
    const waist = 2 * GORES.reduce((sum, { top }) => sum + top, 0);
    expect(lengthOf({ along: 'waist' })).toMatchObject({ width: 40, length: expect.closeTo(waist, 3) });
    // A lap of 13 where it meets itself.
    const hem = 2 * GORES.reduce((sum, { half }, i) => sum + 2 * half * radii[i]!.hem, 0);
    expect(lengthOf({ along: 'hem', width: 33 })).toMatchObject({
      width: 33,
      length: expect.closeTo(hem + 13, 3),
    });
    const stations = [{ name: 'side/back', seams: 2 }];
    expect(lengthOf({ along: 'side/back', stations })).toMatchObject({ length: 1440 });
    const [block] = bindingParts(
      {
        trims: [{ layer: { name: 'shell' }, bias: layer, stations, along: 'side/back', width: 30 }],
        godets: [],
      } as never,
      drafts as never,
    );
    // 1440 × 30 are 207.8²: a square of 210, six to sew on each of its edges.
    expect(lengths(block!.piece).map(([name, own]) => [name, Math.round(own as number)])).toEqual(
      ['upper-end', 'right-side', 'lower-end', 'left-side'].map((name) => [name, 210]),
    );
    expect([block!.lowerSewn, block!.quartered, block!.roughCut]).toEqual([true, false, 0]);
    expect(block!.allowances).toEqual({ 'upper-end': 6, 'right-side': 6, 'lower-end': 6, 'left-side': 6 });
    expect([block!.piece.frontEdge, block!.piece.backEdge, block!.piece.part]).toEqual([
      'left-side',
      'right-side',
      'binding',
    ]);
    expect(lengthOf({ along: 'a/b', stations: [{ name: 'a/b', seams: 2 }] })).toBeUndefined();
    expect(lengthOf({ along: 'waist', layer: { name: 'other' } })).toBeUndefined();
    expect(lengthOf({ along: 'waist', bias: undefined })).toBeUndefined();
  });
});
