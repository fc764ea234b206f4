import { describe, expect, it } from 'vitest';
import { made } from '../../making/made.ts';
import { draftedPattern, mustDraft } from '../drafted.ts';
import { uprightOf } from '../measure/folding.ts';
import { readPaths, samplesOf } from '../measure/path.ts';
import { readPattern } from '../measure/pattern.ts';
import { distance } from '../measure/segment.ts';
import { level, plainGown } from '../plain-gown.ts';

/** A child's skirt in two layers of one shape: a quarter circle a gore where it is flared. */
const skirt = (hem: number): string =>
  plainGown({
    units: 'mm',
    bodice: { 'waist-seam': 560 },
    gores: ['front', 'back'].map((name) => ({ name, top: 140, hem })),
    lengths: level(400),
    layers: [
      { name: 'plain', cloth: 'calico', hem: 'turned' },
      {
        name: 'grows',
        cloth: 'calico',
        hem: 'turned',
        'growth-tucks': { count: 2, width: 20, 'above-hem': 60, apart: 35 },
      },
    ],
  });

async function piecesOf(hem: number) {
  const yaml = skirt(hem);
  const { svg, report } = mustDraft(await draftedPattern(yaml), yaml);
  const named = (layer: string) =>
    readPattern(svg).pieces.find(({ gore, layers }) => gore === 'front' && layers.includes(layer))!;
  const group = svg
    .split('<g class="piece"')
    .find((text) => text.includes('data-gore="front"') && text.includes('data-layers="grows"'))!;
  const lines = [...group.matchAll(/data-mark="tuck-(fold|stitch)-line" d="([^"]*)"/g)].map(
    ([, kind, d]) => ({
      kind,
      path: readPaths(d!)[0]!,
    }),
  );
  return { plain: named('plain'), grows: named('grows'), lines, report };
}

describe('growth tucks', () => {
  it('are cut longer by twice their width each, and end where the skirt does once they are folded (arithmetic)', async () => {
    const { plain, grows, lines } = await piecesOf(140);
    for (const seam of ['front/back', 'centre-front'])
      expect(grows.sew.get(seam)!.length - plain.sew.get(seam)!.length).toBeCloseTo(80, 3);
    // Down the seam from the waist: what lies above the tucks, and between and below them, is the plain skirt's length.
    const turn = uprightOf(grows);
    const hem = turn(grows.sew.get('hem')!.from).y;
    const heights = lines.map(({ kind, path }) => [
      kind,
      Math.round((hem - turn(path.from).y) * 1000) / 1000,
    ]);
    expect(heights).toEqual([
      ['stitch', 60],
      ['fold', 80],
      ['stitch', 100],
      // As sewn 35 above the first: 60 + 40 + 35 on the cloth.
      ['stitch', 135],
      ['fold', 155],
      ['stitch', 175],
    ]);
  });

  it('lie level with the hem on a flare: everywhere as far from it as at the seams', async () => {
    const { grows, lines, plain } = await piecesOf(140 + (Math.PI / 2) * 400);
    const hem = samplesOf(grows.sew.get('hem')!, 0.5).map(({ point }) => point);
    for (const [i, height] of [60, 80, 100, 135, 155, 175].entries())
      for (const { point } of samplesOf(lines[i]!.path, 60))
        expect(Math.abs(Math.min(...hem.map((at) => distance(at, point))) - height)).toBeLessThan(0.05);
    // Let out, the hem goes on at the same flare: a quarter of a turn more for one of length.
    const longer = grows.sew.get('hem')!.length - plain.sew.get('hem')!.length;
    expect(longer).toBeCloseTo((Math.PI / 2) * 80, 2);
    // From its lower line to its upper one a tuck loses flare × 2 × width.
    expect(lines[0]!.path.length - lines[2]!.path.length).toBeCloseTo((Math.PI / 2) * 40, 2);
  });

  it('hang as high as the skirt is said to be, and are sewn before it hangs', () => {
    const { facts } = made(skirt(140));
    expect(facts.hems.map(({ shorter }) => shorter)).toEqual([0, 0]);
    const ids = facts.order.map(({ id }) => id);
    expect(ids.indexOf('tucks:grows')).toBeGreaterThan(ids.indexOf('seams:grows'));
    expect(ids.indexOf('tucks:grows')).toBeLessThan(ids.indexOf('hang'));
  });
});
