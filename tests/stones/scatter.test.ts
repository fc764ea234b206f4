import { describe, expect, it } from 'vitest';
import type { Point } from '../../src/geometry/curve.ts';
import { distanceFor, type Patch, scattered } from '../../src/stones/scatter.ts';
import { seamLine } from '../../src/stones/seam-line.ts';

const line = (from: Point, to: Point) => seamLine([{ kind: 'line', from, to }]);

/** A rectangle of cloth, its left and right sides free. */
function rectangle(width: number, height: number, densityAt: Patch['densityAt'], left = 0): Patch {
  return {
    outline: [
      { x: left, y: 0 },
      { x: left + width, y: 0 },
      { x: left + width, y: height },
      { x: left, y: height },
    ],
    sides: [],
    densityAt,
  };
}

function leastApart(points: readonly Point[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (const [i, a] of points.entries())
    for (const b of points.slice(i + 1)) least = Math.min(least, Math.hypot(a.x - b.x, a.y - b.y));
  return least;
}

describe('an even scatter', () => {
  it.each([5, 20, 60])('of %s stones a square decimetre has as many as were asked for', (density) => {
    // Large enough that what hangs over the edges does not count for much.
    const side = 1400 / Math.sqrt(density) + 300;
    const [stones] = scattered([rectangle(side, side, () => density)], 1);
    const asked = (density * side * side) / 1e4;
    // 0.62 · area / d² (Bridson 2007, 30 tries; simulated 0.622); an edge takes a little more.
    expect(stones!.length / asked).toBeGreaterThan(0.97);
    expect(stones!.length / asked).toBeLessThan(1.12);
    expect(leastApart(stones!)).toBeGreaterThanOrEqual(distanceFor(density) - 1e-9);
  });

  it('is never denser than random packing allows, nor leaves a hole that would take a stone', () => {
    const apart = distanceFor(20);
    const [stones] = scattered([rectangle(600, 600, () => 20)], 2);
    let holes = 0;
    for (let x = apart; x < 600 - apart; x += 5)
      for (let y = apart; y < 600 - apart; y += 5)
        if (stones!.every((stone) => Math.hypot(stone.x - x, stone.y - y) > 2 * apart)) holes++;
    expect(holes).toBe(0);
    // 0.696 is the random limit, counted inside a border so that the edge takes nothing.
    const inside = stones!.filter(({ x, y }) => x > 50 && x < 550 && y > 50 && y < 550).length;
    expect((inside * apart * apart) / (500 * 500)).toBeLessThan(0.72);
  });

  it('fades from the first figure to the second', () => {
    const densityAt = ({ y }: Point) => (y > 800 ? 0 : 60 + ((5 - 60) * y) / 800);
    const [stones] = scattered([rectangle(500, 1000, densityAt)], 3);
    for (let top = 0; top < 800; top += 200) {
      const own = stones!.filter(({ y }) => y >= top && y < top + 200).length;
      const asked = (densityAt({ x: 0, y: top + 100 }) * 500 * 200) / 1e4;
      expect(own / asked).toBeGreaterThan(0.85);
      expect(own / asked).toBeLessThan(1.25);
    }
    expect(stones!.filter(({ y }) => y > 800)).toEqual([]);
  });

  it('keeps its distance across a seam, to the neighbour and to its own mirror image', () => {
    const [width, height, density] = [150, 400, 30];
    const right = (left: number) => line({ x: left + width, y: 0 }, { x: left + width, y: height });
    const left = (at: number) => line({ x: at, y: 0 }, { x: at, y: height });
    // Two rectangles drawn far from each other; the first is mirrored at its left, the second at its right.
    const first: Patch = {
      ...rectangle(width, height, () => density),
      sides: [
        { line: left(0), beyond: { patch: 0, line: left(0), mirrored: true } },
        { line: right(0), beyond: { patch: 1, line: left(900), mirrored: false } },
      ],
    };
    const second: Patch = {
      ...rectangle(width, height, () => density, 900),
      sides: [
        { line: left(900), beyond: { patch: 0, line: right(0), mirrored: false } },
        { line: right(900), beyond: { patch: 1, line: right(900), mirrored: true } },
      ],
    };
    const [one, two] = scattered([first, second], 4);
    // Sewn together by hand: the second piece beside the first, and both again as a mirror image.
    const half = [...one!, ...two!.map(({ x, y }) => ({ x: x - 900 + width, y }))];
    const sewn = [
      ...half,
      ...half.map(({ x, y }) => ({ x: -x, y })),
      ...half.map(({ x, y }) => ({ x: 4 * width - x, y })),
    ];
    expect(leastApart(sewn)).toBeGreaterThanOrEqual(distanceFor(density) - 1e-6);
    // And no bare strip along the seam: as many within a distance of it as anywhere.
    const apart = distanceFor(density);
    const beside = half.filter(({ x }) => Math.abs(x - width) < apart).length;
    const elsewhere = half.filter(({ x }) => Math.abs(x - width / 2) < apart).length;
    expect(beside / elsewhere).toBeGreaterThan(0.7);
  });

  it('is the same from the same seed, and another from another', () => {
    const patches = [rectangle(300, 300, () => 20)];
    expect(scattered(patches, 7)).toEqual(scattered(patches, 7));
    expect(scattered(patches, 7)).not.toEqual(scattered(patches, 8));
  });
});
