import { describe, expect, it } from 'vitest';
import type { Diagnostic } from '../../src/diagnostics/diagnostic.ts';
import type { GownDraft } from '../../src/draft/draft-gown.ts';
import { unaltered } from '../../src/fittings/alterations.ts';
import { fittedSide } from '../../src/fittings/fit-side.ts';
import {
  belowWaistSeam,
  besideWaist,
  fittingBelowHem,
  fittingTakesAll,
} from '../../src/fittings/fitting-problems.ts';
import { draft } from '../../src/pipeline.ts';
import { plainGown, type Tree } from '../outside/plain-gown.ts';
import { at, edgeOf, lengthOf, sampled } from './sampled.ts';

/** A cone whose tops meet a fitted bodice, and where each finding of a fitting stands. mm. */

const CONE: Tree = {
  gores: ['a', 'b', 'c'].map((name) => ({ name, top: 120, flare: '10deg' })),
  lengths: { measured: 'finished', at: { 'centre-front': 900, 'centre-back': 900 } },
};
const specOf = (fields: Tree) =>
  plainGown({ units: 'mm', bodice: { 'waist-seam': 720 }, ...CONE, ...fields });
function drafted(fields: Tree) {
  const text = specOf(fields);
  const { gown, diagnostics } = draft({ name: 'cone.yaml', text });
  return { gown, text, diagnostics };
}
const PLAIN = drafted({}).gown!.drafts.gown;
const on = (entry: Tree): Tree => ({ date: '2027-03-01', ...entry });

describe('a gore whose panel is narrower than it was drafted for', () => {
  const side = (own: object) => ({ ...unaltered(PLAIN.gown).left, ...own });
  const altered = (own: object, of: GownDraft = PLAIN) => {
    const fitted = fittedSide(of, side(own), side(own));
    if ('reason' in fitted) throw new Error(fitted.reason);
    return fitted;
  };
  const width = (draft: GownDraft, gore: number, s: number) => draft.frames[gore]!.widthAt(s);
  /** What an edge of a gore lies farther in by than it did, at a slant distance: its other edge laid where it was. */
  const takenIn = (draft: GownDraft, gore: number, s: number) =>
    width(PLAIN, gore, s) - width(draft, gore, s);

  it('is taken in at both of its edges alike, and run out 200 below the waist', () => {
    const fitted = altered({ tops: [0, 6, 0] });
    const waists = fitted.pieces.map((piece) => lengthOf(sampled(edgeOf(piece, 'waist'))));
    expect(waists).toEqual([120, 114, 120].map((value) => expect.closeTo(value, 2)));
    expect(fitted.gown.gores.map(({ top }) => top)).toEqual([120, 114, 120]);
    expect([takenIn(fitted, 1, 0), takenIn(fitted, 1, 210)]).toEqual(
      [6, 0].map((value) => expect.closeTo(value, 1)),
    );
    for (const gore of [0, 2]) expect(fitted.frames[gore]).toBe(PLAIN.frames[gore]);
    // Its two corners have come in by half of that each.
    const corner = (draft: GownDraft, end: 'first' | 'last') => {
      const { curves } = draft.pieces[1]!.edges[0]!;
      return end === 'first' ? at(curves[0]!, 0) : at(curves.at(-1)!, 1);
    };
    expect(corner(fitted, 'first').x - corner(PLAIN, 'first').x).toBeCloseTo(3, 1);
    expect(corner(PLAIN, 'last').x - corner(fitted, 'last').x).toBeCloseTo(3, 1);
    expect(fitted).not.toHaveProperty('letOutAtWaist');
  });

  it('is taken in at the seam that was pinned in the bodice, where only one was', () => {
    const moved = (withBodice: boolean[]) => {
      const fitted = altered({ tops: [0, 6, 0], withBodice });
      const [was, is] = [PLAIN, fitted].map((one) => one.pieces[1]!.edges[0]!.curves);
      return [at(is![0]!, 0).x - at(was![0]!, 0).x, at(was!.at(-1)!, 1).x - at(is!.at(-1)!, 1).x].map(
        (by) => Math.round(by) + 0,
      );
    };
    expect(moved([false, true, false, false])).toEqual([6, 0]);
    expect(moved([false, false, true, false])).toEqual([0, 6]);
    expect(moved([false, true, true, false])).toEqual([3, 3]);
    // Of a seam of another gore it knows nothing.
    expect(moved([true, false, false, true])).toEqual([3, 3]);
  });

  it('and let out where its panel is wider; untouched it is the very draft', () => {
    const fitted = altered({ tops: [0, 0, -4] });
    expect(lengthOf(sampled(edgeOf(fitted.pieces[2]!, 'waist')))).toBeCloseTo(124, 2);
    const same = altered({});
    expect([same.frames, same.waist, same.hem]).toEqual([PLAIN.frames, PLAIN.waist, PLAIN.hem]);
    expect(same.frames).toBe(PLAIN.frames);
  });

  it('a seam pinned with the bodice is counted by its panels alone', () => {
    const takes = [{ from: 0, to: 300, amount: 5, open: { above: true, below: false } }];
    const seams = [[], takes, [], []];
    const alone = altered({ seams });
    expect(alone.gown.gores.map(({ top }) => top)).toEqual([115, 115, 120]);
    const known = altered({ seams, withBodice: [false, true, false, false], tops: [5, 4, 0] });
    expect(known.gown.gores.map(({ top }) => top)).toEqual([115, 116, 120]);
  });

  it('that nothing would be left of is told, and a hem above the waist', () => {
    const takes = (amount: number) => [{ from: 0, to: 900, amount, open: { above: true, below: true } }];
    const of = (own: object) => fittedSide(PLAIN, side(own), side(own));
    expect(of({ seams: [[], [], takes(125), []] })).toEqual({ reason: 'narrows-to-nothing', gore: 'b' });
    expect(of({ hems: [[0, 1, 2, 3].map((place) => ({ place, up: 905 }))] })).toMatchObject({
      reason: 'hem-above-waist',
      gore: 'a',
    });
    expect(
      of({ hems: [[0, 1, 2].map((place) => ({ place, up: 0 })).concat({ place: 3, up: 905 })] }),
    ).toMatchObject({ gore: 'c' });
  });
});

describe('where a finding of a fitting stands', () => {
  const found = (fields: Tree, code: string) => {
    const { text, diagnostics } = drafted(fields);
    return diagnostics
      .filter((one) => one.code === code)
      .map(({ span: { start, end } }: Diagnostic) => text.slice(start, end).trim());
  };

  it('at the amount that lets out more than there is beyond the seam', () => {
    const seams = [
      { seam: 'a/b', from: 100, to: 800, 'take-in': -16 },
      { seam: 'b/c', from: 100, to: 800, 'take-in': -14 },
    ];
    expect(found({ fittings: [on({ seams })] }, 'fitting-past-allowance')).toEqual(['-16']);
  });

  it('at the pin that another pin disagrees with: at one place within 5, by more than 1', () => {
    const pins = (along: number, up: number) =>
      found(
        {
          fittings: [
            on({
              hem: { 'a/b': 5 },
              levelled: [
                { from: 'a/b', along, up },
                { from: 'a/b', along: 90, up: 5 },
              ],
            }),
          ],
        },
        'fitting-disagrees',
      );
    expect(pins(0, 6.5)).toEqual(['6.5']);
    expect(pins(0, 3.5)).toEqual(['3.5']);
    expect(pins(0, 6)).toEqual([]);
    expect(pins(4.9, 7)).toEqual(['7']);
    expect(pins(5.1, 7)).toEqual([]);
  });

  it('a height on a bodice’s seam is above the waist or below it', () => {
    const say = (mm: number) => `${mm} mm`;
    expect([besideWaist(-30, say), besideWaist(30, say), belowWaistSeam('1 m')]).toEqual([
      '30 mm below the waist',
      '30 mm above the waist',
      '1 m below the waist seam',
    ]);
  });

  it('names the other line, and its file where that is another', () => {
    const source = (name: string) => ({ name, text: 'gown: x\nlengths: 900\n' });
    const [own, base] = [source('own.yaml'), source('base.yaml')];
    const span = (of: typeof own) => ({ source: of, start: 8, end: 20 });
    expect(fittingTakesAll(span(own), 'a', span(own)).message).toContain('is on line 2 (`lengths: 900`).');
    expect(fittingBelowHem(span(own), 'a/b', '1 m', '90 cm', span(base)).message).toContain(
      'by line 2 of base.yaml (`lengths: 900`).',
    );
  });

  it('of both sides at once: traced on her left first, gore by gore', () => {
    const entry = on({
      seams: [
        { seam: 'a/b', from: 200, to: 700, 'take-in': 6 },
        { seam: 'b/c', from: 200, to: 700, 'take-in': 5, side: 'left' },
      ],
    });
    const { gown } = drafted({ fittings: [entry] });
    expect(gown!.report.fittings![0]!.gores).toEqual([
      { name: 'a', side: 'left' },
      { name: 'b', side: 'left' },
      { name: 'c', side: 'left' },
      { name: 'a', side: 'right' },
      { name: 'b', side: 'right' },
    ]);
  });
});
