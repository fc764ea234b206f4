import type { LayerDraft } from '../draft/draft-layers.ts';
import type { Piece } from '../draft/piece.ts';
import type { Point } from '../geometry/curve.ts';
import { flattenedRun } from '../geometry/flatten.ts';
import type { Stones } from '../gown/parts.ts';
import { type Patch, type PatchSide, scattered } from './scatter.ts';
import { beside, type SeamLine, seamLine } from './seam-line.ts';

/** Stones of one piece as it is drawn: the wearer's left, or half of one on the fold. mm. */
export interface StonesOfPiece {
  readonly gore: string;
  readonly side: Piece['side'];
  /** Outline as points, closed, and where each stone is set. */
  readonly outline: readonly Point[];
  readonly stones: readonly Point[];
  /** How often the drawn piece is there, in the whole gown. */
  readonly times: number;
}

/** Between an outline and its points, mm: far less than a stone is set by eye. */
const DRAWN = 0.2;

/** Scatters one set over the pieces of its layer; the same gown gives the same stones. */
export function stonesSet(stones: Stones, { draft, layer }: LayerDraft): StonesOfPiece[] {
  const pieces = draft.pieces.filter(({ gore }) => layer.gores.includes(gore));
  const behind = piecesBehind(pieces);
  const patches = pieces.map((piece) => patchOf(stones, piece, pieces, behind.has(piece)));
  const set = scattered(patches, SEED);
  return pieces.map((piece, i) => ({
    gore: piece.gore,
    side: piece.side,
    outline: patches[i]!.outline,
    stones: set[i]!,
    times: piece.cut === 'single' ? (piece.copies ?? 1) : 2,
  }));
}

/** Any other would do as well. */
const SEED = 1;

function patchOf(stones: Stones, piece: Piece, pieces: readonly Piece[], isBehind: boolean): Patch {
  const waist = seamLine(edgeOf(piece, 0));
  const hem = seamLine(edgeOf(piece, 2));
  const sides = [piece.frontEdge, piece.backEdge].map((edge): PatchSide => sideOf(piece, edge, pieces));
  const free = [waist, hem, ...sides.flatMap(({ line, beyond }) => (isFold(beyond) ? [] : [line]))];
  const clear = stones.clear + (stones.size ?? 0) / 2;
  return {
    outline: flattenedRun(
      piece.edges.flatMap(({ curves }) => curves),
      DRAWN,
    ),
    sides,
    densityAt: (point) => {
      if (free.some((line) => beside(line, point).away < clear)) return 0;
      if (isBehind && stones.offSeat !== undefined) {
        const { away } = beside(waist, point);
        if (away >= stones.offSeat[0] && away <= stones.offSeat[1]) return 0;
      }
      return densityAt(stones, beside(stones.from === 'hem' ? hem : waist, point).away);
    },
  };
}

/** Clockwise as drawn: waist, back edge, hem, front edge. */
function edgeOf({ edges }: Piece, place: 0 | 2): Piece['edges'][number]['curves'] {
  return edges[place]!.curves;
}

/** From the first figure to the second over the span; none outside it. */
function densityAt({ perDm2: [first, last], over }: Stones, away: number): number {
  if (over === undefined) return first;
  const share = (away - over[0]) / (over[1] - over[0]);
  return share < 0 || share > 1 ? 0 : first + share * (last - first);
}

/** A fold is no seam: stones lie across it, their mirror images beyond. */
function isFold(beyond: PatchSide['beyond'] | undefined): boolean {
  return beyond?.fold === true;
}

function sideOf(piece: Piece, name: string, pieces: readonly Piece[]): PatchSide {
  const line = lineOf(piece, name);
  const own = pieces.indexOf(piece);
  if (name === 'fold') return { line, beyond: { patch: own, line, mirrored: true, fold: true } };
  const other = pieces.findIndex(
    (one) => one !== piece && one.side === piece.side && [one.frontEdge, one.backEdge].includes(name),
  );
  if (other >= 0)
    return { line, beyond: { patch: other, line: lineOf(pieces[other]!, name), mirrored: false } };
  // A seam of its own two mirror images, at a centre.
  return piece.cut === 'pair' ? { line, beyond: { patch: own, line, mirrored: true } } : { line };
}

function lineOf({ edges }: Piece, name: string): SeamLine {
  return seamLine(edges.find((edge) => edge.name === name)!.curves);
}

/** Pieces whose middle lies in the back half of her, by their shares of the waist from the centre front round. */
function piecesBehind(pieces: readonly Piece[]): ReadonlySet<Piece> {
  const behind = new Set<Piece>();
  const isRing = pieces.every(({ cut, side }) => cut === 'single' && side === undefined);
  for (const side of new Set(pieces.map((piece) => piece.side))) {
    const own = pieces.filter((piece) => piece.side === side);
    const tops = own.map((piece) => seamLine(edgeOf(piece, 0)).ways.at(-1)!);
    const round = tops.reduce((sum, top) => sum + top, 0);
    let way = 0;
    for (const [i, piece] of own.entries()) {
      const share = (way + tops[i]! / 2) / round;
      if (isRing ? Math.abs(share - 0.5) < 0.25 : share > 0.5) behind.add(piece);
      way += tops[i]!;
    }
  }
  return behind;
}
