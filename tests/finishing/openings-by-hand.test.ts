import { describe, expect, it } from 'vitest';
import type { Piece } from '../../src/draft/piece.ts';
import { shapedStrips } from '../../src/finishing/edge-strip.ts';
import { openingProblems } from '../../src/finishing/opening-problems.ts';
import type { Arc, Curve, Point } from '../../src/geometry/curve.ts';
import { startOf } from '../../src/geometry/evaluate.ts';
import { lengthOfRun } from '../../src/geometry/length.ts';
import { at, line } from '../quads.ts';

/** What lies in a seam, and facings of a seam that is an arc of 500: by hand, every figure another. mm. */

const RADIUS = 500;
const DEPTH = 40;

/** A gore whose one side is an arc of 60° about a centre on its left or its right, and whose other side is upright. */
function bent(
  gore: string,
  side: 'left' | 'right',
  station: string,
  outwards: boolean,
  own: object = {},
): Piece {
  const reach = (60 * Math.PI) / 180;
  // The arc leans out of the piece or into it; its centre lies level with its middle.
  const high = 2 * RADIUS * Math.sin(reach / 2);
  const x = side === 'right' ? 200 : 0;
  const centreLies = (side === 'right') === outwards ? -1 : 1;
  const centre = at(x + centreLies * RADIUS * Math.cos(reach / 2), high / 2);
  const angle = (point: Point) => Math.atan2(point.y - centre.y, point.x - centre.x);
  const arc = (from: Point, to: Point): Arc => {
    let sweep = angle(to) - angle(from);
    if (sweep > Math.PI) sweep -= 2 * Math.PI;
    if (sweep < -Math.PI) sweep += 2 * Math.PI;
    return { kind: 'arc', centre, radius: RADIUS, start: angle(from), sweep };
  };
  const [a, b, c, d] = [at(0, 0), at(200, 0), at(200, high), at(0, high)];
  const curves: Curve[][] = [
    [line(a, b)],
    [side === 'right' ? arc(b, c) : line(b, c)],
    [line(c, d)],
    [side === 'left' ? arc(d, a) : line(d, a)],
  ];
  const names = ['waist', side === 'right' ? station : 'other', 'hem', side === 'left' ? station : 'other'];
  const edges = curves.map((own, i) => ({ name: names[i]!, curves: own }));
  const piece = {
    gore,
    layers: ['shell'],
    edges,
    frontEdge: names[3]!,
    backEdge: names[1]!,
    cut: 'pair' as const,
  };
  return { ...piece, grain: line(at(100, 10), at(100, 90)), ...own };
}

const stations = (...names: string[]) => names.map((name) => ({ name }));
const SEAM = stations('a/b');
const draft = (pieces: readonly Piece[], own: object = {}) =>
  ({
    pieces,
    gown: { round: 'mirrored', stations: stations('centre-front', 'a/b', 'centre-back'), ...own },
  }) as never;
const strips = (pieces: readonly Piece[], open: object = {}, own: object = {}) =>
  shapedStrips(draft(pieces, own), { stations: SEAM, side: undefined, from: 0, ...open } as never, {
    name: 'slit',
    part: 'facing',
    depth: DEPTH,
  });
const lengths = ({ edges }: Piece) => edges.map(({ name, curves }) => [name, lengthOfRun(curves)]);
const near = (rows: [string, number][]) => rows.map(([name, own]) => [name, expect.closeTo(own, 1)]);
const ARC = (60 * Math.PI) / 180;

describe('facings of an opening whose edges bend', () => {
  it('each gore’s own, as deep as asked: longer inside a hollow edge, shorter inside a full one', () => {
    const [front, back, ...none] = strips([
      bent('a', 'right', 'a/b', true),
      bent('b', 'left', 'a/b', false),
    ])!;
    expect(none).toEqual([]);
    expect([front!.gore, back!.gore, front!.part, front!.cut]).toEqual([
      'slit-front',
      'slit-back',
      'facing',
      'pair',
    ]);
    expect(lengths(front!)).toEqual(
      near([
        ['upper-end', DEPTH],
        ['sewn-edge', RADIUS * ARC],
        ['lower-end', DEPTH],
        ['inner-edge', (RADIUS - DEPTH) * ARC],
      ]),
    );
    expect(lengths(back!)).toEqual(
      near([
        ['upper-end', DEPTH],
        ['inner-edge', (RADIUS + DEPTH) * ARC],
        ['lower-end', DEPTH],
        ['sewn-edge', RADIUS * ARC],
      ]),
    );
    expect([front!.frontEdge, front!.backEdge]).toEqual(['inner-edge', 'sewn-edge']);
    expect([back!.frontEdge, back!.backEdge]).toEqual(['sewn-edge', 'inner-edge']);
    // The thread runs down the cloth through the middle of the strip, where its edge stands out by the arc's sagitta.
    const sagitta = RADIUS * (1 - Math.cos(ARC / 2));
    for (const [strip, x] of [
      [front!, 200 + sagitta - DEPTH / 2],
      [back!, sagitta + DEPTH / 2],
    ] as const) {
      expect(strip.grain.from.x).toBe(strip.grain.to.x);
      expect(strip.grain.from.y).toBeLessThan(strip.grain.to.y);
      expect(strip.grain.from.x).toBeCloseTo(x, 1);
    }
    expect(startOf(front!.edges[0]!.curves[0]!)).toMatchObject({
      x: expect.closeTo(200 - DEPTH * Math.cos(ARC / 2), 1),
    });
  });

  it('from where it opens to where it ends, and no farther than the hem', () => {
    const pieces = [bent('a', 'right', 'a/b', true), bent('b', 'left', 'a/b', false)];
    const [part] = strips(pieces, { from: 110, to: 330 })!;
    expect(lengths(part!).slice(1, 2)).toEqual(near([['sewn-edge', 220]]));
    // From 110 along an arc that begins at 30° above its middle.
    const angle = -ARC / 2 + 110 / RADIUS;
    const top = startOf(part!.edges[1]!.curves[0]!);
    const centre = 200 - RADIUS * Math.cos(ARC / 2);
    expect(top.x).toBeCloseTo(centre + RADIUS * Math.cos(angle), 1);
    expect(top.y).toBeCloseTo(RADIUS * Math.sin(ARC / 2) + RADIUS * Math.sin(angle), 1);
    expect(lengths(strips(pieces, { from: -20, to: 9000 })![0]!)[1]).toEqual([
      'sewn-edge',
      expect.closeTo(RADIUS * ARC, 1),
    ]);
  });

  it('a strip serves where both are straight, and where a gore is not so wide', () => {
    const straight = bent('a', 'left', 'elsewhere', true);
    const upright = {
      ...straight,
      edges: straight.edges.map((edge, i) => (i === 1 ? { ...edge, name: 'a/b' } : edge)),
    };
    expect(strips([upright])).toBeUndefined();
    expect(strips([bent('a', 'right', 'a/b', true)])).toHaveLength(1);
    const tight = shapedStrips(
      draft([bent('a', 'right', 'a/b', true)]),
      { stations: SEAM, side: undefined, from: 0 } as never,
      { name: 'slit', part: 'facing', depth: RADIUS + 1 },
    );
    expect(tight).toBeUndefined();
  });

  it('of a single edge by the name alone; of two seams by their number', () => {
    const ends = stations('centre-front', 'centre-back');
    const gore = bent('b', 'right', 'centre-back', true);
    const one = shapedStrips(
      draft([gore], { stations: ends }),
      { stations: stations('centre-back'), side: undefined, from: 0 } as never,
      { name: 'slit', part: 'facing', depth: DEPTH },
    );
    expect(one?.map(({ gore: name }) => name)).toEqual(['slit-edge']);
    const pieces = ['a', 'b'].flatMap((name) => [
      bent(name, 'right', 'x', true),
      bent(name, 'left', 'x', false),
    ]);
    const ring = {
      round: 'ring',
      stations: [{ name: 'x', side: 'left' }, { name: 'y' }, { name: 'x', side: 'right' }, { name: 'z' }],
    };
    const both = shapedStrips(
      draft([pieces[1]!, pieces[0]!, pieces[3]!, pieces[2]!], ring),
      { stations: [{ name: 'x' }, { name: 'x' }], side: undefined, from: 0 } as never,
      { name: 'slit', part: 'facing', depth: DEPTH },
    );
    // The first station's front gore is the last of the round.
    expect(both?.map(({ gore: name, frontEdge }) => [name, frontEdge])).toEqual([
      ['slit-front-1', 'inner-edge'],
      ['slit-back-1', 'sewn-edge'],
      ['slit-front-2', 'inner-edge'],
      ['slit-back-2', 'sewn-edge'],
    ]);
  });

  it('for one side of her alone: hers as drawn at the left, the other way round at the right', () => {
    const pieces = [bent('a', 'right', 'a/b', true), bent('b', 'left', 'a/b', false)];
    const [left] = strips(pieces, { side: 'left' })!;
    expect([left!.side, left!.cut, left!.backEdge]).toEqual(['left', 'single', 'sewn-edge']);
    const [right] = strips(pieces, { side: 'right' })!;
    expect([right!.side, right!.cut, right!.backEdge, right!.frontEdge]).toEqual([
      'right',
      'single',
      'inner-edge',
      'sewn-edge',
    ]);
    // In a gown of one round each is single already, and has no side.
    const [whole] = strips(
      pieces.map((own) => ({ ...own, cut: 'single' as const })),
      { side: 'right' },
      { round: 'ring' },
    )!;
    expect([whole!.side, whole!.cut, whole!.backEdge]).toEqual([undefined, 'single', 'sewn-edge']);
    const [fold] = strips([bent('a', 'right', 'a/b', true, { cut: 'on-fold' })])!;
    expect(fold!.cut).toBe('pair');
  });
});

describe('what lies in a seam', () => {
  const place = (key?: string) => ({
    start: key?.length ?? 0,
    end: 1,
    source: { name: key ?? 'whole', text: '' },
  });
  const layer = { name: 'own' };
  const drafts = {
    gown: {
      gown: {
        round: 'mirrored',
        stations: [
          { name: 'centre-front', drop: 30 },
          { name: 'a/b', drop: 10 },
          { name: 'b/c', drop: 0 },
          { name: 'centre-back', drop: 0 },
        ],
        gores: [{ name: 'a', fold: 'front' }, { name: 'b' }, { name: 'c' }],
      },
      lengths: [990, 1010, 1040, 1070],
      // As wide as twice, once and half as far down, and some.
      frames: [0.1, 0.15, 0.3].map((share, i) => ({ widthAt: (down: number) => 20 + 7 * i + share * down })),
    },
    layers: [],
  };
  const NONE = { units: 'mm', slits: [], pockets: [], godets: [], pleats: [], closure: undefined };
  const found = (gown: object) =>
    openingProblems({ ...NONE, ...gown } as never, drafts as never).map(({ code, message, span }) => [
      code,
      message,
      (span as unknown as { source: { name: string } }).source.name,
    ]);
  const slit = (own: object) => ({ seam: 'a/b', stations: [{ name: 'a/b' }], copies: 2, place, ...own });
  const pocket = (own: object = {}) => ({
    layer,
    copies: 1,
    seam: 'a/b',
    stations: [{ name: 'a/b' }],
    place,
    belowWaist: 210,
    opening: 150,
    depth: 270,
    width: 160,
    ...own,
  });
  const closure = (own: object = {}) => ({
    kind: 'zip',
    station: { name: 'a/b' },
    starts: 20,
    opening: 190,
    place,
    ...own,
  });

  it('a closure finished without an opening', () => {
    expect(
      found({ closure: closure({ piece: { layer, width: 30 }, finish: 'guard', opening: undefined }) }),
    ).toEqual([['finish-without-opening', expect.stringContaining('with a guard'), 'finish']]);
    expect(found({ closure: closure({ piece: { layer, width: 30 }, finish: 'guard' }) })).toEqual([]);
    expect(found({ closure: closure({ opening: undefined }) })).toEqual([]);
  });

  it('a slit below the hem, over the hip, or none of these', () => {
    // The seam is 1010 long.
    expect(found({ slits: [slit({ belowWaist: 1010 })] })).toEqual([
      ['slit-below-hem', expect.stringMatching(/1010 mm long/), 'below-waist'],
    ]);
    expect(found({ slits: [slit({ aboveHem: 811 })] })).toEqual([
      ['slit-above-hip', expect.stringMatching(/up to 199 mm .* hip at 200 mm/), 'above-hem'],
    ]);
    expect(found({ slits: [slit({ aboveHem: 1200 })] })).toEqual([
      ['slit-above-hip', expect.stringMatching(/up to 0 mm/), 'above-hem'],
    ]);
    expect(found({ slits: [slit({ aboveHem: 810 })] })).toEqual([]);
    const body = {
      girths: [
        { at: 'waist', below: 1 },
        { at: 'hip', below: 230 },
      ],
    };
    expect(found({ body, slits: [slit({ aboveHem: 790 })] })).toEqual([
      ['slit-above-hip', expect.stringMatching(/up to 220 mm .* hip at 230 mm/), 'above-hem'],
    ]);
    expect(found({ slits: [slit({ aboveHem: 990, stations: [{ name: 'no/such' }] })] })).toEqual([]);
  });

  it('a facing as deep as the narrower gore where the slit begins: a whole one where it is on the fold', () => {
    // 700 below the waist and 10 of drop: twice 20 + 71 on the fold, 27 + 106.5 beside it.
    const deep = (depth: number, own: object = {}) =>
      found({ slits: [slit({ belowWaist: 700, facing: { depth, layer }, ...own })] });
    expect(deep(133)).toEqual([]);
    expect(deep(134)).toEqual([
      [
        'slit-facing-too-deep',
        expect.stringMatching(/is 134 mm deep, and .?b.? is 13[34](\.5)? mm wide/),
        'facing',
      ],
    ]);
    // At the centre front there is the one gore alone: twice 20 + 73.
    expect(deep(186, { seam: 'centre-front', stations: [{ name: 'centre-front' }] })).toEqual([
      ['slit-facing-too-deep', expect.stringMatching(/186 mm deep, and .?a.? is 186 mm/), 'facing'],
    ]);
  });

  it('a pocket that shows below the hem: the lower of its bag and its opening', () => {
    expect(found({ pockets: [pocket({ belowWaist: 740 })] })).toEqual([
      ['pocket-below-hem', expect.stringMatching(/reaches 1010 mm .* is 1010 mm long/), 'whole'],
    ]);
    expect(found({ pockets: [pocket({ belowWaist: 739 })] })).toEqual([]);
    expect(found({ pockets: [pocket({ belowWaist: 860, depth: 100 })] })[0]?.[0]).toBe('pocket-below-hem');
  });

  it.each([
    // The zip opens to 210; a bag reaches 25 above its opening.
    [
      'a zip and a pocket',
      { closure: closure(), pockets: [pocket({ belowWaist: 234 })] },
      'the pocket runs into the zip',
      'below-waist',
    ],
    ['and clear of it', { closure: closure(), pockets: [pocket({ belowWaist: 235 })] }, undefined, ''],
    [
      'hooks and a pocket',
      { closure: closure({ kind: 'hooks' }), pockets: [pocket()] },
      'the pocket runs into the closure',
      'below-waist',
    ],
    [
      'in another seam',
      { closure: closure({ station: { name: 'b/c' } }), pockets: [pocket()] },
      undefined,
      '',
    ],
    [
      'on her other side',
      { closure: closure({ side: 'left' }), pockets: [pocket({ side: 'right' })] },
      undefined,
      '',
    ],
    [
      'on her own side',
      { closure: closure({ side: 'left' }), pockets: [pocket({ side: 'left' })] },
      'the pocket runs into the zip',
      'below-waist',
    ],
    // A pocket opens to 360; the slit begins at 1010 less its height.
    [
      'a slit and a pocket',
      { slits: [slit({ aboveHem: 651 })], pockets: [pocket()] },
      'the pocket runs into the slit',
      'below-waist',
    ],
    ['and below it', { slits: [slit({ aboveHem: 650 })], pockets: [pocket()] }, undefined, ''],
    [
      'a godet and a slit',
      { slits: [slit({ aboveHem: 300 })], godets: [{ name: 'g', seam: 'a/b', from: 500, place }] },
      'the slit runs into the godet',
      'seam',
    ],
    [
      'a godet and a pocket',
      { pockets: [pocket()], godets: [{ name: 'g', seam: 'a/b', from: 359, place }] },
      'the pocket runs into the godet',
      'below-waist',
    ],
    [
      'a godet below a pocket',
      { pockets: [pocket()], godets: [{ name: 'g', seam: 'a/b', from: 360, place }] },
      undefined,
      '',
    ],
    [
      'a kick pleat and a pocket',
      { pockets: [pocket()], pleats: [{ name: 'k', kind: 'kick', at: 'a/b', aboveHem: 651, place }] },
      'the pocket runs into the pleat',
      'below-waist',
    ],
    [
      'a kick pleat below',
      { pockets: [pocket()], pleats: [{ name: 'k', kind: 'kick', at: 'a/b', aboveHem: 650, place }] },
      undefined,
      '',
    ],
    [
      'behind a pleat that is laid',
      { pockets: [pocket()], pleats: [{ name: 'k', kind: 'box', at: 'a/b', place }] },
      undefined,
      '',
    ],
    [
      'a slit in such a pleat',
      { slits: [slit({ aboveHem: 300 })], pleats: [{ name: 'k', kind: 'box', at: 'a/b', place }] },
      'the slit runs into the pleat',
      'seam',
    ],
    [
      'off the seam',
      {
        slits: [slit({ aboveHem: 300 })],
        pleats: [{ name: 'k', kind: 'box', at: 'a/b', fromSeam: 50, place }],
      },
      undefined,
      '',
    ],
    [
      'two pleats',
      {
        pleats: [
          { name: 'k', kind: 'box', at: 'a/b', place },
          { name: 'l', kind: 'kick', at: 'a/b', aboveHem: 9, place },
        ],
      },
      undefined,
      '',
    ],
  ])('%s', (_, gown, said, where) => {
    const meets = found(gown).filter(([code]) => code === 'openings-meet');
    if (said === undefined) expect(meets).toEqual([]);
    else {
      expect(meets).toHaveLength(1);
      expect(meets[0]![1]!.replaceAll(/ [“"'`]\w[”"'`]/g, '')).toContain(said);
      expect(meets[0]![2]).toBe(where);
    }
  });
});
