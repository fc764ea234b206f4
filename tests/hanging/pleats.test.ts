import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { type Hang, hangOf } from '../../src/hanging/hang.ts';
import { hangCloth } from '../../src/hanging/hang-cloth.ts';
import { hangTask } from '../../src/hanging/hang-task.ts';
import { AROUND, type HangTask, SETTLINGS } from '../../src/hanging/hung-gown.ts';
import { gownViews } from '../../src/hanging/views.ts';
import { draft } from '../../src/pipeline.ts';
import { level, plainGown, type Tree } from '../outside/plain-gown.ts';

/** Three gores of a half, each 12 cm at the waist and 35 cm at the hem; mm. */
function taskWith(pleats: readonly Tree[], fields: Tree = {}): HangTask {
  const text = plainGown({
    units: 'mm',
    bodice: { 'waist-seam': 720, panels: { front: 120, side: 120, back: 120 } },
    gores: ['front', 'side', 'back'].map((name) => ({ name, hem: 350 })),
    lengths: level(800),
    ...(pleats.length > 0 && {
      pleats: pleats.map((pleat, i) => ({ name: `p${i + 1}`, layers: ['shell'], ...pleat })),
    }),
    ...fields,
  });
  const { gown, diagnostics } = draft({ name: 'pleated.yaml', text });
  if (gown === undefined) throw new Error(JSON.stringify(diagnostics));
  return hangTask(gown);
}

const STITCHED = 200;
const PLEATS: readonly Tree[] = [
  { kind: 'inverted', at: 'centre-front', 'fold-depth': 60, 'stitched-down': STITCHED },
  { kind: 'box', at: 'front/side', 'from-seam': 60, gore: 'side', 'fold-depth': 25 },
  { kind: 'knife', at: 'side/back', 'fold-depth': 40, towards: 'back' },
  { kind: 'kick', at: 'centre-back', 'fold-depth': 70, 'above-hem': 300 },
];

const pleated = taskWith(PLEATS);
let known: Hang | undefined;
function hung(): Hang {
  const { sewn } = pleated;
  known ??= hangOf(sewn, hangCloth(sewn.cloth, { body: sewn.body, ...AROUND }, SETTLINGS));
  return known;
}

/** Cloth from column to column along a row of the half as it is given, by panel, mm. */
function widthOf({ sewn: { cloth } }: HangTask, row: number, name?: string): number {
  let sum = 0;
  for (const { across, strips, name: own } of cloth.panels) {
    if (name !== undefined && name !== own) continue;
    const { flat, down } = strips[0]!;
    for (let column = 0; column < across; column++) {
      const [a, b] = [column, column + 1].map((at) => 2 * (at * (down + 1) + row));
      sum += Math.hypot(flat[b!]! - flat[a!]!, flat[b! + 1]! - flat[a! + 1]!);
    }
  }
  return sum;
}

it('what folds take is let in: of an inverted pleat, a box and a knife alike at the waist and the hem, of a kick at the hem alone', () => {
  const plain = taskWith([]);
  const { down } = pleated.sewn.cloth;
  const more = (row: number, gore: string): number => widthOf(pleated, row, gore) - widthOf(plain, row, gore);
  // A fold takes twice its depth; of a pleat on the plane of the halves one fold, of a kick there half of it.
  for (const row of [0, down]) {
    // An arc of the gore counts by its chords, which more columns follow more closely.
    const within = (own: number, wanted: number): void => expect(Math.abs(own - wanted)).toBeLessThan(0.5);
    within(more(row, 'front'), 2 * 60);
    within(more(row, 'side'), 2 * 2 * 25 + 2 * 40);
    within(more(row, 'back'), row === 0 ? 0 : 70);
  }
});

it('pleated, it hangs all but unstretched, above the floor, and every row is as wide as its cloth', () => {
  const { rows, columns, place, stretch } = hung();
  expect(stretch).toBeLessThan(0.01);
  for (let i = 2; i < place.length; i += 3) expect(place[i]).toBeGreaterThan(-0.01);
  for (const row of [0, rows - 1]) {
    let round = 0;
    for (let column = 0; column < columns; column++) {
      const [a, b] = [column, (column + 1) % columns].map((at) => 3 * (at * rows + row));
      round += Math.hypot(...[0, 1, 2].map((axis) => place[b! + axis]! - place[a! + axis]!));
    }
    // The held edge is an ellipse's chords, and cloth may lie in ripples of 2 %.
    const cloth = 2 * widthOf(pleated, row);
    expect(round / cloth).toBeGreaterThan(0.97);
    expect(round / cloth).toBeLessThan(1.01);
  }
});

it('an inverted pleat is closed as far as it is stitched down, its cloth behind its folds', () => {
  const { rows, place, depth } = hung();
  const fold = pleated.extras.pleats!.find(({ column }) => column > 0)!.column;
  // Its outer edge at the centre front; the other is its mirror image.
  const gap = (row: number): number => 2 * Math.abs(place[3 * (fold * rows + row)]!);
  for (let row = 0; depth[fold * rows + row]! <= STITCHED; row++) expect(gap(row)).toBeLessThan(4);
  // Its inner edge lies behind, at her left, by no more than the depth of the fold.
  const inner = pleated.sewn.cloth.panels[0]!.folded!.folds[0]!;
  for (const row of [2, rows - 1]) {
    expect(place[3 * (inner * rows + row)]).toBeGreaterThan(20);
    expect(place[3 * (inner * rows + row)]).toBeLessThan(60.6);
  }
  const at = (column: number): number => place[3 * (column * rows + 4) + 1]!;
  expect(at(inner)).toBeGreaterThan(at(fold));
});

it('pleats that are stitched nowhere open over her hip by what she is wider than the skirt is sewn', () => {
  const text = readFileSync(join(import.meta.dirname, '../../templates/box-pleats.yaml'), 'utf8');
  const { gown } = draft({ name: 'box-pleats.yaml', text });
  const { sewn } = hangTask(gown!);
  const { rows, place, columns } = hangOf(
    sewn,
    hangCloth(sewn.cloth, { body: sewn.body, ...AROUND }, SETTLINGS),
  );
  const row = Math.round((200 / 600) * (rows - 1));
  let [open, first] = [0, 0];
  for (const { across, folded } of sewn.cloth.panels) {
    const ends = folded!.shows.flatMap((shows, column) =>
      column < across && column > 0 && shows !== folded!.shows[column - 1] ? [first + column] : [],
    );
    const faces = [first, ...ends, first + across].filter((column, i, all) => column !== all[i - 1]);
    for (let i = 1; i + 1 < faces.length; i += 1) {
      const [a, b] = [faces[i]!, faces[i + 1]!];
      if (folded!.shows[a - first] === true) continue;
      const apart = [0, 1, 2].map(
        (axis) => place[3 * ((b % columns) * rows + row) + axis]! - place[3 * (a * rows + row) + axis]!,
      );
      open += 2 * Math.hypot(...apart);
    }
    first += across;
  }
  // Sewn 72 cm at the waist and 96 cm at the hem, 60 cm below: 80 cm at the hip, which is 96 cm; what is open counts by chords.
  expect(open).toBeGreaterThan(0.75 * (960 - 800));
});

it('edges of folds are lines: both of a box, one of a knife, and of a kick from where it begins', () => {
  const { extras, sewn } = pleated;
  const half = sewn.cloth.panels.reduce((sum, { across }) => sum + across, 0);
  const own = extras.pleats!.filter(({ column }) => column <= half);
  expect(own).toHaveLength(1 + 2 + 1 + 1);
  const kick = own.filter(({ from }) => from > 0);
  expect(kick).toHaveLength(1);
  const { strips } = sewn.cloth.panels[0]!;
  const spacing = 800 / strips[0]!.down;
  // Begins in the row that is next below 300 mm above the hem.
  expect(800 - kick[0]!.from * spacing).toBeLessThanOrEqual(300.01);
  expect(800 - kick[0]!.from * spacing).toBeGreaterThan(300 - 2 * spacing);
  // From the front: her centre seam, two side seams, and beside them the folds of the pleats there.
  const [front] = gownViews(hung(), ['front'], extras);
  expect(front!.seams.length).toBeGreaterThan(4);
});

it('a slit on her left is an edge from where it opens down to the hem', () => {
  const { extras, sewn } = taskWith([], { slits: [{ seam: 'front/side', 'above-hem': 400, side: 'left' }] });
  const seam = sewn.stations.find(({ name }) => name === 'front/side')!.column;
  expect(extras.slits).toHaveLength(1);
  expect(extras.slits![0]!.column).toBe(seam);
  expect(extras.slits![0]!.from).toBeCloseTo(400, 6);
});
