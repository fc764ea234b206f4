import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { CutPiece } from '../../src/draft/piece.ts';
import type { Curve, Point } from '../../src/geometry/curve.ts';
import { pointAt } from '../../src/geometry/evaluate.ts';
import { chalkPages } from '../../src/print/papers/chalk-pages.ts';
import { projectFile } from '../cli/gorewright.ts';
import { made } from '../making/made.ts';
import { inputOf } from '../making/paper-input.ts';
import { linesOf, type PlacedText, tablesUnder, textsOf } from '../print/page-texts.ts';
import { printedLength } from '../print/printed-length.ts';

const SPECS = {
  lantern: 'examples/lantern.yaml',
  puffin: 'examples/puffin.yaml',
  'one-sided': 'templates/one-sided.yaml',
  'six gores': 'templates/six-gores.yaml',
};

const LEVELS = ['cut left', 'seam left', 'seam right', 'cut right'];

/** Crossings of an outline with a level, from left to right, found on a polygon of its own. */
function crossings(curves: readonly Curve[], y: number): number[] {
  const points: Point[] = curves.flatMap((curve) =>
    Array.from({ length: 400 }, (_, i) => pointAt(curve, i / 400)),
  );
  return points
    .flatMap((a, i) => {
      const b = points[(i + 1) % points.length]!;
      return a.y < y === b.y < y ? [] : [a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y)];
    })
    .sort((a, b) => a - b);
}

interface Printed {
  readonly heading: string;
  readonly lines: PlacedText[][];
}

/** What the paper prints of each piece, page ends left out. */
function printedPieces(pages: ReturnType<typeof chalkPages>['pages'], gores: readonly string[]): Printed[] {
  const pieces: { heading: string; lines: PlacedText[][] }[] = [];
  for (const page of pages)
    for (const line of linesOf(textsOf(page))) {
      const heading = gores.find(
        (gore) => line[0]!.text.startsWith(`${gore}:`) || line[0]!.text.startsWith(`${gore}, her`),
      );
      if (heading !== undefined) pieces.push({ heading: line.map(({ text }) => text).join(' '), lines: [] });
      else pieces.at(-1)?.lines.push(line);
    }
  return pieces;
}

describe.each(Object.entries(SPECS))('the chalk paper of %s', (_name, file) => {
  const gown = made(readFileSync(projectFile(file), 'utf8'));
  const { units } = gown.gown.gown;
  const { cut } = gown.gown;
  const unit = units === 'in' ? 25.4 : 10;
  const step = units === 'in' ? 25.4 / 32 : 1;
  const input = inputOf(gown);
  const { pages } = chalkPages(input);
  const gores = [...new Set(cut.pieces.map(({ gore }) => gore))];
  const printed = printedPieces(pages, gores);
  const pieceOf = (gore: string, layer: string, side: string | undefined): CutPiece =>
    cut.pieces.find(
      (piece) => piece.gore === gore && piece.layers.includes(layer) && piece.piece.side === side,
    )!;

  it('has one table for the layers of a gore that differ near the hem only, and none is left out', () => {
    const chalked = input.chalk.flatMap(({ table, others }) =>
      [table, ...others.map((other) => other.table)].flatMap(({ gore, side, layers }) =>
        layers.map((layer) => `${gore} ${side ?? ''} ${layer}`),
      ),
    );
    const all = cut.pieces.flatMap(({ gore, piece, layers }) =>
      layers.map((layer) => `${gore} ${piece.side ?? ''} ${layer}`),
    );
    expect(chalked.sort()).toEqual(all.sort());
    expect(printed).toHaveLength(input.chalk.length);
  });

  it('prints each level with the places of the lines there, in their own columns', () => {
    let rows = 0;
    for (const [i, { table }] of input.chalk.entries()) {
      const piece = pieceOf(table.gore, table.layers[0]!, table.side);
      // Layers of a gore are measured from one grain line: that of its first piece.
      const first = cut.pieces.find(
        ({ gore, piece: own }) => gore === table.gore && own.side === table.side,
      )!;
      const fold = piece.piece.edges.find(({ name }) => name === 'fold');
      const grain = fold === undefined ? first.piece.grain.from.x : pointAt(fold.curves[0]!, 0).x;
      const cutLine = piece.cutEdges.flatMap(({ curves }) => curves);
      const seamLine = piece.piece.edges.flatMap(({ curves }) => curves);
      const top = Math.min(
        ...cutLine.flatMap((curve) => Array.from({ length: 101 }, (_, k) => pointAt(curve, k / 100).y)),
      );
      const heads = LEVELS.filter((_, column) => table.columns.includes(column));
      const shown = fold === undefined ? heads : table.columns.map((column) => LEVELS[column]!);
      const tables = tablesUnder(printed[i]!.lines, ['down', ...shown]);
      for (const [down, ...cells] of tables[0] ?? []) {
        const y = top + printedLength(down!) * unit;
        for (const [k, cell] of cells.entries()) {
          if (cell === '' || cell.includes('/ ')) continue;
          const [line, side] = shown[k]!.split(' ') as ['cut' | 'seam', 'left' | 'right'];
          const across = crossings(line === 'cut' ? cutLine : seamLine, y);
          // A level comes into the piece at its left and goes out at its right: the other side's place is not this one's.
          const own = across.filter((_, place) => place % 2 === (side === 'left' ? 0 : 1));
          const nearest = own
            .map((x) => (side === 'left' ? grain - x : x - grain))
            .reduce(
              (best, one) =>
                Math.abs(one - printedLength(cell) * unit) < Math.abs(best - printedLength(cell) * unit)
                  ? one
                  : best,
              Number.POSITIVE_INFINITY,
            );
          expect(
            Math.abs(nearest - printedLength(cell) * unit),
            `${table.gore} ${down} ${shown[k]}`,
          ).toBeLessThanOrEqual(step * 0.51 + 0.05);
          rows++;
        }
      }
    }
    expect(rows).toBeGreaterThan(30);
  });

  it('what is printed of another layer, on top of the shared table, is that layer’s own table', () => {
    for (const { table, others } of input.chalk)
      for (const { table: own, levels, corners } of others) {
        const known = new Map([...table.levels, ...levels].map((level) => [level.down, level.cells]));
        for (const { down, cells } of own.levels) expect(known.get(down)).toEqual(cells);
        for (const corner of own.corners) expect([...table.corners, ...corners]).toContainEqual(corner);
      }
  });

  it('letters of corners never lie on each other', () => {
    for (const page of pages) {
      const letters = textsOf(page).filter(({ text, size }) => /^[A-Za-z]$/.test(text) && size < 2.7);
      for (const [i, a] of letters.entries())
        for (const b of letters.slice(i + 1)) {
          const apart = Math.max(
            Math.max(a.left, b.left) - Math.min(a.right, b.right),
            Math.abs(a.baseline - b.baseline) - 0.75 * a.size,
          );
          expect(apart, `${a.text} and ${b.text}`).toBeGreaterThan(0);
        }
    }
  });
});

it('lantern takes five tables on at most eight pages', () => {
  const gown = made(readFileSync(projectFile('examples/lantern.yaml'), 'utf8'));
  const input = inputOf(gown);
  expect(input.chalk).toHaveLength(5);
  expect(chalkPages(input).pages.length).toBeLessThanOrEqual(8);
});
