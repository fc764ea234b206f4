import { describe, expect, it } from 'vitest';
import type { Piece } from '../../src/draft/piece.ts';
import type { DraftedGown } from '../../src/pipeline.ts';
import type { Tree } from '../outside/plain-gown.ts';
import { fitted } from './fitted.ts';
import { along, away, distanceTo, edgeOf, lengthOf, type Place, sampled } from './sampled.ts';

/** A level cone: every gore is a sector about one point, so what a fitting does is known in closed form. */
const CONE = {
  bodice: { 'waist-seam': 720 },
  gores: [
    { name: 'front', 'on-fold': true, 'half-top': 80, 'half-flare': '8deg' },
    { name: 'side', top: 150, flare: '15deg' },
    { name: 'back', top: 130, flare: '13deg' },
  ],
  lengths: { at: { 'centre-front': 1000, 'centre-back': 1000 } },
  train: undefined,
  layers: [{ name: 'shell', cloth: 'calico', hem: 'faced' }],
};

const cone = (fittings: readonly Tree[], fields: Tree = {}): DraftedGown => {
  const { train: _, ...rest } = { ...CONE, ...fields };
  return fitted(fittings, { ...rest, train: undefined });
};

const on = (entry: Tree): Tree => ({ date: '2027-03-01', ...entry });
const pieceOf = ({ drafts }: DraftedGown, gore: string): Piece =>
  drafts.gown.pieces.find((piece) => piece.gore === gore)!;

/** Where the two sides of a sector meet. */
function apexOf(piece: Piece): Place {
  const [a, b] = [sampled(edgeOf(piece, piece.frontEdge), 1), sampled(edgeOf(piece, piece.backEdge), 1)];
  const cross = (p: Place, q: Place): number => p.x * q.y - p.y * q.x;
  const minus = (p: Place, q: Place): Place => ({ x: p.x - q.x, y: p.y - q.y });
  const [u, v] = [minus(a[1]!, a[0]!), minus(b[1]!, b[0]!)];
  const t = cross(minus(b[0]!, a[0]!), v) / cross(u, v);
  return { x: a[0]!.x + t * u.x, y: a[0]!.y + t * u.y };
}

describe('the hem', () => {
  it('taken up 20 all round is the draft that is 20 shorter', () => {
    const up = cone([on({ hem: { 'all-round': 20 } })]);
    const short = cone([], { lengths: { at: { 'centre-front': 980, 'centre-back': 980 } } });
    for (const gore of ['front', 'side', 'back']) {
      const line = sampled(edgeOf(pieceOf(short, gore), 'hem'));
      for (const point of sampled(edgeOf(pieceOf(up, gore), 'hem'), 20))
        expect(distanceTo(line, point)).toBeLessThan(0.01);
    }
    expect(up.report.hem.sewn).toBeCloseTo(short.report.hem.sewn, 2);
  });

  it('let down at one station lies lower there and stays where it was beyond its neighbours', () => {
    const down = cone([on({ hem: { 'side/back': -12 } })]);
    const lengths = Object.fromEntries(down.report.stations.map(({ name, length }) => [name, length]));
    expect(lengths).toEqual({
      'centre-front': 1000,
      'front/side': 1000,
      'side/back': 1012,
      'centre-back': 1000,
    });
    expect(edgeOf(pieceOf(down, 'front'), 'hem')).toEqual(edgeOf(pieceOf(cone([]), 'front'), 'hem'));
  });

  it('levelled every 7.5 cm goes up at each pin by what was pinned', () => {
    const pins = [3, 5, 8, 6, 4, 2];
    const levelled = pins.map((up, i) => ({ from: 'front/side', along: 40 + 75 * i, up }));
    const piece = pieceOf(cone([on({ levelled })]), 'side');
    const [apex, old] = [apexOf(piece), pieceOf(cone([]), 'side')];
    const before = sampled(edgeOf(old, 'hem')).reverse();
    const after = sampled(edgeOf(piece, 'hem')).reverse();
    const radius = away(apexOf(old), before[0]!);
    for (const { along: distance, up } of levelled) {
      if (distance > lengthOf(before)) continue;
      const pin = along(before, distance);
      const angle = Math.atan2(pin.x - apex.x, pin.y - apex.y);
      const found = after.reduce((best, point) =>
        Math.abs(Math.atan2(point.x - apex.x, point.y - apex.y) - angle) <
        Math.abs(Math.atan2(best.x - apex.x, best.y - apex.y) - angle)
          ? point
          : best,
      );
      expect(radius - away(apex, found), `pin at ${distance}`).toBeCloseTo(up, 1);
    }
  });

  it('two fittings add up, the second measured along the hem that the first left', () => {
    const both = cone([
      on({ hem: { 'all-round': 30 } }),
      { date: '2027-04-01', levelled: [{ from: 'centre-front', along: 0, up: 5 }] },
    ]);
    const lengths = Object.fromEntries(both.report.stations.map(({ name, length }) => [name, length]));
    expect(lengths['centre-front']).toBeCloseTo(965, 3);
    expect(lengths['centre-back']).toBeCloseTo(970, 3);
  });
});

describe('a seam', () => {
  /** t³(10 − 15t + 6t²), the way an alteration runs out over a third of its stretch. */
  const eased = (t: number): number => (t <= 0 ? 0 : t >= 1 ? 1 : t ** 3 * (10 - 15 * t + 6 * t * t));

  it.each([
    ['taken in by 6', 6],
    ['let out by 6', -6],
  ])('%s between 150 and 600 runs so far from where it was, and not at all outside', (_what, takeIn) => {
    const before = cone([]);
    const after = cone([on({ seams: [{ seam: 'side/back', from: 150, to: 600, 'take-in': takeIn }] })]);
    for (const gore of ['side', 'back']) {
      const line = (gown: DraftedGown): Place[] => {
        const points = sampled(edgeOf(pieceOf(gown, gore), 'side/back'));
        return gore === 'side' ? points : points.reverse();
      };
      const [old, now] = [line(before), line(after)];
      for (let down = 10; down < 990; down += 20) {
        const wanted = Math.abs(takeIn) * eased((down - 150) / 150) * eased((600 - down) / 150);
        expect(distanceTo(old, along(now, down)), `${gore} ${down} down`).toBeCloseTo(wanted, 0.7);
      }
      // In the middle third the line is parallel, and the distance is that of two parallels.
      expect(distanceTo(old, along(now, 375))).toBeCloseTo(6, 1);
      expect(lengthOf(now)).toBeCloseTo(1000, 2);
    }
    const area = (gown: DraftedGown, gore: string): number =>
      gown.report.gores.find(({ name }) => name === gore)!.area;
    for (const gore of ['side', 'back'])
      expect(Math.sign(area(before, gore) - area(after, gore))).toBe(Math.sign(takeIn));
  });

  it('taken in from waist to hem, of rectangles, is the draft of narrower gores', () => {
    const straight = (tops: readonly [number, number, number]): Tree => ({
      bodice: { 'waist-seam': 2 * (tops[0] + tops[1] + tops[2]) },
      gores: [
        { name: 'front', 'on-fold': true, 'half-top': tops[0], 'half-flare': 0 },
        { name: 'side', top: tops[1], flare: 0 },
        { name: 'back', top: tops[2], flare: 0 },
      ],
    });
    const taken = cone(
      [on({ seams: [{ seam: 'side/back', from: 0, to: 1000, 'take-in': 8 }] })],
      straight([80, 150, 130]),
    );
    const narrow = cone([], straight([80, 142, 122]));
    for (const gore of ['front', 'side', 'back']) {
      const [own, other] = [taken, narrow].map(
        (gown) => gown.report.gores.find(({ name }) => name === gore)!,
      );
      expect(own!.top).toBeCloseTo(other!.top, 3);
      expect(own!.hem).toBeCloseTo(other!.hem, 3);
      expect(own!.area).toBeCloseTo(other!.area, 0);
    }
    expect(taken.report.waist.sewn).toBeCloseTo(720 - 4 * 8, 2);
    expect(taken.report.waist.bodice).toBeCloseTo(720 - 4 * 8, 2);
  });

  it('taken in from waist to hem, of a sector, is the sector with its apex nearer', () => {
    const taken = pieceOf(
      cone([on({ seams: [{ seam: 'side/back', from: 0, to: 1000, 'take-in': 5 }] })]),
      'back',
    );
    // Both sides straight still, the angle between them the same, the waist shorter by one edge's 5 mm.
    const sides = ['side/back', 'centre-back'].map((name) => sampled(edgeOf(taken, name)));
    for (const side of sides) {
      const chord = [side[0]!, side[side.length - 1]!];
      expect(Math.max(...side.map((point) => distanceTo(chord, point)))).toBeLessThan(0.02);
    }
    const direction = (side: readonly Place[]): number =>
      Math.atan2(side[side.length - 1]!.x - side[0]!.x, Math.abs(side[side.length - 1]!.y - side[0]!.y));
    const angle = Math.abs(direction(sides[0]!.reverse()) - direction(sides[1]!));
    expect((angle * 180) / Math.PI).toBeCloseTo(13, 2);
    expect(lengthOf(sampled(edgeOf(taken, 'waist')))).toBeCloseTo(125, 1);
  });

  it('says how the bodice follows where a seam is taken in at the waist', () => {
    const { gown, asked } = cone([on({ seams: [{ seam: 'side/back', from: 0, to: 300, 'take-in': 3 }] })]);
    expect(asked.waistSeam).toBe(720);
    expect(gown.waistSeam).toBeCloseTo(720 - 4 * 3, 3);
  });
});

describe('the waist edge', () => {
  it('up at the centre back makes the seam there longer and the edge shorter', () => {
    const { report } = cone([on({ waist: { 'centre-back': 2 } })]);
    expect(report.stations.find(({ name }) => name === 'centre-back')?.length).toBeCloseTo(1002, 3);
    expect(report.stations.find(({ name }) => name === 'side/back')?.length).toBeCloseTo(1000, 3);
    expect(report.waist.sewn).toBeLessThan(720);
  });
});

describe('one layer only', () => {
  const layers = [
    { name: 'lining', cloth: 'calico', hem: 'faced' },
    { name: 'shell', cloth: 'calico', hem: 'faced' },
  ];
  it('alters the pieces of that layer, and leaves the others as they are', () => {
    const { cut, report } = cone([on({ layer: 'lining', hem: { 'all-round': 15 } })], { layers });
    const plain = cone([], { layers });
    expect(plain.cut.pieces.map((piece) => piece.layers)).toEqual([
      ['lining', 'shell'],
      ['lining', 'shell'],
      ['lining', 'shell'],
    ]);
    expect(cut.pieces.map((piece) => piece.layers)).toEqual([
      ['lining'],
      ['shell'],
      ['lining'],
      ['shell'],
      ['lining'],
      ['shell'],
    ]);
    const shell = cut.pieces.find((piece) => piece.layers.includes('shell'))!;
    expect(shell.cutEdges).toEqual(plain.cut.pieces[0]!.cutEdges);
    const [lining, outer] = report.layers;
    expect(lining!.sewnHem).toBeLessThan(outer!.sewnHem);
    expect(report.fittings).toMatchObject([{ date: '2027-03-01', layer: 'lining' }]);
  });
});
