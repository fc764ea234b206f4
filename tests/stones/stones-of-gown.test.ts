import { describe, expect, it } from 'vitest';
import type { Curve } from '../../src/geometry/curve.ts';
import { pointAt } from '../../src/geometry/evaluate.ts';
import type { Mark } from '../../src/print/drawing.ts';
import { jobSheet } from '../../src/print/papers/job-sheet.ts';
import { placingChart } from '../../src/print/papers/placing-chart.ts';
import { stoneReport } from '../../src/report/stone-report.ts';
import { made, skirt } from '../making/made.ts';
import { inputOf } from '../making/paper-input.ts';
import { printedLines, rowsUnder } from '../print/page-rows.ts';

const LABOUR = 'labour: {rate: 20, tasks: {making: 10}}\ncurrency: EUR';
const set = (rest: string) =>
  made(skirt({ more: `stones:\n  - {name: beads, layer: shell, ${rest}}\n${LABOUR}` }));

const points = (curves: readonly Curve[]) =>
  curves.flatMap((curve) => Array.from({ length: 201 }, (_, i) => pointAt(curve, i / 200)));

describe('stones on a gown', () => {
  const even = set('sold-as: 11/0, per-dm2: 6, clear: 1, price-per: 0.02, per-hour: 90');
  const [facts] = even.facts.stones;
  const drafted = even.gown.drafts.layers[0]!.draft.pieces;

  it('as many as were asked for on the area inside their borders', () => {
    for (const [i, { stones, outline }] of facts!.pieces.entries()) {
      const twice = outline.reduce((sum, a, k) => {
        const b = outline[(k + 1) % outline.length]!;
        return sum + a.x * b.y - b.x * a.y;
      }, 0);
      const edge = points(drafted[i]!.edges.flatMap(({ curves }) => curves));
      const round = edge
        .slice(1)
        .reduce((sum, b, k) => sum + Math.hypot(b.x - edge[k]!.x, b.y - edge[k]!.y), 0);
      // 10 mm clear and half a bead of 2.1 on every side; what stands at a border takes a little more.
      const area = Math.abs(twice) / 2 - round * 11.05;
      const asked = (6 * area) / 1e4;
      expect(stones.length / asked).toBeGreaterThan(0.95);
      expect(stones.length / asked).toBeLessThan(1.2);
    }
  });

  it('each clear of every seam and edge, by dense samples of the draft', () => {
    for (const [i, { stones }] of facts!.pieces.entries()) {
      const edge = points(drafted[i]!.edges.flatMap(({ curves }) => curves));
      const nearest = stones.map(({ x, y }) => Math.min(...edge.map((at) => Math.hypot(at.x - x, at.y - y))));
      // A chord of the samples may pass a hair nearer.
      expect(Math.min(...nearest)).toBeGreaterThan(11.05 - 0.3);
    }
  });

  it('counted, weighed, priced and charged on the job sheet as on the chart', () => {
    const both = facts!.pieces.reduce((sum, { stones }) => sum + 2 * stones.length, 0);
    const rows = rowsUnder(printedLines(jobSheet(inputOf(even)).pages), [
      'set',
      'on',
      'across',
      'how many',
      'gross',
      'weight',
      'hours',
      'cost',
    ]);
    // 144 a gross (from memory); 9.52 g a thousand of 11/0, from a published count of 1050 in 10 g.
    const gross = Math.ceil(both / 144);
    expect(rows).toEqual([
      [
        'beads',
        'shell',
        '11/0, 2.1 mm',
        String(both),
        String(gross),
        `${Math.round((both * 9.52) / 1000)} g`,
        String(Number((both / 90).toFixed(2))),
        (Math.round(both * 2) / 100).toFixed(2),
      ],
    ]);
    const quote = even.facts.pricing.quote!;
    // Ten hours and the beads', at 20.
    expect(Number(quote.labour.minor)).toBe(100 * 10 * 20 + Math.round((both / 90) * 20 * 100));
  });

  it('in the report, each figure by its own arithmetic', () => {
    const count = facts!.pieces.reduce((sum, { stones }) => sum + 2 * stones.length, 0);
    // 9.52 g a thousand of 11/0 and 144 a gross, as above; 90 an hour, 0.02 each.
    const [row, ...more] = stoneReport(even.facts);
    expect(more).toEqual([]);
    expect(row).toEqual({
      name: 'beads',
      layer: 'shell',
      count,
      gross: Math.ceil(count / 144),
      grams: expect.closeTo(count * 0.00952, 3),
      hours: expect.closeTo(count / 90, 3),
      cost: (Math.round(count * 2) / 100).toFixed(2),
    });
    const [bare] = stoneReport(set('size: 4mm, per-dm2: 1').facts);
    expect(Object.keys(bare!)).toEqual(['name', 'layer', 'count', 'gross']);
  });

  it('in the weight of the skirt, which is not known where theirs is not', () => {
    const { stones, weight } = even.facts;
    const cloth = weight.layers.reduce((sum, { withAllowances }) => sum + withAllowances!, 0);
    expect(weight.inAll! - cloth).toBeCloseTo(stones[0]!.count * 0.00952, 6);
    const printed = printedLines(jobSheet(inputOf(even)).pages);
    const heads = ['layer', 'cloth', 'sewn area', 'cut area', 'weight', 'thread to buy'];
    const rows = rowsUnder(printed, heads);
    expect(rows.find(([name]) => name === 'beads')?.filter((cell) => cell !== '')).toEqual([
      'beads',
      `${Math.round(stones[0]!.count * 0.00952)} g`,
    ]);
    const unknown = set('size: 4mm, per-dm2: 1').facts;
    expect(unknown.weight.inAll).toBeUndefined();
    expect(unknown.missing).toContainEqual({ fact: 'cloth-weight', names: ['beads'] });
  });

  it('on the chart: a dot for each, where it lies on the piece', () => {
    const { marks } = placingChart(
      facts!.stones,
      facts!.pieces,
      { width: 180, height: 200 },
      (name, count) => `${name} ${count}`,
    );
    const paths = marks.filter((mark): mark is Extract<Mark, { kind: 'path' }> => mark.kind === 'path');
    for (const [i, { stones, outline }] of facts!.pieces.entries()) {
      const [cloth, dots] = [paths[2 * i]!, paths[2 * i + 1]!];
      expect(dots.runs).toHaveLength(stones.length);
      const drawn = cloth.runs[0]!.map((line) => pointAt(line, 0));
      const scale =
        (drawn[1]!.x - drawn[0]!.x) / (outline[1]!.x - outline[0]!.x || 1) ||
        (drawn[1]!.y - drawn[0]!.y) / (outline[1]!.y - outline[0]!.y);
      for (const [k, stone] of stones.entries()) {
        const middle = pointAt(dots.runs[k]![0]!, 0.5);
        expect(middle.x - drawn[0]!.x).toBeCloseTo(scale * (stone.x - outline[0]!.x), 6);
        expect(middle.y - drawn[0]!.y).toBeCloseTo(scale * (stone.y - outline[0]!.y), 6);
      }
    }
  });

  it('none where she sits, and only within the span', () => {
    const [own] = set('size: 4mm, per-dm2: [12, 2], over: [0, 50], off-seat: [10, 30]').facts.stones;
    const depths = own!.pieces.map(({ outline, stones }) => {
      const top = Math.min(...outline.map(({ y }) => y));
      return stones.map(({ y }) => y - top);
    });
    const [front, , back] = depths as [number[], number[], number[]];
    // Gores of so little flare: within 15 mm of the distance off the waist edge.
    expect(Math.max(...depths.flat())).toBeLessThan(500 + 15);
    expect(back.filter((depth) => depth > 115 && depth < 285)).toEqual([]);
    expect(front.filter((depth) => depth > 115 && depth < 285).length).toBeGreaterThan(5);
    expect(back.filter((depth) => depth > 315).length).toBeGreaterThan(0);
  });
});
