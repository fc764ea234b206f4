import type { GownDraft } from '../draft/draft-gown.ts';
import type { EdgeProfile } from '../draft/edge-profiles.ts';
import type { GoreFrame } from '../draft/gore-frame.ts';
import { cutOfHalves, mirroredPiece, sided } from '../draft/halves-apart.ts';
import type { Piece } from '../draft/piece.ts';
import { across, runAcross } from '../draft/unfolded.ts';
import type { Curve, Point } from '../geometry/curve.ts';
import { twoHalves } from '../gown/two-halves.ts';

/**
 * A mirrored gown whose sides were altered differently, as a ring: the left half from the centre front to the centre
 * back, then the right half back again. Pieces that are alike on both sides stay a pair; the others are left and right,
 * and halves on a fold that differ are one whole piece.
 */
export function bothSides(left: GownDraft, right: GownDraft): GownDraft {
  const rightPieces = [...right.pieces].reverse().map((piece) => mirroredPiece(piece));
  const pieces = [...left.pieces.map((piece) => sided(piece, 'left')), ...rightPieces];
  return {
    gown: twoHalves(left.gown, right.gown),
    shape: left.shape,
    pieces,
    frames: [...left.frames, ...[...right.frames].reverse().map(mirroredFrame)],
    waist: ringProfile(left.waist, right.waist),
    hem: ringProfile(left.hem, right.hem),
    lengths: [...left.lengths, ...[...right.lengths].reverse().slice(1)],
    cutAs: cutAs(left, right, pieces),
  };
}

/** The ways of the right half counted on from the centre back. */
function ringProfile(left: EdgeProfile, right: EdgeProfile): EdgeProfile {
  const half = left.ways[left.ways.length - 1]!;
  const whole = half + right.ways[right.ways.length - 1]!;
  const back = (way: number): number => whole - way;
  return {
    joins: [...left.joins, ...right.joins.map(back)].sort((a, b) => a - b),
    ways: [...left.ways, ...[...right.ways].reverse().slice(1).map(back)],
    valueAt: (way) => (way <= half ? left.valueAt(way) : right.valueAt(back(way))),
    slopeAt: (way) => (way <= half ? left.slopeAt(way) : -right.slopeAt(back(way))),
  };
}

function mirroredFrame(frame: GoreFrame): GoreFrame {
  const mirror = ({ x, y }: Point): Point => ({ x: -x, y });
  const curves = (run: readonly Curve[]) => run.map((curve) => across(curve, 0));
  return {
    widthAt: frame.widthAt,
    pointAt: (s, f) => mirror(frame.pointAt(s, 1 - f)),
    downAt: (s, f) => -frame.downAt(s, 1 - f),
    bySlant: (s, f) => mirror(frame.bySlant(s, 1 - f)),
    levelAt: (s) => runAcross(frame.levelAt(s), 0),
    sideFrom: (side, from, to) => curves(frame.sideFrom(side === 'front' ? 'back' : 'front', from, to)),
  };
}

function cutAs(left: GownDraft, right: GownDraft, pieces: readonly Piece[]): NonNullable<GownDraft['cutAs']> {
  return left.pieces.flatMap((piece, gore) => {
    const other = pieces.length - 1 - gore;
    return cutOfHalves(piece, right.pieces[gore]!).map((cut) => ({
      piece: cut,
      gore: cut.side === 'right' ? other : gore,
    }));
  });
}
