import { describe, expect, it } from 'vitest';
import { stringify } from 'yaml';
import { comparisonText } from '../../src/words/comparison-text.ts';
import { GOWN } from '../fittings/fitted.ts';
import type { Tree } from '../outside/plain-gown.ts';
import { changeOf, compared } from './versions.ts';

const gown = (...fittings: readonly Tree[]): string =>
  stringify({
    ...GOWN,
    ...(fittings.length === 0
      ? {}
      : { fittings: fittings.map((entry) => ({ date: '2027-03-01', ...entry })) }),
  });

const seam = (takeIn: number, more: Tree = {}): Tree => ({
  ...more,
  seams: [{ seam: 'side/back', from: 150, to: 600, 'take-in': takeIn }],
});

describe('what fittings mean for the cloth that was cut', () => {
  it('a seam let out by 6 of 15: 9 mm left on both gores', () => {
    const comparison = compared(gown(), gown(seam(-6)));
    for (const gore of ['side', 'back']) {
      const { verdict, edges, slid } = changeOf(comparison, gore);
      expect(verdict).toBe('let-out');
      expect(slid).toEqual({ x: 0, y: 0 });
      const left = edges.find(({ edge }) => edge === 'side/back')?.left;
      expect(left?.wanted).toBe(15);
      expect(left?.least).toBeCloseTo(9, 1);
      // The alteration is whole in the middle third of the stretch.
      expect(left?.at).toBeGreaterThan(280);
      expect(left?.at).toBeLessThan(470);
    }
    expect(changeOf(comparison, 'side-front').verdict).toBe('same');
    expect(comparisonText(comparison)).toContain('side/back: 9 mm of 15 mm allowance left');
  });

  it('a seam taken in by 6: marked anew, up to 6 mm comes off there', () => {
    const comparison = compared(gown(), gown(seam(6)));
    const off = changeOf(comparison, 'back').edges.find(({ edge }) => edge === 'side/back')?.comesOff;
    expect(off?.most).toBeCloseTo(6, 1);
    expect(off?.least).toBeCloseTo(0, 1);
  });

  it('on one side of her only: that side alone, though one pattern was cut for both', () => {
    const { pieces } = compared(gown(), gown(seam(-6, { side: 'right' })));
    const told = pieces.changes
      .filter(({ layer }) => layer === 'shell')
      .map(({ gore, side, verdict }) => [gore, side ?? 'pair', verdict]);
    expect(told).toEqual([
      ['front', 'pair', 'same'],
      ['side-front', 'pair', 'same'],
      ['side', 'left', 'same'],
      ['side', 'right', 'let-out'],
      ['back', 'left', 'same'],
      ['back', 'right', 'let-out'],
    ]);
    expect(pieces.dropped).toEqual([]);
  });

  it('a hem pinned up on one side of the front: the whole front, cut on the fold, is unfolded and trimmed there', () => {
    const levelled = [0, 75, 150].map((along) => ({ from: 'centre-front', along, up: 8 }));
    const change = changeOf(compared(gown(), gown({ side: 'left', levelled })), 'front');
    expect(change.verdict).toBe('re-mark');
    expect(change.amount).toBeCloseTo(8, 1);
    expect(change.piece.piece.middle).toBe('front');
    expect(change.marks).toEqual(['seam-line']);
  });

  it('back from two sides to a pair: the worse of both sides counts', () => {
    const comparison = compared(gown(seam(6, { side: 'right' })), gown());
    expect(changeOf(comparison, 'side').verdict).toBe('let-out');
    expect(comparison.pieces.dropped).toEqual([]);
  });
});
