import { describe, expect, it } from 'vitest';
import { hangFigures } from '../../src/hanging/hang-figures.ts';

/**
 * Figures of a hem that was hung by hand, mm: a frame of four sides of 200, level in front at 120, on the floor behind,
 * its sides leaning down by 120 over 160 (a 3-4-5 triangle). Left, behind, height.
 */
const HEM = [
  [0, 0, 120],
  [200, 0, 120],
  [200, 160, 0],
  [0, 160, 0],
];
const hang = (hem = HEM) =>
  ({
    columns: 4,
    rows: 2,
    // The waist above, the hem below, column by column.
    place: Float64Array.from(hem.flatMap(([x, y, z]) => [x!, y!, 900, x!, y!, z!])),
    depth: Float64Array.from(hem.flatMap(() => [0, 900])),
    seams: [
      { station: 0, column: 0 },
      { station: 1, column: 2 },
    ],
    stationNames: ['centre-front', 'side/back'],
    stretch: 0.013,
    assumedFloor: true,
  }) as never;

describe('figures of a hung hem', () => {
  const { hem, touches, train, ...rest } = hangFigures(hang());

  it('a place every 50 along, from the centre front by her left, with its height', () => {
    expect(hem.map(({ along }) => along)).toEqual(Array.from({ length: 16 }, (_, i) => 50 * i));
    const at = (along: number) => hem.find((own) => own.along === along)!;
    expect(at(150)).toMatchObject({ left: 150, behind: 0, height: 120 });
    // A quarter of the way down the leaning side: 40 behind, 30 lower.
    expect(at(250)).toMatchObject({
      left: 200,
      behind: expect.closeTo(40, 9),
      height: expect.closeTo(90, 9),
    });
    expect(at(550)).toMatchObject({ left: expect.closeTo(50, 9), behind: 160, height: 0 });
    expect(at(750)).toMatchObject({ left: 0, behind: expect.closeTo(40, 9), height: expect.closeTo(90, 9) });
  });

  it('the station next to it, the shorter way round', () => {
    const near = (along: number) => hem.find((own) => own.along === along)!.near;
    expect(near(100)).toEqual({ station: 'centre-front', beside: 100 });
    expect(near(350)).toEqual({ station: 'side/back', beside: 50 });
    expect(near(550)).toEqual({ station: 'side/back', beside: 150 });
    // 800 round: 50 back to where it began.
    expect(near(750)).toEqual({ station: 'centre-front', beside: 50 });
  });

  it('where it lies on the floor, and how far behind her heels', () => {
    expect(touches).toEqual([{ from: 400, to: 600 }]);
    // Her heels stand 50 behind the middle of her waist (from memory).
    expect(train).toEqual({ behindHeel: 110, left: 200, right: 0 });
    // At side/back 900 of cloth comes straight down from 900: the last 25 are as near the floor as its folds.
    expect(rest).toEqual({ lainBehind: expect.closeTo(25, 9), stretch: 0.013, assumedFloor: true });
  });

  it('what is sewn on may lie farther; what hangs clear is no train', () => {
    const tail = Float64Array.from([250, 300, 1, -40, 200, 2, 500, 900, 40]);
    expect(hangFigures(hang(), [tail]).train).toEqual({ behindHeel: 250, left: 250, right: -40 });
    const clear = hangFigures(hang(HEM.map(([x, y, z]) => [x!, y!, z! + 20])));
    expect([clear.touches, clear.train]).toEqual([[], undefined]);
    // In front it lies too, and that is no train.
    const folds = [
      [0, 0, 0],
      [200, 0, 0],
      [200, 160, 120],
      [0, 160, 120],
    ];
    const inFront = hangFigures(hang(folds));
    expect([inFront.touches, inFront.train]).toEqual([[{ from: 0, to: 200 }], undefined]);
  });

  it('what lies of the centre back, up from the hem to where it leaves the floor', () => {
    // Down one column: 900 above, then 45 off the floor, in a small fold, flat, and at the hem; 1000 of cloth, three times 200.
    const heights = [900, 45, 5, 20, 0];
    const depths = [0, 1000, 1200, 1400, 1600];
    const behind = {
      ...(hang() as object),
      columns: 2,
      rows: 5,
      place: Float64Array.from([0, 300].flatMap((y) => heights.flatMap((z) => [0, y, y === 0 ? 900 : z]))),
      depth: Float64Array.from([...depths, ...depths]),
      seams: [
        { station: 0, column: 0 },
        { station: 1, column: 1 },
      ],
      stationNames: ['centre-front', 'centre-back'],
    };
    // Half of the way from 5 up to 45 it is 25 off: 1100 down. 1600 − 1100 = 500.
    expect(hangFigures(behind as never).lainBehind).toBeCloseTo(500, 9);
    const clear = { ...behind, place: behind.place.map((own, i) => (i % 3 === 2 ? own + 30 : own)) };
    expect(hangFigures(clear as never).lainBehind).toBe(0);
    // Without a centre back it is the seam where most lies; with one it is that, whatever lies elsewhere.
    expect(
      hangFigures({ ...behind, stationNames: ['left-front', 'left-back'] } as never).lainBehind,
    ).toBeCloseTo(500, 9);
    expect(hangFigures({ ...behind, stationNames: ['centre-back', 'left-back'] } as never).lainBehind).toBe(
      0,
    );
  });
});
