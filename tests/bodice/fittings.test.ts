import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { comparePieces } from '../../src/compare/compare-pieces.ts';
import { isSameOutline } from '../../src/draft/same-outline.ts';
import { readSpec } from '../../src/gown-file/read-spec.ts';
import { type DraftedGown, draft } from '../../src/pipeline.ts';
import { heights } from './drafted.ts';
import { cornersOf, placeAlong, sidesOf, walked, widthAbove } from './measured.ts';

/** What was pinned in a drafted bodice, measured on its outlines: the panels, and the gores that are sewn to them. */

/** Wide enough below that what is taken in leaves room for her hips. */
const TEMPLATE = readFileSync(new URL('../../templates/boned-bodice.yaml', import.meta.url), 'utf8').replace(
  /^sweep: \d+/m,
  'sweep: 400',
);
const fitted = (...entries: readonly string[]): string =>
  `${TEMPLATE}\nfittings:\n${entries.map((entry) => `  - {date: 2027-05-01, ${entry}}\n`).join('')}`;
const pinned = (seam: string): string => `bodice: {seams: [{seam: side-front/side, ${seam}}]}`;

const known = new Map<string, DraftedGown>();
function gownOf(text: string): DraftedGown {
  const { gown, diagnostics } = draft({ name: 'gown.yaml', text });
  expect(diagnostics.filter(({ level }) => level !== 'note')).toEqual([]);
  return gown!;
}
function once(text: string): DraftedGown {
  const own = known.get(text) ?? gownOf(text);
  known.set(text, own);
  return own;
}

const half = (gown: DraftedGown, side: 'left' | 'right' = 'left') => gown.bodice!.draft[side];
const [FRONT, SIDE_FRONT, SIDE, SIDE_BACK, BACK] = [0, 1, 2, 3, 4];

/** How far the two lines of the pinned seam lie from a place of the old ones, mm. */
function movedAt(before: DraftedGown, after: DraftedGown, above: number): number[] {
  const top = heights(half(before)).upper[2]!;
  return (['back', 'front'] as const).map((side, i) => {
    const { point } = placeAlong(sidesOf(half(before), SIDE_FRONT + i)[side], top - above);
    const now = sidesOf(half(after), SIDE_FRONT + i)[side];
    return Math.min(...now.map(({ x, y }) => Math.hypot(x - point.x, y - point.y)));
  });
}

function widthOf(gown: DraftedGown, panel: number, above: number, side?: 'left' | 'right'): number {
  const own = half(gown, side);
  const { upper } = heights(own);
  return widthAbove(own, panel, above, [upper[panel]!, upper[panel + 1]!]);
}

/** From below the waist to the upper edge, which lies at 17 cm there. */
const THROUGH = pinned('from: -1, to: 17, take-in: [0.4, 0.8]');

describe('a seam taken in by two amounts', () => {
  const before = once(TEMPLATE);
  const after = once(fitted(THROUGH));

  it.each([
    // Smooth between: half of the change half way, and t³(10 − 15t + 6t²) of it a quarter of the way.
    [0, 4 + 4 * eased(10 / 180)],
    [35, 4 + 4 * eased(0.25)],
    [80, 4 + 4 * eased(0.5)],
    [150, 4 + 4 * eased(160 / 180)],
  ])('%s mm above the waist both seam lines lie %s mm inside of where they were', (above, by) => {
    expect(movedAt(before, after, above)).toEqual([by, by].map((own) => expect.closeTo(own, 1)));
  });

  it('keeps the panels beyond as they were, every seam true and its length', () => {
    for (const panel of [FRONT, SIDE_BACK, BACK])
      expect(isSameOutline(half(after).pieces[panel]!, half(before).pieces[panel]!)).toBe(true);
    const { upper, lower } = heights(half(after));
    for (let i = 1; i < 5; i++) {
      const [a, b] = [half(after).pieces[i - 1]!.edges[1]!, half(after).pieces[i]!.edges[3]!];
      for (const { curves } of [a, b])
        expect(Math.abs(walked(curves).length - (upper[i]! - lower[i]!))).toBeLessThan(0.1);
      const [one, two] = [cornersOf(half(after), i - 1), cornersOf(half(after), i)];
      for (const sum of [one[1]! + two[0]!, one[2]! + two[3]!])
        expect(Math.abs(sum - Math.PI)).toBeLessThan((0.1 * Math.PI) / 180);
    }
    expect(upper).toEqual(heights(half(before)).upper.map((height) => expect.closeTo(height, 6)));
  });

  it('takes the tops of the gores in with it, and runs out 20 cm below', () => {
    const tops = after.report.gores.map(({ name, top }) => [name, top]);
    expect(tops).toEqual(
      after.report.bodice!.panels.map(({ name, lower }) => [name, expect.closeTo(lower, 2)]),
    );
    const taken = before.report.waist.sewn - after.report.waist.sewn;
    // 4 mm a panel along the level, which the edge crosses at a slant.
    expect(taken).toBeGreaterThan(4 * 4 * Math.cos(Math.PI / 9));
    expect(taken).toBeLessThan(4 * 4);
    expect(after.report.hem.sewn).toBeCloseTo(before.report.hem.sewn, 0);
    for (const { difference, waistAngle, hemAngle } of after.report.seams) {
      expect(difference).toBeLessThan(0.1);
      expect(Math.max(Math.abs(waistAngle - 180), Math.abs(hemAngle - 180))).toBeLessThan(0.1);
    }
  });

  it('is said in the report: what was and what is, and which panels', () => {
    const [own] = after.report.bodice!.fittings;
    expect(own!.panels).toEqual([{ name: 'side-front' }, { name: 'side' }]);
    expect(Math.abs(own!.upper[0] - own!.upper[1] - 4 * 8)).toBeLessThan(1);
    expect(own!.lower[0] - own!.lower[1]).toBeCloseTo(before.report.waist.sewn - after.report.waist.sewn, 1);
    // The tape inside follows the waist as it is sewn: 67 cm and two ends of 2.5.
    expect(before.report.bodice!.waistTape.length).toBeCloseTo(670 + 50, 3);
    const atWaist = 4 * (4 + 4 * eased(10 / 180));
    expect(Math.abs(after.report.bodice!.waistTape.length - (720 - atWaist))).toBeLessThan(0.4);
  });
});

describe('on one side of her', () => {
  const before = once(TEMPLATE);
  const after = once(fitted(pinned('from: -1, to: 17, take-in: [0.4, 0.8], side: left')));

  it('that side alone: the other is the very same, panels and gores', () => {
    expect(movedAt(before, after, 80)).toEqual([6, 6].map((by) => expect.closeTo(by, 1)));
    for (const [p, piece] of half(after, 'right').pieces.entries())
      expect(isSameOutline(piece, half(before).pieces[p]!)).toBe(true);
    const cut = (gown: DraftedGown, part?: string) =>
      gown.cut.pieces
        .filter(({ piece, layers }) => piece.part === part && layers.includes(part ? 'strength' : 'shell'))
        .map(({ gore, piece }) => [gore, piece.side ?? 'pair']);
    const oneSided = [
      ['front', 'pair'],
      ['side-front', 'left'],
      ['side-front', 'right'],
      ['side', 'left'],
      ['side', 'right'],
      ['side-back', 'pair'],
      ['back', 'pair'],
    ];
    expect(cut(after, 'bodice')).toEqual(oneSided);
    expect(cut(after)).toEqual(oneSided);
  });

  it('each gore meets the panel of its own side', () => {
    const panels = new Map(
      after.report.bodice!.panels.map(({ name, side, lower }) => [`${name} ${side}`, lower]),
    );
    for (const { name, side, top } of after.report.gores)
      expect(top).toBeCloseTo(panels.get(`${name} ${side}`)!, 2);
    const right = after.report.gores.filter(({ side }) => side === 'right').map(({ top }) => top);
    expect([...right].reverse()).toEqual(before.report.gores.map(({ top }) => expect.closeTo(top, 4)));
  });

  it('and `compare` says so of the cloth that is cut: those pieces are marked anew, within their allowances', () => {
    const [was, is] = [before, after].map(({ cut, layers }) => ({
      spec: readSpec({ name: 'gown.yaml', text: TEMPLATE }).spec!,
      pieces: cut.pieces,
      layers: layers.map(({ name, cloth }) => ({ name, cloth: cloth.name })),
    }));
    const told = comparePieces(was!, is!)
      .changes.filter(({ layer }) => layer === 'strength' || layer === 'shell')
      .filter(({ verdict }) => verdict !== 'same');
    expect(told.map(({ gore, side, layer, verdict }) => [gore, side, layer, verdict]).sort()).toEqual(
      ['strength', 'shell']
        .flatMap((layer) => ['side', 'side-front'].map((gore) => [gore, 'left', layer, 'let-out']))
        .sort(),
    );
  });
});

it('a body whose halves differ: each gore meets the panel of its own half', () => {
  const { report } = gownOf(TEMPLATE.replace('girth: 70, front: 36', 'girth: 70, front: 36, left: 36.2'));
  const panels = new Map(report.bodice!.panels.map(({ name, side, lower }) => [`${name} ${side}`, lower]));
  for (const { name, side, top } of report.gores) expect(top).toBeCloseTo(panels.get(`${name} ${side}`)!, 2);
  const round = (side: string) =>
    report.gores.filter((gore) => gore.side === side).reduce((sum, { top }) => sum + top, 0);
  // 12 mm more on her left at the level waist, of which the reduction takes its part.
  expect(round('left') - round('right')).toBeGreaterThan(20);
});

describe('the upper edge', () => {
  it('goes down where it was pinned, and the seams with it; up is up', () => {
    const before = once(TEMPLATE);
    const after = gownOf(fitted('bodice: {upper-edge: {centre-back: -1.5, side-front/side: 0.5}}'));
    const moved = [0, 1, 2, 5].map((i) => heights(half(after)).upper[i]! - heights(half(before)).upper[i]!);
    expect(moved).toEqual([0, 0, 5, -15].map((by) => expect.closeTo(by, 6)));
    const back = half(after).pieces[BACK]!.edges[1]!.curves;
    expect(walked(back).length).toBeCloseTo(140 - 15, 1);
    // Nothing was pinned at the waist: the gores are the very same.
    expect(after.report.gores).toEqual(before.report.gores);
  });
});

describe('pinned through the waist', () => {
  it('skirt and bodice are taken in once, not twice', () => {
    const both = gownOf(
      fitted(
        'seams: [{seam: side-front/side, from: 0, to: 30, take-in: [0.4, 0]}], bodice: {seams: [{seam: side-front/side, from: -1, to: 17, take-in: [0.4, 0.8]}]}',
      ),
    );
    const alone = once(fitted(THROUGH));
    expect(both.report.waist.sewn).toBeCloseTo(alone.report.waist.sewn, 1);
    expect(both.report.waist.difference).toBeLessThan(0.01);
    // Run out over 30 cm and not over 20: another line below.
    expect(isSameOutline(both.drafts.gown.pieces[SIDE]!, alone.drafts.gown.pieces[SIDE]!)).toBe(false);
  });

  it('two fittings add up', () => {
    const twice = gownOf(
      fitted(
        pinned('from: -1, to: 17, take-in: [0.2, 0.4]'),
        pinned('from: -1, to: 17, take-in: [0.2, 0.4]'),
      ),
    );
    for (const above of [0, 80, 150])
      expect(widthOf(twice, SIDE, above)).toBeCloseTo(widthOf(once(fitted(THROUGH)), SIDE, above), 1);
  });
});

/** The smooth way from 0 to 1 that a seam takes between two amounts: level, and without a bend, at both ends. */
function eased(t: number): number {
  return t ** 3 * (10 - 15 * t + 6 * t * t);
}
