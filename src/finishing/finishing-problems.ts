import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { error } from '../diagnostics/finding.ts';
import { quoted } from '../diagnostics/safe-text.ts';
import { tapeText } from '../diagnostics/tape-text.ts';
import type { Units } from '../diagnostics/units.ts';
import type { Gown } from '../gown/gown.ts';
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

/** Kick pleats that begin within a facing of their hem: it would run into the slant of their tops. */
export function kicksInFacing({ pleats, layers, units }: Gown): Diagnostic[] {
  const say = (length: number): string => tapeText(length, units);
  return pleats.flatMap(({ kind, name, aboveHem = 0, foldDepth, layers: own, place }) =>
    layers.flatMap(({ name: layer, facing }) => {
      const straight = aboveHem - foldDepth;
      if (kind !== 'kick' || facing === undefined || !own.includes(layer) || facing.depth < straight)
        return [];
      return [kickInFacing(place('above-hem'), name, layer, say(Math.max(0, straight)), say(facing.depth))];
    }),
  );
}

const kickInFacing = error(
  'kick-in-facing',
  (name: string, layer: string, straight: string, depth: string) => ({
    message: `The edge of kick pleat ${quoted(name)} runs straight for ${straight} above the hem, and the facing of ${quoted(layer)} is ${depth} deep.`,
    why: 'The facing would reach into the slant of the pleat’s top.',
    hint: 'Let the pleat begin higher, or make the facing less deep.',
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
