import { describe, expect, it } from 'vitest';
import { pleatFindings } from '../../src/allowances/pleat-findings.ts';
import { pleatRemarks } from '../../src/allowances/pleat-remarks.ts';
import { pleatMarks } from '../../src/allowances/pleats.ts';
import { wideAllowances } from '../../src/allowances/wide-allowances.ts';
import type { Piece } from '../../src/draft/piece.ts';
import type { Curve, Line } from '../../src/geometry/curve.ts';
import { line } from '../line.ts';
import { allowance, BACK, draftOf, FRONT, gores, layerOf, rectangle, stations } from './rectangles.ts';

/** What finds no room on gores that are rectangles, by hand. mm. */

describe('a pleat that finds no room', () => {
  const pleat = (own: object) => ({
    name: 'p',
    kind: 'knife',
    at: 'front/back',
    gore: 'back',
    fromSeam: 80,
    towards: 'back',
    foldDepth: 30,
    layers: ['shell', 'net'],
    stitchedDown: 0,
    place: (key?: string) => key ?? 'pleat',
    ...own,
  });
  const found = (
    pleats: readonly object[],
    own: { pieces?: Piece[]; gores?: object[]; layers?: object[] } = {},
  ) => {
    const draft = draftOf({
      pieces: own.pieces ?? [FRONT, BACK],
      gown: { round: 'mirrored', gores: own.gores ?? gores, stations },
    });
    const layers = (own.layers ?? [layerOf('shell')]).map((layer) => ({ layer, draft }));
    return pleatFindings({ pleats, units: 'mm' } as never, layers as never).map(({ code, span, message }) => [
      code,
      span as unknown,
      message,
    ]);
  };

  it('is wider than the cloth beside its line', () => {
    expect(found([pleat({})])).toEqual([]);
    expect(found([pleat({ foldDepth: 80 })])).toEqual([]);
    expect(found([pleat({ foldDepth: 85 })])).toEqual([
      [
        'pleat-too-wide',
        'fold-depth',
        'The folds of pleat `p` are 85 mm deep, and gore `back` (layer `shell`) has room for 80 mm there.',
      ],
    ]);
    expect(found([pleat({ towards: 'front', foldDepth: 219 })])).toEqual([]);
    expect(found([pleat({ towards: 'front', foldDepth: 225 })])[0]![2]).toContain('has room for 220 mm');
    // On a line that lies off the gore there is none.
    expect(found([pleat({ fromSeam: 0, foldDepth: 5 })])[0]![2]).toContain('has room for 0 mm');
    const { fromSeam: _, gore: __, ...atSeam } = pleat({ kind: 'box', foldDepth: 310 });
    expect(found([atSeam])[0]![2]).toContain('has room for 0 mm');
  });

  it('or lies over another: by half a millimetre at least', () => {
    const two = (fromSeam: number) => found([pleat({}), pleat({ name: 'q', fromSeam })]);
    expect(two(110)).toEqual([]);
    expect(two(109.6)).toEqual([]);
    expect(two(109.4)).toEqual([
      [
        'pleats-overlap',
        'pleat',
        'The pleats `p` and `q` lie over each other on gore `back` (layer `shell`).',
      ],
    ]);
    expect(two(60)).toHaveLength(1);
    expect(two(50)).toEqual([]);
    // Two lines 50 apart whose folds take from both sides of what is between: 30 and 30 meet.
    expect(found([pleat({ towards: 'front' }), pleat({ name: 'q', fromSeam: 130 })])).toHaveLength(1);
    expect(found([pleat({ towards: 'front' }), pleat({ name: 'q', fromSeam: 140 })])).toEqual([]);
    // At the hem alone: 100 apart at the waist, the back half as wide below.
    const narrow = rectangle('back', ['front/back', 'centre-back'], {
      edges: BACK.edges.with(1, { name: 'centre-back', curves: [line(300, 0, 60, 1000)] }),
    });
    expect(
      found([pleat({ fromSeam: 40 }), pleat({ name: 'q', fromSeam: 75 })], { pieces: [FRONT, narrow] }),
    ).toHaveLength(1);
    expect(found([pleat({ fromSeam: 40 }), pleat({ name: 'q', fromSeam: 75 })])).toEqual([]);
  });

  it('or is stitched past its hem; a kick pleat begins with its own slant above it', () => {
    const stitched = (stitchedDown: number) => found([pleat({ stitchedDown })]);
    expect(stitched(999)).toEqual([]);
    expect(stitched(1000)).toEqual([
      [
        'pleat-below-hem',
        'stitched-down',
        '`stitched-down` of pleat `p` is 1000 mm, and the gore 1000 mm long there.',
      ],
    ]);
    const { fromSeam: _, ...atSeam } = pleat({ kind: 'kick', gore: undefined });
    const kick = (aboveHem: number) => found([{ ...atSeam, aboveHem }]);
    expect(kick(970)).toEqual([]);
    expect(kick(971)[0]!.slice(0, 2)).toEqual(['pleat-below-hem', 'above-hem']);
    expect(kick(971)[0]![2]).toContain('`above-hem` of pleat `p` is 971 mm');
  });

  it('or lies at a seam that bends by half a millimetre; inside the gore that is nothing to it', () => {
    const bent = (by: number) => {
      // A side that leans out by so much in its middle: two straight halves.
      const curves: Curve[] = [line(0, 1000, by, 500), line(by, 500, 0, 0)];
      return rectangle('back', ['front/back', 'centre-back'], {
        edges: BACK.edges.with(3, { name: 'front/back', curves }),
      });
    };
    const { fromSeam: _, gore: __, ...atSeam } = pleat({ kind: 'inverted', foldDepth: 20 });
    expect(found([atSeam], { pieces: [FRONT, bent(0.4)] })).toEqual([]);
    expect(found([atSeam], { pieces: [FRONT, bent(6)] })).toEqual([
      [
        'pleat-on-curve',
        'at',
        'The pleat `p` lies at `front/back`, and the edge of gore `back` there bends by 6 mm.',
      ],
    ]);
    expect(found([pleat({})], { pieces: [FRONT, bent(6)] })).toEqual([]);
    // Of a kick only what opens counts: below the bend it is straight.
    const kick = (aboveHem: number) =>
      found([{ ...atSeam, kind: 'kick', aboveHem }], { pieces: [FRONT, bent(6)] });
    expect(kick(400)).toEqual([]);
    expect(kick(800)[0]![0]).toBe('pleat-on-curve');
  });

  it('or lies over a dart', () => {
    const fullness = {
      where: 'waist',
      by: 'darts',
      ratio: 300 / 280,
      darts: [{ name: 'd', at: 0.5, takesIn: 20, length: 100, towards: 'back' }],
    };
    const darted = [gores[0]!, { ...gores[1]!, fullness }];
    // The dart takes 140 to 160 of the top; folds lie over the 30 before their line.
    const told = (fromSeam: number) => found([pleat({ fromSeam })], { gores: darted });
    expect(told(138)).toEqual([]);
    // Past the dart 170 of the sewn top are 190 of the cloth: 160 to 190 touch its leg.
    expect(told(170)).toEqual([
      ['pleat-on-dart', 'pleat', 'A fold of the pleat `p` lies over the dart `d` of gore `back`.'],
    ]);
    expect(told(175)).toEqual([]);
    expect(found([pleat({ fromSeam: 170 })])).toEqual([]);
    expect(found([pleat({ fromSeam: 120, towards: 'front' })], { gores: darted })).toHaveLength(1);
    expect(found([pleat({ fromSeam: 105, towards: 'front' })], { gores: darted })).toEqual([]);
  });

  it('each is said once, of layers and gores that have it', () => {
    const wide = pleat({ foldDepth: 85 });
    expect(found([wide], { layers: [layerOf('shell'), layerOf('net')] })).toHaveLength(1);
    expect(found([wide], { layers: [layerOf('net', { gores: ['front'] })] })).toEqual([]);
    expect(found([wide], { layers: [layerOf('tulle')] })).toEqual([]);
    const span = (start: number) => () => ({ start });
    const two = [85, 90].map((foldDepth, i) => pleat({ foldDepth, place: span(i) }));
    expect(found(two)).toHaveLength(2);
    expect(found(two.map((own) => ({ ...own, place: span(7) })))).toHaveLength(1);
  });

  it('a piece says which pleats it has', () => {
    const kinds = (pleats: object[], piece = BACK) => pleatRemarks(pleats as never, piece).length;
    expect([kinds([pleat({})]), kinds([pleat({})], FRONT)]).toEqual([1, 0]);
    const { fromSeam: _, gore: __, ...atSeam } = pleat({ kind: 'inverted' });
    expect([kinds([atSeam]), kinds([atSeam], FRONT), kinds([{ ...atSeam, at: 'centre-front' }])]).toEqual([
      1, 1, 0,
    ]);
  });
});

describe('an allowance wider than its gore', () => {
  const wide = (
    width: number,
    own: object = {},
    pieces = [rectangle('front', ['centre-front', 'front/back'], {}, 100), BACK],
  ) => {
    const named = { 'front/back': allowance(width) };
    const allowances = { waist: allowance(12), hem: allowance(20), seam: allowance(15), named };
    return wideAllowances([
      { layer: layerOf('shell', { allowances, ...own }), draft: draftOf({ pieces }) },
    ] as never).map(({ gore, layer, edge, width: said, top, place: at }) => [
      gore,
      layer,
      edge,
      said,
      top,
      at(),
    ]);
  };

  it('by nine tenths stands out where it is pressed open; with french seams it is never open', () => {
    expect(wide(189)).toEqual([]);
    expect(wide(191)).toEqual([['front', 'shell', 'front/back', 191, 100, 'front']]);
    expect(wide(191, { seams: 'french' })).toEqual([]);
    expect(wide(191, { gores: ['back'] })).toEqual([]);
  });

  it('is measured at the cut line where that is shorter, and told once a gore', () => {
    // The waist an arc about a point below: 12 above it it is longer, so the seam line counts; turned over, the cut line.
    const bowed = (up: boolean) => {
      const radius = 200;
      const half = Math.asin(50 / radius);
      const waist: Curve = up
        ? {
            kind: 'arc',
            centre: { x: 50, y: radius * Math.cos(half) },
            radius,
            start: -Math.PI / 2 - half,
            sweep: 2 * half,
          }
        : {
            kind: 'arc',
            centre: { x: 50, y: -radius * Math.cos(half) },
            radius,
            start: Math.PI / 2 + half,
            sweep: -2 * half,
          };
      const piece = rectangle('front', ['front/back', 'front/back'], {}, 100);
      return { ...piece, edges: piece.edges.with(0, { name: 'waist', curves: [waist] }) };
    };
    const arc = 2 * 200 * Math.asin(0.25);
    expect(wide(250, {}, [bowed(true), BACK]).map(([, , , , top]) => top)).toEqual([expect.closeTo(arc, 6)]);
    expect(wide(250, {}, [bowed(false), BACK]).map(([, , , , top]) => top)).toEqual([
      expect.closeTo((arc * 188) / 200, 3),
    ]);
  });
});

describe('pleats that take a top in', () => {
  const top = (towards: string | undefined) =>
    ({ rule: { towards, depth: 20 }, cut: 200, sewn: 120 }) as never;
  const arrows = (towards: string | undefined, own: Partial<Piece> = {}) =>
    pleatMarks(
      { ...FRONT, edges: [{ name: 'waist', curves: [line(0, 7, 200, 7)] }], ...own } as never,
      top(towards),
    )
      .filter(({ name }) => name !== 'pleat')
      .map(({ curves }) => [curves[0]!, curves.length])
      .map(([curve]) =>
        [(curve as Line).from.x, (curve as Line).to.x, (curve as Line).from.y].map((value) =>
          Math.round(value),
        ),
      );

  it('have an arrow each from its outer fold to the line, half-way down its marks', () => {
    // Two pleats of 20, in the middle of their hundreds: lines at 30, 50 and 70.
    expect(arrows('front')).toEqual([
      [70, 30, 27],
      [170, 130, 27],
    ]);
    expect(arrows('back')).toEqual([
      [30, 70, 27],
      [130, 170, 27],
    ]);
    expect(arrows('back', { side: 'right' })).toEqual(arrows('front'));
    expect(arrows(undefined)).toEqual([]);
    expect(arrows('left')).toEqual([]);
    // One box pleat: 10 … its outer folds 50 and 90 of a face as wide as two folds.
    const box = arrows('box');
    expect(box).toHaveLength(2);
    expect(box.map(([from, to]) => Math.sign(to! - from!))).toEqual([-1, 1]);
  });
});
