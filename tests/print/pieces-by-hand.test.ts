import { describe, expect, it } from 'vitest';
import type { Line, Point } from '../../src/geometry/curve.ts';
import { pointAt } from '../../src/geometry/evaluate.ts';
import type { Mark, PathMark, TextMark } from '../../src/print/drawing.ts';
import { lineNames } from '../../src/print/pattern/line-names.ts';
import {
  crosses,
  grown,
  isIn,
  lieAcross,
  liesApart,
  meets,
  within,
} from '../../src/print/pattern/lines-drawn.ts';
import { patternDrawing, sheetPieceNames } from '../../src/print/pattern/pattern-drawing.ts';
import { drawPiece } from '../../src/print/pattern/piece-drawing.ts';
import { type PieceSurroundings, pieceTexts } from '../../src/print/pattern/piece-labels.ts';
import { pieceName, pieceText } from '../../src/print/pattern/piece-text.ts';
import { textWidth } from '../../src/print/text/text-width.ts';
import { ENGLISH_PATTERN } from '../../src/words/english-pattern.ts';
import { at, line, upright } from '../quads.ts';
import { LABELS } from './labels.ts';

/** Rectangles as printed pieces: their lines, what is written on them and where, and the names of lines; mm. */

const near = (x: number, y: number) => ({ x: expect.closeTo(x, 6), y: expect.closeTo(y, 6) });
const close = (own: number) => expect.closeTo(own, 6);
const ends = (own: PathMark) => own.runs.flatMap((run) => (run as Line[]).map(({ from, to }) => [from, to]));
const OFF = { grain: line(at(0, -900), at(0, -800)) };
type Own = Parameters<typeof upright>[3];
/** Its seam line from 0, 0; no allowance, and a grain line that lies elsewhere. */
const bare = (width: number, height: number, own: Own = {}) =>
  upright(width, height, [0, 0, 0, 0], { ...own, piece: { ...OFF, ...own.piece } });

describe('what is written on a piece', () => {
  const said = (
    piece: ReturnType<typeof upright>,
    labels: object = {},
    sharing: ReturnType<typeof upright>[] = [],
  ) => pieceText(piece, { ...LABELS, ...labels }, sharing).map(({ text }) => text.replaceAll('\u00a0', ' '));
  const part = (own: object, own2: Own = {}) =>
    said(upright(100, 200, [15, 20, 40, 12], { ...own2, piece: own }));
  const allowances = (widths: [number, number, number, number], own: Own = {}) =>
    said(upright(100, 200, widths, own)).at(-2);

  it('name, how to cut it, layers, gown, grain, allowances, trace, in this order', () => {
    const lines = pieceText(upright(100, 200, [15, 20, 40, 12]), LABELS);
    expect(lines.map(({ text, bold }) => [text.replaceAll('\u00a0', ' '), bold])).toEqual([
      ['side', true],
      ['cut 1', false],
      ['layer: shell', false],
      ['Lantern · LAN-07', false],
      ['grain: along the arrows', false],
      ['allowances included: waist 1.5 cm, front/side 1.2 cm, side/back 2.0 cm, hem 4.0 cm', false],
      ['spec format 1, content 3f9a12c4', false],
    ]);
    // An edge and its width stay on one line.
    expect(lines[5]!.text).toContain('hem\u00a04.0\u00a0cm');
  });

  it('how many, of which side, on the bias', () => {
    expect(part({ cut: 'pair' })[1]).toBe('cut 1 pair');
    expect(part({ cut: 'on-fold' })[1]).toBe('cut 1 on fold');
    expect(part({ copies: 3 })[1]).toBe('cut 3');
    expect(part({ side: 'left' })[0]).toBe('side, wearer’s left');
    expect(part({ bias: true })[4]).toMatch(/^on the bias/);
    expect(part({}, { layers: ['shell', 'net'] })[2]).toBe('layers: shell, net');
    const panel = upright(100, 200, [0, 0, 0, 0], { piece: { part: 'bodice', side: 'right' } });
    expect(pieceName(panel, ENGLISH_PATTERN)).toMatch(/^.*bodice.*, wearer’s right$/);
    expect(said(bare(9, 9), { client: undefined })[3]).toBe('Lantern');
    expect(said(bare(9, 9), { client: undefined, gown: 'x'.repeat(60) })[3]).toBe('x'.repeat(60));
    expect(said(bare(9, 9), { client: undefined, gown: 'x'.repeat(61) })[3]).toBe(`${'x'.repeat(60)}…`);
    expect(said(bare(9, 9), { client: undefined, gown: `${'x'.repeat(59)} yy` })[3]).toBe(
      `${'x'.repeat(59)}…`,
    );
  });

  it('allowances: seams alike are told once, none is told, a fold has none, a rough cut beside the hem', () => {
    expect(allowances([15, 20, 40, 20])).toBe('allowances included: waist 1.5 cm, seams 2.0 cm, hem 4.0 cm');
    expect(allowances([0, 20, 40, 12])).toContain('waist none, front/side 1.2 cm');
    const fold = allowances([15, 20, 40, 12], {
      names: ['waist', 'side/back', 'hem', 'fold'],
      piece: { frontEdge: 'fold' },
    });
    expect(fold).toBe('allowances included: waist 1.5 cm, side/back 2.0 cm, hem 4.0 cm');
    expect(allowances([15, 20, 40, 12], { roughCut: 55 })).toMatch(/hem 4.0 cm and 5.5 cm rough-cut extra$/);
  });

  it('of pieces that lie on one another every layer and hem, and the bustle of each', () => {
    const words = {
      ...ENGLISH_PATTERN,
      piece: { ...ENGLISH_PATTERN.piece, remark: ({ kind }: { kind: string }) => [`${kind} said`] },
    };
    const remarks = (...kinds: string[]) => ({ remarks: kinds.map((kind) => ({ kind })) }) as Own;
    const long = upright(100, 200, [15, 20, 40, 20], remarks('nap'));
    const short = upright(100, 190, [15, 20, 30, 20], {
      ...remarks('nap', 'bustle'),
      layers: ['net', 'tulle'],
    });
    expect(said(long, { words }, [short])).toEqual([
      'side',
      'cut 1',
      'nap said',
      'bustle said',
      'layers: shell, net, tulle',
      'Lantern · LAN-07',
      'grain: along the arrows',
      'allowances included: waist 1.5 cm, seams 2.0 cm, hem of shell 4.0 cm, hem of net, tulle 3.0 cm',
      'spec format 1, content 3f9a12c4',
    ]);
  });
});

describe('its lines', () => {
  const tick = (x: number) => line(at(x, 0), at(x, 5));
  const mark = (name: string) => ({ name, curves: [line(at(10, 10), at(20, 30))] });
  const dot = line(at(7, 8), at(7.8, 8));
  const piece = upright(200, 331, [15, 15, 15, 15], {
    layers: ['shell', 'net'],
    labelAt: at(50, 100),
    notches: [{ edge: 'side/back', ticks: [tick(1), tick(3)] }],
    marks: ['fold-line', 'tuck-fold-line', 'pleat-arrow', 'stitched-to', 'bustle-anchor', 'hip-line'].map(
      mark,
    ),
    stones: [
      { name: 'dots', runs: [[dot], [dot]] },
      { name: 'motif', runs: [[dot, dot]] },
    ],
    piece: { grain: line(at(100, 20), at(100, 300)), part: 'skirt' },
  } as Own);
  const group = drawPiece(piece, LABELS);
  const of = (name: string) =>
    group.marks.filter((own): own is PathMark => own.kind === 'path' && own.class === name);

  it('cut line, seam lines by edge, notches, marks and stones, each in its own dashes', () => {
    expect(group.data).toEqual({ gore: 'side', layers: 'shell net', part: 'skirt' });
    const [cut] = of('cut');
    expect(ends(cut!).map(([from]) => from)).toEqual([
      near(-15, -15),
      near(215, -15),
      near(215, 346),
      near(-15, 346),
    ]);
    expect([cut!.closed, cut!.line]).toEqual([true, { width: 0.35 }]);
    expect(of('sew').map((own) => [own.data!.edge, ends(own), own.closed])).toEqual([
      ['waist', [[at(0, 0), at(200, 0)]], false],
      ['side/back', [[at(200, 0), at(200, 331)]], false],
      ['hem', [[at(200, 331), at(0, 331)]], false],
      ['front/side', [[at(0, 331), at(0, 0)]], false],
    ]);
    expect(of('notch').map((own) => [own.data, ends(own), own.line.width])).toEqual([
      [{ edge: 'side/back' }, [tick(1), tick(3)].map(({ from, to }) => [from, to]), 0.35],
    ]);
    expect(of('mark').map((own) => [own.data!.mark, own.line.width, own.line.dash])).toEqual([
      ['fold-line', 0.3, [9, 2]],
      ['tuck-fold-line', 0.3, [9, 2]],
      ['pleat-arrow', 0.25, undefined],
      ['stitched-to', 0.35, undefined],
      ['bustle-anchor', 0.35, undefined],
      ['hip-line', 0.25, [1.5, 1.5]],
    ]);
    expect(of('stone').map((own) => [own.data!.stones, own.runs.length, own.line])).toEqual([
      ['dots', 2, { width: 0.8 }],
      ['motif', 1, { width: 0.25, dash: [1, 1] }],
    ]);
  });

  it('dashes of the front edge are counted from its end at the waist', () => {
    expect(of('sew').map((own) => own.line.dashPhase)).toEqual([undefined, undefined, undefined, close(6.5)]);
    const folded = drawPiece(
      upright(200, 331, [0, 0, 0, 0], { names: ['waist', 'side/back', 'hem', 'fold'], labelAt: at(50, 90) }),
      LABELS,
    ).marks.filter((own): own is PathMark => own.kind === 'path' && own.class === 'sew');
    // 331 is eighteen times 18 and 7.
    expect(folded[3]!.line).toEqual({ width: 0.35, dash: [12, 2, 2, 2], dashPhase: close(11) });
    expect(folded[0]!.line).toEqual({ width: 0.25, dash: [5, 2.5] });
  });

  it('the grain with an open head at both ends, or the part of it that is asked for', () => {
    const [grain] = of('grain');
    expect(ends(grain!)).toEqual([
      [at(100, 20), at(100, 300)],
      [near(101.6, 25), near(100, 20)],
      [near(100, 20), near(98.4, 25)],
      [near(98.4, 295), near(100, 300)],
      [near(100, 300), near(101.6, 295)],
    ]);
    const part = drawPiece(piece, LABELS, { grain: line(at(100, 60), at(100, 90)) }).marks[5] as PathMark;
    expect(ends(part)[0]).toEqual([at(100, 60), at(100, 90)]);
  });
});

describe('where its words stand', () => {
  const texts = (piece: ReturnType<typeof upright>, around: PieceSurroundings = {}) =>
    pieceTexts(piece, LABELS, around);
  const boxes = (marks: readonly TextMark[]) =>
    marks.map(({ text, at: place, size, bold }) => ({
      x: place.x,
      y: place.y - 0.75 * size,
      width: textWidth(text, size, bold),
      height: 0.95 * size,
    }));

  it('in one block of 6, lines 7.8 apart, no wider than 144, in the middle between seam and grain', () => {
    const piece = bare(400, 400, {
      labelAt: at(200, 150),
      piece: { grain: line(at(200, 20), at(200, 380)) },
    });
    const marks = texts(piece);
    expect(marks[0]).toMatchObject({ text: 'side', bold: true, size: 6, class: 'label' });
    expect(marks.slice(1).every((mark) => mark.bold === false)).toBe(true);
    const widest = Math.max(...boxes(marks).map(({ width }) => width));
    expect(widest).toBeLessThanOrEqual(144);
    // Three clear of the seam at 0 and of the grain at 200.
    for (const [i, mark] of marks.entries())
      expect(mark.at).toEqual(near(3 + (194 - widest) / 2, marks[0]!.at.y + 7.8 * i));
    expect(Math.abs(marks[0]!.at.y - 156)).toBeLessThan(8);
  });

  it('smaller where there is less room; on small pieces the first three lines, the name, and that at least', () => {
    // Nine ems and three each side: 3.6 goes into 42, and nothing into 20 but 1.8 with one each side.
    expect(texts(bare(42, 400, { labelAt: at(21, 100) }))[0]!.size).toBe(3.6);
    const slim = texts(bare(20, 400, { labelAt: at(10, 100) }));
    expect(slim[0]!.size).toBe(1.8);
    const run = slim
      .map(({ text }) => text)
      .join(' ')
      .replaceAll('\u00a0', ' ');
    expect(run).toContain('3f9a12c4');
    expect(texts(bare(30, 14, { labelAt: at(15, 7) })).map(({ text, size }) => [text, size])).toEqual([
      ['side', 3],
      ['cut 1', 3],
      ['layer: shell', 3],
    ]);
    expect(texts(bare(30, 5.5, { labelAt: at(15, 2) })).map(({ text, size }) => [text, size])).toEqual([
      ['side', 2.6],
    ]);
    const [least, ...none] = texts(bare(3, 3, { labelAt: at(1, 2) }));
    expect(none).toEqual([]);
    expect(least).toMatchObject({
      text: 'side',
      size: 1.2,
      at: near(1 + (10.8 - textWidth('side', 1.2, true)) / 2, 3.2),
    });
  });

  it('within one window, clear of what is drawn and written', () => {
    const windows = [
      { x: 0, y: 0, width: 190, height: 120 },
      { x: 0, y: 134, width: 190, height: 250 },
    ];
    const around = (own: object, more: object = {}) =>
      boxes(
        texts(bare(400, 400, { labelAt: at(100, 127), ...own }), { windows, ...more }).filter(
          ({ text }) => text !== 'n',
        ),
      );
    const all = around({});
    const inOne = (window: (typeof windows)[number]) => all.every((box) => within(box, window));
    expect(windows.some(inOne)).toBe(true);
    const slanting = line(at(0, 60), at(190, 150));
    const level = line(at(0, 240), at(190, 240));
    const ring = line(at(80, 190), at(83, 192));
    const drawn = [slanting, level, ring].map((own) => ({ name: 'mark', curves: [own] }));
    for (const box of around({ marks: drawn }))
      for (const own of [slanting, level, ring]) expect(crosses([own.from, own.to], box)).toBe(false);
    const sharing = bare(400, 400, { marks: drawn } as Own);
    for (const box of around({}, { sharing: [sharing] }))
      for (const own of [slanting, level, ring]) expect(crosses([own.from, own.to], box)).toBe(false);
    const name = { box: { x: 40, y: 150, width: 60, height: 40 }, mark: { text: 'n' } } as never;
    for (const key of ['names', 'otherNames'])
      for (const box of around({}, { [key]: [name] }))
        expect(meets(box, { x: 40, y: 150, width: 60, height: 40 })).toBe(false);
    expect(texts(bare(400, 400), { names: [name], otherNames: [name] }).at(-1)).toEqual({ text: 'n' });
    expect(texts(bare(400, 400), { names: [name], namesOnly: true })).toEqual([{ text: 'n' }]);
  });

  it('beside the fold that it lies on, three tenths of it from its beginning', () => {
    const folded = (names: string[], [wide, high]: [number, number] = [400, 400]) =>
      texts(bare(wide, high, { names, labelAt: at(wide / 2, 60) })).filter(
        ({ text }) => text === 'on the fold',
      );
    const [left, ...none] = folded(['waist', 'side/back', 'hem', 'fold']);
    expect(none).toEqual([]);
    expect(left).toMatchObject({ size: 2.8, class: 'label', at: { x: close(3) } });
    // It runs up from 400: three tenths are at 280.
    expect(Math.abs(left!.at.y - 282.8)).toBeLessThan(5);
    const [right] = folded(['waist', 'fold', 'hem', 'front/side']);
    expect(right!.at.x).toBeCloseTo(397 - textWidth('on the fold', 2.8), 6);
    expect(Math.abs(right!.at.y - 122.8)).toBeLessThan(5);
    const [below] = folded(['waist', 'side/back', 'fold', 'front/side']);
    expect(below!.at.y).toBeGreaterThan(391);
    expect(folded(['waist', 'side/back', 'hem', 'fold'], [7, 400])).toEqual([]);
    // Far from where places are counted from, as there.
    const away = (names: string[]) =>
      texts(
        upright(400, 400, [0, 0, 0, 0], { names, labelAt: at(700, 960), piece: OFF } as Own, [500, 900]),
      ).find(({ text }) => text === 'on the fold')!;
    expect(away(['waist', 'side/back', 'hem', 'fold']).at.x).toBeCloseTo(503, 6);
    expect(Math.abs(away(['waist', 'side/back', 'hem', 'fold']).at.y - 1182.8)).toBeLessThan(5);
    expect(away(['waist', 'fold', 'hem', 'front/side']).at.x).toBeCloseTo(
      897 - textWidth('on the fold', 2.8),
      6,
    );
    expect(away(['waist', 'side/back', 'fold', 'front/side']).at.y).toBeGreaterThan(1291);
    // Where 2.8 finds no room 2.2 or 1.8 may.
    const width = 6.2 + textWidth('on the fold', 2.2);
    expect(folded(['waist', 'side/back', 'hem', 'fold'], [width, 400])[0]!.size).toBe(2.2);
  });
});

describe('names of lines that lie on one another', () => {
  const long = bare(300, 450, { layers: ['shell'] });
  const short = bare(300, 400, { layers: ['net'] });
  const WINDOW = { x: -20, y: -20, width: 400, height: 500 };
  const named = (pieces = [long, short], windows = [WINDOW]) =>
    lineNames(pieces, { grain: line(at(60, 20), at(60, 300)), windows }, ENGLISH_PATTERN.piece.hemCut);
  /** A name above a line, its middle at `x`. */
  const above = (text: string, x: number, y: number, size = 2.8) => {
    const width = textWidth(text, size);
    return {
      box: { ...near(x - width / 2, y - 0.6 - size), width: close(width), height: close(size) },
      mark: {
        kind: 'text',
        text,
        size,
        anchor: 'start',
        class: 'label',
        at: near(x - width / 2, y - 0.6 - size / 4),
      },
    };
  };

  it('each hem’s right above it, one in its middle, the next at two tenths', () => {
    // Of sixty places from the right to the left the thirty-first, and the thirteenth.
    expect(named()).toEqual([
      [above('shell: cut', 300 - 5 * 30.5, 450)],
      [above('net: cut', 300 - 5 * 12.5, 400)],
    ]);
    const three = named([long, short, bare(300, 350, { layers: ['a'] })]);
    expect(three[2]).toEqual([above('a: cut', 300 - 5 * 48.5, 350)]);
  });

  it('once on each sheet that the line crosses', () => {
    const [own] = named(undefined, [
      { ...WINDOW, width: 163 },
      { ...WINDOW, x: 157, width: 200 },
    ]);
    expect(own).toEqual([above('shell: cut', 300 - 5 * 45.5, 450), above('shell: cut', 300 - 5 * 15.5, 450)]);
  });

  it('a waist of its own below it', () => {
    const high = upright(300, 458, [0, 0, 0, 0], { layers: ['shell'], piece: OFF }, [0, -8]);
    const [first, second] = named([high, short]);
    const below = (text: string, y: number) => above(text, 5 * 30.5, y + 4);
    expect(first).toEqual([above('shell: cut', 147.5, 450), below('shell: cut', -8)]);
    expect(second).toEqual([above('net: cut', 237.5, 400), below('net: cut', 0)]);
  });

  it('farther in where the line lies at the rim of a sheet; smaller between lines; none where it finds no room', () => {
    const [rim] = named(undefined, [{ ...WINDOW, height: 466 }]);
    expect(rim).toEqual([above('shell: cut', 147.5, 444)]);
    // 3.2 between two hems: 2.2, with 0.6 above its own and 0.3 below the other.
    const [close1] = named([long, bare(300, 446.8, { layers: ['net'] })]);
    expect(close1).toEqual([above('shell: cut', 147.5, 450, 2.2)]);
    expect(named(undefined, [{ ...WINDOW, height: 420 }])[0]).toEqual([]);
  });

  it('not on the grain, nor on a hem that curves', () => {
    const grain = line(at(147.5, 20), at(147.5, 449));
    const first = lineNames(
      [long, short],
      { grain, windows: [WINDOW] },
      ENGLISH_PATTERN.piece.hemCut,
    )[0]![0]!;
    expect(crosses([grain.from, grain.to], first.box)).toBe(false);
    // Twice five to the side: half a name and 0.3.
    expect(Math.abs(first.box.x + first.box.width / 2 - 147.5)).toBeLessThan(12.5);
    const curved = (layers: string[], high: number) => {
      const own = bare(300, high, { layers });
      const hem = {
        kind: 'cubic' as const,
        from: at(300, high),
        control1: at(210, high + 90),
        control2: at(80, high + 70),
        to: at(0, high),
      };
      const bent = (edges: typeof own.cutEdges) =>
        edges.map((edge) => (edge.name === 'hem' ? { ...edge, curves: [hem] } : edge));
      return {
        piece: { ...own, cutEdges: bent(own.cutEdges), piece: { ...own.piece, edges: bent(own.cutEdges) } },
        points: Array.from({ length: 2000 }, (_, i) => pointAt(hem, i / 2000)),
      };
    };
    const hems = [curved(['shell'], 404.6), curved(['net'], 400), curved(['tulle'], 380)];
    const names = lineNames(
      hems.map(({ piece }) => piece as typeof long),
      { grain: OFF.grain, windows: [WINDOW] },
      ENGLISH_PATTERN.piece.hemCut,
    ).flat();
    expect(names.length).toBeGreaterThanOrEqual(2);
    for (const { box } of names)
      for (const { points } of hems)
        expect(
          points.some((own) => isIn(own, { x: box.x, y: box.y, width: box.width, height: box.height })),
        ).toBe(false);
  });

  it('kept ones where they were, if they can be such; else worked out anew', () => {
    const around = { grain: line(at(60, 20), at(60, 300)), windows: [WINDOW] };
    const from = (recalled: unknown, keep: (value: unknown) => void = () => {}) =>
      lineNames([long, short], around, ENGLISH_PATTERN.piece.hemCut, {
        recall: () => recalled,
        keep: (_, value) => keep(value),
      });
    const fresh = named();
    const kept = from([[[20, 30, 2.2]], [[20, 60, 1.5]]]);
    expect(
      kept.flat().map(({ box, mark }) => [mark.text, mark.size, mark.at, box.x, box.y, box.height]),
    ).toEqual([
      ['shell: cut', 2.2, near(20, 31.65), 20, 30, 2.2],
      ['net: cut', 1.5, near(20, 61.125), 20, 60, 1.5],
    ]);
    for (const bad of [
      'names',
      [[[20, 30, 2.2]]],
      [[[20, 30, 2.2]], 'net'],
      [[[20, 30, 2.2]], ['net']],
      [[[20, 30, 2.2]], [[20, 60]]],
      [[[20, 30, 2.2]], [[20, 60, 1.6]]],
      [[[20, 30, 2.2]], [['20', 60, 1.5]]],
      [[[20, 30, 2.2]], [[20, '60', 1.5]]],
      [[[20, 30, 2.2]], [[20, 31, 1.5]]],
      [[[20, 30, 2.2]], [[-21, 60, 1.5]]],
      [[[20, 30, 2.2]], [[20, 479, 1.5]]],
      [[[379, 30, 2.2]], [[20, 60, 1.5]]],
      [
        [
          [20, 30, 2.2],
          [22, 31, 2.2],
        ],
        [[20, 60, 1.5]],
      ],
    ])
      expect(from(bad), JSON.stringify(bad)).toEqual(fresh);
    let written: unknown;
    from(undefined, (value) => {
      written = value;
    });
    const place = (text: string, x: number, y: number) => [
      close(x - textWidth(text, 2.8) / 2),
      close(y - 3.4),
      2.8,
    ];
    expect(written).toEqual([[place('shell: cut', 147.5, 450)], [place('net: cut', 237.5, 400)]]);
  });

  it('what is near, across, apart and within', () => {
    // Wherever they lie, and in whatever order they are told.
    const far = (own: readonly [Point, Point], x: number, y: number) =>
      own.map((point) => at(point.x + x, point.y + y)) as unknown as readonly [Point, Point];
    const across = (a: readonly [Point, Point], b: readonly [Point, Point]) =>
      [
        [0, 0],
        [1000, 0],
        [0, 1000],
        [-1000, 0],
        [0, -1000],
      ].flatMap(([x, y]) => {
        const [p, q] = [far(a, x!, y!), far(b, x!, y!)];
        return [lieAcross(p, q), lieAcross(q, p), lieAcross([p[1], p[0]], q), lieAcross(p, [q[1], q[0]])];
      });
    const rising = [at(0, 0), at(10, 10)] as const;
    expect(new Set(across(rising, [at(0, 10), at(10, 0)]))).toEqual(new Set([true]));
    expect(new Set(across([at(4, -20), at(5, 30)], [at(-30, 2), at(30, 3)]))).toEqual(new Set([true]));
    for (const other of [
      [at(6, 0), at(10, 3)],
      [at(5, 5), at(9, 2)],
      [at(1, 0), at(11, 10)],
      [at(20, 20), at(30, 10)],
      [at(-5, 4), at(-1, 6)],
      [at(4, -5), at(6, -1)],
    ] as const)
      expect(new Set(across(rising, other))).toEqual(new Set([false]));
    const reach = (point: Point, own: readonly [Point, Point], distance: number) => {
      expect(liesApart(point, own, distance - 0.1)).toBe(true);
      expect(liesApart(point, own, distance + 0.1)).toBe(false);
    };
    reach(at(5, 3), [at(0, 0), at(10, 0)], 3);
    reach(at(13, 4), [at(0, 0), at(10, 0)], 5);
    reach(at(-6, 8), [at(0, 0), at(10, 0)], 10);
    reach(at(7, 1), [at(0, 0), at(6, 8)], 5);
    reach(at(104, 3), [at(100, 0), at(100, 0)], 5);
    const box = { x: 10, y: 20, width: 30, height: 5 };
    const through = (from: Point, to: Point) => crosses([from, to], box);
    for (const [away, is] of [
      [0.2, true],
      [0.4, false],
    ] as const) {
      expect(through(at(10 - away, 0), at(10 - away, 90))).toBe(is);
      expect(through(at(40 + away, 0), at(40 + away, 90))).toBe(is);
      expect(through(at(0, 20 - away), at(90, 20 - away))).toBe(is);
      expect(through(at(0, 25 + away), at(90, 25 + away))).toBe(is);
    }
    expect(through(at(12, 21), at(13, 22))).toBe(true);
    expect(through(at(5, 22), at(11, 14))).toBe(false);
    expect(through(at(5, 22), at(20, 18))).toBe(true);
    expect(through(at(36, 31), at(48, 19))).toBe(false);
    expect(through(at(0, 22), at(9, 22))).toBe(false);
    const beside = (x: number, y: number) => meets(box, { x, y, width: 4, height: 3 });
    expect([beside(5.9, 21), beside(6.1, 21), beside(39.9, 21), beside(40.1, 21)]).toEqual([
      false,
      true,
      true,
      false,
    ]);
    expect([beside(20, 16.9), beside(20, 17.1), beside(20, 24.9), beside(20, 25.1)]).toEqual([
      false,
      true,
      true,
      false,
    ]);
    expect(
      [at(9.9, 22), at(10, 22), at(40, 22), at(40.1, 22), at(20, 19.9), at(20, 25.1)].map((own) =>
        isIn(own, box),
      ),
    ).toEqual([false, true, true, false, false, false]);
    expect(grown(box)).toEqual({ x: 3, y: 13, width: 44, height: 19 });
    expect(within({ x: 11, y: 21, width: 29, height: 4 }, box)).toBe(true);
    expect(within({ x: 11, y: 21, width: 29.1, height: 4 }, box)).toBe(false);
    expect(within({ x: 11, y: 21, width: 29, height: 4.1 }, box)).toBe(false);
  });
});

describe('the whole pattern', () => {
  const sheet = (x: number, y: number, pieces: number[]) => ({ x, y, width: 200, height: 280, pieces });
  const place = (cutPiece: unknown, own: object = {}) => ({
    cutPiece,
    grain: line(at(60, 60), at(60, 240)),
    ...own,
  });
  const long = bare(180, 500, { layers: ['shell'], labelAt: at(100, 150) });
  const short = bare(180, 470, { layers: ['net'], labelAt: at(100, 150) });
  const back = upright(
    90,
    100,
    [10, 10, 10, 10],
    { gore: 'back', layers: ['net'], labelAt: at(260, 60) },
    [220, 20],
  );
  const plan = {
    sheets: [sheet(0, 0, [0, 1]), sheet(0, 280, [1, 0]), sheet(200, 0, [2])],
    pieces: [place(long), place(short, { liesOn: 0 }), place(back)],
  } as never;
  const { pieces, whole } = patternDrawing(plan, LABELS);
  const texts = (marks: readonly Mark[]): TextMark[] =>
    marks.flatMap((mark) => (mark.kind === 'group' ? texts(mark.marks) : mark.kind === 'text' ? [mark] : []));

  it('each piece apart with twenty round it, all on one drawing as large as the sheets', () => {
    expect([whole.x, whole.y, whole.width, whole.height, whole.title]).toEqual([
      0,
      0,
      400,
      560,
      'Lantern: pattern',
    ]);
    expect(pieces.map(({ x, y, width, height, title }) => [x, y, width, height, title])).toEqual([
      [-20, -20, 220, 540, 'side (shell)'],
      [-20, -20, 220, 510, 'side (net)'],
      [190, -10, 150, 160, 'back (net)'],
    ]);
    expect(pieces.map(({ marks }) => marks)).toEqual(whole.marks.map((mark) => [mark]));
  });

  it('the longer one of a pile has the words, each of them its line’s name, seven within a sheet', () => {
    const [first, second, third] = whole.marks.map((mark) => texts([mark]));
    expect(second!.map(({ text }) => text)).toEqual(['net: cut']);
    expect(first!.filter(({ text }) => text.endsWith(': cut')).map(({ text }) => text)).toEqual([
      'shell: cut',
    ]);
    expect(first!.map(({ text }) => text)).toContain('layers: shell, net');
    expect(third!.map(({ text }) => text)).toContain('layer: net');
    expect(third!.some(({ text }) => text.endsWith(': cut'))).toBe(false);
    const rims = [at(0, 0), at(0, 280), at(200, 0)].map(({ x, y }) => ({
      x: x + 7,
      y: y + 7,
      width: 186,
      height: 266,
    }));
    for (const { at: place, text, size, bold } of [...first!, ...second!, ...third!]) {
      const box = { x: place.x, y: place.y - 0.75 * size, width: textWidth(text, size, bold), height: size };
      expect(
        rims.some((rim) => within(box, rim)),
        text,
      ).toBe(true);
    }
  });

  it('what lies on a sheet, those on one another as one', () => {
    const names = (own: object) => sheetPieceNames(plan, own as never, ENGLISH_PATTERN);
    expect(names(sheet(0, 0, [0, 1]))).toEqual(['side (shell, net)']);
    expect(names(sheet(0, 0, [1, 2]))).toEqual(['side (net)', 'back (net)']);
  });
});
