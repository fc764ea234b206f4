import { describe, expect, it } from 'vitest';
import { patchesOfLayer } from '../../src/stones/patches-of-layer.ts';
import { line } from '../line.ts';

/** Where how many stones are wanted on two rectangles, 300 and 200 wide and 1000 long, the left half of her. mm. */

const piece = (gore: string, width: number, front: string, back: string) => ({
  gore,
  edges: [
    { name: 'waist', curves: [line(0, 0, width, 0)] },
    { name: back, curves: [line(width, 0, width, 1000)] },
    { name: 'hem', curves: [line(width, 1000, 0, 1000)] },
    { name: front, curves: [line(0, 1000, 0, 0)] },
  ],
  frontEdge: front,
  backEdge: back,
});
const PIECES = [piece('front', 300, 'fold', 'front/back'), piece('back', 200, 'front/back', 'centre-back')];
const draft = {
  pieces: PIECES,
  gown: { round: 'mirrored', gores: [{}, {}], stations: [{}, {}, {}] },
};
const patches = (own: object, lying: object[] = []) =>
  patchesOfLayer(
    { clear: 10, size: 6, perDm2: [8, 2], ...own } as never,
    { draft, layer: { name: 'shell', gores: ['front', 'back'] } } as never,
    [],
    lying as never,
  );
const at = (x: number, y: number, own: object = {}, lying: object[] = [], which = 0) =>
  patches(own, lying)[which]!.densityAt({ x, y });

describe('how many stones where', () => {
  it('none nearer to a seam or an edge than is to be clear and half of one: 10 and 3; across a fold they lie', () => {
    expect([at(150, 12.9), at(150, 13.1)]).toEqual([0, 8]);
    expect([at(287.1, 500), at(286.9, 500)]).toEqual([0, 8]);
    expect([at(150, 987.1), at(150, 986.9)]).toEqual([0, 8]);
    expect(at(1, 500)).toBe(8);
    // Behind, its centre is a seam.
    expect([at(199, 500, {}, [], 1), at(100, 500, {}, [], 1)]).toEqual([0, 8]);
  });

  it('from the first figure to the second over the span, and none beyond it', () => {
    const over = { over: [200, 600] };
    expect([199, 200, 300, 600, 601].map((y) => at(150, y, over))).toEqual([0, 8, 6.5, 2, 0]);
    // Counted up from the hem.
    expect([800, 700, 400].map((y) => at(150, y, { ...over, from: 'hem' }))).toEqual([8, 6.5, 2]);
  });

  it('none where she sits, in the back half of her: from 250 of 500 on', () => {
    const own = { offSeat: [100, 300] };
    expect([at(240, 200, own), at(260, 200, own), at(260, 301, own), at(100, 200, own, [], 1)]).toEqual([
      8, 0, 8, 0,
    ]);
  });

  it('none under what lies there: half of both away from its middle', () => {
    const motif = [{ index: 0, at: { x: 150, y: 500 }, size: 40 }];
    expect([at(150, 522.9, {}, motif), at(150, 523.1, {}, motif), at(100, 500, {}, motif, 1)]).toEqual([
      0, 8, 8,
    ]);
  });

  it('none between a dart’s legs: 30 wide at the waist, 120 long, in the middle', () => {
    const fullness = {
      by: 'darts',
      ratio: 300 / 270,
      darts: [{ name: 'd', at: 0.5, takesIn: 30, length: 120, towards: 'front' }],
    };
    const [front] = patchesOfLayer(
      { clear: 10, size: 6, perDm2: [8, 2] } as never,
      {
        draft: { ...draft, shape: {}, gown: { ...draft.gown, gores: [{ fullness }, {}] } },
        layer: { name: 'shell', gores: ['front', 'back'] },
      } as never,
      [],
      [],
    );
    // Half as far down it is half as wide.
    const found = [
      [150, 60],
      [143, 60],
      [157, 60],
      [142, 60],
      [158, 60],
      [150, 119],
      [150, 121],
      [150, 180],
    ].map(([x, y]) => front!.densityAt({ x: x!, y: y! }));
    expect(found).toEqual([0, 0, 0, 8, 8, 0, 8, 8]);
  });

  it('nothing lies beyond a free edge or where the layer ends; all the way round the first beyond the last', () => {
    const sides = (gown: object, gores: string[], pieces = PIECES) =>
      patchesOfLayer(
        { clear: 10, perDm2: [8, 2] } as never,
        { draft: { pieces, gown: { ...draft.gown, ...gown } }, layer: { name: 'shell', gores } } as never,
        [],
        [],
      ).map((patch) => patch.sides.map(({ beyond }) => beyond && [beyond.patch, beyond.mirrored]));
    const both = ['front', 'back'];
    expect(sides({ stations: [{ free: true }, {}, {}] }, both)[0]).toEqual([undefined, [1, false]]);
    expect(sides({ stations: [{}, { free: true }, {}] }, both)).toEqual([
      [[0, true], undefined],
      [undefined, [1, true]],
    ]);
    expect(sides({ stations: [{}, {}, { free: true }] }, both)[1]).toEqual([[0, false], undefined]);
    expect(sides({}, ['back'])).toEqual([[undefined, [0, true]]]);
    expect(sides({ round: 'ring' }, both)).toEqual([
      [
        [1, false],
        [1, false],
      ],
      [
        [0, false],
        [0, false],
      ],
    ]);
    // One gore all the way round is its own neighbour: none.
    expect(sides({ round: 'ring' }, ['front'], PIECES.slice(0, 1))).toEqual([[undefined, undefined]]);
  });

  it('where she sits all the way round: the middle half of the waist, from the centre front on', () => {
    const pieces = [piece('front', 300, 'b/f', 'front/back'), piece('back', 500, 'front/back', 'b/f')];
    const round = patchesOfLayer(
      { clear: 10, perDm2: [8, 2], offSeat: [100, 300] } as never,
      {
        draft: { pieces, gown: { ...draft.gown, round: 'ring' } },
        layer: { name: 'shell', gores: ['front', 'back'] },
      } as never,
      [],
      [],
    );
    // Of 800 from 200 to 600.
    expect([190, 210].map((x) => round[0]!.densityAt({ x, y: 200 }))).toEqual([8, 0]);
    expect([290, 310].map((x) => round[1]!.densityAt({ x, y: 200 }))).toEqual([0, 8]);
  });

  it('beyond a seam lies the next piece, beyond a centre its own mirror image', () => {
    const [front, back] = patches({});
    expect(front!.sides.map(({ beyond }) => [beyond?.patch, beyond?.mirrored])).toEqual([
      [0, true],
      [1, false],
    ]);
    expect(back!.sides.map(({ beyond }) => [beyond?.patch, beyond?.mirrored])).toEqual([
      [0, false],
      [1, true],
    ]);
  });
});
