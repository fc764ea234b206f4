import { describe, expect, it } from 'vitest';
import type { Line, Point } from '../../src/geometry/curve.ts';
import type { Mark, PathMark, TextMark } from '../../src/print/drawing.ts';
import { drawLay, layFigure } from '../../src/print/lay/lay-drawing.ts';
import { textWidth } from '../../src/print/text/text-width.ts';
import { englishLay } from '../../src/words/english-lay.ts';
import { at, line } from '../quads.ts';

/**
 * A lay by hand, mm: a cloth of 1000 × 850 with 20 of selvedge and 30 of edging. On the screen an em is 44, a cut line 2;
 * on the page an em is 2.6, and the cloth lies down: what is x, y on the cloth is y, 1000 - x there, to scale.
 */

const near = (x: number, y: number) => ({ x: expect.closeTo(x, 6), y: expect.closeTo(y, 6) });
const box = (x: number, y: number, wide: number, high: number): Line[] =>
  [at(x, y), at(x + wide, y), at(x + wide, y + high), at(x, y + high)].map((from, i, all) =>
    line(from, all[(i + 1) % 4]!),
  );
const FACTS = { width: 1000, selvedge: 20, edgingDepth: 30, usable: 900, oneWay: true };
const plan = (own: object = {}) =>
  ({
    layers: ['shell'],
    facts: FACTS,
    sections: [{ fold: 'single', from: 0, to: 850, upperTurned: false }],
    length: 850,
    spare: [],
    pieces: [],
    ...own,
  }) as never;
const words = { ...englishLay('cm'), remarks: () => ['mind the nap'] };
const TITLE = { name: 'Lantern, shell', says: 'crepe' };
const flat = (marks: readonly Mark[]): Mark[] =>
  marks.flatMap((mark) => (mark.kind === 'group' ? flat(mark.marks) : [mark]));
const onScreen = (own: object = {}, said = words) => flat(drawLay(plan(own), TITLE, said).marks);
/** So much room that a millimetre of cloth is `scale` of the page. */
const onPage = (own: { length?: number } & Record<string, unknown> = {}, scale = 0.2) =>
  flat(layFigure(plan(own), words, { width: (own.length ?? 850) * scale + 17.68, height: 900 }).marks);
const paths = (marks: readonly Mark[], name: string) =>
  marks.filter((mark): mark is PathMark => mark.kind === 'path' && mark.class === name);
const text = (marks: readonly Mark[], said: string) =>
  marks.find((mark): mark is TextMark => mark.kind === 'text' && mark.text === said);
const ends = (own: PathMark): Point[][] =>
  own.runs.flatMap((run) => (run as Line[]).map(({ from, to }) => [from, to]));
const all = (own: PathMark[]) => own.map((one) => ends(one)[0]);

describe('the cloth', () => {
  it('its edges, and what is not used at each side', () => {
    const marks = onScreen();
    const [cloth] = paths(marks, 'cloth');
    expect(ends(cloth!).map(([from]) => from)).toEqual([at(0, 0), at(1000, 0), at(1000, 850), at(0, 850)]);
    expect([cloth!.closed, cloth!.line.width]).toEqual([true, expect.closeTo(2.4, 6)]);
    const inner = paths(marks, 'selvedge');
    expect(all(inner)).toEqual([20, 980, 50, 950].map((x) => [at(x, 0), at(x, 850)]));
    expect(inner[0]!.line).toEqual({ width: expect.closeTo(1.2, 6), dash: [12, 8] });
    expect(paths(onScreen({ facts: { ...FACTS, edgingDepth: 0 } }), 'selvedge')).toHaveLength(2);
    expect(paths(onScreen({ facts: { ...FACTS, selvedge: 0 } }), 'selvedge')).toHaveLength(2);
    const [lying] = paths(onPage(), 'cloth');
    expect(ends(lying!).map(([from]) => from)).toEqual([
      near(0, 200),
      near(0, 0),
      near(170, 0),
      near(170, 200),
    ]);
    expect(lying!.line.width).toBeCloseTo(0.36, 6);
  });

  it('on the screen under its name, how it is laid and what must be known', () => {
    const drawing = drawLay(plan(), TITLE, words);
    // Four ems at the left, 3.6 at the right, 1.5 below; above it three lines of 1.3, 1 and 0.8 ems and 1.6 ems of room.
    const top = 1.35 * (57.2 + 44 + 35.2) + 70.4;
    expect([drawing.x, drawing.y, drawing.width, drawing.height].map((own) => Math.round(own * 1e6))).toEqual(
      [-176, -top, 1334.4, top + 850 + 66].map((own) => Math.round(own * 1e6)),
    );
    expect(drawing.title).toBe('Lantern, shell: crepe');
    const head = drawing.marks.slice(0, 3) as TextMark[];
    expect(head.map((mark) => [mark.text, mark.bold, mark.at])).toEqual([
      ['Lantern, shell', true, near(-154, -177.32)],
      ['crepe', false, near(-154, -117.92)],
      ['mind the nap', false, near(-154, -70.4)],
    ]);
    expect(head.map(({ size }) => size)).toEqual([57.2, 44, 35.2].map((own) => expect.closeTo(own, 6)));
  });

  it('its lines leave room for wider letters at the right', () => {
    const long = 'mind the nap '.repeat(20).trim();
    const lines = onScreen({}, { ...words, remarks: () => [long] })
      .filter((mark): mark is TextMark => mark.kind === 'text' && mark.text.includes('nap'))
      .map((mark) => mark.text);
    expect(lines.join(' ')).toBe(long);
    const room = (1334.4 - 44) / 1.2;
    for (const own of lines) expect(textWidth(own, 35.2)).toBeLessThanOrEqual(room);
    expect(textWidth(`${lines[0]} ${lines[1]!.split(' ')[0]}`, 35.2)).toBeGreaterThan(room);
  });

  it('as large on a page as the narrower way allows, with 3.4 ems round it', () => {
    const boxOf = (width: number, height: number) => {
      const own = layFigure(plan(), words, { width, height });
      return [own.x, own.y, own.width, own.height].map((one) => Math.round(one * 1e6) / 1e6);
    };
    expect(boxOf(187.68, 900)).toEqual([-8.84, -8.84, 187.68, 217.68]);
    expect(boxOf(900, 117.68)).toEqual([-8.84, -8.84, 102.68, 117.68]);
  });
});

describe('the ruler beside it', () => {
  const ticks = (marks: readonly Mark[]) => all(paths(marks, 'ruler'));

  it('a tick and a figure every 10 cm, at the left', () => {
    const marks = onScreen();
    expect(ticks(marks)).toEqual(
      [0, 100, 200, 300, 400, 500, 600, 700, 800].map((y) => [near(-6.6, y), near(-35.2, y)]),
    );
    expect(text(marks, '30')).toMatchObject({ at: near(-44, 310.78), anchor: 'end' });
    expect(text(marks, '30')!.size).toBeCloseTo(30.8, 6);
    expect(text(marks, '80')!.at).toEqual(near(-44, 810.78));
    expect(paths(marks, 'ruler')[0]!.line.width).toBeCloseTo(1.2, 6);
    // As long as ten whole steps: the last is drawn too.
    expect(ticks(onScreen({ length: 1000 }))).toHaveLength(11);
  });

  it('every 4 in where inches are read', () => {
    const marks = onScreen({}, { ...englishLay('in'), remarks: () => [] });
    expect(ticks(marks)).toHaveLength(9);
    expect(ticks(marks)[8]).toEqual([near(-6.6, 812.8), near(-35.2, 812.8)]);
    expect(text(marks, '12')!.at).toEqual(near(-44, 304.8 + 10.78));
  });

  it('below the cloth on a page; where figures have no room every fifth is named and longer', () => {
    const marks = onPage();
    expect(ticks(marks)[3]).toEqual([near(60, 200.39), near(60, 202.08)]);
    expect(text(marks, '30')).toMatchObject({ at: near(60, 200 + 3.38 + 0.637), anchor: 'middle' });
    const small = onPage({}, 0.02);
    expect(ticks(small)[3]).toEqual([near(6, 20.39), near(6, 21.3)]);
    expect(ticks(small)[5]).toEqual([near(10, 20.39), near(10, 22.08)]);
    const named = ['0', '10', '20', '30', '40', '50', '60', '70', '80'].filter((own) => text(small, own));
    expect(named).toEqual(['0', '50']);
    // On a page the widest figure counts, 2.02 and three tenths; beside it its height, 30.8 and three tenths.
    const longer = (length: number, scale: number, figure: string) =>
      text(onPage({ length }, scale), figure) !== undefined;
    const width = textWidth('80', 1.82);
    expect(longer(850, (1.32 * width) / 100, '10')).toBe(true);
    expect(longer(850, (1.28 * width) / 100, '10')).toBe(false);
    expect(text(onScreen({ length: 100_000 }), '10')).toBeDefined();
  });
});

describe('which way the tops lie', () => {
  it('one arrow on one-way cloth, to its beginning', () => {
    const marks = onScreen();
    const [arrow, ...none] = paths(marks, 'direction');
    expect(none).toEqual([]);
    expect(ends(arrow!)).toEqual([
      [near(1039.6, 42.5), near(1039.6, 340)],
      [near(1039.6, 42.5), near(1049.28, 71.1)],
      [near(1039.6, 42.5), near(1029.92, 71.1)],
    ]);
    expect(arrow!.line.width).toBeCloseTo(1.2, 6);
    expect(text(marks, 'tops this way')).toMatchObject({
      at: near(1088, 191.25),
      anchor: 'middle',
      angle: expect.closeTo(-Math.PI / 2, 6),
      size: expect.closeTo(33, 6),
    });
    // Of a long cloth no more than 450, 60 from its beginning.
    const long = paths(onScreen({ length: 3000 }), 'direction')[0]!;
    expect(ends(long)[0]).toEqual([near(1039.6, 60), near(1039.6, 510)]);
  });

  it('an arrow each way on other cloth', () => {
    const marks = onScreen({ facts: { ...FACTS, oneWay: false } });
    const [, back] = paths(marks, 'direction');
    expect(ends(back!)[0]).toEqual([near(1039.6, 340), near(1039.6, 42.5)]);
    expect(ends(back!)[1]![1]!.y).toBeCloseTo(311.4, 6);
    expect(text(marks, 'tops either way')).toBeDefined();
  });

  it('above the cloth on a page, its words level', () => {
    const marks = onPage();
    expect(ends(paths(marks, 'direction')[0]!)[0]).toEqual([near(8.5, -2.34), near(68, -2.34)]);
    const label = text(marks, 'tops this way')!;
    expect(label.at).toEqual(near(38.25, -5.2 + 0.6825));
    expect(label.angle).toBeUndefined();
  });
});

describe('folds', () => {
  const TWO = {
    sections: [
      { fold: 'lengthwise', from: 0, to: 500, upperTurned: false },
      { fold: 'crosswise', from: 500, to: 850, upperTurned: true },
    ],
  };
  const one = (fold: string, upperTurned = false) => ({
    sections: [{ fold, from: 0, to: 850, upperTurned }],
  });

  it('where the cloth is cut across before folding, and where it is folded', () => {
    const marks = onScreen(TWO);
    expect(all(paths(marks, 'section'))).toEqual([[at(0, 500), at(1000, 500)]]);
    const [along, across] = paths(marks, 'fold');
    expect(all([along!, across!])).toEqual([
      [at(500, 0), at(500, 500)],
      [at(0, 675), at(1000, 675)],
    ]);
    expect(along!.line).toEqual({ width: expect.closeTo(1.2, 6), dash: [28, 8, 4, 8] });
    // The upper layer is cut off: a solid line.
    expect(across!.line).toEqual({ width: expect.closeTo(2.4, 6) });
    expect(text(marks, '1. folded lengthwise')!.at).toEqual(near(1127.6, 250));
    expect(text(marks, '2. folded crosswise')!.at).toEqual(near(1127.6, 675));
    expect(text(marks, 'fold')).toMatchObject({ at: near(500, -13.2), anchor: 'middle', bold: true });
    expect(text(marks, 'cut here')).toMatchObject({ at: near(1013.2, 686.55), anchor: 'start', bold: true });
  });

  it('not numbered where there is one, none where it lies flat', () => {
    const marks = onScreen(one('crosswise'));
    expect(text(marks, '1. folded crosswise')).toBeUndefined();
    expect(paths(marks, 'section')).toEqual([]);
    expect(all(paths(marks, 'fold'))).toEqual([[at(0, 425), at(1000, 425)]]);
    expect(text(marks, 'fold')!.at).toEqual(near(1013.2, 436.55));
    expect(text(marks, 'cut here')).toBeUndefined();
    expect(paths(onScreen(), 'fold')).toEqual([]);
    expect(text(onScreen(), 'fold')).toBeUndefined();
  });

  it('on a page', () => {
    const marks = onPage(TWO);
    const [along, across] = paths(marks, 'fold');
    expect(ends(along!)[0]).toEqual([near(0, 100), near(100, 100)]);
    expect(ends(across!)[0]).toEqual([near(135, 200), near(135, 0)]);
    expect(text(marks, 'fold')).toMatchObject({ at: near(-0.78, 100.6825), anchor: 'end' });
    expect(text(marks, 'cut here')).toMatchObject({ at: near(135, -0.78), anchor: 'middle' });
    expect(text(marks, '1. folded lengthwise')!.at).toEqual(near(50, -7.54 + 0.6825));
  });
});

describe('what is spare', () => {
  const SPARE = [
    { x: 200, y: 100, width: 500, height: 120 },
    { x: 50, y: 300, width: 80, height: 450 },
    { x: 300, y: 400, width: 300, height: 40 },
    { x: 700, y: 500, width: 110, height: 90 },
  ];

  it('a rectangle with its size along its longer side, as large as both sides allow', () => {
    const marks = onScreen({ spare: SPARE });
    const boxes = paths(marks, 'spare');
    expect(boxes.map((own) => ends(own).map(([from]) => from))).toEqual(
      SPARE.map(({ x, y, width, height }) => box(x, y, width, height).map(({ from }) => from)),
    );
    expect(boxes[0]!.closed).toBe(true);
    expect(boxes[0]!.line.dash).toEqual([4, 8]);
    const level = text(marks, 'spare 50 × 12 cm')!;
    expect([level.at, level.size, level.anchor]).toEqual([near(450, 171.55), 33, 'middle']);
    expect(level.angle).toBeUndefined();
    const onEnd = text(marks, 'spare 8 × 45 cm')!;
    expect(onEnd).toMatchObject({ at: near(101.55, 525), angle: expect.closeTo(-Math.PI / 2, 6), size: 33 });
    expect(text(marks, 'spare 30 × 4 cm')!.size).toBeCloseTo(24, 6);
    expect(text(marks, 'spare 30 × 4 cm')!.at).toEqual(near(450, 428.4));
    const short = text(marks, 'spare 11 × 9 cm')!;
    expect(textWidth(short.text, short.size)).toBeCloseTo(99, 6);
  });

  it('on a page the other way round', () => {
    const label = text(onPage({ spare: SPARE }), 'spare 50 × 12 cm')!;
    expect(label).toMatchObject({ at: near(32.6825, 110), angle: expect.closeTo(-Math.PI / 2, 6) });
    expect(label.size).toBeCloseTo(1.95, 6);
  });
});

describe('a piece on it', () => {
  const LIES = 'face down, mirrored, head down';
  const piece = (own: object = {}, cut: object = {}) => ({
    number: 7,
    layer: 'net',
    gore: 'side',
    copy: 3,
    mirrored: true,
    turned: 180,
    face: 'down',
    part: '1 of 2',
    source: { gore: 'side', piece: { cut: 'pair', ...cut } },
    outline: box(50, 50, 900, 700),
    grain: line(at(500, 60), at(500, 700)),
    notches: [line(at(50, 200), at(62, 203))],
    ...own,
  });
  const drawn = (own: object = {}, cut: object = {}, more: object = {}) =>
    onScreen({ pieces: [piece(own, cut)], ...more });
  const said = (marks: readonly Mark[]) =>
    marks.filter((mark): mark is TextMark => mark.kind === 'text' && mark.anchor === 'middle' && !mark.angle);

  it('its line, its notches and what a script asks for', () => {
    const marks = drawn();
    const [placed] = paths(marks, 'placed');
    expect(placed!.data).toEqual({
      gore: 'side',
      copy: '3',
      mirrored: 'true',
      turned: '180',
      layer: 'net',
      part: '1 of 2',
    });
    expect([placed!.runs, placed!.closed, placed!.line.width]).toEqual([[box(50, 50, 900, 700)], true, 2]);
    const [notch] = paths(marks, 'notch');
    expect(ends(notch!)).toEqual([[at(50, 200), at(62, 203)]]);
    expect(notch!.line.width).toBeCloseTo(1.2, 6);
    expect(paths(drawn({ part: undefined }), 'placed')[0]!.data).not.toHaveProperty('part');
  });

  it('its words in the middle: number, name and side, part, how it lies', () => {
    const rows = said(drawn());
    expect(rows.map((mark) => [mark.text, mark.at, mark.bold])).toEqual([
      ['7', near(500, 353.8), true],
      ['side, right', near(500, 412.76), undefined],
      ['part 1 of 2', near(500, 457.464), undefined],
      [LIES, near(500, 497.68), undefined],
    ]);
    expect(rows.map(({ size }) => size)).toEqual([66, 44, 35.2, 33].map((own) => expect.closeTo(own, 6)));
    const second = (own: object, cut: object = {}) => said(drawn(own, cut))[1]!.text;
    expect(second({ mirrored: false })).toBe('side, left');
    expect(second({}, { cut: 'single' })).toBe('side');
    expect(second({}, { cut: 'single', side: 'left' })).toBe('side, left');
    expect(said(drawn({ turned: 0 })).at(-1)!.text).toBe('face down, mirrored');
    expect(said(drawn({}, { bias: true })).at(-1)!.text).toBe(`${LIES}, on the bias`);
  });

  it('of several layers which it is', () => {
    const of = (own: object = {}) =>
      said(drawn(own, {}, { layers: ['shell', 'net'] })).map((mark) => mark.text);
    expect(of()).toEqual(['7', 'side, right', 'net', 'part 1 of 2', LIES]);
    // A strip is called as its layer: once is enough.
    expect(of({ layer: 'side' })).toEqual(['7', 'side, right', 'part 1 of 2', LIES]);
  });

  it('words shrink to 86 hundredths across and 80 down; they stand where the piece is broad', () => {
    const widest = textWidth(LIES, 33);
    const narrow = said(drawn({ outline: box(100, 0, 400, 800) }));
    expect(narrow[1]!.size).toBeCloseTo((44 * 0.86 * 400) / widest, 6);
    expect(narrow[1]!.at.x).toBeCloseTo(300, 6);
    const low = said(drawn({ outline: box(100, 0, 800, 160) }));
    expect(low[1]!.size).toBeCloseTo((44 * 0.8 * 160) / 213.84, 6);
    // A slot from the top: the words stand below it.
    const points = [at(0, 0), at(300, 0), at(300, 500), at(700, 500), at(700, 0), at(1000, 0)];
    const slotted = [...points, at(1000, 800), at(0, 800)];
    const rows = said(drawn({ outline: slotted.map((from, i) => line(from, slotted[(i + 1) % 8]!)) }));
    expect(rows[0]!.at).toEqual(near(500, 650 - 106.92 + 79.2 - 18.48));
    expect(rows[0]!.size).toBeCloseTo(66, 6);
  });

  it('an arrow along the grain, its head first, where the line is longer clear of the words', () => {
    const shaft = (grain: Line) => paths(drawn({ grain }), 'grain').map((own) => ends(own)[0]);
    // The words reach from 293.08 to 506.92, and 17.6 is kept clear.
    expect(shaft(line(at(500, 60), at(500, 700)))).toEqual([[near(500, 60), near(500, 275.48)]]);
    expect(shaft(line(at(500, 100), at(500, 740)))).toEqual([[near(500, 524.52), near(500, 740)]]);
    const half = textWidth(LIES, 33) / 2 + 17.6;
    expect(shaft(line(at(60, 400), at(900, 400)))).toEqual([[near(60, 400), near(500 - half, 400)]]);
    // Beside or below the words it is drawn whole.
    expect(shaft(line(at(70, 100), at(70, 700)))).toEqual([[near(70, 100), near(70, 700)]]);
    expect(shaft(line(at(60, 600), at(900, 600)))).toEqual([[near(60, 600), near(900, 600)]]);
    expect(shaft(line(at(500, 300), at(500, 500)))).toEqual([]);
    // On a piece that lies head down it runs back.
    expect(shaft(line(at(500, 740), at(500, 60)))).toEqual([[near(500, 740), near(500, 524.52)]]);
    expect(shaft(line(at(900, 400), at(60, 400)))).toEqual([[near(500 - half, 400), near(60, 400)]]);
    expect(shaft(line(at(70, 700), at(70, 100)))).toEqual([[near(70, 700), near(70, 100)]]);
  });

  it('on a page too small for all of it number and name, or its number alone', () => {
    const small = { outline: box(100, 100, 100, 100), grain: line(at(150, 110), at(150, 190)) };
    const of = (own: object) =>
      said(onPage({ pieces: [piece({ ...small, ...own }, { cut: 'single' })], layers: ['a', 'b'] }, 0.1))
        .map((mark) => mark.text)
        .filter((own) => !/^(\d0|0|tops .*)$/.test(own));
    expect(of({ outline: box(50, 50, 900, 700) })).toEqual(['7', 'side', 'net', 'part 1 of 2', LIES]);
    expect(of({})).toEqual(['7', 'side']);
    expect(of({ gore: 'side-front-overskirt-panel' })).toEqual(['7']);
  });
});
