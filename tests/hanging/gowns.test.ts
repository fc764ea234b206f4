import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Point } from '../../src/geometry/curve.ts';
import type { ClothMesh } from '../../src/hanging/cloth-mesh.ts';
import { type Hang, hangOf } from '../../src/hanging/hang.ts';
import { hangCloth } from '../../src/hanging/hang-cloth.ts';
import { hangFigures } from '../../src/hanging/hang-figures.ts';
import { hangTask } from '../../src/hanging/hang-task.ts';
import { AROUND, DRAWN_UP, type HangTask, hungAtFirst, SETTLINGS } from '../../src/hanging/hung-gown.ts';
import { columnsOf } from '../../src/hanging/sewn-cloth.ts';
import { gownViews } from '../../src/hanging/views.ts';
import { draft } from '../../src/pipeline.ts';

const ROOT = join(import.meta.dirname, '../..');

function taskOf(file: string): HangTask {
  const text = readFileSync(join(ROOT, file), 'utf8');
  const { gown } = draft({ name: file, text });
  if (gown === undefined) throw new Error(`${file} does not draft`);
  return hangTask(gown);
}

function meshOf({ sewn }: HangTask): ClothMesh {
  return hangCloth(sewn.cloth, { body: sewn.body, ...AROUND }, SETTLINGS);
}

const hung = new Map<string, { task: HangTask; hang: Hang }>();

const meshes = new Map<string, ClothMesh>();

function hangOfFile(file: string): { task: HangTask; hang: Hang } {
  const known = hung.get(file);
  if (known !== undefined) return known;
  const task = taskOf(file);
  const mesh = meshOf(task);
  const own = { task, hang: hangOf(task.sewn, mesh) };
  meshes.set(file, mesh);
  hung.set(file, own);
  return own;
}

const FILES = [
  'examples/lantern.yaml',
  'templates/over-a-hoop.yaml',
  'templates/full-circle.yaml',
  'templates/one-sided-train.yaml',
  'templates/gathered.yaml',
];

describe.each(FILES)('%s', (file) => {
  it('hangs above the floor, outside of what it hangs over, and all but unstretched', () => {
    const { hang } = hangOfFile(file);
    for (let i = 0; i < hang.place.length; i += 3) {
      expect(hang.place[i + 2]).toBeGreaterThan(-0.01);
      expect(insideBody(hang, i)).toBeLessThan(2);
    }
    expect(hang.stretch).toBeLessThan(0.01);
  });
});

/** How deep a place lies inside the body's ellipse at its height, along its own radius, mm. */
function insideBody({ body, place, waistHeight }: Hang, i: number): number {
  const [x, y, z] = [place[i]!, place[i + 1]!, place[i + 2]!];
  const level = Math.floor((z - body.lowest) / body.step);
  if (level < 0 || level + 1 >= body.halfWidth.length || z > waistHeight - 150) return 0;
  const part = (z - body.lowest) / body.step - level;
  const at = (values: Float64Array): number => values[level]! + (values[level + 1]! - values[level]!) * part;
  const outward = Math.hypot(x / at(body.halfWidth), y / at(body.halfDepth));
  return outward >= 1 ? 0 : Math.hypot(x, y) * (1 / outward - 1);
}

it.each(['examples/lantern.yaml', 'templates/square-train.yaml'])(
  'drawn up by its bustle it is all but unstretched too, and every loop hangs at its button: %s',
  (file) => {
    const { task, hang } = hangOfFile(file);
    const { sewn, ties } = task;
    const up = hangOf(
      sewn,
      hangCloth(sewn.cloth, { body: sewn.body, ...AROUND }, DRAWN_UP, { ties, from: meshes.get(file)! }),
    );
    expect(up.stretch).toBeLessThan(0.01);
    for (const { column, anchor, pickUp } of ties) {
      const [button, loop] = [anchor, pickUp].map((depth) => placeAt(up, column, depth));
      // A loop keeps 12 mm off, and a place is a row of the mesh or near it.
      expect(Math.hypot(...button!.map((own, axis) => own - loop![axis]!))).toBeLessThan(45);
    }
    expect(hangFigures(hang).touches.length).toBeGreaterThan(0);
    // Its points ask for 3 cm off the floor; between them it hangs lower or higher, and stands out nowhere.
    const { hem } = hangFigures(up);
    expect(hem.reduce((sum, { height }) => sum + height, 0) / hem.length).toBeLessThan(80);
    for (const { height } of hem) expect(height).toBeLessThan(180);
  },
);

function placeAt({ place, depth, rows }: Hang, column: number, wanted: number): number[] {
  const first = column * rows;
  let row = 0;
  while (row + 2 < rows && depth[first + row + 1]! < wanted) row++;
  const [above, below] = [depth[first + row]!, depth[first + row + 1]!];
  const part = Math.min(1, (wanted - above) / (below - above));
  return [0, 1, 2].map((axis) => {
    const own = 3 * (first + row) + axis;
    return place[own]! + (place[own + 3]! - place[own]!) * part;
  });
}

it('a mirrored gown looks mirrored from the front and the back', () => {
  const { task, hang } = hangOfFile('templates/over-a-hoop.yaml');
  for (const view of gownViews(hang, ['front', 'back'], task.extras)) {
    expect(view.box.left).toBeCloseTo(-view.box.right, 0);
    const outline = view.outlines[0]!;
    for (const { x, y } of outline) {
      const sides = outline.slice(1).map((to, i) => offSegment({ x: -x, y }, outline[i]!, to));
      expect(Math.min(...sides)).toBeLessThan(3);
    }
  }
});

function offSegment(point: Point, from: Point, to: Point): number {
  const [x, y] = [to.x - from.x, to.y - from.y];
  const along = ((point.x - from.x) * x + (point.y - from.y) * y) / (x * x + y * y);
  const part = Math.min(1, Math.max(0, along));
  return Math.hypot(point.x - from.x - x * part, point.y - from.y - y * part);
}

it('a round skirt over its hoop hangs off the floor within 1 cm of what was asked', () => {
  const { hang } = hangOfFile('templates/over-a-hoop.yaml');
  const { hem } = hangFigures(hang);
  const mean = hem.reduce((sum, { height }) => sum + height, 0) / hem.length;
  expect(Math.abs(mean - 25)).toBeLessThan(5);
  for (const { height } of hem) expect(Math.abs(height - 25)).toBeLessThan(10);
});

it.each(['templates/over-a-hoop.yaml', 'templates/over-a-crinoline.yaml', 'templates/a-line.yaml'])(
  'a mesh half as fine moves outline and hem by less than 1 cm: %s',
  (file) => {
    const { task, hang } = hangOfFile(file);
    const coarsely = SETTLINGS.map((settling) => ({ ...settling, stride: 2 }));
    const coarse = hangOf(
      task.sewn,
      hangCloth(task.sewn.cloth, { body: task.sewn.body, ...AROUND }, coarsely),
    );
    const [fineHem, coarseHem] = [hang, coarse].map((one) => hangFigures(one).hem);
    for (const place of fineHem!) {
      const near = coarseHem!.reduce((best, one) =>
        Math.abs(one.along - place.along) < Math.abs(best.along - place.along) ? one : best,
      );
      expect(Math.abs(near.height - place.height)).toBeLessThan(10);
    }
    const [fineViews, coarseViews] = [hang, coarse].map((one) =>
      gownViews(one, ['front', 'side'], task.extras),
    );
    for (const [i, { outlines }] of fineViews!.entries()) {
      const other = coarseViews![i]!.outlines[0]!;
      for (const point of outlines[0]!)
        expect(Math.min(...other.slice(1).map((to, k) => offSegment(point, other[k]!, to)))).toBeLessThan(10);
    }
  },
);

it('cloth gathered two to one and straight down hangs down its own length, not inside out', () => {
  // 42 cm of cotton from the waist; it stands out from the gathers before it falls.
  const { hang } = hangOfFile('templates/growth-tucks.yaml');
  for (const { height } of hangFigures(hang).hem) {
    expect(hang.waistHeight - height).toBeLessThan(421);
    expect(hang.waistHeight - height).toBeGreaterThan(0.9 * 420);
  }
});

it('panels that share a seam are as long as one another there, and the seam is one column', () => {
  const { cloth, stations } = hangOfFile('examples/lantern.yaml').task.sewn;
  const lengthDown = ({ strips, across }: (typeof cloth.panels)[number], isLast: boolean): number => {
    const [{ flat, down }] = [strips[0]!];
    const first = isLast ? 2 * across * (down + 1) : 0;
    let length = 0;
    for (let at = first; at < first + 2 * down; at += 2)
      length += Math.hypot(flat[at + 2]! - flat[at]!, flat[at + 3]! - flat[at + 1]!);
    return length;
  };
  let column = 0;
  for (const [i, panel] of cloth.panels.slice(0, -1).entries()) {
    column += panel.across;
    expect(stations[i + 1]!.column).toBe(column);
    expect(Math.abs(lengthDown(panel, true) - lengthDown(cloth.panels[i + 1]!, false))).toBeLessThan(0.1);
  }
  expect(columnsOf(cloth)).toBe(column + cloth.panels[cloth.panels.length - 1]!.across + 1);
});

it.each(['templates/over-a-hoop.yaml', 'templates/six-gores.yaml'])(
  'half as fine a mesh moves hem and outline by less than 1 cm: %s',
  (file) => {
    const { task, hang } = hangOfFile(file);
    const coarse = SETTLINGS.map((settling) => ({ ...settling, stride: 2 }));
    const half = hangOf(task.sewn, hangCloth(task.sewn.cloth, { body: task.sewn.body, ...AROUND }, coarse));
    const [fine, other] = [hang, half].map((of) => hangFigures(of).hem);
    for (const [i, place] of fine!.entries()) {
      const same = other![Math.min(i, other!.length - 1)]!;
      expect(Math.abs(place.height - same.height)).toBeLessThan(10);
    }
    const boxes = [half, hang].map((of) => gownViews(of, ['front', 'side'], task.extras));
    for (const [i, view] of boxes[0]!.entries()) {
      for (const side of [Math.min, Math.max]) {
        const [a, b] = [view, boxes[1]![i]!].map((one) => side(...one.outlines.flat().map(({ x }) => x)));
        expect(Math.abs(a! - b!)).toBeLessThan(10);
      }
    }
  },
);

it('the first picture is the gown already: its outline within 3 cm, its seams at their places', () => {
  const { task, hang } = hangOfFile('templates/over-a-hoop.yaml');
  const first = hungAtFirst(task).views;
  const last = gownViews(hang, ['front', 'side', 'back', 'above'], task.extras, task.above);
  for (const [i, { side, box, seams }] of last.entries()) {
    const other = first[i]!;
    expect(other.side).toBe(side);
    for (const edge of ['left', 'right', 'top', 'bottom'] as const)
      expect(Math.abs(other.box[edge] - box[edge])).toBeLessThan(30);
    // A seam of the coarse grid that was taken for one of the fine would lie far off.
    for (const seam of seams) {
      const middle = seam[Math.floor(seam.length / 2)]!;
      const off = other.seams.flatMap((line) =>
        line.slice(1).map((to, k) => offSegment(middle, line[k]!, to)),
      );
      expect(Math.min(...off)).toBeLessThan(40);
    }
  }
});

it('the train lies behind her as far as its cloth reaches, and hangs to the same last digit again', () => {
  const { task, hang } = hangOfFile('examples/lantern.yaml');
  const { train } = hangFigures(hang);
  // The hoop's radius is 49 cm, her heels stand 5 cm behind the middle, and 64.5 cm lie on the floor beyond the hoop.
  expect(train?.behindHeel).toBeGreaterThan(900);
  expect(train?.behindHeel).toBeLessThan(1130);
  expect(hangOf(task.sewn, meshOf(task)).place).toEqual(hang.place);
});

it('a tape to the floor that is far shorter at one seam is a hem set by hand, not a floor', () => {
  const { hang } = hangOfFile('templates/one-sided-train.yaml');
  // 108 cm to the floor along the cloth at the back; the body's slope takes a little off it.
  expect(hang.waistHeight).toBeGreaterThan(1030);
  expect(hang.waistHeight).toBeLessThan(1085);
});

/** Read off the vertices by a walk of its own: no code of the figures. */
describe('the figures of Lantern are those of its mesh', () => {
  const { task, hang } = hangOfFile('examples/lantern.yaml');
  const { columns, rows, place } = hang;
  const at = (column: number, row: number): number[] => [
    ...place.subarray(3 * (column * rows + row), 3 * (column * rows + row) + 3),
  ];
  const hemline = Array.from({ length: columns + 1 }, (_, i) => at(i % columns, rows - 1));
  const figures = hangFigures(hang);

  it('heights round, where a tape laid along the hem says so', () => {
    // Samples a tenth of a millimetre apart or nearer, each with its distance along.
    const samples: [number, number][] = [];
    let along = 0;
    for (const [i, to] of hemline.slice(1).entries()) {
      const from = hemline[i]!;
      const length = Math.hypot(...to.map((own, axis) => own - from[axis]!));
      for (let k = 0; k < 1000; k++)
        samples.push([along + (length * k) / 1000, from[2]! + ((to[2]! - from[2]!) * k) / 1000]);
      along += length;
    }
    expect(figures.hem.length).toBe(Math.ceil(along / 50));
    let next = 0;
    for (const { along: where, height } of figures.hem) {
      while (samples[next + 1] !== undefined && samples[next + 1]![0] <= where) next++;
      expect(Math.abs(height - samples[next]![1])).toBeLessThan(0.1);
    }
    const lying = figures.touches.reduce((sum, { from, to }) => sum + (to - from), 0);
    const low = samples.filter(([, height]) => height <= 4).length / samples.length;
    // Told every 5 cm, at both ends of each stretch.
    expect(Math.abs(lying - low * along)).toBeLessThanOrEqual(100 * figures.touches.length);
  });

  it('the train behind her heels, its width, and what lies of it at the centre back', () => {
    const lain: number[][] = [];
    for (let i = 0; i < place.length; i += 3)
      if (place[i + 2]! <= 4 && place[i + 1]! >= 50) lain.push([place[i]!, place[i + 1]!]);
    const [xs, ys] = [lain.map(([x]) => x!), lain.map(([, y]) => y!)];
    expect(figures.train?.behindHeel).toBeCloseTo(Math.max(...ys) - 50, 6);
    expect(figures.train!.left - figures.train!.right).toBeCloseTo(Math.max(...xs) - Math.min(...xs), 6);
    // Measured over the cloth as it lies, from the tip to the first vertex that is off the floor.
    const behind = columns / 2;
    let row = rows - 1;
    let length = 0;
    while (at(behind, row - 1)[2]! <= 25) {
      length += Math.hypot(...at(behind, row).map((own, axis) => own - at(behind, row - 1)[axis]!));
      row--;
    }
    const last = Math.hypot(...at(behind, row).map((own, axis) => own - at(behind, row - 1)[axis]!));
    expect(figures.lainBehind).toBeGreaterThan(0.998 * length);
    expect(figures.lainBehind).toBeLessThan(1.002 * (length + last));
  });

  it('the stretch left, against the pieces as they lie flat', () => {
    let most = 0;
    let first = 0;
    for (const { across, strips } of task.sewn.cloth.panels) {
      const { flat, down } = strips[0]!;
      const flatAt = (c: number, r: number): number[] => [
        flat[2 * (c * (down + 1) + r)]!,
        flat[2 * (c * (down + 1) + r) + 1]!,
      ];
      const pair = (c0: number, r0: number, c1: number, r1: number): void => {
        const rest = Math.hypot(...flatAt(c0, r0).map((own, axis) => own - flatAt(c1, r1)[axis]!));
        const now = Math.hypot(...at(first + c0, r0).map((own, axis) => own - at(first + c1, r1)[axis]!));
        if (rest > 5) most = Math.max(most, now / rest - 1);
      };
      for (let c = 0; c <= across; c++)
        for (let r = 1; r <= down; r++) {
          pair(c, r - 1, c, r);
          if (c > 0) pair(c - 1, r, c, r);
        }
      first += across;
    }
    expect(figures.stretch).toBeCloseTo(most, 6);
  });
});
