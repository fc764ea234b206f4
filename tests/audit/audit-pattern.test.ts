import fc from 'fast-check';
import { PDFDocument } from 'pdf-lib';
import { describe, expect, test } from 'vitest';
import { faultText } from '../../src/audit/audit-fault.ts';
import { auditPattern } from '../../src/audit/audit-pattern.ts';
import { readPattern } from '../../src/audit/read-pattern.ts';
import type { CutPiece } from '../../src/draft/piece.ts';
import type { Drawing } from '../../src/print/drawing.ts';
import { patternDrawing } from '../../src/print/pattern/pattern-drawing.ts';
import { sheetPages } from '../../src/print/pattern/sheet-pages.ts';
import { writePdf } from '../../src/print/pdf/write-pdf.ts';
import { layOutSheets } from '../../src/sheets/lay-out-sheets.ts';
import { longChecks } from '../../src/sheets/long-checks.ts';
import { paperNamed } from '../../src/sheets/paper.ts';
import type { SheetOptions } from '../../src/sheets/sheet-options.ts';
import type { SheetPlan } from '../../src/sheets/sheet-plan.ts';
import { settingsIn, settingsText } from '../../src/sheets/sheet-settings.ts';
import { evenly } from '../evenly.ts';
import { LABELS } from '../print/labels.ts';
import { lanternGores, sectorPiece } from '../sheets/sector-piece.ts';

const A4: SheetOptions = {
  paper: paperNamed('a4')!,
  margins: { left: 10, right: 10, top: 10, bottom: 10 },
  lap: 0,
  scale: { across: 1, down: 1 },
};

async function written(
  plan: SheetPlan,
  change: (pages: readonly Drawing[]) => readonly Drawing[] = (pages) => pages,
) {
  const { pages } = sheetPages(plan, patternDrawing(plan, LABELS), LABELS, longChecks(plan.pieces));
  const { bytes } = await writePdf(change(pages), {
    title: 'Lantern',
    subject: LABELS.trace,
    keywords: settingsText(A4),
  });
  return bytes;
}

function audited(bytes: Uint8Array, plan: SheetPlan) {
  const read = readPattern(bytes);
  if ('unreadable' in read) throw new Error(read.unreadable);
  return auditPattern(read.pages, plan);
}

/** One piece of a plan with one of its lines moved. */
function withPiece(plan: SheetPlan, index: number, change: (piece: CutPiece) => CutPiece): SheetPlan {
  return {
    ...plan,
    pieces: plan.pieces.map((laid, own) =>
      own === index ? { ...laid, cutPiece: change(laid.cutPiece) } : laid,
    ),
  };
}

const plan = layOutSheets(lanternGores(), A4);

describe('a pattern as it was written', () => {
  test.each([
    ['a4', {}],
    ['letter', { lap: 12, scale: { across: 100 / 99.2, down: 100 / 100.3 } }],
    ['roll:914', {}],
    ['a4, ends only', { endsOnly: true }],
  ])('%s has no fault', async (name, options) => {
    const own = layOutSheets([...lanternGores(), ...lanternGores(['lining'], 20)], {
      ...A4,
      paper: paperNamed(name.split(',')[0]!)!,
      ...options,
    });
    const audit = audited(await written(own), own);
    expect(audit.faults).toEqual([]);
    expect(audit.farthest).toBeLessThan(0.005);
    expect(audit.metres).toBeGreaterThan(15);
    expect(audit.square!.across).toBeCloseTo(100 * own.scale.across, 2);
    expect(audit.square!.down).toBeCloseTo(100 * own.scale.down, 2);
  });

  test('reads the same when another program has saved it again', async () => {
    const document = await PDFDocument.load(await written(plan), { updateMetadata: false });
    expect(audited(await document.save({ useObjectStreams: false }), plan).faults).toEqual([]);
  });

  test('says which version of the spec made it, and how', async () => {
    const read = readPattern(await written(plan));
    expect(read).toMatchObject({ subject: LABELS.trace });
    expect('keywords' in read && settingsIn(read.keywords)).toMatchObject({
      paper: 'a4',
      lap: 0,
      endsOnly: false,
    });
  });
});

test('any pieces on any paper, margin, lap and correction: every line is on its sheet, and none besides', async () => {
  const angle = evenly(0.02, 0.6);
  const side = evenly(150, 1600);
  const piece = fc.record({
    top: evenly(70, 300),
    front: angle,
    back: angle,
    frontLength: side,
    backLength: side,
    onFold: fc.boolean(),
  });
  const correction = evenly(0.97, 1.03);
  const options = fc.record({
    paper: fc
      .constantFrom('a4', 'letter', 'legal', 'a3', 'tabloid', 'roll:914')
      .map((name) => paperNamed(name)!),
    margin: evenly(5, 20),
    lap: evenly(0, 20),
    across: correction,
    down: correction,
    endsOnly: fc.boolean(),
  });
  await fc.assert(
    fc.asyncProperty(fc.array(piece, { minLength: 1, maxLength: 4 }), options, async (measures, chosen) => {
      const { paper, margin, lap, across, down, endsOnly } = chosen;
      const pieces = measures.map((own, index) => sectorPiece({ ...own, gore: `g${index}`, allowance: 10 }));
      const margins = { left: margin, right: margin, top: margin, bottom: margin };
      const own = layOutSheets(pieces, { paper, margins, lap, scale: { across, down }, endsOnly });
      const { faults, farthest } = audited(await written(own), own);
      expect(faults).toEqual([]);
      expect(farthest).toBeLessThan(0.01);
    }),
    { numRuns: 25, seed: 5 },
  );
}, 30_000);

describe('a fault is found, and named by sheet and piece', () => {
  const hemDown = (distance: number) => (piece: CutPiece) => ({
    ...piece,
    cutEdges: piece.cutEdges.map((edge) => ({
      ...edge,
      curves: edge.curves.map((curve) =>
        edge.name === 'hem' && curve.kind === 'cubic'
          ? {
              ...curve,
              control1: { ...curve.control1, y: curve.control1.y + distance },
              control2: { ...curve.control2, y: curve.control2.y + distance },
            }
          : curve,
      ),
    })),
  });

  test('a hem that sags 0.15 mm, but not one that sags 0.05', async () => {
    // A cubic's middle moves by three quarters of what both its handles move by.
    const off = audited(await written(withPiece(plan, 4, hemDown(0.2))), plan);
    expect(off.faults.length).toBeGreaterThan(0);
    for (const fault of off.faults) {
      expect(fault).toMatchObject({ kind: expect.stringMatching(/^line-/) });
      if (fault.kind === 'line-off') {
        expect(fault.piece).toBe('back (shell)');
        expect(fault.off).toBeGreaterThan(0.1);
        expect(fault.off).toBeLessThan(0.2);
        expect(plan.sheets.find(({ label }) => label === fault.sheet)!.pieces).toContain(4);
        expect(faultText(fault).message).toContain(`Sheet ${fault.sheet}`);
      }
    }
    expect(audited(await written(withPiece(plan, 4, hemDown(0.05))), plan).faults).toEqual([]);
  });

  test('a notch that is gone', async () => {
    const faults = audited(
      await written(withPiece(plan, 1, (piece) => ({ ...piece, notches: [] }))),
      plan,
    ).faults;
    expect(faults).toHaveLength(1);
    expect(faults[0]).toMatchObject({ kind: 'line-off', piece: 'side-front (shell)' });
  });

  test('a sheet that is gone, and a page that is too many', async () => {
    const gone = audited(await written(plan, (pages) => pages.slice(0, -1)), plan).faults;
    expect(gone).toEqual([
      { kind: 'sheet-missing', sheet: plan.sheets.at(-1)!.label, page: plan.sheets.length + 1 },
    ]);
    const more = audited(await written(plan, (pages) => [...pages, pages[0]!]), plan).faults;
    expect(more).toEqual([
      { kind: 'pages-too-many', found: plan.sheets.length + 2, planned: plan.sheets.length + 1 },
    ]);
  });

  test('a page that was fitted, named by its scale', async () => {
    const scale = 0.9407;
    const fitted = (pages: readonly Drawing[]) =>
      pages.map(
        (page): Drawing => ({
          ...page,
          marks: [{ kind: 'use', drawing: page, offset: { x: 6, y: 8 }, scale: { x: scale, y: scale } }],
        }),
      );
    const { faults, square } = audited(await written(plan, fitted), plan);
    expect(square!.across).toBeCloseTo(94.07, 2);
    const off = faults.find(({ kind }) => kind === 'square-off')!;
    expect(faultText(off).message).toContain('A4 fitted on Letter');
    expect(faults.filter(({ kind }) => kind === 'line-off').length).toBeGreaterThan(plan.sheets.length);
  });

  test('a line that the draft does not have', async () => {
    const scrawl = (pages: readonly Drawing[]) =>
      pages.map(
        (page, index): Drawing =>
          index !== 5
            ? page
            : {
                ...page,
                marks: [
                  ...page.marks,
                  {
                    kind: 'path',
                    closed: false,
                    line: { width: 0.3 },
                    runs: [[{ kind: 'line', from: { x: 40, y: 60 }, to: { x: 160, y: 90 } }]],
                  },
                ],
              },
      );
    const { faults } = audited(await written(plan, scrawl), plan);
    expect(faults).toHaveLength(1);
    expect(faults[0]).toMatchObject({ kind: 'line-too-many', page: 6 });
  });

  test('a page of another size', async () => {
    const wider = (pages: readonly Drawing[]) => pages.map((page): Drawing => ({ ...page, width: 215.9 }));
    const { faults } = audited(await written(plan, wider), plan);
    expect(faults.every(({ kind }) => kind === 'page-resized')).toBe(true);
    expect(faults).toHaveLength(plan.sheets.length);
  });
});

describe('what is no PDF of lines', () => {
  test.each([
    ['nothing', new Uint8Array(), 'does not begin'],
    ['text', new TextEncoder().encode('format: 1\ngown: Lantern\n'), 'does not begin'],
    ['a torn file', new TextEncoder().encode('%PDF-1.7\n1 0 obj\n<< /Length 99 >>\nstream\nabc'), 'cut off'],
    ['brackets without end', new TextEncoder().encode(`%PDF-1.7\n1 0 obj\n${'['.repeat(5000)}`), 'deeper'],
    ['a stray bracket', new TextEncoder().encode('%PDF-1.7\n1 0 obj\n) endobj'), 'unexpected'],
  ])('%s', (_, bytes, reason) => {
    expect(readPattern(bytes)).toMatchObject({ unreadable: expect.stringContaining(reason) });
  });

  test('a file cut anywhere is unreadable or has faults, and never throws', async () => {
    const bytes = await written(plan);
    for (let part = 1; part < 20; part++) {
      const read = readPattern(bytes.slice(0, Math.floor((bytes.length * part) / 20)));
      if ('unreadable' in read) expect(read.unreadable.length).toBeGreaterThan(10);
      else expect(auditPattern(read.pages, plan).faults.length).toBeGreaterThan(0);
    }
  });

  test('bytes changed at random are survived', async () => {
    const bytes = await written(plan);
    let seed = 7;
    for (let round = 0; round < 30; round++) {
      const spoiled = bytes.slice();
      for (let change = 0; change < 20; change++) {
        seed = (seed * 48271) % 2147483647;
        spoiled[seed % spoiled.length] = seed >> 8;
      }
      const read = readPattern(spoiled);
      if (!('unreadable' in read)) auditPattern(read.pages, plan);
    }
  });
});

test('settings that were tampered with are no settings', () => {
  const text = settingsText(A4, { gores: ['front'] });
  expect(settingsIn(text)).toMatchObject({ gores: ['front'] });
  for (const [from, to] of [
    ['"lap":0', '"lap":"0"'],
    ['"across":1', '"across":9'],
    ['["front"]', '"front"'],
    ['{', '['],
  ] as const) {
    expect(settingsIn(text.replace(from, to))).toBeUndefined();
  }
  expect(settingsIn('pattern, gown')).toBeUndefined();
});
