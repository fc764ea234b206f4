import { describe, expect, it } from 'vitest';
import { drafted, draftedPattern, mustDraft } from '../drafted.ts';
import { folded, pleatLinesOf, pointsOf, uprightOf } from '../measure/folding.ts';
import { type PatternPiece, readPattern } from '../measure/pattern.ts';
import { distance, minus, type Point } from '../measure/segment.ts';
import { level, plainGown, type Tree } from '../plain-gown.ts';

/** One skirt in two layers of one shape; the shell is pleated, the lining is what it folds back to. */
const skirt = (pleats: readonly Tree[], fields: Tree = {}): string =>
  plainGown({
    units: 'mm',
    bodice: { 'waist-seam': 720 },
    gores: [
      { name: 'front', 'on-fold': true, 'half-top': 100, 'half-hem': 220 },
      { name: 'side', top: 130, hem: 300 },
      { name: 'back', top: 130, hem: 320, grain: 'back-edge' },
    ],
    lengths: level(800),
    layers: [
      { name: 'lining', cloth: 'calico', hem: 'turned' },
      { name: 'shell', cloth: 'calico', hem: 'turned' },
    ],
    allowances: { seam: 15, waist: 12, hem: 40 },
    pleats: pleats.map((pleat, i) => ({ name: `p${i + 1}`, layers: ['shell'], ...pleat })),
    ...fields,
  });

async function layersOf(yaml: string) {
  const { svg, report } = mustDraft(await draftedPattern(yaml), yaml);
  const { pieces } = readPattern(svg);
  const named = (gore: string, layer: string): PatternPiece =>
    pieces.find((piece) => piece.gore === gore && piece.layers.includes(layer))!;
  return { svg, report, named };
}

const frontOfWaist = (piece: PatternPiece): Point => uprightOf(piece)(piece.sew.get('waist')!.from);

/** Farthest that the folded piece lies from the plain one, both laid with their waists' front ends on one another. */
function apart(svg: string, gore: string, pleated: PatternPiece, plain: PatternPiece, line: 'cut' | 'sew') {
  const lines = pleatLinesOf(svg, gore, 'shell', uprightOf(pleated));
  const shift = minus(frontOfWaist(plain), frontOfWaist(pleated));
  const truth = pointsOf(plain, line, 0.5).map(uprightOf(plain));
  return Math.max(
    ...folded(lines, pointsOf(pleated, line, 12).map(uprightOf(pleated))).map((point) => {
      const here = { x: point.x + shift.x, y: point.y + shift.y };
      return Math.min(...truth.map((other) => distance(here, other)));
    }),
  );
}

const KINDS: readonly [string, Tree, string, number][] = [
  ['inverted at the seam of the back', { kind: 'inverted', at: 'centre-back', 'fold-depth': 60 }, 'back', 2],
  ['box at the fold of the front', { kind: 'box', at: 'centre-front', 'fold-depth': 45 }, 'front', 2],
  ['inverted at the fold', { kind: 'inverted', at: 'centre-front', 'fold-depth': 50 }, 'front', 2],
  [
    'knife at a seam, on top of the gore behind',
    { kind: 'knife', at: 'front/side', 'fold-depth': 35, towards: 'back' },
    'front',
    2,
  ],
  [
    'knife inside a gore, towards the front',
    { kind: 'knife', at: 'side/back', gore: 'side', 'from-seam': 60, 'fold-depth': 30, towards: 'front' },
    'side',
    2,
  ],
  [
    'box inside a gore',
    { kind: 'box', at: 'front/side', gore: 'side', 'from-seam': 65, 'fold-depth': 25 },
    'side',
    4,
  ],
];

describe('a pleat that has its place', () => {
  it.each(KINDS)('%s: folded, it is the gore without it', async (_, pleat, gore, folds) => {
    const { svg, named } = await layersOf(skirt([{ 'stitched-down': 150, ...pleat }]));
    const [pleated, plain] = [named(gore, 'shell'), named(gore, 'lining')];
    // Two folds of the cloth and a placement line each, on what is drawn: the half of what lies on a centre.
    expect(pleatLinesOf(svg, gore, 'shell')).toHaveLength(folds === 4 ? 6 : 3);
    // Samples half a millimetre apart lie within 0.25 mm of any point of the line between them.
    expect(apart(svg, gore, pleated, plain, 'sew')).toBeLessThan(0.3);
    expect(apart(svg, gore, pleated, plain, 'cut')).toBeLessThan(0.3);
  });

  it('takes twice its depth a fold: cut width = sewn width + underlay (arithmetic)', async () => {
    for (const [, pleat, gore, folds] of KINDS) {
      const { svg, named } = await layersOf(skirt([pleat]));
      const depth = pleat['fold-depth'] as number;
      const lines = pleatLinesOf(svg, gore, 'shell', uprightOf(named(gore, 'shell'))).sort(
        (a, b) => a.from.x - b.from.x,
      );
      for (let i = 0; i < lines.length; i += 3) {
        const [a, b, c] = lines.slice(i, i + 3);
        const run = minus(a!.to, a!.from);
        const across = (to: Point): number => {
          const way = minus(to, a!.from);
          return Math.abs(way.x * run.y - way.y * run.x) / Math.hypot(run.x, run.y);
        };
        expect(across(b!.from)).toBeCloseTo(depth, 2);
        expect(across(c!.from)).toBeCloseTo(2 * depth, 2);
      }
      const widths = (['shell', 'lining'] as const).map((layer) => named(gore, layer).sew.get('waist')!);
      const chord = widths.map(({ from, to }) => Math.abs(to.x - from.x));
      const straight = ['centre-back', 'centre-front'].includes(pleat.at as string);
      if (straight) expect(chord[0]! - chord[1]!).toBeCloseTo(folds * depth, 1);
    }
  });

  it('at a seam keeps both sides of it one length, and the whole skirt its waist and hem', async () => {
    const { named, report } = await layersOf(
      skirt([
        { kind: 'knife', at: 'side/back', 'fold-depth': 40, towards: 'front', 'stitched-down': 100 },
        { kind: 'kick', at: 'front/side', 'fold-depth': 50, 'above-hem': 250 },
      ]),
    );
    for (const [seam, a, b] of [
      ['front/side', 'front', 'side'],
      ['side/back', 'side', 'back'],
    ] as const) {
      const [one, other] = [named(a, 'shell').sew.get(seam)!, named(b, 'shell').sew.get(seam)!];
      expect(Math.abs(one.length - other.length)).toBeLessThan(0.1);
    }
    expect(report.waist.sewn).toBeCloseTo(720, 3);
    const { pleats } = report as unknown as { pleats: Record<string, number>[] };
    // Four gores have a side of a kick pleat, two seams a knife pleat: 2 × 50 and 2 × 40 each.
    expect(pleats.map(({ places, underlay }) => [places, underlay])).toEqual([
      [2, 160],
      [2, 200],
    ]);
  });

  it('kick: cloth beyond both edges of the seam from its height down, square to where it begins', async () => {
    const { named } = await layersOf(
      skirt([{ kind: 'kick', at: 'centre-back', 'fold-depth': 60, 'above-hem': 280 }]),
    );
    const [pleated, plain] = [named('back', 'shell'), named('back', 'lining')];
    const [with_, without] = [pleated.sew.get('centre-back')!, plain.sew.get('centre-back')!];
    const turned = uprightOf(pleated);
    expect(turned(with_.to).x - turned(with_.from).x).toBeCloseTo(60, 3);
    // Down to the height, out at 45°, down again: 60·√2 in place of 60.
    const hemRise = without.length - (with_.length - 60 * Math.SQRT2 + 60);
    expect(Math.abs(hemRise)).toBeLessThan(3);
    expect(pleated.sew.get('hem')!.length - plain.sew.get('hem')!.length).toBeGreaterThan(59.9);
  });

  it('says one depth on the piece and in the report: that of a fold', async () => {
    const { named, report } = await layersOf(
      skirt([{ kind: 'inverted', at: 'centre-back', 'fold-depth': 62, 'stitched-down': 210 }]),
    );
    const text = named('back', 'shell').text.replace(/\s+/g, ' ');
    expect(text).toContain('inverted pleat at centre-back, each fold 62 mm deep, stitched down 210 mm');
    const { pleats } = report as unknown as { pleats: Record<string, number>[] };
    expect(pleats).toMatchObject([{ foldDepth: 62, folds: 2, places: 1, underlay: 248 }]);
  });
});

describe('a pleat that cannot be', () => {
  const codesOf = async (pleats: readonly Tree[], fields: Tree = {}) =>
    (await drafted(skirt(pleats, fields))).diagnostics
      .filter((finding) => finding.level === 'error')
      .map(({ code, message }) => [code, message] as const);

  it('wider than its gore: says how much room there is', async () => {
    const [found] = await codesOf([{ kind: 'inverted', at: 'centre-back', 'fold-depth': 140 }]);
    expect(found![0]).toBe('pleat-too-wide');
    // The back is 130 wide at its top, its centre back edge square to it.
    expect(found![1]).toMatch(/140 mm deep.*room for 1[23]\d mm/s);
  });

  it('over another one', async () => {
    const beside = { kind: 'knife', at: 'front/side', gore: 'side', towards: 'back', 'fold-depth': 40 };
    const found = await codesOf([
      { ...beside, 'from-seam': 60 },
      { ...beside, 'from-seam': 80 },
    ]);
    expect(found.map(([code]) => code)).toEqual(['pleats-overlap']);
  });

  it('stitched down past the hem', async () => {
    const found = await codesOf([
      { kind: 'inverted', at: 'centre-back', 'fold-depth': 40, 'stitched-down': 900 },
    ]);
    expect(found.map(([code]) => code)).toEqual(['pleat-below-hem']);
  });
});
