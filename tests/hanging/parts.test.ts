import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { DraftedGown } from '../../src/drafted-gown.ts';
import type { DrawnPart } from '../../src/hanging/drawn-part.ts';
import { figureLines } from '../../src/hanging/figure-lines.ts';
import { widthsOf } from '../../src/hanging/gown-panels.ts';
import { hangOf } from '../../src/hanging/hang.ts';
import { hangCloth } from '../../src/hanging/hang-cloth.ts';
import { hangTask } from '../../src/hanging/hang-task.ts';
import { AROUND, type HangTask, UNDERNEATH } from '../../src/hanging/hung-gown.ts';
import { hungParts } from '../../src/hanging/hung-parts.ts';
import { directionOf, outlineBody } from '../../src/hanging/outline-body.ts';
import { columnsOf } from '../../src/hanging/sewn-cloth.ts';
import { gownViews } from '../../src/hanging/views.ts';
import { draft } from '../../src/pipeline.ts';

const ROOT = join(import.meta.dirname, '../..');
/** Coarse is enough to ask where things are. */
const COARSE = [
  { stride: 2, steps: 200, fall: 0.2, keeps: 0.97 },
  { stride: 2, steps: 60, fall: 0.02, keeps: 0.95 },
];

function gownOf(file: string): DraftedGown {
  const { gown } = draft({ name: file, text: readFileSync(join(ROOT, file), 'utf8') });
  if (gown === undefined) throw new Error(`${file} does not draft`);
  return gown;
}

function taskOf(gown: DraftedGown): HangTask {
  return hangTask(gown);
}

function hungWith(file: string) {
  const task = taskOf(gownOf(file));
  const { sewn } = task;
  const hang = hangOf(sewn, hangCloth(sewn.cloth, { body: sewn.body, ...AROUND }, COARSE));
  return { task, hang, parts: hungParts(task.parts, hang, AROUND) };
}

function placesOf({ surface: { place } }: DrawnPart): [number, number, number][] {
  return Array.from({ length: place.length / 3 }, (_, i) => [
    place[3 * i]!,
    place[3 * i + 1]!,
    place[3 * i + 2]!,
  ]);
}

describe('a drafted bodice as it is drawn', () => {
  const gown = gownOf('templates/laced-bodice.yaml');
  const task = taskOf(gown);
  const { surface } = task.above[0]!;

  /** Round the surface at a height, by its places at that height in each column. */
  function girthAt(z: number): number {
    const ring = Array.from({ length: surface.columns }, (_, column) => {
      for (let row = 0; row + 1 < surface.rows; row++) {
        const a = 3 * (column * surface.rows + row);
        const [upper, lower] = [surface.place[a + 2]!, surface.place[a + 5]!];
        if (upper < z || lower > z) continue;
        const part = (upper - z) / (upper - lower);
        return [0, 1].map((axis) => {
          const here = surface.place[a + axis]!;
          return here + (surface.place[a + 3 + axis]! - here) * part;
        });
      }
      return undefined;
    }).filter((point) => point !== undefined);
    return ring.reduce((sum, [x, y], i) => {
      const [p, q] = ring[(i + 1) % ring.length]!;
      return sum + Math.hypot(p! - x!, q! - y!);
    }, 0);
  }

  it('is at every level as wide as it is sewn and laced open', () => {
    const levels = gown.bodice!.figures.levels.filter(({ above }) => above > 60 && above < 130);
    expect(levels.length).toBeGreaterThan(0);
    for (const { above, sewn, open } of levels)
      expect(girthAt(task.extras.wearer.waistHeight + above) / (sewn + open)).toBeCloseTo(1, 2);
  });

  it('has its edge as high as it is asked for, by station', () => {
    const { upperEdge } = gown.bodice!.asked.draft;
    const highest = Math.max(...surface.place.filter((_, i) => i % 3 === 2));
    expect(highest - task.extras.wearer.waistHeight).toBeCloseTo(Math.max(...Object.values(upperEdge)), -1);
  });

  it('hides what lies behind it, and shows its lacing from the back alone', () => {
    const hang = hangOf(task.sewn, hangCloth(task.sewn.cloth, { body: task.sewn.body, ...AROUND }, COARSE));
    const [front, back] = gownViews(hang, ['front', 'back'], task.extras, task.above);
    const above = (view: typeof front): number =>
      view!.seams.filter((line) => line.every(({ y }) => -y > task.extras.wearer.waistHeight - 30)).length;
    expect(above(back)).toBeGreaterThan(above(front));
  });
});

describe('what is sewn to a skirt', () => {
  it('a flounce above the hem hangs its own depth from its line, outside of the skirt', () => {
    const { task, hang, parts } = hungWith('templates/circular-flounce.yaml');
    const flounce = task.parts.find((part) => part.is === 'flounce')!;
    const places = placesOf(parts[0]!.drawn[0]!);
    const { surface } = parts[0]!.drawn[0]!;
    const falls = Array.from({ length: surface.columns }, (_, column) => {
      const own = places.slice(column * surface.rows, (column + 1) * surface.rows);
      return own[0]![2] - own[own.length - 1]![2];
    });
    expect(Math.max(...falls)).toBeLessThan(1.02 * flounce.depth);
    // It stands out over the folds below it.
    expect(falls.reduce((sum, fall) => sum + fall, 0) / falls.length).toBeGreaterThan(0.7 * flounce.depth);
    const { lowest, step, directions, reach } = outlineBody([{ ...hang, closed: true }]);
    const inside = places.map(([x, y, z]) => {
      const level = Math.round((z - lowest) / step);
      const least = reach[level * directions + (Math.round(directionOf(x, y, directions)) % directions)];
      return least === undefined || level < 0 ? 0 : least - Math.hypot(x, y);
    });
    // The outline is the farthest place within 10 mm of height and 1/128 of the way round: beside a fold it is not reached.
    expect(inside.filter((deep) => deep > 20).length / inside.length).toBeLessThan(0.05);
    expect(Math.max(...inside)).toBeLessThan(60);
  });

  it('a train that comes off lies on the floor behind her, alike on both sides', () => {
    const { parts } = hungWith('templates/train-that-comes-off.yaml');
    const places = placesOf(parts[0]!.drawn[0]!);
    // 60 cm and more of it are longer than the way to the floor; it is spread and not drawn out straight.
    const lain = places.filter(([, , z]) => z < 4).map(([, y]) => y);
    expect(Math.max(...lain)).toBeGreaterThan(400);
    // Drawn as splines, which dip a little between places that lie on the floor.
    for (const [, , z] of places) expect(z).toBeGreaterThan(-5);
    const [most, least] = [Math.max(...places.map(([x]) => x)), Math.min(...places.map(([x]) => x))];
    expect(most).toBeCloseTo(-least, 6);
  });

  it('a cape hangs over both arms from the edge that it is sewn to', () => {
    const { task, parts } = hungWith('templates/capelet.yaml');
    const [left, right] = parts[0]!.drawn.map(placesOf);
    const { waistHeight } = task.extras.wearer;
    // Over the arm it is 40 cm long, from about the height of the upper edge, 16 cm above the waist.
    const lowest = Math.min(...left!.map(([, , z]) => z));
    expect(lowest).toBeLessThan(waistHeight - 150);
    expect(lowest).toBeGreaterThan(waistHeight - 260);
    expect(Math.max(...left!.map(([x]) => x))).toBeCloseTo(-Math.min(...right!.map(([x]) => x)), 6);
  });

  it('net worn under a skirt holds it out', () => {
    const gown = gownOf('templates/tiered-net.yaml');
    const task = taskOf(gown);
    const bare = taskOf({ ...gown, gown: { ...gown.gown, tiers: [] } });
    const widthAt = ({ sewn }: HangTask, height: number): number => sewn.body.halfWidth[height / 10]!;
    expect(widthAt(task, 600)).toBeGreaterThan(1.3 * widthAt(bare, 600));
    expect(widthAt(task, 1000)).toBeCloseTo(widthAt(bare, 1000), 3);
  });
});

it('tiers under a skirt are hung by themselves: each as wide and as deep as it is cut, gathered to the one above', () => {
  const { under, extras } = taskOf(gownOf('templates/tiered-net.yaml'));
  const { cloth, joins } = under!;
  const [yoke, ...tiers] = cloth.panels[0]!.strips;
  // Template: a yoke of 96 cm, tiers of 2, 4 and 8 m, 20 cm deep; half of each.
  const widthAt = ({ flat, down }: typeof yoke & object, row: number): number =>
    flat[flat.length - 2 * (down + 1) + 2 * row]! - flat[2 * row]!;
  expect(widthAt(yoke!, yoke!.down)).toBeCloseTo(480, 6);
  for (const [i, half] of [1000, 2000, 4000].entries()) {
    const { flat, first, down } = tiers[i]!;
    expect(widthAt(tiers[i]!, 0)).toBeCloseTo(half, 6);
    expect(flat[2 * down + 1]! - flat[1]!).toBeCloseTo(200, 6);
    expect(joins[i]).toBe(first);
  }
  const hang = hangOf(under!, hangCloth(cloth, { body: under!.body, ...AROUND }, UNDERNEATH));
  expect(hang.stretch).toBeLessThan(0.01);
  const heights = hang.place.filter((_, i) => i % 3 === 2);
  expect(Math.min(...heights)).toBeGreaterThan(0);
  // Net holds itself out: the lowest tier's edge is farther out than the yoke's, and drawn with every join.
  const [front] = gownViews(hang, ['front'], { wearer: extras.wearer });
  const across = (row: number): number => {
    const out = Array.from(
      { length: hang.columns },
      (_, column) => hang.place[3 * (column * hang.rows + row)]!,
    );
    return Math.max(...out) - Math.min(...out);
  };
  expect(across(hang.rows - 1)).toBeGreaterThan(1.5 * across(joins[0]!));
  expect(front!.seams.length).toBeGreaterThanOrEqual(3);
});

it('box pleats show an edge every 9 cm where faces 9 cm wide meet, all round a waist of 72 cm', () => {
  // Template: cloth three times the width as sewn, folds 4.5 cm deep: a face is 9 cm wide and takes 27 cm of cloth.
  const { sewn, extras } = taskOf(gownOf('templates/box-pleats.yaml'));
  const half = columnsOf(sewn.cloth) - 1;
  const passed = [0];
  for (const panel of sewn.cloth.panels) {
    // On a front on the fold and a back half a face of 9 cm each, on the side two.
    const top = panel.name === 'side' ? 180 : 90;
    const before = passed.pop()!;
    passed.push(...panel.folded!.along.map((part) => before + top * part));
  }
  const along = (extras.pleats ?? [])
    .filter(({ column }) => column <= half)
    .map(({ column }) => passed[column]!)
    .filter((at, i, all) => i === 0 || at - all[i - 1]! > 1);
  expect(along.length).toBe(5);
  for (const [i, at] of along.entries()) expect(at).toBeCloseTo(90 * i, 1);
  // Four faces of 9 cm in the half, each with 18 cm folded under it.
  const widths = sewn.cloth.panels.flatMap((panel) => widthsOf(panel, 0));
  expect(widths.reduce((sum, width) => sum + width, 0)).toBeCloseTo(4 * 270, 0);
});

it('above a skirt with a waist of its own nothing of a gown is drawn but its band, and she is', () => {
  const gown = gownOf('templates/day-skirt.yaml');
  const waist = { ...gown.gown.waist!, finish: 'facing' as const };
  const task = taskOf({ ...gown, gown: { ...gown.gown, waist } });
  const clothed = taskOf(gownOf('templates/six-gores.yaml'));
  const banded = taskOf(gown);
  expect(task.above).toEqual([]);
  expect(clothed.above).toHaveLength(1);
  expect(banded.above).toHaveLength(1);
  // The template's band is 3.5 cm wide, upright on the sewn edge of the skirt, 72 cm round.
  const { surface } = banded.above[0]!;
  const rim = (row: number): number[][] =>
    Array.from({ length: surface.columns }, (_, column) => {
      const i = 3 * (column * surface.rows + row);
      return [surface.place[i]!, surface.place[i + 1]!, surface.place[i + 2]!];
    });
  const [top, foot] = [rim(0), rim(surface.rows - 1)];
  for (const [i, [, , z]] of top.entries()) expect(z! - foot[i]![2]!).toBeCloseTo(35, 9);
  const girth = foot.reduce(
    (sum, own, i) => sum + Math.hypot(...own.map((at, axis) => foot[(i + 1) % foot.length]![axis]! - at)),
    0,
  );
  expect(girth).toBeGreaterThan(0.99 * 720);
  expect(girth).toBeLessThan(720);
  const { wearer } = task.extras;
  const trunk = (bare: boolean): number => figureLines('front', { ...wearer, bare }).length;
  // Her two sides, between waist and arm.
  expect(trunk(true) - trunk(false)).toBe(2);
});

it('a pocket is seen in its seam from the side, tacked at both ends; a slit from the back, down to the hem', () => {
  const { task, hang } = hungWith('templates/day-skirt.yaml');
  const [side, back] = gownViews(hang, ['side', 'back'], task.extras);
  const heightsOf = (line: readonly { readonly y: number }[]): number[] =>
    [line[0]!, line[line.length - 1]!].map(({ y }) => hang.waistHeight + y);
  // Template: 6 cm below the waist, 16.5 cm long where nothing is said; the cloth slopes a little off the upright.
  expect(side!.opening).toHaveLength(1);
  const [top, foot] = heightsOf(side!.opening[0]!);
  expect(top).toBeGreaterThan(0.94 * 60);
  expect(top).toBeLessThan(61);
  expect(foot! - top!).toBeGreaterThan(0.94 * 165);
  expect(foot! - top!).toBeLessThan(166);
  expect(side!.strokes).toHaveLength(2);
  // The zip, 20 cm from the waist, and the slit, 24 cm of 77.
  const [zip, slit] = back!.opening.map(heightsOf).sort(([a], [b]) => a! - b!);
  expect(zip![0]).toBeCloseTo(0, -1);
  expect(slit![0]).toBeGreaterThan(0.92 * 530);
  expect(slit![0]).toBeLessThan(531);
  expect(slit![1]! - slit![0]!).toBeGreaterThan(0.92 * 240);
});
