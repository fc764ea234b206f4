import { expect, test } from 'vitest';
import type { Drawing, Mark, TextMark } from '../../src/print/drawing.ts';
import type { Block } from '../../src/print/page/page-blocks.ts';
import { flowPages } from '../../src/print/page/page-flow.ts';
import { textWidth } from '../../src/print/text/text-width.ts';

const SETUP = {
  paper: { width: 210, height: 297 },
  headerLeft: 'Lantern · LAN-07',
  headerRight: 'Job sheet',
  footerLeft: 'format 1 · 3f9a12c4',
};

const rows = (count: number) => Array.from({ length: count }, (_, index) => [`row ${index}`, `${index} cm`]);

function texts(page: Drawing): TextMark[] {
  const found = (marks: readonly Mark[]): TextMark[] =>
    marks.flatMap((mark) => (mark.kind === 'text' ? [mark] : mark.kind === 'group' ? found(mark.marks) : []));
  return found(page.marks);
}

const has = (page: Drawing, text: string) => texts(page).some((mark) => mark.text === text);

test('nothing of a long paper leaves the page or is lost', () => {
  const blocks: Block[] = [
    { kind: 'heading', level: 1, text: 'Job sheet' },
    ...Array.from(
      { length: 40 },
      (_, index): Block => ({
        kind: 'item',
        tick: true,
        number: `${index + 1}`,
        text: `step ${index} ${'and on with the work '.repeat(index % 7)}`,
        notes: ['needs patience'],
      }),
    ),
    { kind: 'table', heads: ['what', 'length'], rows: rows(90) },
    { kind: 'caution', text: 'Wear eye protection; the machine’s manual decides. '.repeat(4) },
  ];
  const { pages } = flowPages(blocks, SETUP);
  for (const page of pages) {
    for (const mark of texts(page)) {
      const width = textWidth(mark.text, mark.size, mark.bold);
      const left = mark.anchor === 'end' ? mark.at.x - width : mark.at.x;
      expect(left).toBeGreaterThan(14.9);
      expect(left + width).toBeLessThan(195.1);
      expect(mark.at.y).toBeGreaterThan(15);
      expect(mark.at.y).toBeLessThan(282.1);
    }
  }
  for (let row = 0; row < 90; row++) expect(pages.filter((page) => has(page, `row ${row}`))).toHaveLength(1);
});

test('a table that fits a page is moved whole; a longer one repeats its heads', () => {
  const filler: Block[] = Array.from({ length: 30 }, () => ({ kind: 'paragraph', text: 'filler' }));
  const moved = flowPages([...filler, { kind: 'table', heads: ['what', 'length'], rows: rows(20) }], SETUP);
  const holding = moved.pages.filter((page) => has(page, 'what'));
  expect(holding).toHaveLength(1);
  expect(has(holding[0]!, 'row 0') && has(holding[0]!, 'row 19')).toBe(true);
  const long = flowPages([{ kind: 'table', heads: ['what', 'length'], rows: rows(120) }], SETUP);
  expect(long.pages.length).toBeGreaterThan(1);
  for (const page of long.pages) expect(has(page, 'what')).toBe(true);
});

test('a heading is never the last thing on a page', () => {
  for (let lines = 20; lines < 50; lines++) {
    const filler: Block[] = Array.from({ length: lines }, () => ({ kind: 'paragraph', text: 'filler' }));
    const { pages } = flowPages(
      [...filler, { kind: 'heading', level: 2, text: 'Seams' }, { kind: 'paragraph', text: 'after' }],
      SETUP,
    );
    const page = pages.find((one) => has(one, 'Seams'))!;
    expect(has(page, 'after')).toBe(true);
  }
});

test('pages are counted, and headings become bookmarks on the page where they stand', () => {
  const { pages, bookmarks } = flowPages(
    [
      { kind: 'heading', level: 1, text: 'One' },
      { kind: 'page-break' },
      { kind: 'heading', level: 2, text: 'Two' },
      { kind: 'paragraph', text: 'end' },
    ],
    SETUP,
  );
  expect(pages).toHaveLength(2);
  expect(has(pages[1]!, 'page 2 of 2')).toBe(true);
  expect(bookmarks).toEqual([
    { title: 'One', page: 0, level: 1 },
    { title: 'Two', page: 1, level: 2 },
  ]);
});

test('a row or a note longer than a page is still printed whole', () => {
  const words = Array.from({ length: 3000 }, (_, index) => `w${index}`);
  const { pages } = flowPages([{ kind: 'table', heads: ['note'], rows: [[words.join(' ')]] }], SETUP);
  const printed = pages.flatMap(texts).flatMap((mark) => mark.text.split(' '));
  expect(new Set(words.filter((word) => printed.includes(word))).size).toBe(3000);
});

test('body text is legible at arm’s length and black lines are hairlines or little more', () => {
  const { pages } = flowPages(
    [
      { kind: 'paragraph', text: 'body' },
      { kind: 'table', heads: ['a'], rows: [['cell']] },
    ],
    SETUP,
  );
  for (const word of ['body', 'cell']) {
    expect(texts(pages[0]!).find((mark) => mark.text === word)!.size).toBeGreaterThanOrEqual(3.5);
  }
});
