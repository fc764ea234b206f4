import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { error, warning } from '../diagnostics/finding.ts';
import { quoted } from '../diagnostics/safe-text.ts';
import type { Units } from '../diagnostics/units.ts';
import { lengthInUnits } from '../diagnostics/value-text.ts';
import type { CrossedOutline } from './crossed-outlines.ts';
import type { FoldedEdge } from './folded-edges.ts';
import type { WideAllowance } from './wide-allowances.ts';

export function tooDeepForCurve(folded: FoldedEdge, units: Units): Diagnostic {
  const tooDeep = folded.edge === 'hem' ? hemTooDeep : allowanceTooWide;
  return tooDeep(folded.place(), folded, lengthInUnits(folded.width, units));
}

const bendsTooTightly = ({ edge, gore, layer, facing }: FoldedEdge, width: string) => ({
  message: `The ${edge} of ${facing ? 'facing' : 'gore'} ${quoted(gore)} (layer ${quoted(layer)}) bends tighter than its allowance of ${width} is wide.`,
  why: 'The cut line would run back in a loop there; the loop is cut off, so the allowance is narrower at that bend.',
  hint: `Take a narrower allowance at this ${edge}${facing ? '' : ', or face it'}.`,
});

const hemTooDeep = warning('hem-too-deep', bendsTooTightly);
const allowanceTooWide = warning('allowance-too-wide', bendsTooTightly);

/** Pressed open, it would not lie on its own gore. */
export function allowanceWiderThanGore(
  { place, gore, layer, edge, width, top }: WideAllowance,
  units: Units,
): Diagnostic {
  return widerThanGore(
    place(),
    { gore, layer, edge },
    lengthInUnits(width, units),
    lengthInUnits(top, units),
  );
}

const widerThanGore = error(
  'allowance-wider-than-gore',
  ({ gore, layer, edge }: Pick<WideAllowance, 'gore' | 'layer' | 'edge'>, width: string, top: string) => ({
    message: `The allowance of ${width} at ${quoted(edge)} is wider than gore ${quoted(gore)} (layer ${quoted(layer)}), which is ${top} wide at its upper cut line.`,
    why: 'Pressed open, it would stand out beyond both sides of the gore.',
    hint: 'Take a narrower allowance there or at the waist, or a wider top.',
  }),
);

/** No shears follow a line that crosses itself, and cloth that is sewn must not be cut off. */
export function outlineCrosses(crossed: CrossedOutline): Diagnostic {
  return crosses(crossed.place(), crossed);
}

const DOES = {
  itself: 'crosses itself',
  'its-seam': 'crosses its seam line',
  open: 'does not close',
} as const satisfies Record<CrossedOutline['crosses'], string>;

const crosses = error(
  'outline-crosses-itself',
  ({ gore, facing, layers, line, crosses: what, edge }: CrossedOutline) => ({
    message: `The ${line} line of ${facing ? 'facing ' : ''}${quoted(gore)} (${layers.length === 1 ? 'layer' : 'layers'} ${layers.map((layer) => quoted(layer)).join(', ')}) ${DOES[what]} near its ${quoted(edge)}.`,
    why: 'Such a piece cannot be cut.',
    hint:
      line === 'cut'
        ? `Take a narrower allowance there or beside it, ${facing ? 'a facing less deep, ' : what === 'open' ? 'a pleat less deep, ' : ''}or check the widths, lengths and drops of this piece.`
        : 'Check the widths, lengths and drops of this piece; one of them does not fit the others.',
  }),
);
