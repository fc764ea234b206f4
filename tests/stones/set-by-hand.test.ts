import { describe, expect, it } from 'vitest';
import type { Line, Point } from '../../src/geometry/curve.ts';
import { startOf } from '../../src/geometry/evaluate.ts';
import { placedStones } from '../../src/stones/placed-stones.ts';
import { scattered } from '../../src/stones/scatter.ts';
import { seamLine } from '../../src/stones/seam-line.ts';
import { countOf, stonesOfGown } from '../../src/stones/set-stones.ts';
import { stoneFacts } from '../../src/stones/stone-facts.ts';
import { stoneFindings } from '../../src/stones/stone-findings.ts';
import { stonesMarked } from '../../src/stones/stone-marks.ts';
import { line } from '../line.ts';

/**
 * Stones on upright rectangles 300 and 200 wide whose waist falls by one in ten on the way back and whose hem by one in
 * twenty: where each lies follows by a sum. mm.
 */

interface Own {
  readonly gore: string;
  readonly wide: number;
  readonly front: string;
  readonly back: string;
  readonly side?: 'left' | 'right';
  readonly x?: number;
  readonly y?: number;
}
const piece = ({ gore, wide, front, back, side, x = 0, y = 0 }: Own) => ({
  gore,
  side,
  cut: [front, back].includes('fold') ? 'on-fold' : 'pair',
  edges: [
    { name: 'waist', curves: [line(x, y, x + wide, y)] },
    { name: back, curves: [line(x + wide, y, x + wide, y + 900)] },
    { name: 'hem', curves: [line(x + wide, y + 900, x, y + 900)] },
    { name: front, curves: [line(x, y + 900, x, y)] },
  ],
  frontEdge: front,
  backEdge: back,
});
const FRONT: Own = { gore: 'front', wide: 300, front: 'fold', back: 'front/back' };
const BACK: Own = { gore: 'back', wide: 200, front: 'front/back', back: 'centre-back' };
const MIRRORED = {
  round: 'mirrored',
  gores: [{ name: 'front', fold: 'front' }, { name: 'back' }],
  of: [FRONT, BACK],
};
const LAYER = { name: 'shell', gores: ['front', 'back'] };

function layerOf({ of, ...gown }: { round: string; gores: object[]; of: Own[] }, layer: object = LAYER) {
  const ways = [0, ...of.map((_, i) => of.slice(0, i + 1).reduce((sum, { wide }) => sum + wide, 0))];
  const edge = (top: number, fall: number) => ({
    ways,
    joins: ways,
    valueAt: (way: number) => top + fall * way,
  });
  return {
    layer,
    draft: {
      gown: { stations: ways.map(() => ({})), ...gown },
      pieces: of.map(piece),
      frames: of.map(({ wide }) => ({
        widthAt: () => wide,
        pointAt: (depth: number, share: number) => ({ x: share * wide, y: depth }),
      })),
      waist: edge(10, 0.1),
      hem: edge(900, 0.05),
      shape: {},
    },
  };
}

const near = ({ x, y }: Point) => ({ x: expect.closeTo(x, 6), y: expect.closeTo(y, 6) });
const placed = (places: object[], gown = MIRRORED as Parameters<typeof layerOf>[0], layer?: object) =>
  placedStones({ places } as never, layerOf(gown, layer) as never);

describe('where stones lie that are set one by one', () => {
  it('below the waist or above the hem, as each lies that far across', () => {
    const stones = placed([
      { gore: 'front', across: 0.25, belowWaist: 40 },
      { gore: 'back', across: 0.75, aboveHem: 90 },
      { gore: 'back', across: 0, belowWaist: 0 },
      { gore: 'front', across: 1, aboveHem: 0 },
      { gore: 'front', across: 0.5 },
    ]);
    expect(stones).toEqual([
      // 75 of the way: 10 + 7.5 and 40 below.
      { told: 0, index: 0, once: false, at: near({ x: 75, y: 57.5 }) },
      // 450 of the way: 900 + 22.5 less 90.
      { told: 1, index: 1, once: false, at: near({ x: 150, y: 832.5 }) },
      { told: 2, index: 1, once: false, at: near({ x: 0, y: 40 }) },
      { told: 3, index: 0, once: false, at: near({ x: 300, y: 915 }) },
      { told: 4, index: 0, once: false, at: near({ x: 150, y: 25 }) },
    ]);
  });

  it('none above the waist, below the hem, or on a gore that the layer does not have', () => {
    const far = [
      { gore: 'back', across: 0.5, belowWaist: 869 },
      { gore: 'back', across: 0.5, belowWaist: 871 },
      { gore: 'back', across: 0.5, aboveHem: 869 },
      { gore: 'back', across: 0.5, aboveHem: 871 },
      { gore: 'none', across: 0.5, aboveHem: 100 },
    ];
    // 400 of the way: 50 at the waist, 920 at the hem.
    expect(placed(far).map(({ told }) => told)).toEqual([0, 2]);
    expect(placed(far, undefined, { name: 'shell', gores: ['front'] })).toEqual([]);
  });

  it('once on a fold, twice beside it; on her right that far from the front as on her left', () => {
    const at = (across: number) => ({ gore: 'front', across, belowWaist: 100 });
    expect(placed([at(0), at(1), at(0.5)]).map(({ once }) => once)).toEqual([true, false, false]);
    const folded = { ...MIRRORED, gores: [{ name: 'front', fold: 'back' }, { name: 'back' }] };
    expect(placed([at(0), at(1)], folded).map(({ once }) => once)).toEqual([false, true]);
    const gores = (front: object) => [
      { name: 'front', side: 'left', ...front },
      { name: 'back', side: 'left' },
      { name: 'back', side: 'right' },
      { name: 'front', side: 'right', fold: 'back' },
    ];
    const halves = {
      round: 'two-halves',
      gores: gores({ fold: 'front' }),
      of: [FRONT, BACK, BACK, FRONT],
    };
    expect(placed([at(0.25)], halves).map(({ index, at: { x } }) => [index, x])).toEqual([
      [0, expect.closeTo(75, 6)],
      [3, expect.closeTo(225, 6)],
    ]);
    // On the fold of both it is her left half's.
    expect(placed([at(0)], halves).map(({ index, once }) => [index, once])).toEqual([[0, true]]);
    // Where gores stand once each round, a right side is a name alone.
    const ring = { ...halves, round: 'ring' };
    expect(placed([at(0.25)], ring).map(({ at: { x } }) => x)).toEqual([
      expect.closeTo(75, 6),
      expect.closeTo(75, 6),
    ]);
  });
});

describe('sets of stones', () => {
  const leaf = {
    name: 'leaf',
    layer: LAYER,
    size: 20,
    clear: 0,
    places: [
      { gore: 'front', across: 0, belowWaist: 100 },
      { gore: 'front', across: 0.5, belowWaist: 100 },
      { gore: 'back', across: 0.5, belowWaist: 100 },
    ],
  };
  const scatter = (name: string, size: number | undefined, perDm2 = 0, own: object = {}) => ({
    name,
    layer: LAYER,
    clear: 0,
    size,
    perDm2: [perDm2, perDm2],
    ...own,
  });
  const set = (stones: object[], layers = [layerOf(MIRRORED)]) =>
    stonesOfGown({ stones, pleats: [] } as never, { layers } as never);
  const names = (found: ReturnType<typeof set>) => [...found.keys()].map(({ name }) => name);

  it('what has its place first, then from the widest on; alike ones as they are written', () => {
    const sets = [scatter('b', 3), scatter('none', undefined), scatter('a', 30), leaf, scatter('c', 3)];
    expect(names(set(sets))).toEqual(['leaf', 'a', 'b', 'c', 'none']);
    const small = { ...leaf, size: 2 };
    expect(names(set([scatter('a', 30), small]))).toEqual(['leaf', 'a']);
    expect(names(set([scatter('a', 3, 0, { layer: { name: 'other' } })]))).toEqual([]);
  });

  it('counted on both sides of her, on a fold once; whole gross and the weight of all', () => {
    const layer = layerOf(MIRRORED);
    const own = { ...leaf, gramsPer1000: 1200 };
    const facts = stoneFacts(
      { stones: [own, { ...scatter('x', 4), layer: { name: 'no' } }], pleats: [] } as never,
      { layers: [layer] } as never,
    );
    // 2 beside the fold of the front and behind, twice each, and 1 on it.
    expect(facts).toMatchObject([{ count: 5, gross: 1, grams: 6 }]);
    expect(
      facts[0]!.pieces.map(({ gore, index, times, once, stones }) => [
        gore,
        index,
        times,
        once,
        stones.length,
      ]),
    ).toEqual([
      ['front', 0, 2, 1, 2],
      ['back', 1, 2, 0, 1],
    ]);
    expect(facts[0]!.pieces[1]!.outline).toEqual(
      expect.arrayContaining([
        { x: 200, y: 900 },
        { x: 200, y: 0 },
      ]),
    );
    const ring = stoneFacts(
      { stones: [leaf], pleats: [] } as never,
      {
        layers: [layerOf({ ...MIRRORED, round: 'ring', gores: [{ name: 'front' }, { name: 'back' }] })],
      } as never,
    );
    expect(ring).toMatchObject([{ count: 3, grams: undefined }]);
    expect(
      set([leaf], [layerOf(MIRRORED, { name: 'shell', gores: ['back'] })]).get(leaf as never),
    ).toMatchObject([{ gore: 'back' }]);
    const many = (times: number, once: number, of: number) => ({ times, once, stones: Array(of).fill(0) });
    // 2 × (80 − 7) + 7, and 3 × 45: 288 are two gross exactly.
    expect(countOf([many(2, 7, 80), many(3, 0, 45)] as never)).toBe(288);
  });

  it('keep clear of a motif of 8 or more on their layer, and of no bead', () => {
    const small = (own: object) => ({
      ...layerOf({
        ...MIRRORED,
        of: [
          { ...FRONT, wide: 60 },
          { ...BACK, wide: 60 },
        ],
      }),
      ...own,
    });
    const drop = (size: number, own: object = {}) => ({
      ...leaf,
      name: 'drop',
      size,
      places: [{ gore: 'front', across: 0.5, belowWaist: 100 }],
      ...own,
    });
    const beads = scatter('beads', 4, 150, { over: [60, 160] });
    const nearest = (...sets: object[]) => {
      const other = small({ layer: { name: 'net', gores: ['front', 'back'] } });
      const found = set([...sets, beads], [small({}), other]).get(beads as never)!;
      return Math.min(...found[0]!.stones.map(({ x, y }) => Math.hypot(x - 30, y - 113)));
    };
    // Half of 8 and of 4; beads alone lie 100·√(0.62/150) = 6.4 apart, and leave no hole of that radius.
    expect(nearest(drop(8))).toBeGreaterThanOrEqual(6);
    expect(nearest(drop(40))).toBeGreaterThanOrEqual(22);
    expect(nearest(drop(40))).toBeLessThan(22 + 6.5);
    expect(nearest(drop(7.9))).toBeLessThan(5.95);
    expect(nearest(drop(40, { layer: { name: 'net', gores: ['front', 'back'] } }))).toBeLessThan(6.5);
    // So far apart as is asked, and as wide as they are: 20 + 4, where their density asks for 6.4.
    const apart = { ...beads, apart: 20 };
    const [front] = set([apart], [small({})]).get(apart as never)!;
    const own = front!.stones;
    const gaps = own.flatMap((a, i) => own.slice(i + 1).map((b) => Math.hypot(a.x - b.x, a.y - b.y)));
    expect(Math.min(...gaps)).toBeGreaterThanOrEqual(24);
    expect(Math.min(...gaps)).toBeLessThan(30);
  });

  it('as many wherever a piece is drawn, each inside it', () => {
    const patch = (x: number, y: number) => {
      const { edges } = piece({ ...BACK, wide: 60, x, y });
      const outline = edges.map(({ curves }) => startOf(curves[0]!));
      return { outline, sides: [{ line: seamLine(edges[1]!.curves) }], densityAt: () => 8 };
    };
    // 60 × 900 at 8 a square decimetre are 43.
    for (const [x, y] of [
      [0, 0],
      [5000, -9000],
      [-7000, 4000],
    ] as const) {
      const [stones] = scattered([patch(x, y)], 1);
      expect(stones!.length).toBeGreaterThan(37);
      for (const at of stones!) expect([at.x - x, at.y - y].every((own) => own > 0 && own < 900)).toBe(true);
    }
  });
});

describe('stones marked on a piece', () => {
  const own = {
    name: 'leaf',
    onPattern: true,
    layer: LAYER,
    clear: 0,
    size: 4,
    places: [
      { gore: 'front', across: 0, belowWaist: 100 },
      { gore: 'front', across: 0.2, belowWaist: 100 },
    ],
  };
  const marked = (
    stones: object[],
    cut: object = { cut: 'on-fold' },
    gown = MIRRORED as Parameters<typeof layerOf>[0],
    which = 0,
    layer: object = LAYER,
  ) =>
    stonesMarked({ stones, pleats: [] } as never, { layers: [layerOf(gown)] } as never)(
      layer as never,
      cut as never,
      which,
    );
  const middles = (found: ReturnType<typeof marked>) =>
    found.flatMap(({ runs }) =>
      runs.map(([dot]) => {
        const { from, to } = dot as Line;
        return [(from.x + to.x) / 2, from.y].map((figure) => Math.round(figure * 1e6) / 1e6);
      }),
    );

  it('a bead as a dash of 0.8 level across its middle, a motif as wide and as high as it is', () => {
    const [dots] = marked([own]);
    expect([dots!.name, dots!.layer]).toEqual(['leaf', 'shell']);
    expect(dots!.runs[1]).toEqual([
      { kind: 'line', from: near({ x: 59.6, y: 116 }), to: near({ x: 60.4, y: 116 }) },
    ]);
    const extremes = (motif: object) =>
      marked([{ ...own, ...motif }])[0]!.runs[1]!.map((curve) => startOf(curve));
    expect(extremes({ size: 60, motif: { width: 40, height: 60 } })).toEqual(
      [
        { x: 40, y: 116 },
        { x: 60, y: 86 },
        { x: 80, y: 116 },
        { x: 60, y: 146 },
      ].map(near),
    );
    expect(extremes({ size: 8 })).toEqual(
      [
        { x: 56, y: 116 },
        { x: 60, y: 112 },
        { x: 64, y: 116 },
        { x: 60, y: 120 },
      ].map(near),
    );
  });

  it('only where it is asked for, on its own layer, where there are any', () => {
    expect(marked([{ ...own, onPattern: undefined }])).toEqual([]);
    expect(marked([own], undefined, undefined, 0, { name: 'net' })).toEqual([]);
    expect(marked([own], { cut: 'pair' }, undefined, 1)).toEqual([]);
    expect(marked([own, { ...own, name: 'rose' }]).map(({ name }) => name)).toEqual(['leaf', 'rose']);
  });

  it('of a half that is cut whole those of the other half too: its mirror image, what lies on the fold once', () => {
    const asHalf = [
      [0, 110],
      [60, 116],
    ];
    expect(middles(marked([own]))).toEqual(asHalf);
    expect(middles(marked([own], { cut: 'single' }))).toEqual([...asHalf, [-60, 116]]);
    // One that is no half stays as it is.
    const back = { ...own, places: [{ gore: 'back', across: 0.2, belowWaist: 100 }] };
    expect(middles(marked([back], { cut: 'single' }, undefined, 1))).toEqual([[40, 144]]);
  });

  it('of her right where her sides differ, moved until fold lies on fold at its top', () => {
    const halves = {
      round: 'two-halves',
      gores: [
        { name: 'front', side: 'left', fold: 'front' },
        { name: 'back', side: 'left' },
        { name: 'back', side: 'right' },
        { name: 'front', side: 'right', fold: 'back' },
      ],
      of: [
        { ...FRONT, side: 'left' },
        { ...BACK, side: 'left' },
        { ...BACK, side: 'right' },
        // Drawn with its fold at 300 and its top 7 above the other's; its stones lie at 240, and 97 of the way back.
        { gore: 'front', wide: 300, front: 'front/back', back: 'fold', side: 'right', y: -7 },
      ] as Own[],
    };
    // Of the whole way of 1000 her right front begins at 700: 10 + 70 + 24 below the waist, and 100.
    expect(middles(marked([own], { cut: 'single' }, halves))).toEqual([
      [0, 110],
      [60, 116],
      [240 - 300, 204 + 7],
    ]);
  });
});

describe('stones that cannot lie as they are asked for', () => {
  const place = (...keys: unknown[]) => ({ source: { name: keys.join('.'), text: '' }, start: 0, end: 0 });
  const found = (stones: object, layer: object = LAYER) =>
    stoneFindings(
      { units: 'mm', stones: [{ name: 'leaf', layer: LAYER, clear: 10, place, ...stones }] } as never,
      { layers: [layerOf(MIRRORED, layer)] } as never,
    ).map(({ code, message, hint, span }) => [
      code,
      message,
      hint,
      (span as unknown as { source: { name: string } }).source.name,
    ]);

  it('denser than they are wide: 100·√(0.62/d) apart, at most 6200/w² a square decimetre', () => {
    expect(found({ size: 10, perDm2: [20, 62] })).toEqual([]);
    // 9.96 and 10.
    expect(found({ size: 10, perDm2: [62.5, 20] })).toEqual([
      [
        'stones-overlap',
        expect.stringContaining('may lie 10 mm apart, and 10 mm are needed'),
        expect.stringContaining('Ask for 62 on a square decimetre'),
        'per-dm2',
      ],
    ]);
    expect(found({ size: 20, perDm2: [5, 100] })).toEqual([
      [
        'stones-overlap',
        expect.stringContaining('may lie 8 mm apart, and 20 mm are needed'),
        expect.stringContaining('Ask for 16 on a square decimetre'),
        'per-dm2',
      ],
    ]);
    expect(found({ size: 20, perDm2: [0, 0] })).toEqual([]);
  });

  it('kept farther apart than their number allows', () => {
    // 20 and 5: 6200/25² = 9.92.
    expect(found({ size: 20, apart: 5, perDm2: [9.9, 9.9] })).toEqual([]);
    expect(found({ size: 20, apart: 5, perDm2: [8, 12] })).toEqual([
      [
        'stones-kept-apart',
        expect.stringMatching(
          /asked for at 12 on a square decimetre and kept 5 mm apart: no more than about 9\.9 /,
        ),
        expect.any(String),
        'apart',
      ],
    ]);
  });

  it('off the cloth, or nearer to an edge than is to be clear and half of one: 10 and 3; on a fold none', () => {
    const at = (own: object) => ({ size: 6, places: [{ gore: 'back', across: 0.5, belowWaist: 300 }, own] });
    expect(found(at({ gore: 'back', across: 0.5, belowWaist: 2000 }))).toEqual([
      ['stone-off-cloth', expect.stringMatching(/leaf.*back.*shell/), expect.any(String), 'places.1'],
    ]);
    // 12 from its front edge, 188 from the other.
    expect(found(at({ gore: 'back', across: 0.06, belowWaist: 300 }))).toEqual([
      [
        'stone-near-edge',
        expect.stringMatching(/gore .?back.? has its middle 12 mm from .?front\/back.?; it needs 13 mm/),
        expect.any(String),
        'places.1',
      ],
    ]);
    expect(found(at({ gore: 'back', across: 0.07, belowWaist: 300 }))).toEqual([]);
    expect(found(at({ gore: 'front', across: 0, belowWaist: 300 }))).toEqual([]);
    expect(found(at({ gore: 'back', across: 0.5, belowWaist: 2000 }), { name: 'net' })).toEqual([]);
  });
});
