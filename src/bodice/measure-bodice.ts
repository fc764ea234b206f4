import type { Piece } from '../draft/piece.ts';
import { backCorners, frontCorners, type SideCorners } from '../draft/side-corners.ts';
import { lengthOfRun } from '../geometry/length.ts';
import type { Side } from '../gown/station.ts';
import type { BodiceDraft } from './draft-bodice.ts';
import type { HalfBodice } from './draft-half.ts';
import { gapRound } from './sewn-levels.ts';

/** Every figure of a drafted bodice, measured on its outlines; mm and radians. */
export interface BodiceFigures {
  readonly levels: readonly LevelFigures[];
  readonly panels: readonly PanelFigures[];
  readonly seams: readonly BodiceSeam[];
  /** All round. */
  readonly upper: number;
  readonly lower: number;
}

export interface LevelFigures {
  readonly at: string;
  readonly above: number;
  /** Of the body, all round. */
  readonly body: number;
  /** Of the panels, all round; what is laced open is not in it. */
  readonly sewn: number;
  readonly open: number;
}

/** One panel; on a fold its half. */
export interface PanelFigures {
  readonly name: string;
  readonly side?: 'left' | 'right';
  readonly upper: number;
  readonly lower: number;
  readonly widths: Readonly<Record<string, number>>;
}

export interface BodiceSeam {
  readonly name: string;
  readonly side?: 'left' | 'right';
  /** On the panel in front of it and on the one behind. */
  readonly lengths: readonly [number, number];
  /** Sums of the two angles at its ends; π where the edge runs straight through. */
  readonly upperAngle: number;
  readonly lowerAngle: number;
}

export function measureBodice(draft: BodiceDraft): BodiceFigures {
  const { measures, left, right } = draft;
  const halves = left === right ? [{ half: left }] : sides(draft);
  const both = (of: (half: HalfBodice) => number): number => of(left) + of(right);
  const along = (edge: number) => (half: HalfBodice) =>
    half.pieces.reduce((sum, piece) => sum + edgeLength(piece, edge), 0);
  return {
    levels: measures.girths.map(({ at, above, girth }, l) => ({
      at,
      above,
      body: girth,
      sewn: both((half) => widthRound(half, l)),
      open: gapRound(measures, at),
    })),
    panels: halves.flatMap(({ half, side }) => half.pieces.map((_, p) => panelFigures(half, p, side))),
    seams: halves.flatMap(({ half, side }) => seamsOf(half, side)),
    upper: both(along(UPPER)),
    lower: both(along(LOWER)),
  };
}

/** Measured where the level lies on the bodice; above and below it, what it would be. */
function widthRound({ frames, levels, upper, lower }: HalfBodice, l: number): number {
  const { above, half } = levels[l]!;
  const top = Math.min(...upper.ways.map((way) => upper.valueAt(way)));
  const bottom = Math.max(...lower.ways.map((way) => lower.valueAt(way)));
  if (-above < top || -above > bottom) return half;
  return frames.reduce((sum, frame) => sum + lengthOfRun(frame.levelAt(-above)), 0);
}

function sides({ left, right }: BodiceDraft): { readonly half: HalfBodice; readonly side?: Side }[] {
  return [
    { half: left, side: 'left' },
    { half: right, side: 'right' },
  ];
}

/** Places of the edges in a panel. */
const [UPPER, LOWER] = [0, 2];

function edgeLength(piece: Piece, edge: number): number {
  return lengthOfRun(piece.edges[edge]!.curves);
}

function panelFigures(half: HalfBodice, p: number, side: Side | undefined): PanelFigures {
  const piece = half.pieces[p]!;
  return {
    name: piece.gore,
    ...(side === undefined ? {} : { side }),
    upper: edgeLength(piece, UPPER),
    lower: edgeLength(piece, LOWER),
    widths: Object.fromEntries(half.levels.map(({ at }, l) => [at, half.widths[p]![l]!])),
  };
}

/** Every seam of a half, its centres with the mirror image where nothing lies on the fold. */
function seamsOf({ stations, pieces }: HalfBodice, side: Side | undefined): BodiceSeam[] {
  return stations.flatMap((name, i): BodiceSeam[] => {
    const before = pieces[i - 1];
    const after = pieces[i];
    if (before?.backEdge === 'fold' || after?.frontEdge === 'fold') return [];
    const behind: SideCorners = after === undefined ? backCorners(before!) : frontCorners(after);
    const inFront: SideCorners = before === undefined ? behind : backCorners(before);
    return [
      {
        name,
        ...(side === undefined ? {} : { side }),
        lengths: [inFront.length, behind.length],
        upperAngle: inFront.upper + behind.upper,
        lowerAngle: inFront.lower + behind.lower,
      },
    ];
  });
}
