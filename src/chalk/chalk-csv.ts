import type { Point } from '../geometry/curve.ts';
import type { ChalkPoint, ChalkStretch, ChalkTable } from './chalk.ts';
import { chalkedAt } from './chalk-chain.ts';

/**
 * The chalk tables for scripts and spreadsheets (RFC 4180), lengths in mm. Every point of an outline stands in order,
 * with `down` and `across` to plot it by; ordinates also have their distance along and out from the chord `from`-`to`.
 */
export function chalkCsv(tables: readonly ChalkTable[]): string {
  const rows = tables.flatMap((table) => [
    ...table.stretches.flatMap((stretch) => stretchRows(table, stretch)),
    ...table.swings.map((swing) =>
      row(table, {
        line: swing.line,
        edge: swing.edge,
        kind: 'swing',
        place: pointOf(swing),
        length: swing.radius,
      }),
    ),
    ...table.inner.flatMap(({ name, from, to }) => [
      row(table, { line: name, edge: '', kind: 'from', place: pointOf(from) }),
      row(table, { line: name, edge: '', kind: 'to', place: pointOf(to) }),
    ]),
    ...table.bustle.flatMap(({ place: { seam = '' }, anchor, pickUp }) => [
      row(table, { line: 'bustle', edge: seam, kind: 'anchor', place: pointOf(anchor) }),
      row(table, { line: 'bustle', edge: seam, kind: 'pick-up', place: pointOf(pickUp) }),
    ]),
    ...table.diagonals.map(({ from, to, length }) =>
      row(table, { line: 'seam', edge: '', kind: 'diagonal', from, to, length }),
    ),
  ]);
  return [HEADS, ...rows].map((cells) => `${cells.map(csvCell).join(',')}\r\n`).join('');
}

const HEADS = [
  'gore',
  'layers',
  'side',
  'line',
  'edge',
  'kind',
  'from',
  'to',
  'down',
  'across',
  'along',
  'out',
  'length',
];

/**
 * A cell by RFC 4180. Text that a spreadsheet would take for a formula is led by an apostrophe; numbers stay numbers.
 */
export function csvCell(value: string | number | undefined): string {
  if (value === undefined) return '';
  if (typeof value === 'number') return decimal(value);
  const safe = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

function stretchRows(table: ChalkTable, stretch: ChalkStretch): (string | number | undefined)[][] {
  const { line, edge, from, to } = stretch;
  const corner = row(table, { line, edge, kind: 'corner', from: from.letter, place: pointOf(from) });
  return [corner, ...stretch.points.map((point) => pointRow(table, stretch, point, to.letter))];
}

function pointRow(
  table: ChalkTable,
  stretch: ChalkStretch,
  point: ChalkPoint,
  to: string,
): (string | number | undefined)[] {
  const own = { line: stretch.line, edge: stretch.edge, kind: point.kind, from: stretch.from.letter, to };
  const place = chalkedAt(stretch, point);
  return row(
    table,
    point.kind === 'level' ? { ...own, place } : { ...own, place, along: point.along, out: point.out },
  );
}

interface Cells {
  readonly line: string;
  readonly edge: string;
  readonly kind: string;
  readonly from?: string;
  readonly to?: string;
  readonly place?: Point;
  readonly along?: number;
  readonly out?: number;
  readonly length?: number;
}

function row(table: ChalkTable, cells: Cells): (string | number | undefined)[] {
  const { line, edge, kind, from, to, place, along, out, length } = cells;
  const own = [table.gore, table.layers.join(' '), table.side ?? ''];
  return [...own, line, edge, kind, from, to, place?.y, place?.x, along, out, length];
}

function pointOf({ down, across }: { readonly down: number; readonly across: number }): Point {
  return { x: across, y: down };
}

/** At most three decimals, no exponent, no minus zero. */
function decimal(value: number): string {
  const text = value.toFixed(3).replace(/(?<!0)0+$|\.0+$/, '');
  return text === '-0' ? '0' : text;
}
