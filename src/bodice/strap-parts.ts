import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { tapeText } from '../diagnostics/tape-text.ts';
import { upright } from '../draft/grain-line.ts';
import type { Part } from '../draft/part.ts';
import type { Piece } from '../draft/piece.ts';
import { sectorFrame } from '../draft/sector-frame.ts';
import type { Edge } from '../geometry/edge.ts';
import { reversedRun } from '../geometry/split.ts';
import type { Strap } from '../gown/above-waist.ts';
import type { Gown } from '../gown/gown.ts';
import { CENTRE_BACK, CENTRE_FRONT } from './bodice-measures.ts';
import { bodiceProblem } from './bodice-problems.ts';
import { strapGoesNowhere } from './cape-problems.ts';
import type { DraftedBodice } from './draft-asked.ts';

/** Edges of a strap's outline: its two ends, and its two long edges, which are sewn to each other. */
const [FRONT_END, BACK_END] = ['front-end', 'back-end'];
const [LONG_EDGE, OTHER_EDGE] = ['long-edge', 'other-long-edge'];

/** Straps as parts: strips twice as wide as they are sewn, folded along the middle and turned. */
export function strapParts(straps: readonly Strap[]): Part[] {
  return straps.map(
    (strap): Part => ({
      of: { kind: 'strap', strap },
      layer: strap.layer,
      piece: strapPiece(strap),
      allowances: {},
      notches: new Map(),
      quartered: false,
      lowerSewn: true,
      roughCut: 0,
      place: () => strap.place(),
    }),
  );
}

function strapPiece(strap: Strap): Piece {
  const frame = sectorFrame(2 * strap.width, 0, 0);
  const edges: Edge[] = [
    { name: FRONT_END!, curves: frame.levelAt(0) },
    { name: OTHER_EDGE!, curves: frame.sideFrom('back', 0, strap.length) },
    { name: BACK_END!, curves: reversedRun(frame.levelAt(strap.length)) },
    { name: LONG_EDGE!, curves: reversedRun(frame.sideFrom('front', 0, strap.length)) },
  ];
  const isAtCentres = [strap.from, strap.to].every((at) => at === CENTRE_FRONT || at === CENTRE_BACK);
  return {
    gore: strap.name,
    part: 'strap',
    layers: [strap.name],
    edges,
    frontEdge: LONG_EDGE!,
    backEdge: OTHER_EDGE!,
    grain: upright(frame.pointAt(strap.length / 2, 0.5), edges),
    cut: 'single',
    copies: isAtCentres ? 1 : 2,
  };
}

/** Straps that are sewn to no station of the upper edge, or to one twice. */
export function strapProblems(
  { straps, units }: Pick<Gown, 'straps' | 'units'>,
  bodice: DraftedBodice | undefined,
): Diagnostic[] {
  if (bodice === undefined) return [];
  const { stations } = bodice.draft.left;
  const say = (length: number): string => tapeText(length, units);
  return straps.flatMap((strap) => {
    const unknown = (['from', 'to'] as const)
      .filter((key) => !stations.includes(strap[key]))
      .map((key) => {
        const fault = {
          code: 'unknown-bodice-station',
          place: [key],
          station: strap[key],
          stations,
        } as const;
        return bodiceProblem(fault, strap.place(key), say);
      });
    if (unknown.length > 0 || strap.from !== strap.to) return unknown;
    return [strapGoesNowhere(strap.place('to'), strap.name, say(strap.length), strap.to)];
  });
}
