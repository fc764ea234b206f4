import type { LayerDraft } from '../../draft/draft-layers.ts';
import type { Curve, Point } from '../../geometry/curve.ts';
import { derivativeAt } from '../../geometry/evaluate.ts';
import { lengthOfRun } from '../../geometry/length.ts';
import { hasGore } from '../../gown/layer.ts';
import { halves } from '../../gown/lines.ts';

/** How a gore's hem bends: outwards, as most do, and inwards, where a train begins. mm, radians. */
export interface HemTurn {
  readonly gore: string;
  readonly side?: 'left' | 'right';
  /** Of one gore, whole even on the fold. */
  readonly length: number;
  readonly outwards: number;
  readonly inwards: number;
}

/** Directions read along one curve of a hem. Fewer could step over where it bends back; more cost time. */
const READ = 64;

/** Every gore of a layer that it has, from the centre front round. */
export function hemTurns({ layer, draft }: LayerDraft): HemTurn[] {
  const own = draft.pieces.filter((piece) => hasGore(layer, { name: piece.gore }));
  return own.map((piece) => {
    const { curves } = piece.edges[2]!;
    const { outwards, inwards } = turnsOf(curves);
    const whole = piece.cut === 'on-fold' && halves(draft.gown) === 2 ? 2 : 1;
    return {
      gore: piece.gore,
      ...(piece.side === undefined ? {} : { side: piece.side }),
      length: whole * lengthOfRun(curves),
      outwards: whole * outwards,
      inwards: whole * inwards,
    };
  });
}

/** A hem runs from right to left with the cloth on its right: bending towards the cloth it bulges outwards. */
function turnsOf(curves: readonly Curve[]): { outwards: number; inwards: number } {
  const directions = curves.flatMap((curve) =>
    Array.from({ length: READ + 1 }, (_, i) => derivativeAt(curve, i / READ)),
  );
  let [outwards, inwards] = [0, 0];
  for (const [i, direction] of directions.entries()) {
    const turn = i === 0 ? 0 : angleBetween(directions[i - 1]!, direction);
    if (turn > 0) outwards += turn;
    else inwards -= turn;
  }
  return { outwards, inwards };
}

function angleBetween(a: Point, b: Point): number {
  return Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y);
}
