import { describe, expect, it } from 'vitest';
import { draft } from '../../../src/pipeline.ts';
import { draftedPattern, mustDraft } from '../drafted.ts';
import { distanceTo, samplesOf } from '../measure/path.ts';
import { readPattern } from '../measure/pattern.ts';
import { distance } from '../measure/segment.ts';
import { level, plainGown, type Tree } from '../plain-gown.ts';

interface Finishing {
  readonly part: string;
  readonly name: string;
  readonly copies: number;
  readonly bySize: boolean;
  readonly edges: Readonly<Record<string, number>>;
}

/** 72 cm round, 80 long; the sides of every gore run straight down. */
const SKIRT: Tree = {
  units: 'cm',
  bodice: { 'waist-seam': 72 },
  gores: ['front', 'side', 'back'].map((name) => ({ name, top: 12, hem: 30 })),
  lengths: level(80),
};

const spec = (fields: Tree) => plainGown({ ...SKIRT, ...fields });

async function drafted(fields: Tree) {
  const text = spec(fields);
  const { svg, report } = mustDraft(await draftedPattern(text), text);
  const { finishing } = report as unknown as { finishing: readonly Finishing[] };
  const named = (part: string) => finishing.filter((one) => one.part === part);
  return { pieces: readPattern(svg).pieces, named };
}

const codes = (fields: Tree) =>
  draft({ name: 'gown.yaml', text: spec(fields) }).diagnostics.flatMap(({ code, level: how }) =>
    how === 'error' ? code : [],
  );

const ZIP = { kind: 'zip', at: 'centre-back', starts: 2, opening: 20, hip: 98, entry: 'steps-in' };

describe('what finishes the closure', () => {
  it('a placket is one strip down one edge and up the other, folded over both', async () => {
    const { named } = await drafted({ closure: { ...ZIP, finish: 'placket', width: 3 } });
    expect(named('placket')).toMatchObject([
      { bySize: true, copies: 1, edges: { 'sewn-edge': 440, 'upper-end': 60 } },
    ]);
  });

  it('a guard is folded lengthwise and reaches below the opening', async () => {
    const { named } = await drafted({ closure: { ...ZIP, finish: 'guard', width: 4 } });
    const [guard] = named('guard');
    expect(guard!.edges['upper-end']).toBe(80);
    expect(guard!.edges['sewn-edge']).toBeGreaterThan(220);
  });

  it('a facing is a strip for each edge', async () => {
    const { named } = await drafted({ closure: { ...ZIP, finish: 'facing', width: 4 } });
    expect(named('facing')).toMatchObject([{ copies: 2, edges: { 'upper-end': 40 } }]);
  });

  it('a hook is no piece, and none is cut without an opening', async () => {
    const { named } = await drafted({ closure: { ...ZIP, finish: 'hook' } });
    expect(named('placket').concat(named('guard'), named('facing'))).toEqual([]);
    const { opening: _, ...open } = ZIP;
    expect(codes({ closure: { ...open, finish: 'placket' } })).toContain('finish-without-opening');
  });
});

/** Where the ticks of a seam lie below its top, mm. */
function notchesDown(piece: ReturnType<typeof readPattern>['pieces'][number], seam: string): number[] {
  const path = piece.sew.get(seam)!;
  const top = [...piece.sew.get('waist')!.segments].flatMap(({ at }) => [at(0), at(1)]);
  const startsAtTop = top.some((point) => distance(point, path.from) < 0.01);
  const samples = samplesOf(path, 0.5);
  return piece.notches
    .filter(({ edge }) => edge === seam)
    .map(({ ticks }) => {
      const places = ticks.map((tick) => {
        const nearest = samples.reduce((best, sample) =>
          distance(sample.point, tick.to) < distance(best.point, tick.to) ? sample : best,
        );
        return startsAtTop ? nearest.distance : path.length - nearest.distance;
      });
      return places.reduce((sum, place) => sum + place, 0) / places.length;
    });
}

describe('slits and pockets', () => {
  it('a slit is marked where it begins, on both gores; its facings are as long as it and what overlaps', async () => {
    const { pieces, named } = await drafted({
      slits: [{ seam: 'side/back', 'above-hem': 30, stay: true, facing: { depth: 4 } }],
    });
    for (const gore of ['side', 'back']) {
      const own = pieces.find((piece) => piece.gore === gore)!;
      expect(notchesDown(own, 'side/back').some((down) => Math.abs(down - 500) < 1)).toBe(true);
    }
    // Both seams of the mirrored skirt, both edges of each.
    expect(named('facing')).toMatchObject([{ copies: 4, edges: { 'sewn-edge': 320, 'upper-end': 40 } }]);
    expect(named('stay')).toMatchObject([{ copies: 2 }]);
  });

  it('a pocket on one side is one bag of two sides, its opening as long on the bag as on the seam', async () => {
    const { pieces, named } = await drafted({
      pockets: [{ seam: 'side/back', 'below-waist': 8, opening: 15, side: 'left', cloth: 'calico' }],
    });
    expect(named('pocket')).toMatchObject([{ name: 'pocket', copies: 2 }]);
    const bag = pieces.find(({ part }) => part === 'pocket')!;
    const ticks = bag.notches.map(({ ticks: [tick] }) => tick!.to);
    expect(Math.abs(distance(ticks[0]!, ticks[1]!) - 150)).toBeLessThan(0.05);
    const down = notchesDown(pieces.find(({ gore }) => gore === 'back')!, 'side/back');
    expect([80, 230].every((wanted) => down.some((own) => Math.abs(own - wanted) < 1))).toBe(true);
  });

  it.each([
    [{ slits: [{ seam: 'side/back', 'above-hem': 65 }] }, 'slit-above-hip'],
    [{ slits: [{ seam: 'side/back', 'below-waist': 85 }] }, 'slit-below-hem'],
    [
      {
        slits: [{ seam: 'side/back', 'above-hem': 55 }],
        pockets: [{ seam: 'side/back', 'below-waist': 15, cloth: 'calico' }],
      },
      'openings-meet',
    ],
    [
      {
        closure: { ...ZIP, at: 'side/back', side: 'left' },
        pockets: [{ seam: 'side/back', 'below-waist': 10, cloth: 'calico' }],
      },
      'openings-meet',
    ],
    [{ pockets: [{ seam: 'side/back', 'below-waist': 60, cloth: 'calico' }] }, 'pocket-below-hem'],
    // Behind a fold a slit would not open; a kick pleat is cut on to the edges that it leaves free.
    [
      {
        slits: [{ seam: 'side/back', 'above-hem': 30 }],
        pleats: [{ name: 'deep', kind: 'inverted', at: 'side/back', 'fold-depth': 4 }],
      },
      'openings-meet',
    ],
    [
      {
        slits: [{ seam: 'side/back', 'above-hem': 30 }],
        pleats: [{ name: 'step', kind: 'kick', at: 'side/back', 'above-hem': 25, 'fold-depth': 8 }],
      },
      'openings-meet',
    ],
  ])('%j: %s', (fields, code) => {
    expect(codes(fields)).toEqual([code]);
  });

  it('a zip above a kick pleat, and a pocket behind the fold of a pleat, lie in one seam with it', () => {
    expect(
      codes({
        closure: ZIP,
        pockets: [{ seam: 'side/back', 'below-waist': 10, cloth: 'calico' }],
        pleats: [
          { name: 'step', kind: 'kick', at: 'centre-back', 'above-hem': 25, 'fold-depth': 8 },
          { name: 'deep', kind: 'inverted', at: 'side/back', 'fold-depth': 4 },
        ],
      }),
    ).toEqual([]);
  });

  it('along an edge that bends a facing has its shape: as long as the edge, as wide all along', async () => {
    const { pieces } = await drafted({
      gores: ['front', 'side', 'back'].map((name) => ({ name, top: 12 })),
      lengths: { at: { 'centre-front': 80, 'centre-back': 80 } },
      petticoat: {
        girths: [
          { down: 0, girth: 72 },
          { down: 25, girth: 102 },
          { down: 50, girth: 120 },
          { down: 90, girth: 260 },
        ],
      },
      slits: [{ seam: 'side/back', 'above-hem': 45, facing: { depth: 4 } }],
    });
    const strips = pieces.filter(({ part }) => part === 'facing');
    expect(strips.map(({ gore }) => gore)).toEqual(['slit-facing-front', 'slit-facing-back']);
    for (const [i, { sew, text, notches }] of strips.entries()) {
      expect(text).toContain('cut 1 pair');
      const [sewn, inner] = [sew.get('sewn-edge')!, sew.get('inner-edge')!];
      // It reaches 2 cm above the slit, and is marked there.
      expect(Math.abs(sewn.length - 470)).toBeLessThan(1);
      const { ticks } = notches.find(({ edge }) => edge === 'sewn-edge')!;
      const own = samplesOf(sewn, 0.2);
      const down = ticks.map(({ to }) => {
        const { distance: along } = own.reduce((best, one) =>
          distance(one.point, to) < distance(best.point, to) ? one : best,
        );
        return Math.min(along, sewn.length - along);
      });
      expect(Math.abs(down.reduce((sum, one) => sum + one, 0) / down.length - 20)).toBeLessThan(1);
      for (const { point } of samplesOf(inner, 5))
        expect(Math.abs(distanceTo(sewn, point) - 40)).toBeLessThan(0.05);
      // Bent as the gore's edge is, from the hem up: by the chords over each 10 cm of it.
      const gore = pieces.find((piece) => piece.gore === ['side', 'back'][i])!;
      const chords = (path: typeof sewn, isUp: boolean) => {
        const own = samplesOf(path, 0.1);
        const at = (up: number) =>
          own[Math.round(((isUp ? up : path.length - up) / path.length) * (own.length - 1))]!;
        return [0, 100, 200, 300].map((up) => distance(at(up).point, at(up + 100).point));
      };
      const hem = gore.sew.get('hem')!;
      const seam = gore.sew.get('side/back')!;
      const isUp = Math.min(distance(seam.from, hem.from), distance(seam.from, hem.to)) < 0.01;
      const end = sew.get('lower-end')!;
      const ownUp = Math.min(distance(sewn.from, end.from), distance(sewn.from, end.to)) < 0.01;
      for (const [k, chord] of chords(sewn, ownUp).entries())
        expect(Math.abs(chord - chords(seam, isUp)[k]!)).toBeLessThan(0.3);
    }
  });

  it('a pocket on the side without the zip may lie beside it', () => {
    expect(
      codes({
        closure: { ...ZIP, at: 'side/back', side: 'left' },
        pockets: [{ seam: 'side/back', 'below-waist': 10, side: 'right', cloth: 'calico' }],
      }),
    ).toEqual([]);
  });
});

describe('a binding cut on the bias', () => {
  it('is a block as large as its strip: length times width (the continuous-bias rule; textbook)', async () => {
    const { named } = await drafted({
      trims: [{ kind: 'binding', layer: 'shell', along: 'hem', width: 4, cloth: 'calico' }],
    });
    const [block] = named('binding');
    // Six gores of 30 cm round, and 13 mm to lap; to whole centimetres of a square.
    const area = (6 * 300 + 13) * 40;
    const [along, across] = [block!.edges['right-side']!, block!.edges['upper-end']!];
    expect(along).toBe(across);
    expect(along * across).toBeGreaterThanOrEqual(area);
    expect((along - 10) * (across - 10)).toBeLessThan(area);
  });
});

it('a yoke of tiers is as long as the edge that they are gathered to, by its size', async () => {
  const { named } = await drafted({
    tiers: [{ name: 'net', cloth: 'calico', yoke: 96, 'yoke-depth': 20, tiers: [200], depths: 30 }],
  });
  expect(named('yoke')).toMatchObject([
    { name: 'net-yoke', bySize: true, copies: 1, edges: { top: 960, 'left-join': 200 } },
  ]);
});

it('loops are one strip: as many times one’s length, twice as wide as they are turned', async () => {
  const { named } = await drafted({ loops: [{ count: 12, length: 5, width: 0.5, cloth: 'calico' }] });
  expect(named('loop')).toMatchObject([{ name: 'loops', edges: { 'sewn-edge': 600, 'upper-end': 10 } }]);
});
