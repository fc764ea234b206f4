import { edgeAllRound } from '../draft/all-round.ts';
import type { LayerDraft, LayerDrafts } from '../draft/draft-layers.ts';
import { hemRound } from '../draft/flounces.ts';
import type { Part } from '../draft/part.ts';
import type { BiasStrip } from '../draft/part-kind.ts';
import { usableWidth } from '../draft/usable-width.ts';
import { overlapOf, wrapEdgeOf } from '../draft/wrapped.ts';
import type { Gown } from '../gown/gown.ts';
import { hasGore, type Layer } from '../gown/layer.ts';
import { LAPPED } from '../gown/openings.ts';
import type { Trim } from '../gown/sections.ts';
import { WRAP_EDGE } from '../gown/wrap.ts';
import { seamLength } from './opening-parts.ts';
import { rectangle } from './rectangle.ts';

/** How wide a binding is cut where nothing is said, mm (textbook: four times what shows). */
const USUAL_BINDING = 40;

/** Allowance along a seam of the block, mm (textbook: 1/4 in). */
const SEAM = 6;

/** Bindings that are cut from a cloth: each a block of it, as large as its strip. */
export function bindingParts({ trims, godets }: Pick<Gown, 'trims' | 'godets'>, drafts: LayerDrafts): Part[] {
  return trims.flatMap((trim) => {
    const length = edgeLength(trim, godets, drafts);
    return trim.bias === undefined || length === undefined ? [] : [bindingPart(trim, trim.bias, length)];
  });
}

function bindingPart(trim: Trim, layer: Layer, length: number): Part {
  const { strip, block } = biasBlock(
    length,
    trim.width ?? USUAL_BINDING,
    usableWidth(layer.cloth) - 2 * SEAM,
  );
  const edges = ['upper-end', 'right-side', 'lower-end', 'left-side'] as const;
  const piece = rectangle({ name: layer.name, part: 'binding' }, block, edges);
  return {
    of: { kind: 'binding', strip, edge: trim.along },
    layer,
    piece: { ...piece, layers: [layer.name] },
    allowances: Object.fromEntries(edges.map((edge) => [edge, SEAM])),
    notches: new Map(),
    quartered: false,
    lowerSewn: true,
    roughCut: 0,
    place: () => trim.place(),
  };
}

/** Blocks are cut to whole centimetres. */
const WHOLE = 10;

/**
 * The block that a bias strip is cut from: as large as the strip, square where the cloth is wide enough
 * (the continuous-bias rule). A strip across it at 45° is √2 times its width long.
 * @param widest block that the cloth gives, mm
 */
export function biasBlock(
  length: number,
  width: number,
  widest: number,
): { readonly strip: BiasStrip; readonly block: { readonly along: number; readonly across: number } } {
  const whole = (mm: number): number => Math.ceil(mm / WHOLE - 1e-9) * WHOLE;
  const area = length * width;
  const square = whole(Math.sqrt(area));
  const across = square <= widest ? square : Math.floor(widest / WHOLE) * WHOLE;
  const along = square <= widest ? square : whole(area / across);
  const reach = Math.min(across, along) * Math.SQRT2;
  return {
    strip: { width, length, joins: Math.ceil(length / reach - 1e-9) - 1, area },
    block: { along, across },
  };
}

/** The edge that a binding goes round, all copies together, and its lap where it meets itself. */
function edgeLength(
  { layer, along, stations, width: _ }: Trim,
  godets: Gown['godets'],
  drafts: LayerDrafts,
): number | undefined {
  const own = drafts.layers.find((one) => one.layer.name === layer.name);
  if (own === undefined) return undefined;
  if (along === 'hem') return hemRound(own, godets) + (own.draft.gown.wrapped === undefined ? LAPPED : 0);
  if (along === 'waist') return waistRound(own);
  const edge = along === WRAP_EDGE ? wrapEdgeOf(own) : undefined;
  if (edge !== undefined) return 2 * edge;
  const long = seamLength(stations, own.draft);
  return long === undefined ? undefined : long * stations.reduce((sum, { seams }) => sum + seams, 0);
}

function waistRound({ layer, draft }: LayerDraft): number {
  const round = edgeAllRound(draft, 'waist', (gore) => hasGore(layer, gore));
  return round + overlapOf({ layer, draft }, 'waist');
}
