import { describe, expect, it } from 'vitest';
import { compare } from '../../src/compare/compare.ts';
import { comparePieces } from '../../src/compare/compare-pieces.ts';
import { comparisonJson } from '../../src/compare/comparison-json.ts';
import { findingChanges } from '../../src/compare/finding-changes.ts';
import { outlineSamples } from '../../src/compare/outline-samples.ts';
import { sameCloth } from '../../src/compare/same-cloth.ts';
import { specChanges } from '../../src/compare/spec-changes.ts';
import { specLines } from '../../src/compare/spec-lines.ts';
import { specValues } from '../../src/compare/spec-values.ts';
import { comparisonSvg } from '../../src/publish/comparison.ts';
import { at, EDGES, line, quad, upright } from '../quads.ts';

/** Two versions made by hand: which piece is compared with which, and what a script reads of it. mm. */

const names = (list: readonly string[]) => list.map((name) => ({ name }));
const piece = (gore: string, own: object = {}, height = 400, more: object = {}) => ({
  ...upright(200, height, undefined, { piece: { gore, ...own } }),
  gore,
  ...more,
});
const version = (
  pieces: readonly object[],
  own: { gores?: string[]; layers?: string[]; cloths?: object; cloth?: string } = {},
) => {
  const layers = (own.layers ?? ['shell']).map((name) => ({ name, cloth: own.cloth ?? 'crepe' }));
  return {
    spec: {
      gores: names(own.gores ?? ['side']),
      layers: names(own.layers ?? ['shell']),
      cloths: own.cloths ?? { crepe: {} },
    },
    layers,
    pieces,
  } as never;
};
const told = (...[old, now]: Parameters<typeof comparePieces>) =>
  comparePieces(old, now).changes.map(({ gore, layer, side, part, verdict, newCloth, amount }) =>
    [gore, part, layer, side, verdict, newCloth, Math.round(amount) || undefined]
      .filter((own) => own !== undefined)
      .join(' '),
  );
const inLayers = (...layers: string[]) => ({ layers });

describe('which piece was cut for which', () => {
  it('by gore, part and layer, layer by layer; what is new and what is needed no more', () => {
    const old = version(
      [
        piece('side', {}, 400, inLayers('lining', 'shell')),
        piece('back', {}, 500),
        piece('gusset', { part: 'facing', side: 'right' }),
      ],
      { layers: ['lining', 'shell'] },
    );
    const now = version(
      [
        piece('back', {}, 490),
        piece('side', {}, 400, inLayers('shell', 'lining')),
        piece('side', { part: 'facing' }, 60),
      ],
      { layers: ['lining', 'shell'] },
    );
    expect(told(old, now)).toEqual([
      'side lining same',
      'back shell re-mark 10',
      'side shell same',
      'side facing shell re-cut piece-is-new',
    ]);
    const { changes, dropped } = comparePieces(old, now);
    expect(dropped).toEqual([{ gore: 'gusset', part: 'facing', layer: 'shell', side: 'right' }]);
    expect(changes[3]).toMatchObject({ shift: at(0, 0), slid: at(0, 0), edges: [], marks: [] });
    expect(changes[3]).not.toHaveProperty('was');
    expect(changes[1]?.was?.cutEdges[2]?.curves[0]).toEqual(line(at(215, 515), at(-15, 515)));
  });

  it('a gore or a layer that is called otherwise in its place is the same one', () => {
    const old = version([piece('side'), piece('back', {}, 500)], { gores: ['side', 'back'] });
    const now = (gores: string[], ...pieces: object[]) => version(pieces, { gores });
    expect(told(old, now(['side', 'rear'], piece('side'), piece('rear', {}, 500)))).toEqual([
      'side shell same',
      'rear shell same',
    ]);
    // Moved about, or one more of them: no mere change of a name.
    expect(told(old, now(['rear', 'side'], piece('rear', {}, 500), piece('side')))[0]).toBe(
      'rear shell re-cut piece-is-new',
    );
    expect(told(old, now(['side', 'back', 'rear'], piece('rear', {}, 500)))).toEqual([
      'rear shell re-cut piece-is-new',
    ]);
    const outer = version([piece('side', {}, 400, inLayers('outer'))], { layers: ['outer'] });
    expect(told(version([piece('side')]), outer)).toEqual(['side outer same']);
  });

  it('her own side first, then one of a pair, then the worse of both', () => {
    const sided = (side: string | undefined, height: number) =>
      piece('side', side === undefined ? { cut: 'pair' } : { side }, height);
    const old = version([sided('left', 400), sided('right', 380)]);
    expect(told(old, version([sided('right', 380), sided('left', 390)]))).toEqual([
      'side shell right same',
      'side shell left re-mark 10',
    ]);
    // One of a pair from both: 10 comes off the one, and the other is let out by 2 of 15.
    const middle = (height: number, own: object) =>
      upright(200, height, undefined, { piece: { gore: 'side', ...own } }, [-100, 0]);
    const both = version([middle(400, { side: 'left' }), middle(388, { side: 'right' })]);
    expect(told(both, version([middle(390, { cut: 'pair' })]))).toEqual(['side shell let-out 13']);
    expect(told(version([sided(undefined, 400)]), version([sided('left', 390)]))).toEqual([
      'side shell left re-mark 10',
    ]);
  });

  it('for her right the new one is drawn the other way round where the old was not', () => {
    const slanted = (side: 'left' | 'right' | undefined, mirrored = false) => {
      const corners = [at(0, 0), at(200, 0), at(260, 400), at(-20, 400)];
      const turned = [at(-200, 0), at(0, 0), at(20, 400), at(-260, 400)];
      const widths = mirrored ? ([15, 9, 20, 30] as const) : ([15, 30, 20, 9] as const);
      const names = mirrored ? [EDGES[0], EDGES[3], EDGES[2], EDGES[1]] : EDGES;
      const piece = side === undefined ? { cut: 'pair' } : { side };
      return quad((mirrored ? turned : corners) as never, widths, { piece, names });
    };
    expect(told(version([slanted(undefined)]), version([slanted('right', true)]))).toEqual([
      'side shell right same',
    ]);
    expect(told(version([slanted('right', true)]), version([slanted('left')]))).toEqual([
      'side shell left same',
    ]);
    expect(told(version([slanted('right', true)]), version([slanted('right', true)]))).toEqual([
      'side shell right same',
    ]);
    const { changes } = comparePieces(version([slanted(undefined)]), version([slanted('right', true)]));
    expect(changes[0]?.piece.piece).toMatchObject({ frontEdge: 'front/side', backEdge: 'side/back' });
  });
});

describe('cut again whatever its shape', () => {
  const told1 = (before: object, after: object) =>
    told(version([piece('side', before)]), version([piece('side', after)]))[0];
  it.each([
    [{ cut: 'pair' }, { cut: 'on-fold' }, 're-cut now-on-the-fold'],
    [{}, { bias: true }, 're-cut thread-runs-otherwise'],
    [{ bias: true }, { bias: true }, 'same'],
    [{}, { copies: 2 }, 're-cut more-of-them'],
    [{ copies: 3 }, { copies: 2 }, 'same'],
    [{}, { cut: 'pair' }, 're-cut more-of-them'],
    [{ copies: 2 }, { cut: 'pair' }, 'same'],
    [{ cut: 'pair' }, { copies: 3 }, 're-cut more-of-them'],
    [{ copies: 2 }, { copies: 3 }, 're-cut more-of-them'],
  ])('%j, now %j: %s', (before, after, verdict) =>
    expect(told1(before, after)).toBe(`side shell ${verdict}`),
  );

  it('the whole cloth of one on the fold serves for two, and each side’s for a pair', () => {
    const fold = version([piece('side', { cut: 'on-fold' })]);
    expect(told(fold, version([piece('side', { cut: 'pair' })]))[0]).not.toContain('more-of-them');
    const sides = version([piece('side', { side: 'left' }), piece('side', { side: 'right' })]);
    expect(told(sides, version([piece('side', { cut: 'pair' })]))[0]).not.toContain('more-of-them');
  });

  it.each([
    [{ weight: 200 }, { weight: 210 }, false],
    [{ weave: 'plain' }, { weave: 'twill' }, false],
    [{ colour: 'red' }, { colour: 'blue' }, false],
    [{ stretch: 0.1 }, { stretch: 0.2 }, false],
    [{ dyeLot: 'A' }, { dyeLot: 'B' }, false],
    [{ weight: 200 }, { colour: 'red' }, true],
    [{ weight: 200, price: '1' }, { weight: 200, price: '2', supplier: 'S' }, true],
    [undefined, undefined, true],
    [undefined, {}, false],
    [{}, undefined, false],
  ])('cloth %j and %j', (old, now, same) => expect(sameCloth(old as never, now as never)).toBe(same));

  it('each by the cloth that its own version names', () => {
    const cloths = { crepe: { weight: 200 }, satin: { weight: 90 } };
    expect(
      told(version([piece('side')], { cloths }), version([piece('side')], { cloths, cloth: 'satin' })),
    ).toEqual(['side shell re-cut cloth-is-other']);
  });
});

describe('layers that were cut from another version', () => {
  const layers = ['lining', 'shell', 'net'];
  const of = (heights: readonly number[], name: string, more: object[] = []) => ({
    ...(version([...layers.map((layer, i) => piece('side', {}, heights[i]!, inLayers(layer))), ...more], {
      layers,
    }) as object),
    name,
    content: name,
    lays: [],
    findings: [],
  });
  const old = of([400, 400, 400], 'old', [
    piece('old-one', {}, 50, inLayers('lining')),
    piece('old-two', {}, 50, inLayers('net')),
  ]);
  const now = {
    ...of([390, 390, 390], 'now'),
    spec: { ...(of([], 'n') as never as { spec: object }).spec, cut: { lining: 'OLD', shell: 'third' } },
  };
  const third = of([430, 430, 430], 'third', [
    piece('third-one', {}, 50, inLayers('net')),
    piece('third-two', {}, 50, inLayers('shell')),
  ]);

  it('are compared with that one, and what is dropped is of that one', () => {
    const found = compare(old as never, now as never, { cutFrom: new Map([['shell', third as never]]) });
    expect(found.pieces.changes.map(({ layer, amount }) => [layer, Math.round(amount)])).toEqual([
      ['lining', 10],
      ['shell', 40],
      ['net', 10],
    ]);
    expect(found.pieces.dropped.map(({ gore, layer }) => `${gore} ${layer}`)).toEqual([
      'old-one lining',
      'old-two net',
      'third-two shell',
    ]);
    expect([...found.cloth]).toEqual([
      ['lining', 'cut-from-old'],
      ['shell', { cutFrom: 'third', found: 'third' }],
      ['net', 'not-cut'],
    ]);
    expect(found).not.toHaveProperty('sheets');
    expect(compare(old as never, now as never).pieces.changes[1]?.amount).toBeCloseTo(10, 2);
  });
});

describe('old and new laid over each other', () => {
  it('each changed piece by its gore, side, layers and verdict; the new lines moved to where they fit', () => {
    const own = (pieces: object[], name: string) => ({
      ...(version(pieces) as object),
      name,
      content: name,
      lays: [],
      findings: [],
    });
    const aside = {
      ...upright(150, 300, undefined, { piece: { gore: 'side', side: 'left' } }, [60, 20]),
      gore: 'side',
    };
    const old = own([piece('side', { side: 'left' }), piece('back')], 'old');
    const now = own([aside, piece('back')], 'now');
    const units = { spec: { ...(old as unknown as { spec: object }).spec, gown: 'G', units: 'mm' } };
    const found = compare(old as never, { ...now, ...units } as never);
    // Its right seam lies 10 beyond the cloth's cut line less its own allowance: slid by 10 to the left.
    expect(found.pieces.changes[0]?.shift.x).toBeCloseTo(-10, 1);
    const svg = comparisonSvg(found);
    expect(svg).toContain('side left (shell): re-mark');
    expect(svg).not.toContain('back (shell)');
    expect(svg).toContain('G: old and now');
    // Both cut lines in one frame: the new one 50 narrower at the left, 35 and 65 lower at its ends, once it is slid.
    const xs = (name: string) => {
      const path = new RegExp(`<path[^>]*class="${name}"[^>]*>`).exec(svg)![0];
      const numbers = [.../ d="([^"]*)"/.exec(path)![1]!.matchAll(/-?\d+(?:\.\d+)?/g)].map(Number);
      const of = (axis: number) => numbers.filter((_, i) => i % 2 === axis);
      return [0, 1].flatMap((axis) => [Math.min(...of(axis)), Math.max(...of(axis))]);
    };
    const [was, is] = [xs('old cut'), xs('new cut')];
    const { y } = found.pieces.changes[0]!.shift;
    const moved = [50, 0, 20 + y, -80 + y].map((by, i) => expect.closeTo(was[i]! + by, 0));
    expect(is).toEqual(moved);
  });
});

describe('findings', () => {
  const finding = (code: string, message: string) => ({ code, message, level: 'note' }) as never;
  it('came, went, or changed their figures, each once', () => {
    const old = [
      finding('a', 'short by 3.5 mm'),
      finding('b', 'gone'),
      finding('c', 'stays 4'),
      finding('e', 'at 1 of 2'),
    ];
    const now = [
      finding('c', 'stays 4'),
      finding('a', 'short by 12 mm'),
      finding('d', 'new'),
      finding('e', 'on 1 of 2'),
    ];
    expect(findingChanges(old, now)).toEqual({
      added: [now[2], now[3]],
      gone: [old[1], old[3]],
      changed: [{ old: old[0], now: now[1] }],
    });
    // One code and other words, or the same words of another code, are not the same.
    expect(findingChanges([finding('a', 'x')], [finding('b', 'x')])).toMatchObject({
      added: [finding('b', 'x')],
      gone: [finding('a', 'x')],
    });
  });
});

describe('places along an outline', () => {
  it('every four millimetres at most, sides from the waist, waist and hem from the left, outwards, clear of corners', () => {
    const [first] = [upright(100, 400)];
    const samples = outlineSamples(first!.piece.edges);
    const of = (edge: number) => samples.filter((own) => own.edge === edge);
    expect([0, 1, 2, 3].map((edge) => of(edge).length)).toEqual([26, 101, 26, 101]);
    const way = [at(0, -1), at(1, 0), at(0, 1), at(-1, 0)];
    for (const { edge, point, along, outwards, clear } of samples) {
      expect(outwards).toEqual({ x: expect.closeTo(way[edge]!.x, 9), y: expect.closeTo(way[edge]!.y, 9) });
      expect(along).toBeCloseTo(edge % 2 === 0 ? point.x : point.y, 9);
      expect(clear).toBe(edge % 2 === 0 ? point.x >= 15 && point.x <= 85 : point.y >= 15 && point.y <= 385);
    }
    // Of a short edge only a quarter at each end counts as its corner, and a fold is no edge.
    const short = outlineSamples([
      { name: 'waist', curves: [line(at(0, 0), at(20, 0))] },
      { name: 'fold', curves: [line(at(20, 0), at(20, 9))] },
    ]);
    expect(short.map(({ clear }) => clear)).toEqual([false, false, true, true, false, false]);
    expect(
      outlineSamples([{ name: 'waist', curves: [line(at(0, 0), at(3, 0)), line(at(3, 0), at(13, 0))] }]).map(
        ({ along }) => along,
      ),
    ).toEqual([0, 1.5, 3, 3, 3 + 10 / 3, 3 + 20 / 3, 13].map((own) => expect.closeTo(own, 9)));
  });
});

describe('for scripts', () => {
  const euro = (minor: number) => ({ minor: BigInt(minor), currency: 'EUR' });
  const change = (own: object) => ({
    gore: 'side',
    layer: 'shell',
    verdict: 'same',
    shift: at(0, 0),
    slid: at(9, 9),
    edges: [],
    marks: [],
    amount: 0,
    ...own,
  });
  const whole = {
    old: { name: 'old.yaml', content: 'aaaa', spec: { gown: 'Old' }, price: euro(5) },
    now: { name: 'new.yaml', content: 'bbbb', spec: { gown: 'New' }, price: { minor: 1234567n } },
    spec: [
      { path: 'a', old: { kind: 'money', value: '1' }, now: { kind: 'money', value: '2' } },
      { path: 'b', now: { kind: 'hours', value: '3' } },
      { path: 'c', old: { kind: 'count', value: 4 } },
      { path: 'd', now: { kind: 'times', value: 1.5 } },
      { path: 'e', now: { kind: 'date', value: '2026-11-28' } },
      { path: 'f', now: { kind: 'notes', value: 'x' } },
      { path: 'g', now: { kind: 'angle', value: [Math.PI / 6, -Math.PI / 4] } },
      { path: 'h', now: { kind: 'length', value: 12.34567891 } },
      { path: 'i', now: { kind: 'order', value: ['p', 'q'] } },
      { path: 'j', now: { kind: 'flag', value: true } },
    ],
    pieces: {
      changes: [
        change({}),
        change({
          gore: 'front',
          part: 'facing',
          layer: 'net',
          side: 'left',
          verdict: 'let-out',
          newCloth: 'more-of-them',
          amount: 7.1251,
          shift: at(1.006, -2.004),
          marks: ['notches'],
          edges: [
            { edge: 'hem', from: 'front/side', comesOff: { most: 3.456, least: 1.234, at: 5.678 } },
            {
              edge: 'waist',
              left: { wanted: 15.001, least: -0.001, at: 99.999 },
              corner: true,
              tooLittle: true,
            },
          ],
        }),
        change({ layer: 'felt' }),
        change({ layer: 'other' }),
      ],
      dropped: [{ gore: 'x', layer: 'shell' }],
    },
    cloth: new Map<string, unknown>([
      ['shell', 'cut-from-new'],
      ['net', { cutFrom: 'cccc', found: 'z' }],
      ['felt', 'not-cut'],
    ]),
    lays: [
      {
        old: { cloth: 'crepe', layers: ['shell'], length: 4310.007, buy: 4500.004, cost: euro(11025) },
        now: { cloth: 'satin', layers: ['shell', 'net'], length: 1, buy: 2 },
      },
      { old: { cloth: 'felt', layers: ['felt'], length: 3, buy: 4 } },
    ],
    sheets: { again: ['A2'], gone: ['D4'], count: 11 },
    findings: {
      added: [{ code: 'n', level: 'error', message: 'New.', span: 1 }],
      gone: [{ code: 'g', level: 'note', message: 'Gone.' }],
      changed: [
        {
          old: { code: 'c', level: 'note', message: 'Was.' },
          now: { code: 'c', level: 'warning', message: 'Is.' },
        },
      ],
    },
  };
  const json = comparisonJson(whole as never) as unknown as Record<string, unknown>;

  it('versions, prices, sheets and findings', () => {
    expect(json).toMatchObject({
      old: { name: 'old.yaml', gown: 'Old', content: 'aaaa' },
      new: { name: 'new.yaml', gown: 'New', content: 'bbbb' },
      price: { old: { amount: '0.05', currency: 'EUR' }, new: { amount: '12345.67', currency: null } },
      sheets: ['A2'],
      sheetsGone: ['D4'],
      sheetCount: 11,
      dropped: [{ gore: 'x', layer: 'shell' }],
    });
    expect(json.findings).toEqual({
      new: [{ code: 'n', level: 'error', message: 'New.' }],
      gone: [{ code: 'g', level: 'note', message: 'Gone.' }],
      changed: [{ code: 'c', level: 'warning', message: 'Is.', was: 'Was.' }],
    });
    const bare = comparisonJson({
      ...whole,
      sheets: undefined,
      old: { ...whole.old, price: undefined },
    } as never);
    expect(bare).toMatchObject({ sheets: [], sheetsGone: [], sheetCount: null, price: { old: null } });
  });

  it('values of the spec: kinds as scripts know them, degrees, a millionth', () => {
    expect(json.spec).toEqual([
      { path: 'a', kind: 'decimal', old: '1', new: '2' },
      { path: 'b', kind: 'decimal', old: null, new: '3' },
      { path: 'c', kind: 'number', old: 4, new: null },
      { path: 'd', kind: 'number', old: null, new: 1.5 },
      { path: 'e', kind: 'text', old: null, new: '2026-11-28' },
      { path: 'f', kind: 'note', old: null, new: 'x' },
      { path: 'g', kind: 'angle', old: null, new: [30, -45] },
      { path: 'h', kind: 'length', old: null, new: 12.345679 },
      { path: 'i', kind: 'order', old: null, new: ['p', 'q'] },
      { path: 'j', kind: 'flag', old: null, new: true },
    ]);
  });

  it('pieces and lays, each figure under its name, to a hundredth', () => {
    const plain = { gore: 'side', verdict: 'same', mm: 0, shift: { x: 0, y: 0 }, marks: [], edges: [] };
    expect(json.pieces).toEqual([
      { ...plain, layer: 'shell', cloth: 'cut-from-new' },
      {
        gore: 'front',
        part: 'facing',
        layer: 'net',
        side: 'left',
        verdict: 'let-out',
        mm: 7.13,
        reason: 'more-of-them',
        shift: { x: 1.01, y: -2 },
        marks: ['notches'],
        edges: [
          { edge: 'hem', from: 'front/side', comesOff: { most: 3.46, least: 1.23, at: 5.68 } },
          { edge: 'waist', left: { wanted: 15, least: 0, at: 100 }, corner: true },
        ],
        cloth: 'cut-from-cccc',
      },
      { ...plain, layer: 'felt', cloth: 'not-cut' },
      { ...plain, layer: 'other', cloth: 'not-recorded' },
    ]);
    expect(json.lays).toEqual([
      {
        cloth: 'satin',
        layers: ['shell', 'net'],
        old: { cloth: 'crepe', layers: ['shell'], length: 4310.01, buy: 4500, cost: '110.25' },
        new: { cloth: 'satin', layers: ['shell', 'net'], length: 1, buy: 2, cost: null },
      },
      {
        cloth: 'felt',
        layers: ['felt'],
        layer: 'felt',
        old: { cloth: 'felt', layers: ['felt'], length: 3, buy: 4, cost: null },
        new: null,
      },
    ]);
  });
});

describe('the values of a spec', () => {
  const spec = (own: object) => ({ places: 1, units: 'cm', ...own }) as never;
  it('by their paths as they are written, lists by what tells their items apart', () => {
    const values = specValues(
      spec({
        gown: 'G',
        lengths: { offFloor: 20, at: { 'centre-back': 1115, myStation: 7 }, hemWidthAt: undefined },
        gores: [
          { name: 'side', flare: [0.1, 0.2], halfTop: 56 },
          { name: 'back', onFold: true },
        ],
        sewnAsOne: { waist: [['lining'], ['shell', 'organza']], closure: ['shell'] },
        fittings: [
          { date: '2026-01-02', seam: 'a', takes: 1 },
          { date: '2026-01-02', seam: 'b' },
        ],
        slits: [
          { seam: 'x', aboveHem: 1 },
          { seam: 'x', aboveHem: 2 },
        ],
        cloths: { crepe: { pricedPer: 914.4, width: 1400 }, myCloth: { pricedPer: 1000, price: '3' } },
        bodice: { waistSeam: 1, panels: { a: 2 }, bonesEnd: 3 },
      }),
    );
    expect([...values].map(([path, { kind, value }]) => `${path} ${kind} ${JSON.stringify(value)}`)).toEqual([
      'gown text "G"',
      'lengths.off-floor length 20',
      'lengths.at.centre-back length 1115',
      'lengths.at.myStation length 7',
      'gores order ["side","back"]',
      'gores.side.flare angle [0.1,0.2]',
      'gores.side.half-top length 56',
      'gores.back.on-fold flag true',
      'sewn-as-one.waist text ["[lining]","[shell, organza]"]',
      'sewn-as-one.closure text ["shell"]',
      'fittings order ["a","b"]',
      expect.stringMatching(/^fittings\.a\.date \w+ "2026-01-02"$/),
      expect.stringMatching(/^fittings\.a\.takes \w+ 1$/),
      expect.stringMatching(/^fittings\.b\.date \w+ "2026-01-02"$/),
      'slits.1.seam text "x"',
      'slits.1.above-hem length 1',
      'slits.2.seam text "x"',
      'slits.2.above-hem length 2',
      'cloths.crepe.width length 1400',
      'cloths.myCloth.priced-per length 1000',
      'cloths.myCloth.price money "3"',
      'bodice.waist-seam length 1',
      'bodice.panels.a length 2',
      'bodice.bones-end length 3',
    ]);
    // A list of levels goes by where each is; what has no such name in every item, by number.
    const girths = specValues(
      spec({
        body: {
          girths: [
            { at: 'bust', value: 1 },
            { at: 'waist', value: 2 },
          ],
        },
        loops: [{ kind: 'x', down: 'y' }],
      }),
    );
    expect([...girths.keys()]).toEqual([
      'body.girths',
      'body.girths.bust.value',
      'body.girths.waist.value',
      'loops',
      'loops.y.kind',
    ]);
    const drafted = specValues(
      spec({
        bodice: { draft: { seams: 1 }, waistSeam: 1, panels: { a: 2 }, bonesEnd: 3 },
        waist: { panels: 'x' },
      }),
    );
    expect([...drafted.keys()]).toEqual(['bodice.draft.seams', 'bodice.bones-end', 'waist.panels']);
  });

  it('read aloud: by section in the order of a file, then by name; notes line by line', () => {
    const lines = specLines(
      spec({
        zest: 'z',
        allowances: { seam: 15, hem: 10 },
        waist: { ease: 5 },
        train: { onFloor: 3 },
        lengths: { offFloor: 20 },
        sweep: 4200,
        gores: [{ name: 'side', top: 86 }],
        bodice: { bonesEnd: 13 },
        symmetry: 'none',
        notes: 'one\ntwo\n',
        client: 'C',
        gown: 'G',
        format: 1,
      }),
    );
    expect(lines.map((own) => own.split(' ')[0])).toEqual([
      'format:',
      'gown:',
      'client:',
      'notes:',
      '',
      '',
      'symmetry:',
      'bodice.bones-end:',
      'waist.ease:',
      'gores:',
      'gores.side.top:',
      'sweep:',
      'lengths.off-floor:',
      'train.on-floor:',
      'allowances.hem:',
      'allowances.seam:',
      'zest:',
    ]);
    expect(lines.slice(3, 6)).toEqual(['notes:', '  | one', '  | two']);
    expect(lines).toContain('lengths.off-floor: 20 mm');
  });

  it('what differs, in the order of the new one, what is gone at the end of its section', () => {
    const old = {
      gown: 'G',
      lengths: { offFloor: 20, hemWidthAt: 30, onFloor: 40 },
      train: { onFloor: 1, begins: 'x' },
      cloths: { a: { price: '24.50' }, b: { price: '100' }, c: { price: '10.0' } },
      labour: { tasks: { sewing: '3.10' } },
    };
    const now = {
      lengths: { onFloor: 40.0000005, offFloor: 20.00001 },
      gown: 'H',
      train: { onFloor: 1 },
      cloths: { a: { price: '24.5' }, b: { price: '1' }, c: { price: '10' } },
      labour: { tasks: { sewing: '3.1' } },
    };
    expect(
      specChanges(spec(old), spec(now)).map(({ path, old: was, now: is }) => [path, was?.value, is?.value]),
    ).toEqual([
      ['lengths.off-floor', 20, 20.00001],
      ['lengths.hem-width-at', 30, undefined],
      ['gown', 'G', 'H'],
      ['train.begins', 'x', undefined],
      ['cloths.b.price', '100', '1'],
    ]);
    const changed = (a: object, b: object) => specChanges(spec(a), spec(b)).map(({ path }) => path);
    const flare = (value: unknown) => ({ gores: [{ name: 'side', flare: value }] });
    expect(changed(flare(0.1), flare([0.1]))).toEqual(['gores.side.flare']);
    expect(changed(flare([0.1, 0.2]), flare([0.1]))).toEqual(['gores.side.flare']);
    expect(changed(flare([0.1, 0.2]), flare([0.1, 0.3]))).toEqual(['gores.side.flare']);
    expect(changed(flare([0.1, 0.2]), flare([0.1, 0.2]))).toEqual([]);
    expect(changed({ gown: '1.0' }, { gown: '1' })).toEqual(['gown']);
  });
});
