import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { FoldedEdge } from './folded-edges.ts';

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
