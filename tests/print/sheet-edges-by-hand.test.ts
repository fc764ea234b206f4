import { describe, expect, it } from 'vitest';
import type { Line, Point } from '../../src/geometry/curve.ts';
import type { Mark } from '../../src/print/drawing.ts';
import { gapNotes } from '../../src/print/pattern/gap-notes.ts';
import { joinMarks } from '../../src/print/pattern/join-marks.ts';
import { nameStrip } from '../../src/print/pattern/name-strip.ts';
import { overlayDrawing } from '../../src/print/pattern/overlay-drawing.ts';
import { textWidth } from '../../src/print/text/text-width.ts';
import { ENGLISH_PATTERN } from '../../src/words/english-pattern.ts';
import { at, line } from '../quads.ts';
import { textsOf } from './page-texts.ts';

/** What stands at the edges of a sheet, and old and new laid over each other: where, and which way it points. mm. */

const near = (x: number, y: number) => ({ x: expect.closeTo(x, 6), y: expect.closeTo(y, 6) });
const linesOf = (marks: readonly Mark[]): Line[] =>
  marks.flatMap((mark) => (mark.kind === 'path' ? (mark.runs.flat() as Line[]) : []));
const texts = (marks: readonly Mark[]) => textsOf({ x: 0, y: 0, width: 0, height: 0, marks: [...marks] });

describe('where a straight line is cut off', () => {
  const FRAME = { x: 10, y: 20, width: 190, height: 260 };
  const scale = { across: 1, down: 1 };
  const labels = { words: ENGLISH_PATTERN, length: (mm: number) => `${mm} mm` };
  const sheets = [
    { row: 0, column: 0, label: 'A1', x: 0, y: 0 },
    { row: 2, column: 0, label: 'C1', x: 0, y: 520 },
  ];
  const gap = (own: object = {}) => ({
    piece: 0,
    line: 'cut',
    from: at(100, 260),
    to: at(110, 520),
    fromCell: [0, 0],
    toCell: [2, 0],
    length: 261,
    alongGrain: 259,
    ...own,
  });
  const grain = (x: number) => ({ grain: line(at(x, 0), at(x, 900)) });
  const notes = (
    which: 0 | 1,
    gaps: object[],
    { x = 300, scaled = scale }: { x?: number; scaled?: object } = {},
  ) =>
    gapNotes(
      sheets[which] as never,
      { sheets, gaps, pieces: [grain(x)], scale: scaled } as never,
      labels as never,
      FRAME,
    );

  it('how far it runs on, to which sheet; a tick of eight along the edge that it crosses', () => {
    const here = notes(0, [gap()]);
    const [tick] = linesOf(here);
    // The frame’s lower edge: level.
    expect(tick).toEqual({ kind: 'line', from: near(106, 280), to: near(114, 280) });
    const there = notes(1, [gap()]);
    expect(linesOf(there)).toEqual([{ kind: 'line', from: near(116, 20), to: near(124, 20) }]);
    expect(texts(here).map(({ text }) => text)).toEqual(ENGLISH_PATTERN.gap.cut('261 mm', 'C1', '259 mm'));
    expect(texts(there).map(({ text }) => text)).toEqual(ENGLISH_PATTERN.gap.cut('261 mm', 'A1', '259 mm'));
    const grains = notes(0, [gap({ line: 'grain' })]);
    expect(texts(grains).map(({ text }) => text)).toEqual(ENGLISH_PATTERN.gap.grain('261 mm', 'C1'));
    // Across a side edge it stands upright.
    const side = notes(0, [gap({ from: at(190, 130) })]);
    expect(linesOf(side)).toEqual([{ kind: 'line', from: near(200, 146), to: near(200, 154) }]);
    expect(notes(0, [gap({ fromCell: [1, 0] })])).toEqual([]);
  });

  it('in the pattern’s scale, from the sheet’s own corner', () => {
    const [tick] = linesOf(notes(1, [gap()], { scaled: { across: 1.01, down: 0.99 } }));
    expect([(tick!.from.x + tick!.to.x) / 2, tick!.from.y]).toEqual([
      expect.closeTo(10 + 111.1, 6),
      expect.closeTo(20, 6),
    ]);
    const [low] = linesOf(notes(0, [gap()], { scaled: { across: 1.01, down: 0.99 } }));
    expect(low!.from.y).toBeCloseTo(20 + 257.4, 6);
  });

  it('its words stand in the white outside the piece, three from the line and from the edge, within the frame', () => {
    const boxes = (marks: readonly Mark[]) => texts(marks);
    const width = Math.max(
      ...ENGLISH_PATTERN.gap.cut('261 mm', 'C1', '259 mm').map((text) => textWidth(text, 2.7)),
    );
    // The piece lies to the right of this line: its words at the left.
    const [first, ...rest] = boxes(notes(0, [gap()]));
    expect(first!.left).toBeCloseTo(110 - 3 - width, 6);
    expect(rest.every(({ left }) => left === first!.left)).toBe(true);
    // And to the left of this: at the right.
    const [other] = boxes(notes(0, [gap()], { x: 20 }));
    expect(other!.left).toBeCloseTo(113, 6);
    // The grain’s stand at the right.
    expect(boxes(notes(0, [gap({ line: 'grain' })]))[0]!.left).toBeCloseTo(113, 6);
    // Where the line runs and where the grain does is told by both their ends.
    const sides = (from: number, to: number, grain: [number, number]) =>
      boxes(
        gapNotes(
          sheets[0] as never,
          {
            sheets,
            gaps: [gap({ from: at(from, 260), to: at(to, 520) })],
            pieces: [{ grain: line(at(grain[0], 800), at(grain[1], 900)) }],
            scale,
          } as never,
          labels as never,
          FRAME,
        ),
      )[0]!.left <
      from + 10;
    expect(sides(100, 130, [110, 130])).toBe(true);
    expect(sides(130, 100, [130, 110])).toBe(true);
    expect(sides(100, 130, [118, 100])).toBe(false);
    expect(sides(130, 100, [100, 118])).toBe(false);
    // Three more than the words and what is kept clear on both sides is room, less is not.
    const beside = (room: number) => boxes(notes(0, [gap({ from: at(width + room, 260) })]))[0]!.left;
    expect(beside(7)).toBeCloseTo(10 + 4, 6);
    expect(beside(5)).toBeCloseTo(10 + width + 5 + 3, 6);
    // On one too narrow for either side a millimetre within its frame.
    const slim = boxes(
      gapNotes(
        sheets[0] as never,
        { sheets, gaps: [gap({ from: at(5, 130) })], pieces: [grain(300)], scale } as never,
        labels as never,
        { ...FRAME, width: width + 4 },
      ),
    );
    expect(slim[0]!.left).toBeCloseTo(13, 6);
    // On a low sheet a millimetre within its frame, above and below: three lines are 10.125 high.
    const low = (y: number) =>
      boxes(
        gapNotes(
          sheets[0] as never,
          { sheets, gaps: [gap({ from: at(100, y) })], pieces: [grain(300)], scale } as never,
          labels as never,
          { ...FRAME, height: 24 },
        ),
      )[0]!.baseline;
    expect(low(13)).toBeCloseTo(21 + 2.43, 6);
    expect(low(11)).toBeCloseTo(43 - 10.125 + 2.43, 6);
    // No room at that side: the other one.
    const tight = boxes(notes(0, [gap({ from: at(8, 260), to: at(8, 520) })]));
    expect(tight[0]!.left).toBeCloseTo(10 + 8 + 3, 6);
    const right = boxes(notes(0, [gap({ from: at(182, 260), to: at(182, 520) })], { x: 20 }));
    expect(right[0]!.left).toBeCloseTo(192 - 3 - width, 6);
    // Above the lower edge, below the upper one.
    const count = rest.length + 1;
    expect(first!.baseline).toBeCloseTo(280 - 3 - count * 2.7 * 1.25 + 0.9 * 2.7, 6);
    if (rest.length > 0) expect(rest[0]!.baseline - first!.baseline).toBeCloseTo(2.7 * 1.25, 6);
    const [under] = boxes(notes(1, [gap()]));
    expect(under!.baseline).toBeCloseTo(23 + 0.9 * 2.7, 6);
    // Half-way down at a side it is told below, never over the edge.
    const [middle] = boxes(notes(0, [gap({ from: at(190, 129) })]));
    expect(middle!.baseline).toBeCloseTo(152 + 0.9 * 2.7, 6);
    expect(middle!.left).toBeCloseTo(200 - 3 - width, 6);
  });
});

describe('the lines that sheets meet on', () => {
  const FRAME = { x: 10, y: 20, width: 200, height: 300 };
  const drawn = (neighbours: object, right = 10) =>
    linesOf(joinMarks(neighbours as never, FRAME, { right } as never));

  it('a line at each side that has a neighbour, and no other', () => {
    expect(drawn({})).toEqual([]);
    const sides: [string, Point, Point][] = [
      ['left', at(10, 320), at(10, 20)],
      ['above', at(10, 20), at(210, 20)],
      ['right', at(210, 20), at(210, 320)],
      ['below', at(210, 320), at(10, 320)],
    ];
    for (const [side, from, to] of sides) {
      const [edge, ...marks] = drawn({ [side]: 'X' });
      expect(edge, side).toEqual({ kind: 'line', from, to });
      expect(marks.length, side).toBeGreaterThan(0);
      // Marks at a quarter and at three quarters, eight along the side.
      const upright = from.x === to.x;
      const along = marks.flatMap((own) => [own.from, own.to]).map(({ x, y }) => (upright ? y - 20 : x - 10));
      const length = upright ? 300 : 200;
      const quarter = along.filter((own) => own < length / 2);
      expect([Math.min(...quarter), Math.max(...quarter)]).toEqual(
        [length / 4 - 4, length / 4 + 4].map((own) => expect.closeTo(own, 6)),
      );
      const rest = along.filter((own) => own > length / 2);
      expect([Math.min(...rest), Math.max(...rest)]).toEqual(
        [(3 * length) / 4 - 4, (3 * length) / 4 + 4].map((own) => expect.closeTo(own, 6)),
      );
    }
    expect(drawn({ left: 'X', above: 'Y', right: 'Z', below: 'W' })).toHaveLength(
      ['left', 'above', 'right', 'below'].reduce((sum, side) => sum + drawn({ [side]: 'X' }).length, 0),
    );
  });

  it('half a diamond inwards, its other half on the margin at the right, and a stroke through', () => {
    const inner = drawn({ above: 'X' }).slice(1, 4);
    expect(inner).toEqual([
      { kind: 'line', from: near(60, 24), to: near(60, 20) },
      { kind: 'line', from: near(56, 20), to: near(60, 24) },
      { kind: 'line', from: near(60, 24), to: near(64, 20) },
    ]);
    const beside = drawn({ right: 'X' }).slice(1, 6);
    expect(beside).toEqual([
      { kind: 'line', from: near(206, 95), to: near(214, 95) },
      { kind: 'line', from: near(210, 91), to: near(206, 95) },
      { kind: 'line', from: near(206, 95), to: near(210, 99) },
      { kind: 'line', from: near(210, 91), to: near(214, 95) },
      { kind: 'line', from: near(214, 95), to: near(210, 99) },
    ]);
    // Into the strip below two, and no farther than the margin is wide.
    expect(drawn({ below: 'X' })[1]).toEqual({ kind: 'line', from: near(160, 316), to: near(160, 322) });
    expect(drawn({ right: 'X' }, 3)[1]).toEqual({ kind: 'line', from: near(206, 95), to: near(213, 95) });
    expect(drawn({ right: 'X' }, 3)).toHaveLength(7);
  });
});

describe('the strip below a sheet', () => {
  const labels = { gown: 'Lantern', client: 'LAN-07', trace: 'abcd1234', words: ENGLISH_PATTERN };
  const plan = {
    frame: { left: 12, width: 180, right: 8 },
    pieces: [
      { cutPiece: { gore: 'front', layers: ['shell'], piece: {} } },
      { cutPiece: { gore: 'side', layers: ['net'], piece: {} } },
    ],
  };
  const sheet = (own: object = {}) => ({
    label: 'B2',
    page: 5,
    pageHeight: 297,
    bottom: 19,
    pieces: [1],
    neighbours: {},
    ...own,
  });
  const strip = (own: object = {}, more: object = {}) =>
    nameStrip(sheet(own) as never, plan as never, { ...labels, ...more } as never, 9);

  it('its name, whose it is, which page, and what lies on it', () => {
    const [label, gown, pieces, ...none] = texts(strip());
    expect(none).toEqual([]);
    // 297 less 19 is where the frame ends.
    expect([label!.text, label!.left, label!.baseline, label!.size]).toEqual([
      'B2',
      12,
      expect.closeTo(285.8, 6),
      6,
    ]);
    expect(gown!.text).toBe(`Lantern · LAN-07 · ${ENGLISH_PATTERN.pageOf(5, 9)} · abcd1234`);
    expect(gown!.left).toBeCloseTo(12 + textWidth('B2', 6, true) + 3, 6);
    expect([gown!.baseline, pieces!.baseline]).toEqual([283, 286.4].map((own) => expect.closeTo(own, 6)));
    expect(pieces!.text).toContain('side');
    expect(pieces!.text).not.toContain('front');
    expect(texts(strip({}, { client: undefined }))[1]!.text).toMatch(/^Lantern · [^L]/);
    // Where there is no room for both, the content gives way to the gown’s name.
    const long = texts(strip({}, { gown: 'a'.repeat(60), trace: 'b'.repeat(120) }))[1]!;
    expect(long.text).not.toContain('bbb');
    expect(long.text).toContain(ENGLISH_PATTERN.pageOf(5, 9));
    expect(long.right).toBeLessThan(200.1);
  });

  it('neighbours at its right end, each behind an arrow that points there', () => {
    const marks = strip({ neighbours: { left: 'B1', right: 'B3', above: 'A2', below: 'C2' } });
    const named = texts(marks).slice(3);
    expect(named.map(({ text }) => text)).toEqual(['C2', 'A2', 'B3', 'B1']);
    expect(named[0]!.right).toBeCloseTo(200, 6);
    expect(named.map(({ baseline }) => baseline)).toEqual(Array(4).fill(expect.closeTo(278 + 6.6, 6)));
    const shafts = linesOf(marks);
    const tips = [0, 3, 6, 9].map((i) => {
      const [shaft, ...barbs] = shafts.slice(i, i + 3);
      for (const barb of barbs) expect(barb.to).toEqual(shaft!.to);
      return [shaft!.to.x - shaft!.from.x, shaft!.to.y - shaft!.from.y].map(
        (own) => Math.round(own * 1e6) / 1e6,
      );
    });
    expect(tips).toEqual(
      [
        [0, 4],
        [0, -4],
        [4, 0],
        [-4, 0],
      ].map((own) => own.map((n) => (n === 0 ? expect.closeTo(0, 6) : n))),
    );
    // Each arrow stands a millimetre before its name, and none over another.
    for (const [i, { left }] of named.entries()) {
      const xs = shafts.slice(3 * i, 3 * i + 3).flatMap(({ from, to }) => [from.x, to.x]);
      expect(Math.max(...xs)).toBeLessThan(left - 0.9);
      const next = named[i + 1];
      if (next !== undefined) expect(next.right).toBeLessThan(Math.min(...xs));
    }
    expect(
      texts(strip({ neighbours: { above: 'A2' } }))
        .slice(3)
        .map(({ text }) => text),
    ).toEqual(['A2']);
  });
});

describe('old and new laid over each other', () => {
  const box = (x: number, y: number, wide: number, high: number) =>
    [at(x, y), at(x + wide, y), at(x + wide, y + high), at(x, y + high)].map((from, i, all) =>
      line(from, all[(i + 1) % 4]!),
    );
  const overlay = (gore: string, words: string[], own: object = {}) => ({
    gore,
    layers: ['shell', 'net'],
    verdict: 're-mark',
    title: `${gore} (shell)`,
    words,
    old: { cut: [box(-100, 50, 600, 900)], sew: [box(-85, 65, 570, 870)] },
    now: { cut: [box(-90, 40, 580, 880)], sew: [box(-75, 55, 550, 850)] },
    ...own,
  });
  const groups = (marks: readonly Mark[]) => marks.flatMap((mark) => (mark.kind === 'group' ? [mark] : []));
  const drawing = overlayDrawing(
    'Old and new',
    [overlay('side', ['a', 'b']), overlay('back', ['a'])] as never,
    ENGLISH_PATTERN,
  );

  it('pieces side by side, full size, each under its title and what becomes of it', () => {
    const [side, back] = groups(drawing.marks);
    expect(side!.data).toEqual({ gore: 'side', layers: 'shell net', verdict: 're-mark' });
    const path = (group: typeof side, name: string) =>
      group!.marks.flatMap((mark) => (mark.kind === 'path' && mark.class === name ? [mark] : []))[0]!;
    const corner = (group: typeof side, name: string) => (path(group, name).runs[0]![0] as Line).from;
    // The piece’s box is from -100, 40: it begins at the margin of 25, under two lines of words.
    const top = 25 + 22 + 3 * 15 + 30;
    const head = 22 + 3 * 15 * 1.3 + 10;
    expect(corner(side, 'old cut')).toEqual(near(25, top + head + 10));
    expect(corner(side, 'new cut')).toEqual(near(35, top + head));
    expect(corner(side, 'old sew')).toEqual(near(40, top + head + 25));
    expect(corner(side, 'new sew')).toEqual(near(50, top + head + 15));
    // 600 wide, and a gap of 60; a line less of words.
    expect(corner(back, 'old cut')).toEqual(near(25 + 660, top + head - 19.5 + 10));
    expect(drawing.width).toBeCloseTo(25 + 660 + 600 + 25, 6);
    expect(drawing.height).toBeCloseTo(top + head + 910 + 25, 6);
    const told = texts(drawing.marks).map(({ text, left, baseline }) => [
      text,
      left,
      Math.round(baseline * 10) / 10,
    ]);
    expect(told).toEqual([
      ['Old and new', 25, 47],
      [ENGLISH_PATTERN.overlay, 25, 71],
      ['side (shell)', 25, top + 22],
      ['a', 25, top + 41.5],
      ['b', 25, top + 61],
      ['back (shell)', 685, top + 22],
      ['a', 685, top + 41.5],
    ]);
    expect(drawing.title).toBe('Old and new');
  });

  it('old lines dashed, cut lines closed and heavier; a narrow piece has room for its words', () => {
    const [side] = groups(drawing.marks);
    const styles = side!.marks.flatMap((mark) =>
      mark.kind === 'path'
        ? [[mark.class, mark.closed, mark.line?.dash !== undefined, mark.line?.width]]
        : [],
    );
    expect(styles).toEqual([
      ['old sew', false, true, 0.5],
      ['new sew', false, false, 0.5],
      ['old cut', true, true, 1],
      ['new cut', true, false, 1],
    ]);
    expect(
      side!.marks.flatMap((mark) => (mark.kind === 'path' ? [[mark.line?.dash, mark.line?.grey]] : [])),
    ).toEqual([
      [[9, 5], 0.45],
      [undefined, undefined],
      [[9, 5], 0.45],
      [undefined, undefined],
    ]);
    const narrow = {
      old: { cut: [box(0, 0, 60, 100)], sew: [] },
      now: { cut: [box(0, 0, 50, 90)], sew: [] },
    };
    const two = overlayDrawing(
      'T',
      [overlay('a', ['w'], narrow), overlay('b', ['w'], narrow)] as never,
      ENGLISH_PATTERN,
    );
    const [, second] = groups(two.marks);
    expect(texts([second!])[0]!.left).toBe(25 + 380 + 60);
    // A page is nine hundred wide at least, for its legend.
    expect(two.width).toBe(950);
    expect(overlayDrawing('T', [], ENGLISH_PATTERN)).toMatchObject({ width: 950 });
  });
});
