import { describe, expect, it } from 'vitest';
import type { CutPiece } from '../../src/draft/piece.ts';
import type { Line, Point } from '../../src/geometry/curve.ts';
import { endOf, pointAt, startOf, tangentAt } from '../../src/geometry/evaluate.ts';
import { draft } from '../../src/pipeline.ts';

/** A straight gore under a bodice edge that falls across it, so that the waist meets the seam far from square; invented. */
function cutPiece(layer: string): CutPiece {
  const text = `
format: 1
gown: Corners
units: mm
bodice:
  waist-seam: 800
  panels: {front: 200, back: 200}
  drop-below-waist: {centre-front: 90, front/back: 45}
gores: [{name: front, flare: 0deg}, {name: back, flare: 0deg}]
lengths: {at: {centre-front: 810, front/back: 855, centre-back: 900}}
allowances: {seam: 20, waist: 15, hem: 40}
layers: [${layer}]
cloths: {calico: {width: 1500, selvedge: 10}}
`;
  const { gown, diagnostics } = draft({ name: 'corners.yaml', text });
  if (gown === undefined) throw new Error(JSON.stringify(diagnostics.map(({ message }) => message)));
  return gown.cut.pieces[0]!;
}

/** The piece's back seam, from the waist down. */
function seamOf(cut: CutPiece): Line {
  const seam = cut.piece.edges[1]!.curves[0];
  if (seam?.kind !== 'line') throw new Error('the gore has straight seams');
  return seam;
}

/** Distance to the sewn waist edge, by dense sampling. */
function fromWaist(point: Point, cut: CutPiece): number {
  let least = Infinity;
  for (const curve of cut.piece.edges[0]!.curves) {
    for (let i = 0; i <= 4000; i++) {
      const at = pointAt(curve, i / 4000);
      least = Math.min(least, Math.hypot(at.x - point.x, at.y - point.y));
    }
  }
  return least;
}

/** Signed distance from a line, positive on its left: outside of a clockwise outline. */
function outside(point: Point, line: Line): number {
  const along = { x: line.to.x - line.from.x, y: line.to.y - line.from.y };
  const size = Math.hypot(along.x, along.y);
  return ((point.x - line.from.x) * along.y - (point.y - line.from.y) * along.x) / size;
}

function mirroredIn(point: Point, line: Line): Point {
  const along = { x: line.to.x - line.from.x, y: line.to.y - line.from.y };
  const size = Math.hypot(along.x, along.y);
  const out = outside(point, line);
  return { x: point.x - (2 * out * along.y) / size, y: point.y + (2 * out * along.x) / size };
}

/** Where the cut line turns from the waist into the back seam's allowance. */
function waistCorner(cut: CutPiece): Point {
  return startOf(cut.cutEdges[1]!.curves[0]!);
}

describe('the corner of a seam allowance at the waist', () => {
  it('pressed open, folds back onto the waist’s own cut line', () => {
    const cut = cutPiece('{name: shell, cloth: calico, hem: faced}');
    const corner = waistCorner(cut);
    expect(outside(corner, seamOf(cut))).toBeCloseTo(20, 6);
    // Folded back along the seam line it lies exactly as far above the waist as the waist was cut.
    expect(fromWaist(mirroredIn(corner, seamOf(cut)), cut)).toBeCloseTo(15, 2);
  });

  it('French, ends plain: the waist’s cut line runs straight on to the seam’s', () => {
    const cut = cutPiece('{name: shell, cloth: calico, hem: faced, seams: french}');
    const corner = waistCorner(cut);
    const waist = cut.piece.edges[0]!.curves.at(-1)!;
    const end = endOf(waist);
    const along = tangentAt(waist, 1);
    const runOn: Line = { kind: 'line', from: end, to: { x: end.x + along.x, y: end.y + along.y } };
    expect(outside(corner, seamOf(cut))).toBeCloseTo(20, 6);
    expect(outside(corner, runOn)).toBeCloseTo(15, 2);
    expect(fromWaist(mirroredIn(corner, seamOf(cut)), cut)).not.toBeCloseTo(15, 0);
  });
});

describe('the corner of a hem at a seam', () => {
  const hemLine = (cut: CutPiece): Line => cut.piece.edges[2]!.curves[0] as Line;

  it('turned up, lies on the side’s own cut line', () => {
    const cut = cutPiece('{name: shell, cloth: calico, hem: turned}');
    const seam = seamOf(cut);
    const bottom = endOf(cut.cutEdges[1]!.curves.at(-1)!);
    expect(outside(bottom, hemLine(cut))).toBeCloseTo(40, 3);
    expect(outside(mirroredIn(bottom, hemLine(cut)), seam)).toBeCloseTo(20, 2);
  });

  it('faced, is cut off straight from the end of one allowance to the other', () => {
    const cut = cutPiece('{name: shell, cloth: calico, hem: faced}');
    const seam = seamOf(cut);
    const [bevel] = cut.cutEdges[2]!.curves;
    expect(outside(startOf(bevel!), seam)).toBeCloseTo(20, 6);
    expect(outside(endOf(bevel!), hemLine(cut))).toBeCloseTo(40, 6);
    const corner = seam.to;
    expect(Math.hypot(startOf(bevel!).x - corner.x, startOf(bevel!).y - corner.y)).toBeCloseTo(20, 6);
    expect(Math.hypot(endOf(bevel!).x - corner.x, endOf(bevel!).y - corner.y)).toBeCloseTo(40, 6);
  });

  it('raw, the sides run straight on and the hem has no allowance', () => {
    const cut = cutPiece('{name: shell, cloth: calico, hem: raw}');
    const seam = seamOf(cut);
    const corner = endOf(cut.cutEdges[1]!.curves.at(-1)!);
    expect(outside(corner, seam)).toBeCloseTo(20, 6);
    expect(outside(corner, hemLine(cut))).toBeCloseTo(0, 6);
  });
});
