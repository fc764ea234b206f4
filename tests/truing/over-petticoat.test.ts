import { describe, expect, it } from 'vitest';
import { draft } from '../../src/pipeline.ts';
import { level, plainGown, type Tree } from '../outside/plain-gown.ts';

const found = (fields: Tree) =>
  draft({ name: 'gown.yaml', text: plainGown({ units: 'mm', ...fields }) }).diagnostics.filter(({ code }) =>
    ['tighter-than-petticoat', 'gore-puckers'].includes(code),
  );

const girths = [
  { down: 0, girth: 720 },
  { down: 200, girth: 1150 },
  { down: 1000, girth: 2400 },
];
const direct = {
  bodice: { 'waist-seam': 720 },
  gores: ['front', 'side', 'back'].map((name) => ({ name, top: 120, hem: 420 })),
  lengths: level(1000),
};

describe('a skirt against its petticoat', () => {
  it('a cone of 2520 at the hem is tight at the hips and not below: said with every level', () => {
    // 720 + 1800 × 200/1000 = 1080 at a level where the petticoat is 1150.
    const [finding, ...more] = found({ ...direct, petticoat: { girths } });
    expect(more).toEqual([]);
    expect(finding!.code).toBe('tighter-than-petticoat');
    const rows = finding!.table!.slice(1);
    const hip = rows.find(([down]) => down === '200 mm')!;
    expect(hip).toEqual(['200 mm', '1150 mm', '1080 mm', '-70 mm']);
    expect(rows.some(([down]) => down === '1000 mm')).toBe(false);
  });

  it('is looked at eight times between two levels and at the hem, and speaks of the worst', () => {
    const { table, message } = found({ ...direct, petticoat: { girths } })[0]!;
    const [head, ...rows] = table!;
    expect(head).toEqual(['below the waist', 'petticoat with ease', 'skirt', 'to spare']);
    const read = rows.map((row) => row.map((cell) => Number.parseFloat(cell)));
    const places = [...Array(8)].flatMap((_, k) => [(k * 200) / 8, 200 + (k * 800) / 8]);
    let worst = read[0]!;
    for (const row of read) {
      const [down, needed, skirt, spare] = row as [number, number, number, number];
      expect(down).toBeGreaterThan(0);
      expect(places).toContain(down);
      // A cone: 720 at the waist, 2520 a metre below.
      expect(skirt).toBeCloseTo(720 + 1.8 * down, 0);
      expect(Math.abs(spare - (skirt - needed))).toBeLessThanOrEqual(1);
      if (spare < worst[3]!) worst = row;
    }
    const [down, needed, skirt] = worst;
    expect(message).toBe(
      `At ${down} mm below the waist the skirt is ${skirt} mm round and the petticoat with its ease ${needed} mm.`,
    );
  });

  it('is not looked at below its hem, nor above the edge of a bodice that comes down', () => {
    const longer = [...girths.slice(0, 2), { down: 1400, girth: 4000 }];
    const rows = (fields: Tree) =>
      found({ ...direct, ...fields }).flatMap(({ table }) =>
        table!.slice(1).map(([down]) => Number.parseFloat(down!)),
      );
    const all = rows({ petticoat: { girths: longer } });
    expect(Math.max(...all)).toBe(1000);
    // Of a train the shortest station counts.
    const trained = {
      'hem-width-at': 1000,
      measured: 'finished',
      at: { 'centre-front': 900, 'centre-back': 1100 },
    };
    expect(Math.max(...rows({ petticoat: { girths: longer }, lengths: trained }))).toBe(900);
    const dropped = rows({
      petticoat: { girths: longer },
      bodice: {
        'waist-seam': 720,
        'drop-below-waist': { 'centre-front': 60, 'front/side': 60, 'side/back': 60, 'centre-back': 60 },
      },
    });
    expect(Math.min(...dropped)).toBe(75);
  });

  it('with ease it needs more; without a petticoat nothing is said', () => {
    const wide = {
      ...direct,
      gores: ['front', 'side', 'back'].map((name) => ({ name, top: 120, hem: 600 })),
    };
    expect(found({ ...wide, petticoat: { girths } })).toEqual([]);
    expect(found({ ...wide, petticoat: { girths, ease: 400 } })[0]!.code).toBe('tighter-than-petticoat');
    expect(found(wide)).toEqual([]);
  });

  it('gores that take the girths are never tight', () => {
    const gores = ['front', 'side', 'back'].map((name) => ({ name, top: 120 }));
    const lengths = { measured: 'finished', at: { 'centre-front': 1000, 'centre-back': 1000 } };
    expect(found({ ...direct, gores, lengths, petticoat: { girths, ease: 30 } })).toEqual([]);
  });
});

describe('a gore that would pucker', () => {
  const shaped = (perHalf: number, weave: string) => ({
    bodice: { 'waist-seam': 700 },
    gores: Array.from({ length: perHalf }, (_, i) => ({ name: `g${i}`, top: 350 / perHalf })),
    lengths: { measured: 'finished', at: { 'centre-front': 700, 'centre-back': 700 } },
    petticoat: {
      girths: [
        { down: 0, girth: 700 },
        { down: 100, girth: 1000 },
        { down: 250, girth: 1020 },
        { down: 700, girth: 1020 },
      ],
    },
    cloths: { calico: { width: 3000, weave } },
  });

  it('two gores over round hips do, ten do not; satin shows it sooner (5 % and 2 %: common practice)', () => {
    expect(found(shaped(2, 'crepe')).map(({ code }) => code)).toEqual(['gore-puckers', 'gore-puckers']);
    expect(found(shaped(5, 'crepe'))).toEqual([]);
    expect(found(shaped(5, 'satin')).length).toBeGreaterThan(0);
    expect(found(shaped(2, 'crepe'))[0]!.why).toContain('common practice');
  });

  it('says by how much, where, and what will be seen', () => {
    const { message, why } = found(shaped(2, 'crepe'))[0]!;
    const [, share, way, down] =
      /^Gore `g0` is ([\d.]+) % (longer|shorter) than the body between its seams, (\d+) mm below/.exec(
        message,
      )!;
    // From 350/2 at the waist to 250 a gore 100 mm below: each seam slants by 37.5 mm in 100, so it is some 7 % longer
    // than the middle; where the seams then turn straight down the middle is short against them by more than cloth gives.
    expect(Number(share)).toBeGreaterThan(5);
    expect(Number(share)).toBeLessThan(30);
    expect(way).toBe('shorter');
    expect(why).toContain('its seams pucker');
    expect(Number(down)).toBeGreaterThanOrEqual(100);
    expect(Number(down)).toBeLessThanOrEqual(250);
  });

  it('over a cone no gore does, however few', () => {
    const cone = [
      { down: 0, girth: 700 },
      { down: 100, girth: 900 },
      { down: 700, girth: 2100 },
    ];
    expect(found({ ...shaped(2, 'satin'), petticoat: { girths: cone } })).toEqual([]);
  });
});
