import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { tapeText } from '../diagnostics/tape-text.ts';
import * as problems from '../diagnostics/wrap-problems.ts';
import { lengthOfRun } from '../geometry/length.ts';
import type { Gown } from '../gown/gown.ts';
import { hasGore } from '../gown/layer.ts';
import type { LayerDraft } from './draft-layers.ts';
import { bendOf, isFrontLeft } from './piece-sides.ts';
import { type Beyond, beyondWrap } from './wrapped.ts';

/** A line that bends by less than this is straight to the scissors, mm. */
const STRAIGHT = 0.5;

/** An edge keeps so far off a dart, mm (common practice: a finger). */
const OFF_DART = 15;

/** A wrap that has no straight line to lie over, or no cloth to lie on. */
export function wrapFindings({ wrap, units }: Gown, layers: readonly LayerDraft[]): Diagnostic[] {
  if (wrap === undefined) return [];
  const say = (length: number): string => tapeText(length, units);
  for (const { layer, draft } of layers) {
    for (const piece of draft.pieces.filter(({ gore }) => hasGore(layer, { name: gore }))) {
      for (const beyond of beyondWrap(piece, draft, draft.pieces)) {
        const bend = bendOf(piece, beyond.side);
        if (bend > STRAIGHT) return [problems.wrapOnCurve(wrap.place('at'), wrap.at, piece.gore, say(bend))];
        const narrow = tooNarrow(beyond);
        if (narrow !== undefined) {
          const key = narrow.edge === 0 ? 'overlap' : 'overlap-at-hem';
          return [
            problems.wrapTooWide(wrap.place(key), say(2 * narrow.wanted), beyond.over.gore, say(narrow.has)),
          ];
        }
        const gore = draft.gown.gores.find(({ name }) => name === beyond.over.gore)!;
        const near = dartsNear(beyond, gore.fullness?.darts ?? []);
        if (near !== undefined) return [problems.wrapOnDart(wrap.place('overlap'), near, gore.name)];
      }
    }
  }
  return [];
}

/** Half of the overlap lies on the one gore beside the line. */
function tooNarrow({ over, cut, atHem }: Beyond) {
  for (const [edge, wanted] of [
    [0, cut],
    [2, atHem],
  ] as const) {
    const has = lengthOfRun(over.edges[edge]!.curves);
    if (wanted >= has) return { edge, wanted, has };
  }
  return undefined;
}

function dartsNear(
  { over, overSide, sewn }: Beyond,
  darts: readonly { readonly name: string; readonly at: number; readonly takesIn: number }[],
): string | undefined {
  const taken = darts.reduce((sum, { takesIn }) => sum + takesIn, 0);
  const whole = lengthOfRun(over.edges[0]!.curves) - taken;
  const isFront = (overSide === 'left') === isFrontLeft(over);
  return darts.find(
    ({ at, takesIn }) => Math.abs((isFront ? at : 1 - at) * whole - sewn) < takesIn / 2 + OFF_DART,
  )?.name;
}
