import { describe, expect, it } from 'vitest';
import { bonesToBuy } from '../../src/bodice/bones.ts';
import { bonesOf, type LacedClosing, lacingAt, waistTape } from '../../src/bodice/supplies.ts';
import { EXAMPLE } from './bodies.ts';
import { drafted } from './drafted.ts';

const RULE = {
  kind: 'spiral-steel',
  width: 7,
  clear: 10,
  step: 10,
  along: 'seams',
  also: ['centre-back'],
} as const;

const LACED: LacedClosing = {
  kind: 'lacing',
  at: 'centre-back',
  gap: 50,
  eyelets: 25,
  fromEdge: 15,
  doubledAtWaist: false,
  modesty: 120,
  tails: 1000,
};

describe('the bones of the example', () => {
  const draft = drafted(EXAMPLE);
  const { bones, faults } = bonesOf(draft, RULE, [LACED]);

  it('one along each seam on both sides of her, two beside each row of eyelets', () => {
    expect(faults).toEqual([]);
    expect(bones.map(({ along, count }) => [along, count])).toEqual([
      ['front/side-front', 2],
      ['side-front/side', 2],
      ['side/side-back', 2],
      ['side-back/back', 2],
      ['centre-back', 4],
    ]);
  });

  it('each as long as its seam less a centimetre at both ends, down to the next centimetre', () => {
    // The seams as their heights say: 180 + 55, 150 + 25, and 100 at the centre back.
    const [first, second, , , last] = bones;
    expect([first!.seam, second!.seam, last!.seam]).toEqual(
      [235, 175, 100].map((length) => expect.closeTo(length, 2)),
    );
    expect([first!.length, second!.length, last!.length]).toEqual([210, 150, 80]);
    for (const { seam, length } of bones) expect(length).toBeLessThanOrEqual(seam - 20);
  });

  it('what is bought is what is cut: steels by their length, synthetic bone in one run', () => {
    const steels = bonesToBuy(bones, 'spiral-steel');
    expect(steels.reduce((sum, { count }) => sum + count, 0)).toBe(12);
    expect(steels.find(({ length }) => length === 80)!.count).toBeGreaterThanOrEqual(4);
    const run = bones.reduce((sum, { length, count }) => sum + length * count, 0);
    expect(bonesToBuy(bones, 'synthetic')).toEqual([{ length: run, count: 1 }]);
  });

  it('a zip that opens one side seam has a bone on each side of it there, and one on the other seam', () => {
    const zip = { kind: 'zip', at: 'side-front/side', side: 'left' } as const;
    const own = bonesOf(draft, { ...RULE, also: ['centre-front'] }, [zip]).bones;
    expect(
      own.filter(({ along }) => along === 'side-front/side').map(({ side, count }) => [side, count]),
    ).toEqual([
      ['left', 2],
      ['right', 1],
    ]);
    expect(own.find(({ along }) => along === 'centre-front')).toMatchObject({ count: 1 });
  });

  it('a seam without room, or one that is not there, is said', () => {
    const codes = (rule: Parameters<typeof bonesOf>[1]) =>
      bonesOf(draft, rule, [LACED]).faults.map((fault) => [fault.code, fault.place.join('.')]);
    expect(codes({ ...RULE, clear: 48 })).toEqual([['bones-do-not-fit', 'bodice.bones.clear']]);
    expect(codes({ ...RULE, also: ['centre'] })).toEqual([['unknown-bodice-station', 'bodice.bones.also']]);
  });
});

it('laced at the centre back: an edge of 100 takes four eyelets, and the lace crosses between rows 80 apart', () => {
  const found = lacingAt(drafted(EXAMPLE), LACED);
  if ('faults' in found) throw new Error('it laces');
  // 70 between the first and the last, 25 apart as near as goes: three spaces of 23.3.
  expect(found.lacing.eyelets).toBe(4);
  expect(found.lacing.pitch).toBeCloseTo(70 / 3, 2);
  expect(found.lacing.worn).toBeCloseTo(6 * Math.hypot(70 / 3, 80) + 80, 1);
});

it('a gap of its own at each level: the lace follows it', () => {
  const gap = { bust: 90, underbust: 70, waist: 30, 'high-hip': 60, hip: 60 };
  const found = lacingAt(drafted({ ...EXAMPLE, lacings: [{ at: 'centre-back', gap }] }), { ...LACED, gap });
  if ('faults' in found) throw new Error('it laces');
  // The edge runs from 100 above, nearest to the underbust, down to the waist.
  expect(found.lacing.between).toEqual([70 + 30, 30 + 30]);
});

it.each([
  [{ fromEdge: 55 }, 'eyelets-do-not-fit'],
  [{ modesty: 50 }, 'modesty-too-narrow'],
])('%j does not fit: %s', (change, code) => {
  const found = lacingAt(drafted(EXAMPLE), { ...LACED, ...change });
  expect('faults' in found ? found.faults.map((fault) => fault.code) : []).toEqual([code]);
});

it('the waist tape closes at the waist as it is laced in, its ends turned under', () => {
  const tape = waistTape(drafted(EXAMPLE));
  expect(tape.round).toBe(650);
  // Two and a half centimetres at each end: common practice.
  expect(tape.length).toBe(700);
});
