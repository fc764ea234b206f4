import { expect, it } from 'vitest';
import { chooseWay, type TriedWay } from '../../src/lay/plan/choose-way.ts';
import type { Fold } from '../../src/lay/plan/lay-plan.ts';
import type { LayToPlan } from '../../src/lay/plan/lay-to-plan.ts';
import type { PackedSection } from '../../src/lay/plan/pack-section.ts';

const toLay = { spec: { fold: 'any' }, layers: [] } as unknown as LayToPlan;

/** A way that comes to a length, with so many cuts. */
function tried(fold: Fold, length: number, cuts: number): TriedWay {
  const packing = { length, placements: Array.from({ length: cuts }) };
  return {
    way: { folds: [], fold, sections: [] },
    packed: [{ packing, length } as unknown as PackedSection],
    length,
    tooWide: undefined,
  };
}

it('of ways that differ by less than a millimetre the one with fewer cuts is taken', () => {
  const ways = [tried('single', 4000, 18), tried('lengthwise', 4000.8, 9)];
  expect(chooseWay(ways, toLay).taken.way.fold).toBe('lengthwise');
});

it('but never one that is longer than the layers end to end, were it by a hair', () => {
  const ways = [tried('single', 4000, 18), tried('lengthwise', 4000.8, 9), tried('crosswise', 4000.3, 12)];
  expect(chooseWay(ways, toLay, 4000.3).taken.way.fold).toBe('crosswise');
});
