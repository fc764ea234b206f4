import type { Diagnostic, Span } from '../diagnostics/diagnostic.ts';
import { tapeText } from '../diagnostics/tape-text.ts';
import type { Part } from '../draft/part.ts';
import { lengthOfRun } from '../geometry/length.ts';
import type { Cape as AskedCape } from '../gown/above-waist.ts';
import type { Gown } from '../gown/gown.ts';
import { bodiceProblem } from './bodice-problems.ts';
import { type Cape, type CapeLength, type CapeMeasures, capePiece } from './cape.ts';
import { capeCannotBeLaid, capeLengthMissing } from './cape-problems.ts';
import type { DraftedBodice } from './draft-asked.ts';

/** A cape as it is drafted, with what the spec says of it. */
export interface DraftedCape extends Cape {
  readonly cape: AskedCape;
}

/** Where a cape lies: how long the edge is that it is sewn to, and its stations along the inner edge, in parts of it. */
interface CapeEdge {
  readonly sewnTo: number;
  readonly places: ReadonlyMap<string, number>;
}

/** What hangs free has this place of its own among the stations. */
const OVER_ARM = 'over-arm';

type GownWithCapes = Pick<Gown, 'capes' | 'units'>;

export function draftCapes(
  gown: GownWithCapes,
  bodice: DraftedBodice | undefined,
): { readonly capes: readonly DraftedCape[]; readonly diagnostics: readonly Diagnostic[] } {
  const diagnostics: Diagnostic[] = [];
  const capes = gown.capes.flatMap((cape): DraftedCape[] => {
    const edge = capeEdge(gown, cape, bodice, diagnostics);
    const lengths = edge && capeLengths(gown, cape, edge, diagnostics);
    if (edge === undefined || lengths === undefined) return [];
    const drawn = capePiece(measuresOf(cape, edge, lengths));
    if (drawn !== undefined) return [{ ...drawn, cape }];
    diagnostics.push(capeCannotBeLaid(cape.place('length'), cape.name));
    return [];
  });
  return { capes, diagnostics };
}

function measuresOf(cape: AskedCape, edge: CapeEdge, length: CapeMeasures['length']): CapeMeasures {
  return {
    name: cape.name,
    layers: cape.layers.map(({ name }) => name),
    sewnTo: edge.sewnTo,
    overArm: cape.overArm,
    length,
    shape: cape.angle === undefined ? { fullness: cape.fullness ?? 1 } : { angle: cape.angle },
    onFold: cape.onFold,
  };
}

/** Along the upper edge of her left half; what hangs over the arm is let in at the side seam, or half way. */
function capeEdge(
  gown: GownWithCapes,
  cape: AskedCape,
  bodice: DraftedBodice | undefined,
  diagnostics: Diagnostic[],
): CapeEdge | undefined {
  const { from, to, sewnTo, overArm } = cape;
  if (sewnTo !== undefined || bodice === undefined || from === undefined || to === undefined)
    return { sewnTo: sewnTo ?? 0, places: new Map([[OVER_ARM, 0.5]]) };
  const { stations, pieces } = bodice.draft.left;
  const [start, end] = [stations.indexOf(from), stations.indexOf(to)];
  for (const [key, station] of [
    ['from', from],
    ['to', to],
  ] as const)
    if (!stations.includes(station))
      diagnostics.push(unknownStation(gown, cape.place(key), station, stations));
  if (start < 0 || end < 0) return undefined;
  if (start >= end) {
    diagnostics.push(unknownStation(gown, cape.place('to'), to, stations.slice(start + 1)));
    return undefined;
  }
  const run = pieces.slice(start, end).map((piece) => lengthOfRun(piece.edges[0]!.curves));
  const sewn = run.reduce((sum, length) => sum + length, 0);
  const side = stations.indexOf(bodice.asked.draft.sideSeam ?? '');
  const armAt = side > start && side < end ? side : Math.round((start + end) / 2);
  const places = new Map<string, number>();
  let along = 0;
  for (let station = start; station <= end; station++) {
    const isPast = station > armAt;
    places.set(stations[station]!, (along + (isPast ? overArm : 0)) / (sewn + overArm));
    if (station === armAt) places.set(OVER_ARM, (along + overArm / 2) / (sewn + overArm));
    along += run[station - start] ?? 0;
  }
  return { sewnTo: sewn, places };
}

function unknownStation(
  { units }: GownWithCapes,
  span: Span,
  station: string,
  stations: readonly string[],
): Diagnostic {
  const fault = { code: 'unknown-bodice-station', place: [], station, stations } as const;
  return bodiceProblem(fault, span, (length) => tapeText(length, units));
}

/** One for all, or by station in their order along the inner edge; its ends must be among them. */
function capeLengths(
  gown: GownWithCapes,
  cape: AskedCape,
  { places }: CapeEdge,
  diagnostics: Diagnostic[],
): CapeMeasures['length'] | undefined {
  const { name, from, to, length } = cape;
  if (typeof length === 'number') return length;
  const unknown = Object.keys(length).filter((station) => !places.has(station));
  diagnostics.push(
    ...unknown.map((station) =>
      unknownStation(gown, cape.place('length', station), station, [...places.keys()]),
    ),
  );
  const missing = [from, to].filter((station) => station === undefined || length[station] === undefined);
  if (missing.length > 0) diagnostics.push(capeLengthMissing(cape.place('length'), name, from, to));
  if (unknown.length + missing.length > 0) return undefined;
  return Object.entries(length)
    .map(([station, own]): CapeLength => ({ part: places.get(station)!, length: own }))
    .sort((a, b) => a.part - b.part);
}

/** Its layers; a free edge is finished as the hem is. */
export function capeParts(capes: readonly DraftedCape[]): Part[] {
  return capes.flatMap(({ cape, piece, inner }) =>
    cape.layers.map(
      (layer): Part => ({
        of: { kind: 'cape', cape, inner },
        layer,
        piece: { ...piece, layers: [layer.name] },
        allowances: {},
        notches: new Map(),
        quartered: cape.fullness !== undefined,
        roughCut: 0,
        place: () => cape.place(),
      }),
    ),
  );
}
