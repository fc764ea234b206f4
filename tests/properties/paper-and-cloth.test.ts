import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Diagnostic } from '../../src/diagnostics/diagnostic.ts';
import type { CutPiece } from '../../src/draft/piece.ts';
import type { Spec } from '../../src/gown-file/spec.ts';
import type { LayPlan } from '../../src/lay/plan/lay-plan.ts';
import { gownToLay } from '../../src/lay/plan/lay-to-plan.ts';
import { planLays } from '../../src/lay/plan/plan-lays.ts';
import { type DraftedGown, draft } from '../../src/pipeline.ts';
import { auditFile } from '../../src/publish/audit-file.ts';
import { compareGowns } from '../../src/publish/comparison.ts';
import { patternFiles } from '../../src/publish/pattern-files.ts';
import { faultsOf } from '../lay/laid.ts';
import type { Sheet } from '../outside/measure/gown.ts';
import { samplesOf } from '../outside/measure/path.ts';
import { readPattern } from '../outside/measure/pattern.ts';
import { SEED } from '../seed.ts';
import { gowns, specText } from './gowns.ts';

/** `GOWNS=5000` for a soak: one in so many of them goes on paper and on cloth, which takes longer than drafting it. */
const gownCount = Number(process.env.GOWNS ?? 100);
const PART = 16;
const numRuns = Math.max(1, Math.round(gownCount / PART));
const seed = process.env.GOWNS === undefined || process.env.SEED !== undefined ? SEED : Date.now() % 2 ** 31;
const patience = 120_000 + numRuns * 10_000;

function always(
  holds: (gown: DraftedGown, yaml: string, diagnostics: readonly Diagnostic[], spec: Spec) => Promise<void>,
  part = 1,
): Promise<void> {
  const options = { seed, numRuns: Math.ceil(numRuns * part), endOnFailure: true };
  return fc.assert(
    fc.asyncProperty(gowns, async (random) => {
      const yaml = specText(random);
      const { spec, gown, diagnostics } = draft({ name: 'gown.yaml', text: yaml });
      await holds(gown!, yaml, diagnostics, spec!);
    }),
    options,
  );
}

describe(`random gowns on paper and on cloth (seed ${seed})`, () => {
  it('lie on the sheets once, and what is printed is what was drafted', { timeout: patience }, () =>
    always(async (gown, yaml) => {
      const { files, report } = await patternFiles(gown, {});
      const { pieces } = readPattern(String(files.get('pattern.svg')));
      const lines = pieces.flatMap(({ cut, sew }) => [cut, ...sew.values()]);
      for (const { point } of lines.flatMap((line) => samplesOf(line, 5)))
        expect(framesOver(point, report.sheets), yaml).toBe(1);
      const { faults } = auditFile(gown, files.get(`pattern-${report.paper}.pdf`) as Uint8Array);
      expect(faults, yaml).toEqual([]);
    }),
  );

  it('lie on their cloth with every copy, mirrored where they must be', { timeout: patience }, () =>
    always(async (gown, yaml) => {
      let looks = 0;
      const { layers, cut } = gown;
      const planned = planLays(gownToLay(gown), { say: String, shouldStop: () => ++looks > 200 });
      const missing = layers.filter(({ name }) => !planned.lays.some((lay) => lay.layers.includes(name)));
      if (missing.length > 0)
        expect(
          planned.diagnostics.some(({ level }) => level === 'error'),
          yaml,
        ).toBe(true);
      for (const lay of planned.lays) {
        expect(faultsOf(lay), yaml).toEqual([]);
        expect(lay.length, yaml).toBeLessThanOrEqual((lay.apart?.length ?? lay.length) + 1e-6);
        for (const layer of lay.layers) expectEveryCopy(lay, layer, cut.pieces, yaml);
      }
    }, 0.5),
  );

  it('compared with themselves, do not change', { timeout: patience }, () =>
    always(async (gown, yaml, diagnostics, read) => {
      const version = { name: 'gown.yaml', spec: read, gown, diagnostics };
      const { spec, pieces, findings } = compareGowns(version, version);
      expect({ spec, ...findings }, yaml).toEqual({ spec: [], added: [], gone: [], changed: [] });
      expect(pieces.dropped, yaml).toEqual([]);
      for (const { verdict, marks, edges } of pieces.changes)
        expect({ verdict, marks, edges }, yaml).toEqual({ verdict: 'same', marks: [], edges: [] });
    }),
  );
});

function expectEveryCopy(lay: LayPlan, layer: string, pieces: readonly CutPiece[], yaml: string): void {
  const whole = lay.pieces.filter((one) => one.layer === layer && one.part === undefined);
  for (const { gore, piece } of pieces.filter((one) => one.layers.includes(layer))) {
    const placed = whole.filter((one) => one.gore === gore);
    if (placed.length === 0 && lay.joins.length > 0) continue;
    const mirrored = placed.map((one) => one.mirrored).sort();
    expect(mirrored, `${gore} of ${layer}\n${yaml}`).toEqual(
      piece.cut === 'pair'
        ? [false, true]
        : Array.from({ length: piece.copies ?? 1 }, () => expect.any(Boolean)),
    );
  }
}

/** Frames that show a point; on the line between two frames, as one. */
function framesOver({ x, y }: { readonly x: number; readonly y: number }, sheets: readonly Sheet[]): number {
  const within = (by: number) =>
    sheets.filter(
      (sheet) =>
        x > sheet.x - by &&
        x < sheet.x + sheet.width + by &&
        y > sheet.y - by &&
        y < sheet.y + sheet.height + by,
    ).length;
  const inside = within(-EDGE);
  return inside > 0 ? inside : Math.min(1, within(EDGE));
}

/** mm: figures of the report are rounded more finely. */
const EDGE = 0.01;
