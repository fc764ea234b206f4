import { describe, expect, it } from 'vitest';
import type { Point } from '../../src/geometry/curve.ts';
import { pointAt } from '../../src/geometry/evaluate.ts';
import type { Mark, PathMark, TextMark } from '../../src/print/drawing.ts';
import { firstPage } from '../../src/print/pattern/first-page.ts';
import { legend } from '../../src/print/pattern/legend.ts';
import { projectorPages } from '../../src/print/pattern/projector-pages.ts';
import { sheetMap } from '../../src/print/pattern/sheet-map.ts';
import { sheetPages } from '../../src/print/pattern/sheet-pages.ts';
import { textWidth } from '../../src/print/text/text-width.ts';
import { ENGLISH_PATTERN } from '../../src/words/english-pattern.ts';
import { at, line, upright } from '../quads.ts';
import { LABELS } from './labels.ts';

/** The page before the sheets, its map and the names of its lines, by rectangles that are pieces and sheets; mm. */

const near = (x: number, y: number) => ({ x: expect.closeTo(x, 6), y: expect.closeTo(y, 6) });
const close = (own: number) => expect.closeTo(own, 6);
const texts = (marks: readonly Mark[]) => marks.filter((mark): mark is TextMark => mark.kind === 'text');
const paths = (marks: readonly Mark[]) => marks.filter((mark): mark is PathMark => mark.kind === 'path');
const ends = (own: PathMark): Point[][] =>
  own.runs.flatMap((run) => run.map((curve) => [pointAt(curve, 0), pointAt(curve, 1)]));
const corners = (own: PathMark) => ends(own).map(([from]) => from);
const boxAt = (x: number, y: number, wide: number, high: number) => [
  near(x, y),
  near(x + wide, y),
  near(x + wide, y + high),
  near(x, y + high),
];

/** Four sheets of 200 × 280: A1 and A2 beside each other, B1 and B2 below. */
const sheet = (label: string, x: number, y: number, page: number, own: object = {}) => ({
  label,
  x,
  y,
  row: y / 280,
  column: x / 200,
  width: 200,
  height: 280,
  left: 5,
  bottom: 12,
  pageHeight: 297,
  page,
  pieces: [0],
  neighbours: {},
  ...own,
});
const SHEETS = [
  sheet('A1', 0, 0, 2, { neighbours: { right: 'A2' } }),
  sheet('B1', 0, 280, 3),
  sheet('A2', 200, 0, 4),
  sheet('B2', 200, 280, 5, { pieces: [0, 1] }),
];
const placed = (cutPiece: unknown, own: object = {}) => ({
  cutPiece,
  grain: line(at(60, 100), at(60, 300)),
  ...own,
});
/** Cut lines of 240 × 330 from 70, 60, and of 90 × 100 from 290, 400. */
const SIDE = upright(240, 330, [0, 0, 0, 0], { labelAt: at(170, 230) }, [70, 60]);
const PANEL = upright(
  90,
  100,
  [0, 0, 0, 0],
  { gore: 'back', layers: ['net'], labelAt: at(335, 450) },
  [290, 400],
);
const plan = (own: object = {}) =>
  ({
    sheets: SHEETS,
    pieces: [placed(SIDE), placed(PANEL)],
    gaps: [],
    scale: { across: 1, down: 1 },
    paper: { width: 210, height: 297 },
    margins: { left: 10, right: 11, top: 12, bottom: 13 },
    frame: { left: 5, right: 5 },
    ...own,
  }) as never;

describe('the map of the sheets', () => {
  const BOX = { x: 12, y: 150, width: 32, height: 100 };
  const cells = (marks: readonly Mark[]) => paths(marks).filter(({ line: own }) => own.width === 0.1);
  const outlines = (marks: readonly Mark[]) => paths(marks).filter(({ line: own }) => own.width === 0.35);
  const named = (marks: readonly Mark[], text: string) => texts(marks).find((mark) => mark.text === text)!;

  it('every sheet and every piece in its place, to the scale that fits, never over a tenth', () => {
    // 400 in 32: eight hundredths.
    const marks = sheetMap(plan(), BOX, ENGLISH_PATTERN);
    expect(cells(marks).map(corners)).toEqual([
      boxAt(12, 150, 16, 22.4),
      boxAt(12, 172.4, 16, 22.4),
      boxAt(28, 150, 16, 22.4),
      boxAt(28, 172.4, 16, 22.4),
    ]);
    // The last line of each closes it.
    expect(outlines(marks).map((own) => corners(own).slice(0, 4))).toEqual([
      boxAt(12 + 5.6, 150 + 4.8, 19.2, 26.4),
      boxAt(12 + 23.2, 150 + 32, 7.2, 8),
    ]);
    expect(outlines(marks).every(({ closed }) => closed)).toBe(true);
    const low = sheetMap(plan(), { ...BOX, width: 300, height: 28 }, ENGLISH_PATTERN);
    expect(corners(cells(low)[3]!)[2]).toEqual(near(12 + 20, 150 + 28));
    const large = sheetMap(plan(), { ...BOX, width: 300, height: 300 }, ENGLISH_PATTERN);
    expect(corners(cells(large)[3]!)[2]).toEqual(near(12 + 40, 150 + 56));
    expect(sheetMap(plan(), { ...BOX, height: 24 }, ENGLISH_PATTERN)).toEqual([]);
    expect(sheetMap(plan({ sheets: [] }), BOX, ENGLISH_PATTERN)).toEqual([]);
  });

  it('a sheet’s label in the corner that is clear of lines, the first where several are', () => {
    const marks = sheetMap(plan(), BOX, ENGLISH_PATTERN);
    for (const [label, x, y] of [
      ['A1', 12.4, 150 + 22.4 - 0.6],
      ['B1', 12.4, 150 + 44.8 - 0.6],
    ] as const) {
      expect(named(marks, label)).toMatchObject({ at: near(x, y), size: 3 });
    }
    /** A piece that runs along the sheet’s left side and its lower one leaves the corner at the upper right. */
    const blocked = (...boxes: [number, number, number, number][]) =>
      named(
        sheetMap(
          plan({
            sheets: [sheet('A1', 0, 0, 2)],
            pieces: boxes.map(([x, y, wide, high]) =>
              placed(upright(wide, high, [0, 0, 0, 0], { labelAt: at(100, 140) }, [x, y])),
            ),
          }),
          { ...BOX, width: 20, height: 60 },
          ENGLISH_PATTERN,
        ),
        'A1',
      ).at;
    const width = textWidth('A1', 3);
    const [left, right] = [12.4, 12 + 20 - width - 0.4];
    const [low, high] = [150 + 28 - 0.6, 150 + 2.4 + 0.3];
    expect(blocked([80, 100, 30, 30])).toEqual(near(left, low));
    expect(blocked([15, 250, 20, 20])).toEqual(near(right, low));
    expect(blocked([15, 250, 170, 20])).toEqual(near(left, high));
    expect(blocked([15, 250, 170, 20], [15, 10, 20, 20])).toEqual(near(right, high));
    // On a sheet that lies, as on one that stands.
    const lying = sheetMap(
      plan({
        sheets: [sheet('A1', 0, 0, 2, { width: 280, height: 200 })],
        pieces: [
          [15, 170, 255, 20],
          [15, 10, 20, 20],
        ].map(([x, y, wide, high]) =>
          placed(upright(wide!, high!, [0, 0, 0, 0], { labelAt: at(100, 140) }, [x!, y!])),
        ),
      }),
      { ...BOX, width: 28, height: 60 },
      ENGLISH_PATTERN,
    );
    expect(named(lying, 'A1').at).toEqual(near(12 + 28 - width - 0.4, 150 + 2.7));
  });

  it('small sheets have small labels', () => {
    const one = (own: object) =>
      named(
        sheetMap(
          plan({ sheets: [sheet('A10', 0, 0, 2, own), sheet('Z', 0, 0, 3, { height: 900 })] }),
          { ...BOX, height: 90, width: 90 },
          ENGLISH_PATTERN,
        ),
        'A10',
      ).size;
    expect(one({ height: 80 })).toBeCloseTo(0.28 * 8, 6);
    expect(one({ width: 40 })).toBeCloseTo(3.2 / textWidth('A10', 1), 6);
  });

  it('a piece’s name across its middle, half-way up the row of sheets where its label stands', () => {
    const marks = sheetMap(plan(), BOX, ENGLISH_PATTERN);
    const size = Math.min(3.4, (0.55 * 240 * 0.08) / textWidth('side', 1, true));
    expect(named(marks, 'side')).toMatchObject({
      size: close(size),
      bold: true,
      at: near(12 + 170 * 0.08 - textWidth('side', size, true) / 2, 150 + 11.2),
    });
    // Its width would let it be smaller than anyone reads.
    const back = named(marks, 'back');
    expect(back.size).toBeCloseTo(Math.max(1.6, (0.55 * 90 * 0.08) / textWidth('back', 1, true)), 6);
    expect(back.at.y).toBeCloseTo(150 + 22.4 + 11.2, 6);
    // One that lies on another has its outline, and not its name again.
    const shared = sheetMap(
      plan({ pieces: [placed(SIDE), placed(PANEL, { liesOn: 0 })] }),
      BOX,
      ENGLISH_PATTERN,
    );
    expect([outlines(shared).length, named(shared, 'back')]).toEqual([2, undefined]);
    // Within the map.
    const edge = (x: number) => {
      const piece = upright(10, 10, [0, 0, 0, 0], { gore: 'side-front', labelAt: at(x, 100) }, [x - 5, 95]);
      return named(sheetMap(plan({ pieces: [placed(piece)] }), BOX, ENGLISH_PATTERN), 'side-front');
    };
    expect(edge(6).at.x).toBeCloseTo(12.6, 6);
    expect(edge(394).at.x + textWidth('side-front', 1.6, true)).toBeCloseTo(44, 6);
  });
});

describe('the names of the lines', () => {
  const words = ENGLISH_PATTERN.legend;
  const drawn = (...pieces: unknown[]) =>
    legend(plan({ pieces: pieces.map((own) => placed(own)) }), words, 80);
  const all = (...pieces: unknown[]) => drawn(...pieces).draw({ x: 100, y: 50 });
  const plain = (own: object = {}, piece: object = {}) => upright(10, 10, [0, 0, 0, 0], { ...own, piece });
  const mark = (name: string) => plain({ marks: [{ name, curves: [] }] });
  /** The samples of one entry: what is drawn at the left of its first line. */
  const sampleOf = (marks: readonly Mark[], entry: string) => {
    const first = marks.findIndex((own) => own.kind === 'text' && entry.startsWith(own.text));
    const label = marks[first] as TextMark;
    const y = label.at.y - 3 + 0.3 + 1.8;
    const before = marks.slice(0, first);
    const start = before.findLastIndex((own) => own.kind === 'text') + 1;
    return { y, label, marks: before.slice(start) as PathMark[] };
  };
  const styled = (marks: readonly Mark[], entry: string) => {
    const { y, marks: own } = sampleOf(marks, entry);
    expect(own.map((one) => ends(one))).toEqual([[[near(100, y), near(118, y)]]]);
    return own[0]!.line;
  };

  it('those of every pattern, each beside its sample, a line under a line', () => {
    const strip = drawn(plain());
    const marks = strip.draw({ x: 100, y: 50 });
    const written = texts(marks);
    expect(written.map((own) => [own.text, own.at, own.size])).toEqual([
      ['The lines', near(100, 53), 3],
      ['cut here', near(120.5, 50 + 5.46 + 2.7), 3],
      ['sew here: the seam line', near(120.5, 50 + 10.36 + 2.7), 3],
      ['lay along the straight thread', near(120.5, 50 + 15.26 + 2.7), 3],
    ]);
    expect(written[0]!.bold).toBe(true);
    expect(strip.height).toBeCloseTo(5.46 + 3 * 4.9, 6);
    expect(styled(marks, 'cut here')).toEqual({ width: 0.35 });
    expect(styled(marks, words.sew)).toEqual({ width: 0.25, dash: [5, 2.5] });
    const [grain] = sampleOf(marks, words.grain).marks;
    const y = 50 + 15.26 + 1.8;
    expect(ends(grain!)[0]).toEqual([near(100, y), near(118, y)]);
    // An open head at both ends, five long.
    expect(
      ends(grain!)
        .slice(1)
        .map((one) => one.find(({ y: own }) => Math.abs(own - y) > 1)!.x),
    ).toEqual([105, 105, 113, 113].map(close));
    // What does not go into one line runs on below it.
    const notches = texts(all(plain({ notches: [{ edge: 'a', ticks: [] }] })));
    const run = notches.filter((own) => words.notches.includes(own.text));
    expect(run.length).toBeGreaterThan(1);
    expect(run[1]!.at).toEqual(near(120.5, run[0]!.at.y + 3.9));
    for (const own of run) expect(textWidth(own.text, 3)).toBeLessThan(80 - 20.5);
  });

  it('others only where the pattern has such lines', () => {
    const has = (marks: readonly Mark[]) =>
      Object.entries(words).flatMap(([key, text]) =>
        texts(marks).some((own) => text.startsWith(own.text)) ? [key] : [],
      );
    const always = ['title', 'cut', 'sew', 'grain'];
    const beside = (...pieces: unknown[]) =>
      has(all(plain(), ...pieces)).filter((key) => !always.includes(key));
    expect(has(all(plain()))).toEqual(always);
    expect(beside(plain({}, { frontEdge: 'fold' }))).toEqual(['fold']);
    expect(beside(plain({}, { backEdge: 'fold' }))).toEqual(['fold']);
    expect(beside(plain({ notches: [{ edge: 'a', ticks: [] }] }))).toEqual(['notches']);
    expect(beside(mark('fold-line'))).toEqual(['pleatFold']);
    expect(beside(mark('placement-line'))).toEqual(['placement']);
    expect(beside(mark('dart-leg-line'))).toEqual(['dart']);
    expect(beside(mark('tuck-fold-line'))).toEqual(['tuck']);
    expect(beside(mark('bustle-pick-up'))).toEqual(['bustle']);
    expect(beside(mark('hip-line'))).toEqual(['mark']);
    expect(beside(mark('dart-leg-line'), mark('hip-line'))).toEqual(['dart', 'mark']);
    for (const own of ['pleat-arrow', 'stitched-to', 'tuck-stitch-line', 'dart-fold-line', 'bustle-anchor'])
      expect(beside(mark(own)), own).toEqual([]);
    expect(beside(plain({ stones: [{ name: 'a', runs: [] }] }))).toEqual(['stone']);
    expect(beside(plain({ stones: [] }))).toEqual([]);
  });

  it('samples as on the pieces', () => {
    const fold = all(plain({}, { frontEdge: 'fold' }));
    expect(styled(fold, words.fold)).toEqual({ width: 0.35, dash: [12, 2, 2, 2] });
    expect(styled(all(mark('fold-line')), words.pleatFold)).toEqual({ width: 0.3, dash: [9, 2] });
    expect(styled(all(mark('tuck-fold-line')), words.tuck)).toEqual({ width: 0.3, dash: [9, 2] });
    expect(styled(all(mark('hip-line')), words.mark)).toEqual({ width: 0.25, dash: [1.5, 1.5] });
    const lines = (marks: readonly Mark[], entry: string) => {
      const { y, marks: own } = sampleOf(marks, entry);
      return own.flatMap((one) =>
        ends(one).map(([from, to]) =>
          [from!.x - 100, from!.y - y, to!.x - 100, to!.y - y].map((n) => Math.round(n * 1e6) / 1e6 + 0),
        ),
      );
    };
    expect(lines(all(plain({ notches: [{ edge: 'a', ticks: [] }] })), words.notches)).toEqual([
      [0, 0, 18, 0],
      [4, 0, 4, 2],
      [12, 0, 12, 2],
      [14.5, 0, 14.5, 2],
    ]);
    expect(lines(all(mark('dart-leg-line')), words.dart)).toEqual([
      [0, -2, 18, 0],
      [0, 0, 18, 0],
      [0, 2, 18, 0],
    ]);
    expect(lines(all(mark('placement-line')), words.placement)).toEqual([
      [1, 0, 17, 0],
      [17, 0, 14.5, -1],
      [17, 0, 14.5, 1],
      [1, -2, 1, 2],
      [17, -2, 17, 2],
    ]);
    // A ring of two about 4, and a cross of four each way at 12.
    const bustle = lines(all(mark('bustle-pick-up')), words.bustle);
    expect(bustle.slice(0, 4).map((own) => own.slice(0, 2))).toEqual([
      [2, 0],
      [4, -2],
      [6, 0],
      [4, 2],
    ]);
    expect(bustle.slice(4)).toEqual([
      [10, -2, 14, 2],
      [10, 2, 14, -2],
    ]);
    const dots = lines(all(plain({ stones: [{ name: 'a', runs: [] }] })), words.stone);
    expect(dots.slice(0, 3)).toEqual([
      [1, 0, 1.8, 0],
      [4, 1, 4.8, 1],
      [7, 0, 7.8, 0],
    ]);
    expect(dots.slice(3).map((own) => own.slice(0, 2))).toEqual([
      [10, 0],
      [13, -2],
      [16, 0],
      [13, 2],
    ]);
  });
});

describe('the page before the sheets', () => {
  const text = ENGLISH_PATTERN.firstPage;
  const page = (own: object = {}, checks: object[] = [], more: object = {}) =>
    firstPage(plan(own), { ...LABELS, ...more } as never, checks as never);
  const all = (...own: Parameters<typeof page>) => texts(page(...own).marks);
  const said = (...own: Parameters<typeof page>) =>
    all(...own)
      .map((mark) => mark.text)
      .join(' ');
  const squareAt = (own: object = {}) =>
    corners(paths(page(own).marks).find(({ closed, line: one }) => closed && one.width === 0.25)!);

  it('title, test square and how to print beside it', () => {
    const marks = all();
    expect(marks[0]!.text).toBe('Lantern · LAN-07 ');
    expect(said()).toContain('Pattern on 4 sheets, pages 2 to 5. spec format 1, content 3f9a12c4');
    expect(said({}, [], { client: undefined })).toMatch(/^Lantern {2}?Pattern/);
    expect(said({}, [], { gown: 'x'.repeat(81), client: undefined })).toContain(`${'x'.repeat(80)}…`);
    // 1.872 before the title, one line of it, two below.
    const top = 12 + 1.872 + 4.68 + 2;
    expect(squareAt()).toEqual(boxAt(11, top, 100, 100));
    const heading = marks.find((mark) => mark.text === text.printing)!;
    // Its own room of 3.6 above, and two higher than the square.
    expect(heading.at).toEqual(near(10 + 102 + 5, top - 2 + 3.6 + 4));
    expect([page().width, page().height, page().title]).toEqual([210, 297, text.title]);
  });

  it('margins as the printer’s, no wider than sixteen', () => {
    expect(squareAt({ margins: { left: 40, right: 40, top: 50, bottom: 60 } })[0]).toEqual(
      near(17, 16 + 1.872 + 4.68 + 2),
    );
  });

  it('a step each for what this pattern asks for, counted', () => {
    const steps = (own: object = {}) =>
      all(own).flatMap((mark) => (/^\d$/.test(mark.text) ? [mark.text] : []));
    const flat = { sheets: [sheet('A1', 0, 0, 2)] };
    expect(steps(flat)).toEqual(['1', '2']);
    expect(steps()).toEqual(['1', '2', '3', '4']);
    expect(said(flat)).toContain('Pattern on 1 sheet, page 2.');
    const scale = { scale: { across: 1.0123, down: 0.9876 } };
    expect(said({ ...flat, ...scale })).toMatch(/drawn at 101.23 %\s+across and 98.76 %/);
    expect(steps({ ...flat, ...scale })).toEqual(['1', '2', '3']);
    expect(steps({ ...flat, scale: { across: 1, down: 1.01 } })).toEqual(['1', '2', '3']);
    expect(said({ paper: { width: 210, height: 297, longest: 3000 } })).toContain('4 lengths of the roll');
    const gap = { piece: 0, line: 'cut', from: at(0, 0), to: at(0, 0), fromCell: [0, 0], toCell: [1, 0] };
    expect(steps({ ...flat, gaps: [gap] })).toEqual(['1', '2', '3']);
  });

  it('what to measure, as long as it should be', () => {
    const checks = [
      { piece: 0, edge: 'side/back', along: 'edge', length: 331 },
      { piece: 1, edge: 'fold', along: 'edge', length: 102 },
      { piece: 1, edge: 'hem', along: 'chord', length: 93 },
    ];
    const rows = all({}, checks);
    const row = (name: string) => {
      const { at: place } = rows.find((mark) => mark.text === name)!;
      return rows.filter((mark) => Math.abs(mark.at.y - place.y) < 0.1).map((mark) => mark.text);
    };
    expect(row('side/back, waist to hem')).toEqual(['side (shell)', 'side/back, waist to hem', '33.1 cm']);
    expect(row(text.alongFold('waist'))).toEqual(['back (net)', text.alongFold('waist'), '10.2 cm']);
    expect(row(text.chord)).toEqual(['back (net)', text.chord, '9.3 cm']);
    expect(rows.find((mark) => mark.text === '33.1 cm')!.anchor).toBe('end');
    expect(said({}, checks)).toContain(text.measureTaped);
    expect(said({ sheets: [sheet('A1', 0, 0, 2)] }, checks)).toContain(text.measure);
    expect(said({ sheets: [sheet('A1', 0, 0, 2)] }, checks)).not.toContain(text.measureTaped);
    expect(said()).not.toContain(text.measureTaped);
  });

  it('map, names of lines and reminders in what room is left', () => {
    const marks = page().marks;
    const written = texts(marks);
    const names = written.find((mark) => mark.text === 'The lines')!;
    // 189 wide between the margins: 68 hundredths of it to the left of the names.
    expect(names.at.x).toBeCloseTo(10 + 0.68 * 189, 6);
    const map = paths(marks).filter(({ line: own }) => own.width === 0.1);
    expect(map).toHaveLength(4);
    const [corner] = corners(map[0]!);
    expect(corner!.x).toBeCloseTo(10, 6);
    expect(corner!.y).toBeCloseTo(names.at.y - 3 + 1, 6);
    // Names are four, 5.46 and 4.9 high; a reminder begins 1 below, with 1.872 of room.
    const lead = written.find((mark) => mark.text.startsWith(text.cautions[0]!.lead))!;
    expect(lead.at.x).toBeCloseTo(names.at.x, 6);
    expect(lead.at.y).toBeCloseTo(corner!.y + 5.46 + 3 * 4.9 + 1 + 1.872 + 3.6, 6);
    // A wide sheet of paper is not used over its whole width.
    const wide = texts(page({ paper: { width: 841, height: 594 } }).marks);
    expect(wide.find((mark) => mark.text === 'The lines')!.at.x).toBeCloseTo(10 + 0.68 * 277, 6);
  });
});

describe('the sheets', () => {
  const pattern = { pieces: [{ title: 'side' }, { title: 'back' }], whole: {} };
  const scaled = { scale: { across: 1.02, down: 0.97 } };
  const pages = (only?: string[]) => sheetPages(plan(scaled), pattern as never, LABELS, [], only);

  it('the part of each piece that lies on it, in the pattern’s scale, cut off at its frame', () => {
    const [, , , , last] = pages().pages;
    const uses = last!.marks.filter((mark) => mark.kind === 'use');
    // 280 high is 271.6 on paper; 297 less 12 and that is 13.4.
    expect(uses).toEqual(
      pattern.pieces.map((drawing) => ({
        kind: 'use',
        drawing,
        offset: near(5 - 204, 13.4 - 271.6),
        scale: { x: 1.02, y: 0.97 },
        clip: { ...near(5, 13.4), width: close(204), height: close(271.6) },
      })),
    );
    expect([last!.title, last!.width, last!.height]).toEqual(['B2', 210, 297]);
  });

  it('bookmarks: the first page, and each piece with the sheets that it lies on', () => {
    expect(
      pages()
        .pages.map(({ title }) => title)
        .slice(1),
    ).toEqual(['A1', 'B1', 'A2', 'B2']);
    expect(pages().bookmarks).toEqual([
      { title: ENGLISH_PATTERN.firstPage.title, page: 0, level: 1 },
      { title: 'side (shell)', page: 1, level: 1 },
      { title: 'A1, page 2', page: 1, level: 2 },
      { title: 'B1, page 3', page: 2, level: 2 },
      { title: 'A2, page 4', page: 3, level: 2 },
      { title: 'B2, page 5', page: 4, level: 2 },
      { title: 'back (net)', page: 4, level: 1 },
      { title: 'B2, page 5', page: 4, level: 2 },
    ]);
  });

  it('some printed again keep their page’s number', () => {
    const again = pages(['B2', 'B1']);
    expect(again.bookmarks).toEqual([
      { title: 'B1', page: 0, level: 1 },
      { title: 'B2', page: 1, level: 1 },
    ]);
    expect(texts(again.pages[1]!.marks).some((mark) => mark.text.includes('page 5 of 5'))).toBe(true);
  });
});

describe('the projector’s page', () => {
  it('every piece where it lies, switched by its cloth; the square and the caution below', () => {
    const own = plan({ pieces: [placed(SIDE), placed(PANEL, { liesOn: 0 })] });
    const drawn = projectorPages(own, LABELS, (layer) => `${layer} cloth`);
    const last = drawn[3]!;
    expect([last.width, last.height, last.title]).toEqual([
      210,
      407,
      'Lantern · spec format 1, content 3f9a12c4',
    ]);
    const [side, back, square] = last.marks as Extract<Mark, { kind: 'group' }>[];
    expect([side!.switchedBy, side!.offAtFirst]).toEqual([['side · shell cloth'], false]);
    expect([back!.switchedBy, back!.offAtFirst]).toEqual([['back · net cloth'], true]);
    // 297 less 12 and 280 is 5.
    expect((side!.marks[0] as { offset: Point }).offset).toEqual(near(5 - 200, 5 - 280));
    expect(square!.switchedBy).toEqual([ENGLISH_PATTERN.squareLayer]);
    const box = paths(square!.marks).find(({ closed }) => closed)!;
    expect(corners(box)).toEqual(boxAt(5, 297, 100, 100));
    const { lead, text } = ENGLISH_PATTERN.cutting;
    expect(
      texts(square!.marks)
        .slice(-2)
        .map((mark) => [mark.text, mark.at, mark.size]),
    ).toEqual([
      [last.title, near(115, 309), 8],
      [`${lead} ${text}`, near(115, 323), 7],
    ]);
    const two = plan({ pieces: [placed({ ...SIDE, layers: ['shell', 'net', 'tulle'] }), placed(PANEL)] });
    const switched = projectorPages(two, LABELS, (layer) => (layer === 'shell' ? 'crepe' : 'net'))[0]!
      .marks[0];
    expect((switched as Extract<Mark, { kind: 'group' }>).switchedBy).toEqual(['side · crepe', 'side · net']);
  });
});
