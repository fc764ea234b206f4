import type { Diagnostic, Span } from '../diagnostics/diagnostic.ts';
import { warning } from '../diagnostics/finding.ts';
import { quoted } from '../diagnostics/safe-text.ts';

export function tooDeepForCurve(
  span: Span,
  gore: string,
  layer: string,
  edge: string,
  width: string,
): Diagnostic {
  return (edge === 'hem' ? hemTooDeep : allowanceTooWide)(span, edge, gore, layer, width);
}

const bendsTooTightly = (edge: string, gore: string, layer: string, width: string) => ({
  message: `The ${edge} of gore ${quoted(gore)} (layer ${quoted(layer)}) bends tighter than its allowance of ${width} is wide.`,
  why: 'The cut line would run back in a loop there; the loop is cut off, so the allowance is narrower at that bend.',
  hint: `Take a narrower allowance at this ${edge}, or face it.`,
});

const hemTooDeep = warning('hem-too-deep', bendsTooTightly);
const allowanceTooWide = warning('allowance-too-wide', bendsTooTightly);
