import type { Part } from '../draft/part.ts';
import type { Piece } from '../draft/piece.ts';
import type { HemFinish } from '../gown/cloth.ts';
import { allowanceAt, type Layer } from '../gown/layer.ts';

/** What one layer's piece gets round its seam lines. */
export interface AllowancePlan {
  /** By edge of the piece, mm; the fold has none. */
  readonly widths: Readonly<Record<string, number>>;
  /** Extra below the hem's own allowance, cut off after hanging, mm. */
  readonly roughCut: number;
  readonly hemCorner: HemCorner;
  /** Where a seam is pressed open its allowance is mirrored about it at the waist; an enclosed seam ends plain. */
  readonly waistCorner: 'mirrored' | 'plain';
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

/** Allowances of one piece in one layer. @param roughCut extra below the hem, mm */
export function allowancePlan(layer: Layer, piece: Piece, roughCut: number): AllowancePlan {
  const edges = ['waist', 'hem', piece.frontEdge, piece.backEdge];
  return {
    widths: Object.fromEntries(edges.map((edge) => [edge, allowanceAt(layer, edge)])),
    roughCut,
    hemCorner: roughCut > 0 ? 'plain' : CORNERS[layer.hem],
    waistCorner: layer.seams === 'french' ? 'plain' : 'mirrored',
  };
}

/** A part has a top in place of a waist, and may have edges that its layer does not know. */
export function partPlan({ layer, piece, allowances, roughCut, pointed }: Part): AllowancePlan {
  const plan = allowancePlan(layer, piece, roughCut);
  const { waist: _, ...widths } = plan.widths;
  const top = piece.edges[0]!.name;
  return {
    ...plan,
    widths: { ...widths, [top]: allowanceAt(layer, top), ...allowances },
    ...(pointed === true ? { waistCorner: 'plain' } : {}),
  };
}
