import { describe, expect, it } from 'vitest';
import type { Point } from '../../src/geometry/curve.ts';
import { pointAt } from '../../src/geometry/evaluate.ts';
import { hangTask } from '../../src/hanging/hang-task.ts';
import { draft } from '../../src/pipeline.ts';
import { jobSheet } from '../../src/print/papers/job-sheet.ts';
import { bustleReport } from '../../src/report/bustle-report.ts';
import { printedLines, rowsUnder } from '../print/page-rows.ts';
import { example, type Made, made } from './made.ts';
import { inputOf } from './paper-input.ts';

/** Three sectors a half, 20 degrees each; cloth is 130 long all round, and the floor drops from 104 to 116 behind. */
const LEVEL = `format: 1
gown: Trial
units: cm
bodice: {waist-seam: 72, panels: {front: 12, side: 12, back: 12}}
gores:
  - {name: front, top: 12, flare: [10deg, 10deg]}
  - {name: side, top: 12, flare: [10deg, 10deg]}
  - {name: back, top: 12, flare: [10deg, 10deg]}
lengths:
  measured: finished
  at: {centre-front: 130, front/side: 130, side/back: 130, centre-back: 130}
  to-floor: {centre-front: 104, front/side: 104, side/back: 108, centre-back: 116}
allowances: {seam: 1.5, waist: 1.5, hem: 1.5}
layers: [{name: shell, cloth: crepe, hem: turned}]
cloths: {crepe: {width: 140, selvedge: 1, weight: 100}}
`;
const bustle = (points: string): string => `bustle: {kind: over, clearance: 2, points: [${points}]}\n`;
const POINTS = '{gore: back, across: 25%, anchor: 14}, {gore: side, across: 50%, anchor: 14}';

const level = made(LEVEL + bustle(`${POINTS}, {gore: back, across: 100%, anchor: 14}`));

const PINNED = '\nfittings:\n  - {date: 2027-03-01, side: left, hem: {FRONT/SIDE: 1}}\n';
const onePinned = (text: string, seam: string): Made => made(text + PINNED.replace('FRONT/SIDE', seam));

describe('a point on a gore of a level skirt, closed form', () => {
  it('lifts what hangs below the floor on its line, and each side has one', () => {
    // The floor a quarter across the back: 108 + (116 − 108) / 4 = 110; 130 − (110 − 2) = 22.
    // Half across the side: 106, and 130 − 104 = 26. At the centre back: 130 − 114 = 16, and there is one of it.
    expect(level.facts.bustle?.points).toMatchObject([
      { gore: 'back', across: 0.25, copies: 2, lift: expect.closeTo(220, 4), pickUp: expect.closeTo(360, 4) },
      { gore: 'side', across: 0.5, copies: 2, lift: expect.closeTo(260, 4), pickUp: expect.closeTo(400, 4) },
      { gore: 'back', across: 1, copies: 1, lift: expect.closeTo(160, 4), pickUp: expect.closeTo(300, 4) },
    ]);
    expect(level.facts.bustle?.number).toBe(5);
  });

  it('stays so where a hem pinned on one side makes two halves of it', () => {
    const points = onePinned(LEVEL + bustle(POINTS), 'centre-front').facts.bustle?.points;
    expect(points?.map(({ gore, copies, side }) => [gore, copies, side])).toEqual([
      ['back', 2, undefined],
      ['side', 2, undefined],
    ]);
    const centre = onePinned(LEVEL + bustle('{gore: back, across: 100%, anchor: 14}'), 'side/back').facts
      .bustle;
    expect(centre?.points.map(({ copies, side }) => [copies, side])).toEqual([[1, undefined]]);
    // Pinned up by 1 at the side/back seam alone her left back is shorter a quarter across, and not her right.
    const apart = onePinned(LEVEL + bustle(POINTS), 'side/back').facts.bustle?.points.slice(0, 2);
    expect(apart?.map(({ gore, copies, side }) => [gore, copies, side])).toEqual([
      ['back', 1, 'left'],
      ['back', 1, 'right'],
    ]);
    expect(apart?.[1]?.lift).toBeCloseTo(220, 4);
    expect(apart?.[0]?.lift).toBeLessThan(215);
    expect(apart?.[0]?.lift).toBeGreaterThan(209);
  });

  it('names the seams beside it whose floor nobody measured', () => {
    const text = LEVEL + bustle('{gore: side, across: 50%, anchor: 14}');
    const between = made(text.replace('side/back: 108, ', '')).facts;
    expect(between.bustle?.estimated).toEqual(['side/back']);
    // The floor goes evenly from 104 to 116 over two gores as wide: 110 at the seam, 107 half across; 130 − 105 = 25.
    expect(between.bustle?.points).toMatchObject([{ lift: expect.closeTo(250, 4) }]);
    const unknown = made(text.replace(', side/back: 108, centre-back: 116', '')).facts.bustle;
    expect(unknown?.withoutFloor).toEqual(['side/back']);
    expect(unknown?.points).toEqual([]);
  });

  it('goes from front edge to back edge on both sides of a skirt whose sides differ', () => {
    const ring = LEVEL.replace('units: cm', 'units: cm\nsymmetry: none')
      .replace(/bodice:.*/, 'bodice: {waist-seam: 72, panels: {fl: 18, bl: 18, br: 18, fr: 18}}')
      .replace(
        /gores:[\s\S]*?(?=lengths:)/,
        `gores:\n${['fl', 'bl', 'br', 'fr'].map((name) => `  - {name: ${name}, top: 18, flare: [10deg, 10deg]}\n`).join('')}`,
      )
      .replace(/ at: .*/, ' at: {fr/fl: 130, fl/bl: 130, bl/br: 130, br/fr: 130}')
      .replace(/ to-floor: .*/, ' to-floor: {fr/fl: 104, fl/bl: 108, bl/br: 116, br/fr: 108}');
    const points = '{gore: bl, across: 75%, anchor: 14}, {gore: br, across: 75%, anchor: 14}';
    // Three quarters towards the back the floor is 108 + 6 below: 130 − (114 − 2) = 18, on her left as on her right.
    expect(made(ring + bustle(points)).facts.bustle?.points).toMatchObject([
      { gore: 'bl', copies: 1, lift: expect.closeTo(180, 4) },
      { gore: 'br', copies: 1, lift: expect.closeTo(180, 4) },
    ]);
  });

  it('stands in the job sheet and in the report by gore and share', () => {
    const lines = printedLines(jobSheet(inputOf(level)).pages);
    const heads = ['seam or gore', 'points', 'anchor', 'pick-up', 'lift', 'loop ends', 'above the hem'];
    // Pick-up: anchor + lift; a loop of 2; above the hem: 130 − where the loop ends.
    expect(rowsUnder(lines, heads)).toEqual([
      ['back, 25 % across', '2', '14.0', '36.0', '22.0', '38.0', '92.0'],
      ['side, 50 % across', '2', '14.0', '40.0', '26.0', '42.0', '88.0'],
      ['back, 100 % across', '1', '14.0', '30.0', '16.0', '32.0', '98.0'],
    ]);
    const said = lines.flatMap((line) => line.map(({ text }) => text)).join(' ');
    expect(said).toContain('side, 50 % across anchor 14.0, pick-up 40.0');
    expect(bustleReport(level.facts.bustle!)).toMatchObject({
      number: 5,
      points: [
        { gore: 'back', across: 0.25, copies: 2, anchor: 140, pickUp: 360, lift: 220 },
        { gore: 'side', across: 0.5, copies: 2, anchor: 140, pickUp: 400, lift: 260 },
        { gore: 'back', across: 1, copies: 1, anchor: 140, pickUp: 300, lift: 160 },
      ],
    });
  });

  it('is drawn up between the columns of its gore', () => {
    const { sewn, ties } = hangTask(level.gown);
    const columns = sewn.stations.map(({ column }) => column);
    // From the front: front, side, back; on even columns.
    const across = columns[3]! - columns[2]!;
    expect(ties).toHaveLength(3);
    expect(Math.abs(ties[0]!.column - (columns[2]! + across / 4))).toBeLessThanOrEqual(1);
    expect(Math.abs(ties[1]!.column - (columns[1]! + columns[2]!) / 2)).toBeLessThanOrEqual(1);
    expect(ties[2]!.column).toBe(columns[3]);
  });
});

describe('on a gore whose hem falls behind', () => {
  /** Where two straight side edges of a sector meet. */
  const apexOf = ([a, b]: [Point, Point], [c, d]: [Point, Point]): Point => {
    const [ux, uy, vx, vy] = [b.x - a.x, b.y - a.y, d.x - c.x, d.y - c.y];
    const t = ((c.x - a.x) * vy - (c.y - a.y) * vx) / (ux * vy - uy * vx);
    return { x: a.x + t * ux, y: a.y + t * uy };
  };

  it.each([0.2, 0.5, 0.85])(
    'its length is that of the ray from the point of the sector (%s across)',
    (share) => {
      const { gown, facts } = made(
        example('lantern').replace(
          /( {2}points:)/,
          `$1\n    - {gore: back, across: ${share * 100}%, anchor: 14}`,
        ),
      );
      const { edges } = gown.drafts.gown.pieces[4]!;
      const drawn = (k: number): Point[] =>
        edges[k]!.curves.flatMap((curve) => Array.from({ length: 2001 }, (_, i) => pointAt(curve, i / 2000)));
      const [top, behind, hem, before] = [0, 1, 2, 3].map(drawn) as [Point[], Point[], Point[], Point[]];
      const apex = apexOf([behind[0]!, behind.at(-1)!], [before[0]!, before.at(-1)!]);
      const turned = ({ x, y }: Point): number => Math.atan2(x - apex.x, y - apex.y);
      const [front, back] = [turned(before[0]!), turned(behind[0]!)];
      const ray = front + (back - front) * share;
      const reach = (edge: Point[]): number => {
        const near = [...edge].sort((a, b) => Math.abs(turned(a) - ray) - Math.abs(turned(b) - ray))[0]!;
        return Math.hypot(near.x - apex.x, near.y - apex.y);
      };
      const point = facts.bustle!.points.find(({ gore }) => gore === 'back')!;
      // Both seams beside it have the floor 111.5 below them, and the hem clears it by 2.
      expect(Math.abs(point.lift - (reach(hem) - reach(top) - 1095))).toBeLessThan(0.6);
      expect(point.copies).toBe(2);
    },
  );
});

describe('what is no place', () => {
  it.each([
    ['{gore: sleeve, across: 50%, anchor: 14}', 'unknown-gore'],
    ['{gore: back, across: 120%, anchor: 14}', 'measure-out-of-bounds'],
    ['{gore: back, across: -5%, anchor: 14}', 'negative-measure'],
    ['{anchor: 14}', 'bustle-point-nowhere'],
    ['{across: 50%, anchor: 14}', 'bustle-point-nowhere'],
    ['{gore: back, anchor: 14}', 'bustle-point-nowhere'],
    ['{seam: side/back, gore: back, across: 50%, anchor: 14}', 'bustle-point-twice'],
    ['{seam: side/back, across: 50%, anchor: 14}', 'bustle-point-twice'],
  ])('%s', (point, code) => {
    const { diagnostics } = draft({ name: 'trial.yaml', text: LEVEL + bustle(point) });
    expect(diagnostics.filter(({ level: own }) => own === 'error').map((one) => one.code)).toEqual([code]);
  });
});

it('a point on a gore is marked on the piece that carries it, a ring and a cross on one line down it', () => {
  const layers =
    'layers: [{name: lining, cloth: crepe, hem: turned, shorter: 3}, {name: shell, cloth: crepe, hem: turned}]';
  const text = LEVEL.replace(/layers: .*/, layers) + bustle('{gore: back, across: 25%, anchor: 14}');
  const pieces = draft({ name: 'trial.yaml', text }).gown!.cut.pieces;
  const marked = pieces.filter(({ marks }) => marks.some(({ name }) => name.startsWith('bustle')));
  expect(marked.map(({ gore, layers: carry }) => [gore, ...carry])).toEqual([['back', 'shell']]);
  const [{ marks, piece }] = [marked[0]!];
  const corners = (wanted: string): Point[] =>
    marks
      .filter(({ name }) => name === wanted)
      .flatMap(({ curves }) => curves.flatMap((curve) => [pointAt(curve, 0), pointAt(curve, 1)]));
  const middleOf = (points: readonly Point[]): Point => ({
    x: points.reduce((sum, { x }) => sum + x, 0) / points.length,
    y: points.reduce((sum, { y }) => sum + y, 0) / points.length,
  });
  const [ring, cross] = ['bustle-anchor', 'bustle-pick-up'].map((name) => middleOf(corners(name)));
  // A quarter across 20° is 5° from the front seam, a straight line; the waist's radius is 12 cm over 20°.
  const seam = piece.edges.find(({ name }) => name === 'side/back')!.curves;
  const [a, b] = [pointAt(seam[0]!, 0), pointAt(seam[seam.length - 1]!, 1)];
  const offSeam = ({ x, y }: Point): number =>
    Math.abs((b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x)) / Math.hypot(b.x - a.x, b.y - a.y);
  const radius = 120 / (Math.PI / 9);
  expect(offSeam(ring!)).toBeCloseTo((radius + 140) * Math.sin(Math.PI / 36), 2);
  expect(offSeam(cross!)).toBeCloseTo((radius + 360) * Math.sin(Math.PI / 36), 2);
  expect(Math.hypot(cross!.x - ring!.x, cross!.y - ring!.y)).toBeCloseTo(220, 2);
});
