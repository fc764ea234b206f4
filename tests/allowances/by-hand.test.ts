import { describe, expect, it } from 'vitest';
import type { AllowancePlan } from '../../src/allowances/allowance-plan.ts';
import { bustleMarks, bustleRemarks } from '../../src/allowances/bustle-points.ts';
import { crossedOutlines } from '../../src/allowances/crossed-outlines.ts';
import { cutOutline } from '../../src/allowances/cut-outline.ts';
import { facingMarks } from '../../src/allowances/facing-marks.ts';
import { pleatFolds } from '../../src/allowances/pleat-folds.ts';
import { tuckHeights, tuckLines, tuckRemarks } from '../../src/allowances/tuck-lines.ts';
import type { BustleMarked, Piece } from '../../src/draft/piece.ts';
import type { Curve, Line } from '../../src/geometry/curve.ts';
import { endOf, startOf } from '../../src/geometry/evaluate.ts';
import { line } from '../line.ts';

/** A gore whose sides lean 1 in 20: every corner of its cut line by hand. mm. */

const LEAN = Math.atan(0.05);
const [COS, SIN] = [Math.cos(LEAN), Math.sin(LEAN)];
function gore(own: Partial<Piece> = {}): Piece {
  return {
    gore: 'side',
    layers: ['shell'],
    edges: [
      { name: 'waist', curves: [line(0, 0, 200, 0)] },
      { name: 'side/back', curves: [line(200, 0, 250, 1000)] },
      { name: 'hem', curves: [line(250, 1000, -50, 1000)] },
      { name: 'front/side', curves: [line(-50, 1000, 0, 0)] },
    ],
    frontEdge: 'front/side',
    backEdge: 'side/back',
    grain: line(100, 200, 100, 800),
    cut: 'pair',
    ...own,
  };
}
const plan = (own: Partial<AllowancePlan> = {}): AllowancePlan => ({
  widths: { waist: 12, hem: 30, 'side/back': 15, 'front/side': 20 },
  roughCut: 0,
  hemCorner: 'plain',
  waistCorner: 'plain',
  ...own,
});
/** Where each edge of the cut line turns, from its start to its end. */
const cornersOf = (own: AllowancePlan, piece = gore()) =>
  cutOutline(piece, own).map(({ name, curves }) => [
    name,
    [startOf(curves[0]!), ...curves.map(endOf)].map(({ x, y }) => [
      expect.closeTo(x, 6),
      expect.closeTo(y, 6),
    ]),
  ]);
/** x of the cut line beside the right or the left side, at a height. */
const right = (y: number, width = 15) => 200 + 0.05 * y + width / COS;
const left = (y: number, width = 20) => -0.05 * y - width / COS;

describe('the cut line of a gore', () => {
  it('plain: every line runs on until it meets the next', () => {
    expect([
      [
        'waist',
        [
          [left(-12), -12],
          [right(-12), -12],
        ],
      ],
      [
        'side/back',
        [
          [right(-12), -12],
          [right(1030), 1030],
        ],
      ],
      [
        'hem',
        [
          [right(1030), 1030],
          [left(1030), 1030],
        ],
      ],
      [
        'front/side',
        [
          [left(1030), 1030],
          [left(-12), -12],
        ],
      ],
    ]).toEqual(cornersOf(plan()));
  });

  it('a rough cut lies below the hem’s own allowance', () => {
    const [, back, hem] = cornersOf(plan({ roughCut: 25 }));
    expect([
      'side/back',
      [
        [right(-12), -12],
        [right(1055), 1055],
      ],
    ]).toEqual(back);
    expect([
      'hem',
      [
        [right(1055), 1055],
        [left(1055), 1055],
      ],
    ]).toEqual(hem);
  });

  it('pressed open at the waist: folded back about the seam it ends level with the waist’s own cut line', () => {
    const seamAt = (sign: 1 | -1) => (sign === 1 ? 200 - 0.6 : 0.6);
    const corner = (sign: 1 | -1, width: number) => [
      // The mirror image of what lies as far inside the seam, level at 12 above.
      seamAt(sign) - sign * (width / COS) + sign * 2 * width * COS,
      -12 - 2 * width * SIN,
    ];
    const [waist, back, , front] = cornersOf(plan({ waistCorner: 'mirrored' }));
    expect(['waist', [corner(-1, 20), [seamAt(-1), -12], [seamAt(1), -12], corner(1, 15)]]).toEqual(waist);
    expect(['side/back', [corner(1, 15), [right(1030), 1030]]]).toEqual(back);
    expect(['front/side', [[left(1030), 1030], corner(-1, 20)]]).toEqual(front);
  });

  it('a turned hem is the mirror image of what lies above it; below a fold or a bare edge it runs on plain', () => {
    const below = (sign: 1 | -1, width: number) => (sign === 1 ? right(970, width) : left(970, width));
    const [, back, hem, front] = cornersOf(plan({ hemCorner: 'mirrored' }));
    expect([
      'side/back',
      [
        [right(-12), -12],
        [right(1000), 1000],
        [below(1, 15), 1030],
      ],
    ]).toEqual(back);
    expect([
      'hem',
      [
        [below(1, 15), 1030],
        [below(-1, 20), 1030],
      ],
    ]).toEqual(hem);
    expect([
      'front/side',
      [
        [below(-1, 20), 1030],
        [left(1000), 1000],
        [left(-12), -12],
      ],
    ]).toEqual(front);
    const bare = plan({ hemCorner: 'mirrored', widths: { waist: 12, hem: 30, 'front/side': 20 } });
    expect([
      'side/back',
      [
        [right(-12, 0), -12],
        [right(1030, 0), 1030],
      ],
    ]).toEqual(cornersOf(bare)[1]);
    const raw = plan({
      hemCorner: 'mirrored',
      widths: { waist: 12, hem: 0, 'side/back': 15, 'front/side': 20 },
    });
    expect([
      'hem',
      [
        [right(1000), 1000],
        [left(1000), 1000],
      ],
    ]).toEqual(cornersOf(raw)[2]);
  });

  it('a faced hem has its corners cut off, from the end of one allowance to the end of the other', () => {
    const [, back, hem, front] = cornersOf(plan({ hemCorner: 'trimmed' }));
    const [outRight, outLeft] = [
      [250 + 15 * COS, 1000 - 15 * SIN],
      [-50 - 20 * COS, 1000 - 20 * SIN],
    ];
    expect(['side/back', [[right(-12), -12], outRight]]).toEqual(back);
    expect(['hem', [outRight, [250, 1030], [-50, 1030], outLeft]]).toEqual(hem);
    expect(['front/side', [outLeft, [left(-12), -12]]]).toEqual(front);
  });

  it('a lower edge that is sewn has the corners of an upper one', () => {
    const [, , hem] = cornersOf(plan({ lowerSewn: true, waistCorner: 'mirrored', hemCorner: 'trimmed' }));
    const corner = (sign: 1 | -1, width: number) => [
      (sign === 1 ? 251.5 : -51.5) - sign * (width / COS) + sign * 2 * width * COS,
      1030 - 2 * width * SIN,
    ];
    expect(['hem', [corner(1, 15), [251.5, 1030], [-51.5, 1030], corner(-1, 20)]]).toEqual(hem);
    expect([
      'hem',
      [
        [right(1030), 1030],
        [left(1030), 1030],
      ],
    ]).toEqual(cornersOf(plan({ lowerSewn: true }))[2]);
  });

  it('without any allowance it is the seam line', () => {
    expect(cutOutline(gore(), plan({ widths: {} })).map(({ curves }) => curves)).toEqual(
      gore().edges.map(({ curves }) => curves),
    );
  });
});

describe('a top narrower than its allowances', () => {
  /** Upright sides 20 apart under a waist that runs down 1 in 10, allowances of 30 beside it. */
  const narrow = gore({
    edges: [
      { name: 'waist', curves: [line(0, 0, 20, 2)] },
      { name: 'side/back', curves: [line(20, 2, 20, 1000)] },
      { name: 'hem', curves: [line(20, 1000, 0, 1000)] },
      { name: 'front/side', curves: [line(0, 1000, 0, 0)] },
    ],
  });
  const widths = { waist: 12, hem: 30, 'side/back': 30, 'front/side': 30 };
  /** The waist's own cut line. */
  const above = (x: number) => 0.1 * x - 12 * Math.hypot(1, 0.1);

  it('has them folded back over one another: each is level with what it lies on', () => {
    const [waist] = cornersOf(plan({ waistCorner: 'mirrored', widths }), narrow);
    // 30 inside the left seam lies 10 past the right one, where the allowance is as high as 10 inside that.
    expect([
      'waist',
      [
        [-30, above(10)],
        [-20, above(20)],
        [0, above(0)],
        [20, above(20)],
        [40, above(0)],
        [50, above(10)],
      ],
    ]).toEqual(waist);
    const plain = [
      [-30, above(-30)],
      [50, above(50)],
    ];
    expect(['waist', plain]).toEqual(cornersOf(plan({ widths }), narrow)[0]);
  });

  it('a point whose sides open past a straight angle is cut where their lines cross above it', () => {
    // Sides that run up 50 in 299 to either side of a point 1 wide.
    const point = gore({
      edges: [
        { name: 'waist', curves: [line(0, 0, 1, 0)] },
        { name: 'side/back', curves: [line(1, 0, 300, -50)] },
        { name: 'hem', curves: [line(300, -50, -299, -50)] },
        { name: 'front/side', curves: [line(-299, -50, 0, 0)] },
      ],
    });
    const up = Math.atan(50 / 299);
    const crossing = [0.5, -15 * Math.cos(up) - (15 * Math.sin(up) - 0.5) * Math.tan(up)];
    const on = [crossing[0]! + Math.cos(up), crossing[1]! - Math.sin(up)];
    const all = cornersOf(plan({ widths: { waist: 15, hem: 0, 'side/back': 15, 'front/side': 15 } }), point);
    expect(['waist', [crossing, on]]).toEqual(all[0]);
    expect([on]).toEqual([(all[1]![1] as unknown[])[0]]);
    expect([crossing]).toEqual([(all[3]![1] as unknown[]).at(-1)]);
    // Pressed open its corners are mirrored as any other's.
    const open = cutOutline(
      point,
      plan({ waistCorner: 'mirrored', widths: { waist: 15, 'side/back': 15, 'front/side': 15 } }),
    );
    expect(startOf(open[0]!.curves[0]!)).not.toEqual({
      x: expect.closeTo(0.5, 3),
      y: expect.closeTo(crossing[1]!, 3),
    });
  });
});

describe('an outline that cannot be cut', () => {
  const at = (name: string) => ({ name, place: () => name }) as never;
  const gown = {
    gores: [at('side')],
    godets: [at('wedge')],
    flounces: [],
    tiers: [],
    place: () => 'gown',
  } as never;
  const found = (piece: Piece, cut: readonly (readonly [string, Line[]])[], name = 'side') => {
    const cutEdges = cut.map(([edge, curves]) => ({ name: edge, curves: curves as Curve[] }));
    return crossedOutlines(gown, [{ piece, gore: name, layers: ['shell'], cutEdges } as never]).map(
      (one) => ({ ...one, place: one.place() }),
    );
  };
  const around = (by: number): [string, Line[]][] => [
    ['waist', [line(-by, -12, 200 + by, -12)]],
    ['side/back', [line(200 + by, -12, 250 + by, 1030)]],
    ['hem', [line(250 + by, 1030, -50 - by, 1030)]],
    ['front/side', [line(-50 - by, 1030, -by, -12)]],
  ];
  const crossed = (edges: Piece['edges']) =>
    edges.map((edge, i) =>
      i === 1 ? { ...edge, curves: [line(200, 0, -300, 500), line(-300, 500, 250, 1000)] } : edge,
    ) as unknown as Piece['edges'];

  it('is told by its line, what that crosses, and the edge next to it', () => {
    expect(found(gore(), around(15))).toEqual([]);
    const own = { gore: 'side', layers: ['shell'], place: 'side' };
    const [seam] = found(gore({ edges: crossed(gore().edges) }), around(400));
    expect(seam).toEqual({
      ...own,
      line: 'seam',
      crosses: 'itself',
      edge: expect.stringMatching('side/back|front/side'),
    });
    const folded = around(15).map(([name, lines], i): [string, Line[]] =>
      i === 1 ? [name, [line(215, -12, -300, 500), line(-300, 500, 265, 1030)]] : [name, lines],
    );
    expect(found(gore(), folded)).toMatchObject([{ ...own, line: 'cut', crosses: 'itself' }]);
    // The hem's cut line passes above the hem, by more than fitted lines may.
    const short = (y: number) =>
      around(15).map(([name, lines], i): [string, Line[]] =>
        i === 2
          ? [name, [line(265, 1030, 263, y), line(263, y, -63, y), line(-63, y, -65, 1030)]]
          : [name, lines],
      );
    expect(found(gore(), short(1000.01))).toEqual([]);
    expect(found(gore(), short(999.96))).toEqual([]);
    expect(found(gore(), short(990))).toMatchObject([{ ...own, line: 'cut', crosses: 'its-seam' }]);
  });

  it('stands where its gore or its part stands, or the gown', () => {
    const bad = (name: string) => found(gore({ edges: crossed(gore().edges) }), around(15), name)[0]!.place;
    expect(['side', 'wedge', 'pocket'].map(bad)).toEqual(['side', 'wedge', 'gown']);
  });

  it('of a facing cut as one for several gores stands where its layer is faced', () => {
    const piece = gore({ edges: crossed(gore().edges), gore: 'side-back', part: 'facing' });
    const cut = { piece, gore: 'side-back', layers: ['shell-facing'], cutEdges: [] };
    const part = (name: string, layer: string) =>
      ({ piece: { gore: name }, layer: { name: layer }, place: () => `${name} of ${layer}` }) as never;
    const parts = [
      part('side-back', 'net-facing'),
      part('front', 'shell-facing'),
      part('side-back', 'shell-facing'),
    ];
    const [found] = crossedOutlines(gown, [cut as never], parts);
    expect([found!.place(), found!.facing]).toEqual(['side-back of shell-facing', true]);
    expect(
      crossedOutlines(gown, [{ ...cut, piece: { ...piece, part: undefined } } as never])[0],
    ).not.toHaveProperty('facing');
  });
});

describe('marks by hand', () => {
  it('a ring 8 across where a bustle is anchored, a cross of 8 where the cloth is picked up', () => {
    const point = {
      at: [
        { x: 50, y: 30 },
        { x: 60, y: 700 },
      ],
    } as unknown as BustleMarked;
    const [ring, ...cross] = bustleMarks([point], gore());
    expect(ring!.name).not.toBe(cross[0]!.name);
    expect(ring!.curves).toHaveLength(4);
    expect([startOf(ring!.curves[0]!), startOf(ring!.curves[1]!)]).toEqual([
      { x: 46, y: 30 },
      { x: 50, y: 26 },
    ]);
    expect(cross.map(({ curves }) => curves)).toEqual([[line(56, 696, 64, 704)], [line(56, 704, 64, 696)]]);
  });

  it('on a fold half of either lies on the piece', () => {
    const point = {
      at: [
        { x: 0, y: 30 },
        { x: 0, y: 700 },
      ],
    } as unknown as BustleMarked;
    for (const side of [1, 3]) {
      const edges = gore().edges.map((edge, i) =>
        i === side ? { name: 'fold', curves: [line(0, 0, 0, 1000)] } : edge,
      );
      const own = bustleMarks([point], gore({ edges: edges as never })).flatMap(({ curves }) => curves);
      const ends = own.flatMap((curve) => [startOf(curve), endOf(curve)]).map(({ x }) => x);
      expect([Math.min(...ends), Math.max(...ends)]).toEqual(side === 1 ? [-4, 0] : [0, 4]);
      expect(own).toHaveLength(4);
    }
  });

  it('bustle points are told once each: by seam, by place across a gore, by anchor', () => {
    const point = (across: number, anchor: number, seam?: string) =>
      ({
        layer: 'shell',
        gore: 'side',
        across,
        anchor,
        pickUp: 700,
        ...(seam === undefined ? {} : { seam }),
      }) as unknown as BustleMarked;
    const told = bustleRemarks([
      point(0.2, 30),
      point(0.2, 30),
      point(0.2, 40),
      point(0.7, 30),
      point(1, 30, 'side/back'),
      point(1, 30, 'side/back'),
    ]);
    const inGore = (across: number, anchor: number) => ({
      place: { gore: 'side', across },
      anchor,
      pickUp: 700,
    });
    const points = [
      inGore(0.2, 30),
      inGore(0.2, 40),
      inGore(0.7, 30),
      { place: { seam: 'side/back' }, anchor: 30, pickUp: 700 },
    ];
    expect(told).toEqual([{ kind: 'bustle', layer: 'shell', points }]);
    expect(bustleRemarks([])).toEqual([]);
  });

  it('growth tucks lie above the hem, each higher by what those below it take', () => {
    const tucks = { count: 2, width: 15, aboveHem: 50, apart: 20 };
    expect(tuckHeights({ tucks })).toEqual([
      [50, 65, 80],
      [100, 115, 130],
    ]);
    expect([tuckHeights({}), tuckRemarks({}), tuckLines(gore(), {})]).toEqual([[], [], []]);
    expect(tuckRemarks({ tucks })).toEqual([
      { kind: 'tucks', count: 2, width: 15, longer: 60, folds: [65, 115] },
    ]);
    const lines = tuckLines(gore(), { tucks });
    expect(lines.map(({ curves }) => startOf(curves[0]!).y)).toEqual([950, 935, 920, 900, 885, 870]);
    const [stitch, fold] = lines.map(({ name }) => name);
    expect(lines.map(({ name }) => name)).toEqual([stitch, fold, stitch, stitch, fold, stitch]);
    expect(fold).not.toBe(stitch);
  });
});

describe('a facing', () => {
  const layers = [
    {
      layer: { name: 'lining' },
      draft: { gown: { stations: [{ name: 'front/side' }, { name: 'side/back' }] }, lengths: [1000, 1050] },
    },
    {
      layer: { name: 'shell' },
      draft: { gown: { stations: [{ name: 'front/side' }, { name: 'side/back' }] }, lengths: [1000, 1050] },
    },
  ] as never;
  const marks = new Map([
    ['front/side', [120, 900, 960]],
    ['side/back', [145, 940, 985]],
  ]);
  const high = (to: number) => [line(0, 0, 0, to)];
  const part = (of: object, height = 100) =>
    ({
      of,
      piece: {
        edges: [
          { name: 'front/side', curves: high(height) },
          { name: 'side/back', curves: high(height) },
        ],
      },
      notches: new Map([
        ['front/side', [50]],
        ['side/back', [51]],
        ['other', [9]],
      ]),
    }) as never;
  const told = (own: never, seen: string[] = []) =>
    Object.fromEntries(
      facingMarks(own, layers, ({ layer }) => {
        seen.push(layer.name);
        return marks;
      }),
    );

  it('of a hem has the marks of the seams that it faces, counted from its own top, clear of its ends', () => {
    const seen: string[] = [];
    // From 900 and 950 down: 960 is 60 down it; 900 lies at its end. 985 is 35 down, 940 above it.
    expect(told(part({ kind: 'hem-facing', faces: 'lining' }), seen)).toEqual({
      'front/side': [60],
      'side/back': [35],
      other: [9],
    });
    expect(seen).toEqual(['lining']);
    expect(told(part({ kind: 'hem-facing', faces: 'lining' }, 45))).toEqual({
      'front/side': [50],
      'side/back': [51],
      other: [9],
    });
  });

  it('of a waist has those next to the waist, of the outermost layer', () => {
    const seen: string[] = [];
    expect(told(part({ kind: 'waist-facing' }, 140), seen)).toEqual({
      'front/side': [120],
      'side/back': [51],
      other: [9],
    });
    expect(seen).toEqual(['shell']);
    expect(told(part({ kind: 'waist-facing' }, 160))).toEqual({
      'front/side': [120],
      'side/back': [145],
      other: [9],
    });
  });

  it('of what is not there keeps its own, as any other part does', () => {
    const own = { 'front/side': [50], 'side/back': [51], other: [9] };
    expect(told(part({ kind: 'hem-facing', faces: 'gone' }))).toEqual(own);
    expect(told(part({ kind: 'godet' }))).toEqual(own);
  });
});

describe('a pleat in a gore that leans', () => {
  const pleat = (kind: string, at: string, own: object = {}) =>
    ({ name: 'p', kind, at, foldDepth: 30, layers: ['shell'], stitchedDown: 0, ...own }) as never;
  const told = (...pleats: never[]) =>
    pleatFolds(pleats, gore()).map(({ line: { from, to }, under }) => [from.x, from.y, to.x, to.y, under]);
  const side = Math.hypot(50, 1000);

  it('runs down between the ways of its two sides, as far as its side is long', () => {
    // A quarter of the way from the front its lean is half of the front's, 0.05 to −0.05 across.
    const angle = -LEAN + 2 * LEAN * 0.25;
    expect(told(pleat('knife', 'front/side', { gore: 'side', fromSeam: 50, towards: 'back' }))).toEqual([
      [
        50,
        0,
        expect.closeTo(50 + side * Math.sin(angle), 6),
        expect.closeTo(side * Math.cos(angle), 6),
        'left',
      ],
    ]);
    expect(told(pleat('knife', 'side/back', { gore: 'side', fromSeam: 50, towards: 'back' }))).toEqual([
      [
        150,
        0,
        expect.closeTo(150 - side * Math.sin(angle), 6),
        expect.closeTo(side * Math.cos(angle), 6),
        'left',
      ],
    ]);
  });

  it('comes in the order in which folds are opened: from the right, at one line the right one first', () => {
    const inside = (fromSeam: number, kind = 'knife') =>
      pleat(kind, 'front/side', { gore: 'side', fromSeam, towards: 'back' });
    expect(told(inside(40), inside(120), inside(90)).map(([x]) => x)).toEqual([120, 90, 40]);
    expect(told(inside(40, 'inverted')).map(([, , , , under]) => under)).toEqual(['right', 'left']);
    const [back, front] = told(inside(100, 'box'));
    // Moved square to their line, which is upright in the middle.
    expect([back, front]).toEqual([
      [130, 0, expect.closeTo(130, 6), expect.closeTo(side, 6), 'left'],
      [70, 0, expect.closeTo(70, 6), expect.closeTo(side, 6), 'right'],
    ]);
  });
});
