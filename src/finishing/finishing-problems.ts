import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { error } from '../diagnostics/finding.ts';
import { quoted } from '../diagnostics/safe-text.ts';
import { tapeText } from '../diagnostics/tape-text.ts';
import type { Units } from '../diagnostics/units.ts';
import type { Facing } from '../gown/layer.ts';
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

export function upperFacingTooDeep({ depth, place }: Facing, panel: string, units: Units): Diagnostic {
  return upperTooDeep(place(), tapeText(depth, units), panel);
}

const upperTooDeep = error('facing-deeper-than-panel', (depth: string, panel: string) => ({
  message: `A facing ${depth} deep reaches from the upper edge over the waist seam of the panel ${quoted(panel)}.`,
  why: 'It is cut to the shape of the panel, and the panel ends there.',
  hint: 'Make the facing less deep: a few fingers’ breadth is plenty on most bodices, or line it.',
}));
