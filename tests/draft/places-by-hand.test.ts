import { describe, expect, it } from 'vitest';
import { crossingAt } from '../../src/draft/depth-across.ts';
import { upright } from '../../src/draft/grain-line.ts';
import { withKicks } from '../../src/draft/kick-extension.ts';
import { onBias } from '../../src/draft/on-bias.ts';
import type { Piece } from '../../src/draft/piece.ts';
import { beyondWrap, cutForWrap, overlapOf, wrapEdgeOf, wrappedPieces } from '../../src/draft/wrapped.ts';
import { draft } from '../../src/pipeline.ts';
import { at } from '../fittings/sampled.ts';
import { line } from '../line.ts';
import { level, plainGown } from '../outside/plain-gown.ts';

/** Threads, edges that lie over one another and kick pleats on pieces with straight sides: by hand. mm. */

/** 300 wide; its hem runs down from `left` to `right`. */
const gore = (
  name: string,
  [front, back]: readonly string[],
  [left, right] = [1000, 1000],
  own: Partial<Piece> = {},
): Piece => ({
  gore: name,
  layers: ['shell'],
  edges: [
    { name: 'waist', curves: [line(0, 0, 300, 0)] },
    { name: back!, curves: [line(300, 0, 300, right!)] },
    { name: 'hem', curves: [line(300, right!, 0, left!)] },
    { name: front!, curves: [line(0, left!, 0, 0)] },
  ],
  frontEdge: front!,
  backEdge: back!,
  grain: line(100, 200, 100, 800),
  cut: 'pair',
  ...own,
});
const near = (value: number) => expect.closeTo(value, 6);
const corners = ({ edges }: Pick<Piece, 'edges'>, which: number) => {
  const { curves } = edges[which]!;
  return [at(curves[0]!, 0), ...curves.map((curve) => at(curve, 1))].map(({ x, y }) => [x, y]);
};
const close = (places: readonly (readonly number[])[]) => places.map((place) => place.map(near));

describe('where an edge crosses a line down a gore', () => {
  const profile = (valueAt: (way: number) => number) =>
    ({ ways: [0, 100, 300], joins: [0, 300], valueAt, slopeAt: () => 1 }) as never;
  const cross = (
    share: number,
    of: number,
    widthAt: (depth: number) => number,
    valueAt = (way: number) => 100 + way,
  ) => {
    const { depth, part } = crossingAt({ widthAt } as never, profile(valueAt), of, share);
    return [depth, part];
  };

  it('over a strip is as far across as it is said', () => {
    expect(cross(0.3, 0, () => 100)).toEqual([130, 0.3].map(near));
    expect(cross(0.3, 1, () => 200)).toEqual([260, 0.3].map(near));
    expect([cross(0, 1, () => 200), cross(1, 1, () => 200)]).toEqual([
      [200, 0],
      [400, 1],
    ]);
  });

  it('over a gore that widens lies where that share of its width is passed', () => {
    // As wide as it is deep: half of ln 2 is passed at 100 √2.
    expect(cross(0.5, 0, (depth) => depth)).toEqual([100 * Math.SQRT2, Math.SQRT2 - 1].map(near));
  });
});

describe('the straight thread', () => {
  it('runs through its place from a fifth to four fifths of the cloth there', () => {
    const ends = (x: number, y: number, edges = gore('g', ['a', 'b'], [700, 1000]).edges) => {
      const { from, to } = upright({ x, y }, edges);
      return [from.x, from.y, to.x, to.y];
    };
    expect(ends(0.0001, 300)).toEqual([0.0001, 140, 0.0001, 560].map((value) => expect.closeTo(value, 2)));
    expect(ends(150, 300)).toEqual([150, 170, 150, 680].map(near));
    expect(ends(150, 5000)).toEqual([150, 170, 150, 680].map(near));
    // Beside the piece half-way to its middle; far beside it, its middle.
    expect(ends(400, 300)).toEqual([275, 195, 275, 780].map(near));
    expect(ends(900, 300)).toEqual([150, 170, 150, 680].map(near));
    // Of two stretches one above the other the one that it lies in, or the nearer.
    const bay = [
      line(0, 0, 300, 0),
      line(300, 0, 300, 200),
      line(300, 200, 50, 300),
      line(50, 300, 300, 600),
      line(300, 600, 300, 800),
      line(300, 800, 0, 800),
      line(0, 800, 0, 0),
    ].map((one) => ({ name: 'e', curves: [one] }));
    const [upper, lower] = [
      [0, 240],
      [480, 800],
    ].map(([top, bottom]) =>
      [200, top! + 0.2 * (bottom! - top!), 200, top! + 0.8 * (bottom! - top!)].map(near),
    );
    expect([ends(200, 100, bay), ends(200, 300, bay), ends(200, 400, bay), ends(200, 700, bay)]).toEqual([
      upper,
      upper,
      lower,
      lower,
    ]);
  });

  it('on the bias runs at 45° through the middle of what was its grain, up to the right on her left', () => {
    const ends = (piece: Piece) => {
      const { grain, bias, cut } = onBias(piece);
      const places = [grain.from, grain.to].map(({ x, y }) => [x, y]).sort((a, b) => a[0]! - b[0]!);
      return [places, bias, cut];
    };
    // Through 100, 500 the cloth reaches from one side to the other: 0.2 and 0.8 of it.
    expect(ends(gore('g', ['a', 'b']))).toEqual([
      close([
        [60, 540],
        [240, 360],
      ]),
      true,
      'pair',
    ]);
    expect(ends(gore('g', ['a', 'b'], undefined, { side: 'right' }))).toEqual([
      close([
        [60, 460],
        [240, 640],
      ]),
      true,
      'pair',
    ]);
    expect(ends(gore('g', ['a', 'b'], undefined, { side: 'left' }))[0]).toEqual(
      close([
        [60, 540],
        [240, 360],
      ]),
    );
    // What would lie on the fold is cut whole: from −300 to 300.
    const whole = ends(gore('g', ['fold', 'b'], undefined, { cut: 'on-fold' }));
    expect(whole).toEqual([
      close([
        [-180, 780],
        [180, 420],
      ]),
      true,
      'single',
    ]);
  });

  it('of a drafted gore lies in its middle, on a fold 0.15 of its width beside it', () => {
    const place = (gores: object[]) => {
      const text = plainGown({ units: 'mm', bodice: { 'waist-seam': 800 }, gores, lengths: level(900) });
      const { gown } = draft({ name: 'thread.yaml', text });
      return gown!.drafts.gown.pieces.map(({ grain, edges }) => {
        const [left, right] = [at(edges[0]!.curves[0]!, 0).x, at(edges[0]!.curves.at(-1)!, 1).x];
        return Math.round(((grain.from.x - left) / (right - left)) * 1000) / 1000;
      });
    };
    const folded = { 'on-fold': true, 'half-top': 200, 'half-flare': 0 };
    const plain = { top: 200, flare: 0 };
    expect(
      place([
        { name: 'front', ...folded },
        { name: 'back', ...plain },
      ]),
    ).toEqual([0.15, 0.5]);
    expect(
      place([
        { name: 'front', ...plain },
        { name: 'back', ...folded },
      ]),
    ).toEqual([0.5, 0.85]);
  });
});

describe('the edges of a wrap', () => {
  const FRONT = gore('front', ['centre-front', 'side'], [1000, 1060]);
  const BACK = gore('back', ['side', 'centre-back'], [1060, 1000]);
  const all = [FRONT, BACK];
  const of = (station: string, own: { fullness?: object; shorter?: number } = {}) =>
    ({
      gown: {
        wrapped: { at: station, overlap: 80, overlapAtHem: 120 },
        gores: ['front', 'back'].map((name) => ({
          name,
          ...(name === 'back' && own.fullness ? { fullness: own.fullness } : {}),
        })),
      },
      shape: { shorter: own.shorter ?? 0 },
      pieces: all,
    }) as never;

  it('lie past the line by half of the overlap, each over the other’s cloth', () => {
    const [beyond, ...more] = beyondWrap(FRONT, of('side'), all);
    expect(more).toEqual([]);
    expect(beyond).toMatchObject({
      side: 'right',
      over: BACK,
      overSide: 'left',
      sewn: 40,
      cut: 40,
      atHem: 60,
      darts: [],
    });
    expect(beyond!.line).toEqual(line(300, 0, 300, 1060));
    expect(beyondWrap(BACK, of('side'), all)).toMatchObject([
      { side: 'left', over: FRONT, overSide: 'right' },
    ]);
    expect(beyondWrap(FRONT, of('centre-back'), all)).toEqual([]);
    expect(beyondWrap(FRONT, { gown: { gores: [] }, shape: { shorter: 0 } } as never, all)).toEqual([]);
    // At a centre it lies over its own mirror image.
    expect(beyondWrap(FRONT, of('centre-front'), all)).toMatchObject([
      { side: 'left', over: FRONT, overSide: 'left' },
    ]);
    // A layer 100 shorter is cut off where the same edge has come so far: 1060 of 1160 on the way from 40 to 60.
    const [shorter] = beyondWrap(FRONT, of('side', { shorter: 100 }), all);
    expect(shorter!.atHem).toBeCloseTo(40 + (20 * 1060) / 1160, 9);
  });

  it('have the waist and the hem of what they lie over, and an edge of their own', () => {
    const right = cutForWrap(FRONT, of('side'), all);
    expect(corners(right, 0)).toEqual(
      close([
        [0, 0],
        [300, 0],
        [340, 0],
      ]),
    );
    // Of the back's hem, which runs up 60 in 300 from there, 60 along it.
    const [dx, dy] = [60 * Math.cos(Math.atan(0.2)), 60 * Math.sin(Math.atan(0.2))];
    expect(corners(right, 1)).toEqual(
      close([
        [340, 0],
        [300 + dx, 1060 - dy],
      ]),
    );
    expect(corners(right, 2)).toEqual(
      close([
        [300 + dx, 1060 - dy],
        [300, 1060],
        [0, 1000],
      ]),
    );
    expect([right.frontEdge, right.backEdge, right.edges[1]!.name]).toEqual([
      'centre-front',
      right.edges[1]!.name,
      right.backEdge,
    ]);
    const left = cutForWrap(BACK, of('side'), all);
    expect(corners(left, 0)).toEqual(
      close([
        [-40, 0],
        [0, 0],
        [300, 0],
      ]),
    );
    expect(corners(left, 3)).toEqual(
      close([
        [-dx, 1060 - dy],
        [-40, 0],
      ]),
    );
    expect([left.frontEdge, left.backEdge]).toEqual([right.backEdge, 'centre-back']);
    // Over its own mirror image the hem goes on as the mirror image does.
    const mirrored = cutForWrap(FRONT, of('centre-front'), all);
    expect(corners(mirrored, 2)).toEqual(
      close([
        [300, 1060],
        [0, 1000],
        [-dx, 1000 + dy],
      ]),
    );
    expect(wrappedPieces(of('side')).map((piece) => piece.backEdge)).toEqual([right.backEdge, 'centre-back']);
  });

  it('are as long as they are drawn, and make waist and hem of a layer as much longer', () => {
    const layer = (gores: string[]) => ({ name: 'shell', gores });
    const both = { layer: layer(['front', 'back']), draft: of('side') } as never;
    expect(overlapOf(both, 'waist')).toBe(2 * 2 * 40);
    expect(overlapOf(both, 'hem')).toBe(2 * 2 * 60);
    expect(overlapOf({ layer: layer(['back']), draft: of('side') } as never, 'hem')).toBe(120);
    const [dx, dy] = [60 * Math.cos(Math.atan(0.2)), 60 * Math.sin(Math.atan(0.2))];
    expect(wrapEdgeOf(both)).toBeCloseTo(Math.hypot(dx - 40, 1060 - dy), 6);
    expect(wrapEdgeOf({ layer: layer([]), draft: of('side') } as never)).toBeUndefined();
    expect(
      wrapEdgeOf({ layer: layer(['front']), draft: { gown: {}, pieces: all } } as never),
    ).toBeUndefined();
  });

  it('have the darts of what they lie over, as far as they reach, folded as they are there', () => {
    const dart = (name: string, place: number, takesIn: number, towards: string) => ({
      name,
      at: place,
      takesIn,
      length: 100,
      towards,
    });
    // The back is sewn 240 wide: darts at 24 and 192 from its front edge.
    const fullness = {
      by: 'darts',
      ratio: 300 / 240,
      darts: [dart('near', 0.1, 20, 'front'), dart('far', 0.8, 40, 'back')],
    };
    const [beyond] = beyondWrap(FRONT, of('side', { fullness }), all);
    expect(beyond).toMatchObject({
      sewn: 40,
      cut: 60,
      darts: [{ name: 'near', fromLine: near(24), towards: 'front' }],
    });
    expect(beyond!.darts).toHaveLength(1);
    // From the centre back it is 48 to the far one, which reaches past the edge; mirrored its fold points the other way.
    const [centre] = beyondWrap(BACK, of('centre-back', { fullness }), all);
    expect([centre!.darts, centre!.cut]).toEqual([[], 40]);
    const small = { ...fullness, darts: [dart('far', 0.9, 30, 'back')] };
    const [within] = beyondWrap(BACK, of('centre-back', { fullness: small }), all);
    expect([
      within!.cut,
      within!.darts.map(({ fromLine, towards }) => [Math.round(fromLine), towards]),
    ]).toEqual([70, [[24, 'front']]]);
    const gathered = { by: 'gathers', ratio: 1.25, darts: small.darts };
    expect(beyondWrap(BACK, of('centre-back', { fullness: gathered }), all)[0]!.darts).toEqual([]);
  });
});

describe('a kick pleat', () => {
  const FRONT = gore('front', ['centre-front', 'side'], [1000, 1060]);
  const BACK = gore('back', ['side', 'centre-back'], [1060, 1000]);
  const kick = (own: object = {}) => ({
    name: 'k',
    kind: 'kick',
    at: 'side',
    aboveHem: 300,
    foldDepth: 40,
    ...own,
  });
  const kicked = (piece: Piece, pleats: readonly object[] = [kick()]) =>
    withKicks(piece, pleats as never, [FRONT, BACK]);
  // Both have the mirror image of the front gore's hem, which runs down 60 in 300 to the seam, and so up beyond it.
  const rise = 40 * 0.2;

  it('adds to both gores what its fold is deep, turned out at half a right angle, with one hem', () => {
    const front = kicked(FRONT).piece;
    expect(corners(front, 1)).toEqual(
      close([
        [300, 0],
        [300, 760],
        [340, 800],
        [340, 1060 - rise],
      ]),
    );
    expect(corners(front, 2)).toEqual(
      close([
        [340, 1060 - rise],
        [300, 1060],
        [0, 1000],
      ]),
    );
    expect([corners(front, 0), corners(front, 3)]).toEqual([corners(FRONT, 0), corners(FRONT, 3)]);
    const back = kicked(BACK).piece;
    expect(corners(back, 3)).toEqual(
      close([
        [-40, 1060 - rise],
        [-40, 800],
        [0, 760],
        [0, 0],
      ]),
    );
    expect(corners(back, 2)).toEqual(
      close([
        [300, 1000],
        [0, 1060],
        [-40, 1060 - rise],
      ]),
    );
  });

  it('marks its fold along the seam, and an arrow from its edge to there', () => {
    const marks = (piece: Piece, own: object = {}) =>
      kicked(piece, [kick(own)]).marks.map(({ name, curves }) => [
        name,
        ...[at(curves[0]!, 0), at(curves[0]!, 1)].flatMap(({ x, y }) => [x, y]),
      ]);
    expect(marks(FRONT)).toEqual([
      ['fold-line', ...[300, 760, 300, 1060].map(near)],
      ['pleat-arrow', ...[340, 1000, 300, 1000].map(near)],
    ]);
    expect(marks(BACK)[1]).toEqual(['pleat-arrow', ...[-40, 1000, 0, 1000].map(near)]);
    // A third of a short one above the hem.
    expect(marks(FRONT, { aboveHem: 90 })[1]).toEqual(['pleat-arrow', ...[340, 1030, 300, 1030].map(near)]);
  });

  it('is nothing to other gores and other seams, and other pleats are none', () => {
    for (const own of [{ at: 'centre-back' }, { kind: 'box' }]) {
      const { piece, marks } = kicked(FRONT, [kick(own)]);
      expect([piece, marks]).toEqual([FRONT, []]);
    }
    // On her right, where the front is drawn at the right, the hem is that of the piece at the left.
    const right = gore('right', ['side', 'other'], [1060, 1000], { side: 'right' });
    const own = withKicks(right, [kick({ at: 'other' })] as never, [right]).piece;
    expect(corners(own, 1)).toEqual(
      close([
        [300, 0],
        [300, 700],
        [340, 740],
        [340, 1000 + rise],
      ]),
    );
  });
});
