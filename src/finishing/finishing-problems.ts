import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { error } from '../diagnostics/finding.ts';
import { quoted } from '../diagnostics/safe-text.ts';
import { tapeText } from '../diagnostics/tape-text.ts';
import type { Units } from '../diagnostics/units.ts';
import type { FacingTooDeep } from './facing-parts.ts';

/** Finishing pieces that find no room on what they finish. */

export function facingTooDeep({ layer, gore }: FacingTooDeep, units: Units): Diagnostic {
  const { depth, place } = layer.facing!;
  return tooDeep(place(), tapeText(depth, units), layer.name, gore);
}

const tooDeep = error('facing-deeper-than-gore', (depth: string, layer: string, gore: string) => ({
  message: `A hem facing ${depth} deep reaches over the top of ${quoted(gore)} in layer ${quoted(layer)}.`,
  why: 'It is cut to the shape of the gore, and the gore ends there.',
  hint: 'Make the facing less deep: a hand’s breadth is plenty on most hems.',
}));
