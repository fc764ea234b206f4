import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { CutPiece } from '../../src/draft/piece.ts';
import { flattenedRun } from '../../src/geometry/flatten.ts';
import { KeptEntries } from '../../src/kept/kept-entries.ts';
import { draft } from '../../src/pipeline.ts';
import type { GroupMark, PathMark, TextMark } from '../../src/print/drawing.ts';
import { lineNames } from '../../src/print/pattern/line-names.ts';
import { patternDrawing } from '../../src/print/pattern/pattern-drawing.ts';
import { projectorPages } from '../../src/print/pattern/projector-pages.ts';
import { textWidth } from '../../src/print/text/text-width.ts';
import { labelsOf } from '../../src/publish/pattern-files.ts';
import { chosenPieces, paperOf, sheetPlan } from '../../src/publish/pattern-sheets.ts';
import { layOutProjector } from '../../src/sheets/lay-out-projector.ts';
import { skirt } from '../making/made.ts';
import { lanternGores } from '../sheets/sector-piece.ts';

const ROOT = join(import.meta.dirname, '../..');
/** Of each construction that puts lines near text one gown: hems apart and near, trains, pleats, eyelets, capes, godets. */
const FILES = [
  'examples/lantern',
  'templates/box-pleats',
  'templates/capelet',
  'templates/day-skirt',
  'templates/godets',
  'templates/laced-bodice',
  'templates/one-sided-train',
  'templates/pencil',
  'templates/pointed-train',
];

interface Pile {
  readonly pieces: readonly CutPiece[];
  readonly groups: readonly GroupMark[];
}

/** Pieces that lie on one another as one, the rest alone. */
function piles(text: string, paper = 'a4'): Pile[] {
  const { gown } = draft({ name: 'trial.yaml', text });
  if (gown === undefined) throw new Error('cannot be drafted');
  const plan = sheetPlan(gown, paperOf(gown, paper));
  const groups = patternDrawing(plan, labelsOf(gown)).whole.marks as readonly GroupMark[];
  return plan.pieces.flatMap(({ liesOn }, index) => {
    if (liesOn !== undefined) return [];
    const own = [...groups.keys()].filter((one) => one === index || plan.pieces[one]!.liesOn === index);
    return [{ pieces: own.map((one) => plan.pieces[one]!.cutPiece), groups: own.map((one) => groups[one]!) }];
  });
}

const texts = ({ groups }: Pile) =>
  groups.flatMap(({ marks }) => marks.filter((mark): mark is TextMark => mark.kind === 'text'));

/** Texts with a line in the box of their letters: capitals 0.72 of an em high, tails 0.2 (the Helvetica metrics). */
function struckThrough(pile: Pile): string[] {
  const runs = pile.groups.flatMap(({ marks }) =>
    marks.filter((mark): mark is PathMark => mark.kind === 'path').flatMap((path) => path.runs),
  );
  const lines = runs.flatMap((run) => {
    const points = flattenedRun(run, 0.1);
    return points.slice(1).map((to, i) => [points[i]!, to] as const);
  });
  return texts(pile)
    .filter(({ at, text, size, bold }) => {
      const box = { left: at.x, right: at.x + textWidth(text, size, bold), top: at.y - 0.72 * size };
      return lines.some(([from, to]) => comesInto(from, to, { ...box, bottom: at.y + 0.2 * size }));
    })
    .map(({ text }) => text);
}

/** Names of lines with another's cut line between them and the nearest of their own. */
function readAsAnother({ pieces, groups }: Pile): string[] {
  const outlines = pieces.map(({ cutEdges }) =>
    flattenedRun(
      cutEdges.flatMap(({ curves }) => curves),
      0.02,
    ),
  );
  return groups.flatMap(({ marks }, index) =>
    marks
      .filter((mark): mark is TextMark => mark.kind === 'text' && mark.text.endsWith(': cut'))
      .filter(({ at, text, size }) => {
        const middle = { x: at.x + textWidth(text, size) / 2, y: at.y - 0.25 * size };
        const near = nearest(outlines[index]!, middle);
        const steps = Math.floor(Math.max(0, Math.hypot(near.x - middle.x, near.y - middle.y) - 0.5) / 0.2);
        const on = Array.from({ length: steps }, (_, i) => ({
          x: middle.x + ((near.x - middle.x) * i) / steps,
          y: middle.y + ((near.y - middle.y) * i) / steps,
        }));
        const others = outlines.filter((_, other) => other !== index);
        return others.some((points) =>
          on.some(({ x, y }) => {
            const { x: a, y: b } = nearest(points, { x, y });
            return Math.hypot(a - x, b - y) < 0.11;
          }),
        );
      })
      .map(({ text }) => text),
  );
}

type Spot = { readonly x: number; readonly y: number };

function nearest(points: readonly Spot[], { x, y }: Spot): Spot {
  let best = points[0]!;
  for (const [i, b] of points.entries()) {
    const a = points[Math.max(0, i - 1)]!;
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const share = ((x - a.x) * dx + (y - a.y) * dy) / (dx * dx + dy * dy || 1);
    const held = Math.min(1, Math.max(0, share));
    const spot = { x: a.x + held * dx, y: a.y + held * dy };
    if (Math.hypot(spot.x - x, spot.y - y) < Math.hypot(best.x - x, best.y - y)) best = spot;
  }
  return best;
}

type Box = { left: number; right: number; top: number; bottom: number };

/** Separating axes of a line and a box: level, upright, and square to the line. */
function comesInto(a: { x: number; y: number }, b: { x: number; y: number }, box: Box): boolean {
  if (Math.max(a.x, b.x) < box.left || Math.min(a.x, b.x) > box.right) return false;
  if (Math.max(a.y, b.y) < box.top || Math.min(a.y, b.y) > box.bottom) return false;
  const sides = [box.left, box.right].flatMap((x) =>
    [box.top, box.bottom].map((y) => Math.sign((b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x))),
  );
  return sides.some((side) => side !== sides[0]) || sides[0] === 0;
}

describe('text on the pattern', () => {
  it.each(FILES)('%s: no line runs through any, and every line that lies by another has its name', (file) => {
    const all = piles(readFileSync(join(ROOT, `${file}.yaml`), 'utf8'));
    expect(all.flatMap(struckThrough)).toEqual([]);
    for (const { pieces, groups } of all.filter((pile) => pile.pieces.length > 1))
      for (const [index, { layers, gore }] of pieces.entries()) {
        const own = groups[index]!.marks.filter((mark) => mark.kind === 'text').map(({ text }) => text);
        expect(own, gore).toContain(`${layers.join(', ')}: cut`);
      }
    expect(all.flatMap(readAsAnother)).toEqual([]);
  });

  it.each(['examples/lantern', 'templates/godets'])('%s on a roll: the same', (file) => {
    const all = piles(readFileSync(join(ROOT, `${file}.yaml`), 'utf8'), 'roll:914');
    expect(all.flatMap(struckThrough)).toEqual([]);
    expect(all.flatMap(readAsAnother)).toEqual([]);
  });

  // One piece of the costume is larger than the narrowest page both ways.
  it.each(['examples/puffin', 'templates/day-skirt'])(
    '%s for a projector: the same, in every cloth',
    (file) => {
      const { gown } = draft({ name: 'trial.yaml', text: readFileSync(join(ROOT, `${file}.yaml`), 'utf8') });
      const plan = layOutProjector(chosenPieces(gown!, {}));
      const [page, ...more] = projectorPages(plan, labelsOf(gown!), (layer) => layer);
      expect(more).toEqual([]);
      const groups = page!.marks.flatMap((mark) =>
        mark.kind !== 'group'
          ? []
          : mark.marks.flatMap((use) =>
              use.kind === 'use' ? (use.drawing.marks as readonly GroupMark[]) : [],
            ),
      );
      expect(groups).toHaveLength(plan.pieces.length);
      // Each is a layer of the page by itself, to be switched on alone.
      for (const group of groups) {
        const alone = { pieces: [], groups: [group] };
        expect(struckThrough(alone)).toEqual([]);
        expect(texts(alone).length).toBeGreaterThan(2);
      }
    },
  );

  // From where a whole label has room to where a line and its letters have none: 16 mm between the seam lines.
  it.each([16, 20, 30, 60])(
    'a facing %i mm deep has what it has room for, and its name at least',
    (depth) => {
      const layers = `  - {name: shell, cloth: crepe, hem: faced, facing: {depth: ${depth}mm}}`;
      const facings = piles(skirt({ layers })).filter(({ pieces }) => pieces[0]!.piece.part === 'facing');
      expect(facings.length).toBeGreaterThan(0);
      for (const facing of facings) {
        expect(struckThrough(facing)).toEqual([]);
        expect(texts(facing).filter(({ bold }) => bold).length).toBeGreaterThan(0);
      }
    },
  );
});

describe('lines that lie apart at the waist', () => {
  const [, gore] = lanternGores(['shell']);
  const window = { x: -2000, y: -2000, width: 5000, height: 5000 };
  const around = { grain: gore!.piece.grain, windows: [window] };
  const waist = gore!.piece.edges[0]!.name;
  it('have their names where they had them, and anew where they could not have been', () => {
    const pile = [gore!, { ...gore!, layers: ['lining'] }];
    const first = new KeptEntries();
    const names = (kept: KeptEntries) => lineNames(pile, around, (layers) => layers.join(), kept);
    const found = names(first);
    const [[key, text] = ['', '']] = first.entries;
    const known = JSON.parse(text) as [number, number, number][][];
    const with_ = (value: unknown) => names(new KeptEntries(new Map([[key, JSON.stringify(value)]])));
    const changed = (change: (x: number, y: number, size: number) => unknown) =>
      with_(known.map((own) => own.map((at) => change(...at))));
    expect(with_(known)).toEqual(found);
    // Kept a millimetre farther along, they stand there: they are taken.
    expect(changed((x, y, size) => [x + 1, y, size])[0]![0]!.box.x).toBe(found[0]![0]!.box.x + 1);
    for (const wrong of [null, {}, [], known.slice(1), known.map(() => null), [[[0, 0, 2.8]], [[0, 0, 2.8]]]])
      expect(with_(wrong)).toEqual(found);
    expect(changed((x, y) => [x, y, 2.5])).toEqual(found);
    expect(changed((x, y, size) => [x + 5000, y, size])).toEqual(found);
    expect(changed((x, y, size) => [x, null, size, y])).toEqual(found);
    expect(changed((x, _y, size) => [x, null, size])).toEqual(found);
    expect(changed(() => null)).toEqual(found);
  });

  const named = (lower: CutPiece) =>
    lineNames([gore!, lower], around, (layers) => layers.join()).map((own) =>
      own.map(({ mark, box }) => ({ text: mark.text, y: box.y })),
    );

  it('are named by their layers there, and not where they are one line', () => {
    const same = { ...gore!, layers: ['lining'] };
    expect(named(same).map((own) => own.length)).toEqual([1, 1]);
    const edges = gore!.cutEdges.map((edge) => {
      if (edge.name !== waist) return edge;
      // Seven millimetres farther out: more than the height of the letters.
      const curves = edge.curves.map((curve) =>
        curve.kind === 'line'
          ? { ...curve, from: moved(curve.from), to: moved(curve.to) }
          : curve.kind === 'arc'
            ? { ...curve, centre: moved(curve.centre) }
            : curve,
      );
      return { ...edge, curves };
    });
    const apart = named({ ...same, cutEdges: edges });
    expect(apart.map((own) => own.map(({ text }) => text))).toEqual([
      ['shell', 'shell'],
      ['lining', 'lining'],
    ]);
    expect(apart[1]![1]!.y).toBeLessThan(apart[0]![1]!.y);
  });
});

function moved({ x, y }: { readonly x: number; readonly y: number }) {
  return { x, y: y - 7 };
}
