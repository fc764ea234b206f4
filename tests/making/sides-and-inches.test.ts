import { describe, expect, it } from 'vitest';
import type { CutPiece } from '../../src/draft/piece.ts';
import type { Curve } from '../../src/geometry/curve.ts';
import { pointAt } from '../../src/geometry/evaluate.ts';
import { clientPages } from '../../src/print/papers/client-pages.ts';
import { jobSheet } from '../../src/print/papers/job-sheet.ts';
import { beside, printedLines, rowsUnder } from '../print/page-rows.ts';
import { printedLength } from '../print/printed-length.ts';
import { example, made } from './made.ts';
import { hungInputOf, inputOf } from './paper-input.ts';

function lengthAlong(curves: readonly Curve[]): number {
  const run = curves.flatMap((curve) => Array.from({ length: 401 }, (_, i) => pointAt(curve, i / 400)));
  return run.slice(1).reduce((sum, b, i) => sum + Math.hypot(b.x - run[i]!.x, b.y - run[i]!.y), 0);
}

const hemOf = ({ piece }: CutPiece): number =>
  lengthAlong(piece.edges.find(({ name }) => name === 'hem')!.curves);

/** A gown that is 3 cm shorter at one seam on her left: every figure of that seam is told by her side. */
describe('a gown altered on her left, on the job sheet', () => {
  const gown = made(`${example('lantern')}
fittings:
  - {date: 2027-03-01, side: left, hem: {side-back/back: 3}}
`);
  const lines = printedLines(jobSheet(hungInputOf(gown)).pages);

  it('stations: on her left down to the centre back, on her right up again', () => {
    const rows = rowsUnder(lines, ['station', 'drop', 'finished', 'to floor', 'on floor']);
    expect(rows.slice(0, 10)).toEqual([
      ['centre front', '7.0', '101.5', '103.5', ''],
      ['front/side-front, her left', '5.5', '103.0', '105.0', ''],
      ['side-front/side, her left', '2.5', '106.0', '108.0', ''],
      ['side/side-back, her left', '0.0', '112.0', '110.5', '1.5'],
      // 139 − 3, and 136 − 111.5
      ['side-back/back, her left', '0.0', '136.0', '111.5', '24.5'],
      ['centre back', '0.0', '176.0', '111.5', '64.5'],
      ['side-back/back, her right', '0.0', '139.0', '111.5', '27.5'],
      ['side/side-back, her right', '0.0', '112.0', '110.5', '1.5'],
      ['side-front/side, her right', '2.5', '106.0', '108.0', ''],
      ['front/side-front, her right', '5.5', '103.0', '105.0', ''],
    ]);
  });

  it('seams: one on each side, each as long as it is there', () => {
    const heads = ['seam', 'how many', 'lining', 'shell and organza', 'notches from the waist seam'];
    const rows = rowsUnder(lines, heads).map((row) => row.slice(0, 4));
    expect(rows).toContainEqual(['side-back/back, her left', '1', '134.0', '136.0']);
    expect(rows).toContainEqual(['side-back/back, her right', '1', '137.0', '139.0']);
    expect(rows).toContainEqual(['centre back', '1', '174.0', '176.0']);
    expect(rows).toContainEqual(['side/side-back, her left', '1', '110.0', '112.0']);
  });

  it('gores that differ are cut once a side, and their hems are their own', () => {
    const rows = rowsUnder(lines, ['gore', 'top', 'bodice', 'hem', 'flare']);
    for (const gore of ['side-back', 'back'])
      for (const side of ['left', 'right']) {
        const piece = gown.gown.cut.pieces.find(
          (own) => own.gore === gore && own.piece.side === side && own.layers.includes('shell'),
        )!;
        const row = rows.find(([name]) => name === `${gore}, her ${side}`)!;
        expect(row[3], `${gore} ${side}`).toBe((hemOf(piece) / 10).toFixed(1));
      }
    expect(rows.filter(([name]) => name === 'side')).toHaveLength(1);
  });

  it('a bustle’s points, each at its own height', () => {
    const rows = rowsUnder(lines, [
      'seam',
      'points',
      'anchor',
      'pick-up',
      'lift',
      'loop ends',
      'above the hem',
    ]);
    // 14 + 136 − 109.5 = 40.5; the loop 2 on; 136 − 42.5
    expect(rows).toContainEqual(['side-back/back, her left', '1', '14.0', '40.5', '26.5', '42.5', '93.5']);
    expect(rows).toContainEqual(['side-back/back, her right', '1', '14.0', '43.5', '29.5', '45.5', '93.5']);
  });
});

/** examples/puffin.yaml, in inches: the nearest sixteenth of every figure, by hand from the spec or from samples. */
describe('a costume in inches, on the job sheet', () => {
  const gown = made(example('puffin'));
  const input = inputOf(gown);
  const lines = printedLines(jobSheet(input).pages);
  const client = printedLines(clientPages(input).pages);
  const piecesOf = (layer: string) => gown.gown.cut.pieces.filter((own) => own.layers.includes(layer));
  const nearest = (text: string | undefined, mm: number, what: string) =>
    expect(Math.abs(printedLength(text ?? '') - mm / 25.4), `${what}: ${text}`).toBeLessThanOrEqual(
      1 / 32 + 1e-6,
    );

  it('stations and gores', () => {
    const stations = rowsUnder(lines, ['station', 'drop', 'finished', 'to floor', 'on floor']);
    // To the floor less 1 1/2
    expect(stations.slice(0, 4)).toEqual([
      ['centre front', '0', '36', '37 1/2', ''],
      ['front/side', '0', '36 1/2', '38', ''],
      ['side/back', '0', '38', '39 1/2', ''],
      ['centre back', '0', '38 1/2', '40', ''],
    ]);
    const gores = rowsUnder(lines, ['gore', 'top', 'bodice', 'hem', 'flare']);
    expect(gores.map(([gore, top, panel, , flare]) => [gore, top, panel, flare]).slice(0, 3)).toEqual([
      ['front (half)', '4 1/4', '4 1/4', '15.0°'],
      // 4.6 and 4.4, to a sixteenth
      ['side', '4 5/8', '4 5/8', '20.0°'],
      ['back', '4 3/8', '4 3/8', '15.0°'],
    ]);
    const chiffon = piecesOf('chiffon');
    for (const [i, [gore, , , hem]] of gores.slice(0, 3).entries()) nearest(hem, hemOf(chiffon[i]!), gore!);
  });

  it('cutting: each side’s own allowance, copies and sizes', () => {
    const rows = rowsUnder(lines, ['piece', 'layers', 'cut', 'across × down', 'allowances']);
    const back = rows.find(([piece, layers]) => piece === 'back' && layers === 'lining')!;
    expect(back[4]).toBe('waist 5/8, side/back 1, centre back 5/8, hem 2');
    expect(rows.find(([piece, layers]) => piece === 'back' && layers === 'chiffon')![4]).toBe(
      'waist 5/8, side/back 1, centre back 1/2, hem 1/4',
    );
    // 448 in of strip: 64 + 128 + 256 out of 107 in at most between its ends, in strips of one length.
    const strip = rows.find(([piece]) => piece === 'petticoat')!;
    expect(strip[2]).toMatch(/^5; join end to end/);
    const [across, down] = strip[3]!.split(' × ');
    expect(5 * printedLength(across!)).toBeGreaterThanOrEqual(448);
    expect(down).toBe('12');
    for (const { gore, layers, cutEdges } of piecesOf('chiffon')) {
      const drawn = cutEdges.flatMap(({ curves }) =>
        curves.flatMap((curve) => Array.from({ length: 401 }, (_, i) => pointAt(curve, i / 400))),
      );
      const row = rows.find(([piece, name]) => piece === gore && name === layers.join(' and '))!;
      const [wide, long] = row[3]!.split(' × ');
      const size = (of: (point: { x: number; y: number }) => number) =>
        Math.max(...drawn.map(of)) - Math.min(...drawn.map(of));
      nearest(
        wide,
        size(({ x }) => x),
        `${gore} across`,
      );
      nearest(
        long,
        size(({ y }) => y),
        `${gore} down`,
      );
    }
  });

  it('seams by layer: where a layer has no such seam there is no figure', () => {
    const heads = [
      'seam',
      'how many',
      'lining',
      'velvet and chiffon',
      'brocade',
      'notches from the waist seam',
    ];
    // The lining is 3/4 shorter; brocade is the front alone.
    expect(
      rowsUnder(lines, heads)
        .map((row) => row.slice(0, 5))
        .slice(0, 3),
    ).toEqual([
      ['front/side', '2', '35 3/4', '36 1/2', ''],
      ['side/back', '2', '37 1/4', '38', ''],
      ['centre back', '1', '37 3/4', '38 1/2', ''],
    ]);
  });

  it('hems: round, as many as there are gores in the layer', () => {
    const rows = rowsUnder(lines, ['layer', 'hem', 'round', 'allowance', 'to know']);
    for (const [layer, finish, round, allowance] of rows.slice(0, 4)) {
      nearest(round, 2 * piecesOf(layer!).reduce((sum, piece) => sum + hemOf(piece), 0), layer!);
      expect([finish, allowance]).toEqual(layer === 'chiffon' ? ['rolled', '1/4'] : ['turned up', '2']);
    }
    expect(rows.slice(0, 4).map(([layer]) => layer)).toEqual(['lining', 'velvet', 'brocade', 'chiffon']);
  });

  it('closure: how far down it opens, and what passes', () => {
    expect(beside(lines, 'hooks and bars')).toEqual(['centre back']);
    expect(beside(lines, 'stops below the waist seam')).toEqual(['9 in']);
    // 26 1/2 + 2 × 9, less 30 1/2
    expect(beside(lines, 'lets through')).toEqual(['44 1/2 in (waist seam and twice the opening)']);
    expect(beside(lines, 'her hip, stepping in')).toEqual(['30 1/2 in: 14 in to spare']);
  });

  it('weights: ounces a square yard over the area of all copies', () => {
    const rows = rowsUnder(lines, ['layer', 'cloth', 'sewn area', 'cut area', 'weight', 'thread to buy']);
    // 0.6 oz a square yard; five strips of what is printed above, 12 deep; 36 × 36 square inches a yard.
    const strips = rowsUnder(lines, ['piece', 'layers', 'cut', 'across × down', 'allowances']);
    const [across] = strips.find(([piece]) => piece === 'petticoat')![3]!.split(' × ');
    const area = (5 * printedLength(across!) * 12) / 36 ** 2;
    const net = rows.find(([layer]) => layer === 'petticoat')!;
    expect(Number(net[3]!.replace(' yd²', ''))).toBeCloseTo(area, 2);
    expect(Number(net[4]!.replace(' oz', ''))).toBeCloseTo(area * 0.6, 1);
  });

  it('the client’s page', () => {
    expect(beside(client, 'waist seam, all round')).toEqual(['26 1/2 in']);
    expect(beside(client, 'front, from the bodice’s edge to the hem')).toEqual(['36 in']);
    expect(beside(client, 'back, from the bodice’s edge to the hem')).toEqual(['38 1/2 in']);
    expect(beside(client, 'hem off the floor in front')).toEqual(['1 1/2 in']);
    expect(beside(client, 'train on the floor at the centre back')).toEqual([]);
  });
});
