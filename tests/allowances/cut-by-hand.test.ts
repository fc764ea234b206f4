import { describe, expect, it } from 'vitest';
import { partPlan } from '../../src/allowances/allowance-plan.ts';
import { cutPieces } from '../../src/allowances/cut-pieces.ts';
import { facingMarks } from '../../src/allowances/facing-marks.ts';
import { partRemarks } from '../../src/allowances/part-remarks.ts';
import type { CutPiece } from '../../src/draft/piece.ts';
import { line } from '../line.ts';
import { allowance, BACK, draftOf, FRONT, gores, layerOf, rectangle, stations } from './rectangles.ts';

/** What layers and parts come to on gores that are rectangles, by hand. mm. */

const GOWN = { round: 'mirrored', gores, stations, godets: [], pleats: [], slits: [], pockets: [] };
const cutAll = (
  own: object,
  layers: readonly { layer: object; draft: object }[],
  stones: object[] = [],
  bustle: object[] = [],
): CutPiece[] =>
  cutPieces(
    { ...GOWN, ...own } as never,
    layers as never,
    [],
    ({ name }, { gore }) =>
      stones.filter(
        (set) => 'gore' in set && set.gore === gore && 'layer' in set && set.layer === name,
      ) as never,
    ({ name }, { gore }) =>
      bustle.filter(
        (one) => 'gore' in one && one.gore === gore && 'layer' in one && one.layer === name,
      ) as never,
  );

describe('the pieces of a gown', () => {
  const draft = draftOf();
  const shell = { layer: layerOf('shell'), draft };

  it('gore by gore; layers that are cut alike are one piece that names them', () => {
    const told = (all: readonly CutPiece[]) => all.map(({ gore, layers }) => [gore, ...layers]);
    const net = (own: object = {}, of = draft) => ({ layer: layerOf('net', own), draft: of });
    expect(told(cutAll({}, [shell, net()]))).toEqual([
      ['front', 'shell', 'net'],
      ['back', 'shell', 'net'],
    ]);
    const apart = [
      ['front', 'shell'],
      ['front', 'net'],
      ['back', 'shell'],
      ['back', 'net'],
    ];
    const wide = { waist: allowance(12), hem: allowance(20), seam: allowance(18), named: {} };
    for (const other of [
      net({ allowances: wide }),
      net({ hem: 'raw' }),
      net({ tucks: { count: 1, width: 10, aboveHem: 50, apart: 20 } }),
      net({}, draftOf()),
    ])
      expect(told(cutAll({}, [shell, other]))).toEqual(apart);
    expect(told(cutAll({}, [shell, net({ gores: ['back'] })]))).toEqual([
      ['front', 'shell'],
      ['back', 'shell', 'net'],
    ]);
    const folded = {
      name: 'p',
      kind: 'knife',
      at: 'front/back',
      gore: 'back',
      fromSeam: 60,
      towards: 'back',
      foldDepth: 20,
      stitchedDown: 0,
      layers: ['net'],
    };
    expect(told(cutAll({ pleats: [folded] }, [shell, net()]))).toEqual(apart);
  });

  it('come before what is sewn to them', () => {
    const frill = {
      piece: { ...FRONT, gore: 'frill' },
      of: { kind: 'panel' },
      layer: layerOf('shell'),
      notches: new Map(),
      allowances: {},
      roughCut: 0,
    };
    const all = cutPieces(GOWN as never, [shell] as never, [frill as never]);
    expect(all.map(({ gore }) => gore)).toEqual(['front', 'back', 'frill']);
  });

  it('by themselves need no stones and no bustle', () => {
    const own = cutPieces(GOWN as never, [shell] as never);
    expect(own.map(({ gore }) => gore)).toEqual(['front', 'back']);
    for (const piece of own) {
      expect('stones' in piece || 'bustle' in piece || 'remarks' in piece).toBe(false);
      expect([piece.labelAt, piece.marks, piece.roughCut]).toEqual([{ x: 150, y: 500 }, [], 0]);
      expect(piece.allowances).toEqual({
        waist: 12,
        hem: 20,
        [piece.piece.frontEdge]: 15,
        [piece.piece.backEdge]: 15,
      });
    }
  });

  it('say what is sewn first, then which stones are set, layer by layer, then the points of a bustle', () => {
    const net = { layer: layerOf('net'), draft };
    const set = (name: string, layer: string) => ({ name, layer, gore: 'back', runs: [] });
    const point = {
      layer: 'shell',
      gore: 'back',
      across: 0.5,
      anchor: 30,
      pickUp: 700,
      at: [
        { x: 90, y: 30 },
        { x: 90, y: 700 },
      ],
    };
    const sets = [set('drops', 'shell'), set('beads', 'shell'), set('pearls', 'net')];
    const tucks = { count: 1, width: 10, aboveHem: 50, apart: 20 };
    const tucked = (one: { layer: object }) => ({ ...one, layer: { ...one.layer, tucks }, draft });
    const [front, back] = cutAll({}, [tucked(shell), tucked(net)], sets, [point]);
    expect(front!.remarks!.map(({ kind }) => kind)).toEqual(['tucks']);
    expect(back!.remarks!.map(({ kind }) => kind)).toEqual([
      'tucks',
      'stones-marked',
      'stones-marked',
      'bustle',
    ]);
    expect(back!.remarks!.slice(1, 3)).toEqual([
      { kind: 'stones-marked', layer: 'shell', names: ['drops', 'beads'] },
      { kind: 'stones-marked', layer: 'net', names: ['pearls'] },
    ]);
    expect([back!.stones!.length, back!.bustle]).toEqual([3, [point]]);
    // A ring and a cross beside the three lines of the tuck.
    expect(back!.marks).toHaveLength(3 + 3);
  });

  it('under a rough cut the hem is marked where it will be cut', () => {
    const rough = { ...draft, gown: { ...draft.gown } };
    const of = (hem: number) => {
      const allowances = { waist: allowance(12), hem: allowance(hem), seam: allowance(15), named: {} };
      const [, back] = cutAll({ gores: [gores[0], { ...gores[1], roughCut: 30 }] }, [
        { layer: layerOf('shell', { allowances }), draft: rough },
      ]);
      return [back!.roughCut, back!.marks.map(({ name, curves }) => [name, curves])];
    };
    expect(of(20)).toEqual([30, [['hem-trim', [line(300, 1020, 0, 1020)]]]]);
    expect(of(0)).toEqual([30, []]);
  });

  it('that lie at no place are refused by name', () => {
    const endless = (own: object) => () => cutAll({}, [{ layer: layerOf('shell'), draft: draftOf(own) }]);
    expect(endless({})).not.toThrow();
    const grain = line(150, -Infinity, 150, 800);
    expect(endless({ pieces: [FRONT, { ...BACK, grain }] })).toThrow(/cut line of back/);
    const far = {
      layer: 'shell',
      gore: 'front',
      across: 0.5,
      anchor: 30,
      pickUp: 700,
      at: [
        { x: 90, y: 30 },
        { x: 90, y: Infinity },
      ],
    };
    expect(() => cutAll({}, [shell], [], [far])).toThrow(/cut line of front/);
  });

  it('a seam is marked where a slit, a pocket or a godet needs it, and no other seam is', () => {
    const marks = (own: object, of = draft, gore = 'front', edge = 'front/back') =>
      cutAll(own, [{ layer: layerOf('shell'), draft: of }])
        .find((piece) => piece.gore === gore)!
        .notches.filter((notch) => notch.edge === edge)
        .map(({ distance }) => distance);
    const plain = marks({});
    const seam = 'front/back';
    const clear = (...points: number[]) =>
      [...plain.filter((mark) => points.every((point) => Math.abs(mark - point) > 13.5)), ...points].sort(
        (a, b) => a - b,
      );
    const slit = (aboveHem: number, at = seam) => ({ slits: [{ seam: at, aboveHem }] });
    expect(marks(slit(300))).toEqual(clear(700));
    // A layer 40 shorter is open as high as the gown is: 300 less 40 above its own hem.
    expect(marks(slit(300), draftOf({}, { shorter: 40 }))).toEqual(clear(740));
    expect(marks({ slits: [{ seam, belowWaist: 333 }] })).toEqual(clear(333));
    expect(marks(slit(300, 'centre-back'))).toEqual(plain);
    expect(marks({ pockets: [{ seam, belowWaist: 60, opening: 160 }] })).toEqual(clear(60, 220));
    expect(marks({ pockets: [{ seam: 'centre-back', belowWaist: 60, opening: 160 }] })).toEqual(plain);
    // Open from 400, and a mark half-way down from there to the hem (common practice).
    expect(marks({ godets: [{ seam, from: 400 }] })).toEqual(clear(400, 700));
    expect(marks({ godets: [{ seam: 'centre-back', from: 400 }] })).toEqual(plain);
    // At an end of the seam nothing is marked; nothing at all on an edge that is sewn to nothing.
    expect(marks(slit(1000))).toEqual(plain);
    expect(marks(slit(0))).toEqual(plain);
    const free = [stations[0], { ...stations[1], free: true }, stations[2]];
    expect(marks(slit(300), draftOf({ gown: { round: 'mirrored', gores, stations: free } }))).toEqual([]);
    expect(marks(slit(300), draft, 'back')).toEqual(clear(700));
    const many = marks({ ...slit(300), pockets: [{ seam, belowWaist: 60, opening: 160 }] });
    expect(many).toEqual(clear(60, 220, 700));
  });
});

describe('what is said of parts', () => {
  const ring = rectangle('frill', ['left', 'right']);
  const told = (of: object, own: object = {}) => partRemarks({ of, piece: ring, ...own } as never);

  it('each in its own words: facings, and the seams that they are cut over', () => {
    const facing = { kind: 'hem-facing', faces: 'shell' };
    const marks = ['a/b', 'b/c'].map((name) => ({ name, curves: [] }));
    for (const kind of ['hem-facing', 'waist-facing', 'upper-facing']) {
      expect(told({ ...facing, kind })).toEqual([{ ...facing, kind }]);
      expect(told({ ...facing, kind }, { marks })).toEqual([
        { ...facing, kind },
        { kind: 'over-seams', seams: ['a/b', 'b/c'] },
      ]);
    }
    expect(told({ kind: 'edge-facing', edge: 'cf', depth: 50 }, { marks })).toEqual([
      { kind: 'edge-facing', edge: 'cf', depth: 50 },
    ]);
    expect(told({ kind: 'panel' })).toEqual([]);
    expect(told({ kind: 'godet', godet: { seam: 'a/b', from: 300 } })).toEqual([
      { kind: 'godet', seam: 'a/b', from: 300 },
    ]);
  });

  it('flounces by the ring of all their copies and what they are gathered to', () => {
    const flounce = { kind: 'gathered', sewnTo: { name: 'shell' }, aboveHem: 120, fullness: 2 };
    const remark = { kind: 'flounce', sewnTo: 'shell', aboveHem: 120, open: false };
    expect(told({ kind: 'flounce', flounce, open: false }, { piece: { ...ring, copies: 3 } })).toEqual([
      { ...remark, ring: 900, gatheredTo: 450 },
    ]);
    const circular = { ...flounce, kind: 'circular' };
    expect(told({ kind: 'flounce', flounce: circular, open: true })).toEqual([
      { ...remark, open: true, ring: 300 },
    ]);
  });

  it('tiers, straps and capes by what they are cut and sewn to', () => {
    const tiers = [{ cut: 400 }];
    expect(told({ kind: 'tiers', run: { tiers }, runs: 1, tiers: { yoke: 200 } })).toEqual([
      { kind: 'tiers', cuts: tiers, yoke: 200 },
    ]);
    expect(told({ kind: 'tiers', run: { tiers }, runs: 2, tiers: { yoke: 200 } })).toEqual([
      { kind: 'tiers', cuts: tiers },
    ]);
    expect(told({ kind: 'strap', strap: { from: 'f', to: 'b', width: 30 } })).toEqual([
      { kind: 'strap', from: 'f', to: 'b', width: 30 },
    ]);
    const cape = { overArm: 60, from: 'f', to: 'b' };
    expect(told({ kind: 'cape', cape, inner: 500 })).toEqual([
      { kind: 'cape', between: { from: 'f', to: 'b' }, overArm: 60 },
    ]);
    expect(told({ kind: 'cape', cape: { overArm: 60, fullness: 2 }, inner: 500 })).toEqual([
      { kind: 'cape', overArm: 60, gatheredTo: 500 },
    ]);
    expect(told({ kind: 'cape', cape: { overArm: 60, from: 'f' }, inner: 500 })).toEqual([
      { kind: 'cape', overArm: 60 },
    ]);
  });

  it('their own edges and allowances; a sewn lower edge and a pointed top are told', () => {
    const piece = { ...ring, edges: ring.edges.with(0, { ...ring.edges[0]!, name: 'upper-edge' }) };
    const named = { left: allowance(7) };
    const layer = layerOf('net', {
      allowances: { waist: allowance(12), hem: allowance(20), seam: allowance(15), named },
    });
    const plan = (own: object) =>
      partPlan({ piece, layer, allowances: { right: 9 }, roughCut: 0, ...own } as never);
    expect(plan({}).widths).toEqual({ 'upper-edge': 15, hem: 20, left: 7, right: 9 });
    expect([plan({}).waistCorner, plan({}).lowerSewn]).toEqual(['mirrored', undefined]);
    expect(plan({ pointed: true }).waistCorner).toBe('plain');
    expect(plan({ lowerSewn: true }).lowerSewn).toBe(true);
    expect([plan({}).hemCorner, plan({ roughCut: 30 }).hemCorner]).toEqual(['mirrored', 'plain']);
  });
});

describe('a facing counts its marks from the layer that it faces', () => {
  const layer = (name: string, length: number) => ({
    layer: { name },
    draft: { gown: { stations: [{ name: 'front/side' }] }, lengths: [length] },
  });
  const part = (of: object) =>
    ({
      of,
      piece: { edges: [{ name: 'front/side', curves: [line(0, 0, 0, 100)] }] },
      notches: new Map([['front/side', [50]]]),
    }) as never;
  const told = (of: object, marks: number[]) =>
    facingMarks(
      part(of),
      [layer('shell', 1000), layer('net', 950), layer('shell', 700)] as never,
      () => new Map([['front/side', marks]]),
    ).get('front/side');

  it('the first of its name; marks exactly 13.5 from an end are too near it', () => {
    expect(told({ kind: 'hem-facing', faces: 'shell' }, [960])).toEqual([60]);
    expect(told({ kind: 'hem-facing', faces: 'net' }, [900])).toEqual([50]);
    expect(told({ kind: 'hem-facing', faces: 'shell' }, [913.5, 986.5, 940])).toEqual([40]);
    expect(told({ kind: 'hem-facing', faces: 'shell' }, [913.6, 986.4])).toEqual([
      expect.closeTo(13.6, 9),
      expect.closeTo(86.4, 9),
    ]);
    expect(told({ kind: 'waist-facing' }, [40, 120])).toEqual([40]);
  });
});
