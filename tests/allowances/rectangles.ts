import type { Piece } from '../../src/draft/piece.ts';
import { line } from '../line.ts';

/** Two gores that are rectangles, 300 wide and 1000 long, and what is asked of their layers and drafts: by hand. mm. */

export const rectangle = (
  gore: string,
  [left, right]: readonly string[],
  own: Partial<Piece> = {},
  width = 300,
): Piece => ({
  gore,
  layers: ['shell'],
  edges: [
    { name: 'waist', curves: [line(0, 0, width, 0)] },
    { name: right!, curves: [line(width, 0, width, 1000)] },
    { name: 'hem', curves: [line(width, 1000, 0, 1000)] },
    { name: left!, curves: [line(0, 1000, 0, 0)] },
  ],
  frontEdge: left!,
  backEdge: right!,
  grain: line(width / 2, 200, width / 2, 800),
  cut: 'pair',
  ...own,
});
export const FRONT = rectangle('front', ['centre-front', 'front/back']);
export const BACK = rectangle('back', ['front/back', 'centre-back']);
const place = (...path: unknown[]) => path;
export const allowance = (width: number) => ({ width, place: {} });
export const layerOf = (name: string, own: object = {}) => ({
  name,
  gores: ['front', 'back'],
  hem: 'turned',
  seams: 'pressed-open',
  shape: { shorter: 0 },
  allowances: { waist: allowance(12), hem: allowance(20), seam: allowance(15), named: {} },
  place,
  ...own,
});
export const gores = ['front', 'back'].map((name) => ({ name, roughCut: 0, place: () => name }));
export const stations = ['centre-front', 'front/back', 'centre-back'].map((name) => ({ name, seams: 1 }));
export const draftOf = (own: object = {}, shape: object = { shorter: 0 }) => ({
  gown: { round: 'mirrored', gores, stations },
  pieces: [FRONT, BACK],
  lengths: [1000, 1000, 1000],
  shape,
  ...own,
});
