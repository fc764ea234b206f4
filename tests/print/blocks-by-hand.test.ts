import { describe, expect, it } from 'vitest';
import type { Line, Point } from '../../src/geometry/curve.ts';
import type { Drawing, Mark, PathMark, TextMark } from '../../src/print/drawing.ts';
import type { Block } from '../../src/print/page/page-blocks.ts';
import { flowPages } from '../../src/print/page/page-flow.ts';
import { layBlock } from '../../src/print/page/page-lay.ts';
import type { LaidBlock } from '../../src/print/page/page-strip.ts';
import { textWidth } from '../../src/print/text/text-width.ts';

/**
 * What a paper is made of, each block by itself at 10, 20 in a column of 180, on pages of 240; mm. Body text is 3.6, a
 * line of it 4.68 high, its baseline 3.6 below the line's top.
 */

const WIDTH = 180;
const PAGE = 240;
const near = (x: number, y: number) => ({ x: expect.closeTo(x, 6), y: expect.closeTo(y, 6) });
const close = (own: number) => expect.closeTo(own, 6);
const lay = (block: Block, pageHeight = PAGE) => layBlock(block, WIDTH, pageHeight);
function marksOf({ head, strips }: LaidBlock): Mark[] {
  let y = 20;
  return [...(head === undefined ? [] : [head]), ...strips].flatMap((strip) => {
    const marks = strip.draw({ x: 10, y });
    y += strip.height;
    return marks;
  });
}
const texts = (marks: readonly Mark[]) =>
  marks.filter((mark): mark is TextMark => mark.kind === 'text').map((mark) => [mark.text, mark.at]);
const paths = (marks: readonly Mark[]) => marks.filter((mark): mark is PathMark => mark.kind === 'path');
const rules = (marks: readonly Mark[]) =>
  paths(marks)
    .filter(({ closed }) => !closed)
    .map(({ runs, line }) => [(runs[0]![0] as Line).from, (runs[0]![0] as Line).to, line.width]);
const boxes = (marks: readonly Mark[]): Point[][] =>
  paths(marks)
    .filter(({ closed }) => closed)
    .map(({ runs }) => runs[0]!.map((line) => (line as Line).from));
const boxAt = (x: number, y: number, wide: number, high: number) => [
  near(x, y),
  near(x + wide, y),
  near(x + wide, y + high),
  near(x, y + high),
];
const heights = ({ strips }: LaidBlock) => strips.map(({ height }) => height);
const bold = (text: string) => textWidth(text, 3.6, true);
const say = (text: string): Block => ({ kind: 'paragraph', text });
/** Of as many lines. */
const lines = (count: number) => Array.from({ length: count }, (_, i) => `line ${i}`).join('\n');

describe('text', () => {
  it('headings in three sizes, bold, with room below, never parted from what follows', () => {
    for (const [level, size] of [
      [1, 6.4],
      [2, 4.8],
      [3, 4],
    ] as const) {
      const laid = lay({ kind: 'heading', level, text: 'Seams' });
      expect(heights(laid)).toEqual([close(1.3 * size + 0.25 * size)]);
      expect([laid.before, laid.keepWithNext]).toEqual([close(0.9 * size), true]);
      expect(marksOf(laid)).toMatchObject([{ text: 'Seams', at: near(10, 20 + size), size, bold: true }]);
    }
  });

  it('paragraphs by lines; short ones stay whole, of longer ones two lines stand together', () => {
    const three = lay(say(lines(3)));
    expect(heights(three)).toEqual([4.68, 4.68, 4.68].map(close));
    expect(texts(marksOf(three))).toEqual([0, 1, 2].map((i) => [`line ${i}`, near(10, 23.6 + 4.68 * i)]));
    expect([three.before, three.together, three.leastStrips]).toEqual([close(1.872), true, 2]);
    expect(lay(say(lines(4))).together).toBe(true);
    expect(lay(say(lines(5))).together).toBe(false);
    const [plain] = marksOf(lay(say('a'))) as TextMark[];
    const [heavy] = marksOf(lay({ kind: 'paragraph', text: 'a', bold: true })) as TextMark[];
    expect([plain!.bold ?? false, heavy!.bold]).toEqual([false, true]);
  });

  it('a bold lead, and the text behind it; a long lead stands above', () => {
    const marks = marksOf(lay({ kind: 'paragraph', lead: 'Notes', text: `stone stairs\nand rain` }));
    expect(texts(marks)).toEqual([
      ['Notes ', near(10, 23.6)],
      ['stone stairs', near(10 + bold('Notes ') + 1.08, 23.6)],
      ['and rain', near(10, 28.28)],
    ]);
    expect((marks as TextMark[]).map((mark) => mark.bold ?? false)).toEqual([true, false, false]);
    const lead = 'x'.repeat(60);
    const above = marksOf(lay({ kind: 'paragraph', lead, text: 'after' }));
    expect(texts(above)).toEqual([
      [lead, near(10, 23.6)],
      ['after', near(10, 28.28)],
    ]);
    expect((above as TextMark[]).map((mark) => mark.bold ?? false)).toEqual([true, false]);
  });

  it('items: a box to tick, a number, both, or a dash; text and notes beside them', () => {
    const both = lay({
      kind: 'item',
      tick: true,
      number: '4.2',
      text: 'Press',
      notes: ['needs: iron', 'wait'],
    });
    expect(boxes(marksOf(both))).toEqual([boxAt(10, 20.5, 3.4, 3.4)]);
    const right = 15.4 + Math.max(5.76, bold('4.2') + 1.6);
    expect(texts(marksOf(both))).toEqual([
      ['4.2', near(15.4, 23.6)],
      ['Press', near(right, 23.6)],
      ['needs: iron', near(right, 28.28)],
      ['wait', near(right, 32.96)],
    ]);
    expect([heights(both), both.before]).toEqual([[close(14.04)], close(1.638)]);
    const marker = marksOf(both).find((mark) => mark.kind === 'text') as TextMark;
    expect(marker.bold).toBe(true);
    const wide = marksOf(lay({ kind: 'item', number: '1012.2', text: 'Press' }));
    expect(boxes(wide)).toEqual([]);
    expect(texts(wide)).toEqual([
      ['1012.2', near(10, 23.6)],
      ['Press', near(10 + bold('1012.2') + 1.6, 23.6)],
    ]);
    const dash = marksOf(lay({ kind: 'item', text: 'Press' }));
    expect(texts(dash)).toEqual([
      ['–', near(10, 23.6)],
      ['Press', near(15.76, 23.6)],
    ]);
    expect((dash[0] as TextMark).bold).toBe(false);
    const ticked = marksOf(lay({ kind: 'item', tick: true, text: 'Press' }));
    expect([boxes(ticked).length, texts(ticked)]).toEqual([1, [['Press', near(15.4, 23.6)]]]);
  });

  it('cautions in a box as wide as the column, under their lead', () => {
    const laid = lay({ kind: 'caution', text: 'hot\nsharp' });
    expect([heights(laid), laid.before]).toEqual([[close(12.56)], close(2.808)]);
    expect(boxes(marksOf(laid))).toEqual([boxAt(10, 20, 180, 12.56)]);
    expect(texts(marksOf(laid))).toEqual([
      ['Caution: ', near(12.2, 25.2)],
      ['hot', near(12.2 + bold('Caution: ') + 1.08, 25.2)],
      ['sharp', near(12.2, 29.88)],
    ]);
    const own = marksOf(lay({ kind: 'caution', lead: 'Before cutting', text: 'look' }));
    expect(texts(own)[0]![0]).toBe('Before cutting: ');
  });

  it('gaps and page ends have nothing to draw', () => {
    expect(lay({ kind: 'gap', height: 7 })).toMatchObject({ strips: [], before: 7, breakBefore: false });
    expect(lay({ kind: 'page-break' })).toMatchObject({ strips: [], before: 0, breakBefore: true });
  });
});

describe('figures and forms', () => {
  const drawing = { x: 5, y: 7, width: 90, height: 60, marks: [] };
  const used = (own: object, pageHeight = PAGE, of: object = {}) => {
    const laid = lay({ kind: 'figure', drawing: { ...drawing, ...of }, ...own } as Block, pageHeight);
    const mark = marksOf(laid)[0] as Extract<Mark, { kind: 'use' }>;
    return { scale: mark.scale!.x, down: mark.scale!.y, offset: mark.offset, height: heights(laid)[0] };
  };

  it('a figure in its own size, its corner at the column’s; larger only where asked, smaller where it must be', () => {
    expect(used({})).toEqual({ scale: 1, down: 1, offset: at(5, 13), height: 60 });
    expect(used({ width: 135 })).toEqual({ scale: 1.5, down: 1.5, offset: at(2.5, 9.5), height: 90 });
    expect(used({ width: 900 }).scale).toBe(2);
    expect(used({}, PAGE, { width: 360 })).toMatchObject({ scale: 0.5, height: 30 });
    expect(used({ maxHeight: 30 }).scale).toBe(0.5);
    expect(used({}, 31.872).scale).toBeCloseTo(0.5, 6);
    expect(used({ caption: 'front' }, 36.552).scale).toBeCloseTo(0.5, 6);
    expect(lay({ kind: 'figure', drawing }).before).toBeCloseTo(2.808, 6);
  });

  it('its caption below it', () => {
    const laid = lay({ kind: 'figure', drawing, caption: 'front' });
    expect(texts(marksOf(laid))).toEqual([['front', near(10, 83.8)]]);
    expect(heights(laid)).toEqual([close(64.88)]);
  });

  it('fields to write in, side by side: the rule begins behind the label', () => {
    const laid = lay({ kind: 'fields', fields: ['waist', 'hip', 'length'], columns: 2 });
    expect(heights(laid)).toEqual([close(8.892), close(8.892)]);
    expect([laid.before, laid.leastStrips]).toEqual([close(1.404), 2]);
    const width = (text: string) => textWidth(text, 3.6);
    expect(texts(marksOf(laid))).toEqual([
      ['waist', near(10, 26.786)],
      ['hip', near(103, 26.786)],
      ['length', near(10, 35.678)],
    ]);
    expect(rules(marksOf(laid))).toEqual([
      [near(11.5 + width('waist'), 27.386), near(97, 27.386), 0.2],
      [near(104.5 + width('hip'), 27.386), near(190, 27.386), 0.2],
      [near(11.5 + width('length'), 36.278), near(97, 36.278), 0.2],
    ]);
    const two = lay({ kind: 'fields', fields: ['round the waist,\nstanding', 'b'] });
    expect(heights(two)).toEqual([close(11.7), close(8.892)]);
    expect(texts(marksOf(two)).slice(0, 2)).toEqual([
      ['round the waist,', near(10, 24.914)],
      ['standing', near(10, 29.594)],
    ]);
    expect(rules(marksOf(two))[0]).toEqual([
      near(11.5 + width('round the waist,'), 30.194),
      near(190, 30.194),
      0.2,
    ]);
    // A label takes no more than 62 hundredths of its room.
    const long = marksOf(lay({ kind: 'fields', fields: ['ab '.repeat(60).trim()] }));
    for (const [text] of texts(long)) expect(width(text as string)).toBeLessThanOrEqual(0.62 * 180);
    expect(width(`${texts(long)[0]![0]} ab`)).toBeGreaterThan(0.62 * 180);
  });

  it('empty lines to write on', () => {
    expect(rules(marksOf(lay({ kind: 'lines', count: 2 })))).toEqual([
      [near(10, 28.892), near(190, 28.892), 0.2],
      [near(10, 37.784), near(190, 37.784), 0.2],
    ]);
  });

  it('columns beside one another, six apart, as wide as their shares', () => {
    const columns = [[say('a'), say('d')], [say('b')], [{ kind: 'lines', count: 1 } as Block]];
    const laid = lay({ kind: 'columns', columns, shares: [1, 2, 3] });
    expect([heights(laid), laid.before]).toEqual([[close(11.232)], close(1.872)]);
    expect(texts(marksOf(laid))).toEqual([
      ['a', near(10, 23.6)],
      ['d', near(10, 30.152)],
      ['b', near(44, 23.6)],
    ]);
    expect(rules(marksOf(laid))).toEqual([[near(106, 28.892), near(190, 28.892), 0.2]]);
    const alike = marksOf(lay({ kind: 'columns', columns: [[say('a')], [say('b')], [say('c')]] }));
    expect(texts(alike).map(([, place]) => place)).toEqual([10, 72, 134].map((x) => near(x, 23.6)));
    const table: Block = { kind: 'table', heads: ['h'], rows: [['r']] };
    expect(texts(marksOf(lay({ kind: 'columns', columns: [[table]] }))).map(([text]) => text)).toEqual([
      'h',
      'r',
    ]);
  });

  it('of versions the first that fits one side; else the last, smaller by three hundredths at a time', () => {
    const tall = [say(lines(20))];
    const short = [say('short')];
    const fitted = (versions: Block[][], above: number) => marksOf(lay({ kind: 'fitted', versions, above }));
    expect(texts(fitted([tall, short, []], 200))).toEqual([['short', near(10, 23.6)]]);
    expect(texts(fitted([tall, short], 146))).toHaveLength(20);
    // 93.6 high, and 40 of room: 28 steps.
    const [use] = fitted([short.concat(tall, tall), tall], 200) as Extract<Mark, { kind: 'use' }>[];
    expect(use!.scale).toEqual({ x: close(0.97 ** 28), y: close(0.97 ** 28) });
    expect(use!.offset).toEqual(at(10, 20));
    expect(use!.drawing.width).toBeCloseTo(180 / 0.97 ** 28, 6);
    expect(use!.drawing.height).toBeCloseTo(93.6, 6);
    expect(texts(use!.drawing.marks)[1]).toEqual(['line 1', near(0, 8.28)]);
    const laid = lay({ kind: 'fitted', versions: [tall], above: 200 });
    expect([laid.before, heights(laid)[0]]).toEqual([close(1.872), close(93.6 * 0.97 ** 28)]);
  });
});

describe('a table', () => {
  const TABLE = {
    kind: 'table',
    heads: ['what', 'length'],
    rows: [
      ['waist', '31 cm'],
      ['hem', '2 m'],
    ],
    shares: [3, 1],
    align: ['start', 'end'],
    tick: true,
    boldRows: [1],
    caption: 'Lengths',
  } as const;

  it('caption, heads and rows; figures end at their column’s right, a box to tick before each row', () => {
    const laid = lay(TABLE);
    const marks = marksOf(laid);
    expect(texts(marks)).toEqual([
      ['Lengths', near(10, 23.6)],
      ['what', near(16.8, 28.98)],
      ['length', near(188.6, 28.98)],
      ['waist', near(16.8, 35.06)],
      ['31 cm', near(188.6, 35.06)],
      ['hem', near(16.8, 41.14)],
      ['2 m', near(188.6, 41.14)],
    ]);
    const written = marks.filter((mark): mark is TextMark => mark.kind === 'text');
    expect(written.map((mark) => [mark.bold, mark.anchor])).toEqual([
      [true, 'start'],
      [true, 'start'],
      [true, 'end'],
      [false, 'start'],
      [false, 'end'],
      [true, 'start'],
      [true, 'end'],
    ]);
    expect(rules(marks)).toEqual([
      [near(10, 30.76), near(190, 30.76), 0.35],
      [near(10, 36.84), near(190, 36.84), 0.2],
      [near(10, 42.92), near(190, 42.92), 0.2],
    ]);
    expect(boxes(marks)).toEqual([boxAt(10, 31.96, 3.4, 3.4), boxAt(10, 38.04, 3.4, 3.4)]);
    expect(laid).toMatchObject({ before: close(2.808), together: true, leastStrips: 2 });
    expect(heights(laid)).toEqual([close(6.08), close(6.08)]);
    // Its second column begins at three quarters of what the boxes leave.
    const started = marksOf(lay({ ...TABLE, align: undefined } as never));
    expect(texts(started)[2]).toEqual(['length', near(10 + 5.4 + 130.95 + 1.4, 28.98)]);
  });

  it('under a rule alone where it has no heads', () => {
    const marks = marksOf(lay({ kind: 'table', heads: ['', ''], rows: [['a', 'b']], shares: [1, 1] }));
    expect(rules(marks)[0]).toEqual([near(10, 20), near(190, 20), 0.2]);
    expect(texts(marks)).toEqual([
      ['a', near(11.4, 24.3)],
      ['b', near(101.4, 24.3)],
    ]);
    const one = marksOf(lay({ kind: 'table', heads: ['', 'cm'], rows: [['a', 'b']] }));
    expect(texts(one)[0]![0]).toBe('cm');
  });

  it('columns as wide as their widest cell, the rest shared; wide ones give way to narrow ones', () => {
    const rows = [
      ['waistband', 'b', 'c\ncuff'],
      ['a', 'belt', 'd'],
    ];
    const marks = marksOf(lay({ kind: 'table', heads: ['a', 'heads', 'c'], rows }));
    const natural = ['waistband', 'heads', 'cuff'].map((text) => bold(text) + 2.8);
    const rest = (180 - natural.reduce((sum, own) => sum + own, 0)) / 3;
    const starts = [11.4, 11.4 + natural[0]! + rest, 11.4 + natural[0]! + natural[1]! + 2 * rest];
    expect(texts(marks).slice(0, 3)).toEqual(
      ['a', 'heads', 'c'].map((text, i) => [text, near(starts[i]!, 24.3)]),
    );
    // 'c' and 'cuff' are two lines of one row.
    expect(texts(marks)[6]).toEqual(['cuff', near(starts[2]!, 20 + 6.08 + 0.7 + 3.6 + 4.68)]);
    const words = 'word '.repeat(60).trim();
    const tight = marksOf(lay({ kind: 'table', heads: ['a', 'b', 'c'], rows: [['long', words, words]] }));
    const first = bold('long') + 2.8;
    const each = (180 - first) / 2;
    expect(texts(tight).slice(0, 3)).toEqual([
      ['a', near(11.4, 24.3)],
      ['b', near(11.4 + first, 24.3)],
      ['c', near(11.4 + first + each, 24.3)],
    ]);
    for (const [text] of texts(tight)) expect(textWidth(text as string, 3.6)).toBeLessThan(each - 2.8);
  });

  it('a row taller than half a page is cut between its lines, ticked once, ruled once', () => {
    const tall: Block = { kind: 'table', heads: ['h'], rows: [[lines(3)]], tick: true };
    const laid = lay(tall, 30);
    expect(heights(laid)).toEqual([5.38, 4.68, 5.38].map(close));
    expect([boxes(marksOf(laid)).length, rules(marksOf(laid)).length]).toEqual([1, 2]);
    expect(texts(marksOf(laid)).slice(1)).toEqual(
      [0, 1, 2].map((i) => [`line ${i}`, near(16.8, 30.38 + 4.68 * i)]),
    );
    expect(heights(lay(tall, 31))).toEqual([close(15.44)]);
  });
});

describe('pages', () => {
  const SETUP = {
    paper: { width: 210, height: 297 },
    headerLeft: 'Lantern',
    headerRight: 'Job sheet',
    footerLeft: 'format 1',
  };
  const flow = (blocks: Block[], own: object = {}) => flowPages(blocks, { ...SETUP, ...own });
  const inside = (page: Drawing) =>
    texts(page.marks).filter(([, place]) => (place as Point).y > 20 && (place as Point).y < 277);

  it('head and foot fifteen from the edges, the text between them', () => {
    const { pages } = flow([say('one'), { kind: 'page-break' }, say('two')]);
    const marks = pages[1]!.marks;
    expect(texts(marks)).toEqual([
      ['Lantern', near(15, 18)],
      ['Job sheet', near(195, 18)],
      ['two', near(15, 25.8)],
      ['format 1', near(15, 280.8)],
      ['page 2 of 2', near(195, 280.8)],
    ]);
    const written = marks.filter((mark): mark is TextMark => mark.kind === 'text');
    expect(written.map((mark) => [mark.anchor, mark.bold ?? false, mark.size])).toEqual([
      ['start', false, 3],
      ['end', true, 3],
      ['start', false, 3.6],
      ['start', false, 3],
      ['end', false, 3],
    ]);
    expect(rules(marks)).toEqual([[near(15, 19.2), near(195, 19.2), 0.2]]);
    expect([pages[1]!.width, pages[1]!.height, pages[1]!.title]).toEqual([210, 297, 'Job sheet 2']);
    const wide = flow([say('one')], { margin: 20 }).pages[0]!.marks;
    expect(texts(wide).map(([, place]) => place)).toEqual([
      near(20, 23),
      near(190, 23),
      near(20, 30.8),
      near(20, 275.8),
      near(190, 275.8),
    ]);
  });

  it('long names at head and foot are cut before what stands at the right', () => {
    const long = 'Lantern '.repeat(60);
    const marks = flow([say('one')], { headerLeft: long, footerLeft: long }).pages[0]!.marks;
    const written = marks.filter((mark): mark is TextMark => mark.kind === 'text');
    const [head, name, , foot, count] = written;
    const left = (mark: TextMark) => 195 - textWidth(mark.text, mark.size, mark.bold);
    for (const [own, other] of [
      [head!, name!],
      [foot!, count!],
    ] as const) {
      const end = 15 + textWidth(own.text, own.size);
      expect(left(other) - end).toBeGreaterThan(5.9);
      expect(left(other) - end).toBeLessThan(24);
    }
  });

  it('252.6 high: 28 lines to write on, 40 rows of a table under its heads, which are repeated', () => {
    const ruled = flow([{ kind: 'lines', count: 29 }]).pages.map((page) => rules(page.marks).length - 1);
    expect(ruled).toEqual([28, 1]);
    const rows = Array.from({ length: 45 }, (_, i) => [`row ${i}`]);
    const pages = flow([{ kind: 'table', heads: ['head'], rows }]).pages.map((page) =>
      inside(page).map(([text]) => text),
    );
    expect(pages.map((own) => own.length)).toEqual([41, 6]);
    expect([pages[0]![0], pages[1]![0], pages[1]![1]]).toEqual(['head', 'head', 'row 40']);
    // A page that is just full is no reason for another.
    const high: Block = { kind: 'figure', drawing: { x: 0, y: 0, width: 50, height: 250.728, marks: [] } };
    expect(flow([high]).pages).toHaveLength(1);
    expect(flow([high, say('after')]).pages).toHaveLength(2);
  });

  it('blocks stand apart, but not from a page’s top; page ends in a row or at the end leave no blank page', () => {
    const [first] = flow([say('a'), { kind: 'gap', height: 11 }, say('b')]).pages;
    expect(inside(first!)).toEqual([
      ['a', near(15, 25.8)],
      ['b', near(15, 25.8 + 4.68 + 11 + 1.872)],
    ]);
    const [top] = flow([{ kind: 'gap', height: 11 }, say('b')]).pages;
    expect(inside(top!)).toEqual([['b', near(15, 25.8)]]);
    const stop: Block = { kind: 'page-break' };
    expect(
      flow([stop, say('a'), stop, stop, say('b'), stop]).pages.map((page) => inside(page).length),
    ).toEqual([1, 1]);
  });

  it('what stays together goes on to the next page', () => {
    /** Two lines are free below it, and the room before them. */
    const high = (free: number): Block => ({ kind: 'gap', height: 252.6 - 4.68 - free });
    const counts = (free: number, ...blocks: Block[]) =>
      flow([say('top'), high(free), ...blocks]).pages.map((page) => inside(page).length);
    expect(counts(14, say(lines(2)))).toEqual([3]);
    expect(counts(11, say(lines(2)))).toEqual([1, 2]);
    expect(counts(13, say(lines(6)))).toEqual([3, 4]);
    expect(counts(10, say(lines(6)))).toEqual([1, 6]);
    const heading: Block = { kind: 'heading', level: 2, text: 'Seams' };
    // 4.32 and 7.44 for the heading, 1.872 and 4.68 for what it heads.
    expect(counts(18.4, heading, say('a'))).toEqual([3]);
    expect(counts(18.2, heading, say('a'))).toEqual([1, 2]);
    expect(counts(12, heading, { kind: 'page-break' }, say('a'))).toEqual([2, 1]);
    const table: Block = { kind: 'table', heads: ['h'], rows: [['a'], ['b'], ['c']] };
    expect(counts(27.2, table)).toEqual([5]);
    expect(counts(27, table)).toEqual([1, 4]);
  });

  it('bookmarks of titles and sections, on the page where they stand', () => {
    const heading = (level: 1 | 2 | 3, text: string): Block => ({ kind: 'heading', level, text });
    const { bookmarks } = flow([
      heading(1, 'One'),
      heading(3, 'Part'),
      { kind: 'page-break' },
      heading(2, 'Two'),
      say('end'),
    ]);
    expect(bookmarks).toEqual([
      { title: 'One', page: 0, level: 1 },
      { title: 'Two', page: 1, level: 2 },
    ]);
  });
});

function at(x: number, y: number): Point {
  return { x, y };
}
