import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Part } from '../draft/part.ts';
import { lengthOfRun } from '../geometry/length.ts';
import type { CapeSpec } from '../gown-file/bodice-spec.ts';
import { type LayerSpec, placeOf, type Spec } from '../gown-file/spec.ts';
import { tapeText } from '../gown-file/tape-text.ts';
import { bodiceProblem } from './bodice-problems.ts';
import { CAPE_EDGES, type Cape, type CapeLength, type CapeMeasures, capePiece } from './cape.ts';
import { capeCannotBeLaid, capeLengthMissing } from './cape-problems.ts';
import type { DraftedBodice } from './resolve-bodice.ts';

/** A cape as it is drafted, with what the spec says of it. */
export interface DraftedCape extends Cape {
  readonly cape: CapeSpec;
}

/** Where a cape lies: how long the edge is that it is sewn to, and its stations along the inner edge, in parts of it. */
interface CapeEdge {
  readonly sewnTo: number;
  readonly places: ReadonlyMap<string, number>;
}

/** What hangs free has this place of its own among the stations. */
const OVER_ARM = 'over-arm';

export function draftCapes(
  spec: Spec,
  bodice: DraftedBodice | undefined,
): { readonly capes: readonly DraftedCape[]; readonly diagnostics: readonly Diagnostic[] } {
  const diagnostics: Diagnostic[] = [];
  const capes = (spec.capes ?? []).flatMap((cape, i): DraftedCape[] => {
    const edge = capeEdge(spec, i, bodice, diagnostics);
    const lengths = edge && capeLengths(spec, i, edge, diagnostics);
    if (edge === undefined || lengths === undefined) return [];
    const drawn = capePiece(measuresOf(cape, edge, lengths));
    if (drawn !== undefined) return [{ ...drawn, cape }];
    diagnostics.push(capeCannotBeLaid(placeOf(spec, 'capes', i, 'length'), cape.name));
    return [];
  });
  return { capes, diagnostics };
}

function measuresOf(cape: CapeSpec, edge: CapeEdge, length: CapeMeasures['length']): CapeMeasures {
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
  spec: Spec,
  i: number,
  bodice: DraftedBodice | undefined,
  diagnostics: Diagnostic[],
): CapeEdge | undefined {
  const { from, to, sewnTo, overArm } = spec.capes![i]!;
  if (sewnTo !== undefined || bodice === undefined || from === undefined || to === undefined)
    return { sewnTo: sewnTo ?? 0, places: new Map([[OVER_ARM, 0.5]]) };
  const { stations, pieces } = bodice.draft.left;
  const [start, end] = [stations.indexOf(from), stations.indexOf(to)];
  for (const [key, station] of [
    ['from', from],
    ['to', to],
  ] as const)
    if (!stations.includes(station))
      diagnostics.push(unknownStation(spec, ['capes', i, key], station, stations));
  if (start < 0 || end < 0) return undefined;
  if (start >= end) {
    diagnostics.push(unknownStation(spec, ['capes', i, 'to'], to, stations.slice(start + 1)));
    return undefined;
  }
  const run = pieces.slice(start, end).map((piece) => lengthOfRun(piece.edges[0]!.curves));
  const sewn = run.reduce((sum, length) => sum + length, 0);
  const side = stations.indexOf(spec.bodice.draft?.sideSeam ?? '');
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
  spec: Spec,
  place: readonly (string | number)[],
  station: string,
  stations: readonly string[],
): Diagnostic {
  return bodiceProblem(
    { code: 'unknown-bodice-station', place, station, stations },
    placeOf(spec, ...place),
    (length) => tapeText(length, spec.units),
  );
}

/** One for all, or by station in their order along the inner edge; its ends must be among them. */
function capeLengths(
  spec: Spec,
  i: number,
  { places }: CapeEdge,
  diagnostics: Diagnostic[],
): CapeMeasures['length'] | undefined {
  const { name, from, to, length } = spec.capes![i]!;
  if (typeof length === 'number') return length;
  const unknown = Object.keys(length).filter((station) => !places.has(station));
  diagnostics.push(
    ...unknown.map((station) =>
      unknownStation(spec, ['capes', i, 'length', station], station, [...places.keys()]),
    ),
  );
  const missing = [from, to].filter((station) => station === undefined || length[station] === undefined);
  if (missing.length > 0)
    diagnostics.push(capeLengthMissing(placeOf(spec, 'capes', i, 'length'), name, from, to));
  if (unknown.length + missing.length > 0) return undefined;
  return Object.entries(length)
    .map(([station, own]): CapeLength => ({ part: places.get(station)!, length: own }))
    .sort((a, b) => a.part - b.part);
}

/** Its layers, each with the allowances that its finish asks for; a free edge is finished as the hem is. */
export function capeParts(spec: Spec, capes: readonly DraftedCape[]): Part[] {
  return capes.flatMap((drawn) =>
    drawn.cape.layers.map((layer): Part => {
      const seam = layer.allowances.seam ?? spec.allowances.seam ?? 0;
      const free = freeAllowance(spec, layer);
      return {
        layer,
        piece: { ...drawn.piece, layers: [layer.name] },
        allowances: {
          [CAPE_EDGES.inner]: layer.allowances[CAPE_EDGES.inner] ?? layer.allowances.top ?? seam,
          [CAPE_EDGES.front]: free,
          ...(drawn.piece.backEdge === 'fold' ? { fold: 0 } : { [CAPE_EDGES.back]: free }),
        },
        notches: new Map(),
        quartered: drawn.cape.fullness !== undefined,
        remarks: remarksOf(spec, drawn),
      };
    }),
  );
}

function freeAllowance(spec: Spec, layer: LayerSpec): number {
  if (layer.allowances.hem !== undefined) return layer.allowances.hem;
  return layer.hem === 'raw' ? 0 : (spec.allowances.hem ?? 0);
}

function remarksOf(spec: Spec, { cape, inner }: DraftedCape): string[] {
  const say = (length: number): string => tapeText(length, spec.units);
  const where =
    cape.from === undefined
      ? 'sew it to its edge'
      : `sew it to the upper edge from ${cape.from} to ${cape.to}`;
  const free = cape.overArm === 0 ? '' : `, ${say(cape.overArm)} of it free over the arm`;
  return [cape.fullness === undefined ? `${where}${free}` : `gather it to ${say(inner)}, ${where}${free}`];
}
