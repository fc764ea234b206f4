import { describe, expect, it } from 'vitest';
import { auditPattern } from '../../src/audit/audit-pattern.ts';
import { readPattern } from '../../src/audit/read-pattern.ts';
import type { Line, Point } from '../../src/geometry/curve.ts';
import { pointAt } from '../../src/geometry/evaluate.ts';
import { jobSheet } from '../../src/print/papers/job-sheet.ts';
import { patternFiles } from '../../src/publish/pattern-files.ts';
import { paperOf, sheetPlan } from '../../src/publish/pattern-sheets.ts';
import { made, skirt } from '../making/made.ts';
import { inputOf } from '../making/paper-input.ts';
import { printedLines, rowsUnder } from '../print/page-rows.ts';

const OVAL = 'size: [40mm, 60mm]';
const set = (rest: string, more = '', layers?: string) =>
  made(
    skirt({ more: `stones:\n  - {name: leaf, layer: shell, ${rest}}\n${more}`, ...(layers && { layers }) }),
  );

describe('motifs set one by one', () => {
  const places =
    'places: [{gore: front, across: 50%, below-waist: 30}, {gore: back, across: 25%, above-hem: 20}]';
  const { facts, gown, findings } = set(`${OVAL}, ${places}`);
  const [leaf] = facts.stones;

  it('are there on both sides of her, and no more', () => {
    expect(leaf!.count).toBe(4);
    expect(leaf!.gross).toBe(1);
    expect(findings.filter(({ code }) => code.startsWith('stone'))).toEqual([]);
  });

  it('lie so far below the waist seam or above the hem, so far across', () => {
    const { pieces } = gown.drafts.layers[0]!.draft;
    const [front, , back] = leaf!.pieces;
    // A gore of even flare is part of a ring about the point where its two sides meet.
    const onRing = (gore: number, at: Point) => {
      const { edges } = pieces[gore]!;
      const [right, left] = [edges[1]!, edges[3]!].map(({ curves }) => curves[0] as Line) as [Line, Line];
      const centre = meeting(left, right);
      const angle = ({ x, y }: Point) => Math.atan2(x - centre.x, y - centre.y);
      const radius = ({ x, y }: Point) => Math.hypot(x - centre.x, y - centre.y);
      const share = (angle(at) - angle(left.to)) / (angle(right.from) - angle(left.to));
      return { share, below: radius(at) - radius(right.from) };
    };
    const [one, two] = [front!.stones[0]!, back!.stones[0]!];
    expect(onRing(0, one).share).toBeCloseTo(0.5, 6);
    expect(onRing(0, one).below).toBeCloseTo(300, 3);
    expect(onRing(2, two).share).toBeCloseTo(0.25, 6);
    const hem = pieces[2]!.edges[2]!.curves.flatMap((curve) =>
      Array.from({ length: 2000 }, (_, k) => pointAt(curve, k / 2000)),
    );
    const below = hem.reduce((best, at) =>
      Math.abs(onRing(2, at).share - 0.25) < Math.abs(onRing(2, best).share - 0.25) ? at : best,
    );
    expect(Math.hypot(below.x - two.x, below.y - two.y)).toBeCloseTo(200, 0);
  });

  it('nothing else is set under them', () => {
    const { facts: own } = made(
      skirt({
        more: `stones:
  - {name: beads, layer: shell, size: 4mm, per-dm2: 12, over: [20, 40]}
  - {name: leaf, layer: shell, ${OVAL}, places: [{gore: front, across: 50%, below-waist: 30}]}
  - {name: flower, layer: shell, size: 20mm, per-dm2: 1, over: [20, 40]}`,
      }),
    );
    const [beads, leaf1, flowers] = own.stones.map(({ pieces }) => pieces[0]!.stones);
    const [at] = leaf1!;
    const away = (b: Point) => Math.hypot(b.x - at!.x, b.y - at!.y);
    // Half of each width, a motif's by its longer way.
    expect(Math.min(...beads!.map(away))).toBeGreaterThanOrEqual(32);
    expect(Math.min(...flowers!.map(away))).toBeGreaterThanOrEqual(40);
    for (const flower of flowers!)
      for (const bead of beads!)
        expect(Math.hypot(bead.x - flower.x, bead.y - flower.y)).toBeGreaterThanOrEqual(12);
    expect(beads!.length).toBeGreaterThan(30);
    expect(flowers!.length).toBeGreaterThan(1);
  });

  it('on the job sheet: where each lies, and no gross of them', () => {
    const printed = printedLines(jobSheet(inputOf({ facts, gown, findings })).pages);
    expect(rowsUnder(printed, ['set', 'gore', 'across', 'below the waist seam', 'above the hem'])).toEqual([
      ['leaf', 'front', '50 %', '30.0', ''],
      ['leaf', 'back', '25 %', '', '20.0'],
    ]);
    const heads = ['set', 'on', 'across', 'how many', 'gross', 'weight', 'hours', 'cost'];
    expect(rowsUnder(printed, heads)[0]!.slice(0, 5)).toEqual(['leaf', 'shell', '40 × 60 mm', '4', '']);
  });

  it('on a fold one is there once', () => {
    const text = skirt({
      more: 'stones:\n  - {name: leaf, layer: shell, size: 40mm, places: [{gore: front, across: 0%, below-waist: 30}, {gore: front, across: 50%, below-waist: 60}]}',
    })
      .replace('waist-seam: 72', 'waist-seam: 60')
      .replace('{name: front, top: 12, hem: 40}', '{name: front, on-fold: true, half-top: 6, half-hem: 20}');
    const { facts: own, findings: found } = made(text);
    expect(own.stones[0]!.count).toBe(3);
    expect(own.stones[0]!.pieces[0]!.once).toBe(1);
    expect(found.filter(({ code }) => code === 'stone-near-edge')).toEqual([]);
  });
});

describe('stones marked on the pattern', () => {
  const drawn = async (rest: string, layers?: string, text = '') => {
    const own = set(rest, text, layers);
    const { files } = await patternFiles(own.gown, {});
    const svg = files.get('pattern.svg') as string;
    // A move of the pen for each stone.
    const paths = [...svg.matchAll(/<path[^>]*class="stone"[^>]*>/g)].map(([tag]) => tag);
    const count = paths.reduce((sum, tag) => sum + [...tag.matchAll(/[Mm]/g)].length, 0);
    return { ...own, files, count };
  };
  const half = ({ facts }: ReturnType<typeof made>) =>
    facts.stones[0]!.pieces.reduce((sum, { stones }) => sum + stones.length, 0);

  it('are not, unless it is asked for', async () => {
    expect((await drawn('size: 4mm, per-dm2: 1')).count).toBe(0);
  });

  it('are as many as the chart has, and another reader finds each in the PDF where it belongs', async () => {
    const own = await drawn('size: 4mm, per-dm2: 0.5, on-pattern: true');
    expect(own.count).toBe(half(own));
    expect(own.count).toBeGreaterThan(20);
    const plan = sheetPlan(own.gown, paperOf(own.gown));
    const read = readPattern(own.files.get('pattern-a4.pdf') as Uint8Array);
    if ('unreadable' in read) throw new Error(read.unreadable);
    const { faults } = auditPattern(read.pages, plan);
    expect(faults).toEqual([]);
  });

  it('motifs as their outlines', async () => {
    const own = await drawn(
      `${OVAL}, on-pattern: true, places: [{gore: side, across: 50%, below-waist: 30}]`,
    );
    expect(own.count).toBe(1);
    const [piece] = own.gown.cut.pieces.filter(({ stones = [] }) => stones.length > 0);
    const points = piece!.stones![0]!.runs[0]!.flatMap((curve) =>
      Array.from({ length: 50 }, (_, k) => pointAt(curve, k / 50)),
    );
    const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(40, 3);
    expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(60, 3);
    // x²/a² + y²/b² = 1 all round, within a third of a thousandth.
    const at = own.facts.stones[0]!.pieces[1]!.stones[0]!;
    for (const { x, y } of points)
      expect(((x - at.x) / 20) ** 2 + ((y - at.y) / 30) ** 2).toBeCloseTo(1, 2.5);
  });

  it('of a half that is cut whole on the bias: both halves of it', async () => {
    const text = skirt({
      layers: '  - {name: shell, cloth: crepe, hem: turned, grain: bias}',
      more: 'stones: [{name: leaf, layer: shell, size: 4mm, per-dm2: 0.5, on-pattern: true}]',
    })
      .replace('waist-seam: 72', 'waist-seam: 60')
      .replace('{name: front, top: 12, hem: 40}', '{name: front, on-fold: true, half-top: 6, half-hem: 20}');
    const { gown, facts } = made(text);
    const [front] = gown.cut.pieces;
    expect(front!.piece.cut).toBe('single');
    expect(front!.stones![0]!.runs).toHaveLength(2 * facts.stones[0]!.pieces[0]!.stones.length);
  });

  it('with a pleat: none on what its fold hides', async () => {
    const pleat =
      'pleats: [{name: kick, kind: knife, at: front/side, from-seam: 4, gore: side, fold-depth: 3, towards: back}]';
    const own = await drawn('size: 4mm, per-dm2: 2, on-pattern: true', undefined, pleat);
    expect(own.count).toBe(half(own));
    const side = own.gown.cut.pieces.find(({ gore }) => gore === 'side')!;
    const folds = side.marks.filter(({ name }) => ['fold-line', 'placement-line'].includes(name));
    const lines = folds.map(({ curves }) => [curves[0]!, curves.at(-1)!].map((c, i) => pointAt(c, i)));
    expect(lines.length).toBeGreaterThan(1);
    // Levels differ little in slope: by x at the stone's own y between the outermost lines.
    for (const [dot] of side.stones![0]!.runs) {
      const { x, y } = pointAt(dot!, 0.5);
      const at = lines.map(([a, b]) => a!.x + ((b!.x - a!.x) * (y - a!.y)) / (b!.y - a!.y));
      // Clear of the fold by 5 mm and half a stone, measured square to it: a little more on the level.
      expect(x < Math.min(...at) - 6.9 || x > Math.max(...at) + 6.9).toBe(true);
    }
  });
});

function meeting(a: Line, b: Line): Point {
  const [u, v] = [a, b].map(({ from, to }) => ({ x: to.x - from.x, y: to.y - from.y })) as [Point, Point];
  const cross = u.x * v.y - u.y * v.x;
  const t = ((b.from.x - a.from.x) * v.y - (b.from.y - a.from.y) * v.x) / cross;
  return { x: a.from.x + t * u.x, y: a.from.y + t * u.y };
}
