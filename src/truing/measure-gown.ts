import type { GownDraft } from '../draft/draft-gown.ts';
import type { Piece } from '../draft/piece.ts';
import { areaInside } from '../geometry/area.ts';
import type { Curve, Point } from '../geometry/curve.ts';
import type { Edge } from '../geometry/edge.ts';
import { curvatureAt, tangentAt } from '../geometry/evaluate.ts';
import { lengthOfRun } from '../geometry/length.ts';
import { angleBetween } from '../geometry/point.ts';
import { goresAt, halves, runsRound, stationsOnce } from '../gown/lines.ts';
import { fullnessOf } from '../gown/lines-of-layer.ts';

/** Every figure of a draft, measured on its finished outlines, never taken from the numbers that drew them. */
export interface GownMeasures {
  readonly gores: readonly GoreMeasures[];
  readonly seams: readonly SeamMeasures[];
  /** All round: the gore tops as sewn, and the bodice edge they meet. */
  readonly waist: { readonly sewn: number; readonly bodice: number };
  readonly hem: { readonly sewn: number };
}

export interface GoreMeasures {
  readonly name: string;
  /** The wearer's side, where her two sides differ. */
  readonly side?: 'left' | 'right';
  readonly copies: number;
  /** mm, of the piece as drawn: half of the gore where it lies on the fold. The top as sewn, gathered or pleated. */
  readonly top: number;
  /** The bodice edge that the top meets, of the half on the fold; taken in where the seams were. */
  readonly panel?: number;
  readonly onFold: boolean;
  readonly hem: number;
  readonly flare: number;
  /** mm² within the seam lines, of the piece as drawn. */
  readonly area: number;
  readonly edges: Readonly<Record<string, number>>;
  /** Smallest radius of the hem and of the waist, mm; Infinity where straight. */
  readonly tightest: number;
}

export interface SeamMeasures {
  readonly name: string;
  /** Where both sides of her have a seam of this name, and they differ. */
  readonly side?: 'left' | 'right';
  /** An end of an overskirt, sewn to nothing. */
  readonly free?: true;
  /** Index of the station. */
  readonly station: number;
  /** The gore before the seam and the gore after it. */
  readonly gores: readonly [string, string];
  readonly lengths: readonly [number, number];
  /** Sum of the two angles, radians; π where the edge runs straight through. */
  readonly hemAngle: number;
  readonly waistAngle: number;
  /** How far the hem is off square there, radians, positive where it runs down towards the back. */
  readonly offSquare: number;
}

export function measureGown(draft: GownDraft): GownMeasures {
  const { pieces, gown } = draft;
  const gores = pieces.map((piece, i) => measureGore(piece, draft, i));
  const panels = gown.gores.map((gore) => gore.panel ?? gore.top);
  const round = (values: readonly number[]): number =>
    halves(gown) * values.reduce((sum, value) => sum + value, 0);
  return {
    gores,
    seams: seamsOf(draft),
    waist: { sewn: round(gores.map((gore) => gore.top)), bodice: round(panels) },
    hem: { sewn: round(gores.map((gore) => gore.hem)) },
  };
}

function measureGore(piece: Piece, draft: GownDraft, i: number): GoreMeasures {
  const edges = Object.fromEntries(piece.edges.map((edge) => [edge.name, lengthOfRun(edge.curves)]));
  const frame = draft.frames[i]!;
  const { panel, fold } = draft.gown.gores[i]!;
  return {
    name: piece.gore,
    ...(piece.side === undefined ? {} : { side: piece.side }),
    copies: piece.cut === 'pair' ? 2 : 1,
    top: edges.waist! / fullnessOf(draft.gown.gores[i]!, draft.shape),
    ...(panel === undefined ? {} : { panel }),
    onFold: fold !== undefined,
    hem: edges.hem!,
    flare: frame.downAt(0, 1) - frame.downAt(0, 0),
    area: areaInside(piece.edges.flatMap((edge) => edge.curves)),
    edges,
    tightest: Math.min(...piece.edges.flatMap((edge) => edge.curves.map(tightestRadius))),
  };
}

function tightestRadius(curve: Curve): number {
  const bends = [0, 0.25, 0.5, 0.75, 1].map((t) => Math.abs(curvatureAt(curve, t)));
  return 1 / Math.max(...bends);
}

function seamsOf(draft: GownDraft): SeamMeasures[] {
  const { pieces, gown } = draft;
  return stationsOnce(gown).flatMap((own, station): SeamMeasures[] => {
    if (own.seams === 0) return [];
    // A centre of a mirrored gown is a seam with the piece's own mirror image.
    const [a, b] = goresAt({ round: gown.round, gores: pieces }, station);
    const atFirst = !runsRound(gown) && station === 0;
    const atLast = !runsRound(gown) && station === pieces.length;
    const left = atFirst ? frontCorners(b) : backCorners(a);
    const right = atLast ? backCorners(a) : frontCorners(b);
    return [
      {
        name: own.name,
        ...(own.side === undefined ? {} : { side: own.side }),
        ...(own.free ? { free: true } : {}),
        station,
        gores: [a.gore, b.gore],
        lengths: [left.length, right.length],
        hemAngle: left.hem + right.hem,
        waistAngle: left.waist + right.waist,
        offSquare: Math.atan(draft.hem.slopeAt(draft.hem.ways[station]!)),
      },
    ];
  });
}

interface Corners {
  readonly length: number;
  readonly hem: number;
  readonly waist: number;
}

function backCorners(piece: Piece): Corners {
  const [waist, back, hem] = piece.edges as readonly [Edge, Edge, Edge, Edge];
  return {
    length: lengthOfRun(back.curves),
    waist: insideAngle(waist, back),
    hem: insideAngle(back, hem),
  };
}

function frontCorners(piece: Piece): Corners {
  const [waist, , hem, front] = piece.edges as readonly [Edge, Edge, Edge, Edge];
  return {
    length: lengthOfRun(front.curves),
    waist: insideAngle(front, waist),
    hem: insideAngle(hem, front),
  };
}

/** Angle inside the piece between an edge and the one after it, radians. */
function insideAngle(before: Edge, after: Edge): number {
  const into: Point = tangentAt(before.curves[before.curves.length - 1]!, 1);
  const out = tangentAt(after.curves[0]!, 0);
  return angleBetween({ x: -into.x, y: -into.y }, out);
}
