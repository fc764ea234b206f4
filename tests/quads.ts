import type { CutPiece } from '../src/draft/piece.ts';
import type { Line, Point } from '../src/geometry/curve.ts';

/** Pieces of four straight edges, made by hand: what comes off and what is missing is told by subtraction. mm. */

export const EDGES = ['waist', 'side/back', 'hem', 'front/side'] as const;
type Corners = readonly [tl: Point, tr: Point, br: Point, bl: Point];
type Four = readonly [waist: number, back: number, hem: number, front: number];

export const at = (x: number, y: number): Point => ({ x, y });
export const line = (from: Point, to: Point): Line => ({ kind: 'line', from, to });

const ring = (corners: readonly Point[], names: readonly string[]) =>
  corners.map((from, i) => ({ name: names[i]!, curves: [line(from, corners[(i + 1) % 4]!)] }));

/** Where two lines meet that lie beyond two edges by their allowances. */
function beyond([a, b, c]: readonly Point[], first: number, second: number): Point {
  const out = (from: Point, to: Point) => {
    const size = Math.hypot(to.x - from.x, to.y - from.y);
    return at((to.y - from.y) / size, -(to.x - from.x) / size);
  };
  const [u, v] = [out(a!, b!), out(b!, c!)];
  const [p, q] = [u.x * b!.x + u.y * b!.y + first, v.x * b!.x + v.y * b!.y + second];
  const det = u.x * v.y - u.y * v.x;
  return at((p * v.y - q * u.y) / det, (u.x * q - v.x * p) / det);
}

/** A piece by its seam line's corners, from the top left clockwise, and its allowances. */
export function quad(
  corners: Corners,
  [waist, back, hem, front]: Four = [15, 15, 15, 15],
  own: { piece?: object; names?: readonly string[] } & Record<string, unknown> = {},
): CutPiece {
  const { piece = {}, names = EDGES, ...rest } = own;
  const widths = [waist, back, hem, front];
  const cut = corners.map((corner, i) =>
    beyond(
      [corners[(i + 3) % 4]!, corner, corners[(i + 1) % 4]!],
      names[(i + 3) % 4] === 'fold' ? 0 : widths[(i + 3) % 4]!,
      names[i] === 'fold' ? 0 : widths[i]!,
    ),
  );
  return {
    gore: 'side',
    layers: ['shell'],
    cutEdges: ring(cut, names),
    notches: [],
    marks: [],
    roughCut: 0,
    labelAt: at(0, 0),
    allowances: Object.fromEntries(names.map((name, i) => [name, widths[i]!])),
    ...rest,
    piece: {
      gore: 'side',
      layers: ['shell'],
      cut: 'single',
      edges: ring(corners, names),
      frontEdge: names[3],
      backEdge: names[1],
      grain: line(at(0, 0), at(0, 100)),
      ...piece,
    },
  } as unknown as CutPiece;
}

/** An upright rectangle of which the seam line's top left corner is given. */
export const upright = (
  width: number,
  height: number,
  allowances?: Four,
  own?: Parameters<typeof quad>[2],
  [x, y]: readonly [number, number] = [0, 0],
) => quad([at(x, y), at(x + width, y), at(x + width, y + height), at(x, y + height)], allowances, own);
