import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { warning } from '../diagnostics/finding.ts';
import { quoted } from '../diagnostics/safe-text.ts';
import type { Units } from '../diagnostics/units.ts';
import { lengthInUnits } from '../diagnostics/value-text.ts';
import type { FoldedEdge } from './folded-edges.ts';

export function tooDeepForCurve({ gore, layer, edge, width, place }: FoldedEdge, units: Units): Diagnostic {
  const tooDeep = edge === 'hem' ? hemTooDeep : allowanceTooWide;
  return tooDeep(place(), edge, gore, layer, lengthInUnits(width, units));
}

const bendsTooTightly = (edge: string, gore: string, layer: string, width: string) => ({
  message: `The ${edge} of gore ${quoted(gore)} (layer ${quoted(layer)}) bends tighter than its allowance of ${width} is wide.`,
  why: 'The cut line would run back in a loop there; the loop is cut off, so the allowance is narrower at that bend.',
  hint: `Take a narrower allowance at this ${edge}, or face it.`,
});

const hemTooDeep = warning('hem-too-deep', bendsTooTightly);
const allowanceTooWide = warning('allowance-too-wide', bendsTooTightly);
