import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { jobSheet } from '../../src/print/papers/job-sheet.ts';
import { projectFile } from '../cli/gorewright.ts';
import { made } from '../making/made.ts';
import { inputOf } from '../making/paper-input.ts';
import { printedLines, rowsUnder } from '../print/page-rows.ts';

/** What the job sheet prints of a laced bodice, by rows and columns, against sums by hand from its template, in cm. */
const laced = made(readFileSync(projectFile('templates/laced-bodice.yaml'), 'utf8'));
const lines = printedLines(jobSheet(inputOf(laced)).pages);
const said = lines.map((line) => line.map(({ text }) => text).join(' ')).join('\n');

/** Above the waist, her girth, what she is laced in by; five are left open all the way: what is sewn. */
const LEVELS: readonly [string, number, number, number][] = [
  ['high-bust', 21, 84, 0],
  ['bust', 16, 90, 0],
  ['underbust', 8, 77, 2],
  ['waist', 0, 70, 5],
  ['high-hip', -9, 87, 0],
];

describe('a laced bodice on the job sheet', () => {
  it('levels: her body, what she is laced in by, what is left open, what is sewn', () => {
    const heads = ['level', 'above the waist', 'body', 'laced in', 'left open', 'sewn'];
    expect(rowsUnder(lines, heads).slice(0, 5)).toEqual(
      LEVELS.map(([at, above, body, reduced]) => [
        at,
        ...[above, body, reduced, 5, body - reduced - 5].map((figure) => figure.toFixed(1)),
      ]),
    );
  });

  it('panels: those of a half are half of what is sewn at each level, under its own head', () => {
    const names = LEVELS.map(([at]) => at);
    const rows = rowsUnder(lines, ['panel', 'upper edge', ...names, 'waist seam']).slice(0, 4);
    expect(rows.map(([panel]) => panel)).toEqual(['front (half)', 'side-front', 'side-back', 'back']);
    for (const [i, [at, , body, reduced]] of LEVELS.entries()) {
      const sum = rows.reduce((all, row) => all + Number(row[i + 2]), 0);
      // Four figures to the millimetre.
      expect(Math.abs(sum - (body - reduced - 5) / 2), at).toBeLessThan(0.2 + 1e-9);
    }
    // No drop: the waist seam lies at the waist, and the upper edge is what its panels' edges measure.
    for (const row of rows) expect(row[7]).toBe(row[5]);
    const tops = laced.gown.bodice!.figures.panels.map(({ upper }) => (upper / 10).toFixed(1));
    expect(rows.map((row) => row[1])).toEqual(tops);
  });

  it('bones: the casing as long as the seam, the bone 1.3 shorter at each end', () => {
    const rows = rowsUnder(lines, ['along', 'casing', 'bone', 'count']).slice(0, 4);
    expect(rows.map(([along, , , count]) => [along, count])).toEqual([
      ['front/side-front', '2'],
      ['side-front/side-back', '2'],
      ['side-back/back', '2'],
      // One on each side of the eyelets, on her left and on her right.
      ['centre back', '4'],
    ]);
    for (const [along, casing, bone] of rows)
      expect(Math.abs(Number(casing) - Number(bone) - 2.6), along).toBeLessThan(0.11);
    // Straight down the front and the back: as high as the upper edge is above the waist.
    expect(rows[3]![1]).toBe('15.0');
    // Synthetic bone is bought by length: 2 × 17.4 + 2 × 13.4 + 2 × 12.5 + 4 × 12.4, and its casing so too.
    const inAll = (column: number) =>
      rows.reduce((sum, row) => sum + Number(row[column]) * Number(row[3]), 0);
    const [, bone] = /synthetic bone, ([\d.]+) cm in all/.exec(said)!;
    const [, width, casing] = /bone casing for bones ([\d.]+) cm wide, ([\d.]+) cm/.exec(said)!;
    expect(width).toBe('0.7');
    expect(Math.abs(Number(bone) - inAll(2))).toBeLessThan(0.6);
    expect(Math.abs(Number(casing) - inAll(1))).toBeLessThan(0.6);
  });

  it('lacing: pitch, places and lace', () => {
    // 15 long, 1.5 clear at each end: five spaces of 2.4, and one eyelet more in the last, at the waist.
    const places = [1.5, 3.9, 6.3, 8.7, 11.1, 12.3, 13.5];
    expect(said).toContain('Lacing at centre back: 7 eyelets a side, 2.4 cm apart.');
    expect(said).toContain(places.map((place) => place.toFixed(1)).join('  '));
    // Twice from row to row, across the gap and both edges' 1.5, and once straight across.
    const across = 5 + 2 * 1.5;
    const worn = places
      .slice(1)
      .reduce((sum, place, i) => sum + 2 * Math.hypot(place - places[i]!, across), across);
    expect(said).toContain(`Lace: ${worn.toFixed(1)} cm as it is worn, ${(worn + 100).toFixed(1)} cm with`);
    expect(said).toContain('eyelets, 14, and some to try');
    expect(said).toContain(`lace, ${(worn + 100).toFixed(1)} cm`);
    // 70 − 5, and its two ends
    expect(said).toContain('Waist tape: closes at 65 cm, cut 70 cm with its ends.');
    expect(said).toContain('waist tape, 70 cm');
  });
});
