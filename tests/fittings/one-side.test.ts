import { describe, expect, it } from 'vitest';
import type { CutPiece } from '../../src/draft/piece.ts';
import { gownToLay } from '../../src/lay/plan/lay-to-plan.ts';
import { planLays } from '../../src/lay/plan/plan-lays.ts';
import type { DraftedGown } from '../../src/pipeline.ts';
import { polygonOf } from '../compare/cloth-polygons.ts';
import type { Tree } from '../outside/plain-gown.ts';
import { fitted } from './fitted.ts';
import { cornerAngle, edgeOf, lengthOf, sampled } from './sampled.ts';

const on = (entry: Tree): Tree => ({ date: '2027-03-01', ...entry });
const shells = (gown: DraftedGown): CutPiece[] =>
  gown.cut.pieces.filter((piece) => piece.layers.includes('shell'));
const named = (pieces: readonly CutPiece[]): string[] =>
  pieces.map(({ gore, piece }) => [gore, piece.side, piece.middle, piece.cut].filter(Boolean).join(' '));

const LEFT_SEAM = on({ side: 'left', seams: [{ seam: 'side/back', from: 100, to: 400, 'take-in': 5 }] });
const RIGHT_FRONT = on({
  side: 'right',
  levelled: [
    { from: 'centre-front', along: 0, up: 6 },
    { from: 'centre-front', along: 75, up: 9 },
    { from: 'centre-front', along: 150, up: 4 },
  ],
});

describe('a fitting on one side of a mirrored gown', () => {
  it('makes left and right pieces of the gores that it touches, and leaves the others a pair', () => {
    expect(named(shells(fitted([LEFT_SEAM])))).toEqual([
      'front on-fold',
      'side-front pair',
      'side left single',
      'side right single',
      'back left single',
      'back right single',
    ]);
  });

  it('the side that was not pinned keeps its lines, drawn the other way round', () => {
    const plain = shells(fitted([])).find(({ gore }) => gore === 'side')!;
    const right = shells(fitted([LEFT_SEAM])).find(
      ({ gore, piece }) => gore === 'side' && piece.side === 'right',
    )!;
    const outline = (piece: CutPiece, mirror: 1 | -1) =>
      polygonOf(piece.cutEdges.flatMap((edge) => edge.curves)).map(
        ({ x, y }) => `${Math.round((mirror * x) / 100)} ${Math.round(y / 100)}`,
      );
    const own = new Set(outline(right, 1));
    const mirrored = outline(plain, -1);
    expect(mirrored.filter((point) => own.has(point)).length / mirrored.length).toBeGreaterThan(0.95);
    expect([right.piece.frontEdge, right.piece.backEdge]).toEqual(['side/back', 'side-front/side']);
  });

  it('the front that would lie on the fold is one whole piece where its halves differ', () => {
    const pieces = shells(fitted([RIGHT_FRONT]));
    expect(named(pieces)[0]).toBe('front front single');
    const { piece, notches } = pieces[0]!;
    expect([piece.frontEdge, piece.backEdge]).toEqual(['front/side-front', 'front/side-front']);
    expect(piece.edges.map(({ name }) => name)).toEqual([
      'waist',
      'front/side-front',
      'hem',
      'front/side-front',
    ]);
    // Sewn smooth across the centre, where two halves met.
    const hem = sampled(piece.edges[2]!.curves, 200);
    const bends = hem.slice(2).map((point, i) => {
      const [a, b] = [hem[i]!, hem[i + 1]!];
      return Math.abs(
        Math.atan2(
          (b.x - a.x) * (point.y - b.y) - (b.y - a.y) * (point.x - b.x),
          (b.x - a.x) * (point.x - b.x) + (b.y - a.y) * (point.y - b.y),
        ),
      );
    });
    expect(Math.max(...bends)).toBeLessThan(0.01);
    // Both its seams go to the side-fronts, so both are marked double.
    expect(notches.every(({ ticks }) => ticks.length === 2)).toBe(true);
    expect(notches.filter(({ edge }) => edge === 'front/side-front').length % 2).toBe(0);
  });

  it('left and right seams agree, each with its own partner', () => {
    const { report } = fitted([LEFT_SEAM, RIGHT_FRONT]);
    expect(report.seams.map(({ name, side }) => `${name} ${side ?? ''}`.trim())).toEqual([
      'front/side-front left',
      'side-front/side left',
      'side/back left',
      'centre-back',
      'side/back right',
      'side-front/side right',
      'front/side-front right',
    ]);
    for (const seam of report.seams) {
      expect(seam.difference).toBeLessThan(0.01);
      expect(seam.hemAngle).toBeCloseTo(180, 1);
      expect(seam.waistAngle).toBeCloseTo(180, 1);
    }
    expect(report.gores.map(({ name, side }) => `${name} ${side ?? ''}`.trim())).toContain('side right');
  });

  it('is measured on the cut pieces: every seam, by brute force', () => {
    const pieces = shells(fitted([LEFT_SEAM, RIGHT_FRONT]));
    const find = (gore: string, side: string | undefined): CutPiece =>
      pieces.find((piece) => piece.gore === gore && piece.piece.side === side) ??
      pieces.find((piece) => piece.gore === gore && piece.piece.side === undefined)!;
    for (const side of ['left', 'right']) {
      const [one, two] = [find('side', side).piece, find('back', side).piece];
      const lengths = [one, two].map((piece) => lengthOf(sampled(edgeOf(piece, 'side/back'))));
      expect(lengths[0]! - lengths[1]!).toBeCloseTo(0, 2);
      const corners = [one, two].map((piece) => {
        const [, after, hem, before] = piece.edges;
        return piece.backEdge === 'side/back'
          ? cornerAngle(after!.curves, hem!.curves)
          : cornerAngle(hem!.curves, before!.curves);
      });
      expect(corners[0]! + corners[1]!, `hem at side/back ${side}`).toBeCloseTo(180, 0.7);
    }
  });

  it('lies on the cloth piece by piece, nothing mirrored that is single', () => {
    const { lays } = planLays(gownToLay(fitted([LEFT_SEAM])), { say: String });
    const placed = lays.flatMap(({ pieces }) => pieces).filter(({ layer }) => layer === 'shell');
    const count = (gore: string) => placed.filter((piece) => piece.gore === gore);
    expect(
      count('side-front')
        .map(({ mirrored }) => mirrored)
        .sort(),
    ).toEqual([false, true]);
    expect(count('side').map(({ mirrored }) => mirrored)).toEqual([false, false]);
    expect(new Set(count('side').map(({ source }) => source.piece.side))).toEqual(new Set(['left', 'right']));
    expect(count('back')).toHaveLength(2);
  });

  it('a pair and a piece of its own side for each layer, whatever the layer is shortened by', () => {
    const { cut } = fitted([LEFT_SEAM]);
    for (const layer of ['lining', 'shell']) {
      const own = cut.pieces.filter((piece) => piece.layers.includes(layer));
      const count = own.reduce((sum, { piece }) => sum + (piece.cut === 'pair' ? 2 : 1), 0);
      // One front on the fold and two of each other gore.
      expect(count).toBe(7);
    }
  });

  it('both sides pinned alike in two entries is a pair again', () => {
    const each = ['left', 'right'].map((side) =>
      on({ side, seams: [{ seam: 'side/back', from: 100, to: 400, 'take-in': 5 }] }),
    );
    expect(named(shells(fitted(each)))).toEqual([
      'front on-fold',
      'side-front pair',
      'side pair',
      'back pair',
    ]);
    const both = shells(fitted([on({ seams: [{ seam: 'side/back', from: 100, to: 400, 'take-in': 5 }] })]));
    expect(named(both)).toEqual(['front on-fold', 'side-front pair', 'side pair', 'back pair']);
  });
});
