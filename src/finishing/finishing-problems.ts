import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { error } from '../diagnostics/finding.ts';
import { quoted } from '../diagnostics/safe-text.ts';
import { tapeText } from '../diagnostics/tape-text.ts';
import type { Units } from '../diagnostics/units.ts';
import type { Facing } from '../gown/layer.ts';
import type { WaistFinish } from '../gown/waist.ts';
import type { FacingTooDeep } from './facing-parts.ts';
import type { TooDeep } from './facings-of-hem.ts';

/** Finishing pieces that find no room on what they finish. */

export function facingTooDeep({ layer, gore }: FacingTooDeep, units: Units): Diagnostic {
  const { depth, place } = layer.facing!;
  return tooDeep(place(), 'hem', tapeText(depth, units), gore);
}

export function waistFacingTooDeep(
  { width, place }: WaistFinish,
  { gore }: TooDeep,
  units: Units,
): Diagnostic {
  return tooDeep(place('width'), 'waist', tapeText(width, units), gore);
}

export function edgeFacingTooDeep({ depth, place }: Facing, { gore }: TooDeep, units: Units): Diagnostic {
  return tooDeep(place(), 'edge', tapeText(depth, units), gore);
}

const tooDeep = error(
  'facing-deeper-than-gore',
  (edge: 'hem' | 'waist' | 'edge', depth: string, gore: string) => ({
    message: `A facing of the ${edge} ${depth} deep reaches over the other side of ${quoted(gore)}.`,
    why: 'It is cut to the shape of the gore, and the gore ends there.',
    hint: 'Make the facing less deep: a hand’s breadth is plenty on most edges.',
  }),
);

export function upperFacingTooDeep({ depth, place }: Facing, panel: string, units: Units): Diagnostic {
  return upperTooDeep(place(), tapeText(depth, units), panel);
}

const upperTooDeep = error('facing-deeper-than-panel', (depth: string, panel: string) => ({
  message: `A facing ${depth} deep reaches from the upper edge over the waist seam of the panel ${quoted(panel)}.`,
  why: 'It is cut to the shape of the panel, and the panel ends there.',
  hint: 'Make the facing less deep: a few fingers’ breadth is plenty on most bodices, or line it.',
}));
