import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import type { CutPiece } from '../../src/draft/piece.ts';
import { draft } from '../../src/pipeline.ts';
import { workroom } from '../../src/workroom/workroom.ts';
import { walked } from './measured.ts';

/** Facings of a bodice's upper edge, measured on their outlines beside the panels'. */

const DEPTH = 40;
const TEXT = readFileSync(new URL('../../templates/boned-bodice.yaml', import.meta.url), 'utf8').replace(
  'upper-finish: bound',
  'upper-finish: faced\n    facing: {depth: 4}\n    # ',
);
const { gown, diagnostics } = draft({ name: 'gown.yaml', text: TEXT });
const piecesOf = (part: string): CutPiece[] => gown!.cut.pieces.filter(({ piece }) => piece.part === part);
const edgeOf = ({ piece }: CutPiece, name: string) =>
  walked(piece.edges.find((edge) => edge.name === name)!.curves);

it('each is as long as its panel at the edge that it faces, and lies within its depth of it', () => {
  expect(diagnostics.filter(({ level }) => level === 'error')).toEqual([]);
  const panels = piecesOf('bodice');
  const facings = piecesOf('facing');
  expect(facings.map(({ gore }) => gore)).toEqual(panels.map(({ gore }) => gore));
  for (const [i, facing] of facings.entries()) {
    const upper = edgeOf(facing, 'upper-edge');
    expect(upper.length).toBeCloseTo(edgeOf(panels[i]!, 'upper-edge').length, 3);
    const inner = edgeOf(facing, 'inner-edge').points;
    const away = inner.map(({ x, y }) =>
      Math.min(...upper.points.map((on) => Math.hypot(on.x - x, on.y - y))),
    );
    // In the middle of its length; towards a seam it may give way to meet its neighbour's.
    const middle = away.slice(Math.floor(away.length * 0.3), Math.ceil(away.length * 0.7));
    for (const distance of middle) expect(Math.abs(distance - DEPTH)).toBeLessThan(0.1);
  }
});

it('they are joined round: at every seam both are as high, and their inner edges meet straight', () => {
  const facings = piecesOf('facing');
  for (let i = 1; i < facings.length; i++) {
    const [before, after] = [facings[i - 1]!, facings[i]!];
    const seam = before.piece.backEdge;
    expect(seam).toBe(after.piece.frontEdge);
    expect(edgeOf(before, seam).length).toBeCloseTo(edgeOf(after, seam).length, 2);
    const [a, b] = [cornerOf(before, 'back'), cornerOf(after, 'front')];
    expect(((a + b) * 180) / Math.PI).toBeCloseTo(180, 0);
  }
});

it('the edge that turns inside has 2 mm less to turn (common practice); all that follows counts them in', () => {
  const [panel] = piecesOf('bodice');
  for (const { allowances, notches, piece } of piecesOf('facing')) {
    expect(allowances['upper-edge']).toBe(panel!.allowances['upper-edge']! - 2);
    expect(allowances['inner-edge']).toBe(6);
    expect(piece.grain.from.x).toBe(piece.grain.to.x);
    expect(notches.length).toBeGreaterThan(0);
  }
  const cloth = gown!.layers.find(({ name }) => name === 'bodice-facing')?.cloth.name;
  expect(cloth).toBe('shell');
  const { facts } = workroom(gown!, []);
  const order = facts.order.map(({ id }) => id);
  expect(order.indexOf('upper-facing')).toBeGreaterThan(order.indexOf('cut:shell'));
  expect(order.indexOf('upper-facing')).toBeLessThan(order.indexOf('upper-edge'));
});

/** Between the seam and the inner edge, inside the piece, by chords. */
function cornerOf(facing: CutPiece, side: 'front' | 'back'): number {
  const inner = edgeOf(facing, 'inner-edge').points;
  const seam = edgeOf(facing, side === 'back' ? facing.piece.backEdge : facing.piece.frontEdge).points;
  // Clockwise as drawn: down the back, along the inner edge to the front, up the front.
  const [corner, on, up] =
    side === 'back' ? [inner[0]!, inner[1]!, seam.at(-2)!] : [inner.at(-1)!, inner.at(-2)!, seam[1]!];
  const [a, b] = [on, up].map((end) => Math.atan2(end.y - corner.y, end.x - corner.x));
  const turn = Math.abs(a! - b!);
  return turn > Math.PI ? 2 * Math.PI - turn : turn;
}
