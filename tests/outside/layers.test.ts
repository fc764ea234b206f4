import { describe, expect, it } from 'vitest';
import { draftedTrue } from './drafted.ts';
import { factsOf } from './facts.ts';
import { type Gore, sectorOf } from './measure/gore.ts';
import { measuredGown } from './measure/gown.ts';
import { distanceTo, samplesOf } from './measure/path.ts';
import { level, plainGown, type Tree } from './plain-gown.ts';
import { expectTrue } from './truth/untruths.ts';

const gores = [
  { name: 'front', 'on-fold': true, 'half-top': 70, 'half-hem': 220 },
  { name: 'side', top: 120, hem: 400 },
  { name: 'back', top: 180, hem: 520 },
];

async function layersOf(layers: Tree[], fields: Tree = {}) {
  const yaml = plainGown({
    units: 'mm',
    bodice: { 'waist-seam': 740 },
    gores,
    lengths: level(1000),
    layers: layers.map((layer) => ({ cloth: 'calico', ...layer })),
    ...fields,
  });
  const { svg, report } = await draftedTrue(yaml);
  expectTrue(svg, report, yaml);
  return measuredGown(svg, report, factsOf(yaml));
}

const near = (measured: number, expected: number, tolerance = 0.1) =>
  expect(Math.abs(measured - expected), `${measured} against ${expected}`).toBeLessThan(tolerance);

describe('layers', () => {
  it('that are cut alike share one piece, which names them all', async () => {
    const gown = await layersOf([
      { name: 'lining', hem: 'turned', shorter: 20 },
      { name: 'shell', hem: 'faced' },
      { name: 'overlay', hem: 'faced' },
    ]);
    expect(
      gown.pattern.pieces.map((piece) => `${piece.gore}: ${[...piece.layers].sort().join(' ')}`).sort(),
    ).toEqual(gores.flatMap(({ name }) => [`${name}: lining`, `${name}: overlay shell`]).sort());
  });

  it('of cut lengths each have their own turnings in them', async () => {
    const gown = await layersOf(
      [
        { name: 'lining', hem: 'turned' },
        { name: 'shell', hem: 'faced', allowances: { hem: 12, waist: 20 } },
        { name: 'net', hem: 'raw' },
        { name: 'short', hem: 'turned', shorter: 25, allowances: { hem: 40 } },
      ],
      { lengths: { ...level(1000, 960), measured: 'cut' }, allowances: { seam: 15, waist: 15, hem: 30 } },
    );
    // Cut 1000 long at the fold: less 15 + 30; less 20 + 12; less 15; less 15 + 40 and 25 shorter.
    const finished = gown.layers.map(({ gores: own }) => own[0]!.front.length);
    for (const [i, expected] of [955, 968, 985, 920].entries()) near(finished[i]!, expected);
  });

  it('may have some of the gores only', async () => {
    const gown = await layersOf([
      { name: 'shell', hem: 'faced', gores: ['side', 'back'] },
      { name: 'brocade', hem: 'faced', gores: ['front'] },
    ]);
    expect(gown.pattern.pieces.map((piece) => `${piece.gore}: ${piece.layers.join(' ')}`)).toEqual([
      'front: brocade',
      'side: shell',
      'back: shell',
    ]);
  });

  it('may be cut smaller across and along', async () => {
    const gown = await layersOf([
      { name: 'shell', hem: 'faced' },
      { name: 'stretch', hem: 'faced', 'cut-smaller-across': '2%', 'cut-smaller-along': '1%' },
    ]);
    const [shell, stretch] = gown.layers.map((layer) => layer.gores as Gore[]);
    for (const [i, gore] of stretch!.entries()) {
      near(gore.waist.length, shell![i]!.waist.length * 0.98, 0.3);
      near(gore.hem.length, shell![i]!.hem.length * 0.98, 0.8);
      near(gore.back.length, 990, 0.5);
      // Still sewn to each other.
      if (i > 0) near(gore.front.length, stretch![i - 1]!.back.length);
    }
  });

  it('a hem that is raw takes no allowance; a layer may say otherwise', async () => {
    const gown = await layersOf([
      { name: 'net', hem: 'raw' },
      { name: 'organza', hem: 'raw', allowances: { hem: 7 } },
      { name: 'shell', hem: 'turned', allowances: { hem: '5/8in', waist: '1 1/8 in' } },
    ]);
    const apart = gown.layers.map((layer) => {
      const gore = layer.gores[2] as Gore;
      const [hem, waist] = [gore.hem, gore.waist].map((edge) => samplesOf(edge, 10)[10]!.point);
      return [distanceTo(gore.piece.cut, hem!), distanceTo(gore.piece.cut, waist!)];
    });
    near(apart[0]![0]!, 0, 0.05);
    near(apart[1]![0]!, 7, 0.05);
    near(apart[2]![0]!, 15.875, 0.05);
    near(apart[2]![1]!, 28.575, 0.05);
  });

  it('rough-cut lies beyond the hem, and the planned hem is still marked', async () => {
    const gown = await layersOf([{ name: 'shell', hem: 'faced' }], { 'rough-cut': { back: '2cm' } });
    const [, side, back] = gown.layers[0]!.gores as Gore[];
    near(distanceTo(side!.piece.cut, samplesOf(side!.hem, 10)[15]!.point), 10, 0.05);
    near(distanceTo(back!.piece.cut, samplesOf(back!.hem, 10)[15]!.point), 30, 0.05);
    near(back!.back.length, 1000);
  });
});

describe('flares', () => {
  it('may be nothing, next to nothing, or less than nothing', async () => {
    for (const hem of [180, 180.0005, 180.01, 179.99, 150]) {
      const gown = await layersOf([{ name: 'shell', hem: 'turned' }], {
        gores: [...gores.slice(0, 2), { name: 'back', top: 180, hem }],
      });
      const back = (gown.layers[0]!.gores as Gore[])[2]!;
      near(sectorOf(back, 0, 0).flare * 1000, hem - 180, 0.02);
      near(back.waist.length, 180, 0.02);
      near(back.hem.length, hem, 0.02);
    }
  });
});
