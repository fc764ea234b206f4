import { describe, expect, it } from 'vitest';
import type { CutPiece } from '../../src/draft/piece.ts';
import { growthToHold, polygonOf, spareAround, unfolded } from './cloth-polygons.ts';
import { changeOf, cone, piecesCompared } from './versions.ts';

const level = (length: number) => ({
  measured: 'finished',
  at: { 'centre-front': length, 'centre-back': length },
});

describe('a hem raised by exactly 20 mm', () => {
  const comparison = piecesCompared(cone(), cone({ lengths: level(980) }));

  it.each(['front', 'side', 'back'])('%s is marked anew, and 20 mm comes off all along the hem', (gore) => {
    const { verdict, amount, edges, slid } = changeOf(comparison, gore);
    expect(verdict).toBe('re-mark');
    expect(amount).toBeCloseTo(20, 2);
    expect(slid).toEqual({ x: 0, y: 0 });
    const hem = edges.find(({ edge }) => edge === 'hem');
    expect(hem?.comesOff?.least).toBeCloseTo(20, 1);
    expect(hem?.comesOff?.most).toBeCloseTo(20, 2);
  });

  it('lies inside by a polygon library, and the reverse sticks out by 20 mm', () => {
    const { was, piece, shift } = changeOf(comparison, 'side');
    const cut = (one: CutPiece | undefined, by = { x: 0, y: 0 }) => [
      polygonOf(
        one!.cutEdges.flatMap((edge) => edge.curves),
        by,
      ),
    ];
    expect(growthToHold(cut(was), cut(piece, shift))).toBe(0);
    expect(growthToHold(cut(piece, shift), cut(was))).toBeCloseTo(20, 1);
  });
});

describe('the least that can be sewn', () => {
  const narrow = (length: number) =>
    cone({
      lengths: level(length),
      allowances: { seam: '15mm', waist: '4.9mm', hem: '4.9mm' },
      layers: [{ name: 'shell', cloth: 'calico', hem: 'rolled' }],
    });

  it('of an allowance that was never 6 mm is three quarters of it: 4.5 of 4.9 mm are sewn', () => {
    const { verdict, edges } = changeOf(piecesCompared(narrow(1000), narrow(1000.4)), 'side');
    expect(verdict).toBe('let-out');
    expect(edges.find(({ edge }) => edge === 'hem')?.left?.least).toBeCloseTo(4.5, 1);
  });

  it('3 mm of 4.9 are not, above and below', () => {
    const { verdict, amount } = changeOf(piecesCompared(narrow(1000), narrow(1003.8)), 'side');
    expect(verdict).toBe('re-cut');
    // 3.675 mm are needed and 1.1 left.
    expect(amount).toBeCloseTo(3.675 - 1.1, 1);
  });
});

describe('a hem let down', () => {
  it('by 6 of 10 mm leaves 4 mm, less than can be sewn: 2 mm short', () => {
    const { verdict, amount, edges } = changeOf(
      piecesCompared(cone(), cone({ lengths: level(1006) })),
      'side',
    );
    expect(verdict).toBe('let-out'); // slid up by 2 mm into the waist's allowance
    expect(edges.find(({ edge }) => edge === 'hem')?.left?.least).toBeCloseTo(6, 1);
    expect(amount).toBeCloseTo(6, 1);
  });

  it('by 3 of 10 mm leaves 7 mm', () => {
    const { verdict, amount, slid } = changeOf(
      piecesCompared(cone(), cone({ lengths: level(1003) })),
      'side',
    );
    expect(verdict).toBe('let-out');
    expect(amount).toBeCloseTo(7, 2);
    expect(slid).toEqual({ x: 0, y: 0 });
  });

  it('by 40 of 10 mm runs 30 mm outside the cloth', () => {
    const { verdict, amount, edges } = changeOf(
      piecesCompared(cone(), cone({ lengths: level(1040) })),
      'side',
    );
    expect(verdict).toBe('re-cut');
    expect(amount).toBeCloseTo(30, 2);
    expect(edges.find(({ edge }) => edge === 'hem')?.left).toMatchObject({ wanted: 10 });
    expect(edges.find(({ edge }) => edge === 'hem')?.left?.least).toBeCloseTo(-30, 2);
  });
});

/** Corners of the hem run straight on, so that every allowance is whole to its ends. */
const PLAIN = {
  allowances: { seam: '15mm', waist: '15mm', hem: '15mm' },
  layers: [{ name: 'shell', cloth: 'calico', hem: 'rolled' }],
};

describe('rectangles, where a wider gore moves its seam lines by half of the difference', () => {
  const straight = (side: number, more = {}) =>
    cone({
      bodice: { 'waist-seam': 2 * (80 + side + 130) },
      gores: [
        { name: 'front', 'on-fold': true, 'half-top': 80, 'half-flare': 0 },
        { name: 'side', top: side, flare: 0 },
        { name: 'back', top: 130, flare: 0 },
      ],
      ...more,
    });

  it('let out by 6 of 15 mm at each seam: 9 mm left', () => {
    const comparison = piecesCompared(straight(150), straight(162));
    const { verdict, amount, edges } = changeOf(comparison, 'side');
    expect(verdict).toBe('let-out');
    expect(amount).toBeCloseTo(9, 3);
    for (const edge of ['front/side', 'side/back'])
      expect(edges.find((one) => one.edge === edge)?.left?.least).toBeCloseTo(9, 3);
    expect(changeOf(comparison, 'front').verdict).toBe('same');
    expect(changeOf(comparison, 'back').verdict).toBe('same');
  });

  it('the seam line lies 9 mm inside the cloth by a polygon library', () => {
    const { was, piece, shift } = changeOf(
      piecesCompared(straight(150, PLAIN), straight(162, PLAIN)),
      'side',
    );
    const cloth = [polygonOf(was!.cutEdges.flatMap((edge) => edge.curves))];
    const seam = [
      polygonOf(
        piece.piece.edges.flatMap((edge) => edge.curves),
        shift,
      ),
    ];
    expect(spareAround(cloth, seam)).toBeCloseTo(9, 2);
  });

  it('let out by 9 mm leaves just what can be sewn, by 9.2 mm not', () => {
    expect(changeOf(piecesCompared(straight(150), straight(168)), 'side').verdict).toBe('let-out');
    const { verdict, amount } = changeOf(piecesCompared(straight(150), straight(168.4)), 'side');
    expect(verdict).toBe('re-cut');
    expect(amount).toBeCloseTo(0.2, 2);
  });

  it('a narrower gore lies inside, and 7 mm comes off each side', () => {
    const { verdict, edges } = changeOf(piecesCompared(straight(150), straight(136)), 'side');
    expect(verdict).toBe('re-mark');
    for (const edge of ['front/side', 'side/back']) {
      const off = edges.find((one) => one.edge === edge)?.comesOff;
      expect(off?.least).toBeCloseTo(7, 3);
      expect(off?.most).toBeCloseTo(7, 3);
    }
  });

  it('on the fold only the free side moves: 12 mm wider is 3 mm left of 15', () => {
    const wide = straight(150, {
      bodice: { 'waist-seam': 744 },
      gores: [
        { name: 'front', 'on-fold': true, 'half-top': 92, 'half-flare': 0 },
        { name: 'side', top: 150, flare: 0 },
        { name: 'back', top: 130, flare: 0 },
      ],
    });
    const { verdict, amount, edges } = changeOf(piecesCompared(straight(150), wide), 'front');
    expect(verdict).toBe('re-cut');
    expect(edges.find(({ edge }) => edge === 'front/side')?.left?.least).toBeCloseTo(3, 3);
    expect(amount).toBeCloseTo(3, 3);
  });

  it('a centre seam in place of a fold needs cloth that a half does not have; the other way it is always cut again', () => {
    const seamed = straight(150, {
      gores: [
        { name: 'front', top: 80, flare: 0 },
        { name: 'side', top: 150, flare: 0 },
        { name: 'back', top: 130, flare: 0 },
      ],
    });
    expect(changeOf(piecesCompared(straight(150), seamed), 'front').verdict).toBe('let-out');
    expect(changeOf(piecesCompared(seamed, straight(150)), 'front')).toMatchObject({
      verdict: 're-cut',
      newCloth: 'now-on-the-fold',
    });
  });
});

describe('what is no change of shape', () => {
  it('wider allowances on the same seam lines: what there was is left', () => {
    const { verdict, amount, marks } = changeOf(
      piecesCompared(cone(), cone({ allowances: { seam: '20mm', waist: '15mm', hem: '10mm' } })),
      'side',
    );
    expect(verdict).toBe('let-out');
    expect(amount).toBeCloseTo(15, 3);
    expect(marks).toEqual([]);
  });

  it('narrower allowances: 3 mm comes off', () => {
    const { verdict, amount } = changeOf(
      piecesCompared(cone(), cone({ allowances: { seam: '12mm', waist: '15mm', hem: '10mm' } })),
      'side',
    );
    expect(verdict).toBe('re-mark');
    expect(amount).toBeCloseTo(3, 1);
  });

  it('a seam line that moves into its own allowance is marked anew, though nothing comes off', () => {
    const rectangle = (top: number, seam: string) =>
      cone({
        bodice: { 'waist-seam': 2 * top },
        gores: [{ name: 'side', top, flare: 0 }],
        ...PLAIN,
        allowances: { seam, waist: '15mm', hem: '10mm' },
      });
    const { verdict, amount, marks } = changeOf(
      piecesCompared(rectangle(300, '15mm'), rectangle(304, '13mm')),
      'side',
    );
    expect(verdict).toBe('re-mark');
    expect(amount).toBe(0);
    expect(marks).toContain('seam-line');
  });

  it('another grain turns the piece on its cloth, so it is cut again', () => {
    const gores = (grain: string) => [
      { name: 'front', 'on-fold': true, 'half-top': 80, 'half-flare': '8deg' },
      { name: 'side', top: 150, flare: '18deg', grain },
      { name: 'back', top: 130, flare: '16deg' },
    ];
    const comparison = piecesCompared(cone({ gores: gores('centre') }), cone({ gores: gores('front-edge') }));
    expect(changeOf(comparison, 'side').verdict).toBe('re-cut');
    expect(changeOf(comparison, 'back').verdict).toBe('same');
  });

  it('another cloth is cut again, the same cloth by another name or price is not', () => {
    const cloths = (name: string, more = {}) => ({
      layers: [{ name: 'shell', cloth: name, hem: 'faced' }],
      cloths: { [name]: { width: '300cm', colour: 'ivory', weave: 'crepe', ...more } },
    });
    const old = cone(cloths('crepe'));
    expect(changeOf(piecesCompared(old, cone(cloths('crepe', { colour: 'red' }))), 'side')).toMatchObject({
      verdict: 're-cut',
      newCloth: 'cloth-is-other',
    });
    expect(
      changeOf(piecesCompared(old, cone(cloths('ivory-crepe', { supplier: 'S-4' }))), 'side').verdict,
    ).toBe('same');
  });

  it('a gore and a layer that only change their names stay as they are', () => {
    const renamed = cone({
      gores: [
        { name: 'middle', 'on-fold': true, 'half-top': 80, 'half-flare': '8deg' },
        { name: 'side', top: 150, flare: '18deg' },
        { name: 'back', top: 130, flare: '16deg' },
      ],
      layers: [{ name: 'outer', cloth: 'calico', hem: 'faced' }],
    });
    const { changes, dropped } = piecesCompared(cone(), renamed).pieces;
    expect(changes.map(({ gore, verdict }) => [gore, verdict])).toEqual([
      ['middle', 'same'],
      ['side', 'same'],
      ['back', 'same'],
    ]);
    expect(dropped).toEqual([]);
  });
});

it('a half on the fold is judged on the unfolded cloth', () => {
  const { was, piece, shift, verdict } = changeOf(
    piecesCompared(cone(), cone({ lengths: level(980) })),
    'front',
  );
  expect(verdict).toBe('re-mark');
  const fold = (one: CutPiece) => {
    const line = one.cutEdges.find(({ name }) => name === 'fold')!.curves[0]!;
    return line.kind === 'line' ? line.from.x : Number.NaN;
  };
  const whole = (one: CutPiece, by = { x: 0, y: 0 }) =>
    unfolded(
      polygonOf(
        one.cutEdges.flatMap((edge) => edge.curves),
        by,
      ),
      fold(one) + by.x,
    );
  expect(fold(piece) + shift.x).toBeCloseTo(fold(was!), 6);
  expect(growthToHold(whole(was!), whole(piece, shift))).toBeLessThan(0.01);
});
