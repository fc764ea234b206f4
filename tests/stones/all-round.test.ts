import { describe, expect, it } from 'vitest';
import { stoneFacts } from '../../src/stones/stone-facts.ts';
import { made } from '../making/made.ts';

const [WIDE, LONG] = [200, 900];

/** Gores of no flare and one length: rectangles, which laid edge to edge are the skirt as it is sewn. */
function straight({
  mirrored,
  onFold = false,
  stones,
  more = '',
}: {
  mirrored: boolean;
  onFold?: boolean;
  stones: string;
  more?: string;
}) {
  const names = mirrored ? ['front', 'side', 'back'] : ['a', 'b', 'c', 'd', 'e', 'f'];
  const gore = (name: string, i: number) =>
    onFold && i === 0
      ? `{name: ${name}, on-fold: true, half-top: ${WIDE}, half-hem: ${WIDE}}`
      : `{name: ${name}, top: ${WIDE}, hem: ${WIDE}}`;
  const stations = mirrored ? ['centre-front', 'centre-back'] : ['f/a', 'c/d'];
  return made(`format: 1
gown: Trial
units: mm
${mirrored ? '' : 'symmetry: none'}
bodice: {waist-seam: ${6 * WIDE}}
gores:
${names.map((name, i) => `  - ${gore(name, i)}`).join('\n')}
lengths: {hem-width-at: ${LONG}, at: {${stations.map((name) => `${name}: ${LONG}`).join(', ')}}}
allowances: {seam: 15, waist: 15, hem: 15}
layers: [{name: shell, cloth: crepe, hem: turned}]
cloths: {crepe: {width: 1400}}
stones: [{name: beads, layer: shell, size: 1mm, clear: 0, ${stones}}]
${more}`);
}

interface Sewn {
  /** Round the skirt from the first edge of the first piece, mm. */
  readonly round: number;
  readonly down: number;
}

/** Pieces edge to edge in their order; a mirrored half once more as its mirror image. */
function sewn({ gown }: ReturnType<typeof made>): Sewn[] {
  const [{ pieces }] = stoneFacts(gown.gown, gown.drafts) as [ReturnType<typeof stoneFacts>[number]];
  const own = pieces.flatMap(({ outline, stones }, i) => {
    const [left, top] = [Math.min(...outline.map(({ x }) => x)), Math.min(...outline.map(({ y }) => y))];
    return stones.map(({ x, y }): Sewn => ({ round: i * WIDE + x - left, down: y - top }));
  });
  const mirrored = own.map(({ round, down }): Sewn => ({ round: 6 * WIDE - round, down }));
  return pieces[0]!.times === 2 ? [...own, ...mirrored] : own;
}

function leastApart(stones: readonly Sewn[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (const [i, a] of stones.entries())
    for (const b of stones.slice(i + 1)) {
      const across = Math.abs(a.round - b.round);
      least = Math.min(least, Math.hypot(Math.min(across, 6 * WIDE - across), a.down - b.down));
    }
  return least;
}

// Any entry of one side makes a gown of two halves; 0.5 mm hardly changes the rectangles.
const PINNED = `fittings: [{date: 2027-05-01, side: left, seams: [{seam: side/back, take-in: 0.5mm, from: 500, to: 700}]}]`;

describe('stones all the way round', () => {
  const density = 8;
  it.each([
    ['a mirrored skirt', 'mirrored', { mirrored: true }],
    ['a mirrored skirt with its front on the fold', 'mirrored', { mirrored: true, onFold: true }],
    ['a ring of gores', 'ring', { mirrored: false }],
    ['two halves that differ', 'two-halves', { mirrored: true, onFold: true, more: PINNED }],
  ])('of %s are as many as asked for, evenly over every seam', (_, round, how) => {
    const gown = straight({ ...how, stones: `per-dm2: ${density}` });
    expect(gown.gown.gown.round).toBe(round);
    const stones = sewn(gown);
    const asked = (density * 6 * WIDE * LONG) / 1e4;
    // 0.62 · area / d² (Bridson 2007); 30 mm of edge at waist and hem hold a few more.
    const [facts] = stoneFacts(gown.gown.gown, gown.gown.drafts);
    expect(facts!.count).toBe(stones.length);
    expect(stones.length / asked).toBeGreaterThan(0.95);
    expect(stones.length / asked).toBeLessThan(1.08);
    const apart = 100 * Math.sqrt(0.62 / density);
    expect(leastApart(stones)).toBeGreaterThan(apart - 0.6);
    // No bare strip and no crowd along any seam, the centres and the fold among them.
    for (let seam = 0; seam < 6; seam++) {
      const near = (middle: number) =>
        stones.filter(({ round }) => {
          const away = Math.abs(round - middle);
          return Math.min(away, 6 * WIDE - away) < apart;
        }).length;
      const usual = (stones.length * 2 * apart) / (6 * WIDE);
      expect(near(seam * WIDE) / usual).toBeGreaterThan(0.6);
      expect(near(seam * WIDE) / usual).toBeLessThan(1.4);
    }
  });

  it.each([
    ['a ring of gores', { mirrored: false }],
    ['two halves that differ', { mirrored: true, more: PINNED }],
  ])('of %s: none where she sits, and those in front stay', (_, how) => {
    const stones = sewn(straight({ ...how, stones: 'per-dm2: 6, off-seat: [200, 500]' }));
    const level = stones.filter(({ down }) => down > 202 && down < 498);
    // The centre back lies half-way round; the back half of her is a quarter of the way to either side of it.
    const behind = level.filter(({ round }) => Math.abs(round - 3 * WIDE) < 1.5 * WIDE - 2);
    expect(behind).toEqual([]);
    expect(level.length).toBeGreaterThan(0.45 * 6 * 6 * WIDE * 3e2 * 1e-4);
  });

  it('kept so far apart as is asked, and found to be fewer', () => {
    const gown = straight({ mirrored: true, stones: 'apart: 20mm, per-dm2: 8' });
    expect(leastApart(sewn(gown))).toBeGreaterThanOrEqual(21 - 1e-6);
    const wide = straight({ mirrored: false, stones: 'apart: 60mm, per-dm2: 8' });
    const [facts] = stoneFacts(wide.gown.gown, wide.gown.drafts);
    expect(leastApart(sewn(wide))).toBeGreaterThanOrEqual(61 - 1e-6);
    expect(wide.findings.map(({ code }) => code)).toContain('stones-kept-apart');
    // 0.62 · area / d² for discs that keep 61 mm between their middles.
    expect(facts!.count / ((0.62 * 6 * WIDE * LONG) / 61 ** 2)).toBeGreaterThan(0.93);
    expect(facts!.count / ((0.62 * 6 * WIDE * LONG) / 61 ** 2)).toBeLessThan(1.12);
  });
});
