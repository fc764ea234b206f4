import { describe, expect, it } from 'vitest';
import { pointAt } from '../../src/geometry/evaluate.ts';
import { testSquare } from '../../src/print/pattern/test-square.ts';
import { settingsIn, settingsText } from '../../src/sheets/sheet-settings.ts';
import { ENGLISH_PATTERN } from '../../src/words/english-pattern.ts';

/** The test square of a printer that draws 1 % too small across and 2 % too large down, mm. */
const SCALE = { across: 1.01, down: 0.98 };

describe('the test square, corrected for the printer', () => {
  const { height, draw } = testSquare(SCALE, ENGLISH_PATTERN.square);
  const marks = draw({ x: 20, y: 30 });
  const lines = marks.flatMap((mark) => (mark.kind === 'path' && !mark.closed ? [mark.runs[0]![0]!] : []));
  const ends = lines.map((line) => [pointAt(line, 0), pointAt(line, 1)] as const);
  const box = marks.find((mark) => mark.kind === 'path' && mark.closed)!;
  const corners = box.kind === 'path' ? box.runs[0]!.map((line) => pointAt(line, 0)) : [];
  const near = (value: number) => expect.closeTo(value, 9);

  it('is drawn 101 across and 98 down, that it may come out as 100', () => {
    expect(corners).toEqual([
      { x: 20, y: 30 },
      { x: near(121), y: 30 },
      { x: near(121), y: near(128) },
      { x: 20, y: near(128) },
    ]);
    expect(height).toBe(98);
  });

  it('a tick each centimetre along the lower and the left side, the fifth longer', () => {
    const below = ends.filter(([a, b]) => a.x === b.x && Math.abs(a.y - 128) < 1e-9);
    expect(below.map(([a]) => a.x)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9].map((cm) => near(20 + 10.1 * cm)));
    expect(below.map(([a, b]) => a.y - b.y)).toEqual(
      [3, 3, 3, 3, 5, 3, 3, 3, 3].map((long) => near(0.98 * long)),
    );
    const beside = ends.filter(([a, b]) => a.y === b.y && a.x === 20);
    expect(beside.map(([a]) => a.y)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9].map((cm) => near(30 + 9.8 * cm)));
    expect(beside.map(([a, b]) => b.x - a.x)).toEqual(
      [3, 3, 3, 3, 5, 3, 3, 3, 3].map((long) => near(1.01 * long)),
    );
  });

  it('inches along the upper and the right side, named', () => {
    const above = ends.filter(([a, b]) => a.x === b.x && a.y === 30);
    expect(above.map(([a]) => a.x)).toEqual([1, 2, 3].map((inch) => near(20 + 25.4 * inch * 1.01)));
    const right = ends.filter(([a, b]) => a.y === b.y && Math.abs(a.x - 121) < 1e-9);
    expect(right.map(([a]) => a.y)).toEqual([1, 2, 3].map((inch) => near(30 + 25.4 * inch * 0.98)));
    const names = marks.flatMap((mark) => (mark.kind === 'text' && / in$/.test(mark.text) ? [mark] : []));
    expect(names.map(({ text, at }) => [text, at.x])).toEqual(
      [1, 2, 3].map((inch) => [`${inch} in`, near(20 + 25.4 * inch * 1.01)]),
    );
    const middle = marks.flatMap((mark) =>
      mark.kind === 'text' && mark.text.startsWith('100.0') ? [mark.at.x] : [],
    );
    expect(middle).toEqual([near(70.5), near(70.5)]);
  });
});

describe('settings that a pattern’s file keeps', () => {
  const options = {
    paper: { name: 'a4', width: 210, height: 297 },
    margins: { left: 11, right: 12, top: 13, bottom: 14 },
    lap: 6,
    scale: SCALE,
  };

  it('are read back as they were', () => {
    const places = [{ piece: 'front shell', turned: 90, x: 1.5, y: -2.25 }];
    const text = settingsText({ ...options, endsOnly: true, layersApart: true, places } as never, {
      layers: ['shell'],
    });
    expect(settingsIn(text)).toEqual({
      paper: 'a4',
      margins: { left: 11, right: 12, top: 13, bottom: 14 },
      lap: 6,
      scale: { across: 1.01, down: 0.98 },
      endsOnly: true,
      layersApart: true,
      places,
      layers: ['shell'],
    });
    expect(settingsIn(settingsText(options as never))).toMatchObject({ endsOnly: false, layersApart: false });
  });
});
