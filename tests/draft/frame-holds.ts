import { expect } from 'vitest';
import type { GoreFrame } from '../../src/draft/gore-frame.ts';
import { at, distanceTo, lengthOf, type Place, sampled } from '../fittings/sampled.ts';

/** Half of the step of a difference, mm or part of the width. */
const STEP = 1e-3;

const between = (a: Place, b: Place, over: number): Place => ({
  x: (b.x - a.x) / over,
  y: (b.y - a.y) / over,
});
const apart = (a: Place, b: Place): number => Math.hypot(a.x - b.x, a.y - b.y);

/**
 * What any way of laying a gore flat has to hold, whatever its shape, by differences and chords of its own points: widths
 * are lengths of its levels, a level's parts are parts of its length, "down" is square to the level, points move with the slant as is said, levels meet both edges
 * squarely, and lines run where the points are.
 * @param near mm: what a fitted or a looked-up line may be off by
 */
export function expectFrame(frame: GoreFrame, levels: readonly number[], near = 0.01): void {
  for (const s of levels) {
    const line = Array.from({ length: 21 }, (_, i) => frame.pointAt(s, i / 20));
    const width = frame.widthAt(s);
    expect(Math.abs(lengthOf(line) - width), `width at ${s}`).toBeLessThan(near + width * 2e-4);
    expect(Math.abs(lengthOf(line.slice(0, 7)) - 0.3 * width), `0.3 of it at ${s}`).toBeLessThan(
      near + width * 2e-4,
    );
    const level = frame.levelAt(s);
    const drawn = sampled(level, 100);
    for (const f of [0, 0.2, 0.5, 0.9, 1])
      expect(distanceTo(drawn, frame.pointAt(s, f)), `level ${s} at ${f}`).toBeLessThan(near);
    expect(apart(drawn[0]!, line[0]!), `level ${s} begins`).toBeLessThan(near);
    expect(apart(drawn.at(-1)!, line[20]!), `level ${s} ends`).toBeLessThan(near);
    for (const f of [0.001, 0.25, 0.5, 0.999]) {
      const across = between(frame.pointAt(s, f - STEP), frame.pointAt(s, f + STEP), 2 * STEP * width);
      const down = frame.downAt(s, f);
      expect(
        Math.hypot(across.x - Math.cos(down), across.y + Math.sin(down)),
        `down at ${s}, ${f}`,
      ).toBeLessThan(2e-3);
    }
    for (const f of [0, 0.3, 0.8, 1]) {
      const slanted = between(frame.pointAt(s - 0.5, f), frame.pointAt(s + 0.5, f), 1);
      const said = frame.bySlant(s, f);
      expect(apart(slanted, said), `with the slant at ${s}, ${f}`).toBeLessThan(2e-3);
      if (f !== 0 && f !== 1) continue;
      expect(Math.hypot(said.x, said.y), `pace of an edge at ${s}`).toBeCloseTo(1, 5);
      const down = frame.downAt(s, f);
      expect(
        Math.abs(said.x * Math.cos(down) - said.y * Math.sin(down)),
        `square at ${s}, ${f}`,
      ).toBeLessThan(2e-3);
    }
  }
  const [first, last] = [Math.min(...levels), Math.max(...levels)];
  for (const [side, f] of [
    ['front', 0],
    ['back', 1],
  ] as const) {
    const run = frame.sideFrom(side, first, last);
    const line = sampled(run, 100);
    expect(apart(at(run[0]!, 0), frame.pointAt(first, f)), `${side} begins`).toBeLessThan(near);
    expect(apart(at(run[run.length - 1]!, 1), frame.pointAt(last, f)), `${side} ends`).toBeLessThan(near);
    expect(Math.abs(lengthOf(line) - (last - first)), `${side} is as long as its slant`).toBeLessThan(0.02);
    for (const s of levels)
      expect(distanceTo(line, frame.pointAt(s, f)), `${side} at ${s}`).toBeLessThan(near + 0.005);
  }
}
