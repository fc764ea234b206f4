import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { bustleAdvice, type PointOffered } from '../../src/hanging/bustle-advice.ts';
import { type Hang, hangOf } from '../../src/hanging/hang.ts';
import { hangCloth } from '../../src/hanging/hang-cloth.ts';
import { hangTask } from '../../src/hanging/hang-task.ts';
import { AROUND, DRAWN_UP, SETTLINGS } from '../../src/hanging/hung-gown.ts';
import type { Tie } from '../../src/hanging/sewn-cloth.ts';
import { draft } from '../../src/pipeline.ts';

/** A hem of eleven columns of her left, two of the given cloth to each, by its heights; mm. */
const hemOf = (heights: readonly number[]): Hang =>
  ({
    columns: 20,
    rows: 2,
    stride: 2,
    mirrored: true,
    place: Float64Array.from(
      [...heights, ...heights.slice(1, -1).reverse()].flatMap((height) => [0, 0, 900, 0, 0, height]),
    ),
  }) as never;
const sewn = { closing: 'mirrored' } as never;
const offer = (column: number): PointOffered => ({
  point: {
    gore: 'back',
    across: column / 20,
    copies: 2,
    anchor: 0,
    pickUp: 0,
    lift: 0,
    loopBottom: 0,
    aboveHem: 0,
  },
  ties: [{ column, anchor: 100, pickUp: 200, outside: 0 }],
});
const UP = Array.from({ length: 11 }, () => 40);
const columnsOf = (ties: readonly Tie[]): number[] => ties.map(({ column }) => column);

describe('where a bustle wants a point more', () => {
  const offered = [2, 6, 10, 14, 18].map(offer);

  it('nothing where no part of the hem lies', () => {
    expect(bustleAdvice({ offered, sewn }, hemOf(UP), () => hemOf(UP))).toBeUndefined();
  });

  it('next to the middle of what lies, for each stretch, of her left', () => {
    const low = UP.map((height, i) => ([2, 3, 4, 9, 10].includes(i) ? 1 : height));
    // Of columns 4 to 8 of the cloth the middle is 6; of 18 to 20 it is 19.
    const asked: number[][] = [];
    const advice = bustleAdvice({ offered, sewn }, hemOf(low), (ties) => {
      asked.push(columnsOf(ties));
      return hemOf(ties.length < 2 ? low : UP);
    });
    expect(asked[0]).toEqual([6, 18]);
    expect(advice?.clears).toBe(true);
    expect(advice?.points.map(({ across }) => across)).toEqual([0.3, 0.9]);
  });

  it('leaves out again what came to nothing once its neighbour stood', () => {
    const low = UP.map((height, i) => (i === 5 ? 0 : height));
    // It clears with the one at 14 alone, which is tried last.
    const advice = bustleAdvice({ offered, sewn }, hemOf(low), (ties) =>
      hemOf(columnsOf(ties).includes(14) ? UP : low),
    );
    expect(advice).toMatchObject({ clears: true, points: [{ across: 0.7 }] });
  });

  it('says so where nothing clears it', () => {
    const low = UP.map((height, i) => (i === 5 ? 0 : height));
    expect(bustleAdvice({ offered: offered.slice(0, 2), sewn }, hemOf(low), () => hemOf(low))).toMatchObject({
      clears: false,
      points: [{ across: 0.3 }, { across: 0.1 }],
    });
  });
});

/** Trains that lie on the floor between the points that are advised at their seams. */
it.each([
  ['round-train', 4],
  ['square-train', 4],
])(
  'hung with the points that it is advised, no part of the hem of %s lies on the floor',
  (name, clearance) => {
    const file = join(import.meta.dirname, '../../templates', `${name}.yaml`);
    const text = readFileSync(file, 'utf8').replace(
      /^bustle:.*(\n {2}.*)*/m,
      `bustle: {kind: over, clearance: ${clearance}}`,
    );
    const taskOf = (own: string) => hangTask(draft({ name: file, text: own }).gown!);
    const task = taskOf(text);
    const around = { body: task.sewn.body, ...AROUND };
    const mesh = hangCloth(task.sewn.cloth, around, SETTLINGS);
    const hangWith = (ties: readonly Tie[]): Hang =>
      hangOf(task.sewn, hangCloth(task.sewn.cloth, around, DRAWN_UP, { ties, from: mesh }));
    const before = hangWith(task.ties);
    const advice = bustleAdvice(task, before, (more) => hangWith([...task.ties, ...more]))!;
    expect(lowest(before)).toBeLessThan(4);
    expect(advice.clears).toBe(true);
    // Written into the spec, as a maker would, beside those at the seams.
    const { points } = draft({ name: file, text }).gown!.facts.bustle.facts!;
    const listed = [...points, ...advice.points].map(({ seam, gore, across, anchor }) =>
      seam === undefined
        ? `{gore: ${gore}, across: ${across * 100}%, anchor: ${anchor}mm}`
        : `{seam: ${seam}, anchor: ${anchor}mm}`,
    );
    const again = taskOf(
      text.replace(/^bustle: \{kind: over,/m, `bustle: {kind: over, points: [${listed.join(', ')}],`),
    );
    expect(again.ties.length).toBe(task.ties.length + advice.points.length);
    expect(lowest(hangWith(again.ties))).toBeGreaterThan(4);
  },
);

/** Of the hem's vertices, mm. */
function lowest({ place, rows, columns }: Hang): number {
  return Math.min(
    ...Array.from({ length: columns }, (_, column) => place[3 * (column * rows + rows - 1) + 2]!),
  );
}
