import { lengthOfRun } from '../geometry/length.ts';
import { overskirtEdge } from '../gown/overskirt-as-gown.ts';
import type { OverskirtSpec } from '../gown-file/spec.ts';
import type { MeasuredPart } from '../truing/true-parts.ts';
import type { GownReport } from './gown-report.ts';

/** A flounce, a run of strips or a godet as `report.json` holds it: mm, of one piece. */
export interface PartReport {
  readonly name: string;
  /** The layer that it is let into, or that stands for it. */
  readonly layer: string;
  readonly copies: number;
  /** By edge; the two sides of a strip share one name and are equal. */
  readonly edges: Readonly<Record<string, number>>;
  /** Of its seams, at worst: a side against what it is sewn to, and the sum of two angles at the hem, degrees. */
  readonly seams: { readonly difference: number; readonly hemAngle: number };
}

export function partReport({ part: { piece, layer }, measures }: MeasuredPart): PartReport {
  return {
    name: piece.gore,
    layer: layer.name,
    copies: piece.cut === 'pair' ? 2 : (piece.copies ?? 1),
    edges: Object.fromEntries(piece.edges.map(({ name, curves }) => [name, rounded(lengthOfRun(curves))])),
    seams: {
      difference: rounded(measures.difference),
      hemAngle: rounded((measures.hemAngle * 180) / Math.PI),
    },
  };
}

/** An overskirt's draft under its own names: its free edges are stations, and no seams. */
export function overskirtReport(overskirt: OverskirtSpec, report: GownReport): GownReport {
  const nameOf = (edge: string): string => overskirtEdge(overskirt, edge);
  return {
    ...report,
    gown: overskirt.name,
    gores: report.gores.map((gore) => ({
      ...gore,
      edges: Object.fromEntries(Object.entries(gore.edges).map(([name, length]) => [nameOf(name), length])),
    })),
    stations: report.stations.map((station) => ({ ...station, name: nameOf(station.name) })),
    seams: report.seams.filter(({ name }) => nameOf(name) === name),
  };
}

function rounded(length: number): number {
  return Math.round(length * 1e4) / 1e4;
}
