import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Drafted, draftedTrue } from '../outside/drafted.ts';
import { factsOf } from '../outside/facts.ts';
import { type MeasuredGown, measuredGown } from '../outside/measure/gown.ts';
import { areaOf, type CurvePath, samplesOf } from '../outside/measure/path.ts';
import { distance } from '../outside/measure/segment.ts';
import { untruths } from '../outside/truth/untruths.ts';
import { gowns, type RandomGown, scaled, specText } from './gowns.ts';

/** `GOWNS=5000 SEED=7` for a soak, or to see one failure again. */
const gownCount = Number(process.env.GOWNS ?? 200);
const seed = Number(process.env.SEED ?? Math.floor(Math.random() * 2 ** 31));
const soak = { timeout: 60_000 + gownCount * 1000 };

function always(part: number, holds: (gown: RandomGown) => Promise<void>): Promise<void> {
  return fc.assert(fc.asyncProperty(gowns, holds), {
    seed,
    numRuns: Math.max(1, Math.round(gownCount * part)),
  });
}

describe(`random gowns (seed ${seed})`, () => {
  it('are true: seams, angles, measures, allowances, outlines, notches, sheet, report', soak, () =>
    always(1, async (gown) => {
      const yaml = specText(gown);
      const { svg, report } = await draftedTrue(yaml);
      expect(untruths(svg, report, factsOf(yaml)), yaml).toEqual([]);
    }),
  );

  it('come out the same twice', soak, () =>
    always(0.1, async (gown) => {
      const [once, again] = [await draftedTrue(specText(gown)), await draftedTrue(specText(gown))];
      expect(again.svg).toBe(once.svg);
      expect(JSON.stringify(again.report)).toBe(JSON.stringify(once.report));
    }),
  );

  it('are the same in centimetres and inches, and with their keys in any order', soak, () =>
    always(0.15, async (gown) => {
      const plain = await opened(specText(gown));
      for (const units of ['cm', 'in'] as const)
        expectSame(await opened(specText(gown, units)), plain, 1, 0.003);
      expectSame(await opened(specText(gown, 'mm', (keys) => [...keys].reverse())), plain, 1, 0);
      expectSame(await opened(specText(gown, 'cm', (keys) => [...keys].sort())), plain, 1, 0.003);
    }),
  );

  it('grow with their measures', soak, () =>
    always(0.15, async (gown) => {
      const factor = 1.25;
      expectSame(await opened(specText(scaled(gown, factor))), await opened(specText(gown)), factor, 0.02);
    }),
  );
});

async function opened(yaml: string): Promise<MeasuredGown> {
  const { svg, report }: Drafted & { report: NonNullable<Drafted['report']> } = await draftedTrue(yaml);
  return measuredGown(svg, report, factsOf(yaml));
}

/** Piece by piece: the same edges with the same lengths, points at the same places from the corner, the same cut area. */
function expectSame(a: MeasuredGown, b: MeasuredGown, factor: number, tolerance: number): void {
  const key = (gown: MeasuredGown) =>
    gown.pattern.pieces.map((piece) => `${piece.gore}: ${piece.layers.join(' ')}`);
  expect(key(a)).toEqual(key(b));
  for (const [i, piece] of a.pattern.pieces.entries()) {
    const other = b.pattern.pieces[i]!;
    expect([...piece.sew.keys()]).toEqual([...other.sew.keys()]);
    const [from, start] = [piece.sew.get('waist')!.from, other.sew.get('waist')!.from];
    for (const [edge, path] of piece.sew) {
      const partner = other.sew.get(edge)!;
      expect(Math.abs(path.length - partner.length * factor), `${piece.gore}, ${edge}`).toBeLessThanOrEqual(
        tolerance,
      );
      for (const share of [0, 0.25, 0.5, 0.75, 1]) {
        const [here, there] = [pointAt(path, share), pointAt(partner, share)];
        const moved = { x: start.x + (here.x - from.x) / factor, y: start.y + (here.y - from.y) / factor };
        expect(distance(moved, there), `${piece.gore}, ${edge} at ${share}`).toBeLessThanOrEqual(
          tolerance + 1e-9,
        );
      }
    }
    const [area, otherArea] = [areaOf(piece.cut), areaOf(other.cut) * factor ** 2];
    expect(Math.abs(area - otherArea) / area, `${piece.gore}, area cut out`).toBeLessThan(
      tolerance === 0 ? 1e-9 : 1e-4,
    );
  }
}

function pointAt(path: CurvePath, share: number) {
  const samples = samplesOf(path, 1);
  const way = share * path.length;
  const next = samples.findIndex((sample) => sample.distance >= way - 1e-9);
  const sample = next < 0 ? samples.at(-1)! : samples[next]!;
  const back = sample.distance - way;
  return { x: sample.point.x - sample.direction.x * back, y: sample.point.y - sample.direction.y * back };
}
