import type { CutPiece, Piece } from '../draft/piece.ts';
import type { PieceRemark } from '../draft/piece-remark.ts';
import { isFrontLeft } from '../draft/piece-sides.ts';
import type { Beyond } from '../draft/wrapped.ts';
import { lengthOfRun } from '../geometry/length.ts';
import type { Gown } from '../gown/gown.ts';
import type { TopFullness } from './top-fullness.ts';

/** What a wrap adds to the lines, the notches and the text of the pieces that lie at it. */

/** The line that both edges lie past: on it one side meets the other. */
export function wrapMarks({ wrap }: Pick<Gown, 'wrap'>, beyond: readonly Beyond[]): CutPiece['marks'] {
  return beyond.map(({ line }) => ({ name: wrap?.at ?? '', curves: [line] }));
}

export function wrapRemarks({ wrap }: Pick<Gown, 'wrap'>, beyond: readonly Beyond[]): PieceRemark[] {
  if (wrap === undefined) return [];
  const { at, over } = wrap;
  return beyond.map(({ sewn, atHem }) => ({ kind: 'wrap', at, over, atWaist: sewn, atHem }));
}

/** A notch in the waist at the line; where darts lift the waist, the line itself is mark enough. */
export function withWrapNotches(
  notches: ReadonlyMap<string, readonly number[]>,
  { edges }: Piece,
  beyond: readonly Beyond[],
  full: TopFullness | undefined,
): ReadonlyMap<string, readonly number[]> {
  if (beyond.length === 0 || full !== undefined) return notches;
  const lead = beyond.find(({ side }) => side === 'left')?.cut ?? 0;
  const whole = lengthOfRun(edges[0]!.curves);
  const places = beyond.map(({ side }) => (side === 'left' ? lead : lead + whole));
  return new Map([...notches, [edges[0]!.name, places]]);
}

/** The darts of a piece and of what it lies over, each where it comes to lie on the whole top. */
export function fullForWrap(
  full: TopFullness | undefined,
  piece: Piece,
  beyond: readonly Beyond[],
): TopFullness | undefined {
  if (beyond.every((own) => own.darts.length === 0) && full?.rule.by !== 'darts') return full;
  const top = lengthOfRun(piece.edges[0]!.curves);
  const { rule, cut, sewn } = full ?? { rule: { where: 'waist', by: 'darts' } as const, cut: top, sewn: top };
  const isFront = ({ side }: Beyond): boolean => (side === 'left') === isFrontLeft(piece);
  const lead = beyond.find(isFront)?.sewn ?? 0;
  const whole = beyond.reduce((sum, own) => sum + own.sewn, sewn);
  const others = beyond.flatMap((own) =>
    own.darts.map((dart) => ({
      ...dart,
      at: (isFront(own) ? lead - dart.fromLine : lead + sewn + dart.fromLine) / whole,
    })),
  );
  const darts = [
    ...(rule.darts ?? []).map((dart) => ({ ...dart, at: (lead + dart.at * sewn) / whole })),
    ...others,
  ];
  const all = beyond.reduce((sum, own) => sum + own.cut, cut);
  const ratio = all / whole;
  return { ratio, rule: { ...rule, ratio, darts }, cut: all, sewn: whole };
}
