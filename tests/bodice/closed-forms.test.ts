import { describe, expect, it } from 'vitest';
import { pointAt } from '../../src/geometry/evaluate.ts';
import { EXAMPLE } from './bodies.ts';
import { drafted, heights, plain } from './drafted.ts';
import { placeAlong, sidesOf, walked, widthAbove } from './measured.ts';

describe('equal girths give rectangles', () => {
  const draft = drafted(
    plain(
      [
        ['bust', 160, 800],
        ['underbust', 80, 800],
        ['waist', 0, 800],
        ['high-hip', -90, 800],
      ],
      4,
      170,
      -40,
    ),
  );

  it.each(draft.pieces.map((piece) => [piece.gore, piece] as const))('%s', (_name, piece) => {
    const kinds = piece.edges.flatMap(({ curves }) => curves.map(({ kind }) => kind));
    expect(kinds).toEqual(['line', 'line', 'line', 'line']);
    expect(piece.edges.map(({ curves }) => walked(curves).length)).toEqual(
      [100, 210, 100, 210].map((length) => expect.closeTo(length, 9)),
    );
    const [a, b, c] = piece.edges.map(({ curves }) => pointAt(curves[0]!, 0));
    const right = (b!.x - a!.x) * (c!.x - b!.x) + (b!.y - a!.y) * (c!.y - b!.y);
    expect(right).toBeCloseTo(0, 6);
  });
});

describe('linear girths give ring sectors', () => {
  const draft = drafted(
    plain(
      [
        ['bust', 160, 900],
        ['underbust', 80, 750],
        ['waist', 0, 600],
        ['hip', -100, 412.5],
      ],
      4,
      160,
      -100,
    ),
  );
  // Half of 900 over four panels is 112.5 at the bust. At the hip the half is 243.75 less, taken by six edges: 40.625
  // each, as the two centres are straight.
  const narrower = [40.625, 81.25, 81.25, 40.625];

  it.each(draft.pieces.map((piece, p) => [piece.gore, piece, 112.5 - narrower[p]!] as const))(
    '%s',
    (_name, piece, hip) => {
      // Frustum rule: r = a·s/(b − a), at a slant of 260.
      const angle = (112.5 - hip) / 260;
      const [upper, back, lower, front] = piece.edges.map(({ curves }) => curves);
      expect([back, front].map((run) => run!.map(({ kind }) => kind))).toEqual([['line'], ['line']]);
      const arc = (width: number) => [
        expect.objectContaining({ kind: 'arc', radius: expect.closeTo(width / angle, 6) }),
      ];
      expect(upper).toEqual(arc(112.5));
      expect(lower).toEqual(arc(hip));
      expect(walked(upper!).length).toBeCloseTo(112.5, 3);
      expect(walked(lower!).length).toBeCloseTo(hip, 3);
    },
  );
});

describe('the example at every level, by walking its outlines', () => {
  const { left } = drafted(EXAMPLE);
  const { upper, lower } = heights(left);

  it('a level between two girths lies between them, and the widths change smoothly from place to place', () => {
    for (const [p] of left.pieces.entries()) {
      const top = Math.min(upper[p]!, upper[p + 1]!) - 2;
      const bottom = Math.max(lower[p]!, lower[p + 1]!) + 2;
      const widths: number[] = [];
      for (let above = top; above >= bottom; above -= 2)
        widths.push(widthAbove(left, p, above, [upper[p]!, upper[p + 1]!]));
      const bends = widths.slice(2).map((width, i) => width - 2 * widths[i + 1]! + widths[i]!);
      // A kink of a tenth of a radian would show as a second difference of 0.2.
      for (const bend of bends) expect(Math.abs(bend)).toBeLessThan(0.12);
    }
  });

  it('the panel on the fold is straight there, and its grain runs down the fold', () => {
    const { front } = sidesOf(left, 0);
    for (const { x } of front) expect(x).toBeCloseTo(0, 6);
    const { grain } = left.pieces[0]!;
    expect(grain.from.x).toBeCloseTo(grain.to.x, 9);
  });

  it('the laced edge is straight: eyelets stand in a row', () => {
    const { back } = sidesOf(left, 4);
    const [first, last] = [back[0]!, back[back.length - 1]!];
    const chord = Math.hypot(last.x - first.x, last.y - first.y);
    expect(walked(left.pieces[4]!.edges[1]!.curves).length).toBeCloseTo(chord, 6);
  });

  it('the seam next the front passes over the bust point', () => {
    // 185 from point to point: at the bust the half on the fold is 92.5 wide.
    const { back } = sidesOf(left, 0);
    const { front } = sidesOf(left, 1);
    // The front's level at 165 lies above its centre (130) and below its seam (180): the seam is there.
    expect(left.widths[0]![0]).toBeCloseTo(92.5, 9);
    expect(placeAlong(back, 180 - 165).point.x).toBeGreaterThan(85);
    expect(front.length).toBeGreaterThan(2);
  });

  it('the points are points, and nothing else is', () => {
    const slopes = (edge: typeof left.upper) => edge.slopeAt(edge.ways[0]! + 1e-6);
    expect(Math.abs(slopes(left.upper))).toBeGreaterThan(0.1);
    expect(Math.abs(slopes(left.lower))).toBeGreaterThan(0.05);
    expect(left.upper.slopeAt(left.upper.ways[5]! - 1e-9)).toBeCloseTo(0, 6);
  });
});

it('an edge above the highest girth keeps its girth there', () => {
  const draft = drafted(
    plain(
      [
        ['bust', 160, 900],
        ['underbust', 80, 780],
        ['waist', 0, 700],
      ],
      4,
      200,
    ),
  );
  for (const above of [198, 185, 170, 160])
    expect(widthAbove(draft.left, 1, above, [200, 200])).toBeCloseTo(112.5, 1);
});

it('a point at a seam: the edge comes to it from both sides as from a corner', () => {
  const measures = plain(
    [
      ['bust', 160, 900],
      ['waist', 0, 700],
    ],
    3,
    140,
  );
  const above = { 'centre-front': 120, 'p0/p1': 160, 'p1/p2': 120, 'centre-back': 100 };
  const { left } = drafted({ ...measures, upperEdge: { above, points: ['p0/p1'] } });
  const at = left.upper.ways[1]!;
  // Up to the point and down from it: the slope changes sign there, and is nowhere near level on either side.
  expect(left.upper.slopeAt(at - 1e-6)).toBeLessThan(-0.2);
  expect(left.upper.slopeAt(at + 1e-6)).toBeGreaterThan(0.2);
  expect(left.upper.valueAt(at)).toBeCloseTo(-160, 9);
});
