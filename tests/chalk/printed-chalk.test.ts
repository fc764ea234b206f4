import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Point } from '../../src/geometry/curve.ts';
import type { Edge } from '../../src/geometry/edge.ts';
import { pointAt } from '../../src/geometry/evaluate.ts';
import { projectFile } from '../cli/gorewright.ts';
import { made } from '../making/made.ts';
import { inputOf } from '../making/paper-input.ts';
import { printedLength } from '../print/printed-length.ts';
import { printedPieces } from './printed-piece.ts';

/**
 * The chalk paper set off on the cloth as a maker would, every letter, ordinate, swing and diagonal by its place on the
 * page, and held against dense samples of the very line that it is printed for.
 */
const SPECS = [
  'examples/lantern',
  'examples/puffin',
  'templates/one-sided',
  'templates/full-circle',
  'templates/boned-bodice',
];

interface Sampled {
  readonly name: string;
  readonly points: readonly Point[];
}

function sampled(edges: readonly Edge[], from: Point): Sampled[] {
  const all = edges.map(({ name, curves }) => ({
    name,
    points: curves.flatMap((curve) =>
      Array.from({ length: 81 }, (_, i) => {
        const { x, y } = pointAt(curve, i / 80);
        return { x: x - from.x, y: y - from.y };
      }),
    ),
  }));
  // Corners of a cut line stand as edges of one name: together they are the edge.
  return [...new Set(all.map(({ name }) => name))].map((name) => ({
    name,
    points: all.filter((own) => own.name === name).flatMap(({ points }) => points),
  }));
}

function distanceTo(at: Point, points: readonly Point[]): number {
  return Math.min(
    ...points.slice(1).map((b, i) => {
      const a = points[i]!;
      const [x, y] = [b.x - a.x, b.y - a.y];
      const size = x * x + y * y;
      const t = size === 0 ? 0 : Math.min(1, Math.max(0, ((at.x - a.x) * x + (at.y - a.y) * y) / size));
      return Math.hypot(at.x - a.x - t * x, at.y - a.y - t * y);
    }),
  );
}

/** The circle through a line's ends and middle; undefined where the line is straight. */
function circleThrough(points: readonly Point[]): { centre: Point; radius: number } | undefined {
  const [a, b, c] = [points[0]!, points[Math.floor(points.length / 2)]!, points.at(-1)!];
  const d = 2 * (a.x * (b.y - c.y) + b.x * (c.y - a.y) + c.x * (a.y - b.y));
  if (Math.abs(d) < 1e-3) return undefined;
  const [p, q, r] = [a, b, c].map(({ x, y }) => x * x + y * y) as [number, number, number];
  const centre = {
    x: (p * (b.y - c.y) + q * (c.y - a.y) + r * (a.y - b.y)) / d,
    y: (p * (c.x - b.x) + q * (a.x - c.x) + r * (b.x - a.x)) / d,
  };
  return { centre, radius: Math.hypot(a.x - centre.x, a.y - centre.y) };
}

/** `centre back seam` is the edge `centre-back`. */
function nameOf(edge: string): string {
  return edge.replace(/ seam$/, '').replaceAll(' ', '-');
}

describe.each(SPECS)('the chalk paper of %s, set off on the cloth', (file) => {
  const gown = made(readFileSync(projectFile(`${file}.yaml`), 'utf8'));
  const input = inputOf(gown);
  const [unit, step, every] = gown.gown.gown.units === 'in' ? [25.4, 25.4 / 32, 101.6] : [10, 1, 100];
  const printed = printedPieces(input, unit);
  /** The nearest mark to a place is so far from it at most. */
  const near = 0.72 * step;

  const pieces = input.chalk.map(({ table }, i) => {
    const own = printed[i]!;
    const side = /, her (left|right)/.exec(own.heading)?.[1];
    const cut = input.cutPieces.find(
      ({ gore, layers, piece }) =>
        own.heading.split(/[:,]/)[0] === (piece.part === 'bodice' ? `bodice ${gore}` : gore) &&
        layers.includes(table.layers[0]!) &&
        piece.side === side,
    )!;
    const alike = input.cutPieces.find(
      ({ gore, piece }) => gore === cut.gore && piece.part === cut.piece.part && piece.side === side,
    )!;
    const fold = cut.piece.edges.find(({ name }) => name === 'fold');
    const x = fold === undefined ? alike.piece.grain.from.x : pointAt(fold.curves[0]!, 0).x;
    const y = Math.min(
      ...sampled(cut.cutEdges, { x: 0, y: 0 }).flatMap(({ points }) => points.map((p) => p.y)),
    );
    return {
      own,
      cut,
      name: own.heading,
      cutLine: sampled(cut.cutEdges, { x, y }),
      seamLine: sampled(cut.piece.edges, { x, y }),
      side,
      x,
    };
  });

  it('has a heading for every piece, with how often it is cut', () => {
    expect(printed).toHaveLength(input.chalk.length);
    for (const { own, cut } of pieces) {
      const { edges, side, copies = 1 } = cut.piece;
      const folded = edges.some(({ name }) => name === 'fold');
      const isSingle = side !== undefined || copies > 1 || cut.piece.cut === 'single';
      const text = folded ? 'cut 1 on the fold' : isSingle ? `cut ${copies}` : 'cut 2, the second';
      expect(own.heading).toContain(`. ${text}`);
    }
  });

  it('puts every letter on the line that it is a corner of, and one at every corner', () => {
    for (const { own, name, cutLine, seamLine } of pieces) {
      for (const [letter, at] of own.corners) {
        const lines = letter === letter.toUpperCase() ? cutLine : seamLine;
        expect(
          Math.min(...lines.map(({ points }) => distanceTo(at, points))),
          `${name} ${letter}`,
        ).toBeLessThan(near + 0.05);
      }
      for (const { points } of seamLine) {
        const start = points[0]!;
        const letters = [...own.corners].filter(([letter]) => letter !== letter.toUpperCase());
        const away = letters.map(([, at]) => Math.hypot(at.x - start.x, at.y - start.y));
        expect(Math.min(...away), name).toBeLessThan(near + 0.05);
      }
    }
  });

  it('puts the letters of another layer on that layer’s own lines', () => {
    for (const [i, { own, cut, side, x }] of pieces.entries()) {
      const { others } = input.chalk[i]!;
      expect(own.others.size).toBe(others.length);
      for (const [layers, corners] of own.others) {
        const other = input.cutPieces.find(
          ({ gore, piece, layers: named }) =>
            gore === cut.gore &&
            piece.part === cut.piece.part &&
            piece.side === side &&
            layers.split(/, | and /).includes(named[0]!),
        )!;
        const top = sampled(other.cutEdges, { x: 0, y: 0 }).flatMap(({ points }) => points.map(({ y }) => y));
        const from = { x, y: Math.min(...top) };
        const [cutLine, seamLine] = [sampled(other.cutEdges, from), sampled(other.piece.edges, from)];
        expect(corners.size).toBe(
          others.find(({ table }) => table.layers[0] === other.layers[0])!.corners.length,
        );
        for (const [letter, at] of corners) {
          const lines = letter === letter.toUpperCase() ? cutLine : seamLine;
          const away = Math.min(...lines.map(({ points }) => distanceTo(at, points)));
          expect(away, `${own.heading} ${layers} ${letter}`).toBeLessThan(near + 0.05);
        }
      }
    }
  });

  it('sets ordinates off their own chord on to their own edge, at its deepest place and at each usual distance', () => {
    let count = 0;
    for (const { own, name, cutLine, seamLine } of pieces)
      for (const { from, to, edge, along, out } of own.chords) {
        const lines = from === from.toUpperCase() ? cutLine : seamLine;
        const [a, b] = [own.corners.get(from)!, own.corners.get(to)!];
        const length = Math.hypot(b.x - a.x, b.y - a.y);
        const way = { x: (b.x - a.x) / length, y: (b.y - a.y) / length };
        const line = lines.find((one) => one.name === nameOf(edge))!;
        expect(out).toHaveLength(along.length);
        for (const [i, distance] of along.entries()) {
          // Outlines run clockwise as the piece lies, down the page: away from it is to the left.
          const at = {
            x: a.x + way.x * distance + way.y * out[i]!,
            y: a.y + way.y * distance - way.x * out[i]!,
          };
          expect(distanceTo(at, line.points), `${name} ${from}–${to} ${distance}`).toBeLessThan(
            0.55 * step + 0.05,
          );
          count++;
        }
        const depths = line.points
          .map(({ x, y }) => ({
            along: (x - a.x) * way.x + (y - a.y) * way.y,
            deep: Math.abs((x - a.x) * way.y - (y - a.y) * way.x),
          }))
          .filter((one) => one.along > 0 && one.along < length);
        const deepest = Math.max(...depths.map(({ deep }) => deep));
        expect(Math.max(...out.map(Math.abs)), `${name} ${from}–${to}`).toBeGreaterThan(deepest - 0.6 * step);
        // One that all but meets a corner would blur it.
        for (let usual = every; usual < length; usual += every)
          if (Math.abs(length - usual - 4) > step)
            expect(
              along.some((distance) => Math.abs(distance - usual) < 0.01),
              `${name} ${from}–${to} ${usual}`,
            ).toBe(usual < length - 4);
      }
    expect(count).toBeGreaterThan(20);
  });

  it('swings every edge that is one circle, and no other, from its centre', () => {
    for (const { own, name, cutLine, seamLine } of pieces) {
      const read = own.swings.map((text) => {
        const match =
          /^(Cut|Seam) line of the (.+?): swing (.+?) from a point (.+?) (down|above the top), (.+)\.$/.exec(
            text,
          )!;
        const [, line, edge, radius, down, way, across] = match as unknown as string[];
        // Which way is said in words, never by a sign.
        expect(text).not.toContain('-');
        const left = across === 'on the grain line' ? '0' : across!.replace(/ (left|right) of it$/, '');
        return {
          line,
          edge: nameOf(edge!),
          radius: printedLength(radius!) * unit,
          y: printedLength(down!) * unit * (way === 'down' ? 1 : -1),
          x: printedLength(left) * unit * (across!.includes('left') ? -1 : 1),
        };
      });
      const wanted = [
        ['Cut', cutLine],
        ['Seam', seamLine],
      ] as const;
      for (const [line, edges] of wanted)
        for (const edge of edges) {
          const swing = read.find((one) => one.line === line && one.edge === edge.name);
          const circle = circleThrough(edge.points);
          const isCircle =
            circle !== undefined &&
            circle.radius <= 3000 &&
            edge.points.every(
              ({ x, y }) =>
                Math.abs(Math.hypot(x - circle.centre.x, y - circle.centre.y) - circle.radius) < 1e-4,
            );
          expect(swing !== undefined, `${name} ${line} ${edge.name}`).toBe(isCircle);
          if (swing === undefined) continue;
          for (const { x, y } of edge.points)
            expect(Math.abs(Math.hypot(x - swing.x, y - swing.y) - swing.radius)).toBeLessThan(1.25 * step);
        }
    }
  });

  it('gives the two diagonals between opposite corners of the seam line', () => {
    for (const { own, name, seamLine } of pieces) {
      if (seamLine.length !== 4) continue;
      const pairs = [...own.diagonals.matchAll(/([a-z]+)–([a-z]+) ([^;]+?)(?:;|\.$)/g)];
      expect(pairs, name).toHaveLength(2);
      expect(new Set(pairs.flatMap(([, a, b]) => [a, b])).size, name).toBe(4);
      for (const [, a, b, length] of pairs) {
        const [from, to] = [own.corners.get(a!)!, own.corners.get(b!)!];
        const beside = seamLine.filter(
          ({ points }) => distanceTo(from, points) < 1.5 && distanceTo(to, points) < 1.5,
        );
        expect(beside, `${name} ${a}–${b}`).toEqual([]);
        const starts = seamLine.map(({ points }) => points[0]!);
        const trueTo = (at: Point) =>
          starts.reduce((best, one) =>
            Math.hypot(one.x - at.x, one.y - at.y) < Math.hypot(best.x - at.x, best.y - at.y) ? one : best,
          );
        const [p, q] = [trueTo(from), trueTo(to)];
        expect(Math.abs(printedLength(length!) * unit - Math.hypot(p.x - q.x, p.y - q.y)), name).toBeLessThan(
          0.51 * step,
        );
      }
    }
  });
});
