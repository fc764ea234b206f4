import { describe, expect, it } from 'vitest';
import type { Part } from '../../src/draft/part.ts';
import type { Piece } from '../../src/draft/piece.ts';
import { edgeFacingParts } from '../../src/finishing/edge-facing-parts.ts';
import { facingParts } from '../../src/finishing/facing-parts.ts';
import { cutFacings } from '../../src/finishing/facings-of-hem.ts';
import { waistParts } from '../../src/finishing/waist-parts.ts';
import { lengthOfRun } from '../../src/geometry/length.ts';
import { at, quad, upright } from '../quads.ts';

/** Which facings are cut of which gores, cut as one or apart, named and marked: on rectangles made by hand. mm. */

const place = () => ({ start: 0, end: 0 });
const gore = (
  name: string,
  width: number,
  [front, back]: readonly [string, string],
  own: object = {},
): Piece =>
  upright(width, 900, undefined, { names: ['waist', back, 'hem', front], piece: { gore: name, ...own } })
    .piece;
const SEAMS = ['centre-front', 'a/b', 'b/c', 'centre-back'] as const;
const PIECES = [
  gore('a', 110, [SEAMS[0], SEAMS[1]], { cut: 'pair' }),
  gore('b', 130, [SEAMS[1], SEAMS[2]], { cut: 'pair' }),
  gore('c', 150, [SEAMS[2], SEAMS[3]], { cut: 'pair' }),
];
/** Wide cloth, and allowances that a seam left out saves. */
const CLOTH = {
  name: 'own',
  cloth: { name: 'calico', width: 3000, selvedge: 0 },
  allowances: { seam: { width: 12 }, waist: { width: 12 }, hem: { width: 12 }, named: {} },
};
const FACES = { name: 'shell', gores: ['a', 'b', 'c'], facing: { layer: CLOTH, depth: 61, place } };
const drawn = (pieces: readonly Piece[] = PIECES, gown: object = {}) => ({
  pieces,
  gown: { round: 'mirrored', ...gown },
});
const edgesOf = ({ piece: { edges } }: Pick<Part, 'piece'>) =>
  edges.map(({ name, curves }) => [name, Math.round(lengthOfRun(curves) * 1e6) / 1e6]);

describe('facings of halves that differ', () => {
  const slanted = (name: string, [front, back]: readonly [string, string], foot: number, own: object = {}) =>
    quad([at(0, 0), at(200, 0), at(200 + foot, 400), at(0, 400)], undefined, {
      names: ['waist', back, 'hem', front],
      piece: { gore: name, side: 'left', cut: 'single', ...own },
    }).piece;
  const turned = (name: string, [front, back]: readonly [string, string], foot: number, own: object = {}) =>
    quad([at(-200, 0), at(0, 0), at(0, 400), at(-200 - foot, 400)], undefined, {
      names: ['waist', front, 'hem', back],
      piece: { gore: name, side: 'right', cut: 'single', ...own },
    }).piece;
  const cut = (right: number, own: object = {}) =>
    cutFacings({ gown: { round: 'two-halves' }, cutAs: 'pairs' } as never, [
      slanted('a', ['centre-front', 'a/b'], 30, own),
      slanted('b', ['a/b', 'centre-back'], 50),
      turned('b', ['a/b', 'centre-back'], right),
      turned('a', ['centre-front', 'a/b'], 30, own),
    ]);

  it('as pairs where both sides are alike, her left and her right where they are not', () => {
    expect(cut(50).map(({ gore: name, side, cut: how }) => [name, side, how])).toEqual([
      ['a', undefined, 'pair'],
      ['b', undefined, 'pair'],
    ]);
    const [, left, right, ...none] = cut(45);
    expect(none).toEqual([]);
    expect([left!.gore, left!.side, left!.cut, left!.frontEdge]).toEqual(['b', 'left', 'single', 'a/b']);
    expect([right!.gore, right!.side, right!.cut, right!.backEdge]).toEqual(['b', 'right', 'single', 'a/b']);
    // Each as long at its hem as its own.
    expect([left!, right!].map(({ edges }) => lengthOfRun(edges[2]!.curves))).toEqual([250, 245]);
  });

  it('on a fold one; and as they are where her sides are one, or each is cut by itself', () => {
    const folded = (own: object) =>
      cutFacings({ gown: { round: 'two-halves' }, cutAs: 'pairs', ...own } as never, [
        slanted('a', ['fold', 'a/b'], 30),
        turned('a', ['fold', 'a/b'], 30),
      ]);
    expect(folded({}).map(({ cut: how }) => how)).toEqual(['on-fold']);
    expect(folded({ cutAs: undefined })).toHaveLength(2);
    expect(folded({ gown: { round: 'ring' } })).toHaveLength(2);
    const atBack = cutFacings({ gown: { round: 'two-halves' }, cutAs: 'pairs' } as never, [
      slanted('a', ['a/b', 'fold'], 0),
      turned('a', ['a/b', 'fold'], 0),
    ]);
    expect(atBack.map(({ cut: how, side }) => [how, side])).toEqual([['on-fold', undefined]]);
  });
});

describe('facings of a wrap’s edges', () => {
  const layer = { name: 'facing' };
  const faced = (pieces: readonly Piece[], wrap: object | undefined) =>
    edgeFacingParts(
      { edgeFacing: undefined, wrap, stations: [] } as never,
      [{ draft: { pieces: [], gown: {} } }, { draft: { pieces, gown: {} } }] as never,
    ) as readonly Part[];
  const wrap = { facing: { layer, depth: 61, place } };

  it('of every gore that has one, at its own side, from the waist down', () => {
    const pieces = [
      gore('a', 210, ['wrap-edge', 'a/b']),
      gore('b', 230, ['a/b', 'b/c']),
      gore('c', 250, ['b/c', 'wrap-edge']),
    ];
    const [front, back, ...none] = faced(pieces, wrap);
    expect(none).toEqual([]);
    expect([front!.piece.gore, front!.of, front!.layer]).toEqual([
      'a-edge',
      { kind: 'edge-facing', edge: 'wrap-edge', depth: 61 },
      layer,
    ]);
    expect(edgesOf(front!)).toEqual([
      ['waist', 61],
      ['inner-edge', 900],
      ['hem', 61],
      ['wrap-edge', 900],
    ]);
    expect(back!.piece.gore).toBe('c-edge');
    expect(edgesOf(back!)).toEqual([
      ['waist', 61],
      ['wrap-edge', 900],
      ['hem', 61],
      ['inner-edge', 900],
    ]);
    expect(faced(pieces, {})).toEqual([]);
    expect(faced(pieces, undefined)).toEqual([]);
  });

  it('hems are not cut as one over a wrap’s edges, nor notched there', () => {
    const layers = [{ ...FACES, gores: ['a', 'b'] }].map((own) => ({
      layer: own,
      draft: drawn([gore('a', 110, ['x', 'wrap-edge']), gore('b', 130, ['wrap-edge', 'y'])]),
    }));
    const { parts } = facingParts({ layers } as never, [], [], {
      godets: [],
      slits: [],
      pleats: [],
    } as never);
    expect(parts.map(({ piece, notches }) => [piece.gore, [...notches.keys()]])).toEqual([
      ['a', ['x']],
      ['b', ['y']],
    ]);
  });

  it('both of one gore by their sides, left and right by theirs; too deep by its name', () => {
    const both = gore('a', 210, ['wrap-edge', 'wrap-edge']);
    expect(faced([both], wrap).map(({ piece }) => piece.gore)).toEqual(['a-front-edge', 'a-back-edge']);
    const sides = [
      { ...gore('a', 210, ['x', 'wrap-edge']), side: 'left' as const },
      { ...gore('a', 210, ['wrap-edge', 'x']), side: 'right' as const },
    ];
    expect(faced(sides, wrap).map(({ piece }) => piece.gore)).toEqual(['a-edge', 'a-edge']);
    expect(faced([gore('a', 60, ['wrap-edge', 'x'])], wrap)).toEqual({ gore: 'a', facing: wrap.facing });
  });
});

describe('facings of hems', () => {
  const NONE = { godets: [], slits: [], pleats: [] };
  const facings = (
    layers: object[],
    {
      sewnOn = [],
      capes = [],
      ...gown
    }: { sewnOn?: object[]; capes?: object[] } & Record<string, unknown> = {},
  ) => facingParts({ layers } as never, capes as never, sewnOn as never, { ...NONE, ...gown } as never);
  const names = ({ parts }: ReturnType<typeof facings>) => parts.map(({ piece }) => piece.gore);

  it('cut as one over straight seams, their places marked; not over one that is open, or has a wedge', () => {
    const layers = [{ layer: FACES, draft: drawn() }];
    const { parts, tooDeep } = facings(layers);
    expect(tooDeep).toEqual([]);
    expect(parts).toHaveLength(1);
    const [one] = parts;
    expect([one!.piece.gore, one!.of, one!.layer.name, one!.piece.layers]).toEqual([
      'a-b-c',
      { kind: 'hem-facing', faces: 'shell', depth: 61 },
      'own',
      ['own'],
    ]);
    expect(edgesOf(one!)).toEqual([
      ['inner-edge', 390],
      ['centre-back', 61],
      ['hem', 390],
      ['centre-front', 61],
    ]);
    expect(one!.marks!.map(({ name, curves }) => [name, lengthOfRun(curves)])).toEqual([
      ['a/b', 61],
      ['b/c', 61],
    ]);
    expect([...one!.notches]).toEqual([
      ['centre-back', [30.5]],
      ['centre-front', [30.5]],
    ]);
    expect(names(facings(layers, { slits: [{ seam: 'a/b' }] }))).toEqual(['a', 'b-c']);
    expect(names(facings(layers, { godets: [{ seam: 'b/c' }] }))).toEqual(['a-b', 'c']);
    expect(names(facings(layers, { godets: [{ seam: 'b/c' }], slits: [{ seam: 'a/b' }] }))).toEqual([
      'a',
      'b',
      'c',
    ]);
  });

  it('over the extensions of its own kick pleats, and not over their seam; other pleats lie above it', () => {
    const layers = [{ layer: FACES, draft: drawn() }];
    const pleat = { kind: 'kick', name: 'k', at: 'a/b', aboveHem: 300, foldDepth: 80, layers: ['shell'] };
    const kicked = facings(layers, { pleats: [pleat] });
    expect(names(kicked)).toEqual(['a', 'b-c']);
    // 110 and 280 at the hem, and a fold of 80 beyond the seam on both.
    expect(kicked.parts.map((part) => Object.fromEntries(edgesOf(part) as [string, number][]).hem)).toEqual([
      190, 360,
    ]);
    expect(names(facings(layers, { pleats: [{ ...pleat, kind: 'knife' }] }))).toEqual(['a-b-c']);
    expect(names(facings(layers, { pleats: [{ ...pleat, layers: ['lining'] }] }))).toEqual(['a-b-c']);
  });

  it('of the gores that a layer has, and of layers that ask for one', () => {
    const some = { ...FACES, gores: ['a', 'c'] };
    expect(names(facings([{ layer: some, draft: drawn() }]))).toEqual(['a', 'c']);
    expect(facings([{ layer: { ...FACES, facing: undefined }, draft: drawn() }])).toEqual({
      parts: [],
      tooDeep: [],
    });
    const two = facings([
      { layer: { ...FACES, name: 'lining' }, draft: drawn() },
      { layer: { ...FACES, facing: { ...FACES.facing, depth: 901 } }, draft: drawn() },
    ]);
    expect(two.parts.map(({ of }) => of)).toEqual([{ kind: 'hem-facing', faces: 'lining', depth: 61 }]);
    expect(two.tooDeep.map(({ gore: name, layer }) => [name, layer.name, layer.facing!.depth])).toEqual([
      ['a', 'shell', 901],
    ]);
  });

  it('of godets and capes each its own, by itself', () => {
    const wedge = gore('wedge', 170, ['left', 'right']);
    const cape = gore('cape', 190, ['front', 'centre-back']);
    const { parts, tooDeep } = facings([], {
      sewnOn: [
        { of: { kind: 'godet' }, layer: FACES, piece: wedge },
        { of: { kind: 'flounce' }, layer: FACES, piece: gore('frill', 500, ['x', 'y']) },
      ],
      capes: [
        { cape: { layers: [FACES, { ...FACES, facing: undefined }] }, piece: cape },
        { cape: { layers: [FACES] }, piece: { ...cape, gore: 'short', edges: upright(190, 50).piece.edges } },
      ],
    });
    expect(parts.map(({ piece, marks }) => [piece.gore, piece.part, marks])).toEqual([
      ['wedge', 'facing', []],
      ['cape', 'facing', []],
    ]);
    expect(edgesOf(parts[0]!)[0]).toEqual(['inner-edge', 170]);
    expect(tooDeep.map(({ gore: name }) => name)).toEqual(['short']);
  });
});

describe('a faced waist', () => {
  const waist = {
    finish: 'facing',
    layer: CLOTH,
    width: 47,
    overlap: 0,
    place: (...path: string[]) => path.join(),
  };
  const made = (own: object, pieces: readonly Piece[] = PIECES, layer: object = FACES) =>
    waistParts(
      { waist, closure: undefined, ...own } as never,
      [
        { layer: { ...FACES, gores: [] }, draft: drawn([]) },
        { layer, draft: drawn(pieces) },
      ] as never,
    );

  it('of the outermost layer, cut as one but where she closes it', () => {
    const [one, ...none] = made({}) as readonly Part[];
    expect(none).toEqual([]);
    expect(edgesOf(one!)).toEqual([
      ['waist', 390],
      ['centre-back', 47],
      ['inner-edge', 390],
      ['centre-front', 47],
    ]);
    expect([one!.of, one!.piece.gore, one!.piece.layers, one!.layer]).toEqual([
      { kind: 'waist-facing', depth: 47 },
      'a-b-c',
      ['own'],
      CLOTH,
    ]);
    expect(one!.marks!.map(({ name }) => name)).toEqual(['a/b', 'b/c']);
    expect([...one!.notches.keys()].sort()).toEqual(['centre-back', 'centre-front']);
    const closed = made({ closure: { station: { name: 'b/c' } } }) as readonly Part[];
    expect(closed.map(({ piece }) => piece.gore)).toEqual(['a-b', 'c']);
    const fewer = made({}, PIECES, { ...FACES, gores: ['b', 'c'] }) as readonly Part[];
    expect(fewer.map(({ piece }) => piece.gore)).toEqual(['b-c']);
  });

  it('too deep, by the gore’s name', () => {
    const short = PIECES.with(1, { ...PIECES[1]!, edges: upright(130, 40).piece.edges });
    expect(made({}, short)).toEqual({ gore: 'b' });
  });
});
