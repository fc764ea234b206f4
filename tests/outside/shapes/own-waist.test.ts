import { Clipper, ClipType, EndType, FillRule, JoinType } from 'clipper2-ts';
import { describe, expect, it } from 'vitest';
import { draftedPattern, mustDraft } from '../drafted.ts';
import { areaOf, directionAtEnd, directionAtStart, pathOf, polygonOf } from '../measure/path.ts';
import { type PatternPiece, readPattern } from '../measure/pattern.ts';
import { along, type Point } from '../measure/segment.ts';
import { level, plainGown, type Tree } from '../plain-gown.ts';

interface Finishing {
  readonly part: string;
  readonly name: string;
  readonly bySize: boolean;
  readonly copies: number;
  readonly edges: Readonly<Record<string, number>>;
}

async function drafted(fields: Tree) {
  const text = plainGown({ units: 'cm', lengths: level(80), ...fields });
  const { svg, report } = mustDraft(await draftedPattern(text), text);
  const { finishing } = report as unknown as { finishing: readonly Finishing[] };
  return { pieces: readPattern(svg).pieces, report, finishing };
}

const GORES = [
  { name: 'front', 'on-fold': true, 'half-top': 9, 'half-hem': 20 },
  { name: 'side', top: 14, hem: 40 },
  { name: 'back', top: 13, hem: 38 },
];
const WAIST = 2 * (90 + 140 + 130);

describe('a skirt without a bodice', () => {
  it('has a straight band as long as its waist and the overlap, twice as wide as it is sewn: by size, not on paper', async () => {
    const { finishing, pieces, report } = await drafted({
      gores: GORES,
      waist: { finish: 'band', width: 3.5, cloth: 'calico', overlap: 2.5 },
    });
    expect(report.waist.sewn).toBeCloseTo(WAIST, 3);
    const [band] = finishing;
    expect(band).toMatchObject({ part: 'waistband', bySize: true, copies: 1 });
    expect(band!.edges.waist).toBeCloseTo(WAIST + 25, 3);
    expect(band!.edges.end).toBeCloseTo(70, 3);
    expect(pieces.map(({ part }) => part)).toEqual([undefined, undefined, undefined]);
  });

  it('has a shaped band as a sector of a ring: outer arc less inner arc is its angle times its width', async () => {
    const { pieces } = await drafted({
      gores: GORES,
      waist: { finish: 'band', width: 6, cloth: 'calico', overlap: 3, upper: 68 },
    });
    const band = pieces.find(({ part }) => part === 'waistband')!;
    const [lower, upper] = [band.sew.get('waist')!, band.sew.get('inside-edge')!];
    expect(lower.length).toBeCloseTo(WAIST + 30, 2);
    expect(upper.length).toBeCloseTo(680 + 30, 2);
    const turn = Math.acos(cosBetween(directionAtStart(lower), directionAtEnd(lower)));
    expect(turn * 60).toBeCloseTo(lower.length - upper.length, 1);
    // Four seams and the centre front meet it, and the end of the waist before its overlap.
    expect(band.notches.filter(({ edge }) => edge === 'waist').length).toBe(6);
    expect(band.text).toContain('cut 2');
  });

  it('takes tops that no gore says from her waist, evenly, half of one on the fold', async () => {
    const { report } = await drafted({
      gores: [
        { name: 'front', 'on-fold': true, 'half-hem': 20 },
        { name: 'side', hem: 40 },
        { name: 'back', top: 13, hem: 38 },
      ],
      body: {
        girths: [
          { at: 'waist', girth: 70 },
          { at: 'hip', below: 20, girth: 96 },
        ],
      },
      waist: { finish: 'stay', width: 3, ease: 2 },
    });
    // 72 less two backs of 13 is 46 for a front and two sides.
    expect(report.gores.map(({ top }) => top)).toEqual(
      [460 / 6, 460 / 3, 130].map((top) => expect.closeTo(top, 3)),
    );
  });

  it('has a facing that is what of the gores lies within its width of the waist', async () => {
    const { pieces } = await drafted({ gores: GORES, waist: { finish: 'facing', width: 5 } });
    const facings = pieces.filter(({ part }) => part === 'facing');
    const gores = pieces.filter(({ part }) => part === undefined);
    const regions = gores.map((gore) => areaBesideWaist(gore, 50));
    const own = facings.map((facing) => areaOf(outlineOf(facing)));
    const sum = (areas: readonly number[]) => areas.reduce((all, area) => all + area, 0);
    expect(Math.abs(sum(own) - sum(regions))).toBeLessThan(sum(regions) * 1e-4);
    const waists = (all: readonly PatternPiece[]) => sum(all.map(({ sew }) => sew.get('waist')!.length));
    expect(waists(facings)).toBeCloseTo(waists(gores), 2);
  });
});

const cosBetween = (a: Point, b: Point) => a.x * b.x + a.y * b.y;

const outlineOf = ({ sew }: PatternPiece) => pathOf([...sew.values()].flatMap(({ segments }) => segments));

/** By a polygon library: the gore with a band along its waist line, run on straight beyond it. */
function areaBesideWaist(gore: PatternPiece, depth: number): number {
  const unit = ({ x, y }: Point) => ({ x: Math.round(x * 1000), y: Math.round(y * 1000) });
  const waist = gore.sew.get('waist')!;
  const points = polygonOf(waist);
  const line = [
    along(points[0]!, directionAtStart(waist), -4 * depth),
    ...points,
    along(points.at(-1)!, directionAtEnd(waist), 4 * depth),
  ];
  const band = Clipper.inflatePaths([line.map(unit)], depth * 1000, JoinType.Round, EndType.Butt, 2, 2);
  const inside = Clipper.booleanOp(
    ClipType.Intersection,
    [polygonOf(outlineOf(gore)).map(unit)],
    band,
    FillRule.NonZero,
  );
  return Math.abs(Clipper.areaPaths(inside)) / 1e6;
}
