import { describe, expect, it } from 'vitest';
import { squareAcross } from '../bodice/measured.ts';
import { draftedPattern, mustDraft } from './drafted.ts';
import { polygonOf } from './measure/path.ts';
import { type PatternPiece, readPattern } from './measure/pattern.ts';
import type { Point } from './measure/segment.ts';

/** Bodies that no table holds, drafted whole and measured on `pattern.svg` alone. cm in the file, mm here. */

interface Body {
  /** Name, height above the waist, girth, and over the front where it is known. */
  readonly girths: readonly (readonly [at: string, above: number, girth: number, front?: number])[];
  readonly reduce?: string;
  readonly closing?: string;
}

const GORES = ['front', 'side-front', 'side', 'side-back', 'back'];
const UPPER = { 'centre-front': 17.5, 'front/side-front': 19, 'side-front/side': 18, 'centre-back': 17 };

function specOf({ girths, reduce = '', closing = '{kind: zip, at: centre-back}' }: Body): string {
  const levels = girths.map(([at, above, girth, front]) => {
    const height = above === 0 ? '' : above > 0 ? `, above: ${above}` : `, below: ${-above}`;
    return `    - {at: ${at}${height}, girth: ${girth}${front === undefined ? '' : `, front: ${front}`}}`;
  });
  return `format: 1
gown: Any
units: cm
body:
  girths:
${levels.join('\n')}
  bust-points-apart: 17
bodice:
  draft:
    panels: [${GORES.map((name) => `{name: ${name}}`).join(', ')}]
    side-seam: side-front/side
    reduce: {${reduce}}
    upper-edge: {${Object.entries(UPPER)
      .map(([at, up]) => `${at}: ${up}`)
      .join(', ')}}
  closing: ${closing}
  layers: [{name: strength, cloth: coutil}]
  drop-below-waist: {centre-front: 4, front/side-front: 3}
gores: [${GORES.map((name) => `{name: ${name}}`).join(', ')}]
sweep: 400
lengths: {hem-width-at: 100, at: {centre-front: 100, centre-back: 102}}
allowances: {seam: 1.5, waist: 1.5, hem: 3}
layers: [{name: shell, cloth: coutil, hem: turned}]
cloths: {coutil: {width: 140, selvedge: 1}}
`;
}

/** A side of a panel from the upper edge down, and how far down a height above the waist lies on it. */
interface Side {
  readonly points: readonly Point[];
  readonly length: number;
}

const known = new Map<PatternPiece, Map<string, Side>>();

function sideOf(piece: PatternPiece, edge: string): Side {
  const sides = known.get(piece) ?? new Map<string, Side>();
  known.set(piece, sides);
  const side = sides.get(edge) ?? walkedDown(piece, edge);
  sides.set(edge, side);
  return side;
}

function walkedDown(piece: PatternPiece, edge: string): Side {
  const points = upright(piece, polygonOf(piece.sew.get(edge)!, 1e-5));
  const down = points[0]!.y < points.at(-1)!.y ? points : [...points].reverse();
  return { points: down, length: lengthOf(down) };
}

/** A piece may lie head down on the sheets. */
function upright(piece: PatternPiece, points: readonly Point[]): Point[] {
  const heightOf = (edge: string): number => polygonOf(piece.sew.get(edge)!, 0.01)[0]!.y;
  const isTurned =
    heightOf(piece.sew.has('upper-edge') ? 'upper-edge' : 'waist') >
    heightOf(piece.sew.has('upper-edge') ? 'waist' : 'hem');
  return points.map(({ x, y }) => (isTurned ? { x: -x, y: -y } : { x, y }));
}

function lengthOf(points: readonly Point[]): number {
  return points
    .slice(1)
    .reduce((sum, { x, y }, i) => sum + Math.hypot(x - points[i]!.x, y - points[i]!.y), 0);
}

function placeOn({ points }: Side, down: number): { point: Point; angle: number } {
  let left = down;
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1]!, points[i]!];
    const step = Math.hypot(b.x - a.x, b.y - a.y);
    if (left <= step || i === points.length - 1) {
      const t = left / step;
      return {
        point: { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t },
        angle: Math.atan2(b.x - a.x, b.y - a.y),
      };
    }
    left -= step;
  }
  throw new Error('a side without length');
}

/** Left and right as they lie. */
function sidesOf(piece: PatternPiece): [string, string] {
  const names = [...piece.sew.keys()].filter((name) => name !== 'upper-edge' && name !== 'waist');
  const middle = (name: string): number => {
    const { points } = sideOf(piece, name);
    return points[Math.floor(points.length / 2)]!.x;
  };
  return names.sort((a, b) => middle(a) - middle(b)) as [string, string];
}

/** Width of a panel at a height above the waist: the line that meets both its sides squarely. Sides lie upper edge to waist seam. */
function widthOf(piece: PatternPiece, above: number, tops: Readonly<Record<string, number>>): number {
  const [left, right] = sidesOf(piece);
  const on = (name: string) => placeOn(sideOf(piece, name), tops[name]! - above);
  return squareAcross(on(left), on(right));
}

async function measured(body: Body) {
  const { svg, report } = mustDraft(await draftedPattern(specOf(body)), specOf(body));
  const { pieces } = readPattern(svg);
  const panels = pieces.filter(({ part }) => part === 'bodice');
  const gores = pieces.filter(({ part }) => part === undefined);
  // The seam lies from its lower edge, which is known, up: so high is its upper end.
  const low: Readonly<Record<string, number>> = { 'centre-front': -40, 'front/side-front': -30 };
  const tops = Object.fromEntries(
    panels.flatMap((piece) =>
      sidesOf(piece).map((name) => [name, sideOf(piece, name).length + (low[name] ?? 0)]),
    ),
  );
  return { panels, gores, tops, report };
}

/** What is cut once stands for both halves of her, what is left or right for one. */
const halvesOf = ({ text }: PatternPiece): number => (/cut 1 pair/.test(text) ? 2 : 1);

const BODIES: Readonly<Record<string, Body>> = {
  'a small back and a full bust': {
    girths: [
      ['bust', 16.5, 104, 62],
      ['underbust', 8.5, 76, 41],
      ['waist', 0, 68, 37],
      ['high-hip', -10, 88, 45],
    ],
    reduce: 'waist: 3',
  },
  'a waist above the hip': {
    girths: [
      ['bust', 15, 104],
      ['underbust', 8, 102],
      ['waist', 0, 108],
      ['high-hip', -10, 104],
    ],
  },
  'a child without suppression': {
    girths: [
      ['bust', 14, 66],
      ['underbust', 7, 64],
      ['waist', 0, 63],
      ['high-hip', -8, 67],
    ],
  },
};

describe.each(Object.entries(BODIES))('%s', (_name, body) => {
  it('has her girths at every level, seams of one length, and its edge on the tops of the gores', async () => {
    const { panels, gores, tops } = await measured(body);
    const taken = { waist: body.reduce === undefined ? 0 : 30 } as Readonly<Record<string, number>>;
    for (const [at, above, girth] of body.girths) {
      // Below the waist the level lies under the edge for most of the way.
      if (above < 0) continue;
      const round = panels.reduce(
        (sum, piece) => sum + halvesOf(piece) * widthOf(piece, above * 10, tops),
        0,
      );
      expect(Math.abs(round - (girth * 10 - (taken[at] ?? 0)))).toBeLessThan(0.1);
    }
    for (let i = 1; i < panels.length; i++) {
      const seam = `${panels[i - 1]!.gore}/${panels[i]!.gore}`;
      const [a, b] = [panels[i - 1]!, panels[i]!].map((piece) => sideOf(piece, seam).length);
      expect(Math.abs(a! - b!)).toBeLessThan(0.1);
    }
    for (const panel of panels) {
      const gore = gores.find((own) => own.gore === panel.gore)!;
      const [edge, top] = [panel, gore].map((piece) => sideOf(piece, 'waist').length);
      expect(Math.abs(edge! - top!)).toBeLessThan(0.01);
    }
  });
});

it('laced at one side only: that half is narrower by the gap, and each gore meets the panel of its own side', async () => {
  const { panels, gores } = await measured({
    girths: [
      ['bust', 16.5, 92],
      ['underbust', 8.5, 78],
      ['waist', 0, 70],
      ['high-hip', -10, 90],
    ],
    closing: '{kind: lacing, at: side-front/side, side: left, gap: 4, eyelets: 2.5, from-edge: 1.5}',
  });
  const edges = (pieces: readonly PatternPiece[]) =>
    new Map(
      pieces.map((piece) => [
        `${piece.gore} ${/\b(left|right)\b/.exec(piece.text)?.[1]}`,
        sideOf(piece, 'waist').length,
      ]),
    );
  const [ofPanels, ofGores] = [edges(panels), edges(gores)];
  expect([...ofGores.keys()].sort()).toEqual([...ofPanels.keys()].sort());
  for (const [name, edge] of ofPanels) expect(Math.abs(edge - ofGores.get(name)!)).toBeLessThan(0.01);
  const round = (side: string): number =>
    [...ofPanels].reduce((sum, [name, edge]) => sum + (name.endsWith(side) ? edge : 0), 0);
  // A gap of 40 at one seam; her dropped edge crosses the levels at a slant.
  expect(Math.abs(round('right') - round('left') - 40)).toBeLessThan(2);
});
