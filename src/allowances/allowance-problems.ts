import type { Diagnostic, Span } from '../diagnostics/diagnostic.ts';

export function tooDeepForCurve(
  span: Span,
  gore: string,
  layer: string,
  edge: string,
  width: number,
): Diagnostic {
  return {
    code: edge === 'hem' ? 'hem-too-deep' : 'allowance-too-wide',
    level: 'warning',
    span,
    message: `the ${edge} of gore ${gore} (layer ${layer}) bends tighter than its allowance of ${width.toFixed(1)} mm is wide`,
    why: 'The cut line would run back in a loop there; the loop is cut off, so the allowance is narrower at that bend.',
    hint: `Take a narrower allowance at this ${edge}, or face it.`,
  };
}
