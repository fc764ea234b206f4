import { describe, expect, it } from 'vitest';
import { draftedTrue } from '../drafted.ts';
import { areaOf, type CurvePath, directionAtEnd, directionAtStart, samplesOf } from '../measure/path.ts';
import { type PatternPiece, readPattern } from '../measure/pattern.ts';
import { cross, distance, dot, minus, opposite, type Point } from '../measure/segment.ts';
import { level, plainGown, type Tree } from '../plain-gown.ts';

const INCH = 25.4;
const CLOSE = 0.05;

async function piecesOf(fields: Tree) {
  const { svg, report, files } = await draftedTrue(plainGown({ units: 'mm', ...fields }));
  const pieces = readPattern(svg).pieces;
  const named = (name: string, layer?: string): PatternPiece => {
    const found = pieces.filter((p) => p.gore === name && (layer === undefined || p.layers.includes(layer)));
    if (found.length !== 1) throw new Error(`${found.length} pieces ${name} of ${layer}`);
    return found[0]!;
  };
  return { named, pieces, report, files };
}

const edge = (piece: PatternPiece, name: string): CurvePath => {
  const path = piece.sew.get(name);
  if (path === undefined) throw new Error(`no edge ${name}: ${[...piece.sew.keys()].join(', ')}`);
  return path;
};

/** Copies as the text on the piece gives them. */
const copies = (piece: PatternPiece) => Number(/cut (\d+)/.exec(piece.text)?.[1] ?? Number.NaN);

describe('flounces', () => {
  /** A straight skirt whose hem is 72 in round: nothing but the flounce is in question. */
  const tube = {
    units: 'in',
    bodice: { 'waist-seam': 72 },
    gores: ['front', 'back'].map((name) => ({ name, top: 18, hem: 18 })),
    lengths: level(30),
    cloths: { calico: { width: '300cm', selvedge: 0 } },
  };
  const circularFlounce = (fullness: number): Tree => ({
    name: 'flounce',
    layer: 'shell',
    cloth: 'calico',
    kind: 'circular',
    depth: 12,
    fullness,
    hem: 'faced',
  });

  it('S1: circular, arcs 72 and 112 in, 12 in deep: radii 21.6 and 33.6 in, 190.9859° (L. I. Baldt, Clothing for Women, 1916, Fig. 56; derived)', async () => {
    const { named } = await piecesOf({
      ...tube,
      flounces: [circularFlounce(112 / 72)],
    });
    const flounce = named('flounce');
    expect(copies(flounce)).toBe(1);
    const [top, hem] = [edge(flounce, 'top'), edge(flounce, 'hem')];
    expect(Math.abs(top.length - 72 * INCH)).toBeLessThan(CLOSE);
    expect(Math.abs(hem.length - 112 * INCH)).toBeLessThan(CLOSE);
    const centre = centreOf(top);
    for (const [path, radius] of [
      [top, 21.6],
      [hem, 33.6],
    ] as const)
      for (const { point } of samplesOf(path, 20))
        expect(Math.abs(distance(point, centre) - radius * INCH)).toBeLessThan(CLOSE);
    const turn = ((top.length / (21.6 * INCH)) * 180) / Math.PI;
    expect(Math.abs(turn - 190.9859)).toBeLessThan(0.01);
  });

  it('circular in as many pieces as lie flat: 4 × round takes three quarters of a turn more than one piece holds', async () => {
    const { named } = await piecesOf({
      ...tube,
      flounces: [circularFlounce(4)],
    });
    const flounce = named('flounce');
    // The whole turn is (4 − 1) × 72 / 12 = 18 rad, and a piece of a full turn would lie on itself.
    expect(copies(flounce)).toBe(Math.ceil(18 / (1.75 * Math.PI)));
    expect(Math.abs(copies(flounce) * edge(flounce, 'top').length - 72 * INCH)).toBeLessThan(CLOSE);
    expect(Math.abs(copies(flounce) * edge(flounce, 'hem').length - 4 * 72 * INCH)).toBeLessThan(CLOSE);
  });

  it('straight above the hem of a flared skirt: cloth for the line that it is sewn to, cut from selvedge to selvedge', async () => {
    // A cone of 800 round at the waist and 2000 at 1000 down: 1880 round at 900 (frustum rule).
    const { named } = await piecesOf({
      bodice: { 'waist-seam': 800 },
      gores: ['front', 'side', 'back'].map((name) => ({ name, top: 800 / 6, hem: 2000 / 6 })),
      lengths: level(1000),
      cloths: { calico: { width: 1400, selvedge: 10 } },
      flounces: [
        {
          name: 'frill',
          layer: 'shell',
          cloth: 'calico',
          kind: 'straight',
          depth: 80,
          fullness: 1.75,
          'above-hem': 100,
          hem: 'rolled',
          allowances: { seam: 10, hem: 5 },
        },
      ],
    });
    const frill = named('frill');
    const run = 1880 * 1.75;
    expect(copies(frill)).toBe(Math.ceil(run / (1400 - 20 - 20)));
    expect(Math.abs(copies(frill) * edge(frill, 'top').length - run)).toBeLessThan(CLOSE);
    expect(Math.abs(edge(frill, 'hem').length - edge(frill, 'top').length)).toBeLessThan(CLOSE);
    expect(frill.notches.filter((notch) => notch.edge === 'top')).toHaveLength(3);
    const [wide, tall] = boxOf(frill.cut);
    expect(Math.abs(wide - (run / 3 + 20))).toBeLessThan(CLOSE);
    expect(Math.abs(tall - (80 + 10 + 5))).toBeLessThan(CLOSE);
  });
});

describe('tiers', () => {
  it('64, 128 and 256 from a yoke of 32 in, 12 deep, net 108 wide: 448 in one run, five strips, not 1 + 2 + 3 (total ÷ width: common practice)', async () => {
    const { named } = await piecesOf({
      units: 'in',
      bodice: { 'waist-seam': 26 },
      gores: ['front', 'back'].map((name) => ({ name, top: 6.5, hem: 20 })),
      lengths: level(36),
      cloths: { calico: { width: 60 }, net: { width: 108, selvedge: 0 } },
      tiers: [{ name: 'petticoat', cloth: 'net', yoke: 32, tiers: [64, 128, 256], depths: 12 }],
    });
    const strip = named('petticoat');
    expect(copies(strip)).toBe(5);
    expect(Math.abs(5 * edge(strip, 'top').length - 448 * INCH)).toBeLessThan(CLOSE);
    const [wide, tall] = boxOf(strip.cut);
    expect(Math.abs(tall - 12 * INCH)).toBeLessThan(CLOSE);
    expect(wide).toBeLessThan(108 * INCH);
    for (const tier of ['64 in', '128 in', '256 in', '32 in'])
      expect(strip.text.replace(/\s+/g, ' ')).toContain(tier);
  });

  it('tiers of two depths are two runs; where tiers are cut off a run both ends get an allowance', async () => {
    const { named } = await piecesOf({
      bodice: { 'waist-seam': 700 },
      gores: ['front', 'back'].map((name) => ({ name, top: 175, hem: 500 })),
      lengths: level(900),
      cloths: { calico: { width: 1500 }, net: { width: 3000, selvedge: 0 } },
      tiers: [
        {
          name: 'net',
          cloth: 'net',
          yoke: 900,
          tiers: [2000, 4000, 8000],
          depths: [150, 200, 200],
          allowances: { seam: 10 },
        },
      ],
    });
    expect(copies(named('net-1')) * edge(named('net-1'), 'top').length).toBeCloseTo(2000, 1);
    // Two tiers and one cut between them: 2 × 10 more.
    expect(copies(named('net-2')) * edge(named('net-2'), 'top').length).toBeCloseTo(12_020, 1);
    expect(copies(named('net-2'))).toBe(Math.ceil(12_020 / 2980));
  });
});

describe('godets', () => {
  const gores = [
    { name: 'front', 'on-fold': true, 'half-top': 60, 'half-hem': 150 },
    { name: 'side', top: 140, hem: 320 },
    { name: 'back', top: 150, hem: 340 },
  ];
  const trains = [
    { shape: 'round', onFloor: 350 },
    { shape: 'square', onFloor: 250 },
    { shape: 'pointed', onFloor: 350 },
  ];
  for (const { shape, onFloor } of trains) {
    it(`in a ${shape} train: both sides as long as the seam below the point, the hem straight through both of its seams`, async () => {
      const { named } = await piecesOf({
        bodice: { 'waist-seam': 700 },
        gores,
        lengths: {
          measured: 'to-floor',
          'off-floor': 20,
          'hem-width-at': 1000,
          at: { 'centre-front': 1050, 'centre-back': 1070 },
        },
        train: { begins: 'front/side', 'on-floor': onFloor, shape },
        godets: [
          { name: 'wedge', seam: 'side/back', from: 600, width: 400 },
          { name: 'tail', seam: 'centre-back', from: 650, width: 500 },
        ],
      });
      const [side, back, wedge, tail] = ['side', 'back', 'wedge', 'tail'].map((name) => named(name)) as [
        PatternPiece,
        PatternPiece,
        PatternPiece,
        PatternPiece,
      ];
      const seam = edge(side, 'side/back').length;
      for (const name of ['side/wedge', 'wedge/back'])
        expect(Math.abs(edge(wedge, name).length - (seam - 600))).toBeLessThan(0.1);
      const behind = edge(back, 'centre-back').length;
      expect(copies(wedge)).toBe(1);
      expect(wedge.text).toContain('cut 1 pair');
      expect(tail.text).not.toContain('pair');
      const tailSides = [...tail.sew.keys()].filter((name) => name.includes('/'));
      expect(tailSides).toHaveLength(2);
      for (const name of tailSides)
        expect(Math.abs(edge(tail, name).length - (behind - 650))).toBeLessThan(0.1);
      straight(hemAngle(side, 'side/back') + hemAngle(wedge, 'side/wedge'));
      straight(hemAngle(wedge, 'wedge/back') + hemAngle(back, 'side/back'));
      for (const name of tailSides) straight(hemAngle(back, 'centre-back') + hemAngle(tail, name));
      // Along the arc at the hem's level, less the thread at its point.
      for (const [piece, sides, width] of [
        [wedge, ['side/wedge', 'wedge/back'], 400],
        [tail, tailSides, 500],
      ] as const) {
        const [a, b] = sides.map((name) => downOf(piece, edge(piece, name))) as [Point, Point];
        const angle = Math.abs(Math.atan2(cross(a, b), dot(a, b)));
        // Its point is a thread wide, so that there is a top edge to measure from.
        const thread = edge(piece, 'point').length;
        expect(thread).toBeLessThan(1);
        expect(Math.abs(thread + angle * edge(piece, sides[0]!).length - width)).toBeLessThan(0.1);
      }
      // A mark where the point comes, on both gores.
      for (const piece of [side, back]) {
        const ways = piece.notches.filter((notch) => notch.edge === 'side/back').length;
        expect(ways).toBeGreaterThan(1);
      }
    });
  }

  it('in the layers that are named only, and counted in their hems', async () => {
    const { pieces, report } = await piecesOf({
      bodice: { 'waist-seam': 700 },
      gores,
      lengths: level(1000),
      layers: [
        { name: 'lining', cloth: 'calico', hem: 'faced' },
        { name: 'shell', cloth: 'calico', hem: 'faced' },
      ],
      godets: [{ name: 'wedge', seam: 'side/back', from: 600, width: 400, layers: ['shell'] }],
    });
    const wedges = pieces.filter((piece) => piece.gore === 'wedge');
    expect(wedges.map((piece) => piece.layers)).toEqual([['shell']]);
    const hems = report.layers.map((layer) => layer.sewnHem);
    expect(Math.abs(hems[1]! - hems[0]! - 2 * edge(wedges[0]!, 'hem').length)).toBeLessThan(CLOSE);
  });
});

describe('pleats and gathers', () => {
  const skirt = (fullness: unknown) => ({
    bodice: { 'waist-seam': 720 },
    gores: ['front', 'back'].map((name) => ({ name, top: 180, hem: 300, fullness })),
    lengths: level(600),
    cloths: { calico: { width: 4000 } },
  });

  it('gathers: cloth for one of the edge at the top and down to the hem, three marks to the quarters', async () => {
    const { named, report } = await piecesOf(skirt(2.5));
    const front = named('front');
    expect(Math.abs(edge(front, 'waist').length - 2.5 * 180)).toBeLessThan(CLOSE);
    expect(Math.abs(edge(front, 'hem').length - 2.5 * 300)).toBeLessThan(CLOSE);
    const ways = front.notches.filter((notch) => notch.edge === 'waist');
    expect(ways).toHaveLength(3);
    const top = samplesOf(edge(front, 'waist'), 0.5);
    for (const [i, notch] of ways.entries()) {
      const end = notch.ticks[0]!.from;
      const nearest = top.reduce((a, b) => (distance(a.point, end) < distance(b.point, end) ? a : b));
      expect(
        Math.abs(Math.min(nearest.distance, 450 - nearest.distance) - [112.5, 225, 112.5][i]!),
      ).toBeLessThan(1);
    }
    expect(front.text.replace(/\s+/g, ' ')).toContain('gather the top from 450 mm to 180 mm');
    expect(report.waist.sewn).toBeCloseTo(720, 2);
  });

  it('at the waist only the hem stays as it was', async () => {
    const { named } = await piecesOf(skirt({ ratio: 2, where: 'waist' }));
    expect(Math.abs(edge(named('front'), 'waist').length - 360)).toBeLessThan(CLOSE);
    expect(Math.abs(edge(named('front'), 'hem').length - 300)).toBeLessThan(CLOSE);
  });

  const pleats = [
    // 180 sewn of 360: 180 to take in, knife pleats of 30 take in 60 each.
    {
      fullness: { ratio: 2, by: 'pleats', depth: 30, towards: 'back' },
      says: '3 pleats, each fold 30 mm deep, towards the back',
      folds: 9,
    },
    // 180 sewn of 540: 360 to take in, a box pleat of 45 takes in 180.
    {
      fullness: { ratio: 3, by: 'pleats', depth: 45, towards: 'box' },
      says: '2 box pleats, each fold 45 mm deep',
      folds: 12,
    },
    // 25 asked: 180 / 50 = 3.6 pleats; four of 22.5 fill the gore.
    { fullness: { ratio: 2, by: 'pleats', depth: 25 }, says: '4 pleats, each fold 23 mm deep', folds: 12 },
  ];
  for (const { fullness, says, folds } of pleats) {
    it(`${says}: whole pleats, their folds marked`, async () => {
      const { named, files } = await piecesOf(skirt(fullness));
      const front = named('front');
      expect(front.text.replace(/\s+/g, ' ')).toContain(says);
      expect(Math.abs(edge(front, 'waist').length - fullness.ratio * 180)).toBeLessThan(CLOSE);
      const svg = String(files.get('pattern.svg'));
      const own = svg.slice(svg.indexOf('data-gore="front"'), svg.indexOf('data-gore="back"'));
      expect(own.match(/data-mark="pleat"/g)?.length ?? 0).toBe(folds);
    });
  }
});

function centreOf(arc: CurvePath): Point {
  const [a, b, c] = [0, 0.5, 1].map((t) => {
    const at = samplesOf(arc, arc.length / 64);
    return at[Math.round(t * (at.length - 1))]!.point;
  }) as [Point, Point, Point];
  const [ux, uy, vx, vy] = [b.x - a.x, b.y - a.y, c.x - a.x, c.y - a.y];
  const d = 2 * (ux * vy - uy * vx);
  const [u2, v2] = [ux * ux + uy * uy, vx * vx + vy * vy];
  return { x: a.x + (vy * u2 - uy * v2) / d, y: a.y + (ux * v2 - vx * u2) / d };
}

function boxOf(cut: CurvePath): [number, number] {
  expect(areaOf(cut)).not.toBe(0);
  const points = samplesOf(cut, 5).map(({ point }) => point);
  const span = (pick: (p: Point) => number) => Math.max(...points.map(pick)) - Math.min(...points.map(pick));
  const sizes = [span((p) => p.x), span((p) => p.y)];
  return [Math.max(...sizes), Math.min(...sizes)];
}

/** Down a side, towards the hem. */
function downOf(piece: PatternPiece, side: CurvePath): Point {
  return hemEnd(piece, side) === 'to' ? directionAtEnd(side) : opposite(directionAtStart(side));
}

function hemEnd(piece: PatternPiece, side: CurvePath): 'from' | 'to' {
  const hem = edge(piece, 'hem');
  const near = (p: Point) => Math.min(distance(p, hem.from), distance(p, hem.to));
  return near(side.from) < near(side.to) ? 'from' : 'to';
}

/** The angle inside the piece where a side meets the hem, degrees. */
function hemAngle(piece: PatternPiece, name: string): number {
  const side = edge(piece, name);
  const hem = edge(piece, 'hem');
  const corner = hemEnd(piece, side) === 'to' ? side.to : side.from;
  const up = opposite(downOf(piece, side));
  const along =
    distance(corner, hem.from) < distance(corner, hem.to)
      ? directionAtStart(hem)
      : opposite(directionAtEnd(hem));
  expect(Math.min(distance(corner, hem.from), distance(corner, hem.to))).toBeLessThan(0.01);
  expect(minus(corner, hem.from)).toBeDefined();
  return (Math.atan2(Math.abs(cross(along, up)), dot(along, up)) * 180) / Math.PI;
}

const straight = (sum: number) => expect(Math.abs(sum - 180)).toBeLessThan(0.1);
