import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chalkCsv, csvCell } from '../../src/chalk/chalk-csv.ts';
import { chalkStep, chalkTable } from '../../src/chalk/chalk-table.ts';
import { draftGown, type GownDraft } from '../../src/draft/draft-gown.ts';
import type { CutPiece } from '../../src/draft/piece.ts';
import type { Curve, Point } from '../../src/geometry/curve.ts';
import type { Edge } from '../../src/geometry/edge.ts';
import { pointAt } from '../../src/geometry/evaluate.ts';
import type { GownLines } from '../../src/gown/lines.ts';
import { draft } from '../../src/pipeline.ts';
import { evenly } from '../evenly.ts';

const degrees = Math.PI / 180;

const NOWHERE = () => ({ source: { name: 'invented', text: '' }, start: 0, end: 0 });

/** An invented gown of two gores a half: a drop at the front, a train at the back. */
function gown(
  options: { readonly flares?: readonly number[]; readonly train?: number; readonly drop?: number } = {},
): GownLines {
  const { flares = [17, 30], train = 600, drop = 60 } = options;
  return {
    name: 'trial',
    round: 'mirrored',
    waistSeam: 740,
    gores: flares.map((flare, i) => ({
      name: `g${i}`,
      ...(i === 0 ? { fold: 'front' as const } : {}),
      top: 370 / flares.length,
      width: { kind: 'flare' as const, angle: flare * degrees },
      grain: { frontPart: i === 0 ? 0 : 0.5 },
      roughCut: 0,
      place: NOWHERE,
    })),
    stations: Array.from({ length: flares.length + 1 }, (_, i) => ({
      name: i === 0 ? 'centre-front' : i === flares.length ? 'centre-back' : `g${i - 1}/g${i}`,
      drop: i === 0 ? drop : 0,
      length: i === flares.length ? 1080 + train : 1050,
      seams: i === 0 ? (0 as const) : i === flares.length ? (1 as const) : (2 as const),
      inTrain: false,
      place: NOWHERE,
    })),
    lengths: { measured: 'finished' },
  };
}

/** The cut line is another gown's outline: any outline will do, as the table is to follow whatever it is given. */
function cutPieces(seam: GownDraft): CutPiece[] {
  return seam.pieces.map((piece) => ({
    piece,
    gore: piece.gore,
    layers: ['shell'],
    cutEdges: piece.edges,
    notches: [],
    marks: [],
    allowances: {},
    roughCut: 0,
    labelAt: { x: 0, y: 0 },
  }));
}

function drafted(of: GownLines): GownDraft {
  const draft = draftGown(of);
  if ('reason' in draft) throw new Error(draft.reason);
  return draft;
}

/** Plots the table as a maker would: reads the CSV, sets ordinates off their own chord, joins by straight lines. */
function plotted(csv: string, gore: string, line: string): Point[] {
  const rows = csv
    .trim()
    .split('\r\n')
    .map((text) => text.split(','));
  const heads = rows[0]!;
  const cell = (row: string[], head: string): string => row[heads.indexOf(head)]!;
  const own = rows.slice(1).filter((row) => cell(row, 'gore') === gore && cell(row, 'line') === line);
  const outline = own.filter((row) => ['corner', 'level', 'ordinate'].includes(cell(row, 'kind')));
  const corners = new Map(
    outline
      .filter((row) => cell(row, 'kind') === 'corner')
      .map((row) => [cell(row, 'from'), { x: Number(cell(row, 'across')), y: Number(cell(row, 'down')) }]),
  );
  return outline.map((row) => {
    if (cell(row, 'kind') !== 'ordinate')
      return { x: Number(cell(row, 'across')), y: Number(cell(row, 'down')) };
    const [a, b] = [corners.get(cell(row, 'from'))!, corners.get(cell(row, 'to'))!];
    const turn = Math.atan2(b.y - a.y, b.x - a.x);
    const [along, out] = [Number(cell(row, 'along')), Number(cell(row, 'out'))];
    return {
      x: a.x + along * Math.cos(turn) + out * Math.sin(turn),
      y: a.y + along * Math.sin(turn) - out * Math.cos(turn),
    };
  });
}

/** Greatest distance from densely sampled points of the true outline to the plotted polygon, and back. */
function worst(edges: readonly Edge[], polygon: readonly Point[], from: { x: number; y: number }): number {
  const curves: Curve[] = edges.flatMap((edge) => [...edge.curves]);
  const dense = curves.flatMap((curve) =>
    Array.from({ length: 150 }, (_, i) => {
      const point = pointAt(curve, i / 150);
      return { x: point.x - from.x, y: point.y - from.y };
    }),
  );
  const there = Math.max(...dense.map((point) => toPolygon(point, polygon)));
  const back = Math.max(...polygon.map((point) => toPolygon(point, dense)));
  return Math.max(there, back);
}

function toPolygon(point: Point, polygon: readonly Point[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < polygon.length; i++) {
    const [a, b] = [polygon[i]!, polygon[i + 1 === polygon.length ? 0 : i + 1]!];
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const size = dx * dx + dy * dy;
    const t = size === 0 ? 0 : Math.min(1, Math.max(0, ((point.x - a.x) * dx + (point.y - a.y) * dy) / size));
    least = Math.min(least, (point.x - a.x - t * dx) ** 2 + (point.y - a.y - t * dy) ** 2);
  }
  return Math.sqrt(least);
}

function origin(piece: CutPiece): { x: number; y: number } {
  const points = piece.cutEdges.flatMap((edge) =>
    edge.curves.flatMap((curve) => Array.from({ length: 201 }, (_, i) => pointAt(curve, i / 200))),
  );
  const fold = piece.cutEdges.find((edge) => edge.name === 'fold');
  // On the bias it is not the thread that figures are measured from, but the length through the middle of its mark.
  const { from, to } = piece.piece.grain;
  return {
    x: fold !== undefined ? pointAt(fold.curves[0]!, 0).x : piece.piece.bias ? (from.x + to.x) / 2 : from.x,
    y: Math.min(...points.map((point) => point.y)),
  };
}

describe('a chalk table, plotted again from its own CSV', () => {
  const cases = {
    plain: gown(),
    'wide flares': gown({ flares: [45, 80] }),
    'a half circle in one gore on the fold': gown({ flares: [90], drop: 0, train: 0 }),
    'one flare of 170 degrees about its grain': gown({ flares: [10, 170], train: 0 }),
    'a steep train': gown({ flares: [10, 20, 20], train: 1500 }),
  };
  for (const [name, of] of Object.entries(cases)) {
    it(`lies within 1 mm of the true line: ${name}`, () => {
      for (const step of [chalkStep('cm'), chalkStep('in')]) {
        for (const piece of cutPieces(drafted(of))) {
          const csv = chalkCsv([chalkTable(piece, { step })]);
          expect(worst(piece.cutEdges, plotted(csv, piece.gore, 'cut'), origin(piece))).toBeLessThan(1);
        }
      }
    });
  }

  it('does so for gowns of any measures', () => {
    fc.assert(
      fc.property(
        evenly(2, 60),
        evenly(2, 60),
        evenly(0, 1200),
        evenly(0, 100),
        fc.integer({ min: 40, max: 250 }),
        (first, second, train, drop, every) => {
          const draft = draftGown(gown({ flares: [first, second], train, drop }));
          fc.pre(!('reason' in draft));
          for (const piece of cutPieces(draft as GownDraft)) {
            const csv = chalkCsv([chalkTable(piece, { every })]);
            expect(worst(piece.cutEdges, plotted(csv, piece.gore, 'cut'), origin(piece))).toBeLessThan(1);
          }
        },
      ),
      { numRuns: 25 },
    );
  });
});

describe('every piece of every example and template, with its own allowances', () => {
  const folders = ['examples', 'templates'].map((name) => join(import.meta.dirname, '../..', name));
  const files = folders.flatMap((folder) =>
    readdirSync(folder)
      .filter((name) => name.endsWith('.yaml'))
      .map((name) => join(folder, name)),
  );

  it.each(files.map((file) => [basename(file), file]))('%s', (_, file) => {
    const { gown } = draft({ name: file, text: readFileSync(file, 'utf8') });
    for (const piece of gown!.cut.pieces) {
      const csv = chalkCsv([chalkTable(piece, { step: chalkStep(gown!.gown.units) })]);
      const from = origin(piece);
      expect(worst(piece.cutEdges, plotted(csv, piece.gore, 'cut'), from)).toBeLessThan(1);
      expect(worst(piece.piece.edges, plotted(csv, piece.gore, 'seam'), from)).toBeLessThan(1);
    }
  });
});

describe('what a maker finds in the table', () => {
  it('has a level every 10 cm where both sides are crossed, and more only where they bend', () => {
    const piece = cutPieces(drafted(gown({ drop: 0, train: 0 })))[1]!;
    const table = chalkTable(piece);
    const levels = table.stretches.flatMap((s) =>
      s.points.flatMap((p) => (p.kind === 'level' ? [p.down] : [])),
    );
    expect(levels.every((down) => down % 100 === 0)).toBe(true);
    expect(new Set(levels).size).toBe(10);
  });

  it('swings the hem and waist of a ring from one centre with radii a length apart (S7: hem 360, waist 68, slant 105)', () => {
    // S7: 68 and 360 round, slant 105 cm in 6 gores, two of them on the fold as three in a half: r 24.452, R 129.452.
    const flare = (3600 - 680) / 1050 / 6;
    const ring: GownLines = {
      ...gown({ flares: [1, 1, 1], drop: 0, train: 0 }),
      waistSeam: 680,
      gores: [0, 1, 2].map((i) => ({
        name: `g${i}`,
        top: 680 / 6,
        width: { kind: 'flare' as const, angle: flare },
        grain: { frontPart: 0.5 },
        roughCut: 0,
        place: NOWHERE,
      })),
      stations: ['centre-front', 'g0/g1', 'g1/g2', 'centre-back'].map((name) => ({
        name,
        drop: 0,
        length: 1050,
        seams: 1 as const,
        inTrain: false,
        place: NOWHERE,
      })),
    };
    const table = chalkTable(cutPieces(drafted(ring))[1]!);
    const radii = Object.fromEntries(
      table.swings.filter((s) => s.line === 'seam').map((s) => [s.edge, s.radius]),
    );
    expect(radii).toEqual({ waist: 245, hem: 1295 });
    const centres = table.swings.map((swing) => [swing.down, swing.across]);
    expect(new Set(centres.map(String)).size).toBe(1);
    // S7: sag of a hem of 60 cm over its chord 3.461 cm, found as the deepest ordinate.
    const hem = table.stretches.find((s) => s.line === 'seam' && s.edge === 'hem')!;
    const outs = hem.points.flatMap((point) => (point.kind === 'ordinate' ? [point.out] : []));
    expect(Math.max(...outs)).toBe(35);
    // Both diagonals of a gore that is its own mirror image are one length.
    expect(table.diagonals[0]!.length).toBe(table.diagonals[1]!.length);
  });

  it('refuses levels that lie too close to be chalked', () => {
    expect(() => chalkTable(cutPieces(drafted(gown()))[0]!, { every: 0 })).toThrow(/10 mm apart/);
  });
});

describe('the CSV', () => {
  it('has each figure under its own head, swings and diagonals too', () => {
    const piece = cutPieces(drafted(gown({ flares: [90], drop: 0, train: 0 })))[0]!;
    const [heads, ...rows] = chalkCsv([chalkTable(piece)])
      .trim()
      .split('\r\n')
      .map((text) => text.split(','));
    const cells = rows.map((row) => Object.fromEntries(row.map((cell, i) => [heads![i]!, cell])));
    const of = (kind: string, line: string) => cells.filter((row) => row.kind === kind && row.line === line);
    const corners = new Map(of('corner', 'seam').map((row) => [row.from, row]));
    // A quarter of a ring: its waist ends at the fold straight below the centre, and beside it at the seam.
    const radius = 370 / (Math.PI / 2);
    for (const line of ['cut', 'seam']) {
      const swung = of('swing', line).map((row) => [row.edge, row.length, row.down, row.across]);
      expect(swung).toEqual([['waist', String(Math.round(radius)), '0', '0']]);
    }
    expect(of('diagonal', 'cut')).toEqual([]);
    expect(of('diagonal', 'seam')).toHaveLength(2);
    for (const { from, to, length, down: none } of of('diagonal', 'seam')) {
      const [a, b] = [corners.get(from!)!, corners.get(to!)!];
      const apart = Math.hypot(Number(a.down) - Number(b.down), Number(a.across) - Number(b.across));
      expect(Math.abs(Number(length) - apart)).toBeLessThan(1.5);
      expect(none).toBe('');
    }
    for (const { gore, layers, edge, from, to, length } of of('ordinate', 'seam')) {
      expect([gore, layers, length]).toEqual(['g0', 'shell', '']);
      expect(['waist', 'hem']).toContain(edge);
      expect(corners.get(from!)!.edge).toBe(edge);
      expect(corners.has(to!)).toBe(true);
    }
  });

  it('follows RFC 4180 and lets no text become a formula', () => {
    expect(csvCell('a,"b"')).toBe('"a,""b"""');
    expect(csvCell('=1+1')).toBe("'=1+1");
    expect(csvCell('-front')).toBe("'-front");
    expect(csvCell(-12.5)).toBe('-12.5');
    expect(csvCell(-0.0001)).toBe('0');
    expect(csvCell(undefined)).toBe('');
  });
});
