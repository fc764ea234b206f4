import { describe, expect, it } from 'vitest';
import { essentialRuns } from '../../src/sheets/essential-runs.ts';
import { hemPartners } from '../../src/sheets/hem-partners.ts';
import { groupName, keptPositions, knownPositions, placesOf } from '../../src/sheets/kept-places.ts';
import { layOutGrid } from '../../src/sheets/lay-out-grid.ts';
import { movedPiece } from '../../src/sheets/moved-piece.ts';
import { PAPERS, paperNamed } from '../../src/sheets/paper.ts';
import { roughSheets } from '../../src/sheets/rough-sheets.ts';
import { settingsIn, settingsText } from '../../src/sheets/sheet-settings.ts';
import { onEvery, shownGrain } from '../../src/sheets/shown-grain.ts';
import { everyRun, workingShape } from '../../src/sheets/working-shape.ts';
import { at, line, quad, upright } from '../quads.ts';

/** Papers, places and grain lines of pieces with four straight edges, told by hand. mm. */

const near = (value: number, places = 6) => expect.closeTo(value, places);
const point = (x: number, y: number) => ({ x: near(x), y: near(y) });
const CELL = { width: 190, height: 268 };
const NONE = [0, 0, 0, 0] as const;

describe('papers', () => {
  it.each([
    ['a4', 210, 297],
    [' A3 ', 297, 420],
    ['Letter', 215.9, 279.4],
    ['legal', 215.9, 355.6],
    ['tabloid', 279.4, 431.8],
  ])('%s: %s × %s', (name, width, height) => {
    expect(paperNamed(name)).toEqual({
      name: name.trim().toLowerCase(),
      width: near(width),
      height: near(height),
    });
  });

  it.each([
    ['roll:914', 914, 'roll-914'],
    ['roll-914mm', 914, 'roll-914'],
    ['roll:91.4cm', 914, 'roll-914'],
    ['roll:36in', 914.4, 'roll-914'],
    ['roll:280', 280, 'roll-280'],
    ['roll:2000', 2000, 'roll-2000'],
  ])('%s', (name, width, called) => {
    // ISO 32000-1: a page ends at 5.08 m; the page of instructions is 330 high.
    expect(paperNamed(name)).toEqual({ name: called, width: near(width), height: 330, longest: 4990 });
  });

  it.each(['roll:279', 'roll:2001', 'roll:9', 'roll', 'roll:914ft', 'a5', ''])('no paper: %j', (name) =>
    expect(paperNamed(name)).toBeUndefined(),
  );

  it('about as many sheets as their diagonals fit into the cut lines of the longest of each group', () => {
    // 300 − 30 by 400 − 40 and a strip of 9 for its name is 270 × 351; at 0.9 and 1.1 of it 300 and 319.09: 437.96.
    const options = {
      paper: { name: 'x', width: 300, height: 400 },
      margins: { left: 10, right: 20, top: 15, bottom: 25 },
      lap: 0,
      scale: { across: 0.9, down: 1.1 },
    };
    const pieces = [upright(100, 1000, NONE), upright(200, 1500, NONE), upright(50, 900, NONE)];
    expect(roughSheets(pieces, [[1, 0], [2]], options)).toBe(
      Math.ceil((3400 + 1900) / Math.hypot(300, 351 / 1.1)),
    );
    // Of a roll as long as its longest page: 270 by 4990 − 49.
    const roll = { ...options, paper: { ...options.paper, longest: 4990 }, scale: { across: 1, down: 1 } };
    expect(roughSheets(pieces, [[0], [1], [2]], roll)).toBe(
      Math.ceil((2200 + 3400 + 1900) / Math.hypot(270, 4941)),
    );
    expect(PAPERS).toHaveLength(5);
  });
});

describe('settings as one line of text', () => {
  const settings = {
    paper: paperNamed('a4')!,
    margins: { left: 5, right: 6, top: 7, bottom: 8 },
    lap: 9,
    scale: { across: 1.01, down: 0.99 },
  };
  const said = {
    paper: 'a4',
    margins: { left: 5, right: 6, top: 7, bottom: 8 },
    lap: 9,
    scale: { across: 1.01, down: 0.99 },
    endsOnly: false,
    layersApart: false,
  };
  const place = { piece: 'side shell', turned: 90, x: 1.5, y: -2.5 };
  it('each under its name, and back', () => {
    expect(settingsText(settings)).toBe(`sheets ${JSON.stringify(said)}`);
    expect(settingsIn(settingsText(settings))).toEqual(said);
    const more = { endsOnly: true, layersApart: true, places: [place] };
    const only = { gores: ['side'], layers: ['shell', 'net'] };
    expect(settingsIn(settingsText({ ...settings, ...more }, only))).toEqual({ ...said, ...more, ...only });
  });

  it.each([
    ['no paper', { paper: 4 }],
    ['a margin that is none', { margins: { ...said.margins, top: '7' } }],
    ['a margin that is missing', { margins: { left: 1, right: 1, top: 1 } }],
    ['a margin below nothing', { margins: { ...said.margins, left: -1 } }],
    ['a margin too wide', { margins: { ...said.margins, bottom: 61 } }],
    ['no margins', { margins: null }],
    ['a list for margins', { margins: [] }],
    ['a lap below nothing', { lap: -0.1 }],
    ['a lap too wide', { lap: 60.1 }],
    ['a scale far off', { scale: { across: 0.89, down: 1 } }],
    ['a scale far on', { scale: { across: 1, down: 1.11 } }],
    ['a word for yes', { endsOnly: 'yes' }],
    ['no word for layers', { layersApart: undefined }],
    ['a place without a name', { places: [{ ...place, piece: 1 }] }],
    ['a place nowhere', { places: [place, { ...place, x: null }] }],
    ['a place too far', { places: [{ ...place, y: 2e5 }] }],
    ['places that are no list', { places: {} }],
    ['gores that are no list', { gores: 'side' }],
    ['layers that are no names', { layers: ['shell', 1] }],
  ])('%s is none', (_, own) => {
    expect(settingsIn(`sheets ${JSON.stringify({ ...said, ...own })}`)).toBeUndefined();
  });

  it('nor is what says nothing of sheets', () => {
    for (const text of [
      '',
      'sheets',
      'sheets {',
      'sheets null',
      'sheets []',
      'other {}',
      JSON.stringify(said),
    ])
      expect(settingsIn(text)).toBeUndefined();
    const ends = {
      ...said,
      margins: { left: 0, right: 60, top: 0, bottom: 60 },
      lap: 60,
      scale: { across: 0.9, down: 1.1 },
    };
    expect(settingsIn(`sheets ${JSON.stringify(ends)}`)).toEqual(ends);
  });
});

describe('a piece as the search for its place sees it', () => {
  const shape = (
    piece: ReturnType<typeof upright>,
    turned: 0 | 90 | 180 | 270 = 0,
    ...sharing: ReturnType<typeof upright>[]
  ) => workingShape(piece, sharing, turned, everyRun);

  it('from its own corner, its rows with half of the gap of four at either side', () => {
    const own = shape(upright(100, 300, [10, 12, 14, 16], {}, [500, 700]));
    expect([own.width, own.height]).toEqual([near(128), near(324)]);
    expect(own.placement.shift).toEqual(point(-484, -690));
    expect([own.rowLeft.length, own.rowRight.length]).toEqual([66, 66]);
    // 324 is 64 rows of 5 and some; the last one begins below it.
    expect([...own.rowLeft.slice(0, 65)].map((x) => Math.round(x * 1e6) / 1e6)).toEqual(Array(65).fill(-2));
    expect([...own.rowRight.slice(0, 65)].map((x) => Math.round(x * 1e6) / 1e6)).toEqual(Array(65).fill(130));
    expect(own.lines.map((polyline) => polyline.length)).toEqual([10]);
    expect(own.allLines).toHaveLength(5);
  });

  it('a row reaches as far as what passes through it and its neighbours', () => {
    // Sides that go out by a half and by a quarter of what they go down.
    const own = shape(quad([at(50, 0), at(100, 0), at(125, 100), at(0, 100)], NONE));
    expect([own.width, own.height]).toEqual([near(125), near(100)]);
    for (const row of [3, 8, 15]) {
      expect(own.rowLeft[row]).toBeCloseTo(50 - (5 * (row + 2)) / 2 - 2, 6);
      expect(own.rowRight[row]).toBeCloseTo(100 + (5 * (row + 2)) / 4 + 2, 6);
    }
    // Upside down it grows narrower: the row above is the wider one.
    const turned = shape(quad([at(50, 0), at(100, 0), at(125, 100), at(0, 100)], NONE), 180);
    expect(turned.rowLeft[8]).toBeCloseTo((5 * 7) / 4 - 2, 6);
    expect(turned.rowRight[8]).toBeCloseTo(125 - (5 * 7) / 2 + 2, 6);
  });

  it('turned by quarters, clockwise as drawn', () => {
    const slanted = quad([at(0, 0), at(100, 0), at(100, 300), at(40, 300)], NONE);
    const sizes = ([0, 90, 180, 270] as const).map((turned) =>
      [shape(slanted, turned).width, shape(slanted, turned).height].map(Math.round),
    );
    expect(sizes).toEqual([
      [100, 300],
      [300, 100],
      [100, 300],
      [300, 100],
    ]);
    // Its upper left corner comes to lie at the upper right, then the lower right, then the lower left.
    const corner = (turned: 0 | 90 | 180 | 270) =>
      [...shape(slanted, turned).lines[0]!.slice(0, 2)].map((own) => Math.round(own) + 0);
    expect(([0, 90, 180, 270] as const).map(corner)).toEqual([
      [0, 0],
      [300, 0],
      [100, 300],
      [0, 100],
    ]);
  });

  it('a piece that lies on it adds its hem, and the room that it takes', () => {
    const longer = shape(upright(100, 300, NONE), 0, upright(100, 340, NONE));
    expect([longer.height, longer.lines.length, longer.allLines.length]).toEqual([near(340), 2, 10]);
    // Its hem alone: two points, x and y, level at its foot.
    const hem = [...longer.lines[1]!];
    expect(hem).toHaveLength(4);
    expect([hem[1], hem[3]]).toEqual([near(340), near(340)]);
    expect([Math.min(hem[0]!, hem[2]!), Math.max(hem[0]!, hem[2]!)]).toEqual([near(0), near(100)]);
  });
});

describe('where pieces lay', () => {
  const piece = (gore: string, own: object = {}) => ({
    ...upright(100, 300, NONE, { piece: own }),
    gore,
    labelAt: at(10, 20),
  });
  it('is told by what their drawn coordinates were turned and moved by', () => {
    const pieces = [piece('side'), piece('back'), piece('side')];
    const laid = (
      [turned, x, y]: readonly [0 | 90 | 180 | 270, number, number],
      own: (typeof pieces)[number],
    ) => ({
      turned,
      cutPiece: movedPiece(own, { mirror: false, angle: (turned * Math.PI) / 180, shift: at(x, y) }),
    });
    const plan = [
      laid([90, 120, 190], pieces[0]!),
      laid([180, 7, 8.1234567], pieces[1]!),
      laid([90, 120, 190], pieces[2]!),
    ];
    // A quarter clockwise (10, 20) comes to lie at (−20, 10).
    expect(plan[0]!.cutPiece.labelAt).toEqual(point(100, 200));
    expect(placesOf({ pieces: plan as never }, pieces, [[0, 2], [1]])).toEqual([
      { piece: 'side  shell shell', turned: 90, x: 120, y: 190 },
      { piece: 'back  shell', turned: 180, x: 7, y: 8.123457 },
    ]);
  });

  it('pieces that lie on one another have one name: gore, side, layers by name', () => {
    expect(
      groupName([
        { ...piece('side', { side: 'left' }), layers: ['shell', 'net'] },
        { ...piece('side'), layers: ['lining'] },
      ]),
    ).toBe('side left lining net shell');
  });

  const shapeOf = (width: number, height = 300) =>
    workingShape(upright(width, height, NONE, {}, [50, 60]), [], 0, everyRun);
  const turned = (width: number) => workingShape(upright(width, 300, NONE, {}, [50, 60]), [], 180, everyRun);

  it('each where it lay, or on sheets of its own at the right of all', () => {
    const shapes = [
      [shapeOf(100)],
      [shapeOf(100), turned(100)],
      [shapeOf(120)],
      [shapeOf(90)],
      [shapeOf(30)],
    ];
    const names = ['a', 'b', 'c', 'd', 'e'];
    const places = [
      // What is kept moves drawn coordinates, that begin at (50, 60).
      { piece: 'a', turned: 0, x: 1 - 50, y: 1 - 60 },
      { piece: 'b', turned: 180, x: 150 + 110 + 40, y: 40 + 360 },
      // Over the first one; off the sheets; of a turn that is none of its own.
      { piece: 'c', turned: 0, x: 90 - 50, y: 100 - 60 },
      { piece: 'd', turned: 0, x: 0.4 - 50, y: 1 - 60 },
      { piece: 'e', turned: 90, x: 0, y: 0 },
    ];
    const found = keptPositions(places, names, shapes, CELL).map(({ x, y, shape }) => [
      Math.round(x * 10) / 10,
      Math.round(y * 10) / 10,
      shape.turned,
    ]);
    expect(found[0]).toEqual([1, 1, 0]);
    // Half a turn takes its lower right corner (150, 360) to (−150, −360).
    expect(found[1]).toEqual([150, 40, 180]);
    // The second one ends at 250: the next sheet begins at 380, then one after 501, then after 660.
    expect(found.slice(2)).toEqual([
      [381, 1, 0],
      [571, 1, 0],
      [761, 1, 0],
    ]);
  });

  it('pieces that touch are laid again, a gap of a millimetre is enough: their rows keep four, three of them may be used', () => {
    const beside = (x: number, y = 1) =>
      keptPositions(
        [
          { piece: 'a', turned: 0, x: -49, y: -59 },
          { piece: 'b', turned: 0, x: x - 50, y: y - 60 },
        ],
        ['a', 'b'],
        [[shapeOf(100)], [shapeOf(60)]],
        CELL,
      )[1]!.x;
    expect(beside(102.1)).toBeCloseTo(102.1, 6);
    expect(beside(101.9)).toBe(191);
    expect(beside(1, 312)).toBeCloseTo(1, 6);
    expect(beside(1, 295)).toBe(191);
  });

  it('found before for the very same shapes: looked at again, and only what can be is taken', () => {
    const known = (positions: unknown, count = 2) =>
      knownPositions(
        positions,
        count,
        [0, 180],
        (i, turn) => (turn === 0 ? shapeOf([100, 60][i]!) : turned([100, 60][i]!)),
        CELL,
      )?.map(({ x, y, shape }) => [x, y, shape.turned, Math.round(shape.width)]);
    expect(
      known([
        [0, 1, 1],
        [180, 120, 5],
      ]),
    ).toEqual([
      [1, 1, 0, 100],
      [120, 5, 180, 60],
    ]);
    for (const wrong of [
      undefined,
      'text',
      [[0, 1, 1]],
      [
        [0, 1, 1],
        [180, 120, 5],
        [0, 1, 1],
      ],
      [
        [0, 1, 1],
        [90, 120, 5],
      ],
      [
        [0, 1, 1],
        [180, '120', 5],
      ],
      [
        [0, 1, 1],
        [180, 120, null],
      ],
      [[0, 1, 1], 'no place'],
      [
        [0, 1, 1],
        [180, 90, 5],
      ],
      [
        [0, 0.4, 1],
        [180, 120, 5],
      ],
      [
        [0, 1, 0.4],
        [180, 120, 5],
      ],
      [
        [0, 1, 1],
        [180, Number.NaN, 5],
      ],
      [
        [0, 1, 1],
        [180, 2e5, 5],
      ],
      // A whole row or column of sheets above or left of all that is empty.
      [
        [0, 1, 269],
        [180, 120, 275],
      ],
      [
        [0, 191, 1],
        [180, 320, 5],
      ],
    ])
      expect(known(wrong), JSON.stringify(wrong)).toBeUndefined();
  });
});

describe('pieces that differ only at the hem', () => {
  const own = (
    height: number,
    piece: object = {},
    more: object = {},
    widths: readonly [number, number, number, number] = [15, 15, 15, 15],
  ) => ({
    ...upright(200, height, widths, { piece }),
    gore: 'side',
    ...more,
  });
  const partners = (...pieces: ReturnType<typeof own>[]) => hemPartners(pieces);
  it('lie on one another, the longest first, those of one length in their order', () => {
    expect(partners(own(800), own(820), own(810), own(820))).toEqual([[1, 3, 2, 0]]);
    expect(partners(own(800), own(820, {}, {}, [15, 15, 40, 15]))).toEqual([[1, 0]]);
  });

  it.each([
    ['another gore', own(820, {}, { gore: 'back' })],
    ['another part', own(820, { part: 'facing' })],
    ['cut otherwise', own(820, { cut: 'pair' })],
    ['another side', own(820, { side: 'left' })],
    ['other names', own(820, { frontEdge: 'x' })],
    ['other names at the back', own(820, { backEdge: 'x' })],
    ['another waist allowance', own(820, {}, {}, [16, 15, 15, 15])],
    ['another allowance at the back', own(820, {}, {}, [15, 16, 15, 15])],
    ['another one in front', own(820, {}, {}, [15, 15, 15, 16])],
    ['a wider waist', { ...upright(201, 820), gore: 'side' }],
    ['a flared back', { ...quad([at(0, 0), at(200, 0), at(203, 820), at(0, 820)]), gore: 'side' }],
    ['a flared front', { ...quad([at(0, 0), at(200, 0), at(200, 820), at(-3, 820)]), gore: 'side' }],
    ['a curved waist’s depth', { ...quad([at(0, 0.1), at(200, 0), at(200, 820), at(0, 820)]), gore: 'side' }],
  ])('not with %s', (_, other) => expect(partners(own(800), other)).toEqual([[0], [1]]));

  it('where the shorter one’s last millimetre bends at its hem', () => {
    const bent = quad([at(0, 0), at(200, 0), at(200, 800), at(0, 800)]);
    const side = bent.piece.edges[1]!;
    const curves = [line(at(200, 0), at(200, 799.2)), line(at(200, 799.2), at(200.4, 800))];
    const edges = bent.piece.edges.map((edge) => (edge === side ? { ...edge, curves } : edge));
    expect(
      hemPartners(
        [{ ...bent, piece: { ...bent.piece, edges } }, own(820)].map((piece) => ({ ...piece, gore: 'side' })),
      ),
    ).toEqual([[1, 0]]);
  });
});

describe('the grain line that is drawn', () => {
  const piece = upright(400, 1000, undefined, { piece: { grain: line(at(200, 100), at(200, 900)) } });
  const shown = (
    isPrinted: (row: number, column: number) => boolean,
    cell = CELL,
    sharing: ReturnType<typeof upright>[] = [],
  ) => shownGrain(piece, sharing, cell, isPrinted);
  it('the piece’s own where it is printed', () => {
    expect(shown(() => true)).toEqual({ kind: 'line', from: point(200, 100), to: point(200, 900) });
    // Rows of 268: of its own 100 to 900 what lies on the first two is long enough, looked at every 5.
    expect(shown((row) => row < 2)).toEqual({ kind: 'line', from: point(200, 100), to: point(200, 535) });
    expect(shown((row) => row >= 2)).toEqual({ kind: 'line', from: point(200, 540), to: point(200, 900) });
  });

  it('clear of the edge of a sheet by half a millimetre, that no line stands on two', () => {
    const short = (height: number) => shown((row) => row === 0, { width: 190, height }).to.y;
    expect(short(265.6)).toBeCloseTo(265, 6);
    expect(short(265.3)).toBeCloseTo(260, 6);
    const low = shown((row) => row === 2, { width: 190, height: 299.7 });
    // From 599.4 on: 599.5 is too near, looked at every five from 15.
    expect([low.from.y % 5, low.from.y]).toEqual([expect.closeTo(0, 6), expect.closeTo(600, 6)]);
  });

  it('else one beside it that is longer, clear of the seam line by fifteen; the nearest of those', () => {
    // On the first row its own is 165 long, any other 250.
    expect(shown((row) => row === 0)).toEqual({ kind: 'line', from: point(225, 15), to: point(225, 265) });
    // Its own lies in the second column: at the left there is the whole height.
    expect(shown((_, column) => column === 0)).toEqual({
      kind: 'line',
      from: point(175, 15),
      to: point(175, 985),
    });
    expect(shown((_, column) => column === 2, { width: 150, height: 268 })).toEqual({
      kind: 'line',
      from: point(325, 15),
      to: point(325, 985),
    });
  });

  it('its own, whole, where no sheet has room for as much as can be laid straight by', () => {
    expect(shown(() => false)).toEqual(piece.piece.grain);
    // Rows of 100: what lies on the first is from 15 to 95.
    expect(shown((row) => row === 0, { width: 190, height: 100 })).toEqual(piece.piece.grain);
    expect(shown((row) => row === 0, { width: 190, height: 140 })).toEqual({
      kind: 'line',
      from: point(225, 15),
      to: point(225, 135),
    });
  });

  it('only what lies on every piece that shares it, clear of their seam lines', () => {
    const own = line(at(200, 100), at(200, 900));
    expect(onEvery(own, [])).toBe(own);
    expect(onEvery(own, [upright(400, 1000)])).toBe(own);
    expect(onEvery(own, [upright(400, 600)])).toEqual({
      kind: 'line',
      from: point(200, 100),
      to: point(200, 585),
    });
    expect(onEvery(own, [upright(400, 900, undefined, {}, [0, 200]), upright(400, 500)])).toEqual({
      kind: 'line',
      from: point(200, 215),
      to: point(200, 485),
    });
    expect(onEvery(own, [upright(400, 1000, undefined, {}, [300, 0])])).toBe(own);
    // Over a slit from the left the longer stretch, be it the upper or the lower one.
    const slit = (top: number, foot: number) => {
      const whole = upright(400, 1000);
      const ring = [at(0, 1000), at(0, foot), at(300, foot), at(300, top), at(0, top), at(0, 0)];
      const curves = ring.slice(1).map((to, i) => line(ring[i]!, to));
      const edges = whole.piece.edges.map((edge, i) => (i === 3 ? { ...edge, curves } : edge));
      return { ...whole, piece: { ...whole.piece, edges } };
    };
    expect(onEvery(own, [slit(600, 700)])).toMatchObject({ from: point(200, 100), to: point(200, 585) });
    expect(onEvery(own, [slit(200, 300)])).toMatchObject({ from: point(200, 315), to: point(200, 900) });
    // 135 long from 15 on; 135 below a wider slit, though it ends farther down.
    const whole = line(at(200, 0), at(200, 900));
    expect(onEvery(whole, [slit(165, 600)])).toMatchObject({ from: point(200, 615), to: point(200, 900) });
    expect(onEvery(whole, [slit(400, 700)])).toMatchObject({ from: point(200, 15), to: point(200, 385) });
    expect(shown(() => true, CELL, [upright(400, 600)])).toEqual({
      kind: 'line',
      from: point(200, 100),
      to: point(200, 585),
    });
  });
});

describe('the sheets of a grid that have a line on them', () => {
  // Less margins of 10 and a strip of 9 for its name an A4 sheet shows 190 by 268.
  const options = {
    paper: paperNamed('a4')!,
    margins: { left: 10, right: 10, top: 10, bottom: 10 },
    lap: 0,
    scale: { across: 1, down: 1 },
  };
  const labels = (x: number, y: number, own: object = {}) => {
    const piece = upright(100, 200, NONE, { piece: { grain: line(at(50, 20), at(50, 180)) } });
    const places = [{ piece: 'side  shell', turned: 0, x, y }];
    return layOutGrid([piece], { ...options, places, ...own }).sheets.map(({ label }) => label);
  };
  it.each([
    ['clear of its edges', 40, 30, 'A1'],
    ['within a hair of the next one', 89.8, 30, 'A1 A2'],
    ['short of it', 89.5, 30, 'A1'],
    ['a hair above the one below', 40, 67.8, 'A1 B1'],
    ['short of that', 40, 67.5, 'A1'],
    ['over both', 89.8, 67.8, 'A1 B1 A2 B2'],
  ])('a piece %s', (_, x, y, wanted) => expect(labels(x, y).join(' ')).toBe(wanted));

  it('where only ends are to be shown, sheets of straight stretches alone are left out', () => {
    const long = upright(100, 1000, NONE, { piece: { grain: line(at(50, 20), at(50, 980)) } });
    const places = [{ piece: 'side  shell', turned: 0, x: 40, y: 30 }];
    const all = layOutGrid([long], { ...options, places });
    expect(all.sheets.map(({ label }) => label)).toEqual(['A1', 'B1', 'C1', 'D1']);
    expect([all.gaps, all.rows, all.columns]).toEqual([[], 4, 1]);
    const ends = layOutGrid([long], { ...options, places, endsOnly: true });
    expect(ends.sheets.map(({ label }) => label)).toEqual(['A1', 'D1']);
    // Both sides and the grain line, over the two sheets between.
    expect(ends.gaps.map(({ line: own, length }) => [own, Math.round(length)])).toEqual([
      ['cut', 536],
      ['cut', 536],
      ['grain', 536],
    ]);
  });
});

describe('what paper must show of a piece', () => {
  it('the cut line first, then seam lines, notches and marks', () => {
    const tick = line(at(-15, 50), at(-10, 50));
    const mark = [line(at(1, 1), at(2, 2)), line(at(2, 2), at(3, 1))];
    const piece = {
      ...upright(100, 100),
      notches: [{ edge: 'front/side', distance: 50, ticks: [tick, line(at(0, 0), at(1, 0))] }],
      marks: [{ name: 'fold-line', curves: mark }],
    };
    const { cut, all } = essentialRuns(piece);
    // Sides of 130 are longer than two ends of 60; seam lines of 100 are not.
    expect(cut.map((run) => run.length)).toEqual([1, 1, 1, 1, 1, 1]);
    expect(all.slice(0, 6)).toEqual(cut);
    expect(all.slice(6, 10).flat()).toEqual(piece.piece.edges.flatMap(({ curves }) => curves));
    expect(all.slice(10)).toEqual([[tick], [line(at(0, 0), at(1, 0))], mark]);
    const ends = cut
      .flat()
      .map((curve) =>
        curve.kind === 'line' ? [curve.from.x, curve.from.y, curve.to.x, curve.to.y].map(Math.round) : [],
      );
    expect(ends.slice(1, 3)).toEqual([
      [115, -15, 115, 45],
      [115, 55, 115, 115],
    ]);
  });
});
