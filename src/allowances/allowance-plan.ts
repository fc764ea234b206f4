import type { Part } from '../draft/part.ts';
import type { Piece } from '../draft/piece.ts';
import { DEFAULT_ALLOWANCE } from '../gown/gown-of-spec.ts';
import type { HemFinish, LayerSpec, Spec } from '../gown-file/spec.ts';

/** What one layer's piece gets round its seam lines. */
export interface AllowancePlan {
  /** By edge of the piece, mm; the fold has none. */
  readonly widths: Readonly<Record<string, number>>;
  /** Extra below the hem's own allowance, cut off after hanging, mm. */
  readonly roughCut: number;
  readonly hemCorner: HemCorner;
  /** Where a seam is pressed open its allowance is mirrored about it at the waist; an enclosed seam ends plain. */
  readonly waistCorner: 'mirrored' | 'plain';
  /** The lower edge is a seam: its corners are those of the waist. */
  readonly lowerSewn?: boolean;
}

/**
 * How the allowance ends where hem and seam meet. `mirrored`: turned up along the hem line, so it is the mirror image
 * of what lies above it. `trimmed`: the hem is sewn to a facing or another layer, and the corner is cut off so that
 * it does not add bulk. `plain`: the edge is left raw or rolled, the sides run straight on.
 */
export type HemCorner = 'mirrored' | 'trimmed' | 'plain';

const CORNERS: Readonly<Record<HemFinish, HemCorner>> = {
  turned: 'mirrored',
  faced: 'trimmed',
  bagged: 'trimmed',
  rolled: 'plain',
  raw: 'plain',
};

/** Allowances of one piece in one layer: the layer's own before the gown's, a named station before `seam`. */
export function allowancePlan(spec: Spec, layer: LayerSpec, piece: Piece): AllowancePlan {
  const roughCut = spec.roughCut[piece.gore] ?? 0;
  const widths: Record<string, number> = {
    waist: layer.allowances.waist ?? spec.allowances.waist ?? DEFAULT_ALLOWANCE,
    hem: hemAllowance(spec, layer),
  };
  for (const edge of [piece.frontEdge, piece.backEdge]) {
    widths[edge] =
      edge === 'fold'
        ? 0
        : (layer.allowances[edge] ??
          spec.allowances[edge] ??
          layer.allowances.seam ??
          spec.allowances.seam ??
          DEFAULT_ALLOWANCE);
  }
  return {
    widths,
    roughCut,
    hemCorner: roughCut > 0 ? 'plain' : CORNERS[layer.hem],
    waistCorner: layer.seams === 'french' ? 'plain' : 'mirrored',
  };
}

/** A raw edge takes no hem allowance unless the layer itself names one. */
export function hemAllowance(spec: Spec, layer: LayerSpec): number {
  if (layer.allowances.hem !== undefined) return layer.allowances.hem;
  return layer.hem === 'raw' ? 0 : (spec.allowances.hem ?? DEFAULT_ALLOWANCE);
}

/** A part brings the allowances of its own edges; its hem is its layer's. */
export function partPlan(spec: Spec, part: Part): AllowancePlan {
  const plan = allowancePlan(spec, part.layer, part.piece);
  const { waist: _, hem, ...widths } = plan.widths;
  const hasHem = part.piece.edges.some(({ name }) => name === 'hem');
  return {
    ...plan,
    // A panel has the name of its gore, and hangs from nothing.
    ...(part.piece.part === 'bodice' ? { roughCut: 0 } : {}),
    widths: { ...widths, ...(hasHem ? { hem: hem! } : {}), ...part.allowances },
    ...(part.pointed === true ? { waistCorner: 'plain' } : {}),
    ...(part.lowerSewn === true ? { lowerSewn: true } : {}),
  };
}
