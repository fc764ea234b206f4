import { Clipper, ClipType, EndType, FillRule, JoinType, type Path64 } from 'clipper2-ts';
import { describe, expect, it } from 'vitest';
import { draftedPattern, mustDraft } from '../drafted.ts';
import {
  areaOf,
  type CurvePath,
  directionAtEnd,
  directionAtStart,
  pathOf,
  polygonOf,
} from '../measure/path.ts';
import { type PatternPiece, readPattern } from '../measure/pattern.ts';
import { along, cross, distance, dot, minus, opposite, type Point } from '../measure/segment.ts';
import { level, plainGown, type Tree } from '../plain-gown.ts';

const UNITS_PER_MM = 1000;
const DEPTH = 70;

/** A skirt with a round train that falls away steeply, and hips: nothing about it is level or straight. */
const TRAIN: Tree = {
  units: 'cm',
  bodice: { 'waist-seam': 74, 'drop-below-waist': { 'centre-front': 5 } },
  gores: [
    { name: 'front', 'on-fold': true, 'half-top': 7, 'half-hem': 24 },
    { name: 'side', top: 15, hem: 56 },
    { name: 'back', top: 15, hem: 75, grain: 'front-edge' },
  ],
  lengths: {
    measured: 'to-floor',
    'off-floor': 2,
    'hem-width-at': 105,
    at: { 'centre-front': 104, 'centre-back': 110 },
  },
  // Too narrow for two gores' facings side by side.
  cloths: { calico: { width: '115cm' } },
  train: { 'on-floor': 80, begins: 'front/side', shape: 'round' },
};

const faced = (depth: number, fields: Tree = {}): Tree => ({
  layers: [{ name: 'shell', cloth: 'calico', hem: 'faced', facing: { depth: `${depth}mm`, ...fields } }],
});

async function piecesOf(fields: Tree) {
  const text = plainGown(fields);
  const { svg } = mustDraft(await draftedPattern(text), text);
  const { pieces } = readPattern(svg);
  return {
    gores: pieces.filter(({ part }) => part === undefined),
    facings: pieces.filter(({ part }) => part === 'facing'),
  };
}

const hemOf = ({ sew }: PatternPiece): CurvePath => sew.get('hem')!;
const outlineOf = (piece: PatternPiece): CurvePath =>
  pathOf([...piece.sew.values()].flatMap(({ segments }) => segments));

/** What of a gore lies within a depth of its hem line, the hem run on straight beyond the gore: by a polygon library. */
function regionBesideHem(gore: PatternPiece, depth: number): readonly Path64[] {
  return regionBeside(hemOf(gore), gore, depth);
}

function regionBeside(edge: CurvePath, gore: PatternPiece, depth: number): readonly Path64[] {
  const hem = polygonOf(edge);
  const [first, last] = [directionAtStart(edge), directionAtEnd(edge)];
  const line = [along(hem[0]!, first, -4 * depth), ...hem, along(hem.at(-1)!, last, 4 * depth)];
  const band = Clipper.inflatePaths(
    [line.map(unit)],
    depth * UNITS_PER_MM,
    JoinType.Round,
    EndType.Butt,
    2,
    2,
  );
  return Clipper.booleanOp(ClipType.Intersection, [outlineOf(gore)].map(ring), band, FillRule.NonZero);
}

const unit = ({ x, y }: Point) => ({ x: Math.round(x * UNITS_PER_MM), y: Math.round(y * UNITS_PER_MM) });
const ring = (path: CurvePath): Path64 => polygonOf(path).map(unit);
const areaIn = (paths: readonly Path64[]) => Math.abs(Clipper.areaPaths([...paths])) / UNITS_PER_MM ** 2;

/** A facing moved until its hem lies on its gore's. */
function laidOn(facing: PatternPiece, gore: PatternPiece): Path64 {
  const [from, to] = [hemOf(facing), hemOf(gore)];
  const ends = ({ from: a, to: b }: CurvePath) => minus(b, a);
  const [own, wanted] = [ends(from), ends(to)];
  const size = dot(own, own);
  const [cos, sin] = [dot(own, wanted) / size, cross(own, wanted) / size];
  return polygonOf(outlineOf(facing)).map((point) => {
    const { x, y } = minus(point, from.from);
    return unit({ x: to.from.x + cos * x - sin * y, y: to.from.y + sin * x + cos * y });
  });
}

describe('a facing', () => {
  it.each([
    ['of a steep train', TRAIN],
    [
      'of a level circle',
      {
        bodice: { 'waist-seam': 72 },
        units: 'cm',
        gores: ['front', 'side', 'back'].map((name) => ({ name, top: 12, hem: 90 })),
        lengths: level(60),
      },
    ],
  ])('%s is what of the gore lies within its depth of the hem line', async (_, fields) => {
    const { gores, facings } = await piecesOf({ ...fields, ...faced(DEPTH) });
    expect(facings.map(({ gore }) => gore)).toEqual(gores.map(({ gore }) => gore));
    for (const [i, facing] of facings.entries()) {
      const gore = gores[i]!;
      const region = regionBesideHem(gore, DEPTH);
      const apart = Clipper.booleanOp(ClipType.Xor, [laidOn(facing, gore)], [...region], FillRule.NonZero);
      // Where the neighbour's hem bends otherwise the seam is agreed on: a sliver of it is left.
      expect(areaIn(apart) / areaIn(region)).toBeLessThan(0.002);
      expect(Math.abs(hemOf(facing).length - hemOf(gore).length)).toBeLessThan(0.01);
      expect(facing.layers).toEqual(['shell-facing']);
    }
  });

  it('is cut over the extensions of a kick pleat, whose seam goes round them', async () => {
    const pleats = [
      { name: 'step', kind: 'kick', at: 'side/back', 'above-hem': '300mm', 'fold-depth': '90mm' },
    ];
    const bent = { ...TRAIN, train: undefined, pleats, ...faced(DEPTH) };
    const { gores, facings } = await piecesOf(JSON.parse(JSON.stringify(bent)) as Tree);
    for (const [i, facing] of facings.entries()) {
      const gore = gores[i]!;
      expect(Math.abs(hemOf(facing).length - hemOf(gore).length)).toBeLessThan(0.01);
      const apart = Clipper.booleanOp(
        ClipType.Xor,
        [laidOn(facing, gore)],
        [...regionBesideHem(gore, DEPTH)],
        FillRule.NonZero,
      );
      expect(areaIn(apart) / (hemOf(gore).length * DEPTH)).toBeLessThan(0.01);
    }
    const [side, back] = ['side', 'back'].map((name) => facings.find(({ gore }) => gore === name)!);
    const edges = [side!, back!].map(({ sew }) => sew.get('side/back')!.length);
    expect(Math.abs(edges[0]! - edges[1]!)).toBeLessThan(0.1);
  });

  it('meets its neighbour: as high on both sides of a seam, its inner edge straight through', async () => {
    const { facings } = await piecesOf({ ...TRAIN, ...faced(DEPTH) });
    for (const [i, seam] of [
      [0, 'front/side'],
      [1, 'side/back'],
    ] as const) {
      const [before, after] = [facings[i]!.sew, facings[i + 1]!.sew];
      expect(Math.abs(before.get(seam)!.length - after.get(seam)!.length)).toBeLessThan(0.02);
      const angle = (sew: PatternPiece['sew']) => {
        const [side, inner] = [sew.get(seam)!, sew.get('inner-edge')!];
        const atTop = [inner.from, inner.to].find(
          (end) => distance(end, side.from) < 0.01 || distance(end, side.to) < 0.01,
        )!;
        const into =
          distance(atTop, inner.from) < 0.01 ? directionAtStart(inner) : opposite(directionAtEnd(inner));
        const down =
          distance(atTop, side.from) < 0.01 ? directionAtStart(side) : opposite(directionAtEnd(side));
        return Math.acos(dot(into, down));
      };
      expect((Math.abs(angle(before) + angle(after) - Math.PI) * 180) / Math.PI).toBeLessThan(0.1);
    }
  });

  it('is cut 2 mm less at the hem than the gore (common practice), as wide as it at the seams', async () => {
    const { gores, facings } = await piecesOf({ ...TRAIN, ...faced(DEPTH) });
    expect(gores[1]!.text).toContain('hem 1 cm');
    expect(facings[1]!.text).toContain('hem 0.8 cm');
    expect(facings[1]!.text).toContain('seams 1.5 cm');
  });

  it('is cut as one with its neighbour where the seam is straight and that takes less: area for area', async () => {
    const straight: Tree = {
      units: 'cm',
      bodice: { 'waist-seam': 90 },
      gores: ['front', 'side', 'back'].map((name) => ({ name, top: 15, hem: 16 })),
      lengths: level(80),
    };
    const { gores, facings } = await piecesOf({ ...straight, ...faced(DEPTH) });
    expect(facings.map(({ gore }) => gore)).toEqual(['front-side-back']);
    const regions = gores.map((gore) => areaIn(regionBesideHem(gore, DEPTH)));
    const apart = regions.reduce((sum, area) => sum + area, 0);
    expect(Math.abs(areaOf(outlineOf(facings[0]!)) - apart)).toBeLessThan(apart * 1e-4);
    const hems = gores.reduce((sum, gore) => sum + hemOf(gore).length, 0);
    expect(Math.abs(hemOf(facings[0]!).length - hems)).toBeLessThan(0.02);
  });

  it('of an overskirt’s free edge is what of its end gore lies within its depth of that edge', async () => {
    const { gores, facings } = await piecesOf({
      units: 'cm',
      bodice: { 'waist-seam': 72 },
      gores: ['front', 'side', 'back'].map((name) => ({ name, top: 12, hem: 40 })),
      lengths: level(100),
      overskirts: [
        {
          name: 'train',
          from: 'front/side',
          gores: [
            { name: 'tail-side', top: 12, hem: 60 },
            { name: 'tail-back', top: 12, hem: 60 },
          ],
          lengths: { 'hem-width-at': 100, at: { 'outer-edge': 100, 'centre-back': 150 } },
          layers: [{ name: 'tail', cloth: 'calico', hem: 'turned' }],
          'edge-facing': { depth: 6 },
        },
      ],
    });
    expect(facings.map(({ gore }) => gore)).toEqual(['tail-side-edge']);
    const [facing] = facings;
    const gore = gores.find((piece) => piece.gore === 'tail-side')!;
    const edge = (piece: PatternPiece) => piece.sew.get('outer-edge')!;
    expect(Math.abs(edge(facing!).length - edge(gore).length)).toBeLessThan(0.01);
    const region = areaIn(regionBeside(edge(gore), gore, 60));
    expect(Math.abs(areaOf(outlineOf(facing!)) - region)).toBeLessThan(region * 1e-4);
  });

  it('goes on over a wedge that is let in: the wedge’s hem has one of its own', async () => {
    const { gores, facings } = await piecesOf({
      units: 'cm',
      bodice: { 'waist-seam': 72 },
      gores: ['front', 'side', 'back'].map((name) => ({ name, top: 12, hem: 30 })),
      lengths: level(90),
      godets: [{ name: 'wedge', seam: 'side/back', from: 50, width: 24 }],
      ...faced(DEPTH),
    });
    // None is cut as one over the seam that the wedge is in.
    expect(facings.some(({ sew }) => sew.has('side/back'))).toBe(true);
    const [facing, wedge] = [facings, gores].map((all) => all.find(({ gore }) => gore === 'wedge')!);
    expect(Math.abs(hemOf(facing!).length - hemOf(wedge!).length)).toBeLessThan(0.01);
    const region = areaIn(regionBesideHem(wedge!, DEPTH));
    expect(Math.abs(areaOf(outlineOf(facing!)) - region)).toBeLessThan(region * 1e-4);
  });
});
