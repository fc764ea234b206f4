import { describe, expect, it } from 'vitest';
import { sheetLabel } from '../../src/sheets/grid-sheets.ts';
import { improveNest } from '../../src/sheets/improve-nest.ts';
import { inCorner, type Nest, nestOnGrid, type Position } from '../../src/sheets/nest-on-grid.ts';
import { fitsRoll, nestOnRoll } from '../../src/sheets/nest-on-roll.ts';
import { everyRun, type WorkingShape, workingShape } from '../../src/sheets/working-shape.ts';
import { upright } from '../quads.ts';

/** Rectangles laid on sheets of 100 by 100 and on a roll: how few sheets they can take is counted by hand. mm. */

const CELL = { width: 100, height: 100 };
type Size = readonly [width: number, height: number];
const shape = ([width, height]: Size, turned: WorkingShape['turned'] = 0) =>
  workingShape(upright(width, height, [0, 0, 0, 0]), [], turned, everyRun);
const shapes = (size: Size) => ([0, 180, 90, 270] as const).map((turned) => shape(size, turned));

/** Sheets that a rectangle's outline lies on, by its own place: every one that any of its four sides passes. */
function sheetsOf({ shape: { width, height }, x, y }: Position): string[] {
  const along = (from: number, to: number) =>
    Array.from(
      { length: Math.floor(to / 100) - Math.floor(from / 100) + 1 },
      (_, i) => Math.floor(from / 100) + i,
    );
  const [columns, rows] = [along(x, x + width), along(y, y + height)];
  const edge = (list: number[]) => [list[0]!, list.at(-1)!];
  return [
    ...columns.flatMap((column) => edge(rows).map((row) => `${row} ${column}`)),
    ...rows.flatMap((row) => edge(columns).map((column) => `${row} ${column}`)),
  ];
}

/** Clear of each other by the shears' four, of the grid's corner and of every edge of a sheet; counted afresh. */
function sound({ positions, sheets }: Nest): number {
  for (const [i, a] of positions.entries()) {
    expect(Math.min(a.x, a.y)).toBeGreaterThan(0.3);
    for (const b of positions.slice(i + 1)) {
      const gap = (from: number, size: number, other: number, otherSize: number) =>
        Math.max(other - from - size, from - other - otherSize);
      const apart = Math.max(
        gap(a.x, a.shape.width, b.x, b.shape.width),
        gap(a.y, a.shape.height, b.y, b.shape.height),
      );
      expect(apart).toBeGreaterThanOrEqual(4 - 1e-9);
    }
  }
  const used = new Set(positions.flatMap(sheetsOf));
  expect(sheets).toBe(used.size);
  const places = [...used].map((place) => place.split(' ').map(Number));
  expect([0, 1].map((axis) => Math.min(...places.map((place) => place[axis]!)))).toEqual([0, 0]);
  return sheets;
}

describe('pieces on a grid of sheets', () => {
  it.each<[string, Size[], number]>([
    ['one', [[90, 90]], 1],
    ['one as wide as a sheet', [[98, 40]], 1],
    // Its outline alone: the middle of three by three is empty.
    ['one of three by three', [[280, 280]], 8],
    [
      'four on one',
      [
        [42, 42],
        [42, 42],
        [42, 42],
        [42, 42],
      ],
      1,
    ],
    [
      'two of different height on one',
      [
        [30, 90],
        [50, 20],
      ],
      1,
    ],
    [
      'two that do not lie side by side on one',
      [
        [60, 90],
        [60, 90],
      ],
      2,
    ],
    [
      'wide ones one below the other',
      [
        [90, 40],
        [90, 40],
        [90, 40],
        [90, 40],
      ],
      2,
    ],
    [
      'long ones',
      [
        [40, 190],
        [40, 190],
      ],
      2,
    ],
    // Laid across: two long ones on two sheets, head to tail.
    // A large one has no line in its middle, and a small one lies on its sheets beside it.
    // Turned alike they share the two sheets that each needs.
    [
      'lying ones',
      [
        [190, 40],
        [40, 190],
      ],
      2,
    ],
    // A large one leaves the right of its sheets free.
    [
      'a small one beside a large one',
      [
        [160, 160],
        [30, 150],
      ],
      4,
    ],
    ['as many as orders', Array.from({ length: 12 }, () => [44, 44] as const), 3],
  ])('%s', (_, sizes, fewest) => {
    expect(sound(nestOnGrid(sizes.map(shapes), CELL))).toBe(fewest);
  });

  it('as drawn where that needs no more sheets than turned', () => {
    const { positions } = nestOnGrid([shapes([90, 90])], CELL);
    expect(positions[0]!.shape.turned).toBe(0);
  });

  it('on sheets that are not square, across and down apart', () => {
    const wide = nestOnGrid([shapes([180, 40]), shapes([180, 40])], { width: 200, height: 100 });
    expect(wide.sheets).toBe(1);
    const high = nestOnGrid([shapes([180, 40]), shapes([180, 40])], { width: 100, height: 200 });
    expect(high.sheets).toBe(1);
  });

  it('moved by whole sheets until the first row and the first column have a line', () => {
    const moved = inCorner(
      [
        { shape: shape([30, 30]), x: 510, y: 350 },
        { shape: shape([30, 30]), x: 705, y: 210 },
      ],
      CELL,
    );
    expect(moved.positions.map(({ x, y }) => [x, y])).toEqual([
      [10, 150],
      [205, 10],
    ]);
    expect(moved.sheets).toBe(2);
    const even = inCorner([{ shape: shape([30, 30]), x: 310, y: -190 }], CELL);
    expect(even.positions.map(({ x, y }) => [x, y])).toEqual([[10, 10]]);
    // Sheets that are not square, by their own height.
    const low = inCorner([{ shape: shape([30, 30]), x: 310, y: 190 }], { width: 100, height: 60 });
    expect(low.positions.map(({ x, y }) => [x, y])).toEqual([[10, 10]]);
  });
});

describe('pieces taken up and laid again', () => {
  const nest = (places: readonly (readonly [Size, number, number])[]): Nest =>
    inCorner(
      places.map(([size, x, y]) => ({ shape: shape(size), x, y })),
      CELL,
    );
  const improved = (places: readonly (readonly [Size, number, number])[], placings = 20) =>
    improveNest(
      nest(places),
      places.map(([size]) => shapes(size)),
      CELL,
      placings,
    );

  it.each<[string, [Size, number, number][], number, number]>([
    [
      'into the room between two others',
      [
        [[30, 80], 1, 1],
        [[30, 80], 66, 1],
        [[20, 80], 301, 1],
      ],
      2,
      1,
    ],
    [
      'below another',
      [
        [[80, 40], 1, 1],
        [[80, 40], 301, 1],
      ],
      2,
      1,
    ],
    [
      'turned',
      [
        [[30, 80], 1, 1],
        [[80, 30], 301, 201],
      ],
      2,
      1,
    ],
    [
      'three',
      [
        [[30, 30], 1, 1],
        [[30, 30], 201, 1],
        [[30, 30], 401, 101],
      ],
      3,
      1,
    ],
    [
      'onto a large one’s sheets, or that onto its',
      [
        [[160, 60], 1, 1],
        [[80, 30], 301, 1],
      ],
      3,
      2,
    ],
    // Across four sheets for no need: one alone is put straight.
    ['off the edges of sheets', [[[80, 80], 61, 61]], 4, 1],
    [
      'none has room elsewhere',
      [
        [[90, 90], 1, 1],
        [[90, 90], 101, 1],
      ],
      2,
      2,
    ],
  ])('%s', (_, places, before, after) => {
    expect(nest(places).sheets).toBe(before);
    expect(sound(improved(places))).toBe(after);
  });

  it('as often as it may, those that have most sheets for themselves first; else it is left as it was', () => {
    const places: [Size, number, number][] = [
      [[30, 30], 1, 5],
      [[30, 30], 301, 5],
      [[90, 30], 451, 5],
    ];
    // The last lies on two sheets of its own.
    expect(nest(places).sheets).toBe(4);
    expect(sound(improved(places, 1))).toBe(2);
    // The first shares its sheet by now, and stays.
    expect(sound(improved(places, 2))).toBe(2);
    expect(sound(improved(places, 3))).toBe(1);
    const old = nest(places);
    expect(
      improveNest(
        old,
        places.map(([size]) => shapes(size)),
        CELL,
        0,
      ),
    ).toBe(old);
    const best = nest([[[90, 90], 1, 1]]);
    expect(improveNest(best, [shapes([90, 90])], CELL, 5)).toBe(best);
  });
});

describe('pieces on a roll', () => {
  // A row is 5 high, a gap four, the first place 3 along: half of a gap past the clear millimetre.
  const roll = (sizes: readonly Size[], width: number, longest: number) =>
    nestOnRoll(
      sizes.map((size) => [shape(size), shape(size, 90)]),
      width,
      longest,
    );
  const apart = (found: ReturnType<typeof roll>) => {
    for (const [i, a] of found.positions.entries())
      for (const b of found.positions.slice(i + 1)) {
        if (a.length !== b.length) continue;
        const across = Math.max(b.y - a.y - a.shape.height, a.y - b.y - b.shape.height);
        const down = Math.max(b.x - a.x - a.shape.width, a.x - b.x - b.shape.width);
        expect(Math.max(across, down)).toBeGreaterThanOrEqual(4 - 1e-9);
      }
    return found.used.map((own) => Math.round(own * 1e6) / 1e6);
  };

  it('side by side where the roll is wide enough, else one after the other, each in the turn that ends soonest', () => {
    expect(
      apart(
        roll(
          [
            [60, 95],
            [60, 95],
          ],
          210,
          1000,
        ),
      ),
    ).toEqual([64]);
    // 60 and 60, each with its gap.
    expect(
      apart(
        roll(
          [
            [60, 95],
            [60, 95],
          ],
          110,
          1000,
        ),
      ),
    ).toEqual([128]);
    expect(apart(roll([[200, 60]], 230, 1000))).toEqual([64]);
    expect(apart(roll([[200, 60]], 130, 1000))).toEqual([204]);
  });

  it('on further lengths where one is full; each ends clear of its last piece', () => {
    const found = roll(
      [
        [60, 95],
        [60, 95],
        [50, 95],
      ],
      110,
      150,
    );
    expect(apart(found)).toEqual([expect.any(Number), expect.any(Number)]);
    // Two of the three share a length: 60 and 50, or 60 and 60.
    expect(found.used.reduce((sum, own) => sum + own, 0)).toBeLessThanOrEqual(64 + 128);
    for (const [length, used] of found.used.entries()) {
      const ends = found.positions
        .filter((own) => own.length === length)
        .map(({ x, shape: own }) => x + own.width);
      expect(used).toBeCloseTo(Math.max(...ends) + 1, 9);
      expect(used).toBeLessThanOrEqual(150);
    }
    for (const { x, y } of found.positions) expect(Math.min(x, y)).toBeGreaterThan(0);
  });

  it('fits where two rows are left across and a millimetre at either end', () => {
    const fits = (size: Size, width: number, longest: number) => fitsRoll(shape(size), width, longest);
    expect([fits([300, 100], 110, 302), fits([300, 100], 109.9, 302), fits([300, 100], 110, 301.9)]).toEqual([
      true,
      false,
      false,
    ]);
  });
});

describe('what a sheet is called', () => {
  it.each([
    [0, 0, 'A1'],
    [25, 11, 'Z12'],
    [26, 0, 'AA1'],
    [27, 0, 'AB1'],
    [51, 0, 'AZ1'],
    [52, 0, 'BA1'],
    [701, 0, 'ZZ1'],
    [702, 0, 'AAA1'],
  ])('row %i, column %i: %s', (row, column, label) => expect(sheetLabel(row, column)).toBe(label));
});
