import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { CrossedOutline } from './crossed-outlines.ts';
import type { FoldedEdge } from './folded-edges.ts';
import type { WideAllowance } from './wide-allowances.ts';

export function tooDeepForCurve({ gore, layer, edge, width, place }: FoldedEdge): Diagnostic {
  return {
    code: edge === 'hem' ? 'hem-too-deep' : 'allowance-too-wide',
    level: 'warning',
    span: place(),
    message: `the ${edge} of gore ${gore} (layer ${layer}) bends tighter than its allowance of ${width.toFixed(1)} mm is wide`,
    why: 'The cut line would run back in a loop there; the loop is cut off, so the allowance is narrower at that bend.',
    hint: `Take a narrower allowance at this ${edge}, or face it.`,
  };
}

/** Pressed open, it would not lie on its own gore. */
export function allowanceWiderThanGore({ gore, layer, edge, width, top, place }: WideAllowance): Diagnostic {
  return {
    code: 'allowance-wider-than-gore',
    level: 'error',
    span: place(),
    message: `the allowance of ${width.toFixed(1)} mm at ${edge} is wider than gore ${gore} (layer ${layer}), which is ${top.toFixed(1)} mm wide at its upper cut line`,
    why: 'Pressed open, it would stand out beyond both sides of the gore.',
    hint: 'Take a narrower allowance there or at the waist, or a wider top.',
  };
}

/** No shears follow a line that crosses itself, and cloth that is sewn must not be cut off. */
export function outlineCrosses({ gore, layers, line, crosses, edge, place }: CrossedOutline): Diagnostic {
  return {
    code: 'outline-crosses-itself',
    level: 'error',
    span: place(),
    message: `the ${line} of ${gore} (${layers.length === 1 ? 'layer' : 'layers'} ${layers.join(', ')}) crosses ${crosses} near its ${edge}`,
    why: 'Such a piece cannot be cut.',
    hint:
      line === 'cut line'
        ? `Take a narrower allowance at its ${edge} or beside it, or check the widths, lengths and drops of this piece.`
        : 'Check the widths, lengths and drops of this piece; one of them does not fit the others.',
  };
}
