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
    expect(rest).toEqual({ stretch: 0.013, assumedFloor: true });
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
});
