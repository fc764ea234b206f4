import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draftedPattern, mustDraft } from '../outside/drafted.ts';
import { factsOf } from '../outside/facts.ts';
import type { Gore } from '../outside/measure/gore.ts';
import { type MeasuredGown, measuredGown } from '../outside/measure/gown.ts';
import { areaOf, type CurvePath, samplesOf } from '../outside/measure/path.ts';
import { along, cross, dot, minus, type Point, unitOf } from '../outside/measure/segment.ts';
import { untruths } from '../outside/truth/untruths.ts';
import { gowns, type RandomGown, scaled, specText } from './gowns.ts';

/** `GOWNS=5000 SEED=7` for a soak, or to see one failure again. */
const gownCount = Number(process.env.GOWNS ?? 80);
// A suite that everybody runs tries the same gowns; a soak, with its own number of them, tries new ones.
const seed = Number(
  process.env.SEED ?? (process.env.GOWNS === undefined ? 11 : Math.floor(Math.random() * 2 ** 31)),
);
const patience = { timeout: 60_000 + gownCount * 1000 };

/** A failure is made smaller for half a minute at most: each step drafts and measures a whole gown. */
const SHRINKING = 30_000;

async function always(part: number, holds: (gown: RandomGown) => Promise<void>): Promise<void> {
  let refused = 0;
  const orRefused = async (gown: RandomGown) => {
    if (await hasNoFacing(gown)) refused++;
    else await holds(gown);
  };
  const numRuns = Math.max(1, Math.round(gownCount * part));
  const options = {
    seed,
    numRuns,
    endOnFailure: part < 1,
    interruptAfterTimeLimit: SHRINKING + 500 * numRuns,
  };
  await fc.assert(fc.asyncProperty(gowns, orRefused), options);
  expect(refused).toBeLessThanOrEqual(numRuns / 50);
}

/** Where the hem of a facing bends tighter than its allowance is wide, its cut line may cross its seam: that is refused. */
async function hasNoFacing(gown: RandomGown): Promise<boolean> {
  const { diagnostics } = await draftedPattern(specText(gown));
  const pieces = (code: string) =>
    diagnostics.flatMap((one) =>
      one.code === code ? (/of facing (`[^`]+`)/.exec(one.message)?.[1] ?? '') : [],
    );
  const errors = diagnostics.filter(({ level }) => level === 'error').length;
  const bent = pieces('hem-too-deep');
  return (
    errors > 0 && pieces('outline-crosses-itself').filter((piece) => bent.includes(piece)).length === errors
  );
}

describe(`random gowns (seed ${seed})`, () => {
  it('are true: seams, angles, measures, allowances, outlines, notches, sheet, report', patience, () =>
    always(1, async (gown) => {
      const yaml = specText(gown);
      const { svg, report } = await patternOf(yaml);
      expect(untruths(svg, report, factsOf(yaml)), yaml).toEqual([]);
    }),
  );

  it('come out the same twice', patience, () =>
    always(0.05, async (gown) => {
      const [once, again] = [await patternOf(specText(gown)), await patternOf(specText(gown))];
      expect(again.svg).toBe(once.svg);
      expect(JSON.stringify(again.report)).toBe(JSON.stringify(once.report));
    }),
  );

  it('are the same in centimetres and inches, and with their keys in any order', patience, () =>
    always(0.06, async (gown) => {
      const plain = await opened(specText(gown));
      // A last digit may decide how a line is cut into cubics: each lies within 0.004 mm of the true one.
      for (const units of ['cm', 'in'] as const)
        expectSame(await opened(specText(gown, units)), plain, 1, 0.008);
      const { svg } = await patternOf(specText(gown));
      for (const order of [(keys: string[]) => [...keys].reverse(), (keys: string[]) => [...keys].sort()]) {
        expect((await patternOf(specText(gown, 'mm', order))).svg).toBe(svg);
      }
    }),
  );

  it('grow with their measures', patience, () =>
    always(0.12, async (gown) => {
      const factor = 1.25;
      expectSame(await opened(specText(scaled(gown, factor))), await opened(specText(gown)), factor, 0.02);
    }),
  );
});

const patternOf = async (yaml: string) => mustDraft(await draftedPattern(yaml), yaml);

async function opened(yaml: string): Promise<MeasuredGown> {
  const { svg, report } = await patternOf(yaml);
  return measuredGown(svg, report, factsOf(yaml));
}

/** Gore by gore: the same edges with the same lengths and points, wherever the sheet has the piece; the same area to cut. */
function expectSame(a: MeasuredGown, b: MeasuredGown, factor: number, tolerance: number): void {
  for (const [k, layer] of a.layers.entries()) {
    for (const [i, gore] of layer.gores.entries()) {
      const other = b.layers[k]!.gores[i]!;
      const name = `${layer.layer.name}, ${gore!.piece.gore}`;
      for (const side of ['waist', 'back', 'hem', 'front'] as const) {
        const [length, partner] = [gore![side].length, other[side].length * factor];
        expect(Math.abs(length - partner), `${name}, ${side}`).toBeLessThanOrEqual(tolerance);
        for (const share of [0, 0.25, 0.5, 0.75, 1]) {
          const [here, there] = [placeOf(gore!, side, share), placeOf(other, side, share)];
          const apart = Math.hypot(here.x / factor - there.x, here.y / factor - there.y);
          expect(apart, `${name}, ${side} at ${share}`).toBeLessThanOrEqual(tolerance);
        }
      }
      const [area, otherArea] = [areaOf(gore!.piece.cut), areaOf(other.piece.cut) * factor ** 2];
      expect(Math.abs(area - otherArea) / area, `${name}, area cut out`).toBeLessThan(5e-4);
    }
  }
}

/** A point of an edge, seen from the top of the front seam, with that seam pointing straight down. */
function placeOf(gore: Gore, side: 'waist' | 'back' | 'hem' | 'front', share: number): Point {
  const from = gore.front.from;
  const down = unitOf(minus(gore.front.to, from));
  const away = minus(pointAt(gore[side], share), from);
  return { x: cross(away, down), y: dot(away, down) };
}

function pointAt(path: CurvePath, share: number): Point {
  const samples = samplesOf(path, 1);
  const way = share * path.length;
  const next = samples.findIndex((sample) => sample.distance >= way - 1e-9);
  const sample = next < 0 ? samples.at(-1)! : samples[next]!;
  return along(sample.point, sample.direction, way - sample.distance);
}
