import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { upright } from '../draft/grain-line.ts';
import { type Part, partLayer } from '../draft/part.ts';
import type { Piece } from '../draft/piece.ts';
import { sectorFrame } from '../draft/sector-frame.ts';
import type { Edge } from '../geometry/edge.ts';
import { reversedRun } from '../geometry/split.ts';
import type { StrapSpec } from '../gown-file/bodice-spec.ts';
import { placeOf, type Spec } from '../gown-file/spec.ts';
import { tapeText } from '../gown-file/tape-text.ts';
import { CENTRE_BACK, CENTRE_FRONT } from './bodice-measures.ts';
import { bodiceProblem } from './bodice-problems.ts';
import { strapGoesNowhere } from './cape-problems.ts';
import type { DraftedBodice } from './resolve-bodice.ts';

/** Edges of a strap's outline: its two ends, and its two long edges, which are sewn to each other. */
const [FRONT_END, BACK_END] = ['front-end', 'back-end'];
const [LONG_EDGE, OTHER_EDGE] = ['long-edge', 'other-long-edge'];

/** Straps as parts: strips twice as wide as they are sewn, folded along the middle and turned. */
export function strapParts(spec: Spec): Part[] {
  return (spec.straps ?? []).map((strap): Part => {
    const seam = spec.allowances.seam ?? 0;
    const say = (length: number): string => tapeText(length, spec.units);
    return {
      layer: partLayer(strap.name, strap.cloth, 'raw', {}),
      piece: strapPiece(strap),
      allowances: { [FRONT_END!]: seam, [BACK_END!]: seam, [LONG_EDGE!]: seam, [OTHER_EDGE!]: seam },
      notches: new Map(),
      quartered: false,
      lowerSewn: true,
      remarks: [
        `fold it lengthwise, sew and turn it: ${say(strap.width)} wide`,
        `from ${strap.from} to ${strap.to}`,
      ],
    };
  });
}

function strapPiece(strap: StrapSpec): Piece {
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
export function strapProblems(spec: Spec, bodice: DraftedBodice | undefined): Diagnostic[] {
  if (bodice === undefined) return [];
  const { stations } = bodice.draft.left;
  const say = (length: number): string => tapeText(length, spec.units);
  return (spec.straps ?? []).flatMap((strap, i) => {
    const unknown = (['from', 'to'] as const)
      .filter((key) => !stations.includes(strap[key]))
      .map((key) => {
        const place = ['straps', i, key];
        const fault = { code: 'unknown-bodice-station', place, station: strap[key], stations } as const;
        return bodiceProblem(fault, placeOf(spec, ...place), say);
      });
    if (unknown.length > 0 || strap.from !== strap.to) return unknown;
    return [strapGoesNowhere(placeOf(spec, 'straps', i, 'to'), strap.name, say(strap.length), strap.to)];
  });
}
