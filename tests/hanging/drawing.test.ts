import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Point } from '../../src/geometry/curve.ts';
import type { DepthMap } from '../../src/hanging/depth-map.ts';
import { fairedSurface } from '../../src/hanging/faired-surface.ts';
import { foldStrokes } from '../../src/hanging/fold-strokes.ts';
import { gatherLines } from '../../src/hanging/gather-lines.ts';
import { type Hang, hangOf } from '../../src/hanging/hang.ts';
import { hangCloth } from '../../src/hanging/hang-cloth.ts';
import { hangTask } from '../../src/hanging/hang-task.ts';
import { AROUND } from '../../src/hanging/hung-gown.ts';
import { hungParts } from '../../src/hanging/hung-parts.ts';
import { metLine } from '../../src/hanging/met-lines.ts';
import { withoutSlivers } from '../../src/hanging/slivers.ts';
import { strapToDraw } from '../../src/hanging/strap-to-draw.ts';
import { tracedOutline } from '../../src/hanging/traced-outline.ts';
import { type GownView, gownViews } from '../../src/hanging/views.ts';
import { draft } from '../../src/pipeline.ts';

const ROOT = join(import.meta.dirname, '../..');
/** Not settled to the last, which is enough to ask how lines are drawn. */
const SOON = [
  { stride: 2, steps: 200, fall: 0.2, keeps: 0.97 },
  { stride: 1, steps: 50, fall: 0.02, keeps: 0.95 },
];

function looked(file: string): { hang: Hang; cloth: Float64Array[]; views: GownView[] } {
  const { gown } = draft({ name: file, text: readFileSync(join(ROOT, file), 'utf8') });
  const task = hangTask(gown!);
  const { sewn } = task;
  const hang = hangOf(sewn, hangCloth(sewn.cloth, { body: sewn.body, ...AROUND }, SOON));
  const parts = hungParts(task.parts, hang, AROUND).flatMap(({ drawn }) => drawn);
  const above = [...task.above, ...parts];
  const cloth = [hang.place, ...above.map(({ surface }) => surface.place)];
  return { hang, cloth, views: gownViews(hang, ['front', 'side', 'back', 'above'], task.extras, above) };
}

const apart = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);

function offLine(point: Point, line: readonly Point[]): number {
  return Math.min(
    ...line.slice(1).map((to, i) => {
      const from = line[i]!;
      const [x, y] = [to.x - from.x, to.y - from.y];
      const along = ((point.x - from.x) * x + (point.y - from.y) * y) / (x * x + y * y);
      const part = Math.min(1, Math.max(0, along));
      return apart(point, { x: from.x + x * part, y: from.y + y * part });
    }),
  );
}

const lengthOf = (line: readonly Point[]): number =>
  line.slice(1).reduce((sum, point, i) => sum + apart(line[i]!, point), 0);

// Folds from 9 cm on; where a flounce is gathered strokes from 2 cm.
describe.each([
  ['templates/godets.yaml', 90],
  ['templates/circular-flounce.yaml', 20],
])('as a hand draws it: %s', (file, least) => {
  const { hang, cloth, views } = looked(file);

  it('no line is a speck, and a short fold begins at a hem, a seam round or an outline', () => {
    for (const { outlines, edges, parts, seams, opening, folds } of views) {
      for (const line of [...edges, ...parts, ...seams, ...opening])
        expect(lengthOf(line)).toBeGreaterThan(39);
      const ends = [...outlines, ...edges, ...parts, ...seams];
      for (const fold of folds) {
        expect(lengthOf(fold)).toBeGreaterThan(0.97 * least);
        if (lengthOf(fold) > 259) continue;
        const off = [fold[0]!, fold[fold.length - 1]!].map((end) =>
          Math.min(...ends.map((line) => offLine(end, line))),
        );
        expect(Math.min(...off)).toBeLessThan(3);
      }
    }
  });

  it('a fold turns no sharp corner', () => {
    for (const { folds } of views) {
      for (const fold of folds) {
        for (const [i, at] of fold.entries()) {
          const [before, after] = [fold[i - 1], fold[i + 1]];
          if (before === undefined || after === undefined) continue;
          const dot = (at.x - before.x) * (after.x - at.x) + (at.y - before.y) * (after.y - at.y);
          expect(dot / (apart(before, at) * apart(at, after))).toBeGreaterThan(0.5);
        }
      }
    }
  });

  it('the waist from above is one whole line, and nothing of the floor is seen through it', () => {
    const { outlines, edges } = views.find(({ side }) => side === 'above')!;
    const top = Array.from({ length: hang.columns }, (_, column) => {
      const i = 3 * column * hang.rows;
      return { x: -hang.place[i]!, y: hang.place[i + 1]! };
    });
    for (const place of top) {
      expect(Math.min(...edges.map((edge) => offLine(place, edge)))).toBeLessThan(4);
      expect(Math.min(...outlines.map((line) => offLine(place, line)))).toBeGreaterThan(3);
    }
  });

  it('what is drawn of a seam is not behind other cloth: dense rays through every triangle', () => {
    const front = views.find(({ side }) => side === 'front')!;
    const drawn = front.seams;
    const places = hang.seams.flatMap(({ column, onFold }) =>
      onFold === true
        ? []
        : Array.from({ length: hang.rows }, (_, row) => {
            const i = 3 * (column * hang.rows + row);
            return { x: hang.place[i]!, y: -hang.place[i + 2]!, near: -hang.place[i + 1]! };
          }),
    );
    const deep = places.map((place) => nearestCloth(hang, place) - place.near);
    let hidden = 0;
    for (const [k, place] of places.entries()) {
      if (deep[k]! < 60) continue;
      // Where a seam that is seen passes before a hidden one there is a line all the same.
      if (places.some((other, i) => deep[i]! < 60 && apart(other, place) < 60)) continue;
      hidden++;
      const off = drawn.map((line) => offLine(place, line));
      expect(Math.min(...off)).toBeGreaterThan(2);
    }
    expect(hidden).toBeGreaterThan(5);
  });

  it('smoothed, the drawing is as wide and as high as the cloth', () => {
    for (const { side, outlines } of views.slice(0, 3)) {
      const sign = side === 'back' ? -1 : 1;
      const across = cloth.flatMap((place) =>
        Array.from(
          place.filter((_, i) => i % 3 === (side === 'side' ? 1 : 0)),
          (own) => sign * own,
        ),
      );
      const xs = outlines.flat().map(({ x }) => x);
      expect(Math.abs(Math.max(...xs) - Math.max(...across))).toBeLessThan(17);
      expect(Math.abs(Math.min(...xs) - Math.min(...across))).toBeLessThan(17);
    }
  });
});

/** Of the cloth straight before or behind a place as it is seen from the front, how near the eye the nearest is. */
function nearestCloth({ place, columns, rows }: Hang, { x, y }: Point): number {
  let nearest = Number.NEGATIVE_INFINITY;
  const at = (column: number, row: number): [number, number, number] => {
    const i = 3 * ((column % columns) * rows + row);
    return [place[i]!, -place[i + 2]!, -place[i + 1]!];
  };
  for (let column = 0; column < columns; column++) {
    for (let row = 0; row + 1 < rows; row++) {
      const [a, b, c, d] = [
        at(column, row),
        at(column + 1, row),
        at(column + 1, row + 1),
        at(column, row + 1),
      ];
      for (const [p, q, r] of [
        [a, b, c],
        [a, c, d],
      ] as const) {
        const whole = (q[0] - p[0]) * (r[1] - p[1]) - (r[0] - p[0]) * (q[1] - p[1]);
        const u = ((x - p[0]) * (r[1] - p[1]) - (r[0] - p[0]) * (y - p[1])) / whole;
        const v = ((q[0] - p[0]) * (y - p[1]) - (x - p[0]) * (q[1] - p[1])) / whole;
        if (u >= 0 && v >= 0 && u + v <= 1)
          nearest = Math.max(nearest, p[2] + u * (q[2] - p[2]) + v * (r[2] - p[2]));
      }
    }
  }
  return nearest;
}

describe('a hole that is seen through', () => {
  const cells = (hole: (x: number, y: number) => boolean): DepthMap => {
    const [width, height] = [80, 60];
    const depth = new Float32Array(width * height).map((_, i) => {
      const [x, y] = [i % width, Math.floor(i / width)];
      const inside = x > 4 && y > 4 && x < width - 5 && y < height - 5;
      return inside && !hole(x, y) ? 0 : Number.NEGATIVE_INFINITY;
    });
    return { left: 0, top: 0, cell: 3, width, height, depth, owner: new Uint8Array(width * height) };
  };
  const empty = ({ depth }: DepthMap): number =>
    depth.filter((own) => own === Number.NEGATIVE_INFINITY).length;
  const solid = empty(cells(() => false));

  it('is drawn round where it is wide, and filled where it is a sliver or a speck', () => {
    const wide = cells((x, y) => x > 20 && x < 60 && y > 20 && y < 40);
    const kept = withoutSlivers(wide, tracedOutline(wide));
    expect(kept.loops).toHaveLength(2);
    expect(empty(kept.map)).toBe(solid + 39 * 19);
    // 9 mm high and 40 cells long; and a hole of one cell.
    const sliver = cells((x, y) => (x > 20 && x < 61 && y > 20 && y < 24) || (x === 10 && y === 10));
    const filled = withoutSlivers(sliver, tracedOutline(sliver));
    expect(filled.loops).toHaveLength(1);
    expect(empty(filled.map)).toBe(solid);
    expect(empty(sliver)).toBe(solid + 40 * 3 + 1);
  });
});

describe('lines by themselves', () => {
  it('where two folds cross the shorter one ends at the longer', () => {
    const across = (from: Point, to: Point): Point[] =>
      Array.from({ length: 41 }, (_, k) => ({
        x: from.x + ((to.x - from.x) * k) / 40,
        y: from.y + ((to.y - from.y) * k) / 40,
      }));
    const long = across({ x: 0, y: 0 }, { x: 600, y: 0 });
    const short = across({ x: 300, y: -290 }, { x: 300, y: 60 });
    const folds = foldStrokes([{ lines: [short, long], least: 90 }], [], []);
    expect(folds).toHaveLength(2);
    expect(Math.max(...folds[1]!.map(({ y }) => y))).toBeCloseTo(0, 6);
  });

  const hem = [
    { x: 0, y: 100 },
    { x: 200, y: 100 },
  ];

  it('a seam that points at the hem from 30 mm ends on it; one that stands on it or points away stays', () => {
    const seam = [
      { x: 50, y: 0 },
      { x: 50, y: 70 },
    ];
    expect(metLine(seam, [hem], 40)).toEqual({
      line: [...seam, { x: 50, y: 100 }],
      startMeets: false,
      endMeets: true,
    });
    const onIt = [seam[0]!, { x: 50, y: 99 }];
    expect(metLine(onIt, [hem], 40)).toEqual({ line: onIt, startMeets: false, endMeets: true });
    expect(metLine([seam[1]!, seam[0]!], [hem], 20).line).toHaveLength(2);
  });

  it('a fold that is lost to sight for 60 mm is one stroke, without the hook at its end', () => {
    const down = (from: number, to: number): Point[] =>
      Array.from({ length: (to - from) / 5 + 1 }, (_, k) => ({ x: 50, y: from + 5 * k }));
    const hook = Array.from({ length: 5 }, (_, k) => ({ x: 50 + 5 * k, y: -400 + 5 * k }));
    const lines = [[...hook.slice(1).reverse(), ...down(-400, -200)], down(-140, 60)];
    const folds = foldStrokes([{ lines, least: 90 }], [], [hem]);
    expect(folds).toHaveLength(1);
    for (const { x } of folds[0]!) expect(x).toBeCloseTo(50, 6);
    expect(Math.max(...folds[0]!.map(({ y }) => y))).toBeCloseTo(100, 6);
    expect(Math.min(...folds[0]!.map(({ y }) => y))).toBeLessThan(-380);
  });
});

it.each([
  [2, 0],
  [4, 0.5 * 1.36],
  [8, (1 - 0.5 * (1 - Math.SQRT1_2)) * (1 + 0.36 * (1 - Math.SQRT1_2))],
])(
  'of waves over %i places in a tube %f are left (discrete Fourier), and it keeps its radius and its sewn edge',
  (over, left) => {
    const [columns, rows, radius, high] = [400, 7, 400, 10];
    const outAt = (column: number): number => high * Math.cos((2 * Math.PI * column) / over);
    const place = Float64Array.from(
      Array.from({ length: columns * rows }, (_, i) => {
        const [column, row] = [Math.floor(i / rows), i % rows];
        const [turn, out] = [(2 * Math.PI * column) / columns, radius + outAt(column)];
        return [out * Math.cos(turn), out * Math.sin(turn), 1000 - 50 * row];
      }).flat(),
    );
    const faired = fairedSurface({ columns, rows, place, closed: true });
    for (let i = 0; i < columns * rows; i++) {
      const out = Math.hypot(faired.place[3 * i]!, faired.place[3 * i + 1]!);
      // Next to the edge, which stays as it is, it is between the two.
      if (i % rows === 1 || i % rows === 2) continue;
      const share = i % rows === 0 ? 1 : left;
      expect(Math.abs(out - radius - share * outAt(Math.floor(i / rows)))).toBeLessThan(0.1);
      expect(faired.place[3 * i + 2]).toBeCloseTo(1000 - 50 * (i % rows), 9);
    }
  },
);

it('a strap is as wide as it is, begins and ends where it is sewn, and is seen from her side', () => {
  const wearer = { waistHeight: 1050, heel: 0, waist: 700, height: 1680, bare: false };
  const [front, back] = [
    [90, -95, 1220],
    [70, 80, 1210],
  ] as const;
  const { surface } = strapToDraw({ front, back, width: 20, side: 'left' }, wearer);
  const at = (column: number, row: number): number[] =>
    [0, 1, 2].map((axis) => surface.place[3 * (column * surface.rows + row) + axis]!);
  const last = surface.columns - 1;
  for (let row = 0; row < surface.rows; row++) {
    const [a, b] = [at(0, row), at(last, row)];
    expect(Math.hypot(...a.map((own, axis) => own - b[axis]!))).toBeGreaterThan(0.9 * 20);
    expect(Math.hypot(...a.map((own, axis) => own - b[axis]!))).toBeLessThan(1.02 * 20);
    // From her left its two edges lie apart.
    expect(Math.hypot(a[1]! - b[1]!, a[2]! - b[2]!)).toBeGreaterThan(4);
  }
  const middle = (row: number): number[] => at(0, row).map((own, axis) => (own + at(last, row)[axis]!) / 2);
  for (const [axis, own] of middle(0).entries()) expect(own).toBeCloseTo(front[axis]!, 6);
  for (const [axis, own] of middle(surface.rows - 1).entries()) expect(own).toBeCloseTo(back[axis]!, 6);
  // Over the shoulder, between neck and arm: 0.83 of her height from the floor (from memory: drawing manuals).
  expect(Math.max(...surface.place.filter((_, i) => i % 3 === 2)) / 1680).toBeCloseTo(0.835, 1);
});

it('gathers are strokes from a gathered edge alone, 17 mm apart round it, no two beside one another alike', () => {
  // A tube of 1 m round and 40 cm deep, gathered on one half.
  const [columns, rows, round] = [200, 21, 1000];
  const place = Float64Array.from(
    Array.from({ length: columns * rows }, (_, i) => {
      const turn = (2 * Math.PI * Math.floor(i / rows)) / columns;
      const radius = round / (2 * Math.PI);
      return [radius * Math.cos(turn), radius * Math.sin(turn), 900 - 20 * (i % rows)];
    }).flat(),
  );
  const lines = gatherLines({ columns, rows, place, closed: true }, (column) => column < 100, 400);
  // 5 mm from column to column: a stroke on every fourth.
  expect(lines).toHaveLength(25);
  for (const [i, line] of lines.entries()) {
    const column = Math.floor(line[0]! / rows);
    expect(line[0]! % rows).toBe(0);
    expect(column).toBeLessThan(100);
    expect(line.every((at) => Math.floor(at / rows) === column)).toBe(true);
    if (i > 0) {
      expect(column - Math.floor(lines[i - 1]![0]! / rows)).toBe(4);
      expect(line.length).not.toBe(lines[i - 1]!.length);
    }
    expect(20 * (line.length - 1)).toBeLessThanOrEqual(120);
  }
});
