import { describe, expect, it } from 'vitest';
import { edgeAllRound } from '../../src/draft/all-round.ts';
import { closedExactly } from '../../src/draft/closed-exactly.ts';
import { godetHems, godetParts } from '../../src/draft/godets.ts';
import { cutOfHalves, mirroredPiece, sided, wholeOf } from '../../src/draft/halves-apart.ts';
import { partFindings } from '../../src/draft/part-findings.ts';
import type { Piece } from '../../src/draft/piece.ts';
import { tierParts, tierRuns } from '../../src/draft/tiers.ts';
import type { Arc, Line } from '../../src/geometry/curve.ts';
import { at, cornerAngle, lengthOf, sampled } from '../fittings/sampled.ts';
import { line } from '../line.ts';

/** Godets in a seam whose hem leans by known amounts, and halves that differ: by formula. mm, degrees. */

const place = (key?: string) => key ?? 'here';
const allowance = (width: number) => ({ width, place: {} });
const layer = (name = 'shell') => ({
  name,
  gores: ['a', 'b', 'c'],
  allowances: {
    waist: allowance(12),
    hem: allowance(20),
    seam: allowance(15),
    named: { 'a/b': allowance(18) },
  },
});
const NAMES = { mirrored: ['cf', 'a/b', 'b/c', 'cb'], ring: ['c/a', 'a/b', 'b/c', 'c/a'] };
/** In front of the first station 100 the hem leans by 0.1, behind it by 0.3, and so on: a point at every seam. */
const LEANS = [0.1, 0.3, -0.2];
const hemOf = (leans: readonly number[]) => ({
  ways: [0, 100, 200, 300],
  valueAt: () => 900,
  slopeAt: (way: number) => leans[Math.min(2, Math.max(0, Math.floor(way / 100)))],
});
const draftOf = (round: 'mirrored' | 'ring', leans: readonly number[] = LEANS, own: object = {}) => ({
  gown: {
    round,
    gores: ['a', 'b', 'c'].map((name) => ({ name })),
    stations: NAMES[round].map((name, i) => ({
      name,
      seams: round === 'mirrored' && i > 0 && i < 3 ? 2 : 1,
    })),
  },
  lengths: [900, 910, 920, 930],
  hem: hemOf(leans),
  ...own,
});
const godet = (seam: string, own: object = {}) => ({
  name: 'wedge',
  seam,
  from: 500,
  width: 240,
  layers: ['shell'],
  roughCut: 7,
  place,
  ...own,
});
const partsOf = (draft: object, own: object, layers = [layer()]) =>
  godetParts({ godets: [own] } as never, { layers: layers.map((one) => ({ layer: one, draft })) } as never);
const degrees = (radians: number) => (radians * 180) / Math.PI;
const lower = ({ edges }: Piece) => [
  cornerAngle(edges[2]!.curves, edges[3]!.curves),
  cornerAngle(edges[1]!.curves, edges[2]!.curves),
];

describe('a godet', () => {
  it('in a level hem is a sector: its sides as long as the seam below its point, its hem an arc as wide as is said', () => {
    const [part, ...more] = partsOf(draftOf('mirrored', [0, 0, 0]), godet('a/b'));
    expect(more).toEqual([]);
    const { piece } = part!;
    const [point, right, hem, left] = piece.edges.map(({ curves }) => lengthOf(sampled(curves, 2000)));
    expect([right, left]).toEqual([410, 410].map((value) => expect.closeTo(value, 6)));
    // At its point the chord of a thread, an eight hundredth of its side.
    const [thread, flare] = [410 / 800, (240 - 410 / 800) / 410];
    expect(point).toBeCloseTo(((2 * thread) / flare) * Math.sin(flare / 2), 9);
    expect(hem).toBeCloseTo(240, 4);
    expect(piece.edges[2]!.curves.every(({ kind }) => kind === 'arc')).toBe(true);
    expect(piece.edges.map(({ name }) => name)).toEqual(['point', 'wedge/b', 'hem', 'a/wedge']);
    expect([piece.gore, piece.layers, piece.frontEdge, piece.backEdge, piece.cut, piece.side]).toEqual([
      'wedge',
      ['shell'],
      'a/wedge',
      'wedge/b',
      'pair',
      undefined,
    ]);
    expect(lower(piece)).toEqual([90, 90].map((value) => expect.closeTo(value, 3)));
    expect(part!.allowances).toEqual({ point: 18, 'a/wedge': 18, 'wedge/b': 18 });
    // Half-way down on both of its sides.
    expect([...part!.notches]).toEqual([
      ['a/wedge', [205]],
      ['wedge/b', [205]],
    ]);
    expect([part!.quartered, part!.pointed, part!.roughCut, part!.of.kind]).toEqual([
      false,
      true,
      7,
      'godet',
    ]);
    // Its thread runs down its middle.
    const [from, to] = [at(piece.grain, 0), at(piece.grain, 1)];
    const middle = (sampled(piece.edges[2]!.curves).at(-1)!.x + at(piece.edges[2]!.curves[0]!, 0).x) / 2;
    expect([from.x, to.x]).toEqual([middle, middle].map((value) => expect.closeTo(value, 6)));
    expect(to.y).toBeGreaterThan(from.y + 100);
  });

  it.each([
    // The slope in front of its seam and behind it; at a centre beyond is the mirror image.
    ['mirrored', 'a/b', [0.1, 0.3]],
    ['mirrored', 'b/c', [0.3, -0.2]],
    ['mirrored', 'cf', [-0.1, 0.1]],
    ['mirrored', 'cb', [-0.2, 0.2]],
    ['ring', 'c/a', [-0.2, 0.1]],
    ['ring', 'b/c', [0.3, -0.2]],
  ] as const)('%s, at %s meets both gores as their hem leans', (round, seam, [before, after]) => {
    const [part] = partsOf(draftOf(round), godet(seam));
    const [left, right] = lower(part!.piece);
    expect(left).toBeCloseTo(90 + degrees(Math.atan(before)), 1);
    expect(right).toBeCloseTo(90 - degrees(Math.atan(after)), 1);
    expect(part!.piece.cut).toBe(round === 'mirrored' && seam.includes('/') ? 'pair' : 'single');
    const [, back, , front] = part!.piece.edges.map(({ curves }) => lengthOf(sampled(curves)));
    const long = { cf: 400, 'a/b': 410, 'b/c': 420, cb: 430, 'c/a': 400 }[seam];
    expect([back, front]).toEqual([long, long].map((value) => expect.closeTo(value, 6)));
  });

  it('is named by the gores that it lies between, at the closing seam of a ring too', () => {
    expect(
      partsOf(draftOf('ring'), godet('c/a')).map(({ piece }) => [piece.frontEdge, piece.backEdge]),
    ).toEqual([['c/wedge', 'wedge/a']]);
    expect(
      partsOf(draftOf('mirrored'), godet('cb')).map(({ piece }) => [piece.frontEdge, piece.backEdge]),
    ).toEqual([['c/wedge', 'wedge/c']]);
  });

  it('is in the layers that have it, once on each side where her sides differ, and nowhere below the hem', () => {
    const drafted = draftOf('mirrored');
    expect(
      partsOf(drafted, godet('a/b', { layers: ['net', 'shell'] }), [layer(), layer('net')]).map(
        ({ layer: own }) => own.name,
      ),
    ).toEqual(['shell', 'net']);
    expect(partsOf(drafted, godet('a/b', { layers: ['net'] }))).toEqual([]);
    expect(partsOf(drafted, godet('a/b', { from: 910 }))).toEqual([]);
    expect(partsOf(drafted, godet('a/b', { from: 909, width: 1 }))).toHaveLength(1);
    const stations = [
      { name: 'cf', seams: 1 },
      { name: 's', seams: 1, side: 'left' },
      { name: 's', seams: 1, side: 'right' },
      { name: 'cf', seams: 1 },
    ];
    const gores = ['a', 'b', 'c'].map((name) => ({ name }));
    const halves = draftOf('ring', LEANS, { gown: { round: 'two-halves', gores, stations } });
    const both = partsOf(halves, godet('s'));
    expect(
      both.map(({ piece }) => [piece.side, piece.cut, Math.round(lengthOf(sampled(piece.edges[1]!.curves)))]),
    ).toEqual([
      ['left', 'single', 410],
      ['right', 'single', 420],
    ]);
    // The last station of a ring is its first again.
    expect(partsOf(halves, godet('cf'))).toHaveLength(1);
  });

  it('adds its hem to the hem of its layer, a pair of them twice', () => {
    const drafted = { layer: layer(), draft: draftOf('mirrored', [0, 0, 0]) };
    const sum = (...all: object[]) => godetHems(all as never, drafted as never);
    expect(sum(godet('a/b'), godet('cb', { width: 100 }))).toBeCloseTo(2 * 240 + 100, 3);
    expect(sum(godet('a/b', { layers: [] }))).toBe(0);
    expect(sum()).toBe(0);
  });
});

describe('parts that find no room', () => {
  const drafts = {
    layers: [
      { layer: layer('net'), draft: draftOf('mirrored') },
      { layer: layer(), draft: draftOf('mirrored') },
    ],
  };
  const found = (godets: readonly object[], parts: readonly object[]) =>
    partFindings({ godets, flounces: [], units: 'mm' } as never, drafts as never, parts as never).map(
      ({ code, span, message }) => [code, span, message],
    );
  const made = (name: string, of: string, piece: object = {}) => ({
    piece: { gore: name, edges: [], ...piece },
    layer: { name: of },
    place,
  });

  it('a godet that some layer lacks begins below the seam there', () => {
    const own = godet('a/b', { from: 950, layers: ['net', 'shell'] });
    expect(found([own], [made('wedge', 'net'), made('wedge', 'shell')])).toEqual([]);
    const said = [
      [
        'godet-beyond-seam',
        'from',
        'The godet `wedge` begins 950 mm down the seam `a/b`, which is 910 mm long.',
      ],
    ];
    expect(found([own], [made('wedge', 'net')])).toEqual(said);
    expect(found([own], [made('wedge', 'shell'), made('other', 'net')])).toEqual(said);
    expect(found([godet('a/b', { layers: ['shell'] })], [made('wedge', 'shell')])).toEqual([]);
  });

  it('a godet that is far too wide for the seam that is left is no godet below the hem', () => {
    const own = godet('a/b', { from: 909, layers: ['shell'] });
    expect(partsOf(draftOf('mirrored'), own)).toEqual([]);
    expect(found([own], [])).toEqual([
      ['outline-crosses-itself', 'here', 'The outline of `wedge` crosses itself.'],
    ]);
    const [[code, span] = []] = found([godet('a/b', { from: 910, layers: ['shell'] })], []);
    expect([code, span]).toEqual(['godet-beyond-seam', 'from']);
  });

  it('a part whose outline crosses itself is told at its place', () => {
    const edges = (crossed: boolean) => [
      { curves: [line(0, 0, 100, 0)] },
      { curves: [line(100, 0, crossed ? -20 : 120, 300)] },
      { curves: [line(crossed ? -20 : 120, 300, crossed ? 120 : -20, 300)] },
      { curves: [line(crossed ? 120 : -20, 300, 0, 0)] },
    ];
    expect(found([], [made('frill', 'shell', { edges: edges(false) })])).toEqual([]);
    expect(found([], [made('frill', 'shell', { edges: edges(true) })])).toEqual([
      ['outline-crosses-itself', 'here', 'The outline of `frill` crosses itself.'],
    ]);
  });
});

describe('halves', () => {
  /** A half on the fold or a gore: 50 wide at the waist, `hem` at the hem, its fold or its front upright. */
  const half = (hem: number, [front, back] = ['fold', 'side'], own: Partial<Piece> = {}): Piece => {
    const foldIsRight = back === 'fold';
    const x = (value: number) => (foldIsRight ? 50 - value : value);
    const [top, low] = foldIsRight
      ? [
          [0, 50],
          [x(hem), 50],
        ]
      : [
          [0, 50],
          [0, hem],
        ];
    return {
      gore: 'g',
      layers: ['shell'],
      edges: [
        { name: 'waist', curves: [line(top[0]!, 0, top[1]!, 0)] },
        { name: back!, curves: [line(top[1]!, 0, low[1]!, 500)] },
        { name: 'hem', curves: [line(low[1]!, 500, low[0]!, 500)] },
        { name: front!, curves: [line(low[0]!, 500, top[0]!, 0)] },
      ],
      frontEdge: front!,
      backEdge: back!,
      grain: line(20, 100, 20, 400),
      cut: front === 'fold' || back === 'fold' ? 'on-fold' : 'pair',
      ...own,
    };
  };
  const outline = ({ edges }: Piece) =>
    edges.map(({ name, curves }) => [
      name,
      ...curves.map((curve) => [at(curve, 0), at(curve, 1)].flatMap(({ x, y }) => [x + 0, y + 0])),
    ]);

  it('that are alike are what they were', () => {
    const own = half(80);
    expect(cutOfHalves(own, half(80))).toEqual([own]);
  });

  it('on the fold that differ are one whole piece, the left where it was', () => {
    const [whole, ...more] = cutOfHalves(half(80), half(95));
    expect(more).toEqual([]);
    expect(outline(whole!)).toEqual([
      ['waist', [-50, 0, 0, 0], [0, 0, 50, 0]],
      ['side', [50, 0, 80, 500]],
      ['hem', [80, 500, 0, 500], [0, 500, -95, 500]],
      ['side', [-95, 500, -50, 0]],
    ]);
    expect([whole!.cut, whole!.middle, whole!.frontEdge, whole!.backEdge]).toEqual([
      'single',
      'front',
      'side',
      'side',
    ]);
    const [back] = cutOfHalves(half(80, ['side', 'fold']), half(95, ['side', 'fold']));
    // Its fold lies at 50: the left half to the left of it.
    expect(outline(back!)).toEqual([
      ['waist', [0, 0, 50, 0], [50, 0, 100, 0]],
      ['side', [100, 0, 145, 500]],
      ['hem', [145, 500, 50, 500], [50, 500, -30, 500]],
      ['side', [-30, 500, 0, 0]],
    ]);
    expect([back!.middle, back!.cut]).toEqual(['back', 'single']);
    expect(outline(wholeOf(half(80)))[2]).toEqual(['hem', [80, 500, 0, 500], [0, 500, -80, 500]]);
  });

  it('that are gores are a left one and a right one, its mirror image', () => {
    const [left, right, ...more] = cutOfHalves(half(80, ['f', 'b']), half(95, ['f', 'b']));
    expect(more).toEqual([]);
    expect([left!.side, left!.cut, right!.side, right!.cut]).toEqual(['left', 'single', 'right', 'single']);
    expect(outline(left!)).toEqual(outline(half(80, ['f', 'b'])));
    expect(outline(right!)).toEqual([
      ['waist', [-50, 0, 0, 0]],
      ['f', [0, 0, 0, 500]],
      ['hem', [0, 500, -95, 500]],
      ['b', [-95, 500, -50, 0]],
    ]);
    expect([right!.frontEdge, right!.backEdge, right!.grain]).toEqual(['b', 'f', line(-20, 100, -20, 400)]);
    expect(sided(half(80), 'left').cut).toBe('on-fold');
    expect(mirroredPiece(half(80)).cut).toBe('on-fold');
  });
});

describe('an outline', () => {
  it('is closed to the last bit: lines end where the next begins, arcs end where they do', () => {
    const arc: Arc = { kind: 'arc', centre: { x: 50, y: 0 }, radius: 50, start: Math.PI, sweep: Math.PI };
    const edges = [
      { name: 'a', curves: [line(0, 0, 50, 1), line(50, 1, 100 + 1e-9, 0)] },
      { name: 'b', curves: [line(100, 0, 100, 99)] },
      { name: 'c', curves: [arc] },
    ];
    const closed = closedExactly(edges);
    expect(closed[0]!.curves).toEqual([line(0, 0, 50, 1), line(50, 1, 100, 0)]);
    expect((closed[1]!.curves[0] as Line).to.x).toBeCloseTo(0, 12);
    expect(closed[2]!.curves).toEqual([arc]);
    expect(closed.map(({ name }) => name)).toEqual(['a', 'b', 'c']);
  });

  it('all round: of the gores that are chosen, twice of a mirrored gown', () => {
    const piece = (width: number) => ({
      edges: [
        { name: 'waist', curves: [line(0, 0, width, 0)] },
        { name: 'hem', curves: [line(0, 9, 2 * width, 9)] },
      ],
    });
    const draft = (round: string) =>
      ({ gown: { round, gores: [{ name: 'a' }, { name: 'b' }] }, pieces: [piece(10), piece(25)] }) as never;
    expect([edgeAllRound(draft('mirrored'), 'waist'), edgeAllRound(draft('ring'), 'waist')]).toEqual([
      70, 35,
    ]);
    expect(edgeAllRound(draft('mirrored'), 'hem', ({ name }) => name === 'b')).toBe(100);
  });
});

describe('tiers', () => {
  const tiers = (own: object = {}) => ({
    name: 'net',
    layer: { ...layer(), cloth: { name: 'tulle', width: 1500, selvedge: 10 } },
    tiers: [2000, 3000, 4000],
    depths: [],
    place,
    ...own,
  });
  const runs = (own: object) =>
    tierRuns(tiers(own) as never).map(({ name, depth, length, strips, tiers: all }) => [
      name,
      depth,
      length,
      strips,
      all,
    ]);

  it('of one depth are one run: joined across, with two allowances of 15 where one is cut off', () => {
    // 9000 and 2 × 2 × 15, in strips of 1480 less 2 × 15.
    expect(runs({ depths: [300] })).toEqual([['net', 300, 9060, 7, [2000, 3000, 4000]]]);
    expect(runs({ tiers: [1450], depths: [200] })).toEqual([['net', 200, 1450, 1, [1450]]]);
    expect(runs({ tiers: [1451], depths: [200] })).toEqual([['net', 200, 1451, 2, [1451]]]);
  });

  it('of several depths are a run each; the last depth goes for all that follow', () => {
    expect(runs({ depths: [300, 200] })).toEqual([
      ['net-1', 300, 2000, 2, [2000]],
      ['net-2', 200, 7030, 5, [3000, 4000]],
    ]);
    expect(runs({ depths: [300, 200, 300] })).toEqual([
      ['net-1', 300, 6030, 5, [2000, 4000]],
      ['net-2', 200, 3000, 3, [3000]],
    ]);
    expect(runs({})[0]!.slice(1, 2)).toEqual([0]);
  });

  it('are parts as long as a strip', () => {
    const [part, ...more] = tierParts({ tiers: [tiers({ depths: [300] })] } as never);
    expect(more).toEqual([]);
    expect([
      part!.piece.gore,
      part!.piece.copies,
      part!.piece.layers,
      part!.quartered,
      part!.roughCut,
    ]).toEqual(['net', 7, ['net'], false, 0]);
    for (const edge of [0, 2])
      expect(lengthOf(sampled(part!.piece.edges[edge]!.curves))).toBeCloseTo(9060 / 7, 6);
    for (const edge of [1, 3]) expect(lengthOf(sampled(part!.piece.edges[edge]!.curves))).toBeCloseTo(300, 6);
    expect(part!.of).toMatchObject({ kind: 'tiers', runs: 1 });
  });
});
